// SPDX-License-Identifier: MIT
#include "app/demo/demo_artwork.h"

#include <array>

namespace sp::demo {

namespace {

using Style = InkStones::Style;

constexpr std::uint32_t kAquamarine = 0x4FC3CF;
constexpr std::uint32_t kJet = 0x23262D;
constexpr std::uint32_t kCrystal = 0xDDE6F0;
constexpr std::uint32_t kAmber = 0xD9A03A;
constexpr std::uint32_t kEmerald = 0x1F8A5B;
constexpr std::uint32_t kSiam = 0xB3202E;
constexpr std::uint32_t kSapphire = 0x2748A8;

constexpr auto kLantern = R"(<svg xmlns="http://www.w3.org/2000/svg" width="89mm" height="70mm" viewBox="0 0 89 70">
<g fill="none" stroke="#00aaaa">
<path d="M25.5 18.4 Q44.5 10.0 63.5 18.4"/>
<path d="M15.4 21.8 Q44.5 14.9 73.6 21.8"/>
<path d="M9.3 25.2 Q44.5 19.8 79.7 25.2"/>
<path d="M2.9 31.9 Q44.5 29.6 86.1 31.9"/>
<path d="M1.7 38.7 Q44.5 39.5 87.3 38.7"/>
<path d="M2.9 42.1 Q44.5 44.4 86.1 42.1"/>
<path d="M9.3 48.8 Q44.5 54.2 79.7 48.8"/>
<path d="M15.4 52.2 Q44.5 59.1 73.6 52.2"/>
<path d="M25.5 55.6 Q44.5 64.0 63.5 55.6"/>
</g>
<g fill="none" stroke="#00aaab">
<path d="M1.7 35.3 Q44.5 34.5 87.3 35.3"/>
</g>
<g fill="none" stroke="#000000">
<path d="M5.3 28.5 Q44.5 24.7 83.7 28.5"/>
<path d="M5.3 45.5 Q44.5 49.3 83.7 45.5"/>
</g>
<g fill="none" stroke="#111111">
<path d="M27.5 10.5 H61.5"/>
<path d="M27.5 63.5 H61.5"/>
<path d="M34 7.5 C32 -3 57 -3 55 7.5"/>
<path d="M35 67 H54"/>
</g>
</svg>)";

constexpr auto kCrest = R"(<svg xmlns="http://www.w3.org/2000/svg" width="178mm" height="153mm" viewBox="0 0 178 153">
<path fill="none" stroke="#aa7700" d="M2 12 Q46 26 89 2 Q132 26 176 12 C180 84 148 126 89 151 C30 126 -2 84 2 12 Z"/>
<path fill="none" stroke="#aa7701" d="M10 22 Q50 32 89 12 Q128 32 168 22 C169 80 140 116 89 140 C38 116 9 80 10 22 Z"/>
<path fill="#dddddd" d="M89 26 L98.9 57.4 L131.8 57.1 L105 76.2 L115.5 107.4 L89 87.9 L62.5 107.4 L73 76.2 L46.2 57.1 L79.1 57.4 Z"/>
<g fill="none" stroke="#aa7702">
<path d="M30 44 C31 78 48 100 70 117"/>
<path d="M148 44 C147 78 130 100 108 117"/>
<path d="M72 112 Q89 124 106 112"/>
<path d="M64 119 Q89 137 114 119"/>
</g>
</svg>)";

constexpr auto kOdette = R"(<svg xmlns="http://www.w3.org/2000/svg" width="127mm" height="26mm" viewBox="0 0 127 26">
<g fill="none" stroke="#00aaaa">
<path d="M12 1.4 C5.5 1.4 1.4 5 1.4 10 C1.4 15 5.5 18.6 12 18.6 C18.5 18.6 22.6 15 22.6 10 C22.6 5 18.5 1.4 12 1.4 Z"/>
<path d="M40 1.4 V18.6"/>
<path d="M36.9 9 C35.8 7.4 34.5 6.6 33 6.6 C29.6 6.6 27.2 9.2 27.2 12.6 C27.2 16 29.6 18.6 33 18.6 C34.5 18.6 35.8 17.8 36.9 16.2"/>
<path d="M46 12.6 H58 C58 9 55.5 6.6 52 6.6 C48.5 6.6 46 9 46 12.6 C46 16 48.5 18.6 52 18.6 C54.5 18.6 56.8 17.8 58 16"/>
<path d="M68 1.4 V14.5 C68 17 69.5 18.6 72.5 18.6"/>
<path d="M62 6.6 H65"/>
<path d="M71 6.6 H74"/>
<path d="M83 1.4 V14.5 C83 17 84.5 18.6 87.5 18.6"/>
<path d="M77 6.6 H80"/>
<path d="M86 6.6 H89"/>
<path d="M93.5 12.6 H105.5 C105.5 9 103 6.6 99.5 6.6 C96 6.6 93.5 9 93.5 12.6 C93.5 16 96 18.6 99.5 18.6 C102 18.6 104.3 17.8 105.5 16"/>
<path d="M2 23.2 C30 21.6 50 24.6 75 22.8 C95 21.4 110 21.8 125.6 23.4"/>
</g>
<path fill="#00aaab" d="M117.5 18.5 C108 12 109.5 3.5 114 3.5 C116 3.5 117.2 5 117.5 6.5 C117.8 5 119 3.5 121 3.5 C125.5 3.5 127 12 117.5 18.5 Z"/>
</svg>)";

constexpr auto kHeron = R"(<svg xmlns="http://www.w3.org/2000/svg" width="127mm" height="178mm" viewBox="0 0 127 178">
<g fill="none" stroke="#dddddd">
<path d="M45 19 C52 10 66 12 68 24 C70 40 55 52 62 70 C68 84 92 86 108 108 C114 117 119 126 124 140 C110 136 98 132 86 128 C66 122 52 104 49 88 C45 70 62 52 59 36 C58 31 52 29 46 28"/>
<path d="M60 8 C72 2 86 6 94 14"/>
<path d="M55 84 C60 104 74 117 92 122"/>
<path d="M66 80 C84 86 100 98 113 124"/>
<path d="M13 166 C17 134 11 108 20 80"/>
<path d="M24 166 C25 146 24 126 31 108"/>
<path d="M4 166 C6 140 3 120 9 100"/>
<circle cx="101" cy="46" r="25"/>
<circle cx="101" cy="46" r="20.5"/>
</g>
<path fill="#0000aa" d="M60 85 C80 88 98 104 108 125 C86 120 68 108 60 85 Z"/>
<g fill="none" stroke="#0000ab">
<path d="M2 171 Q18 167 34 171 T66 171"/>
<path d="M62 176.5 Q78 172.5 94 176.5 T125.5 176.5"/>
</g>
<g fill="none" stroke="#000000">
<path d="M5 33 L42 22"/>
<path d="M80 129 L76 150 L79 166 L70 168.5"/>
<path d="M92 133 L95 152 L91 168 L101 169.5"/>
<path d="M20.5 76 L23 52"/>
<path d="M32 104 L35 84"/>
</g>
<circle fill="#000001" cx="58" cy="22" r="1.6"/>
</svg>)";

constexpr auto kBoat = R"(<svg xmlns="http://www.w3.org/2000/svg" width="102mm" height="77mm" viewBox="0 0 102 77">
<path fill="#cc0000" d="M2 32 L34 42 L68 42 L100 32 L82 60 L20 60 Z"/>
<path fill="#dddddd" d="M51 2 L70 39 L32 39 Z"/>
<g fill="none" stroke="#0000aa">
<path d="M3 68 Q11 63.5 19 68 T35 68 T51 68 T67 68 T83 68 T99 68"/>
<path d="M11 74 Q19 69.5 27 74 T43 74 T59 74 T75 74 T91 74"/>
</g>
</svg>)";

constexpr auto kClover = R"(<svg xmlns="http://www.w3.org/2000/svg" width="204mm" height="32mm" viewBox="0 0 204 32">
<g fill="none" stroke="#00aa00">
<path d="M13.85 14.06 A6.3 6.3 0 1 1 20.15 14.06"/>
<path d="M17.00 10.60 L17.00 7.20"/>
<path d="M13.98 22.31 A6.3 6.3 0 1 1 11.28 16.62"/>
<path d="M9.51 20.94 L6.43 22.40"/>
<path d="M22.72 16.62 A6.3 6.3 0 1 1 20.02 22.31"/>
<path d="M24.49 20.94 L27.57 22.40"/>
<path d="M17 18 v9 q0.5 2 1.5 3.5"/>
<path d="M47.85 14.06 A6.3 6.3 0 1 1 54.15 14.06"/>
<path d="M51.00 10.60 L51.00 7.20"/>
<path d="M47.98 22.31 A6.3 6.3 0 1 1 45.28 16.62"/>
<path d="M43.51 20.94 L40.43 22.40"/>
<path d="M56.72 16.62 A6.3 6.3 0 1 1 54.02 22.31"/>
<path d="M58.49 20.94 L61.57 22.40"/>
<path d="M51 18 v9 q0.5 2 1.5 3.5"/>
<path d="M81.85 14.06 A6.3 6.3 0 1 1 88.15 14.06"/>
<path d="M85.00 10.60 L85.00 7.20"/>
<path d="M81.98 22.31 A6.3 6.3 0 1 1 79.28 16.62"/>
<path d="M77.51 20.94 L74.43 22.40"/>
<path d="M90.72 16.62 A6.3 6.3 0 1 1 88.02 22.31"/>
<path d="M92.49 20.94 L95.57 22.40"/>
<path d="M85 18 v9 q0.5 2 1.5 3.5"/>
<path d="M115.85 14.06 A6.3 6.3 0 1 1 122.15 14.06"/>
<path d="M119.00 10.60 L119.00 7.20"/>
<path d="M115.98 22.31 A6.3 6.3 0 1 1 113.28 16.62"/>
<path d="M111.51 20.94 L108.43 22.40"/>
<path d="M124.72 16.62 A6.3 6.3 0 1 1 122.02 22.31"/>
<path d="M126.49 20.94 L129.57 22.40"/>
<path d="M119 18 v9 q0.5 2 1.5 3.5"/>
<path d="M149.85 14.06 A6.3 6.3 0 1 1 156.15 14.06"/>
<path d="M153.00 10.60 L153.00 7.20"/>
<path d="M149.98 22.31 A6.3 6.3 0 1 1 147.28 16.62"/>
<path d="M145.51 20.94 L142.43 22.40"/>
<path d="M158.72 16.62 A6.3 6.3 0 1 1 156.02 22.31"/>
<path d="M160.49 20.94 L163.57 22.40"/>
<path d="M153 18 v9 q0.5 2 1.5 3.5"/>
<path d="M183.85 14.06 A6.3 6.3 0 1 1 190.15 14.06"/>
<path d="M187.00 10.60 L187.00 7.20"/>
<path d="M183.98 22.31 A6.3 6.3 0 1 1 181.28 16.62"/>
<path d="M179.51 20.94 L176.43 22.40"/>
<path d="M192.72 16.62 A6.3 6.3 0 1 1 190.02 22.31"/>
<path d="M194.49 20.94 L197.57 22.40"/>
<path d="M187 18 v9 q0.5 2 1.5 3.5"/>
</g>
</svg>)";

} // namespace

std::span<const DemoShape> demoShapes() {
    static const std::array<DemoShape, 6> kShapes{{
        {"Lantern",
         "filled",
         88.9,
         69.85,
         kLantern,
         {{"#00aaaa", "Aquamarine SS10", "SS10", kAquamarine, 3.16},
          {"#00aaab", "Aquamarine SS10", "SS10", kAquamarine, 2.97},
          {"#000000", "Jet SS10", "SS10", kJet, 3.15},
          {"#111111", "Jet SS10", "SS10", kJet, 2.92}}},
        {"Studio crest",
         "two colours",
         177.8,
         152.4,
         kCrest,
         {{"#aa7700", "Amber SS10", "SS10", kAmber, 3.0, Style::Outline},
          {"#aa7701", "Amber SS10", "SS10", kAmber, 3.15, Style::Outline},
          {"#aa7702", "Amber SS10", "SS10", kAmber, 3.265},
          {"#dddddd", "Crystal SS10", "SS10", kCrystal, 3.36, Style::Both}}},
        {"Nameplate “Odette”",
         "lettering",
         127,
         25.4,
         kOdette,
         {{"#00aaaa", "Aquamarine SS10", "SS10", kAquamarine, 2.96, Style::Outline},
          {"#00aaab", "Aquamarine SS10", "SS10", kAquamarine, 3.2}}},
        {"Heron",
         "outline",
         127,
         177.8,
         kHeron,
         {{"#dddddd", "Crystal SS10", "SS10", kCrystal, 3.085},
          {"#0000aa", "Sapphire SS6", "SS6", kSapphire, 2.78, Style::Both},
          {"#0000ab", "Sapphire SS6", "SS6", kSapphire, 2.5},
          {"#000000", "Jet SS10", "SS10", kJet, 3.05},
          {"#000001", "Jet SS10", "SS10", kJet, 3.3}}},
        {"Paper boat",
         "three sizes",
         101.6,
         76.2,
         kBoat,
         {{"#cc0000", "Siam SS16", "SS16", kSiam, 4.5, Style::Both},
          {"#dddddd", "Crystal SS10", "SS10", kCrystal, 3.4, Style::Both},
          {"#0000aa", "Sapphire SS6", "SS6", kSapphire, 2.5}}},
        {"Clover row", "a row", 203.2, 31.75, kClover, {{"#00aa00", "Emerald SS10", "SS10", kEmerald, 3.3}}},
    }};
    return kShapes;
}

} // namespace sp::demo

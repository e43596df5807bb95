// SPDX-License-Identifier: MIT
//
// Counts in files that nobody here drew, and beside independent programs. Each part is a test only where its
// folder or program was found when the build was configured (see CMakeLists.txt), so a test that runs has
// tested something.
#include "core/artwork/artwork_file.h"
#include "core/artwork/count.h"
#include "core/artwork/scale.h"
#include "tests/support/seed.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <random>

#include <unistd.h>

namespace sp::artwork {
namespace {

std::string bytesOf(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    EXPECT_TRUE(in.good()) << path;
    return {std::istreambuf_iterator<char>(in), {}};
}

struct FileRow {
    const char* path;
    std::map<int, std::size_t> discs; ///< diameter in hundredths of the file's units → how many are drawn
};
[[maybe_unused]] void PrintTo(const FileRow& row, std::ostream* out) { *out << row.path; }

[[maybe_unused]] std::map<int, std::size_t> discsIn(const std::filesystem::path& path) {
    const auto drawing = readArtwork(bytesOf(path), path.filename().string());
    EXPECT_TRUE(drawing) << describe(drawing.error());
    std::map<int, std::size_t> discs;
    if (drawing)
        for (const Disc& disc : drawing->discs) ++discs[static_cast<int>(std::lround(200 * disc.radius))];
    return discs;
}

[[maybe_unused]] std::string nameOfRow(const testing::TestParamInfo<FileRow>& tested) {
    std::string name;
    for (const char c : std::filesystem::path(tested.param.path).stem().string())
        if (std::isalnum(static_cast<unsigned char>(c)) != 0) name.push_back(c);
    return name;
}

#ifdef W3C_FOLDER
// W3C SVG 1.1 test suite as Debian's librsvg2-tests installs it; the numbers of circle elements and their
// radii were read with an XML reader, each expanded by hand where a file scales or repeats them.
class W3cFiles : public testing::TestWithParam<FileRow> {};
TEST_P(W3cFiles, areCounted) {
    EXPECT_EQ(discsIn(std::filesystem::path(W3C_FOLDER) / GetParam().path), GetParam().discs);
}
INSTANTIATE_TEST_SUITE_P(Svg11, W3cFiles,
                         testing::Values(FileRow{"types-basic-02-f.svg", {{8000, 12}}},
                                         FileRow{"painting-stroke-08-t.svg", {{1700, 11}}},
                                         FileRow{"filters-light-05-f.svg", {{3000, 12}}},
                                         FileRow{"filters-overview-01-b.svg", {{5000, 18}}},
                                         FileRow{"shapes-intro-02-f.svg", {{10000, 4}}}),
                         nameOfRow);

// 39 circles that come from an entity of the file itself: 13 faces of radius 10 with two eyes of radius 1.5
// each, in viewports that scale them; face to eye stays 20 to 3.
TEST(W3cEntities, areUnfolded) {
    const auto discs = discsIn(std::filesystem::path(W3C_FOLDER) / "coords-viewattr-01-b.svg");
    std::size_t faces = 0, eyes = 0;
    for (const auto& [diameter, count] : discs) (diameter > 1000 ? faces : eyes) += count;
    EXPECT_EQ(faces, 13);
    EXPECT_EQ(eyes, 26);
}
#endif

#ifdef LIBRECAD_FOLDER
// Debian's librecad-data; circles counted with ezdxf. pe25 also holds 131 lines, 56 ellipses and 16
// polylines.
class CadFiles : public testing::TestWithParam<FileRow> {};
TEST_P(CadFiles, areCounted) {
    EXPECT_EQ(discsIn(std::filesystem::path(LIBRECAD_FOLDER) / GetParam().path), GetParam().discs);
}
INSTANTIATE_TEST_SUITE_P(Librecad, CadFiles,
                         testing::Values(FileRow{"elektro/power/pe25.dxf", {{149, 20}}},
                                         FileRow{"elektro/motor/gen2.dxf", {{100, 9}, {2600, 1}}}),
                         nameOfRow);

TEST(CadLibrary, isReadWithoutARefusal) {
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(LIBRECAD_FOLDER)) {
        if (entry.path().extension() != ".dxf") continue;
        ++files;
        const auto drawing = readArtwork(bytesOf(entry.path()), entry.path().filename().string());
        EXPECT_TRUE(drawing) << entry.path() << ": " << describe(drawing.error());
    }
    EXPECT_GT(files, 1000);
}
#endif

#ifdef OPENCLIPART_FOLDER
// Debian's openclipart-svg (public domain): dots that were counted in a picture of each file by eye and by
// rsvg-convert with connected components where they stand apart.
class ClipArt : public testing::TestWithParam<FileRow> {};
TEST_P(ClipArt, isCounted) {
    std::size_t all = 0;
    for (const auto& [diameter, count] : discsIn(std::filesystem::path(OPENCLIPART_FOLDER) / GetParam().path))
        all += count;
    EXPECT_EQ(all, GetParam().discs.begin()->second);
}
INSTANTIATE_TEST_SUITE_P(Dots, ClipArt,
                         testing::Values(FileRow{"tools/pansement_jean_victor_ba_.svg", {{0, 196}}},
                                         FileRow{"recreation/toys/boomerang_01.svg", {{0, 36}}},
                                         FileRow{"decorations/wreath_of_evergreen_with_red_berries_01.svg", {{0, 51}}},
                                         FileRow{"geography/romanian_map_with_count_01.svg", {{0, 47}}}),
                         nameOfRow);

TEST(ClipArtCollection, isReadWithoutARefusal) {
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(OPENCLIPART_FOLDER)) {
        if (entry.path().extension() != ".svg" || !entry.is_regular_file()) continue;
        ++files;
        const auto drawing = readArtwork(bytesOf(entry.path()), entry.path().filename().string());
        EXPECT_TRUE(drawing) << entry.path() << ": " << describe(drawing.error());
    }
    EXPECT_GT(files, 5000);
}
#endif

/// A file of our own that goes with the test.
class Scratch {
  public:
    explicit Scratch(const char* suffix)
        : m_path(std::filesystem::temp_directory_path() / fmt::format("artwork_{}_{}", ::getpid(), suffix)) {}
    ~Scratch() {
        std::error_code ignored;
        std::filesystem::remove(m_path, ignored);
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    std::string text() const { return m_path.string(); }

  private:
    std::filesystem::path m_path;
};

[[maybe_unused]] std::string outputOf(const std::string& command) {
    std::string text;
    FILE* pipe = ::popen(command.c_str(), "r");
    EXPECT_NE(pipe, nullptr);
    if (pipe == nullptr) return text;
    char buffer[4096];
    while (const auto size = std::fread(buffer, 1, sizeof buffer, pipe)) text.append(buffer, size);
    EXPECT_EQ(::pclose(pipe), 0) << command;
    return text;
}

#ifdef EZDXF_PYTHON
TEST(DxfOfAnotherWriter, holdsTheHolesItSays) {
    for (const char* version : {"R12", "R2000", "R2010"}) {
        for (int seed = 1; seed <= 3; ++seed) {
            SCOPED_TRACE(fmt::format("{} seed {}", version, seed));
            const Scratch file("made.dxf");
            const auto said =
                outputOf(fmt::format("{} {} {} {} {}", EZDXF_PYTHON, MAKE_DXF, seed, version, file.text()));
            const auto expected = nlohmann::json::parse(said);
            const auto drawing = readArtwork(bytesOf(file.text()), "made.dxf");
            ASSERT_TRUE(drawing) << describe(drawing.error());
            // $INSUNITS came after R12.
            EXPECT_EQ(drawing->millimetresPerUnit.value_or(0), version == std::string_view("R12") ? 0 : 1);
            std::map<std::string, std::size_t> discs;
            for (const Disc& disc : drawing->discs) ++discs[std::to_string(std::lround(200 * disc.radius))];
            EXPECT_EQ(nlohmann::json(discs), expected);
        }
    }
}
#endif

#ifdef RSVG_CONVERT
/// Connected areas of ink in a plain grey map, four neighbours: what an eye would count.
std::size_t islandsIn(const std::string& pgm) {
    int width = 0, height = 0, top = 0, start = 0;
    if (std::sscanf(pgm.c_str(), "P5 %d %d %d%n", &width, &height, &top, &start) != 3) return 0;
    const auto w = static_cast<std::size_t>(width), h = static_cast<std::size_t>(height);
    std::vector<char> ink(w * h);
    for (std::size_t i = 0; i < ink.size(); ++i)
        ink[i] = static_cast<unsigned char>(pgm[static_cast<std::size_t>(start) + 1 + i]) < 128;
    std::size_t islands = 0;
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < ink.size(); ++i) {
        if (ink[i] == 0) continue;
        ++islands;
        open.assign(1, i);
        ink[i] = 0;
        while (!open.empty()) {
            const std::size_t at = open.back();
            open.pop_back();
            const auto visit = [&](std::size_t next) {
                if (ink[next] == 0) return;
                ink[next] = 0;
                open.push_back(next);
            };
            if (at % w > 0) visit(at - 1);
            if (at % w + 1 < w) visit(at + 1);
            if (at >= w) visit(at - w);
            if (at + w < ink.size()) visit(at + w);
        }
    }
    return islands;
}

/// One hole around the origin in one of the ways drawing programs have.
std::string randomHole(std::mt19937_64& random, double r, int number) {
    switch (random() % 9) {
    case 0: return fmt::format("<circle r='{}'/>", r);
    case 1: return fmt::format("<ellipse transform='scale(2 .5)' rx='{}' ry='{}'/>", r / 2, r * 2);
    case 2: return fmt::format("<path d='M{0} 0A{1} {1} 0 1 1 {1} 0A{1} {1} 0 1 1 {0} 0z'/>", -r, r);
    case 3: return fmt::format("<rect x='{0}' y='{0}' width='{1}' height='{1}' ry='{2}'/>", -r, 2 * r, r);
    case 4: return fmt::format("<use href='#unit' transform='scale({})'/>", r);
    case 5: return fmt::format("<use href='#sym' x='{0}' y='{0}' width='{1}' height='{1}'/>", -r, 2 * r);
    case 6:
        return fmt::format("<svg x='{0}' y='{0}' width='{1}' height='{1}' viewBox='-1 -1 2 2'><circle r='1'/></svg>",
                           -r, 2 * r);
    case 7: {
        std::string polygon;
        for (int i = 0; i < 32; ++i)
            polygon += fmt::format("{},{} ", r * std::cos(i * 0.19634954), r * std::sin(i * 0.19634954));
        return fmt::format("<polygon points='{}'/>", polygon);
    }
    default:
        return fmt::format("<g display='none'><circle r='9'/></g><circle id='c{}' class='small{}' r='{}'/>", number,
                           number, r);
    }
}

TEST(RandomDrawings, holdAsManyDiscsAsTheirPicture) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 12; ++round) {
        const int across = 6 + static_cast<int>(random() % 10);
        std::string svg =
            fmt::format("<svg xmlns='http://www.w3.org/2000/svg' width='{0}mm' height='{0}mm' viewBox='0 0 {0} {0}'>"
                        "<style>.gone{{display:none}} g.in circle{{fill:#123}}</style><defs><circle id='unit' "
                        "r='1'/><symbol id='sym' "
                        "viewBox='0 0 4 4'><circle cx='2' cy='2' r='2'/></symbol><clipPath id='k'><circle "
                        "r='3'/></clipPath></defs>",
                        across * 6);
        std::size_t drawn = 0;
        const double diameters[] = {2.0, 2.8, 3.1, 3.9, 4.7};
        for (int i = 0; i < across * across; ++i) {
            if (random() % 5 == 0) continue;
            const double x = 6 * (i % across) + 3;
            const double y = 6 * (i / across) + 3;
            const int turn = static_cast<int>(random() % 360);
            const bool isGone = random() % 8 == 0;
            drawn += !isGone;
            svg += fmt::format("<g class='{}' transform='translate({} {}) rotate({})'>{}</g>", isGone ? "gone" : "in",
                               x, y, turn, randomHole(random, diameters[random() % 5] / 2, i));
        }
        svg += "</svg>";
        const Scratch file("random.svg"), page("random.pdf"), grey("random.pgm");
        std::ofstream(file.text()) << svg;
        outputOf(fmt::format("{} -f pdf -o {} {}", RSVG_CONVERT, page.text(), file.text()));
        outputOf(fmt::format("{} -gray -r 288 -singlefile {} {}", PDF_TO_PPM, page.text(),
                             std::filesystem::path(grey.text()).replace_extension().string()));
        const auto drawing = readArtwork(svg, "random.svg");
        ASSERT_TRUE(drawing) << describe(drawing.error());
        CountOptions options;
        options.millimetresPerUnit = *drawing->millimetresPerUnit;
        const auto counted = countStones(*drawing, options, "random.svg");
        ASSERT_TRUE(counted) << describe(counted.error());
        EXPECT_EQ(counted->stones.size(), islandsIn(bytesOf(grey.text()))) << svg;
        EXPECT_EQ(counted->stones.size(), drawn);
        EXPECT_EQ(counted->collisions, 0);
    }
}
#endif

} // namespace
} // namespace sp::artwork

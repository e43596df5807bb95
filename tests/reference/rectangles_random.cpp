// SPDX-License-Identifier: MIT
#include "tests/reference/rectangles_random.h"

#include <algorithm>
#include <array>
#include <random>

namespace sp::reference {

using units::Length;

namespace {

class Draw {
  public:
    explicit Draw(std::uint64_t seed)
        : m_engine(seed * 0x9E3779B97F4A7C15ULL + 977) {}
    std::int64_t from(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(m_engine() % static_cast<std::uint64_t>(high - low + 1));
    }

  private:
    std::mt19937_64 m_engine;
};

Length millimetres(std::int64_t mm) { return Length::fromNanometres(mm * units::kNanometresPerMillimetre); }

layout::MixedPiece piece(std::size_t number, std::int64_t width, std::int64_t height) {
    return {std::to_string(number + 1), {millimetres(width), millimetres(height)}, 1};
}

} // namespace

CutSheet cutSheet(std::int64_t width, std::int64_t height, std::size_t parts, std::uint64_t seed) {
    Draw draw(seed);
    std::vector<std::pair<std::int64_t, std::int64_t>> cut{{width, height}};
    while (cut.size() < parts) {
        const auto largest = std::max_element(cut.begin(), cut.end(), [](const auto& a, const auto& b) {
            return a.first * a.second < b.first * b.second;
        });
        const auto part = *largest;
        cut.erase(largest);
        const bool across = part.first > part.second || (part.first == part.second && draw.from(0, 1) == 0);
        const std::int64_t side = across ? part.first : part.second;
        const std::int64_t at =
            draw.from(std::max<std::int64_t>(1, side / 5), side - std::max<std::int64_t>(1, side / 5));
        cut.push_back(across ? std::pair(at, part.second) : std::pair(part.first, at));
        cut.push_back(across ? std::pair(side - at, part.second) : std::pair(part.first, side - at));
    }
    for (std::size_t i = cut.size(); i > 1; --i)
        std::swap(cut[i - 1], cut[static_cast<std::size_t>(draw.from(0, static_cast<std::int64_t>(i) - 1))]);
    CutSheet out{millimetres(width), millimetres(height), {}};
    for (std::size_t i = 0; i < cut.size(); ++i)
        out.pieces.push_back(draw.from(0, 1) == 0 ? piece(i, cut[i].first, cut[i].second)
                                                  : piece(i, cut[i].second, cut[i].first));
    return out;
}

BinProblem publishedBin(int kind, std::size_t pieces, std::uint64_t seed) {
    Draw draw(seed * 100 + static_cast<std::uint64_t>(kind));
    constexpr std::array<std::int64_t, 10> kBins{10, 30, 40, 100, 100, 300, 100, 100, 100, 100};
    constexpr std::array<std::int64_t, 6> kMost{10, 10, 35, 35, 100, 100};
    const auto k = static_cast<std::size_t>(kind - 1);
    const std::int64_t bin = kBins[k];
    BinProblem out{{millimetres(bin), millimetres(bin)}, {}};
    for (std::size_t i = 0; i < pieces; ++i) {
        if (kind <= 6) {
            const std::int64_t w = draw.from(1, kMost[k]);
            out.pieces.push_back(piece(i, w, draw.from(1, kMost[k])));
            continue;
        }
        // Wide, high, large and small pieces; a class takes its own kind with 70 %, each of the others with 10 %.
        const std::int64_t roll = draw.from(1, 10);
        std::int64_t type = kind - 6;
        if (roll > 7) type = (kind - 7 + roll - 7) % 4 + 1;
        const std::int64_t half = bin / 2;
        const std::int64_t long3 = 2 * bin / 3;
        const std::int64_t w = type == 1   ? draw.from(long3, bin)
                               : type == 3 ? draw.from(half, bin)
                                           : draw.from(1, half);
        const std::int64_t h = type == 2   ? draw.from(long3, bin)
                               : type == 3 ? draw.from(half, bin)
                                           : draw.from(1, half);
        out.pieces.push_back(piece(i, w, h));
    }
    return out;
}

} // namespace sp::reference

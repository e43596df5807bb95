// SPDX-License-Identifier: MIT
#include "tests/reference/rectangles_random.h"

#include "tests/reference/whole_millimetres.h"

#include <algorithm>
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

} // namespace sp::reference

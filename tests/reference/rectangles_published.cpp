// SPDX-License-Identifier: MIT
#include "tests/reference/rectangles_published.h"

#include "tests/reference/whole_millimetres.h"
#include "tests/support/test_data.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace sp::reference {

using units::Length;

namespace {

/// The lines of a file that say something, each ready to be read.
std::vector<std::istringstream> linesOf(const char* name) {
    std::ifstream in(test::dataFile("rectangles/" + std::string(name)));
    std::vector<std::istringstream> lines;
    for (std::string line; std::getline(in, line);)
        if (!line.empty() && line.front() != '#') lines.emplace_back(line);
    if (lines.empty()) throw std::runtime_error(std::string("no published rectangles in ") + name);
    return lines;
}

/// ": 3x4 5x6": one piece each.
std::vector<layout::MixedPiece> piecesOf(std::istringstream& line) {
    std::vector<layout::MixedPiece> pieces;
    char mark = 0;
    line >> mark;
    std::int64_t width = 0;
    std::int64_t height = 0;
    while (line >> width >> mark >> height)
        pieces.push_back({std::to_string(pieces.size() + 1), {millimetres(width), millimetres(height)}, 1});
    return pieces;
}

} // namespace

std::vector<PublishedStrip> publishedStrips() {
    std::vector<PublishedStrip> strips;
    for (auto& line : linesOf("strips.txt")) {
        PublishedStrip strip;
        std::int64_t width = 0;
        std::int64_t length = 0;
        line >> strip.name >> width >> length;
        strip.width = millimetres(width);
        strip.leastLength = millimetres(length);
        strip.pieces = piecesOf(line);
        strips.push_back(std::move(strip));
    }
    return strips;
}

std::vector<PublishedBins> publishedBins() {
    std::vector<PublishedBins> bins;
    for (auto& line : linesOf("bins.txt")) {
        if (line.peek() == 'b') {
            std::string word;
            int kind = 0;
            int pieces = 0;
            line >> word >> kind >> pieces >> bins.emplace_back().fewest;
            continue;
        }
        PublishedBin bin;
        std::int64_t width = 0;
        std::int64_t height = 0;
        line >> bin.kind >> bin.pieces >> bin.number >> width >> height;
        bin.sheet = {millimetres(width), millimetres(height)};
        bin.laid = piecesOf(line);
        bins.back().problems.push_back(std::move(bin));
    }
    return bins;
}

} // namespace sp::reference

// SPDX-License-Identifier: MIT
// Draws what the program sees in a cut file or drawing as an SVG, to be held beside what another program draws of the
// file: drawn_again FILE OUT.svg. Areas and lines as they are told apart by colour; discs are areas.
#include "core/artwork/artwork_file.h"
#include "core/artwork/colour_parts.h"

#include <fmt/format.h>

#include <cstdio>
#include <fstream>
#include <iterator>

using namespace sp;

namespace {

std::string pathOf(const std::vector<artwork::Point>& points, bool closed) {
    std::string path;
    for (const artwork::Point p : points) path += fmt::format("{}{:.4f} {:.4f}", path.empty() ? "M" : "L", p.x, p.y);
    return path + (closed ? "Z" : "");
}

std::string drawn(const std::vector<artwork::ColourPart>& parts) {
    artwork::Box box;
    std::string shapes;
    for (const auto& part : parts) {
        const std::string colour = part.colour.starts_with('#') ? part.colour : "#cc66cc";
        std::string path;
        for (const auto& ring : part.region) {
            for (const artwork::Point p : ring) box.add(p);
            path += pathOf(ring, true);
        }
        shapes += fmt::format("<path fill='{}' fill-rule='evenodd' d='{}'/>\n", colour, path);
        for (const auto& line : part.lines) {
            for (const artwork::Point p : line.points) box.add(p);
            shapes += fmt::format("<path fill='none' stroke='{}' stroke-width='1' vector-effect='non-scaling-stroke' "
                                  "d='{}'/>\n",
                                  colour, pathOf(line.points, line.closed));
        }
    }
    return fmt::format("<svg xmlns='http://www.w3.org/2000/svg' width='{0:.4f}' height='{1:.4f}' "
                       "viewBox='{2:.4f} {3:.4f} {0:.4f} {1:.4f}'>\n{4}</svg>\n",
                       box.width(), box.height(), box.left, box.top, shapes);
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::fprintf(stderr, "drawn_again FILE OUT.svg\n");
        return 2;
    }
    std::ifstream in(argv[1], std::ios::binary);
    const auto drawing = artwork::readArtwork(std::string(std::istreambuf_iterator<char>(in), {}), argv[1]);
    if (!drawing) {
        std::fprintf(stderr, "%s\n", describe(drawing.error()).c_str());
        return 1;
    }
    const auto parts = artwork::colourPartsOf(*drawing, drawing->millimetresPerUnit.value_or(1), true, argv[1]);
    if (!parts) {
        std::fprintf(stderr, "%s\n", describe(parts.error()).c_str());
        return 1;
    }
    std::printf("%zu discs, %zu outlines, %zu colours", drawing->discs.size(), drawing->outlines.size(), parts->size());
    for (const auto& [reason, count] : drawing->leftOut) std::printf("; %zu %s", count, describe(reason).c_str());
    std::printf("\n");
    std::ofstream(argv[2]) << drawn(*parts);
    return 0;
}

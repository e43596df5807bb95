// SPDX-License-Identifier: MIT
#include "tests/support/nine_forms.h"

#include <fmt/format.h>

#include <cmath>
#include <iterator>
#include <numbers>

namespace sp::support {

namespace {

struct Hole {
    double x, y, r;
    bool blue;
};

Hole holeAt(std::size_t i, std::size_t perRow) {
    const auto row = i / perRow;
    return {5.0 * static_cast<double>(i % perRow) + 5, 5.0 * static_cast<double>(row) + 5, i % 3 == 0 ? 1.55 : 1.4,
            row % 2 == 0};
}

std::string_view colourOf(const Hole& hole) { return hole.blue ? "#1f3a93" : "#c0392b"; }

std::string arcPath(const Hole& h) {
    return fmt::format("M{:.4f},{:.4f}a{},{} 0 1,0 {},0a{},{} 0 1,0 -{},0z", h.x - h.r, h.y, h.r, h.r, 2 * h.r, h.r,
                       h.r, 2 * h.r);
}

std::string bezierPath(const Hole& h) {
    const double k = h.r * 0.5522847498;
    return fmt::format(
        "M{:.4f} {:.4f}C{:.4f} {:.4f} {:.4f} {:.4f} {:.4f} {:.4f}C{:.4f} {:.4f} {:.4f} {:.4f} {:.4f} {:.4f}"
        "C{:.4f} {:.4f} {:.4f} {:.4f} {:.4f} {:.4f}C{:.4f} {:.4f} {:.4f} {:.4f} {:.4f} {:.4f}Z",
        h.x + h.r, h.y, h.x + h.r, h.y + k, h.x + k, h.y + h.r, h.x, h.y + h.r, h.x - k, h.y + h.r, h.x - h.r, h.y + k,
        h.x - h.r, h.y, h.x - h.r, h.y - k, h.x - k, h.y - h.r, h.x, h.y - h.r, h.x + k, h.y - h.r, h.x + h.r, h.y - k,
        h.x + h.r, h.y);
}

std::string polygonPath(const Hole& h) {
    std::string path;
    for (int i = 0; i < 24; ++i) {
        const double angle = i * std::numbers::pi / 12 + 0.1;
        fmt::format_to(std::back_inserter(path), "{}{:.4f},{:.4f}", i == 0 ? 'M' : 'L', h.x + h.r * std::cos(angle),
                       h.y + h.r * std::sin(angle));
    }
    return path + "Z";
}

std::string drawCompound(std::size_t holes, std::size_t perRow) {
    std::string blue, red;
    for (std::size_t i = 0; i < holes; ++i) {
        const Hole hole = holeAt(i, perRow);
        (hole.blue ? blue : red) += arcPath(hole);
    }
    return fmt::format("<path fill=\"#1f3a93\" d=\"{}\"/><path fill=\"#c0392b\" d=\"{}\"/>", blue, red);
}

std::string element(HoleForm form, const Hole& h) {
    switch (form) {
    case HoleForm::Circle:
        return fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\" fill=\"{}\"/>\n", h.x, h.y, h.r, colourOf(h));
    case HoleForm::Ellipse:
        return fmt::format("<ellipse cx=\"{}\" cy=\"{}\" rx=\"{}\" ry=\"{}\" style=\"fill:{};stroke:none\"/>\n", h.x,
                           h.y, h.r, h.r, colourOf(h));
    case HoleForm::ArcPath: return fmt::format("<path d=\"{}\" fill=\"{}\"/>\n", arcPath(h), colourOf(h));
    case HoleForm::FourBeziers: return fmt::format("<path d=\"{}\" fill=\"{}\"/>\n", bezierPath(h), colourOf(h));
    case HoleForm::Polygon24: return fmt::format("<path d=\"{}\" fill=\"{}\"/>\n", polygonPath(h), colourOf(h));
    case HoleForm::Classes:
        return fmt::format("<circle class=\"hole {} {}\" cx=\"{}\" cy=\"{}\"  r=\"{}\"/>\n", h.blue ? "b" : "r",
                           h.r > 1.5 ? "l" : "s", h.x, h.y, h.r);
    case HoleForm::NestedGroups:
        return fmt::format("<g transform=\"translate({} {})\"><g transform=\"rotate(30) scale(0.5)\"><circle r=\"{}\" "
                           "fill=\"{}\"/></g></g>\n",
                           h.x, h.y, 2 * h.r, colourOf(h));
    case HoleForm::Use:
        return fmt::format("<use xlink:href=\"#{}\" x=\"{}\" y=\"{}\" fill=\"{}\"/>\n", h.r > 1.5 ? "l" : "s", h.x, h.y,
                           colourOf(h));
    case HoleForm::CompoundPath: break;
    }
    return {};
}

} // namespace

std::string_view nameOf(HoleForm form) {
    switch (form) {
    case HoleForm::Circle: return "circle";
    case HoleForm::Ellipse: return "ellipse";
    case HoleForm::ArcPath: return "arc path";
    case HoleForm::FourBeziers: return "four Beziers";
    case HoleForm::Polygon24: return "24-gon";
    case HoleForm::CompoundPath: return "one compound path";
    case HoleForm::Classes: return "classes";
    case HoleForm::NestedGroups: return "nested groups";
    case HoleForm::Use: return "use";
    }
    return "";
}

std::string drawHoles(HoleForm form, std::size_t holes) {
    const auto perRow = static_cast<std::size_t>(std::ceil(std::sqrt(static_cast<double>(holes))));
    const auto side = 5 * (perRow + 2);
    std::string svg =
        fmt::format("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
                    "xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"{}mm\" height=\"{}mm\" "
                    "viewBox=\"0 0 {} {}\">\n",
                    side, side, side, side);
    if (form == HoleForm::Classes) svg += "<style>.b { fill: #1f3a93 } circle.r { fill: #c0392b }</style>\n";
    if (form == HoleForm::Use) svg += "<defs><circle id=\"l\" r=\"1.55\"/><circle id=\"s\" r=\"1.4\"/></defs>\n";
    if (form == HoleForm::CompoundPath)
        svg += drawCompound(holes, perRow);
    else
        for (std::size_t i = 0; i < holes; ++i) svg += element(form, holeAt(i, perRow));
    return svg + "</svg>\n";
}

std::string drawHolesAsDxf(std::size_t holes) {
    const auto perRow = static_cast<std::size_t>(std::ceil(std::sqrt(static_cast<double>(holes))));
    std::string dxf =
        "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n"
        "0\nLAYER\n2\nBLUE\n70\n0\n62\n5\n0\nLAYER\n2\nRED\n70\n0\n62\n1\n0\nENDTAB\n0\nENDSEC\n"
        "0\nSECTION\n2\nENTITIES\n";
    for (std::size_t i = 0; i < holes; ++i) {
        const Hole hole = holeAt(i, perRow);
        fmt::format_to(std::back_inserter(dxf),
                       "  0\nCIRCLE\n  5\n{:X}\n100\nAcDbEntity\n  8\n{}\n100\nAcDbCircle\n 10\n{}\n "
                       "20\n{}\n 30\n0.0\n 40\n{}\n",
                       i + 256, hole.blue ? "BLUE" : "RED", hole.x, hole.y, hole.r);
    }
    return dxf + "0\nENDSEC\n0\nEOF\n";
}

} // namespace sp::support

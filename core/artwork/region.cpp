// SPDX-License-Identifier: MIT
#include "core/artwork/region.h"

#include "core/artwork/messages.h"
#include "core/artwork/region_paths.h"
#include "core/units/length.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace sp::artwork {

namespace {

using ClipperLib::Paths;

constexpr double kArcSteps = 20;
constexpr double kThreadMm = 0.01;
constexpr std::size_t kMaxCorners = 100'000;
constexpr std::size_t kMaxPairs = 60'000'000;
constexpr std::size_t kMaxMeetings = 400'000;

/// Whether edges meet so often that working out their area would take for ever. Sweeps over the boxes of the
/// edges.
bool isTangled(std::span<const Shape> shapes) {
    std::vector<Box> boxes;
    for (const Shape& shape : shapes) {
        for (const auto& ring : shape.rings) {
            for (std::size_t i = 0; i < ring.size(); ++i) {
                Box& box = boxes.emplace_back();
                box.add(ring[i]);
                box.add(ring[(i + 1) % ring.size()]);
            }
        }
    }
    std::sort(boxes.begin(), boxes.end(), [](const Box& a, const Box& b) { return a.left < b.left; });
    std::size_t pairs = 0;
    std::size_t meetings = 0;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        for (std::size_t j = i + 1; j < boxes.size() && boxes[j].left <= boxes[i].right; ++j) {
            meetings += boxes[j].top <= boxes[i].bottom && boxes[i].top <= boxes[j].bottom;
            if (++pairs > kMaxPairs || meetings > kMaxMeetings) return true;
        }
    }
    return false;
}

/// Flat edges stay within half a micrometre of the circle.
int cornersOfCircle(double radius) {
    const double wanted = std::numbers::pi * std::sqrt(radius * 1000);
    return static_cast<int>(std::clamp(std::ceil(wanted), 48.0, 1200.0));
}

std::vector<Point> circle(Point centre, double radius) {
    const int corners = cornersOfCircle(radius);
    std::vector<Point> ring;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * i / corners;
        ring.push_back(centre + Point{radius * std::cos(angle), radius * std::sin(angle)});
    }
    return ring;
}

} // namespace

std::vector<PaintedShape> paintedShapesOf(const Drawing& drawing, double millimetresPerUnit) {
    std::vector<PaintedShape> shapes;
    std::unordered_map<std::uint32_t, std::size_t> filled;
    std::unordered_map<std::string, std::size_t> lines;
    const auto shapeFor = [&](std::uint32_t number, std::uint32_t inkNumber, bool evenOdd) -> PaintedShape& {
        const Ink& ink = drawing.inks[inkNumber];
        const std::size_t place = ink.filled ? filled.try_emplace(number, shapes.size()).first->second
                                             : lines.try_emplace(ink.colour, shapes.size()).first->second;
        if (place == shapes.size()) shapes.push_back({{{}, !ink.filled || evenOdd}, ink.colour, number, ink.filled});
        return shapes[place];
    };
    for (const Outline& outline : drawing.outlines) {
        if (!outline.closed && !drawing.inks[outline.ink].filled) continue;
        PaintedShape& painted = shapeFor(outline.shape, outline.ink, outline.evenOdd);
        painted.shape.evenOdd = painted.shape.evenOdd || outline.evenOdd;
        auto& ring = painted.shape.rings.emplace_back();
        for (const Point p : drawing.pointsOf(outline)) ring.push_back(millimetresPerUnit * p);
    }
    for (const Disc& disc : drawing.discs)
        shapeFor(disc.shape, disc.ink, true)
            .shape.rings.push_back(circle(millimetresPerUnit * disc.centre, millimetresPerUnit * disc.radius));
    std::stable_sort(shapes.begin(), shapes.end(),
                     [](const PaintedShape& a, const PaintedShape& b) { return a.number < b.number; });
    return shapes;
}

std::vector<Shape> shapesOf(const Drawing& drawing, double millimetresPerUnit) {
    std::vector<Shape> shapes;
    Shape lines;
    lines.evenOdd = true;
    for (PaintedShape& painted : paintedShapesOf(drawing, millimetresPerUnit)) {
        if (painted.filled)
            shapes.push_back(std::move(painted.shape));
        else
            std::move(painted.shape.rings.begin(), painted.shape.rings.end(), std::back_inserter(lines.rings));
    }
    if (!lines.rings.empty()) shapes.push_back(std::move(lines));
    return shapes;
}

std::vector<Line> linesOf(const Drawing& drawing, double millimetresPerUnit, bool closedToo) {
    std::vector<Line> lines;
    for (const Outline& outline : drawing.outlines) {
        const Ink& ink = drawing.inks[outline.ink];
        if (ink.filled || (outline.closed && !closedToo)) continue;
        Line& line = lines.emplace_back(Line{{}, ink.colour, outline.shape, outline.closed});
        for (const Point p : drawing.pointsOf(outline)) line.points.push_back(millimetresPerUnit * p);
    }
    for (const Disc& disc : drawing.discs) {
        const Ink& ink = drawing.inks[disc.ink];
        if (!ink.filled && closedToo)
            lines.push_back({circle(millimetresPerUnit * disc.centre, millimetresPerUnit * disc.radius), ink.colour,
                             disc.shape, true});
    }
    return lines;
}

std::vector<Shape> shapesAlong(std::span<const Line> lines) {
    std::vector<Shape> shapes;
    for (const Line& line : lines) shapes.push_back({{line.points}, true});
    return shapes;
}

base::Result<void> checkCorners(const Drawing& drawing, double millimetresPerUnit, std::string_view fileName) {
    std::size_t corners = 0;
    for (const Outline& outline : drawing.outlines)
        if (outline.closed || drawing.inks[outline.ink].filled) corners += outline.size;
    for (const Disc& disc : drawing.discs)
        corners += static_cast<std::size_t>(cornersOfCircle(millimetresPerUnit * disc.radius));
    if (corners > kMaxCorners) return base::fail(Fault::ShapesTooInvolved, std::string(fileName), fileName, corners);
    return {};
}

base::Result<void> checkInvolved(std::span<const Shape> shapes, std::string_view fileName) {
    std::size_t corners = 0;
    Box box;
    for (const Shape& shape : shapes) {
        for (const auto& ring : shape.rings) {
            corners += ring.size();
            for (const Point p : ring) box.add(p);
        }
    }
    const double reach = std::max({-box.left, -box.top, box.right, box.bottom});
    if (corners > 0 && !(reach <= units::kMaxLength.millimetres()))
        return base::fail(Fault::BeyondAKilometre, std::string(fileName), fileName);
    if (corners > kMaxCorners || isTangled(shapes))
        return base::fail(Fault::ShapesTooInvolved, std::string(fileName), fileName, corners);
    return {};
}

base::Result<Rings> regionOf(std::span<const Shape> shapes, std::string_view fileName) {
    if (const auto bearable = checkInvolved(shapes, fileName); !bearable) return base::fail(bearable.error());
    Paths region;
    try {
        ClipperLib::Clipper whole;
        for (const Shape& shape : shapes) { whole.AddPaths(simplePaths(shape), ClipperLib::ptSubject, true); }
        whole.Execute(ClipperLib::ctUnion, region, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
        ClipperLib::CleanPolygons(region, kCleanSteps);
    } catch (const ClipperLib::clipperException& trouble) {
        return base::fail(Fault::AreaNotFound, std::string(fileName), fileName, trouble.what());
    }
    Rings rings = toRings(region);
    if (rings.empty()) return base::fail(Fault::NoArea, std::string(fileName), fileName);
    return rings;
}

Rings insetBy(const Rings& region, double distance) {
    ClipperLib::ClipperOffset offset(2.0, kArcSteps);
    offset.AddPaths(toPaths(region), ClipperLib::jtRound, ClipperLib::etClosedPolygon);
    Paths inner;
    offset.Execute(inner, -distance * kPerMillimetre);
    ClipperLib::CleanPolygons(inner, kCleanSteps);
    return toRings(inner);
}

namespace {

Paths around(std::span<const Line> lines, double distance) {
    ClipperLib::ClipperOffset offset(2.0, kArcSteps);
    for (const Line& line : lines)
        offset.AddPath(toPath(line.points), ClipperLib::jtRound,
                       line.closed ? ClipperLib::etClosedLine : ClipperLib::etOpenRound);
    Paths band;
    offset.Execute(band, distance * kPerMillimetre);
    return band;
}

Rings without(const Rings& region, const Paths& taken) {
    ClipperLib::Clipper clipper;
    clipper.AddPaths(toPaths(region), ClipperLib::ptSubject, true);
    clipper.AddPaths(taken, ClipperLib::ptClip, true);
    Paths left;
    clipper.Execute(ClipperLib::ctDifference, left, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    ClipperLib::CleanPolygons(left, kCleanSteps);
    return toRings(left);
}

} // namespace

Rings besideLines(const Rings& region, std::span<const Line> lines, double distance) {
    if (region.empty() || lines.empty()) return region;
    return without(region, around(lines, distance));
}

std::vector<Line> linesBeside(std::vector<Line> lines, std::span<const Line> others, double distance) {
    if (lines.empty() || others.empty()) return lines;
    return linesOutside(std::move(lines), around(others, distance));
}

std::vector<Rings> narrowPartsOf(const Rings& region, double radius, double longerThan) {
    ClipperLib::ClipperOffset offset(2.0, kArcSteps);
    offset.AddPaths(toPaths(insetBy(region, radius)), ClipperLib::jtRound, ClipperLib::etClosedPolygon);
    Paths reached;
    // A little more, so that no threads are left along the edge.
    offset.Execute(reached, (radius + kThreadMm) * kPerMillimetre);
    std::vector<Rings> parts;
    for (Rings& part : piecesOf(without(region, reached)))
        if (perimeterOf(part) / 2 > longerThan) parts.push_back(std::move(part));
    return parts;
}

double areaOf(const Rings& region) {
    double twice = 0;
    for (const auto& ring : region) {
        Point before = ring.back() - ring.front();
        for (const Point p : ring) {
            const Point now = p - ring.front();
            twice += cross(before, now);
            before = now;
        }
    }
    return std::abs(twice) / 2;
}

namespace {

double signedArea(const std::vector<Point>& ring) {
    double twice = 0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        twice += cross(ring[i] - ring.front(), ring[(i + 1) % ring.size()] - ring.front());
    return twice / 2;
}

Box boxOf(const std::vector<Point>& ring) {
    Box box;
    for (const Point p : ring) box.add(p);
    return box;
}

bool isInside(Point p, const std::vector<Point>& ring) {
    bool inside = false;
    for (std::size_t i = 0, last = ring.size() - 1; i < ring.size(); last = i++) {
        const Point a = ring[i], b = ring[last];
        if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) inside = !inside;
    }
    return inside;
}

} // namespace

std::vector<Rings> piecesOf(const Rings& region) {
    constexpr std::size_t kMaxRings = 2'000;
    if (region.size() < 2 || region.size() > kMaxRings) return {region};
    std::vector<double> areas;
    std::vector<Box> boxes;
    for (const auto& ring : region) {
        areas.push_back(signedArea(ring));
        boxes.push_back(boxOf(ring));
    }
    // Holes go round the other way than what they are cut from; the largest ring is no hole.
    const bool outerSign =
        *std::max_element(areas.begin(), areas.end(), [](double a, double b) { return std::abs(a) < std::abs(b); }) > 0;
    std::vector<Rings> pieces;
    std::vector<std::size_t> outers;
    for (std::size_t i = 0; i < region.size(); ++i)
        if ((areas[i] > 0) == outerSign) {
            outers.push_back(i);
            pieces.push_back({region[i]});
        }
    for (std::size_t hole = 0; hole < region.size(); ++hole) {
        if ((areas[hole] > 0) == outerSign) continue;
        const Point corner = region[hole].front();
        std::size_t around = 0;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < outers.size(); ++i) {
            const Box& box = boxes[outers[i]];
            const double area = std::abs(areas[outers[i]]);
            const bool isNear =
                corner.x >= box.left && corner.x <= box.right && corner.y >= box.top && corner.y <= box.bottom;
            if (!isNear || area >= least || !isInside(corner, region[outers[i]])) continue;
            around = i;
            least = area;
        }
        pieces[around].push_back(region[hole]);
    }
    return pieces;
}

double perimeterOf(const Rings& region) {
    double length = 0;
    for (const auto& ring : region)
        for (std::size_t i = 0; i < ring.size(); ++i) length += distance(ring[i], ring[(i + 1) % ring.size()]);
    return length;
}

} // namespace sp::artwork

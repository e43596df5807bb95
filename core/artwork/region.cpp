// SPDX-License-Identifier: MIT
#include "core/artwork/region.h"

#include "core/artwork/messages.h"
#include "core/units/length.h"

#include <polyclipping/clipper.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace sp::artwork {

namespace {

using ClipperLib::Path;
using ClipperLib::Paths;

constexpr double kPerMillimetre = 100'000; // steps of 10 nm
constexpr double kCleanSteps = 20;         // corners that bend less are dropped
constexpr double kArcSteps = 20;
constexpr std::size_t kMaxCorners = 100'000;
constexpr std::size_t kMaxPairs = 60'000'000;
constexpr std::size_t kMaxMeetings = 400'000;

Path toPath(const std::vector<Point>& ring) {
    Path path;
    path.reserve(ring.size());
    for (const Point p : ring)
        path.emplace_back(std::llround(p.x * kPerMillimetre), std::llround(p.y * kPerMillimetre));
    return path;
}

Paths toPaths(const Rings& rings) {
    Paths paths;
    for (const auto& ring : rings) paths.push_back(toPath(ring));
    return paths;
}

Rings toRings(const Paths& paths) {
    Rings rings;
    for (const Path& path : paths) {
        if (path.size() < 3) continue;
        auto& ring = rings.emplace_back();
        ring.reserve(path.size());
        for (const auto& p : path)
            ring.push_back({static_cast<double>(p.X) / kPerMillimetre, static_cast<double>(p.Y) / kPerMillimetre});
    }
    return rings;
}

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

std::vector<Point> circle(Point centre, double radius) {
    // Flat edges stay within half a micrometre of the circle.
    const double wanted = std::numbers::pi * std::sqrt(radius * 1000);
    const int corners = static_cast<int>(std::clamp(std::ceil(wanted), 48.0, 1200.0));
    std::vector<Point> ring;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * i / corners;
        ring.push_back(centre + Point{radius * std::cos(angle), radius * std::sin(angle)});
    }
    return ring;
}

} // namespace

std::vector<Shape> shapesOf(const Drawing& drawing, double millimetresPerUnit) {
    std::vector<Shape> shapes;
    Shape lines;
    lines.evenOdd = true;
    std::unordered_map<std::uint32_t, std::size_t> known;
    const auto shapeFor = [&](std::uint32_t number, std::uint32_t ink, bool evenOdd) -> Shape& {
        if (!drawing.inks[ink].filled) return lines;
        const auto [found, isNew] = known.try_emplace(number, shapes.size());
        if (isNew) shapes.push_back({{}, evenOdd});
        return shapes[found->second];
    };
    for (const Outline& outline : drawing.outlines) {
        if (!outline.closed && !drawing.inks[outline.ink].filled) continue;
        Shape& shape = shapeFor(outline.shape, outline.ink, outline.evenOdd);
        shape.evenOdd = shape.evenOdd || outline.evenOdd;
        auto& ring = shape.rings.emplace_back();
        for (const Point p : drawing.pointsOf(outline)) ring.push_back(millimetresPerUnit * p);
    }
    for (const Disc& disc : drawing.discs)
        shapeFor(disc.shape, disc.ink, true)
            .rings.push_back(circle(millimetresPerUnit * disc.centre, millimetresPerUnit * disc.radius));
    if (!lines.rings.empty()) shapes.push_back(std::move(lines));
    return shapes;
}

base::Result<Rings> regionOf(std::span<const Shape> shapes, std::string_view fileName) {
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
    Paths region;
    try {
        ClipperLib::Clipper whole;
        for (const Shape& shape : shapes) {
            Paths clean;
            ClipperLib::SimplifyPolygons(toPaths(shape.rings), clean,
                                         shape.evenOdd ? ClipperLib::pftEvenOdd : ClipperLib::pftNonZero);
            whole.AddPaths(clean, ClipperLib::ptSubject, true);
        }
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

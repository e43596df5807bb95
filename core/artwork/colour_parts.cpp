// SPDX-License-Identifier: MIT
#include "core/artwork/colour_parts.h"

#include "core/artwork/region_paths.h"

#include <algorithm>
#include <unordered_map>

namespace sp::artwork {

namespace {

using ClipperLib::Paths;

constexpr std::size_t kMaxClippedCorners = 20'000'000; ///< corners looked at, counting each time
constexpr double kOddDegrees = 37.123457;
constexpr double kMinRingMm2 = 0.01; ///< slivers where edges were drawn a hair apart

Paths joined(const Paths& a, const Paths& b) {
    if (a.empty()) return b;
    ClipperLib::Clipper clipper;
    clipper.AddPaths(a, ClipperLib::ptSubject, true);
    clipper.AddPaths(b, ClipperLib::ptSubject, true);
    Paths both;
    clipper.Execute(ClipperLib::ctUnion, both, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    return both;
}

Paths difference(const Paths& from, const Paths& taken) {
    ClipperLib::Clipper clipper;
    clipper.AddPaths(from, ClipperLib::ptSubject, true);
    clipper.AddPaths(taken, ClipperLib::ptClip, true);
    Paths left;
    clipper.Execute(ClipperLib::ctDifference, left, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    return left;
}

std::size_t cornersOf(const Paths& paths) {
    std::size_t corners = 0;
    for (const auto& path : paths) corners += path.size();
    return corners;
}

/// A line, or shapes of one colour with nothing between them.
struct PaintLayer {
    std::string colour;
    std::uint32_t number = 0;
    std::vector<Shape> shapes;
    std::vector<Line> lines;
};

std::vector<PaintLayer> paintLayersOf(const Drawing& drawing, double scale, bool withLines) {
    auto painted = paintedShapesOf(drawing, scale);
    const bool hasFilled = std::any_of(painted.begin(), painted.end(), [](const auto& shape) { return shape.filled; });
    std::vector<PaintLayer> layers;
    if (hasFilled)
        std::erase_if(painted, [](const auto& shape) { return !shape.filled; });
    else
        std::stable_sort(painted.begin(), painted.end(), [](const auto& a, const auto& b) {
            const auto sizeOf = [](const PaintedShape& shape) {
                Box box;
                for (const auto& ring : shape.shape.rings)
                    for (const Point p : ring) box.add(p);
                return box.width() * box.height();
            };
            return sizeOf(a) > sizeOf(b);
        });
    for (auto& shape : painted) layers.push_back({std::move(shape.colour), shape.number, {std::move(shape.shape)}, {}});
    for (auto& line : linesOf(drawing, scale, hasFilled))
        if (withLines || line.closed) layers.push_back({line.colour, line.number, {}, {std::move(line)}});
    // Lines of a cut file come after its areas, on top.
    if (hasFilled)
        std::stable_sort(layers.begin(), layers.end(),
                         [](const auto& a, const auto& b) { return a.number < b.number; });
    std::vector<PaintLayer> runs;
    for (auto& layer : layers) {
        if (!runs.empty() && runs.back().colour == layer.colour && runs.back().shapes.empty() == layer.shapes.empty()) {
            std::move(layer.shapes.begin(), layer.shapes.end(), std::back_inserter(runs.back().shapes));
            std::move(layer.lines.begin(), layer.lines.end(), std::back_inserter(runs.back().lines));
        } else {
            runs.push_back(std::move(layer));
        }
    }
    return runs;
}

base::Result<void> checkLayers(const std::vector<PaintLayer>& layers, std::string_view fileName) {
    std::vector<Shape> all;
    for (const PaintLayer& layer : layers) {
        all.insert(all.end(), layer.shapes.begin(), layer.shapes.end());
        auto lines = shapesAlong(layer.lines);
        std::move(lines.begin(), lines.end(), std::back_inserter(all));
    }
    return checkInvolved(all, fileName);
}

Rings cleanRings(const Paths& visible) {
    Paths region;
    ClipperLib::SimplifyPolygons(visible, region, ClipperLib::pftNonZero);
    ClipperLib::CleanPolygons(region, kCleanSteps);
    Rings rings = toRings(region);
    std::erase_if(rings, [](const auto& ring) { return areaOf({ring}) < kMinRingMm2; });
    return rings;
}

} // namespace

std::vector<Line> linesOutside(std::vector<Line> lines, const Paths& taken) {
    if (taken.empty()) return lines;
    // The library loses level lines; turned by some angle no line of a drawing is level.
    const Matrix turn = Matrix::rotation(kOddDegrees);
    const Matrix back = Matrix::rotation(-kOddDegrees);
    const auto turned = [](const ClipperLib::Path& path, const Matrix& matrix) {
        auto points = toPoints(path);
        for (Point& p : points) p = matrix(p);
        return points;
    };
    Paths clip;
    for (const auto& path : taken) clip.push_back(toPath(turned(path, turn)));
    std::vector<Line> left;
    for (Line& line : lines) {
        auto path = toPath(line.points);
        if (line.closed) path.push_back(path.front());
        ClipperLib::Clipper clipper;
        clipper.AddPath(toPath(turned(path, turn)), ClipperLib::ptSubject, false);
        clipper.AddPaths(clip, ClipperLib::ptClip, true);
        ClipperLib::PolyTree tree;
        clipper.Execute(ClipperLib::ctDifference, tree, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
        Paths parts;
        ClipperLib::OpenPathsFromPolyTree(tree, parts);
        const auto lengthOf = [](const ClipperLib::Path& part) {
            double length = 0;
            const auto points = toPoints(part);
            for (std::size_t i = 1; i < points.size(); ++i) length += distance(points[i - 1], points[i]);
            return length;
        };
        double sum = 0;
        for (const auto& part : parts) sum += lengthOf(part);
        if (sum > lengthOf(path) * (1 - 1e-6)) { // nothing was taken: as it was drawn, however the library cuts it up
            left.push_back(std::move(line));
            continue;
        }
        for (const auto& part : parts)
            if (part.size() > 1) left.push_back({turned(part, back), line.colour, line.number, false});
    }
    return left;
}

base::Result<std::vector<ColourPart>> colourPartsOf(const Drawing& drawing, double millimetresPerUnit, bool withLines,
                                                    std::string_view fileName) {
    if (const auto few = checkCorners(drawing, millimetresPerUnit, fileName); !few) return base::fail(few.error());
    auto layers = paintLayersOf(drawing, millimetresPerUnit, withLines);
    if (const auto bearable = checkLayers(layers, fileName); !bearable) return base::fail(bearable.error());
    std::vector<ColourPart> parts;
    std::unordered_map<std::string, std::size_t> known;
    for (const PaintLayer& layer : layers)
        if (known.try_emplace(layer.colour, parts.size()).second) parts.push_back({layer.colour, {}, {}});
    std::vector<Paths> visible(parts.size());
    Paths covered;
    std::size_t clipped = 0;
    try {
        for (auto layer = layers.rbegin(); layer != layers.rend(); ++layer) {
            const std::size_t part = known.at(layer->colour);
            clipped += cornersOf(covered) * (1 + layer->lines.size());
            if (clipped > kMaxClippedCorners)
                return base::fail(Fault::ShapesTooInvolved, std::string(fileName), fileName, cornersOf(covered));
            Paths whole;
            for (const Shape& shape : layer->shapes) {
                const Paths simple = simplePaths(shape);
                whole.insert(whole.end(), simple.begin(), simple.end());
            }
            auto lines = linesOutside(std::move(layer->lines), covered);
            std::move(lines.begin(), lines.end(), std::back_inserter(parts[part].lines));
            if (whole.empty()) continue;
            const Paths seen = difference(whole, covered);
            visible[part].insert(visible[part].end(), seen.begin(), seen.end());
            covered = joined(covered, whole);
        }
        for (std::size_t i = 0; i < parts.size(); ++i) parts[i].region = cleanRings(visible[i]);
    } catch (const ClipperLib::clipperException& trouble) {
        return base::fail(Fault::AreaNotFound, std::string(fileName), fileName, trouble.what());
    }
    return parts;
}

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#include "core/artwork/estimate.h"

#include "core/artwork/lattice_fill.h"
#include "core/artwork/outline_run.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

constexpr std::size_t kMostStones = 100'000;
/// The region is worked out to a fraction of a micrometre; a stone that just fits must not fail by that.
constexpr double kFitMm = 0.002;

void addCentres(Estimate& estimate, const std::vector<Point>& centres) {
    estimate.centres.insert(estimate.centres.end(), centres.begin(), centres.end());
    estimate.count += units::Count::of(static_cast<std::int64_t>(centres.size()));
}

void addRange(Estimate& estimate, double least, double most) {
    estimate.least += units::Count::of(std::llround(std::floor(std::max(0.0, least))));
    estimate.most += units::Count::of(std::llround(std::ceil(most)));
}

void addOutline(Estimate& estimate, const Rings& centres, double pitch, double diameter) {
    const OutlineRun run = runAlong(centres, pitch, diameter);
    addCentres(estimate, run.centres);
    const auto count = static_cast<double>(run.centres.size());
    const auto pieces = static_cast<double>(run.pieces);
    addRange(estimate, std::max(1.0, count - pieces), count + pieces);
    estimate.how = "along the outline";
}

/// False when there would be too many.
bool addFill(Estimate& estimate, const Rings& centres, double pitch) {
    const LatticeFill fill = fillWithLattice(centres, pitch, kMostStones);
    if (fill.centres.empty() && fill.plainGrid > 0) return false;
    addCentres(estimate, fill.centres);
    const auto count = static_cast<double>(fill.centres.size());
    const double dense = 2 * areaOf(centres) / (std::sqrt(3.0) * pitch * pitch);
    addRange(estimate, std::min({count, dense, static_cast<double>(fill.plainGrid)}),
             std::max(count, dense + perimeterOf(centres) / (4 * pitch)));
    estimate.how +=
        fmt::format("{}{} rows", estimate.how.empty() ? "" : ", then ", fill.staggered ? "staggered" : "square");
    if (fill.degrees != 0) estimate.how += fmt::format(" turned by {} degrees", fill.degrees);
    return true;
}

base::Result<void> check(const EstimateRequest& request) {
    if (request.diameter.nanometres() <= 0 || request.edge.isNegative())
        return base::fail(base::Code::OutOfRange, "stone",
                          "A stone needs a diameter and its distance from the edge cannot be negative; check both.");
    if (request.pitch < request.diameter)
        return base::fail(base::Code::OutOfRange, "pitch",
                          fmt::format("A pitch of {:.2f} mm sets stones of {:.2f} mm on top of each other; give at "
                                      "least their diameter.",
                                      request.pitch.millimetres(), request.diameter.millimetres()));
    return {};
}

} // namespace

base::Result<Estimate> estimateStones(std::span<const Shape> shapes, const EstimateRequest& request,
                                      std::string_view fileName) {
    if (const auto good = check(request); !good) return base::fail(good.error());
    const auto region = regionOf(shapes, fileName);
    if (!region) return base::fail(region.error());
    Estimate estimate;
    estimate.area = areaOf(*region);
    estimate.outlineLength = perimeterOf(*region);
    for (const auto& ring : *region)
        for (const Point p : ring) estimate.box.add(p);
    const double diameter = request.diameter.millimetres();
    const double pitch = request.pitch.millimetres();
    const double depth = std::max(0.001, diameter / 2 + request.edge.millimetres() - kFitMm);
    const auto tooMany = [&] {
        return base::fail(
            base::Code::TooLarge, std::string(fileName),
            fmt::format("{} would take more than {} stones at this size; check the scale.", fileName, kMostStones));
    };
    if (request.style != StoneStyle::Fill) {
        if (estimate.outlineLength / pitch > static_cast<double>(kMostStones)) return tooMany();
        addOutline(estimate, insetBy(*region, depth), pitch, diameter);
    }
    if (request.style != StoneStyle::Outline) {
        const double inside = request.style == StoneStyle::Both ? depth + pitch : depth;
        if (!addFill(estimate, insetBy(*region, inside), pitch)) return tooMany();
    }
    if (estimate.centres.empty())
        return base::fail(
            base::Code::Missing, std::string(fileName),
            fmt::format("No part of {} is wide enough for a stone of {:.2f} mm; take a smaller stone or a "
                        "larger size.",
                        fileName, diameter));
    return estimate;
}

} // namespace sp::artwork

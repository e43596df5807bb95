// SPDX-License-Identifier: MIT
#include "core/artwork/estimate.h"

#include "core/artwork/lattice_fill.h"
#include "core/artwork/outline_run.h"
#include "core/artwork/scanner.h"

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

void addOutline(Estimate& estimate, const OutlineRun& run) {
    addCentres(estimate, run.centres);
    const auto count = static_cast<double>(run.centres.size());
    const auto pieces = static_cast<double>(run.pieces);
    addRange(estimate, count > 0 ? std::max(1.0, count - pieces) : 0, count + pieces);
}

void addRows(Estimate& estimate, const LatticeFill& fill, const Rings& centres, double pitch) {
    addCentres(estimate, fill.centres);
    const auto count = static_cast<double>(fill.centres.size());
    const double dense = 2 * areaOf(centres) / (std::sqrt(3.0) * pitch * pitch);
    addRange(estimate, std::min({count, dense, static_cast<double>(fill.plainGrid)}),
             std::max(count, dense + perimeterOf(centres) / (4 * pitch)));
}

std::string rowsInWords(const LatticeFill& fill) {
    std::string words = fill.staggered ? "staggered rows" : "square rows";
    if (fill.degrees != 0) words += fmt::format(" turned by {} degrees", fill.degrees);
    return words;
}

/// Sets stones piece by piece and keeps how it was done.
class Setter {
  public:
    Setter(Estimate& estimate, const EstimateRequest& request)
        : m_estimate(estimate)
        , m_request(request)
        , m_pitch(request.pitch.millimetres())
        , m_diameter(request.diameter.millimetres()) {}

    /// False when there would be too many.
    bool set(const Rings& piece, double depth) {
        const auto before = m_estimate.centres.size();
        if (m_request.style != StoneStyle::Fill) {
            if (perimeterOf(piece) / m_pitch > static_cast<double>(kMostStones)) return false;
            // An even division comes no nearer than three quarters of the pitch: a stretch of 1.5 has two steps.
            addOutline(m_estimate, runAlong(insetBy(piece, depth), m_pitch, std::max(m_diameter, 0.75 * m_pitch)));
        }
        if (m_request.style != StoneStyle::Outline && !fill(piece, depth)) return false;
        ++m_estimate.pieces;
        if (m_estimate.centres.size() == before) ++m_estimate.bare;
        return m_estimate.centres.size() <= kMostStones;
    }

    std::string inWords() const {
        std::string words = m_request.style == StoneStyle::Fill ? "" : "along the outline";
        if (m_rows.empty() && !m_hasNarrow) return words;
        if (m_rows.empty()) return "along the outline, as it is too narrow for rows";
        if (!words.empty()) words += ", then ";
        words += m_isMixed ? "rows, those of each piece turned as fits it best" : m_rows;
        return m_hasNarrow ? words + "; along the outline where a piece is narrow" : words;
    }

  private:
    bool fill(const Rings& piece, double depth) {
        const bool isBoth = m_request.style == StoneStyle::Both;
        const Rings centres = insetBy(piece, isBoth ? depth + m_pitch : depth);
        const LatticeFill rows = fillWithLattice(centres, m_pitch, kMostStones);
        if (rows.centres.empty() && rows.plainGrid > 0) return false;
        const bool mayRun = !isBoth && perimeterOf(piece) / m_pitch <= static_cast<double>(kMostStones);
        const OutlineRun run = mayRun ? runAlong(centres, m_pitch, m_pitch) : OutlineRun{};
        if (run.centres.size() > rows.centres.size()) {
            addOutline(m_estimate, run);
            m_hasNarrow = true;
        } else if (!rows.centres.empty()) {
            addRows(m_estimate, rows, centres, m_pitch);
            const auto words = rowsInWords(rows);
            m_isMixed = m_isMixed || (!m_rows.empty() && m_rows != words);
            m_rows = words;
        }
        return true;
    }

    Estimate& m_estimate;
    const EstimateRequest& m_request;
    double m_pitch;
    double m_diameter;
    std::string m_rows;
    bool m_isMixed = false;
    bool m_hasNarrow = false;
};

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
    const double depth = std::max(0.001, diameter / 2 + request.edge.millimetres() - kFitMm);
    const auto tooMany = [&] {
        return base::fail(
            base::Code::TooLarge, std::string(fileName),
            fmt::format("{} would take more than {} stones at this size; check the scale.", fileName, kMostStones));
    };
    Setter setter(estimate, request);
    for (const auto& piece : piecesOf(*region))
        if (!setter.set(piece, depth)) return tooMany();
    estimate.how = setter.inWords();
    if (estimate.bare > 0 && !estimate.centres.empty())
        estimate.warning =
            fmt::format("{} of {} separate pieces of {} {} narrower than a stone and {} none; take a smaller stone or "
                        "a larger size.",
                        estimate.bare, estimate.pieces, cleanText(fileName), estimate.bare == 1 ? "is" : "are",
                        estimate.bare == 1 ? "holds" : "hold");
    if (estimate.centres.empty())
        return base::fail(
            base::Code::Missing, std::string(fileName),
            fmt::format("No part of {} is wide enough for a stone of {:.2f} mm; take a smaller stone or a "
                        "larger size.",
                        fileName, diameter));
    return estimate;
}

} // namespace sp::artwork

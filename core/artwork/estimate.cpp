// SPDX-License-Identifier: MIT
#include "core/artwork/estimate.h"

#include "core/artwork/lattice_fill.h"
#include "core/artwork/outline_run.h"
#include "core/artwork/scanner.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

constexpr std::size_t kMaxStones = 100'000;
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

base::Message kindOfRows(const LatticeFill& fill) {
    if (fill.degrees == 0) return base::say(fill.staggered ? Note::StaggeredRows : Note::SquareRows);
    return base::say(fill.staggered ? Note::StaggeredRowsTurned : Note::SquareRowsTurned, base::Real{fill.degrees});
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
            if (perimeterOf(piece) / m_pitch > static_cast<double>(kMaxStones)) return false;
            // An even division comes no nearer than three quarters of the pitch: a stretch of 1.5 has two steps.
            addOutline(m_estimate, runAlong(insetBy(piece, depth), m_pitch, std::max(m_diameter, 0.75 * m_pitch)));
        }
        if (m_request.style != StoneStyle::Outline && !fill(piece, depth)) return false;
        ++m_estimate.pieces;
        if (m_estimate.centres.size() == before) ++m_estimate.bare;
        return m_estimate.centres.size() <= kMaxStones;
    }

    base::Message how() const {
        if (!m_rows) return base::say(m_hasNarrow ? Note::TooNarrowForRows : Note::AlongTheOutline);
        auto how = m_isMixed ? base::say(Note::RowsAsFitEachPiece) : *m_rows;
        if (m_request.style != StoneStyle::Fill) how = base::say(Note::OutlineThenRows, how);
        return m_hasNarrow ? base::say(Note::OutlineWhereNarrow, how) : how;
    }

  private:
    bool fill(const Rings& piece, double depth) {
        const bool isBoth = m_request.style == StoneStyle::Both;
        const Rings centres = insetBy(piece, isBoth ? depth + m_pitch : depth);
        const LatticeFill rows = fillWithLattice(centres, m_pitch, kMaxStones);
        if (rows.centres.empty() && rows.plainGrid > 0) return false;
        const bool mayRun = !isBoth && perimeterOf(piece) / m_pitch <= static_cast<double>(kMaxStones);
        const OutlineRun run = mayRun ? runAlong(centres, m_pitch, m_pitch) : OutlineRun{};
        if (run.centres.size() > rows.centres.size()) {
            addOutline(m_estimate, run);
            m_hasNarrow = true;
        } else if (!rows.centres.empty()) {
            addRows(m_estimate, rows, centres, m_pitch);
            const auto kind = kindOfRows(rows);
            m_isMixed = m_isMixed || (m_rows && *m_rows != kind);
            m_rows = kind;
        }
        return true;
    }

    Estimate& m_estimate;
    const EstimateRequest& m_request;
    double m_pitch;
    double m_diameter;
    std::optional<base::Message> m_rows; ///< how the rows of the last piece stand
    bool m_isMixed = false;
    bool m_hasNarrow = false;
};

base::Result<void> check(const EstimateRequest& request) {
    if (request.diameter.nanometres() <= 0 || request.edge.isNegative())
        return base::fail(Fault::StoneWithoutSize, "stone");
    if (request.pitch < request.diameter)
        return base::fail(Fault::PitchBelowDiameter, "pitch", base::Real{request.pitch.millimetres(), 2},
                          base::Real{request.diameter.millimetres(), 2});
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
    const auto tooMany = [&] { return base::fail(Fault::TooManyStones, std::string(fileName), fileName, kMaxStones); };
    Setter setter(estimate, request);
    for (const auto& piece : piecesOf(*region))
        if (!setter.set(piece, depth)) return tooMany();
    estimate.how = setter.how();
    if (estimate.bare > 0 && !estimate.centres.empty())
        estimate.warning = base::say(Note::NarrowPieces, estimate.bare, estimate.pieces, cleanText(fileName));
    if (estimate.centres.empty())
        return base::fail(Fault::NarrowerThanAStone, std::string(fileName), fileName, base::Real{diameter, 2});
    return estimate;
}

} // namespace sp::artwork

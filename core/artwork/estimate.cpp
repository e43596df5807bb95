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
            addOutline(m_estimate, along(insetBy(piece, depth)));
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
    OutlineRun along(const Rings& line) const {
        // An even division comes no nearer than three quarters of the pitch: a stretch of 1.5 has two steps.
        return runAlong(line, m_pitch, std::max(m_diameter, 0.75 * m_pitch));
    }

    bool fill(const Rings& piece, double depth) {
        if (m_request.style == StoneStyle::Both) return addRows(insetBy(piece, depth + m_pitch), false);
        const Rings centres = insetBy(piece, depth);
        const LatticeFill rows = fillWithLattice(centres, m_pitch, kMaxStones);
        if (rows.centres.empty() && rows.plainGrid > 0) return false;
        const Edged edged = edgedFill(piece, centres, depth, rows.centres.size());
        if (edged.count() > rows.centres.size())
            addEdged(edged);
        else
            addRows(rows, centres, false);
        return true;
    }

    /// Stones along the edge, and what is inside: rows, or lines beside it.
    struct Edged {
        OutlineRun edge;
        std::vector<OutlineRun> lines;
        LatticeFill rows;
        Rings inside; ///< where the rows stand

        std::size_t count() const {
            std::size_t sum = edge.centres.size() + rows.centres.size();
            for (const OutlineRun& line : lines) sum += line.centres.size();
            return sum;
        }
    };

    /// The fuller one of both ways. Where the edge cannot make it more than `toBeat`, which is not looked into for
    /// pieces of very many stones, it stays empty.
    Edged edgedFill(const Rings& piece, const Rings& centres, double depth, std::size_t toBeat) const {
        constexpr std::size_t kManyStones = 20'000;
        Edged edged;
        if (perimeterOf(piece) / m_pitch > static_cast<double>(kMaxStones)) return edged;
        edged.edge = along(centres);
        if (toBeat > kManyStones) return edged;
        edged.inside = insetBy(piece, depth + m_pitch);
        edged.rows = fillWithLattice(edged.inside, m_pitch, kMaxStones);
        std::size_t inLines = 0;
        Rings line = edged.inside;
        for (int step = 2; !line.empty(); ++step) {
            inLines += edged.lines.emplace_back(along(line)).centres.size();
            line = insetBy(piece, depth + step * m_pitch);
        }
        if (inLines > edged.rows.centres.size())
            edged.rows = {};
        else
            edged.lines.clear();
        return edged;
    }

    void addEdged(const Edged& edged) {
        addOutline(m_estimate, edged.edge);
        for (const OutlineRun& line : edged.lines) addOutline(m_estimate, line);
        if (!edged.rows.centres.empty())
            addRows(edged.rows, edged.inside, true);
        else if (!edged.lines.empty())
            note(base::say(Note::OutlineThenLines));
        else
            m_hasNarrow = true;
    }

    bool addRows(const Rings& centres, bool hasEdge) {
        const LatticeFill rows = fillWithLattice(centres, m_pitch, kMaxStones);
        if (rows.centres.empty() && rows.plainGrid > 0) return false;
        addRows(rows, centres, hasEdge);
        return true;
    }

    void addRows(const LatticeFill& rows, const Rings& centres, bool hasEdge) {
        if (rows.centres.empty()) return;
        artwork::addRows(m_estimate, rows, centres, m_pitch);
        note(hasEdge ? base::say(Note::OutlineThenRows, kindOfRows(rows)) : kindOfRows(rows));
    }

    void note(const base::Message& kind) {
        m_isMixed = m_isMixed || (m_rows && *m_rows != kind);
        m_rows = kind;
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

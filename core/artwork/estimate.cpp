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
/// An even division comes no nearer than this share of the pitch: a stretch of 1.5 has two steps.
constexpr double kEvenedOut = 0.75;

/// What the range comes from.
struct Doubts {
    std::int64_t rowsLess = 0;
    std::int64_t rowsMore = 0;
    std::size_t stretches = 0;
    std::size_t narrow = 0;
    std::int64_t narrowMore = 0;
};

void addTally(Tally& tally, std::int64_t count, std::int64_t least, std::int64_t most) {
    tally.count += units::Count::of(count);
    tally.least += units::Count::of(least);
    tally.most += units::Count::of(most);
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
    bool set(const Rings& piece) {
        const auto before = stones();
        const double first = depthOf(m_request.outline ? m_request.outline->diameter : m_request.diameter);
        if (m_request.style != StoneStyle::Fill) {
            const double pitch = m_request.outline ? m_request.outline->pitch.millimetres() : m_pitch;
            if (perimeterOf(piece) / pitch > static_cast<double>(kMaxStones)) return false;
            addOutline(along(insetBy(piece, first)), m_request.outline.has_value());
        }
        if (m_request.style != StoneStyle::Outline && !fill(piece, depthOf(m_request.diameter))) return false;
        ++m_estimate.pieces;
        if (stones() == before) ++m_estimate.bare;
        if (stones() > kMaxStones) return false;
        addNarrowParts(piece, first);
        return true;
    }

    bool setLines(std::span<const Line> lines) {
        double length = 0;
        for (const Line& line : lines)
            for (std::size_t i = 1; i < line.points.size(); ++i) length += distance(line.points[i - 1], line.points[i]);
        if (length / m_pitch > static_cast<double>(kMaxStones)) return false;
        const OutlineRun run = runAlongLines(lines, m_pitch, std::max(m_diameter, kEvenedOut * m_pitch));
        m_estimate.lineLength = run.length;
        m_lines = lines.size();
        addOutline(run, false);
        return stones() <= kMaxStones;
    }

    /// Puts what was set into the estimate.
    void finish() {
        m_estimate.centres = std::move(m_edge);
        m_estimate.centres.insert(m_estimate.centres.end(), m_inner.begin(), m_inner.end());
        m_estimate.how = how();
        m_estimate.range = range();
    }

  private:
    std::size_t stones() const { return m_edge.size() + m_inner.size(); }

    static double depthOf(units::Length diameter, units::Length edge) {
        return std::max(0.001, diameter.millimetres() / 2 + edge.millimetres() - kFitMm);
    }
    double depthOf(units::Length diameter) const { return depthOf(diameter, m_request.edge); }

    base::Message how() const {
        auto how = howShapes();
        if (m_lines == 0) return how;
        return m_estimate.pieces == 0 ? base::say(Note::AlongLines) : base::say(Note::RowsAlongLinesToo, how);
    }

    base::Message howShapes() const {
        if (!m_rows) return base::say(m_hasNarrow ? Note::TooNarrowForRows : Note::AlongTheOutline);
        auto how = m_isMixed ? base::say(Note::RowsAsFitEachPiece) : *m_rows;
        if (m_request.style != StoneStyle::Fill) how = base::say(Note::OutlineThenRows, how);
        return m_hasNarrow ? base::say(Note::OutlineWhereNarrow, how) : how;
    }

    std::vector<base::Message> range() const {
        std::vector<base::Message> reasons;
        if (m_doubts.rowsLess > 0 || m_doubts.rowsMore > 0)
            reasons.push_back(base::say(Note::RowsMayDiffer, m_doubts.rowsLess, m_doubts.rowsMore));
        if (m_doubts.stretches > 0) reasons.push_back(base::say(Note::StretchesMayDiffer, m_doubts.stretches));
        if (m_doubts.narrow > 0)
            reasons.push_back(base::say(Note::NarrowPartsMayHold, m_doubts.narrow, m_doubts.narrowMore));
        if (reasons.empty()) reasons.push_back(base::say(Note::NothingMayDiffer));
        return reasons;
    }

    void addOutline(const OutlineRun& run, bool isOther) {
        auto& centres = isOther ? m_edge : m_inner;
        centres.insert(centres.end(), run.centres.begin(), run.centres.end());
        const auto count = static_cast<std::int64_t>(run.centres.size());
        const auto pieces = static_cast<std::int64_t>(run.pieces);
        const auto least = count > 0 ? std::max<std::int64_t>(1, count - pieces) : 0;
        addTally(m_estimate, count, least, count + pieces);
        if (isOther) addTally(m_estimate.outline, count, least, count + pieces);
        m_doubts.stretches += run.pieces;
    }

    /// Where no stone comes to, a smaller one may by hand.
    void addNarrowParts(const Rings& piece, double depth) {
        constexpr double kWorthAStone = 1.5; // pitches; corners that a stone cannot fill are shorter
        for (const Rings& part : narrowPartsOf(piece, depth, kWorthAStone * m_pitch)) {
            const auto more = static_cast<std::int64_t>(perimeterOf(part) / 2 / m_pitch);
            ++m_doubts.narrow;
            m_doubts.narrowMore += more;
            m_estimate.most += units::Count::of(more);
        }
    }

    OutlineRun along(const Rings& line) const {
        const double diameter = m_request.outline ? m_request.outline->diameter.millimetres() : m_diameter;
        const double pitch = m_request.outline ? m_request.outline->pitch.millimetres() : m_pitch;
        return runAlong(line, pitch, std::max(diameter, kEvenedOut * pitch));
    }

    bool fill(const Rings& piece, double depth) {
        if (m_request.style == StoneStyle::Both && m_request.outline) {
            // Half a pitch of either stone between the outline and the first row.
            const double between = (m_request.outline->pitch.millimetres() + m_pitch) / 2;
            return addRows(insetBy(piece, depthOf(m_request.outline->diameter) + between), false);
        }
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
        addOutline(edged.edge, false);
        for (const OutlineRun& line : edged.lines) addOutline(line, false);
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
        m_inner.insert(m_inner.end(), rows.centres.begin(), rows.centres.end());
        const auto count = static_cast<double>(rows.centres.size());
        const double dense = 2 * areaOf(centres) / (std::sqrt(3.0) * m_pitch * m_pitch);
        const auto least = std::llround(std::floor(std::min({count, dense, static_cast<double>(rows.plainGrid)})));
        const auto most = std::llround(std::ceil(std::max(count, dense + perimeterOf(centres) / (4 * m_pitch))));
        const auto set = std::llround(count);
        addTally(m_estimate, set, least, most);
        m_doubts.rowsLess += set - least;
        m_doubts.rowsMore += most - set;
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
    std::vector<Point> m_edge; ///< in the stone of the outline
    std::vector<Point> m_inner;
    std::size_t m_lines = 0;
    Doubts m_doubts;
};

base::Result<void> checkStone(units::Length diameter, units::Length pitch) {
    if (diameter.nanometres() <= 0) return base::fail(Fault::StoneWithoutSize, "stone");
    if (pitch < diameter)
        return base::fail(Fault::PitchBelowDiameter, "pitch", base::Real{pitch.millimetres(), 2},
                          base::Real{diameter.millimetres(), 2});
    return {};
}

base::Result<void> check(const EstimateRequest& request) {
    if (request.edge.isNegative()) return base::fail(Fault::StoneWithoutSize, "stone");
    if (const auto good = checkStone(request.diameter, request.pitch); !good) return good;
    return request.outline ? checkStone(request.outline->diameter, request.outline->pitch) : base::Result<void>{};
}

} // namespace

void Tally::add(const Tally& other) {
    count += other.count;
    least += other.least;
    most += other.most;
}

Tally Estimate::filling() const {
    return {units::Count::of(count.value() - outline.count.value()),
            units::Count::of(least.value() - outline.least.value()),
            units::Count::of(most.value() - outline.most.value())};
}

base::Result<Estimate> estimateRegion(const Rings& region, std::span<const Line> lines, const EstimateRequest& request,
                                      std::string_view fileName) {
    if (const auto good = check(request); !good) return base::fail(good.error());
    Estimate estimate;
    for (const auto& ring : region)
        for (const Point p : ring) estimate.box.add(p);
    for (const Line& line : lines)
        for (const Point p : line.points) estimate.box.add(p);
    const auto tooMany = [&] { return base::fail(Fault::TooManyStones, std::string(fileName), fileName, kMaxStones); };
    Setter setter(estimate, request);
    if (!lines.empty() && !setter.setLines(lines)) return tooMany();
    if (!region.empty()) {
        estimate.area = areaOf(region);
        estimate.outlineLength = perimeterOf(region);
        const Rings free = besideLines(region, lines, request.diameter.millimetres() / 2 + kFitMm);
        if (!free.empty())
            for (const auto& piece : piecesOf(free))
                if (!setter.set(piece)) return tooMany();
    }
    setter.finish();
    if (estimate.bare > 0 && !estimate.centres.empty())
        estimate.warning = base::say(Note::NarrowPieces, estimate.bare, estimate.pieces, cleanText(fileName));
    return estimate;
}

base::Result<Estimate> estimateStones(std::span<const Shape> shapes, const EstimateRequest& request,
                                      std::string_view fileName) {
    return estimateStones(shapes, {}, request, fileName);
}

base::Result<Estimate> estimateStones(std::span<const Shape> shapes, std::span<const Line> lines,
                                      const EstimateRequest& request, std::string_view fileName) {
    if (const auto good = check(request); !good) return base::fail(good.error());
    Rings region;
    if (!shapes.empty() || lines.empty()) {
        auto covered = regionOf(shapes, fileName);
        if (!covered) return base::fail(covered.error());
        region = std::move(*covered);
    }
    if (const auto bearable = checkInvolved(shapesAlong(lines), fileName); !bearable)
        return base::fail(bearable.error());
    auto estimate = estimateRegion(region, lines, request, fileName);
    if (estimate && estimate->centres.empty())
        return base::fail(Fault::NarrowerThanAStone, std::string(fileName), fileName,
                          base::Real{request.diameter.millimetres(), 2});
    return estimate;
}

} // namespace sp::artwork

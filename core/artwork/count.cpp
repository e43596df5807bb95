// SPDX-License-Identifier: MIT
#include "core/artwork/count.h"

#include "core/artwork/neighbours.h"
#include "core/artwork/recent.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace sp::artwork {

namespace {

constexpr double kSameCentreMm = 0.02;
constexpr double kSameDiameterMm = 0.04;
constexpr double kConcentricMm = 0.05;
constexpr double kConcentricShare = 0.05;
constexpr double kMostHoleAllowanceMm = 0.6; ///< holes are drawn 0.2 to 0.5 mm over their stone (common practice)
constexpr double kRadiusStep = 1.1;
constexpr double kTouchingMm = 0.02; ///< overlaps below this are rounding
constexpr std::size_t kMaxComparisons = 50'000'000;
constexpr std::size_t kMaxOverlaps = 2'000'000;

units::Length lengthOf(double millimetres) { return units::Length::fromNanometres(std::llround(millimetres * 1e6)); }

/// Four times the second moments of the area over the area are the squared half axes, if it is an ellipse;
/// then the area is pi times their product.
bool isEllipse(std::span<const Point> corners) {
    if (corners.size() < 8) return false;
    const Point origin = corners.front();
    double area = 0, sx = 0, sy = 0, xx = 0, xy = 0, yy = 0;
    Point p = corners.back() - origin;
    for (const Point corner : corners) {
        const Point q = corner - origin;
        const double turn = cross(p, q);
        area += turn / 2;
        sx += turn * (p.x + q.x) / 6;
        sy += turn * (p.y + q.y) / 6;
        xx += turn * (p.x * p.x + p.x * q.x + q.x * q.x) / 12;
        yy += turn * (p.y * p.y + p.y * q.y + q.y * q.y) / 12;
        xy += turn * (2 * p.x * p.y + p.x * q.y + q.x * p.y + 2 * q.x * q.y) / 24;
        p = q;
    }
    if (area == 0) return false;
    const double mx = sx / area;
    const double my = sy / area;
    const double a = xx / area - mx * mx;
    const double b = yy / area - my * my;
    const double c = xy / area - mx * my;
    const double product = 4 * std::sqrt(std::max(0.0, a * b - c * c)); // of the half axes
    return std::abs(std::numbers::pi * product - std::abs(area)) < 0.005 * std::abs(area);
}

class StoneCounter {
  public:
    StoneCounter(const Drawing& drawing, const CountOptions& options)
        : m_drawing(drawing)
        , m_options(options)
        , m_scale(options.millimetresPerUnit)
        , m_allowance(options.holeAllowance.millimetres()) {}

    /// False when the discs lie on one another beyond all reason.
    bool count() {
        judgeOutlines();
        judgeSizes();
        if (!findOverlaps()) return false;
        dropRings();
        takeStones();
        markCollisions();
        groupStones();
        sumUp();
        return true;
    }

    Counted result;

  private:
    const Disc& disc(std::uint32_t i) const { return m_drawing.discs[i]; }
    Point centre(std::uint32_t i) const { return m_scale * disc(i).centre; }
    double radius(std::uint32_t i) const { return m_scale * disc(i).radius; }
    bool isIn(std::uint32_t i) const { return result.discClasses[i] == Classification::Stone; }
    bool fits(std::uint32_t i) const { return sizeOfHole(2 * radius(i), m_allowance, m_options.sizes).has_value(); }

    void judgeOutlines() {
        const double largest = largestStoneMm(m_options);
        result.outlineClasses.reserve(m_drawing.outlines.size());
        for (const Outline& outline : m_drawing.outlines) {
            const auto corners = m_drawing.pointsOf(outline);
            Box box;
            for (const Point p : corners) box.add(p);
            Classification classification = Classification::NotRound;
            if (!outline.closed && !m_drawing.inks[outline.ink].filled)
                classification = Classification::Open;
            else if (isEllipse(corners))
                classification = Classification::Ellipse;
            else if (std::max(box.width(), box.height()) * m_scale > largest)
                classification = Classification::Large;
            result.outlineClasses.push_back(classification);
        }
    }

    void judgeSizes() {
        const double smallest = smallestStoneMm(m_options) - kSizeSlackMm;
        const double largest = largestStoneMm(m_options) + kSizeSlackMm;
        result.discClasses.assign(m_drawing.discs.size(), Classification::Stone);
        for (std::uint32_t i = 0; i < m_drawing.discs.size(); ++i) {
            const double diameter = 2 * radius(i);
            if (diameter > largest) result.discClasses[i] = Classification::TooLarge;
            if (diameter < smallest) result.discClasses[i] = Classification::TooSmall;
            if (isIn(i)) m_box.add(centre(i));
        }
    }

    bool isSame(std::uint32_t i, std::uint32_t other) const {
        const Point way = centre(other) - centre(i);
        return dot(way, way) <= kSameCentreMm * kSameCentreMm &&
               std::abs(radius(i) - radius(other)) <= kSameDiameterMm / 2;
    }

    /// Of discs in one place the topmost filled one stays, else the topmost. `kept` is the one that the grid
    /// knows.
    void takeForSame(std::uint32_t kept, std::uint32_t copy) {
        const auto rank = [this](std::uint32_t i) { return std::pair(m_drawing.inks[disc(i).ink].filled, i); };
        std::uint32_t& shown = m_shown[kept];
        const std::uint32_t loser = rank(copy) > rank(shown) ? std::exchange(shown, copy) : copy;
        result.discClasses[loser] = Classification::Duplicate;
    }

    /// Discs that may be stones, in steps of radius, each in drawing order; a step is a tenth wide.
    std::vector<std::vector<std::uint32_t>> stepsOfRadius() const {
        std::map<int, std::vector<std::uint32_t>> steps;
        Recent<double, std::vector<std::uint32_t>*> stepOf;
        for (std::uint32_t i = 0; i < m_drawing.discs.size(); ++i) {
            if (!isIn(i)) continue;
            const double own = radius(i);
            stepOf
                .of(own, std::bit_cast<std::uint64_t>(own),
                    [&] { return &steps[static_cast<int>(std::floor(std::log(own) / std::log(kRadiusStep)))]; })
                ->push_back(i);
        }
        std::vector<std::vector<std::uint32_t>> inOrder;
        for (auto& [step, discs] : steps) inOrder.push_back(std::move(discs));
        return inOrder;
    }

    /// Every pair of discs that overlap, the larger one first, after dropping what is drawn twice. From the
    /// small ones up, each looks for those before it, which are at most a step larger; so a large disc never
    /// makes the small ones look far.
    bool findOverlaps() {
        const auto steps = stepsOfRadius();
        if (steps.empty()) return true;
        std::size_t total = 0;
        for (const auto& step : steps) total += step.size();
        std::size_t passed = 0;
        double common = 0; // the radius that a tenth of the discs stay below
        for (std::size_t k = 0; k < steps.size() && 10 * passed <= total; ++k) {
            common = radius(steps[k].front());
            passed += steps[k].size();
        }
        Neighbours before(m_box, (1 + kRadiusStep) * common, total);
        m_shown.resize(m_drawing.discs.size());
        std::iota(m_shown.begin(), m_shown.end(), 0U);
        std::size_t comparisons = 0;
        for (const auto& step : steps) {
            for (const std::uint32_t i : step) {
                bool isNew = true;
                const std::size_t known = m_overlaps.size();
                const Point here = centre(i);
                const double own = radius(i);
                before.near(here, (1 + kRadiusStep) * own, [&](std::uint32_t other) {
                    ++comparisons;
                    if (isSame(i, other)) {
                        takeForSame(other, i);
                        isNew = false;
                        return false;
                    }
                    const double touch = own + radius(other) - kTouchingMm;
                    const Point way = centre(other) - here;
                    if (dot(way, way) >= touch * touch) return comparisons <= kMaxComparisons;
                    if (own < radius(other))
                        m_overlaps.emplace_back(other, i);
                    else
                        m_overlaps.emplace_back(i, other);
                    return m_overlaps.size() <= kMaxOverlaps;
                });
                if (isNew)
                    before.add(here, i);
                else
                    m_overlaps.resize(known);
                if (comparisons > kMaxComparisons || m_overlaps.size() > kMaxOverlaps) return false;
            }
        }
        for (auto& [large, small] : m_overlaps) {
            large = m_shown[large];
            small = m_shown[small];
        }
        // Rings are judged from the smallest pair up.
        std::sort(m_overlaps.begin(), m_overlaps.end(), [this](const auto& a, const auto& b) {
            return std::tuple(disc(a.first).radius, disc(a.second).radius, a) <
                   std::tuple(disc(b.first).radius, disc(b.second).radius, b);
        });
        return true;
    }

    /// A stone drawn filled in the line of its hole: the stone's own size and colour count.
    bool isInItsHole(std::uint32_t small, std::uint32_t large) const {
        const bool isFilled = m_drawing.inks[disc(small).ink].filled && !m_drawing.inks[disc(large).ink].filled;
        return isFilled && 2 * (radius(large) - radius(small)) <= kMostHoleAllowanceMm;
    }

    void dropRings() {
        // Concentric first, from the smallest pair up, so that of three the right one is left.
        for (const auto& [large, small] : m_overlaps) {
            const double apart = distance(centre(large), centre(small));
            if (!isIn(large) || !isIn(small)) continue;
            if (apart > std::max(kConcentricMm, kConcentricShare * radius(large))) continue;
            const bool keepSmall = fits(small) && (!fits(large) || isInItsHole(small, large));
            result.discClasses[keepSmall ? large : small] = Classification::Ring;
        }
        for (const auto& [large, small] : m_overlaps) {
            if (!isIn(large) || !isIn(small)) continue;
            if (distance(centre(large), centre(small)) + radius(small) <= radius(large) * 1.001)
                result.discClasses[large] = Classification::Encloses;
        }
    }

    void takeStones() {
        m_stoneOf.assign(m_drawing.discs.size(), 0);
        for (std::uint32_t i = 0; i < m_drawing.discs.size(); ++i) {
            if (!isIn(i)) continue;
            m_stoneOf[i] = static_cast<std::uint32_t>(result.stones.size());
            result.stones.push_back({centre(i), 2 * radius(i), i, 0, false});
        }
    }

    void markCollisions() {
        for (const auto& [large, small] : m_overlaps) {
            if (!isIn(large) || !isIn(small)) continue;
            ++result.collisions;
            result.stones[m_stoneOf[large]].collides = true;
            result.stones[m_stoneOf[small]].collides = true;
        }
    }

    struct SizeClass {
        std::optional<std::size_t> size;
        std::uint32_t number = 0; ///< tells classes without a size apart
        friend auto operator<=>(const SizeClass&, const SizeClass&) = default;
    };

    struct Diameters {
        std::vector<std::uint32_t> numberOf; ///< of each stone, the number of its diameter
        std::vector<SizeClass> classes;      ///< of each diameter
    };

    /// The diameters of the stones, told apart to a micrometre, and their size classes.
    Diameters classify() const {
        constexpr double kMaxClassWidthMm = 0.3;
        std::unordered_map<std::int64_t, std::uint32_t> numbers;
        std::vector<std::pair<double, std::uint32_t>> distinct; // millimetres, stones
        Diameters diameters;
        diameters.numberOf.reserve(result.stones.size());
        Recent<double, std::uint32_t> numberOf;
        for (const Stone& stone : result.stones) {
            const auto number = numberOf.of(stone.diameter, std::bit_cast<std::uint64_t>(stone.diameter), [&] {
                const std::int64_t micrometres = std::llround(stone.diameter * 1000);
                const auto [found, isNew] = numbers.try_emplace(micrometres, distinct.size());
                if (isNew) distinct.emplace_back(static_cast<double>(micrometres) / 1000, 0);
                return found->second;
            });
            ++distinct[number].second;
            diameters.numberOf.push_back(number);
        }
        std::vector<std::uint32_t> order(distinct.size());
        std::iota(order.begin(), order.end(), 0U);
        std::sort(order.begin(), order.end(),
                  [&](std::uint32_t a, std::uint32_t b) { return distinct[a].first < distinct[b].first; });
        auto& classes = diameters.classes;
        classes.resize(distinct.size());
        std::uint32_t number = 0;
        for (std::size_t first = 0, end = 0; first < order.size(); first = end) {
            double sum = 0;
            double count = 0;
            double before = distinct[order[first]].first;
            for (end = first; end < order.size(); ++end) {
                const auto& [diameter, stones] = distinct[order[end]];
                if (diameter - before > std::max(0.05, 0.02 * before)) break;
                sum += diameter * stones;
                count += stones;
                before = diameter;
            }
            const double spread = before - distinct[order[first]].first;
            const auto whole = sizeOfHole(sum / count, m_allowance, m_options.sizes);
            ++number;
            for (std::size_t i = first; i < end; ++i) {
                const auto own = sizeOfHole(distinct[order[i]].first, m_allowance, m_options.sizes);
                const auto size = spread <= kMaxClassWidthMm ? whole : own;
                classes[order[i]] = {size, size ? 0 : number};
            }
        }
        return diameters;
    }

    struct InkPlace {
        std::uint32_t key = 0;    ///< inks that differ only in being filled share one
        std::uint32_t colour = 0; ///< index into Counted::colours
    };

    /// Where stones of each ink are summed up; the colours in the order in which stones first show them.
    std::vector<InkPlace> placeInks() {
        std::map<std::pair<std::string_view, std::string_view>, std::uint32_t> keys;
        std::map<std::string_view, std::uint32_t> colours;
        std::vector<InkPlace> places(m_drawing.inks.size());
        std::vector<bool> isPlaced(places.size());
        for (const Stone& stone : result.stones) {
            const std::uint32_t number = disc(stone.disc).ink;
            if (isPlaced[number]) continue;
            isPlaced[number] = true;
            const Ink& ink = m_drawing.inks[number];
            const auto [colour, isNew] = colours.try_emplace(ink.colour, colours.size());
            if (isNew) result.colours.push_back({ink.colour, {}, {}});
            places[number] = {keys.try_emplace({ink.colour, ink.layer}, keys.size()).first->second, colour->second};
        }
        return places;
    }

    void groupStones() {
        using Key = std::pair<std::uint32_t, SizeClass>;
        const auto diameters = classify();
        const auto places = placeInks();
        std::map<Key, std::uint32_t> groups;
        std::vector<std::pair<double, double>> ranges; // of the diameters in each group
        Recent<std::uint64_t, std::uint32_t> groupOf;
        for (std::size_t i = 0; i < result.stones.size(); ++i) {
            Stone& stone = result.stones[i];
            const Ink& ink = m_drawing.inks[disc(stone.disc).ink];
            const InkPlace& place = places[disc(stone.disc).ink];
            const std::uint32_t number = diameters.numberOf[i];
            const auto key = std::uint64_t{place.key} << 32U | number;
            stone.group = groupOf.of(key, key, [&] {
                const SizeClass& sizeClass = diameters.classes[number];
                const auto [found, isNew] = groups.try_emplace({place.key, sizeClass}, groups.size());
                if (isNew) {
                    result.groups.push_back({ink.colour, ink.layer, sizeClass.size, {}, {}, {}});
                    ranges.emplace_back(stone.diameter, stone.diameter);
                }
                return found->second;
            });
            auto& [smallest, largest] = ranges[stone.group];
            smallest = std::min(smallest, stone.diameter);
            largest = std::max(largest, stone.diameter);
            result.groups[stone.group].count += units::Count::of(1);
            ColourExtent& colour = result.colours[place.colour];
            colour.box.add(stone.centre, stone.diameter / 2);
            colour.count += units::Count::of(1);
        }
        for (const ColourExtent& colour : result.colours) result.box.add(colour.box);
        for (std::size_t i = 0; i < ranges.size(); ++i) {
            result.groups[i].smallest = lengthOf(ranges[i].first);
            result.groups[i].largest = lengthOf(ranges[i].second);
        }
    }

    void sumUp() {
        result.leftOut = m_drawing.leftOut;
        for (const auto* classifications : {&result.discClasses, &result.outlineClasses}) {
            for (const Classification classification : *classifications) {
                if (classification == Classification::Duplicate)
                    ++result.duplicates;
                else if (classification != Classification::Stone)
                    ++m_classCounts[static_cast<std::size_t>(classification)];
            }
        }
        for (std::size_t i = 0; i < m_classCounts.size(); ++i)
            if (m_classCounts[i] > 0)
                result.leftOut[base::say(noteOf(static_cast<Classification>(i)))] += m_classCounts[i];
    }

    const Drawing& m_drawing;
    const CountOptions& m_options;
    double m_scale;
    double m_allowance;
    Box m_box; ///< of the centres of what may be stones
    std::vector<std::pair<std::uint32_t, std::uint32_t>> m_overlaps;
    std::vector<std::uint32_t> m_shown;   ///< of discs in one place, which one counts
    std::vector<std::uint32_t> m_stoneOf; ///< index of the stone that a disc became
    std::array<std::size_t, 10> m_classCounts{};
};

} // namespace

base::Message leftOutBecause(base::Message reason, std::size_t count) {
    reason.values.push_back(base::asValue(count));
    return reason;
}

namespace {

base::Message whatThereWas(const LeftOut& leftOut) {
    if (leftOut.empty()) return base::say(Note::NoOutlines);
    std::vector<base::Message> counts;
    for (const auto& [reason, count] : leftOut)
        counts.push_back(base::say(Note::CountOf, count, leftOutBecause(reason, count)));
    return base::say(Note::OutlinesThereAre, counts);
}

/// What to do about a file without a disc that could be a stone.
base::Message whatToDo(const Drawing& drawing, const Counted& counted, const CountOptions& options) {
    if (counted.leftOut.contains(base::say(Note::Text))) return base::say(Note::TurnTextIntoOutlines);
    if (counted.leftOut.contains(base::say(Note::BitmapInside))) return base::say(Note::PlaceStonesOverBitmap);
    for (const Note advice : {Note::TurnDotsIntoOutlines, Note::TurnPatternsIntoOutlines, Note::TurnMarkersIntoOutlines,
                              Note::DrawCirclesOnPoints, Note::ExplodeHatches})
        if (std::find(drawing.warnings.begin(), drawing.warnings.end(), base::say(advice)) != drawing.warnings.end())
            return base::say(advice);
    double least = std::numeric_limits<double>::infinity(), most = 0;
    for (const auto& disc : drawing.discs) {
        const double diameter = 2 * disc.radius * options.millimetresPerUnit;
        least = std::min(least, diameter);
        most = std::max(most, diameter);
    }
    const double smallest = smallestStoneMm(options), largest = largestStoneMm(options);
    if (most == 0 || (least >= smallest && most <= largest)) return base::say(Note::DrawStonesAsCircles);
    using base::Real;
    return base::say(Note::SaveAtTrueSize, Real{least}, Real{most}, Real{smallest}, Real{largest});
}

} // namespace

Note noteOf(Classification classification) {
    switch (classification) {
    case Classification::Stone: return Note::Stone;
    case Classification::Duplicate: return Note::DrawnTwice;
    case Classification::Ring: return Note::Ring;
    case Classification::Encloses: return Note::LineAroundStones;
    case Classification::TooLarge: return Note::TooLarge;
    case Classification::TooSmall: return Note::TooSmall;
    case Classification::Ellipse: return Note::Ellipse;
    case Classification::NotRound: return Note::NotRound;
    case Classification::Large: return Note::CutLine;
    case Classification::Open: return Note::OpenLine;
    }
    return Note::NotRound;
}

units::Length Counted::width() const { return lengthOf(box.width()); }
units::Length Counted::height() const { return lengthOf(box.height()); }

double smallestStoneMm(const CountOptions& options) {
    double smallest = 1.5;
    for (const StoneSize& size : options.sizes) smallest = std::min(smallest, size.smallest.millimetres());
    return smallest;
}

double largestStoneMm(const CountOptions& options) {
    double largest = 12;
    for (const StoneSize& size : options.sizes)
        largest = std::max(largest, size.largest.millimetres() + options.holeAllowance.millimetres());
    return largest;
}

base::Result<Counted> countStones(const Drawing& drawing, const CountOptions& options, std::string_view fileName) {
    StoneCounter counter(drawing, options);
    if (!counter.count()) return base::fail(Fault::DiscsByTheHundred, std::string(fileName), fileName);
    if (const double extent = std::max(counter.result.box.width(), counter.result.box.height());
        extent > units::kMaxLength.millimetres())
        return base::fail(Fault::StonesFarApart, std::string(fileName), fileName, base::Real{extent / 1000, 0});
    if (!counter.result.stones.empty()) return std::move(counter.result);
    return base::fail(Fault::NoStones, std::string(fileName), fileName, whatThereWas(counter.result.leftOut),
                      whatToDo(drawing, counter.result, options));
}

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#include "core/artwork/dxf_hatch.h"

#include "core/artwork/scanner.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

using HatchPath = std::vector<DxfCorner>;

/// Groups one after another, each expected to have the code asked for.
class HatchPairs {
  public:
    explicit HatchPairs(std::span<const DxfPair> pairs)
        : m_pairs(pairs) {}

    bool isAt(int code) const { return m_at < m_pairs.size() && m_pairs[m_at].code == code; }
    /// On to behind the next group with the code, and its number.
    std::optional<double> after(int code) {
        while (m_at < m_pairs.size() && m_pairs[m_at].code != code) ++m_at;
        return take(code);
    }
    std::optional<double> take(int code) {
        if (!isAt(code)) return std::nullopt;
        const auto number = numberFrom(m_pairs[m_at].value);
        if (number) ++m_at;
        return number;
    }
    std::optional<Point> takePoint(int x, int y) {
        const auto across = take(x), down = take(y);
        if (!across || !down) return std::nullopt;
        return Point{*across, *down};
    }
    std::optional<std::size_t> takeCount(int code) {
        const auto number = take(code);
        // Each of what is counted takes a group at least.
        if (!number || !(*number >= 0) || *number > static_cast<double>(m_pairs.size())) return std::nullopt;
        return static_cast<std::size_t>(*number);
    }

  private:
    std::span<const DxfPair> m_pairs;
    std::size_t m_at = 0;
};

std::optional<HatchPath> hatchPolyline(HatchPairs& pairs) {
    const auto hasBulges = pairs.take(72), isClosed = pairs.take(73);
    const auto count = pairs.takeCount(93);
    if (!hasBulges || !isClosed || *isClosed == 0 || !count) return std::nullopt;
    HatchPath path;
    for (std::size_t i = 0; i < *count; ++i) {
        const auto at = pairs.takePoint(10, 20);
        if (!at) return std::nullopt;
        path.push_back({*at, pairs.take(42).value_or(0)});
    }
    return path;
}

/// A line or an arc as its first corner, and where it ends.
struct HatchEdge {
    DxfCorner from;
    Point to;
};

std::optional<HatchEdge> hatchLine(HatchPairs& pairs) {
    const auto from = pairs.takePoint(10, 20), to = pairs.takePoint(11, 21);
    if (!from || !to) return std::nullopt;
    return HatchEdge{{*from, 0}, *to};
}

/// Nothing also for one that goes round: it stands by itself, in `round`.
std::optional<HatchEdge> hatchArc(HatchPairs& pairs, std::optional<HatchPath>& round) {
    const auto centre = pairs.takePoint(10, 20);
    const auto radius = pairs.take(40), first = pairs.take(50), last = pairs.take(51), isLeft = pairs.take(73);
    if (!centre || !radius || !first || !last || !isLeft || !(*radius > 0)) return std::nullopt;
    const Point arm{*radius, 0};
    if (std::abs(std::abs(*last - *first) - 360) < 1e-6) {
        round = HatchPath{{*centre - arm, 1}, {*centre + arm, 1}};
        return std::nullopt;
    }
    // Arcs to the right have their angles counted to the right, too.
    const double sign = *isLeft != 0 ? 1 : -1;
    double sweep = std::fmod(*last - *first, 360);
    if (sweep < 0) sweep += 360;
    const auto onCircle = [&](double degrees) { return *centre + Matrix::rotation(sign * degrees)(arm); };
    return HatchEdge{{onCircle(*first), sign * std::tan(sweep * kRadian / 4)}, onCircle(*last)};
}

std::optional<HatchPath> hatchEdges(HatchPairs& pairs) {
    const auto count = pairs.takeCount(93);
    if (!count) return std::nullopt;
    std::optional<HatchPath> round;
    std::vector<HatchEdge> all;
    Box box;
    for (std::size_t i = 0; i < *count; ++i) {
        const auto kind = pairs.take(72);
        if (!kind || (*kind != 1 && *kind != 2)) return std::nullopt;
        const auto edge = *kind == 1 ? hatchLine(pairs) : hatchArc(pairs, round);
        if (round && *count == 1) return round;
        if (!edge) return std::nullopt;
        box.add(edge->from.at);
        box.add(edge->to);
        all.push_back(*edge);
    }
    const double reach = 1e-4 * std::max(box.width(), box.height());
    HatchPath path;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (distance(all[i].to, all[(i + 1) % all.size()].from.at) > reach) return std::nullopt;
        path.push_back(all[i].from);
    }
    return path;
}

} // namespace

std::optional<std::vector<std::vector<DxfCorner>>> solidHatchOf(std::span<const DxfPair> pairs) {
    const bool isGradient = std::any_of(pairs.begin(), pairs.end(), [](const DxfPair& pair) {
        return pair.code == 450 && numberFrom(pair.value).value_or(1) != 0;
    });
    HatchPairs groups(pairs);
    if (isGradient || groups.after(70) != 1.0) return std::nullopt;
    const auto count = groups.after(91);
    if (!count || !(*count >= 1) || *count > static_cast<double>(pairs.size())) return std::nullopt;
    std::vector<HatchPath> paths;
    for (int i = 0; i < static_cast<int>(*count); ++i) {
        const auto kind = groups.after(92);
        if (!kind) return std::nullopt;
        auto path =
            (static_cast<int>(std::clamp(*kind, 0.0, 1e6)) & 2) != 0 ? hatchPolyline(groups) : hatchEdges(groups);
        if (!path || path->size() < 2) return std::nullopt;
        paths.push_back(std::move(*path));
    }
    return paths;
}

} // namespace sp::artwork

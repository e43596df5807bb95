// SPDX-License-Identifier: MIT
#include "core/layout/count_search.h"

#include "core/layout/cover_prices.h"
#include "core/layout/one_bin.h"

#include <algorithm>
#include <cmath>

namespace sp::layout {

using std::int64_t;

namespace {

constexpr double kRounding = 1e-6;      ///< of a sum of bins, by doubles
constexpr int64_t kFirstWork = 100'000; ///< steps for one try
constexpr int64_t kMoreWork = 5;        ///< so many times as much in the next round

/// Worth is exact to a part in a thousand million of a bin, and many bins make it more.
int64_t wholeAbove(double bins) { return static_cast<int64_t>(std::ceil(bins * (1 - 1e-8) - kRounding)); }

} // namespace

CountSearch::CountSearch(std::vector<BoxKind> kinds, int64_t width, int64_t height, bool mayTurn, BoxCounts most)
    : m_kinds(std::move(kinds))
    , m_width(width)
    , m_height(height)
    , m_mayTurn(mayTurn)
    , m_may(most)
    , m_tried(most)
    , m_turned(m_kinds, width, height, mayTurn) {
    for (std::size_t k = 0; k < m_kinds.size(); ++k) {
        m_demands.push_back(m_kinds[k].count);
        BoxCounts one(m_kinds.size(), 0);
        one[k] = 1;
        m_columns.push_back(std::move(one));
    }
}

int64_t CountSearch::bound(int64_t& steps) {
    if (const auto limit = barLimit(m_kinds, m_width, m_height, m_mayTurn, m_demands, steps)) {
        m_least = limit->share(m_demands);
        m_may.add(*limit);
        m_tried.add(*limit);
    }
    sharpen(steps);
    return wholeAbove(m_least);
}

std::vector<double> CountSearch::pricesOf(const std::vector<BoxCounts>& columns, std::vector<double>* copies) const {
    std::vector<CoverColumn> cover;
    for (const BoxCounts& column : columns) cover.push_back({1, column});
    auto found = coverPrices(cover, m_demands);
    if (copies) *copies = std::move(found.copies);
    return std::move(found.prices);
}

double CountSearch::valueOf(const std::vector<double>& prices) const {
    double value = 0;
    for (std::size_t k = 0; k < prices.size(); ++k) value += prices[k] * static_cast<double>(m_demands[k]);
    return value;
}

/// Of counts that bars do not rule out as well; what they rule out is remembered.
std::optional<BinCounts::Worth> CountSearch::worthiest(BinCounts& may, const std::vector<double>& prices,
                                                       int64_t& steps) {
    while (true) {
        auto found = may.worthiest(prices, steps);
        if (!found || found->worth <= 1 + kRounding) return found;
        auto limit = barLimit(m_kinds, m_width, m_height, m_mayTurn, found->counts, steps);
        if (steps <= 0) return {};
        if (limit && !limit->allows(found->counts)) {
            m_may.add(*limit);
            m_tried.add(*std::move(limit));
            continue;
        }
        if (!m_turned.isRuledOut(found->counts, steps)) return found;
        m_may.exclude(found->counts);
        m_tried.exclude(found->counts);
    }
}

/// Adds columns until none that may lie in a bin is worth more than it; the prices give a bound at every step.
void CountSearch::sharpen(int64_t& steps) {
    while (steps > 0) {
        steps -= static_cast<int64_t>(m_columns.size() * m_kinds.size());
        const auto prices = pricesOf(m_columns);
        const auto found = worthiest(m_may, prices, steps);
        if (!found) return;
        m_least = std::max(m_least, valueOf(prices) / std::max(1.0, found->worth));
        if (found->worth <= 1 + kRounding) return;
        m_columns.push_back(found->counts);
    }
}

int64_t CountSearch::search(std::vector<BinWay>& ways, Effort& effort) {
    for (std::size_t k = 0; k < m_kinds.size(); ++k) { // prices need a way with each kind
        const auto holds = [&](const BinWay& way) { return way.counts[k] > 0; };
        BoxCounts one(m_kinds.size(), 0);
        one[k] = 1;
        if (std::none_of(ways.begin(), ways.end(), holds)) tryToLay(one, ways, effort);
    }
    for (m_work = kFirstWork; !effort.isOver(); m_work *= kMoreWork) {
        m_tried = m_may;
        m_open.clear();
        bool isMore = true;
        while (isMore && !effort.isOver()) {
            const bool isTried = layNext(ways, effort);
            isMore = proveNext(ways, effort) || isTried;
        }
        layLast(ways, effort);
        if (m_open.empty()) break; // more work on one try brings nothing
    }
    return wholeAbove(m_least);
}

/// Lays the counts that would help the ways most; false when the ways are as good as the bound, or none would help.
bool CountSearch::layNext(std::vector<BinWay>& ways, Effort& effort) {
    std::vector<BoxCounts> columns;
    for (const BinWay& way : ways) columns.push_back(way.counts);
    effort.steps() -= static_cast<int64_t>(columns.size() * m_kinds.size() * 2);
    const auto prices = pricesOf(columns);
    if (wholeAbove(valueOf(prices)) <= wholeAbove(m_least)) return false;
    const auto found = worthiest(m_tried, prices, effort.steps());
    if (!found || found->worth <= 1 + kRounding) return false;
    tryToLay(found->counts, ways, effort);
    return true;
}

/// Lays counts that the bound rests on, or shows that they cannot be laid; false when nothing is left to show.
bool CountSearch::proveNext(std::vector<BinWay>& ways, Effort& effort) {
    std::vector<BoxCounts> laid;
    for (const BinWay& way : ways) laid.push_back(way.counts);
    if (wholeAbove(valueOf(pricesOf(laid))) <= wholeAbove(m_least)) return false;
    std::vector<double> copies;
    pricesOf(m_columns, &copies);
    effort.steps() -= static_cast<int64_t>((laid.size() + m_columns.size()) * m_kinds.size() * 2);
    for (std::size_t c = 0; c < m_columns.size(); ++c) {
        const BoxCounts counts = m_columns[c];
        const auto isKnown = [&](const BoxCounts& other) { return reaches(other, counts); };
        if (copies[c] <= kRounding || std::any_of(laid.begin(), laid.end(), isKnown) ||
            std::find(m_open.begin(), m_open.end(), counts) != m_open.end())
            continue;
        tryToLay(counts, ways, effort);
        return true;
    }
    return false;
}

/// What whole bins of the ways, rounded down and then the most used first, leave for the last `bins` of the bound: two
/// at most.
BoxCounts CountSearch::leftForLast(const std::vector<BinWay>& ways, int64_t& bins) const {
    std::vector<BoxCounts> columns;
    for (const BinWay& way : ways) columns.push_back(way.counts);
    std::vector<double> copies;
    pricesOf(columns, &copies);
    auto left = m_demands;
    bins = wholeAbove(m_least);
    const auto take = [&](std::size_t w, int64_t times) {
        bins -= times;
        for (std::size_t k = 0; k < left.size(); ++k) left[k] = std::max<int64_t>(0, left[k] - times * columns[w][k]);
    };
    for (std::size_t w = 0; w < columns.size(); ++w) {
        const auto whole = static_cast<int64_t>(std::floor(copies[w] + kRounding));
        copies[w] -= static_cast<double>(whole);
        take(w, whole);
    }
    while (bins > 2) {
        const auto most = std::max_element(copies.begin(), copies.end());
        *most -= 1;
        take(static_cast<std::size_t>(most - copies.begin()), 1);
    }
    return left;
}

/// Lays what is left for the last two bins, in one of the ways to deal it out.
void CountSearch::layLast(std::vector<BinWay>& ways, Effort& effort) {
    if (ways.empty()) return;
    int64_t bins = 0;
    const auto left = leftForLast(ways, bins);
    if (bins < 1) return;
    const auto isLaid = [&](const BoxCounts& counts) {
        return std::any_of(ways.begin(), ways.end(), [&](const BinWay& way) { return reaches(way.counts, counts); });
    };
    BoxCounts one(left.size(), 0);
    BoxCounts other = left;
    constexpr int kMostTries = 20;
    for (int tries = 0; tries < kMostTries && !effort.isOver();) {
        effort.steps() -= static_cast<int64_t>(left.size());
        if (m_tried.allows(one) && m_tried.allows(other) && (bins > 1 || reaches(one, left))) {
            ++tries;
            const bool isFirst = isLaid(one) || tryToLay(one, ways, effort);
            if (isFirst && (isLaid(other) || tryToLay(other, ways, effort))) return;
        }
        // The next way to deal out, as a counter counts.
        std::size_t k = 0;
        for (; k < left.size() && one[k] == left[k]; ++k) {
            one[k] = 0;
            other[k] = left[k];
        }
        if (k == left.size()) return;
        ++one[k];
        --other[k];
    }
}

/// True when there is a new way.
bool CountSearch::tryToLay(const BoxCounts& counts, std::vector<BinWay>& ways, Effort& effort) {
    std::vector<Box> boxes;
    auto kinds = m_kinds;
    for (std::size_t k = 0; k < counts.size(); ++k) {
        kinds[k].count = counts[k];
        boxes.insert(boxes.end(), static_cast<std::size_t>(counts[k]), Box{kinds[k].width, kinds[k].height, k});
    }
    const auto share = [&](int64_t steps, auto work) {
        MixedEffort part = effort.part(1);
        part.steps = std::min(part.steps, steps);
        Effort here(part);
        auto found = work(here);
        effort.steps() -= part.steps - here.steps();
        return found;
    };
    const auto strip = share(m_work / 4, [&](Effort& here) {
        Filling filling = searchStrip(boxes, m_width, m_mayTurn, m_height, here);
        if (filling.height > m_height || filling.laid.size() < boxes.size()) filling.laid.clear();
        for (Laid& one : filling.laid) one.box = boxes[one.box].kind;
        return filling.laid;
    });
    if (!strip.empty()) {
        ways.push_back({0, counts, strip});
        return true;
    }
    const auto answer =
        share(m_work, [&](Effort& here) { return layInOneBin(kinds, m_width, m_height, m_mayTurn, here.steps()); });
    if (answer.isLaid()) {
        ways.push_back({0, counts, answer.laid});
        return true;
    }
    m_tried.exclude(counts);
    if (!answer.isSure) {
        m_open.push_back(counts);
        return false;
    }
    m_may.exclude(counts);
    std::erase_if(m_columns, [&](const BoxCounts& column) { return reaches(column, counts); });
    sharpen(effort.steps());
    return false;
}

} // namespace sp::layout

// SPDX-License-Identifier: MIT
#include "core/pricing/ladder_curve.h"

#include <algorithm>

namespace sp::pricing {

using units::Count;

namespace {

constexpr std::int64_t kLeastShown = 12;

std::vector<std::int64_t> quantitiesOf(const std::vector<catalogue::MarkUpStep>& ladder) {
    std::int64_t last = kLeastShown;
    for (const auto& step : ladder) last = std::max(last, step.from.value() + step.from.value() / 4);
    last = std::min(last, catalogue::kMaxPieces);
    const auto stride = (last + kMostQuantities - 1) / kMostQuantities;
    std::vector<std::int64_t> quantities;
    for (std::int64_t n = 1; n <= last; n += stride) quantities.push_back(n);
    for (const auto& step : ladder)
        for (const auto n : {step.from.value() - 1, step.from.value()})
            if (n >= 1 && n <= last) quantities.push_back(n);
    std::sort(quantities.begin(), quantities.end());
    quantities.erase(std::unique(quantities.begin(), quantities.end()), quantities.end());
    return quantities;
}

/// Every quantity that comes to less than the one shown before it.
std::vector<Cliff> cliffsOf(const std::vector<QuantityPrice>& points) {
    std::vector<Cliff> cliffs;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i].total >= points[i - 1].total) continue;
        std::size_t from = i - 1;
        while (from > 0 && points[from - 1].total > points[i].total) --from;
        cliffs.push_back({points[from].quantity, points[i].quantity, points[i].total});
    }
    return cliffs;
}

} // namespace

const QuantityPrice* LadderCurve::at(Count quantity) const {
    const auto found =
        std::lower_bound(points.begin(), points.end(), quantity,
                         [](const QuantityPrice& point, Count wanted) { return point.quantity < wanted; });
    return found != points.end() && found->quantity == quantity ? &*found : nullptr;
}

base::Result<LadderCurve> ladderCurve(catalogue::OrderLine line, const catalogue::PriceBook& book,
                                      layout::FitMemo& fits) {
    line.overrideEach.reset();
    line.sizes.clear();
    catalogue::Order order;
    order.lines.push_back(std::move(line));
    LadderCurve curve;
    for (const auto quantity : quantitiesOf(book.shop.rules.ladder)) {
        order.lines.front().quantity = Count::of(quantity);
        const auto priced = priceOrder(order, book, fits);
        if (!priced) return base::fail(priced.error());
        curve.points.push_back({Count::of(quantity), priced->lines.front().each, priced->subtotal});
    }
    curve.cliffs = cliffsOf(curve.points);
    return curve;
}

} // namespace sp::pricing

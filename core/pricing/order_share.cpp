// SPDX-License-Identifier: MIT
#include "core/pricing/order_share.h"

#include "core/base/overflow.h"
#include "core/costing/cost_line.h"
#include "core/needs/order_packing.h"
#include "core/pricing/card_fee.h"
#include "core/pricing/messages.h"
#include "core/units/apportion.h"

namespace sp::pricing {

namespace {

using costing::OrderShare;
using units::Fraction;
using units::Money;

/// Puts the packing of the order into the shares.
base::Done sharePacking(const catalogue::Order& order, const catalogue::PriceBook& book, layout::FitMemo& fits,
                        const std::vector<needs::OrderPacking>& packing, std::int64_t rules,
                        std::vector<OrderShare>& shares) {
    std::vector<Money> costs;
    costs.reserve(order.lines.size());
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        const auto cost = costing::costFigures(order.lines[i], book, fits, shares[i], rules);
        if (!cost) return base::fail(cost.error());
        costs.push_back(cost->total);
    }
    for (const auto& [material, amount, lines] : packing) {
        std::vector<Money> weights;
        for (const auto line : lines) weights.push_back(costs[line]);
        const auto& priced = *book.find(material); // costing has refused a material without a price
        const auto goods = Money::fromExact(priced.price->each() * Fraction::of(amount.value()));
        const auto freight = rules < 3 ? Money{} : Money::fromExact(goods.exact() * priced.freight.ratio());
        const auto parts = units::inProportion(goods, weights);
        const auto freights = units::inProportion(freight, std::move(weights));
        for (std::size_t i = 0; i < lines.size(); ++i) {
            shares[lines[i]].packing += parts[i];
            shares[lines[i]].freight += freights[i];
        }
    }
    return {};
}

} // namespace

base::Result<std::vector<OrderShare>> orderShares(const catalogue::Order& order, const catalogue::PriceBook& book,
                                                  layout::FitMemo& fits, std::int64_t rules) {
    std::vector<OrderShare> shares(order.lines.size());
    for (std::size_t i = 0; i < shares.size(); ++i)
        shares[i].cardFixed = cardFeeShare(order, i, book.shop.rules, rules);
    const auto packing = needs::orderPackingOf(order.lines, book.shop.packing);
    if (packing.empty()) return shares;
    try {
        if (auto ok = sharePacking(order, book, fits, packing, rules, shares); !ok) return base::fail(ok.error());
        return shares;
    } catch (const base::Overflow&) { return base::fail(Fault::OrderTooLarge, "order"); }
}

} // namespace sp::pricing

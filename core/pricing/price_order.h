// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/rules_version.h"
#include "core/costing/cost_sheet.h"
#include "core/layout/fit_memo.h"
#include "core/pricing/card_fee.h"
#include "core/pricing/order_share.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::pricing {

using catalogue::kFirstRulesVersion;
using catalogue::kRulesVersion;

/// No order or line comes to more than this (a thousand million of the currency).
inline constexpr units::Money kMaxMoney = units::Money::fromMicros(1'000'000'000LL * units::kMicrosPerUnit);

enum class PriceCoverage {
    Pays,      ///< covers the full cost
    BelowCost, ///< covers what is paid out, but not the full cost
    BelowFloor ///< does not even cover what is paid out
};

/// What the shop earns by a line of an order or by all of it, whatever came between the prices of pieces and what is
/// paid. All amounts are without tax.
struct Earnings {
    units::Money net;                  ///< what the customer pays for it: after rush, discount and minimum, without tax
    units::Money cost;                 ///< what it costs the shop
    units::Money paidOut;              ///< the part of it that is paid out
    units::Money ownTax;               ///< in cost and paid out: the tax that the shop bears on what it gives away
    units::Money cardFee;              ///< what the card takes of all that is paid, of the tax too
    units::Money floor;                ///< the price without tax that leaves what is paid out after its card fee
    units::Money profit;               ///< net − card fee − cost
    std::optional<units::Rate> markUp; ///< profit of the cost
    std::optional<units::Rate> margin; ///< profit of the net
    std::optional<units::Money>
        perBenchHour; ///< (profit + own labour) ÷ hours at the bench, both with those of spoiled pieces
    PriceCoverage coverage = PriceCoverage::Pays;

    friend bool operator==(const Earnings&, const Earnings&) = default;
};

/// What some pieces of a line are charged more than the others, or all of them for what is named.
struct Surcharge {
    std::string name;   ///< of the size, or of the place as the shop writes it
    units::Count count; ///< pieces
    units::Money each;
    units::Money amount; ///< each × pieces

    friend bool operator==(const Surcharge&, const Surcharge&) = default;
};

/// What is asked for a line, before anything that is of the whole order. All amounts but the cost are whole minor
/// units.
struct LinePrice {
    costing::LineCost cost;
    units::Rate ladderMarkUp;                 ///< of the ladder at this quantity
    units::Money calculatedEach;              ///< from cost, ladder and rounding rule; without surcharges
    units::Money each;                        ///< the price asked: the typed one, else the calculated one
    std::optional<units::Money> typedWithTax; ///< what was typed, where an exempt customer pays `each`, without the tax
    units::Money floor;                       ///< see Earnings
    units::Money goods;                       ///< each × pieces
    std::vector<Surcharge> sizes;
    std::vector<Surcharge> places; ///< of all pieces, for designs at places that have a surcharge
    units::Money setUp;            ///< art and set-up as a line of its own; zero when spread over the pieces or waived
    units::Money charged;          ///< goods + sizes + places + set-up
    units::Money ownTax;           ///< see Earnings
};

/// A line of a priced order. The shares, like the earnings' `net`, add up to what the order has.
struct PricedLine : LinePrice {
    units::Money adjusted; ///< its share of rush − discount + what the minimum adds, by what the lines charge
    Earnings earnings;     ///< of `charged` + `adjusted`
};

enum class TaxStanding {
    Charged,
    Exempt,          ///< a certificate in force is on file
    ExemptionMissing ///< asked for, but no certificate in force is on file: tax is charged
};

/// The tax of one rate.
struct TaxAmount {
    std::string name; ///< of the rate, as printed
    units::Rate rate;
    units::Money on; ///< what the lines with that rate come to, with the tax where prices include it
    units::Money tax;

    friend bool operator==(const TaxAmount&, const TaxAmount&) = default;
};

/// A priced order. `goods` + `rush` − `discount` + `minimumOrderCharge` = `subtotal`; `subtotal` + `tax` = `total`,
/// except where prices include the tax: then `total` is `subtotal` and `tax` is the part of it. `deposit` + `balance` =
/// `total`.
struct PricedOrder {
    std::vector<PricedLine> lines;
    units::Money goods;
    units::Rate rushRate;
    units::Money rush;
    units::Money discount;
    units::Money minimumOrderCharge; ///< up to the minimum order
    units::Money subtotal;
    units::Money tax;
    std::vector<TaxAmount> taxes; ///< `tax` by rate, in the order of the shop's rates; those that lines are taxed at
    bool taxIncluded = false;
    TaxStanding taxStanding = TaxStanding::Charged;
    units::Money total;
    units::Money deposit;
    units::Money balance;
    Earnings earnings;                  ///< of all its lines
    std::int64_t rules = kRulesVersion; ///< by which it was priced
};

/// Prices an order. The same order and book always give the same figures. What the shop set itself (typed prices,
/// surcharges of sizes, the minimum order) is with the tax where its prices include it, and loses the tax where none is
/// charged: for an exempt customer, surcharges on a line without tax too, the minimum where no line has tax. A typed
/// price of a line without tax and a discount in money are as typed. The smallest order holds the shop's usual rate.
/// The calculated price keeps cost and mark-up after the card fee expected of it; what the card takes is reckoned anew
/// from what is to pay. What is given away has no price, its cost counts, and the smallest order is asked of paid lines
/// alone. `rules` below kRulesVersion: as it was then. Errors: what costing refuses, with the line named;
/// OutOfRange for a discount, a day or a rate outside its range; Missing for an order without lines; TooLarge beyond
/// kMaxMoney.
base::Result<PricedOrder> priceOrder(const catalogue::Order& order, const catalogue::PriceBook& book,
                                     layout::FitMemo& fits, std::int64_t rules = kRulesVersion);

/// Prices one line of an order that has been costed, see costLines.
base::Result<LinePrice> priceLine(const catalogue::OrderLine& line, CostedLine costed, const catalogue::PriceBook& book,
                                  bool exempt, layout::FitMemo& fits, std::int64_t rules = kRulesVersion);

/// The cost sheet of a line of a priced order; `line` is its number from 0.
/// Errors: as costLine.
base::Result<costing::CostSheet> costSheetOf(const catalogue::Order& order, std::size_t line,
                                             const catalogue::PriceBook& book, layout::FitMemo& fits,
                                             std::int64_t rules = kRulesVersion);

/// Whether the order's customer is exempt from tax on the order's day.
TaxStanding taxStanding(const catalogue::Order& order, const catalogue::PriceBook& book);

} // namespace sp::pricing

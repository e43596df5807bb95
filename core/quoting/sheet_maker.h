// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/pricing/ladder.h"
#include "core/pricing/price_order.h"
#include "core/quoting/sheet_content.h"
#include "core/quoting/sheet_words.h"
#include "core/units/date.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sp::quoting {

/// Of an order with more lines no ladders are printed: beyond that they help nobody to choose.
inline constexpr std::size_t kMaxLadders = 4;

/// A choice of an order that is not looked at, alone (see catalogue::withChoice), with what it comes to.
struct PricedChoice {
    catalogue::Order order;
    /// None where it has no price; then its name is all that there is of it.
    std::optional<pricing::PricedOrder> priced;
    std::vector<std::vector<pricing::LadderPrice>> ladders;  ///< see SheetInput
    std::vector<std::optional<pricing::MoreForLess>> offers; ///< see SheetInput
};

struct SheetInput {
    std::string number; ///< "2026-0042"; empty: a draft
    const catalogue::Order& order;
    const catalogue::PriceBook& book;
    const pricing::PricedOrder& priced; ///< of that order from that book
    /// One for each line or none at all; printed when the shop wants it on the sheet and the order has at most
    /// kMaxLadders lines.
    std::span<const std::vector<pricing::LadderPrice>> ladders;
    std::optional<units::Date> validUntil;
    const SheetWords& words;
    /// One for each line or none at all: what stands in its note.
    std::span<const std::optional<pricing::MoreForLess>> offers = {};
    /// The choices of the order that are not looked at, each one of them, in their order.
    std::span<const PricedChoice> others = {};
};

/// The sheet of a priced order.
SheetContent contentOf(const SheetInput& input);

/// The prices of other quantities for each line of a priced order, as a sheet shows them; none for an order with more
/// than kMaxLadders lines. Errors: as pricing::ladderFor.
base::Result<std::vector<std::vector<pricing::LadderPrice>>> laddersOf(const catalogue::Order& order,
                                                                       const catalogue::PriceBook& book,
                                                                       const pricing::PricedOrder& priced,
                                                                       layout::FitMemo& fits);

/// Prices the choices of an order that are not looked at. One that has no price has none, and `why` says why it has
/// not, if it is given: for the first such, with its number, from 0.
std::vector<PricedChoice> priceOthers(const catalogue::Order& order, const catalogue::PriceBook& book,
                                      layout::FitMemo& fits, std::optional<std::pair<std::int64_t, base::Error>>& why,
                                      std::int64_t rules = pricing::kRulesVersion);

/// Where more pieces of a line come to less, for each line of a priced order; none where the shop does not want it
/// said.
std::vector<std::optional<pricing::MoreForLess>> offersOf(const catalogue::Order& order,
                                                          const catalogue::PriceBook& book,
                                                          const pricing::PricedOrder& priced, layout::FitMemo& fits);

/// The sheet of an order of which only the total is known any more: that stands, and the sheet says that its lines
/// cannot be shown.
SheetContent contentOfTotal(const std::string& number, const catalogue::Order& order, const catalogue::PriceBook& book,
                            units::Money total, std::optional<units::Date> validUntil, const SheetWords& words);

} // namespace sp::quoting

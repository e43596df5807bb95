// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/left_out.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace sp::quoting {

/// What a new shop settles before its first quote, in the order in which it needs it.
enum class FirstStep : std::uint8_t {
    Letterhead,
    MoneyAndTax,
    HoursWorth, ///< of labour, and what a month costs
    EveryLine,  ///< tape and template
    Stones,     ///< one that has a price
    Design,
    Quote
};
inline constexpr std::array kFirstSteps{FirstStep::Letterhead, FirstStep::MoneyAndTax, FirstStep::HoursWorth,
                                        FirstStep::EveryLine,  FirstStep::Stones,      FirstStep::Design,
                                        FirstStep::Quote};

/// What the book has so far.
struct FirstThings {
    const catalogue::PriceBook& book;
    bool hasDesign = false;
    bool hasQuote = false; ///< one was given
};

/// Whether nothing of the step is missing: there is something, or it is meant that there is nothing.
bool isSettled(FirstStep step, const FirstThings& things);

/// An order on which is tried what a price is made of today.
struct Trial {
    catalogue::Order order; ///< one line
    pricing::PricedOrder priced;
    costing::CostSheet cost;
    std::vector<pricing::LeftOut> leftOut;
    units::Money perTenAnHour; ///< what ten of the currency more for an hour of labour add to the price of a piece
};

inline constexpr units::Count kTrialPieces = units::Count::of(24);

/// So many pieces of the design, quoted on that day; on a garment of the customer's where it has no usual base.
/// Errors: as pricing::priceOrder.
base::Result<Trial> trialOf(const catalogue::Design& design, const catalogue::PriceBook& book, units::Date today,
                            layout::FitMemo& fits);

/// Where a shop has no design of its own yet: 3.5 in wide and high, in at most two of its stones that have a price, by
/// name, on its first backing with one. None while no stone has a price.
std::optional<catalogue::Design> trialDesign(const catalogue::PriceBook& book);

} // namespace sp::quoting

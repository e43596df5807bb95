// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/sheet_maker.h"
#include "tests/support/amounts.h"

#include <random>
#include <string>
#include <vector>

namespace sp::test {

/// An order with the book it is priced from. Names and prices are invented.
struct Sale {
    catalogue::PriceBook book;
    catalogue::Order order;

    pricing::PricedOrder priced() const;
    /// With the ladders of its lines. An empty number: a draft.
    quoting::SheetContent sheet(const quoting::SheetWords& words, const std::string& number = "2026-0042") const;
};

using support::cents;

/// Three lines for an exempt studio, wanted in a hurry: the order of the counter picture that the look was drawn from.
/// By hand: 24 × 6.95 + 6 × 31.50 + 2 × 2.75 + 9.00 = 370.30; a tenth for the rush is 37.03; together 407.33; half of
/// it, up to the next 5, is 205.00.
Sale studioSale();

/// The first line only, no hurry, no customer.
Sale shortSale();

/// `lines` lines with different pieces, prices and titles.
Sale longSale(int lines);

/// Anything a shop may meet: currency, tax, discount, rush, smallest order, sizes, set-up, number of lines.
Sale anySale(std::mt19937_64& random);

} // namespace sp::test

// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/pricing/ladder.h"
#include "core/pricing/price_order.h"
#include "core/units/count.h"
#include "core/units/date.h"
#include "core/units/money.h"
#include "core/units/text.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sp::paper {

// What the customer gets to read, in words and in the order of reading: the quote sheet on paper and the front of the
// slip on the screen. All text is UTF-8. There is no cost, no mark-up, no profit and no need of stones in it.

/// An amount of whole minor units and how it is printed; `text` reads back to `value`.
struct SheetAmount {
    units::Money value;
    std::string text;

    friend bool operator==(const SheetAmount&, const SheetAmount&) = default;
};

struct StoneColour {
    std::string name;
    std::uint32_t rgb = 0; ///< 0xRRGGBB

    friend bool operator==(const StoneColour&, const StoneColour&) = default;
};

/// A row with an amount of its own. `running` is the sum of all amounts from the top of the sheet down to this one:
/// what is carried forward when a page ends here.
struct SheetRow {
    std::string label;
    SheetAmount amount;
    SheetAmount running;

    friend bool operator==(const SheetRow&, const SheetRow&) = default;
};

/// An ordered line: `amount` is `each` × pieces, `extras` (surcharges by size, then set-up) come on top.
struct SheetLine {
    std::string pieces;
    std::string title;
    std::string detail; ///< "Clear backing, 3 1/2 × 2 3/4 in · Aquamarine SS10, Jet SS10"; may be empty
    std::vector<StoneColour> stones;
    std::string each;
    SheetAmount amount;
    SheetAmount running;
    std::vector<SheetRow> extras;
    std::string note; ///< "Templates on the wall: no set-up charged"; may be empty

    friend bool operator==(const SheetLine&, const SheetLine&) = default;
};

struct SheetFact {
    std::string label;
    std::string value;

    friend bool operator==(const SheetFact&, const SheetFact&) = default;
};

/// `note` belongs below the label, smaller; may be empty.
struct SheetTax {
    std::string label;
    std::string note;
    SheetAmount amount;

    friend bool operator==(const SheetTax&, const SheetTax&) = default;
};

struct LadderStep {
    units::Count quantity;
    std::string pieces; ///< the same, as printed
    std::string each;
    bool isOrdered = false;

    friend bool operator==(const LadderStep&, const LadderStep&) = default;
};

struct SheetLadder {
    std::string title;             ///< of the line
    std::vector<LadderStep> steps; ///< by pieces, ascending

    friend bool operator==(const SheetLadder&, const SheetLadder&) = default;
};

/// The column of amounts adds up as printed: lines with their extras and the adjustments to `together`, that and a
/// tax that is charged on top to `toPay`, deposit and balance to `toPay` again.
struct SheetContent {
    std::string shopName;
    std::vector<std::string> shopLines;
    std::string title;            ///< "Quote 2026-0042", or "Draft" while it has no number
    std::string version;          ///< "Version 2"; empty for the first
    std::string demo;             ///< what a demo book says on every page; else empty
    std::vector<SheetFact> facts; ///< the days: quoted, valid until, wanted by
    std::string customerName;     ///< empty when nobody is named
    std::vector<std::string> customerLines;
    std::string currency; ///< ISO 4217

    std::vector<SheetLine> lines;
    std::vector<SheetRow> adjustments; ///< rush, discount, top-up to the smallest order, those there are
    SheetAmount together;
    bool showsTogether = false;  ///< false where it would only say `toPay` twice
    std::optional<SheetTax> tax; ///< on top of `together`
    std::string taxIncluded;     ///< the sentence instead, where the prices hold the tax; else empty
    SheetAmount toPay;
    std::optional<SheetAmount> deposit; ///< with `balance`; none where none is asked
    SheetAmount balance;

    std::vector<SheetLadder> ladders;
    std::string ladderNote; ///< what the ladder's prices leave out
    std::vector<std::string> terms;
    std::vector<std::string> care;
    std::string code; ///< the short code of the frozen quote; may be empty

    friend bool operator==(const SheetContent&, const SheetContent&) = default;
};

/// "25 Nov 2026", and "Fri 11 Dec 2026" with the day of the week, in English.
std::string plainDate(units::Date day);
std::string weekdayDate(units::Date day);

/// How numbers and days are written; the app passes its locale's.
struct SheetWords {
    units::NumberStyle numbers;
    std::function<std::string(units::Date)> date = plainDate;
    std::function<std::string(units::Date)> weekday = weekdayDate;
};

struct SheetInput {
    std::string number; ///< "2026-0042"; empty: a draft
    int version = 1;
    const catalogue::Order& order;
    const catalogue::PriceBook& book;
    const pricing::PricedOrder& priced; ///< of that order from that book
    /// One for each line or none at all; printed when the shop wants it on the sheet and the order has at most
    /// kMostLadders lines (beyond that it helps nobody to choose).
    std::span<const std::vector<pricing::LadderPrice>> ladders;
    std::optional<units::Date> validUntil;
    std::string code;
    SheetWords words;
};

inline constexpr std::size_t kMostLadders = 4;

SheetContent contentOf(const SheetInput& input);

} // namespace sp::paper

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/catalogue/design.h"
#include "core/units/count.h"
#include "core/units/date.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sp::catalogue {

/// The most pieces of a line. Beyond it a number is a slip of the finger, not an order.
inline constexpr std::int64_t kMaxPieces = 1'000'000;

/// So many of the line's pieces are of that size of the blank.
struct SizeCount {
    std::string size;
    units::Count count;

    friend bool operator==(const SizeCount&, const SizeCount&) = default;
};

/// One line of an order. A line keeps its own copy of the design's size and stones, so that a later change of the
/// design does not reach into it; a one-off has no design at all.
struct OrderLine {
    base::Id id;
    base::Id design;   ///< none for a one-off
    std::string title; ///< "Lantern"
    units::Length width;
    units::Length height;
    std::vector<StoneCount> stones;
    base::Id baseMaterial; ///< backing or blank; none when the customer brings the garment
    bool customersGarment = false;
    bool templatesOnWall = false;
    std::optional<units::Count> plannedPieces;      ///< see Design
    std::optional<units::Duration> artTime;         ///< see Design
    std::optional<std::vector<PackingUse>> packing; ///< see Design
    units::Count quantity = units::Count::of(1);
    std::vector<SizeCount> sizes;             ///< of a blank; what is not listed is of the plain size
    std::optional<units::Money> overrideEach; ///< the price the owner asks instead of the reckoned one
    bool taxable = true;
    std::string taxRate = {}; ///< the name of a rate of the shop's; empty: the usual one

    friend bool operator==(const OrderLine&, const OrderLine&) = default;
};

/// What goes with the pieces of the line and with its order: its own packing, else what the shop takes.
inline const std::vector<PackingUse>& packingOf(const OrderLine& line, const std::vector<PackingUse>& ofShop) {
    return line.packing ? *line.packing : ofShop;
}

/// One piece of a design, as an order takes it over.
OrderLine lineOf(const Design& design);

/// At most one of the two is set.
struct Discount {
    std::optional<units::Rate> share;
    std::optional<units::Money> amount;

    friend bool operator==(const Discount&, const Discount&) = default;
};

/// What is asked for at the counter, as typed.
struct Order {
    base::Id customer; ///< may be none
    units::Date quotedOn;
    std::optional<units::Date> wantedBy;
    Discount discount;
    bool asksExemption = false; ///< granted only with a certificate in force on file
    std::vector<OrderLine> lines;

    friend bool operator==(const Order&, const Order&) = default;
};

} // namespace sp::catalogue

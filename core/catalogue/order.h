// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/catalogue/choice.h"
#include "core/catalogue/design.h"
#include "core/units/count.h"
#include "core/units/date.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
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

/// The most designs on one blank.
inline constexpr std::size_t kMaxPlaces = 8;

/// A design where it is set on the piece. It keeps its own copy of the design's size and stones, so that a later change
/// of the design does not reach into it; a one-off has no design at all.
struct Placement {
    base::Id design;   ///< none for a one-off
    std::string title; ///< the design's name; empty: the line's title is
    std::string place; ///< where on the piece, "Front"; may be empty
    units::Length width;
    units::Length height;
    std::vector<StoneCount> stones;
    bool templatesOnWall = false;
    std::optional<units::Count> plannedPieces; ///< see Design
    std::optional<units::Duration> artTime;    ///< see Design

    friend bool operator==(const Placement&, const Placement&) = default;
};

/// One line of an order: so many pieces of a blank or a backing, each with one design or several on it; or, without
/// any design, a charge.
struct OrderLine {
    base::Id id;
    std::string title; ///< "Lantern"
    /// One at least on a piece, the first is the one that the line is known by; none on a charge.
    std::vector<Placement> places = std::vector<Placement>(1);
    base::Id baseMaterial; ///< backing or blank; none when the customer brings the garment
    bool customersGarment = false;
    std::optional<std::vector<PackingUse>> packing; ///< see Design
    units::Count quantity = units::Count::of(1);
    std::vector<SizeCount> sizes;             ///< of a blank; what is not listed is of the plain size
    std::optional<units::Money> overrideEach; ///< the price the owner asks instead of the reckoned one
    bool taxable = true;
    bool atNoCharge = false;  ///< done again, a sample, a gift: no price, its cost counts
    std::string taxRate = {}; ///< the name of a rate of the shop's; empty: the usual one

    bool isCharge() const { return places.empty(); }
    /// The place that the line is known by; of a charge there is none.
    const Placement& first() const { return places.at(0); }
    Placement& first() { return places.at(0); }

    friend bool operator==(const OrderLine&, const OrderLine&) = default;
};

/// What goes with the pieces of the line and with its order: its own packing, else what the shop takes. A charge is
/// not packed.
const std::vector<PackingUse>& packingOf(const OrderLine& line, const std::vector<PackingUse>& ofShop);

/// A design as an order takes it over.
Placement placementOf(const Design& design);

/// One piece of a design.
OrderLine lineOf(const Design& design);

/// At most one of the two is set.
struct Discount {
    std::optional<units::Rate> share;
    std::optional<units::Money> amount;

    friend bool operator==(const Discount&, const Discount&) = default;
};

/// One of the choices that a customer weighs: on a tee or on a hoodie, 24 or 36.
struct Choice {
    std::string title; ///< the shop's own name for it; empty: it is known by what tells it from the others
    Discount discount;
    std::vector<OrderLine> lines;

    friend bool operator==(const Choice&, const Choice&) = default;
};

/// What is asked for at the counter, as typed. Its title, discount and lines are those of the choice that is looked at,
/// which is the one that is priced, planned and bought for; most orders have no other.
struct Order {
    base::Id customer; ///< may be none
    units::Date quotedOn;
    std::optional<units::Date> wantedBy;
    std::string title; ///< see Choice
    Discount discount;
    bool asksExemption = false; ///< granted only with a certificate in force on file
    bool atNoCharge = false;    ///< every line of it
    std::vector<OrderLine> lines;
    std::vector<Choice> others; ///< the choices that are not looked at, in their order; at most kMaxChoices − 1
    std::int64_t choice = 0;    ///< the number of the one that is looked at, from 0, among all of them

    friend bool operator==(const Order&, const Order&) = default;
};

std::size_t choiceCount(const Order& order);
/// The choices, each in its place.
std::vector<Choice> choicesOf(const Order& order);
/// Looks at the choice with that number, from 0; it must be there.
void lookAtChoice(Order& order, std::int64_t number);
/// The order as it is if the customer takes that choice, without the others.
Order withChoice(const Order& order, std::int64_t number);
/// One more choice, last, the same as the one that is looked at but for its title, and looks at it. There must be fewer
/// than kMaxChoices.
void addChoice(Order& order);
/// Takes the choice that is looked at out and looks at the one after it, or at the last. There must be another.
void removeChoice(Order& order);

/// Whether two names of a place on the piece mean the same one; an empty one means none.
bool isOnePlace(std::string_view a, std::string_view b);

/// Whether a line of the order is given away.
inline bool isGivenAway(const Order& order, const OrderLine& line) { return order.atNoCharge || line.atNoCharge; }

} // namespace sp::catalogue

// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"
#include "core/units/text.h"

#include <optional>
#include <string>
#include <vector>

// What tells a revised order from the one it was, line by line. Both are looked at by the choice that is looked at.
namespace sp::pricing {

/// What an order came to, of its lines and of what is of the whole. Its parts add up to `total`, unless an earlier
/// program reckoned them.
struct OrderAmounts {
    struct Line {
        units::Money each;
        units::Money charged; ///< with sizes, places and set-up

        friend bool operator==(const Line&, const Line&) = default;
    };
    std::vector<Line> lines; ///< one for each of the order, or none where they are not known
    units::Money rush;
    units::Money discount;           ///< taken off
    units::Money minimumOrderCharge; ///< up to the smallest order
    units::Money tax;                ///< on top; nothing where prices include it
    units::Money total;

    friend bool operator==(const OrderAmounts&, const OrderAmounts&) = default;
};

OrderAmounts amountsOf(const PricedOrder& priced);

/// One of the two orders: as it is asked, with the names of its book, and what it came to.
struct OrderSide {
    const catalogue::Order& order;
    const catalogue::PriceBook& book;
    OrderAmounts amounts;
};

/// Something that is not as it was: of a line its pieces, its base, a size; of an order its day, its customer.
struct ChangedPart {
    base::Message what;
    base::Value was; ///< both empty where no figure or name says it
    base::Value is;

    friend bool operator==(const ChangedPart&, const ChangedPart&) = default;
};

enum class LineFate { Same, Changed, Added, Removed };

/// A line before and after. One that is not there has nothing ordered and comes to nothing.
struct LineDifference {
    struct Side {
        std::string title;
        units::Count quantity;
        units::Money each;
        units::Money charged;

        friend bool operator==(const Side&, const Side&) = default;
    };

    LineFate fate = LineFate::Same;
    std::optional<Side> was; ///< none of one that was added
    std::optional<Side> is;  ///< none of one that was removed
    std::vector<ChangedPart> parts;

    const std::string& title() const { return is ? is->title : was->title; }
    units::Money difference() const;

    friend bool operator==(const LineDifference&, const LineDifference&) = default;
};

/// An amount of the whole order that is not as it was: rush, discount (below nothing), smallest order, tax.
struct AmountDifference {
    base::Message what;
    units::Money was;
    units::Money is;

    units::Money difference() const { return is - was; }

    friend bool operator==(const AmountDifference&, const AmountDifference&) = default;
};

/// The differences of the lines and of the amounts add up to `totalIs` − `totalWas` exactly; what an earlier program
/// reckoned otherwise is the last of the amounts, Note::ReckonedOtherwise.
struct OrderDifference {
    units::Money totalWas;
    units::Money totalIs;
    std::vector<LineDifference> lines; ///< in the order of the newer; what was removed after the line it followed
    std::vector<AmountDifference> amounts;
    std::vector<ChangedPart> parts; ///< of the order itself, but for its day

    units::Money difference() const { return totalIs - totalWas; }
    /// Whether anything is asked for or comes to anything else.
    bool isNothing() const;
};

/// Which line of the older order each of the newer is, none where it was added: those that are the same first, then
/// those called alike, then those of the same design, then those that were only called something else. Each is one at
/// most.
std::vector<std::optional<std::size_t>> matchedLines(const std::vector<catalogue::OrderLine>& was,
                                                     const std::vector<catalogue::OrderLine>& is);

/// What became of `was`. Throws base::Overflow, as no total that was ever given does.
OrderDifference differenceOf(const OrderSide& was, const OrderSide& is, const units::NumberStyle& style = {});

} // namespace sp::pricing

// SPDX-License-Identifier: MIT
#pragma once

#include "core/costing/part.h"
#include "core/units/count.h"
#include "core/units/duration.h"
#include "core/units/fraction.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"
#include "core/units/unit_price.h"

#include <cstdint>
#include <variant>
#include <vector>

namespace sp::costing {

/// A price for an hour.
struct PerHour {
    units::Money price;

    friend bool operator==(const PerHour&, const PerHour&) = default;
};

using OperandValue = std::variant<std::int64_t, units::Count, units::Money, units::Rate, units::Duration, units::Length,
                                  units::UnitPrice, PerHour>;

/// A rule as a value: operands by name, put together. Money counts in micro-units, rates as shares, times in
/// milliseconds (so a PerHour is micro-units a millisecond), lengths in nanometres.
struct Formula {
    enum class Kind : std::uint8_t {
        Parts,         ///< the sum of the node's parts
        Number,        ///< `value`, which has no name: 1, 100
        Named,         ///< the operand with its `value`; `of` tells how it is made, where it follows from others
        Sum,           ///< of[0] + of[1]
        Difference,    ///< of[0] − of[1]
        Product,       ///< of[0] × of[1]
        Quotient,      ///< of[0] ÷ of[1]
        Ceiling,       ///< ⌈of[0]⌉
        ToMillisecond, ///< of[0] rounded half to even
    };

    Kind kind = Kind::Parts;
    Operand operand = Operand::Pieces;
    OperandValue value = std::int64_t{0};
    std::vector<Formula> of = {};

    /// The value of an operand of that name, wherever it stands in the formula; null where there is none.
    const OperandValue* find(Operand name) const;

    friend bool operator==(const Formula&, const Formula&) = default;
};

/// What the formula comes to, exactly, in the units above. Of an operand that follows from others it is the `value`;
/// `holds` compares the two. Throws base::Overflow. A formula of Kind::Parts comes to nothing by itself.
units::Fraction evaluate(const Formula& formula);

/// Whether every operand in it that follows from others is what it is said to follow from. Throws base::Overflow.
bool holds(const Formula& formula);

/// The value alone, in the units above.
inline units::Fraction exactly(std::int64_t value) { return units::Fraction::of(value); }
inline units::Fraction exactly(units::Count value) { return units::Fraction::of(value.value()); }
inline units::Fraction exactly(units::Money value) { return value.exact(); }
inline units::Fraction exactly(units::Rate value) { return units::Fraction::ratio(value.ppm(), units::kPpm); }
inline units::Fraction exactly(units::Duration value) { return units::Fraction::of(value.milliseconds()); }
inline units::Fraction exactly(units::Length value) { return units::Fraction::of(value.nanometres()); }
inline units::Fraction exactly(const units::UnitPrice& value) { return value.each(); }
inline units::Fraction exactly(const PerHour& value) {
    return units::Fraction::ratio(value.price.micros(), units::kMillisecondsPerHour);
}

// A rule is written once, for both of these: Exact makes the figure at once and asks for no memory, Traced the formula.

struct Exact {
    template<class Value>
    units::Fraction operator()(Operand, const Value& value) const {
        return exactly(value);
    }
    /// An operand that follows from others; `how` is asked for only where the formula is wanted.
    template<class Value, class How>
    units::Fraction operator()(Operand, const Value& value, How) const {
        return exactly(value);
    }
    units::Fraction number(std::int64_t value) const { return units::Fraction::of(value); }
    units::Fraction nothing() const { return {}; }
    /// 1 − share.
    units::Fraction without(Operand, units::Rate share) const {
        return units::Fraction::ratio(units::kPpm - share.ppm(), units::kPpm);
    }
    /// 1 ÷ (1 − share) − 1: what is lost beside each that is not.
    units::Fraction lostBeside(Operand, units::Rate share) const {
        return units::Fraction::ratio(share.ppm(), units::kPpm - share.ppm());
    }
};

Formula operator+(Formula a, Formula b);
Formula operator-(Formula a, Formula b);
Formula operator*(Formula a, Formula b);
Formula operator/(Formula a, Formula b);
Formula ceiling(Formula of);
Formula toMillisecond(Formula of);

struct Traced {
    Formula operator()(Operand name, OperandValue value) const { return {Formula::Kind::Named, name, value, {}}; }
    template<class How>
    Formula operator()(Operand name, OperandValue value, How how) const {
        return {Formula::Kind::Named, name, value, {how(*this)}};
    }
    Formula number(std::int64_t value) const { return {Formula::Kind::Number, {}, value, {}}; }
    Formula nothing() const { return number(0); }
    Formula without(Operand name, units::Rate share) const { return number(1) - (*this)(name, share); }
    Formula lostBeside(Operand name, units::Rate share) const { return number(1) / without(name, share) - number(1); }
};

} // namespace sp::costing

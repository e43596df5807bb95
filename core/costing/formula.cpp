// SPDX-License-Identifier: MIT
#include "core/costing/formula.h"

#include <algorithm>
#include <utility>

namespace sp::costing {

namespace {

using units::Fraction;
using Kind = Formula::Kind;

Formula made(Kind kind, Formula a) {
    Formula formula{kind, {}, {}, {}};
    formula.of.push_back(std::move(a));
    return formula;
}

Formula made(Kind kind, Formula a, Formula b) {
    auto formula = made(kind, std::move(a));
    formula.of.push_back(std::move(b));
    return formula;
}

} // namespace

const OperandValue* Formula::find(Operand name) const {
    if (kind == Kind::Named && operand == name) return &value;
    for (const auto& part : of)
        if (const auto* found = part.find(name)) return found;
    return nullptr;
}

Fraction evaluate(const Formula& formula) {
    switch (formula.kind) {
    case Kind::Parts: return {};
    case Kind::Number:
    case Kind::Named: return std::visit([](const auto& value) { return exactly(value); }, formula.value);
    case Kind::Sum: return evaluate(formula.of[0]) + evaluate(formula.of[1]);
    case Kind::Difference: return evaluate(formula.of[0]) - evaluate(formula.of[1]);
    case Kind::Product: return evaluate(formula.of[0]) * evaluate(formula.of[1]);
    case Kind::Quotient: return evaluate(formula.of[0]) / evaluate(formula.of[1]);
    case Kind::Ceiling: return Fraction::of(evaluate(formula.of[0]).ceiling());
    case Kind::ToMillisecond: return Fraction::of(evaluate(formula.of[0]).roundedHalfEven());
    }
    return {};
}

bool holds(const Formula& formula) {
    if (formula.kind == Kind::Named && !formula.of.empty() && !(evaluate(formula.of[0]) == evaluate(formula)))
        return false;
    return std::all_of(formula.of.begin(), formula.of.end(), holds);
}

Formula operator+(Formula a, Formula b) { return made(Kind::Sum, std::move(a), std::move(b)); }
Formula operator-(Formula a, Formula b) { return made(Kind::Difference, std::move(a), std::move(b)); }
Formula operator*(Formula a, Formula b) { return made(Kind::Product, std::move(a), std::move(b)); }
Formula operator/(Formula a, Formula b) { return made(Kind::Quotient, std::move(a), std::move(b)); }
Formula ceiling(Formula of) { return made(Kind::Ceiling, std::move(of)); }
Formula toMillisecond(Formula of) { return made(Kind::ToMillisecond, std::move(of)); }

} // namespace sp::costing

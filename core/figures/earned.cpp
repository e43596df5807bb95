// SPDX-License-Identifier: MIT
#include "core/figures/earned.h"

#include "core/pricing/mark_up.h"

namespace sp::figures {

Earned& Earned::operator+=(const Earned& other) {
    pieces += other.pieces;
    income += other.income;
    cost += other.cost;
    paidOut += other.paidOut;
    cardFee += other.cardFee;
    labour += other.labour;
    bench += other.bench;
    isBenchKnown = isBenchKnown && other.isBenchKnown;
    return *this;
}

units::Money Earned::allCost() const { return cost + cardFee; }

units::Money Earned::left() const { return income - allCost(); }

units::Money Earned::contribution() const { return income - cardFee - paidOut; }

std::optional<units::Rate> Earned::margin() const { return pricing::marginOf(income, allCost()); }

std::optional<units::Money> Earned::perBenchHour() const {
    return isBenchKnown ? pricing::perBenchHour(left(), labour, bench) : std::nullopt;
}

} // namespace sp::figures

// SPDX-License-Identifier: MIT
#include "tests/support/plain_words.h"

#include <array>
#include <fmt/format.h>

namespace sp::test {

std::string PlainWords::date(units::Date day) const { return day.iso(); }

std::string PlainWords::weekdayDate(units::Date day) const { return "weekday " + day.iso(); }

quoting::SheetLabels PlainWords::labels() const {
    quoting::SheetLabels labels;
    labels.pieces = "pieces";
    labels.toPay = "toPay";
    return labels;
}

std::string PlainWords::quote(const std::string& number) const { return fmt::format("quote({})", number); }

std::string PlainWords::untaxed(const std::string& tax) const { return fmt::format("untaxed({})", tax); }
std::string PlainWords::moreForLess(const std::string& count, const std::string& amount,
                                    const std::string& ordered) const {
    return fmt::format("moreForLess({}, {}, {})", count, amount, ordered);
}

std::string PlainWords::surcharge(const std::string& count, const std::string& name, const std::string& each) const {
    return fmt::format("surcharge({}, {}, {})", count, name, each);
}

std::string PlainWords::rush(units::Date wantedBy, const std::string& percent) const {
    return fmt::format("rush({}, {})", wantedBy.iso(), percent);
}

std::string PlainWords::discount(const std::string& percent) const { return fmt::format("discount({})", percent); }

std::string PlainWords::topUp(const std::string& smallestOrder) const {
    return fmt::format("topUp({})", smallestOrder);
}

std::string PlainWords::tax(const std::string& tax, const std::string& percent) const {
    return fmt::format("tax({}, {})", tax, percent);
}

std::string PlainWords::taxOn(const std::string& tax, const std::string& percent, const std::string& amount) const {
    return fmt::format("taxOn({}, {}, {})", tax, percent, amount);
}

std::string PlainWords::taxExempt(const std::string& tax) const { return fmt::format("taxExempt({})", tax); }

std::string PlainWords::certificate(const std::string& number, const std::string& place) const {
    return fmt::format("certificate({}, {})", number, place);
}

std::string PlainWords::certificateDates(const std::string& issued, const std::string& expires) const {
    return fmt::format("certificateDates({}, {})", issued, expires);
}

std::string PlainWords::taxIncluded(const std::string& tax, const std::string& percent,
                                    const std::string& amount) const {
    return fmt::format("taxIncluded({}, {}, {})", tax, percent, amount);
}

std::string PlainWords::ladderNote(quoting::Surcharges surcharges, bool setUp, bool tax) const {
    constexpr std::array kSurcharges = {"none", "of sizes", "of places too"};
    return fmt::format("ladderNote({}, {}, {})", kSurcharges.at(static_cast<std::size_t>(surcharges)), setUp, tax);
}

} // namespace sp::test

// SPDX-License-Identifier: MIT
#include "app/words/sheet_words.h"

#include "app/words/shown.h"

#include <fmt/format.h>

#include <array>
#include <chrono>
#include <string_view>

namespace sp::words {

std::string plainDate(units::Date day) {
    static constexpr std::array<std::string_view, 12> kMonths{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                              "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    const std::chrono::year_month_day date{day.days()};
    return fmt::format("{} {} {}", unsigned{date.day()}, kMonths[unsigned{date.month()} - 1], int{date.year()});
}

std::string plainWeekdayDate(units::Date day) {
    static constexpr std::array<std::string_view, 7> kDays{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
    return fmt::format("{} {}", kDays[std::chrono::weekday{day.days()}.c_encoding()], plainDate(day));
}

std::string SheetWords::language() const {
    //: The BCP 47 tag of the language that this file translates into.
    return tr("en").toStdString();
}

quoting::SheetLabels SheetWords::labels() const {
    quoting::SheetLabels labels;
    labels.customer = tr("For").toStdString();
    labels.customerAgain = tr("for %1").toStdString();
    labels.pieces = tr("Pieces").toStdString();
    labels.what = tr("What").toStdString();
    labels.each = tr("Each").toStdString();
    labels.amount = tr("Amount").toStdString();
    labels.carriedForward = tr("Carried forward").toStdString();
    labels.broughtForward = tr("Brought forward").toStdString();
    labels.together = tr("Together").toStdString();
    labels.toPay = tr("To pay").toStdString();
    labels.deposit = tr("Deposit to start").toStdString();
    labels.balance = tr("On collection").toStdString();
    labels.ladders = tr("More or fewer").toStdString();
    labels.terms = tr("Terms").toStdString();
    labels.care = tr("Care and safety").toStdString();
    labels.page = tr("Page %1 of %2").toStdString();
    return labels;
}

std::string SheetWords::draft() const { return tr("Draft").toStdString(); }

std::string SheetWords::quote(const std::string& number) const {
    return tr("Quote %1").arg(shown(number)).toStdString();
}

std::string SheetWords::demo() const { return tr("Demo: invented names and prices").toStdString(); }

std::string SheetWords::quotedOn() const { return tr("Quoted").toStdString(); }

std::string SheetWords::validUntil() const { return tr("Valid until").toStdString(); }

std::string SheetWords::wantedBy() const { return tr("Wanted by").toStdString(); }

std::string SheetWords::ownGarment() const { return tr("On your own garment").toStdString(); }

std::string SheetWords::templatesOnWall() const { return tr("Templates on the wall: no set-up charged").toStdString(); }

std::string SheetWords::untaxed(const std::string& tax) const { return tr("No %1").arg(shown(tax)).toStdString(); }

std::string SheetWords::sizeExtra(const std::string& count, const std::string& size, const std::string& each) const {
    return tr("%1 at %2, + %3").arg(shown(count), shown(size), shown(each)).toStdString();
}

std::string SheetWords::setUp() const { return tr("Art and set-up").toStdString(); }

std::string SheetWords::rush(units::Date wantedBy, const std::string& percent) const {
    return tr("Rush, wanted by %1 (%2)").arg(shown(weekdayDate(wantedBy)), shown(percent)).toStdString();
}

std::string SheetWords::discount(const std::string& percent) const {
    if (percent.empty()) return tr("Discount").toStdString();
    return tr("Discount (%1)").arg(shown(percent)).toStdString();
}

std::string SheetWords::topUp(const std::string& smallestOrder) const {
    return tr("Up to our smallest order, %1").arg(shown(smallestOrder)).toStdString();
}

std::string SheetWords::tax(const std::string& tax, const std::string& percent) const {
    //: A tax and its rate: "Sales tax 8.875 %".
    return tr("%1 %2").arg(shown(tax), shown(percent)).toStdString();
}

std::string SheetWords::taxExempt(const std::string& tax) const {
    return tr("%1, exempt").arg(shown(tax)).toStdString();
}

std::string SheetWords::certificate(const std::string& number, const std::string& place) const {
    if (place.empty()) return tr("certificate %1").arg(shown(number)).toStdString();
    return tr("certificate %1, %2").arg(shown(number), shown(place)).toStdString();
}

std::string SheetWords::certificateDates(const std::string& issued, const std::string& expires) const {
    if (expires.empty()) return tr("Issued %1").arg(shown(issued)).toStdString();
    return tr("Issued %1, good until %2").arg(shown(issued), shown(expires)).toStdString();
}

std::string SheetWords::certificateMissing() const {
    return tr("Charged: no exemption certificate in force is on file").toStdString();
}

std::string SheetWords::roundedByLine() const { return tr("Rounded line by line").toStdString(); }

std::string SheetWords::taxIncluded(const std::string& tax, const std::string& percent,
                                    const std::string& amount) const {
    return tr("%1 %2 is in the price: %3").arg(shown(tax), shown(percent), shown(amount)).toStdString();
}

std::string SheetWords::linesLost() const {
    return tr("The lines of this quote can no longer be shown as they were given; its total stands.").toStdString();
}

std::string SheetWords::ladderNote(bool sizes, bool setUp, bool tax) const {
    const auto without = [&] {
        if (sizes && setUp)
            return tax ? tr("Each, before size surcharges, set-up, rush, discount and tax")
                       : tr("Each, before size surcharges, set-up, rush, discount");
        if (sizes)
            return tax ? tr("Each, before size surcharges, rush, discount and tax")
                       : tr("Each, before size surcharges, rush, discount");
        if (setUp)
            return tax ? tr("Each, before set-up, rush, discount and tax") : tr("Each, before set-up, rush, discount");
        return tax ? tr("Each, before rush, discount and tax") : tr("Each, before rush, discount");
    };
    return without().toStdString();
}

} // namespace sp::words

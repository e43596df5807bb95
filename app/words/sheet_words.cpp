// SPDX-License-Identifier: MIT
#include "app/words/sheet_words.h"

#include "app/words/shown.h"
#include "app/words/translations.h"

#include <algorithm>
#include <array>
#include <chrono>

namespace sp::words {

std::string plainDate(units::Date day) {
    static constexpr std::array kMonths{
        QT_TRANSLATE_NOOP("Days", "Jan"), QT_TRANSLATE_NOOP("Days", "Feb"), QT_TRANSLATE_NOOP("Days", "Mar"),
        QT_TRANSLATE_NOOP("Days", "Apr"), QT_TRANSLATE_NOOP("Days", "May"), QT_TRANSLATE_NOOP("Days", "Jun"),
        QT_TRANSLATE_NOOP("Days", "Jul"), QT_TRANSLATE_NOOP("Days", "Aug"), QT_TRANSLATE_NOOP("Days", "Sep"),
        QT_TRANSLATE_NOOP("Days", "Oct"), QT_TRANSLATE_NOOP("Days", "Nov"), QT_TRANSLATE_NOOP("Days", "Dec")};
    const std::chrono::year_month_day date{day.days()};
    //: A day: %1 is its number, %2 the month, %3 the year.
    return QCoreApplication::translate("Days", "%1 %2 %3")
        .arg(unsigned{date.day()})
        .arg(QCoreApplication::translate("Days", kMonths[unsigned{date.month()} - 1]))
        .arg(int{date.year()})
        .toStdString();
}

std::string plainWeekdayDate(units::Date day) {
    static constexpr std::array kDays{QT_TRANSLATE_NOOP("Days", "Sun"), QT_TRANSLATE_NOOP("Days", "Mon"),
                                      QT_TRANSLATE_NOOP("Days", "Tue"), QT_TRANSLATE_NOOP("Days", "Wed"),
                                      QT_TRANSLATE_NOOP("Days", "Thu"), QT_TRANSLATE_NOOP("Days", "Fri"),
                                      QT_TRANSLATE_NOOP("Days", "Sat")};
    const auto* weekday = kDays[std::chrono::weekday{day.days()}.c_encoding()];
    //: A day of the week and its date: "Fri 11 Dec 2026".
    return QCoreApplication::translate("Days", "%1 %2")
        .arg(QCoreApplication::translate("Days", weekday), shown(plainDate(day)))
        .toStdString();
}

std::string SheetWords::language() const {
    //: The BCP 47 tag of the language that this file translates into.
    return tr("en").toStdString();
}

std::string SheetWords::date(units::Date day) const { return LanguageScope::isOther() ? plainDate(day) : m_date(day); }

std::string SheetWords::weekdayDate(units::Date day) const {
    return LanguageScope::isOther() ? plainWeekdayDate(day) : m_weekdayDate(day);
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
    labels.takeThis = tr("I take this one").toStdString();
    labels.deposit = tr("Deposit to start").toStdString();
    labels.balance = tr("On collection").toStdString();
    labels.ladders = tr("More or fewer").toStdString();
    labels.terms = tr("Terms").toStdString();
    labels.care = tr("Care and safety").toStdString();
    labels.proof = tr("Proof").toStdString();
    //: %1 is a scale, "1 : 2".
    labels.proofScale = tr("the stones as they lie, scale %1").toStdString();
    labels.proofStones = tr("stones a piece").toStdString();
    labels.agree = tr("I agree to the proof").toStdString();
    labels.agreeName = tr("Name").toStdString();
    labels.agreeDay = tr("Day").toStdString();
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

std::string SheetWords::choice(const std::string& number) const {
    return tr("Choice %1").arg(shown(number)).toStdString();
}

std::string SheetWords::choicesNote(const std::string& count) const {
    return tr("%1 choices: take one of them, the others fall away.").arg(shown(count)).toStdString();
}

std::string SheetWords::pieces(units::Count count, const std::string& printed) const {
    return (count.value() == 1 ? tr("one piece") : tr("%1 pieces").arg(shown(printed))).toStdString();
}

std::string SheetWords::on(const std::string& material) const {
    //: What a line is made on: "on Tee, black".
    return tr("on %1").arg(shown(material)).toStdString();
}

std::string SheetWords::inColours(std::int64_t colours) const {
    switch (colours) {
    case 0: return tr("without stones").toStdString();
    case 1: return tr("in one colour").toStdString();
    case 2: return tr("in two colours").toStdString();
    default: return tr("in %1 colours").arg(colours).toStdString();
    }
}

std::string SheetWords::stones(units::Count count, const std::string& printed) const {
    return (count.value() == 1 ? tr("one stone a piece") : tr("%1 stones a piece").arg(shown(printed))).toStdString();
}

std::string SheetWords::proofOfOtherCounts() const {
    return tr("The picture is of other stones or counts than this line has.").toStdString();
}

std::string SheetWords::proofLeftOut() const {
    return tr("There is no room for a picture here; ask to see it.").toStdString();
}

std::string SheetWords::proofOfAnotherSize() const {
    return tr("The picture is of another size than this line has.").toStdString();
}

std::string SheetWords::ownGarment() const { return tr("On your own garment").toStdString(); }

std::string SheetWords::templatesOnWall() const { return tr("Templates on the wall: no set-up charged").toStdString(); }

std::string SheetWords::atNoCharge() const { return tr("At no charge").toStdString(); }

std::string SheetWords::untaxed(const std::string& tax) const { return tr("No %1").arg(shown(tax)).toStdString(); }

std::string SheetWords::moreForLess(const std::string& count, const std::string& amount,
                                    const std::string& ordered) const {
    return tr("%1 would cost you less: %2 instead of %3")
        .arg(shown(count), shown(amount), shown(ordered))
        .toStdString();
}

std::string SheetWords::surcharge(const std::string& count, const std::string& name, const std::string& each) const {
    return tr("%1 at %2, + %3").arg(shown(count), shown(name), shown(each)).toStdString();
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

std::string SheetWords::taxOn(const std::string& tax, const std::string& percent, const std::string& amount) const {
    //: A tax, its rate and what it is charged on: "Sales tax 8.875 % on 170.40".
    return tr("%1 %2 on %3").arg(shown(tax), shown(percent), shown(amount)).toStdString();
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

std::string SheetWords::taxCaution() const {
    return tr("Tax is charged as the shop has confirmed it with its authority or accountant.").toStdString();
}

bool SheetWords::isTaxCaution(const std::string& line) const {
    if (line == taxCaution()) return true;
    const auto languages = languagesThere();
    return std::any_of(languages.begin(), languages.end(), [&](const QString& language) {
        const LanguageScope scope({language});
        return line == taxCaution();
    });
}

std::string SheetWords::linesLost() const {
    return tr("The lines of this quote can no longer be shown as they were given; its total stands.").toStdString();
}

std::string SheetWords::ladderNote(quoting::Surcharges surcharges, bool setUp, bool tax) const {
    const auto without = [&] {
        switch (surcharges) {
        case quoting::Surcharges::OfPlacesToo:
            if (setUp)
                return tax ? tr("Each, before surcharges, set-up, rush, discount and tax")
                           : tr("Each, before surcharges, set-up, rush, discount");
            return tax ? tr("Each, before surcharges, rush, discount and tax")
                       : tr("Each, before surcharges, rush, discount");
        case quoting::Surcharges::OfSizes:
            if (setUp)
                return tax ? tr("Each, before size surcharges, set-up, rush, discount and tax")
                           : tr("Each, before size surcharges, set-up, rush, discount");
            return tax ? tr("Each, before size surcharges, rush, discount and tax")
                       : tr("Each, before size surcharges, rush, discount");
        case quoting::Surcharges::None: break;
        }
        if (setUp)
            return tax ? tr("Each, before set-up, rush, discount and tax") : tr("Each, before set-up, rush, discount");
        return tax ? tr("Each, before rush, discount and tax") : tr("Each, before rush, discount");
    };
    return without().toStdString();
}

} // namespace sp::words

// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/sheet_words.h"

#include <QCoreApplication>

#include <functional>

namespace sp::words {

/// The day in words, as whoever knows the reader's locale writes it.
using DayWords = std::function<std::string(units::Date)>;

/// "25 Nov 2026", and "Fri 11 Dec 2026" with the day of the week, by the language alone: what verbs print.
std::string plainDate(units::Date day);
std::string plainWeekdayDate(units::Date day);

/// The words of the quote sheet in the language that is spoken where they are asked for; days as the reader's locale
/// writes them, in another language than the window's by the language alone.
class SheetWords : public quoting::SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)

  public:
    explicit SheetWords(units::NumberStyle numbers = {}, DayWords date = plainDate,
                        DayWords weekdayDate = plainWeekdayDate)
        : m_numbers(numbers)
        , m_date(std::move(date))
        , m_weekdayDate(std::move(weekdayDate)) {}

    std::string language() const override;
    units::NumberStyle numbers() const override { return m_numbers; }
    std::string date(units::Date day) const override;
    std::string weekdayDate(units::Date day) const override;
    quoting::SheetLabels labels() const override;

    std::string draft() const override;
    std::string quote(const std::string& number) const override;
    std::string demo() const override;
    std::string quotedOn() const override;
    std::string validUntil() const override;
    std::string wantedBy() const override;

    std::string choice(const std::string& number) const override;
    std::string choicesNote(const std::string& count) const override;
    std::string pieces(units::Count count, const std::string& printed) const override;
    std::string on(const std::string& material) const override;
    std::string inColours(std::int64_t colours) const override;
    std::string stones(units::Count count, const std::string& printed) const override;

    std::string proofOfOtherCounts() const override;
    std::string proofOfAnotherSize() const override;
    std::string proofLeftOut() const override;
    std::string ownGarment() const override;
    std::string templatesOnWall() const override;
    std::string atNoCharge() const override;
    std::string untaxed(const std::string& tax) const override;
    std::string moreForLess(const std::string& count, const std::string& amount,
                            const std::string& ordered) const override;
    std::string surcharge(const std::string& count, const std::string& name, const std::string& each) const override;
    std::string setUp() const override;
    std::string rush(units::Date wantedBy, const std::string& percent) const override;
    std::string discount(const std::string& percent) const override;
    std::string topUp(const std::string& smallestOrder) const override;

    std::string tax(const std::string& tax, const std::string& percent) const override;
    std::string taxOn(const std::string& tax, const std::string& percent, const std::string& amount) const override;
    std::string taxExempt(const std::string& tax) const override;
    std::string certificate(const std::string& number, const std::string& place) const override;
    std::string certificateDates(const std::string& issued, const std::string& expires) const override;
    std::string certificateMissing() const override;
    std::string roundedByLine() const override;
    std::string taxIncluded(const std::string& tax, const std::string& percent,
                            const std::string& amount) const override;

    std::string taxCaution() const override;
    bool isTaxCaution(const std::string& line) const override;
    std::string linesLost() const override;
    std::string ladderNote(quoting::Surcharges surcharges, bool setUp, bool tax) const override;

  private:
    units::NumberStyle m_numbers;
    DayWords m_date;
    DayWords m_weekdayDate;
};

} // namespace sp::words

// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/sheet_words.h"

namespace sp::test {

/// The words of a sheet as the name of each and what it was given, for tests of what is said and not of how:
/// "rush(2026-12-11, 10 %)". Days are in ISO 8601.
class PlainWords : public quoting::SheetWords {
  public:
    explicit PlainWords(units::NumberStyle numbers = {})
        : m_numbers(numbers) {}

    std::string language() const override { return "en"; }
    units::NumberStyle numbers() const override { return m_numbers; }
    std::string date(units::Date day) const override;
    std::string weekdayDate(units::Date day) const override;
    quoting::SheetLabels labels() const override;

    std::string draft() const override { return "draft"; }
    std::string quote(const std::string& number) const override;
    std::string demo() const override { return "demo"; }
    std::string quotedOn() const override { return "quotedOn"; }
    std::string validUntil() const override { return "validUntil"; }
    std::string wantedBy() const override { return "wantedBy"; }

    std::string choice(const std::string& number) const override { return "choice(" + number + ")"; }
    std::string choicesNote(const std::string& count) const override { return "choicesNote(" + count + ")"; }
    std::string pieces(units::Count, const std::string& printed) const override { return "pieces(" + printed + ")"; }
    std::string on(const std::string& material) const override { return "on(" + material + ")"; }
    std::string inColours(std::int64_t colours) const override { return "inColours(" + std::to_string(colours) + ")"; }
    std::string stones(units::Count, const std::string& printed) const override { return "stones(" + printed + ")"; }

    std::string ownGarment() const override { return "ownGarment"; }
    std::string templatesOnWall() const override { return "templatesOnWall"; }
    std::string atNoCharge() const override { return "atNoCharge"; }
    std::string untaxed(const std::string& tax) const override;
    std::string moreForLess(const std::string& count, const std::string& amount,
                            const std::string& ordered) const override;
    std::string surcharge(const std::string& count, const std::string& name, const std::string& each) const override;
    std::string setUp() const override { return "setUp"; }
    std::string rush(units::Date wantedBy, const std::string& percent) const override;
    std::string discount(const std::string& percent) const override;
    std::string topUp(const std::string& smallestOrder) const override;

    std::string tax(const std::string& tax, const std::string& percent) const override;
    std::string taxOn(const std::string& tax, const std::string& percent, const std::string& amount) const override;
    std::string taxExempt(const std::string& tax) const override;
    std::string certificate(const std::string& number, const std::string& place) const override;
    std::string certificateDates(const std::string& issued, const std::string& expires) const override;
    std::string certificateMissing() const override { return "certificateMissing"; }
    std::string roundedByLine() const override { return "roundedByLine"; }
    std::string proofOfOtherCounts() const override { return "proofOfOtherCounts"; }
    std::string proofOfAnotherSize() const override { return "proofOfAnotherSize"; }
    std::string proofLeftOut() const override { return "proofLeftOut"; }
    std::string taxCaution() const override { return "taxCaution"; }
    std::string linesLost() const override { return "linesLost"; }
    std::string taxIncluded(const std::string& tax, const std::string& percent,
                            const std::string& amount) const override;
    std::string ladderNote(quoting::Surcharges surcharges, bool setUp, bool tax) const override;

  private:
    units::NumberStyle m_numbers;
};

} // namespace sp::test

// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/sheet_content.h"
#include "core/units/date.h"
#include "core/units/text.h"

#include <string>

namespace sp::quoting {

/// Which surcharges lines have that the prices of other quantities leave out.
enum class Surcharges { None, OfSizes, OfPlacesToo };

/// The words of the quote sheet, which whoever shows it finds in the reader's language. Amounts, counts and shares are
/// handed over as they are printed. All text is UTF-8.
class SheetWords {
  public:
    virtual ~SheetWords() = default;

    virtual std::string language() const = 0; ///< BCP 47: "en"
    virtual units::NumberStyle numbers() const = 0;
    virtual std::string date(units::Date day) const = 0;        ///< "25 Nov 2026"
    virtual std::string weekdayDate(units::Date day) const = 0; ///< "Fri 11 Dec 2026"
    virtual SheetLabels labels() const = 0;

    virtual std::string draft() const = 0;
    virtual std::string quote(const std::string& number) const = 0;
    virtual std::string demo() const = 0;
    virtual std::string quotedOn() const = 0; ///< the labels of the days
    virtual std::string validUntil() const = 0;
    virtual std::string wantedBy() const = 0;

    /// A choice by its number, from 1.
    virtual std::string choice(const std::string& number) const = 0;
    /// How several choices are to be taken.
    virtual std::string choicesNote(const std::string& count) const = 0;
    // What tells a choice from the others.
    virtual std::string pieces(units::Count count, const std::string& printed) const = 0;
    virtual std::string on(const std::string& material) const = 0;
    virtual std::string inColours(std::int64_t colours) const = 0;
    virtual std::string stones(units::Count count, const std::string& printed) const = 0;

    virtual std::string ownGarment() const = 0;
    virtual std::string templatesOnWall() const = 0;
    virtual std::string atNoCharge() const = 0;
    virtual std::string untaxed(const std::string& tax) const = 0;
    /// More pieces than ordered that come to less.
    virtual std::string moreForLess(const std::string& count, const std::string& amount,
                                    const std::string& ordered) const = 0;
    /// A surcharge of `each` for `count` pieces: of a size, or with a design at a place.
    virtual std::string surcharge(const std::string& count, const std::string& name, const std::string& each) const = 0;
    virtual std::string setUp() const = 0;
    virtual std::string rush(units::Date wantedBy, const std::string& percent) const = 0;
    /// `percent` is empty for a discount that was given as an amount.
    virtual std::string discount(const std::string& percent) const = 0;
    virtual std::string topUp(const std::string& smallestOrder) const = 0;

    virtual std::string tax(const std::string& tax, const std::string& percent) const = 0;
    /// Of several rates: what this one is charged on.
    virtual std::string taxOn(const std::string& tax, const std::string& percent, const std::string& amount) const = 0;
    virtual std::string taxExempt(const std::string& tax) const = 0;
    /// `place` may be empty.
    virtual std::string certificate(const std::string& number, const std::string& place) const = 0;
    /// `expires` is empty for a certificate without an end.
    virtual std::string certificateDates(const std::string& issued, const std::string& expires) const = 0;
    virtual std::string certificateMissing() const = 0;
    virtual std::string roundedByLine() const = 0;
    virtual std::string taxIncluded(const std::string& tax, const std::string& percent,
                                    const std::string& amount) const = 0;

    // What a proof shows otherwise than the line takes it.
    virtual std::string proofOfOtherCounts() const = 0;
    virtual std::string proofOfAnotherSize() const = 0;
    /// In the place of pictures that the sheet has no room for.
    virtual std::string proofLeftOut() const = 0;

    /// What the care notes that come with the program say about tax: a line that is left out where none is charged.
    virtual std::string taxCaution() const = 0;
    /// Whether a line says that, in whichever language it was written down.
    virtual bool isTaxCaution(const std::string& line) const { return line == taxCaution(); }
    /// In the place of lines that can no longer be shown as they were given.
    virtual std::string linesLost() const = 0;
    /// What the prices of other quantities leave out, besides rush and discount.
    virtual std::string ladderNote(Surcharges surcharges, bool setUp, bool tax) const = 0;
};

} // namespace sp::quoting

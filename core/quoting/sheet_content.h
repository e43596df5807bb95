// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/choice.h"
#include "core/units/count.h"
#include "core/units/length.h"
#include "core/units/money.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sp::quoting {

// What the customer gets to read, in words and in the order of reading: the quote sheet on paper and the front of the
// slip on the screen. A plain value that holds every text as it is printed, so that it can be kept and printed again
// as it was. All text is UTF-8. There is no cost, no mark-up, no profit and no need of stones in it.

/// An amount of whole minor units and how it is printed; `text` reads back to `value`.
struct SheetAmount {
    units::Money value;
    std::string text;

    friend bool operator==(const SheetAmount&, const SheetAmount&) = default;
};

struct StoneColour {
    std::string name;
    std::uint32_t rgb = 0; ///< 0xRRGGBB

    friend bool operator==(const StoneColour&, const StoneColour&) = default;
};

/// A row with an amount of its own. `running` is the sum of all amounts from the top of the sheet down to this one:
/// what is carried forward when a page ends here.
struct SheetRow {
    std::string label;
    SheetAmount amount;
    SheetAmount running;

    friend bool operator==(const SheetRow&, const SheetRow&) = default;
};

/// An ordered line: `amount` is `each` × pieces, `extras` (surcharges by size, then set-up) come on top.
struct SheetLine {
    std::string pieces;
    std::string title;
    std::string detail; ///< "Clear backing, 3 1/2 × 2 3/4 in · Aquamarine SS10, Jet SS10"; may be empty
    std::vector<StoneColour> stones;
    std::string each;
    SheetAmount amount;
    SheetAmount running;
    std::vector<SheetRow> extras;
    std::string note; ///< "Templates on the wall: no set-up charged"; may be empty

    friend bool operator==(const SheetLine&, const SheetLine&) = default;
};

struct SheetFact {
    std::string label;
    std::string value;

    friend bool operator==(const SheetFact&, const SheetFact&) = default;
};

/// `note` belongs below the label, smaller; may be empty. Where the customer is exempt, `SheetCustomer::exemption` and
/// `exemptionDates` belong to it: taxLabel and taxNote put them together.
struct SheetTax {
    std::string label;
    std::string note;
    SheetAmount amount;

    friend bool operator==(const SheetTax&, const SheetTax&) = default;
};

struct LadderStep {
    units::Count quantity;
    std::string pieces; ///< the same, as printed
    std::string each;
    bool isOrdered = false;

    friend bool operator==(const LadderStep&, const LadderStep&) = default;
};

struct SheetLadder {
    std::string title;             ///< of the line
    std::vector<LadderStep> steps; ///< by pieces, ascending

    friend bool operator==(const SheetLadder&, const SheetLadder&) = default;
};

/// The stones of one material in a proof.
struct ProofStone {
    std::string letter; ///< "A": it tells colours apart in black and white
    std::string name;   ///< of the material: "Crystal SS10"
    std::string count;  ///< in the picture, as printed
    std::uint32_t rgb = 0;
    units::Length across; ///< of a stone
    std::string places;   ///< where they lie, from the picture's upper left corner: quoting::unpacked

    friend bool operator==(const ProofStone&, const ProofStone&) = default;
};

/// What a design will look like, for the customer to agree to.
struct SheetProof {
    std::string title;   ///< "Front: Heron"
    std::string choices; ///< the choices that have it, "Choice 2"; empty where all do
    std::string width;   ///< "5 in"
    std::string height;
    std::string note; ///< that the line takes other stones than the picture shows; may be empty
    std::vector<ProofStone> stones;

    friend bool operator==(const SheetProof&, const SheetProof&) = default;
};

/// All of the sheet that tells who the customer is; empty when nobody is named.
struct SheetCustomer {
    std::string name;
    std::vector<std::string> lines; ///< of the contact
    std::string exemption;          ///< "certificate 14-2201, Ohio", each in force; empty where tax is charged
    std::string exemptionDates;     ///< "Issued 3 Jan 2026, good until 31 Dec 2027", likewise
    bool isErased = false;          ///< there was one, whose person was taken out since; kept in no record

    friend bool operator==(const SheetCustomer&, const SheetCustomer&) = default;
};

/// The words of the form itself, the same on every sheet in one language.
struct SheetLabels {
    std::string customer;      ///< above the customer's name: "For"
    std::string customerAgain; ///< at the head of further pages; %1 is the name: "for %1"
    std::string pieces;
    std::string what;
    std::string each;
    std::string amount;
    std::string carriedForward;
    std::string broughtForward;
    std::string together;
    std::string toPay;
    std::string takeThis; ///< beside a box to tick under a choice
    std::string deposit;
    std::string balance;
    std::string ladders; ///< above the prices of other quantities
    std::string terms;
    std::string care;
    std::string proof;
    std::string proofScale;  ///< %1 is the scale: "the stones as they lie, %1 of true size"
    std::string proofStones; ///< above the counts: "stones a piece"
    std::string agree;       ///< before the line to sign on
    std::string agreeName;   ///< below it
    std::string agreeDay;
    std::string page; ///< %1 is the page, %2 how many there are: "Page %1 of %2"

    friend bool operator==(const SheetLabels&, const SheetLabels&) = default;
};

/// What the customer gets and pays in one of the choices of an order. The column of amounts adds up as printed: lines
/// with their extras and the adjustments to `together`, that and a tax that is charged on top to `toPay`, deposit and
/// balance to `toPay` again.
struct SheetChoice {
    std::string name;       ///< "Choice 2"; empty where there is no other
    std::string difference; ///< what tells it from the others, "36 pieces, on Hoodie, navy"; may be empty
    std::vector<SheetLine> lines;
    std::vector<SheetRow> adjustments; ///< rush, discount, top-up to the smallest order, those there are
    SheetAmount together;
    bool showsTogether = false;      ///< false where it would only say `toPay` twice
    std::optional<SheetTax> tax;     ///< on top of `together`
    std::vector<SheetTax> moreTaxes; ///< further rates, likewise
    std::string taxIncluded;         ///< the sentence instead, where the prices hold the tax; else empty
    SheetAmount toPay;
    std::optional<SheetAmount> deposit; ///< with `balance`; none where none is asked
    SheetAmount balance;
    std::vector<SheetLadder> ladders;
    std::string ladderNote; ///< what the ladder's prices leave out

    friend bool operator==(const SheetChoice&, const SheetChoice&) = default;
};

/// The whole sheet. It is itself the choice that is looked at; the others come beside it.
struct SheetContent : SheetChoice {
    std::string language; ///< that the words are written in, by its BCP 47 tag: "en"
    SheetLabels labels;
    std::string shopName;
    std::vector<std::string> shopLines;
    std::string title;            ///< "Quote 2026-0042", or "Draft" while it has no number
    std::string demo;             ///< what a demo book says on every page; else empty
    std::vector<SheetFact> facts; ///< the days: quoted, valid until, wanted by
    SheetCustomer customer;
    std::string currency;            ///< ISO 4217
    std::string choicesNote;         ///< above several choices: how they are to be taken; else empty
    std::vector<SheetChoice> others; ///< the choices that are not looked at, in their order
    std::int64_t choice = 0;         ///< the number of the one that is looked at, from 0, among all of them
    /// Below what is to pay, on papers that speak of money received: what was paid or given back, and last, set off,
    /// what is left of it all. `running` is what is left down to there.
    std::vector<SheetRow> settlement;
    std::vector<SheetProof> proofs;
    std::vector<std::string> terms;
    std::vector<std::string> care;

    friend bool operator==(const SheetContent&, const SheetContent&) = default;
};

/// The choices, each in its place; one where there is nothing to choose.
std::vector<const SheetChoice*> choicesOf(const SheetContent& sheet);
/// Looks at the choice with that number, from 0; it must be there.
void lookAtChoice(SheetContent& sheet, std::int64_t number);

/// "Sales tax, exempt (certificate 14-2201, Ohio)"; empty without a row of tax.
std::string taxLabel(const SheetContent& sheet, const SheetChoice& choice);
/// What stands below it; may be empty.
std::string taxNote(const SheetContent& sheet, const SheetChoice& choice);

} // namespace sp::quoting

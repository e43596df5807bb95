// SPDX-License-Identifier: MIT
#include "db/records/papers.h"

namespace sp::db::records {

void lookAtChoice(PaperResult& result, std::int64_t number) {
    auto at = result.sheet.choice;
    if (number == at) return;
    catalogue::lookAt(result.figures, result.others, at, number);
    quoting::lookAtChoice(result.sheet, number);
}

} // namespace sp::db::records

namespace sp::catalogue::fields {

namespace {

constexpr Text kPrinted{0, 20'000, true};    ///< text as it is printed; it was checked where it came from
constexpr Text kPlaces{0, 1'000'000, false}; ///< a proof's; a design of more stones has none
constexpr Text kOptionalDigest{0, 64, false};
constexpr Text kSeal{64, 64, false};
constexpr Length kMaxLines{5'000};
constexpr Length kMaxRows{200};
constexpr Length kMaxOthers{catalogue::kMaxChoices - 1};
constexpr Range kChoiceNumbers{0, catalogue::kMaxChoices - 1};

} // namespace

template<>
const Object& objectOf<quoting::SheetAmount>() {
    using T = quoting::SheetAmount;
    static const Object object{"SheetAmount",
                               {
                                   field<&T::value>("value_micros", Term::Amount, kEitherAmount),
                                   field<&T::text>("text", Term::Amount, kPrinted),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::StoneColour>() {
    using T = quoting::StoneColour;
    static const Object object{"StoneColour",
                               {
                                   field<&T::name>("name", Term::Name, kPrinted),
                                   field<&T::rgb>("rgb", Term::ColourOnTheScreen, kColour),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::SheetRow>() {
    using T = quoting::SheetRow;
    static const Object object{"SheetRow",
                               {
                                   field<&T::label>("label", Term::Title, kPrinted),
                                   field<&T::amount>("amount", Term::Amount),
                                   field<&T::running>("running", Term::Amount),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::SheetLine>() {
    using T = quoting::SheetLine;
    static const Object object{"SheetLine",
                               {
                                   field<&T::pieces>("pieces", Term::Quantity, kPrinted),
                                   field<&T::title>("title", Term::Title, kPrinted),
                                   field<&T::detail>("detail", Term::Note, kPrinted),
                                   field<&T::stones>("stones", Term::Stones, kMaxRows),
                                   field<&T::each>("each", Term::Price, kPrinted),
                                   field<&T::amount>("amount", Term::Amount),
                                   field<&T::running>("running", Term::Amount),
                                   field<&T::extras>("extras", Term::SurchargeOfASize, kMaxRows),
                                   field<&T::note>("note", Term::Note, kPrinted),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::SheetFact>() {
    using T = quoting::SheetFact;
    static const Object object{"SheetFact",
                               {
                                   field<&T::label>("label", Term::Title, kPrinted),
                                   field<&T::value>("value", Term::Note, kPrinted),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::SheetTax>() {
    using T = quoting::SheetTax;
    static const Object object{"SheetTax",
                               {
                                   field<&T::label>("label", Term::NameOfTheTax, kPrinted),
                                   field<&T::note>("note", Term::Note, kPrinted),
                                   field<&T::amount>("amount", Term::Tax),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::LadderStep>() {
    using T = quoting::LadderStep;
    static const Object object{"LadderStep",
                               {
                                   field<&T::quantity>("quantity", Term::Quantity, kCounts),
                                   field<&T::pieces>("pieces", Term::Quantity, kPrinted),
                                   field<&T::each>("each", Term::Price, kPrinted),
                                   field<&T::isOrdered>("ordered", Term::Order),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::SheetLadder>() {
    using T = quoting::SheetLadder;
    static const Object object{"SheetLadder",
                               {
                                   field<&T::title>("title", Term::Title, kPrinted),
                                   field<&T::steps>("steps", Term::QuantitiesOfTheLadder, kMaxRows),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::ProofStone>() {
    using T = quoting::ProofStone;
    static const Object object{"ProofStone",
                               {
                                   field<&T::letter>("letter", Term::Title, kPrinted),
                                   field<&T::name>("name", Term::Name, kPrinted),
                                   field<&T::count>("count", Term::Quantity, kPrinted),
                                   field<&T::rgb>("rgb", Term::ColourOnTheScreen, kColour),
                                   field<&T::across>("across_nm", Term::Width, kLengths),
                                   field<&T::places>("places", Term::Stones, kPlaces),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::SheetProof>() {
    using T = quoting::SheetProof;
    static const Object object{"SheetProof",
                               {
                                   field<&T::title>("title", Term::Title, kPrinted),
                                   field<&T::choices>("choices", Term::OtherChoices, kPrinted),
                                   field<&T::width>("width", Term::Width, kPrinted),
                                   field<&T::height>("height", Term::Height, kPrinted),
                                   field<&T::note>("note", Term::Note, kPrinted),
                                   field<&T::stones>("stones", Term::Stones, kMaxRows),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::SheetCustomer>() {
    using T = quoting::SheetCustomer;
    static const Object object{"SheetCustomer",
                               {
                                   field<&T::name>("name", Term::Customer, kPrinted),
                                   field<&T::lines>("lines", Term::Address, kMaxLines, kPrinted),
                                   field<&T::exemption>("exemption", Term::Exemption, kPrinted),
                                   field<&T::exemptionDates>("exemption_dates", Term::DayOfExpiry, kPrinted),
                               }};
    return object;
}

template<>
const Object& objectOf<quoting::SheetLabels>() {
    using T = quoting::SheetLabels;
    static const Object object{"SheetLabels",
                               {
                                   field<&T::customer>("customer", Term::Title, kPrinted),
                                   field<&T::customerAgain>("customer_again", Term::Title, kPrinted),
                                   field<&T::pieces>("pieces", Term::Title, kPrinted),
                                   field<&T::what>("what", Term::Title, kPrinted),
                                   field<&T::each>("each", Term::Title, kPrinted),
                                   field<&T::amount>("amount", Term::Title, kPrinted),
                                   field<&T::carriedForward>("carried_forward", Term::Title, kPrinted),
                                   field<&T::broughtForward>("brought_forward", Term::Title, kPrinted),
                                   field<&T::together>("together", Term::Title, kPrinted),
                                   field<&T::toPay>("to_pay", Term::Title, kPrinted),
                                   field<&T::takeThis>("take_this", Term::Title, kPrinted)
                                       .cameWith({{"paper-result", 4}, {"bill", 1}})
                                       .standingFor(std::string(), "\"\""),
                                   field<&T::deposit>("deposit", Term::Title, kPrinted),
                                   field<&T::balance>("balance", Term::Title, kPrinted),
                                   field<&T::ladders>("ladders", Term::Title, kPrinted),
                                   field<&T::terms>("terms", Term::Title, kPrinted),
                                   field<&T::care>("care", Term::Title, kPrinted),
                                   field<&T::proof>("proof", Term::Title, kPrinted)
                                       .cameWith({{"paper-result", 6}, {"bill", 2}})
                                       .standingFor(std::string(), "\"\""),
                                   field<&T::proofScale>("proof_scale", Term::Title, kPrinted)
                                       .cameWith({{"paper-result", 6}, {"bill", 2}})
                                       .standingFor(std::string(), "\"\""),
                                   field<&T::proofStones>("proof_stones", Term::Title, kPrinted)
                                       .cameWith({{"paper-result", 6}, {"bill", 2}})
                                       .standingFor(std::string(), "\"\""),
                                   field<&T::agree>("agree", Term::Title, kPrinted)
                                       .cameWith({{"paper-result", 6}, {"bill", 2}})
                                       .standingFor(std::string(), "\"\""),
                                   field<&T::agreeName>("agree_name", Term::Title, kPrinted)
                                       .cameWith({{"paper-result", 6}, {"bill", 2}})
                                       .standingFor(std::string(), "\"\""),
                                   field<&T::agreeDay>("agree_day", Term::Title, kPrinted)
                                       .cameWith({{"paper-result", 6}, {"bill", 2}})
                                       .standingFor(std::string(), "\"\""),
                                   field<&T::page>("page", Term::Title, kPrinted),
                               }};
    return object;
}

namespace {

/// The fields of a choice, which a whole sheet has too.
template<class T>
std::vector<Field> choiceFields() {
    return {
        fieldIn<T, &T::name>("choice_name", Term::Title, kPrinted)
            .cameWith({{"paper-result", 4}, {"bill", 1}})
            .standingFor(std::string(), "\"\""),
        fieldIn<T, &T::difference>("difference", Term::WhatTellsAChoice, kPrinted)
            .cameWith({{"paper-result", 4}, {"bill", 1}})
            .standingFor(std::string(), "\"\""),
        fieldIn<T, &T::lines>("lines", Term::Lines, kMaxLines),
        fieldIn<T, &T::adjustments>("adjustments", Term::Discount, kMaxRows),
        fieldIn<T, &T::together>("together", Term::Total),
        fieldIn<T, &T::showsTogether>("shows_together", Term::Total),
        fieldIn<T, &T::tax>("tax", Term::Tax),
        fieldIn<T, &T::moreTaxes>("more_taxes", Term::FurtherTaxRates, kMaxRows)
            .cameWith({{"paper-result", 3}, {"bill", 1}})
            .standingFor(std::vector<quoting::SheetTax>{}, "[]"),
        fieldIn<T, &T::taxIncluded>("tax_included", Term::TaxInThePrice, kPrinted),
        fieldIn<T, &T::toPay>("to_pay", Term::Total),
        fieldIn<T, &T::deposit>("deposit", Term::Deposit),
        fieldIn<T, &T::balance>("balance", Term::Total),
        fieldIn<T, &T::ladders>("ladders", Term::QuantitiesOfTheLadder, kMaxRows),
        fieldIn<T, &T::ladderNote>("ladder_note", Term::Note, kPrinted),
    };
}

std::vector<Field> sheetFields() {
    using T = quoting::SheetContent;
    std::vector<Field> fields{
        field<&T::language>("language", Term::Title, kLine),
        field<&T::labels>("labels", Term::Title),
        field<&T::shopName>("shop_name", Term::NameOfTheShop, kPrinted),
        field<&T::shopLines>("shop_lines", Term::AddressOfTheShop, kMaxLines, kPrinted),
        field<&T::title>("title", Term::Title, kPrinted),
        field<&T::demo>("demo", Term::DemoMark, kPrinted),
        field<&T::facts>("facts", Term::Day, kMaxRows),
        field<&T::customer>("customer", Term::Customer),
        field<&T::currency>("currency", Term::Currency, kLine),
        field<&T::choicesNote>("choices_note", Term::Note, kPrinted)
            .cameWith({{"paper-result", 4}, {"bill", 1}})
            .standingFor(std::string(), "\"\""),
        field<&T::others>("others", Term::OtherChoices, kMaxOthers)
            .cameWith({{"paper-result", 4}, {"bill", 1}})
            .standingFor(std::vector<quoting::SheetChoice>{}, "[]"),
        field<&T::choice>("choice", Term::ChoiceLookedAt, kChoiceNumbers)
            .cameWith({{"paper-result", 4}, {"bill", 1}})
            .standingFor(std::int64_t{0}, "0"),
        field<&T::settlement>("settlement", Term::Amount, kMaxLines)
            .cameWith({{"paper-result", 5}, {"bill", 1}})
            .standingFor(std::vector<quoting::SheetRow>{}, "[]"),
        field<&T::proofs>("proofs", Term::Design, kMaxRows)
            .cameWith({{"paper-result", 6}, {"bill", 2}})
            .standingFor(std::vector<quoting::SheetProof>{}, "[]"),
        field<&T::terms>("terms", Term::Terms, kMaxLines, kPrinted),
        field<&T::care>("care", Term::CareNotes, kMaxLines, kPrinted),
    };
    for (auto& row : choiceFields<T>()) fields.push_back(std::move(row));
    return fields;
}

} // namespace

template<>
const Object& objectOf<quoting::SheetChoice>() {
    static const Object object{"SheetChoice", choiceFields<quoting::SheetChoice>()};
    return object;
}

template<>
const Object& objectOf<quoting::SheetContent>() {
    static const Object object{"SheetContent", sheetFields()};
    return object;
}

template<>
const Object& objectOf<db::records::SealedPaper>() {
    using T = db::records::SealedPaper;
    static const Object object{"SealedPaper",
                               {
                                   field<&T::paper>("paper", Term::Key, Key::Needed),
                                   field<&T::job>("job", Term::Key, Key::Needed),
                                   field<&T::revision>("revision", Term::Number, kFromOne),
                                   field<&T::kind>("kind", Term::Kind, kName),
                                   field<&T::number>("number", Term::Number, kName),
                                   field<&T::issuedAt>("issued_at", Term::Moment, kName),
                                   field<&T::until>("until", Term::LastDay),
                                   field<&T::total>("total_micros", Term::Total, kEitherAmount),
                                   field<&T::order>("order", Term::Order, kSeal),
                                   field<&T::prices>("prices", Term::Prices, kSeal),
                                   field<&T::person>("person", Term::Customer, kOptionalDigest),
                                   field<&T::result>("result", Term::Total, kOptionalDigest),
                                   field<&T::previous>("previous", Term::QuoteBefore, kOptionalDigest),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::SealedPerson>() {
    using T = db::records::SealedPerson;
    static const Object object{"SealedPerson",
                               {
                                   field<&T::customer>("customer", Term::Customer),
                                   field<&T::sheet>("sheet", Term::Customer),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::LineFigures>() {
    using T = db::records::LineFigures;
    static const Object object{"LineFigures",
                               {
                                   field<&T::cost>("cost_micros", Term::Cost, kEitherAmount),
                                   field<&T::outOfPocket>("out_of_pocket_micros", Term::Cost, kEitherAmount),
                                   field<&T::calculatedEach>("calculated_each_micros", Term::Price, kEitherAmount),
                                   field<&T::each>("each_micros", Term::Price, kEitherAmount),
                                   field<&T::goods>("goods_micros", Term::Amount, kEitherAmount),
                                   field<&T::sizes>("sizes_micros", Term::SurchargeOfASize, kEitherAmount),
                                   field<&T::places>("places_micros", Term::SurchargeOfAPlace, kEitherAmount)
                                       .cameWith({{"paper-result", 4}})
                                       .standingFor(units::Money{}, "0"),
                                   field<&T::setUp>("set_up_micros", Term::ChargeForSettingUp, kEitherAmount),
                                   field<&T::charged>("charged_micros", Term::Amount, kEitherAmount),
                                   field<&T::cardFee>("card_fee_micros", Term::CardFee, kEitherAmount)
                                       .cameWith({{"paper-result", 2}})
                                       .standingFor(units::Money{}, "0"),
                               }};
    return object;
}

template<>
const Object& objectOf<pricing::TaxAmount>() {
    using T = pricing::TaxAmount;
    static const Object object{"TaxAmount",
                               {
                                   field<&T::name>("name", Term::NameOfTheTax, kPrinted),
                                   field<&T::rate>("rate_ppm", Term::TaxRate, kShare),
                                   field<&T::on>("on_micros", Term::Amount, kEitherAmount),
                                   field<&T::tax>("tax_micros", Term::Tax, kEitherAmount),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::OrderFigures>() {
    using T = db::records::OrderFigures;
    static const Object object{"OrderFigures",
                               {
                                   field<&T::lines>("lines", Term::Lines, kMaxLines),
                                   field<&T::goods>("goods_micros", Term::Amount, kEitherAmount),
                                   field<&T::rush>("rush_micros", Term::RushSurcharge, kEitherAmount),
                                   field<&T::discount>("discount_micros", Term::Discount, kEitherAmount),
                                   field<&T::minimumOrderCharge>("top_up_micros", Term::SmallestOrder, kEitherAmount),
                                   field<&T::subtotal>("subtotal_micros", Term::Amount, kEitherAmount),
                                   field<&T::tax>("tax_micros", Term::Tax, kEitherAmount),
                                   field<&T::taxes>("taxes", Term::Tax, kMaxRows)
                                       .cameWith({{"paper-result", 5}})
                                       .standingFor(std::vector<pricing::TaxAmount>{}, "[]"),
                                   field<&T::taxIncluded>("tax_is_included", Term::TaxInThePrice)
                                       .cameWith({{"paper-result", 5}})
                                       .standingFor(false, "false"),
                                   field<&T::total>("total_micros", Term::Total, kEitherAmount),
                                   field<&T::deposit>("deposit_micros", Term::Deposit, kEitherAmount),
                                   field<&T::balance>("balance_micros", Term::Total, kEitherAmount),
                                   field<&T::cost>("cost_micros", Term::Cost, kEitherAmount),
                                   field<&T::cardFee>("card_fee_micros", Term::CardFee, kEitherAmount)
                                       .cameWith({{"paper-result", 2}})
                                       .standingFor(units::Money{}, "0"),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::PaperResult>() {
    using T = db::records::PaperResult;
    static const Object object{"PaperResult",
                               {
                                   field<&T::rules>("rules", Term::Number, kFromOne),
                                   field<&T::figures>("figures", Term::Total),
                                   field<&T::others>("others", Term::OtherChoices, kMaxOthers)
                                       .cameWith({{"paper-result", 4}})
                                       .standingFor(std::vector<db::records::OrderFigures>{}, "[]"),
                                   field<&T::sheet>("sheet", Term::Note),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::SealedResult>() {
    using T = db::records::SealedResult;
    static const Object object{"SealedResult",
                               {
                                   field<&T::paper>("paper", Term::Key, Key::Needed),
                                   field<&T::seal>("seal", Term::Kind, kSeal),
                                   field<&T::sealedAt>("sealed_at", Term::Moment, kName),
                                   field<&T::person>("person", Term::Customer, kOptionalDigest),
                                   field<&T::result>("result", Term::Total, kSeal),
                                   field<&T::previous>("previous", Term::QuoteBefore, kOptionalDigest),
                               }};
    return object;
}

} // namespace sp::catalogue::fields

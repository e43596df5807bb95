// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"
#include "core/quoting/sheet_content.h"
#include "db/records/values.h"

// What a paper says, as it is put under seal when it is issued. Digests are 64 hexadecimal digits, empty for none.
namespace sp::db::records {

/// The paper itself: what the seal is of.
struct SealedPaper {
    base::Id paper;
    base::Id job;
    std::int64_t revision = 1;
    std::string kind; ///< "quote", or of a bill "invoice", "receipt", "credit"
    std::string number;
    std::string issuedAt; ///< UTC
    std::optional<units::Date> until;
    units::Money total;
    std::string order;    ///< digest of the order
    std::string prices;   ///< digest of a PriceList
    std::string person;   ///< digest of a SealedPerson, salted; empty when nobody is named
    std::string result;   ///< digest of a PaperResult, or of a BillResult; empty where it is in a SealedResult
    std::string previous; ///< digest of the seal before; empty for the first

    friend bool operator==(const SealedPaper&, const SealedPaper&) = default;
};

/// Who the customer was, apart from all else: it can be taken out without breaking the seal.
struct SealedPerson {
    std::optional<catalogue::Customer> customer;
    quoting::SheetCustomer sheet; ///< as it was printed

    friend bool operator==(const SealedPerson&, const SealedPerson&) = default;
};

/// A line as it was reckoned.
struct LineFigures {
    units::Money cost;
    units::Money outOfPocket;
    units::Money calculatedEach;
    units::Money each;
    units::Money goods;
    units::Money sizes;
    units::Money places;
    units::Money setUp;
    units::Money charged;
    units::Money cardFee;

    friend bool operator==(const LineFigures&, const LineFigures&) = default;
};

/// An order as it was reckoned; see pricing::PricedOrder.
struct OrderFigures {
    std::vector<LineFigures> lines;
    units::Money goods;
    units::Money rush;
    units::Money discount;
    units::Money minimumOrderCharge;
    units::Money subtotal;
    units::Money tax;
    std::vector<pricing::TaxAmount> taxes; ///< by rate; none where an earlier program sealed only their sum
    bool taxIncluded = false;              ///< with `taxes`
    units::Money total;
    units::Money deposit;
    units::Money balance;
    units::Money cost;
    units::Money cardFee; ///< before rules 3 it was a part of the cost

    friend bool operator==(const OrderFigures&, const OrderFigures&) = default;
};

/// What a paper came to and what it says, but for the customer. Its figures are those of the choice of the order that
/// is looked at, like those of its sheet.
struct PaperResult {
    std::int64_t rules = 0; ///< catalogue::kRulesVersion of the program that reckoned it
    OrderFigures figures;
    std::vector<OrderFigures> others; ///< of the choices that are not looked at, in their order
    quoting::SheetContent sheet;      ///< with an empty customer: that is the SealedPerson's

    friend bool operator==(const PaperResult&, const PaperResult&) = default;
};

/// Looks at another choice of what a paper came to; it must be there.
void lookAtChoice(PaperResult& result, std::int64_t number);

/// The result of a paper that was issued before results were sealed, put under a seal of its own.
struct SealedResult {
    base::Id paper;
    std::string seal; ///< digest of the paper's own seal
    std::string sealedAt;
    std::string person;
    std::string result;
    std::string previous;

    friend bool operator==(const SealedResult&, const SealedResult&) = default;
};

} // namespace sp::db::records

namespace sp::catalogue::fields {

template<>
const Object& objectOf<quoting::SheetAmount>();
template<>
const Object& objectOf<quoting::StoneColour>();
template<>
const Object& objectOf<quoting::SheetRow>();
template<>
const Object& objectOf<quoting::SheetLine>();
template<>
const Object& objectOf<quoting::SheetFact>();
template<>
const Object& objectOf<quoting::SheetTax>();
template<>
const Object& objectOf<quoting::LadderStep>();
template<>
const Object& objectOf<quoting::SheetLadder>();
template<>
const Object& objectOf<quoting::ProofStone>();
template<>
const Object& objectOf<quoting::SheetProof>();
template<>
const Object& objectOf<quoting::SheetCustomer>();
template<>
const Object& objectOf<quoting::SheetLabels>();
template<>
const Object& objectOf<quoting::SheetChoice>();
template<>
const Object& objectOf<quoting::SheetContent>();
template<>
const Object& objectOf<db::records::SealedPaper>();
template<>
const Object& objectOf<db::records::SealedPerson>();
template<>
const Object& objectOf<db::records::LineFigures>();
template<>
const Object& objectOf<pricing::TaxAmount>();
template<>
const Object& objectOf<db::records::OrderFigures>();
template<>
const Object& objectOf<db::records::PaperResult>();
template<>
const Object& objectOf<db::records::SealedResult>();

} // namespace sp::catalogue::fields

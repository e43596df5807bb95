// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/paper_kind.h"
#include "core/pricing/bill.h"
#include "db/records/papers.h"

// What invoices, receipts and credit notes say, as it is put under seal beside the SealedPaper.
namespace sp::db::records {

struct BillResult {
    units::Date day;
    std::vector<pricing::BillPart> parts; ///< of an invoice what it charges, of a credit note what it takes back
    bool taxIncluded = false;
    units::Money comesTo;            ///< the job, this paper included
    units::Money paid;               ///< for it so far
    std::optional<base::Id> invoice; ///< of a credit note the paper that it takes back
    std::optional<base::Id> payment; ///< of a receipt
    catalogue::Paper paper = catalogue::Paper::Letter;
    quoting::SheetContent sheet; ///< with an empty customer: that is the SealedPerson's

    friend bool operator==(const BillResult&, const BillResult&) = default;
};

} // namespace sp::db::records

namespace sp::catalogue::fields {

template<>
inline constexpr std::array<std::string_view, 4> kNames<PaperKind>{"quote", "invoice", "receipt", "credit"};

template<>
const Object& objectOf<pricing::BillPart>();
template<>
const Object& objectOf<db::records::BillResult>();

} // namespace sp::catalogue::fields

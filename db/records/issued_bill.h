// SPDX-License-Identifier: MIT
#pragma once

#include "db/records/bills.h"

#include <optional>
#include <string>

namespace sp::db {

/// An invoice, a receipt or a credit note as it was issued.
struct IssuedBill {
    base::Id id;
    base::Id job;
    std::int64_t revision = 1;
    catalogue::PaperKind kind = catalogue::PaperKind::Invoice;
    std::string number; ///< "I-2026-0007", "R-2026-0012", "C-2026-0003"
    std::string issuedAt;
    std::optional<units::Date> due;
    units::Money total; ///< invoiced or received; of a credit note what it takes back, below nothing
    records::BillResult result;

    friend bool operator==(const IssuedBill&, const IssuedBill&) = default;
};

} // namespace sp::db

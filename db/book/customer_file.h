// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/contacts.h"
#include "core/units/money.h"
#include "db/records/quote_summary.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sp::db {

/// All that a book has of one customer.
struct CustomerFile {
    catalogue::Customer customer;
    std::vector<catalogue::Customer> merged; ///< entries that turned out to be the same person
    std::vector<QuoteSummary> jobs;          ///< of all those entries, the newest first
    units::Money owed;                       ///< left to pay of what is agreed to or collected, all jobs together
    units::Money credit;     ///< paid beyond what their jobs come to, and all that is paid on those let go
    std::int64_t papers = 0; ///< that were issued for them
};

/// The small picture that is kept with a design, to be shown beside the jobs it is in.
struct DesignPicture {
    base::Id design;
    std::string name;
    std::string thumbnail; ///< PNG
};

/// What becomes of contacts that are read from a file.
struct ContactsPlan {
    std::vector<catalogue::ContactRow> rows;
    std::vector<std::optional<base::Error>> refusals; ///< beside the rows: why one cannot be a customer

    /// How many become or change an entry.
    std::size_t count(catalogue::ContactFit fit) const;
};

} // namespace sp::db

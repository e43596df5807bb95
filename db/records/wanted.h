// SPDX-License-Identifier: MIT
#pragma once

#include "db/records/quote_summary.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace sp::db {

/// By what found jobs are put in order; of those alike the one that was started last comes first.
enum class FoundBy { Started, Number, Day, Customer, What, Stage, Total, Left };

/// Which jobs are looked for.
struct Wanted {
    /// Words, all of which are in the job, letter case and marks above letters ignored: a part of a number, of its
    /// customer's name, telephone or mail, of a title, of a design, of a payment's kind or note, of a paper's number. A
    /// word of one or two letters begins one of these. A text that is an amount also finds what comes to it: what the
    /// job or a paper comes to, what was paid at once, what is left. The first twelve words count. Empty: all; nothing
    /// but marks that are no word: none.
    std::string text;
    std::optional<Stage> stage;
    bool isLapsed = false;                ///< only those past their last day without an answer
    bool isUnpaid = false;                ///< only those of which something is left to pay, see QuoteSummary::left
    std::optional<units::Date> from = {}; ///< the day of its quote is this one or later
    std::optional<units::Date> to = {};   ///< or this one or earlier
    FoundBy by = FoundBy::Started;
    bool isAscending = false; ///< what has none of it, such as a total, comes first then
    std::int64_t limit = std::numeric_limits<std::int64_t>::max();
    /// How many of the newest jobs are looked through while there is no index of the book.
    std::int64_t lookThrough = std::numeric_limits<std::int64_t>::max();

    friend bool operator==(const Wanted&, const Wanted&) = default;

    bool isAll() const { return text.empty() && !stage && !isLapsed && !isUnpaid && !from && !to; }
};

struct Found {
    std::vector<QuoteSummary> jobs;
    bool hasMore = false; ///< there are others beyond the limit
    bool isWhole = true;  ///< all jobs were looked through, not only the newest
};

} // namespace sp::db

// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/sheet_maker.h"
#include "db/book/book.h"

#include <chrono>
#include <optional>

namespace sp::words {

/// What papers for a customer are to be in, best first: the customer's language, then the shop's. Neither: empty, and
/// they are in the window's.
QStringList paperLanguages(const catalogue::Shop& shop, const std::optional<catalogue::Customer>& customer);

/// What an order comes to with those prices, ready to be sealed. All that is handed over must outlive it.
/// Errors: as pricing::priceOrder and pricing::ladderFor.
base::Result<db::QuoteResult> resultOf(const catalogue::Order& order, const catalogue::PriceBook& prices,
                                       std::optional<units::Date> validUntil, layout::FitMemo& fits,
                                       const quoting::SheetWords& words, std::int64_t rules = pricing::kRulesVersion);
base::Result<db::QuoteResult> resultOf(const catalogue::Order& order, const catalogue::PriceBook& prices,
                                       std::optional<units::Date> validUntil, layout::FitMemo& fits,
                                       const quoting::SheetWords&& words,
                                       std::int64_t rules = pricing::kRulesVersion) = delete; // would not outlive it

/// The sheet of a quote that was given, as it was given. One from before results were sealed is reckoned again from
/// what is sealed; where that no longer comes to its total, the total stands and the sheet says that its lines are
/// lost.
quoting::SheetContent issuedSheet(const db::Quote& quote, layout::FitMemo& fits, const quoting::SheetWords& words);

/// Seals what quotes came to that were given before results were sealed, the newest first, where reckoning them again
/// comes to their total. Begins no further one after `budget`; the next start goes on. A book that can only be read is
/// left as it is.
void sealOldResults(db::Book& book, std::chrono::milliseconds budget, const quoting::SheetWords& words);

} // namespace sp::words

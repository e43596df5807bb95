// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/proofs.h"
#include "db/book/book.h"

#include <string_view>

namespace sp::words {

/// By which the counts kept with a drawing say that they were estimated, as JSON.
inline constexpr std::string_view kEstimateKey = "estimate";
/// Whether a drawing was estimated from and not counted.
bool isEstimated(const catalogue::DesignArtwork& drawing);

/// The same result, its sheet with the proofs of the order from the drawings that are in the book now. A drawing that
/// cannot be read has none. All that is handed over must outlive what is returned but for `result`.
db::QuoteResult withProofs(db::QuoteResult result, db::Book& book, const catalogue::Order& order,
                           const catalogue::PriceBook& prices, const quoting::SheetWords& words);

} // namespace sp::words

// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/price_book.h"
#include "db/stores/columns.h"

#include <optional>
#include <string>
#include <string_view>

namespace sp::db::stores {

/// Quotes under seal. Each is JSON with the order and the digest of its prices; the SHA-256 of that JSON is its seal,
/// and it holds the seal of the quote before, so that none can be altered, exchanged or taken out unseen. Prices are
/// kept in parts by their own digests, so that quotes given at the same prices share them. Throws Refusal.
class SealedStore {
  public:
    explicit SealedStore(sqlite::Connection& db)
        : m_db(db) {}

    /// Seals `quote` with `prices`; its fields `prices`, `customer` and `previous` are filled in here.
    void seal(records::SealedQuote quote, const catalogue::PriceBook& prices);

    struct Opened {
        records::SealedQuote quote;
        catalogue::PriceBook prices;
    };
    /// Nothing when that quote was not given. Throws Damaged when a seal does not match.
    std::optional<Opened> find(const base::Id& quote);

    /// The same without its prices: their digest only.
    std::optional<records::SealedQuote> quote(const base::Id& id);
    /// The prices of that digest, without a customer. Throws Damaged when a part of them does not match its digest.
    catalogue::PriceBook prices(const std::string& digest);
    /// The seal of a given quote, as 64 hexadecimal digits; empty when it was not given.
    std::string sealOf(const base::Id& quote);
    /// Throws Damaged when a part that given quotes share does not match its digest.
    void expectParts();

  private:
    std::string keepPart(const std::string& json);
    std::string part(const std::string& digest);
    [[noreturn]] void refusePart() const;
    [[noreturn]] void refuseSeal(const std::string& number) const;

    sqlite::Connection& m_db;
};

} // namespace sp::db::stores

// SPDX-License-Identifier: MIT
#include "db/stores/sealed_store.h"

#include "db/records/record.h"
#include "db/refusal.h"
#include "db/stores/digest.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace sp::db::stores {

using catalogue::PriceBook;
using catalogue::PricedMaterial;
using records::PriceList;
using records::SealedQuote;

void SealedStore::refuseSeal(const std::string& number) const {
    refuse(base::Code::Damaged, number,
           fmt::format("The quote {} in “{}” is damaged: its seal does not match; open a backup.", number,
                       m_db.file().filename().string()));
}

std::string SealedStore::keepPart(const std::string& json) {
    const Digest digest{sha256(json)};
    m_db.run("INSERT INTO sealed_part (digest, json) VALUES (?, ?) ON CONFLICT (digest) DO NOTHING", digest, json);
    return digest.hex;
}

void SealedStore::seal(SealedQuote quote, const PriceBook& prices) {
    std::vector<const PricedMaterial*> materials;
    for (const auto& [id, material] : prices.materials) materials.push_back(&material);
    std::sort(materials.begin(), materials.end(),
              [](const auto* a, const auto* b) { return a->material.id < b->material.id; });
    PriceList list{keepPart(records::write(prices.shop)), keepPart(records::write(prices.bench)), {}};
    for (const auto* material : materials) list.materials.push_back(keepPart(records::write(*material)));
    quote.prices = keepPart(records::write(list));
    quote.customer = prices.customer;

    std::int64_t place = 1;
    Digest previous;
    {
        auto last = m_db.query("SELECT place, digest FROM sealed ORDER BY place DESC LIMIT 1");
        if (last.step()) {
            last >> place >> previous;
            ++place;
        }
    }
    quote.previous = previous.hex;
    const std::string frozen = records::write(quote);
    m_db.run("INSERT INTO sealed (place, quote_id, number, total_micros, frozen, digest, previous_digest) "
             "VALUES (?, ?, ?, ?, ?, ?, ?)",
             place, quote.quote, quote.number, quote.total, frozen, Digest{sha256(frozen)}, previous);
}

std::optional<SealedStore::Opened> SealedStore::find(const base::Id& id) {
    auto sealed = quote(id);
    if (!sealed) return std::nullopt;
    PriceBook book = prices(sealed->prices);
    book.customer = sealed->customer;
    return Opened{std::move(*sealed), std::move(book)};
}

std::optional<SealedQuote> SealedStore::quote(const base::Id& id) {
    std::string number;
    units::Money total;
    std::string frozen;
    Digest digest;
    Digest previous;
    {
        auto row = m_db.query("SELECT number, total_micros, frozen, digest, previous_digest FROM sealed "
                              "WHERE quote_id = ?",
                              id);
        if (!row.step()) return std::nullopt;
        row >> number >> total >> frozen >> digest >> previous;
    }
    if (sha256(frozen) != digest.hex) refuseSeal(number);
    auto sealed = records::read<SealedQuote>(frozen);
    if (!sealed && sealed.error().code == base::Code::TooNew) throw Refusal(sealed.error());
    if (!sealed || sealed->quote != id || sealed->number != number || sealed->total != total ||
        sealed->previous != previous.hex)
        refuseSeal(number);
    return std::move(*sealed);
}

std::string SealedStore::sealOf(const base::Id& quote) {
    Digest digest;
    auto row = m_db.query("SELECT digest FROM sealed WHERE quote_id = ?", quote);
    if (row.step()) row >> digest;
    return digest.hex;
}

void SealedStore::refusePart() const {
    refuse(base::Code::Damaged, m_db.file().string(),
           fmt::format("Prices that belong to given quotes in “{}” are damaged; open a backup.",
                       m_db.file().filename().string()));
}

std::string SealedStore::part(const std::string& digest) {
    std::string json;
    auto row = m_db.query("SELECT json FROM sealed_part WHERE digest = ?", Digest{digest});
    if (row.step()) row >> json;
    if (sha256(json) != digest) refusePart();
    return json;
}

void SealedStore::expectParts() {
    auto rows = m_db.query("SELECT digest, json FROM sealed_part ORDER BY digest");
    while (rows.step()) {
        Digest digest;
        std::string json;
        rows >> digest >> json;
        if (sha256(json) != digest.hex) refusePart();
    }
}

PriceBook SealedStore::prices(const std::string& digest) {
    const auto list = orRefuse(records::read<PriceList>(part(digest)));
    PriceBook book;
    book.shop = orRefuse(records::read<catalogue::Shop>(part(list.shop)));
    book.bench = orRefuse(records::read<catalogue::BenchStandards>(part(list.bench)));
    for (const auto& material : list.materials) {
        auto priced = orRefuse(records::read<PricedMaterial>(part(material)));
        book.materials.emplace(priced.material.id, std::move(priced));
    }
    return book;
}

} // namespace sp::db::stores

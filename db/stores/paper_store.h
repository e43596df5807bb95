// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/price_book.h"
#include "db/records/papers.h"
#include "db/sqlite/digest.h"
#include "db/stores/columns.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sp::db::stores {

/// A paper as its seal has it, whichever version wrote it.
struct IssuedPaper {
    base::Id id;
    base::Id job;
    std::int64_t revision = 1;
    std::string number;
    std::string issuedAt;
    std::optional<units::Date> until;
    units::Money total;
    catalogue::Order order;
    std::optional<catalogue::Customer> customer;
    std::string prices; ///< digest of a PriceList
    sqlite::Digest seal;
    std::string previous;                       ///< digest of the seal before
    std::optional<records::PaperResult> result; ///< none of a paper of versions 1 and 2 until it was sealed
};

/// A quote of a job as it is listed: one for each of its revisions.
struct GivenRow {
    base::Id paper;
    base::Id job;
    std::int64_t revision = 1;
    std::string number;
    units::Date issuedOn;
    std::optional<units::Money> total; ///< none where it offers several choices
};

/// Papers under seal. A seal is the digest of a record that names what belongs to the paper by digest: its order, its
/// prices, the customer, what it came to. It also names the seal before, so that none can be altered, exchanged or
/// taken out unseen. Prices are kept in parts, so that papers issued at the same prices share them. Throws DbError.
class PaperStore {
  public:
    explicit PaperStore(sqlite::Connection& db)
        : m_db(db) {}

    /// What a paper is issued with.
    struct Issue {
        base::Id id;
        base::Id job;
        std::int64_t revision = 1;
        std::string number;
        std::string issuedAt;
        units::Date issuedOn;
        units::Date until;
        units::Money total;
        sqlite::Digest order;
    };
    /// Issues and seals a quote.
    void issue(const Issue& issue, const catalogue::PriceBook& prices, records::PaperResult result);
    /// The jobs whose newest quote still has no sealed result, the newest first.
    std::vector<base::Id> withoutResult(std::int64_t limit);
    /// Seals the result of a job's quote that was issued before results were sealed.
    void sealResult(const base::Id& job, const std::string& at, records::PaperResult result);
    /// Notes that it cannot be sealed any more.
    void loseResult(const base::Id& job);

    /// The newest quote of a job; nothing when none was issued. Throws Damaged when a seal does not match.
    std::optional<IssuedPaper> quoteOf(const base::Id& job);
    /// Of a job by its revisions, the first first.
    std::vector<GivenRow> quotesOf(const base::Id& job);
    std::optional<GivenRow> quoteNumbered(std::string_view number);
    std::optional<IssuedPaper> find(const base::Id& paper);
    /// Throws Damaged when the columns of a paper do not say what its seal is of.
    void expectColumns(const IssuedPaper& paper);
    /// The prices of that digest, without a customer. Throws Damaged when a part of them does not match its digest.
    catalogue::PriceBook prices(const std::string& digest);

    // The chain of seals, for bills too.
    sqlite::Digest lastSeal();
    void seal(const base::Id& paper, std::string_view kind, const std::string& json, const sqlite::Digest& previous);
    /// Nothing for an empty digest; of one that was taken out a customer who says so.
    std::optional<records::SealedPerson> personOf(const std::string& digest);
    /// Keeps who a paper is for, apart from all else; gives the digest.
    std::string savePerson(const records::SealedPerson& person, const std::string& at);
    /// How many papers were issued for a job.
    std::int64_t ofJob(const base::Id& job);
    /// How many papers were issued for that customer and for what was merged into it.
    std::int64_t countOf(const base::Id& customer);
    /// Takes out who the papers of that entry were for, from quotes and bills; gives how many papers it was. All else
    /// that they say stays under their seals.
    std::int64_t erasePersons(const base::Id& customer, const std::string& at);

  private:
    /// Of a paper that offers several choices, in their order.
    static std::vector<units::Money> totalsOf(const records::PaperResult& result);
    void writeChoices(const base::Id& paper, const records::PaperResult& result);
    std::string savePrices(const catalogue::PriceBook& prices);
    /// Keeps a result and, apart from it, who the customer was; gives their digests.
    struct Kept {
        std::string person;
        std::string result;
    };
    Kept saveResult(records::PaperResult result, const std::optional<catalogue::Customer>& customer,
                    const std::string& at);
    static std::string personIn(const std::string& json);
    std::string restOf(const base::Id& paper, const std::string& number);
    void sealRest(const base::Id& paper, const std::string& at);
    records::PaperResult resultOf(const std::string& result, const std::optional<records::SealedPerson>& person);
    void readLaterResult(IssuedPaper& paper);
    IssuedPaper read(const std::string& number, const std::string& json);
    [[noreturn]] void throwSealError(const std::string& number) const;

    sqlite::Connection& m_db;
};

} // namespace sp::db::stores

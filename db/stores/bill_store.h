// SPDX-License-Identifier: MIT
#pragma once

#include "db/records/issued_bill.h"
#include "db/stores/paper_store.h"

#include <optional>
#include <string_view>
#include <vector>

namespace sp::db::stores {

/// Invoices, receipts and credit notes under seal, in one chain with the quotes. Throws DbError; writes no change log.
class BillStore {
  public:
    explicit BillStore(sqlite::Connection& db)
        : m_db(db)
        , m_papers(db) {}

    /// Where a bill belongs: the job's quote names order, prices and customer.
    struct Issue {
        base::Id id;
        base::Id job;
        std::int64_t revision = 1;
        catalogue::PaperKind kind = catalogue::PaperKind::Invoice;
        std::string number;
        std::string issuedAt;
        std::optional<units::Date> due;
        units::Money total; ///< of a credit note below nothing
        sqlite::Digest order;
        std::string prices;
        std::optional<catalogue::Customer> customer;
    };
    /// Puts it under seal; gives the record that was sealed, for the log, before anything is written.
    records::SealedPaper prepare(const Issue& issue, records::BillResult result);
    void issue(const records::SealedPaper& paper, units::Date day);

    /// Those of a job in the order in which they were issued.
    std::vector<IssuedBill> ofJob(const base::Id& job);
    std::optional<IssuedBill> find(const base::Id& paper);
    /// Invoices and credit notes of these days, both counted, in the order in which they were issued.
    std::vector<base::Id> issuedIn(units::Date from, units::Date to);
    /// What was invoiced for a job less what was credited; nothing where it was never invoiced.
    std::optional<units::Money> billedOf(const base::Id& job);
    /// Whether that revision of a job was invoiced itself, credited since or not.
    bool isInvoiced(const base::Id& job, std::int64_t revision);
    std::optional<base::Id> numbered(std::string_view number);
    /// Throws Damaged when the columns of a bill do not say what its seal is of.
    void expectColumns(const IssuedBill& bill);

  private:
    [[noreturn]] void throwSealError(const std::string& number) const;

    sqlite::Connection& m_db;
    PaperStore m_papers;
};

/// The letter before a number of that kind, with its dash: "I-".
std::string_view prefixOf(catalogue::PaperKind kind);

} // namespace sp::db::stores

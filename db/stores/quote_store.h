// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "db/stores/columns.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sp::db::stores {

/// A quote without its seal.
struct QuoteRow {
    base::Id id;
    std::string number; ///< empty for a draft
    Stage stage = Stage::Enquiry;
    catalogue::Order order;
    std::int64_t version = 0;
};

struct QuoteListRow {
    base::Id id;
    std::string number;
    Stage stage = Stage::Enquiry;
    units::Date quotedOn;
    std::string customer;
    std::string firstTitle;
    std::int64_t lines = 0;
    std::optional<units::Money> total;
};

/// Quotes and their lines. Throws Refusal; writes no change log.
class QuoteStore {
  public:
    explicit QuoteStore(sqlite::Connection& db)
        : m_db(db) {}

    std::optional<QuoteRow> find(const base::Id& id);
    std::optional<base::Id> numbered(std::string_view number);
    /// The draft that was written last.
    std::optional<base::Id> lastDraft();
    /// Newest first. Letter case does not count.
    std::vector<QuoteListRow> list(std::string_view text, std::int64_t limit);

    /// A new draft, or the next version of the order of one that was there.
    void write(const base::Id& id, const catalogue::Order& order, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);
    void setStage(const base::Id& id, Stage stage, const Stamp& stamp);
    void setNumber(const base::Id& id, const std::string& number);
    /// The next number of that year; takes it.
    std::string takeNumber(int year);

  private:
    void takeLines(const base::Id& id, catalogue::Order& order);
    void writeLine(const base::Id& quote, std::size_t place, const catalogue::OrderLine& line);

    sqlite::Connection& m_db;
};

} // namespace sp::db::stores

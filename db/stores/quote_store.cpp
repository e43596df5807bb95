// SPDX-License-Identifier: MIT
#include "db/stores/quote_store.h"

#include "db/records/record.h"
#include "db/refusal.h"

#include <fmt/format.h>

namespace sp::db::stores {

using catalogue::Order;
using catalogue::OrderLine;

std::optional<QuoteRow> QuoteStore::find(const base::Id& id) {
    const sqlite::Reading reading(m_db);
    auto row = m_db.query("SELECT id, number, stage, row_version, customer_id, quoted_on, wanted_by, discount_ppm, "
                          "discount_micros, asks_exemption FROM quote WHERE id = ? AND deleted_at IS NULL",
                          id);
    if (!row.step()) return std::nullopt;
    QuoteRow quote;
    auto& order = quote.order;
    row >> quote.id >> quote.number >> quote.stage >> quote.version;
    order.customer = takeIdOrNone(row);
    row >> order.quotedOn >> order.wantedBy >> order.discount.share >> order.discount.amount >> order.asksExemption;
    takeLines(id, order);
    refuseDamaged(m_db, catalogue::fields::check(order));
    return quote;
}

void QuoteStore::takeLines(const base::Id& id, Order& order) {
    auto rows =
        m_db.query("SELECT id, design_id, title, width_nm, height_nm, onto_id, is_customers_garment, "
                   "has_templates_on_wall, planned_pieces, art_time_ms, quantity, typed_each_micros, is_taxable "
                   "FROM quote_line WHERE quote_id = ? ORDER BY position",
                   id);
    while (rows.step()) {
        auto& line = order.lines.emplace_back();
        rows >> line.id;
        line.design = takeIdOrNone(rows);
        rows >> line.title >> line.width >> line.height;
        line.onto = takeIdOrNone(rows);
        rows >> line.customersGarment >> line.templatesOnWall >> line.plannedPieces >> line.artTime >> line.quantity >>
            line.typedEach >> line.taxable;
    }
    const auto lineAt = [&](sqlite::Statement& row) -> OrderLine& {
        const auto place = row.takeInteger();
        if (place < 0 || place >= static_cast<std::int64_t>(order.lines.size()))
            refuseDamaged(m_db, base::fail(base::Code::Damaged, {}, "A line of a quote is missing."));
        return order.lines[static_cast<std::size_t>(place)];
    };
    auto stones = m_db.query("SELECT line, material_id, amount FROM quote_line_stone WHERE quote_id = ? "
                             "ORDER BY line, position",
                             id);
    while (stones.step()) {
        auto& stone = lineAt(stones).stones.emplace_back();
        stone.material = takeIdOrNone(stones);
        stones >> stone.count;
    }
    auto sizes =
        m_db.query("SELECT line, size, amount FROM quote_line_size WHERE quote_id = ? ORDER BY line, position", id);
    while (sizes.step()) {
        auto& size = lineAt(sizes).sizes.emplace_back();
        sizes >> size.size >> size.count;
    }
}

std::optional<base::Id> QuoteStore::numbered(std::string_view number) {
    if (number.empty()) return std::nullopt;
    auto row = m_db.query("SELECT id FROM quote WHERE number = ? AND number <> ''", number);
    if (!row.step()) return std::nullopt;
    return row.takeId();
}

std::optional<base::Id> QuoteStore::lastDraft() {
    auto row = m_db.query("SELECT id FROM quote WHERE number = '' AND deleted_at IS NULL "
                          "ORDER BY change_seq DESC, id DESC LIMIT 1");
    if (!row.step()) return std::nullopt;
    return row.takeId();
}

std::vector<QuoteListRow> QuoteStore::list(std::string_view text, std::int64_t limit) {
    static const std::string head =
        "SELECT q.id, q.number, q.stage, q.quoted_on, coalesce(c.name, ''), "
        "coalesce((SELECT title FROM quote_line WHERE quote_id = q.id AND position = 0), ''), "
        "(SELECT count(*) FROM quote_line WHERE quote_id = q.id), s.total_micros "
        "FROM quote q LEFT JOIN customer c ON c.id = q.customer_id LEFT JOIN sealed s ON s.quote_id = q.id "
        "WHERE q.deleted_at IS NULL ";
    static const std::string tail = "ORDER BY q.started_seq DESC LIMIT ?1";
    static const std::string filter = "AND (holds(q.number, ?2) OR holds(coalesce(c.name, ''), ?2) OR EXISTS "
                                      "(SELECT 1 FROM quote_line l WHERE l.quote_id = q.id AND holds(l.title, ?2))) ";
    const sqlite::Reading reading(m_db);
    auto rows = text.empty() ? m_db.query(head + tail, limit) : m_db.query(head + filter + tail, limit, text);
    std::vector<QuoteListRow> list;
    while (rows.step()) {
        auto& quote = list.emplace_back();
        rows >> quote.id >> quote.number >> quote.stage >> quote.quotedOn >> quote.customer >> quote.firstTitle >>
            quote.lines >> quote.total;
    }
    return list;
}

void QuoteStore::write(const base::Id& id, const Order& order, const Stamp& stamp) {
    m_db.run("INSERT INTO quote (id, started_seq, number, stage, customer_id, quoted_on, wanted_by, discount_ppm, "
             "discount_micros, asks_exemption, row_version, change_seq) "
             "VALUES (?1, ?2, '', 'enquiry', ?3, ?4, ?5, ?6, ?7, ?8, 1, ?2) ON CONFLICT (id) DO UPDATE SET "
             "customer_id = excluded.customer_id, quoted_on = excluded.quoted_on, wanted_by = excluded.wanted_by, "
             "discount_ppm = excluded.discount_ppm, discount_micros = excluded.discount_micros, "
             "asks_exemption = excluded.asks_exemption, row_version = row_version + 1, "
             "change_seq = excluded.change_seq, deleted_at = NULL",
             id, stamp.seq, orNull(order.customer), order.quotedOn, order.wantedBy, order.discount.share,
             order.discount.amount, order.asksExemption);
    m_db.run("DELETE FROM quote_line_stone WHERE quote_id = ?", id);
    m_db.run("DELETE FROM quote_line_size WHERE quote_id = ?", id);
    m_db.run("DELETE FROM quote_line WHERE quote_id = ?", id);
    for (std::size_t i = 0; i < order.lines.size(); ++i) writeLine(id, i, order.lines[i]);
}

void QuoteStore::writeLine(const base::Id& quote, std::size_t place, const OrderLine& line) {
    m_db.run("INSERT INTO quote_line (quote_id, position, id, design_id, title, width_nm, height_nm, onto_id, "
             "is_customers_garment, has_templates_on_wall, planned_pieces, art_time_ms, quantity, typed_each_micros, "
             "is_taxable) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
             quote, place, line.id, orNull(line.design), line.title, line.width, line.height, orNull(line.onto),
             line.customersGarment, line.templatesOnWall, line.plannedPieces, line.artTime, line.quantity,
             line.typedEach, line.taxable);
    for (std::size_t i = 0; i < line.stones.size(); ++i)
        m_db.run("INSERT INTO quote_line_stone (quote_id, line, position, material_id, amount) VALUES (?, ?, ?, ?, ?)",
                 quote, place, i, orNull(line.stones[i].material), line.stones[i].count);
    for (std::size_t i = 0; i < line.sizes.size(); ++i)
        m_db.run("INSERT INTO quote_line_size (quote_id, line, position, size, amount) VALUES (?, ?, ?, ?, ?)", quote,
                 place, i, line.sizes[i].size, line.sizes[i].count);
}

void QuoteStore::remove(const base::Id& id, const Stamp& stamp) { markRemoved(m_db, "quote", id, stamp.seq, stamp.at); }

void QuoteStore::setStage(const base::Id& id, Stage stage, const Stamp& stamp) {
    m_db.run("UPDATE quote SET stage = ?, change_seq = ?, row_version = row_version + 1 WHERE id = ?", stage, stamp.seq,
             id);
}

void QuoteStore::setNumber(const base::Id& id, const std::string& number) {
    m_db.run("UPDATE quote SET number = ? WHERE id = ?", number, id);
}

std::string QuoteStore::takeNumber(int year) {
    auto row = m_db.query("INSERT INTO counter (year, last_number) VALUES (?, 1) "
                          "ON CONFLICT (year) DO UPDATE SET last_number = last_number + 1 RETURNING last_number",
                          year);
    std::int64_t number = 0;
    while (row.step()) row >> number;
    return fmt::format("{:04}-{:04}", year, number);
}

} // namespace sp::db::stores

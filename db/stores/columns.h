// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/count.h"
#include "core/units/currency.h"
#include "core/units/date.h"
#include "core/units/duration.h"
#include "core/units/int128.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"
#include "db/records/values.h"
#include "db/sqlite/transaction.h"

#include <string>
#include <vector>

// How core's values lie in columns: each in its whole unit, enumerators and days as words.
namespace sp::db::sqlite {

template<>
struct Column<units::Money> {
    static void put(Statement& row, units::Money v) { row.bind(v.micros()); }
    static void take(Statement& row, units::Money& v) { v = units::Money::fromMicros(row.takeInteger()); }
};
template<>
struct Column<units::Rate> {
    static void put(Statement& row, units::Rate v) { row.bind(v.ppm()); }
    static void take(Statement& row, units::Rate& v) { v = units::Rate::fromPpm(row.takeInteger()); }
};
template<>
struct Column<units::Length> {
    static void put(Statement& row, units::Length v) { row.bind(v.nanometres()); }
    static void take(Statement& row, units::Length& v) { v = units::Length::fromNanometres(row.takeInteger()); }
};
template<>
struct Column<units::Duration> {
    static void put(Statement& row, units::Duration v) { row.bind(v.milliseconds()); }
    static void take(Statement& row, units::Duration& v) { v = units::Duration::fromMilliseconds(row.takeInteger()); }
};
template<>
struct Column<units::Count> {
    static void put(Statement& row, units::Count v) { row.bind(v.value()); }
    static void take(Statement& row, units::Count& v) { v = units::Count::of(row.takeInteger()); }
};
template<>
struct Column<units::Date> {
    static void put(Statement& row, units::Date v) { row.bind(std::string_view(v.iso())); }
    static void take(Statement& row, units::Date& v) {
        const auto day = units::Date::parse(row.takeText());
        if (!day) row.throwTaken();
        v = *day;
    }
};
template<>
struct Column<units::Currency> {
    static void put(Statement& row, const units::Currency& v) { row.bind(std::string_view(v.code())); }
    static void take(Statement& row, units::Currency& v) {
        const auto currency = units::Currency::parse(row.takeText());
        if (!currency) row.throwTaken();
        v = *currency;
    }
};
template<>
struct Column<std::uint32_t> {
    static void take(Statement& row, std::uint32_t& v) {
        const auto number = row.takeInteger();
        if (number < 0 || number > 0xFFFFFFFF) row.throwTaken();
        v = static_cast<std::uint32_t>(number);
    }
};
template<catalogue::fields::Named E>
struct Column<E> {
    static void put(Statement& row, E v) { row.bind(catalogue::fields::wordOf(v)); }
    static void take(Statement& row, E& v) {
        const auto named = catalogue::fields::namedBy<E>(row.takeText());
        if (!named) row.throwTaken();
        v = *named;
    }
};

} // namespace sp::db::sqlite

namespace sp::db::stores {

/// NULL for the key that means none.
inline std::optional<base::Id> orNull(const base::Id& id) {
    return id.isNone() ? std::nullopt : std::optional<base::Id>(id);
}

/// Reads a key that may be NULL.
inline base::Id takeIdOrNone(sqlite::Statement& row) {
    std::optional<base::Id> id;
    row >> id;
    return id.value_or(base::Id());
}

/// "INSERT … ON CONFLICT … DO UPDATE" for a row with key column `key` and these `columns` ("a, b, c"), then
/// change_seq. A row that was there goes on to its next version and counts as not removed.
std::string upsert(std::string_view table, std::string_view key, std::string_view columns, bool canBeRemoved = true);

/// Marks the row of which `key` is `id` as removed.
void markRemoved(sqlite::Connection& db, std::string_view table, const base::Id& id, std::int64_t changeSeq,
                 const std::string& at, std::string_view key = "id");

/// Throws Damaged when a loaded value is out of the ranges it was saved under.
void throwDamaged(const sqlite::Connection& db, const base::Done& check);

/// When a change is made and under which row of the change log.
struct Stamp {
    std::int64_t seq = 0;
    std::string at;
};

} // namespace sp::db::stores

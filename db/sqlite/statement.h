// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

struct sqlite3_stmt;

namespace sp::db::sqlite {

class Connection;
class Statement;

/// How a type of our own lies in a column: static put(Statement&, const T&) and take(Statement&, T&).
template<class T>
struct Column;

/// Of a record as JSON, the prices of a large shop among them, in bytes. What is longer is neither written nor read.
inline constexpr std::size_t kLongestRecord = 32'000'000;

/// What the cache keeps: a compiled statement.
class Prepared {
  public:
    explicit Prepared(sqlite3_stmt* statement)
        : m_statement(statement) {}
    ~Prepared();
    Prepared(const Prepared&) = delete;
    Prepared& operator=(const Prepared&) = delete;

  private:
    friend class Statement;
    sqlite3_stmt* m_statement;
    bool m_isLent = false;
};

/// A statement on loan from its connection's cache; given back, reset, at the end of its life. Must not outlive the
/// connection. Values are bound and columns read in order. What a column holds must be of the type asked for, or the
/// file is Damaged: a hostile file need not keep to its schema.
class Statement {
  public:
    Statement(Connection& connection, Prepared& prepared);
    ~Statement();
    Statement(Statement&& other) noexcept;
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;
    Statement& operator=(Statement&&) = delete;

    template<class... Values>
    void bindAll(const Values&... values) {
        (put(values), ...);
    }
    void bind(std::int64_t value);
    void bind(std::string_view value);
    void bind(const base::Id& value);
    void bindBytes(std::string_view bytes);
    void bindNull();

    /// True while there is a row; reading starts at its first column.
    bool step();

    template<class T>
    Statement& operator>>(T& value) {
        take(value);
        return *this;
    }
    bool isNull() const;
    std::int64_t takeInteger();
    std::string takeAsText(); ///< whatever it is, as SQLite writes it; for PRAGMA and the like
    std::string takeText();   ///< valid UTF-8 without NUL, no longer than a field of ours can be
    std::string takeRecord(); ///< the same up to kLongestRecord bytes
    base::Id takeId();
    std::string takeBytes(); ///< a blob of any length
    [[noreturn]] void throwColumn() const;
    /// The same of the column that was taken last.
    [[noreturn]] void throwTaken();

  private:
    template<class T>
    void put(const T& value) {
        if constexpr (std::is_convertible_v<const T&, std::string_view>)
            bind(std::string_view(value));
        else if constexpr (std::is_integral_v<T>)
            bind(static_cast<std::int64_t>(value));
        else if constexpr (std::is_same_v<T, base::Id>)
            bind(value);
        else
            Column<T>::put(*this, value);
    }
    template<class T>
    void put(const std::optional<T>& value) {
        if (value)
            put(*value);
        else
            bindNull();
    }
    template<class T>
    void take(T& value) {
        Column<T>::take(*this, value);
    }
    void take(std::int64_t& value) { value = takeInteger(); }
    void take(std::string& value) { value = takeText(); }
    void take(base::Id& value) { value = takeId(); }
    void take(bool& value);
    template<class T>
    void take(std::optional<T>& value) {
        value.reset();
        if (isNull())
            ++m_column;
        else
            take(value.emplace());
    }

    std::string takeTextOf(std::size_t longest);
    /// What the column's bytes are; throws where memory was wanting.
    const char* given(const void* bytes) const;
    std::string takeHeld(const char* bytes);

    Connection* m_connection;
    Prepared* m_prepared;
    int m_bound = 0;
    int m_column = 0;
};

} // namespace sp::db::sqlite

// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace sp::artwork {

/// One group of a DXF file: a code on one line, its value on the next.
struct DxfPair {
    int code = 0;
    std::string_view value; ///< without the line end; leading blanks dropped
};

/// Walks through the pairs of a text, which must outlive it.
class DxfPairs {
  public:
    explicit DxfPairs(std::string_view text, std::size_t from = 0)
        : m_text(text)
        , m_at(from) {}

    /// False at the end, or where a code is not a whole number (then `isGarbled`).
    bool next(DxfPair& pair);
    /// On to after the next value that is `word`, quickly.
    void skipPast(std::string_view word);
    bool isGarbled() const { return m_garbled; }
    /// Where the next pair begins.
    std::size_t position() const { return m_at; }

  private:
    std::string_view line();
    bool takePlainCode(int& code);
    /// Any whole number; false and garbled where it is something else, false where only blanks are left.
    bool takeCode(int& code);

    std::string_view m_text;
    std::size_t m_at;
    bool m_garbled = false;
};

/// The pairs from one 0 to the next: an entity, a table entry, a block's head.
class DxfEntity {
  public:
    /// Reads on to the next 0; false at the end of the text. `position` is then before that 0.
    bool read(DxfPairs& pairs);

    std::string_view type() const { return m_type; }
    std::size_t start() const { return m_start; } ///< of its 0
    std::span<const DxfPair> pairs() const { return m_pairs; }
    /// Of the first pair with this code, 1 to 511.
    std::string_view text(int code) const;
    /// Nothing when missing or unreadable.
    std::optional<double> number(int code) const;
    double number(int code, double otherwise) const { return number(code).value_or(otherwise); }
    int whole(int code, int otherwise) const;

  private:
    std::string_view m_type;
    std::size_t m_start = 0;
    std::vector<DxfPair> m_pairs;
    /// Where the first pair of a small code is, valid where its stamp is the entity's.
    static constexpr int kIndexed = 512;
    std::array<std::uint32_t, kIndexed> m_stamps{};
    std::array<std::uint32_t, kIndexed> m_places{};
    std::uint32_t m_stamp = 0;
};

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/quoting/sheet_words.h"

#include <string>
#include <vector>

namespace sp::quoting {

/// What a customer reads of a line besides its title, its pieces and its price.
class LineWords {
  public:
    /// Both must outlive it.
    LineWords(const catalogue::PriceBook& book, const SheetWords& words)
        : m_book(book)
        , m_words(words) {}

    /// What the line is made on; may be empty.
    std::string baseOf(const catalogue::OrderLine& line) const;
    /// "3 × 4 in"; empty while a side is not known.
    std::string sizeOf(const catalogue::Placement& place) const;
    /// The stones of a place, as many as the book knows.
    std::vector<StoneColour> coloursOf(const catalogue::Placement& place) const;
    /// Of all places of the line, each once.
    std::vector<StoneColour> coloursOf(const catalogue::OrderLine& line) const;
    /// "Tee, black, 3 × 4 in · Jet SS10"; with several places "Tee, black · Front: Heron, 3 × 4 in, Jet SS10 · Back:
    /// …".
    std::string detailOf(const catalogue::OrderLine& line) const;

  private:
    std::string stonesOf(const catalogue::Placement& place) const;

    const catalogue::PriceBook& m_book;
    const SheetWords& m_words;
};

} // namespace sp::quoting

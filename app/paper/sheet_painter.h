// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/lettering.h"
#include "app/paper/sheet_layout.h"

class QPainter;

namespace sp::paper {

/// A paper that is laid out: its title and its pages, at least one.
struct Document {
    std::string title;
    std::vector<PlacedPage> pages;
};

/// The one painter behind preview, printer and PDF. Needs a QGuiApplication; the font database of Qt must be usable
/// from the thread it is used in (the main one).
class SheetPainter {
  public:
    explicit SheetPainter(std::vector<PlacedPage> pages);

    int pageCount() const { return static_cast<int>(m_pages.size()); }

    /// Draws page `index` (from 0) with its upper left corner at the painter's origin; one unit of the painter is a
    /// point. White is not painted.
    void paintPage(QPainter& painter, int index) const;

  private:
    Lettering m_lettering;
    std::vector<PlacedPage> m_pages;
};

} // namespace sp::paper

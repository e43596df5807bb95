// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/lettering.h"
#include "app/paper/sheet_layout.h"

class QPainter;
class QPagedPaintDevice;

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
    SheetPainter(const SheetContent& sheet, catalogue::Paper paper);
    explicit SheetPainter(std::vector<PlacedPage> pages);

    int pageCount() const { return static_cast<int>(m_pages.size()); }
    const std::vector<PlacedPage>& pages() const { return m_pages; }

    /// Draws page `index` (from 0) with its upper left corner at the painter's origin; one unit of the painter is a
    /// point. White is not painted.
    void paintPage(QPainter& painter, int index) const;

    /// Draws the pages `first` to `last` (from 0, both included) on a device that is set to full pages, with a page
    /// break between them. False when the device refuses.
    bool paintOn(QPagedPaintDevice& device, int first, int last) const;

  private:
    Lettering m_lettering;
    std::vector<PlacedPage> m_pages;
};

} // namespace sp::paper

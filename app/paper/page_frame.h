// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/brick.h"
#include "core/catalogue/shop.h"

#include <QStringList>

#include <vector>

namespace sp::paper {

// The margins of every paper, in points.
inline constexpr double kSideMargin = 54;
inline constexpr double kTopMargin = 44;
inline constexpr double kBottomMargin = 56;
inline constexpr double kFootAbove = 44; ///< from the page's lower edge to the top of its foot

/// The column between the side margins.
double columnWidth(catalogue::Paper paper);

/// What every paper says of itself: whose it is, what, for whom, of which day.
struct PaperHead {
    struct Fact {
        QString label;
        QString value;
    };

    QString shopName;
    QStringList shopLines;
    QString title;           ///< "Quote 2026-0042", "Shopping list"
    QString demo;            ///< what a demo book says on every page; else empty
    std::vector<Fact> facts; ///< the days
    QString forLabel;        ///< above `forWhom`: "For"
    QString forWhom;         ///< the customer, or what the paper is made for; may be empty
    QStringList forLines;
    QString forAgain; ///< at the head of further pages: "for %1"
    QString page;     ///< "Page %1 of %2"
};

PaperHead headOf(const quoting::SheetContent& sheet);

/// A paper that the shop makes for itself: what it is, what for, and the day it is made on.
struct OwnPaper {
    const catalogue::Shop& shop;
    QString title;
    QString forWhat;
    QString day;
};
PaperHead headOf(const OwnPaper& paper);

/// The head and foot that all papers share.
class PageFrame : private BrickPen {
  public:
    PageFrame(PaperHead head, const Lettering& lettering, double width);

    /// The shop at the left, the paper's title and the demo mark at the right.
    Brick letterhead() const;
    /// For whom, and the days.
    Brick addressee() const;
    /// The head of every page but the first.
    Brick pageHead() const;
    /// The foot of page `page` (from 1) of `pages`.
    Brick pageFoot(int page, int pages) const;

  private:
    PaperHead m_head;
};

} // namespace sp::paper

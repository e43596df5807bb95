// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/flow_grid.h"
#include "app/desk/folding_columns.h"
#include "app/desk/split_page.h"
#include "app/desk/stone_list.h"

namespace sp::desk {

/// A place with a searched list at the left and, at the right, the card of the thing that is open. Each place says what
/// is listed and which of it is open, and calls `refresh` when that changes.
class ListPage : public SplitPage {
    Q_OBJECT

  public:
    void focusFind(); ///< the search above the list

  protected:
    using SplitPage::SplitPage;

    /// The left side: title and list. What is put into the grid returned stands below them, side by side where there is
    /// room for three. `name` and `find` are the object names of the rows and the search.
    FlowGrid* buildList(const QString& title, const StoneListWords& words, const char* name, const char* find,
                        const Formatter& formatter);
    /// The right side. In a narrow window one side is shown at a time, the card under the name of what is open.
    void addCard(QWidget* card);
    const StoneList& list() const { return *m_list; }
    void setPictures(StoneList::Picture pictures) { m_list->setPictures(std::move(pictures)); }

    /// The list and the card as things are now. What is open stays listed though the search does not find it: it is
    /// worked on (a new name, a new thing).
    void refresh();

    /// The rows that hold `wanted`, and the one of `kept` whatever it is called.
    virtual std::vector<StoneListRow> rows(const QString& wanted, const base::Id& kept) = 0;
    virtual base::Id openOne() const = 0;
    virtual void openAnother(const base::Id& thing) = 0;
    /// Fills the card.
    virtual void load() = 0;

  private:
    void fill(const base::Id& kept);
    void search();
    void showCard();

    StoneList* m_list = nullptr;
    FoldingColumns* m_columns = nullptr;
};

} // namespace sp::desk

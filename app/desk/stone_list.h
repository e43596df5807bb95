// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "app/desk/find_field.h"
#include "app/desk/stone_list_model.h"

#include <QListView>
#include <QPixmap>

#include <functional>

namespace sp::desk {

/// What a StoneList says; `find` is the label of its search, with a key.
struct StoneListWords {
    QString name;
    QString find;
    QString nothing; ///< where the search leaves no row
};

/// A search and under it the rows it leaves, of which one is open.
class StoneList : public QWidget {
    Q_OBJECT

  public:
    StoneList(const StoneListWords& words, const Formatter& formatter, QWidget* parent = nullptr);

    FindField& find() { return *m_find; }
    QListView& rows() { return *m_rows; }

    void setRows(std::vector<StoneListRow> rows, const base::Id& open);
    /// What the things look like, in place of their stones' colours; see StoneListDelegate::RowPicture.
    using Picture = std::function<QPixmap(const base::Id& id, QSize room, const QColor& ground, double ratio)>;
    void setPictures(Picture pictures);
    /// What they look like has changed, though their words may not have.
    void repaintPictures() const { m_rows->viewport()->update(); }
    bool holds(const base::Id& id) const { return m_model.indexOf(id) >= 0; }
    /// Of the first row; none where there is none.
    base::Id first() const { return m_model.rowCount() > 0 ? m_model.row(0).id : base::Id{}; }

  Q_SIGNALS:
    void searched();
    void chosen(const sp::base::Id& id);

  private:
    StoneListModel m_model;
    FindField* m_find;
    TextLabel* m_nothing;
    QListView* m_rows;
};

} // namespace sp::desk

// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/problem_note.h"
#include "app/desk/row_grid.h"

#include <QPushButton>
#include <QWidget>

namespace sp::desk {

/// Rows of entries, one line under them for what is wrong with them, and below that what adds a row. Each list of rows
/// is a class of its own on it.
class RowsPanel : public QWidget {
    Q_OBJECT

  public:
    /// Why rows that can be read were not saved; empty takes it back.
    void setRefusal(const QString& sentence);
    bool isRefused() const { return m_isRefused; }

  protected:
    /// `across`: pixels between columns. `title` may be empty.
    RowsPanel(int across, const QString& title, QWidget* parent);

    RowGrid* grid() const { return m_grid; }
    ProblemNote* problem() const { return m_problem; }
    /// A quiet button below the rows: "+ step".
    QPushButton* addButton(const QString& words, const QString& name);

  private:
    RowGrid* m_grid;
    ProblemNote* m_problem;
    bool m_isRefused = false;
};

} // namespace sp::desk

// SPDX-License-Identifier: MIT
#pragma once

#include <QGridLayout>
#include <QToolButton>
#include <QWidget>

namespace sp::desk {

/// Rows of entries in a grid: colours, packs, steps. They are built anew as a whole: `restart`, the cells with `body`
/// as their parent, `finish`.
class RowGrid : public QWidget {
    Q_OBJECT

  public:
    /// `across`: pixels between columns.
    explicit RowGrid(int across, QWidget* parent = nullptr);

    /// Drops every cell; none of their fields says anything any more.
    void restart();
    /// Shows what was put in since.
    void finish();

    QWidget* body() const { return m_body; }
    QGridLayout* cells() const { return m_cells; }
    /// Small muted words over the columns, in row 0.
    void addHeads(const QStringList& heads);
    /// The button at the end of a row that takes it out; `words` say what it takes: "Take Jet SS10 out".
    QToolButton* addRemove(int row, int column, const QString& words);

  private:
    int m_across;
    QWidget* m_body = nullptr;
    QGridLayout* m_cells = nullptr;
};

} // namespace sp::desk

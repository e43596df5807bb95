// SPDX-License-Identifier: MIT
#pragma once

#include <QPushButton>
#include <QScrollArea>
#include <QWidget>

#include <vector>

namespace sp::desk {

/// Columns side by side if there is room; else one at a time, with a figure, if there is one, that stays visible.
class FoldingColumns : public QWidget {
    Q_OBJECT

  public:
    explicit FoldingColumns(QWidget* parent = nullptr);

    /// `width` is the column's width at 100 % zoom; the column with `stretch` takes the remaining width.
    void addColumn(QWidget* column, const QString& word, int width, bool stretch);
    /// The word that leads to a column while folded; cut with dots where it is long.
    void setWord(int column, const QString& word);
    void setFigure(const QString& meaning, const QString& figure);
    /// Shows that column if folded; the focus moves there if it was in another one.
    void showColumn(int column);
    /// Shows the column that this widget is in.
    void reveal(const QWidget& inside);
    bool isFolded() const { return m_folded; }
    /// The focus on the button of the column shown; only while folded.
    void focusShown();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

  private:
    struct Column {
        QScrollArea* frame;
        QPushButton* tab;
        int width;
        bool stretch;
    };

    void arrange();
    int columnWithFocus() const; ///< -1: none
    void focusIn(int column);    ///< its first stop

    std::vector<Column> m_columns;
    QWidget* m_strip;
    class Figure;
    Figure* m_figure;
    int m_shown = 0;
    bool m_folded = false;
};

} // namespace sp::desk

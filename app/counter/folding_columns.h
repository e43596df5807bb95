// SPDX-License-Identifier: MIT
#pragma once

#include <QPushButton>
#include <QScrollArea>
#include <QWidget>

#include <vector>

namespace sp::counter {

/// Three columns side by side where there is room; else pages of one strip, with a figure that stays in sight.
class FoldingColumns : public QWidget {
    Q_OBJECT

  public:
    explicit FoldingColumns(QWidget* parent = nullptr);

    /// `width` is what it takes at 100 %; the column with `stretch` takes what is left.
    void addColumn(QWidget* column, const QString& word, int width, bool stretch);
    void setFigure(const QString& meaning, const QString& figure);
    /// Turns the strip to that column when folded; a focus in another column goes with it.
    void showColumn(int column);

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

} // namespace sp::counter

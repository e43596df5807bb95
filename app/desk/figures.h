// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/fonts.h"
#include "app/desk/palette.h"

#include <QLabel>
#include <QPainter>
#include <QStyledItemDelegate>

namespace sp::desk {

/// Draws a line of text with every digit in a cell as wide as the widest one, so that figures under each other line
/// up in any font (Qt 6.4 cannot ask a font for its tabular figures). Uses the painter's font and pen.
void drawFigures(QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text);
/// How wide that comes out.
double figuresWidth(const QFontMetricsF& metrics, const QString& text);

/// Text in a size, weight and role that follows zoom and look by itself. Wraps when told (setWordWrap).
class TextLabel : public QLabel {
    Q_OBJECT

  public:
    explicit TextLabel(const QString& text = {}, TextSize size = TextSize::Body, Role role = Role::Ink,
                       Weight weight = Weight::Plain, QWidget* parent = nullptr);

    void setRole(Role role);
    Role role() const { return m_role; }
    /// Ends in "…" where it is too long, instead of making its place wider; the tooltip has all of it. Default: no.
    void setElides(bool elides);

    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

  private:
    void dress();

    TextSize m_size;
    Role m_role;
    Weight m_weight;
    bool m_dressing = false;
    bool m_elides = false;
};

/// One figure, right-aligned in tabular cells. Its accessible name is the figure itself, with what it is when that was
/// said (setMeaning), and a change is announced. With setOpens it takes focus and answers a click or Enter.
class FigureLabel : public TextLabel {
    Q_OBJECT

  public:
    explicit FigureLabel(const QString& text = {}, TextSize size = TextSize::Body, Role role = Role::Ink,
                         Weight weight = Weight::Plain, QWidget* parent = nullptr);

    void setFigure(const QString& text);
    /// "To pay": read out before the figure.
    void setMeaning(const QString& meaning);
    /// There is a rule behind it: a click, Enter or space emits opened().
    void setOpens(bool opens);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  Q_SIGNALS:
    void opened();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void name();

    QString m_meaning;
    bool m_opens = false;
};

/// Item view columns of figures: right-aligned tabular cells. Set on the columns that hold numbers.
class FigureDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace sp::desk

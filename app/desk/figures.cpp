// SPDX-License-Identifier: MIT
#include "app/desk/figures.h"

#include "app/desk/bench_style.h"

#include <QAccessible>
#include <QApplication>
#include <QKeyEvent>
#include <QStyle>
#include <QStyleOption>

#include <algorithm>

namespace sp::desk {

namespace {

double digitCell(const QFontMetricsF& metrics) {
    double widest = 0;
    for (const char16_t digit : u"0123456789")
        if (digit) widest = std::max(widest, metrics.horizontalAdvance(QChar(digit)));
    return widest;
}

/// Calls `draw(text, x, width)` for each digit and each run between digits.
template<class Draw>
double layFigures(const QFontMetricsF& metrics, const QString& text, Draw draw) {
    const double cell = digitCell(metrics);
    double x = 0;
    for (qsizetype i = 0; i < text.size();) {
        qsizetype end = i + 1;
        const bool digit = text.at(i).isDigit();
        while (!digit && end < text.size() && !text.at(end).isDigit()) ++end;
        const QString part = text.mid(i, end - i);
        const double advance = metrics.horizontalAdvance(part);
        const double width = digit ? cell : advance;
        draw(part, x + (width - advance) / 2);
        x += width;
        i = end;
    }
    return x;
}

} // namespace

double figuresWidth(const QFontMetricsF& metrics, const QString& text) {
    return layFigures(metrics, text, [](const QString&, double) {});
}

void drawFigures(QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text) {
    const QFontMetricsF metrics(painter.font(), painter.device());
    const double width = figuresWidth(metrics, text);
    double left = box.left();
    if (alignment & Qt::AlignRight) left = box.right() - width;
    if (alignment & Qt::AlignHCenter) left = box.center().x() - width / 2;
    double base = box.top() + metrics.ascent();
    if (alignment & Qt::AlignVCenter) base = box.center().y() + (metrics.ascent() - metrics.descent()) / 2;
    if (alignment & Qt::AlignBottom) base = box.bottom() - metrics.descent();
    layFigures(metrics, text, [&](const QString& part, double x) { painter.drawText(QPointF(left + x, base), part); });
}

TextLabel::TextLabel(const QString& text, TextSize size, Role role, Weight weight, QWidget* parent)
    : QLabel(text, parent)
    , m_size(size)
    , m_role(role)
    , m_weight(weight) {
    setTextFormat(Qt::PlainText);
    dress();
}

void TextLabel::setRole(Role role) {
    m_role = role;
    dress();
}

void TextLabel::setElides(bool elides) {
    m_elides = elides;
    updateGeometry();
}

QSize TextLabel::minimumSizeHint() const {
    const auto size = QLabel::minimumSizeHint();
    return m_elides ? QSize(std::min(size.width(), fontMetrics().averageCharWidth() * 4), size.height()) : size;
}

void TextLabel::paintEvent(QPaintEvent* event) {
    const bool isCut = m_elides && fontMetrics().horizontalAdvance(text()) > contentsRect().width();
    if (m_elides) setToolTip(isCut ? text() : QString());
    if (!isCut) return QLabel::paintEvent(event);
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(contentsRect(), static_cast<int>(alignment()),
                     fontMetrics().elidedText(text(), Qt::ElideRight, contentsRect().width()));
}

void TextLabel::dress() {
    if (m_dressing) return;
    m_dressing = true;
    setFont(textFont(m_size, m_weight));
    QPalette p = palette();
    p.setColor(QPalette::WindowText, colour(m_role));
    setPalette(p);
    m_dressing = false;
}

void TextLabel::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) dress();
}

bool TextLabel::event(QEvent* event) {
    const bool done = QLabel::event(event);
    if (event->type() == QEvent::ApplicationFontChange || event->type() == QEvent::ApplicationPaletteChange) dress();
    return done;
}

FigureLabel::FigureLabel(const QString& text, TextSize size, Role role, Weight weight, QWidget* parent)
    : TextLabel(text, size, role, weight, parent) {
    setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
}

void FigureLabel::setFigure(const QString& figure) {
    if (figure == text()) return;
    setText(figure);
    updateGeometry();
    name();
}

void FigureLabel::setMeaning(const QString& meaning) {
    m_meaning = meaning;
    name();
}

void FigureLabel::name() {
    setAccessibleName(m_meaning.isEmpty() ? text() : m_meaning + QLatin1Char(' ') + text());
    QAccessibleEvent said(this, QAccessible::NameChanged);
    QAccessible::updateAccessibility(&said);
}

void FigureLabel::setOpens(bool opens) {
    m_opens = opens;
    setFocusPolicy(opens ? Qt::StrongFocus : Qt::NoFocus);
    setCursor(opens ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

QSize FigureLabel::sizeHint() const {
    const QFontMetricsF metrics(font(), this);
    return {static_cast<int>(std::ceil(figuresWidth(metrics, text()))) + 4,
            static_cast<int>(std::ceil(metrics.height()))};
}

QSize FigureLabel::minimumSizeHint() const { return sizeHint(); }

void FigureLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(font());
    painter.setPen(palette().color(QPalette::WindowText));
    drawFigures(painter, QRectF(rect()).adjusted(2, 0, -2, 0), alignment(), text());
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(colour(Role::Jewel), 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
    }
}

void FigureLabel::mouseReleaseEvent(QMouseEvent* event) {
    TextLabel::mouseReleaseEvent(event);
    if (m_opens && rect().contains(event->pos())) Q_EMIT opened();
}

void FigureLabel::keyPressEvent(QKeyEvent* event) {
    const bool opens = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
    if (!m_opens || !opens) return TextLabel::keyPressEvent(event);
    Q_EMIT opened();
}

void FigureDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem cell(option);
    initStyleOption(&cell, index);
    const QString text = cell.text;
    cell.text.clear();
    const QStyle* style = cell.widget ? cell.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);

    painter->save();
    painter->setFont(cell.font);
    const bool chosen = cell.state & QStyle::State_Selected;
    const QVariant own = index.data(Qt::ForegroundRole);
    painter->setPen(own.isValid() && !chosen ? own.value<QBrush>().color() : colour(Role::Ink));
    drawFigures(*painter, QRectF(cell.rect).adjusted(8, 0, -8, 0), Qt::AlignRight | Qt::AlignVCenter, text);
    painter->restore();
}

} // namespace sp::desk

#include "moc_figures.cpp"

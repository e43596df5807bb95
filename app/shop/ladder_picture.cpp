// SPDX-License-Identifier: MIT
#include "app/shop/ladder_picture.h"

#include "app/desk/figures.h"
#include "app/desk/fonts.h"
#include "app/desk/nice_step.h"
#include "app/desk/palette.h"
#include "app/words/words.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace sp::shop {

using desk::Role;
using desk::TextSize;
using pricing::LadderCurve;
using pricing::QuantityPrice;
using units::Count;
using units::Money;

namespace {

/// Where its texts are found by the translators.
struct Ladder {
    Q_DECLARE_TR_FUNCTIONS(Ladder)
};

double shown(const Money& money) { return static_cast<double>(money.micros()) / 1e6; }

/// One of the two plots: a staircase of one figure over the quantities.
class Plot {
  public:
    Plot(QPainter& painter, const QRectF& box, const LadderCurve& curve, Money QuantityPrice::*figure,
         const desk::Formatter& formatter)
        : m_painter(painter)
        , m_box(box)
        , m_curve(curve)
        , m_figure(figure)
        , m_formatter(formatter)
        , m_line(QFontMetricsF(painter.font()).height())
        , m_last(static_cast<double>(curve.points.back().quantity.value())) {
        // The first few carry the set-up alone; the picture is about the others.
        for (std::size_t i = isEach() ? curve.points.size() / 24 : 0; i < curve.points.size(); ++i)
            m_top = std::max(m_top, shown(curve.points[i].*figure));
        m_top = m_top > 0 ? m_top * 1.08 : 1;
    }

    double x(double pieces) const { return m_box.left() + (pieces - 1) / std::max(1.0, m_last) * m_box.width(); }
    double y(double amount) const { return m_box.bottom() - amount / m_top * m_box.height(); }

    void axes(const QString& title) {
        const double step = desk::niceStep(m_top, std::max(2, static_cast<int>(m_box.height() / (2.2 * m_line))));
        for (double amount = 0; amount <= m_top; amount += step) {
            m_painter.setPen(QPen(desk::colour(Role::Hairline), 1));
            m_painter.drawLine(QPointF(m_box.left(), y(amount)), QPointF(m_box.right(), y(amount)));
            m_painter.setPen(desk::colour(Role::Muted));
            desk::drawFigures(m_painter, QRectF(m_box.left() - 70, y(amount) - m_line / 2, 64, m_line),
                              Qt::AlignRight | Qt::AlignVCenter,
                              m_formatter.money(Money::fromMicros(std::llround(amount * 1e6))));
        }
        m_painter.setPen(desk::colour(Role::Ink));
        m_painter.drawText(QRectF(m_box.left(), m_box.top() - m_line - 4, m_box.width(), m_line),
                           Qt::AlignLeft | Qt::AlignVCenter, title);
    }

    void quantities() {
        m_painter.setPen(desk::colour(Role::Muted));
        const double across = std::max(1.0, desk::niceStep(m_last, std::max(2, static_cast<int>(m_box.width() / 70))));
        for (double pieces = across; pieces <= m_last; pieces += across)
            desk::drawFigures(m_painter, QRectF(x(pieces + 0.5) - 30, m_box.bottom() + 4, 60, m_line),
                              Qt::AlignHCenter | Qt::AlignTop, m_formatter.count(Count::of(std::llround(pieces))));
    }

    /// The quantities that cost more than the one after the drop, hatched; its number stands where there is room.
    void cliffs(bool isNamed) {
        double free = m_box.left();
        const QFontMetricsF metrics(m_painter.font());
        for (const auto& cliff : m_curve.cliffs) {
            const double left = x(static_cast<double>(cliff.from.value()));
            const double right = x(static_cast<double>(cliff.at.value()));
            auto ground = desk::colour(Role::Warn);
            ground.setAlphaF(0.16F);
            m_painter.fillRect(QRectF(left, m_box.top(), right - left, m_box.height()), ground);
            m_painter.fillRect(QRectF(left, m_box.top(), right - left, m_box.height()),
                               QBrush(desk::colour(Role::Warn), Qt::BDiagPattern));
            if (!isNamed) continue;
            const auto text =
                cliff.at.value() - cliff.from.value() == 1
                    ? Ladder::tr("%1 > %2").arg(m_formatter.count(cliff.from), m_formatter.count(cliff.at))
                    : Ladder::tr("%1–%2 > %3", "from, to, and what they cost more than")
                          .arg(m_formatter.count(cliff.from), m_formatter.count(Count::of(cliff.at.value() - 1)),
                               m_formatter.count(cliff.at));
            const double width = metrics.horizontalAdvance(text) + 8;
            const double at = std::min(right + 4, m_box.right() - width);
            if (at < free) continue;
            m_painter.setPen(desk::colour(Role::Warn));
            m_painter.drawText(QRectF(at, m_box.bottom() - m_line - 4, width, m_line), Qt::AlignLeft | Qt::AlignVCenter,
                               text);
            free = at + width;
        }
    }

    void staircase(QPen pen) {
        QPainterPath path;
        for (std::size_t i = 0; i < m_curve.points.size(); ++i) {
            const auto& point = m_curve.points[i];
            const double height = y(shown(point.*m_figure));
            const double left = x(static_cast<double>(point.quantity.value()));
            const bool isLast = i + 1 == m_curve.points.size();
            const double right =
                isLast ? m_box.right() : x(static_cast<double>(m_curve.points[i + 1].quantity.value()));
            if (i == 0)
                path.moveTo(left, height);
            else
                path.lineTo(left, height);
            path.lineTo(right, height);
        }
        pen.setCapStyle(Qt::FlatCap);
        pen.setJoinStyle(Qt::MiterJoin);
        m_painter.save();
        m_painter.setClipRect(m_box.adjusted(0, -1, 1, 1));
        m_painter.setPen(pen);
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPath(path);
        m_painter.restore();
    }

    void mark(const QuantityPrice& point, Role role) {
        const double at = x(static_cast<double>(point.quantity.value()) + 0.5);
        m_painter.setPen(QPen(desk::colour(Role::Jewel), 1));
        m_painter.drawLine(QPointF(at, m_box.top()), QPointF(at, m_box.bottom()));
        if (shown(point.*m_figure) > m_top) return;
        m_painter.setBrush(desk::colour(role));
        m_painter.setPen(QPen(desk::colour(role), 1.5));
        m_painter.drawEllipse(QPointF(at, y(shown(point.*m_figure))), 3.5, 3.5);
    }

  private:
    bool isEach() const { return m_figure == &QuantityPrice::each; }

    QPainter& m_painter;
    QRectF m_box;
    const LadderCurve& m_curve;
    Money QuantityPrice::*m_figure;
    const desk::Formatter& m_formatter;
    double m_line;
    double m_last;
    double m_top = 0;
};

} // namespace

QString ladderPointWords(const LadderCurve& curve, const QuantityPrice& point, const desk::Formatter& formatter) {
    auto said = words::counted("Ladder", QT_TRANSLATE_N_NOOP("Ladder", "%1 pieces: %2 each, %3 in all"),
                               "%1 piece: %2, %3 in all", point.quantity.value())
                    .arg(formatter.count(point.quantity), formatter.money(point.each), formatter.money(point.total));
    for (const auto& cliff : curve.cliffs)
        if (cliff.from <= point.quantity && point.quantity < cliff.at)
            said += Ladder::tr("; %1 come to less, %2").arg(formatter.count(cliff.at), formatter.money(cliff.total));
    return said;
}

QStringList cliffWords(const LadderCurve& curve, const desk::Formatter& formatter) {
    QStringList said;
    for (const auto& cliff : curve.cliffs) {
        const auto from = formatter.count(cliff.from);
        const auto at = formatter.count(cliff.at);
        const auto total = formatter.money(cliff.total);
        said << (cliff.at.value() - cliff.from.value() == 1
                     ? Ladder::tr("%1 come to more than %2, which are %3.").arg(from, at, total)
                     : Ladder::tr("%1 to %2 come to more than %3, which are %4.")
                           .arg(from, formatter.count(Count::of(cliff.at.value() - 1)), at, total));
    }
    if (said.isEmpty()) said << Ladder::tr("More pieces always come to as much or more.");
    return said;
}

LadderPicture::LadderPicture(const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_formatter(formatter) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Price of a piece and total by quantity"));
    setToolTip(tr("Left and Right move along the quantities"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize LadderPicture::sizeHint() const { return {desk::scaled(560), desk::scaled(320)}; }
QSize LadderPicture::minimumSizeHint() const { return {desk::scaled(280), desk::scaled(320)}; }

void LadderPicture::setCurve(std::shared_ptr<const LadderCurve> curve) {
    const auto* before = marked();
    auto kept = before ? before->quantity : Count::of(1);
    m_curve = std::move(curve);
    if (!before && m_curve && !m_curve->cliffs.empty()) kept = m_curve->cliffs.front().from;
    m_marked = 0;
    if (m_curve)
        for (const auto& point : m_curve->points)
            if (point.quantity <= kept) m_marked = &point - m_curve->points.data();
    announce();
    update();
}

const QuantityPrice* LadderPicture::marked() const {
    if (!m_curve || m_curve->points.empty()) return nullptr;
    return &m_curve->points[static_cast<std::size_t>(m_marked)];
}

void LadderPicture::announce() {
    const auto* point = marked();
    setAccessibleDescription(point ? ladderPointWords(*m_curve, *point, m_formatter) : QString());
    QAccessibleEvent said(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&said);
}

void LadderPicture::moveTo(std::ptrdiff_t point) {
    if (!m_curve || m_curve->points.empty()) return;
    m_marked = std::clamp<std::ptrdiff_t>(point, 0, std::ssize(m_curve->points) - 1);
    announce();
    update();
    Q_EMIT moved();
}

void LadderPicture::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Right: return moveTo(m_marked + 1);
    case Qt::Key_Left: return moveTo(m_marked - 1);
    case Qt::Key_PageUp: return moveTo(m_marked + 12);
    case Qt::Key_PageDown: return moveTo(m_marked - 12);
    case Qt::Key_Home: return moveTo(0);
    case Qt::Key_End: return moveTo(m_curve ? std::ssize(m_curve->points) - 1 : 0);
    default: QWidget::keyPressEvent(event);
    }
}

QRectF LadderPicture::plot() const { return QRectF(rect()).adjusted(78, 0, -16, 0); }

void LadderPicture::mousePressEvent(QMouseEvent* event) {
    if (!m_curve || m_curve->points.empty()) return;
    const double share = (event->position().x() - plot().left()) / std::max(1.0, plot().width());
    const auto pieces =
        1 + static_cast<std::int64_t>(std::floor(share * static_cast<double>(m_curve->points.back().quantity.value())));
    std::ptrdiff_t nearest = 0;
    for (std::ptrdiff_t i = 0; i < std::ssize(m_curve->points); ++i)
        if (m_curve->points[static_cast<std::size_t>(i)].quantity.value() <= pieces) nearest = i;
    moveTo(nearest);
}

void LadderPicture::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void LadderPicture::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void LadderPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(desk::textFont(TextSize::Small));
    painter.setRenderHint(QPainter::Antialiasing);
    if (const auto* point = marked()) {
        const double line = QFontMetricsF(painter.font()).height();
        const auto box = plot();
        const double half = (height() - 3 * line - 34) / 2;
        const QRectF above(box.left(), line + 8, box.width(), half);
        const QRectF below(box.left(), above.bottom() + line + 20, box.width(), half);
        Plot each(painter, above, *m_curve, &QuantityPrice::each, m_formatter);
        each.cliffs(false);
        each.axes(tr("A piece"));
        each.staircase(QPen(desk::colour(Role::Ink), 1.5));
        each.mark(*point, Role::Ink);
        Plot total(painter, below, *m_curve, &QuantityPrice::total, m_formatter);
        total.cliffs(true);
        total.axes(tr("In all"));
        total.quantities();
        total.staircase(QPen(desk::colour(Role::Jewel), 2.5));
        total.mark(*point, Role::Jewel);
    }
    if (!hasFocus()) return;
    painter.setPen(QPen(desk::colour(Role::Jewel), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 6, 6);
}

} // namespace sp::shop

#include "moc_ladder_picture.cpp"

// SPDX-License-Identifier: MIT
#include "app/buying/cost_curve_picture.h"

#include "app/buying/buying_words.h"
#include "app/desk/figures.h"
#include "app/desk/fonts.h"
#include "app/desk/nice_step.h"
#include "app/words/words.h"
#include "core/supply/plan_figures.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace sp::buying {

using desk::Role;
using desk::TextSize;
using supply::CostCurvePoint;
using supply::Strategy;
using units::Count;
using units::Money;

namespace {

constexpr double kCurveSide = 52; ///< left and right of the plot

QString shortName(Strategy strategy) {
    switch (strategy) {
    case Strategy::Kits: return Buying::tr("kits");
    case Strategy::Bulk: return Buying::tr("bulk");
    case Strategy::Mix: return Buying::tr("mix");
    }
    return {};
}

const supply::StrategyCost& costOf(const CostCurvePoint& point, Strategy strategy) {
    switch (strategy) {
    case Strategy::Kits: return point.kits;
    case Strategy::Bulk: return point.bulk;
    case Strategy::Mix: break;
    }
    return point.mix;
}

QString runName(const supply::CostCurve& curve, const supply::CostCurveRun& run) {
    if (run.winner) return shortName(*run.winner);
    const bool isCovered = curve.points[static_cast<std::size_t>(run.from) - 1].mix.cost.has_value();
    return isCovered ? Buying::tr("nothing to buy") : Buying::tr("no way");
}

/// Draws one curve into one box.
class Drawer {
  public:
    Drawer(QPainter& painter, const QRectF& box, const CostCurveDrawing& drawing, desk::Look look,
           const desk::Formatter& formatter)
        : m_painter(painter)
        , m_drawing(drawing)
        , m_look(look)
        , m_formatter(formatter)
        , m_line(QFontMetricsF(painter.font()).height())
        , m_title(m_line + 6)
        , m_plot(box.adjusted(kCurveSide, 2 * m_line + 4 + m_title, -kCurveSide, -m_line - 6 - m_title)) {
        measure();
    }

    void draw() {
        axes();
        titles();
        changes();
        for (const Strategy strategy : {Strategy::Mix, Strategy::Kits, Strategy::Bulk})
            steps(strategy); // the wide line below what it equals
        names();
        marked();
    }

  private:
    QColor ink(Role role) const { return desk::colour(role, m_look); }
    double x(double pieces) const {
        return m_plot.left() +
               (pieces - 1) / std::max<double>(1, static_cast<double>(m_drawing.horizon)) * m_plot.width();
    }
    double y(double each) const { return m_plot.bottom() - each / m_top * m_plot.height(); }
    std::size_t shown() const {
        return std::min(m_drawing.curve.points.size(),
                        static_cast<std::size_t>(std::max<std::int64_t>(0, m_drawing.horizon)));
    }
    double eachAt(std::size_t i, Strategy strategy) const {
        const auto& point = m_drawing.curve.points[i];
        const auto each = supply::costEach(costOf(point, strategy), point.pieces);
        return each ? static_cast<double>(each->micros()) / 1e6 : -1;
    }

    /// The first pieces carry shipping and whole packs alone; the picture is about the others.
    void measure() {
        const std::size_t from = std::min<std::size_t>(
            shown() / 2, static_cast<std::size_t>(std::max<std::int64_t>(2, m_drawing.horizon / 12)));
        double top = 0;
        for (std::size_t i = from; i < shown(); ++i)
            for (const Strategy strategy : {Strategy::Kits, Strategy::Bulk, Strategy::Mix})
                top = std::max(top, eachAt(i, strategy));
        m_top = top > 0 ? top * 1.08 : 1;
    }

    void axes() {
        m_painter.setPen(QPen(ink(Role::Hairline), 1));
        const double step = desk::niceStep(m_top, std::max(2, static_cast<int>(m_plot.height() / (2.2 * m_line))));
        for (double each = 0; each <= m_top; each += step) {
            m_painter.setPen(QPen(ink(Role::Hairline), 1));
            m_painter.drawLine(QPointF(m_plot.left(), y(each)), QPointF(m_plot.right(), y(each)));
            m_painter.setPen(ink(Role::Muted));
            desk::drawFigures(m_painter, QRectF(m_plot.left() - kCurveSide, y(each) - m_line / 2, 46, m_line),
                              Qt::AlignRight | Qt::AlignVCenter,
                              m_formatter.money(Money::fromMicros(std::llround(each * 1e6))));
        }
        const double across =
            desk::niceStep(static_cast<double>(m_drawing.horizon), std::max(2, static_cast<int>(m_plot.width() / 70)));
        for (double pieces = std::max(1.0, across); pieces <= static_cast<double>(m_drawing.horizon);
             pieces += std::max(1.0, across))
            desk::drawFigures(m_painter, QRectF(x(pieces + 0.5) - 30, m_plot.bottom() + 4, 60, m_line),
                              Qt::AlignHCenter | Qt::AlignTop, m_formatter.count(Count::of(std::llround(pieces))));
    }

    void titles() {
        m_painter.setPen(ink(Role::Ink));
        const QRectF above(m_plot.left() - kCurveSide, m_plot.top() - 2 * m_line - 4 - m_title, m_plot.width(), m_line);
        m_painter.drawText(
            above, Qt::AlignLeft | Qt::AlignVCenter,
            Buying::tr("Cost of one piece, %1").arg(QString::fromStdString(m_formatter.currency().code())));
        m_painter.drawText(QRectF(m_plot.left(), m_plot.bottom() + m_line + 8, m_plot.width(), m_line),
                           Qt::AlignHCenter | Qt::AlignVCenter, Buying::tr("Pieces"));
    }

    /// An upright at every quantity where the winner changes, its number and name above where there is room; one row
    /// of names and, for what does not fit there, a second.
    void changes() {
        std::array<double, 2> free{m_plot.left() - 60, m_plot.left() - 60};
        const QFontMetricsF metrics(m_painter.font());
        for (const auto& run : m_drawing.curve.runs) {
            if (run.from > m_drawing.horizon) break;
            const double at = x(static_cast<double>(run.from));
            m_painter.setPen(QPen(ink(Role::FieldOutline), 1));
            if (run.from > 1) m_painter.drawLine(QPointF(at, m_plot.top() - 3), QPointF(at, m_plot.bottom()));
            const auto text =
                QStringLiteral("%1 %2").arg(m_formatter.count(Count::of(run.from)), runName(m_drawing.curve, run));
            const double width = metrics.horizontalAdvance(text) + 10;
            for (std::size_t row = 0; row < free.size(); ++row) {
                if (at < free[row]) continue;
                m_painter.setPen(ink(Role::Ink));
                m_painter.drawText(
                    QRectF(at, m_plot.top() - 4 - (2 - static_cast<double>(row)) * m_line, width, m_line),
                    Qt::AlignLeft | Qt::AlignVCenter, text);
                free[row] = at + width;
                break;
            }
        }
    }

    void steps(Strategy strategy) {
        QPainterPath path;
        bool isOpen = false;
        for (std::size_t i = 0; i < shown(); ++i) {
            const double each = eachAt(i, strategy);
            const double left = x(static_cast<double>(i + 1));
            if (each < 0) {
                isOpen = false;
                continue;
            }
            if (isOpen)
                path.lineTo(left, y(each));
            else
                path.moveTo(left, y(each));
            path.lineTo(x(static_cast<double>(i + 2)), y(each));
            isOpen = true;
        }
        m_painter.save();
        m_painter.setClipRect(m_plot.adjusted(0, -1, 1, 1));
        QPen pen(ink(strategy == Strategy::Mix ? Role::Jewel : Role::Ink), strategy == Strategy::Mix ? 3 : 1.5);
        if (strategy == Strategy::Kits) pen.setDashPattern({6, 3});
        if (strategy == Strategy::Bulk) pen.setDashPattern({1.5, 2});
        pen.setCapStyle(Qt::FlatCap);
        pen.setJoinStyle(Qt::MiterJoin);
        m_painter.setPen(pen);
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPath(path);
        m_painter.restore();
    }

    /// At the right end of each curve; names that would touch are moved apart.
    void names() {
        if (shown() == 0) return;
        struct Name {
            double at;
            Strategy strategy;
        };
        std::vector<Name> names;
        for (const Strategy strategy : {Strategy::Kits, Strategy::Bulk, Strategy::Mix})
            if (const double each = eachAt(shown() - 1, strategy); each >= 0)
                names.push_back({std::max(m_plot.top(), y(each)), strategy});
        std::sort(names.begin(), names.end(), [](const Name& a, const Name& b) { return a.at < b.at; });
        for (std::size_t i = 1; i < names.size(); ++i) names[i].at = std::max(names[i].at, names[i - 1].at + m_line);
        if (!names.empty() && names.back().at > m_plot.bottom()) {
            double limit = m_plot.bottom();
            for (auto it = names.rbegin(); it != names.rend(); ++it, limit -= m_line) it->at = std::min(it->at, limit);
        }
        const double left = x(static_cast<double>(shown() + 1)) + 6;
        for (const auto& name : names) {
            m_painter.setPen(ink(name.strategy == Strategy::Mix ? Role::Jewel : Role::Ink));
            m_painter.drawText(QRectF(left, name.at - m_line / 2, 60, m_line), Qt::AlignLeft | Qt::AlignVCenter,
                               shortName(name.strategy));
        }
    }

    void marked() {
        if (m_drawing.marked < 1 || static_cast<std::size_t>(m_drawing.marked) > shown()) return;
        const auto i = static_cast<std::size_t>(m_drawing.marked - 1);
        const double at = x(static_cast<double>(m_drawing.marked) + 0.5);
        m_painter.setPen(QPen(ink(Role::Jewel), 1));
        m_painter.drawLine(QPointF(at, m_plot.top()), QPointF(at, m_plot.bottom()));
        for (const Strategy strategy : {Strategy::Kits, Strategy::Bulk, Strategy::Mix})
            if (const double each = eachAt(i, strategy); each >= 0 && each <= m_top) {
                m_painter.setBrush(ink(strategy == Strategy::Mix ? Role::Jewel : Role::Card));
                m_painter.setPen(QPen(ink(strategy == Strategy::Mix ? Role::Jewel : Role::Ink), 1.5));
                m_painter.drawEllipse(QPointF(at, y(each)), 3.5, 3.5);
            }
    }

    QPainter& m_painter;
    const CostCurveDrawing& m_drawing;
    desk::Look m_look;
    const desk::Formatter& m_formatter;
    double m_line;
    double m_title; ///< height for an axis title
    QRectF m_plot;
    double m_top = 1;
};

} // namespace

QString pointWords(const CostCurvePoint& point, const desk::Formatter& formatter) {
    QStringList parts;
    for (const Strategy strategy : {Strategy::Kits, Strategy::Bulk, Strategy::Mix}) {
        const auto each = supply::costEach(costOf(point, strategy), point.pieces);
        parts << QStringLiteral("%1 %2").arg(shortName(strategy), each ? formatter.money(*each) : Buying::tr("no way"));
    }
    auto said = words::counted("Buying", QT_TRANSLATE_N_NOOP("Buying", "%1 pieces, each: %2"), "%1 piece, each: %2",
                               point.pieces)
                    .arg(formatter.count(Count::of(point.pieces)), parts.join(QStringLiteral(", ")));
    if (point.winner)
        said += Buying::tr("; %1 cheapest").arg(shortName(*point.winner));
    else if (point.mix.cost)
        said += Buying::tr("; nothing to buy");
    return point.proven ? said : said + Buying::tr(" (not proven)");
}

QStringList costCurveWords(const supply::CostCurve& curve, std::int64_t horizon, const desk::Formatter& formatter) {
    QStringList said;
    for (const auto& run : curve.runs) {
        if (run.from > horizon) break;
        const auto to = std::min(run.to, horizon);
        const auto from = formatter.count(Count::of(run.from));
        said << (run.from == to
                     ? QStringLiteral("%1: %2").arg(from, runName(curve, run))
                     : QStringLiteral("%1–%2: %3").arg(from, formatter.count(Count::of(to)), runName(curve, run)));
    }
    const bool knowsKits = std::any_of(curve.points.begin(), curve.points.end(),
                                       [](const CostCurvePoint& point) { return point.kits.cost.has_value(); });
    if (curve.bulkStaysCheaperFrom && knowsKits)
        said << Buying::tr("from %1 on bulk stays cheaper than kits, proven")
                    .arg(formatter.count(Count::of(*curve.bulkStaysCheaperFrom)));
    return said;
}

QString shownWords(const supply::CostCurve& curve, std::int64_t horizon, std::int64_t pieces,
                   const desk::Formatter& formatter) {
    const auto there = static_cast<std::int64_t>(curve.points.size());
    if (there < horizon)
        return Buying::tr("quantities up to %1 are shown: beyond it no plan was found in time")
            .arg(formatter.count(Count::of(there)));
    if (pieces <= horizon) return {};
    return Buying::tr(
               "quantities up to %1 are shown, of %2 asked for: each is planned on its own, and all of them would "
               "take too long")
        .arg(formatter.count(Count::of(horizon)), formatter.count(Count::of(pieces)));
}

void paintCostCurve(QPainter& painter, const QRectF& box, const CostCurveDrawing& drawing, desk::Look look,
                    const desk::Formatter& formatter) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    Drawer(painter, box, drawing, look, formatter).draw();
    painter.restore();
}

CostCurvePicture::CostCurvePicture(const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_formatter(formatter) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Staircase: cost of one piece by quantity"));
    setToolTip(tr("Left and Right move along the quantities; T shows the table"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize CostCurvePicture::sizeHint() const { return {desk::scaled(560), desk::scaled(264)}; }
QSize CostCurvePicture::minimumSizeHint() const { return {desk::scaled(280), desk::scaled(264)}; }

void CostCurvePicture::setCurve(std::shared_ptr<const supply::CostCurve> curve, std::int64_t horizon) {
    m_curve = std::move(curve);
    m_horizon = horizon;
    announce();
    update();
}

void CostCurvePicture::setMarked(std::int64_t pieces) {
    m_marked = pieces;
    announce();
    update();
}

void CostCurvePicture::announce() {
    const bool isThere = m_curve && m_marked >= 1 && static_cast<std::size_t>(m_marked) <= m_curve->points.size();
    setAccessibleDescription(isThere ? pointWords(m_curve->points[static_cast<std::size_t>(m_marked - 1)], m_formatter)
                                     : QString());
    QAccessibleEvent said(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&said);
}

void CostCurvePicture::moveTo(std::int64_t pieces) {
    if (!m_curve || m_curve->points.empty()) return;
    const auto last = std::min(m_horizon, static_cast<std::int64_t>(m_curve->points.size()));
    setMarked(std::clamp<std::int64_t>(pieces, 1, last));
    Q_EMIT moved(m_marked);
}

void CostCurvePicture::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Right: return moveTo(m_marked + 1);
    case Qt::Key_Left: return moveTo(m_marked - 1);
    case Qt::Key_PageUp: return moveTo(m_marked + 12);
    case Qt::Key_PageDown: return moveTo(m_marked - 12);
    case Qt::Key_Home: return moveTo(1);
    case Qt::Key_End: return moveTo(m_horizon);
    default: QWidget::keyPressEvent(event);
    }
}

void CostCurvePicture::mousePressEvent(QMouseEvent* event) {
    const double share = (event->position().x() - kCurveSide) / std::max(1.0, width() - 2 * kCurveSide);
    moveTo(1 + static_cast<std::int64_t>(std::floor(share * static_cast<double>(m_horizon))));
}

void CostCurvePicture::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void CostCurvePicture::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void CostCurvePicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(desk::textFont(TextSize::Small));
    if (!m_curve || m_curve->points.empty()) {
        painter.setPen(desk::colour(Role::Muted));
        painter.drawText(rect(), Qt::AlignCenter, tr("Working out the staircase…"));
    } else {
        paintCostCurve(painter, rect(), {*m_curve, m_horizon, m_marked}, desk::currentLook(), m_formatter);
    }
    if (!hasFocus()) return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(desk::colour(Role::Jewel), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 6, 6);
}

} // namespace sp::buying

#include "moc_cost_curve_picture.cpp"

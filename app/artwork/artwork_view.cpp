// SPDX-License-Identifier: MIT
#include "app/artwork/artwork_view.h"

#include "app/artwork/stone_grid.h"
#include "app/desk/bench_style.h"
#include "app/desk/palette.h"
#include "app/words/names.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

constexpr int kTile = 256;
constexpr int kMaxTiles = 160;
constexpr double kMinScale = 0.02;
constexpr double kMaxScale = 400;
constexpr double kStep = 1.25;
constexpr double kMargin = 24;
constexpr double kArrow = 60;

} // namespace

ArtworkView::ArtworkView(QWidget* parent)
    : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setCursor(Qt::OpenHandCursor);
    setAccessibleName(tr("Picture of the artwork"));
}

ArtworkView::~ArtworkView() = default;

void ArtworkView::setPicture(Picture picture, bool fits) {
    m_picture = std::move(picture);
    m_box = m_picture.box();
    m_grid = std::make_unique<StoneGrid>(m_picture.stones);
    m_selected = m_selected < static_cast<int>(m_picture.stones.size()) ? m_selected : -1;
    const auto stones = std::ssize(m_picture.stones);
    setAccessibleDescription(words::counted(words::Thing::Stone, stones, QString::number(stones)));
    forget();
    if (fits || m_fitted) fit();
}

void ArtworkView::forget() {
    m_tiles.clear();
    update();
}

void ArtworkView::setHighlighted(std::optional<Classification> classification) {
    if (classification == m_highlighted) return;
    m_highlighted = classification;
    forget();
}

QPointF ArtworkView::toScreen(Point place) const { return m_origin + QPointF(place.x * m_scale, place.y * m_scale); }

Point ArtworkView::toPicture(QPointF at) const {
    return {(at.x() - m_origin.x()) / m_scale, (at.y() - m_origin.y()) / m_scale};
}

void ArtworkView::setSelected(int stone) {
    m_selected = stone;
    if (stone >= 0) {
        const auto at = toScreen(m_picture.stones[static_cast<std::size_t>(stone)].centre);
        if (!QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin).contains(at))
            moveBy(QPointF(rect().center()) - at);
    }
    update();
}

void ArtworkView::fit() {
    m_fitted = true;
    if (m_box.isEmpty() || width() < 2 || height() < 2) return;
    const double across = std::max(width() - 2 * kMargin, 20.0) / std::max(m_box.width(), 0.5);
    const double down = std::max(height() - 2 * kMargin, 20.0) / std::max(m_box.height(), 0.5);
    m_scale = std::clamp(std::min({across, down, 40.0}), kMinScale, kMaxScale);
    m_origin = QPointF(std::round(width() / 2.0 - m_scale * (m_box.left + m_box.right) / 2),
                       std::round(height() / 2.0 - m_scale * (m_box.top + m_box.bottom) / 2));
    forget();
    Q_EMIT zoomed();
}

void ArtworkView::zoomBy(double factor, QPointF at) {
    const Point kept = toPicture(at);
    const double scale = std::clamp(m_scale * factor, kMinScale, kMaxScale);
    if (scale == m_scale) return;
    m_scale = scale;
    m_fitted = false;
    m_origin = QPointF(std::round(at.x() - kept.x * m_scale), std::round(at.y() - kept.y * m_scale));
    bound();
    forget();
    Q_EMIT zoomed();
}

void ArtworkView::moveBy(QPointF pixels) {
    m_fitted = false;
    m_origin += QPointF(std::round(pixels.x()), std::round(pixels.y()));
    bound();
    update();
}

/// Some of the picture always stays in sight.
void ArtworkView::bound() {
    if (m_box.isEmpty()) return;
    const auto kept = [](double origin, double low, double high, double room) {
        return std::round(std::clamp(origin, kMargin - high, std::max(room - kMargin - low, kMargin - high)));
    };
    m_origin = QPointF(kept(m_origin.x(), m_box.left * m_scale, m_box.right * m_scale, width()),
                       kept(m_origin.y(), m_box.top * m_scale, m_box.bottom * m_scale, height()));
}

void ArtworkView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (m_fitted) fit();
}

void ArtworkView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) forget();
    QWidget::changeEvent(event);
}

QPen ArtworkView::penOf(Classification classification) const {
    const bool stands = m_highlighted == classification;
    const bool warns = classification == Classification::Duplicate;
    QPen pen(desk::colour(stands  ? desk::Role::Jewel
                          : warns ? desk::Role::Warn
                                  : desk::Role::FieldOutline),
             stands ? 2 : 1);
    if (classification == Classification::Open)
        pen.setDashPattern({2, 3});
    else if (classification != Classification::Duplicate)
        pen.setDashPattern({5, 3});
    return pen;
}

QPixmap ArtworkView::tile(int column, int row) {
    const quint64 key = (quint64(quint32(column)) << 32) | quint32(row);
    const auto known = m_tiles.constFind(key);
    if (known != m_tiles.constEnd()) return *known;
    if (m_tiles.size() > kMaxTiles) m_tiles.clear();
    const double ratio = devicePixelRatioF();
    QPixmap picture(QSize(kTile, kTile) * ratio);
    picture.setDevicePixelRatio(ratio);
    picture.fill(desk::colour(desk::Role::Paper));
    m_sprites.setGround(desk::colour(desk::Role::Paper), ratio);
    QPainter painter(&picture);
    painter.translate(-double(column) * kTile, -double(row) * kTile);
    const double side = kTile / m_scale;
    paintTile(painter, {column * side, row * side, (column + 1) * side, (row + 1) * side});
    painter.end();
    return *m_tiles.insert(key, picture);
}

std::function<bool(const Box&)> ArtworkView::seenIn(const Box& part) const {
    return [part, slack = 3 / m_scale](const Box& box) {
        return box.left - slack <= part.right && box.right + slack >= part.left && box.top - slack <= part.bottom &&
               box.bottom + slack >= part.top;
    };
}

void ArtworkView::paintTile(QPainter& painter, const Box& part) {
    paintLines(painter, part);
    paintStones(painter, part);
    painter.setBrush(Qt::NoBrush);
    paintDiscs(painter, seenIn(part), true);
    paintCollisions(painter, part);
}

void ArtworkView::paintLines(QPainter& painter, const Box& part) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const auto seen = seenIn(part);
    for (const auto& line : m_picture.lines) {
        if (!seen(line.box)) continue;
        QPolygonF corners;
        corners.reserve(static_cast<int>(line.points.size()) + 1);
        for (const auto& point : line.points) corners << QPointF(point.x, point.y) * m_scale;
        if (line.closed && !corners.isEmpty()) corners << corners.first();
        painter.setPen(line.isShape ? QPen(desk::colour(desk::Role::FieldOutline), 1) : penOf(line.classification));
        painter.drawPolyline(corners);
    }
    paintDiscs(painter, seen, false);
}

/// Those that were asked for lie over the stones, which would hide them.
void ArtworkView::paintDiscs(QPainter& painter, const std::function<bool(const Box&)>& seen, bool standing) {
    for (const auto& disc : m_picture.discs) {
        Box box;
        box.add(disc.centre, disc.radius);
        if ((m_highlighted == disc.classification) != standing || !seen(box)) continue;
        painter.setPen(penOf(disc.classification));
        const double radius = disc.radius * m_scale + (disc.classification == Classification::Duplicate ? 2.5 : 0);
        painter.drawEllipse(QPointF(disc.centre.x, disc.centre.y) * m_scale, radius, radius);
    }
}

void ArtworkView::paintStones(QPainter& painter, const Box& part) {
    m_grid->visit(part, [&](int index) {
        const auto& stone = m_picture.stones[static_cast<std::size_t>(index)];
        const QPointF centre = QPointF(stone.centre.x, stone.centre.y) * m_scale;
        if (!stone.isOut) {
            m_sprites.paint(painter, centre, stone.diameter * m_scale, stone.rgb);
            return;
        }
        painter.setPen(penOf(Classification::NotRound));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(centre, stone.diameter / 2 * m_scale, stone.diameter / 2 * m_scale);
    });
}

/// A ring with a stroke across: holes that would tear into one another.
void ArtworkView::paintCollisions(QPainter& painter, const Box& part) {
    m_grid->visit(part, [&](int index) {
        const auto& stone = m_picture.stones[static_cast<std::size_t>(index)];
        if (!stone.collides || stone.isOut) return;
        const QPointF centre = QPointF(stone.centre.x, stone.centre.y) * m_scale;
        const double radius = std::max(stone.diameter / 2 * m_scale - 1, 2.0);
        painter.setPen(QPen(desk::colour(desk::Role::Warn), std::clamp(radius / 4, 0.75, 2.0))); // its colour shows
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(centre, radius, radius);
        const QPointF reach(radius * 0.7, radius * 0.7);
        painter.drawLine(centre - reach, centre + reach);
    });
}

void ArtworkView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    QPainterPath round;
    round.addRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), desk::kFieldRadius, desk::kFieldRadius);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillPath(round, desk::colour(desk::Role::Paper));
    if (m_grid) {
        painter.setClipRect(rect().adjusted(2, 2, -2, -2));
        const int firstColumn = static_cast<int>(std::floor(-m_origin.x() / kTile));
        const int firstRow = static_cast<int>(std::floor(-m_origin.y() / kTile));
        for (int row = firstRow; row * kTile + m_origin.y() < height(); ++row)
            for (int column = firstColumn; column * kTile + m_origin.x() < width(); ++column)
                painter.drawPixmap(m_origin + QPointF(column, row) * kTile, tile(column, row));
        if (m_selected >= 0) {
            const auto& stone = m_picture.stones[static_cast<std::size_t>(m_selected)];
            const double radius = std::max(stone.diameter / 2 * m_scale + 3, 6.0);
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(desk::colour(desk::Role::Paper), 4));
            painter.drawEllipse(toScreen(stone.centre), radius, radius);
            painter.setPen(QPen(desk::colour(desk::Role::Jewel), 2));
            painter.drawEllipse(toScreen(stone.centre), radius, radius);
        }
        painter.setClipping(false);
    }
    painter.setPen(QPen(desk::colour(hasFocus() ? desk::Role::Jewel : desk::Role::Hairline), hasFocus() ? 2 : 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(round);
}

void ArtworkView::wheelEvent(QWheelEvent* event) {
    const QPointF turn = event->pixelDelta().isNull() ? QPointF(event->angleDelta()) / 2 : QPointF(event->pixelDelta());
    if (event->modifiers().testFlag(Qt::ControlModifier))
        zoomBy(std::pow(kStep, event->angleDelta().y() / 120.0), event->position());
    else
        moveBy(turn);
    event->accept();
}

void ArtworkView::keyPressEvent(QKeyEvent* event) {
    const QPointF middle = QPointF(rect().center());
    switch (event->key()) {
    case Qt::Key_Left: moveBy({kArrow, 0}); return;
    case Qt::Key_Right: moveBy({-kArrow, 0}); return;
    case Qt::Key_Up: moveBy({0, kArrow}); return;
    case Qt::Key_Down: moveBy({0, -kArrow}); return;
    case Qt::Key_Plus:
    case Qt::Key_Equal: zoomBy(kStep, middle); return;
    case Qt::Key_Minus: zoomBy(1 / kStep, middle); return;
    case Qt::Key_0:
    case Qt::Key_Home: fit(); return;
    case Qt::Key_PageUp: step(-1); return;
    case Qt::Key_PageDown: step(1); return;
    default: QWidget::keyPressEvent(event);
    }
}

void ArtworkView::step(int by) {
    const int number = static_cast<int>(m_picture.stones.size());
    if (number == 0) return;
    const int next = m_selected < 0 ? (by > 0 ? 0 : number - 1) : (m_selected + by + number) % number;
    Q_EMIT picked(next);
}

void ArtworkView::say(const QString& words) {
    if (words != accessibleDescription()) setAccessibleDescription(words); // which announces it
}

void ArtworkView::mousePressEvent(QMouseEvent* event) {
    m_pressedAt = m_draggedTo = event->position();
    m_dragging = false;
}

void ArtworkView::mouseMoveEvent(QMouseEvent* event) {
    if (!event->buttons().testFlag(Qt::LeftButton)) return;
    constexpr double kShake = 4;
    if (!m_dragging && (event->position() - m_pressedAt).manhattanLength() < kShake) return;
    m_dragging = true;
    setCursor(Qt::ClosedHandCursor);
    moveBy(event->position() - m_draggedTo);
    m_draggedTo = event->position();
}

void ArtworkView::mouseReleaseEvent(QMouseEvent* event) {
    setCursor(Qt::OpenHandCursor);
    if (!m_dragging && event->button() == Qt::LeftButton) pickAt(event->position());
    m_dragging = false;
}

void ArtworkView::pickAt(QPointF at) {
    const Point place = toPicture(at);
    const int stone = stoneAt(place);
    if (stone < 0)
        if (const auto classification = lineAt(place)) {
            Q_EMIT pickedLine(*classification);
            return;
        }
    Q_EMIT picked(stone);
}

int ArtworkView::stoneAt(Point place) const {
    if (!m_grid) return -1;
    constexpr double kNear = 3; // pixels beside a small stone
    int best = -1;
    double bestAway = 0;
    Box around;
    around.add(place, kNear / m_scale);
    m_grid->visit(around, [&](int index) {
        const auto& stone = m_picture.stones[static_cast<std::size_t>(index)];
        const double away = distance(stone.centre, place) - stone.diameter / 2;
        if (away > kNear / m_scale || (best >= 0 && away >= bestAway)) return;
        best = index;
        bestAway = away;
    });
    return best;
}

std::optional<Classification> ArtworkView::lineAt(Point place) const {
    const double reach = 5 / m_scale;
    std::optional<Classification> classification;
    double best = reach;
    for (const auto& disc : m_picture.discs)
        if (const double away = std::abs(distance(disc.centre, place) - disc.radius); away < best) {
            best = away;
            classification = disc.classification;
        }
    for (const auto& line : m_picture.lines) {
        if (line.box.left - reach > place.x || line.box.right + reach < place.x || line.box.top - reach > place.y ||
            line.box.bottom + reach < place.y)
            continue;
        const std::size_t corners = line.points.size();
        for (std::size_t i = line.closed ? 0 : 1; i < corners; ++i) {
            const Point from = line.points[(i + corners - 1) % corners];
            const Point along = line.points[i] - from;
            const double length = dot(along, along);
            const double share = length > 0 ? std::clamp(dot(place - from, along) / length, 0.0, 1.0) : 0;
            if (const double away = distance(from + share * along, place); away < best) {
                best = away;
                classification = line.classification;
            }
        }
    }
    return classification;
}

} // namespace sp::artwork

#include "moc_artwork_view.cpp"

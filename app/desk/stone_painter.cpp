// SPDX-License-Identifier: MIT
#include "app/desk/stone_painter.h"

#include <QLinearGradient>
#include <QPainterPath>
#include <QPolygonF>
#include <QRadialGradient>

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>

namespace sp::desk {

namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr double kEighth = kPi / 4;

// The cut, in shares of the rim's radius: an octagon table, eight stars on its edges, eight kites on its corners, and
// sixteen halves along the rim.
constexpr double kTable = 0.54;
constexpr double kStarTip = 0.76;
constexpr double kSmallTable = 0.56;

// Where the light comes from: upper left, well above the bench (x right, y down, z up; length 1).
constexpr double kLightX = -0.42;
constexpr double kLightY = -0.57;
constexpr double kLightZ = 0.706;

struct Shades {
    QColor deep;
    QColor body;
    QColor bright;
};

Shades shadesOf(const QColor& stone) {
    // A dark stone shines by what it mirrors, so its bright facets go further from the body than a pale one's.
    const double light = stone.lightnessF() > 0 ? static_cast<double>(stone.lightnessF()) : 0.0;
    const QColor body = lightened(stone, 0.16 * std::pow(1 - light, 4)); // else jet's far facets run into one
    return {deepened(stone, 0.30 + 0.22 * light), body, lightened(stone, 0.46 + 0.34 * light)};
}

/// A facet's shade for a brightness of 0 to 1; the body's own colour lies at 0.45.
QColor shade(const Shades& s, double brightness) {
    constexpr double kMiddle = 0.45;
    const double b = std::clamp(brightness, 0.0, 1.0);
    if (b < kMiddle) return blended(s.body, s.deep, b / kMiddle);
    return blended(s.bright, s.body, (b - kMiddle) / (1 - kMiddle));
}

/// Light on a facet that leans outwards by `tilt` towards `azimuth`; `fire` is what the facets behind it throw in.
double lightOn(double azimuth, double tilt, double fire) {
    const double facing =
        std::sin(tilt) * (std::cos(azimuth) * kLightX + std::sin(azimuth) * kLightY) + std::cos(tilt) * kLightZ;
    return 0.98 * std::pow(std::max(facing, 0.0), 1.35) - 0.12 + fire;
}

/// The stone's frame: points by angle and share of the radius.
class Cut {
  public:
    Cut(QPainter& painter, QPointF centre, double radius, const Shades& shades)
        : m_painter(painter)
        , m_centre(centre)
        , m_radius(radius)
        , m_shades(shades) {}

    QPointF at(double angle, double share) const {
        return m_centre + QPointF(std::cos(angle), std::sin(angle)) * (m_radius * share);
    }

    void facet(std::initializer_list<QPointF> corners, double brightness) {
        const QColor fill = shade(m_shades, brightness);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(fill);
        m_painter.drawPolygon(QPolygonF(QList<QPointF>(corners)));
    }

    QPolygonF octagon(double share) const {
        QPolygonF corners;
        for (int k = 0; k < 8; ++k) corners << at(kEighth * (k + 0.5), share);
        return corners;
    }

  private:
    QPainter& m_painter;
    QPointF m_centre;
    double m_radius;
    const Shades& m_shades;
};

// What neighbouring facets throw at each other; fixed, so the picture is.
constexpr std::array<double, 8> kFire = {0.10, -0.08, 0.05, -0.12, 0.12, -0.05, 0.16, -0.10};

double fire(int k) { return kFire.at(static_cast<std::size_t>(k & 7)); }

/// Below this many device pixels the stars and halves would be mush: eight plain facets round the table.
constexpr double kFewFacets = 30;

void paintFewFacets(Cut& cut) {
    constexpr double kBeyond = 1.06; // the rim clips it round
    for (int k = 0; k < 8; ++k) {
        const double from = kEighth * (k - 0.5);
        const double to = from + kEighth;
        cut.facet({cut.at(from, kSmallTable), cut.at(from, kBeyond), cut.at(from + kEighth / 2, kBeyond + 0.05),
                   cut.at(to, kBeyond), cut.at(to, kSmallTable)},
                  lightOn(kEighth * k, 0.68, 0.8 * fire(k)));
    }
}

void paintCrown(Cut& cut) {
    constexpr double kBeyond = 1.03;
    for (int k = 0; k < 8; ++k) {
        const double edge = kEighth * k;          // the middle of a table edge
        const double corner = edge + kEighth / 2; // the table corner after it
        const double before = edge - kEighth / 2;
        for (const double side : {before, corner}) {
            const double middle = (edge + side) / 2;
            cut.facet(
                {cut.at(edge, kStarTip), cut.at(edge, kBeyond), cut.at(middle, kBeyond + 0.02), cut.at(side, kBeyond)},
                lightOn(middle, 0.86, side < edge ? fire(k + 3) : -fire(k + 5)));
        }
        cut.facet(
            {cut.at(corner, kTable), cut.at(edge, kStarTip), cut.at(corner, kBeyond), cut.at(edge + kEighth, kStarTip)},
            lightOn(corner, 0.62, fire(k)));
        cut.facet({cut.at(before, kTable), cut.at(edge, kStarTip), cut.at(corner, kTable)},
                  lightOn(edge, 0.36, 0.6 * fire(k + 2)));
    }
}

/// Through the table one sees the back's facets, fainter.
void paintTable(QPainter& painter, Cut& cut, const Shades& shades, double share, bool deepView, QPointF centre,
                double radius) {
    const QPolygonF table = cut.octagon(share);
    QLinearGradient sheen(centre - QPointF(radius, radius) * (share * 0.75),
                          centre + QPointF(radius, radius) * (share * 0.75));
    sheen.setColorAt(0.0, shade(shades, 0.98));
    sheen.setColorAt(0.45, shade(shades, 0.66));
    sheen.setColorAt(1.0, shade(shades, 0.40));
    painter.setPen(Qt::NoPen);
    painter.setBrush(sheen);
    painter.drawPolygon(table);
    if (!deepView) return;
    painter.setOpacity(0.42);
    for (int k = 0; k < 8; ++k) {
        const double from = kEighth * (k + 0.5);
        cut.facet({centre, cut.at(from, share * 0.60), cut.at(from + kEighth / 2, share * 0.96),
                   cut.at(from + kEighth, share * 0.60)},
                  // The back leans the other way, so it shines on the far side.
                  lightOn(from + kEighth / 2 + kPi, 0.55, 1.6 * fire(k + 1)));
    }
    painter.setOpacity(1);
}

void paintGlint(QPainter& painter, QPointF at, double reach, const QColor& light) {
    QRadialGradient glow(at, reach);
    QColor clear = light;
    clear.setAlphaF(0);
    QColor core = light;
    core.setAlphaF(0.95F);
    QColor mid = light;
    mid.setAlphaF(0.35F);
    glow.setColorAt(0, core);
    glow.setColorAt(0.35, mid);
    glow.setColorAt(1, clear);
    painter.setBrush(glow);
    painter.setPen(Qt::NoPen);
    painter.drawEllipse(at, reach, reach);
}

bool isDark(const QColor& ground) {
    return contrast(ground, lightened(ground, 1)) > contrast(ground, deepened(ground, 1));
}

/// The stone's own colour, moved until the rim stands out from the ground.
QColor rimOf(const QColor& stone, const QColor& ground) {
    return seenOn(isDark(ground) ? stone : deepened(stone, 0.35), ground);
}

} // namespace

QColor seenOn(QColor stone, const QColor& ground) {
    constexpr double kSeen = 1.9;
    const bool onDark = isDark(ground);
    for (int i = 0; i < 12 && contrast(stone, ground) < kSeen; ++i)
        stone = onDark ? lightened(stone, 0.12) : deepened(stone, 0.12);
    return stone;
}

QColor stoneColour(std::uint32_t rgb) { return QColor::fromRgb(rgb | 0xFF000000U); }

void paintStone(QPainter& painter, const QRectF& box, const QColor& stone, const QColor& ground) {
    const double side = std::min(box.width(), box.height());
    const double pixels = side * painter.device()->devicePixelRatioF();
    const QPointF centre = box.center();
    const double rimWidth = std::clamp(side * 0.028, 0.9, 3.0);
    const double radius = side / 2 - rimWidth / 2 - 0.25;
    const Shades shades = shadesOf(stone);
    const bool few = pixels < kFewFacets;
    const double table = few ? kSmallTable : kTable;

    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath round;
    round.addEllipse(centre, radius, radius);
    painter.setClipPath(round, Qt::IntersectClip);
    painter.fillRect(box, shade(shades, 0.30)); // shows as the fine lines between facets
    Cut cut(painter, centre, radius, shades);
    if (few)
        paintFewFacets(cut);
    else
        paintCrown(cut);
    paintTable(painter, cut, shades, table, !few, centre, radius);
    if (!few) {
        painter.setBrush(Qt::NoBrush);
        QColor line = shade(shades, 1);
        line.setAlphaF(0.7F);
        painter.setPen(QPen(line, std::max(0.6, side * 0.010)));
        painter.drawPolygon(cut.octagon(table));
    }
    painter.restore();

    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(rimOf(stone, ground), rimWidth));
    painter.drawEllipse(centre, radius, radius);
    const QColor light = lightened(stone, 0.93);
    paintGlint(painter, cut.at(-kPi * 0.70, few ? 0.34 : 0.42), side * (few ? 0.11 : 0.13), light);
    if (!few) paintGlint(painter, cut.at(kPi * 0.22, 0.80), side * 0.07, light);
    painter.restore();
}

} // namespace sp::desk

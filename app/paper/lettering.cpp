// SPDX-License-Identifier: MIT
#include "app/paper/lettering.h"

#include "app/desk/fonts.h"

#include <QPainter>
#include <QPointF>
#include <QTextLayout>

#include <algorithm>

namespace sp::paper {

namespace {

struct FaceShape {
    double points;
    double leading;
    QFont::Weight weight;
};

constexpr std::array<FaceShape, kFaces> kShapes{{
    {19.0, 24.0, QFont::DemiBold}, // Shop
    {13.0, 18.0, QFont::DemiBold}, // Title
    {27.0, 34.0, QFont::DemiBold}, // Total
    {10.0, 14.0, QFont::DemiBold}, // Strong
    {10.0, 14.0, QFont::Normal},   // Body
    {8.5, 12.0, QFont::Normal},    // Small
    {8.5, 12.0, QFont::DemiBold},  // SmallStrong
    {7.5, 10.5, QFont::Normal},    // Fine
}};

/// Fonts are asked for in tenths of a point, so that the whole pixels Qt wants for a size are fine enough.
constexpr double kTenths = 10.0;

constexpr const FaceShape& shapeOfFace(Face face) { return kShapes[static_cast<std::size_t>(face)]; }

/// Latin letters, digits and common signs, which need no shaping.
bool isPlain(const QString& text) {
    return std::all_of(text.begin(), text.end(), [](QChar c) {
        const auto code = c.unicode();
        return code < 0x250 || (code >= 0x2000 && code < 0x2300);
    });
}

QFont fontOf(const FaceShape& shape, QFont::StyleStrategy strategy) {
    QFont font;
    font.setFamilies(desk::textFamilies());
    font.setPixelSize(static_cast<int>(shape.points * kTenths));
    font.setWeight(shape.weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(strategy);
    return font;
}

} // namespace

Lettering::Lettering() {
    // Shaping lets a font put drawn variants in the place of hyphens, crosses and brackets, and a PDF reader that
    // copies those gets a gap. So only text that needs shaping gets it.
    for (const auto& shape : kShapes)
        for (const auto strategy : {QFont::PreferDefault, QFont::PreferNoShaping}) {
            const QFont font = fontOf(shape, strategy);
            m_cuts.push_back({font, QFontMetricsF(font)});
        }
}

const Lettering::Cut& Lettering::of(Face face, const QString& text) const {
    return m_cuts[2 * static_cast<std::size_t>(face) + (isPlain(text) ? 1 : 0)];
}

double Lettering::leading(Face face) const { return shapeOfFace(face).leading; }

double Lettering::ascent(Face face) const {
    const auto& shape = shapeOfFace(face);
    const auto& metrics = of(face, {}).metrics;
    return (shape.leading + (metrics.capHeight() / kTenths)) / 2;
}

double Lettering::width(Face face, const QString& text) const {
    return of(face, text).metrics.horizontalAdvance(text) / kTenths;
}

QStringList Lettering::wrap(Face face, const QString& text, double width, int mostLines) const {
    const QString plain = text.simplified();
    QStringList lines;
    if (plain.isEmpty()) return lines;
    const auto& cut = of(face, plain);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    QTextLayout layout(plain, cut.font);
    layout.setTextOption(option);
    layout.beginLayout();
    while (true) {
        QTextLine line = layout.createLine();
        if (!line.isValid()) break;
        if (lines.size() + 1 == mostLines) {
            lines.append(cut.metrics.elidedText(plain.mid(line.textStart()), Qt::ElideRight, width * kTenths));
            break;
        }
        line.setLineWidth(width * kTenths);
        lines.append(plain.mid(line.textStart(), line.textLength()).trimmed());
    }
    layout.endLayout();
    return lines;
}

void Lettering::draw(QPainter& painter, QPointF baseline, Face face, const QColor& colour, const QString& text) const {
    painter.save();
    painter.translate(baseline);
    painter.scale(1 / kTenths, 1 / kTenths);
    painter.setFont(of(face, text).font);
    painter.setPen(colour);
    painter.drawText(QPointF(0, 0), text);
    painter.restore();
}

} // namespace sp::paper

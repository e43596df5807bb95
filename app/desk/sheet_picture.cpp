// SPDX-License-Identifier: MIT
#include "app/desk/sheet_picture.h"

#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"
#include "app/desk/palette.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace sp::desk {

namespace {

constexpr double kMaxRollLength = 6; // times its width, what is drawn of it
constexpr int kPictureHeight = 112;
constexpr int kMargin = 8;

/// The sheet's outline; a roll cut off ends in teeth at the right.
QPainterPath outlineOf(const QRectF& sheet, bool torn) {
    QPainterPath path;
    if (!torn) {
        path.addRoundedRect(sheet, 2, 2);
        return path;
    }
    path.moveTo(sheet.topLeft());
    path.lineTo(sheet.topRight());
    constexpr int kTeeth = 8;
    for (int i = 1; i <= kTeeth; ++i) {
        const double y = sheet.top() + sheet.height() * i / kTeeth;
        path.lineTo(sheet.right() - 4, y - sheet.height() / kTeeth / 2);
        path.lineTo(sheet.right(), y);
    }
    path.lineTo(sheet.bottomLeft());
    path.closeSubpath();
    return path;
}

} // namespace

SheetPicture::SheetPicture(QWidget* parent)
    : QWidget(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void SheetPicture::setSheet(const layout::Sheet& sheet, const layout::Piece& piece,
                            std::vector<layout::Position> positions) {
    m_sheet = sheet;
    m_piece = piece;
    m_positions = std::move(positions);
    update();
}

void SheetPicture::setOutlined(bool outlined) {
    m_outlined = outlined;
    update();
}

void SheetPicture::setCaption(const QStringList& lines) {
    m_caption = lines;
    setAccessibleName(lines.value(0));
    setAccessibleDescription(lines.mid(1).join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

void SheetPicture::clear() {
    setSheet({}, {}, {});
    setCaption({});
}

QSize SheetPicture::sizeHint() const {
    const int line = QFontMetrics(textFont(TextSize::Small)).height() + 2;
    return {152, kPictureHeight + 6 + line * static_cast<int>(m_caption.size())};
}

QSize SheetPicture::minimumSizeHint() const { return {120, sizeHint().height()}; }

void SheetPicture::paintSheet(QPainter& painter, const QRectF& ground) const {
    double across = m_sheet.width.millimetres();
    double down = m_sheet.height.millimetres();
    if (across <= 0 || down <= 0) return;
    // A roll or an upright sheet lies down: its longer side goes along the picture's.
    const bool laid = down > across;
    if (laid) std::swap(across, down);
    const bool torn = across > down * kMaxRollLength;
    if (torn) across = down * kMaxRollLength;
    const QRectF room = ground.adjusted(kMargin, kMargin, -kMargin, -kMargin);
    const double scale = std::min(room.width() / across, room.height() / down);
    const QRectF sheet(room.center().x() - across * scale / 2, room.center().y() - down * scale / 2, across * scale,
                       down * scale);

    painter.setPen(QPen(colour(Role::FieldOutline), 1));
    painter.setBrush(colour(Role::Paper));
    const QPainterPath outline = outlineOf(sheet, torn);
    painter.drawPath(outline);
    painter.setClipPath(outline);

    painter.setPen(QPen(colour(Role::Jewel), 1));
    if (m_outlined)
        painter.setBrush(Qt::NoBrush);
    else
        painter.setBrush(colour(Role::JewelSoft));
    for (const layout::Position& at : m_positions) {
        double x = at.x.millimetres();
        double y = at.y.millimetres();
        double wide = at.turned ? m_piece.height.millimetres() : m_piece.width.millimetres();
        double high = at.turned ? m_piece.width.millimetres() : m_piece.height.millimetres();
        if (laid) {
            std::swap(x, y);
            std::swap(wide, high);
        }
        if (x > across) continue;
        const QRectF piece(sheet.left() + x * scale, sheet.bottom() - (y + high) * scale, wide * scale, high * scale);
        painter.drawRect(piece.adjusted(0.5, 0.5, -0.5, -0.5));
    }
    painter.setClipping(false);
}

void SheetPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF ground(0.5, 0.5, width() - 1, kPictureHeight - 1);
    painter.setPen(QPen(colour(Role::Hairline), 1));
    painter.setBrush(colour(Role::Card));
    painter.drawRoundedRect(ground, kFieldRadius + 2, kFieldRadius + 2);
    paintSheet(painter, ground);

    painter.setFont(textFont(TextSize::Small));
    const QFontMetrics metrics = painter.fontMetrics();
    int top = kPictureHeight + 6;
    for (qsizetype i = 0; i < m_caption.size(); ++i, top += metrics.height() + 2) {
        painter.setPen(colour(i == 0 ? Role::Ink : Role::Muted));
        painter.drawText(QRect(2, top, width() - 4, metrics.height()), Qt::AlignLeft,
                         metrics.elidedText(m_caption.at(i), Qt::ElideRight, width() - 4));
    }
}

} // namespace sp::desk

#include "moc_sheet_picture.cpp"

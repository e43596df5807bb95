// SPDX-License-Identifier: MIT
#include "app/plans/plan_picture.h"

#include "app/desk/fonts.h"
#include "app/desk/palette.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace sp::plans {

using desk::Role;
using desk::TextSize;
using desk::Weight;

PlanPicture::PlanPicture(const planning::CutPlan& plan, std::size_t sheet, std::int64_t first, double scale,
                         paper::PlanWords words, QWidget* parent)
    : QWidget(parent)
    , m_plan(plan)
    , m_sheet(sheet)
    , m_scale(scale)
    , m_words(std::move(words))
    , m_name(m_words.sheetName(plan, plan.sheets[sheet], first)) {
    setObjectName(QStringLiteral("planSheet"));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(m_name);
    std::vector<std::int64_t> counts(plan.list.pieces.size());
    for (const auto& place : plan.sheets[sheet].places) ++counts[place.piece];
    QStringList pieces;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] > 0)
            pieces << tr("%1 of %2, %3")
                          .arg(m_words.count(counts[i]), paper::pieceMark(i),
                               QString::fromStdString(plan.list.pieces[i].name));
    setAccessibleDescription(pieces.join(QStringLiteral("; ")));
}

int PlanPicture::captionHeight() const { return QFontMetrics(desk::textFont(TextSize::Small)).height() + 6; }

QSize PlanPicture::sizeHint() const {
    const QSizeF size = paper::planSize(m_plan) * m_scale;
    const int caption = QFontMetrics(desk::textFont(TextSize::Small)).horizontalAdvance(m_name);
    return {std::max(static_cast<int>(size.width()) + 4, caption + 4),
            static_cast<int>(size.height()) + 4 + captionHeight()};
}

void PlanPicture::paintPart(QPainter& painter, const paper::PlanShape::Part& part) const {
    const QRectF box = part.box.adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(QPen(desk::colour(Role::Jewel), 1));
    painter.setBrush(desk::colour(Role::JewelSoft));
    painter.drawRect(box);
    if (part.turned) { // a corner folded over
        const double fold = std::min({box.width() / 3, box.height() / 3, 9.0});
        QPainterPath corner(box.topRight());
        corner.lineTo(box.right() - fold, box.top());
        corner.lineTo(box.right(), box.top() + fold);
        corner.closeSubpath();
        painter.fillPath(corner, desk::colour(Role::Jewel));
    }
    painter.setPen(desk::colour(Role::Ink));
    painter.setFont(desk::textFont(TextSize::Small, Weight::Strong));
    const auto mark = paper::pieceMark(part.piece);
    const QFontMetricsF bold(painter.font());
    if (bold.horizontalAdvance(mark) > box.width() - 2 || bold.height() > box.height()) return;
    const auto size = m_words.size(m_plan.list.pieces[part.piece].size);
    const QFontMetricsF plain(desk::textFont(TextSize::Small));
    const bool both = plain.horizontalAdvance(size) <= box.width() - 8 && 2 * bold.height() + 4 <= box.height();
    if (!both) {
        painter.drawText(box, Qt::AlignCenter, mark);
        return;
    }
    const double top = box.center().y() - bold.height();
    painter.drawText(QRectF(box.left(), top, box.width(), bold.height()), Qt::AlignCenter, mark);
    painter.setFont(desk::textFont(TextSize::Small));
    painter.setPen(desk::colour(Role::Muted));
    painter.drawText(QRectF(box.left(), top + bold.height(), box.width(), bold.height()), Qt::AlignCenter, size);
}

void PlanPicture::paintLeft(QPainter& painter, const QRectF& left) const {
    if (left.width() < 8 || left.height() < 8) return;
    painter.setPen(QPen(desk::colour(Role::FieldOutline), 1, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(left.adjusted(3.5, 3.5, -3.5, -3.5));
    const auto words = tr("%1 left").arg(m_words.size(m_plan.sheets[m_sheet].left));
    painter.setFont(desk::textFont(TextSize::Small));
    painter.setPen(desk::colour(Role::Muted));
    const QFontMetricsF metrics(painter.font());
    if (metrics.horizontalAdvance(words) <= left.width() - 12 && metrics.height() <= left.height() - 10)
        painter.drawText(left, Qt::AlignCenter, words);
}

void PlanPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto& sheet = m_plan.sheets[m_sheet];
    const auto shape = paper::shapeOf(m_plan, sheet, {1, 1}, m_scale);
    painter.setPen(QPen(desk::colour(Role::FieldOutline), 1));
    painter.setBrush(desk::colour(Role::Paper));
    painter.drawRoundedRect(shape.sheet.adjusted(-0.5, -0.5, 0.5, 0.5), 2, 2);
    if (!shape.left.isNull()) paintLeft(painter, shape.left);
    for (const auto& part : shape.parts) paintPart(painter, part);
    painter.setFont(desk::textFont(TextSize::Small));
    painter.setPen(desk::colour(Role::Muted));
    painter.drawText(QRectF(2, shape.sheet.bottom() + 5, width() - 2, captionHeight()), Qt::AlignLeft | Qt::AlignTop,
                     m_name);
}

} // namespace sp::plans

#include "moc_plan_picture.cpp"

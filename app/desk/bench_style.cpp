// SPDX-License-Identifier: MIT
#include "app/desk/bench_style.h"

#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "app/desk/popup_corners.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QPlainTextEdit>
#include <QStyleFactory>
#include <QStyleOption>
#include <QTableView>
#include <QTextEdit>
#include <QToolButton>

#include <algorithm>

namespace sp::desk {

namespace {

constexpr const char* kKind = "benchKind";
constexpr const char* kWrong = "benchWrong";
constexpr int kButtonRadius = 8;
constexpr int kScrollBar = 12;
constexpr int kIconGap = 8;
constexpr int kCellPadding = 8;
constexpr int kHeadPadding = 6; // Fusion's label comes 2 px narrower

int indicator() { return scaled(18); }
int arrowRoom() { return scaled(28); }

enum class Kind { Plain, Primary, Quiet };

Kind kindOf(const QWidget* widget) { return widget ? static_cast<Kind>(widget->property(kKind).toInt()) : Kind::Plain; }

bool isTextArea(const QWidget* widget) {
    return qobject_cast<const QPlainTextEdit*>(widget) || qobject_cast<const QTextEdit*>(widget);
}

/// Draws on pixel centres, whatever the pen's width, and puts the painter back.
void roundedBox(QPainter& painter, const QRectF& box, double radius, const QBrush& ground, const QColor& line,
                double width) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(ground);
    if (width > 0)
        painter.setPen(QPen(line, width));
    else
        painter.setPen(Qt::NoPen);
    const double inset = width / 2;
    painter.drawRoundedRect(box.adjusted(inset, inset, -inset, -inset), radius, radius);
    painter.restore();
}

void drawField(QPainter& painter, const QRectF& box, QStyle::State state, const QWidget* widget) {
    const bool wrong = widget && widget->property(kWrong).toBool();
    const bool enabled = state & QStyle::State_Enabled;
    const bool focused = state & QStyle::State_HasFocus;
    const Role line = wrong ? Role::Warn : focused ? Role::Jewel : enabled ? Role::FieldOutline : Role::Hairline;
    roundedBox(painter, box, kFieldRadius, colour(enabled ? Role::Field : Role::Card), colour(line),
               wrong || focused ? 2 : 1);
}

void drawButton(QPainter& painter, const QRectF& box, QStyle::State state, const QWidget* widget) {
    const bool enabled = state & QStyle::State_Enabled;
    const bool down = state & (QStyle::State_Sunken | QStyle::State_On);
    const bool hover = enabled && (state & QStyle::State_MouseOver);
    const bool focused = state & QStyle::State_HasFocus;
    const QColor jewel = colour(Role::Jewel);
    switch (kindOf(widget)) {
    case Kind::Primary: {
        const QColor ground = !enabled ? colour(Role::Hairline)
                              : down   ? blended(colour(Role::OnJewel), jewel, 0.18)
                              : hover  ? blended(colour(Role::OnJewel), jewel, 0.09)
                                       : jewel;
        roundedBox(painter, box, kButtonRadius, ground, ground, 0);
        if (focused)
            roundedBox(painter, box.adjusted(3, 3, -3, -3), kButtonRadius - 3, Qt::NoBrush, colour(Role::OnJewel), 2);
        return;
    }
    case Kind::Quiet:
        if (down || hover) roundedBox(painter, box, kButtonRadius, colour(Role::JewelSoft), jewel, 0);
        if (state & QStyle::State_On) // the soft ground alone is hard to see on the window's
            painter.fillRect(QRectF(box.left() + 6, box.bottom() - 2, box.width() - 12, 2), jewel);
        if (focused) roundedBox(painter, box, kButtonRadius, Qt::NoBrush, jewel, 2);
        return;
    case Kind::Plain:
        roundedBox(painter, box, kButtonRadius, colour(down || hover ? Role::JewelSoft : Role::Card),
                   focused ? jewel : colour(enabled ? Role::FieldOutline : Role::Hairline), focused ? 2 : 1);
        return;
    }
}

void drawButtonLabel(QPainter& painter, const QStyleOptionButton& button, const QWidget* widget) {
    const Kind kind = kindOf(widget);
    const bool enabled = button.state & QStyle::State_Enabled;
    const Role ink = !enabled                ? Role::Muted
                     : kind == Kind::Primary ? Role::OnJewel
                     : kind == Kind::Quiet   ? Role::Jewel
                                             : Role::Ink;
    painter.save();
    if (kind != Kind::Plain) painter.setFont(textFont(TextSize::Body, Weight::Strong));
    painter.setPen(colour(ink));
    const int words = painter.fontMetrics().size(Qt::TextShowMnemonic, button.text).width();
    const int side = button.icon.isNull() ? 0 : button.iconSize.width();
    const int gap = side > 0 && words > 0 ? kIconGap : 0;
    int left = button.rect.center().x() - (side + gap + words) / 2;
    if (side > 0) {
        const QRect place(left, button.rect.center().y() - side / 2, side, side);
        button.icon.paint(&painter, place, Qt::AlignCenter, enabled ? QIcon::Normal : QIcon::Disabled);
        left += side + gap;
    }
    painter.drawText(QRect(left, button.rect.top(), words + 2, button.rect.height()),
                     Qt::AlignLeft | Qt::AlignVCenter | Qt::TextShowMnemonic, button.text);
    painter.restore();
}

void drawIndicator(QPainter& painter, const QRectF& box, QStyle::State state, bool round) {
    const bool on = state & QStyle::State_On;
    const bool enabled = state & QStyle::State_Enabled;
    const double radius = round ? box.width() / 2 : 4;
    const QColor filled = colour(enabled ? Role::Jewel : Role::Muted);
    const QColor line = on ? filled : colour(enabled ? Role::FieldOutline : Role::Hairline);
    roundedBox(painter, box.adjusted(1, 1, -1, -1), radius, on ? filled : colour(Role::Field), line, 1.25);
    if (!on && !(state & QStyle::State_NoChange)) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center());
    painter.scale(box.width() / 18, box.width() / 18);
    const QPointF c;
    if (round) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour(Role::OnJewel));
        painter.drawEllipse(c, 3.5, 3.5);
    } else {
        painter.setPen(QPen(on ? colour(Role::OnJewel) : filled, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        if (on)
            painter.drawPolyline(QPolygonF({c + QPointF(-4, 0.2), c + QPointF(-1.2, 3), c + QPointF(4, -3)}));
        else
            painter.drawLine(c + QPointF(-3.5, 0), c + QPointF(3.5, 0));
    }
    painter.restore();
}

void drawScrollBar(QPainter& painter, const QRect& handle, bool upright, QStyle::State state) {
    const bool lively = state & (QStyle::State_MouseOver | QStyle::State_Sunken);
    QRectF box(handle);
    if (upright)
        box.adjust(3, 2, -3, -2);
    else
        box.adjust(2, 3, -2, -3);
    const QColor ink = blended(colour(Role::Muted), colour(Role::Card), lively ? 0.9 : 0.5);
    roundedBox(painter, box, 3, ink, ink, 0);
}

/// Rows: the chosen one on the jewel's soft ground, a hairline under each.
void drawRow(QPainter& painter, const QStyleOptionViewItem& row) {
    const bool chosen = row.state & QStyle::State_Selected;
    const bool hover = row.state & QStyle::State_MouseOver;
    if (row.backgroundBrush.style() != Qt::NoBrush) painter.fillRect(row.rect, row.backgroundBrush);
    if (chosen)
        painter.fillRect(row.rect, colour(Role::JewelSoft));
    else if (hover)
        painter.fillRect(row.rect, blended(colour(Role::JewelSoft), colour(Role::Card), 0.5));
    painter.fillRect(QRect(row.rect.left(), row.rect.bottom(), row.rect.width(), 1), colour(Role::Hairline));
}

} // namespace

void makePrimary(QPushButton& button) {
    button.setProperty(kKind, static_cast<int>(Kind::Primary));
    button.updateGeometry();
    button.update();
}

void makeQuiet(QPushButton& button) {
    button.setProperty(kKind, static_cast<int>(Kind::Quiet));
    button.setCursor(Qt::PointingHandCursor);
    button.updateGeometry();
    button.update();
}

void markWrong(QWidget& field, bool wrong) {
    if (field.property(kWrong).toBool() == wrong) return;
    field.setProperty(kWrong, wrong);
    field.update();
}

void paintChevron(QPainter& painter, QPointF tip, const QColor& ink) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(ink, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const double half = 4 * zoom() / 100.0;
    painter.drawPolyline(QPolygonF({tip + QPointF(-half, -half), tip, tip + QPointF(half, -half)}));
    painter.restore();
}

int fieldHeight() { return std::max(32, scaled(32)); }

BenchStyle::BenchStyle()
    : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

void BenchStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    const QRectF box(option->rect);
    if (element == PE_PanelLineEdit) {
        const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
        if (frame && frame->lineWidth > 0) drawField(*painter, box, option->state, widget);
    } else if (element == PE_FrameLineEdit) {
        // The panel has drawn it.
    } else if (element == PE_PanelButtonCommand) {
        drawButton(*painter, box, option->state, widget);
    } else if (element == PE_PanelButtonTool) {
        if (option->state & (State_MouseOver | State_Sunken | State_On))
            roundedBox(*painter, box, kFieldRadius, colour(Role::JewelSoft), colour(Role::Jewel), 0);
    } else if (element == PE_IndicatorBranch) {
        if (option->state & State_Children) {
            painter->save();
            painter->translate(box.center());
            if (!(option->state & State_Open)) painter->rotate(option->direction == Qt::RightToLeft ? 90 : -90);
            paintChevron(*painter, QPointF(0, scaled(2)), colour(Role::Muted));
            painter->restore();
        }
    } else if (element == PE_FrameFocusRect) {
        // A table outlines the row (RowTable).
        if (!qobject_cast<const QPushButton*>(widget) && !qobject_cast<const QTableView*>(widget))
            roundedBox(*painter, box, 4, Qt::NoBrush, colour(Role::Jewel), 2);
    } else if (element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck) {
        drawIndicator(*painter, box, option->state, false);
    } else if (element == PE_IndicatorRadioButton) {
        drawIndicator(*painter, box, option->state, true);
    } else if (element == PE_PanelItemViewItem) {
        if (const auto* row = qstyleoption_cast<const QStyleOptionViewItem*>(option)) drawRow(*painter, *row);
    } else if (element == PE_PanelItemViewRow) {
        // Rows are painted cell by cell.
    } else if (element == PE_PanelMenu) {
        painter->fillRect(option->rect, colour(Role::Field)); // the corners are cut off
        roundedBox(*painter, box, kFieldRadius, colour(Role::Field), colour(Role::FieldOutline), 1);
    } else if (element == PE_Frame && isTextArea(widget)) {
        drawField(*painter, box, option->state, widget);
    } else if (element == PE_Frame) {
        roundedBox(*painter, box, kFieldRadius, Qt::NoBrush, colour(Role::Hairline), 1);
    } else {
        QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void BenchStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const {
    if (element == CE_PushButtonLabel) {
        if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option)) {
            drawButtonLabel(*painter, *button, widget);
            return;
        }
    } else if (element == CE_ItemViewItem) {
        if (const auto* plain = qstyleoption_cast<const QStyleOptionViewItem*>(option)) {
            QStyleOptionViewItem item(*plain);
            for (const auto group : {QPalette::Active, QPalette::Inactive})
                item.palette.setColor(group, QPalette::HighlightedText, colour(Role::Ink));
            QProxyStyle::drawControl(element, &item, painter, widget);
            return;
        }
    } else if (element == CE_HeaderSection || element == CE_HeaderEmptyArea) {
        painter->fillRect(option->rect, colour(Role::Card));
        painter->fillRect(QRect(option->rect.left(), option->rect.bottom(), option->rect.width(), 1),
                          colour(Role::Hairline));
        return;
    } else if (element == CE_HeaderLabel) {
        if (const auto* plain = qstyleoption_cast<const QStyleOptionHeader*>(option)) {
            painter->save();
            painter->setFont(textFont(TextSize::Small));
            painter->setPen(colour(Role::Muted));
            const QRect room = plain->rect.adjusted(kHeadPadding, 0, -kHeadPadding, 0);
            painter->drawText(room, static_cast<int>(plain->textAlignment | Qt::AlignVCenter),
                              painter->fontMetrics().elidedText(plain->text, Qt::ElideRight, room.width()));
            painter->restore();
            return;
        }
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void BenchStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                    const QWidget* widget) const {
    if (control == CC_ComboBox) {
        drawField(*painter, QRectF(option->rect), option->state, widget);
        const QRectF arrow(subControlRect(control, option, SC_ComboBoxArrow, widget));
        paintChevron(*painter, arrow.center() + QPointF(0, 2.5),
                     colour(option->state & State_Enabled ? Role::Muted : Role::Hairline));
        return;
    }
    if (control == CC_ScrollBar) {
        const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
        if (!bar || bar->maximum <= bar->minimum) return;
        drawScrollBar(*painter, subControlRect(control, option, SC_ScrollBarSlider, widget),
                      bar->orientation == Qt::Vertical, option->state);
        return;
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

QRect BenchStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                                 const QWidget* widget) const {
    if (control == CC_ComboBox) {
        const QRect all = option->rect;
        if (part == SC_ComboBoxArrow)
            return visualRect(option->direction, all,
                              QRect(all.right() - arrowRoom() + 1, all.top(), arrowRoom(), all.height()));
        if (part == SC_ComboBoxEditField)
            return visualRect(option->direction, all, all.adjusted(8, 1, -arrowRoom(), -1));
    }
    const auto* bar = control == CC_ScrollBar ? qstyleoption_cast<const QStyleOptionSlider*>(option) : nullptr;
    if (!bar) return QProxyStyle::subControlRect(control, option, part, widget);

    const bool upright = bar->orientation == Qt::Vertical;
    const int length = upright ? bar->rect.height() : bar->rect.width();
    const auto along = [&](int from, int to) {
        return upright ? QRect(bar->rect.left(), bar->rect.top() + from, bar->rect.width(), to - from)
                       : QRect(bar->rect.left() + from, bar->rect.top(), to - from, bar->rect.height());
    };
    const double range = static_cast<double>(bar->maximum) - bar->minimum;
    const int handle = range > 0 ? std::clamp(static_cast<int>(length * bar->pageStep / (range + bar->pageStep)),
                                              std::min(32, length), length)
                                 : length;
    const int start =
        sliderPositionFromValue(bar->minimum, bar->maximum, bar->sliderPosition, length - handle, bar->upsideDown);
    if (part == SC_ScrollBarGroove) return along(0, length);
    if (part == SC_ScrollBarSlider) return along(start, start + handle);
    if (part == SC_ScrollBarSubPage) return along(0, start);
    if (part == SC_ScrollBarAddPage) return along(start + handle, length);
    return {}; // no arrows
}

QRect BenchStyle::subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const {
    if (element == SE_LineEditContents) {
        const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
        if (frame && frame->lineWidth > 0)
            return visualRect(option->direction, option->rect, option->rect.adjusted(8, 1, -8, -1));
    }
    return QProxyStyle::subElementRect(element, option, widget);
}

QSize BenchStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                   const QWidget* widget) const {
    QSize out = QProxyStyle::sizeFromContents(type, option, size, widget);
    if (type == CT_LineEdit || type == CT_ComboBox) {
        out.setHeight(std::max(fieldHeight(), size.height() + 8));
        if (type == CT_ComboBox) out.setWidth(size.width() + arrowRoom() + 16);
    } else if (type == CT_PushButton) {
        const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
        const Kind kind = kindOf(widget);
        int words = size.width();
        if (button) {
            const QFontMetrics metrics(textFont(TextSize::Body, kind == Kind::Plain ? Weight::Plain : Weight::Strong));
            words = metrics.size(Qt::TextShowMnemonic, button->text).width() +
                    (button->icon.isNull() ? 0 : button->iconSize.width() + kIconGap);
        }
        const int height = fieldHeight() + (kind == Kind::Quiet ? 0 : 4);
        out = QSize(words + (kind == Kind::Quiet ? 16 : 32), std::max(height, size.height() + 12));
    } else if (type == CT_ItemViewItem) {
        out.setHeight(std::max(out.height(), scaled(36)));
    } else if (type == CT_HeaderSection) {
        if (const auto* head = qstyleoption_cast<const QStyleOptionHeader*>(option))
            out.setWidth(QFontMetrics(textFont(TextSize::Small)).horizontalAdvance(head->text) +
                         2 * (kHeadPadding + pixelMetric(PM_HeaderMargin, option, widget)) + 2);
        out.setHeight(scaled(32));
    } else if (type == CT_CheckBox || type == CT_RadioButton) {
        out.setHeight(std::max(out.height(), scaled(24)));
    }
    return out;
}

int BenchStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    switch (static_cast<int>(metric)) {
    case PM_ScrollBarExtent: return kScrollBar;
    case PM_ScrollBarSliderMin: return 32;
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight: return indicator();
    case PM_CheckBoxLabelSpacing:
    case PM_RadioButtonLabelSpacing: return 8;
    case PM_DefaultFrameWidth: return isTextArea(widget) ? 4 : 1;
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical: return 0;
    case PM_LayoutHorizontalSpacing:
    case PM_LayoutVerticalSpacing: return 12;
    case PM_FocusFrameHMargin: return kCellPadding - 1; // the views add 1
    case PM_SmallIconSize: return scaled(16);
    case PM_ButtonIconSize: return scaled(18);
    default: return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

int BenchStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* data) const {
    switch (static_cast<int>(hint)) {
    case SH_ComboBox_Popup: return 0;
    case SH_UnderlineShortcut: return 1;
    case SH_ItemView_ShowDecorationSelected: return 1;
    case SH_DialogButtonBox_ButtonsHaveIcons: return 0;
    case SH_ScrollBar_LeftClickAbsolutePosition: return 0;
    default: return QProxyStyle::styleHint(hint, option, widget, data);
    }
}

QPixmap BenchStyle::generatedIconPixmap(QIcon::Mode mode, const QPixmap& pixmap, const QStyleOption* option) const {
    return mode == QIcon::Selected ? pixmap : QProxyStyle::generatedIconPixmap(mode, pixmap, option);
}

void BenchStyle::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    // The wheel scrolls; it neither changes a value (WheelGuard) nor takes the focus from where somebody types.
    if (widget->focusPolicy() == Qt::WheelFocus) widget->setFocusPolicy(Qt::StrongFocus);
    if (qobject_cast<QPushButton*>(widget) || qobject_cast<QComboBox*>(widget) || qobject_cast<QToolButton*>(widget))
        widget->setAttribute(Qt::WA_Hover);
    if (qobject_cast<QMenu*>(widget) || widget->inherits("QComboBoxPrivateContainer")) roundCorners(*widget);
    if (auto* table = qobject_cast<QTableView*>(widget)) {
        table->setShowGrid(false);
        table->setFrameShape(QFrame::NoFrame);
        table->verticalHeader()->hide();
        table->verticalHeader()->setDefaultSectionSize(scaled(36));
        table->horizontalHeader()->setHighlightSections(false);
        table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        table->viewport()->setBackgroundRole(QPalette::AlternateBase); // lies on its card
    }
}

} // namespace sp::desk

#include "moc_bench_style.cpp"

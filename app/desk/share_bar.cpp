// SPDX-License-Identifier: MIT
#include "app/desk/share_bar.h"

#include "app/desk/fonts.h"
#include "app/desk/palette.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <numeric>

namespace sp::desk {

namespace {

constexpr double kGap = 2;
constexpr double kMin = 3;
constexpr int kBarHeight = 22;
constexpr double kLabelGap = 10;

} // namespace

ShareBar::ShareBar(QWidget* parent)
    : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ShareBar::setShares(std::vector<Share> shares) {
    std::erase_if(shares, [](const Share& share) { return share.amount <= 0; });
    m_shares = std::move(shares);
    QStringList said;
    for (const Share& share : m_shares) said << (share.label + QLatin1Char(' ') + share.figure).trimmed();
    setAccessibleDescription(said.join(QStringLiteral(", ")));
    update();
}

void ShareBar::setLabelled(bool labelled) {
    m_labelled = labelled;
    updateGeometry();
    update();
}

QSize ShareBar::sizeHint() const {
    return {scaled(240), kBarHeight + (m_labelled ? 6 + QFontMetrics(textFont(TextSize::Small)).height() : 0)};
}

QSize ShareBar::minimumSizeHint() const { return {80, sizeHint().height()}; }

std::vector<QRectF> ShareBar::parts(double width) const {
    double whole = 0;
    for (const Share& share : m_shares) whole += static_cast<double>(share.amount);
    const double room =
        width - kGap * static_cast<double>(m_shares.size() - 1) - kMin * static_cast<double>(m_shares.size());
    std::vector<QRectF> boxes;
    double x = 0;
    for (const Share& share : m_shares) {
        const double wide = kMin + std::max(room, 0.0) * static_cast<double>(share.amount) / whole;
        boxes.emplace_back(x, 0, wide, kBarHeight);
        x += wide + kGap;
    }
    return boxes;
}

void ShareBar::paintEvent(QPaintEvent*) {
    if (m_shares.empty()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(textFont(TextSize::Small));
    const auto boxes = parts(width());
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(jewelStep(static_cast<int>(i)));
        painter.drawRoundedRect(boxes[i], 3, 3);
    }
    if (!m_labelled) return;
    painter.setPen(colour(Role::Muted));
    for (const auto& [left, label] : labels(boxes))
        painter.drawText(QPointF(left, kBarHeight + 6 + painter.fontMetrics().ascent()), label);
}

std::vector<std::pair<double, QString>> ShareBar::labels(const std::vector<QRectF>& boxes) const {
    const QFontMetrics metrics(textFont(TextSize::Small));
    const auto wide = [&](std::size_t at) { return metrics.horizontalAdvance(m_shares[at].label); };
    std::vector<std::size_t> shown(boxes.size());
    std::iota(shown.begin(), shown.end(), 0);
    const auto needed = [&] {
        double sum = kLabelGap * (static_cast<double>(shown.size()) - 1);
        for (const auto at : shown) sum += wide(at);
        return sum;
    };
    while (!shown.empty() && needed() > width())
        shown.erase(std::min_element(shown.begin(), shown.end(), [&](std::size_t a, std::size_t b) {
            return boxes[a].width() < boxes[b].width();
        }));
    // Each under the middle of its part; where that is too close they move aside, first right, then back from the end.
    std::vector<std::pair<double, QString>> placed;
    double from = 0;
    for (const auto at : shown) {
        const double left = std::max(from, boxes[at].center().x() - wide(at) / 2.0);
        placed.emplace_back(left, m_shares[at].label);
        from = left + wide(at) + kLabelGap;
    }
    double to = width();
    for (std::size_t i = placed.size(); i-- > 0;) {
        placed[i].first = std::min(placed[i].first, to - wide(shown[i]));
        to = placed[i].first - kLabelGap;
    }
    return placed;
}

bool ShareBar::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto boxes = m_shares.empty() ? std::vector<QRectF>() : parts(width());
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        if (help->x() < boxes[i].left() || help->x() > boxes[i].right()) continue;
        QToolTip::showText(help->globalPos(), m_shares[i].label + QLatin1Char(' ') + m_shares[i].figure, this);
        return true;
    }
    QToolTip::hideText();
    return true;
}

} // namespace sp::desk

#include "moc_share_bar.cpp"

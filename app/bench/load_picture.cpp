// SPDX-License-Identifier: MIT
#include "app/bench/load_picture.h"

#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "core/scheduling/minutes.h"

#include <QPainter>
#include <QStringList>

#include <algorithm>

namespace sp::bench {

using desk::colour;
using desk::Role;
using desk::scaled;
using desk::textFont;
using desk::TextSize;
using desk::Weight;
using scheduling::PlannedDay;

namespace {

constexpr int kMostDays = 14;
constexpr int kDayWidth = 62; ///< px at 100 %
constexpr int kBarHeight = 96;
constexpr int kGap = 12;

} // namespace

LoadPicture::LoadPicture(const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_formatter(formatter) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("The coming days"));
}

void LoadPicture::setPlan(const scheduling::BenchPlan& plan, const scheduling::BenchHours& hours, units::Date today) {
    m_days.assign(plan.days.begin(), plan.days.begin() + std::min<std::ptrdiff_t>(std::ssize(plan.days), kMostDays));
    while (std::ssize(m_days) < kMostDays) {
        const auto day = today.plusDays(std::ssize(m_days));
        m_days.push_back({day, hours.on(day), hours.isClosedOn(day), {}});
    }
    describeDays();
    update();
}

void LoadPicture::setChosen(int job) {
    m_chosen = job;
    update();
}

QSize LoadPicture::sizeHint() const {
    const int lines = QFontMetrics(textFont(TextSize::Small)).height() * 2;
    return {scaled(kDayWidth) * 7, scaled(kBarHeight) + 8 + lines};
}

QSize LoadPicture::minimumSizeHint() const { return {scaled(kDayWidth) * 3, sizeHint().height()}; }

int LoadPicture::shownDays() const {
    return std::clamp(width() / std::max(1, scaled(kDayWidth)), 1, static_cast<int>(m_days.size()));
}

QString LoadPicture::nameOf(units::Date day) const {
    const auto date = desk::toQDate(day);
    return QStringLiteral("%1 %2")
        .arg(m_formatter.locale().dayName(date.dayOfWeek(), QLocale::ShortFormat))
        .arg(date.day());
}

QString LoadPicture::standingOf(const PlannedDay& day) const {
    if (day.isClosed) return tr("closed");
    if (day.time.isZero()) return tr("no hours");
    const auto left = day.time - day.taken();
    return left.milliseconds() < 60'000
               ? tr("full")
               : tr("%1 free").arg(m_formatter.count(units::Count::of(scheduling::minutesBegun(left))));
}

void LoadPicture::describeDays() {
    QStringList said;
    for (const auto& day : m_days) {
        QStringList parts{standingOf(day)};
        for (const auto& work : day.work)
            parts << tr("job %1: %2 min")
                         .arg(work.job + 1)
                         .arg(m_formatter.count(units::Count::of(scheduling::minutesBegun(work.time))));
        said << QStringLiteral("%1: %2").arg(m_formatter.dateWithDay(day.day), parts.join(QStringLiteral(", ")));
    }
    setAccessibleDescription(said.join(QStringLiteral("; ")));
}

void LoadPicture::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    update();
}

void LoadPicture::paintEvent(QPaintEvent*) {
    if (m_days.empty()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const int count = shownDays();
    double most = 1;
    for (int i = 0; i < count; ++i)
        most = std::max(most, static_cast<double>(m_days[static_cast<std::size_t>(i)].time.milliseconds()));
    const double wide = static_cast<double>(width()) / count;
    for (int i = 0; i < count; ++i)
        paintDay(painter, QRectF(wide * i, 0, wide - kGap, height()), m_days[static_cast<std::size_t>(i)], most);
}

void LoadPicture::paintDay(QPainter& painter, const QRectF& column, const PlannedDay& day, double most) const {
    const double bar = scaled(kBarHeight);
    const double line = QFontMetricsF(textFont(TextSize::Small)).height();
    const double high = bar * static_cast<double>(day.time.milliseconds()) / most;
    const QRectF box(column.left() + 1, bar - high + 1, column.width() - 2, std::max(high - 2, 1.0));
    if (day.isClosed || day.time.isZero()) {
        painter.setPen(QPen(colour(Role::Muted), 1, Qt::DashLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(column.left() + 1, bar * 0.5, column.width() - 2, bar * 0.5 - 1), 3, 3);
    } else {
        double y = box.bottom();
        for (const auto& work : day.work) {
            const double part = box.height() * static_cast<double>(work.time.milliseconds()) /
                                static_cast<double>(day.time.milliseconds());
            const QRectF piece(box.left(), y - part, box.width(), part);
            const bool isChosen = static_cast<int>(work.job) == m_chosen;
            painter.setPen(QPen(colour(Role::Card), 1));
            painter.setBrush(colour(isChosen ? Role::Jewel : Role::JewelSoft));
            painter.drawRect(piece);
            if (part >= line) {
                painter.setPen(colour(isChosen ? Role::OnJewel : Role::Ink));
                painter.setFont(textFont(TextSize::Small, Weight::Strong));
                painter.drawText(piece, Qt::AlignCenter, QString::number(work.job + 1));
            }
            y -= part;
        }
        painter.setPen(QPen(colour(Role::FieldOutline), 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box, 3, 3);
    }
    const QRectF words(column.left() - kGap / 2.0, bar + 6, column.width() + kGap, line);
    painter.setFont(textFont(TextSize::Small, Weight::Strong));
    painter.setPen(colour(Role::Ink));
    painter.drawText(words, Qt::AlignCenter, nameOf(day.day));
    painter.setFont(textFont(TextSize::Small));
    painter.setPen(colour(Role::Muted));
    painter.drawText(words.translated(0, line), Qt::AlignCenter, standingOf(day));
}

} // namespace sp::bench

#include "moc_load_picture.cpp"

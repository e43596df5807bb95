// SPDX-License-Identifier: MIT
#include "app/jobs/today_card.h"

#include "app/desk/bench_style.h"
#include "app/words/names.h"
#include "app/words/words.h"

#include <QHBoxLayout>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace sp::jobs {

using catalogue::Reminder;
using desk::colour;
using desk::Role;
using desk::scaled;
using desk::textFont;
using desk::TextLabel;
using desk::TextSize;
using desk::Weight;

namespace {

enum TodayRole { JobRole = Qt::UserRole, DetailRole, FigureRole, IsHeadRole };

constexpr std::array kReminders{Reminder::Wanted, Reminder::DepositMissing, Reminder::Lapsing, Reminder::NotCollected,
                                Reminder::Owed};

QString headOf(Reminder reminder) {
    switch (reminder) {
    case Reminder::Wanted: return TodayCard::tr("To be ready");
    case Reminder::DepositMissing: return TodayCard::tr("Deposits missing");
    case Reminder::Lapsing: return TodayCard::tr("Quotes about to lapse");
    case Reminder::NotCollected: return TodayCard::tr("Ready, not collected");
    case Reminder::Owed: return TodayCard::tr("Money owed");
    }
    return {};
}

/// A head: words, number and sum over a line. A row: who and the figure, under them what and why.
class TodayDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        return {option.rect.width(), scaled(index.data(IsHeadRole).toBool() ? 36 : 46)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        index.data(IsHeadRole).toBool() ? paintHead(*painter, option, index) : paintRow(*painter, option, index);
        painter->restore();
    }

  private:
    static void paintHead(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) {
        const QRect box = option.rect.adjusted(8, 0, -8, 0);
        if (index.row() > 0) painter.fillRect(QRect(box.left(), box.top() + 4, box.width(), 1), colour(Role::Hairline));
        const QRect words = box.adjusted(0, 8, 0, 0);
        painter.setFont(textFont(TextSize::Small, Weight::Strong));
        painter.setPen(colour(Role::Ink));
        const auto sum = index.data(FigureRole).toString();
        desk::drawFigures(painter, words, Qt::AlignRight | Qt::AlignVCenter, sum);
        painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, index.data().toString());
        const int used = painter.fontMetrics().horizontalAdvance(index.data().toString());
        painter.setFont(textFont(TextSize::Small));
        painter.setPen(colour(Role::Muted));
        painter.drawText(words.adjusted(used + 8, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                         index.data(DetailRole).toString());
    }

    static void paintRow(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) {
        const QRectF ground = QRectF(option.rect).adjusted(1, 1, -1, -1);
        const bool isChosen = option.state & QStyle::State_Selected;
        if (isChosen) {
            painter.setPen(option.state & QStyle::State_HasFocus ? QPen(colour(Role::Jewel), 2) : QPen(Qt::NoPen));
            painter.setBrush(colour(Role::JewelSoft));
            painter.drawRoundedRect(ground, desk::kFieldRadius, desk::kFieldRadius);
        }
        const QRect inner = ground.toRect().adjusted(7, 3, -7, -3);
        const QRect upper(inner.left(), inner.top(), inner.width(), inner.height() / 2);
        const QRect lower(inner.left(), upper.bottom() + 1, inner.width(), inner.height() / 2);
        painter.setFont(textFont(TextSize::Body));
        painter.setPen(colour(Role::Ink));
        const auto figure = index.data(FigureRole).toString();
        desk::drawFigures(painter, upper, Qt::AlignRight | Qt::AlignVCenter, figure);
        const int taken = figure.isEmpty() ? 0 : int(desk::figuresWidth(QFontMetricsF(painter.font()), figure)) + 12;
        painter.drawText(
            upper, Qt::AlignLeft | Qt::AlignVCenter,
            painter.fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, upper.width() - taken));
        painter.setFont(textFont(TextSize::Small));
        painter.setPen(colour(Role::Muted));
        painter.drawText(
            lower, Qt::AlignLeft | Qt::AlignVCenter,
            painter.fontMetrics().elidedText(index.data(DetailRole).toString(), Qt::ElideRight, lower.width()));
    }
};

} // namespace

TodayCard::TodayCard(TodayWatch& watch, const desk::Formatter& formatter, QWidget* parent)
    : desk::Card(parent)
    , m_watch(watch)
    , m_formatter(formatter)
    , m_count(new TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this))
    , m_nothing(new TextLabel(tr("Nothing asks for anything today."), TextSize::Body, Role::Muted, Weight::Plain, this))
    , m_list(new QListView(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 16, 12, 12);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(8, 0, 8, 0);
    head->addWidget(desk::sectionTitle(tr("What today asks"), this), 1);
    m_count->setObjectName(QStringLiteral("todayCount"));
    head->addWidget(m_count);
    column->addLayout(head);
    m_nothing->setObjectName(QStringLiteral("todayNothing"));
    m_nothing->setWordWrap(true);
    m_nothing->setContentsMargins(8, 0, 8, 0);
    column->addWidget(m_nothing);
    m_list->setObjectName(QStringLiteral("today"));
    m_list->setAccessibleName(tr("What today asks"));
    m_list->setModel(&m_model);
    m_list->setItemDelegate(new TodayDelegate(m_list));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->viewport()->setAutoFillBackground(false);
    column->addWidget(m_list, 1);
    column->addStretch(0);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& at) {
        const auto job = at.data(JobRole);
        if (job.isValid() && !m_isLoading) Q_EMIT jobChosen(job.value<base::Id>());
    });
    connect(m_list, &QAbstractItemView::activated, this, [this](const QModelIndex& at) {
        const auto job = at.data(JobRole);
        job.isValid() ? Q_EMIT openAsked(job.value<base::Id>()) : Q_EMIT certificateAsked();
    });
    connect(&m_watch, &TodayWatch::told, this, &TodayCard::load);
    load();
}

void TodayCard::load() {
    const auto kept = m_list->currentIndex().data(JobRole);
    m_isLoading = true; // that it is read again chooses nothing
    m_model.clear();
    for (const auto reminder : kReminders) addGroup(reminder);
    addCertificates();
    const auto count = static_cast<qint64>(m_watch.asked().count());
    m_count->setText(count == 0
                         ? QString()
                         : words::counted("sp::jobs::TodayCard",
                                          QT_TRANSLATE_N_NOOP("sp::jobs::TodayCard", "%n things"), "%n thing", count));
    m_nothing->setVisible(count == 0);
    m_list->setVisible(count > 0);
    for (int row = 0; kept.isValid() && row < m_model.rowCount(); ++row)
        if (m_model.index(row, 0).data(JobRole) == kept) {
            m_list->setCurrentIndex(m_model.index(row, 0));
            break;
        }
    m_isLoading = false;
}

void TodayCard::addGroup(Reminder reminder) {
    std::vector<const db::Asked*> group;
    units::Money sum;
    for (const auto& asked : m_watch.asked().jobs) {
        if (asked.reminder != reminder) continue;
        group.push_back(&asked);
        sum = sum + asked.amount;
    }
    if (group.empty()) return;
    const auto money = [this](units::Money amount) { return amount.isZero() ? QString() : m_formatter.money(amount); };
    addHead(headOf(reminder), static_cast<qint64>(group.size()), money(sum));
    for (const auto* asked : group) {
        const auto title = words::titleOf(asked->job);
        const auto who = QString::fromStdString(asked->job.customer);
        addRow(QVariant::fromValue(asked->job.id), who.isEmpty() ? title : who, detailOf(*asked), money(asked->amount));
    }
}

void TodayCard::addCertificates() {
    const auto& ending = m_watch.asked().certificates;
    if (ending.empty()) return;
    addHead(tr("Certificates that end"), static_cast<qint64>(ending.size()), {});
    for (const auto& one : ending) {
        const auto place = QString::fromStdString(one.place);
        const auto day = m_formatter.date(one.endsOn);
        addRow({}, QString::fromStdString(one.name),
               one.endsOn < m_watch.day() ? tr("%1, ended on %2").arg(place, day)
                                          : tr("%1, ends on %2").arg(place, day),
               {});
    }
}

void TodayCard::addHead(const QString& words, qint64 number, const QString& sum) {
    auto* item = new QStandardItem(words);
    item->setData(true, IsHeadRole);
    item->setData(m_formatter.count(units::Count::of(number)), DetailRole);
    item->setData(sum, FigureRole);
    item->setFlags(Qt::NoItemFlags); // keys go from row to row
    m_model.appendRow(item);
}

void TodayCard::addRow(const QVariant& job, const QString& title, const QString& detail, const QString& figure) {
    auto* item = new QStandardItem(title);
    item->setData(job, JobRole);
    item->setData(detail, DetailRole);
    item->setData(figure, FigureRole);
    item->setData(figure.isEmpty() ? QStringLiteral("%1, %2").arg(title, detail)
                                   : QStringLiteral("%1, %2, %3").arg(title, detail, figure),
                  Qt::AccessibleTextRole);
    item->setToolTip(detail);
    m_model.appendRow(item);
}

QString TodayCard::detailOf(const db::Asked& asked) const {
    const auto& job = asked.job;
    // Where nobody is named the row begins with the title, so that here stands the number.
    const auto what = job.customer.empty() ? QString::fromStdString(job.number) : words::titleOf(job);
    const auto since = m_formatter.date(job.stageSince);
    switch (asked.reminder) {
    case Reminder::Wanted:
        return *job.wantedBy < m_watch.day() ? tr("%1, late: wanted %2").arg(what, m_formatter.date(*job.wantedBy))
                                             : tr("%1, wanted today").arg(what);
    case Reminder::DepositMissing: return tr("%1, agreed %2").arg(what, since);
    case Reminder::Lapsing: return tr("%1, until %2").arg(what, m_formatter.date(*job.lastDay));
    case Reminder::NotCollected: return tr("%1, ready since %2").arg(what, since);
    case Reminder::Owed: return tr("%1, collected %2").arg(what, since);
    }
    return {};
}

} // namespace sp::jobs

#include "moc_today_card.cpp"

// SPDX-License-Identifier: MIT
#include "app/bench/bench_page.h"

#include "app/bench/load_picture.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/empty_state.h"
#include "app/desk/figures_table.h"
#include "app/desk/message_bar.h"
#include "app/desk/page_head.h"
#include "app/desk/scroll_page.h"
#include "app/paper/bench_paper.h"
#include "app/paper/preview_dialog.h"
#include "app/session/stage_move.h"
#include "app/words/names.h"
#include "app/words/words.h"
#include "core/scheduling/minutes.h"

#include <QHBoxLayout>
#include <QShowEvent>
#include <QVBoxLayout>

namespace sp::bench {

using desk::Role;
using desk::TextLabel;
using desk::TextSize;
using desk::Weight;

BenchPage::BenchPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_formatter(formatter)
    , m_presenter(session, this) {
    build();
    connect(&m_presenter, &BenchPresenter::listed, this, &BenchPage::refresh);
    connect(&m_presenter, &BenchPresenter::selected, this, &BenchPage::loadChosen);
    connect(&m_presenter, &BenchPresenter::movedOn, this, &BenchPage::tellUse);
    // Read again at once only while it is visible; showEvent reads it otherwise.
    connect(&m_presenter, &BenchPresenter::outdated, this, [this] {
        if (isVisible()) m_presenter.look();
    });
}

void BenchPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_presenter.look();
}

void BenchPage::focusStart() {
    if (m_list->isVisible())
        m_table->setFocus(Qt::OtherFocusReason);
    else if (auto* shown = m_noHours->isVisible() ? m_noHours : m_empty; shown->isVisible())
        shown->button()->setFocus(Qt::OtherFocusReason);
}

void BenchPage::build() {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(desk::pageMargins());
    outer->setSpacing(12);
    const auto head = desk::addPageHead(*outer, tr("Bench"), "benchNote", this);
    m_note = head.note;
    m_hour = new TextLabel({}, TextSize::Body, Role::Ink, Weight::Strong, this);
    m_hour->setObjectName(QStringLiteral("anHourMore"));
    m_hour->setToolTip(tr("What a new job of an hour at the bench would be told"));
    head.row->addWidget(m_hour, 0, Qt::AlignTop);
    m_unread = new desk::MessageBar(this);
    m_unread->setObjectName(QStringLiteral("benchUnread"));
    m_unread->setClosable(false);
    outer->addWidget(m_unread);
    m_shelfSays = new desk::MessageBar(this);
    m_shelfSays->setObjectName(QStringLiteral("benchShelf"));
    outer->addWidget(m_shelfSays);
    auto* scroll = new desk::ScrollPage({}, this);
    scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    auto* column = scroll->column();
    m_days = buildDays();
    column->addWidget(m_days);
    m_list = buildList();
    column->addWidget(m_list);
    m_job = buildChosen();
    column->addWidget(m_job);
    m_empty = new desk::EmptyState(desk::Icon::Bench, tr("Nothing is agreed to and waits to be made."),
                                   tr("To the jobs"), this);
    m_noHours = new desk::EmptyState(desk::Icon::Bench,
                                     tr("When a job is ready is known once Shop has the hours of the bench."),
                                     tr("Type the bench hours"), this);
    m_empty->button()->setObjectName(QStringLiteral("benchGo"));
    m_noHours->button()->setObjectName(QStringLiteral("benchHours"));
    column->addWidget(m_empty, 1);
    column->addWidget(m_noHours, 1);
    column->addStretch(0);
    outer->addWidget(scroll, 1);
    connect(m_empty, &desk::EmptyState::acted, this, &BenchPage::jobsAsked);
    connect(m_noHours, &desk::EmptyState::acted, this, &BenchPage::hoursAsked);
}

QWidget* BenchPage::buildDays() {
    auto* card = new desk::Card(this);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(20, 16, 20, 16);
    auto* head = new QHBoxLayout;
    head->addWidget(desk::sectionTitle(tr("The coming days"), card), 1);
    head->addWidget(new TextLabel(tr("minutes, numbered as below"), TextSize::Small, Role::Muted, Weight::Plain, card));
    column->addLayout(head);
    m_load = new LoadPicture(m_formatter, card);
    m_load->setObjectName(QStringLiteral("benchLoad"));
    column->addWidget(m_load);
    return card;
}

QWidget* BenchPage::buildList() {
    auto* card = new desk::Card(this);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(20, 16, 20, 12);
    column->addWidget(desk::sectionTitle(tr("To make, in this order"), card));
    m_table = new desk::FiguresTable(tr("To make, in this order"),
                                     {{tr("No."), true, false},
                                      {tr("What")},
                                      {tr("For")},
                                      {tr("Minutes"), true, false},
                                      {tr("Ready"), false, false},
                                      {tr("Wanted by"), false, false},
                                      {tr("Holds")}},
                                     card);
    m_table->setObjectName(QStringLiteral("benchJobs"));
    column->addWidget(m_table);
    connect(m_table, &desk::FiguresTable::rowChosen, this, [this] {
        if (!m_isLoading) m_presenter.choose(m_table->currentIndex().row());
    });
    connect(m_table, &QAbstractItemView::activated, this, [this] {
        if (const auto* entry = m_presenter.chosen()) Q_EMIT openAsked(base::Id(entry->job.id));
    });
    return card;
}

QWidget* BenchPage::buildChosen() {
    auto* card = new desk::Card(this);
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(20, 12, 20, 12);
    row->setSpacing(12);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    m_title = new TextLabel({}, TextSize::Body, Role::Ink, Weight::Strong, card);
    m_title->setObjectName(QStringLiteral("benchTitle"));
    m_title->setWordWrap(true);
    m_detail = new TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, card);
    m_detail->setObjectName(QStringLiteral("benchDetail"));
    m_detail->setWordWrap(true);
    m_problem = new TextLabel({}, TextSize::Small, Role::Warn, Weight::Plain, card);
    m_problem->setWordWrap(true);
    m_problem->hide();
    words->addWidget(m_title);
    words->addWidget(m_detail);
    words->addWidget(m_problem);
    row->addLayout(words, 1);
    m_open = new QPushButton(tr("&Open at the Counter"), card);
    m_open->setObjectName(QStringLiteral("benchOpen"));
    m_sheet = new QPushButton(tr("Bench &sheet"), card);
    m_sheet->setObjectName(QStringLiteral("benchSheet"));
    m_sheet->setToolTip(tr("What it is made by: colours in brushing order, what to fetch and cut, press and steps"));
    m_next = new QPushButton(card);
    m_next->setObjectName(QStringLiteral("benchNext"));
    m_next->setToolTip(tr("Moves it on to the next stage; undo takes it back"));
    desk::makePrimary(*m_next);
    for (auto* button : {m_open, m_sheet, m_next}) row->addWidget(button, 0, Qt::AlignVCenter);
    connect(m_open, &QPushButton::clicked, this, [this] {
        if (const auto* entry = m_presenter.chosen()) Q_EMIT openAsked(base::Id(entry->job.id));
    });
    connect(m_sheet, &QPushButton::clicked, this, &BenchPage::showSheet);
    connect(m_next, &QPushButton::clicked, this, &BenchPage::moveOn);
    return card;
}

/// Whether it is in time, and for what it waits: in words, since no colour says it alone.
QString BenchPage::standingOf(std::size_t at) const {
    const auto& entry = m_presenter.queue().entries[at];
    const auto& job = m_presenter.queue().jobs[at];
    const auto& plan = m_presenter.plan();
    QStringList parts;
    if (entry.work.whyNone) return words::sentence(*entry.work.whyNone);
    if (const auto unknown = m_presenter.queue().firstUnknown(); unknown < at)
        parts << tr("not known, see No. %1")
                     .arg(m_formatter.count(units::Count::of(static_cast<std::int64_t>(unknown) + 1)));
    else if (plan && !plan->ready[at])
        parts << tr("not within %1 years").arg(scheduling::kHorizonYears);
    else if (m_presenter.isLate(at))
        parts << words::counted("sp::bench::BenchPage", QT_TRANSLATE_N_NOOP("sp::bench::BenchPage", "late, by %n days"),
                                "late, by %n day", job.due->daysUntil(*plan->ready[at]));
    else if (plan && job.due)
        parts << tr("holds");
    if (!entry.depositLeft.isZero()) parts << tr("deposit missing");
    if (job.earliest && *job.earliest > m_presenter.queue().today)
        parts << tr("waits for supplies, %1").arg(m_formatter.date(*job.earliest));
    if (entry.isShort) parts << tr("supplies missing");
    return parts.join(QStringLiteral(", "));
}

QStringList BenchPage::rowOf(std::size_t at) const {
    const auto& entry = m_presenter.queue().entries[at];
    const auto& plan = m_presenter.plan();
    const auto title = words::titleOf(entry.job);
    const auto pieces = entry.work.pieces;
    return {m_formatter.count(units::Count::of(static_cast<std::int64_t>(at) + 1)),
            pieces > 0 ? QStringLiteral("%1 × %2").arg(m_formatter.count(units::Count::of(pieces)), title) : title,
            QString::fromStdString(entry.job.customer),
            m_formatter.count(units::Count::of(scheduling::minutesBegun(entry.work.time))),
            plan && plan->ready[at] ? m_formatter.dateWithDay(*plan->ready[at]) : QString(),
            entry.job.wantedBy ? m_formatter.dateWithDay(*entry.job.wantedBy) : QString(),
            standingOf(at)};
}

void BenchPage::refresh() {
    const auto& queue = m_presenter.queue();
    const bool isEmpty = queue.entries.empty();
    const bool isPlanned = m_presenter.plan().has_value();
    m_isLoading = true;
    std::vector<QStringList> rows;
    for (std::size_t i = 0; i < queue.entries.size(); ++i) rows.push_back(rowOf(i));
    m_table->setRows(rows);
    m_table->showAllRows();
    m_isLoading = false;
    if (isPlanned) m_load->setPlan(*m_presenter.plan(), queue.hours, queue.today);
    m_days->setVisible(!isEmpty && isPlanned);
    m_list->setVisible(!isEmpty);
    m_job->setVisible(!isEmpty);
    m_empty->setVisible(isEmpty && !m_presenter.unread());
    if (const auto& why = m_presenter.unread())
        m_unread->tell(desk::Tone::Warn, words::sentence(*why));
    else
        m_unread->dismiss();
    m_noHours->setVisible(!isEmpty && !isPlanned);
    int late = 0;
    for (std::size_t i = 0; i < queue.entries.size(); ++i) late += m_presenter.isLate(i) ? 1 : 0;
    const auto jobs =
        isEmpty ? QString()
                : words::counted("sp::bench::BenchPage", QT_TRANSLATE_N_NOOP("sp::bench::BenchPage", "%n jobs to make"),
                                 "%n job to make", std::ssize(queue.entries));
    m_note->setText(late > 0 ? tr("%1, %2 late").arg(jobs).arg(late) : jobs);
    const auto day = isEmpty ? std::nullopt : m_presenter.dayOfAnHour();
    m_hour->setText(day ? tr("An hour more: ready %1").arg(m_formatter.dateWithDay(*day)) : QString());
}

void BenchPage::loadChosen() {
    m_problem->hide();
    const auto* entry = m_presenter.chosen();
    if (!entry) return;
    const int row = m_presenter.chosenRow();
    m_load->setChosen(row);
    if (m_table->currentIndex().row() != row) {
        m_isLoading = true;
        m_table->selectRow(row);
        m_isLoading = false;
    }
    const auto title = words::titleOf(entry->job);
    m_title->setText(QStringLiteral("%1, %2").arg(QString::fromStdString(entry->job.number), title));
    const auto pieces = words::counted(words::Thing::Piece, entry->work.pieces,
                                       m_formatter.count(units::Count::of(entry->work.pieces)));
    const auto time = units::Duration::fromMinutes(scheduling::minutesBegun(entry->work.time));
    QStringList details{words::nameOf(entry->job.stage), pieces, m_formatter.duration(time)};
    if (const auto standing = standingOf(static_cast<std::size_t>(row)); !standing.isEmpty()) details << standing;
    m_detail->setText(details.join(QStringLiteral(" · ")));
    const auto next = catalogue::nextStage(entry->job.stage);
    m_next->setVisible(next.has_value());
    if (next) m_next->setText(tr("&Next: %1").arg(words::nameOf(*next)));
}

void BenchPage::moveOn() {
    const auto refused = m_presenter.moveOn();
    if (!refused) return;
    m_problem->setText(words::sentence(*refused));
    m_problem->show();
}

void BenchPage::tellUse(const db::ShelfUse& use) {
    auto& session = m_presenter.session();
    m_shelfSays->tellAll(desk::Tone::Warn, session::saidOfUse(session, use, [this](std::int64_t count) {
                             return m_formatter.count(units::Count::of(count));
                         }));
    m_shelfSays->staysUntil(&session, &session::BookSession::changed);
}

void BenchPage::showSheet() {
    const auto* entry = m_presenter.chosen();
    if (!entry) return;
    auto& session = m_presenter.session();
    auto made = session.read([&](db::Book& book) -> base::Result<paper::Document> {
        const auto quote = book.quote(entry->job.id);
        if (!quote) return base::fail(quote.error());
        return paper::benchPaper(book, *quote, m_formatter, session.fits());
    });
    if (!made) return; // the window has shown the error
    const auto name = QString::fromStdString(made->title);
    paper::showPreview(std::move(*made), session.shop().paper, name, "benchPreview", this);
}

} // namespace sp::bench

#include "moc_bench_page.cpp"

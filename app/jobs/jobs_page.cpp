// SPDX-License-Identifier: MIT
#include "app/jobs/jobs_page.h"

#include "app/desk/card.h"
#include "app/desk/empty_state.h"
#include "app/desk/field_box.h"
#include "app/desk/folding_columns.h"
#include "app/desk/message_bar.h"
#include "app/desk/page_head.h"
#include "app/desk/scroll_page.h"
#include "app/jobs/changes_dialog.h"
#include "app/jobs/job_filters.h"
#include "app/jobs/job_strip.h"
#include "app/jobs/jobs_table.h"
#include "app/jobs/papers_dialog.h"
#include "app/jobs/payment_dialog.h"
#include "app/jobs/today_card.h"
#include "app/paper/bench_paper.h"
#include "app/paper/preview_dialog.h"
#include "app/plans/plan_dialog.h"
#include "app/session/stage_move.h"
#include "app/words/names.h"

#include <QEvent>
#include <QHeaderView>

#include <algorithm>

namespace sp::jobs {

using desk::Role;

namespace {

constexpr int kLeastName = 140;  ///< width of a column of names, px at 100 %
constexpr int kTodayWidth = 280; ///< of what today asks, likewise
constexpr int kJobsWidth = 760;
constexpr int kLeastRows = 4;

} // namespace

JobsPage::JobsPage(session::BookSession& session, TodayWatch& today, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_formatter(formatter)
    , m_presenter(session)
    , m_model(m_formatter)
    , m_todayWatch(today) {
    build();
    fitColumns();
    connectAll();
    // The list is read again at once only while it is visible; showEvent reads it otherwise.
    connect(&session, &session::BookSession::saved, this, [this] {
        if (isVisible()) m_filters->readAgain();
    });
    connect(&session, &session::BookSession::indexed, this, [this] {
        if (isVisible() && !m_presenter.isWhole()) m_filters->readAgain();
    });
    refresh();
}

void JobsPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    const auto head = desk::addPageHead(*column, tr("Jobs"), "jobsNote", this);
    m_note = head.note;
    m_find = new desk::FindField(m_formatter, this);
    m_find->setObjectName(QStringLiteral("findJob"));
    m_find->setClearButtonEnabled(true);
    m_findBox = new desk::FieldBox(tr("&Find a number, a customer, a word or a sum"), m_find, this);
    head.row->addWidget(m_findBox);
    m_shelfSays = new desk::MessageBar(this);
    m_shelfSays->setObjectName(QStringLiteral("jobsShelf"));
    column->addWidget(m_shelfSays);
    m_columns = new desk::FoldingColumns(this);
    m_today = new TodayCard(m_todayWatch, m_formatter, this);
    m_columns->addColumn(m_today, tr("Today"), kTodayWidth, false);
    m_columns->addColumn(buildJobs(), tr("Jobs"), kJobsWidth, true);
    m_columns->showColumn(1);
    column->addWidget(m_columns, 1);
}

QWidget* JobsPage::buildJobs() {
    auto* side = new desk::ScrollPage({}, this);
    side->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded); // as a rule there is nothing to scroll
    auto* column = side->column();
    m_filters = new JobFilters(m_presenter, m_model, this);
    column->addWidget(m_filters);
    m_list = buildTable();
    m_find->setList(m_table);
    column->addWidget(m_list, 1);
    m_empty = new desk::EmptyState(desk::Icon::Jobs, tr("No quote is in the book yet."), tr("Start one at the Counter"),
                                   this);
    m_noMatch =
        new desk::EmptyState(desk::Icon::Find, tr("No quote is what you typed and chose."), tr("Show all"), this);
    column->addWidget(m_empty, 1);
    column->addWidget(m_noMatch, 1);
    m_strip = new JobStrip(m_presenter, m_formatter, this);
    column->addWidget(m_strip);
    return side;
}

QWidget* JobsPage::buildTable() {
    auto* card = new desk::Card(this);
    auto* around = new QVBoxLayout(card);
    around->setContentsMargins(8, 8, 8, 8);
    m_table = new JobsTable(card);
    m_table->setModel(&m_model);
    auto* header = m_table->horizontalHeader();
    header->setSectionResizeMode(QHeaderView::Fixed);
    header->setSectionsClickable(true);
    header->setFocusPolicy(Qt::NoFocus);
    around->addWidget(m_table);
    m_table->viewport()->installEventFilter(this);
    return card;
}

/// The longest of the stages' names has room, in whatever language.
int JobsPage::stageWidth() const {
    int widest = desk::scaled(80);
    for (const auto stage : {db::Stage::Enquiry, db::Stage::Quoted, db::Stage::Agreed, db::Stage::InProduction,
                             db::Stage::Ready, db::Stage::Collected, db::Stage::Declined})
        widest = std::max(widest, m_table->fontMetrics().horizontalAdvance(words::nameOf(stage)));
    return widest + desk::scaled(32);
}

void JobsPage::fitColumns() {
    m_findBox->setFixedWidth(desk::scaled(320));
    // Some rows stay in sight with large text too; then the strip below is scrolled to.
    const int row = m_table->verticalHeader()->defaultSectionSize();
    m_table->setMinimumHeight(m_table->horizontalHeader()->sizeHint().height() + kLeastRows * row);
    for (const auto& [section, width] : {std::pair(Column::Number, 112), std::pair(Column::Day, 120),
                                         std::pair(Column::Total, 152), std::pair(Column::Left, 112)})
        m_table->setColumnWidth(section, desk::scaled(width));
    m_table->setColumnWidth(Column::Stage, stageWidth());
    for (int section = 0; section < Column::Columns; ++section)
        m_table->setColumnHidden(section, m_filters->isHidden(section));
    fitNames();
}

/// Names take the room that is left, and no less than can be read: in a narrow window the table scrolls sideways.
void JobsPage::fitNames() {
    int left = m_table->viewport()->width();
    for (const auto section : {Column::Number, Column::Day, Column::Stage, Column::Total, Column::Left})
        left -= m_table->columnWidth(section);
    const int names = (m_filters->isHidden(Column::Customer) ? 0 : 1) + (m_filters->isHidden(Column::Title) ? 0 : 1);
    for (const auto section : {Column::Customer, Column::Title})
        m_table->setColumnWidth(section, std::max(desk::scaled(kLeastName), left / std::max(1, names)));
}

/// The head says by which column the list is in order.
void JobsPage::showOrder() {
    auto* header = m_table->horizontalHeader();
    const auto& wanted = m_presenter.wanted();
    const int column = m_filters->sortedColumn();
    header->setSortIndicatorShown(column >= 0);
    if (column >= 0) header->setSortIndicator(column, wanted.isAscending ? Qt::AscendingOrder : Qt::DescendingOrder);
}

bool JobsPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize) fitNames();
    return QWidget::eventFilter(watched, event);
}

void JobsPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitColumns();
}

void JobsPage::tellUse(const db::ShelfUse& use) {
    m_shelfSays->tellAll(desk::Tone::Warn, session::saidOfUse(m_session, use, [this](std::int64_t count) {
                             return m_formatter.count(units::Count::of(count));
                         }));
    m_shelfSays->staysUntil(&m_session, &session::BookSession::changed);
}

void JobsPage::connectAll() {
    connect(m_find, &desk::TypedField::edited, this, [this] { m_presenter.setFilter(m_find->text()); });
    connect(m_find, &QLineEdit::textChanged, this, [this](const QString& text) {
        if (text.isEmpty()) m_presenter.setFilter({}); // the clear button emits no edited()
    });
    connect(&m_presenter, &JobsPresenter::movedOn, this, &JobsPage::tellUse);
    connect(m_filters, &JobFilters::columnsChanged, this, &JobsPage::fitColumns);
    connect(m_table->horizontalHeader(), &QHeaderView::sectionClicked, m_filters, &JobFilters::sortBy);
    connect(m_table, &QAbstractItemView::activated, this, &JobsPage::openCurrent);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& at) {
        if (!m_isLoading) m_presenter.select(at.row());
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            [this] { m_strip->setChosen(static_cast<int>(chosenRows().size())); });
    connect(&m_model, &JobsTableModel::moreWanted, &m_presenter, &JobsPresenter::readOn);
    connect(m_strip, &JobStrip::changesAsked, this, &JobsPage::showChanges);
    connect(m_strip, &JobStrip::planAsked, this, &JobsPage::showPlan);
    connect(m_strip, &JobStrip::benchSheetAsked, this, &JobsPage::showBenchSheet);
    connect(m_strip, &JobStrip::moneyAsked, this, &JobsPage::showMoney);
    connect(m_strip, &JobStrip::papersAsked, this, &JobsPage::showPapers);
    connect(m_strip, &JobStrip::openAsked, this, &JobsPage::openCurrent);
    connect(m_strip, &JobStrip::repeatAsked, this, [this] {
        if (const auto* job = m_presenter.current()) Q_EMIT repeatAsked(base::Id(job->id));
    });
    connect(m_strip, &JobStrip::reviseAsked, this, [this] {
        if (const auto* job = m_presenter.current()) Q_EMIT reviseAsked(base::Id(job->id));
    });
    connect(m_empty, &desk::EmptyState::acted, this, &JobsPage::counterAsked);
    connect(m_noMatch, &desk::EmptyState::acted, this, [this] {
        m_find->clear();
        m_filters->clear();
        focusStart();
    });
    connect(m_today, &TodayCard::jobChosen, this, &JobsPage::choose);
    connect(m_today, &TodayCard::openAsked, this, &JobsPage::openAsked);
    connect(m_today, &TodayCard::certificateAsked, this, &JobsPage::certificateAsked);
    connect(&m_presenter, &JobsPresenter::listed, this, &JobsPage::refresh);
    connect(&m_presenter, &JobsPresenter::selected, this, &JobsPage::load);
}

void JobsPage::refresh() {
    m_isLoading = true;
    m_model.setRows(m_presenter.jobs(), m_presenter.hasMore());
    m_isLoading = false;
    const bool none = m_presenter.jobs().empty();
    m_list->setVisible(!none);
    const bool isAll = m_presenter.wanted().isAll();
    m_filters->setVisible(!none || !isAll);
    m_empty->setVisible(none && isAll);
    m_noMatch->setVisible(none && !isAll);
    showOrder();
    m_note->setText(noteText());
    load();
}

QString JobsPage::noteText() const {
    if (m_presenter.jobs().empty())
        return m_presenter.isWhole() ? QString() : tr("none of the newest; the older ones are being read");
    const auto count = m_formatter.count(units::Count::of(m_presenter.foundCount()));
    if (!m_presenter.isWhole()) return tr("%1 found so far; the older ones are being read").arg(count);
    const auto& wanted = m_presenter.wanted();
    if (m_presenter.hasMore())
        return wanted.by == db::FoundBy::Started && !wanted.isAscending ? tr("the newest %1 so far").arg(count)
                                                                        : tr("the first %1").arg(count);
    return wanted.isAll() ? tr("%1 in the book").arg(count) : tr("%1 found").arg(count);
}

void JobsPage::load() {
    const int row = m_presenter.currentRow();
    if (row >= 0 && m_table->currentIndex().row() != row) m_table->selectRow(row);
    m_strip->load();
}

/// Marks the job in the table; among all jobs where it is not listed.
void JobsPage::choose(const base::Id& job) {
    const base::Id id = job; // whoever asked may list anew meanwhile
    const auto isListed = [&] {
        const auto& jobs = m_presenter.jobs();
        return std::ranges::find(jobs, id, &db::QuoteSummary::id) != jobs.end();
    };
    if (!isListed()) {
        m_find->clear();
        m_filters->clear();
        m_filters->sortBy(-1);
    }
    m_presenter.choose(id);
    m_table->scrollTo(m_table->currentIndex());
}

void JobsPage::openCurrent() {
    if (const auto* job = m_presenter.current()) Q_EMIT openAsked(base::Id(job->id));
}

void JobsPage::showChanges() {
    const auto* job = m_presenter.current();
    if (!job) return;
    auto* dialog = new ChangesDialog(job->number, ChangesDialog::With::Today,
                                     m_presenter.changesSince(m_formatter.style()), m_formatter, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void JobsPage::showBenchSheet() {
    const auto* job = m_presenter.current();
    if (!job) return;
    auto made = m_session.read([&](db::Book& book) -> base::Result<paper::Document> {
        const auto quote = book.quote(job->id);
        if (!quote) return base::fail(quote.error());
        return paper::benchPaper(book, *quote, m_formatter, m_session.fits());
    });
    if (!made) return; // the window has shown the error
    const auto name = QString::fromStdString(made->title);
    paper::showPreview(std::move(*made), m_session.shop().paper, name, "benchPreview", this);
}

void JobsPage::showMoney() {
    const auto* job = m_presenter.current();
    if (!job || job->number.empty()) return;
    auto* dialog = new PaymentDialog(m_presenter, m_formatter, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::finished, this, [this] { m_table->setFocus(Qt::OtherFocusReason); });
    dialog->open();
}

void JobsPage::showPapers() {
    const auto* job = m_presenter.current();
    if (!job || job->number.empty()) return;
    auto* dialog = new PapersDialog(m_presenter, m_formatter, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::finished, this, [this] { m_table->setFocus(Qt::OtherFocusReason); });
    dialog->open();
}

std::vector<int> JobsPage::chosenRows() const {
    std::vector<int> rows;
    for (const auto& index : m_table->selectionModel()->selectedRows()) rows.push_back(index.row());
    std::sort(rows.begin(), rows.end());
    return rows;
}

void JobsPage::showPlan() {
    const auto rows = chosenRows();
    auto cutting = m_presenter.cuttingOf(rows);
    if (!cutting) return; // the window has shown the error
    const auto* job = m_presenter.current();
    const auto title = rows.size() > 1 ? tr("%1 jobs", nullptr, static_cast<int>(rows.size())).arg(rows.size())
                       : !job || job->number.empty() ? tr("this draft")
                                                     : tr("quote %1").arg(QString::fromStdString(job->number));
    plans::PlanQuestion question{title, std::move(cutting->lines), false, m_presenter.today()};
    QStringList removed;
    for (const auto& name : cutting->removed) removed << QString::fromStdString(name);
    if (!removed.isEmpty())
        question.note =
            tr("No longer in Supplies, so laid as the quote has it: %1.").arg(removed.join(QStringLiteral(", ")));
    auto* dialog = new plans::PlanDialog(std::move(question), std::move(cutting->prices), m_formatter, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void JobsPage::focusStart() {
    if (m_presenter.jobs().empty())
        m_find->setFocus(Qt::OtherFocusReason);
    else
        m_table->setFocus(Qt::OtherFocusReason);
}

void JobsPage::focusFind() { m_find->setFocus(Qt::ShortcutFocusReason); }

void JobsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_filters->readAgain();
    m_todayWatch.look();
}

} // namespace sp::jobs

#include "moc_jobs_page.cpp"

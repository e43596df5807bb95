// SPDX-License-Identifier: MIT
#include "app/figures/figures_page.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/empty_state.h"
#include "app/desk/figures_table.h"
#include "app/desk/flow_grid.h"
#include "app/desk/message_bar.h"
#include "app/desk/page_head.h"
#include "app/desk/scroll_page.h"
#include "app/figures/earned_delegate.h"
#include "app/words/names.h"
#include "app/words/words.h"

#include <QHBoxLayout>
#include <QShowEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <iterator>
#include <span>

namespace sp::figures {

using desk::Role;
using desk::TextLabel;
using desk::TextSize;
using desk::Weight;

namespace {

constexpr std::int64_t kMillisecondsPerMinute = 60'000;
constexpr int kBarColumn = 2;

} // namespace

FiguresPage::FiguresPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_formatter(formatter)
    , m_presenter(session, this) {
    build();
    connect(&m_presenter, &FiguresPresenter::read, this, &FiguresPage::refresh);
    connect(&m_presenter, &FiguresPresenter::selected, this, &FiguresPage::loadChosen);
    // Read again at once only while it is visible; showEvent reads it otherwise.
    connect(&m_presenter, &FiguresPresenter::outdated, this, [this] {
        if (isVisible()) m_presenter.look();
    });
}

void FiguresPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_presenter.look();
}

void FiguresPage::focusStart() {
    if (m_where->isVisible())
        m_groups->setFocus(Qt::OtherFocusReason);
    else if (auto* shown = m_emptyBook->isVisible() ? m_emptyBook : m_emptySpan; shown->isVisible())
        shown->button()->setFocus(Qt::OtherFocusReason);
}

void FiguresPage::build() {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(desk::pageMargins());
    outer->setSpacing(12);
    const auto head = desk::addPageHead(*outer, tr("Figures"), "figuresNote", this);
    m_note = head.note;
    m_note->setText(tr("Handed over in these days, without tax"));
    buildSpan(*head.row);
    m_unread = new desk::MessageBar(this);
    m_unread->setObjectName(QStringLiteral("figuresUnread"));
    m_unread->setClosable(false);
    outer->addWidget(m_unread);
    auto* scroll = new desk::ScrollPage({}, this);
    scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    auto* column = scroll->column();
    for (auto* card : {m_head = buildHead(), m_where = buildWhere(), m_jobsCard = buildJobs(),
                      m_evenCard = buildBreakEven(), m_answersCard = buildAnswers(), m_taxCard = buildTax()})
        column->addWidget(card);
    m_emptySpan = new desk::EmptyState(desk::Icon::Figures, tr("Nothing was handed over in these days."),
                                       tr("To the time before"), this);
    m_emptyBook = new desk::EmptyState(desk::Icon::Figures, tr("What the shop earned is told once a job is collected."),
                                       tr("To the jobs"), this);
    m_emptySpan->button()->setObjectName(QStringLiteral("figuresBack"));
    m_emptyBook->button()->setObjectName(QStringLiteral("figuresGo"));
    column->addWidget(m_emptySpan, 1);
    column->addWidget(m_emptyBook, 1);
    column->addStretch(0);
    outer->addWidget(scroll, 1);
    connect(m_emptySpan, &desk::EmptyState::acted, this, [this] { m_presenter.step(-1); });
    connect(m_emptyBook, &desk::EmptyState::acted, this, &FiguresPage::jobsAsked);
}

void FiguresPage::buildSpan(QHBoxLayout& row) {
    m_before = new QPushButton(QStringLiteral("‹"), this);
    m_before->setObjectName(QStringLiteral("figuresBefore"));
    m_before->setAccessibleName(tr("‹ The time before"));
    m_before->setToolTip(m_before->accessibleName());
    m_after = new QPushButton(QStringLiteral("›"), this);
    m_after->setObjectName(QStringLiteral("figuresAfter"));
    m_after->setAccessibleName(tr("› The time after"));
    m_after->setToolTip(m_after->accessibleName());
    m_when = new TextLabel({}, TextSize::Body, Role::Ink, Weight::Strong, this);
    m_when->setObjectName(QStringLiteral("figuresWhen"));
    m_when->setAlignment(Qt::AlignCenter);
    m_span = new QComboBox(this);
    m_span->setObjectName(QStringLiteral("figuresSpan"));
    m_span->setAccessibleName(tr("How long"));
    m_span->setAccessibleDescription(tr("How long a time is shown"));
    m_span->addItem(tr("Month"), static_cast<int>(Span::Month));
    m_span->addItem(tr("Quarter"), static_cast<int>(Span::Quarter));
    m_span->addItem(tr("Year"), static_cast<int>(Span::Year));
    for (QWidget* part : std::initializer_list<QWidget*>{m_before, m_when, m_after, m_span})
        row.addWidget(part, 0, Qt::AlignVCenter);
    connect(m_before, &QPushButton::clicked, this, [this] { m_presenter.step(-1); });
    connect(m_after, &QPushButton::clicked, this, [this] { m_presenter.step(1); });
    connect(m_span, &QComboBox::currentIndexChanged, this,
            [this] { m_presenter.setSpan(static_cast<Span>(m_span->currentData().toInt())); });
}

FiguresPage::Told FiguresPage::addTold(desk::FlowGrid& grid, const QString& word, const char* name) {
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* above = new TextLabel(word, TextSize::Small, Role::Muted, Weight::Plain, box);
    above->setAlignment(Qt::AlignRight);
    auto* figure = new desk::FigureLabel({}, TextSize::Title, Role::Ink, Weight::Strong, box);
    figure->setObjectName(QLatin1String(name));
    figure->setMeaning(word);
    auto* below = new TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, box);
    below->setAlignment(Qt::AlignRight);
    column->addWidget(above);
    column->addWidget(figure);
    column->addWidget(below);
    column->addStretch(1);
    grid.add(box);
    return {figure, below};
}

QWidget* FiguresPage::buildHead() {
    auto* card = new desk::Card(this, Role::Paper);
    auto* outer = new QVBoxLayout(card);
    outer->setContentsMargins(20, 16, 20, 16);
    auto* grid = new desk::FlowGrid(7);
    grid->setSpacing(12);
    auto* box = new QWidget(card);
    auto* first = new QVBoxLayout(box);
    first->setContentsMargins(0, 0, 0, 0);
    first->setSpacing(2);
    first->addWidget(new TextLabel(tr("Earned per bench hour"), TextSize::Small, Role::Muted, Weight::Plain, box));
    m_hour = new desk::FigureLabel({}, TextSize::Total, Role::Ink, Weight::Strong, box);
    m_hour->setObjectName(QStringLiteral("perBenchHour"));
    m_hour->setMeaning(tr("Earned per bench hour"));
    m_hour->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_reckoning = new TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, box);
    m_reckoning->setObjectName(QStringLiteral("perBenchHourReckoning"));
    m_reckoning->setWordWrap(true);
    first->addWidget(m_hour);
    first->addWidget(m_reckoning);
    first->addStretch(1);
    grid->add(box, 2);
    outer->addLayout(grid);
    m_income = addTold(*grid, tr("Income"), "income");
    m_cost = addTold(*grid, tr("Cost"), "cost");
    m_left = addTold(*grid, tr("Left"), "left");
    m_margin = addTold(*grid, tr("Margin"), "margin");
    m_hours = addTold(*grid, tr("Bench time"), "benchTime");
    return card;
}

QWidget* FiguresPage::buildWhere() {
    auto* card = new desk::Card(this);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(20, 16, 20, 12);
    auto* head = new QHBoxLayout;
    head->setSpacing(12);
    head->addWidget(desk::sectionTitle(tr("Where it came from"), card));
    m_by = new QComboBox(card);
    m_by->setObjectName(QStringLiteral("figuresBy"));
    m_by->setAccessibleName(tr("Where it came from"));
    m_by->addItem(tr("By design"), static_cast<int>(By::Design));
    m_by->addItem(tr("By week"), static_cast<int>(By::Week));
    m_by->addItem(tr("By month"), static_cast<int>(By::Month));
    m_by->addItem(tr("By customer"), static_cast<int>(By::Customer));
    m_by->addItem(tr("By quantity"), static_cast<int>(By::Quantity));
    m_by->addItem(tr("By blank"), static_cast<int>(By::Blank));
    head->addWidget(m_by);
    head->addStretch(1);
    head->addWidget(
        new TextLabel(tr("outlined: cost, filled: left"), TextSize::Small, Role::Muted, Weight::Plain, card));
    column->addLayout(head);
    m_groups = new desk::FiguresTable(tr("Where it came from"),
                                      {{tr("What")},
                                       {tr("Pieces"), true, false},
                                       {tr("Cost and what is left")},
                                       {tr("Bench time"), true, false},
                                       {tr("An hour"), true, false}},
                                      card);
    m_groups->setObjectName(QStringLiteral("figuresGroups"));
    m_bars = new EarnedDelegate(m_groups);
    m_groups->setItemDelegateForColumn(kBarColumn, m_bars);
    column->addWidget(m_groups);
    m_leftOut = new TextLabel({}, TextSize::Small, Role::Warn, Weight::Plain, card);
    m_leftOut->setObjectName(QStringLiteral("figuresLeftOut"));
    m_leftOut->setWordWrap(true);
    column->addWidget(m_leftOut);
    connect(m_by, &QComboBox::currentIndexChanged, this,
            [this] { m_presenter.setBy(static_cast<By>(m_by->currentData().toInt())); });
    connect(m_groups, &desk::FiguresTable::rowChosen, this, [this] {
        if (!m_isLoading) m_presenter.choose(m_groups->currentIndex().row());
    });
    connect(m_groups, &QAbstractItemView::activated, this, [this] { m_jobs->setFocus(Qt::OtherFocusReason); });
    return card;
}

QWidget* FiguresPage::buildJobs() {
    auto* card = new desk::Card(this);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(20, 16, 20, 12);
    m_jobsTitle = desk::sectionTitle({}, card);
    m_jobsTitle->setObjectName(QStringLiteral("figuresJobsTitle"));
    column->addWidget(m_jobsTitle);
    m_jobs = new desk::FiguresTable(tr("Its jobs"),
                                    {{tr("Job"), false, false},
                                     {tr("Handed over"), false, false},
                                     {tr("For")},
                                     {tr("Pieces"), true, false},
                                     {tr("Income"), true, false},
                                     {tr("Cost"), true, false},
                                     {tr("Left"), true, false},
                                     {tr("Bench time"), true, false},
                                     {tr("An hour"), true, false}},
                                    card);
    m_jobs->setObjectName(QStringLiteral("figuresJobs"));
    m_jobs->setToolTip(tr("Enter opens the job"));
    column->addWidget(m_jobs);
    m_moreJobs = new TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, card);
    m_moreJobs->setObjectName(QStringLiteral("figuresMoreJobs"));
    column->addWidget(m_moreJobs);
    m_sum = new TextLabel({}, TextSize::Body, Role::Ink, Weight::Strong, card);
    m_sum->setObjectName(QStringLiteral("figuresSum"));
    column->addWidget(m_sum);
    connect(m_jobs, &QAbstractItemView::activated, this, [this](const QModelIndex& index) {
        const auto& jobs = m_presenter.jobs();
        if (index.row() < static_cast<int>(jobs.size()))
            Q_EMIT openAsked(base::Id(jobs[static_cast<std::size_t>(index.row())].job));
    });
    return card;
}

QWidget* FiguresPage::buildBreakEven() {
    auto* card = new desk::Card(this);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(20, 16, 20, 16);
    column->addWidget(desk::sectionTitle(tr("What the month costs anyway"), card));
    m_even = new TextLabel({}, TextSize::Body, Role::Ink, Weight::Plain, card);
    m_even->setObjectName(QStringLiteral("breakEven"));
    m_even->setWordWrap(true);
    m_evenToGo = new TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, card);
    m_evenToGo->setObjectName(QStringLiteral("breakEvenToGo"));
    m_evenToGo->setWordWrap(true);
    column->addWidget(m_even);
    column->addWidget(m_evenToGo);
    return card;
}

QWidget* FiguresPage::buildAnswers() {
    auto* card = new desk::Card(this);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(20, 16, 20, 12);
    column->addWidget(desk::sectionTitle(tr("What became of the offers of these days"), card));
    m_answers = new desk::FiguresTable(tr("What became of the offers of these days"),
                                       {{tr("Pieces of a line")},
                                        {tr("Won"), true, false},
                                        {tr("Lost"), true, false},
                                        {tr("Open"), true, false},
                                        {tr("Share won"), true, false},
                                        {tr("Middle price won"), true, false},
                                        {tr("Middle price lost"), true, false}},
                                       card);
    m_answers->setObjectName(QStringLiteral("figuresAnswers"));
    column->addWidget(m_answers);
    return card;
}

QWidget* FiguresPage::buildTax() {
    auto* card = new desk::Card(this);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(20, 16, 20, 12);
    column->addWidget(desk::sectionTitle(tr("Tax of the invoices of these days"), card));
    m_tax = new desk::FiguresTable(tr("Tax of the invoices of these days"),
                                   {{tr("Rate")}, {tr("Without tax"), true, false}, {tr("Tax"), true, false}}, card);
    m_tax->setObjectName(QStringLiteral("figuresTax"));
    column->addWidget(m_tax);
    auto* caution = new TextLabel(tr("Credit notes are taken off. What is owed of it, to whom and when, your tax "
                                     "authority or an accountant says."),
                                  TextSize::Small, Role::Muted, Weight::Plain, card);
    caution->setWordWrap(true);
    column->addWidget(caution);
    return card;
}

QString FiguresPage::spanText() const {
    const auto& days = m_presenter.days();
    const auto first = desk::toQDate(days.from);
    switch (m_presenter.span()) {
    case Span::Month:
        return QStringLiteral("%1 %2").arg(m_formatter.locale().standaloneMonthName(first.month())).arg(first.year());
    case Span::Quarter: return tr("Quarter %1 of %2").arg((first.month() - 1) / 3 + 1).arg(first.year());
    case Span::Year: return QString::number(first.year());
    }
    return {};
}

QString FiguresPage::spanOf(const QuantitySpan& span) const {
    if (span.from.isZero()) return tr("charges");
    if (!span.to) return tr("%1 and more").arg(m_formatter.count(span.from));
    if (*span.to == span.from) return m_formatter.count(span.from);
    return tr("%1 to %2").arg(m_formatter.count(span.from), m_formatter.count(*span.to));
}

QString FiguresPage::nameOf(const Group& group) const {
    switch (m_presenter.by()) {
    case By::Month: {
        const auto first = desk::toQDate(group.begins);
        return QStringLiteral("%1 %2").arg(m_formatter.locale().standaloneMonthName(first.month())).arg(first.year());
    }
    case By::Week: return tr("week of %1").arg(m_formatter.date(group.begins));
    case By::Quantity: return spanOf(group.quantities);
    case By::Customer: return group.name.empty() ? tr("nobody named") : QString::fromStdString(group.name);
    case By::Design:
    case By::Blank: break;
    }
    return group.name.empty() ? tr("without any") : QString::fromStdString(group.name);
}

QString FiguresPage::hours(units::Duration time) const {
    const auto minutes = (time.milliseconds() + kMillisecondsPerMinute / 2) / kMillisecondsPerMinute;
    return m_formatter.duration(units::Duration::fromMinutes(minutes));
}

QString FiguresPage::hoursOf(const Earned& earned) const {
    return earned.isBenchKnown ? hours(earned.bench) : tr("not known");
}

QString FiguresPage::hourOf(const Earned& earned) const {
    const auto hour = earned.perBenchHour();
    return hour ? m_formatter.money(*hour) : QStringLiteral("–");
}

void FiguresPage::refresh() {
    const bool isEmpty = m_presenter.isEmpty();
    const bool isRead = !m_presenter.unread();
    const auto when = spanText();
    m_when->setText(when);
    // Whoever does not see the words between the buttons hears them with each.
    for (auto* button : {m_before, m_after}) button->setAccessibleDescription(when);
    m_after->setEnabled(m_presenter.canStepOn());
    if (const auto& why = m_presenter.unread())
        m_unread->tell(desk::Tone::Warn, words::sentence(*why));
    else
        m_unread->dismiss();
    m_head->setVisible(!isEmpty);
    m_where->setVisible(!isEmpty);
    m_jobsCard->setVisible(!isEmpty && m_presenter.chosen());
    m_emptyBook->setVisible(isEmpty && isRead && m_presenter.isBookEmpty());
    m_emptySpan->setVisible(isEmpty && isRead && !m_presenter.isBookEmpty());
    tellHead();
    tellWhere();
    tellBreakEven();
    tellAnswers();
    tellTax();
}

void FiguresPage::tellHead() {
    const auto& earned = m_presenter.together().earned;
    const auto margin = earned.margin();
    m_hour->setFigure(hourOf(earned));
    m_reckoning->setText(!earned.isBenchKnown    ? tr("Hours of some jobs are not known any more.")
                         : earned.perBenchHour() ? tr("(%1 left + %2 own work) ÷ %3")
                                                       .arg(m_formatter.money(earned.left()),
                                                            m_formatter.money(earned.labour), hours(earned.bench))
                                                 : tr("without time at the bench"));
    m_income.figure->setFigure(m_formatter.money(earned.income));
    m_income.below->setText(
        words::counted(words::Thing::Piece, earned.pieces.value(), m_formatter.count(earned.pieces)));
    m_cost.figure->setFigure(m_formatter.money(earned.allCost()));
    m_cost.below->setText(tr("as planned"));
    m_left.figure->setFigure(m_formatter.money(earned.left()));
    m_left.below->setText(tr("income less cost"));
    m_margin.figure->setFigure(margin ? m_formatter.rate(*margin) : QStringLiteral("–"));
    m_margin.below->setText(tr("of income"));
    m_hours.figure->setFigure(hoursOf(earned));
    m_hours.below->setText(tr("as planned"));
}

void FiguresPage::tellWhere() {
    m_isLoading = true;
    std::vector<QStringList> rows;
    std::vector<EarnedBar> bars;
    for (const auto& group : m_presenter.groups()) {
        const auto& earned = group.earned;
        const auto cost = earned.allCost();
        bars.push_back({cost, earned.left(), m_formatter.money(cost), m_formatter.money(earned.left())});
        rows.push_back({nameOf(group), m_formatter.count(earned.pieces),
                        tr("cost %1, left %2").arg(bars.back().costFigure, bars.back().leftFigure), hoursOf(earned),
                        hourOf(earned)});
    }
    m_bars->setBars(std::move(bars));
    m_groups->setRows(rows);
    m_groups->resizeRowsToContents();
    m_groups->showAllRows();
    m_isLoading = false;
    QStringList numbers;
    for (const auto& number : m_presenter.leftOut()) numbers << QString::fromStdString(number);
    m_leftOut->setVisible(!numbers.isEmpty());
    m_leftOut->setText(tr("Left out, since their cost is not known any more: %1").arg(numbers.join(tr(", "))));
}

void FiguresPage::tellBreakEven() {
    const auto& even = m_presenter.breakEven();
    m_evenCard->setVisible(even && !m_presenter.isEmpty());
    if (!even) return;
    m_even->setText(even->toGo.isZero()
                        ? tr("The month costs %1 anyway; %2 is there for it, so all of it is carried.")
                              .arg(m_formatter.money(even->fixed), m_formatter.money(even->contribution))
                        : tr("Of %1 that the month costs anyway, %2 is carried; %3 is to go.")
                              .arg(m_formatter.money(even->fixed), m_formatter.money(even->contribution),
                                   m_formatter.money(even->toGo)));
    QStringList more;
    if (even->pieces)
        more << tr("That is %1 more like these.")
                    .arg(words::counted(words::Thing::Piece, even->pieces->value(), m_formatter.count(*even->pieces)));
    if (even->bench) more << tr("Or %1 more at the bench like these.").arg(hours(*even->bench));
    m_evenToGo->setText(more.join(QLatin1Char(' ')));
    m_evenToGo->setVisible(!more.isEmpty());
}

void FiguresPage::tellAnswers() {
    std::vector<QStringList> rows;
    const auto number = [this](std::int64_t many) { return m_formatter.count(units::Count::of(many)); };
    const auto price = [this](const std::optional<units::Money>& each) {
        return each ? m_formatter.money(*each) : QStringLiteral("–");
    };
    for (const auto& answers : m_presenter.answers()) {
        const auto share = answers.shareWon();
        rows.push_back({spanOf(answers.quantities), number(answers.won), number(answers.lost), number(answers.open),
                        share ? m_formatter.rate(*share) : QStringLiteral("–"), price(answers.wonAt),
                        price(answers.lostAt)});
    }
    m_answers->setRows(rows);
    m_answers->showAllRows();
    m_answersCard->setVisible(!rows.empty());
}

void FiguresPage::tellTax() {
    const auto& tax = m_presenter.tax();
    std::vector<QStringList> rows;
    for (const auto& part : tax.rates)
        rows.push_back(
            {QStringLiteral("%1 %2 %").arg(QString::fromStdString(part.name), m_formatter.rateNumber(part.rate)),
             m_formatter.money(part.net), m_formatter.money(part.tax)});
    if (!tax.exempt.isZero()) rows.push_back({tr("customers exempt"), m_formatter.money(tax.exempt), {}});
    if (!tax.untaxed.isZero()) rows.push_back({tr("not taxed"), m_formatter.money(tax.untaxed), {}});
    m_taxCard->setVisible(!rows.empty());
    rows.push_back({tr("together"), m_formatter.money(tax.net()), m_formatter.money(tax.tax())});
    m_tax->setRows(rows);
    m_tax->showAllRows();
}

void FiguresPage::loadChosen() {
    const auto* group = m_presenter.chosen();
    m_jobsCard->setVisible(group != nullptr);
    if (!group) return;
    if (m_groups->currentIndex().row() != m_presenter.chosenRow()) {
        m_isLoading = true;
        m_groups->selectRow(m_presenter.chosenRow());
        m_isLoading = false;
    }
    m_jobsTitle->setText(nameOf(*group));
    std::vector<QStringList> rows;
    const auto& jobs = m_presenter.jobs();
    const auto shown = std::min<std::int64_t>(std::ssize(jobs), kMostJobsShown);
    for (const auto& job : std::span(jobs).first(static_cast<std::size_t>(shown))) {
        const auto& earned = job.earned;
        rows.push_back({QString::fromStdString(job.number), m_formatter.date(job.day),
                        QString::fromStdString(job.customerName), m_formatter.count(earned.pieces),
                        m_formatter.money(earned.income), m_formatter.money(earned.allCost()),
                        m_formatter.money(earned.left()), hoursOf(earned), hourOf(earned)});
    }
    m_jobs->setRows(rows);
    m_jobs->showAllRows();
    const auto more = std::ssize(jobs) - shown;
    m_moreJobs->setVisible(more > 0);
    m_moreJobs->setText(words::counted("sp::figures::FiguresPage",
                                       QT_TRANSLATE_N_NOOP("sp::figures::FiguresPage", "and %n more jobs"),
                                       "and %n more job", more));
    const auto& all = group->earned;
    m_sum->setText(
        tr("Together %1 cost + %2 left = %3")
            .arg(m_formatter.money(all.allCost()), m_formatter.money(all.left()), m_formatter.money(all.income)));
}

} // namespace sp::figures

#include "moc_figures_page.cpp"

// SPDX-License-Identifier: MIT
#include "app/jobs/job_strip.h"

#include "app/desk/bench_style.h"
#include "app/jobs/jobs_table_model.h"
#include "app/words/names.h"
#include "app/words/words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace sp::jobs {

using desk::Role;
using desk::TextSize;
using desk::Weight;

JobStrip::JobStrip(JobsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : Card(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    m_rows = new QBoxLayout(QBoxLayout::LeftToRight, this);
    m_rows->setContentsMargins(20, 12, 20, 12);
    m_rows->setSpacing(20);
    auto* what = new QHBoxLayout;
    what->setSpacing(20);
    m_actions = new QVBoxLayout;
    m_actions->setSpacing(8);
    m_rows->addLayout(what, 1);
    m_rows->addLayout(m_actions);
    auto* row = new QHBoxLayout;    // where it stands
    auto* orders = new QHBoxLayout; // what is done with what was ordered
    for (auto* buttons : {row, orders}) {
        buttons->setSpacing(12);
        buttons->addStretch(1);
        m_actions->addLayout(buttons);
    }
    auto* words = new QVBoxLayout;
    words->setSpacing(4);
    m_title = new desk::TextLabel({}, TextSize::Body, Role::Ink, Weight::Strong, this);
    m_title->setObjectName(QStringLiteral("jobTitle"));
    m_title->setTextFormat(Qt::PlainText);
    m_title->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_title->setElides(true);
    m_detail = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_detail->setTextFormat(Qt::PlainText);
    m_detail->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_detail->setElides(true);
    words->addStretch(1);
    words->addWidget(m_title);
    words->addWidget(m_detail);
    words->addStretch(1);
    what->addLayout(words, 1);
    m_total = new desk::FigureLabel({}, TextSize::Title, Role::Ink, Weight::Strong, this);
    m_total->setObjectName(QStringLiteral("jobTotal"));
    m_total->setMeaning(tr("To pay"));
    auto* money = new QVBoxLayout;
    money->setSpacing(0);
    money->addStretch(1);
    money->addWidget(m_total);
    m_left = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_left->setObjectName(QStringLiteral("jobLeft"));
    m_left->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    money->addWidget(m_left);
    money->addStretch(1);
    what->addLayout(money);
    m_choice = new desk::ChoiceField(m_formatter, this);
    m_choice->setObjectName(QStringLiteral("jobChoice"));
    m_choice->setUnknownWording(tr("There is no choice “%1”; choose from the list."));
    m_choice->setEmptyAllowed(true);
    m_choiceBox = new desk::FieldBox(tr("Choice ta&ken"), m_choice, this);
    row->addWidget(m_choiceBox, 0, Qt::AlignVCenter);
    connect(m_choice, &desk::ChoiceField::chosen, this, &JobStrip::choiceTaken);
    m_stage = new desk::ChoiceField(m_formatter, this);
    m_stage->setObjectName(QStringLiteral("jobStage"));
    m_stage->setUnknownWording(tr("There is no stage “%1”; choose from the list."));
    row->addWidget(new desk::FieldBox(tr("&Stage"), m_stage, this), 0, Qt::AlignVCenter);
    m_next = new QPushButton(this);
    m_next->setObjectName(QStringLiteral("jobNext"));
    m_next->setToolTip(tr("Moves it on to the next stage; undo takes it back"));
    row->addWidget(m_next, 0, Qt::AlignBottom);
    connect(m_next, &QPushButton::clicked, this, &JobStrip::moveOn);
    m_money = new QPushButton(tr("&Money"), this);
    m_money->setObjectName(QStringLiteral("jobMoney"));
    m_money->setToolTip(tr("What was paid for it, and the next payment"));
    row->addWidget(m_money, 0, Qt::AlignBottom);
    m_papers = new QPushButton(tr("Pape&rs"), this);
    m_papers->setObjectName(QStringLiteral("jobPapers"));
    m_papers->setToolTip(tr("Its quote, invoice, receipts and credit notes"));
    row->addWidget(m_papers, 0, Qt::AlignBottom);
    connect(m_papers, &QPushButton::clicked, this, &JobStrip::papersAsked);
    m_plan = new QPushButton(this);
    m_plan->setObjectName(QStringLiteral("jobPlan"));
    m_plan->setToolTip(tr("How everything the chosen quotes need cut lies on its sheets; choose several with Shift or "
                          "Ctrl"));
    orders->addWidget(m_plan, 0, Qt::AlignBottom);
    m_bench = new QPushButton(tr("Bench sheet"), this);
    m_bench->setObjectName(QStringLiteral("jobBench"));
    m_bench->setToolTip(tr("What it is made by: colours in brushing order, what to fetch and cut, press and steps"));
    orders->addWidget(m_bench, 0, Qt::AlignBottom);
    connect(m_bench, &QPushButton::clicked, this, &JobStrip::benchSheetAsked);
    m_changes = new QPushButton(tr("&What has changed since"), this);
    m_changes->setObjectName(QStringLiteral("jobChanges"));
    m_changes->setToolTip(tr("What the same order would come to today, and why"));
    orders->addWidget(m_changes, 0, Qt::AlignBottom);
    m_again = new QPushButton(tr("Order a&gain"), this);
    m_again->setObjectName(QStringLiteral("jobAgain"));
    m_again->setToolTip(tr("The same at the Counter once more, at today’s prices, and what it comes to now"));
    orders->addWidget(m_again, 0, Qt::AlignBottom);
    connect(m_again, &QPushButton::clicked, this, &JobStrip::repeatAsked);
    m_revise = new QPushButton(tr("R&evise"), this);
    m_revise->setObjectName(QStringLiteral("jobRevise"));
    m_revise->setToolTip(
        tr("Changes what was ordered, at the Counter and at today’s prices; this quote is kept as it is"));
    orders->addWidget(m_revise, 0, Qt::AlignBottom);
    connect(m_revise, &QPushButton::clicked, this, &JobStrip::reviseAsked);
    m_open = new QPushButton(tr("&Open at the Counter"), this);
    m_open->setObjectName(QStringLiteral("openJob"));
    desk::makePrimary(*m_open);
    orders->addWidget(m_open, 0, Qt::AlignBottom);
    setChosen(1);
    connect(m_money, &QPushButton::clicked, this, &JobStrip::moneyAsked);
    connect(m_plan, &QPushButton::clicked, this, &JobStrip::planAsked);
    connect(m_changes, &QPushButton::clicked, this, &JobStrip::changesAsked);
    connect(m_open, &QPushButton::clicked, this, &JobStrip::openAsked);
    connect(m_stage, &desk::ChoiceField::chosen, this, &JobStrip::stageChosen);
    load();
}

void JobStrip::setChosen(int quotes) {
    m_plan->setText(quotes > 1 ? tr("Sheet &plan of %1").arg(quotes) : tr("Sheet &plan"));
}

void JobStrip::resizeEvent(QResizeEvent* event) {
    Card::resizeEvent(event);
    arrange();
}

/// The actions go below what they are about where there is not room for both.
void JobStrip::arrange() {
    const bool isNarrow = width() < m_actions->sizeHint().width() + desk::scaled(420);
    m_rows->setDirection(isNarrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_rows->setSpacing(isNarrow ? 8 : 20);
}

void JobStrip::stageChosen(const QVariant& chosen) {
    if (!chosen.isValid()) return;
    const auto refused = m_presenter.setStage(static_cast<db::Stage>(chosen.toInt()));
    if (refused) m_stage->setOuterProblem(words::sentence(*refused));
}

void JobStrip::moveOn() {
    const auto* job = m_presenter.current();
    const auto next = job ? catalogue::nextStage(job->stage) : std::nullopt;
    if (!next) return;
    const auto refused = m_presenter.setStage(*next);
    if (refused) m_stage->setOuterProblem(words::sentence(*refused));
}

void JobStrip::choiceTaken(const QVariant& chosen) {
    const auto refused =
        m_presenter.takeChoice(chosen.isValid() ? std::optional<std::int64_t>(chosen.toLongLong()) : std::nullopt);
    if (refused) m_choice->setOuterProblem(words::sentence(*refused));
}

void JobStrip::loadChoices(const db::QuoteSummary& job) {
    const auto names = m_presenter.choices();
    m_choiceBox->setVisible(!names.empty());
    std::vector<desk::Choice> choices;
    for (std::size_t i = 0; i < names.size(); ++i)
        choices.push_back({static_cast<qlonglong>(i), QString::fromStdString(names[i]), {}, {}});
    m_choice->setChoices(std::move(choices));
    m_choice->setCurrent(job.choiceTaken ? QVariant(static_cast<qlonglong>(*job.choiceTaken)) : QVariant());
}

void JobStrip::load() {
    const auto* job = m_presenter.current();
    setVisible(job != nullptr);
    if (!job) return;
    const auto customer = QString::fromStdString(job->customer);
    const auto title = words::titleOf(*job);
    const auto number = !job->number.empty()   ? QString::fromStdString(job->number)
                        : job->revises.empty() ? tr("Draft")
                                               : tr("Revision of %1").arg(QString::fromStdString(job->revises));
    m_title->setText(title.isEmpty() ? tr("Nothing ordered yet") : title);
    m_detail->setText(
        QStringList{number, m_formatter.dateWithDay(job->quotedOn), customer.isEmpty() ? tr("no customer") : customer}
            .join(QStringLiteral(" · ")));
    m_changes->setVisible(!job->number.empty());
    m_again->setVisible(!job->number.empty());
    m_again->setEnabled(m_presenter.canChange());
    m_revise->setVisible(!job->number.empty());
    m_revise->setEnabled(m_presenter.canChange());
    m_total->setFigure(totalOf(*job, m_formatter));
    m_left->setText(leftOf(*job, m_formatter));
    m_left->setVisible(!m_left->text().isEmpty());
    const auto next = catalogue::nextStage(job->stage);
    m_next->setVisible(next.has_value());
    if (next) m_next->setText(tr("&Next: %1").arg(words::nameOf(*next)));
    m_money->setVisible(!job->number.empty());
    m_papers->setVisible(!job->number.empty());
    const bool isOpen = job->choices > 1 && !job->choiceTaken;
    m_money->setEnabled(!isOpen);
    m_money->setToolTip(isOpen ? tr("First say which choice the customer takes")
                               : tr("What was paid for it, and the next payment"));
    loadChoices(*job);
    const bool isUnfinished = job->id == m_shown && !m_stage->problem().isEmpty();
    m_shown = job->id;
    std::vector<desk::Choice> choices;
    for (const auto stage : m_presenter.stages())
        choices.push_back({static_cast<int>(stage), words::nameOf(stage), {}, {}});
    m_stage->setChoices(std::move(choices));
    if (!isUnfinished) m_stage->setCurrent(static_cast<int>(job->stage));
    arrange();
}

} // namespace sp::jobs

#include "moc_job_strip.cpp"

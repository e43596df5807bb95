// SPDX-License-Identifier: MIT
#include "app/plans/plan_dialog.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/field_box.h"
#include "app/desk/page_head.h"
#include "app/desk/tab_order.h"
#include "app/paper/plan_pages.h"
#include "app/paper/preview_dialog.h"
#include "app/plans/measure_table.h"
#include "app/plans/plan_picture.h"
#include "app/words/names.h"
#include "app/words/spare_words.h"
#include "app/words/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::plans {

using desk::Role;
using desk::TextSize;
using desk::Weight;

namespace {

constexpr int kSheetWidth = 300; ///< of the widest sheet in a plan
constexpr int kSheetHeight = 220;
constexpr std::size_t kMaxShown = 40; ///< different sheets of one plan; the rest is on paper

} // namespace

PlanDialog::PlanDialog(PlanQuestion question, catalogue::PriceBook prices, const desk::Formatter& formatter,
                       QWidget* parent)
    : QDialog(parent)
    , m_question(std::move(question))
    , m_prices(std::move(prices))
    , m_formatter(formatter)
    , m_words{formatter.style(), formatter.lengthUnit()} {
    setObjectName(QStringLiteral("sheetPlan"));
    setWindowTitle(tr("Sheet plan of %1").arg(m_question.title));
    build();
    connect(&m_planner, &SheetPlanner::answered, this, &PlanDialog::showAnswers);
    ask();
}

void PlanDialog::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    const auto head = desk::addPageHead(*column, windowTitle(), "planSaid", this);
    m_said = head.note;
    m_said->setWordWrap(true);
    if (!m_question.note.isEmpty()) {
        auto* note = new desk::TextLabel(m_question.note, TextSize::Small, Role::Warn, Weight::Plain, this);
        note->setObjectName(QStringLiteral("planNote"));
        note->setWordWrap(true);
        head.words->insertWidget(head.words->count() - 1, note);
    }
    m_spares = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_spares->setObjectName(QStringLiteral("planSpares"));
    m_spares->setWordWrap(true);
    head.words->insertWidget(head.words->count() - 1, m_spares);
    if (m_question.asksPieces) {
        m_pieces = new desk::CountField(m_formatter, this);
        m_pieces->setObjectName(QStringLiteral("planPieces"));
        m_pieces->setValue(m_question.lines.front().quantity);
        m_pieces->setFixedWidth(desk::scaled(112));
        head.row->addWidget(new desk::FieldBox(tr("Pi&eces to make"), m_pieces, this), 0, Qt::AlignTop);
        connect(m_pieces, &desk::TypedField::edited, this, &PlanDialog::ask);
    }
    m_scroll = new QScrollArea(this);
    m_scroll->setObjectName(QStringLiteral("planSheets"));
    m_scroll->setAccessibleName(tr("Sheets"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    column->addWidget(m_scroll, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    m_measures = new QCheckBox(tr("&Measures from the edges"), this);
    m_measures->setObjectName(QStringLiteral("planMeasures"));
    buttons->addWidget(m_measures);
    buttons->addStretch(1);
    m_print = new QPushButton(tr("&Print or save…"), this);
    m_print->setObjectName(QStringLiteral("printPlan"));
    desk::makePrimary(*m_print);
    auto* close = new QPushButton(tr("&Close"), this);
    close->setObjectName(QStringLiteral("closePlan"));
    for (auto* button : {m_print, close}) button->setAutoDefault(false);
    buttons->addWidget(m_print);
    buttons->addWidget(close);
    column->addLayout(buttons);
    connect(m_print, &QPushButton::clicked, this, &PlanDialog::showPreview);
    connect(m_measures, &QCheckBox::toggled, this, &PlanDialog::showAnswers);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    resize(desk::withinScreen(*this, {desk::scaled(900), desk::scaled(640)}));
}

void PlanDialog::say(const QString& sentence) {
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
}

void PlanDialog::ask() {
    m_print->setEnabled(false);
    if (auto* before = m_scroll->takeWidget()) before->deleteLater();
    if (m_pieces) {
        const auto count = m_pieces->value();
        if (!count || count->value() < 1) {
            m_planner.ask({});
            say(tr("Say how many pieces are made."));
            return;
        }
        m_question.lines.front().quantity = *count;
    }
    auto lists = planning::cutLists(m_question.lines, m_prices);
    const auto spares = lists ? words::spareNotes(m_question.lines, m_prices.shop) : QStringList();
    m_spares->setText(spares.join(QLatin1Char(' ')));
    m_spares->setVisible(!spares.isEmpty());
    if (!lists) {
        m_planner.ask({});
        say(words::sentence(lists.error()));
        return;
    }
    if (lists->empty()) {
        m_planner.ask({});
        say(tr("Nothing here is cut from a sheet or a roll."));
        return;
    }
    say(tr("Laying the pieces…"));
    m_planner.ask(std::move(*lists));
}

void PlanDialog::showAnswers() {
    const auto& answers = m_planner.answers();
    if (answers.empty() || m_planner.isBusy()) return;
    say(tr("Every piece to scale, with its border; a folded corner is a piece turned a quarter."));
    auto* body = new QWidget(m_scroll);
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 12, 0);
    column->setSpacing(12);
    for (const auto& answer : answers) addPlan(column, answer);
    column->addStretch(1);
    m_scroll->setWidget(body);
    body->setAutoFillBackground(false);
    m_scroll->viewport()->setAutoFillBackground(false);
    m_print->setEnabled(
        std::any_of(answers.begin(), answers.end(), [](const auto& answer) { return answer.plan.has_value(); }));
}

void PlanDialog::addPlan(QVBoxLayout* column, const PlanAnswer& answer) {
    auto* card = new desk::Card(this);
    auto* inside = new QVBoxLayout(card);
    inside->setContentsMargins(desk::cardMargins());
    inside->setSpacing(8);
    inside->addWidget(desk::sectionTitle(m_words.material(answer.list.material), card));
    if (!answer.plan) {
        auto* why = new desk::TextLabel(answer.problem, TextSize::Body, Role::Warn, Weight::Plain, card);
        why->setObjectName(QStringLiteral("planProblem"));
        why->setWordWrap(true);
        inside->addWidget(why);
        column->addWidget(card);
        return;
    }
    auto* verdict = new desk::TextLabel(m_words.verdict(*answer.plan), TextSize::Body, Role::Ink, Weight::Plain, card);
    verdict->setObjectName(QStringLiteral("planVerdict"));
    verdict->setWordWrap(true);
    inside->addWidget(verdict);
    auto* left = new desk::TextLabel(m_words.left(*answer.plan), TextSize::Small, Role::Muted, Weight::Plain, card);
    left->setObjectName(QStringLiteral("planLeft"));
    inside->addWidget(left);
    addSheets(inside, *answer.plan);
    addLegend(inside, *answer.plan);
    if (m_measures->isChecked()) addMeasures(inside, *answer.plan);
    column->addWidget(card);
}

void PlanDialog::addSheets(QVBoxLayout* column, const planning::CutPlan& plan) {
    const QSizeF size = paper::planSize(plan);
    const bool roll = plan.list.material.sheet.form == catalogue::SheetForm::Roll;
    const int widest = desk::scaled(roll ? 2 * kSheetWidth : kSheetWidth);
    const double scale = std::min(widest / size.width(), desk::scaled(kSheetHeight) / size.height());
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(8);
    const int across = std::max(1, desk::scaled(2 * kSheetWidth + 12) / (static_cast<int>(size.width() * scale) + 12));
    std::int64_t first = 1;
    int at = 0;
    for (std::size_t i = 0; i < std::min(plan.sheets.size(), kMaxShown); ++i, ++at) {
        grid->addWidget(new PlanPicture(plan, i, first, scale, m_words, this), at / across, at % across,
                        Qt::AlignLeft | Qt::AlignTop);
        first += plan.sheets[i].count;
    }
    grid->setColumnStretch(across, 1);
    column->addLayout(grid);
    if (plan.sheets.size() > kMaxShown)
        column->addWidget(new desk::TextLabel(
            tr("The first %1 different sheets; all of them are on the printed plan.").arg(kMaxShown), TextSize::Small,
            Role::Muted, Weight::Plain, this));
}

void PlanDialog::addLegend(QVBoxLayout* column, const planning::CutPlan& plan) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(4);
    int row = 0;
    for (std::size_t i = 0; i < plan.list.pieces.size(); ++i, ++row) {
        const auto& piece = plan.list.pieces[i];
        auto* name =
            new desk::TextLabel(QString::fromStdString(piece.name), TextSize::Small, Role::Ink, Weight::Plain, this);
        name->setTextFormat(Qt::PlainText);
        name->setWordWrap(true);
        grid->addWidget(new desk::TextLabel(paper::pieceMark(i), TextSize::Small, Role::Ink, Weight::Strong, this), row,
                        0);
        grid->addWidget(name, row, 1);
        grid->addWidget(
            new desk::TextLabel(m_words.size(piece.size), TextSize::Small, Role::Muted, Weight::Plain, this), row, 2,
            Qt::AlignRight);
        grid->addWidget(
            new desk::TextLabel(words::counted(words::Thing::Piece, piece.count, m_words.count(piece.count)),
                                TextSize::Small, Role::Muted, Weight::Plain, this),
            row, 3, Qt::AlignRight);
    }
    grid->setColumnStretch(1, 1);
    column->addLayout(grid);
}

void PlanDialog::addMeasures(QVBoxLayout* column, const planning::CutPlan& plan) {
    auto* table = new MeasureTable(plan, m_words, this);
    column->addWidget(table);
    if (table->isWhole()) return;
    auto* more = new desk::TextLabel(tr("The measures of the other sheets are on the printed plan."), TextSize::Small,
                                     Role::Muted, Weight::Plain, this);
    more->setObjectName(QStringLiteral("planMeasuresMore"));
    column->addWidget(more);
}

/// Tab goes where the eye goes, also through what was laid just now.
bool PlanDialog::focusNextPrevChild(bool next) {
    return desk::moveFocus(*this, next) || QDialog::focusNextPrevChild(next);
}

void PlanDialog::showPreview() {
    paper::PlanSheetInput input;
    input.title = m_question.title;
    input.day = m_formatter.date(m_question.day);
    input.note = m_question.note;
    if (!m_spares->text().isEmpty())
        input.note += (input.note.isEmpty() ? QString() : QStringLiteral(" ")) + m_spares->text();
    input.shop = &m_prices.shop;
    input.words = m_words;
    for (const auto& answer : m_planner.answers())
        if (answer.plan) input.plans.push_back(*answer.plan);
    if (input.plans.empty() || m_planner.isBusy()) return;
    auto document = paper::planDocument(input);
    const auto name = tr("Cutting plan %1").arg(m_question.title).replace(QLatin1Char('/'), QLatin1Char('-'));
    paper::showPreview(std::move(document), m_prices.shop.paper, name, "planPreview", this);
}

} // namespace sp::plans

#include "moc_plan_dialog.cpp"

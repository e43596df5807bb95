// SPDX-License-Identifier: MIT
#include "app/buying/strategy_column.h"

#include "app/buying/plan_rows.h"
#include "app/desk/bench_style.h"
#include "app/format/rule_role.h"
#include "app/words/words.h"
#include "core/supply/plan_figures.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QStandardItemModel>
#include <QVBoxLayout>

namespace sp::buying {

using desk::Role;
using desk::TextSize;
using desk::Weight;
using supply::Strategy;

namespace {

/// The model of the tree.
void fill(QStandardItemModel& model, const std::vector<PlanRow>& rows) {
    const auto add = [](auto& self, QStandardItem& parent, const std::vector<PlanRow>& parts) -> void {
        for (const auto& part : parts) {
            auto* label = new QStandardItem(part.label);
            for (const int role : {desk::kRuleRole, int(Qt::ToolTipRole), int(Qt::AccessibleDescriptionRole)})
                label->setData(part.rule, role);
            self(self, *label, part.parts);
            parent.appendRow({label, new QStandardItem(part.figure)});
        }
    };
    model.clear();
    model.setColumnCount(2);
    add(add, *model.invisibleRootItem(), rows);
}

} // namespace

StrategyColumn::StrategyColumn(Strategy strategy, const desk::Formatter& formatter, QWidget* parent)
    : Card(parent)
    , m_strategy(strategy)
    , m_formatter(formatter) {
    const QString key = strategy == Strategy::Kits   ? QStringLiteral("kits")
                        : strategy == Strategy::Bulk ? QStringLiteral("bulk")
                                                     : QStringLiteral("mix");
    setObjectName(key);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 12, 8);
    column->setSpacing(4);
    auto* head = new QHBoxLayout;
    head->addWidget(desk::sectionTitle(nameOf(strategy), this), 1);
    m_mark = new desk::TextLabel({}, TextSize::Small, Role::Jewel, Weight::Strong, this);
    m_mark->setObjectName(key + QStringLiteral("Mark"));
    head->addWidget(m_mark);
    column->addLayout(head);
    auto* money = new QHBoxLayout;
    money->setSpacing(8);
    m_cost = new desk::FigureLabel({}, TextSize::Title, Role::Ink, Weight::Strong, this);
    m_cost->setObjectName(key + QStringLiteral("Cost"));
    m_cost->setMeaning(nameOf(strategy));
    m_cost->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_cost->setOpens(true);
    m_cost->setToolTip(tr("Opens to what it is made of"));
    money->addWidget(m_cost);
    m_each = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_each->setObjectName(key + QStringLiteral("Each"));
    money->addWidget(m_each, 1, Qt::AlignBottom);
    column->addLayout(money);
    m_proof = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_proof->setObjectName(key + QStringLiteral("Proof"));
    m_proof->setWordWrap(true);
    column->addWidget(m_proof);
    m_model = new QStandardItemModel(this);
    m_model->setColumnCount(2);
    m_tree = new desk::RuleTree(this);
    m_tree->setObjectName(key + QStringLiteral("Tree"));
    m_tree->setAccessibleName(tr("%1, figure by figure").arg(nameOf(strategy)));
    m_tree->setModel(m_model);
    column->addWidget(m_tree, 1);
    m_takeIn = new QPushButton(tr("Bought: put it on the shelf"), this);
    m_takeIn->setObjectName(key + QStringLiteral("TakeIn"));
    m_takeIn->setAccessibleName(tr("%1 bought: put it on the shelf").arg(nameOf(strategy)));
    m_takeIn->setToolTip(tr("Counts these packs in at what they cost, with their share of the shipping"));
    desk::makeQuiet(*m_takeIn);
    column->addWidget(m_takeIn, 0, Qt::AlignLeft);
    connect(m_takeIn, &QPushButton::clicked, this, &StrategyColumn::takeInAsked);
    connect(m_cost, &desk::FigureLabel::opened, this, &StrategyColumn::focusFigures);
}

void StrategyColumn::focusFigures() {
    for (int row = 0; row < m_model->rowCount(); ++row) m_tree->expand(m_model->index(row, 0));
    m_tree->setFocus(Qt::OtherFocusReason);
    m_tree->setCurrentIndex(m_model->index(0, 0));
}

void StrategyColumn::show(const Answer* answer, const QString& remark) {
    if (m_model->rowCount() > 0) m_opened = m_tree->opened();
    m_mark->setText({});
    setChosen(false);
    if (!answer) return showNone(remark);
    const auto& strategy = answer->plans.of(m_strategy);
    if (!strategy.plan) return showNone(words::sentence(*strategy.impossible));
    showPlan(*answer);
}

void StrategyColumn::showNone(const QString& remark) {
    m_cost->setFigure(QStringLiteral("—"));
    m_each->setText({});
    m_proof->setText(remark);
    m_model->removeRows(0, m_model->rowCount());
    m_tree->setEnabled(false);
    m_takeIn->setVisible(false);
}

void StrategyColumn::showPlan(const Answer& answer) {
    const auto& plan = *answer.plans.of(m_strategy).plan;
    const bool isWinner = answer.plans.winner == m_strategy;
    setChosen(isWinner);
    if (isWinner) m_mark->setText(tr("✓ cheapest"));
    m_cost->setFigure(m_formatter.money(plan.cost));
    m_each->setText(tr("%1 a piece").arg(m_formatter.money(supply::costEach(plan, answer.job.pieces()))));
    const bool sameAsAlone = m_strategy == Strategy::Mix && answer.plans.winner && answer.plans.winner != Strategy::Mix;
    QString proof =
        plan.proven ? tr("Proven: it cannot be bought for less this way.")
                    : tr("At most %1 above the cheapest possible.").arg(m_formatter.money(supply::unprovenGap(plan)));
    if (answer.isProving && !plan.proven)
        proof =
            tr("Proving… at most %1 above the cheapest possible.").arg(m_formatter.money(supply::unprovenGap(plan)));
    if (answer.plans.isOnShelf)
        proof = tr("Nothing has to be bought: the shelf is enough.");
    else if (sameAsAlone)
        proof = tr("No mix is cheaper than %1.").arg(nameOf(*answer.plans.winner).toLower());
    m_proof->setText(proof);
    m_tree->setEnabled(true);
    m_takeIn->setVisible(!plan.packs.empty());
    fill(*m_model, rowsOf(answer, m_strategy, m_formatter));
    m_tree->setModel(m_model); // the columns are new
    if (m_opened.isEmpty() && m_model->rowCount() > 0) m_tree->expand(m_model->index(0, 0));
    m_tree->open(m_opened);
}

} // namespace sp::buying

#include "moc_strategy_column.cpp"

// SPDX-License-Identifier: MIT
#include "app/buying/cost_curve_panel.h"

#include "app/buying/plan_rows.h"
#include "app/desk/bench_style.h"
#include "core/supply/plan_figures.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

namespace sp::buying {

using desk::Role;
using desk::TextSize;
using desk::Weight;

CostCurvePanel::CostCurvePanel(BuyingPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : Card(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->setSpacing(4);
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(desk::sectionTitle(tr("Cost of one piece by quantity"), this), 1);
    m_turn = new QPushButton(tr("&Table"), this);
    m_turn->setObjectName(QStringLiteral("stairTable"));
    m_turn->setCheckable(true);
    m_turn->setToolTip(tr("Shows the figures behind the picture (T)"));
    m_print = new QPushButton(tr("Print the st&aircase…"), this);
    m_print->setObjectName(QStringLiteral("printStairs"));
    desk::makeQuiet(*m_turn);
    desk::makeQuiet(*m_print);
    head->addWidget(m_turn);
    head->addWidget(m_print);
    column->addLayout(head);
    m_point = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_point->setObjectName(QStringLiteral("stairPoint"));
    m_point->setWordWrap(true);
    column->addWidget(m_point);
    m_sides = new QStackedWidget(this);
    m_picture = new CostCurvePicture(formatter, m_sides);
    m_picture->setObjectName(QStringLiteral("stairs"));
    m_sides->addWidget(m_picture);
    m_table = new desk::FiguresTable(tr("Cost of one piece by quantity"),
                                     {{tr("Pieces"), true},
                                      {tr("Kits, each"), true},
                                      {tr("Bulk, each"), true},
                                      {tr("Mix, each"), true},
                                      {tr("Cheapest")},
                                      {tr("Proven")}},
                                     m_sides);
    m_table->setObjectName(QStringLiteral("stairFigures"));
    m_sides->addWidget(m_table);
    column->addWidget(m_sides);
    m_words = new desk::TextLabel({}, TextSize::Small, Role::Ink, Weight::Plain, this);
    m_words->setObjectName(QStringLiteral("stairWords"));
    m_words->setWordWrap(true);
    column->addWidget(m_words);
    connect(m_turn, &QPushButton::toggled, this, [this](bool on) {
        m_sides->setCurrentIndex(on ? 1 : 0);
        if (on) fillTable();
        m_sides->currentWidget()->setFocus(Qt::OtherFocusReason);
    });
    auto* key = new QShortcut(Qt::Key_T, m_sides, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
    connect(key, &QShortcut::activated, m_turn, &QPushButton::toggle);
    connect(m_print, &QPushButton::clicked, this, &CostCurvePanel::printAsked);
    connect(m_picture, &CostCurvePicture::moved, this, &CostCurvePanel::showMarked);
    connect(&m_presenter, &BuyingPresenter::curveChanged, this, &CostCurvePanel::refresh);
    refresh();
}

void CostCurvePanel::refresh() {
    const auto& curve = m_presenter.curve();
    const bool isThere = curve && !curve->points.empty();
    setVisible(!m_presenter.isForOrder() && m_presenter.whyNot().isEmpty());
    m_picture->setCurve(curve, m_presenter.horizon());
    if (!isThere || m_picture->marked() == 0 || !m_picture->hasFocus())
        m_picture->setMarked(m_presenter.pieces().value_or(0));
    m_print->setEnabled(isThere && m_presenter.isCurveComplete());
    m_words->setText(isThere ? said(*curve) : tr("Working…"));
    showMarked();
    if (m_turn->isChecked()) fillTable();
}

QString CostCurvePanel::said(const supply::CostCurve& curve) const {
    auto words = costCurveWords(curve, m_presenter.horizon(), m_formatter);
    const auto shown = !m_presenter.isCurveComplete()
                           ? tr("working on more…")
                           : shownWords(curve, m_presenter.horizon(), m_presenter.pieces().value_or(0), m_formatter);
    if (!shown.isEmpty()) words << shown;
    return words.join(QStringLiteral("  ·  "));
}

void CostCurvePanel::showMarked() {
    const auto& curve = m_presenter.curve();
    const auto at = m_picture->marked();
    const bool isThere = curve && at >= 1 && static_cast<std::size_t>(at) <= curve->points.size();
    m_point->setText(isThere ? pointWords(curve->points[static_cast<std::size_t>(at - 1)], m_formatter) : QString());
}

void CostCurvePanel::fillTable() {
    std::vector<QStringList> rows;
    const auto& curve = m_presenter.curve();
    for (const auto& point : curve ? curve->points : std::vector<supply::CostCurvePoint>{}) {
        if (point.pieces > m_presenter.horizon()) break;
        const auto each = [&](const supply::StrategyCost& cost) {
            const auto money = supply::costEach(cost, point.pieces);
            return money ? m_formatter.money(*money) : QStringLiteral("—");
        };
        const auto winner = point.winner ? nameOf(*point.winner) : point.mix.cost ? tr("Nothing to buy") : tr("No way");
        rows.push_back({m_formatter.count(units::Count::of(point.pieces)), each(point.kits), each(point.bulk),
                        each(point.mix), winner, point.proven ? tr("yes") : tr("no")});
    }
    m_table->setRows(rows);
    const auto row = static_cast<int>(m_picture->marked()) - 1;
    if (row < 0 || row >= m_table->model()->rowCount()) return;
    m_table->setCurrentIndex(m_table->model()->index(row, 0));
    m_table->scrollTo(m_table->currentIndex(), QAbstractItemView::PositionAtCenter);
}

} // namespace sp::buying

#include "moc_cost_curve_panel.cpp"

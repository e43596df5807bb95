// SPDX-License-Identifier: MIT
#include "app/jobs/job_filters.h"

#include "app/session/settings.h"
#include "app/words/names.h"

#include <QActionGroup>
#include <QHBoxLayout>
#include <QMenu>

#include <algorithm>
#include <array>

namespace sp::jobs {

using db::FoundBy;

namespace {

/// A column with what it is sorted by and the name by which it is kept hidden, or what the list is in order of; the
/// number is always shown.
struct SortedColumn {
    Column column;
    FoundBy by;
    const char* key;
    bool isAscendingFirst;
};
constexpr std::array kSorted{SortedColumn{Column::Number, FoundBy::Number, "number", false},
                             SortedColumn{Column::Day, FoundBy::Day, "day", false},
                             SortedColumn{Column::Customer, FoundBy::Customer, "customer", true},
                             SortedColumn{Column::Title, FoundBy::What, "what", true},
                             SortedColumn{Column::Stage, FoundBy::Stage, "stage", true},
                             SortedColumn{Column::Total, FoundBy::Total, "total", false},
                             SortedColumn{Column::Left, FoundBy::Left, "left", false}};

bool canBeHidden(const SortedColumn& one) { return one.column != Column::Number; }

constexpr const char* kAscending = "ascending";
constexpr int kAnyStage = -1;
constexpr int kLapsed = -2;

enum class Days { Any, LastWeek, LastMonth, ThisYear, LastYear };

/// Today is one of the last days.
void putDays(db::Wanted& wanted, Days days, units::Date today) {
    const auto year = std::stoi(today.iso().substr(0, 4));
    const auto dayOf = [](int ofYear, const char* monthDay) {
        return units::Date::parse(std::to_string(ofYear) + monthDay).value();
    };
    wanted.from = wanted.to = std::nullopt;
    switch (days) {
    case Days::Any: break;
    case Days::LastWeek: wanted.from = today.plusDays(-6); break;
    case Days::LastMonth: wanted.from = today.plusDays(-29); break;
    case Days::ThisYear: wanted.from = dayOf(year, "-01-01"); break;
    case Days::LastYear:
        wanted.from = dayOf(year - 1, "-01-01");
        wanted.to = dayOf(year - 1, "-12-31");
        break;
    }
}

QAction* addChoice(QMenu* menu, QActionGroup* group, const QString& text, int value) {
    auto* action = menu->addAction(text);
    action->setCheckable(true);
    action->setData(value);
    group->addAction(action);
    return action;
}

QToolButton* menuButton(const char* name, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setObjectName(QLatin1String(name));
    button->setPopupMode(QToolButton::InstantPopup);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setMenu(new QMenu(button));
    return button;
}

} // namespace

JobFilters::JobFilters(JobsPresenter& presenter, const JobsTableModel& model, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_only(menuButton("jobsOnly", this))
    , m_order(menuButton("jobsOrder", this))
    , m_chosenOn(presenter.today()) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(m_only);
    row->addStretch(1);
    row->addWidget(m_order);
    readHidden();
    buildOnly();
    buildOrder(model);
    nameOnly();
    readOrder();
}

void JobFilters::buildOnly() {
    auto* menu = m_only->menu();
    m_stages = new QActionGroup(this);
    addChoice(menu, m_stages, tr("Of any stage"), kAnyStage)->setChecked(true);
    for (const auto stage : {db::Stage::Enquiry, db::Stage::Quoted, db::Stage::Agreed, db::Stage::InProduction,
                             db::Stage::Ready, db::Stage::Collected, db::Stage::Declined})
        addChoice(menu, m_stages, words::nameOf(stage), static_cast<int>(stage));
    addChoice(menu, m_stages, tr("Lapsed"), kLapsed);
    menu->addSeparator();
    m_days = new QActionGroup(this);
    addChoice(menu, m_days, tr("Of any day"), static_cast<int>(Days::Any))->setChecked(true);
    addChoice(menu, m_days, tr("The last 7 days"), static_cast<int>(Days::LastWeek));
    addChoice(menu, m_days, tr("The last 30 days"), static_cast<int>(Days::LastMonth));
    addChoice(menu, m_days, tr("This year"), static_cast<int>(Days::ThisYear));
    addChoice(menu, m_days, tr("Last year"), static_cast<int>(Days::LastYear));
    menu->addSeparator();
    m_unpaid = menu->addAction(tr("Not paid"));
    m_unpaid->setCheckable(true);
    connect(menu, &QMenu::triggered, this, &JobFilters::ask);
}

void JobFilters::buildOrder(const JobsTableModel& model) {
    m_order->setText(tr("Order and col&umns"));
    auto* menu = m_order->menu();
    auto* sorts = new QActionGroup(this);
    const auto headOf = [&](int column) {
        return model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    };
    auto* newest = addChoice(menu, sorts, tr("The newest first"), -1);
    newest->setChecked(true);
    connect(newest, &QAction::triggered, this, [this] { sortBy(-1); });
    m_sorts.emplace_back(-1, newest);
    for (const auto& sorted : kSorted) {
        auto* action = addChoice(menu, sorts, tr("By: %1").arg(headOf(sorted.column)), sorted.column);
        connect(action, &QAction::triggered, this, [this, column = sorted.column] { sortBy(column); });
        m_sorts.emplace_back(sorted.column, action);
    }
    m_otherWay = menu->addAction(tr("The other way round"));
    m_otherWay->setCheckable(true);
    connect(m_otherWay, &QAction::triggered, this, [this] {
        auto wanted = m_presenter.wanted();
        wanted.isAscending = !wanted.isAscending;
        putInOrder(std::move(wanted));
    });
    menu->addSeparator();
    for (const auto& sorted : kSorted) {
        if (!canBeHidden(sorted)) continue;
        auto* action = menu->addAction(tr("Show: %1").arg(headOf(sorted.column)));
        action->setCheckable(true);
        action->setChecked(!isHidden(sorted.column));
        connect(action, &QAction::triggered, this,
                [this, column = sorted.column](bool shows) { hide(column, !shows); });
    }
}

void JobFilters::ask() {
    nameOnly();
    m_presenter.setWanted(chosen());
}

void JobFilters::readAgain() {
    if (m_presenter.today() == m_chosenOn)
        m_presenter.refresh();
    else
        m_presenter.renewWanted(chosen());
}

/// What is wanted by the menus, today.
db::Wanted JobFilters::chosen() {
    m_chosenOn = m_presenter.today();
    auto wanted = m_presenter.wanted();
    const auto stage = m_stages->checkedAction()->data().toInt();
    wanted.stage = stage < 0 ? std::nullopt : std::optional(static_cast<db::Stage>(stage));
    wanted.isLapsed = stage == kLapsed;
    wanted.isUnpaid = m_unpaid->isChecked();
    putDays(wanted, static_cast<Days>(m_days->checkedAction()->data().toInt()), m_chosenOn);
    return wanted;
}

/// The button says what is chosen.
void JobFilters::nameOnly() {
    QStringList chosen;
    for (const auto* group : {m_stages, m_days})
        if (group->checkedAction() != group->actions().front()) chosen << group->checkedAction()->text();
    if (m_unpaid->isChecked()) chosen << m_unpaid->text();
    m_only->setText(chosen.isEmpty() ? tr("A&ll jobs") : tr("On&ly: %1").arg(chosen.join(QStringLiteral(", "))));
    m_only->setAccessibleName(m_only->text().remove(QLatin1Char('&')));
}

void JobFilters::clear() {
    m_stages->actions().front()->setChecked(true);
    m_days->actions().front()->setChecked(true);
    m_unpaid->setChecked(false);
    ask();
}

void JobFilters::sortBy(int column) {
    auto wanted = m_presenter.wanted();
    const auto sorted =
        std::ranges::find(kSorted, column, [](const auto& one) { return static_cast<int>(one.column); });
    if (sorted == kSorted.end()) {
        wanted.by = FoundBy::Started;
        wanted.isAscending = false;
    } else {
        wanted.isAscending = wanted.by == sorted->by ? !wanted.isAscending : sorted->isAscendingFirst;
        wanted.by = sorted->by;
    }
    putInOrder(std::move(wanted));
}

void JobFilters::putInOrder(db::Wanted wanted) {
    m_presenter.setWanted(std::move(wanted));
    showSort(sortedColumn());
    keepOrder();
}

void JobFilters::showSort(int column) {
    for (const auto& [of, action] : m_sorts)
        if (of == column) action->setChecked(true);
    const auto& wanted = m_presenter.wanted();
    const auto sorted = std::ranges::find(kSorted, wanted.by, &SortedColumn::by);
    m_otherWay->setChecked(wanted.isAscending != (sorted != kSorted.end() && sorted->isAscendingFirst));
}

int JobFilters::sortedColumn() const {
    const auto sorted = std::ranges::find(kSorted, m_presenter.wanted().by, &SortedColumn::by);
    return sorted == kSorted.end() ? -1 : static_cast<int>(sorted->column);
}

void JobFilters::readOrder() {
    const auto kept = session::kept(session::kJobOrder).split(QLatin1Char(','));
    auto wanted = m_presenter.wanted();
    for (const auto& sorted : kSorted)
        if (kept.contains(QLatin1String(sorted.key))) wanted.by = sorted.by;
    wanted.isAscending = kept.contains(QLatin1String(kAscending));
    m_presenter.setWanted(std::move(wanted));
    showSort(sortedColumn());
}

void JobFilters::keepOrder() const {
    QStringList words;
    const auto& wanted = m_presenter.wanted();
    for (const auto& sorted : kSorted)
        if (sorted.by == wanted.by) words << QLatin1String(sorted.key);
    if (wanted.isAscending) words << QLatin1String(kAscending);
    session::save(session::kJobOrder, words.join(QLatin1Char(',')));
}

void JobFilters::readHidden() {
    const auto kept = session::kept(session::kHiddenJobColumns).split(QLatin1Char(','));
    for (const auto& sorted : kSorted)
        if (canBeHidden(sorted) && kept.contains(QLatin1String(sorted.key))) m_hidden.insert(sorted.column);
}

void JobFilters::keepHidden() {
    QStringList keys;
    for (const auto& sorted : kSorted)
        if (isHidden(sorted.column)) keys << QLatin1String(sorted.key);
    session::save(session::kHiddenJobColumns, keys.join(QLatin1Char(',')));
}

void JobFilters::hide(int column, bool hides) {
    if (hides)
        m_hidden.insert(column);
    else
        m_hidden.erase(column);
    keepHidden();
    Q_EMIT columnsChanged();
}

} // namespace sp::jobs

#include "moc_job_filters.cpp"

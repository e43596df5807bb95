// SPDX-License-Identifier: MIT
#include "app/counter/choice_bar.h"

#include "app/counter/slip_panel.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/field_binding.h"
#include "app/paper/sheet_words_of.h"
#include "core/catalogue/fields/tables.h"
#include "core/quoting/differences.h"

#include <QVBoxLayout>

namespace sp::counter {

ChoiceBar::ChoiceBar(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_tabs = new desk::TabRow(this);
    m_tabs->setObjectName(QStringLiteral("choices"));
    column->addWidget(m_tabs);
    m_title = new desk::WordField(m_formatter, {}, this);
    m_title->setObjectName(QStringLiteral("choiceTitle"));
    m_title->setEmptyAllowed(true);
    desk::standsFor(*m_title, catalogue::fields::fieldOf<&catalogue::Order::title>());
    m_titleBox = new desk::FieldBox(tr("Name of this c&hoice"), m_title, this);
    column->addWidget(m_titleBox);
    m_add = new QPushButton(this);
    m_add->setObjectName(QStringLiteral("addChoice"));
    m_add->setToolTip(tr("The same order once more, to change and to choose from (Ctrl+D); at most four"));
    m_add->setAccessibleName(tr("Offer another choice"));
    desk::makeQuiet(*m_add);
    m_tabs->addAtEnd(m_add);
    connect(m_tabs, &desk::TabRow::chosen, &m_presenter, &CounterPresenter::lookAt);
    connect(m_tabs, &desk::TabRow::removeAsked, &m_presenter, &CounterPresenter::removeChoice);
    connect(m_add, &QPushButton::clicked, &m_presenter, &CounterPresenter::addChoice);
    connect(m_title, &desk::TypedField::edited, this, [this] { m_presenter.setChoiceTitle(m_title->text()); });
    connect(m_title, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
    connect(&m_presenter, &CounterPresenter::changed, this, &ChoiceBar::refresh);
    connect(&m_presenter, &CounterPresenter::orderShown, this, &ChoiceBar::loadOrder);
    loadOrder();
}

void ChoiceBar::loadOrder() {
    m_title->setRaw(QString::fromStdString(m_presenter.order().title));
    refresh();
}

void ChoiceBar::refresh() {
    const int choices = m_presenter.choices();
    const bool open = m_presenter.canChange();
    const bool isChoosing = choices > 1;
    setVisible(isChoosing || open);
    m_titleBox->setVisible(isChoosing);
    m_add->setText(isChoosing ? tr("+ choice") : tr("Offer another choice"));
    m_add->setVisible(open && choices < static_cast<int>(catalogue::kMaxChoices));
    m_add->setEnabled(!m_presenter.order().lines.empty());
    m_title->setEnabled(open);
    m_tabs->setRemoval(isChoosing && open ? tr("Take this choice out") : QString());
    if (!isChoosing) return m_tabs->setTabs({}, 0);
    auto order = m_presenter.order();
    order.title.clear();
    const auto words = paper::sheetWords(m_formatter);
    const auto differences = quoting::differencesOf(order, m_presenter.prices(), words);
    const auto told = quoting::differencesOf(m_presenter.order(), m_presenter.prices(), words);
    m_title->setPlaceholderText(QString::fromStdString(differences[static_cast<std::size_t>(order.choice)]));
    QStringList names;
    QStringList shorter;
    for (int i = 0; i < choices; ++i) {
        const auto difference = QString::fromStdString(told[static_cast<std::size_t>(i)]);
        const auto number = QString::number(i + 1);
        names << (difference.isEmpty() ? number : number + QLatin1Char(' ') + difference);
        shorter << number;
    }
    m_tabs->setTabs(names, m_presenter.currentChoice(), shorter);
}

} // namespace sp::counter

#include "moc_choice_bar.cpp"

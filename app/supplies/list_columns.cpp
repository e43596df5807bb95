// SPDX-License-Identifier: MIT
#include "app/supplies/list_columns.h"

#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/fonts.h"

#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::supplies {

using catalogue::ListColumn;

namespace {

constexpr std::size_t kRowsShown = 4;
constexpr int kNotUsed = -1;

QString ampersandsKept(QString text) { return text.replace(QLatin1Char('&'), QStringLiteral("&&")); }

} // namespace

ListColumns::ListColumns(PriceListPresenter& presenter, QWidget* parent)
    : QScrollArea(parent)
    , m_presenter(presenter) {
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("The columns of the list"));
    setFocusPolicy(Qt::NoFocus);
    hide();
}

void ListColumns::fill() {
    const auto* table = m_presenter.table();
    setVisible(table != nullptr);
    if (table != m_shown) {
        m_shown = table;
        m_choices.clear();
        auto* body = new QWidget;
        auto* row = new QHBoxLayout(body);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(12);
        std::size_t number = 0;
        for (const auto& heading : m_presenter.headings()) row->addWidget(columnOf(number++, heading));
        row->addStretch(1);
        setWidget(body);
        body->setAutoFillBackground(false);
        viewport()->setAutoFillBackground(false);
        setFixedHeight(body->sizeHint().height() + horizontalScrollBar()->sizeHint().height());
    }
    for (std::size_t i = 0; i < m_choices.size(); ++i) {
        const auto meaning = m_presenter.meaning(i);
        m_choices[i]->setCurrentIndex(m_choices[i]->findData(meaning ? static_cast<int>(*meaning) : kNotUsed));
    }
}

QWidget* ListColumns::columnOf(std::size_t number, const QString& heading) {
    auto* column = new QWidget;
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    auto* choice = new QComboBox(column);
    choice->setObjectName(QStringLiteral("listColumn%1").arg(number));
    const std::pair<QString, int> meanings[] = {{tr("not used"), kNotUsed},
                                                {tr("Item number"), static_cast<int>(ListColumn::Item)},
                                                {tr("What is sold"), static_cast<int>(ListColumn::Material)},
                                                {tr("Size"), static_cast<int>(ListColumn::Size)},
                                                {tr("Colour"), static_cast<int>(ListColumn::Colour)},
                                                {tr("Pack"), static_cast<int>(ListColumn::Pack)},
                                                {tr("How many"), static_cast<int>(ListColumn::Amount)},
                                                {tr("Pack’s price"), static_cast<int>(ListColumn::Price)},
                                                {tr("From packs"), static_cast<int>(ListColumn::FromPacks)}};
    for (const auto& [words, meaning] : meanings) choice->addItem(words, meaning);
    connect(choice, &QComboBox::activated, this, [this, number, choice] {
        const int chosen = choice->currentData().toInt();
        m_presenter.setMeaning(number,
                               chosen == kNotUsed ? std::nullopt : std::optional(static_cast<ListColumn>(chosen)));
    });
    m_choices.push_back(choice);
    layout->addWidget(new desk::FieldBox(ampersandsKept(heading), choice, column));
    choice->setAccessibleName(tr("What column “%1” says").arg(heading));
    const auto& rows = m_presenter.table()->rows;
    for (std::size_t i = 1; i < std::min(rows.size(), kRowsShown + 1); ++i) {
        const auto cell = number < rows[i].cells.size() ? QString::fromStdString(rows[i].cells[number]) : QString();
        auto* label = new desk::TextLabel(cell.simplified(), desk::TextSize::Small, desk::Role::Muted,
                                          desk::Weight::Plain, column);
        label->setTextFormat(Qt::PlainText);
        label->setElides(true);
        layout->addWidget(label);
    }
    return column;
}

} // namespace sp::supplies

#include "moc_list_columns.cpp"

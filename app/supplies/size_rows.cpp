// SPDX-License-Identifier: MIT
#include "app/supplies/size_rows.h"

#include "app/desk/bench_style.h"
#include "app/desk/field_binding.h"

#include <algorithm>

namespace sp::supplies {

using catalogue::BlankSize;
using catalogue::fields::fieldOf;

SizeRows::SizeRows(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(12, tr("Sizes"), parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    problem()->setObjectName(QStringLiteral("sizeProblem"));
    auto* add = addButton(tr("+ si&ze"), QStringLiteral("addSize"));
    connect(add, &QPushButton::clicked, this, &SizeRows::addSize);
    rebuild({});
}

std::vector<BlankSize> SizeRows::kept() const {
    const auto* material = m_presenter.material();
    return material ? material->sizes : std::vector<BlankSize>();
}

void SizeRows::load() {
    const auto sizes = kept();
    const bool isAnother = m_of != m_presenter.currentId();
    m_of = m_presenter.currentId();
    if (isAnother) setRefusal({});
    if (isAnother || sizes.size() != m_rows.size()) return rebuild(sizes);
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const auto& row = m_rows[i];
        if (!row.name->isDirty()) row.name->setRaw(QString::fromStdString(sizes[i].name));
        if (!row.extraCost->isDirty()) row.extraCost->setValue(sizes[i].extraCost);
        if (!row.surcharge->isDirty()) row.surcharge->setValue(sizes[i].surcharge);
    }
}

void SizeRows::rebuild(const std::vector<BlankSize>& sizes) {
    m_rows.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(4, 1);
    if (!sizes.empty()) grid()->addHeads({tr("size"), tr("costs more"), tr("customer pays more")});
    std::vector<desk::TypedField*> fields;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        addRow(static_cast<int>(i));
        const auto& row = m_rows.back();
        row.name->setRaw(QString::fromStdString(sizes[i].name));
        row.extraCost->setValue(sizes[i].extraCost);
        row.surcharge->setValue(sizes[i].surcharge);
        fields.insert(fields.end(), {row.name, row.extraCost, row.surcharge});
    }
    problem()->watch(fields);
    grid()->finish();
}

void SizeRows::addRow(int at) {
    auto* body = grid()->body();
    const Row row{new desk::WordField(m_formatter, tr("Give the size a name, such as 2XL."), body),
                  new desk::MoneyField(m_formatter, body), new desk::MoneyField(m_formatter, body)};
    const auto put = [&](desk::TypedField* field, int column, const char* object, const QString& words) {
        field->setObjectName(QStringLiteral("%1%2").arg(QLatin1String(object)).arg(at));
        field->setAccessibleName(words.arg(at + 1));
        grid()->cells()->addWidget(field, at + 1, column);
        connect(field, &desk::TypedField::committed, this, &SizeRows::committed);
    };
    put(row.name, 0, "sizeName", tr("name of size %1"));
    put(row.extraCost, 1, "sizeCost", tr("what size %1 costs more"));
    put(row.surcharge, 2, "sizeSurcharge", tr("what the customer pays more for size %1"));
    desk::standsFor(*row.name, fieldOf<&BlankSize::name>());
    desk::standsFor(*row.extraCost, fieldOf<&BlankSize::extraCost>());
    desk::standsFor(*row.surcharge, fieldOf<&BlankSize::surcharge>());
    auto* remove = grid()->addRemove(at + 1, 3, tr("Take size %1 out").arg(at + 1));
    connect(remove, &QToolButton::clicked, this, [this, at] {
        auto sizes = kept();
        if (at < static_cast<int>(sizes.size())) sizes.erase(sizes.begin() + at);
        save(sizes);
    });
    m_rows.push_back(row);
}

/// The next of the usual sizes (common practice, no source); after them a number. Its name is gone into.
void SizeRows::addSize() {
    auto sizes = kept();
    const auto isTaken = [&](const std::string& name) {
        return std::ranges::find(sizes, name, &BlankSize::name) != sizes.end();
    };
    std::string name;
    for (const char* usual : {"S", "M", "L", "XL", "2XL", "3XL"})
        if (name.empty() && !isTaken(usual)) name = usual;
    for (int n = 4; name.empty(); ++n)
        if (const auto next = std::to_string(n) + "XL"; !isTaken(next)) name = next;
    sizes.push_back({name, {}, {}});
    save(sizes);
    if (m_rows.size() != sizes.size()) return;
    m_rows.back().name->setFocus(Qt::OtherFocusReason);
    m_rows.back().name->selectAll();
}

void SizeRows::committed() {
    std::vector<BlankSize> sizes;
    for (const auto& row : m_rows) {
        const auto cost = row.extraCost->value();
        const auto surcharge = row.surcharge->value();
        if (!cost || !surcharge || !row.name->problem().isEmpty()) return; // they stay as typed, with their sentence
        sizes.push_back({row.name->words(), *cost, *surcharge});
    }
    save(sizes);
}

void SizeRows::save(const std::vector<BlankSize>& sizes) {
    setRefusal(m_presenter.edit([&](catalogue::Material& material) { material.sizes = sizes; }));
}

} // namespace sp::supplies

#include "moc_size_rows.cpp"

// SPDX-License-Identifier: MIT
// Every field of the table that a person decides on has an input on some place of the window, and the inputs for
// numbers take what the table lets a record hold, no more and no less.
#include "app/desk/field_binding.h"
#include "core/catalogue/fields/tables.h"
#include "tests/app/demo_window.h"

#include <QAbstractItemView>
#include <QPushButton>

#include <map>
#include <set>

using namespace sp;

namespace {

namespace fields = catalogue::fields;
using fields::Sort;

const fields::Type& innermost(const fields::Type& type) { return type.inner ? innermost(*type.inner) : type; }

/// The fields that hold a value of their own, by their ids.
void collect(const fields::Object& object, std::map<std::string, const fields::Field*>& leaves) {
    for (const auto& field : object.fields) {
        const auto& type = innermost(*field.type);
        if (type.sort == Sort::Object)
            collect(type.object(), leaves);
        else
            leaves.emplace(field.id(), &field);
    }
}

class EveryField : public test::DemoWindow {
  protected:
    void look() {
        for (auto* widget : m_window->findChildren<QWidget*>()) {
            const auto ids = widget->property(desk::kFieldsProperty).toStringList();
            for (const auto& id : ids) {
                const auto leaf = leaves.find(id.toStdString());
                if (leaf == leaves.end()) continue; // a field of fields
                inputs.insert(leaf->first);
                if (leaf->second->noInput.empty() && ids.size() == 1) expectRange(*widget, *leaf->second);
            }
        }
    }

    template<class T>
    static bool expectRangeOf(const QWidget& widget, const fields::Field& field) {
        const auto* entry = dynamic_cast<const desk::ValueField<T>*>(&widget);
        if (!entry) return false;
        using Whole = fields::WholeOf<T>;
        EXPECT_EQ(entry->least(), Whole::from(field.entryRange().lowest)) << field.id();
        EXPECT_EQ(entry->most(), Whole::from(field.entryRange().highest)) << field.id();
        return true;
    }
    void expectRange(const QWidget& widget, const fields::Field& field) {
        if (&field == &fields::fieldOf<&catalogue::Rounding::step>()) return; // kept in coins, typed as money
        const bool isNumber = expectRangeOf<units::Money>(widget, field) || expectRangeOf<units::Rate>(widget, field) ||
                              expectRangeOf<units::Length>(widget, field) ||
                              expectRangeOf<units::Duration>(widget, field) ||
                              expectRangeOf<units::Count>(widget, field);
        numbers += isNumber;
    }

    std::map<std::string, const fields::Field*> leaves;
    std::set<std::string> inputs;
    int numbers = 0;
};

TEST_F(EveryField, hasAnInputOrSaysWhyNot) {
    // What is kept of how a cut file and a price list were read is learnt from these, not typed.
    for (const auto* object : {&fields::objectOf<catalogue::Shop>(), &fields::objectOf<catalogue::BenchStandards>(),
                               &fields::objectOf<catalogue::Material>(), &fields::objectOf<catalogue::Supplier>(),
                               &fields::objectOf<catalogue::Pack>(), &fields::objectOf<catalogue::Kit>(),
                               &fields::objectOf<catalogue::Design>(), &fields::objectOf<catalogue::Customer>(),
                               &fields::objectOf<catalogue::Order>()})
        collect(*object, leaves);
    orderLantern();
    look();
    auto* baseMaterial = find<QLineEdit>("onto");
    baseMaterial->setFocus(Qt::TabFocusReason);
    baseMaterial->selectAll();
    type("hoodie");
    press(Qt::Key_Return);
    look();
    for (int place = 0; place < test::kPlaceCount; ++place) {
        m_window->goTo(static_cast<program::PlaceId>(place));
        test::handleQueued();
        look();
    }
    m_window->goTo(program::PlaceId::Shop);
    find<QPushButton>("payAdd")->click(); // of its own the demo has none
    test::handleQueued();
    look();
    auto* supplies = find<QAbstractItemView>("supplies");
    for (int row = 0; row < supplies->model()->rowCount(); ++row) {
        supplies->setCurrentIndex(supplies->model()->index(row, 0));
        test::handleQueued();
        look();
    }
    EXPECT_GT(leaves.size(), 100U);
    EXPECT_GT(numbers, 50);
    for (const auto& [id, field] : leaves) {
        const bool hasInput = inputs.contains(id);
        EXPECT_NE(hasInput, !field->noInput.empty())
            << id << (hasInput ? " has an input, and the table says it has none" : " can be entered nowhere");
    }
}

} // namespace

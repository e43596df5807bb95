// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/value_fields.h"
#include "core/catalogue/fields/field.h"

#include <QVariant>

namespace sp::desk {

/// Under this property a widget keeps the ids of the fields of the table that a person enters there.
inline constexpr const char* kFieldsProperty = "fields";

/// Says that a person enters this field of the table in that widget.
inline void standsFor(QWidget& widget, const catalogue::fields::Field& field) {
    auto ids = widget.property(kFieldsProperty).toStringList();
    ids << QString::fromStdString(field.id());
    widget.setProperty(kFieldsProperty, ids);
}

/// Where a person enters this field below `root`: the first that is seen; null where there is none.
inline QWidget* entryOf(const QWidget& root, const catalogue::fields::Field& field) {
    const auto id = QString::fromStdString(field.id());
    for (auto* widget : root.findChildren<QWidget*>())
        if (widget->isVisibleTo(&root) && widget->property(kFieldsProperty).toStringList().contains(id)) return widget;
    return nullptr;
}

/// The same of a field for a number, which then takes what a record takes, no more and no less.
template<class T>
void standsFor(ValueField<T>& widget, const catalogue::fields::Field& field) {
    if constexpr (catalogue::fields::IsWhole<T>) {
        using Whole = catalogue::fields::WholeOf<T>;
        widget.setRange(Whole::from(field.entryRange().lowest), Whole::from(field.entryRange().highest));
    }
    standsFor(static_cast<QWidget&>(widget), field);
}

/// A member of a record, reached through its parts, and its row of the table:
///     kAt<&Shop::rates, &ShopRates::labourPerHour>(shop) is shop.rates.labourPerHour.
template<auto... Members>
struct At {
    template<class Record>
    auto& operator()(Record& record) const {
        return (record.*....*Members);
    }
    static const catalogue::fields::Field& field() {
        const catalogue::fields::Field* last = nullptr;
        ((last = &catalogue::fields::fieldOf<Members>()), ...);
        return *last;
    }
};
template<auto... Members>
inline constexpr At<Members...> kAt{};

} // namespace sp::desk

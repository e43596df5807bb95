// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/typed_field.h"

namespace sp::counter {

/// Tells the presenter whether the field's entry can be read. The sentence about one that cannot begins with the
/// field's name, since it is shown on the slip as well.
void noteEntry(CounterPresenter& presenter, CounterPresenter::Owner owner, const desk::TypedField& field);

/// Shows unreadable entries as they were typed in the fields inside `within`, instead of the order's values.
void restoreUnread(QWidget& within, const CounterPresenter& presenter, CounterPresenter::Owner owner);

} // namespace sp::counter

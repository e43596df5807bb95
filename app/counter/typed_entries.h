// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/typed_field.h"

namespace sp::counter {

/// Tells the presenter whether the field's entry can be read; what it says of one that cannot begins with the field's
/// name, for it is read on the slip too.
void noteEntry(CounterPresenter& presenter, CounterPresenter::Owner owner, const desk::TypedField& field);

/// Puts what was typed and could not be read back into the fields inside `within`, over what the order says.
void restoreUnread(QWidget& within, const CounterPresenter& presenter, CounterPresenter::Owner owner);

} // namespace sp::counter

// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"

class QWidget;

namespace sp::counter {

/// Puts what was typed and could not be read back into the fields inside `within`, over what the order says.
void restoreUnread(QWidget& within, const CounterPresenter& presenter, CounterPresenter::Owner owner);

} // namespace sp::counter

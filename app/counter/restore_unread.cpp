// SPDX-License-Identifier: MIT
#include "app/counter/restore_unread.h"

#include "app/desk/choice_field.h"

namespace sp::counter {

void restoreUnread(QWidget& within, const CounterPresenter& presenter, CounterPresenter::Owner owner) {
    for (auto* field : within.findChildren<desk::TypedField*>()) {
        const QString* typed = presenter.unread(owner, field->objectName());
        if (!typed) continue;
        if (auto* choice = qobject_cast<desk::ChoiceField*>(field))
            choice->setTyped(*typed);
        else
            field->setRaw(*typed);
        field->complain();
    }
}

} // namespace sp::counter

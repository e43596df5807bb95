// SPDX-License-Identifier: MIT
#include "app/counter/typed_entries.h"

#include "app/desk/choice_field.h"

namespace sp::counter {

void noteEntry(CounterPresenter& presenter, CounterPresenter::Owner owner, const desk::TypedField& field) {
    const auto problem = field.problem();
    if (problem.isEmpty()) return presenter.setProblem(owner, field.objectName(), {}, {});
    presenter.setProblem(owner, field.objectName(), QStringLiteral("%1: %2").arg(field.accessibleName(), problem),
                         field.text());
}

void restoreUnread(QWidget& within, const CounterPresenter& presenter, CounterPresenter::Owner owner) {
    for (auto* field : within.findChildren<desk::TypedField*>()) {
        const QString* typed = presenter.unread(owner, field->objectName());
        if (!typed) continue;
        if (auto* choice = qobject_cast<desk::ChoiceField*>(field))
            choice->setTyped(*typed);
        else
            field->setRaw(*typed);
        field->showError();
    }
}

} // namespace sp::counter

// SPDX-License-Identifier: MIT
#include "app/desk/problem_note.h"

#include "app/desk/typed_field.h"

namespace sp::desk {

ProblemNote::ProblemNote(QWidget* parent)
    : TextLabel({}, TextSize::Small, Role::Warn, Weight::Plain, parent) {
    setWordWrap(true);
    hide();
}

void ProblemNote::watch(const std::vector<TypedField*>& fields) {
    for (const auto& field : m_fields)
        if (field) disconnect(field, nullptr, this, nullptr);
    m_fields.assign(fields.begin(), fields.end());
    for (auto* field : fields) connect(field, &TypedField::statusChanged, this, &ProblemNote::say);
    m_refusal.clear();
    say();
}

void ProblemNote::setRefusal(const QString& sentence) {
    m_refusal = sentence;
    say();
}

void ProblemNote::say() {
    QString sentence;
    for (const auto& field : m_fields) {
        if (!field) continue;
        const auto problem = field->shownProblem();
        field->setAccessibleDescription(problem);
        if (sentence.isEmpty() && !problem.isEmpty())
            sentence = QStringLiteral("%1: %2").arg(field->accessibleName(), problem);
    }
    if (sentence.isEmpty()) sentence = m_refusal;
    setText(sentence);
    setVisible(!sentence.isEmpty());
}

} // namespace sp::desk

#include "moc_problem_note.cpp"

// SPDX-License-Identifier: MIT
#include "db/book/undo_stack.h"

#include <utility>

namespace sp::db {

void UndoStack::push(UndoStep step) {
    m_undone.clear();
    m_done.push_back(std::move(step));
    if (m_done.size() > kMaxLength) m_done.erase(m_done.begin());
}

void UndoStack::forget(const base::Id& quote) {
    for (auto* steps : {&m_done, &m_undone}) {
        for (auto& step : *steps) std::erase_if(step.changes, [&](const auto& change) { return change.id == quote; });
        std::erase_if(*steps, [](const auto& step) { return step.changes.empty(); });
    }
}

void UndoStack::undone(UndoStep step) {
    m_done.pop_back();
    m_undone.push_back(std::move(step));
}

void UndoStack::redone(UndoStep step) {
    m_undone.pop_back();
    m_done.push_back(std::move(step));
}

} // namespace sp::db

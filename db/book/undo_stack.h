// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"
#include "db/stores/change_log.h"

#include <optional>
#include <vector>

namespace sp::db {

/// One action as a person sees it: what it is called, and what it changed, in order.
struct UndoStep {
    std::optional<base::Message> what;
    std::vector<stores::Change> changes;
};

/// What can be undone and redone since the book was opened here. Holds no more than `kMaxLength` steps.
class UndoStack {
  public:
    static constexpr std::size_t kMaxLength = 1'000;

    /// A new action; what had been undone can no longer be redone.
    void push(UndoStep step);
    /// A given quote is never undone: takes everything about it out.
    void forget(const base::Id& quote);

    bool canUndo() const { return !m_done.empty(); }
    bool canRedo() const { return !m_undone.empty(); }
    const UndoStep& toUndo() const { return m_done.back(); }
    const UndoStep& toRedo() const { return m_undone.back(); }
    /// The topmost step was undone or redone, and now reads like this.
    void undone(UndoStep step);
    void redone(UndoStep step);

  private:
    std::vector<UndoStep> m_done;
    std::vector<UndoStep> m_undone;
};

} // namespace sp::db

// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/inside.h"
#include "db/db_error.h"
#include "db/sqlite/transaction.h"

namespace sp::db {

/// The action that a call belongs to, and its transaction: its own, or the one of the `together` around it. Left
/// without `finish`, all of its work is undone in the file and forgotten here.
class Book::Inside::Scope {
  public:
    explicit Scope(Inside& book)
        : m_book(book)
        , m_transaction(std::in_place, begun(book)) {
        if (book.depth == 0) book.action = Action{.command = book.newId(), .at = book.momentNow()};
        m_changes = book.action->step.changes.size();
        m_steps = book.action->steps;
        m_what = book.action->step.what;
        ++book.depth;
    }
    ~Scope() {
        m_transaction.reset();
        --m_book.depth;
        if (!m_isFinished && m_book.action) {
            m_book.action->step.changes.resize(m_changes);
            m_book.action->steps = m_steps;
            m_book.action->step.what = m_what;
        }
        if (m_book.depth > 0) return;
        m_book.action.reset();
        m_book.noteHowItIsLeft();
    }
    Scope(const Scope&) = delete;
    Scope& operator=(const Scope&) = delete;

    void finish() {
        try {
            m_transaction->commit();
        } catch (const DbError&) {
            if (m_book.depth > 1 || !m_book.stands(m_book.action->command)) throw;
        }
        m_isFinished = true;
        if (m_book.depth > 1) return;
        auto& done = *m_book.action;
        if (done.isUndone && !done.step.changes.empty()) m_book.undoStack.push(std::move(done.step));
        for (const auto& quote : done.issued) m_book.undoStack.forget(quote);
    }

  private:
    static sqlite::Connection& begun(Inside& book) {
        auto& connection = *book.opened.connection;
        if (book.opened.readOnlyBecause) throw DbError(*book.opened.readOnlyBecause);
        if (book.depth == 0) book.throwIfDisplaced();
        // A full disk makes SQLite roll back the whole transaction by itself; what follows must not begin another.
        if (book.depth > 0 && !connection.isInTransaction())
            throwError(Fault::ActionGivenUp, connection.file().string());
        return connection;
    }

    Inside& m_book;
    std::optional<sqlite::Transaction> m_transaction;
    std::size_t m_changes = 0;
    std::int64_t m_steps = 0;
    std::optional<base::Message> m_what;
    bool m_isFinished = false;
};

template<class Work>
auto Book::Inside::write(Work&& work) -> base::Result<std::invoke_result_t<Work>> {
    return catchToResult([&] {
        Scope scope(*this);
        if constexpr (std::is_void_v<std::invoke_result_t<Work>>) {
            work();
            scope.finish();
        } else {
            auto value = work();
            scope.finish();
            return value;
        }
    });
}

template<class Work>
auto Book::Inside::read(Work&& work) -> base::Result<std::invoke_result_t<Work>> {
    return catchToResult([&] {
        const sqlite::ReadTransaction reading(*opened.connection);
        return work();
    });
}

} // namespace sp::db

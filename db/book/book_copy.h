// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "db/book/check_report.h"
#include "db/book/watch.h"

#include <filesystem>
#include <memory>

namespace sp::db {

namespace sqlite {
class Connection;
}

/// A copy of an open book in a new file, made a piece at a time, so that whoever works with the book need not wait:
/// `step` in the book's own thread, until the copy is whole, with whatever changes the book in between; then `verify`
/// in any thread, which no longer needs the book; then `commit`. Until then the file has another name, and goes with
/// this.
class BookCopy {
  public:
    /// Throws DbError: Conflict when there is something of that name, ReadOnly, Full. The connection must live until
    /// the copy is whole or gone.
    BookCopy(sqlite::Connection& source, const std::filesystem::path& target);
    ~BookCopy();
    BookCopy(const BookCopy&) = delete;
    BookCopy& operator=(const BookCopy&) = delete;

    const std::filesystem::path& target() const;

    /// Copies up to `pages` pages more (all: -1); true once it is whole. False, too, while the book is being written:
    /// try again. Errors: Full, Failed.
    base::Result<bool> step(int pages);
    /// How much of it is copied, 0 to 1.
    double share() const;
    /// Opens the whole copy and goes through everything in it as Book::check does. Errors: as there; Failed when it was
    /// stopped.
    base::Result<CheckReport> verify(const Watch& watch = {});
    /// Makes the copy durable and gives it its name, never over another file. Errors: Conflict, Full, Failed.
    base::Done commit();

  private:
    class Inside;
    std::unique_ptr<Inside> m_in;
};

} // namespace sp::db

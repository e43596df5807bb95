// SPDX-License-Identifier: MIT
#include "db/book/book_copy.h"

#include "db/book/check.h"
#include "db/book/files.h"
#include "db/book/opening.h"
#include "db/db_error.h"
#include "db/sqlite/page_copy.h"

#include <optional>

namespace sp::db {

using sqlite::Connection;

class BookCopy::Inside {
  public:
    Inside(Connection& source, const std::filesystem::path& asked)
        : target(resolvedNew(asked))
        , temp(target) {
        temp.make([&] {
            made = Connection::make(temp.file());
            copy.emplace(source, *made);
        });
    }

    bool step(int pages) {
        if (!copy) return true;
        temp.make([&] {
            if (!copy->step(pages)) return;
            copy.reset();
            made.reset();
        });
        return !copy;
    }

    std::filesystem::path target;
    TempFile temp;
    std::unique_ptr<Connection> made;
    std::optional<sqlite::PageCopy> copy; ///< until it is whole
};

BookCopy::BookCopy(Connection& source, const std::filesystem::path& target)
    : m_in(std::make_unique<Inside>(source, target)) {}
BookCopy::~BookCopy() = default;

const std::filesystem::path& BookCopy::target() const { return m_in->target; }

base::Result<bool> BookCopy::step(int pages) {
    return catchToResult([&] { return m_in->step(pages); });
}

double BookCopy::share() const { return m_in->copy ? m_in->copy->share() : 1; }

base::Result<CheckReport> BookCopy::verify(const Watch& watch) {
    return catchToResult([&] {
        CheckReport report;
        m_in->temp.make([&] {
            const auto connection = openToRead(m_in->temp.file());
            report = inspect(*connection, watch);
        });
        return report;
    });
}

base::Done BookCopy::commit() {
    return catchToResult([&] { m_in->temp.commit(); });
}

} // namespace sp::db

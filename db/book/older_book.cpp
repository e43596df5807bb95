// SPDX-License-Identifier: MIT
#include "db/book/older_book.h"

#include "db/book/check.h"
#include "db/book/opening.h"
#include "db/db_error.h"
#include "db/sqlite/transaction.h"

#include <fmt/format.h>

namespace sp::db {

namespace fs = std::filesystem;
using base::Code;
using sqlite::Connection;

namespace {

void throwIfReferencesBroken(Connection& connection) {
    auto rows = connection.query("PRAGMA foreign_key_check");
    if (!rows.step()) return;
    throwError(Fault::BrokenReference, connection.file().string(), connection.file().filename().string(),
               rows.takeAsText());
}

/// What stands beside the book under the backup's name, even a link to nothing, never stops it.
fs::path freeName(const fs::path& file, std::size_t version) {
    for (int n = 1;; ++n) {
        const auto name = fmt::format("{} before version {}{}{}", file.stem().string(), version,
                                      n == 1 ? std::string() : fmt::format(" ({})", n), file.extension().string());
        fs::path path = file.parent_path() / name;
        std::error_code ignored;
        if (!fs::exists(fs::symlink_status(path, ignored))) return path;
    }
}

void backUp(Connection& connection, const std::function<void(Connection&)>& inspect, std::size_t version) {
    for (;;) {
        try {
            return copyWhole(connection, freeName(connection.file(), version), inspect);
        } catch (const DbError& refusal) {
            // Somebody took the name meanwhile.
            if (refusal.error().code != Code::Conflict) throw;
        }
    }
}

} // namespace

int versionOf(Connection& connection) {
    auto row = connection.query("PRAGMA user_version");
    return row.step() ? static_cast<int>(row.takeInteger()) : 0;
}

void bringUpToDate(Connection& connection, std::span<const std::string_view> migrations) {
    // Inside a transaction SQLite does not heed this switch.
    connection.run("PRAGMA foreign_keys = OFF");
    // All at once, so that it is what it was or up to date, and never of a version between.
    sqlite::Transaction transaction(connection);
    for (auto version = static_cast<std::size_t>(versionOf(connection)); version < migrations.size(); ++version) {
        connection.script(std::string(migrations[version]));
        connection.script(fmt::format("PRAGMA user_version = {}", version + 1));
        throwIfReferencesBroken(connection);
    }
    transaction.commit();
    connection.settle();
}

std::unique_ptr<Connection> upToDateCopy(Connection& older, int version, std::span<const std::string_view> migrations,
                                         const fs::path& file) {
    expectSchema(older, migrations.first(static_cast<std::size_t>(version)));
    const auto copyAt = [&](sqlite::CopyPlace place) {
        auto copy = Connection::copyOf(older, place, file);
        copy->allow(kCheckBudget);
        copy->settle();
        bringUpToDate(*copy, migrations);
        copy->allow(kOpeningBudget);
        return copy;
    };
    try {
        return copyAt(sqlite::CopyPlace::TemporaryFolder);
    } catch (const DbError& refusal) {
        if (refusal.error().code != Code::Full) throw;
    }
    return copyAt(sqlite::CopyPlace::Memory);
}

std::optional<base::Error> migrate(Connection& connection, int version, std::span<const std::string_view> migrations) {
    const auto& file = connection.file();
    expectSchema(connection, migrations.first(static_cast<std::size_t>(version)));
    bool isBroken = false;
    const auto inspect = [&](Connection& copy) {
        isBroken = !sealDamage(*upToDateCopy(copy, version, migrations, file)).empty();
        if (isBroken) throwError(Fault::OlderSealBroken, file.string(), file.filename().string());
    };
    try {
        backUp(connection, inspect, migrations.size());
        connection.allow(kCheckBudget);
        bringUpToDate(connection, migrations);
        connection.allow(kOpeningBudget);
        return {};
    } catch (const DbError& refusal) {
        const auto code = refusal.error().code;
        if (isBroken) return refusal.error();
        // What fails last, when all is kept, takes nothing of it back.
        if (versionOf(connection) == static_cast<int>(migrations.size())) {
            connection.settle();
            connection.allow(kOpeningBudget);
            return {};
        }
        const auto onlyToRead = [&](Fault why) {
            return base::makeError(why, file.string(), file.filename().string());
        };
        if (code == Code::Full) return onlyToRead(Fault::OlderWithoutRoom);
        if (code == Code::ReadOnly || code == Code::Failed) return onlyToRead(Fault::OlderWithoutBackup);
        throw;
    }
}

} // namespace sp::db

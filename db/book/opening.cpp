// SPDX-License-Identifier: MIT
#include "db/book/opening.h"

#include "db/book/header.h"
#include "db/book/older_book.h"
#include "db/db_error.h"
#include "db/migrations/migrations.h"
#include "db/sqlite/digest.h"
#include "db/sqlite/page_copy.h"

#include <fmt/format.h>

#include <vector>

namespace sp::db {

namespace fs = std::filesystem;
using base::Code;
using sqlite::Access;
using sqlite::Connection;

namespace {

constexpr std::uint64_t kSmall = 2'000'000; ///< bytes that SQLite's checks go through in about 10 ms

using SchemaRow = std::array<std::string, 3>;

std::vector<SchemaRow> schemaOf(Connection& connection) {
    std::vector<SchemaRow> rows;
    auto row = connection.query("SELECT type, name, coalesce(sql, '') FROM sqlite_schema ORDER BY type, name");
    while (row.step()) {
        auto& [type, name, sql] = rows.emplace_back();
        row >> type >> name >> sql;
    }
    return rows;
}

void throwWalUnreadable(const fs::path& file, const Header& header) {
    if (!header.isWal) return;
    throwError(Fault::WrittenOtherwise, file.string(), file.filename().string());
}

std::optional<base::Error> obstacleOf(const fs::path& file, const FileFacts& facts, const FileLock& lock) {
    const std::string name = file.filename().string();
    if (!facts.share.empty()) return base::makeError(Fault::InNetworkFolder, file.string(), name, facts.share);
    if (!facts.synced.empty()) return base::makeError(Fault::InSyncedFolder, file.string(), name, facts.synced);
    if (!facts.canWrite) return base::makeError(Fault::BookNotWritable, file.string(), name);
    return lock.obstacle();
}

/// Lets SQLite roll back what a crash left in a journal. Only then is the header what it was: the journal may hold the
/// first page. Not to be called for a file that this process has open.
void rollBackJournal(const fs::path& file, Access access) {
    try {
        const auto connection = Connection::open(file, access);
        connection->allow(kCheckBudget);
        versionOf(*connection);
    } catch (const DbError& refusal) {
        // Not a book after all: the header says what it is.
        if (refusal.error().code != Code::Damaged) throw;
    }
}

/// What is only wrong about an index is not wrong about what was written.
bool isOfAnIndex(const std::string& found) {
    return found.find("missing from index ") != std::string::npos ||
           found.starts_with("wrong # of entries in index ") || found.starts_with("non-unique entry in index ");
}

} // namespace

bool hasJournal(const fs::path& file) {
    std::error_code ignored;
    return fs::exists(fs::path(file.string() + "-journal"), ignored);
}

std::string schemaDigest(Connection& connection) {
    std::string all;
    for (const auto& [type, name, sql] : schemaOf(connection)) all += fmt::format("{}\n{}\n{}\n", type, name, sql);
    return sqlite::digestOf(all).hex;
}

void expectSchema(Connection& connection, std::span<const std::string_view> migrations) {
    // As a rule the newest, as it should be; making it anew to compare takes a tenth of the start.
    if (migrations.size() == migrations::all().size() && schemaDigest(connection) == migrations::kNewestSchema) return;
    const auto model = Connection::make({});
    for (const auto& sql : migrations) model->script(std::string(sql));
    if (schemaOf(connection) == schemaOf(*model)) return;
    throwError(Fault::AlteredElsewhere, connection.file().string(), connection.file().filename().string());
}

std::vector<base::Message> structureDamage(Connection& connection, Depth depth) {
    connection.allow(kCheckBudget);
    std::vector<base::Message> damage;
    {
        auto rows = connection.query(depth == Depth::Full ? "PRAGMA integrity_check(20)" : "PRAGMA quick_check(20)");
        while (rows.step()) {
            const std::string found = rows.takeAsText();
            connection.throwIfUnread(found);
            if (found == "ok") continue;
            damage.push_back(isOfAnIndex(found) ? base::say(Note::IndexNotWhole, found)
                                                : base::say(Note::StructureNotWhole, found));
        }
    }
    auto rows = connection.query("PRAGMA foreign_key_check");
    while (rows.step() && damage.size() < 40) damage.push_back(base::say(Note::RowRefersToNothing, rows.takeAsText()));
    connection.allow(kWorkBudget);
    return damage;
}

Opened openBook(const fs::path& asked, std::span<const std::string_view> migrations) {
    const fs::path file = resolved(asked);
    const FileFacts facts = factsOf(file);
    const std::string name = file.filename().string();
    if (facts.names > 1) throwError(Fault::SecondName, file.string(), name);
    Opened opened;
    opened.lock = std::make_unique<FileLock>(file, facts.key);
    opened.readOnlyBecause = obstacleOf(file, facts, *opened.lock);
    const bool canWrite = !opened.readOnlyBecause;
    if (canWrite) removeLeftovers(file.parent_path());
    opened.wasCutShort = opened.lock->wasLeftBehind() || hasJournal(file);
    if (hasJournal(file)) rollBackJournal(file, canWrite ? Access::Inspect : Access::Read);
    const Header header = readHeader(file);
    if (!canWrite) throwWalUnreadable(file, header);

    opened.connection = Connection::open(file, canWrite ? Access::Write : Access::Read);
    opened.connection->allow(kOpeningBudget);
    opened.connection->settle();
    if (const int version = versionOf(*opened.connection); version < static_cast<int>(migrations.size())) {
        if (canWrite) opened.readOnlyBecause = migrate(*opened.connection, version, migrations);
        if (opened.readOnlyBecause) opened.connection = upToDateCopy(*opened.connection, version, migrations, file);
    }
    auto& connection = *opened.connection;
    expectSchema(connection, migrations);
    if (opened.wasCutShort || facts.size <= kSmall)
        if (const auto damage = structureDamage(connection, Depth::Quick); !damage.empty())
            throwError(Fault::StructureDamaged, file.string(), name, damage[0]);
    connection.allow(kWorkBudget);
    opened.left = stateOf(file);
    return opened;
}

std::unique_ptr<Connection> openToRead(const fs::path& asked) {
    const fs::path file = resolved(asked);
    const FileFacts facts = factsOf(file);
    const auto access = facts.canWrite ? Access::Inspect : Access::Read;
    if (!FileLock::isOpenHere(facts.key)) {
        if (hasJournal(file)) rollBackJournal(file, access);
        const Header header = readHeader(file);
        if (!facts.canWrite) throwWalUnreadable(file, header);
    }
    auto connection = Connection::open(file, access);
    connection->allow(kOpeningBudget);
    connection->settle();
    if (const int version = versionOf(*connection); version < static_cast<int>(migrations::all().size()))
        connection = upToDateCopy(*connection, version, migrations::all(), file);
    expectSchema(*connection, migrations::all());
    connection->allow(kWorkBudget);
    return connection;
}

void copyWhole(Connection& connection, const fs::path& asked, const std::function<void(Connection&)>& inspect) {
    const fs::path target = resolvedNew(asked);
    const TempFile temp(target);
    temp.make([&] {
        const auto copy = Connection::make(temp.file());
        sqlite::PageCopy(connection, *copy).finish();
    });
    temp.make([&] {
        const auto copy = Connection::open(temp.file(), Access::Read);
        copy->settle();
        if (const auto damage = structureDamage(*copy, Depth::Full); !damage.empty())
            throwError(Fault::NotCopiedWhole, connection.file().string(), connection.file().filename().string(),
                       damage[0]);
        if (inspect) inspect(*copy);
    });
    temp.commit();
}

} // namespace sp::db

// SPDX-License-Identifier: MIT
// Whether the book's file is still the one that was opened, copies of it, and what stands in a backup.
#include "db/book/action.h"
#include "db/book/check.h"
#include "db/book/opening.h"

#include <unordered_map>

namespace sp::db {

namespace fs = std::filesystem;
using base::Done;
using base::Result;

namespace {

constexpr std::int64_t kAllQuotes = 10'000'000;

BookMark markIn(Stores& stores) { return {identityOf(stores.log), stores.jobs.count(), stores.log.newestPlace()}; }

} // namespace

std::optional<base::Error> Book::Inside::displaced() const {
    const auto say = [&](Fault fault) { return base::makeError(fault, file().string(), file().filename().string()); };
    if (!opened.left) return std::nullopt;
    const auto now = stateOf(file());
    if (!now) return say(Fault::BookGone);
    if (now->key != opened.left->key) return say(Fault::BookReplaced);
    // Whoever holds a book that can only be read here may write it.
    const bool isAsLeft =
        opened.isToBeRolledBack || (now->size == opened.left->size && now->written == opened.left->written);
    return opened.readOnlyBecause || isAsLeft ? std::nullopt : std::optional(say(Fault::BookOverwritten));
}

void Book::Inside::noteHowItIsLeft() {
    opened.left = stateOf(file());
    opened.isToBeRolledBack = hasJournal(file());
}

void Book::Inside::throwIfDisplaced() {
    if (auto why = displaced()) {
        opened.readOnlyBecause = why;
        throw DbError(*why);
    }
}

bool Book::Inside::stands(const base::Id& command) {
    auto& connection = *opened.connection;
    if (connection.isInTransaction()) {
        connection.run("ROLLBACK");
        return false;
    }
    const auto isThere = catchToResult([&] { return stores.log.has(command); });
    if (!isThere) {
        isUnsettled = true;
        throwError(Fault::MayBeDone, file().string(), file().filename().string());
    }
    if (!*isThere) return false;
    // The change is in the file; what failed is to make the folder forget the journal, by which it would be taken back
    // after a power cut.
    isUnsettled = true;
    if (!syncFolderOf(file())) throwError(Fault::MayBeDone, file().string(), file().filename().string());
    isUnsettled = false;
    return true;
}

std::optional<base::Error> Book::notice() {
    auto why = m_in->displaced();
    if (why && !m_in->opened.readOnlyBecause) m_in->opened.readOnlyBecause = why;
    return why;
}

const std::optional<std::string>& Book::cutShortAfter() const { return m_in->cutShortAfter; }

Done Book::copyTo(const fs::path& target) {
    const auto copy = startCopy(target);
    if (!copy) return base::fail(copy.error());
    const auto whole = (*copy)->step(-1);
    if (!whole) return base::fail(whole.error());
    return catchToResult([&] {
        const auto name = file().filename().string();
        if (!*whole) throwError(Fault::UsedElsewhere, file().string(), name);
        // Of a book whose seals are broken a copy is worth the more; of a torn one it would be none.
        for (const auto& found : valueOrThrow((*copy)->verify()).damage)
            if (found.id == idOf(Note::StructureNotWhole))
                throwError(Fault::NotCopiedWhole, file().string(), name, found);
        valueOrThrow((*copy)->commit());
    });
}

Result<std::unique_ptr<BookCopy>> Book::startCopy(const fs::path& target) {
    return catchToResult([&] {
        if (m_in->depth > 0) throwError(Fault::CopyInAction, target.string());
        return std::make_unique<BookCopy>(*m_in->opened.connection, target);
    });
}

Result<BookMark> Book::mark() {
    return m_in->read([&] { return markIn(m_in->stores); });
}

Result<BookMark> Book::markOf(const fs::path& file) {
    return catchToResult([&] {
        const auto connection = openToRead(file);
        Stores stores(*connection);
        return markIn(stores);
    });
}

Result<std::vector<QuoteSummary>> Book::quotesIn(const fs::path& file, std::int64_t limit) {
    return catchToResult([&] {
        const auto connection = openToRead(file);
        Stores stores(*connection);
        return stores.jobs.list(limit);
    });
}

Result<Lost> Book::lostIn(const fs::path& backup) {
    return m_in->read([&] {
        std::unordered_map<base::Id, std::string> kept;
        Lost lost;
        {
            const auto connection = openToRead(backup);
            Stores stores(*connection);
            for (auto& quote : stores.jobs.list(kAllQuotes)) kept.emplace(quote.id, std::move(quote.number));
            lost.changes = m_in->stores.log.newestPlace() - stores.log.newestPlace();
        }
        for (auto& quote : m_in->stores.jobs.list(kAllQuotes)) {
            const auto there = kept.find(quote.id);
            if (there == kept.end() || there->second != quote.number) lost.quotes.push_back(std::move(quote));
        }
        return lost;
    });
}

Done Book::restore(const fs::path& backup, const fs::path& target, const Watch& watch) {
    return catchToResult([&] {
        const auto connection = openToRead(backup);
        BookCopy copy(*connection, target);
        if (!valueOrThrow(copy.step(-1))) throwError(Fault::UsedElsewhere, backup.string(), backup.filename().string());
        const auto report = valueOrThrow(copy.verify(watch));
        if (!report.damage.empty()) throwError(Fault::BackupDamaged, backup.string(), backup.filename().string());
        valueOrThrow(copy.commit());
    });
}

} // namespace sp::db

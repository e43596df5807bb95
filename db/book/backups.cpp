// SPDX-License-Identifier: MIT
#include "db/book/backups.h"

#include "core/units/date.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <optional>
#include <set>
#include <tuple>

namespace sp::db {

namespace fs = std::filesystem;
using std::chrono::sys_days;
using std::chrono::sys_seconds;

namespace {

constexpr std::string_view kSuffix = ".jobbook";
constexpr std::string_view kJobs = " jobs ";
constexpr std::size_t kStamp = std::string_view("2026-11-30T140200Z").size();
constexpr std::size_t kLast = 10;
constexpr std::chrono::days kDaily{14};
constexpr std::chrono::days kWeekly{61};

std::optional<std::int64_t> numberIn(std::string_view text) {
    std::int64_t number = 0;
    const auto* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, number);
    if (text.empty() || read.ptr != end || read.ec != std::errc() || number < 0) return std::nullopt;
    return number;
}

/// "2026-11-30T140200Z"
std::optional<sys_seconds> momentIn(std::string_view text) {
    if (text.size() != kStamp || text[10] != 'T' || text.back() != 'Z') return std::nullopt;
    const auto day = units::Date::parse(text.substr(0, 10));
    const auto hours = numberIn(text.substr(11, 2));
    const auto minutes = numberIn(text.substr(13, 2));
    const auto seconds = numberIn(text.substr(15, 2));
    if (!day || !hours || !minutes || !seconds) return std::nullopt;
    return sys_days(day->days()) + std::chrono::hours(*hours) + std::chrono::minutes(*minutes) +
           std::chrono::seconds(*seconds);
}

/// Takes what stands behind the last `mark` off `text`.
std::optional<std::string_view> takeLast(std::string_view& text, std::string_view mark) {
    const auto at = text.rfind(mark);
    if (at == std::string_view::npos) return std::nullopt;
    const auto taken = text.substr(at + mark.size());
    text = text.substr(0, at);
    return taken;
}

std::optional<Backup> backupNamed(const fs::path& file) {
    const auto name = file.filename().string();
    std::string_view rest(name);
    if (!rest.ends_with(kSuffix)) return std::nullopt;
    rest.remove_suffix(kSuffix.size());
    const auto change = takeLast(rest, kJobs);
    const auto jobs = takeLast(rest, " ");
    const auto stamp = takeLast(rest, " ");
    if (!change || !jobs || !stamp || rest.empty()) return std::nullopt;
    const auto changes = numberIn(*change);
    const auto count = numberIn(*jobs);
    const auto moment = momentIn(*stamp);
    if (!changes || !count || !moment) return std::nullopt;
    return Backup{file, std::string(rest), *moment, *count, *changes};
}

bool isNewer(const Backup& one, const Backup& other) {
    return std::tie(one.madeAt, one.change, one.file) > std::tie(other.madeAt, other.change, other.file);
}

/// The Monday of a day's week.
sys_days weekOf(sys_days day) { return day - (std::chrono::weekday(day) - std::chrono::Monday); }

} // namespace

fs::path backupFolder(const fs::path& root, std::string_view book, const BookMark& mark) {
    std::error_code error;
    const auto end = " " + mark.identity;
    for (fs::directory_iterator entry(root, error), last; !error && entry != last; entry.increment(error))
        if (entry->path().filename().string().ends_with(end)) return entry->path();
    return root / (std::string(book) + end);
}

std::string backupName(std::string_view book, const BookMark& mark, sys_seconds now) {
    const auto day = std::chrono::floor<std::chrono::days>(now);
    const std::chrono::hh_mm_ss time(now - day);
    return fmt::format("{} {}T{:02}{:02}{:02}Z {}{}{}{}", book, units::Date::fromDays(day).iso(), time.hours().count(),
                       time.minutes().count(), time.seconds().count(), mark.jobs, kJobs, mark.change, kSuffix);
}

std::vector<Backup> backupsIn(const fs::path& folder) {
    std::vector<Backup> found;
    std::error_code error;
    for (fs::directory_iterator entry(folder, error), last; !error && entry != last; entry.increment(error)) {
        std::error_code ignored;
        if (!fs::is_regular_file(entry->symlink_status(ignored))) continue;
        if (auto backup = backupNamed(entry->path())) found.push_back(std::move(*backup));
    }
    std::ranges::sort(found, isNewer);
    return found;
}

std::vector<Backup> allBackupsIn(const fs::path& root) {
    std::vector<Backup> found;
    std::error_code error;
    for (fs::directory_iterator entry(root, error), last; !error && entry != last; entry.increment(error))
        for (auto& backup : backupsIn(entry->path())) found.push_back(std::move(backup));
    std::ranges::sort(found, isNewer);
    return found;
}

std::vector<Backup> outdatedAmong(const std::vector<Backup>& backups, sys_seconds now) {
    std::vector<Backup> outdated;
    std::size_t last = 0;
    std::set<sys_days> days;
    std::set<sys_days> weeks;
    for (const auto& backup : backups) {
        if (backup.madeAt > now) continue;
        const auto day = std::chrono::floor<std::chrono::days>(backup.madeAt);
        const auto age = now - backup.madeAt;
        const bool isLast = last++ < kLast;
        const bool isOfDay = age <= kDaily && days.insert(day).second;
        const bool isOfWeek = age <= kWeekly && weeks.insert(weekOf(day)).second;
        if (!isLast && !isOfDay && !isOfWeek) outdated.push_back(backup);
    }
    return outdated;
}

std::vector<Leaving> leavingOf(const std::vector<Backup>& backups, sys_seconds now) {
    constexpr int kLooked = 366;
    std::vector<Leaving> leaving;
    for (const auto& backup : backups) leaving.push_back({backup, std::nullopt});
    auto there = backups;
    for (int day = 1; day <= kLooked; ++day) {
        const auto then = now + std::chrono::days(day);
        there.insert(there.begin(), Backup{{}, {}, then, 0, 0});
        for (const auto& gone : outdatedAmong(there, then)) {
            std::erase_if(there, [&](const Backup& one) { return one.file == gone.file && one.madeAt == gone.madeAt; });
            for (auto& one : leaving)
                if (one.backup.file == gone.file) one.day = std::chrono::floor<std::chrono::days>(then);
        }
    }
    return leaving;
}

bool BackupPlaces::isSecondAway() const {
    std::error_code error;
    return !second.empty() && !fs::is_directory(second, error);
}

std::vector<Leaving> copiesOf(const fs::path& book, const BackupPlaces& places, const BookMark& mark, sys_seconds now) {
    const auto below = [&](const fs::path& root) {
        return root.empty() ? std::vector<Leaving>{}
                            : leavingOf(backupsIn(backupFolder(root, book.stem().string(), mark)), now);
    };
    auto copies = below(places.root);
    for (auto& copy : below(places.second)) {
        copy.isInSecondPlace = true;
        copies.push_back(std::move(copy));
    }
    const auto beside = book.stem().string() + " before version ";
    std::error_code error;
    for (fs::directory_iterator entry(book.parent_path(), error), last; !error && entry != last; entry.increment(error))
        if (entry->path().filename().string().starts_with(beside))
            copies.push_back({Backup{entry->path(), book.stem().string(), {}, 0, 0}, std::nullopt});
    return copies;
}

void removeBackups(const std::vector<Backup>& backups) {
    for (const auto& backup : backups) {
        std::error_code ignored;
        fs::remove(backup.file, ignored);
    }
}

} // namespace sp::db

// SPDX-License-Identifier: MIT
// What was done stays done: after a power cut at any instant the book opens, holds together, and holds all that was
// acknowledged; what was under way is there whole or not at all. On a disk that keeps what it was told to sync; what it
// may do with the rest is said in tests/support/weak_disk.h.
#include "tests/db/disk_sessions.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <optional>
#include <unordered_map>
#include <unordered_set>

namespace {

using namespace sp;
using test::DiskSession;
using test::Files;
using test::PowerCut;
using test::Seat;
using test::WatchedDisk;

/// All books of a folder after a step that was acknowledged.
struct Milestone {
    std::size_t operations; ///< that were done by then
    std::string step;
    Files books;
};

struct Recording {
    Files before;
    std::vector<test::DiskOperation> operations;
    std::vector<Milestone> milestones; ///< the first is how it began
};

Files booksIn(const Files& files) {
    Files books;
    for (const auto& [name, bytes] : files)
        if (name.ends_with(".jobbook") && name[0] != '.') books[name] = bytes;
    return books;
}

Recording recorded(const DiskSession& session) {
    const test::TempFolder folder;
    Seat seat(folder.path());
    session.prepare(seat);
    Recording recording;
    WatchedDisk disk(folder.path(), WatchedDisk::Keep::Operations);
    recording.before = disk.before();
    recording.milestones.push_back({0, "before", booksIn(disk.before())});
    for (const auto& step : session.steps) {
        const auto done = step.run(seat);
        EXPECT_TRUE(done) << step.name << ": " << (done ? "" : test::described(done.error()));
        recording.milestones.push_back({disk.operations().size(), step.name, booksIn(test::filesIn(folder.path()))});
    }
    recording.operations = disk.operations();
    return recording;
}

/// Two numbers of a text, so that a picture of a disk is known again.
std::string markOf(const Files& files) {
    std::string all;
    for (const auto& [name, bytes] : files) {
        all += name + '\n';
        all += std::to_string(bytes.size()) + ' ' + std::to_string(std::hash<std::string>()(bytes)) + '\n';
    }
    return all;
}

/// Opens what a disk holds after a cut and says what is wrong with it; nothing when all is as it must be.
class Judge {
  public:
    explicit Judge(const Recording& recording)
        : m_recording(recording) {}

    std::string verdict(const Files& files, std::size_t operation) {
        ++cuts;
        const auto step = stepAt(operation);
        const auto mark = std::to_string(step) + '\n' + markOf(files);
        if (const auto known = m_known.find(mark); known != m_known.end()) return known->second;
        ++pictures;
        test::putFiles(m_folder.path(), files);
        const WatchedDisk disk(m_folder.path());
        return m_known[mark] = verdictOfFolder(step);
    }
    /// What opening the book does to the disk.
    std::vector<test::DiskOperation> openingOf(const Files& files) {
        test::putFiles(m_folder.path(), files);
        WatchedDisk disk(m_folder.path(), WatchedDisk::Keep::Operations);
        Seat seat(m_folder.path());
        static_cast<void>(seat.open());
        seat.book.reset();
        return disk.operations();
    }

    std::size_t cuts = 0;
    std::size_t pictures = 0; ///< pictures of a disk that were all different

  private:
    /// The milestone that was reached last.
    std::size_t stepAt(std::size_t operation) const {
        const auto& milestones = m_recording.milestones;
        std::size_t step = 0;
        while (step + 1 < milestones.size() && milestones[step + 1].operations <= operation) ++step;
        return step;
    }
    std::string verdictOfFolder(std::size_t step) {
        const auto& reached = m_recording.milestones[step];
        const auto& next = m_recording.milestones[std::min(step + 1, m_recording.milestones.size() - 1)];
        const auto where = "after \"" + reached.step + "\", in \"" + next.step + "\": ";
        for (const auto& [name, ignored] : reached.books)
            if (!std::filesystem::exists(m_folder / name)) return where + name + " is gone";
        for (const auto& [name, bytes] : booksIn(test::filesIn(m_folder.path()))) {
            // A copy from before a migration stays what it is; there may be more of them than one.
            if (name.find(" before version ") != std::string::npos) {
                const auto& older = m_recording.before.at("Stone Bench.jobbook");
                if (contentsOf(bytes) != contentsOf(older)) return where + name + " is not what the book was";
                continue;
            }
            const auto wrong = verdictOfBook(name, reached, next);
            if (!wrong.empty()) return where + name + " " + wrong;
        }
        return {};
    }
    std::string verdictOfBook(const std::string& name, const Milestone& reached, const Milestone& next) {
        const auto file = m_folder / name;
        {
            Seat seat(m_folder.path());
            seat.file = file;
            if (const auto opened = seat.open(); !opened) return "does not open: " + test::described(opened.error());
        }
        const auto bytes = test::bytesOf(file);
        if (const auto& damage = damageOf(file, bytes); !damage.empty()) return "is damaged: " + damage;
        const auto& contents = contentsOf(bytes);
        bool isExpected = false;
        for (const auto* milestone : {&reached, &next}) {
            const auto there = milestone->books.find(name);
            isExpected = isExpected || (there != milestone->books.end() && contents == openedContents(there->second));
        }
        return isExpected ? "" : "is neither as it was acknowledged nor as the step leaves it";
    }
    /// An older book is brought up to date by opening it.
    const std::string& openedContents(const std::string& bytes) {
        auto& contents = m_openedContents[std::hash<std::string>()(bytes)];
        if (!contents.empty()) return contents;
        const test::TempFolder folder;
        Seat seat(folder.path());
        test::writeBytes(seat.file, bytes);
        const auto opened = seat.open();
        EXPECT_TRUE(opened);
        seat.book.reset();
        return contents = test::contentsOf(test::bytesOf(seat.file));
    }
    const std::string& contentsOf(const std::string& bytes) {
        auto& contents = m_contents[std::hash<std::string>()(bytes)];
        if (contents.empty()) contents = test::contentsOf(bytes);
        return contents;
    }
    const std::string& damageOf(const std::filesystem::path& file, const std::string& bytes) {
        const auto mark = std::hash<std::string>()(bytes);
        if (const auto known = m_damage.find(mark); known != m_damage.end()) return known->second;
        const auto report = db::Book::check(file);
        auto& damage = m_damage[mark];
        if (!report) damage = describe(report.error());
        if (report)
            for (const auto& found : test::described(report->damage)) damage += found + "; ";
        return damage;
    }

    const Recording& m_recording;
    test::TempFolder m_folder;
    std::unordered_map<std::string, std::string> m_known;
    std::unordered_map<std::size_t, std::string> m_damage;
    std::unordered_map<std::size_t, std::string> m_contents;
    std::unordered_map<std::size_t, std::string> m_openedContents;
};

/// How often the power goes in a session, spread evenly over what is done in it.
std::size_t cutsOf(const DiskSession& session) {
    const auto cuts = static_cast<std::size_t>(test::roundsOr("STONEPENNY_CUTS", 24));
    return session.isLong ? std::max<std::size_t>(6, cuts / 20) : cuts;
}

constexpr unsigned kStacked =
    4; ///< one of so many cuts that leave a journal is followed by one while it is rolled back

class PowerCutTest : public testing::TestWithParam<DiskSession> {
  protected:
    void SetUp() override { random.seed(test::searchSeed("STONEPENNY_CUTS")); }
    PowerCut::Damage someDamage() { return static_cast<PowerCut::Damage>(random() % PowerCut::kDamages); }

    std::mt19937_64 random;
};

TEST_P(PowerCutTest, losesNothingThatWasAcknowledged) {
    const auto recording = recorded(GetParam());
    ASSERT_FALSE(HasFailure());
    Judge judge(recording);
    const auto cuts = cutsOf(GetParam());
    const auto places = recording.operations.size() + 1;
    std::size_t stacked = 0;
    PowerCut disk(recording.before, recording.operations);
    for (std::size_t cut = 0; cut < cuts; ++cut) {
        // With fewer cuts than places, those between two of them are drawn by chance.
        const auto from = cut * places / cuts;
        const auto next = (cut + 1) * places / cuts;
        const auto place = next > from + 1 ? from + random() % (next - from) : from;
        while (disk.at() < place) disk.advance();
        const auto damage = someDamage();
        const auto files = disk.files(damage, random);
        ASSERT_EQ(judge.verdict(files, disk.at()), "")
            << "cut before operation " << disk.at() << ", damage " << static_cast<int>(damage);
        if (!files.contains("Stone Bench.jobbook-journal") || random() % kStacked != 0) continue;
        const auto opening = judge.openingOf(files);
        PowerCut again(files, opening);
        for (auto steps = random() % (opening.size() + 1); steps > 0; --steps) again.advance();
        ASSERT_EQ(judge.verdict(again.files(someDamage(), random), disk.at()), "")
            << "cut before operation " << disk.at() << ", again before " << again.at() << " of opening";
        ++stacked;
    }
    std::cout << GetParam().name << ": " << recording.operations.size() << " operations, " << judge.cuts
              << " power cuts, " << stacked << " of them while opening after another; " << judge.pictures
              << " different disks opened; 0 lost, 0 damaged\n";
}

INSTANTIATE_TEST_SUITE_P(Sessions, PowerCutTest, testing::ValuesIn(test::diskSessions()), [](const auto& row) {
    auto name = row.param.name;
    std::ranges::replace(name, ' ', '_');
    return name;
});

// A migrated book is never there without the copy of what it was.
TEST(PowerCutMigration, hasItsBackupBeforeTheBookChanges) {
    std::mt19937_64 random(test::searchSeed("STONEPENNY_CUTS"));
    int migrated = 0;
    for (const auto& session : test::diskSessions()) {
        if (!session.name.starts_with("migration")) continue;
        const auto recording = recorded(session);
        const auto& older = recording.before.at("Stone Bench.jobbook");
        const auto contents = test::contentsOf(older);
        std::string sound; ///< a backup that holds just that
        for (PowerCut disk(recording.before, recording.operations); disk.at() < disk.size(); disk.advance()) {
            const auto files = disk.files(PowerCut::Damage::Subset, random);
            // Where a journal is there the book may still become what it was.
            if (files.contains("Stone Bench.jobbook-journal") || files.at("Stone Bench.jobbook") == older) continue;
            ++migrated;
            const auto backup = std::ranges::find_if(
                files, [](const auto& one) { return one.first.starts_with("Stone Bench before version"); });
            ASSERT_NE(backup, files.end()) << session.name << ", operation " << disk.at();
            if (backup->second == sound) continue;
            ASSERT_EQ(test::contentsOf(backup->second), contents) << session.name << ", operation " << disk.at();
            sound = backup->second;
        }
    }
    EXPECT_GT(migrated, 0);
}

// ----------------------------------------------------------------------------------------------------- the controls

/// Whether cuts of this recording, on a disk that lies so, are seen to have lost or damaged something.
bool isHarmSeen(const Recording& recording, PowerCut::Lie lie, std::mt19937_64& random) {
    Judge judge(recording);
    for (PowerCut disk(recording.before, recording.operations, lie);; disk.advance()) {
        for (int cut = 0; cut < PowerCut::kDamages; ++cut) {
            const auto verdict = judge.verdict(disk.files(static_cast<PowerCut::Damage>(cut), random), disk.at());
            if (verdict.empty()) continue;
            std::cout << "cut " << judge.cuts << ": " << verdict << '\n';
            return true;
        }
        if (disk.at() == disk.size()) return false;
    }
}

/// A writer beside the program, with less care.
Recording recordedPlainly(const std::string& pragma) {
    const test::TempFolder folder;
    Seat seat(folder.path());
    seat.stock();
    seat.book.reset();
    Recording recording;
    WatchedDisk disk(folder.path(), WatchedDisk::Keep::Operations);
    recording.before = disk.before();
    recording.milestones.push_back({0, "before", booksIn(disk.before())});
    test::writePlainly(seat.file, pragma, [&] {
        recording.milestones.push_back({disk.operations().size(), "write", booksIn(test::filesIn(folder.path()))});
    });
    recording.operations = disk.operations();
    return recording;
}

/// Whether cuts of this recording lost something of the contents; a check would only say that rows were changed behind
/// the program's back.
bool isLost(const Recording& recording, std::mt19937_64& random) {
    const test::TempFolder folder;
    const WatchedDisk quick(folder.path());
    const auto file = folder / "Stone Bench.jobbook";
    std::vector<std::string> contents;
    for (const auto& milestone : recording.milestones)
        contents.push_back(test::contentsOf(milestone.books.at("Stone Bench.jobbook")));
    for (PowerCut disk(recording.before, recording.operations);; disk.advance()) {
        std::size_t step = 0;
        while (step + 1 < contents.size() && recording.milestones[step + 1].operations <= disk.at()) ++step;
        for (int cut = 0; cut < 3; ++cut) {
            const auto damage = static_cast<PowerCut::Damage>(random() % PowerCut::kDamages);
            test::putFiles(folder.path(), disk.files(damage, random));
            test::rollBackPlainly(file);
            const auto left = test::contentsOf(test::bytesOf(file));
            if (left != contents[step] && left != contents[std::min(step + 1, contents.size() - 1)]) return true;
        }
        if (disk.at() == disk.size()) return false;
    }
}

TEST(PowerCutControl, seesADiskThatOnlyPretendsToSync) {
    std::mt19937_64 random(test::searchSeed("STONEPENNY_CUTS"));
    const auto recording = recorded(test::diskSessions()[1]);
    EXPECT_TRUE(isHarmSeen(recording, PowerCut::Lie::OfFiles, random));
    EXPECT_TRUE(isHarmSeen(recording, PowerCut::Lie::OfFolders, random));
}

// sqlite.org/pragma.html#pragma_synchronous: OFF hands writes to the system and goes on; FULL does not sync the folder
// after a journal was removed, which EXTRA does.
TEST(PowerCutControl, seesWhatLessCarefulSettingsLose) {
    std::mt19937_64 random(test::searchSeed("STONEPENNY_CUTS"));
    EXPECT_TRUE(isLost(recordedPlainly("PRAGMA synchronous = OFF"), random));
    EXPECT_TRUE(isLost(recordedPlainly("PRAGMA synchronous = FULL"), random));
    EXPECT_FALSE(isLost(recordedPlainly("PRAGMA synchronous = EXTRA"), random));
}

} // namespace

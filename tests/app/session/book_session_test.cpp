// SPDX-License-Identifier: MIT
#include "app/demo/demo_book.h"
#include "app/session/book_session.h"
#include "app/words/words.h"
#include "db/messages.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <string>

using namespace sp;

namespace {

/// Writes over every place of the file that holds `from`, as a failing disk would, and says so in the header's
/// change counter (SQLite file format, 1.3.7), so that pages in memory are read again.
void alter(const std::filesystem::path& file, std::string_view from, std::string_view to) {
    std::fstream bytes(file, std::ios::in | std::ios::out | std::ios::binary);
    const std::string all{std::istreambuf_iterator<char>(bytes), {}};
    auto at = all.find(from);
    ASSERT_NE(at, std::string::npos) << from;
    ASSERT_EQ(from.size(), to.size());
    for (; at != std::string::npos; at = all.find(from, at + 1)) {
        bytes.seekp(static_cast<std::streamoff>(at));
        bytes << to;
    }
    bytes.seekp(27);
    bytes.put(static_cast<char>(all.at(27) + 1));
}

TEST(BookSession, goesByTheClockOfItsBook) {
    test::HeldClock clock;
    const test::TempFolder folder;
    auto book = demo::createDemoBook(folder / "demo.jobbook", clock.environment());
    ASSERT_TRUE(book.has_value());
    const session::BookSession session(std::move(*book));
    EXPECT_EQ(session.today().iso(), "2026-11-25");
    clock.now += std::chrono::hours(24);
    EXPECT_EQ(session.today().iso(), "2026-11-26");
    const auto before = session.timeOfDay();
    clock.now += std::chrono::minutes(5);
    EXPECT_EQ(before.secsTo(session.timeOfDay()), 300);
}

TEST(BookSession, readsAnewWhoWasErasedThoughTheFileWasNotCleaned) {
    test::HeldClock clock;
    const test::TempFolder folder;
    auto book = demo::createDemoBook(folder / "demo.jobbook", clock.environment());
    ASSERT_TRUE(book.has_value());
    session::BookSession session(std::move(*book));
    catalogue::Customer made;
    made.name = "Ottoline Quillfeather";
    const auto id = session.change([&](db::Book& open) { return open.save(made); });
    ASSERT_TRUE(id);
    ASSERT_NE(session.customer(*id), nullptr);
    int changes = 0;
    int troubles = 0;
    QObject::connect(&session, &session::BookSession::changed, [&] { ++changes; });
    QObject::connect(&session, &session::BookSession::troubled, [&] { ++troubles; });
    // A disk that is full while the pages are written anew is not to be had here: the book answers as if it were.
    const auto erased = session.attempt([&](db::Book& open) -> base::Done {
        if (auto done = open.eraseCustomer(*id); !done) return done;
        return base::fail(db::Fault::ErasedNotTidied, "demo.jobbook", "demo.jobbook", base::say(db::Note::Erasing));
    });
    EXPECT_FALSE(erased);
    EXPECT_EQ(changes, 1);
    EXPECT_EQ(troubles, 1) << "it is said";
    EXPECT_EQ(session.customer(*id), nullptr);
}

TEST(BookSession, neverSavesOverWhatItCouldNotRead) {
    test::HeldClock clock;
    test::TempFolder folder;
    const auto file = folder / "demo.jobbook";
    auto book = demo::createDemoBook(file, clock.environment());
    ASSERT_TRUE(book.has_value());
    session::BookSession session(std::move(*book));
    const auto name = session.shop().letterhead.name;
    ASSERT_FALSE(name.empty());
    ASSERT_TRUE(session.change([&](db::Book& open) { return open.save(session.shop()); })); // forgets what was read

    int troubles = 0;
    QObject::connect(&session, &session::BookSession::troubled, [&troubles](const base::Error& error) {
        ++troubles;
        const auto said = words::text(error);
        EXPECT_TRUE(said.find("damaged") != std::string::npos || said.find("another program") != std::string::npos)
            << said;
    });
    alter(file, R"("paper":"letter")", R"("paper":"leaves")");
    EXPECT_TRUE(session.shop().letterhead.name.empty());
    EXPECT_EQ(troubles, 1);
    auto blank = session.shop();
    blank.letterhead.name = "Another";
    const auto refused = session.change([&](db::Book& open) { return open.save(blank); });
    EXPECT_FALSE(refused.has_value());
    EXPECT_EQ(troubles, 2);

    alter(file, R"("paper":"leaves")", R"("paper":"letter")");
    EXPECT_EQ(session.shop().letterhead.name, name);
    auto renamed = session.shop();
    renamed.letterhead.name = "Another";
    EXPECT_FALSE(session.change([&](db::Book& open) { return open.save(renamed); }))
        << "what another program wrote to is written no more until it is opened again";
    EXPECT_EQ(session.shop().letterhead.name, name);
}

} // namespace

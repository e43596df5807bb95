// SPDX-License-Identifier: MIT
// Want of memory, at any of SQLite's requests, costs nothing but the one action that met it.
#include "tests/db/fault_run.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <algorithm>
#include <iostream>
#include <limits>

namespace {

using namespace sp;
using test::DiskSession;
using test::FaultRun;

constexpr auto kNever = std::numeric_limits<std::size_t>::max();

/// What SQLite is given its memory by while a test wants to see it refused (sqlite.org/malloc.html: memory allocators
/// can be replaced at start).
struct Memory {
    sqlite3_mem_methods real{};
    std::size_t requests = 0;
    std::size_t first = kNever; ///< that is refused
    bool isLasting = false;
    std::size_t refused = 0;
};
Memory memory;

bool isRefused() {
    const auto request = memory.requests++;
    const bool refuses = request == memory.first || (memory.isLasting && request > memory.first);
    memory.refused += refuses ? 1 : 0;
    return refuses;
}
void* give(int size) { return isRefused() ? nullptr : memory.real.xMalloc(size); }
void* giveMore(void* old, int size) { return isRefused() ? nullptr : memory.real.xRealloc(old, size); }

class MemoryFaultTest : public testing::TestWithParam<DiskSession> {
  protected:
    void SetUp() override {
        // Only while nothing of SQLite is in use can it be told.
        ASSERT_EQ(sqlite3_shutdown(), SQLITE_OK);
        ASSERT_EQ(sqlite3_config(SQLITE_CONFIG_GETMALLOC, &memory.real), SQLITE_OK);
        auto methods = memory.real;
        methods.xMalloc = give;
        methods.xRealloc = giveMore;
        ASSERT_EQ(sqlite3_config(SQLITE_CONFIG_MALLOC, &methods), SQLITE_OK);
    }
    void TearDown() override {
        heal();
        EXPECT_EQ(sqlite3_memory_used(), 0) << "SQLite was not given back all it lent";
        ASSERT_EQ(sqlite3_shutdown(), SQLITE_OK);
        ASSERT_EQ(sqlite3_config(SQLITE_CONFIG_MALLOC, &memory.real), SQLITE_OK);
    }
    static void refuse(std::size_t first, bool isLasting) {
        memory.requests = memory.refused = 0;
        memory.first = first;
        memory.isLasting = isLasting;
    }
    static void heal() { memory.first = kNever; }
};

TEST_P(MemoryFaultTest, costsNothingButTheCommandThatMeetsIt) {
    std::mt19937_64 random(test::searchSeed("STONEPENNY_MEMORY_FAULTS"));
    FaultRun session(GetParam());
    const test::WatchedDisk quick(session.folder());
    std::size_t runs = 0;
    refuse(kNever, false);
    ASSERT_EQ(session.wrongIn({[] {}, [] {}}), "");
    const auto all = memory.requests;
    ASSERT_GT(all, 1'000U);
    const auto wanted = static_cast<std::size_t>(test::roundsOr("STONEPENNY_MEMORY_FAULTS", GetParam().isLong ? 3 : 8));
    const auto step = std::max<std::size_t>(1, all / std::max<std::size_t>(1, wanted));
    for (const bool isLasting : {false, true})
        for (std::size_t request = random() % step; request < all; request += step, ++runs) {
            const auto wrong = session.wrongIn({[&] { refuse(request, isLasting); }, heal});
            ASSERT_EQ(wrong, "") << "request " << request << " of " << all << (isLasting ? " and all after it" : "");
        }
    std::cout << GetParam().name << ": " << all << " requests for memory, " << runs << " runs, " << session.refusals()
              << " commands refused and done when given again; 0 books damaged\n";
    EXPECT_GT(session.refusals(), 0U) << "no command met the want of memory: the harness is blind";
}

INSTANTIATE_TEST_SUITE_P(Sessions, MemoryFaultTest, testing::ValuesIn(test::diskSessions()), [](const auto& row) {
    auto name = row.param.name;
    std::ranges::replace(name, ' ', '_');
    return name;
});

} // namespace

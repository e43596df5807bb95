// SPDX-License-Identifier: MIT
// A full or failing disk, at any call on a file, costs nothing but the one action that met it.
#include "db/messages.h"
#include "tests/db/fault_run.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cerrno>
#include <iostream>
#include <limits>
#include <utility>

namespace {

using namespace sp;
using test::DiskSession;
using test::FaultRun;
using test::WatchedDisk;

class DiskFaultTest : public testing::TestWithParam<DiskSession> {};

TEST_P(DiskFaultTest, costsNothingButTheCommandThatMeetsIt) {
    std::mt19937_64 random(test::searchSeed("STONEPENNY_FAULTS"));
    FaultRun session(GetParam());
    std::size_t runs = 0;
    std::size_t calls = 0;
    std::size_t hits = 0; ///< runs in which that many calls were made: not every one has as many
    for (const int error : {EIO, ENOSPC})
        for (const bool isLasting : {false, true}) {
            WatchedDisk disk(session.folder());
            disk.fail({std::numeric_limits<std::size_t>::max(), false, error});
            ASSERT_EQ(session.wrongIn({[] {}, [] {}}), "");
            const auto all = disk.calls();
            // Every call when that many runs were asked for.
            const auto wanted =
                static_cast<std::size_t>(test::roundsOr("STONEPENNY_FAULTS", GetParam().isLong ? 2 : 5));
            const auto step = std::max<std::size_t>(1, all / std::max<std::size_t>(1, wanted));
            for (std::size_t call = random() % step; call < all; call += step, ++runs) {
                const auto wrong = session.wrongIn({[&] {
                                                        disk.fail({call, isLasting, error});
                                                    },
                                                    [&] { disk.heal(); }});
                ASSERT_EQ(wrong, "") << "call " << call << " of " << all << (isLasting ? " and all after it" : "")
                                     << ", errno " << error;
                hits += disk.failed() > 0 ? 1U : 0U;
            }
            calls += all;
        }
    EXPECT_GT(hits, runs / 2) << "few calls met the fault: the harness is blind";
    std::cout << GetParam().name << ": " << calls << " calls that can fail, " << runs << " runs, " << session.refusals()
              << " commands refused and done when given again; 0 books damaged\n";
}

INSTANTIATE_TEST_SUITE_P(Sessions, DiskFaultTest, testing::ValuesIn(test::diskSessions()), [](const auto& row) {
    auto name = row.param.name;
    std::ranges::replace(name, ' ', '_');
    return name;
});

// The control: a command that is done though it says that it was not is done twice, and that is seen.
TEST(DiskFaultControl, seesACommandThatIsDoneThoughItWasRefused) {
    auto sessions = test::diskSessions();
    auto& session = sessions[1];
    ASSERT_EQ(session.name, "a quote given");
    bool isCareless = false;
    const auto careless = [&](test::Seat& seat) -> base::Done {
        const auto begun = seat.book->startQuote();
        if (!begun) return base::fail(begun.error());
        if (!std::exchange(isCareless, false)) return {};
        return base::fail(db::Fault::DiskFull, seat.file.string(), seat.file.filename().string());
    };
    session.steps.insert(session.steps.end() - 1, {"a careless command", careless});
    FaultRun run(session);
    EXPECT_EQ(run.wrongIn({[] {}, [] {}}), "");
    isCareless = true;
    EXPECT_NE(run.wrongIn({[] {}, [] {}}).find("in the end not every book holds what it should"), std::string::npos);
}

} // namespace

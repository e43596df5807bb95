// SPDX-License-Identifier: MIT
//
// Who waits for supplies, by hand: the shelf is given out job by job, what is short is bought today.
#include "core/scheduling/supplies.h"

#include "tests/core/scheduling/queues.h"

#include <gtest/gtest.h>

namespace sp::scheduling {

namespace {

using queues::day;

base::Id key(unsigned char number) {
    std::array<std::uint8_t, 16> bytes{};
    bytes[15] = number;
    return base::Id::fromBytes(bytes);
}

SupplyWait shelf() {
    return {{{{key(1), 100}, {key(2), 5}}, {{key(1), 3}, {key(2), 7}, {key(3), 4}}}, queues::monday()};
}

TEST(SupplyWait, isNoneForWhatIsHere) {
    auto supplies = shelf();
    EXPECT_EQ(supplies.take({{key(1), 100}, {key(2), 5}}), std::nullopt);
    EXPECT_EQ(supplies.take({{key(1), 1}}), day(3)) << "the first took all of it";
    EXPECT_EQ(supplies.take({}), std::nullopt);
}

TEST(SupplyWait, isForWhatComesLast) {
    EXPECT_EQ(shelf().take({{key(1), 101}, {key(2), 6}, {key(3), 1}}), day(7));
    EXPECT_EQ(shelf().take({{key(1), 40}, {key(3), 1}}), day(4)) << "what is not on the shelf at all is short too";
    auto supplies = shelf();
    EXPECT_EQ(supplies.wait({{key(1), 101}}), day(3));
    EXPECT_EQ(supplies.wait({{key(1), 100}}), std::nullopt) << "to ask takes nothing";
}

TEST(SupplyWait, isNotInventedWhereNobodyIsKnownToDeliver) { EXPECT_EQ(shelf().take({{key(9), 12}}), std::nullopt); }

} // namespace

} // namespace sp::scheduling

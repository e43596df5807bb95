// SPDX-License-Identifier: MIT
#include "core/base/id.h"

#include <gtest/gtest.h>

using sp::base::Id;

namespace {

constexpr std::array<std::uint8_t, 10> kRandom{0xcc, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f};

// RFC 9562, appendix A.6: the example of a version 7 value.
TEST(Id, matchesTheExampleOfTheStandard) {
    EXPECT_EQ(Id::fromTime(0x017F22E279B0, kRandom).text(), "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST(Id, laterTimesSortLater) { EXPECT_LT(Id::fromTime(1000, kRandom), Id::fromTime(1001, kRandom)); }

TEST(Id, readsBackWhatItWrote) {
    const Id id = Id::fromTime(0x017F22E279B0, kRandom);
    EXPECT_EQ(Id::parse(id.text()).value(), id);
}

TEST(Id, refusesWhatIsNotAKey) {
    for (const auto* text : {"", "017f22e2", "017f22e2-79b0-7cc3-98c4-dc0c0c07398",
                             "017f22e2+79b0-7cc3-98c4-dc0c0c07398f", "g17f22e2-79b0-7cc3-98c4-dc0c0c07398f"})
        EXPECT_FALSE(Id::parse(text).has_value()) << text;
}

} // namespace

// SPDX-License-Identifier: MIT
#include "core/layout/fit.h"

#include <gtest/gtest.h>

using namespace sp::layout;
using sp::units::Length;

namespace {

Length nm(std::int64_t n) {
    return Length::fromNanometres(n);
}

TEST(FitSheet, reachesThePublishedOptimumOfAHardSheet) {
    const auto fit = fitSheet({nm(40), nm(25)}, {nm(7), nm(3)}, {});
    ASSERT_TRUE(fit.has_value());
    EXPECT_EQ(fit->count, 47);
    EXPECT_TRUE(fit->proven);
}

} // namespace

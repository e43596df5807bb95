// SPDX-License-Identifier: MIT
// What a cost sheet reckons that an order takes, held against what Buying would buy for it: two roads to one number.
#include "core/pricing/order_share.h"
#include "core/supply/job.h"
#include "tests/reference/price_random.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <map>

namespace sp::supply {

TEST(OrderNeeds, areThoseThatBuyingCounts) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 200; ++round) {
        const auto made = reference::randomPriceCase(random);
        Supplies supplies;
        for (const auto& [id, priced] : made.book.materials) supplies.materials.push_back(priced.material);
        supplies.usualTape = made.book.shop.usualTape;
        supplies.usualTemplate = made.book.shop.usualTemplate;
        supplies.packing = made.book.shop.packing;
        layout::FitMemo fits;
        const auto job = jobOf(made.order.lines, supplies, fits);
        ASSERT_TRUE(job) << describe(job.error());
        std::map<std::string, std::int64_t> bought;
        for (const auto& need : needsOf(*job))
            if (need.count.value() > 0) bought[need.material] = need.count.value();
        const auto costed = pricing::costLines(made.order, made.book, fits);
        ASSERT_TRUE(costed) << describe(costed.error());
        const auto needs = pricing::needsOf(made.order, *costed, made.book, fits).value();
        std::map<std::string, std::int64_t> reckoned;
        for (const auto& [id, need] : *needs) reckoned[made.book.find(id)->material.name] = need.need;
        EXPECT_EQ(reckoned, bought) << round;
    }
}

} // namespace sp::supply

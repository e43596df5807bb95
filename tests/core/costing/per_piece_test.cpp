// SPDX-License-Identifier: MIT
#include "core/costing/cost_line.h"
#include "core/costing/per_piece.h"
#include "core/units/apportion.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

using sample::cents;
using units::Count;
using units::Currency;
using units::Money;

CostSheet sheetOfNodes(std::vector<CostNode> nodes) {
    CostSheet sheet;
    sheet.total = nodes.front().amount;
    sheet.nodes = std::move(nodes);
    return sheet;
}

// By hand: 10.00 over 3 pieces is 3.333333 exactly to the micro and reads 3.33. Parts of 6.00 and 4.00 are 60 and
// 40 % of that: 1.998 reads 2.00, the rest is 1.33. The 2.00 splits over 1.00 : 5.00 as 0.33 and 1.67.
TEST(PerPiece, partsAddUpToWhatIsReadOfTheirWhole) {
    const auto sheet = sheetOfNodes({{Part::Job, 0, 0, cents(1'000)},
                                     {Part::Stones, 1, 0, cents(600)},
                                     {Part::Stone, 2, 0, cents(100)},
                                     {Part::Stone, 2, 1, cents(500)},
                                     {Part::Tape, 1, 0, cents(400)}});
    EXPECT_EQ(costEach(sheet, Count::of(3)).micros(), 3'333'333);
    EXPECT_EQ(shownForOneOf(sheet, Count::of(3), Currency{}),
              (std::vector{cents(333), cents(200), cents(33), cents(167), cents(133)}));
}

TEST(PerPiece, ofOneIsTheWholeJobRounded) {
    layout::FitMemo fits;
    const auto sheet = costLine(sample::lantern(7), sample::priceBook(), fits);
    ASSERT_TRUE(sheet.has_value());
    const auto shown = shownForOneOf(*sheet, Count::of(1), Currency{});
    EXPECT_EQ(shown.front(), units::toMinor(sheet->total.exact(), Currency{}));
    Money top;
    for (std::size_t i = 1; i < shown.size(); ++i)
        if (sheet->nodes[i].depth == 1) top += shown[i];
    EXPECT_EQ(top, shown.front());
}

TEST(PerPiece, ofNothingIsNothing) { EXPECT_TRUE(shownForOneOf({}, Count::of(3), Currency{}).empty()); }

} // namespace

} // namespace sp::costing

// SPDX-License-Identifier: MIT
//
// What an hour at the bench carries of the shop's overhead. With the figure worked by hand beside each row where no
// source is named. All prices and times are invented.
#include "tests/core/costing/part_figure.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

INSTANTIATE_TEST_SUITE_P(
    Overhead, PartFigure,
    testing::Values(
        // 30 min of art
        PartCase{"overhead once",
                 [](Line&, Book& b) {
                     overheadIs(b);
                     b.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                     b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
                 },
                 Part::OverheadOnce, 0, 2'250'000},
        // 24 × 2 min
        PartCase{"overhead of the pieces",
                 [](Line&, Book& b) {
                     overheadIs(b);
                     b.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                     b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
                 },
                 Part::OverheadPieces, 0, 3'600'000},
        // OpenStax, Principles of Accounting vol. 2, m68135: 2,500,000 over 1,250,000 hours is 2.00 an hour; 350,000
        // hours for 140,000 units of one product carry 5.00 a unit. In hours: 2.5 a unit, here of 24 units.
        PartCase{"overhead, published",
                 [](Line&, Book& b) {
                     b.shop.rates.overheadPerMonth = cents(250'000'000);
                     b.shop.rates.productivePerMonth = Duration::fromMinutes(1'250'000LL * 60);
                     b.bench.of(Step::Pack).perPiece = Duration::fromMinutes(150);
                 },
                 Part::OverheadPieces, 0, 120'000'000}));

} // namespace

} // namespace sp::costing

// SPDX-License-Identifier: MIT
//
// What blanks, their larger sizes and packing cost. With the figure worked by hand beside each row; all prices are
// invented.
#include "tests/core/costing/part_figure.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

INSTANTIATE_TEST_SUITE_P(BlanksAndPacking, PartFigure,
                         testing::Values(
                             // 24 × 13.90
                             PartCase{"blanks",
                                      [](Line& l, Book& b) {
                                          onHoodie(l);
                                          setPrice(b, "Hoodie", 1390);
                                      },
                                      Part::BasePrice, 0, 333'600'000},
                             // 24 × 130.00 / 12
                             PartCase{"blanks by the dozen",
                                      [](Line& l, Book& b) {
                                          onHoodie(l);
                                          setPrice(b, "Hoodie", 13'000, 12);
                                      },
                                      Part::BasePrice, 0, 260'000'000},
                             // 3 of 24 × 2.10; the second size named
                             PartCase{"a larger size",
                                      [](Line& l, Book&) {
                                          onHoodie(l);
                                          l.sizes = {{"M", Count::of(5)}, {"2XL", Count::of(3)}};
                                      },
                                      Part::SizeExtra, 1, 6'300'000},
                             // 333.60 + 6.30
                             PartCase{"blanks with a larger size",
                                      [](Line& l, Book& b) {
                                          onHoodie(l);
                                          setPrice(b, "Hoodie", 1390);
                                          l.sizes = {{"M", Count::of(5)}, {"2XL", Count::of(3)}};
                                      },
                                      Part::Base, 0, 339'900'000},
                             // 24 × 6.20 / 100
                             PartCase{"packing",
                                      [](Line&, Book& b) {
                                          b.shop.packing = {{idOf("Bag")}};
                                          setPrice(b, "Bag", 620, 100);
                                      },
                                      Part::PackingItem, 0, 1'488'000},
                             // 24 × 5.00 / 50; the second of two
                             PartCase{"packing, the second item",
                                      [](Line&, Book& b) {
                                          addCard(b);
                                          b.shop.packing = {{idOf("Bag")}, {idOf("Card")}};
                                      },
                                      Part::PackingItem, 1, 2'400'000},
                             // 24 × 2 × 6.20 / 100
                             PartCase{"two of a packing a piece",
                                      [](Line&, Book& b) {
                                          b.shop.packing = {{idOf("Bag"), Count::of(2)}};
                                          setPrice(b, "Bag", 620, 100);
                                      },
                                      Part::PackingItem, 0, 2'976'000},
                             // 24 × 3 × 6.20 / 100, and no card
                             PartCase{"packing of the design's own",
                                      [](Line& l, Book& b) {
                                          addCard(b);
                                          b.shop.packing = {{idOf("Card")}};
                                          l.packing = {{idOf("Bag"), Count::of(3)}};
                                          setPrice(b, "Bag", 620, 100);
                                      },
                                      Part::Packing, 0, 4'464'000},
                             // 1.488 + 2.40
                             PartCase{"packing together",
                                      [](Line&, Book& b) {
                                          addCard(b);
                                          setPrice(b, "Bag", 620, 100);
                                          b.shop.packing = {{idOf("Bag")}, {idOf("Card")}};
                                      },
                                      Part::Packing, 0, 3'888'000}));

} // namespace

} // namespace sp::costing

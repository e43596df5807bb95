// SPDX-License-Identifier: MIT
//
// The proofs of an order. Names, sizes and places are invented; most stones first is common practice, no source.
#include "core/quoting/proofs.h"

#include "core/needs/line_check.h"
#include "core/quoting/letters.h"
#include "tests/support/plain_words.h"
#include "tests/support/sample_shop.h"

#include <gmock/gmock.h>

namespace sp::quoting {

namespace {

using artwork::Point;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

const base::Id kDesign = sample::idOf("Lantern");

/// So many stones of each in rows, in a box of 88.9 × 69.85 mm: the lantern's 3 1/2 × 2 3/4 in.
DesignLook lookOf(std::int64_t aqua, std::int64_t jet) {
    DesignLook look{{}, {sample::idOf("Aqua"), sample::idOf("Jet")}};
    const auto add = [&](Point at, std::size_t material) { look.stones.push_back({at, 3, material}); };
    for (std::int64_t i = 0; i < aqua; ++i)
        add(i == 0   ? Point{1.5, 1.5}
            : i == 1 ? Point{87.4, 68.35}
                     : Point{10.0 + static_cast<double>(i % 20) * 3, 20},
            0);
    for (std::int64_t i = 0; i < jet; ++i) add({20.0 + static_cast<double>(i) / 4, 40}, 1);
    return look;
}

catalogue::OrderLine lanternOfDesign() {
    auto line = sample::lantern();
    line.first().design = kDesign;
    return line;
}

std::vector<SheetProof> proofs(const catalogue::Order& order, const DesignLook& look) {
    return proofsOf(
        order, sample::priceBook(), [&](const base::Id&) { return look; }, test::PlainWords());
}

} // namespace

TEST(Letters, goOnAfterZ) {
    EXPECT_EQ(letterOf(0), "A");
    EXPECT_EQ(letterOf(25), "Z");
    EXPECT_EQ(letterOf(26), "AA");
    EXPECT_EQ(letterOf(27), "AB");
    EXPECT_EQ(letterOf(26 + 26 * 26), "AAA");
}

TEST(Proofs, keepPlacesToATwentiethOfAMillimetre) {
    const std::vector<Point> places{{0, 0}, {1.234, 250.99}, {-3.1, 0.05}, {999.95, 1}, {999.95, 1}};
    const auto again = unpacked(packed(places));
    ASSERT_THAT(again, SizeIs(places.size()));
    for (std::size_t i = 0; i < places.size(); ++i) {
        EXPECT_NEAR(again[i].x, places[i].x, 0.0251) << i;
        EXPECT_NEAR(again[i].y, places[i].y, 0.0251) << i;
    }
    std::vector<Point> row;
    for (int i = 0; i < 1000; ++i) row.push_back({3.0 * (i % 40), 3.0 * (i / 40)});
    EXPECT_LE(packed(row).size(), 5000u) << "some four bytes a stone";
}

TEST(Proofs, takeWhatIsNoPlaceForTheEnd) {
    EXPECT_THAT(unpacked("CE"), SizeIs(1));
    EXPECT_THAT(unpacked("CEC"), SizeIs(1)) << "half a place";
    EXPECT_THAT(unpacked("CE?CE"), SizeIs(1));
    EXPECT_THAT(unpacked("_________"), IsEmpty()) << "a number without an end";
    EXPECT_THAT(unpacked(""), IsEmpty());
}

TEST(Proofs, nameColoursByLetterMostStonesFirst) {
    auto line = lanternOfDesign();
    std::swap(line.first().stones[0], line.first().stones[1]); // Jet, the fewer, is typed first
    const auto made = proofs(sample::orderOf({line}), lookOf(212, 96));
    ASSERT_THAT(made, SizeIs(1));
    ASSERT_THAT(made[0].stones, SizeIs(2));
    EXPECT_EQ(made[0].stones[0].letter, "A");
    EXPECT_EQ(made[0].stones[0].count, "212");
    EXPECT_EQ(made[0].stones[1].letter, "B");
    EXPECT_EQ(made[0].stones[1].count, "96");
    EXPECT_THAT(unpacked(made[0].stones[1].places), SizeIs(96));
    EXPECT_EQ(made[0].width, "3 1/2 in");
    EXPECT_EQ(made[0].height, "2 3/4 in");
    EXPECT_EQ(made[0].note, "");
    EXPECT_EQ(made[0].choices, "");
}

TEST(Proofs, sayWhatTheLineTakesOtherwiseThanThePicture) {
    auto line = lanternOfDesign();
    line.first().stones[0].count += units::Count::of(1);
    auto made = proofs(sample::orderOf({line}), lookOf(212, 96));
    ASSERT_THAT(made, SizeIs(1));
    EXPECT_EQ(made[0].note, "proofOfOtherCounts");
    EXPECT_EQ(made[0].stones[0].count, "212") << "the picture's";
    line = lanternOfDesign();
    line.first().width = units::Length::fromInch64ths(7 * 64);
    made = proofs(sample::orderOf({line}), lookOf(212, 96));
    EXPECT_EQ(made[0].note, "proofOfAnotherSize");
    EXPECT_EQ(made[0].width, "3 1/2 in") << "as drawn";
}

// A line whose Aqua was changed by hand to another stone of its size is shown, and agreed to, in that one.
TEST(Proofs, showAColourThatWasChangedByHand) {
    auto line = lanternOfDesign();
    auto book = sample::priceBook();
    const auto rose = sample::idOf("Rose");
    auto priced = *book.find(line.first().stones[0].material);
    priced.material.id = rose;
    priced.material.name = "Rose SS10";
    priced.material.stone.rgb = 0xC2185B;
    book.materials[rose] = priced;
    line.first().stones[0].material = rose;
    const auto made = proofsOf(
        sample::orderOf({line}), book, [](const base::Id&) { return lookOf(212, 96); }, test::PlainWords());
    ASSERT_THAT(made, SizeIs(1));
    ASSERT_THAT(made[0].stones, SizeIs(2));
    EXPECT_EQ(made[0].stones[0].name, "Rose SS10");
    EXPECT_EQ(made[0].stones[0].rgb, 0xC2185BU);
    EXPECT_EQ(made[0].stones[0].count, "212");
    EXPECT_EQ(made[0].note, "");
    // Of another size it would lie otherwise.
    book.materials[rose].material.stone.size = "SS6";
    const auto other = proofsOf(
        sample::orderOf({line}), book, [](const base::Id&) { return lookOf(212, 96); }, test::PlainWords());
    EXPECT_EQ(other[0].note, "proofOfOtherCounts");
}

TEST(Proofs, addUpAStoneThatIsListedTwice) {
    auto line = lanternOfDesign();
    auto& stones = line.first().stones;
    const auto half = stones[0];
    stones[0].count = units::Count::of(half.count.value() - 12);
    stones.push_back({half.material, units::Count::of(12)});
    const auto made = proofs(sample::orderOf({line}), lookOf(212, 96));
    EXPECT_EQ(made[0].note, "");
    EXPECT_EQ(made[0].stones[0].count, "212");
}

TEST(Proofs, nameEveryPlaceThatSharesOne) {
    auto sleeve = lanternOfDesign();
    sleeve.first().place = "Sleeve";
    auto front = lanternOfDesign();
    front.first().place = "Front";
    const auto made = proofs(sample::orderOf({front, sleeve, front}), lookOf(212, 96));
    ASSERT_THAT(made, SizeIs(1));
    const auto title = needs::titleOf(front, front.first());
    EXPECT_EQ(made[0].title, "Front: " + title + ", Sleeve: " + title);
}

TEST(Proofs, areOneForLinesThatTakeTheSame) {
    auto order = sample::orderOf({lanternOfDesign(), lanternOfDesign()});
    EXPECT_THAT(proofs(order, lookOf(212, 96)), SizeIs(1));
    catalogue::addChoice(order);
    EXPECT_THAT(proofs(order, lookOf(212, 96)), SizeIs(1));
    order.lines[0].first().stones[0].count = units::Count::of(5);
    const auto made = proofs(order, lookOf(212, 96));
    ASSERT_THAT(made, SizeIs(2));
    EXPECT_EQ(made[0].choices, "") << "all choices have it";
    EXPECT_EQ(made[1].choices, "choice(2)");
}

TEST(Proofs, areNoneOfWhatHasNoDrawing) {
    EXPECT_THAT(proofs(sample::orderOf({sample::lantern()}), lookOf(212, 96)), IsEmpty()) << "a one-off";
    EXPECT_THAT(proofs(sample::orderOf({lanternOfDesign()}), {}), IsEmpty());
}

TEST(Proofs, areNoMoreThanABookKeeps) {
    const auto most = static_cast<std::int64_t>(kMaxProofStones);
    EXPECT_THAT(proofs(sample::orderOf({lanternOfDesign()}), lookOf(most, 0)), SizeIs(1));
    const auto made = proofs(sample::orderOf({lanternOfDesign()}), lookOf(most, 1));
    ASSERT_THAT(made, SizeIs(1)) << "what is not shown is named";
    EXPECT_THAT(made[0].stones, IsEmpty());
    EXPECT_EQ(made[0].title, needs::titleOf(lanternOfDesign(), lanternOfDesign().first()));
    EXPECT_EQ(made[0].note, "proofLeftOut");
}

} // namespace sp::quoting

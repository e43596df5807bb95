// SPDX-License-Identifier: MIT
#include "core/layout/roll.h"

#include "tests/support/amounts.h"
#include "tests/support/layout_check.h"
#include "tests/support/seed.h"
#include "tests/support/waste_search.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

using namespace sp::layout;
using sp::base::Code;
using sp::support::WasteSearch;
using sp::units::Length;

namespace {

using sp::support::mm;
using sp::support::nm;

TEST(LengthForPieces, takesMarginsAtBothEndsAndGapsBetween) {
    // By hand: 3 across (3 x 30 + 2 x 5 = 100 of 110 - 10), 7 pieces in 3 rows: 5 + 20 + 5 + 20 + 5 + 20 + 5.
    const auto need = lengthForPieces(mm(110), {mm(30), mm(20)}, {mm(5), mm(5), true}, 7);
    ASSERT_TRUE(need.has_value());
    EXPECT_EQ(need->length, mm(80));
    EXPECT_EQ(need->count, 7);
    EXPECT_TRUE(need->proven);
    EXPECT_EQ(sp::support::faultOf(need->positions, {mm(110), need->length}, {mm(30), mm(20)}, {mm(5), mm(5), true}),
              "");
}

TEST(LengthForPieces, agreesWithTryingEveryShortLength) {
    for (const auto& [width, a, b] :
         {std::tuple{7, 3, 2}, std::tuple{9, 4, 3}, std::tuple{8, 5, 2}, std::tuple{11, 5, 3}}) {
        for (int pieces = 1; pieces <= 7; ++pieces) {
            int length = 1;
            while (WasteSearch(width, length, a, b).most() < pieces) ++length;
            const auto need = lengthForPieces(nm(width), {nm(a), nm(b)}, {}, pieces);
            ASSERT_TRUE(need.has_value());
            EXPECT_EQ(need->length, nm(length)) << width << ' ' << a << 'x' << b << " n " << pieces;
            EXPECT_LE(need->bound, need->length);
        }
    }
}

TEST(LengthForPieces, holdsWhatItSaysAndTheBoundIsNoLonger) {
    std::mt19937_64 random(sp::test::printedSeed());
    for (int k = 0; k < 40; ++k) {
        const auto tenths = [&](std::int64_t least, std::int64_t most) {
            return nm((least + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most - least))) *
                      100'000);
        };
        const Piece piece{tenths(150, 1500), tenths(150, 1500)};
        const FitRules rules{tenths(0, 60), tenths(0, 60)};
        const auto pieces = static_cast<std::int64_t>(random() % 400) + 1;
        const Length width = nm(304'800'000);
        const auto need = lengthForPieces(width, piece, rules, pieces);
        ASSERT_TRUE(need.has_value()) << k;
        EXPECT_GE(need->count, pieces) << k;
        EXPECT_LE(need->bound, need->length) << k;
        EXPECT_EQ(need->positions.size(), static_cast<std::size_t>(need->count)) << k;
        EXPECT_EQ(sp::support::faultOf(need->positions, {width, need->length}, piece, rules), "") << k;
        const auto more = lengthForPieces(width, piece, rules, pieces + 10);
        ASSERT_TRUE(more.has_value());
        EXPECT_GE(more->length, need->bound) << k;
    }
}

TEST(LengthForPieces, answersForAMillionPieces) {
    const Piece piece{nm(17'300'000), nm(11'900'000)};
    const auto need = lengthForPieces(mm(305), piece, {mm(3), mm(2)}, kMaxRollPieces);
    ASSERT_TRUE(need.has_value());
    EXPECT_GE(need->count, kMaxRollPieces);
    EXPECT_EQ(need->positions.size(), static_cast<std::size_t>(kMaxPositions));
    // within one part in a hundred of what any layout needs
    EXPECT_LE(need->length.nanometres() / 101 * 100, need->bound.nanometres());
}

TEST(LengthForPieces, refusesInOneSentence) {
    const auto refusal = [](Length width, const Piece& piece, const FitRules& rules, std::int64_t pieces) {
        const auto need = lengthForPieces(width, piece, rules, pieces);
        return need ? sp::base::Error{} : need.error();
    };
    EXPECT_EQ(refusal(mm(305), {mm(30), mm(20)}, {}, 0).code, Code::OutOfRange);
    EXPECT_EQ(refusal(mm(305), {mm(30), mm(20)}, {}, kMaxRollPieces + 1).code, Code::OutOfRange);
    EXPECT_EQ(refusal(mm(0), {mm(30), mm(20)}, {}, 1).subject, "roll width");
    EXPECT_EQ(refusal(mm(10), {mm(3), mm(2)}, {mm(5), {}}, 1).subject, "margin");
    EXPECT_EQ(refusal(mm(305), {mm(300), mm(300)}, {}, kMaxRollPieces).code, Code::TooLarge);
    const auto wide = refusal(mm(305), {mm(400), mm(310)}, {}, 1);
    EXPECT_EQ(wide.code, Code::TooLarge);
    EXPECT_EQ(describe(wide.message()), "PieceTooWideForRoll(400000000 x 310000000, 305000000)");
}

} // namespace

// SPDX-License-Identifier: MIT
#include "core/catalogue/order.h"

#include <gmock/gmock.h>

namespace sp::catalogue {

namespace {

Order orderOf(std::int64_t pieces) {
    Order order;
    order.lines.emplace_back().quantity = units::Count::of(pieces);
    return order;
}

std::int64_t piecesOf(const Order& order) { return order.lines.at(0).quantity.value(); }

/// 24, 36 and 48, the last looked at.
Order threeChoices() {
    auto order = orderOf(24);
    for (const std::int64_t pieces : {36, 48}) {
        addChoice(order);
        order.lines[0].quantity = units::Count::of(pieces);
    }
    return order;
}

} // namespace

TEST(Choice, isTheSameAsTheOneItIsMadeFromButForItsTitle) {
    auto order = orderOf(24);
    order.title = "A dozen of each";
    order.discount.share = units::Rate::fromPercent(5);
    addChoice(order);
    EXPECT_EQ(choiceCount(order), 2U);
    EXPECT_EQ(order.choice, 1);
    EXPECT_EQ(order.title, "");
    EXPECT_EQ(order.discount.share, units::Rate::fromPercent(5));
    EXPECT_EQ(piecesOf(order), 24);
    EXPECT_EQ(choicesOf(order).at(0).title, "A dozen of each");
}

TEST(Choice, keepsItsPlaceWhicheverIsLookedAt) {
    for (const auto& path : {std::vector<std::int64_t>{0, 1, 2}, {1, 0, 2, 0}, {2, 1, 0, 1}}) {
        auto order = threeChoices();
        const auto all = choicesOf(order);
        for (const auto number : path) {
            lookAtChoice(order, number);
            EXPECT_EQ(order.choice, number);
            EXPECT_EQ(piecesOf(order), 24 + 12 * number);
            EXPECT_EQ(choicesOf(order), all);
        }
    }
}

TEST(Choice, aloneIsAnOrderWithoutOthers) {
    const auto order = threeChoices();
    const auto taken = withChoice(order, 1);
    EXPECT_EQ(piecesOf(taken), 36);
    EXPECT_TRUE(taken.others.empty());
    EXPECT_EQ(taken.choice, 0);
    EXPECT_EQ(piecesOf(order), 48);
}

TEST(Choice, takenOutLooksAtTheNextOrTheLast) {
    auto order = threeChoices();
    lookAtChoice(order, 1);
    removeChoice(order);
    EXPECT_EQ(piecesOf(order), 48) << "the one after it";
    EXPECT_EQ(order.choice, 1);
    removeChoice(order);
    EXPECT_EQ(piecesOf(order), 24) << "the last";
    EXPECT_EQ(order.choice, 0);
    EXPECT_EQ(choiceCount(order), 1U);
}

} // namespace sp::catalogue

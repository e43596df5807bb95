// SPDX-License-Identifier: MIT
//
// What tells the choices of an order apart, and the sheet that offers them. Names and prices are invented.
#include "core/quoting/differences.h"
#include "core/quoting/sheet_maker.h"
#include "tests/support/plain_words.h"
#include "tests/support/sales.h"
#include "tests/support/seed.h"

#include <gmock/gmock.h>

namespace sp::quoting {

namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using units::Count;

/// The sale twice, the second looked at and changed by `edit`.
std::vector<std::string> told(const test::Sale& sale, const std::function<void(catalogue::Order&)>& edit) {
    auto order = sale.order;
    catalogue::addChoice(order);
    edit(order);
    return differencesOf(order, sale.book, test::PlainWords());
}

} // namespace

TEST(Differences, areNoneBetweenTheSame) {
    EXPECT_THAT(told(test::shortSale(), [](auto&) {}), ElementsAre("", ""));
}

TEST(Differences, nameWhatIsNotTheSameInAll) {
    const auto sale = test::shortSale();
    const auto pieces = std::to_string(sale.order.lines[0].quantity.value());
    EXPECT_THAT(told(sale, [](auto& order) { order.lines[0].quantity = Count::of(36); }),
                ElementsAre("pieces(" + pieces + ")", "pieces(36)"));
    const auto own = told(sale, [](auto& order) {
        order.lines[0].customersGarment = true;
        order.lines[0].baseMaterial = {};
    });
    EXPECT_THAT(own[0], HasSubstr("on("));
    EXPECT_EQ(own[1], "ownGarment");
    const auto larger =
        told(sale, [](auto& order) { order.lines[0].first().width = units::Length::fromInch64ths(9 * 64); });
    EXPECT_THAT(larger[1], HasSubstr("9 × "));
    const auto plain = told(sale, [](auto& order) { order.lines[0].first().stones.clear(); });
    EXPECT_EQ(plain[1], "inColours(0)");
    const auto more = told(sale, [](auto& order) {
        auto& stone = order.lines[0].first().stones[0];
        stone.count += Count::of(1);
    });
    EXPECT_THAT(more[1], HasSubstr("stones("));
    EXPECT_NE(more[0], more[1]);
    const auto cheaper = told(sale, [](auto& order) { order.discount.share = units::Rate::fromPercent(5); });
    EXPECT_THAT(cheaper, ElementsAre("", "discount(5 %)"));
}

TEST(Differences, nameALineThatIsNotInAll) {
    const auto sale = test::studioSale();
    const auto title = sale.order.lines.back().title;
    const auto fewer = told(sale, [](auto& order) { order.lines.pop_back(); });
    EXPECT_THAT(fewer[0], HasSubstr(title));
    EXPECT_EQ(fewer[1], "");
    const auto first = told(sale, [](auto& order) { order.lines[0].quantity = Count::of(36); });
    EXPECT_EQ(first[1], sale.order.lines[0].title + ": pieces(36)") << "of several lines, which";
}

TEST(Differences, giveWayToATitleOfItsOwn) {
    const auto names = told(test::shortSale(), [](auto& order) {
        order.title = "The large one";
        order.lines[0].quantity = Count::of(36);
    });
    EXPECT_THAT(names[0], HasSubstr("pieces("));
    EXPECT_EQ(names[1], "The large one");
}

TEST(SheetChoices, eachIsTheSheetOfAnOrderWithThatChoiceAlone) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 300; ++round) {
        auto sale = test::anySale(random);
        for (int more = static_cast<int>(random() % 3); more >= 0; --more) {
            catalogue::addChoice(sale.order);
            auto& line = sale.order.lines[random() % sale.order.lines.size()];
            line.quantity = line.quantity + Count::of(static_cast<std::int64_t>(random() % 40));
            if (random() % 3 == 0) sale.order.discount = {};
        }
        const auto count = static_cast<std::int64_t>(choiceCount(sale.order));
        catalogue::lookAtChoice(sale.order, static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(count)));
        layout::FitMemo fits;
        std::optional<std::pair<std::int64_t, base::Error>> why;
        const auto others = priceOthers(sale.order, sale.book, fits, why);
        ASSERT_FALSE(why);
        const auto priced = sale.priced();
        auto sheet = contentOf({"", sale.order, sale.book, priced, {}, {}, test::PlainWords(), {}, others});
        ASSERT_EQ(choicesOf(sheet).size(), static_cast<std::size_t>(count));
        EXPECT_EQ(sheet.choicesNote, "choicesNote(" + std::to_string(count) + ")");
        for (std::int64_t number = 0; number < count; ++number) {
            lookAtChoice(sheet, number);
            EXPECT_EQ(sheet.name, "choice(" + std::to_string(number + 1) + ")");
            const auto alone = catalogue::withChoice(sale.order, number);
            const auto pricedAlone = pricing::priceOrder(alone, sale.book, fits);
            ASSERT_TRUE(pricedAlone);
            SheetChoice expected = contentOf({"", alone, sale.book, *pricedAlone, {}, {}, test::PlainWords()});
            SheetChoice found = sheet;
            found.name.clear();
            found.difference.clear();
            EXPECT_EQ(found, expected);
        }
    }
}

TEST(SheetChoices, oneWithoutAPriceIsKnownByItsNameAlone) {
    auto sale = test::shortSale();
    catalogue::addChoice(sale.order);
    sale.order.lines[0].quantity = {};
    catalogue::lookAtChoice(sale.order, 0);
    layout::FitMemo fits;
    std::optional<std::pair<std::int64_t, base::Error>> why;
    const auto others = priceOthers(sale.order, sale.book, fits, why);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->first, 1);
    const auto priced = sale.priced();
    const auto sheet = contentOf({"", sale.order, sale.book, priced, {}, {}, test::PlainWords(), {}, others});
    EXPECT_EQ(sheet.others[0].name, "choice(2)");
    EXPECT_TRUE(sheet.others[0].lines.empty());
    EXPECT_EQ(sheet.others[0].toPay.text, "—");
}

} // namespace sp::quoting

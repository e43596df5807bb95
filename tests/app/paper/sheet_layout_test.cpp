// SPDX-License-Identifier: MIT
#include "app/paper/sheet_layout.h"

#include "printed_sale.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace sp::paper {

namespace {

using catalogue::Paper;

constexpr double kMargin = 54;

/// The figures of the column of amounts, from the top down.
std::vector<PlacedText> amountsOf(const PlacedPage& page, Paper paper, const Lettering& lettering) {
    std::vector<PlacedText> amounts;
    const double right = pageSize(paper).width() - kMargin;
    for (const auto& text : page.texts)
        if (text.isFigures && text.text.contains(QLatin1Char('.')) &&
            std::abs(text.baseline.x() + lettering.width(text.face, text.text) - right) < 0.01)
            amounts.push_back(text);
    std::ranges::stable_sort(amounts, {}, [](const PlacedText& text) { return text.baseline.y(); });
    return amounts;
}

bool says(const PlacedPage& page, const QString& words) {
    return std::ranges::any_of(page.texts, [&](const PlacedText& text) { return text.text == words; });
}

std::int64_t micros(const PlacedText& text) {
    return units::parseMoney(text.text.toStdString(), units::Currency{})->micros();
}

} // namespace

TEST(SheetLayout, carriesTheRightAmountFromPageToPage) {
    const Lettering lettering;
    const auto sheet = test::sheetOf(test::longSale(1'000));
    for (const auto paper : {Paper::Letter, Paper::A4}) {
        const auto pages = layOut(sheet, paper, lettering);
        ASSERT_GT(pages.size(), 20u);
        std::int64_t carried = 0;
        for (std::size_t i = 0; i < pages.size(); ++i) {
            SCOPED_TRACE(testing::Message() << "page " << i + 1 << " of " << pages.size());
            auto amounts = amountsOf(pages[i], paper, lettering);
            if (i > 0) {
                ASSERT_TRUE(says(pages[i], QStringLiteral("Brought forward")));
                EXPECT_EQ(micros(amounts.front()), carried);
                amounts.erase(amounts.begin());
            }
            if (!says(pages[i], QStringLiteral("Carried forward"))) break; // the totals stand on this one
            std::int64_t sum = carried;
            for (std::size_t k = 0; k + 1 < amounts.size(); ++k) sum += micros(amounts[k]);
            EXPECT_EQ(micros(amounts.back()), sum);
            carried = sum;
        }
        EXPECT_GT(carried, 0);
    }
}

TEST(SheetLayout, keepsEverythingWithinTheMargins) {
    const Lettering lettering;
    auto sale = test::longSale(40);
    sale.order.lines[1].title = std::string(4'000, 'W');
    sale.order.lines[2].title = "שלום אורות · مصباح صغير";
    sale.order.lines[3].title = "Sparkle 🌟🎉 at \n the\tend";
    sale.book.customer->name = std::string(600, 'M');
    sale.book.customer->contact = std::string(5'000, '\n') + "last line";
    sale.book.shop.letterhead.name = "The Very Long Winded Heron Street Sparkle and Nameplate Company of Millbrook";
    sale.book.shop.letterhead.terms = std::string(20'000, 'x');
    for (const auto paper : {Paper::Letter, Paper::A4}) {
        const auto size = pageSize(paper);
        for (const auto& page : layOut(test::sheetOf(sale), paper, lettering))
            for (const auto& text : page.texts) {
                const double width = lettering.width(text.face, text.text);
                EXPECT_GE(text.baseline.x(), kMargin - 0.5) << text.text.toStdString();
                EXPECT_LE(text.baseline.x() + width, size.width() - kMargin + 0.5) << text.text.toStdString();
                EXPECT_GE(text.baseline.y(), 40) << text.text.toStdString();
                EXPECT_LE(text.baseline.y(), size.height() - 30) << text.text.toStdString();
            }
    }
}

TEST(SheetLayout, keepsTheTotalsTogether) {
    const Lettering lettering;
    for (int lines = 1; lines < 60; ++lines) {
        const auto pages = layOut(test::sheetOf(test::longSale(lines)), Paper::Letter, lettering);
        const auto withTotal =
            std::ranges::find_if(pages, [](const PlacedPage& page) { return says(page, QStringLiteral("To pay")); });
        ASSERT_NE(withTotal, pages.end());
        EXPECT_TRUE(says(*withTotal, QStringLiteral("Together"))) << lines << " lines";
        EXPECT_TRUE(says(*withTotal, QStringLiteral("On collection"))) << lines << " lines";
    }
}

TEST(SheetLayout, countsItsPages) {
    const Lettering lettering;
    const auto pages = layOut(test::sheetOf(test::longSale(60)), Paper::A4, lettering);
    for (std::size_t i = 0; i < pages.size(); ++i)
        EXPECT_TRUE(says(pages[i], QStringLiteral("Page %1 of %2").arg(i + 1).arg(pages.size())));
}

TEST(SheetLayout, drawsEveryLinesStones) {
    const Lettering lettering;
    const auto pages = layOut(test::sheetOf(test::studioSale()), Paper::Letter, lettering);
    // Two colours, one colour, two colours.
    EXPECT_EQ(pages.front().stones.size(), 5u);
    EXPECT_EQ(pages.front().stones.front().colour, QColor(0x4F, 0xC3, 0xCF));
}

} // namespace sp::paper

// SPDX-License-Identifier: MIT
#include "app/paper/care_card.h"

#include "app/paper/care_notes.h"
#include "app/words/sheet_words.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace sp::paper {

namespace {

using catalogue::Paper;

catalogue::Shop shopOn(Paper paper) {
    catalogue::Shop shop;
    shop.paper = paper;
    shop.letterhead.name = "Heron Street Sparkle";
    shop.letterhead.lines = "4 Heron Street\nhello@heron.example";
    shop.letterhead.care = careNotes().toStdString();
    return shop;
}

catalogue::HeatPress press() {
    catalogue::HeatPress press;
    press.dwell = units::Duration::fromMilliseconds(12'000);
    press.temperature = units::Temperature::fromMillicelsius(160'000);
    return press;
}

Document cardsOf(const catalogue::Shop& shop) {
    const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), shop);
    return careCards(shop, careWords(shop, press(), formatter));
}

/// How often each text stands on the page.
std::map<QString, int> counted(const PlacedPage& page) {
    std::map<QString, int> texts;
    for (const auto& text : page.texts) ++texts[text.text];
    return texts;
}

} // namespace

TEST(CareCard, fillsThePageWithCardsThatAreAllAlike) {
    const Lettering lettering;
    for (const auto paper : {Paper::Letter, Paper::A4}) {
        const auto document = cardsOf(shopOn(paper));
        ASSERT_EQ(document.pages.size(), 1U);
        const auto& page = document.pages[0];
        const auto size = pageSize(paper);
        const int cards = counted(page).at(QStringLiteral("Heron Street Sparkle"));
        EXPECT_TRUE(cards == 4 || cards == 2) << cards;
        for (const auto& [text, times] : counted(page)) EXPECT_EQ(times % cards, 0) << text.toStdString();
        // Every word stands a printer's margin away from the page's edges and from the cuts.
        for (const auto& text : page.texts) {
            const double left = text.baseline.x();
            const double right = left + lettering.width(text.face, text.text);
            const double columns = cards == 4 ? 2 : 1;
            const double card = size.width() / columns;
            EXPECT_GE(left - card * std::floor(left / card), 18) << text.text.toStdString();
            EXPECT_LE(right - card * std::floor(left / card), card - 18) << text.text.toStdString();
            const double tall = size.height() / 2;
            const double within = text.baseline.y() - tall * std::floor(text.baseline.y() / tall);
            EXPECT_GE(within, 18 + 4);
            EXPECT_LE(within, tall - 18);
        }
        EXPECT_EQ(page.pictures.size(), 1U) << "the marks to cut along";
    }
}

TEST(CareCard, saysThePressesFiguresAndTheCautionsButNothingOfTheBill) {
    const auto shop = shopOn(Paper::Letter);
    const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), shop);
    const auto words = careWords(shop, press(), formatter);
    const auto all = (words.care + words.applying).join(QLatin1Char(' '));
    EXPECT_TRUE(all.contains(formatter.temperature(press().temperature)));
    EXPECT_TRUE(all.contains(QStringLiteral("12 s")));
    EXPECT_TRUE(all.contains(QStringLiteral("under three")));
    EXPECT_TRUE(all.contains(QStringLiteral("burns")));
    EXPECT_FALSE(all.contains(QString::fromStdString(words::SheetWords().taxCaution())));
    const auto unknown = careWords(shop, {}, formatter).applying.join(QLatin1Char(' '));
    EXPECT_FALSE(unknown.contains(QStringLiteral("0 s"))) << "of a press that nothing is known of nothing is said";
}

TEST(CareCard, goesOnOnFurtherPagesWhereAShopHasMuchToSay) {
    auto shop = shopOn(Paper::A4);
    for (int i = 0; i < 60; ++i)
        shop.letterhead.care += "\nWash what we made for you by hand, number " + std::to_string(i);
    const auto document = cardsOf(shop);
    EXPECT_GT(document.pages.size(), 1U);
    int found = 0;
    for (const auto& page : document.pages)
        for (const auto& text : page.texts) found += text.text.startsWith(QStringLiteral("Wash what we made"));
    EXPECT_EQ(found, 60) << "no word is lost";
}

} // namespace sp::paper

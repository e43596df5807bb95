// SPDX-License-Identifier: MIT
#include "app/paper/bench_pages.h"

#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

namespace sp::paper {

namespace {

using catalogue::Paper;

class BenchPages : public testing::Test {
  protected:
    Document documentOf(std::vector<catalogue::OrderLine> lines, const needs::SetsThere& there = {}) {
        auto order = sample::orderOf(std::move(lines));
        order.wantedBy = sample::day("2026-12-11");
        layout::FitMemo fits;
        const auto sheet = quoting::benchSheetOf("2026-0042", order, book, fits, there);
        EXPECT_TRUE(sheet.has_value());
        book.shop.letterhead.name = "Heron Street Sparkle";
        const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), book.shop);
        return benchDocument(
            {book.shop, formatter, *sheet, sample::day("2026-12-09"), [this](const base::Id&) { return picture; }});
    }
    static QString textOf(const Document& document) {
        QString all;
        for (const auto& page : document.pages)
            for (const auto& text : page.texts) all += text.text + QLatin1Char('\n');
        return all;
    }

    catalogue::PriceBook book = sample::priceBook();
    QImage picture;
};

TEST_F(BenchPages, sayWhatIsDoneAtTheBenchAndNoPrice) {
    const auto text = textOf(documentOf({sample::lantern(24)}));
    for (const char* words : {"Lay out 25, hand over 24", "5,409", "2,449", "Brush A, small circles, no hole empty",
                              "Lift B, the tape hinged", "Bench sheet 2026-0042", "medium", "Take care",
                              "no drawing is kept", "minutes taken"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\n" << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Dec 11, 2026"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Dec 9, 2026")));
    EXPECT_FALSE(text.contains(QLatin1Char('.') + QStringLiteral("00"))) << "money stands on no bench sheet";
}

TEST_F(BenchPages, keepToThePaper) {
    auto wordy = sample::lantern(500);
    wordy.title = "A nameplate with a title that goes on and on beyond what a line of a sheet could hold, and on";
    const Lettering lettering;
    for (const auto paper : {Paper::Letter, Paper::A4}) {
        book.shop.paper = paper;
        const auto size = pageSize(paper);
        for (const auto& page : documentOf({wordy}).pages)
            for (const auto& text : page.texts) {
                EXPECT_GE(text.baseline.x(), 0) << text.text.toStdString();
                EXPECT_LE(text.baseline.x() + lettering.width(text.face, text.text), size.width() - 40)
                    << text.text.toStdString();
                EXPECT_LE(text.baseline.y(), size.height() - 20) << text.text.toStdString();
            }
    }
}

TEST_F(BenchPages, beginAPageForEachLine) {
    const auto document = documentOf({sample::lantern(24), sample::square(6)});
    std::vector<std::size_t> first; // the pages on which a line begins
    for (std::size_t i = 0; i < document.pages.size(); ++i)
        for (const auto& text : document.pages[i].texts)
            if (text.text.startsWith(QStringLiteral("Lay out "))) first.push_back(i);
    ASSERT_EQ(first.size(), 2U);
    EXPECT_EQ(first[0], 0U);
    EXPECT_GT(first[1], 0U);
    EXPECT_TRUE(textOf(document).contains(QStringLiteral("Bench sheet 2026-0042, 2 of 2")));
}

TEST_F(BenchPages, sayWhereTheTemplatesAreThatAreNotCutHere) {
    auto line = sample::lantern(10);
    line.first().design = sample::idOf("design");
    const auto cut = QStringLiteral("One a colour, cut once.");
    const auto countOf = [](const QString& text, const QString& words) {
        return QString(text).replace(QLatin1Char('\n'), QLatin1Char(' ')).count(words);
    };
    const auto shared = textOf(documentOf({line, line}));
    EXPECT_EQ(countOf(shared, cut), 1) << shared.toStdString();
    EXPECT_EQ(countOf(shared, QStringLiteral("The templates are those cut on bench sheet 1 of 2, for Lantern.")), 1)
        << shared.toStdString();
    line.places.push_back(line.first());
    line.places[0].place = "Front";
    line.places[1].place = "Back";
    const auto twice = textOf(documentOf({line}));
    EXPECT_EQ(countOf(twice, cut), 1);
    EXPECT_EQ(countOf(twice, QStringLiteral("The templates are those cut above, for Front.")), 1)
        << twice.toStdString();
    line.places.pop_back();
    line.first().plannedPieces = units::Count::of(100);
    const auto made = textOf(documentOf({line}, {line.first().design}));
    EXPECT_EQ(countOf(made, cut), 0);
    EXPECT_EQ(countOf(made, QStringLiteral("The templates are on the wall.")), 1) << made.toStdString();
}

TEST_F(BenchPages, haveABoxForEachPieceAndEachStep) {
    const auto countOf = [](const Document& document, auto member) {
        std::size_t count = 0;
        for (const auto& page : document.pages) count += (page.*member).size();
        return count;
    };
    const auto document = documentOf({sample::lantern(24)});
    // 25 pieces, ten steps, what is cut, the card around the press, and the frame without a picture.
    EXPECT_EQ(countOf(document, &PlacedPage::boxes), 25U + 10U + 1U + 1U + 1U);
    EXPECT_EQ(countOf(document, &PlacedPage::pictures), 0U);
    picture = QImage(40, 30, QImage::Format_RGB32);
    EXPECT_EQ(countOf(documentOf({sample::lantern(24)}), &PlacedPage::pictures), 1U);
}

} // namespace

} // namespace sp::paper

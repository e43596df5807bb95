// SPDX-License-Identifier: MIT
// The bench sheet of a quote of a book: what it goes by, and what it says of a quote that is not to be made.
#include "app/demo/demo_book.h"
#include "app/paper/bench_paper.h"
#include "tests/support/held_clock.h"
#include "tests/support/quote_result.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace sp;
using db::Quote;
using db::Stage;
using units::Count;
using units::Money;

const QString kPlan = QStringLiteral("on the plan for");
const QString kOnWall = QStringLiteral("The templates are on the wall.");
const QString kCut = QStringLiteral("One a colour, cut once.");

class BenchPaper : public testing::Test {
  protected:
    void SetUp() override {
        auto made = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment());
        ASSERT_TRUE(made) << describe(made.error());
        m_book = std::move(*made);
    }
    catalogue::Design design() {
        const auto designs = m_book->designs().value();
        return *std::ranges::find(designs, "Lantern", &catalogue::Design::name);
    }
    catalogue::OrderLine lanterns(std::int64_t pieces) {
        auto line = catalogue::lineOf(design());
        line.quantity = Count::of(pieces);
        return line;
    }
    catalogue::Order orderOf(std::int64_t pieces) {
        catalogue::Order order;
        order.quotedOn = m_clock.environment().today();
        order.lines = {lanterns(pieces)};
        return order;
    }
    catalogue::PriceBook prices() { return m_book->priceBook({}).value(); }
    static db::QuoteResult result() { return test::resultOf(Money::fromMicros(100'000'000)); }
    Quote given(const catalogue::Order& order, const db::QuoteResult& result) {
        return m_book->issueNew(order, prices(), result, order.quotedOn.plusDays(21)).value();
    }
    Quote agreed(std::int64_t pieces) {
        const auto quote = given(orderOf(pieces), result());
        EXPECT_TRUE(m_book->setStage(quote.id, Stage::Agreed));
        return quote;
    }
    paper::Document documentOf(const Quote& quote) {
        const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), m_book->shop().value());
        layout::FitMemo fits;
        auto document = paper::benchPaper(*m_book, quote, formatter, fits);
        EXPECT_TRUE(document.has_value()) << (document ? "" : describe(document.error()));
        return document.value_or(paper::Document{});
    }
    static QString textOf(const paper::PlacedPage& page) {
        QString all;
        for (const auto& text : page.texts) all += text.text + QLatin1Char(' ');
        return all;
    }
    QString textOf(const Quote& quote) {
        QString all;
        for (const auto& page : documentOf(quote).pages) all += textOf(page);
        return all;
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    std::unique_ptr<db::Book> m_book;
};

TEST_F(BenchPaper, ofAReplacedQuoteSaysSoOnEveryPageAndHasNoDay) {
    const auto first = agreed(24);
    EXPECT_TRUE(textOf(first).contains(kPlan));
    const auto order = orderOf(30);
    const auto second = m_book->issueRevision(first.id, order, prices(), result(), order.quotedOn.plusDays(21)).value();
    ASSERT_TRUE(m_book->setStage(second.id, Stage::Agreed));
    const auto kept = m_book->quoteAsGiven(first.number).value();
    ASSERT_TRUE(kept.replacedBy);
    const auto mark = QStringLiteral("Replaced by %1 on").arg(QString::fromStdString(second.number));
    const auto replaced = documentOf(kept);
    ASSERT_FALSE(replaced.pages.empty());
    for (const auto& page : replaced.pages) EXPECT_TRUE(textOf(page).contains(mark)) << textOf(page).toStdString();
    EXPECT_TRUE(textOf(kept).contains(QStringLiteral("24 × Lantern"))) << "as it was given";
    EXPECT_FALSE(textOf(kept).contains(kPlan)) << "that is the day of the revision";
    const auto standing = textOf(m_book->quoteAsGiven(second.number).value());
    EXPECT_FALSE(standing.contains(QStringLiteral("Replaced by")));
    EXPECT_TRUE(standing.contains(kPlan));
}

// What was sold is not cut before its first pieces are ready, whoever has it on the sheet.
TEST_F(BenchPaper, findsASetOnTheWallOnceItWasMade) {
    auto planned = design();
    planned.templatesOnWall = false;
    planned.plannedPieces = Count::of(500);
    ASSERT_TRUE(m_book->save(planned));
    const auto revising = textOf(m_book->startRevision(agreed(24).id).value());
    EXPECT_FALSE(revising.contains(kOnWall)) << revising.toStdString();
    EXPECT_TRUE(revising.contains(kCut));
    const auto other = given(orderOf(24), result());
    EXPECT_TRUE(textOf(other).contains(kCut));
    const auto made = agreed(12);
    for (const auto stage : {Stage::InProduction, Stage::Ready}) ASSERT_TRUE(m_book->setStage(made.id, stage));
    const auto next = textOf(other);
    EXPECT_TRUE(next.contains(kOnWall)) << next.toStdString();
    EXPECT_FALSE(next.contains(kCut));
}

TEST_F(BenchPaper, ofSeveralChoicesSaysWhichAndWhetherItIsTaken) {
    auto order = orderOf(24);
    order.others = {{"", {}, {lanterns(36)}}};
    auto both = result();
    both.others.push_back(result().priced);
    both.sheetFor = [sheetFor = both.sheetFor](const std::string& number) {
        auto sheet = sheetFor(number);
        sheet.name = "Choice 1";
        sheet.others.emplace_back();
        sheet.others[0].name = "Choice 2";
        sheet.others[0].toPay = sheet.toPay;
        return sheet;
    };
    const auto quote = given(order, both);
    const auto open = textOf(quote);
    EXPECT_TRUE(open.contains(QStringLiteral("Choice 1 of 2: none is taken yet."))) << open.toStdString();
    EXPECT_TRUE(open.contains(QStringLiteral("24 × Lantern")));
    ASSERT_TRUE(m_book->takeChoice(quote.id, 1));
    const auto taken = textOf(m_book->quote(quote.id).value());
    EXPECT_FALSE(taken.contains(QStringLiteral("none is taken yet")));
    EXPECT_TRUE(taken.contains(QStringLiteral("choice 2 of 2"))) << taken.toStdString();
    EXPECT_TRUE(taken.contains(QStringLiteral("36 × Lantern")));
}

} // namespace

// SPDX-License-Identifier: MIT
// What is printed, in a language of accents.
#include "app/buying/planner.h"
#include "app/buying/shopping_list.h"
#include "app/demo/demo_book.h"
#include "app/paper/output.h"
#include "app/paper/plan_pages.h"
#include "app/words/sheet_words.h"
#include "core/planning/cut_plan.h"
#include "tests/app/language/onlooker.h"
#include "tests/app/paper/pdf_reader.h"
#include "tests/support/found_texts.h"
#include "tests/support/held_clock.h"
#include "tests/support/pseudo_language.h"
#include "tests/support/sales.h"
#include "tests/support/sample_shop.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace sp;

namespace {

class PapersInAnotherLanguage : public testing::Test {
  protected:
    void TearDown() override {
        EXPECT_EQ(m_onlooker.count(), 0U) << m_onlooker.found();
        if (!test::foundTexts().empty()) {
            EXPECT_THAT(test::notFound(m_language.asked()), testing::IsEmpty()) << "no translation would hold these";
        }
    }
    QString pdf() const { return m_folder.filePath(QStringLiteral("paper.pdf")); }
    void read(const QString& where) {
        const auto pages = paper::test::pagesOf(pdf());
        EXPECT_FALSE(pages.isEmpty()) << where.toStdString();
        EXPECT_FALSE(pages.join(QString()).trimmed().isEmpty()) << where.toStdString();
        for (const auto& page : pages)
            for (const auto& line : page.split(QLatin1Char('\n'))) m_onlooker.look(where, line);
    }
    void knowShop(const catalogue::Shop& shop) {
        const auto& head = shop.letterhead;
        m_onlooker.know(head.name + " " + head.lines + " " + head.terms + " " + head.care + " " + shop.rules.tax.name +
                        " " + shop.currency.code());
    }

    QTemporaryDir m_folder;
    test::PseudoLanguage m_language;
    test::Onlooker m_onlooker;
};

TEST_F(PapersInAnotherLanguage, quoteSheets) {
    auto sales = {test::studioSale(), test::shortSale(), test::longSale(60)};
    for (const auto& sale : sales) {
        knowShop(sale.book.shop);
        for (const auto& line : sale.order.lines) {
            m_onlooker.know(line.title);
            for (const auto& size : line.sizes) m_onlooker.know(size.size);
        }
        for (const auto& [id, priced] : sale.book.materials) m_onlooker.know(priced.material.name);
        if (const auto& customer = sale.book.customer) {
            m_onlooker.know(customer->name + " " + customer->contact);
            if (customer->certificate)
                m_onlooker.know(customer->certificate->number + " " + customer->certificate->place);
        }
        ASSERT_TRUE(paper::writePdf(sale.sheet(words::SheetWords(), "2026-0042"), catalogue::Paper::Letter, pdf(),
                                    db::IfThere::Replace));
        read(QStringLiteral("Quote sheet"));
    }
}

TEST_F(PapersInAnotherLanguage, aCuttingPlan) {
    auto book = sample::priceBook();
    book.shop.letterhead.name = "Kiln Lane Sparkle";
    book.shop.isDemo = true;
    knowShop(book.shop);
    for (const auto& [id, priced] : book.materials) m_onlooker.know(priced.material.name);
    auto crest = sample::lantern(5);
    crest.title = "Crest";
    crest.first().width = units::Length::fromInch64ths(5 * 64);
    m_onlooker.know("Lantern Crest");
    const std::vector<catalogue::OrderLine> lines{sample::lantern(24), crest};
    const auto lists = planning::cutLists(lines, book);
    ASSERT_TRUE(lists.has_value());
    std::vector<planning::CutPlan> plans;
    layout::MixedEffort effort;
    effort.steps = 500'000;
    for (const auto& list : *lists) plans.push_back(*planning::planCut(list, effort));
    ASSERT_TRUE(paper::writePdf(paper::planDocument({QStringLiteral("2026-0042"), {}, &book.shop, {}, plans}),
                                catalogue::Paper::Letter, pdf()));
    read(QStringLiteral("Cutting plan"));
}

/// The cheapest purchase for 24 of a design of the demo book, on paper and as a table for other programs.
TEST_F(PapersInAnotherLanguage, aShoppingList) {
    test::HeldClock clock;
    const test::TempFolder folder;
    auto book = demo::createDemoBook(folder / "demo.jobbook", clock.environment());
    ASSERT_TRUE(book);
    session::BookSession session(std::move(*book));
    m_onlooker.knowBook(session);
    const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), session.shop());
    for (const bool cuts : {true, false}) {
        buying::Planner planner;
        std::shared_ptr<const buying::Answer> answer;
        QObject::connect(&planner, &buying::Planner::answered, &planner,
                         [&](const std::shared_ptr<const buying::Answer>& said) { answer = said; });
        const auto design = session.designs().front();
        planner.ask({buying::suppliesOf(session, cuts, false), {supply::lineOf(design, session.materials(), 24)}, 0});
        ASSERT_TRUE(test::waitFor([&] { return answer != nullptr; }));
        if (!answer->plans.of(supply::Strategy::Mix).plan) continue;
        ASSERT_TRUE(paper::writePdf(
            buying::shoppingPages(*answer, {session.shop(), formatter, QStringLiteral("24"), session.today()}),
            catalogue::Paper::Letter, pdf(), db::IfThere::Replace));
        read(QStringLiteral("Shopping list"));
        m_onlooker.look(QStringLiteral("Shopping list for other programs"),
                        QString::fromStdString(buying::shoppingCsv(*answer)));
    }
}

/// The staircase of a design of the demo book that has kits, to 24 pieces.
TEST_F(PapersInAnotherLanguage, aStaircase) {
    test::HeldClock clock;
    const test::TempFolder folder;
    auto book = demo::createDemoBook(folder / "demo.jobbook", clock.environment());
    ASSERT_TRUE(book);
    session::BookSession session(std::move(*book));
    m_onlooker.knowBook(session);
    const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), session.shop());
    buying::Planner planner;
    std::shared_ptr<const supply::CostCurve> curve;
    QObject::connect(&planner, &buying::Planner::curveGrew, &planner,
                     [&](const std::shared_ptr<const supply::CostCurve>& grown, bool isComplete) {
                         if (isComplete) curve = grown;
                     });
    planner.ask({buying::suppliesOf(session, true, false),
                 {supply::lineOf(session.designs().front(), session.materials(), 24)},
                 24});
    ASSERT_TRUE(test::waitFor([&] { return curve != nullptr; }));
    ASSERT_TRUE(paper::writePdf(
        buying::costCurvePage(curve, 48, 24, {session.shop(), formatter, QStringLiteral("24"), session.today()}),
        catalogue::Paper::Letter, pdf()));
    read(QStringLiteral("Staircase"));
}

} // namespace

// SPDX-License-Identifier: MIT
// The papers of Buying as an independent reader finds them.
#include "app/buying/shopping_list.h"
#include "app/paper/output.h"
#include "tests/app/paper/pdf_reader.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace sp;
using catalogue::Paper;
using units::Count;
using units::Money;

namespace {

constexpr int kPacks = 70; // of one supplier: more than a page holds

catalogue::Shop shopWith(Paper paper) {
    catalogue::Shop shop;
    shop.letterhead.name = "Kiln Lane Sparkle";
    shop.letterhead.lines = "7 Kiln Lane\nMillbrook";
    shop.isDemo = true;
    shop.paper = paper;
    return shop;
}

buying::Answer longAnswer() {
    buying::Answer answer;
    supply::PurchasePlan plan;
    const auto buy = [&](const std::string& supplier, const std::string& id, std::int64_t cents) {
        answer.job.offers.push_back({id, "Aquamarine SS10", "bag " + id, false, std::nullopt});
        const auto goods = Money::fromMicros(cents * 10'000);
        plan.packs.push_back({id, supplier, Count::of(2), goods});
        if (plan.orders.empty() || plan.orders.back().supplier != supplier)
            plan.orders.push_back({supplier, {}, Money::fromMicros(4'500'000)});
        plan.orders.back().goods += goods;
    };
    for (int i = 0; i < kPacks; ++i) buy("Kestrel Stones", "k" + std::to_string(100 + i), 1'000 + i);
    buy("Tollgate Trade", "t100", 250);
    for (const auto& order : plan.orders) plan.cost += order.goods + order.shipping;
    answer.plans.strategies[static_cast<std::size_t>(supply::Strategy::Mix)].plan = plan;
    return answer;
}

std::shared_ptr<const supply::CostCurve> curve() {
    auto made = std::make_shared<supply::CostCurve>();
    for (std::int64_t pieces = 1; pieces <= 24; ++pieces) {
        const auto cost = [&](std::int64_t once, std::int64_t each) {
            const auto money = Money::fromMicros((once + each * pieces) * 1'000'000);
            return supply::StrategyCost{money, money};
        };
        made->points.push_back({pieces, cost(2, 3), cost(20, 1), cost(2, 1), supply::Strategy::Mix, true});
    }
    made->runs = {{1, 24, supply::Strategy::Mix}};
    return made;
}

class BuyingPapers : public testing::TestWithParam<Paper> {
  protected:
    /// The pages, each checked for what every paper says of itself.
    QStringList pagesOf(const paper::Document& document, const char* title) {
        EXPECT_TRUE(paper::writePdf(document, GetParam(), m_pdf, db::IfThere::Replace));
        const auto pages = paper::test::pagesOf(m_pdf);
        for (qsizetype i = 0; i < pages.size(); ++i)
            for (const auto& said : {QStringLiteral("Kiln Lane Sparkle"), QLatin1String(title) + QString(),
                                     QStringLiteral("Demo: invented names and prices"),
                                     QStringLiteral("Page %1 of %2").arg(i + 1).arg(pages.size())})
                EXPECT_TRUE(pages[i].contains(said)) << said.toStdString() << " is not on " << pages[i].toStdString();
        for (const auto* said : {"7 Kiln Lane", "Millbrook", "24 × Lantern", "Dec 1, 2026"})
            EXPECT_TRUE(pages.value(0).contains(QString::fromUtf8(said))) << said;
        // Letter is 8 1/2 × 11 in; A4 is 210 × 297 mm (ISO 216), 595.28 × 841.89 points.
        const auto size =
            GetParam() == Paper::Letter ? QStringLiteral("612 x 792 pts") : QStringLiteral("595 x 842 pts");
        EXPECT_TRUE(paper::test::infoOf(m_pdf, QStringLiteral("Page size")).startsWith(size));
        return pages;
    }

    catalogue::Shop m_shop = shopWith(GetParam());
    desk::Formatter m_formatter{QLocale(QLocale::English, QLocale::UnitedStates), m_shop};
    buying::BuyingPaper m_about{m_shop, m_formatter, QString::fromUtf8("24 × Lantern"),
                                *units::Date::parse("2026-12-01")};

  private:
    QTemporaryDir m_folder;
    QString m_pdf = m_folder.filePath(QStringLiteral("paper.pdf"));
};

TEST_P(BuyingPapers, theShoppingListGoesOnUnderItsHead) {
    const auto pages = pagesOf(buying::shoppingPages(longAnswer(), m_about), "Shopping list");
    ASSERT_GT(pages.size(), 1);
    int packs = 0;
    for (const auto& page : pages) packs += static_cast<int>(page.count(QString::fromUtf8("2 × bag ")));
    EXPECT_EQ(packs, kPacks + 1);
    EXPECT_TRUE(pages[1].contains(QStringLiteral("Kestrel Stones, continued"))) << pages[1].toStdString();
    const auto& last = pages.back();
    EXPECT_TRUE(last.contains(QStringLiteral("Tollgate Trade")));
    EXPECT_FALSE(last.contains(QStringLiteral("Tollgate Trade, continued")));
    // 10.00 + 10.01 + … + 10.69 are 724.15; 2.50 and twice 4.50 more are 735.65.
    EXPECT_TRUE(last.contains(QStringLiteral("735.65 USD"))) << last.toStdString();
}

TEST_P(BuyingPapers, theStaircaseSaysWhatItsAxesCount) {
    const auto pages = pagesOf(buying::costCurvePage(curve(), 24, 24, m_about), "Cost of one piece by quantity");
    ASSERT_EQ(pages.size(), 1);
    EXPECT_TRUE(pages[0].contains(QStringLiteral("Cost of one piece, USD"))) << pages[0].toStdString();
    EXPECT_TRUE(pages[0].contains(QStringLiteral("Pieces")));
    EXPECT_TRUE(pages[0].contains(QString::fromUtf8("1–24: mix"))) << pages[0].toStdString();
    EXPECT_FALSE(pages[0].contains(QStringLiteral("are shown"))) << pages[0].toStdString();
}

TEST_P(BuyingPapers, theStaircaseSaysHowFarItGoesAndWhy) {
    auto pages = pagesOf(buying::costCurvePage(curve(), 24, 1'000'000, m_about), "Cost of one piece by quantity");
    EXPECT_TRUE(pages[0].contains(QStringLiteral("quantities up to 24 are shown, of 1,000,000 asked for")))
        << pages[0].toStdString();
    pages = pagesOf(buying::costCurvePage(curve(), 48, 24, m_about), "Cost of one piece by quantity");
    EXPECT_TRUE(pages[0].contains(QStringLiteral("quantities up to 24 are shown: beyond it")))
        << pages[0].toStdString();
}

INSTANTIATE_TEST_SUITE_P(Papers, BuyingPapers, testing::Values(Paper::Letter, Paper::A4),
                         [](const auto& paper) { return paper.param == Paper::Letter ? "Letter" : "A4"; });

} // namespace

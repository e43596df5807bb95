// SPDX-License-Identifier: MIT
//
// Sets of templates that are paid off over the planned pieces of their design. Every figure is worked by hand; prices
// and times are invented. That a set is paid by the pieces it is made for: common practice, no source.
#include "core/costing/cost_line.h"
#include "core/pricing/compare.h"
#include "core/pricing/messages.h"
#include "core/pricing/paid_off_sets.h"
#include "core/pricing/price_order.h"
#include "tests/support/figures_of.h"
#include "tests/support/sample_shop.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sp::pricing {

namespace {

using catalogue::DesignSet;
using catalogue::SetCost;
using catalogue::Step;
using costing::Part;
using sample::cents;
using sample::idOf;
using testing::ElementsAre;
using units::Count;
using units::Duration;
using units::Money;

/// A set of two colours of 4 × 4 in is one sheet at 8.00, and 14.70 of work: 1,040 s of art, cutting, weeding and
/// setting up are 10.40 at 0.01 a second, 300 holes at 0.01 are 3.00, overhead on 1,040 s at 0.00125 is 1.30.
struct Planned {
    catalogue::PriceBook book = sample::freeBook();
    catalogue::Order order = sample::orderOf({});

    explicit Planned(const std::vector<std::int64_t>& pieces, bool onWall = false) {
        book.shop.usualTemplate = idOf("Template");
        book.materials[idOf("Template")].price = units::UnitPrice{cents(800), Count::of(1)};
        book.shop.rates.labourPerHour = cents(3600);
        book.shop.rates.overheadPerMonth = cents(54'000);
        book.shop.rates.productivePerMonth = Duration::fromMinutes(120 * 60);
        const auto s = [](std::int64_t seconds) { return Duration::fromSeconds(seconds); };
        book.bench.of(Step::Art) = {s(600), {}, {}, {}};
        book.bench.of(Step::Cut) = {s(100), s(50), {}, {}};
        book.bench.of(Step::Weed) = {{}, s(60), {}, {}};
        book.bench.of(Step::SetUp) = {s(120), {}, {}, {}};
        book.bench.cutter = {cents(1'200'000), cents(200'000), 1'000'000};
        for (const auto n : pieces) {
            auto line = sample::square(n);
            line.baseMaterial = idOf("Hoodie");
            line.first().design = idOf("Square");
            line.first().plannedPieces = Count::of(100);
            line.first().templatesOnWall = onWall;
            order.lines.push_back(line);
        }
    }

    void sell(std::int64_t sold, std::optional<SetCost> kept = {}) {
        book.sets[idOf("Square")] = {idOf("Square"), Count::of(sold), kept};
    }
    costing::LineCost cost(std::size_t line = 0, std::int64_t rules = catalogue::kRulesVersion) const {
        layout::FitMemo fits;
        const auto lines = costLines(order, book, fits, rules);
        EXPECT_TRUE(lines) << (lines ? "" : describe(lines.error()));
        return lines ? lines->at(line).cost : costing::LineCost{};
    }
    costing::CostSheet sheet() const {
        layout::FitMemo fits;
        return costSheetOf(order, 0, book, fits).value();
    }
};

} // namespace

// 12 of 100 pieces bear 12 / 100 of 8.00; art and cutting are paid by the first job.
TEST(PaidOffSet, isBorneByItsPiecesFromTheFirstJobOn) {
    const Planned job({12});
    EXPECT_EQ(job.cost().paidOff.micros(), 960'000);
    EXPECT_EQ(job.cost().setUp.micros(), 14'700'000);
    EXPECT_EQ(job.cost().outOfPocket.micros(), 960'000);
    EXPECT_EQ(sample::amountOf(job.sheet(), Part::SetTemplates).micros(), 960'000);
    EXPECT_FALSE(sample::findAmount(job.sheet(), Part::Template));
    EXPECT_FALSE(sample::findAmount(job.sheet(), Part::SetWork));
}

TEST(PaidOffSet, isBorneWithTheTemplatesOnTheWallToo) {
    Planned job({12}, true);
    job.sell(12, SetCost{cents(800), {}});
    EXPECT_EQ(job.cost().paidOff.micros(), 960'000);
    EXPECT_EQ(job.cost().setUp.micros(), 0);
    EXPECT_EQ(job.cost().total.micros(), 960'000);
    job.book.shop.usualTemplate = {}; // whatever is used since
    EXPECT_EQ(job.cost().total.micros(), 960'000);
}

// 95 of 100 are sold: five are left, 0.40. Then nothing.
TEST(PaidOffSet, isBorneUpToThePlanAndNoFurther) {
    Planned job({12}, true);
    const auto at = [&](std::int64_t sold) {
        job.sell(sold, SetCost{cents(800), {}});
        return job.cost().total.micros();
    };
    EXPECT_EQ(at(88), 960'000);
    EXPECT_EQ(at(95), 400'000);
    EXPECT_EQ(at(100), 0);
    EXPECT_EQ(at(140), 0);
    std::int64_t paid = 0;
    for (std::int64_t sold = 0; sold < 120; sold += 12) paid += at(sold);
    EXPECT_EQ(paid, 8'000'000);
}

// Ten are left for 12 and 36 pieces: 0.80, a quarter and three quarters.
TEST(PaidOffSet, isBorneByTheLinesOfItsDesignTogether) {
    Planned job({12, 36}, true);
    job.sell(90, SetCost{cents(800), {}});
    EXPECT_EQ(job.cost(0).total.micros(), 200'000);
    EXPECT_EQ(job.cost(1).total.micros(), 600'000);
    job.order.lines[1].first().design = idOf("Other"); // with a plan of its own, of which nothing is sold
    EXPECT_EQ(job.cost(0).total.micros(), 800'000);
    EXPECT_EQ(job.cost(1).total.micros(), 2'880'000);
}

TEST(PaidOffSet, saysWhatALineBearsOfItOnlyWhereThereAreOthers) {
    const auto operandsOf = [](const Planned& job) {
        const auto sheet = job.sheet();
        const auto node = std::ranges::find(sheet.nodes, Part::SetTemplates, &costing::CostNode::part);
        EXPECT_NE(node, sheet.nodes.end());
        return std::pair(node->formula.find(costing::Operand::Pieces) != nullptr,
                         node->formula.find(costing::Operand::SetPieces) != nullptr);
    };
    EXPECT_EQ(operandsOf(Planned({12})), std::pair(false, false));
    EXPECT_EQ(operandsOf(Planned({12, 36})), std::pair(true, true));
}

// 12 / 100 of 14.70 are 1.764, and no line draws or cuts.
TEST(PaidOffSet, holdsArtAndCuttingWhereTheShopWants) {
    Planned job({12});
    job.book.shop.paysOffWork = true;
    EXPECT_EQ(job.cost().paidOff.micros(), 960'000 + 1'764'000);
    EXPECT_EQ(job.cost().setUp.micros(), 0);
    EXPECT_EQ(job.cost().total.micros(), 2'724'000);
    EXPECT_EQ(job.cost().outOfPocket.micros(), 960'000); // what is paid to others
    EXPECT_EQ(job.cost().bench.oncePerJob(), Duration{});
    EXPECT_EQ(sample::amountOf(job.sheet(), Part::SetWork).micros(), 1'764'000);
    EXPECT_FALSE(sample::findAmount(job.sheet(), Part::CutterWear));
    job.order.lines[0].first().templatesOnWall = true;
    EXPECT_EQ(job.cost().total.micros(), 2'724'000);
    // As it was kept, whatever the shop wants of others.
    job.book.shop.paysOffWork = false;
    job.sell(12, SetCost{cents(800), cents(1470)});
    EXPECT_EQ(job.cost().total.micros(), 2'724'000);
    job.order.lines[0].first().templatesOnWall = false;
    EXPECT_EQ(job.cost().total.micros(), 2'724'000);
}

TEST(PaidOffSet, costsWhatItDidWhenItWasCut) {
    Planned job({12}, true);
    job.book.materials[idOf("Template")].price->price = cents(1600);
    job.sell(12, SetCost{cents(800), {}});
    EXPECT_EQ(job.cost().total.micros(), 960'000);
    job.sell(12); // not known: what it would cost today
    EXPECT_EQ(job.cost().total.micros(), 1'920'000);
    job.book.materials[idOf("Template")].freight = {
        catalogue::FreightKind::Share, units::Rate::fromPercent(25), {}, {}};
    EXPECT_EQ(job.cost().total.micros(), 2'400'000);
}

// The plan is reached, and yet a set is cut: it is another one, paid by this job.
TEST(PaidOffSet, isAnotherOneWhereItIsCutAfterThePlan) {
    Planned job({12});
    job.sell(100, SetCost{cents(800), {}});
    EXPECT_EQ(job.cost().paidOff.micros(), 0);
    EXPECT_EQ(job.cost().setUp.micros(), 22'700'000);
    EXPECT_EQ(sample::amountOf(job.sheet(), Part::Template).micros(), 8'000'000);
    job.sell(95, SetCost{cents(800), {}});
    EXPECT_EQ(job.cost().paidOff.micros(), 400'000);
    EXPECT_EQ(job.cost().setUp.micros(), 14'700'000);
}

TEST(PaidOffSet, wasPaidByTheFirstJobsPiecesAloneBeforeRules3) {
    Planned job({12});
    EXPECT_EQ(job.cost(0, 2).setUp.micros(), 14'700'000 + 960'000);
    EXPECT_EQ(job.cost(0, 2).paidOff.micros(), 0);
    job.order.lines[0].first().templatesOnWall = true;
    EXPECT_EQ(job.cost(0, 2).total.micros(), 0);
}

// A line with a design that is paid off and one that is not: of the other 8.00 and all work; setting up is per place.
TEST(PaidOffSet, standsBesideOneThatIsPaidByTheJob) {
    Planned job({12});
    job.book.shop.paysOffWork = true;
    auto& places = job.order.lines[0].places;
    places.push_back(places[0]);
    places[1].design = idOf("Other");
    places[1].plannedPieces.reset();
    EXPECT_EQ(job.cost().paidOff.micros(), 2'724'000);
    EXPECT_EQ(job.cost().setUp.micros(), 22'700'000);
    for (const auto& node : job.sheet().nodes) EXPECT_TRUE(costing::holds(node.formula));
}

TEST(PaidOffSet, ofAOneOffKnowsNothingThatIsSold) {
    Planned job({12});
    job.sell(100);
    job.order.lines[0].first().design = {};
    EXPECT_EQ(job.cost().paidOff.micros(), 960'000);
}

// What is sold since is why the same order would cost less: 12 × 0.08 then, five of them now. The mark-up is none.
TEST(PaidOffSet, isACauseOfAnotherPrice) {
    Planned job({12}, true);
    job.order.lines[0].first().title = "Square";
    job.sell(0, SetCost{cents(800), {}});
    auto now = job.book;
    now.sets[idOf("Square")] = {idOf("Square"), Count::of(95), SetCost{cents(1600), {}}};
    layout::FitMemo fits;
    const auto compared = comparePrices(job.order, job.book, now, fits).value();
    EXPECT_EQ(compared.totalThen, cents(96));
    EXPECT_EQ(compared.totalNow, cents(84)); // 0.80 ÷ 12 is 0.0667, asked 0.07
    ASSERT_EQ(compared.causes.size(), 2U);
    EXPECT_EQ(compared.causes[0].effect, cents(36 - 96)); // 0.40 ÷ 12 is 0.0333, asked 0.03
    EXPECT_EQ(compared.causes[1].effect, cents(84 - 36));
    auto own = now;
    takeOutSold(own, job.order);
    EXPECT_EQ(own.sets[idOf("Square")].sold, Count::of(83));
    takeOutSold(own, sample::orderOf({job.order.lines[0], job.order.lines[0]}));
    EXPECT_EQ(own.sets[idOf("Square")].sold, Count::of(59));
}

TEST(PaidOffSet, isKeptAtWhatItCostByTheOrder) {
    Planned job({12});
    layout::FitMemo fits;
    EXPECT_EQ(setCosts(job.order, job.book, fits).value(),
              (std::unordered_map<base::Id, SetCost>{{idOf("Square"), {cents(800), {}}}}));
    job.book.shop.paysOffWork = true;
    EXPECT_EQ(setCosts(job.order, job.book, fits).value().at(idOf("Square")), (SetCost{cents(800), cents(1470)}));
    job.order.lines[0].first().plannedPieces.reset();
    EXPECT_TRUE(setCosts(job.order, job.book, fits).value().empty());
}

// 37 of 100 of 6.50 are 2.405.
TEST(PaidOffSet, isPaidAsFarAsItIsSold) {
    const auto paid = [](std::int64_t sold, std::optional<SetCost> cost) {
        return paidOf({idOf("Square"), Count::of(sold), cost}, Count::of(100)).micros();
    };
    EXPECT_EQ(paid(37, SetCost{cents(650), {}}), 2'405'000);
    EXPECT_EQ(paid(37, SetCost{cents(450), cents(200)}), 2'405'000);
    EXPECT_EQ(paid(140, SetCost{cents(650), {}}), 6'500'000);
    EXPECT_EQ(paid(37, {}), 0);
}

} // namespace sp::pricing

// SPDX-License-Identifier: MIT
#include "core/costing/cost_line.h"
#include "core/costing/formula.h"
#include "core/costing/parts.h"
#include "tests/support/cost_cases.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

namespace sp::costing {

namespace {

using sample::cents;
using sample::idOf;
using units::Count;
using units::Duration;
using units::Fraction;
using units::Money;
using units::Rate;

// By hand: 212 × 24 ÷ (1 − 2 %) × 9.99 / 1,440 = 5,191.836… × 6,937.5 micro-units = 36,018,367.3….
TEST(Formula, comesToWhatItSays) {
    const Traced term;
    const auto formula = term(Operand::StonesAPiece, Count::of(212)) * term(Operand::Pieces, Count::of(24)) /
                         term.without(Operand::Loss, Rate::fromPercent(2)) *
                         term(Operand::Price, units::UnitPrice{cents(999), Count::of(1'440)});
    EXPECT_EQ(evaluate(formula), Fraction::ratio(std::int64_t{212} * 24 * 9'990'000, 1'440) / Fraction::ratio(98, 100));
    EXPECT_EQ(Money::fromExact(evaluate(formula)).micros(), 36'018'367);
    EXPECT_EQ(std::get<Count>(*formula.find(Operand::Pieces)), Count::of(24));
    EXPECT_EQ(formula.find(Operand::Sheets), nullptr);
}

// By hand: 25 ÷ 2 is 12.5, rounded up 13; 18.00 an hour for 20 min is 6.00.
TEST(Formula, knowsWhatItsOperandsFollowFrom) {
    const Traced term;
    const auto cutsOf = [&](std::int64_t said) {
        return term(Operand::Cuts, Count::of(said), [](const auto& how) {
            return ceiling(how(Operand::Pieces, Count::of(25)) / how(Operand::Lifts, Count::of(2)));
        });
    };
    EXPECT_TRUE(holds(cutsOf(13) * term.number(3)));
    EXPECT_FALSE(holds(cutsOf(12) * term.number(3)));
    EXPECT_EQ(evaluate(cutsOf(13) * term.number(3)), Fraction::of(39));
    EXPECT_EQ(
        evaluate(term(Operand::LabourRate, PerHour{cents(1'800)}) * term(Operand::StepTime, Duration::fromMinutes(20))),
        Fraction::of(6'000'000));
    EXPECT_EQ(evaluate(toMillisecond(term.number(5) / term.number(2))), Fraction::of(2));
}

/// What nobody would write down: a formula is read by people.
bool multipliesByOne(const Formula& formula) {
    const auto isOne = [](const Formula& f) {
        return f.kind == Formula::Kind::Number && evaluate(f) == Fraction::of(1);
    };
    if (formula.kind == Formula::Kind::Product && std::ranges::any_of(formula.of, isOne)) return true;
    return std::ranges::any_of(formula.of, multipliesByOne);
}

/// The laws of a cost sheet that its formulas and the table's tags state.
void expectLawful(const sample::CostCase& made, const CostSheet& sheet) {
    const auto& line = made.line;
    const auto& what = made.name;
    Money labour;
    Money work;
    Money stones; // with their freight
    for (const auto& node : sheet.nodes) {
        if (node.formula.kind == Formula::Kind::Parts) continue;
        const auto where = what + ", part " + std::to_string(static_cast<int>(node.part));
        EXPECT_EQ(Money::fromExact(evaluate(node.formula)), node.amount) << where;
        EXPECT_TRUE(holds(node.formula)) << where;
        if (node.part == Part::Stone || node.part == Part::FreightOnStone) stones += node.amount;
        if (node.part == Part::LabourStep) labour += node.amount;
        if (node.part != Part::LabourStep) continue;
        const auto step = static_cast<catalogue::Step>(node.index);
        const bool isPacking = step == catalogue::Step::Pack && made.rules >= 3; // what is spoiled is not packed
        if (!catalogue::isOncePerJob(step) && !isPacking) work += node.amount;
    }
    EXPECT_EQ(sheet.labour, labour) << what;
    for (const auto& node : sheet.nodes) EXPECT_FALSE(multipliesByOne(node.formula)) << what;
    if (!line.customersGarment) return;
    for (const auto& node : sheet.nodes) {
        if (node.part == Part::SpoiledWork) {
            EXPECT_EQ(std::get<Money>(*node.formula.find(Operand::LostWork)), work) << what;
        }
        if (node.part == Part::SpoiledMaterials) {
            EXPECT_EQ(std::get<Money>(*node.formula.find(Operand::LostMaterials)), stones) << what;
        }
    }
}

TEST(Formula, ofEveryPartOfEveryShapeComesToItsAmount) {
    std::set<Part> seen;
    for (const auto& made : sample::costCases()) {
        layout::FitMemo fits;
        const auto sheet = costLine(made.line, made.book, fits, made.share, made.rules);
        ASSERT_TRUE(sheet.has_value()) << made.name << ": " << describe(sheet.error());
        expectLawful(made, *sheet);
        for (const auto& node : sheet->nodes) seen.insert(node.part);
    }
    for (const auto& row : partTable()) EXPECT_TRUE(seen.contains(row.part)) << static_cast<int>(row.part);
}

TEST(Formula, comesToItsAmountForAnyLine) {
    std::mt19937_64 random(test::printedSeed());
    const auto pick = [&](std::int64_t least, std::int64_t most) {
        return std::uniform_int_distribution<std::int64_t>(least, most)(random);
    };
    const auto cases = sample::costCases();
    for (int round = 0; round < 1'000; ++round) {
        auto made = cases[static_cast<std::size_t>(pick(0, static_cast<std::int64_t>(cases.size()) - 1))];
        auto& line = made.line;
        line.quantity = Count::of(pick(8, 3'000));
        for (auto& stone : line.first().stones) stone.count = Count::of(pick(1, 3'000));
        if (pick(0, 3) == 0) line.first().stones.pop_back();
        for (auto& [id, material] : made.book.materials) {
            material.price->price = Money::fromMicros(pick(0, 90'000'000));
            material.material.stone.loss = Rate::fromPpm(pick(0, 400'000));
            material.material.sheet.lifts = pick(1, 7);
        }
        auto& bench = made.book.bench;
        for (auto& step : bench.steps) step.per100Stones = Duration::fromMilliseconds(pick(0, 90'001));
        bench.press.secondPressShare = Rate::fromPpm(pick(0, 1'000'000));
        bench.press.lifePresses = pick(1, 900'000);
        bench.cutter.lifeHoles = pick(1, 9'000'000);
        auto& rates = made.book.shop.rates;
        rates.spoilage = Rate::fromPpm(pick(0, 500'000));
        rates.labourPerHour = Money::fromMicros(pick(0, 90'000'000));
        rates.productivePerMonth = Duration::fromMilliseconds(pick(1, 600'000'000));
        layout::FitMemo fits;
        const auto sheet = costLine(line, made.book, fits, made.share, made.rules);
        ASSERT_TRUE(sheet.has_value()) << made.name << ": " << describe(sheet.error());
        expectLawful(made, *sheet);
    }
}

// What is set apart by a tag, seen from outside: with templates on the wall exactly the set-up falls away, and what is
// paid out is what a shop pays whose own work, wear and overhead are free.
TEST(Parts, tagsSayWhatFallsAwayAndWhatIsPaidOut) {
    for (auto made : sample::costCases()) {
        if (made.line.first().templatesOnWall || made.rules < catalogue::kRulesVersion) continue;
        layout::FitMemo fits;
        const auto cut = costFigures(made.line, made.book, fits);
        ASSERT_TRUE(cut.has_value());
        auto onWall = made.line;
        onWall.first().templatesOnWall = true;
        EXPECT_EQ(cut->total - costFigures(onWall, made.book, fits)->total, cut->setUp) << made.name;
        made.book.shop.rates.labourPerHour = {};
        made.book.shop.rates.overheadPerMonth = {};
        made.book.bench.press.price = made.book.bench.press.salvage = {};
        made.book.bench.cutter.price = made.book.bench.cutter.salvage = {};
        EXPECT_EQ(costFigures(made.line, made.book, fits)->total, cut->outOfPocket) << made.name;
    }
}

// Planned pieces aside, over which a set is spread, a cost once for the job is the same for one piece and for many.
TEST(Parts, onceForTheJobDoesNotGrowWithThePieces) {
    const auto amountsOf = [](const sample::CostCase& made, std::int64_t pieces) {
        auto line = made.line;
        line.quantity = Count::of(pieces);
        line.sizes.clear();
        layout::FitMemo fits;
        const auto sheet = costLine(line, made.book, fits, made.share, made.rules);
        EXPECT_TRUE(sheet.has_value()) << made.name;
        std::vector<Money> once;
        for (const auto& node : sheet->nodes)
            for (const auto& row : partTable())
                if (row.part == node.part && (row.tags & tag::kOnce) &&
                    (row.part != Part::LabourStep || catalogue::isOncePerJob(static_cast<catalogue::Step>(node.index))))
                    once.push_back(node.amount);
        return once;
    };
    for (const auto& made : sample::costCases())
        if (!made.line.first().plannedPieces) { EXPECT_EQ(amountsOf(made, 1), amountsOf(made, 400)) << made.name; }
}

// Done or cut once however many pieces there are; of the labour the steps that make the set.
TEST(Parts, thatAreOnceForTheJobAreTheseAlone) {
    std::multiset<Part> once;
    for (const auto& row : partTable())
        if (row.tags & tag::kOnce) once.insert(row.part);
    EXPECT_EQ(once, (std::multiset<Part>{Part::Template, Part::OrderPacking, Part::FreightOnTemplate,
                                         Part::FreightOnOrder, Part::LabourStep, Part::WarmUp, Part::TestPress,
                                         Part::CutterWear, Part::OverheadOnce}));
}

TEST(Parts, standInReadingOrderWithTheirSums) {
    Part open = Part::Job;
    for (const auto& row : partTable()) {
        if (!row.amount)
            open = row.part;
        else
            EXPECT_TRUE(row.within == Part::Job || row.within == open) << static_cast<int>(row.part);
    }
}

} // namespace

} // namespace sp::costing

// SPDX-License-Identifier: MIT
// What a new shop has settled, and what a price is made of so far: each figure against pricing itself or by hand.
#include "core/quoting/first_steps.h"

#include "core/pricing/messages.h"
#include "tests/support/amounts.h"
#include "tests/support/described.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

namespace sp::quoting {

namespace {

using catalogue::MaterialKind;
using catalogue::PriceBook;
using support::idOf;
using support::inches;
using support::money;

/// A book of a shop that has decided nothing.
PriceBook emptyBook() {
    PriceBook book;
    book.shop.rates.productivePerMonth = units::Duration::fromMinutes(60);
    return book;
}

std::vector<FirstStep> settled(const FirstThings& things) {
    std::vector<FirstStep> found;
    for (const auto step : kFirstSteps)
        if (isSettled(step, things)) found.push_back(step);
    return found;
}

using Steps = std::vector<FirstStep>;

TEST(FirstSteps, nothingIsSettledInAnEmptyBookAndAllInAWorkingOne) {
    EXPECT_EQ(settled({emptyBook()}), Steps{});
    auto book = sample::priceBook();
    book.shop.letterhead.name = "Heron Street Sparkle";
    EXPECT_EQ(settled({book, true, true}), Steps(kFirstSteps.begin(), kFirstSteps.end()));
}

TEST(FirstSteps, eachIsSettledByItsOwn) {
    auto book = emptyBook();
    book.shop.letterhead.name = "Heron";
    EXPECT_EQ(settled({book}), Steps{FirstStep::Letterhead});
    book = emptyBook();
    book.shop.rules.tax.rate = units::Rate::fromPpm(1);
    EXPECT_EQ(settled({book}), Steps{FirstStep::MoneyAndTax});
    book = emptyBook();
    book.shop.rates.labourPerHour = money(0.01);
    EXPECT_EQ(settled({book}), Steps{}) << "a month is still to come";
    book.shop.rates.overheadPerMonth = money(0.01);
    EXPECT_EQ(settled({book}), Steps{FirstStep::HoursWorth});
    book = emptyBook();
    book.shop.usualTape = idOf(1);
    EXPECT_EQ(settled({book}), Steps{}) << "templates are still to come";
    book.shop.usualTemplate = idOf(2);
    EXPECT_EQ(settled({book}), Steps{FirstStep::EveryLine});
    EXPECT_EQ(settled({emptyBook(), true, false}), Steps{FirstStep::Design});
    EXPECT_EQ(settled({emptyBook(), false, true}), Steps{FirstStep::Quote});
}

TEST(FirstSteps, nothingCanBeMeant) {
    auto book = emptyBook();
    auto& meant = book.shop.meantAsNothing;
    meant.tax = meant.labour = meant.overhead = meant.tape = meant.templates = true;
    EXPECT_EQ(settled({book}), (Steps{FirstStep::MoneyAndTax, FirstStep::HoursWorth, FirstStep::EveryLine}));
}

TEST(FirstSteps, aStoneSettlesItsStepByAPriceAlone) {
    auto book = emptyBook();
    catalogue::PricedMaterial stone;
    stone.material.id = idOf(7);
    book.materials[stone.material.id] = stone;
    EXPECT_EQ(settled({book}), Steps{}) << "no price";
    auto& kept = book.materials[stone.material.id];
    kept.price = units::UnitPrice{units::Money(), units::Count::of(1440)};
    EXPECT_EQ(settled({book}), Steps{}) << "a price of 0 that is not meant";
    kept.material.meantAsNothing = true;
    EXPECT_EQ(settled({book}), Steps{FirstStep::Stones});
    kept.material.meantAsNothing = false;
    kept.price->price = money(5.80);
    EXPECT_EQ(settled({book}), Steps{FirstStep::Stones});
    kept.material.kind = MaterialKind::Packing;
    EXPECT_EQ(settled({book}), Steps{}) << "it is no stone";
}

TEST(FirstSteps, aTrialIsWhatTheCounterAsksForSoManyPieces) {
    const auto book = sample::priceBook();
    layout::FitMemo fits;
    const auto design = trialDesign(book);
    ASSERT_TRUE(design);
    EXPECT_LE(design->stones.size(), 2U);
    const auto trial = trialOf(*design, book, *units::Date::parse("2026-11-25"), fits);
    ASSERT_TRUE(trial) << test::described(trial.error());
    const auto asked = pricing::priceOrder(trial->order, book, fits);
    ASSERT_TRUE(asked);
    EXPECT_EQ(trial->order.lines.front().quantity, units::Count::of(24));
    EXPECT_EQ(trial->priced.lines.front().each, asked->lines.front().each);
    EXPECT_EQ(trial->cost.total, asked->lines.front().cost.total);
    EXPECT_TRUE(trial->leftOut.empty());
}

// By hand: nothing costs but the hour, nothing spoils, no step but packing has time, three minutes a piece. An hour is
// twenty pieces, so ten more for it are 0.50 on a piece at cost, and 0.90 with 80 % on top.
TEST(FirstSteps, tenMoreForAnHourAreSaidByThePiece) {
    auto book = emptyBook();
    catalogue::PricedMaterial stone;
    stone.material.id = idOf(7);
    stone.price = units::UnitPrice{money(1), units::Count::of(1)};
    book.materials[stone.material.id] = stone;
    book.bench.of(catalogue::Step::Pack).perPiece = units::Duration::fromMinutes(3);
    book.bench.press.platenWidth = inches(16);
    book.bench.press.platenHeight = inches(20);
    book.bench.press.lifePresses = 1;
    book.bench.cutter.lifeHoles = 1;
    book.shop.rules.ladder = {{units::Count::of(1), units::Rate::fromPercent(80)}};
    layout::FitMemo fits;
    const auto trial = trialOf(*trialDesign(book), book, *units::Date::parse("2026-11-25"), fits);
    ASSERT_TRUE(trial) << test::described(trial.error());
    EXPECT_EQ(trial->perTenAnHour, money(0.90));
    EXPECT_EQ(trial->cost.total, money(214 * 24));
    std::vector<base::Message> said;
    for (const auto& one : trial->leftOut) said.push_back(one.what);
    EXPECT_EQ(test::described(said).size(), 7U) << "tape, template, labour, overhead, press twice, cutter";
}

TEST(FirstSteps, theTrialDesignTakesWhatHasAPrice) {
    EXPECT_FALSE(trialDesign(emptyBook()));
    auto book = sample::priceBook();
    for (auto& [id, priced] : book.materials)
        if (priced.material.kind == MaterialKind::Stone || priced.material.kind == MaterialKind::Backing)
            priced.price = std::nullopt;
    EXPECT_FALSE(trialDesign(book));
    catalogue::PricedMaterial late;
    late.material.id = idOf(900);
    late.material.name = "Zircon SS6";
    late.price = units::UnitPrice{money(5), units::Count::of(144)};
    auto early = late;
    early.material.id = idOf(901);
    early.material.name = "Amber SS6";
    book.materials[late.material.id] = late;
    book.materials[early.material.id] = early;
    const auto design = trialDesign(book);
    ASSERT_TRUE(design);
    ASSERT_EQ(design->stones.size(), 2U);
    EXPECT_EQ(design->stones[0], (catalogue::StoneCount{early.material.id, units::Count::of(214)}));
    EXPECT_EQ(design->stones[1], (catalogue::StoneCount{late.material.id, units::Count::of(62)}));
    EXPECT_TRUE(design->usualBase.isNone());
}

} // namespace

} // namespace sp::quoting

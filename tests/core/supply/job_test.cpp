// SPDX-License-Identifier: MIT
// Every figure here is worked by hand from core/supply/job.h's rules; names and prices are invented.
#include "core/supply/job_plan.h"
#include "core/supply/messages.h"
#include "tests/core/supply/curve_of.h"
#include "tests/support/amounts.h"
#include "tests/support/seed.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace sp;
using namespace sp::supply;
using catalogue::Material;
using catalogue::MaterialKind;
using testing::HasSubstr;
using units::Count;
using units::Length;
using units::Money;
using units::Rate;

namespace {

using sp::support::inches;
using sp::support::money;

base::Id keyIn(std::uint8_t n) {
    base::Id::Bytes bytes{};
    bytes[15] = n;
    return base::Id::fromBytes(bytes);
}

enum Key : std::uint8_t { kAqua = 1, kJet, kTape, kTemplate, kBacking, kBag, kSeller, kFilm, kKite, kKit, kOther };

/// A square design of 5 in, four of which lie on every sheet; one supplier with 5.00 shipping, one kit
/// at 15.00.
class KiteJob : public testing::Test {
  protected:
    KiteJob() {
        stone(kAqua, "Aqua", Rate::fromPercent(2));
        stone(kJet, "Jet", Rate());
        sheet(kTape, "Tape", MaterialKind::Tape).lifts = 2;
        sheet(kTemplate, "Template", MaterialKind::Template);
        sheet(kBacking, "Backing", MaterialKind::Backing);
        Material bag;
        bag.id = keyIn(kBag);
        bag.name = "Bag";
        bag.kind = MaterialKind::Packing;
        m_supplies.materials.push_back(bag);
        seller(kSeller, "Kestrel Row", 5);
        pack(kAqua, "bag", 1000, 8);
        pack(kJet, "bag", 500, 4);
        pack(kTape, "sheet", 1, 1);
        pack(kTemplate, "sheet", 1, 2);
        pack(kBacking, "sheet", 1, 0.5);
        pack(kBag, "100", 100, 3);
        m_supplies.usualTape = keyIn(kTape);
        m_supplies.usualTemplate = keyIn(kTemplate);
        m_supplies.packing = {{keyIn(kBag)}};
        catalogue::Kit kit;
        kit.id = keyIn(kKit);
        kit.name = "Kite kit";
        kit.supplier = keyIn(kSeller);
        kit.design = keyIn(kKite);
        kit.price = money(15);
        kit.items = {{keyIn(kAqua), Count::of(1000)},
                     {keyIn(kJet), Count::of(500)},
                     {keyIn(kTape), Count::of(2)},
                     {keyIn(kTemplate), Count::of(1)},
                     {keyIn(kBacking), Count::of(3)}};
        m_supplies.kits.push_back(kit);
        m_kite.id = keyIn(kKite);
        m_kite.name = "Kite";
        m_kite.width = m_kite.height = inches(5);
        m_kite.stones = {{keyIn(kAqua), Count::of(100)}, {keyIn(kJet), Count::of(50)}};
        m_kite.usualBase = keyIn(kBacking);
    }

    void stone(Key id, const char* name, Rate loss) {
        Material material;
        material.id = keyIn(id);
        material.name = name;
        material.stone.loss = loss;
        m_supplies.materials.push_back(material);
    }
    catalogue::SheetTraits& sheet(Key id, const char* name, MaterialKind kind) {
        Material material;
        material.id = keyIn(id);
        material.name = name;
        material.kind = kind;
        material.sheet.width = material.sheet.height = inches(10);
        m_supplies.materials.push_back(material);
        return m_supplies.materials.back().sheet;
    }
    void seller(Key id, const char* name, double shipping) {
        catalogue::Supplier supplier;
        supplier.id = keyIn(id);
        supplier.name = name;
        supplier.shipping = money(shipping);
        m_supplies.suppliers.push_back(supplier);
    }
    void pack(Key material, const char* name, std::int64_t amount, double price) {
        catalogue::Pack out;
        out.id = keyIn(static_cast<std::uint8_t>(100 + m_supplies.packs.size()));
        out.material = keyIn(material);
        out.supplier = keyIn(kSeller);
        out.name = name;
        out.amount = Count::of(amount);
        out.prices = {{Count::of(1), money(price)}};
        m_supplies.packs.push_back(out);
    }

    Job job(std::int64_t pieces) {
        layout::FitMemo fits;
        auto made = jobOf({lineOf(m_kite, m_supplies.materials, pieces)}, m_supplies, fits);
        EXPECT_TRUE(made.has_value()) << (made ? "" : describe(made.error()));
        return made ? *made : Job{};
    }
    JobPlans plans(std::int64_t pieces) { return plansOf(job(pieces)); }
    Money cost(const JobPlans& of, Strategy strategy) {
        const auto& plan = of.of(strategy).plan;
        EXPECT_TRUE(plan.has_value()) << describe(of.of(strategy).impossible.value_or(base::Message{}));
        return plan ? plan->cost : Money();
    }

    Supplies m_supplies;
    catalogue::Design m_kite;
};

// Ten pieces with the kite in front and a flag of 60 Jet on the back: 10 × 100 ÷ 0.98 Aqua, 10 × (50 + 60) Jet; of tape
// that lifts twice five cuts for each of the two designs, four of 5 in and one of 8 in to a sheet; templates of two
// colours and of one. A line of three bags to sell takes three bags and is not packed.
TEST_F(KiteJob, takesEachPlaceOfAPieceAndWhatIsSoldAsItIs) {
    auto line = lineOf(m_kite, m_supplies.materials, 10);
    catalogue::Placement flag;
    flag.title = "Flag";
    flag.width = flag.height = inches(8);
    flag.stones = {{keyIn(kJet), Count::of(60)}};
    line.places.push_back(flag);
    catalogue::OrderLine bags;
    bags.title = "Bags";
    bags.places.clear();
    bags.baseMaterial = keyIn(kBag);
    bags.quantity = Count::of(3);
    layout::FitMemo fits;
    const auto made = jobOf({line, bags}, m_supplies, fits);
    ASSERT_TRUE(made) << describe(made.error());
    const auto taken = [&](const std::string& material) {
        for (const auto& need : needsOf(*made))
            if (need.material == material) return need.count.value();
        return std::int64_t{0};
    };
    EXPECT_EQ(taken("Aqua"), 1021);
    EXPECT_EQ(taken("Jet"), 1100);
    EXPECT_EQ(taken("Tape"), 2 + 5);
    EXPECT_EQ(taken("Template"), 1 + 1);
    EXPECT_EQ(taken("Backing"), 3 + 10);
    EXPECT_EQ(taken("Bag"), 10 + 3);
}

TEST_F(KiteJob, takesStonesWithLossAndWholeSheets) {
    // 900 / 0.98 = 918.4; 450; ceil(9 / 2) = 5 tapes, 4 on a sheet; two templates on one sheet; 9 backings, 4
    // on a sheet.
    const auto needs = needsOf(job(9));
    const auto count = [&](const char* material) {
        for (const auto& need : needs)
            if (need.material == material) return need.count.value();
        return std::int64_t{-1};
    };
    EXPECT_EQ(count("Aqua"), 919);
    EXPECT_EQ(count("Jet"), 450);
    EXPECT_EQ(count("Tape"), 2);
    EXPECT_EQ(count("Template"), 1);
    EXPECT_EQ(count("Backing"), 3);
    EXPECT_EQ(count("Bag"), 9);
}

// Nine kites in two bags each, and of what goes with the order once: the two of the line that names most, whether it
// comes first or last.
TEST_F(KiteJob, takesPackingByAmountAndOnceForTheOrder) {
    using catalogue::PackingPer;
    const auto bags = [&](std::vector<catalogue::OrderLine> lines) {
        layout::FitMemo fits;
        const auto made = jobOf(lines, m_supplies, fits);
        EXPECT_TRUE(made) << (made ? "" : describe(made.error()));
        std::int64_t count = 0;
        for (const auto& need : needsOf(*made))
            if (need.material == "Bag") count += need.count.value();
        return count;
    };
    m_supplies.packing = {{keyIn(kBag), Count::of(2)}};
    const auto nine = lineOf(m_kite, m_supplies.materials, 9);
    EXPECT_EQ(bags({nine}), 18);
    EXPECT_EQ(bags({nine, nine}), 36);
    m_supplies.packing = {{keyIn(kBag), Count::of(1), PackingPer::Order}};
    EXPECT_EQ(bags({nine}), 1);
    EXPECT_EQ(bags({nine, nine}), 1);
    auto own = nine;
    own.packing = {{keyIn(kBag), Count::of(2), PackingPer::Order}};
    EXPECT_EQ(bags({nine, own}), 2);
    EXPECT_EQ(bags({own, nine}), 2);
    own.packing.emplace();
    EXPECT_EQ(bags({own}), 0);
}

TEST_F(KiteJob, aKitThatCoversAllWins) {
    // Kit 15 + bags 3 + shipping 5; bulk 8 + 4 + 2 tapes 2 + 2 + 3 backings 1.5 + 3 + 5.
    const auto nine = plans(9);
    EXPECT_EQ(cost(nine, Strategy::Kits), money(23));
    EXPECT_EQ(cost(nine, Strategy::Bulk), money(25.5));
    EXPECT_EQ(cost(nine, Strategy::Mix), money(23));
    EXPECT_EQ(nine.winner, Strategy::Kits);
    EXPECT_TRUE(pointOf(job(9), nine).proven);
}

TEST_F(KiteJob, onePieceMoreMakesTheMixWin) {
    // 1000 / 0.98 = 1020.4: a second kit (38), or a bag of Aqua beside the kit (31); bulk takes two bags
    // (33.5).
    const auto ten = plans(10);
    EXPECT_EQ(cost(ten, Strategy::Kits), money(38));
    EXPECT_EQ(cost(ten, Strategy::Bulk), money(33.5));
    EXPECT_EQ(cost(ten, Strategy::Mix), money(31));
    EXPECT_EQ(ten.winner, Strategy::Mix);
    // Left: 2000 - 1021 Aqua at 8 / 1000 and 90 bags at 3 / 100.
    EXPECT_EQ(ten.of(Strategy::Mix).leftWorth, money(979 * 0.008 + 2.7));
    EXPECT_EQ(ten.of(Strategy::Mix).left.size(), 2U);
}

TEST_F(KiteJob, waysShareWhatWasFoundWhereTimeCutThemShort) {
    // Ten pieces cost 33.50 in bulk. Cut short, bulk shows the dear plan of thirty and the mix the better one, without
    // a kit: that is bulk's, too.
    const auto ten = plans(10);
    auto strategies = ten.strategies;
    auto& bulk = strategies[static_cast<std::size_t>(Strategy::Bulk)];
    auto& mix = strategies[static_cast<std::size_t>(Strategy::Mix)];
    const auto cheap = bulk;
    mix = cheap;
    mix.plan->bound = money(30);
    mix.plan->proven = false;
    bulk.plan->cost = money(99);
    bulk.plan->bound = money(20);
    bulk.plan->proven = false;
    const auto shared = compared(job(10), strategies);
    EXPECT_EQ(cost(shared, Strategy::Bulk), money(33.5));
    EXPECT_EQ(shared.of(Strategy::Bulk).plan->bound, money(30)); // no bulk is cheaper than any mix
    EXPECT_EQ(shared.of(Strategy::Kits).plan->bound, money(38)); // a kit is in it: kits stay as they are
    EXPECT_EQ(shared.winner, Strategy::Bulk);
}

TEST_F(KiteJob, theShelfComesFirst) {
    m_supplies.shelf[keyIn(kAqua)] = 21;
    EXPECT_EQ(cost(plans(10), Strategy::Mix), money(23)); // 1021 - 21: one kit is enough again
    for (const Key all : {kAqua, kJet, kTape, kTemplate, kBacking, kBag}) m_supplies.shelf[keyIn(all)] = 5000;
    const auto none = plans(10);
    EXPECT_TRUE(none.isOnShelf);
    EXPECT_FALSE(none.winner.has_value());
    EXPECT_EQ(cost(none, Strategy::Mix), Money());
}

TEST_F(KiteJob, templatesOnTheWallAreNotBought) {
    m_kite.templatesOnWall = true;
    EXPECT_EQ(cost(plans(9), Strategy::Bulk), money(23.5));
    m_supplies.cutsTemplates = false; // and nobody needs them cut either
    EXPECT_EQ(cost(plans(9), Strategy::Bulk), money(23.5));
}

TEST_F(KiteJob, withoutACutterTemplatesComeWithOneKit) {
    m_supplies.cutsTemplates = false;
    EXPECT_EQ(plans(9).of(Strategy::Mix).impossible->id, idOf(Note::WithNoKit));
    m_supplies.kits[0].priceWithTemplates = money(17);
    const auto nine = plans(9);
    EXPECT_EQ(cost(nine, Strategy::Kits), money(25));
    EXPECT_EQ(nine.of(Strategy::Bulk).impossible->id, idOf(Note::OnlyWithAKit));
    // 19 pieces take 1939 Aqua: two kits, one of them with the templates.
    const auto nineteen = plans(19);
    EXPECT_EQ(cost(nineteen, Strategy::Kits), money(40));
    EXPECT_EQ(nineteen.of(Strategy::Kits).plan->packs.size(), 3U); // a kit of each kind, and the bags
    m_supplies.kits[0].design = keyIn(kOther);                     // another design's templates help nothing
    EXPECT_EQ(plans(9).of(Strategy::Kits).impossible->id, idOf(Note::WithNoKit));
}

// 100 kites at 3 % spoiled: 3.09 are expected, so 4 are made besides. 104 × 100 ÷ 0.98 = 10,612.2 Aqua, 104 × 50 Jet,
// 52 pieces of tape and 104 backings, four to a sheet; templates are cut once, and a spare is not packed. Of 12 pieces
// 0.37 are expected: none.
TEST_F(KiteJob, takesItsSparesToo) {
    m_supplies.spares = {Rate::fromPercent(3), catalogue::Spares::WhereExpected};
    auto made = job(100);
    EXPECT_EQ(made.pieces(), 100);
    EXPECT_EQ(made.lines[0].spares.pieces, 4);
    const auto needed = [&](const char* material) {
        for (const auto& need : needsOf(made))
            if (need.material == material) return need.count.value();
        return std::int64_t{0};
    };
    EXPECT_EQ(needed("Aqua"), 10'613);
    EXPECT_EQ(needed("Jet"), 5'200);
    EXPECT_EQ(needed("Tape"), 13);
    EXPECT_EQ(needed("Template"), 1);
    EXPECT_EQ(needed("Backing"), 26);
    EXPECT_EQ(needed("Bag"), 100);
    setPieces(made, 12);
    EXPECT_EQ(made.lines[0].spares, (needs::LineSpares{0, {}, 0, 12}));
    EXPECT_EQ(needed("Jet"), 600);
}

// The proof of who stays cheaper looks at the bands alone: whatever the number, the needs must lie in them.
TEST_F(KiteJob, needsLieInTheirBands) {
    for (const auto when : {catalogue::Spares::WhereExpected, catalogue::Spares::Always, catalogue::Spares::Never}) {
        m_supplies.spares = {Rate::fromPercent(3), when};
        auto made = job(1);
        const auto bands = strategiesOf(made).needs;
        for (std::int64_t n = 1; n <= 400; ++n) {
            setPieces(made, n);
            for (const auto& need : needsOf(made)) {
                const auto band = std::ranges::find(bands, need.material, &NeedBand::material);
                ASSERT_NE(band, bands.end()) << need.material;
                const double least = band->perPiece.approximate() * static_cast<double>(n) + band->once.approximate();
                EXPECT_GE(static_cast<double>(need.count.value()), least - 1e-6) << need.material << ", " << n;
                EXPECT_LE(static_cast<double>(need.count.value()), least + band->extra.approximate() + 1e-6)
                    << need.material << ", " << n;
            }
        }
    }
}

TEST_F(KiteJob, aKitGivesWhatItsShortCountLeaves) {
    m_supplies.kits[0].shortCount = Rate::fromPercent(10);
    // 900 Aqua < 919: a bag is needed beside the kit for nine pieces.
    EXPECT_EQ(cost(plans(9), Strategy::Mix), money(25.5)); // the mix is no better than bulk: 15 + 8 + 3 + 5 = 31
    EXPECT_EQ(plans(9).winner, Strategy::Bulk);
}

TEST_F(KiteJob, saysPlainlyWhatIsLacking) {
    m_supplies.kits[0].items.erase(m_supplies.kits[0].items.begin() + 1);
    EXPECT_EQ(plans(9).of(Strategy::Kits).impossible, base::say(Note::NoKitHolds, "Jet"));
    m_supplies.kits.clear();
    EXPECT_EQ(plans(9).of(Strategy::Kits).impossible, base::say(Note::NoKitInTheBook));
    m_supplies.packs.erase(m_supplies.packs.begin());
    EXPECT_EQ(plans(9).of(Strategy::Bulk).impossible, base::say(Note::NoSupplierSells, "Aqua"));
}

// A bag of Jet at 0.00 is missing, not free: bulk has none, the mix takes the kit (23.00 as ever), and the pack is
// named. With another pack at 4.00 it goes without the one; meant, it costs nothing: bulk is 25.50 less 4.00.
TEST_F(KiteJob, aPackAtNothingIsMissingUnlessThatIsMeant) {
    auto bag = m_supplies.packs[1];
    m_supplies.packs[1].prices = {{Count::of(1), Money()}};
    m_supplies.packs[1].name = "free bag";
    EXPECT_EQ(plans(9).of(Strategy::Bulk).impossible, base::say(Note::PacksWithoutPrice, "Jet"));
    EXPECT_EQ(cost(plans(9), Strategy::Mix), money(23));
    EXPECT_EQ(job(9).unpriced, (std::vector<UnpricedPack>{{keyIn(kJet), "Jet", "free bag"}}));
    bag.id = keyIn(90);
    m_supplies.packs.push_back(bag);
    EXPECT_EQ(cost(plans(9), Strategy::Bulk), money(25.5));
    for (auto& material : m_supplies.materials) material.meantAsNothing = material.name == "Jet";
    EXPECT_EQ(cost(plans(9), Strategy::Bulk), money(21.5));
    EXPECT_TRUE(job(9).unpriced.empty());
}

// A price that falls to nothing from five bags on is no price either.
TEST_F(KiteJob, aBreakToNothingIsMissingToo) {
    m_supplies.packs[1].prices.push_back({Count::of(5), Money()});
    EXPECT_EQ(job(9).unpriced.size(), 1U);
}

TEST_F(KiteJob, theSameDesignTwiceSharesItsTemplates) {
    layout::FitMemo fits;
    const auto line = lineOf(m_kite, m_supplies.materials, 3);
    const auto order = jobOf({line, line}, m_supplies, fits);
    ASSERT_TRUE(order.has_value());
    EXPECT_EQ(order->pieces(), 6);
    for (const auto& need : needsOf(*order)) {
        if (need.material == "Template") { EXPECT_EQ(need.count.value(), 1); }
        // 600 / 0.98 = 612.2, rounded once for both lines (each line alone: 306.1 to 307, twice 614).
        if (need.material == "Aqua") { EXPECT_EQ(need.count.value(), 613); }
        // Sheets are cut line by line: two tapes of each line on one sheet.
        if (need.material == "Tape") { EXPECT_EQ(need.count.value(), 2); }
    }
}

TEST_F(KiteJob, takesAsManyColoursAsADesignMayHave) {
    layout::FitMemo fits;
    m_kite.stones.assign(static_cast<std::size_t>(catalogue::kMaxColours), {keyIn(kJet), Count::of(1)});
    EXPECT_TRUE(jobOf({lineOf(m_kite, m_supplies.materials, 1)}, m_supplies, fits).has_value());
    m_kite.stones.push_back({keyIn(kJet), Count::of(1)});
    EXPECT_FALSE(jobOf({lineOf(m_kite, m_supplies.materials, 1)}, m_supplies, fits).has_value());
}

TEST_F(KiteJob, refusesWhatCannotBeBoughtFor) {
    layout::FitMemo fits;
    EXPECT_FALSE(jobOf({}, m_supplies, fits).has_value());
    EXPECT_FALSE(jobOf({lineOf(m_kite, m_supplies.materials, 0)}, m_supplies, fits).has_value());
    auto wide = m_kite;
    wide.width = inches(11);
    const auto tooWide = jobOf({lineOf(wide, m_supplies.materials, 1)}, m_supplies, fits);
    ASSERT_FALSE(tooWide.has_value());
    EXPECT_EQ(tooWide.error().subject, "Tape");
    m_kite.stones.clear();
    EXPECT_FALSE(jobOf({lineOf(m_kite, m_supplies.materials, 1)}, m_supplies, fits).has_value());
}

TEST_F(KiteJob, findsFromWhereBulkStaysCheaper) {
    // Kits at 25.00; bulk of another supplier who ships at 12.00. Nine pieces: 33 against 37.50. Ten: 58
    // against 45.50. Nineteen, the last of two kits: 58 against 51.50; each kit more adds 25 for 9.8 pieces,
    // bulk about 15.
    m_supplies.kits[0].price = money(25);
    seller(kFilm, "Tollgate", 12);
    for (auto& pack : m_supplies.packs)
        if (pack.material != keyIn(kBag)) pack.supplier = keyIn(kFilm);
    const auto beyond = provenBeyond(strategiesOf(job(1)));
    ASSERT_TRUE(beyond.has_value());
    EXPECT_FALSE(curveOf(job(1), *beyond - 2).bulkStaysCheaperFrom.has_value()); // seen too little of
    const auto stairs = curveOf(job(1), *beyond + 20);
    EXPECT_EQ(stairs.bulkStaysCheaperFrom, 10);
    for (const auto& point : stairs.points) {
        EXPECT_EQ(*point.bulk.cost < *point.kits.cost, point.pieces >= 10) << point.pieces;
    }
}

TEST_F(KiteJob, claimsNothingWhileTheShelfMakesBothFree) {
    // Jet in no kit: kits never cover what goes beyond the shelf, which is enough for three pieces of
    // everything.
    m_supplies.kits[0].items.erase(m_supplies.kits[0].items.begin() + 1);
    for (const Key all : {kAqua, kJet, kTape, kTemplate, kBacking, kBag}) m_supplies.shelf[keyIn(all)] = 5000;
    m_supplies.shelf[keyIn(kJet)] = 150;
    EXPECT_EQ(curveOf(job(1), 6).bulkStaysCheaperFrom, 4);
}

TEST(JobBand, holdsTheNeedOfEveryQuantity) {
    std::mt19937_64 random(test::printedSeed());
    const auto pick = [&](std::int64_t least, std::int64_t most) {
        return std::uniform_int_distribution<std::int64_t>(least, most)(random);
    };
    for (int round = 0; round < 1'000; ++round) {
        JobTake take;
        take.material = "M";
        take.kind = static_cast<needs::NeedKind>(pick(0, 4));
        take.perPiece = Count::of(pick(1, 500));
        take.loss = Rate::fromPpm(pick(0, 200'000));
        take.lifts = pick(1, 4);
        take.perSheet = pick(1, 30);
        take.cuts = pick(1, 6);
        Job job;
        job.lines.push_back({"L", 1, {take}});
        const auto band = strategiesOf(job).needs.front();
        for (std::int64_t n = 1; n <= 200; ++n) {
            job.lines.front().pieces = n;
            const auto need = units::Fraction::of(needsOf(job).front().count.value());
            const auto least = band.perPiece * units::Fraction::of(n) + band.once;
            ASSERT_FALSE(need < least) << n << " pieces";
            ASSERT_FALSE(least + band.extra < need) << n << " pieces";
        }
    }
}

} // namespace

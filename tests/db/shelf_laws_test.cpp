// SPDX-License-Identifier: MIT
//
// The laws of the shelf over a shop at work, made up from a seed: what lies there is the sum of the movements and never
// was below nothing; promised is what agreed jobs still take; and what was paid for the shelf is what lies there and
// what left it, by the moving average of bookkeeping. The average is worked out here once more, as a ratio of whole
// numbers, and held against the one the book gives.
#include "app/demo/demo_book.h"
#include "db/book/shelf_state.h"
#include "tests/db/bench_book.h"
#include "tests/support/seed.h"
#include "tests/support/shop_year.h"

#include <cmath>
#include <map>
#include <set>

namespace {

using namespace sp;
using db::records::MoveKind;
using db::records::StockMove;
using test::valueOf;
using units::Fraction;
using units::Money;

constexpr int kActs = 240;
constexpr int kLookedAt = 40; ///< acts between two checks

/// What became of what was bought of a material, in micro-units; sums of many ratios only to a millionth of one.
struct Worth {
    std::int64_t bought = 0;
    double left = 0; ///< went out at the average, less what came in at it
    std::int64_t lying = 0;
    std::int64_t sum = 0; ///< of what lies there, `per` of them; nothing while no cost is known
    std::int64_t per = 0;
    double rounded = 0; ///< by which what lay there was rounded before receipts joined it
    int receipts = 0;

    Fraction each() const { return per == 0 ? Fraction::of(0) : Fraction::ratio(sum, per); }
    double at(std::int64_t things) const {
        return per == 0 ? 0 : static_cast<double>(sum) / static_cast<double>(per) * static_cast<double>(things);
    }

    void add(const StockMove& move) {
        if (lying == 0 && (move.cost || move.kind == MoveKind::Bought)) sum = per = 0;
        if (!move.cost) {
            left -= at(move.amount);
            lying += move.amount;
            return;
        }
        const bool isFirst = per == 0; // what lay there without a cost is worth as much as the receipt from now on
        const auto value = isFirst ? Money() : Money::fromExact(each() * Fraction::of(lying));
        rounded += static_cast<double>(value.micros()) - at(lying);
        sum = value.micros() + move.cost->micros();
        per = (isFirst ? 0 : lying) + move.amount;
        if (isFirst) left -= at(lying);
        bought += move.cost->micros();
        lying += move.amount;
        ++receipts;
    }
};

/// The movements that were not taken back.
std::vector<StockMove> standing(const std::vector<StockMove>& moves) {
    std::set<base::Id> gone;
    std::vector<StockMove> all;
    for (auto move = moves.rbegin(); move != moves.rend(); ++move) {
        if (gone.contains(move->id)) continue;
        if (move->reverses)
            gone.insert(*move->reverses);
        else
            all.insert(all.begin(), *move);
    }
    return all;
}

class ShelfLaws : public test::BookTest {
  protected:
    void SetUp() override {
        auto made = demo::createDemoBook(file, clock.environment());
        ASSERT_TRUE(made) << describe(made.error());
        book = std::move(*made);
        auto shop = valueOf(book->shop());
        shop.usedWhen = catalogue::UsedWhen::Ready;
        ASSERT_TRUE(book->save(shop));
        materials = valueOf(book->materials());
        for (auto& material : materials) {
            material.basis = catalogue::PriceBasis::ShelfAverage;
            ASSERT_TRUE(book->save(material));
        }
    }

    /// Something that is done at the shelf itself.
    void atTheShelf(std::mt19937_64& random) {
        const auto any = [&](std::int64_t most) {
            return static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most + 1));
        };
        const auto& material =
            materials[static_cast<std::size_t>(any(static_cast<std::int64_t>(materials.size()) - 1))];
        const auto lying = valueOf(book->shelf())[material.id];
        switch (any(5)) {
        case 0:
        case 1:
            ASSERT_TRUE(book->moveStock({{},
                                         material.id,
                                         1 + any(2'000),
                                         Money::fromMicros(any(90'000'000)),
                                         "delivery",
                                         {},
                                         MoveKind::Bought,
                                         {}}));
            break;
        case 2: {
            const auto kind = any(1) == 0 ? MoveKind::Lost : MoveKind::Spoiled;
            const auto asked = 1 + any(50);
            EXPECT_EQ(book->moveStock({{}, material.id, -asked, {}, "spilt", {}, kind, {}}).has_value(),
                      asked <= lying);
            break;
        }
        case 3: ASSERT_TRUE(book->countShelf(material.id, any(3) == 0 ? 0 : lying + any(20), "stocktaking")); break;
        case 4: static_cast<void>(book->undo()); break;
        default: static_cast<void>(book->redo()); break;
        }
    }

    void expectLaws() {
        const auto shelf = valueOf(db::readShelf(*book, reader));
        const auto prices = valueOf(book->priceBook({}));
        std::map<base::Id, std::map<base::Id, std::int64_t>> taken; // by job, by material
        for (const auto& material : materials) {
            std::int64_t lying = 0;
            const auto moves = valueOf(book->movesOf(material.id));
            for (const auto& move : moves) {
                lying += move.amount;
                EXPECT_GE(lying, 0) << material.name;
                if (move.job && (move.kind == MoveKind::Used || move.kind == MoveKind::Returned))
                    taken[*move.job][material.id] -= move.amount;
            }
            EXPECT_EQ(shelf.of(material.id).onHand, lying) << material.name;
            Worth worth;
            for (const auto& move : standing(moves)) worth.add(move);
            EXPECT_EQ(worth.lying, lying);
            // All that was paid lies there or left, but for what is rounded: half a micro-unit a receipt at most.
            const auto all = worth.at(lying) + worth.left;
            EXPECT_NEAR(all, static_cast<double>(worth.bought) + worth.rounded, 0.001) << material.name;
            EXPECT_LE(std::abs(worth.rounded), worth.receipts / 2.0 + 0.001) << material.name;
            const auto& priced = prices.materials.at(material.id);
            if (lying > 0 && worth.per > 0) {
                ASSERT_TRUE(priced.price) << material.name;
                EXPECT_EQ(priced.price->each(), worth.each()) << material.name;
            }
        }
        std::map<base::Id, std::int64_t> promised;
        for (const auto& job : valueOf(book->quotes({}, 1'000'000))) {
            if (job.stage != db::Stage::Agreed && job.stage != db::Stage::InProduction) continue;
            const auto quote = valueOf(book->quote(job.id));
            const auto work = db::benchWorkOf(quote.order, *quote.frozen, fits, valueOf(book->setsThere()));
            for (const auto& take : work.takes)
                promised[take.material] +=
                    std::max<std::int64_t>(0, take.count - std::max<std::int64_t>(0, taken[job.id][take.material]));
        }
        for (const auto& material : materials)
            EXPECT_EQ(shelf.of(material.id).promised, promised[material.id]) << material.name;
    }

    std::vector<catalogue::Material> materials;
    db::BenchReader reader;
    layout::FitMemo fits;
};

TEST_F(ShelfLaws, holdOverAShopAtWork) {
    const auto seed = test::printedSeed();
    std::mt19937_64 random(seed);
    test::ShopYear year(*book, clock, seed);
    year.open(12);
    for (int i = 0; i < kActs; ++i) {
        static_cast<void>(year.act());
        ASSERT_NO_FATAL_FAILURE(atTheShelf(random));
        if (i % kLookedAt == kLookedAt - 1) { ASSERT_NO_FATAL_FAILURE(expectLaws()) << "after " << i; }
    }
    int used = 0;
    for (const auto& material : materials)
        for (const auto& move : valueOf(book->movesOf(material.id))) used += move.kind == MoveKind::Used ? 1 : 0;
    EXPECT_GT(used, 10) << "or nothing was made";
    expectSound();
}

} // namespace

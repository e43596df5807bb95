// SPDX-License-Identifier: MIT
// The demo's kits are there to be compared: one pays for a handful, one never does, and in between a mix is best.
#include "app/demo/demo_book.h"
#include "core/layout/fit.h"
#include "core/supply/staircase.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using namespace sp;
using catalogue::MaterialKind;
using supply::Way;
using units::Count;
using units::Money;

template<class T>
T all(base::Result<T> read) {
    EXPECT_TRUE(read.has_value()) << (read ? "" : describe(read.error()));
    return read.value_or(T{});
}

class DemoKits : public testing::Test {
  protected:
    DemoKits() {
        auto book = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.surroundings());
        EXPECT_TRUE(book.has_value());
        m_materials = all((*book)->materials());
        m_packs = all((*book)->packs());
        m_suppliers = all((*book)->suppliers());
        m_kits = all((*book)->kits());
        m_designs = all((*book)->designs());
    }

    /// Kits against bulk for the design of that kit: stones, tape and backing, sheets counted in the pieces they serve.
    supply::StaircaseProblem problemOf(const std::string& name) {
        const auto kit = std::find_if(m_kits.begin(), m_kits.end(), [&](const auto& k) { return k.name == name; });
        const auto design =
            std::find_if(m_designs.begin(), m_designs.end(), [&](const auto& d) { return d.id == kit->design; });
        supply::StaircaseProblem problem;
        std::set<base::Id> taken;
        for (const auto& stone : design->stones) {
            problem.piece.push_back({stone.material.text(), stone.count, units::Rate::fromPercent(2)});
            taken.insert(stone.material);
        }
        for (const auto& material : m_materials)
            if (material.kind == MaterialKind::Tape || material.id == design->usualBase)
                if (material.kind != MaterialKind::Blank) {
                    problem.piece.push_back({material.id.text(), Count::of(1), {}});
                    taken.insert(material.id);
                }
        for (const auto& supplier : m_suppliers)
            problem.suppliers.push_back({supplier.id.text(), supplier.shipping, supplier.freeFrom, supplier.minimum});
        for (const auto& pack : m_packs) {
            if (!taken.contains(pack.material)) continue;
            supply::Pack bulk{pack.id.text(), pack.supplier.text(), {}, {}, std::nullopt};
            bulk.gives.push_back({pack.material.text(), servedBy(*design, pack.material, pack.amount, 0)});
            for (const auto& price : pack.prices) bulk.prices.push_back({price.from, price.each});
            problem.bulk.push_back(bulk);
        }
        supply::Pack whole{kit->id.text(), kit->supplier.text(), {}, {{Count::of(1), kit->price}}, std::nullopt};
        for (const auto& item : kit->items)
            if (taken.contains(item.material))
                whole.gives.push_back(
                    {item.material.text(), servedBy(*design, item.material, item.count, kit->shortCount.ppm())});
        problem.kits.push_back(whole);
        return problem;
    }
    Count servedBy(const catalogue::Design& design, const base::Id& id, Count amount, std::int64_t shortPpm) {
        const auto& material =
            *std::find_if(m_materials.begin(), m_materials.end(), [&](const auto& m) { return m.id == id; });
        if (material.kind == MaterialKind::Stone) return Count::of(amount.value() * (1'000'000 - shortPpm) / 1'000'000);
        const auto& sheet = material.sheet;
        const auto border = sheet.border + sheet.border;
        const auto fit = layout::fitSheet({sheet.width, sheet.height}, {design.width + border, design.height + border},
                                          {sheet.margin, sheet.gap, sheet.oneWay});
        return Count::of(amount.value() * fit.value().count * sheet.lifts);
    }
    supply::StaircasePoint at(const supply::StaircaseProblem& problem, std::int64_t pieces) {
        const auto point = supply::compareWays(problem, pieces, [] { return false; });
        EXPECT_TRUE(point) << (point ? "" : describe(point.error()));
        EXPECT_TRUE(point->proven);
        return point.value();
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    std::vector<catalogue::Material> m_materials;
    std::vector<catalogue::Pack> m_packs;
    std::vector<catalogue::Supplier> m_suppliers;
    std::vector<catalogue::Kit> m_kits;
    std::vector<catalogue::Design> m_designs;
};

TEST_F(DemoKits, theStarterKitPaysForSixAndMixesWithBulkForEight) {
    const auto problem = problemOf("Lantern starter kit");
    const auto six = at(problem, 6);
    EXPECT_EQ(six.winner, Way::Kits);
    EXPECT_EQ(six.kits.cost, Money::fromMicros(34'400'000)); // 24.90 and 9.50 shipping, worked by hand
    const auto eight = at(problem, 8);
    EXPECT_EQ(eight.winner, Way::Mix);
    // 8 x 212 / 0.98 = 1731 stones, 1425 are in the kit: 3 bags of a gross at 1.39 and 7.50 shipping, worked by hand.
    EXPECT_EQ(eight.mix.cost, Money::fromMicros(46'070'000));
    EXPECT_EQ(eight.kits.cost, Money::fromMicros(59'300'000)); // two kits, one shipping
    EXPECT_LT(*eight.mix.cost, *eight.bulk.cost);
}

TEST_F(DemoKits, theGiftKitNeverPays) {
    const auto problem = problemOf("Heron gift kit");
    for (std::int64_t pieces = 1; pieces <= 12; ++pieces) EXPECT_EQ(at(problem, pieces).winner, Way::Bulk) << pieces;
}

} // namespace

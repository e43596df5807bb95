// SPDX-License-Identifier: MIT
#include "tests/db/bench_book.h"

#include <functional>
#include <ostream>

namespace {

using namespace sp;
using base::Code;
using units::Count;
using units::Money;
using units::Rate;

class KitTest : public test::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        kit = test::sampleKit(stone, supplier, design.id);
        kit.items.push_back({tape, Count::of(2)});
        kit.id = book->save(kit).value();
    }
    catalogue::Kit kit;
};

TEST_F(KitTest, isGivenBackAsItWasSaved) {
    catalogue::Kit plain{.id = {},
                         .name = "Bits",
                         .supplier = supplier,
                         .design = {},
                         .price = {},
                         .priceWithTemplates = {},
                         .items = {},
                         .tools = {},
                         .shortCount = {},
                         .pricedOn = {}};
    plain.id = book->save(plain).value();
    reopen();
    EXPECT_EQ(book->kits().value(), (std::vector{plain, kit}));
    expectSound();
}

TEST_F(KitTest, isUndoneAndRedone) {
    auto changed = kit;
    changed.price = Money::fromMicros(1);
    ASSERT_TRUE(book->save(changed));
    EXPECT_EQ(book->undoState()->undo, "price of Lantern kit");
    ASSERT_TRUE(book->removeKit(kit.id));
    EXPECT_EQ(book->undoState()->undo, "removing Lantern kit");
    EXPECT_EQ(book->kits()->size(), 0U);
    EXPECT_EQ(book->removeKit(kit.id).error().code, Code::NotFound);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->kits().value(), std::vector{changed});
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->kits().value(), std::vector{kit});
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->kits()->size(), 0U);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(book->kits().value(), std::vector{kit});
    expectSound();
}

TEST_F(KitTest, keepsWhatItNeedsInTheBook) {
    EXPECT_EQ(book->removeSupplier(supplier).error().detail,
              "This supplier sells the kit “Lantern kit”; remove that kit or give it another supplier first.");
    EXPECT_EQ(book->removeDesign(design.id).error().detail,
              "The kit “Lantern kit” is made for this design; remove that kit or make it for another first.");
    ASSERT_TRUE(book->save(test::sampleShop(blank))); // lets go of the tape
    const auto removed = book->removeMaterial(tape);
    EXPECT_EQ(removed.error().code, Code::Conflict);
    EXPECT_EQ(removed.error().detail, "This material is used by the kit “Lantern kit”; take it out there first.");
    ASSERT_TRUE(book->removeKit(kit.id));
    EXPECT_TRUE(book->removeMaterial(tape));
    EXPECT_TRUE(book->removeSupplier(supplier));
    EXPECT_TRUE(book->removeDesign(design.id));
    for (int step = 0; step < 4; ++step) ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->kits().value(), std::vector{kit});
    expectSound();
}

TEST_F(KitTest, refusesASecondOneOfTheSameName) {
    auto other = kit;
    other.id = {};
    other.name = "LANTERN kit";
    const auto saved = book->save(other);
    EXPECT_EQ(saved.error().code, Code::Conflict);
    EXPECT_EQ(saved.error().detail, "There is another kit called “LANTERN kit”; choose another name.");
}

struct KitRefusal {
    const char* name;
    std::function<void(catalogue::Kit&)> spoil;
    const char* detail;
};

void PrintTo(const KitRefusal& row, std::ostream* out) { *out << row.name; }

class RefusedKit : public KitTest, public testing::WithParamInterface<KitRefusal> {};

TEST_P(RefusedKit, isSaidInOneSentenceAndChangesNothing) {
    auto spoilt = kit;
    GetParam().spoil(spoilt);
    const auto saved = book->save(spoilt);
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, Code::Invalid);
    EXPECT_EQ(saved.error().detail, GetParam().detail);
    EXPECT_EQ(book->kits().value(), std::vector{kit});
    expectSound();
}

INSTANTIATE_TEST_SUITE_P(
    Kit, RefusedKit,
    testing::Values(KitRefusal{"noName", [](auto& k) { k.name.clear(); }, "The name is missing; type one."},
                    KitRefusal{"noSupplier", [](auto& k) { k.supplier = {}; },
                               "The supplier of “Lantern kit” is missing; choose one."},
                    KitRefusal{"negativePrice", [](auto& k) { k.price = Money::fromMicros(-1); },
                               "The price of “Lantern kit” must be from 0 to 1000000000."},
                    KitRefusal{"negativePriceWithTemplates",
                               [](auto& k) { k.priceWithTemplates = Money::fromMicros(-1); },
                               "The price with templates cut of “Lantern kit” must be from 0 to 1000000000."},
                    KitRefusal{"allShort", [](auto& k) { k.shortCount = Rate::fromPercent(100); },
                               "The short count of “Lantern kit” must be from 0 % to 99.9999 %."},
                    KitRefusal{"nothingOfAnItem", [](auto& k) { k.items[0].count = Count::of(0); },
                               "The number in the kit of “Lantern kit” must be from 1 to 1000000000."},
                    KitRefusal{"materialNotChosen", [](auto& k) { k.items[0].material = {}; },
                               "The material of “Lantern kit” is missing; choose one."},
                    KitRefusal{"materialTwice", [](auto& k) { k.items.push_back(k.items[0]); },
                               "The contents of “Lantern kit” name a material twice; put the two rows into one."},
                    KitRefusal{"materialUnknown", [](auto& k) { k.items[0].material = k.supplier; },
                               "“Lantern kit” refers to something that is not in the book; choose it anew."},
                    KitRefusal{"namelessTool", [](auto& k) { k.tools[0].clear(); },
                               "The tools of “Lantern kit” is missing; type one."}),
    [](const auto& row) { return row.param.name; });

// ------------------------------------------------------------------------------------------- columns of price lists

TEST_F(KitTest, remembersTheColumnsOfAPriceList) {
    EXPECT_EQ(book->priceListColumns()->size(), 0U);
    auto list = test::samplePriceListColumns(supplier);
    ASSERT_TRUE(book->save(list));
    EXPECT_EQ(book->undoState()->undo, "columns of the price list of Harbour Lane Beads");
    const auto first = list;
    list.decimalComma = false;
    list.columns.pop_back();
    ASSERT_TRUE(book->save(list));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->priceListColumns().value(), std::vector{first});
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->priceListColumns()->size(), 0U);
    ASSERT_TRUE(book->redo());
    ASSERT_TRUE(book->redo());
    reopen();
    EXPECT_EQ(book->priceListColumns().value(), std::vector{list});
    expectSound();
    list.columns = {{catalogue::ListColumn::Price, "a"}, {catalogue::ListColumn::Price, "b"}};
    EXPECT_EQ(book->save(list).error().detail,
              "The columns of the price list say the same twice; choose one column for each.");
    list.supplier = stone;
    EXPECT_EQ(book->save(list).error().code, Code::NotFound);
}

} // namespace

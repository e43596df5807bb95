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
    EXPECT_EQ(test::described(book->undoState()->undo), "FieldOf(Price, Lantern kit)");
    ASSERT_TRUE(book->removeKit(kit.id));
    EXPECT_EQ(test::described(book->undoState()->undo), "Removing(Lantern kit)");
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
    EXPECT_EQ(test::described(book->removeSupplier(supplier).error()), "SupplierOfKit(Lantern kit)");
    EXPECT_EQ(test::described(book->removeDesign(design.id).error()), "DesignOfKit(Lantern kit)");
    ASSERT_TRUE(book->save(test::sampleShop(blank))); // lets go of the tape
    const auto removed = book->removeMaterial(tape);
    EXPECT_EQ(removed.error().code, Code::Conflict);
    EXPECT_EQ(test::described(removed.error()), "MaterialOfKit(Lantern kit)");
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
    EXPECT_EQ(test::described(saved.error()), "NameOfAnother(Kit, LANTERN kit)");
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
    EXPECT_EQ(test::described(saved.error()), GetParam().detail);
    EXPECT_EQ(book->kits().value(), std::vector{kit});
    expectSound();
}

INSTANTIATE_TEST_SUITE_P(
    Kit, RefusedKit,
    testing::Values(
        KitRefusal{"noName", [](auto& k) { k.name.clear(); }, "NotTyped(TheField(Name))"},
        KitRefusal{"noSupplier", [](auto& k) { k.supplier = {}; }, "NotChosen(TheFieldOf(Supplier, Lantern kit))"},
        KitRefusal{"negativePrice", [](auto& k) { k.price = Money::fromMicros(-1); },
                   "FieldOutOfRange(TheFieldOf(Price, Lantern kit), 0, 1000000000000000)"},
        KitRefusal{"negativePriceWithTemplates", [](auto& k) { k.priceWithTemplates = Money::fromMicros(-1); },
                   "FieldOutOfRange(TheFieldOf(PriceWithTemplatesCut, Lantern kit), 0, 1000000000000000)"},
        KitRefusal{"allShort", [](auto& k) { k.shortCount = Rate::fromPercent(100); },
                   "FieldOutOfRange(TheFieldOf(ShortCount, Lantern kit), 0, 999999)"},
        KitRefusal{"nothingOfAnItem", [](auto& k) { k.items[0].count = Count::of(0); },
                   "FieldOutOfRange(TheFieldOf(NumberInTheKit, Lantern kit), 1, 1000000000)"},
        KitRefusal{"materialNotChosen", [](auto& k) { k.items[0].material = {}; },
                   "NotChosen(TheFieldOf(Material, Lantern kit))"},
        KitRefusal{"materialTwice", [](auto& k) { k.items.push_back(k.items[0]); },
                   "MaterialTwice(TheFieldOf(Contents, Lantern kit))"},
        KitRefusal{"materialUnknown", [](auto& k) { k.items[0].material = k.supplier; },
                   "RefersToNothing(Lantern kit)"},
        KitRefusal{"namelessTool", [](auto& k) { k.tools[0].clear(); }, "NotTyped(TheFieldOf(Tools, Lantern kit))"}),
    [](const auto& row) { return row.param.name; });

// ------------------------------------------------------------------------------------------- columns of price lists

TEST_F(KitTest, remembersTheColumnsOfAPriceList) {
    EXPECT_EQ(book->priceListColumns()->size(), 0U);
    auto list = test::samplePriceListColumns(supplier);
    ASSERT_TRUE(book->save(list));
    EXPECT_EQ(test::described(book->undoState()->undo), "ColumnsOfListOf(Harbour Lane Beads)");
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
    EXPECT_EQ(test::described(book->save(list).error()), "ColumnTwice(TheField(ColumnsOfThePriceList))");
    list.supplier = stone;
    EXPECT_EQ(book->save(list).error().code, Code::NotFound);
}

} // namespace

// SPDX-License-Identifier: MIT
// Sets of templates that are paid off over planned pieces: what the book counts and keeps of them. Figures invented.
#include "tests/db/bench_book.h"
#include "tests/support/amounts.h"

#include <gmock/gmock.h>

namespace {

using namespace sp;
using catalogue::SetCost;
using db::Stage;
using test::BookTest;
using units::Count;
using units::Money;

using sp::support::cents;

class SetCostTest : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        design.setCost.reset();
        ASSERT_TRUE(book->save(design));
        auto seller = test::sampleSupplier();
        seller.id = supplier;
        seller.freight = catalogue::FreightKind::Nothing;
        ASSERT_TRUE(book->save(seller));
        auto sheet = test::sampleTape();
        sheet.name = "Flock sheet";
        sheet.kind = catalogue::MaterialKind::Template;
        sheet.sheet.form = catalogue::SheetForm::Sheet;
        sheet.sheet.basis = catalogue::ShareBasis::WholeSheets;
        templates = book->save(sheet).value();
        auto offered = test::samplePack(templates, supplier);
        offered.name = "single";
        offered.amount = Count::of(1);
        offered.prices = {{Count::of(1), cents(650)}};
        ASSERT_TRUE(book->save(offered));
        auto shop = book->shop().value();
        shop.usualTape = {};
        shop.usualTemplate = templates;
        shop.packing = {};
        ASSERT_TRUE(book->save(shop));
    }
    /// A quote for so many pieces of the design.
    db::Quote quoted(std::int64_t pieces) {
        auto quote = book->startQuote().value();
        quote.order.customer = customer;
        auto line = catalogue::lineOf(design);
        line.baseMaterial = {};
        line.customersGarment = true;
        line.packing.emplace();
        line.quantity = Count::of(pieces);
        quote.order.lines = {line};
        quote.version = book->saveDraft(quote).value();
        const auto inputs = book->priceBook(customer).value();
        return book->issue(quote, inputs, test::resultOf(cents(1000)), quote.order.quotedOn.plusDays(7)).value();
    }
    std::int64_t sold() { return book->soldPieces(design.id).value(); }
    catalogue::Design kept() { return book->designs()->front(); }

    base::Id templates;
};

TEST_F(SetCostTest, countsThePiecesOfJobsThatAreAgreedAndAfter) {
    const auto first = quoted(12);
    const auto second = quoted(30);
    EXPECT_EQ(sold(), 0);
    ASSERT_TRUE(book->setStage(first.id, Stage::Agreed));
    EXPECT_EQ(sold(), 12);
    for (const auto stage : {Stage::InProduction, Stage::Ready, Stage::Collected}) {
        ASSERT_TRUE(book->setStage(second.id, stage));
        EXPECT_EQ(sold(), 42);
    }
    ASSERT_TRUE(book->setStage(first.id, Stage::Declined));
    EXPECT_EQ(sold(), 30);
    EXPECT_EQ(book->soldPieces(tape).value(), 0);
    auto set = book->priceBook({})->sets.at(design.id);
    EXPECT_EQ(set.sold, Count::of(30));
    auto plain = kept();
    plain.plannedPieces.reset();
    ASSERT_TRUE(book->save(plain));
    EXPECT_TRUE(book->priceBook({})->sets.empty()) << "nothing is planned";
}

TEST_F(SetCostTest, keepsWhatTheSetCostByTheFirstJobThatIsAgreed) {
    const auto first = quoted(12);
    EXPECT_EQ(first.frozen->sets.at(design.id), (catalogue::DesignSet{design.id, {}, {}}));
    auto changed = book->packs()->front();
    for (const auto& known : test::valueOf(book->packs()))
        if (known.material == templates) changed = known;
    changed.prices[0].each = cents(900);
    ASSERT_TRUE(book->save(changed));
    EXPECT_FALSE(kept().setCost);
    ASSERT_TRUE(book->setStage(first.id, Stage::Agreed));
    ASSERT_TRUE(kept().setCost);
    EXPECT_EQ(kept().setCost->templates, cents(650)) << "as it was given, not as it is today";
    EXPECT_GT(kept().setCost->work, Money{}) << "the sample shop pays off art and cutting";
    EXPECT_EQ(book->priceBook({})->sets.at(design.id).cost, kept().setCost);
    const auto second = quoted(12);
    EXPECT_EQ(second.frozen->sets.at(design.id), (catalogue::DesignSet{design.id, Count::of(12), kept().setCost}));
    const auto was = kept();
    ASSERT_TRUE(book->setStage(second.id, Stage::Agreed));
    EXPECT_EQ(kept(), was);
    reopen();
    EXPECT_EQ(kept(), was);
    EXPECT_EQ(book->quote(second.id)->frozen, second.frozen);
    expectSound();
}

TEST_F(SetCostTest, isKeptInOneStepWithTheStage) {
    const auto first = quoted(12);
    ASSERT_TRUE(book->setStage(first.id, Stage::Agreed));
    EXPECT_EQ(test::described(book->undoState()->undo), "StageOf(2026-0001)");
    ASSERT_TRUE(book->undo());
    EXPECT_FALSE(kept().setCost);
    EXPECT_EQ(book->quote(first.id)->stage, Stage::Quoted);
    ASSERT_TRUE(book->redo());
    EXPECT_TRUE(kept().setCost);
    EXPECT_EQ(book->quote(first.id)->stage, Stage::Agreed);
    expectSound();
}

TEST_F(SetCostTest, aPlanIsNotBelowWhatIsSold) {
    ASSERT_TRUE(book->setStage(quoted(30).id, Stage::Agreed));
    auto edited = kept();
    edited.plannedPieces = Count::of(29);
    const auto before = kept();
    EXPECT_EQ(test::described(book->save(edited).error()), "PlannedBelowSold(29, 30)");
    EXPECT_EQ(kept(), before);
    edited.plannedPieces = Count::of(30);
    ASSERT_TRUE(book->save(edited));
    // A plan that has been passed does not stand in the way of another change.
    ASSERT_TRUE(book->setStage(quoted(30).id, Stage::Agreed));
    edited.note = "Passed.";
    edited.setCost = kept().setCost;
    EXPECT_TRUE(book->save(edited));
    edited.plannedPieces.reset();
    EXPECT_TRUE(book->save(edited));
}

} // namespace

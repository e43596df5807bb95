// SPDX-License-Identifier: MIT
#include "tests/db/bench_book.h"

#include <algorithm>
#include <functional>
#include <ostream>

namespace {

using namespace sp;
using base::Code;
using catalogue::Material;
using test::BookTest;
using test::valueOf;
using units::Count;
using units::Length;
using units::Money;
using units::Rate;

template<class T>
T withId(T value, const base::Id& id) {
    value.id = id;
    return value;
}

TEST_F(BookTest, startsOutEmptyAndSound) {
    EXPECT_EQ(test::described(book->readOnlyBecause()), "");
    EXPECT_EQ(book->materials()->size(), 0U);
    EXPECT_EQ(book->designs()->size(), 0U);
    EXPECT_EQ(book->quotes("", 50)->size(), 0U);
    EXPECT_FALSE(book->lastDraft()->has_value());
    EXPECT_EQ(book->shop()->rules.ladder.size(), 1U);
    EXPECT_EQ(test::described(book->undoState()->undo), "");
    expectSound();
}

TEST_F(BookTest, givesEverythingBackAsItWasSaved) {
    stock();
    reopen();
    EXPECT_EQ(book->materials().value(),
              (std::vector{withId(test::sampleStone(), stone), withId(test::sampleTape(), tape),
                           withId(test::sampleBlank(), blank)}));
    EXPECT_EQ(book->suppliers().value(), std::vector{withId(test::sampleSupplier(), supplier)});
    EXPECT_EQ(book->packs().value(), std::vector{withId(test::samplePack(stone, supplier), pack)});
    EXPECT_EQ(book->designs().value(), std::vector{design});
    EXPECT_EQ(book->customers().value(), std::vector{withId(test::sampleCustomer(), customer)});
    EXPECT_EQ(book->shop().value(), test::sampleShop(tape));
    EXPECT_EQ(book->bench().value(), test::sampleBench());
    expectSound();
}

TEST_F(BookTest, keepsWhatMayBeMissingMissing) {
    auto plain = test::sampleDesign({}, {}, "Plain");
    plain.stones.clear();
    plain.plannedPieces.reset();
    plain.artTime.reset();
    plain.packing.reset();
    plain.note.clear();
    plain.id = book->save(plain).value();
    catalogue::Customer nobody;
    nobody.name = "Walk-in";
    nobody.id = book->save(nobody).value();
    auto endless = test::sampleCustomer("Endless");
    endless.certificate->expiresOn.reset();
    endless.id = book->save(endless).value();
    catalogue::Supplier free{{}, "Corner Shop", 0, {}, std::nullopt, {}};
    free.id = book->save(free).value();
    reopen();
    EXPECT_EQ(book->designs().value(), std::vector{plain});
    EXPECT_EQ(book->customers().value(), (std::vector{endless, nobody}));
    EXPECT_EQ(book->suppliers().value(), std::vector{free});
}

TEST_F(BookTest, sortsByNameWhateverTheLetterCase) {
    for (const auto* name : {"crystal SS10", "Amber SS10", "Blue SS10", "amber SS16"})
        ASSERT_TRUE(book->save(test::sampleStone(name)));
    std::vector<std::string> names;
    for (const auto& material : valueOf(book->materials())) names.push_back(material.name);
    EXPECT_EQ(names, (std::vector<std::string>{"Amber SS10", "amber SS16", "Blue SS10", "crystal SS10"}));
}

TEST_F(BookTest, changesAThingInItsPlace) {
    stock();
    auto changed = withId(test::sampleBlank(), blank);
    changed.sizes.pop_back();
    changed.fixedPrice = Money::fromMicros(1);
    EXPECT_EQ(book->save(changed).value(), blank);
    reopen();
    EXPECT_EQ(book->materials()->at(2), changed);
    EXPECT_EQ(book->materials()->size(), 3U);
}

TEST_F(BookTest, writesNothingForAValueThatIsAsItWas) {
    stock();
    const auto before = test::bytesOf(file);
    ASSERT_TRUE(book->save(withId(test::sampleStone(), stone)));
    ASSERT_TRUE(book->save(test::sampleShop(tape)));
    ASSERT_TRUE(book->save(test::sampleBench()));
    auto quote = book->startQuote().value();
    const auto started = test::bytesOf(file);
    EXPECT_EQ(book->saveDraft(quote).value(), quote.version);
    EXPECT_NE(before, started);
    book.reset();
    EXPECT_EQ(test::bytesOf(file), started);
}

TEST_F(BookTest, refusesASecondThingOfTheSameName) {
    stock();
    const auto again = book->save(test::sampleStone("AQUAMARINE ss10"));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, Code::Conflict);
    EXPECT_EQ(test::described(again.error()), "NameOfAnother(Material, AQUAMARINE ss10)");
    EXPECT_EQ(book->save(test::sampleSupplier()).error().code, Code::Conflict);
    EXPECT_EQ(book->save(test::samplePack(stone, supplier)).error().code, Code::Conflict);
    EXPECT_EQ(book->save(test::sampleDesign(stone, blank)).error().code, Code::Conflict);
    EXPECT_EQ(book->save(test::sampleCustomer()).error().code, Code::Conflict);
    EXPECT_EQ(book->materials()->size(), 3U);
    expectSound();
}

TEST_F(BookTest, takesANameAgainOnceItsThingWasRemoved) {
    const auto first = book->save(test::sampleStone()).value();
    ASSERT_TRUE(book->removeMaterial(first));
    EXPECT_EQ(book->materials()->size(), 0U);
    const auto second = book->save(test::sampleStone());
    ASSERT_TRUE(second);
    EXPECT_NE(*second, first);
    expectSound();
}

TEST_F(BookTest, knowsNoThingThatWasRemoved) {
    stock();
    ASSERT_TRUE(book->removePack(pack));
    EXPECT_EQ(book->removePack(pack).error().code, Code::NotFound);
    EXPECT_EQ(book->save(withId(test::samplePack(stone, supplier), pack)).error().code, Code::NotFound);
    EXPECT_EQ(book->packs()->size(), 0U);
    ASSERT_TRUE(book->removeDesign(design.id));
    ASSERT_TRUE(book->removeCustomer(customer));
    EXPECT_EQ(book->priceBook(customer).error().code, Code::NotFound);
    expectSound();
}

TEST_F(BookTest, keepsAMaterialThatADesignNeeds) {
    stock();
    const auto removed = book->removeMaterial(stone);
    ASSERT_FALSE(removed);
    EXPECT_EQ(test::described(removed.error()), "MaterialOfDesign(Lantern)");
    EXPECT_EQ(test::described(book->removeMaterial(tape).error()), "MaterialOfPacking");
}

TEST_F(BookTest, leavesOutThePacksOfARemovedSupplierUntilItIsBack) {
    stock();
    ASSERT_TRUE(book->removeSupplier(supplier));
    EXPECT_EQ(book->packs()->size(), 0U);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->packs()->size(), 1U);
}

TEST_F(BookTest, marksOnlyOnePackOfAMaterialAsUsual) {
    stock();
    auto other = test::samplePack(stone, supplier);
    other.name = "bag of 50 gross";
    other.id = book->save(other).value();
    const auto packs = book->packs().value();
    EXPECT_FALSE(packs[0].usual);
    EXPECT_TRUE(packs[1].usual);
    EXPECT_EQ(test::described(book->undoState()->undo), "Adding(bag of 50 gross)");
    ASSERT_TRUE(book->undo());
    ASSERT_EQ(book->packs()->size(), 1U);
    EXPECT_TRUE(book->packs()->front().usual);
    expectSound();
}

// Every refused input: what is changed in a good value, and the sentence for it.
struct DbError {
    std::string name;
    std::function<base::Error(db::Book&, const base::Id& stone, const base::Id& supplier)> save;
    std::string detail;
};

void PrintTo(const DbError& row, std::ostream* out) { *out << row.name; }

template<class T, class Change>
auto saving(T value, Change change) {
    return [=](db::Book& book, const base::Id&, const base::Id&) {
        auto spoilt = value;
        change(spoilt);
        const auto saved = book.save(spoilt);
        return saved ? base::Error{} : saved.error();
    };
}

template<class Change>
auto savingPack(Change change) {
    return [=](db::Book& book, const base::Id& stone, const base::Id& supplier) {
        auto spoilt = test::samplePack(stone, supplier);
        change(spoilt);
        const auto saved = book.save(spoilt);
        return saved ? base::Error{} : saved.error();
    };
}

template<class Change>
auto savingOrder(Change change) {
    return [=](db::Book& book, const base::Id& stone, const base::Id&) {
        auto quote = book.startQuote().value();
        quote.order = test::sampleOrder({}, test::sampleDesign(stone, {}));
        quote.order.lines[0].first().design = {};
        change(quote.order);
        const auto saved = book.saveDraft(quote);
        return saved ? base::Error{} : saved.error();
    };
}

std::vector<DbError> refusals() {
    const auto other = test::sampleStone("Other");
    const auto shop = test::sampleShop({});
    const auto bench = test::sampleBench();
    const auto design = [] {
        auto plain = test::sampleDesign({}, {}, "Plain");
        plain.packing.reset();
        plain.stones.clear();
        return plain;
    }();
    const base::Id unknown = base::Id::fromTime(1, std::array<std::uint8_t, 10>{});
    return {
        {"namelessMaterial", saving(other, [](auto& m) { m.name.clear(); }), "NotTyped(TheField(Name))"},
        {"blankName", saving(other, [](auto& m) { m.name = "   "; }), "NotTyped(TheFieldOf(Name,    ))"},
        {"nameWithNul", saving(other, [](auto& m) { m.name = std::string("a\0b", 3); }),
         "NotText(TheFieldOf(Name, a" + std::string(1, '\0') + "b))"},
        {"nameNotUtf8", saving(other, [](auto& m) { m.name = "\xC3\x28"; }), "NotText(TheFieldOf(Name, \xC3\x28))"},
        {"nameWithLines", saving(other, [](auto& m) { m.name = "a\nb"; }), "HoldsControls(TheFieldOf(Name, a\nb))"},
        {"lossOfAll", saving(other, [](auto& m) { m.stone.loss = Rate::fromPercent(100); }),
         "FieldOutOfRange(TheFieldOf(Loss, Other), 0, 999999)"},
        {"negativeLoss", saving(other, [](auto& m) { m.stone.loss = Rate::fromPpm(-1); }),
         "FieldOutOfRange(TheFieldOf(Loss, Other), 0, 999999)"},
        {"unknownStoneSize", saving(other, [](auto& m) { m.stone.size = "SS11"; }),
         "UnknownStoneSize(TheFieldOf(StoneSize, Other))"},
        {"negativePrice", saving(other, [](auto& m) { m.fixedPrice = Money::fromMicros(-1); }),
         "FieldOutOfRange(TheFieldOf(FixedPrice, Other), 0, 1000000000000000)"},
        {"absurdPrice", saving(other, [](auto& m) { m.fixedPrice = Money::fromMicros(INT64_MAX); }),
         "FieldOutOfRange(TheFieldOf(FixedPrice, Other), 0, 1000000000000000)"},
        {"negativeWidth", saving(other, [](auto& m) { m.sheet.width = Length::fromNanometres(-1); }),
         "FieldOutOfRange(TheFieldOf(Width, Other), 0, 1000000000000)"},
        {"absurdHeight", saving(other, [](auto& m) { m.sheet.height = units::kMaxLength + Length::fromNanometres(1); }),
         "FieldOutOfRange(TheFieldOf(Height, Other), 0, 1000000000000)"},
        {"noLifts", saving(other, [](auto& m) { m.sheet.lifts = 0; }),
         "FieldOutOfRange(TheFieldOf(NumberOfLifts, Other), 1, 1000000000)"},
        {"sizeTwice",
         saving(other,
                [](auto& m) {
                    m.sizes = {{"L", {}, {}}, {"L", {}, {}}};
                }),
         "SizeTwice(TheFieldOf(Sizes, Other))"},
        {"noSuchKind", saving(other, [](auto& m) { m.kind = static_cast<catalogue::MaterialKind>(77); }),
         "NoneOfTheList(TheFieldOf(Kind, Other))"},
        {"negativeShipping", saving(test::sampleSupplier("Far"), [](auto& s) { s.shipping = Money::fromMicros(-1); }),
         "FieldOutOfRange(TheFieldOf(Shipping, Far), 0, 1000000000000000)"},
        {"emptyPack", savingPack([](auto& p) { p.amount = Count::of(0); }),
         "FieldOutOfRange(TheFieldOf(AmountInAPack, bag of 10 gross), 1, 1000000000)"},
        {"packWithoutPrice", savingPack([](auto& p) { p.prices.clear(); }),
         "NotFromOne(TheFieldOf(Price, bag of 10 gross))"},
        {"breaksFromTwo", savingPack([](auto& p) { p.prices.erase(p.prices.begin()); }),
         "NotFromOne(TheFieldOf(Price, bag of 10 gross))"},
        {"breaksNotAscending", savingPack([](auto& p) { p.prices[1].from = Count::of(1); }),
         "NotAscending(TheFieldOf(Price, bag of 10 gross))"},
        {"packOfNothing", savingPack([](auto& p) { p.material = {}; }),
         "NotChosen(TheFieldOf(Material, bag of 10 gross))"},
        {"packOfUnknown", savingPack([=](auto& p) { p.material = unknown; }), "RefersToNothing(bag of 10 gross)"},
        {"negativeDesign", saving(design, [](auto& d) { d.width = Length::fromNanometres(-5); }),
         "FieldOutOfRange(TheFieldOf(Width, Plain), 0, 1000000000000)"},
        {"stoneNotChosen",
         saving(design,
                [](auto& d) {
                    d.stones = {{{}, Count::of(1)}};
                }),
         "StoneNotChosen(TheFieldOf(Stone, Plain))"},
        {"stoneUnknown",
         saving(design,
                [=](auto& d) {
                    d.stones = {{unknown, Count::of(1)}};
                }),
         "RefersToNothing(Plain)"},
        {"negativeStones",
         saving(design,
                [=](auto& d) {
                    d.stones = {{unknown, Count::of(-1)}};
                }),
         "FieldOutOfRange(TheFieldOf(NumberOfStones, Plain), 0, 1000000000)"},
        {"certificateBackwards",
         saving(test::sampleCustomer("Late"),
                [](auto& c) { c.certificate->expiresOn = c.certificate->issuedOn.plusDays(-1); }),
         "ExpiresBeforeIssue(TheFieldOf(DayOfExpiry, Late))"},
        {"noHours", saving(shop, [](auto& s) { s.rates.productivePerMonth = {}; }),
         "FieldOutOfRange(TheField(BenchHoursOfAMonth), 1, 36000000000)"},
        {"allSpoilt", saving(shop, [](auto& s) { s.rates.spoilage = Rate::fromPercent(100); }),
         "FieldOutOfRange(TheField(Spoilage), 0, 999999)"},
        {"taxOverAll", saving(shop, [](auto& s) { s.rules.tax.rate = Rate::fromPpm(1'000'001); }),
         "FieldOutOfRange(TheField(TaxRate), 0, 1000000)"},
        {"cardFeeOfAll", saving(shop, [](auto& s) { s.rules.cardFee.rate = Rate::fromPercent(100); }),
         "FieldOutOfRange(TheField(CardFeeRate), 0, 999999)"},
        {"noLadder", saving(shop, [](auto& s) { s.rules.ladder.clear(); }), "NotFromOne(TheField(MarkUp))"},
        {"rushNotAscending", saving(shop, [](auto& s) { s.rules.rush[1].days = 2; }),
         "DaysNotAscending(TheField(RushSurcharge))"},
        {"endingOf100", saving(shop, [](auto& s) { s.rules.rounding.ending = 100; }),
         "FieldOutOfRange(TheField(EndingOfAPrice), 0, 99)"},
        {"packingUnknown", saving(shop, [=](auto& s) { s.packing = {{unknown}}; }), "OnlyRefersToNothing(Shop)"},
        {"learningTooFast", saving(bench, [](auto& b) { b.steps[0].learning = Rate::fromPercent(49); }),
         "FieldOutOfRange(TheField(LearningRate), 500000, 1000000)"},
        {"pressOfNoLife", saving(bench, [](auto& b) { b.press.lifePresses = 0; }),
         "FieldOutOfRange(TheField(LifeOfThePress), 1, 1000000000000)"},
        {"negativeDwell", saving(bench, [](auto& b) { b.press.dwell = units::Duration::fromSeconds(-1); }),
         "FieldOutOfRange(TheField(Dwell), 0, 36000000000)"},
        {"absurdHeat",
         saving(bench, [](auto& b) { b.press.temperature = units::Temperature::fromMillicelsius(500'001); }),
         "TemperatureOutOfRange(TheField(Temperature))"},
        {"negativeQuantity", savingOrder([](auto& o) { o.lines[0].quantity = Count::of(-1); }),
         "FieldOutOfRange(TheField(Quantity), 0, 1000000000)"},
        {"discountTwice", savingOrder([](auto& o) { o.discount.amount = Money::fromMicros(1); }),
         "DiscountTwice(TheField(Discount))"},
        {"negativeTypedPrice", savingOrder([](auto& o) { o.lines[0].overrideEach = Money::fromMicros(-1); }),
         "FieldOutOfRange(TheField(TypedPrice), 0, 1000000000000000)"},
        {"unknownOnto", savingOrder([=](auto& o) { o.lines[0].baseMaterial = unknown; }), "QuoteRefersToNothing"},
        {"yearTenThousand",
         savingOrder([](auto& o) { o.quotedOn = units::Date::parse("9999-12-31").value().plusDays(1); }),
         "DayOutOfRange(TheField(Day))"},
    };
}

class RefusedInput : public BookTest, public testing::WithParamInterface<DbError> {};

TEST_P(RefusedInput, isSaidInOneSentenceAndChangesNothing) {
    const auto stoneId = book->save(test::sampleStone()).value();
    const auto supplierId = book->save(test::sampleSupplier()).value();
    const auto materials = book->materials().value();
    const auto shopBefore = book->shop().value();
    const auto error = GetParam().save(*book, stoneId, supplierId);
    EXPECT_EQ(error.code, Code::Invalid);
    EXPECT_EQ(test::described(error), GetParam().detail);
    EXPECT_EQ(book->materials().value(), materials);
    EXPECT_EQ(book->shop().value(), shopBefore);
    EXPECT_EQ(book->designs()->size() + book->customers()->size() + book->packs()->size(), 0U);
    expectSound();
}

INSTANTIATE_TEST_SUITE_P(Book, RefusedInput, testing::ValuesIn(refusals()),
                         [](const auto& row) { return row.param.name; });

} // namespace

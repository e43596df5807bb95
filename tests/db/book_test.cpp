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
    EXPECT_EQ(book->readOnlyBecause(), "");
    EXPECT_EQ(book->materials()->size(), 0U);
    EXPECT_EQ(book->designs()->size(), 0U);
    EXPECT_EQ(book->quotes("", 50)->size(), 0U);
    EXPECT_FALSE(book->lastDraft()->has_value());
    EXPECT_EQ(book->shop()->rules.ladder.size(), 1U);
    EXPECT_EQ(book->undoState()->undo, "");
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
    plain.note.clear();
    plain.id = book->save(plain).value();
    catalogue::Customer nobody{{}, "Walk-in", "", std::nullopt};
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
    EXPECT_EQ(again.error().detail, "There is another material called “AQUAMARINE ss10”; choose another name.");
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
    EXPECT_EQ(removed.error().detail, "This material is used by the design “Lantern”; take it out there first.");
    EXPECT_EQ(book->removeMaterial(tape).error().detail,
              "This material is used by the packing list of the shop; take it out there first.");
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
    EXPECT_EQ(book->undoState()->undo, "adding bag of 50 gross");
    ASSERT_TRUE(book->undo());
    ASSERT_EQ(book->packs()->size(), 1U);
    EXPECT_TRUE(book->packs()->front().usual);
    expectSound();
}

// Every refused input: what is changed in a good value, and the sentence for it.
struct Refusal {
    std::string name;
    std::function<base::Error(db::Book&, const base::Id& stone, const base::Id& supplier)> save;
    std::string detail;
};

void PrintTo(const Refusal& row, std::ostream* out) { *out << row.name; }

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
        quote.order.lines[0].design = {};
        change(quote.order);
        const auto saved = book.saveDraft(quote);
        return saved ? base::Error{} : saved.error();
    };
}

std::vector<Refusal> refusals() {
    const auto other = test::sampleStone("Other");
    const auto shop = test::sampleShop({});
    const auto bench = test::sampleBench();
    const auto design = [] {
        auto plain = test::sampleDesign({}, {}, "Plain");
        plain.stones.clear();
        return plain;
    }();
    const base::Id unknown = base::Id::fromTime(1, std::array<std::uint8_t, 10>{});
    return {
        {"namelessMaterial", saving(other, [](auto& m) { m.name.clear(); }), "The name is missing; type one."},
        {"blankName", saving(other, [](auto& m) { m.name = "   "; }), "The name of “   ” is missing; type one."},
        {"nameWithNul", saving(other, [](auto& m) { m.name = std::string("a\0b", 3); }),
         "The name of “a" + std::string(1, '\0') + "b” holds characters that are not text; type it again."},
        {"nameNotUtf8", saving(other, [](auto& m) { m.name = "\xC3\x28"; }),
         "The name of “\xC3\x28” holds characters that are not text; type it again."},
        {"nameWithLines", saving(other, [](auto& m) { m.name = "a\nb"; }),
         "The name of “a\nb” holds control characters; type it again."},
        {"lossOfAll", saving(other, [](auto& m) { m.stone.loss = Rate::fromPercent(100); }),
         "The loss of “Other” must be from 0 % to 99.9999 %."},
        {"negativeLoss", saving(other, [](auto& m) { m.stone.loss = Rate::fromPpm(-1); }),
         "The loss of “Other” must be from 0 % to 99.9999 %."},
        {"unknownStoneSize", saving(other, [](auto& m) { m.stone.size = "SS11"; }),
         "The stone size of “Other” is not in the table of sizes; choose one from SS6 to SS40."},
        {"negativePrice", saving(other, [](auto& m) { m.fixedPrice = Money::fromMicros(-1); }),
         "The fixed price of “Other” must be from 0 to 1000000000."},
        {"absurdPrice", saving(other, [](auto& m) { m.fixedPrice = Money::fromMicros(INT64_MAX); }),
         "The fixed price of “Other” must be from 0 to 1000000000."},
        {"negativeWidth", saving(other, [](auto& m) { m.sheet.width = Length::fromNanometres(-1); }),
         "The width of “Other” must be from 0 mm to 1000000 mm."},
        {"absurdHeight", saving(other, [](auto& m) { m.sheet.height = units::kLongest + Length::fromNanometres(1); }),
         "The height of “Other” must be from 0 mm to 1000000 mm."},
        {"noLifts", saving(other, [](auto& m) { m.sheet.lifts = 0; }),
         "The number of lifts of “Other” must be from 1 to 1000000000."},
        {"sizeTwice",
         saving(other,
                [](auto& m) {
                    m.sizes = {{"L", {}, {}}, {"L", {}, {}}};
                }),
         "The sizes of “Other” name a size twice; rename one."},
        {"noSuchKind", saving(other, [](auto& m) { m.kind = static_cast<catalogue::MaterialKind>(77); }),
         "The kind of “Other” is none of those there are; choose one of the list."},
        {"negativeShipping", saving(test::sampleSupplier("Far"), [](auto& s) { s.shipping = Money::fromMicros(-1); }),
         "The shipping of “Far” must be from 0 to 1000000000."},
        {"emptyPack", savingPack([](auto& p) { p.amount = Count::of(0); }),
         "The amount in a pack of “bag of 10 gross” must be from 1 to 1000000000."},
        {"packWithoutPrice", savingPack([](auto& p) { p.prices.clear(); }),
         "The price of “bag of 10 gross” must begin with a row from 1."},
        {"breaksFromTwo", savingPack([](auto& p) { p.prices.erase(p.prices.begin()); }),
         "The price of “bag of 10 gross” must begin with a row from 1."},
        {"breaksNotAscending", savingPack([](auto& p) { p.prices[1].from = Count::of(1); }),
         "The price of “bag of 10 gross” must have its rows in ascending order."},
        {"packOfNothing", savingPack([](auto& p) { p.material = {}; }),
         "The material of “bag of 10 gross” is missing; choose one."},
        {"packOfUnknown", savingPack([=](auto& p) { p.material = unknown; }),
         "“bag of 10 gross” refers to something that is not in the book; choose it anew."},
        {"negativeDesign", saving(design, [](auto& d) { d.width = Length::fromNanometres(-5); }),
         "The width of “Plain” must be from 0 mm to 1000000 mm."},
        {"stoneNotChosen",
         saving(design,
                [](auto& d) {
                    d.stones = {{{}, Count::of(1)}};
                }),
         "The stone of “Plain” is missing in a row; choose one."},
        {"stoneUnknown",
         saving(design,
                [=](auto& d) {
                    d.stones = {{unknown, Count::of(1)}};
                }),
         "“Plain” refers to something that is not in the book; choose it anew."},
        {"negativeStones",
         saving(design,
                [=](auto& d) {
                    d.stones = {{unknown, Count::of(-1)}};
                }),
         "The number of stones of “Plain” must be from 0 to 1000000000."},
        {"certificateBackwards",
         saving(test::sampleCustomer("Late"),
                [](auto& c) { c.certificate->expiresOn = c.certificate->issuedOn.plusDays(-1); }),
         "The day of expiry of “Late” lies before the day of issue."},
        {"noHours", saving(shop, [](auto& s) { s.rates.productivePerMonth = {}; }),
         "The bench hours of a month must be from 0.001 s to 36000000 s."},
        {"allSpoilt", saving(shop, [](auto& s) { s.rates.spoilage = Rate::fromPercent(100); }),
         "The spoilage must be from 0 % to 99.9999 %."},
        {"taxOverAll", saving(shop, [](auto& s) { s.rules.tax.rate = Rate::fromPpm(1'000'001); }),
         "The tax rate must be from 0 % to 100 %."},
        {"cardFeeOfAll", saving(shop, [](auto& s) { s.rules.cardFee.rate = Rate::fromPercent(100); }),
         "The card fee rate must be from 0 % to 99.9999 %."},
        {"noLadder", saving(shop, [](auto& s) { s.rules.ladder.clear(); }),
         "The mark-up must begin with a row from 1."},
        {"rushNotAscending", saving(shop, [](auto& s) { s.rules.rush[1].days = 2; }),
         "The rush surcharge must have its days in ascending order."},
        {"endingOf100", saving(shop, [](auto& s) { s.rules.rounding.ending = 100; }),
         "The ending of a price must be from 0 to 99."},
        {"packingUnknown", saving(shop, [=](auto& s) { s.packing = {unknown}; }),
         "The shop refers to something that is not in the book; choose it anew."},
        {"learningTooFast", saving(bench, [](auto& b) { b.steps[0].learning = Rate::fromPercent(49); }),
         "The learning rate must be from 50 % to 100 %."},
        {"pressOfNoLife", saving(bench, [](auto& b) { b.press.lifePresses = 0; }),
         "The life of the press must be from 1 to 1000000000000."},
        {"negativeDwell", saving(bench, [](auto& b) { b.press.dwell = units::Duration::fromSeconds(-1); }),
         "The dwell must be from 0 s to 36000000 s."},
        {"absurdHeat",
         saving(bench, [](auto& b) { b.press.temperature = units::Temperature::fromMillicelsius(500'001); }),
         "The temperature must be from -50 to 500 °C."},
        {"negativeQuantity", savingOrder([](auto& o) { o.lines[0].quantity = Count::of(-1); }),
         "The quantity must be from 0 to 1000000000."},
        {"discountTwice", savingOrder([](auto& o) { o.discount.amount = Money::fromMicros(1); }),
         "The discount is given twice; keep the share or the amount."},
        {"negativeTypedPrice", savingOrder([](auto& o) { o.lines[0].typedEach = Money::fromMicros(-1); }),
         "The typed price must be from 0 to 1000000000."},
        {"unknownOnto", savingOrder([=](auto& o) { o.lines[0].onto = unknown; }),
         "The quote refers to a customer, design or material that is not in the book; choose it anew."},
        {"yearTenThousand",
         savingOrder([](auto& o) { o.quotedOn = units::Date::parse("9999-12-31").value().plusDays(1); }),
         "The day must be a day of the years 1 to 9999."},
    };
}

class RefusedInput : public BookTest, public testing::WithParamInterface<Refusal> {};

TEST_P(RefusedInput, isSaidInOneSentenceAndChangesNothing) {
    const auto stoneId = book->save(test::sampleStone()).value();
    const auto supplierId = book->save(test::sampleSupplier()).value();
    const auto materials = book->materials().value();
    const auto shopBefore = book->shop().value();
    const auto error = GetParam().save(*book, stoneId, supplierId);
    EXPECT_EQ(error.code, Code::Invalid);
    EXPECT_EQ(error.detail, GetParam().detail);
    EXPECT_EQ(book->materials().value(), materials);
    EXPECT_EQ(book->shop().value(), shopBefore);
    EXPECT_EQ(book->designs()->size() + book->customers()->size() + book->packs()->size(), 0U);
    expectSound();
}

INSTANTIATE_TEST_SUITE_P(Book, RefusedInput, testing::ValuesIn(refusals()),
                         [](const auto& row) { return row.param.name; });

} // namespace

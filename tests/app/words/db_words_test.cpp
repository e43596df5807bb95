// SPDX-License-Identifier: MIT
// What a book says, as a person reads it.
#include "app/words/names.h"
#include "app/words/sources.h"
#include "app/words/words.h"
#include "core/catalogue/fields/check.h"
#include "db/book/book.h"
#include "tests/support/held_clock.h"
#include "tests/support/samples.h"
#include "tests/support/temp_folder.h"
#include "tests/support/test_data.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace {

using namespace sp;
using base::say;
using catalogue::fields::Cause;
using catalogue::fields::Term;
using db::Note;
using words::text;

template<class One, class Rows>
void list(const char* room, const Rows& rows, std::string& out) {
    out += std::string("== ") + room + '\n';
    for (std::size_t i = 0; i < std::size(rows); ++i) {
        const auto id = idOf(static_cast<One>(i));
        out += std::string(id.name) + ": " + words::sourceOf(id).text + '\n';
    }
}

/// STONEPENNY_WRITE_GOLDEN=1 rewrites the file.
TEST(DbWords, everySentenceReadsAsItDid) {
    std::string said;
    list<db::Fault>("faults of the book", db::kFaults, said);
    list<Note>("notes of the book", db::kNotes, said);
    list<catalogue::fields::Fault>("faults of fields", catalogue::fields::kFaults, said);
    list<catalogue::fields::Note>("notes of fields", catalogue::fields::kNotes, said);
    list<Term>("terms", catalogue::fields::kTerms, said);
    const auto path = test::dataFile("words/book.txt");
    if (std::getenv("STONEPENNY_WRITE_GOLDEN") != nullptr) {
        ASSERT_TRUE(std::ofstream(path) << said);
        return;
    }
    std::ostringstream kept;
    kept << std::ifstream(path).rdbuf();
    EXPECT_EQ(said, kept.str());
}

template<class T>
std::string refusalOf(T value) {
    const auto good = catalogue::fields::check(value);
    return good ? std::string() : text(good.error());
}

// Every kind of range, each in the unit that the field is typed in.
TEST(DbWords, sayWhatAFieldMayHold) {
    auto stone = test::sampleStone("Other");
    stone.id = base::Id::fromTime(1, std::array<std::uint8_t, 10>{});
    const auto with = [&](auto change) {
        auto spoilt = stone;
        change(spoilt);
        return refusalOf(spoilt);
    };
    EXPECT_EQ(with([](auto&) {}), "");
    EXPECT_EQ(with([](auto& m) { m.name.clear(); }), "The name is missing; type one.");
    EXPECT_EQ(with([](auto& m) { m.stone.loss = units::Rate::fromPercent(100); }),
              "The loss of “Other” must be from 0 % to 99.9999 %.");
    EXPECT_EQ(with([](auto& m) { m.fixedPrice = units::Money::fromMicros(-1); }),
              "The fixed price of “Other” must be from 0 to 1000000000.");
    EXPECT_EQ(with([](auto& m) { m.sheet.width = units::Length::fromNanometres(-1); }),
              "The width of “Other” must be from 0 mm (0 in) to 1000000 mm (39370.079 in).");
    EXPECT_EQ(with([](auto& m) { m.sheet.lifts = 0; }), "The number of lifts of “Other” must be from 1 to 1000000000.");
    auto shop = test::sampleShop({});
    shop.rates.productivePerMonth = {};
    EXPECT_EQ(refusalOf(shop), "The bench hours of a month must be from 0.001 s to 36000000 s.");
}

TEST(DbWords, sayWhatUndoWouldDo) {
    EXPECT_EQ(text(say(Term::LabourRate)), "labour rate");
    EXPECT_EQ(text(say(Note::FieldOf, Term::FixedPrice, "Jet SS10")), "fixed price of Jet SS10");
    EXPECT_EQ(text(say(Note::FieldOf, Term::Quantity, Note::ALine)), "quantity of a line");
    EXPECT_EQ(text(say(Note::FieldOfQuote, Term::DayItIsWanted)), "day it is wanted of the quote");
    EXPECT_EQ(text(say(Note::StageOf, Note::TheQuote)), "stage of the quote");
    EXPECT_EQ(text(say(Note::StoneForColour, "4fc3cf")), "the stone for a colour in cut files");
}

// A cause by itself begins with a capital letter; after the name of a material it goes on.
TEST(DbWords, sayWhyAPriceChanged) {
    EXPECT_EQ(text(say(Cause{Term::LabourRate})), "Labour an hour");
    EXPECT_EQ(text(say(pricing::Note::PartOf, "Jet", Cause{Term::Loss})), "Jet, what is lost");
    EXPECT_EQ(text(say(pricing::Note::PartOf, "Backing", Cause{Term::Kind})), "Backing, kind");
    EXPECT_EQ(text(say(pricing::Note::PriceOf, "Jet")), "Jet");
    namespace fields = catalogue::fields;
    for (const auto* object : {&fields::objectOf<catalogue::Shop>(), &fields::objectOf<catalogue::BenchStandards>(),
                               &fields::objectOf<catalogue::ShopRates>(), &fields::objectOf<catalogue::PriceRules>()})
        for (const auto& field : object->fields) {
            const bool hasParts = field.type->sort == fields::Sort::Object && !field.isOneCause;
            if (!field.noPrice.empty() || hasParts) continue;
            const auto said = text(say(Cause{field.words}));
            EXPECT_TRUE(said.front() >= 'A' && said.front() <= 'Z') << field.id() << ": " << said;
        }
}

class BookWords : public testing::Test {
  protected:
    test::TempFolder folder;
    test::HeldClock clock;
    std::filesystem::path file = folder / "Stone Bench.jobbook";
};

TEST_F(BookWords, refuseInOneSentence) {
    EXPECT_EQ(text(db::Book::open(folder / "none.jobbook", clock.environment()).error()),
              "There is no job book “" + (folder / "none.jobbook").string() +
                  "”; choose another file or make a new book.");
    test::writeBytes(file, "Dear Sir or Madam");
    EXPECT_EQ(text(db::Book::open(file, clock.environment()).error()),
              "“Stone Bench.jobbook” is not a job book; choose another file.");
    EXPECT_EQ(text(db::Book::create(file, clock.environment()).error()),
              "There is a file “Stone Bench.jobbook” already; choose another name.");
    std::filesystem::remove(file);
    auto book = std::move(*db::Book::create(file, clock.environment()));
    const auto stone = book->save(test::sampleStone("Jet SS10")).value();
    EXPECT_EQ(text(book->save(test::sampleStone("JET ss10")).error()),
              "There is another material called “JET ss10”; choose another name.");
    EXPECT_EQ(text(book->moveStock(stone, -1, std::nullopt, "").error()),
              "Only 0 of “Jet SS10” are on the shelf; count it and book what is there first.");
    EXPECT_EQ(text(book->removePack(stone).error()), "This pack is no longer in the book; there is nothing to remove.");
}

TEST_F(BookWords, sayWhatIsDamagedAndWhere) {
    EXPECT_EQ(text(say(Note::FoundIn, Note::TheDrawings,
                       base::makeError(db::Fault::DrawingDamaged, "", "Stone Bench.jobbook").message())),
              "In the drawings: The drawing of a design in “Stone Bench.jobbook” is damaged; open a backup.");
    const auto field = catalogue::fields::wrongField(catalogue::fields::Fault::NotTyped, "", Term::Name).error();
    EXPECT_EQ(text(base::makeError(db::Fault::ValueDamaged, "", "Stone Bench.jobbook", field.message())),
              "“Stone Bench.jobbook” is damaged: The name is missing; type one. Open a backup.");
    EXPECT_EQ(text(say(Note::NotAsLastSaved, Note::TheBench)),
              "“the bench” is not as it was last saved; compare it with a backup.");
}

TEST(DbWords, nameAQuoteByItsLines) {
    db::QuoteSummary quote;
    EXPECT_EQ(words::titleOf(quote), QString());
    quote.lines = 1;
    EXPECT_EQ(words::titleOf(quote), QStringLiteral("Untitled"));
    quote.firstTitle = "Lantern";
    EXPECT_EQ(words::titleOf(quote), QStringLiteral("Lantern"));
    quote.lines = 3;
    EXPECT_EQ(words::titleOf(quote), QStringLiteral("Lantern and 2 more"));
}

} // namespace

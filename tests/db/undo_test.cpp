// SPDX-License-Identifier: MIT
#include "tests/db/bench_book.h"
#include "tests/support/seed.h"

#include <map>

namespace {

using namespace sp;
using base::Code;
using db::Stage;
using test::BookTest;
using test::valueOf;
using units::Count;
using units::Money;

using UndoTest = BookTest;

TEST_F(UndoTest, namesWhatItWouldUndo) {
    stone = book->save(test::sampleStone()).value();
    EXPECT_EQ(test::described(book->undoState()->undo), "Adding(Aquamarine SS10)");
    auto material = test::sampleStone();
    material.id = stone;
    material.fixedPrice = Money::fromMicros(1);
    ASSERT_TRUE(book->save(material));
    EXPECT_EQ(test::described(book->undoState()->undo), "FieldOf(FixedPrice, Aquamarine SS10)");
    material.fixedPrice = Money::fromMicros(2);
    material.stone.loss = {};
    ASSERT_TRUE(book->save(material));
    EXPECT_EQ(test::described(book->undoState()->undo), "ChangeOf(Aquamarine SS10)");
    material.stone.loss = units::Rate::fromPercent(4);
    ASSERT_TRUE(book->save(material));
    EXPECT_EQ(test::described(book->undoState()->undo), "FieldOf(Loss, Aquamarine SS10)");
    ASSERT_TRUE(book->removeMaterial(stone));
    EXPECT_EQ(test::described(book->undoState()->undo), "Removing(Aquamarine SS10)");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(test::described(book->undoState()->redo), "Removing(Aquamarine SS10)");
    auto shop = book->shop().value();
    shop.rates.labourPerHour = Money::fromMicros(20'000'000);
    ASSERT_TRUE(book->save(shop));
    EXPECT_EQ(test::described(book->undoState()->undo), "LabourRate");
    EXPECT_EQ(test::described(book->undoState()->redo), "");
}

TEST_F(UndoTest, takesTheFirstTapeBackWithItsBeingUsual) {
    tape = book->save(test::sampleTape()).value();
    EXPECT_EQ(book->shop()->usualTape, tape);
    EXPECT_EQ(test::described(book->undoState()->undo), "Adding(" + test::sampleTape().name + ")");
    ASSERT_TRUE(book->undo());
    EXPECT_TRUE(book->shop()->usualTape.isNone());
    EXPECT_TRUE(book->materials()->empty());
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(book->shop()->usualTape, tape);
    auto sheets = test::sampleTape();
    sheets.kind = catalogue::MaterialKind::Template;
    sheets.name = "Template";
    sheets.sheet.lifts = 1;
    const auto first = book->save(sheets).value();
    EXPECT_EQ(book->shop()->usualTemplate, first);
    EXPECT_EQ(book->shop()->usualTape, tape);
    expectSound();
}

TEST_F(UndoTest, choosesNoTapeForAShopThatHasChosen) {
    auto other = test::sampleTape();
    tape = book->save(other).value();
    auto shop = book->shop().value();
    shop.usualTape = {};
    ASSERT_TRUE(book->save(shop));
    other.name = "Second";
    ASSERT_TRUE(book->save(other));
    EXPECT_TRUE(book->shop()->usualTape.isNone()) << "it is not the first";
    for (const auto& material : test::valueOf(book->materials())) ASSERT_TRUE(book->removeMaterial(material.id));
    shop.meantAsNothing.tape = true;
    ASSERT_TRUE(book->save(shop));
    ASSERT_TRUE(book->save(other));
    EXPECT_TRUE(book->shop()->usualTape.isNone()) << "none is meant";
}

TEST_F(UndoTest, leavesAnEmptyOrderThatNobodyAskedFor) {
    stock();
    while (book->undoState()->undo) ASSERT_TRUE(book->undo());
    auto quote = book->startQuote().value();
    EXPECT_EQ(test::described(book->undoState()->undo), "");
    EXPECT_FALSE(book->undo());
    quote.order.lines.push_back(test::sampleLine({}));
    quote.version = book->saveDraft(quote).value();
    ASSERT_TRUE(book->undo());
    EXPECT_TRUE(book->quote(quote.id)->order.lines.empty());
    EXPECT_FALSE(book->undo());
    ASSERT_TRUE(book->quote(quote.id)) << "what is typed next has nowhere to go";
}

TEST_F(UndoTest, namesTheFieldOfALine) {
    stock();
    auto quote = draft();
    quote.order.lines[0].quantity = Count::of(36);
    quote.version = book->saveDraft(quote).value();
    EXPECT_EQ(test::described(book->undoState()->undo), "FieldOf(Quantity, Lantern)");
    quote.order.lines.pop_back();
    quote.version = book->saveDraft(quote).value();
    EXPECT_EQ(test::described(book->undoState()->undo), "Removing(Lantern, small)");
    quote.order.wantedBy.reset();
    quote.version = book->saveDraft(quote).value();
    EXPECT_EQ(test::described(book->undoState()->undo), "FieldOfQuote(DayItIsWanted)");
    quote.order.lines.push_back(test::sampleLine(design));
    quote.version = book->saveDraft(quote).value();
    EXPECT_EQ(test::described(book->undoState()->undo), "Adding(Lantern)");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->quote(quote.id)->order.lines.size(), 1U);
    EXPECT_GT(book->quote(quote.id)->version, quote.version);
}

TEST_F(UndoTest, saysWhenThereIsNothing) {
    EXPECT_EQ(test::described(book->undo().error()), "NothingToUndo");
    EXPECT_EQ(test::described(book->redo().error()), "NothingToRedo");
}

TEST_F(UndoTest, reachesBackToTheOpeningOnly) {
    stock();
    reopen();
    EXPECT_EQ(test::described(book->undoState()->undo), "");
    EXPECT_EQ(book->undo().error().code, Code::NotFound);
}

TEST_F(UndoTest, takesSeveralSavesBackAsOne) {
    ASSERT_TRUE(book->batch(base::say(db::Note::Adding, "a kit"), [&]() -> base::Done {
        for (const auto* name : {"Jet SS10", "Rose SS10"})
            if (auto saved = book->save(test::sampleStone(name)); !saved) return base::fail(saved.error());
        return {};
    }));
    EXPECT_EQ(test::described(book->undoState()->undo), "Adding(a kit)");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->materials()->size(), 0U);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(book->materials()->size(), 2U);
    expectSound();
}

TEST_F(UndoTest, keepsNothingOfAnActionThatFails) {
    const auto before = test::described(book->undoState()->undo);
    const auto done = book->batch(base::say(db::Note::Adding, "a kit"), [&]() -> base::Done {
        if (auto saved = book->save(test::sampleStone("Jet SS10")); !saved) return base::fail(saved.error());
        if (auto saved = book->save(test::sampleStone("Jet SS10")); !saved) return base::fail(saved.error());
        return {};
    });
    EXPECT_EQ(done.error().code, Code::Conflict);
    EXPECT_EQ(book->materials()->size(), 0U);
    EXPECT_EQ(test::described(book->undoState()->undo), before);
    ASSERT_TRUE(book->save(test::sampleStone("Jet SS10")));
    expectSound();
}

TEST_F(UndoTest, keepsTheRestWhenAFailureInsideAnActionIsForgiven) {
    ASSERT_TRUE(book->batch(base::say(db::Note::Adding, "a kit"), [&]() -> base::Done {
        EXPECT_TRUE(book->save(test::sampleStone("Jet SS10")));
        EXPECT_FALSE(book->save(test::sampleStone("Jet SS10")));
        EXPECT_TRUE(book->save(test::sampleStone("Rose SS10")));
        return {};
    }));
    EXPECT_EQ(book->materials()->size(), 2U);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->materials()->size(), 0U);
    expectSound();
}

TEST_F(UndoTest, survivesAnExceptionInsideAnAction) {
    const auto done = book->batch(base::say(db::Note::Adding, "a kit"), [&]() -> base::Done {
        EXPECT_TRUE(book->save(test::sampleStone()));
        throw std::runtime_error("lost");
    });
    EXPECT_FALSE(done);
    EXPECT_EQ(book->materials()->size(), 0U);
    ASSERT_TRUE(book->save(test::sampleStone()));
}

TEST_F(UndoTest, neverTakesAGivenQuoteBack) {
    stock();
    const auto steps = test::described(book->undoState()->undo);
    const auto sealed = issued();
    EXPECT_EQ(test::described(book->undoState()->undo), steps);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->quote(sealed.id)->number, sealed.number);
    ASSERT_TRUE(book->setStage(sealed.id, Stage::Agreed));
    EXPECT_EQ(test::described(book->undoState()->undo), "StageOf(2026-0001)");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->quote(sealed.id)->stage, Stage::Quoted);
    expectSound();
}

/// What the book should hold, kept by the simplest means: a copy of everything for each step.
struct Model {
    std::map<std::string, Money> prices; ///< of materials by name
    std::map<base::Id, catalogue::Order> drafts;
    std::map<std::string, std::int64_t> shelf;

    friend bool operator==(const Model&, const Model&) = default;
};

class RandomWalk : public BookTest {
  protected:
    Model read() {
        Model model;
        std::map<base::Id, std::string> names;
        for (const auto& material : valueOf(book->materials())) {
            model.prices[material.name] = material.fixedPrice;
            names[material.id] = material.name;
        }
        for (const auto& row : valueOf(book->quotes("", 10'000)))
            if (row.number.empty()) model.drafts[row.id] = book->quote(row.id)->order;
        for (const auto& [id, amount] : valueOf(book->shelf()))
            if (amount != 0 && names.contains(id)) model.shelf[names[id]] = amount;
        return model;
    }
    std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random); }

    /// One action by chance; true when it changed the book.
    bool act() {
        const auto materials = book->materials().value();
        switch (below(6)) {
        case 0: return book->save(test::sampleStone("Stone " + std::to_string(below(12)))).has_value();
        case 1: {
            if (materials.empty()) return false;
            auto material = materials[below(materials.size())];
            const auto price = Money::fromMicros(static_cast<std::int64_t>(below(5)));
            if (material.fixedPrice == price) return false;
            material.fixedPrice = price;
            return book->save(material).has_value();
        }
        case 2: return !materials.empty() && book->removeMaterial(materials[below(materials.size())].id).has_value();
        case 3:
            return book
                ->batch(base::say(db::Note::Adding, "new order"),
                        [&]() -> base::Done {
                            auto quote = book->startQuote().value();
                            quote.order.lines.emplace_back().title = "First";
                            if (auto saved = book->saveDraft(quote); !saved) return base::fail(saved.error());
                            return {};
                        })
                .has_value();
        case 4: {
            const auto drafts = book->quotes("", 10'000).value();
            if (drafts.empty()) return false;
            auto quote = book->quote(drafts[below(drafts.size())].id).value();
            auto& line = quote.order.lines.emplace_back();
            line.title = "Line " + std::to_string(below(100));
            if (quote.order.lines.size() > 3) quote.order.lines.erase(quote.order.lines.begin());
            return book->saveDraft(quote).has_value();
        }
        default:
            if (materials.empty()) return false;
            return book
                ->moveStock(materials[below(materials.size())].id, static_cast<std::int64_t>(below(20)) - 9,
                            std::nullopt, "")
                .has_value();
        }
    }

    std::mt19937_64 random;
};

TEST_F(RandomWalk, undoesAndRedoesToEveryEarlierState) {
    random.seed(test::printedSeed());
    std::vector<Model> states{read()};
    std::size_t at = 0;
    const int rounds = test::roundsOr("STONEPENNY_WALK", 400);
    for (int round = 0; round < rounds; ++round) {
        const auto dice = below(10);
        if (dice < 5) {
            if (!act()) continue;
            states.resize(++at);
            states.push_back(read());
        } else if (dice < 8) {
            ASSERT_EQ(book->undo().has_value(), at > 0);
            if (at > 0) --at;
        } else {
            ASSERT_EQ(book->redo().has_value(), at + 1 < states.size());
            if (at + 1 < states.size()) ++at;
        }
        ASSERT_EQ(read(), states[at]) << "round " << round;
    }
    reopen();
    EXPECT_EQ(read(), states[at]);
    expectSound();
}

} // namespace

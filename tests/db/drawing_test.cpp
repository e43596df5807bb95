// SPDX-License-Identifier: MIT
#include "tests/db/bench_book.h"

#include <sqlite3.h>

namespace {

using namespace sp;
using base::Code;

class DrawingTest : public test::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        artwork = test::sampleArtwork(design.id);
    }
    std::string ask(const std::string& sql) {
        sqlite3* db = nullptr;
        EXPECT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
        std::string answer;
        const auto take = [](void* to, int, char** values, char**) {
            *static_cast<std::string*>(to) = values[0] == nullptr ? "NULL" : values[0];
            return 0;
        };
        EXPECT_EQ(sqlite3_exec(db, sql.c_str(), take, &answer, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
        sqlite3_close(db);
        return answer;
    }
    catalogue::DesignArtwork artwork;
};

TEST_F(DrawingTest, isGivenBackByteForByte) {
    EXPECT_EQ(book->artwork(design.id).value(), std::nullopt);
    ASSERT_TRUE(book->save(artwork));
    reopen();
    EXPECT_EQ(book->artwork(design.id).value(), artwork);
    EXPECT_EQ(book->artwork(stone).value(), std::nullopt);
    expectSound();
}

TEST_F(DrawingTest, isReplacedRemovedAndBroughtBack) {
    ASSERT_TRUE(book->save(artwork));
    EXPECT_EQ(test::described(book->undoState()->undo), "DrawingOf(Lantern)");
    auto other = artwork;
    other.file = "<svg/>";
    other.format = catalogue::ArtworkFormat::Svg;
    other.thumbnail.clear();
    other.counts.clear();
    ASSERT_TRUE(book->save(other));
    ASSERT_TRUE(book->removeArtwork(design.id));
    EXPECT_EQ(test::described(book->undoState()->undo), "RemovingDrawingOf(Lantern)");
    EXPECT_EQ(book->artwork(design.id).value(), std::nullopt);
    EXPECT_EQ(book->removeArtwork(design.id).error().code, Code::NotFound);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->artwork(design.id).value(), other);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->artwork(design.id).value(), artwork);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->artwork(design.id).value(), std::nullopt);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(book->artwork(design.id).value(), artwork);
    expectSound();
}

TEST_F(DrawingTest, goesAndComesWithItsDesign) {
    ASSERT_TRUE(book->save(artwork));
    ASSERT_TRUE(book->removeDesign(design.id));
    EXPECT_EQ(book->artwork(design.id).value(), std::nullopt);
    EXPECT_EQ(book->save(artwork).error().code, Code::NotFound);
    expectSound();
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->artwork(design.id).value(), artwork);
}

TEST_F(DrawingTest, keepsEveryFileOnceAndNoneInTheChangeLog) {
    artwork.file.assign(200'000, 'x');
    ASSERT_TRUE(book->save(artwork));
    auto twin = test::sampleDesign(stone, blank, "Twin");
    artwork.design = book->save(twin).value();
    ASSERT_TRUE(book->save(artwork));
    const auto before = test::bytesOf(file);
    ASSERT_TRUE(book->save(artwork));
    book.reset();
    EXPECT_EQ(test::bytesOf(file), before) << "saved as it was, it writes nothing";
    EXPECT_EQ(ask("SELECT count(*) FROM artwork_file"), "2");
    EXPECT_EQ(ask("SELECT count(*) FROM change WHERE entity = 'artwork'"), "2");
    EXPECT_EQ(ask("SELECT max(length(after)) < 1000 FROM change WHERE entity = 'artwork'"), "1");
    // `printf xxx… | sha256sum` of coreutils says the same digest.
    EXPECT_EQ(ask("SELECT hex(digest) FROM artwork_file WHERE length(bytes) = 200000"),
              "91E3FAAFD322BCDF160F3F0CE886ACB092B9B9E2A1E8526B40F21A8898A8700B");
}

TEST_F(DrawingTest, takesTheLargestFileAndRefusesALargerOne) {
    artwork.file.assign(catalogue::kMaxArtwork, 'x');
    ASSERT_TRUE(book->save(artwork));
    EXPECT_EQ(book->artwork(design.id).value(), artwork);
    expectSound();
    artwork.file += 'x';
    const auto larger = book->save(artwork);
    EXPECT_EQ(larger.error().code, Code::Invalid);
    EXPECT_EQ(test::described(larger.error()), "DrawingTooLarge(lantern.dxf, 64)");
    artwork.file.clear();
    EXPECT_EQ(test::described(book->save(artwork).error()), "DrawingEmpty(lantern.dxf)");
}

TEST_F(DrawingTest, refusesWhatItCannotKeep) {
    const auto detailOf = [&](auto spoil) {
        auto spoilt = artwork;
        spoil(spoilt);
        const auto saved = book->save(spoilt);
        return saved ? std::string("saved") : test::described(saved.error());
    };
    EXPECT_EQ(detailOf([](auto& a) { a.fileName.clear(); }), "NotTyped(TheField(NameOfTheFile))");
    EXPECT_EQ(detailOf([](auto& a) { a.unit = {}; }), "FieldOutOfRange(TheField(Scale), 1, 1000000000000)");
    EXPECT_EQ(detailOf([](auto& a) { a.holeAllowance = units::Length::fromNanometres(-1); }),
              "FieldOutOfRange(TheField(AllowanceOfTheHoles), 0, 1000000000000)");
    EXPECT_EQ(detailOf([](auto& a) { a.counts = "{"; }), "CountsUnreadable(TheField(CountsOfTheDrawing))");
    EXPECT_EQ(book->artwork(design.id).value(), std::nullopt);
    book.reset();
    EXPECT_EQ(ask("SELECT count(*) FROM artwork_file"), "0");
}

TEST_F(DrawingTest, isFoundOutWhenItsBytesWereAltered) {
    ASSERT_TRUE(book->save(artwork));
    book.reset();
    ask("UPDATE artwork_file SET bytes = x'00' WHERE length(bytes) > 20");
    reopen();
    const auto read = book->artwork(design.id);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, Code::Damaged);
    EXPECT_EQ(test::described(read.error()), "DrawingDamaged(Stone Bench.jobbook)");
    const auto report = db::Book::check(file);
    ASSERT_TRUE(report);
    ASSERT_EQ(report->damage.size(), 1U);
    EXPECT_EQ(describe(report->damage[0]), "FoundIn(TheDrawings, DrawingDamaged(Stone Bench.jobbook))");
}

TEST_F(DrawingTest, remembersTheStoneOfAColour) {
    ASSERT_TRUE(book->save(catalogue::ColourMaterial{{}, 0x4FC3CF, "SS10", stone}));
    EXPECT_EQ(test::described(book->undoState()->undo), "StoneForColour(4fc3cf)");
    const auto other = book->save(test::sampleStone("Jet SS10")).value();
    ASSERT_TRUE(book->save(catalogue::ColourMaterial{{}, 0x000000, "SS10", other}));
    ASSERT_TRUE(book->save(catalogue::ColourMaterial{{}, 0x4FC3CF, "SS10", other}));
    ASSERT_TRUE(book->save(catalogue::ColourMaterial{{}, 0x4FC3CF, "SS16", stone}));
    const auto materials = [&] {
        std::vector<base::Id> ids;
        for (const auto& colour : test::valueOf(book->colourMaterials())) ids.push_back(colour.material);
        return ids;
    };
    EXPECT_EQ(materials(), (std::vector{other, other, stone}));
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(materials(), (std::vector{other, stone}));
    ASSERT_TRUE(book->redo());
    reopen();
    EXPECT_EQ(materials(), (std::vector{other, other}));
    ASSERT_TRUE(book->removeMaterial(other));
    EXPECT_EQ(materials(), std::vector<base::Id>{});
    EXPECT_EQ(book->save(catalogue::ColourMaterial{{}, 1, "SS10", other}).error().code, Code::NotFound);
    EXPECT_EQ(test::described(book->save(catalogue::ColourMaterial{{}, 1, "SS11", stone}).error()),
              "UnknownStoneSize(TheField(StoneSize))");
    expectSound();
}

} // namespace

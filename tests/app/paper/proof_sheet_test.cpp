// SPDX-License-Identifier: MIT
//
// The proof on the quote sheet, of the demo book's drawings.
#include "app/words/proof_sheet.h"

#include "app/demo/demo_book.h"
#include "app/paper/output.h"
#include "app/paper/proof_picture.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>

namespace sp::paper {

namespace {

using testing::SizeIs;

class ProofSheet : public testing::Test {
  protected:
    ProofSheet()
        : m_book(std::move(*demo::createDemoBook(m_folder.path() / "demo.jobbook", m_clock.environment()))) {}

    /// A line of each of the first designs of the book.
    catalogue::Order orderOf(std::size_t designs) {
        catalogue::Order order;
        order.quotedOn = m_clock.environment().today();
        const auto all = m_book->designs();
        for (std::size_t i = 0; i < designs; ++i) {
            const auto& design = all->at(i);
            catalogue::OrderLine line;
            line.title = design.name;
            line.customersGarment = true;
            line.first() = {design.id, design.name, {}, design.width, design.height, design.stones, {}, {}, {}};
            order.lines.push_back(line);
        }
        return order;
    }

    db::Quote give(const catalogue::Order& order) {
        const auto prices = *m_book->priceBook({});
        const auto result = words::resultOf(order, prices, order.quotedOn.plusDays(30), m_fits, m_words);
        return *m_book->issueNew(order, prices, words::withProofs(*result, *m_book, order, prices, m_words),
                                 order.quotedOn.plusDays(30));
    }

    std::string pdfOf(const quoting::SheetContent& sheet) {
        const auto path = m_folder.path() / "sheet.pdf";
        EXPECT_TRUE(
            writePdf(sheet, catalogue::Paper::Letter, QString::fromStdString(path.string()), db::IfThere::Replace));
        std::ifstream file(path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    std::unique_ptr<db::Book> m_book;
    layout::FitMemo m_fits;
    const words::SheetWords m_words;
};

} // namespace

TEST_F(ProofSheet, isAsGivenWhenTheDesignIsDrawnAnew) {
    const auto order = orderOf(2);
    const auto given = give(order);
    ASSERT_THAT(given.result->sheet.proofs, SizeIs(2));
    EXPECT_EQ(given.result->sheet.proofs[0].note, "");
    auto drawing = **m_book->artwork(order.lines[1].first().design);
    drawing.design = order.lines[0].first().design;
    ASSERT_TRUE(m_book->save(drawing));
    const auto again = m_book->quote(given.id);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->result->sheet, given.result->sheet);
    EXPECT_NE(give(order).result->sheet.proofs, given.result->sheet.proofs) << "a new quote has the new drawing";
}

TEST_F(ProofSheet, drawsEveryStoneAndALetterForEachColour) {
    const auto sheet = give(orderOf(1)).result->sheet;
    const auto& proof = sheet.proofs.at(0);
    const ProofPicture picture(proof, QSizeF(250, 250));
    ASSERT_FALSE(picture.isEmpty());
    EXPECT_LE(picture.size().width(), 250);
    EXPECT_LE(picture.size().height(), 250);
    const auto letters = picture.letters(16);
    ASSERT_THAT(letters, SizeIs(proof.stones.size()));
    for (std::size_t i = 0; i < letters.size(); ++i) {
        ASSERT_TRUE(letters[i]) << proof.stones[i].name;
        for (std::size_t k = 0; k < i; ++k) {
            const auto apart = letters[i]->centre - letters[k]->centre;
            EXPECT_GT(std::hypot(apart.x(), apart.y()), 2 * kLetterRing) << "two letters on each other";
        }
    }
    const auto pages = documentOf(sheet, catalogue::Paper::Letter).pages;
    const auto says = [&](const std::string& words) {
        return std::ranges::any_of(pages, [&](const PlacedPage& page) {
            return std::ranges::any_of(
                page.texts, [&](const PlacedText& text) { return text.text == QString::fromStdString(words); });
        });
    };
    for (const auto& stone : proof.stones) EXPECT_TRUE(says(stone.name) && says(stone.count)) << stone.name;
    EXPECT_TRUE(says(proof.width));
    EXPECT_TRUE(says(proof.height));
    EXPECT_TRUE(says(sheet.labels.agree));
}

TEST_F(ProofSheet, ofManyColoursGoesOnOnFurtherPages) {
    auto sheet = give(orderOf(1)).result->sheet;
    auto& stones = sheet.proofs.at(0).stones;
    const auto stone = stones.front();
    for (int i = 0; i < 60; ++i) {
        stones.push_back(stone);
        stones.back().name = "Colour " + std::to_string(i);
    }
    const auto document = documentOf(sheet, catalogue::Paper::Letter);
    std::size_t named = 0;
    for (const auto& page : document.pages)
        for (const auto& text : page.texts) {
            EXPECT_LT(text.baseline.y(), pageSize(catalogue::Paper::Letter).height() - 20) << text.text.toStdString();
            named += text.text.startsWith(QLatin1String("Colour ")) ? 1U : 0U;
        }
    EXPECT_EQ(named, 60U);
}

TEST_F(ProofSheet, ofADesignWithoutAPictureIsItsNameAndWhy) {
    auto sheet = give(orderOf(1)).result->sheet;
    sheet.proofs = {{}};
    sheet.proofs[0].title = "Crowded";
    sheet.proofs[0].note = m_words.proofLeftOut();
    std::vector<QString> said;
    for (const auto& page : documentOf(sheet, catalogue::Paper::Letter).pages)
        for (const auto& text : page.texts) said.push_back(text.text);
    EXPECT_THAT(said, testing::Contains(QStringLiteral("Crowded")));
    EXPECT_THAT(said, testing::Contains(QString::fromStdString(m_words.proofLeftOut())));
    EXPECT_THAT(said, testing::Not(testing::Contains(QString::fromStdString(sheet.labels.proofStones))));
}

TEST_F(ProofSheet, ofSixDesignsIsLessThanAMegabyte) {
    const auto sheet = give(orderOf(6)).result->sheet;
    ASSERT_THAT(sheet.proofs, SizeIs(6));
    EXPECT_LT(pdfOf(sheet).size(), 1'000'000u);
}

} // namespace sp::paper

// SPDX-License-Identifier: MIT
// What is laid over the sheet of a quote that was replaced leaves the sheet as it was given.
#include "app/paper/output.h"
#include "app/paper/page_frame.h"
#include "app/paper/replaced_mark.h"
#include "app/words/sheet_words.h"
#include "tests/support/sales.h"

#include <gtest/gtest.h>

namespace {

using namespace sp;
using catalogue::Paper;

const QString kMark = QStringLiteral("Replaced by 2026-0042-2 on 30 Nov 2026");

TEST(ReplacedMark, standsOnEveryPageAboveWhatWasGiven) {
    const words::SheetWords words;
    for (const auto paper : {Paper::Letter, Paper::A4}) {
        const auto given = paper::documentOf(test::longSale(80).sheet(words), paper);
        ASSERT_GT(given.pages.size(), 1U);
        auto marked = given;
        paper::layOver(marked, kMark, paper);
        ASSERT_EQ(marked.pages.size(), given.pages.size());
        for (std::size_t i = 0; i < marked.pages.size(); ++i) {
            const auto& before = given.pages[i];
            const auto& after = marked.pages[i];
            ASSERT_EQ(after.texts.size(), before.texts.size() + 1) << i;
            for (std::size_t text = 0; text < before.texts.size(); ++text) {
                EXPECT_EQ(after.texts[text].text, before.texts[text].text);
                EXPECT_EQ(after.texts[text].baseline, before.texts[text].baseline);
            }
            EXPECT_EQ(after.texts.back().text, kMark);
            ASSERT_EQ(after.boxes.size(), before.boxes.size() + 1);
            const auto& frame = after.boxes.back().area;
            EXPECT_TRUE(frame.contains(after.texts.back().baseline));
            EXPECT_GE(frame.top(), 0);
            EXPECT_LE(frame.bottom(), paper::kTopMargin) << "in the margin, where nothing stands";
            EXPECT_GE(frame.left(), paper::kSideMargin);
            EXPECT_LE(frame.right(), paper::kSideMargin + paper::columnWidth(paper));
        }
    }
}

TEST(ReplacedMark, ofNothingIsNothing) {
    const words::SheetWords words;
    auto document = paper::documentOf(test::shortSale().sheet(words), Paper::A4);
    const auto texts = document.pages.at(0).texts.size();
    paper::layOver(document, {}, Paper::A4);
    EXPECT_EQ(document.pages.at(0).texts.size(), texts);
}

TEST(ReplacedMark, thatIsTooLongIsCutOffAndStaysOnThePage) {
    const words::SheetWords words;
    auto document = paper::documentOf(test::shortSale().sheet(words), Paper::Letter);
    paper::layOver(document, kMark.repeated(9), Paper::Letter);
    const auto& frame = document.pages.at(0).boxes.back().area;
    EXPECT_LE(frame.right(), paper::kSideMargin + paper::columnWidth(Paper::Letter) + 0.01);
}

} // namespace

// SPDX-License-Identifier: MIT
#include "app/paper/output.h"
#include "app/paper/plan_pages.h"
#include "tests/app/paper/pdf_reader.h"
#include "tests/support/sample_shop.h"
#include "tests/support/test_data.h"

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>

namespace sp::paper {

namespace {

std::vector<planning::CutPlan> plansOf(const std::vector<catalogue::OrderLine>& lines,
                                       const catalogue::PriceBook& book) {
    std::vector<planning::CutPlan> plans;
    const auto lists = planning::cutLists(lines, book);
    EXPECT_TRUE(lists.has_value());
    layout::MixedEffort effort;
    effort.steps = 500'000;
    for (const auto& list : *lists) plans.push_back(*planning::planCut(list, effort));
    return plans;
}

struct Job {
    catalogue::PriceBook book = sample::priceBook();
    std::vector<catalogue::OrderLine> lines{sample::lantern(24)};

    Job() {
        book.shop.letterhead.name = "Kiln Lane Sparkle";
        book.shop.paper = catalogue::Paper::Letter;
        auto crest = sample::lantern(5);
        crest.title = "Crest";
        crest.first().width = units::Length::fromInch64ths(5 * 64);
        crest.first().height = units::Length::fromInch64ths(4 * 64);
        lines.push_back(crest);
    }
    PlanSheetInput input() const { return {"quote 2026-0042", "1 Dec 2026", &book.shop, {}, plansOf(lines, book)}; }
};

/// What is said, line by line. Where pieces lie is checked in core, and which words there is room for inside a piece
/// depends on the font: so the lines that hold nothing but marks and sizes are left out.
QStringList linesOf(const Document& document) {
    const QTemporaryDir folder;
    const auto pdf = folder.filePath(QStringLiteral("plan.pdf"));
    EXPECT_TRUE(writePdf(document, catalogue::Paper::Letter, pdf));
    QStringList lines;
    static const QRegularExpression kDrawn(QStringLiteral("^(([A-Z]|[0-9/ ]+× [0-9/ ]+in( left)?)( +|$))+$"));
    static const QRegularExpression kGap(QStringLiteral(" {2,}"));
    for (const auto& page : test::pagesOf(pdf))
        for (const auto& line : page.split(QLatin1Char('\n')))
            if (const auto plain = line.trimmed(); !plain.isEmpty() && !kDrawn.match(plain).hasMatch())
                lines << QString(plain).replace(kGap, QStringLiteral(" | "));
    return lines;
}

} // namespace

/// STONEPENNY_WRITE_GOLDEN=1 rewrites the file.
TEST(PlanPages, readAsTheyDid) {
    const auto text = linesOf(planDocument(Job().input())).join(QLatin1Char('\n')) + QLatin1Char('\n');
    QFile file(QString::fromStdString(sp::test::dataFile("paper/cutting_plan.txt")));
    if (qEnvironmentVariableIsSet("STONEPENNY_WRITE_GOLDEN")) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text.toUtf8());
        return;
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(text.toStdString(), file.readAll().toStdString());
}

TEST(PlanPages, sayHowToStaySafeAndNoPrice) {
    const auto text = linesOf(planDocument(Job().input())).join(QLatin1Char(' '));
    EXPECT_TRUE(text.contains("retract the blade"));
    for (const auto* word : {"cost", "price", "9.99", "3.25", "1.18", "USD"})
        EXPECT_FALSE(text.contains(QLatin1String(word))) << word;
}

TEST(PlanPages, stayInsideThePaperWithEverySheet) {
    Job job;
    for (int i = 0; i < 12; ++i) {
        auto line = sample::lantern(3 + i);
        line.title = "A rather long name for a design that fills its row, number " + std::to_string(i);
        line.first().width = units::Length::fromInch64ths(150 + 40 * i);
        line.first().height = units::Length::fromInch64ths(120 + 30 * i);
        job.lines.push_back(line);
    }
    for (const auto paper : {catalogue::Paper::Letter, catalogue::Paper::A4}) {
        job.book.shop.paper = paper;
        job.book.shop.isDemo = true;
        const auto input = job.input();
        const auto document = planDocument(input);
        EXPECT_GT(document.pages.size(), 1U);
        for (std::size_t i = 0; i < document.pages.size(); ++i)
            for (const auto& said : {QStringLiteral("Kiln Lane Sparkle"), QStringLiteral("Cutting plan"),
                                     QStringLiteral("Demo: invented names and prices"),
                                     QStringLiteral("Page %1 of %2").arg(i + 1).arg(document.pages.size())})
                EXPECT_TRUE(std::ranges::any_of(document.pages[i].texts,
                                                [&](const PlacedText& text) { return text.text == said; }))
                    << said.toStdString() << " is not on page " << i + 1;
        const QRectF page({}, pageSize(paper));
        std::size_t boxes = 0;
        const Lettering lettering;
        for (const auto& placed : document.pages) {
            boxes += placed.boxes.size();
            for (const auto& box : placed.boxes) EXPECT_TRUE(page.contains(box.area));
            for (const auto& text : placed.texts) {
                EXPECT_LE(text.baseline.x() + lettering.width(text.face, text.text), page.right())
                    << text.text.toStdString();
                EXPECT_LE(text.baseline.y(), page.bottom());
            }
        }
        std::size_t least = 0;
        for (const auto& plan : input.plans)
            for (const auto& sheet : plan.sheets) least += 1 + sheet.places.size();
        EXPECT_GE(boxes, least);
    }
}

TEST(PlanShape, keepsToScaleAndLaysTheLongerSideAcross) {
    const Job job;
    const auto plans = plansOf(job.lines, job.book);
    const auto& plan = plans.back();
    const auto size = planSize(plan);
    EXPECT_DOUBLE_EQ(size.width(), 12 * 25.4);
    EXPECT_DOUBLE_EQ(size.height(), 9 * 25.4);
    for (const auto& sheet : plan.sheets) {
        const auto shape = shapeOf(plan, sheet, {10, 20}, 0.5);
        EXPECT_EQ(shape.sheet, QRectF(10, 20, size.width() * 0.5, size.height() * 0.5));
        ASSERT_EQ(shape.parts.size(), sheet.places.size());
        for (const auto& part : shape.parts) {
            EXPECT_TRUE(shape.sheet.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(part.box));
            const auto& piece = plan.list.pieces[part.piece].size;
            EXPECT_NEAR(part.box.width() * part.box.height(),
                        piece.width.millimetres() * piece.height.millimetres() * 0.25, 1e-6);
            const double along = (part.turned ? piece.height : piece.width).millimetres();
            EXPECT_NEAR(part.box.width(), along * 0.5, 1e-6);
        }
    }
}

TEST(PlanShape, marksPiecesAsColumnsOfATableAre) {
    EXPECT_EQ(pieceMark(0), "A");
    EXPECT_EQ(pieceMark(25), "Z");
    EXPECT_EQ(pieceMark(26), "AA");
    EXPECT_EQ(pieceMark(27), "AB");
    EXPECT_EQ(pieceMark(26 * 27), "AAA");
}

TEST(PlanWords, neverPromiseMoreThanIsProven) {
    planning::CutPlan plan;
    plan.count = 3;
    plan.bound = 2;
    EXPECT_EQ(PlanWords().verdict(plan), "3 sheets; no plan needs fewer than 2");
    plan.bound = 3;
    plan.proven = true;
    EXPECT_EQ(PlanWords().verdict(plan), "3 sheets, fewest possible");
    auto& sheet = plan.list.material.sheet;
    sheet.form = catalogue::SheetForm::Roll;
    sheet.height = units::Length::fromInch64ths(64 * 100);
    plan.proven = false;
    plan.length = units::Length::fromNanometres(units::Length::fromInch64ths(64).nanometres() + 1);
    plan.lengthBound = units::Length::fromNanometres(units::Length::fromInch64ths(64).nanometres() - 1);
    EXPECT_EQ(PlanWords().verdict(plan), "1 1/64 in off the roll; no plan needs less than 63/64 in");
}

} // namespace sp::paper

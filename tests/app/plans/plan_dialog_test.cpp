// SPDX-License-Identifier: MIT
// The sheet plan off screen, on the sample shop.
#include "app/desk/theme.h"
#include "app/paper/preview_dialog.h"
#include "app/plans/measure_table.h"
#include "app/plans/plan_dialog.h"
#include "app/plans/plan_picture.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"
#include "tests/support/wait_for.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

#include <random>

namespace sp::plans::test {

namespace {

class Plan : public testing::Test {
  protected:
    void open(std::vector<catalogue::OrderLine> lines, bool asksPieces = false) {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        const desk::Formatter formatter(QLocale(), m_prices.shop);
        m_dialog = std::make_unique<PlanDialog>(PlanQuestion{QStringLiteral("Lantern"), std::move(lines), asksPieces},
                                                m_prices, formatter);
        m_dialog->show();
    }
    bool waitForPlan() {
        return sp::test::waitFor([this] { return !m_dialog->planner().isBusy(); });
    }
    QStringList textsOf(const char* name) {
        QStringList texts;
        for (const auto* label : m_dialog->findChildren<QLabel*>(QLatin1String(name))) texts << label->text();
        return texts;
    }
    std::vector<PlanPicture*> pictures() {
        std::vector<PlanPicture*> shown;
        for (auto* picture : m_dialog->findChildren<PlanPicture*>())
            if (picture->isVisibleTo(m_dialog.get())) shown.push_back(picture);
        return shown;
    }

    catalogue::PriceBook m_prices = sample::priceBook();
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<PlanDialog> m_dialog;
};

} // namespace

TEST_F(Plan, showsTemplatesTapeAndBackingWithWhatNoPlanCanBeat) {
    open({sample::lantern(24)});
    EXPECT_TRUE(pictures().empty());
    EXPECT_FALSE(m_dialog->findChild<QAbstractButton*>(QStringLiteral("printPlan"))->isEnabled());
    ASSERT_TRUE(waitForPlan());
    // 3 1/2 × 2 3/4 in: eight lie on 9 × 12 in (two across 9 in by four along 12 in; a ninth would need more than 108
    // sq in minus what is lost at both edges). 24 backings take three sheets, twelve tapes two.
    const auto verdicts = textsOf("planVerdict");
    ASSERT_EQ(verdicts.size(), 3);
    EXPECT_EQ(verdicts[0], "1 sheet, fewest possible");
    for (const auto& verdict : verdicts) EXPECT_TRUE(verdict.contains("sheet")) << verdict.toStdString();
    EXPECT_EQ(textsOf("planLeft").size(), 3);
    EXPECT_GE(pictures().size(), 3U);
    EXPECT_TRUE(m_dialog->findChild<QAbstractButton*>(QStringLiteral("printPlan"))->isEnabled());
}

TEST_F(Plan, showsNoPictureOfWhatIsNoLongerAsked) {
    open({sample::lantern(24)}, true);
    ASSERT_TRUE(waitForPlan());
    ASSERT_FALSE(pictures().empty());
    auto* pieces = m_dialog->findChild<QLineEdit*>(QStringLiteral("planPieces"));
    ASSERT_NE(pieces, nullptr);
    pieces->setFocus();
    pieces->selectAll();
    QTest::keyClicks(pieces, QStringLiteral("60"));
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_TRUE(pictures().empty());
    ASSERT_TRUE(waitForPlan());
    ASSERT_EQ(m_dialog->planner().answers().size(), 3U);
    EXPECT_EQ(m_dialog->planner().answers()[2].list.pieces[0].count, 62);
    EXPECT_EQ(textsOf("planSpares").front(), "Spares: 2, as 1.86 of 60 are expected to be spoiled.");
    EXPECT_FALSE(pictures().empty());
    pieces->selectAll();
    QTest::keyClicks(pieces, QStringLiteral("none"));
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    ASSERT_TRUE(waitForPlan());
    EXPECT_TRUE(pictures().empty());
    EXPECT_FALSE(m_dialog->findChild<QAbstractButton*>(QStringLiteral("printPlan"))->isEnabled());
}

TEST_F(Plan, saysWhatDoesNotFitAndShowsTheRest) {
    auto banner = sample::lantern(1);
    banner.title = "Banner";
    banner.first().width = units::Length::fromInch64ths(13 * 64);
    banner.baseMaterial = sample::idOf("Hoodie");
    banner.first().templatesOnWall = true;
    m_prices.materials[sample::idOf("Tape")].material.sheet.height = units::Length::fromInch64ths(11 * 64);
    auto lantern = sample::lantern(2);
    open({banner, lantern});
    ASSERT_TRUE(waitForPlan());
    const auto problems = textsOf("planProblem");
    ASSERT_EQ(problems.size(), 1);
    EXPECT_TRUE(problems[0].contains("Banner"));
    EXPECT_EQ(textsOf("planVerdict").size(), 2);
}

TEST_F(Plan, aGarmentWithoutTapeAndTemplatesHasNothingToLay) {
    m_prices.shop.usualTape = {};
    auto line = sample::lantern(3);
    line.customersGarment = true;
    line.first().templatesOnWall = true;
    open({line});
    ASSERT_TRUE(waitForPlan());
    EXPECT_EQ(textsOf("planSaid"), QStringList{"Nothing here is cut from a sheet or a roll."});
    EXPECT_TRUE(pictures().empty());
}

TEST_F(Plan, everyPictureCanBeReadOut) {
    open({sample::lantern(24)});
    ASSERT_TRUE(waitForPlan());
    for (auto* picture : pictures()) {
        EXPECT_FALSE(picture->accessibleName().isEmpty());
        EXPECT_TRUE(picture->accessibleDescription().contains("Lantern"));
    }
}

TEST_F(Plan, measuresAreATableForEachMaterialThatTabReachesAndArrowsWalk) {
    open({sample::lantern(24)});
    ASSERT_TRUE(waitForPlan());
    QApplication::setActiveWindow(m_dialog.get());
    auto* measures = m_dialog->findChild<QAbstractButton*>(QStringLiteral("planMeasures"));
    measures->click();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const auto tables = m_dialog->findChildren<QTableView*>(QStringLiteral("planMeasureTable"));
    ASSERT_EQ(tables.size(), 3);
    const auto* shown = tables[0]->model();
    ASSERT_GE(shown->rowCount(), 1);
    EXPECT_EQ(shown->index(0, 0).data().toString(), "1");
    const auto piece = shown->index(0, 1).data().toString();
    EXPECT_TRUE(piece.contains(QStringLiteral(" Lantern, "))) << piece.toStdString(); // a template names its colour
    EXPECT_NE(tables[0]->accessibleName(), tables[1]->accessibleName());
    EXPECT_FALSE(tables[0]->verticalScrollBar()->isVisible());
    measures->setFocus();
    std::vector<QWidget*> reached;
    for (int stop = 0; stop < 8; ++stop) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        reached.push_back(QApplication::focusWidget());
    }
    // Print, Close, round to the sheets, through their tables in the order in which they are seen, and back.
    EXPECT_EQ(reached[2]->objectName(), "planSheets");
    for (int i = 0; i < 3; ++i) EXPECT_EQ(reached[static_cast<std::size_t>(3 + i)], tables[i]);
    EXPECT_EQ(reached[6], measures);
    auto* last = tables.last();
    last->setFocus();
    for (int row = 0; row < last->model()->rowCount(); ++row) QTest::keyClick(last, Qt::Key_Down);
    EXPECT_EQ(last->currentIndex().row(), last->model()->rowCount() - 1);
    auto* sheets = m_dialog->findChild<QScrollArea*>(QStringLiteral("planSheets"));
    const QPoint at = last->viewport()->mapTo(sheets->viewport(), last->visualRect(last->currentIndex()).center());
    EXPECT_TRUE(sheets->viewport()->rect().contains(at)); // what is chosen is in sight
}

TEST_F(Plan, aPlanLongerThanTheTableSaysWhereTheRestIs) {
    std::vector<catalogue::OrderLine> lines;
    std::mt19937_64 random(sp::test::printedSeed());
    for (int i = 0; i < 60; ++i) {
        auto line = sample::lantern(7);
        line.title = "Piece " + std::to_string(i);
        line.first().width = units::Length::fromInch64ths(64 + static_cast<std::int64_t>(random() % 200));
        line.first().height = units::Length::fromInch64ths(64 + static_cast<std::int64_t>(random() % 200));
        lines.push_back(line);
    }
    open(lines);
    ASSERT_TRUE(waitForPlan());
    m_dialog->findChild<QAbstractButton*>(QStringLiteral("planMeasures"))->click();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    bool isCut = false;
    for (const auto* table : m_dialog->findChildren<MeasureTable*>()) {
        EXPECT_LE(table->model()->rowCount(), 200);
        isCut = isCut || !table->isWhole();
    }
    EXPECT_TRUE(isCut);
    EXPECT_FALSE(textsOf("planMeasuresMore").isEmpty());
}

TEST_F(Plan, goesToThePreview) {
    open({sample::lantern(24)});
    ASSERT_TRUE(waitForPlan());
    m_dialog->findChild<QAbstractButton*>(QStringLiteral("printPlan"))->click();
    EXPECT_NE(m_dialog->findChild<paper::PreviewDialog*>(QStringLiteral("planPreview")), nullptr);
}

TEST_F(Plan, closesWhileItIsWorkedOut) {
    open({sample::lantern(900)});
    ASSERT_TRUE(m_dialog->planner().isBusy());
    const QSignalSpy answered(&m_dialog->planner(), &SheetPlanner::answered);
    m_dialog.reset();
    sp::test::handleQueued();
    EXPECT_EQ(answered.count(), 0) << "of a dialog that is closed nothing is heard";
}

TEST(SheetPlanner, answersOnlyTheLastQuestion) {
    const auto book = sample::priceBook();
    SheetPlanner planner;
    QSignalSpy answered(&planner, &SheetPlanner::answered);
    for (const std::int64_t quantity : {500, 300, 7}) {
        const std::vector lines{sample::lantern(quantity)};
        planner.ask(*planning::cutLists(lines, book));
    }
    ASSERT_TRUE(sp::test::waitFor([&] { return !planner.isBusy(); }));
    EXPECT_EQ(answered.count(), 1);
    EXPECT_EQ(planner.answers().back().list.pieces[0].count, 7);
}

} // namespace sp::plans::test

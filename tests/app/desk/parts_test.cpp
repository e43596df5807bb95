// SPDX-License-Identifier: MIT
#include "app/desk/figures.h"
#include "app/desk/icons.h"
#include "app/desk/message_bar.h"
#include "app/desk/rail.h"
#include "app/desk/share_bar.h"
#include "app/desk/wheel_guard.h"
#include "tests/app/desk/desk_fixture.h"
#include "tests/support/wait_for.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QComboBox>
#include <QFontMetricsF>
#include <QLineEdit>
#include <QSignalSpy>
#include <QWheelEvent>

namespace sp::desk::test {

TEST(Figures, giveEveryDigitTheSameRoom) {
    const QFontMetricsF metrics(textFont(TextSize::Body), nullptr);
    EXPECT_DOUBLE_EQ(figuresWidth(metrics, qs("1,111.11")), figuresWidth(metrics, qs("8,888.88")));
    EXPECT_LT(figuresWidth(metrics, qs("1")), figuresWidth(metrics, qs("11")));
}

TEST(FigureLabel, isReadOutWithItsMeaning) {
    FigureLabel label;
    label.setMeaning(qs("To pay"));
    label.setFigure(qs("407.33"));
    EXPECT_EQ(QAccessible::queryAccessibleInterface(&label)->text(QAccessible::Name), qs("To pay 407.33"));
}

TEST(FigureLabel, opensByKeyOnlyWhenThereIsSomethingBehind) {
    FigureLabel label(qs("1.94"));
    const QSignalSpy opened(&label, &FigureLabel::opened);
    QTest::keyClick(&label, Qt::Key_Return);
    EXPECT_EQ(opened.count(), 0);
    label.setOpens(true);
    QTest::keyClick(&label, Qt::Key_Return);
    EXPECT_EQ(opened.count(), 1);
}

TEST(Icon, everyOneIsThereAndTakesItsColour) {
    for (int i = 0; i <= static_cast<int>(Icon::Save); ++i) {
        const QImage drawn = icon(static_cast<Icon>(i), Role::Jewel).pixmap(48, 48).toImage();
        int inked = 0;
        for (int y = 0; y < drawn.height(); ++y)
            for (int x = 0; x < drawn.width(); ++x) inked += drawn.pixelColor(x, y).alpha() == 255;
        EXPECT_GT(inked, 20) << i;
        EXPECT_LT(inked, 48 * 48 / 3) << i;
    }
}

TEST(Rail, goesToAPlaceByKey) {
    QWidget window;
    Rail rail(&window);
    rail.addPlace(Icon::Counter, qs("Counter"), qs("counterPlace"));
    rail.addPlace(Icon::Designs, qs("Designs"), qs("designsPlace"));
    rail.resize(rail.sizeHint());
    const QSignalSpy chosen(&rail, &Rail::chosen);
    enter(window, *rail.findChild<QAbstractButton*>(qs("counterPlace")));
    EXPECT_EQ(rail.current(), 0);
    QTest::keyClick(&window, Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(rail.current(), 1);
    rail.setCurrent(1);
    EXPECT_EQ(chosen.count(), 1);
    QTest::keyClick(rail.findChild<QAbstractButton*>(qs("designsPlace")), Qt::Key_Up);
    EXPECT_EQ(rail.current(), 0);
    const auto* spoken = QAccessible::queryAccessibleInterface(rail.findChild<QAbstractButton*>(qs("designsPlace")));
    EXPECT_EQ(spoken->text(QAccessible::Name), qs("Designs"));
    EXPECT_EQ(spoken->role(), QAccessible::RadioButton);
}

TEST(MessageBar, actsOnceAndGoesAway) {
    QWidget window;
    MessageBar bar(&window);
    window.show();
    EXPECT_EQ(bar.sentence(), QString());
    int acted = 0;
    bar.tell(Tone::Good, qs("Job removed."), qs("Undo"), [&] { ++acted; });
    EXPECT_EQ(bar.sentence(), qs("Job removed."));
    bar.findChild<QPushButton*>(qs("messageAction"))->click();
    EXPECT_EQ(acted, 1);
    EXPECT_EQ(bar.sentence(), QString());
}

struct TwoBars {
    QWidget window;
    QWidget page{&window};
    MessageBar ofWindow{&window};
    MessageBar ofPage{&page};

    TwoBars() { window.show(); }
};

TEST(MessageBar, isTheOnlyOneSeenAndTheNewest) {
    TwoBars bars;
    bars.ofWindow.tell(Tone::Warn, qs("The disk is full."));
    EXPECT_TRUE(bars.ofWindow.isVisible());
    bars.ofPage.tell(Tone::Good, qs("Given."), qs("New order"));
    EXPECT_TRUE(bars.ofPage.isVisible());
    EXPECT_FALSE(bars.ofWindow.isVisible());
    EXPECT_EQ(bars.ofWindow.sentence(), qs("The disk is full.")) << "it waits";
    bars.ofPage.dismiss();
    EXPECT_TRUE(bars.ofWindow.isVisible());
}

TEST(MessageBar, ofAPageThatIsLeftMakesRoomForTheOneBefore) {
    TwoBars bars;
    bars.ofWindow.tell(Tone::Warn, qs("The disk is full."));
    bars.ofPage.tell(Tone::Good, qs("Given."), qs("New order"));
    bars.page.hide();
    EXPECT_TRUE(bars.ofWindow.isVisible());
    bars.page.show();
    EXPECT_TRUE(bars.ofPage.isVisible());
    EXPECT_FALSE(bars.ofWindow.isVisible());
    bars.page.hide();
    bars.ofWindow.tell(Tone::Jewel, qs("Undone."), qs("Redo"));
    bars.page.show();
    EXPECT_TRUE(bars.ofWindow.isVisible()) << "told since";
    EXPECT_FALSE(bars.ofPage.isVisible());
}

TEST(MessageBar, thatStandsApartIsSeenBesideAnother) {
    TwoBars bars;
    bars.ofPage.setStandsApart(true);
    bars.ofPage.tell(Tone::Warn, qs("Jet is short."));
    bars.ofWindow.tell(Tone::Warn, qs("The disk is full."));
    EXPECT_TRUE(bars.ofPage.isVisible());
    EXPECT_TRUE(bars.ofWindow.isVisible());
}

TEST(MessageBar, goesByItselfWhereNothingIsWrongAndNothingToDo) {
    QWidget window;
    MessageBar quiet(&window);
    MessageBar warning(&window);
    QLineEdit field(&window);
    field.setFocus(); // with the focus on it, or the pointer, one stays
    for (auto* bar : {&quiet, &warning}) {
        bar->setQuietStays(std::chrono::milliseconds(1));
        bar->move(0, 300);
    }
    window.resize(600, 400);
    const QSignalSpy gone(&quiet, &MessageBar::dismissed);
    window.show();
    warning.tell(Tone::Warn, qs("The disk is full."));
    quiet.tell(Tone::Jewel, qs("Undone: pieces."));
    EXPECT_TRUE(sp::test::waitFor([&] { return gone.count() == 1; }));
    EXPECT_TRUE(warning.isVisible()) << "what is wrong stays";
    quiet.tell(Tone::Jewel, qs("Removed."), qs("Undo"));
    EXPECT_TRUE(sp::test::waitFor([&] { return quiet.isVisible(); }));
    EXPECT_EQ(gone.count(), 1) << "what can be done stays";
}

TEST(ShareBar, saysItsPartsToAScreenReader) {
    ShareBar bar;
    bar.setShares({{qs("Stones"), 194, qs("1.94")}, {qs("Nothing"), 0, qs("0.00")}, {qs("Tape"), 12, qs("0.12")}});
    EXPECT_EQ(bar.accessibleDescription(), qs("Stones 1.94, Tape 0.12"));
}

TEST(WheelGuard, keepsTheWheelFromChangingAChoice) {
    const auto turnedTo = [](bool guarded) {
        QComboBox combo;
        combo.addItems({qs("Letter"), qs("A4")});
        WheelGuard guard;
        if (guarded) combo.installEventFilter(&guard);
        QWheelEvent wheel(QPointF(5, 5), QPointF(5, 5), QPoint(), QPoint(0, -120), Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&combo, &wheel);
        return combo.currentIndex();
    };
    EXPECT_EQ(turnedTo(true), 0);
    EXPECT_EQ(turnedTo(false), 1) << "without the guard it does, so the test sees it";
}

} // namespace sp::desk::test

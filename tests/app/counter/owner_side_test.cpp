// SPDX-License-Identifier: MIT
// The owner's side of the slip: when it turns back by itself, and where its figures are then.
#include "app/session/settings.h"
#include "tests/app/demo_window.h"
#include "tests/app/screen_reader.h"

#include <QAbstractButton>
#include <QAction>
#include <QKeyEvent>
#include <QMenu>

using namespace sp;
using program::PlaceId;

namespace {

class OwnerSide : public test::DemoWindow {
  protected:
    bool isUp() { return find<>("costEach")->isVisible(); }
    void turnUp() {
        press(Qt::Key_F9);
        ASSERT_TRUE(isUp());
        ASSERT_EQ(text("costEach"), "4.11");
    }
};

TEST_F(OwnerSide, turnsBackOnANewOrderAGivenQuoteAndAnotherOneOpened) {
    orderLantern();
    turnUp();
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_FALSE(isUp()) << "a new order";
    orderLantern();
    turnUp();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    EXPECT_FALSE(isUp()) << "a given quote";
    const auto given = m_window->presenter().quote().id;
    press(Qt::Key_F9);
    EXPECT_TRUE(isUp()) << "the owner may look at a given quote too";
    find<QAbstractButton>("give")->click();
    ASSERT_FALSE(m_window->presenter().isIssued());
    EXPECT_FALSE(isUp()) << "ordered again";
    turnUp();
    ASSERT_TRUE(m_window->presenter().open(given));
    EXPECT_FALSE(isUp()) << "another quote opened";
}

TEST_F(OwnerSide, staysUpWhileTheSameOrderIsWorkedOn) {
    orderLantern();
    turnUp();
    find<>("pieces")->setFocus();
    type("36");
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_TRUE(isUp());
    m_window->presenter().lookAt(0);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(isUp());
}

TEST_F(OwnerSide, turnsBackWhenTheCounterIsLeft) {
    orderLantern();
    turnUp();
    m_window->goTo(PlaceId::Designs);
    m_window->goTo(PlaceId::Counter);
    EXPECT_FALSE(isUp());
}

TEST_F(OwnerSide, turnsBackAfterAWhileWithoutAKey) {
    session::save(session::kTurnsBackAfter, 1);
    orderLantern();
    turnUp();
    EXPECT_TRUE(test::waitFor([this] { return !isUp(); }));
    EXPECT_EQ(focused(), "onto") << "what has the focus and is still seen keeps it";
}

TEST_F(OwnerSide, isSetInTheBookMenu) {
    auto* menu = find<QMenu>("turnBackMenu");
    ASSERT_EQ(menu->actions().size(), 4);
    EXPECT_TRUE(menu->actions().at(1)->isChecked()) << "two minutes, until another is chosen";
    menu->actions().at(3)->trigger();
    EXPECT_EQ(session::kept(session::kTurnsBackAfter), 0);
    reopen();
    EXPECT_TRUE(find<QMenu>("turnBackMenu")->actions().at(3)->isChecked());
}

// A program that reads the screen may also ask for what is not shown.
TEST_F(OwnerSide, hasNoFigureWhileItIsTurnedAway) {
    orderLantern();
    turnUp();
    press(Qt::Key_F9);
    std::vector<QString> heard;
    const test::ScreenReader reader([&](QAccessible::Event event, const QString& name, const QObject&) {
        if (event == QAccessible::NameChanged) heard.push_back(name);
    });
    find<>("pieces")->setFocus();
    type("36");
    EXPECT_FALSE(heard.empty()) << "what is to pay is told";
    for (const auto& name : heard)
        for (const char* secret : {"Cost each", "Mark-up", "Margin", "Earned"})
            EXPECT_FALSE(name.startsWith(QLatin1String(secret))) << name.toStdString();
    for (const char* secret : {"costEach", "markUp", "margin", "perHour"}) EXPECT_EQ(text(secret), "—") << secret;
    for (const char* secret : {"leaves", "wholeOrder", "footing", "cardFeeTaken"})
        EXPECT_EQ(text(secret), "") << secret;
    press(Qt::Key_F9);
    EXPECT_NE(text("costEach"), "—");
    EXPECT_NE(text("wholeOrder"), "");
}

// Of the keys of a number only what they come to is said; then why there is no price.
TEST_F(OwnerSide, thePriceIsAnnouncedOnceItStands) {
    orderLantern();
    std::vector<QString> alerts;
    const test::ScreenReader reader([&](QAccessible::Event event, const QString& name, const QObject& teller) {
        if (event == QAccessible::Alert && teller.inherits("sp::counter::SlipPanel")) alerts.push_back(name);
    });
    find<>("pieces")->setFocus();
    type("24");
    EXPECT_TRUE(test::waitFor([&] { return !alerts.empty(); }));
    type("x");
    EXPECT_TRUE(test::waitFor([&] { return alerts.size() > 1; }));
    ASSERT_EQ(alerts.size(), 2U);
    EXPECT_EQ(alerts[0], "6.80 each, to pay 175.03");
    EXPECT_TRUE(alerts[1].contains("24x")) << alerts[1].toStdString();
}

TEST_F(OwnerSide, itsButtonNeverGetsTheFocusByItself) {
    type("lant");
    press(Qt::Key_Return);
    type("24");
    ASSERT_EQ(focused(), "pieces");
    while (m_window->presenter().hasLine()) press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(focused(), "design") << "the last line undone";
    orderLantern();
    turnUp();
    find<>("costTree")->setFocus(Qt::TabFocusReason);
    press(Qt::Key_F9);
    EXPECT_EQ(focused(), "pieces") << "turned back";
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    EXPECT_NE(focused(), "turnOver") << "given";
}

} // namespace

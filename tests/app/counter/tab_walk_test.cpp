// SPDX-License-Identifier: MIT
// Tab through every place of the window: a keyboard that cannot leave a field is a trap.
#include "app/buying/buying_page.h"
#include "tests/app/demo_window.h"

#include <QAbstractScrollArea>
#include <QComboBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QWheelEvent>

#include <algorithm>

using namespace sp;
using program::PlaceId;

namespace {

class TabWalk : public test::DemoWindow {
  protected:
    /// Goes there, and waits for what is worked out for it beside the screen: with the answer come more inputs.
    void goTo(PlaceId place) {
        m_window->goTo(place);
        auto* page = m_window->findChild<buying::BuyingPage*>();
        if (page && page->isVisible()) {
            ASSERT_TRUE(test::waitFor([page] { return page->presenter().isCurveComplete(); }));
        }
        test::handleQueued();
    }

    /// Everything a person can give the focus by Tab, found without any regard to order.
    std::vector<QWidget*> inputs() {
        std::vector<QWidget*> found;
        for (auto* widget : m_window->findChildren<QWidget*>()) {
            const bool stops = widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) &&
                               widget->window() == m_window.get() && !widget->focusProxy();
            if (stops) found.push_back(widget);
        }
        return found;
    }

    static std::string nameOf(const QWidget* widget) {
        return widget->metaObject()->className() + std::string(" ") +
               (widget->objectName().isEmpty() ? widget->accessibleName() : widget->objectName()).toStdString();
    }

    /// The stops from the focus on until it comes back to where it began, or until one comes twice.
    std::vector<QWidget*> walk(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        std::vector<QWidget*> stops{QApplication::focusWidget()};
        for (;;) {
            press(key, modifiers);
            auto* now = QApplication::focusWidget();
            if (std::find(stops.begin(), stops.end(), now) != stops.end()) {
                EXPECT_EQ(now, stops.front()) << "goes round from " << nameOf(now);
                return stops;
            }
            stops.push_back(now);
        }
    }

    void expectAllReached(const std::string& place) {
        const auto forward = walk(Qt::Key_Tab);
        for (auto* input : inputs())
            EXPECT_EQ(std::count(forward.begin(), forward.end(), input), 1) << place << ": " << nameOf(input);
        EXPECT_EQ(forward.size(), inputs().size()) << place;
        auto back = walk(Qt::Key_Backtab, Qt::ShiftModifier);
        std::reverse(back.begin() + 1, back.end());
        EXPECT_EQ(back, forward) << place << ": Shift+Tab is not the way back";
    }

    /// Where each of `names` is met on a walk from the first of them.
    void expectInOrder(std::vector<std::string> names) {
        find<>(names.front().c_str())->setFocus(Qt::TabFocusReason);
        std::vector<std::string> met;
        for (auto* stop : walk(Qt::Key_Tab)) {
            const auto name = stop->objectName().toStdString();
            if (std::find(names.begin(), names.end(), name) != names.end()) met.push_back(name);
        }
        EXPECT_EQ(met, names);
    }
};

TEST_F(TabWalk, reachesEveryInputOfEveryPlaceOnce) {
    orderLantern();
    const std::pair<const char*, const char*> places[] = {
        {"placeCounter", "customer"},        {"placeDesigns", "findDesign"},    {"placeSupplies", "findSupply"},
        {"placeBuying", "buyDesign"},        {"placeJobs", "findJob"},          {"placeBench", "benchGo"},
        {"placeCustomers", "findCustomer"},  {"placeFigures", "figuresBefore"}, {"placeShop", "shopName"},
        {"placeFirstSteps", "firstShopName"}};
    int number = 0;
    for (const auto& [place, first] : places) {
        goTo(static_cast<PlaceId>(number++));
        find<>(first)->setFocus(Qt::TabFocusReason);
        ASSERT_EQ(focused(), first);
        expectAllReached(place);
    }
}

TEST_F(TabWalk, reachesEverythingOfTheOwnersSideAndOfAFoldedCounter) {
    orderLantern();
    press(Qt::Key_F9);
    find<>("customer")->setFocus(Qt::TabFocusReason);
    expectAllReached("owner’s side");
    m_window->resize(1024, 700);
    test::handleQueued();
    press(Qt::Key_F9);
    expectAllReached("folded");
}

TEST_F(TabWalk, reachesEverythingOfTheEstimate) {
    press(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    type("Go");
    ASSERT_TRUE(test::waitFor([this] { return find<QPushButton>("estimatePrice")->isEnabled(); }));
    expectAllReached("estimate");
}

TEST_F(TabWalk, goesThroughTheCounterAsTheEyeDoes) {
    orderLantern();
    expectInOrder({"customer", "wantedBy",  "discount", "exempt", "design", "addCharge", "lines",        "pieces",
                   "onto",     "title",     "where",    "width",  "height", "onWall",    "taxable",      "stone0",
                   "stone1",   "addColour", "addPlace", "give",   "print",  "turnOver",  "placeCounter", "book"});
}

TEST_F(TabWalk, aOneOffIsTypedInForwardByKeysAlone) {
    type("Odd fox");
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_EQ(focused(), "pieces");
    type("3");
    for (const char* next : {"onto", "title", "where", "width"}) {
        press(Qt::Key_Tab);
        ASSERT_EQ(focused(), next);
    }
    type("4");
    press(Qt::Key_Return);
    type("3");
    for (int i = 0; i < 10 && focused() != "addColour"; ++i) press(Qt::Key_Tab);
    ASSERT_EQ(focused(), "addColour");
    type("jet");
    press(Qt::Key_Return);
    type("120");
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

TEST_F(TabWalk, altUGoesToAFurtherColour) {
    orderLantern();
    QTest::keyClick(m_window.get(), Qt::Key_U, Qt::AltModifier);
    EXPECT_EQ(focused(), "addColour");
}

TEST_F(TabWalk, turningTheSlipLeavesTheFocusOnWhatIsSeen) {
    orderLantern();
    m_window->resize(1024, 700);
    test::handleQueued();
    find<>("pieces")->setFocus(Qt::TabFocusReason);
    press(Qt::Key_F9);
    EXPECT_EQ(focused(), "costTree") << "folded: the owner’s side has come";
    press(Qt::Key_F9);
    EXPECT_EQ(focused(), "columnTab2") << "folded: the customer’s side again; a space there shows no cost";
    m_window->resize(1366, 768);
    test::handleQueued();
    find<>("pieces")->setFocus(Qt::TabFocusReason);
    press(Qt::Key_F9);
    EXPECT_EQ(focused(), "pieces") << "side by side nothing is turned away";
}

TEST_F(TabWalk, theWheelOverAChoiceNeitherChangesNorFocusesIt) {
    goTo(PlaceId::Shop);
    auto* paper = find<QComboBox>("paper");
    const auto before = paper->currentIndex();
    find<>("shopName")->setFocus(Qt::TabFocusReason);
    for (const int turn : {-120, 120, 120}) {
        QWheelEvent wheel(paper->rect().center(), paper->mapToGlobal(paper->rect().center()), {}, {0, turn},
                          Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QApplication::sendEvent(paper, &wheel);
    }
    for (auto* combo : m_window->findChildren<QComboBox*>())
        EXPECT_NE(combo->focusPolicy(), Qt::WheelFocus) << combo->objectName().toStdString();
    test::handleQueued();
    EXPECT_EQ(paper->currentIndex(), before);
    EXPECT_EQ(focused(), "shopName");
}

TEST_F(TabWalk, aStepOfTheLadderStandsBeforeTheButtonThatAddsOne) {
    goTo(PlaceId::Shop);
    expectInOrder({"garmentAllowance", "ladderFrom0", "ladderRate0", "ladderFrom1", "ladderRate1", "ladderAdd",
                   "ladderDesign", "ladderPicture", "rushFrom0", "rushAdd"});
    expectInOrder({"usualTemplate", "packing0", "packing1", "packingAdd", "ladderQuantities"});
}

} // namespace

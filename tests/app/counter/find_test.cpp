// SPDX-License-Identifier: MIT
// Looking for something in each place, by keys: what is open is always what is listed.
#include "tests/app/demo_window.h"

#include <QAction>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QTableView>

using namespace sp;
using program::PlaceId;

namespace {

class Finding : public test::DemoWindow {
  protected:
    void goTo(PlaceId place) {
        m_window->goTo(place);
        test::handleQueued();
    }
    std::string chosen(const char* list) {
        return find<QListView>(list)->currentIndex().data().toString().toStdString();
    }
};

TEST_F(Finding, ctrlFGoesToTheSearchOfEachPlace) {
    const char* fields[] = {"design",  "findDesign",   "findSupply", "buyDesign", "findJob",
                            "benchGo", "findCustomer", "figuresGo",  "shopName"};
    for (int place = 0; place < static_cast<int>(std::size(fields)); ++place) {
        goTo(static_cast<PlaceId>(place));
        m_window->findChildren<QPushButton*>().front()->setFocus();
        press(Qt::Key_F, Qt::ControlModifier);
        EXPECT_EQ(focused(), fields[place]) << "place " << place;
    }
}

TEST_F(Finding, aQuoteIsLookedForInJobsWithoutABoxOfItsOwn) {
    press(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(focused(), "findJob");
    EXPECT_TRUE(field("findJob")->isVisible());
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
}

TEST_F(Finding, aSupplyThatIsSearchedAwayIsNotLeftOpen) {
    goTo(PlaceId::Supplies);
    press(Qt::Key_F, Qt::ControlModifier);
    const auto before = field("materialName")->text();
    type("aqua");
    EXPECT_EQ(chosen("supplies"), "Aquamarine SS10");
    EXPECT_EQ(field("materialName")->text(), "Aquamarine SS10") << "was " << before.toStdString();
    press(Qt::Key_Down);
    EXPECT_EQ(focused(), "supplies");
    press(Qt::Key_F, Qt::ControlModifier);
    type("no such thing");
    EXPECT_FALSE(field("materialName")->isVisible());
    EXPECT_FALSE(find<>("removeSupply")->isVisible());
    press(Qt::Key_Down);
    EXPECT_EQ(focused(), "findSupply") << "there is no list to go into";
    field("findSupply")->selectAll();
    press(Qt::Key_Delete);
    EXPECT_TRUE(field("materialName")->isVisible()) << "the first of all is open again";
}

TEST_F(Finding, aSupplyRenamedAwayFromItsSearchStaysOpen) {
    goTo(PlaceId::Supplies);
    press(Qt::Key_F, Qt::ControlModifier);
    type("aqua");
    field("materialName")->setFocus(Qt::TabFocusReason);
    type("Sea green");
    press(Qt::Key_Return);
    EXPECT_EQ(chosen("supplies"), "Sea green");
    EXPECT_EQ(field("materialName")->text(), "Sea green");
}

TEST_F(Finding, aDesignThatIsSearchedAwayIsNotLeftOpen) {
    goTo(PlaceId::Designs);
    press(Qt::Key_F, Qt::ControlModifier);
    type("heron");
    EXPECT_EQ(chosen("designs"), "Heron");
    EXPECT_EQ(field("designName")->text(), "Heron");
    press(Qt::Key_Down);
    EXPECT_EQ(focused(), "designs");
    press(Qt::Key_F, Qt::ControlModifier);
    type("no such thing");
    EXPECT_FALSE(field("designName")->isVisible());
    EXPECT_FALSE(find<>("emptyAction")->isVisible()) << "there are designs, only none of that name";
}

TEST_F(Finding, aCustomerThatIsSearchedAwayIsNotLeftOpen) {
    goTo(PlaceId::Customers);
    press(Qt::Key_F, Qt::ControlModifier);
    type("lark");
    EXPECT_EQ(field("customerName")->text(), "Larkspur Lane Dance Studio");
    press(Qt::Key_Down);
    EXPECT_EQ(focused(), "customers");
    press(Qt::Key_F, Qt::ControlModifier);
    type("qq");
    EXPECT_FALSE(field("customerName")->isVisible());
}

} // namespace

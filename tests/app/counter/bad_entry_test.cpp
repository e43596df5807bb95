// SPDX-License-Identifier: MIT
// Entries at the Counter that cannot be used: they stay as typed, and there is no price meanwhile.
#include "app/desk/field_box.h"
#include "tests/app/demo_window.h"

#include <QListView>
#include <QPushButton>

using namespace sp;

namespace {

class BadEntries : public test::DemoWindow {};

TEST_F(BadEntries, blanksThePriceWhileAnEntryCannotBeRead) {
    orderLantern();
    field("pieces")->setFocus();
    type("12x");
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_EQ(field("pieces")->text(), "12x");
    EXPECT_FALSE(text("whyNoPrice").isEmpty());
    EXPECT_FALSE(find<QPushButton>("give")->isEnabled());
    EXPECT_FALSE(find<QPushButton>("print")->isEnabled());
    press(Qt::Key_Tab);
    EXPECT_EQ(field("pieces")->text(), "12x") << "what was typed stays";
    field("pieces")->setFocus();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(m_window->presenter().isIssued());
    field("pieces")->selectAll();
    type("24");
    EXPECT_EQ(text("toPay"), "175.03");
}

struct BadEntry {
    const char* field;
    const char* typed;
};

TEST_F(BadEntries, everyBadEntryBlanksThePriceAndStays) {
    orderLantern();
    for (const BadEntry& row :
         {BadEntry{"pieces", "0"}, BadEntry{"pieces", "-3"}, BadEntry{"pieces", "2.5"}, BadEntry{"pieces", ""},
          BadEntry{"width", "3mm*2mm"}, BadEntry{"width", "1/0"}, BadEntry{"height", "twelve"},
          BadEntry{"height", "90 km"}, BadEntry{"stone0", "0"}, BadEntry{"stone1", "many"},
          BadEntry{"wantedBy", "someday"}, BadEntry{"discount", "120 %"}, BadEntry{"discount", "lots"}}) {
        auto* entry = field(row.field);
        const auto before = entry->text();
        entry->setFocus();
        entry->selectAll();
        if (*row.typed)
            type(row.typed);
        else
            press(Qt::Key_Delete);
        EXPECT_EQ(text("toPay"), "—") << row.field << ": " << row.typed;
        EXPECT_EQ(entry->text(), row.typed);
        entry->selectAll();
        if (before.isEmpty())
            press(Qt::Key_Delete);
        else
            type(before.toUtf8().constData());
        EXPECT_EQ(text("toPay"), "175.03") << row.field << " back to " << before.toStdString();
    }
}

TEST_F(BadEntries, aBadEntryStaysWithItsLineAndBlanksThePrice) {
    orderLantern();
    field("pieces")->setFocus();
    type("12 dozne");
    field("design")->setFocus();
    type("boat");
    press(Qt::Key_Return);
    ASSERT_EQ(m_window->presenter().current(), 1);
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_TRUE(text("whyNoPrice").startsWith("Line 1, Lantern: ")) << text("whyNoPrice").toStdString();
    EXPECT_FALSE(find<QPushButton>("give")->isEnabled());
    const auto* list = find<QListView>("lines");
    EXPECT_EQ(list->model()->index(0, 0).data().toString(), "— × Lantern");
    m_window->presenter().select(0);
    EXPECT_EQ(field("pieces")->text(), "12 dozne") << "what was typed stays";
    field("pieces")->setFocus();
    field("pieces")->selectAll();
    type("24");
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

TEST_F(BadEntries, aBadEntryGoesWithItsLine) {
    orderLantern();
    field("design")->setFocus();
    type("boat");
    press(Qt::Key_Return);
    field("width")->setFocus();
    type("wide");
    field("design")->setFocus();
    type("crest");
    press(Qt::Key_Return);
    m_window->presenter().select(0);
    m_window->presenter().removeLine(); // the boat moves up, and its entry with it
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_EQ(field("width")->text(), "wide");
    m_window->presenter().removeLine();
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

TEST_F(BadEntries, aBadCountStaysWithItsStone) {
    orderLantern();
    const auto good = field("stone0")->text();
    field("stone1")->setFocus();
    field("stone1")->selectAll();
    type("many");
    m_window->presenter().removeStone(0);
    test::handleQueued(); // the row goes
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_EQ(field("stone0")->text(), "many");
    field("stone0")->setFocus();
    field("stone0")->selectAll();
    type(good.toUtf8().constData());
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

TEST_F(BadEntries, aDiscountOverAllOfItIsRefusedAndTheRestIsKept) {
    orderLantern();
    field("discount")->setFocus();
    type("150%");
    EXPECT_EQ(text("toPay"), "—");
    field("pieces")->setFocus();
    field("pieces")->selectAll();
    type("20");
    press(Qt::Key_Tab);
    EXPECT_EQ(field("discount")->text(), "150%");
    reopen();
    EXPECT_EQ(field("pieces")->text(), "20");
}

TEST_F(BadEntries, marksTheEntryThatIsOfNoUseToTheOrder) {
    orderLantern();
    const auto note = [&](const char* name) {
        return dynamic_cast<desk::FieldBox*>(field(name)->parentWidget())->note().toStdString();
    };
    field("discount")->setFocus();
    type("5000");
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_NE(note("discount").find("more than the order"), std::string::npos) << note("discount");
    field("discount")->selectAll();
    type("5");
    EXPECT_EQ(note("discount"), "");
    field("wantedBy")->setFocus();
    type("2020-01-01");
    EXPECT_NE(note("wantedBy").find("before the day of the quote"), std::string::npos) << note("wantedBy");
    field("pieces")->setFocus();
    field("pieces")->selectAll();
    press(Qt::Key_Delete);
    EXPECT_EQ(text("whyNoPrice"), "Pieces: This is still empty.");
}

TEST_F(BadEntries, aPieceLargerThanItsSheetHasNoPrice) {
    orderLantern();
    field("width")->setFocus();
    type("30 in");
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_TRUE(text("whyNoPrice").contains("9 1/2") || text("whyNoPrice").contains("sheet"))
        << text("whyNoPrice").toStdString();
}

TEST_F(BadEntries, aBadEntryOfAnotherChoiceKeepsTheQuoteFromBeingGiven) {
    orderLantern();
    const auto first = text("toPay");
    press(Qt::Key_D, Qt::ControlModifier);
    field("pieces")->setFocus();
    type("many");
    EXPECT_EQ(text("toPay"), "—");
    find<QPushButton>("choicesTab0")->click();
    EXPECT_EQ(text("toPay"), first) << "this one has its price";
    EXPECT_TRUE(find<QAbstractButton>("choice2")->accessibleName().endsWith("—"));
    EXPECT_FALSE(find<QPushButton>("give")->isEnabled());
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(m_window->presenter().isIssued());
    find<QPushButton>("choicesTab1")->click();
    EXPECT_EQ(field("pieces")->text(), "many") << "what was typed stays";
    find<QPushButton>("choicesRemove")->click();
    EXPECT_EQ(m_window->presenter().choices(), 1);
    EXPECT_EQ(text("toPay"), first);
    EXPECT_TRUE(find<QPushButton>("give")->isEnabled());
}

} // namespace

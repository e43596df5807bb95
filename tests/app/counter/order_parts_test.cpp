// SPDX-License-Identifier: MIT
// What an order is made of: lines, places on a piece, choices, charges, pieces without a design.
#include "app/desk/typed_field.h"
#include "tests/app/demo_window.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QPushButton>

using namespace sp;

namespace {

class OrderParts : public test::DemoWindow {};

// Two lines of one design share its set; of another width they are two, and the line says so.
TEST_F(OrderParts, saysWhetherALineIsMadeWithTheSetOfAnother) {
    for (int i = 0; i < 2; ++i) {
        field("design")->setFocus();
        type("crest");
        press(Qt::Key_Return);
    }
    ASSERT_EQ(m_window->presenter().current(), 1);
    EXPECT_TRUE(text("benchNote").startsWith("Made with the set of line 1.")) << text("benchNote").toStdString();
    field("width")->setFocus();
    field("width")->selectAll();
    type("6");
    press(Qt::Key_Tab);
    EXPECT_TRUE(text("benchNote").startsWith("A set of its own: its size, stones or plan are not those of line 1."))
        << text("benchNote").toStdString();
    m_window->presenter().select(0);
    EXPECT_FALSE(text("benchNote").contains("set of")) << text("benchNote").toStdString();
}

// 23 at 7.20 are 165.60, 24 at 6.80 are 163.20.
TEST_F(OrderParts, offersMorePiecesWhereTheyCostLess) {
    orderLantern();
    press(Qt::Key_F9);
    EXPECT_FALSE(find<>("moreForLess")->isVisible());
    field("pieces")->setFocus();
    field("pieces")->selectAll();
    type("23");
    EXPECT_TRUE(find<>("moreForLess")->isVisible());
    EXPECT_EQ(text("moreForLess"), "24 cost less than 23, 163.20 instead of 165.60: offer 24.");
}

TEST_F(OrderParts, takesAOneOffWithTypedSizeAndStones) {
    type("Odd fox");
    press(Qt::Key_Down); // no design of that name: the row that offers a one-off
    press(Qt::Key_Return);
    ASSERT_TRUE(m_window->presenter().hasLine());
    EXPECT_EQ(m_window->presenter().line().title, "Odd fox");
    EXPECT_EQ(text("toPay"), "—");
    field("pieces")->setFocus();
    type("3");
    field("width")->setFocus();
    type("4");
    field("height")->setFocus();
    type("3");
    field("addColour")->setFocus();
    type("jet");
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "stone0");
    type("120");
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

// A surcharge goes by the shop's name for the place, which "sleeves" would miss.
TEST_F(OrderParts, offersTheShopsPlacesWhereOneIsTyped) {
    orderLantern();
    const auto* where = field("where");
    ASSERT_FALSE(m_window->session().shop().rules.places.empty());
    EXPECT_EQ(m_window->session().shop().rules.places.front().place, "Sleeve");
    find<>("where")->setFocus();
    type("sl");
    auto* list = where->completer()->popup();
    ASSERT_TRUE(test::waitFor([&] { return list->isVisible(); }));
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(m_window->presenter().line().first().place, "Sleeve");
    EXPECT_EQ(where->text(), "Sleeve");
    const auto priced = m_window->presenter().priced();
    ASSERT_TRUE(priced);
    EXPECT_EQ(priced->lines.at(0).places.size(), 1U) << "with its surcharge";
}

TEST_F(OrderParts, setsASecondDesignOnThePieceAndTakesItOffAgain) {
    orderLantern();
    const auto one = text("toPay");
    find<desk::TypedField>("addPlace")->setFocus(Qt::TabFocusReason);
    type("crest");
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "where");
    type("Back");
    const auto& line = m_window->presenter().line();
    ASSERT_EQ(line.places.size(), 2U);
    EXPECT_EQ(line.places[1].place, "Back");
    EXPECT_EQ(line.title, "Lantern");
    EXPECT_EQ(find<QPushButton>("placesTab1")->accessibleName(), "Back: Studio crest");
    EXPECT_NE(text("toPay"), one);
    EXPECT_NE(text("toPay"), "—");
    find<desk::TypedField>("width")->setFocus(Qt::TabFocusReason);
    type("wide");
    EXPECT_EQ(text("toPay"), "—");
    find<QPushButton>("placesTab0")->click();
    EXPECT_EQ(find<desk::TypedField>("width")->text(), "3 1/2") << "the bad entry stays with its place";
    EXPECT_EQ(text("toPay"), "—");
    m_window->presenter().selectPlace(1);
    EXPECT_EQ(find<desk::TypedField>("width")->text(), "wide");
    find<QPushButton>("placesRemove")->click();
    EXPECT_EQ(m_window->presenter().line().places.size(), 1U);
    EXPECT_EQ(text("toPay"), one);
}

TEST_F(OrderParts, offersAnotherChoiceByOneKeyAndLooksAtEither) {
    orderLantern();
    const auto first = text("toPay");
    EXPECT_FALSE(find<QAbstractButton>("choice1")->isVisible());
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(text("toPay"), first) << "the same to begin with";
    field("pieces")->setFocus();
    type("36");
    const auto second = text("toPay");
    EXPECT_NE(second, first);
    auto* one = find<QAbstractButton>("choice1");
    auto* two = find<QAbstractButton>("choice2");
    EXPECT_TRUE(one->isVisible());
    EXPECT_TRUE(two->isChecked());
    EXPECT_EQ(one->accessibleName(), "Choice 1, 24 pieces, 6.80 each, To pay " + first);
    EXPECT_TRUE(two->accessibleName().endsWith("To pay " + second)) << two->accessibleName().toStdString();
    one->click();
    EXPECT_EQ(text("toPay"), first);
    EXPECT_EQ(field("pieces")->text(), "24");
    EXPECT_EQ(find<QPushButton>("choicesTab1")->accessibleName(), "2 36 pieces");
    find<QPushButton>("choicesTab1")->click();
    EXPECT_EQ(text("toPay"), second);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    EXPECT_EQ(text("toPay"), second);
    find<QAbstractButton>("choice1")->click();
    EXPECT_EQ(text("toPay"), first) << "what was given can be looked at, too";
    EXPECT_EQ(field("pieces")->text(), "24");
}

TEST_F(OrderParts, ordersAgainWhatWasTakenAlone) {
    orderLantern();
    const auto first = text("toPay");
    press(Qt::Key_D, Qt::ControlModifier);
    field("pieces")->setFocus();
    type("36");
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto id = m_window->presenter().quote().id;
    auto& session = m_window->presenter().session();
    ASSERT_TRUE(session.change([&](db::Book& book) { return book.takeChoice(id, 0); }));
    ASSERT_TRUE(m_window->presenter().open(id));
    EXPECT_EQ(text("toPay"), first) << "it is shown as it was taken";
    find<QPushButton>("give")->click();
    EXPECT_FALSE(m_window->presenter().isIssued());
    EXPECT_EQ(m_window->presenter().choices(), 1);
    EXPECT_EQ(text("toPay"), first);
}

TEST_F(OrderParts, ordersAgainAtTodaysPricesAndSaysWhy) {
    orderLantern();
    auto& presenter = m_window->presenter();
    presenter.editLine([](catalogue::OrderLine& line) { line.overrideEach = units::Money::fromMicros(9'990'000); });
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(presenter.isIssued());
    const auto given = presenter.quote();
    for (const auto stage : {db::Stage::Agreed, db::Stage::InProduction})
        ASSERT_TRUE(presenter.session().change([&](db::Book& book) { return book.setStage(given.id, stage); }));
    ASSERT_TRUE(presenter.open(given.id));
    find<QPushButton>("give")->click();
    ASSERT_FALSE(presenter.isIssued());
    EXPECT_FALSE(presenter.line().overrideEach) << "today’s price";
    EXPECT_TRUE(presenter.line().first().templatesOnWall);
    const auto difference = *given.sealedTotal - presenter.priced()->total;
    ASSERT_FALSE(difference.isNegative());
    const auto amount = desk::Formatter(QLocale(), presenter.session().shop()).money(difference);
    EXPECT_EQ(m_window->messages().sentence(),
              QStringLiteral("As in quote %1; today it comes to %2 less.").arg(given.number.c_str(), amount));
    find<QPushButton>("messageAction")->click();
    EXPECT_EQ(find<QLabel>("totalDifference")->text(), QStringLiteral("−") + amount);
    find<QWidget>("changes")->close();
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_TRUE(m_window->messages().sentence().isEmpty()) << "it was of the order before";
}

TEST_F(OrderParts, offersAtMostFourChoices) {
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(m_window->presenter().choices(), 1) << "of nothing there is no choice";
    orderLantern();
    for (int i = 0; i < 5; ++i) press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(m_window->presenter().choices(), 4);
    EXPECT_FALSE(find<QPushButton>("addChoice")->isVisible());
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(m_window->presenter().choices(), 3);
}

TEST_F(OrderParts, chargesWhatHasNoStones) {
    orderLantern();
    find<QPushButton>("addCharge")->click();
    EXPECT_EQ(focused(), "title");
    EXPECT_EQ(text("toPay"), "—") << "without a price";
    type("Postage");
    find<desk::TypedField>("chargeEach")->setFocus(Qt::TabFocusReason);
    type("6.50");
    // 163.20 of lanterns and 6.50: 169.70, and 7.25 % of it, 12.30325.
    EXPECT_EQ(text("toPay"), "182.00");
    EXPECT_FALSE(find<desk::TypedField>("width")->isVisible());
    EXPECT_TRUE(m_window->presenter().line().isCharge());
}

} // namespace

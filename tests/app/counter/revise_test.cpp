// SPDX-License-Identifier: MIT
// A given quote is revised at the Counter, by keys.
#include "tests/app/demo_window.h"

#include <QDialog>
#include <QPushButton>

using namespace sp;

namespace {

class Revising : public test::DemoWindow {
  protected:
    counter::CounterPresenter& presenter() { return m_window->presenter(); }
    QString said() { return m_window->counterPage().messages().sentence(); }
    /// The given quote of 24 Lanterns.
    db::Quote given() {
        orderLantern();
        press(Qt::Key_Return, Qt::ControlModifier);
        EXPECT_TRUE(presenter().isIssued());
        return presenter().quote();
    }
    void revise() {
        find<QPushButton>("revise")->click();
        test::handleQueued();
    }
    QDialog* dialog() { return m_window->findChild<QDialog*>(QStringLiteral("difference")); }
};

TEST_F(Revising, saysTheDifferenceBeforeItIsGiven) {
    const auto first = given();
    EXPECT_TRUE(find<QPushButton>("revise")->isVisible());
    revise();
    ASSERT_NE(presenter().revised(), nullptr);
    EXPECT_EQ(presenter().revised()->number, first.number);
    EXPECT_FALSE(find<QPushButton>("revise")->isVisible()) << "of a draft there is nothing to revise";
    EXPECT_TRUE(said().contains(QString::fromStdString(first.number)));
    EXPECT_EQ(focused(), "pieces");
    type("30");
    press(Qt::Key_Return);
    press(Qt::Key_Return, Qt::ControlModifier);
    auto* asked = dialog();
    ASSERT_NE(asked, nullptr);
    EXPECT_FALSE(presenter().isIssued()) << "it is looked at first";
    asked->reject();
    test::handleQueued();
    EXPECT_FALSE(presenter().isIssued());
    ASSERT_TRUE(test::waitFor([this] { return dialog() == nullptr; }));
    m_window->counterPage().issue();
    asked = dialog();
    ASSERT_NE(asked, nullptr);
    asked->findChild<QPushButton*>(QStringLiteral("giveRevision"))->click();
    test::handleQueued();
    ASSERT_TRUE(presenter().isIssued());
    EXPECT_EQ(presenter().quote().number, first.number + "-2");
    EXPECT_EQ(presenter().quote().id, first.id);
    EXPECT_EQ(presenter().order().lines[0].quantity, units::Count::of(30));
    EXPECT_TRUE(said().contains(QString::fromStdString(first.number + "-2")));
}

TEST_F(Revising, isGoneOnWithAfterARestart) {
    const auto first = given();
    revise();
    type("30");
    press(Qt::Key_Return);
    reopen();
    ASSERT_NE(presenter().revised(), nullptr);
    EXPECT_EQ(presenter().order().lines[0].quantity, units::Count::of(30));
    m_window->counterPage().messages().dismiss(); // the greeting of the demo
    presenter().select(0);
    EXPECT_TRUE(said().contains(QString::fromStdString(first.number))) << "it says what it revises";
}

TEST_F(Revising, ofALetGoJobIsRefusedInOneSentence) {
    const auto first = given();
    ASSERT_TRUE(
        m_window->session().change([&](db::Book& book) { return book.setStage(first.id, db::Stage::Declined); }));
    revise();
    EXPECT_EQ(presenter().revised(), nullptr);
    EXPECT_TRUE(said().contains(QStringLiteral("was let go and is not revised"))) << said().toStdString();
    EXPECT_EQ(presenter().quote().id, first.id);
}

TEST_F(Revising, isRefusedWhereItWasRevisedMeanwhileAndNothingIsLost) {
    const auto first = given();
    revise();
    type("30");
    press(Qt::Key_Return);
    const auto draft = presenter().quote().id;
    // Another place gives a revision of its own.
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) {
        auto order = first.order;
        const db::QuoteResult result{
            *presenter().priced(), {}, [](const std::string&) { return quoting::SheetContent(); }};
        return book.issueRevision(first.id, order, book.priceBook(order.customer).value(), result,
                                  order.quotedOn.plusDays(9));
    }));
    m_window->counterPage().giveNow();
    EXPECT_FALSE(presenter().isIssued());
    EXPECT_EQ(presenter().quote().id, draft);
    EXPECT_EQ(presenter().order().lines[0].quantity, units::Count::of(30));
    EXPECT_TRUE(m_window->messages().sentence().contains(QStringLiteral("was revised meanwhile")));
}

} // namespace

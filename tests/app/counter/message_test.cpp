// SPDX-License-Identifier: MIT
// Messages over the Counter, and what of it stays in a window of usual size.
#include "app/desk/message_bar.h"
#include "tests/app/demo_window.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QPushButton>

using namespace sp;

namespace {

class Messages : public test::DemoWindow {
  protected:
    void expectButtonsInSight(const char* when) {
        test::handleQueued();
        for (const char* name : {"give", "print", "turnOver"}) {
            auto* button = find<QPushButton>(name);
            const QRect seen = button->visibleRegion().boundingRect();
            EXPECT_EQ(seen, button->rect()) << name << " " << when;
        }
    }
};

TEST_F(Messages, neverPushAButtonOutOfAUsualWindow) {
    m_window->resize(1366, 768);
    orderLantern();
    expectButtonsInSight("with the greeting of the demo");
    press(Qt::Key_F9);
    expectButtonsInSight("with the owner's side up");
    press(Qt::Key_F9);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    expectButtonsInSight("of a given quote");
    m_window->messages().tell(
        desk::Tone::Warn,
        QStringLiteral("What is typed there cannot be used; prices go by what was before. ").repeated(6));
    expectButtonsInSight("under a long warning");
    EXPECT_FALSE(m_window->counterPage().messages().isVisible()) << "one at a time";
    m_window->messages().dismiss();
    EXPECT_TRUE(m_window->counterPage().messages().isVisible()) << "the one before is back";
}

// Undo knows nothing of a given quote; what it would undo is elsewhere in the book.
TEST_F(Messages, undoAtAGivenQuoteSaysFirstWhatItReaches) {
    auto shop = m_window->session().shop();
    const auto labour = shop.rates.labourPerHour;
    orderLantern();
    shop.rates.labourPerHour = units::Money::fromMicros(99'000'000);
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(shop); }));
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    const auto what = m_window->session().undoText();
    ASSERT_FALSE(what.isEmpty());
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(m_window->session().shop().rates.labourPerHour, shop.rates.labourPerHour) << "nothing happens unseen";
    EXPECT_EQ(m_window->messages().sentence(),
              "Nothing of a given quote is undone. Elsewhere in the book the last was: " + what + ".");
    m_window->messages().findChild<QPushButton*>(QStringLiteral("messageAction"))->click();
    EXPECT_EQ(m_window->session().shop().rates.labourPerHour, labour);
    EXPECT_EQ(m_window->messages().sentence(), "Undone: " + what + ".");
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(m_window->session().shop().rates.labourPerHour, labour);
    m_window->messages().findChild<QPushButton*>(QStringLiteral("messageAction"))->click();
    EXPECT_EQ(m_window->session().shop().rates.labourPerHour, shop.rates.labourPerHour);
}

TEST_F(Messages, ofPastedTextThereAreNone) {
    orderLantern();
    QGuiApplication::clipboard()->setText(QStringLiteral("Name\tX\nsecond line"));
    auto* title = field("title");
    title->setFocus();
    title->selectAll();
    title->paste();
    press(Qt::Key_Return);
    EXPECT_EQ(m_window->presenter().line().title, "Name X second line");
    EXPECT_EQ(m_window->messages().sentence(), "");
    const auto id = m_window->presenter().quote().id;
    reopen();
    ASSERT_TRUE(m_window->presenter().open(id));
    EXPECT_EQ(m_window->presenter().line().title, "Name X second line") << "it was saved";
}

TEST_F(Messages, theGreetingStaysWhenAnOwnBookIsNotStartedAfterAll) {
    auto& bar = m_window->counterPage().messages();
    ASSERT_TRUE(bar.sentence().startsWith("A demo book"));
    bar.findChild<QPushButton*>(QStringLiteral("messageAction"))->click();
    EXPECT_TRUE(bar.sentence().startsWith("A demo book"));
    EXPECT_TRUE(bar.findChild<QPushButton*>(QStringLiteral("messageAction"))->isVisible());
}

} // namespace

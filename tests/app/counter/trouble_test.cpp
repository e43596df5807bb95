// SPDX-License-Identifier: MIT
// What the window says when the book cannot be written, and what it then lets one do.
#include "app/desk/fonts.h"
#include "app/desk/message_bar.h"
#include "app/words/words.h"
#include "tests/app/demo_window.h"
#include "tests/support/child.h"

#include <QPushButton>

using namespace sp;
using program::PlaceId;

namespace {

class Trouble : public test::DemoWindow {};

TEST_F(Trouble, isSaidInEveryPlaceUntilSomethingIsKept) {
    m_window->goTo(PlaceId::Supplies);
    const auto failed = m_window->session().change([](db::Book&) -> base::Done {
        return words::fail(base::Code::Full, "book", QStringLiteral("The disk is full; free some space."));
    });
    EXPECT_FALSE(failed.has_value());
    EXPECT_EQ(m_window->messages().sentence(), "The disk is full; free some space.");
    EXPECT_TRUE(m_window->messages().isVisible());
    const auto kept = m_window->session().change([&](db::Book& book) { return book.save(m_window->session().shop()); });
    EXPECT_TRUE(kept.has_value());
    EXPECT_FALSE(m_window->messages().isVisible());
}

TEST_F(Trouble, anEntryElsewhereThatCannotBeReadIsSaidAtTheCounter) {
    orderLantern();
    m_window->goTo(PlaceId::Shop);
    test::handleQueued();
    field("labour")->setFocus();
    field("labour")->selectAll();
    type("25 dollars");
    press(Qt::Key_Tab);
    m_window->goTo(PlaceId::Counter);
    EXPECT_EQ(m_window->messages().sentence(),
              "Shop, Labour per hour: what is typed there cannot be used; prices go by what was there before.");
    m_window->messages().findChildren<QPushButton*>().front()->click();
    EXPECT_EQ(focused(), "labour");
    EXPECT_EQ(field("labour")->text(), "25 dollars");
    type("25");
    press(Qt::Key_Tab);
    m_window->goTo(PlaceId::Counter);
    EXPECT_FALSE(m_window->messages().isVisible());
}

TEST_F(Trouble, inABookOpenElsewhereThereIsOnlyReading) {
    orderLantern();
    m_window->close();
    m_window.reset();
    test::Child holder({BOOK_CHILD, "hold", bookFile().string()});
    ASSERT_EQ(holder.line(), "held");
    open(db::Book::open(bookFile(), m_clock.environment()));
    EXPECT_TRUE(m_window->messages().sentence().contains("for reading only"))
        << m_window->messages().sentence().toStdString();
    EXPECT_EQ(text("toPay"), "175.03");
    for (const char* name : {"pieces", "stone0", "customer", "design"}) EXPECT_FALSE(field(name)->isEnabled()) << name;
    EXPECT_FALSE(find<QPushButton>("give")->isEnabled());
    EXPECT_TRUE(find<QPushButton>("print")->isEnabled());
    EXPECT_FALSE(find<>("removeLine")->isVisible());
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(m_window->presenter().isIssued());
}

TEST_F(Trouble, aTextSizeThatIsNoNumberIsTheUsualOne) {
    desk::setZoom(100);
    QSettings().setValue(QStringLiteral("look/zoom"), QStringLiteral("large"));
    reopen();
    EXPECT_EQ(desk::zoom(), 100);
    QSettings().setValue(QStringLiteral("look/zoom"), 120);
    reopen();
    EXPECT_EQ(desk::zoom(), 120);
    desk::setZoom(100);
}

} // namespace

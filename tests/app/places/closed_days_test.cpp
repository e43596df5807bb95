// SPDX-License-Identifier: MIT
// The days on which the bench is closed, typed in Shop: no day is lost or moved by what is typed beside it.
#include "app/desk/theme.h"
#include "app/shop/shop_page.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

using namespace sp;

namespace {

using catalogue::ClosedDays;

units::Date december(unsigned day) {
    return units::Date::fromDays(std::chrono::sys_days(std::chrono::year(2026) / 12 / std::chrono::day(day)));
}

class ClosedDaysInShop : public testing::Test {
  protected:
    ClosedDaysInShop() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = db::Book::create(m_folder / "closed.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
        keep({{december(10), december(12), "fair"}, {december(20), december(24), "feast"}});
        m_page = std::make_unique<shop::ShopPage>(*m_session, *m_formatter);
        m_page->resize(1274, 768);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        test::handleQueued();
    }
    void keep(std::vector<ClosedDays> closed) {
        auto shop = m_session->shop();
        shop.closedDays = std::move(closed);
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(shop); }));
    }
    QLineEdit* field(const char* name) {
        test::handleQueued(); // fields that were replaced are gone
        return m_page->findChild<QLineEdit*>(QLatin1String(name));
    }
    void type(const char* name, const char* text) {
        auto* target = field(name);
        ASSERT_NE(target, nullptr) << name;
        target->setFocus();
        target->selectAll();
        QTest::keyClicks(target, QString::fromLatin1(text));
        QTest::keyClick(target, Qt::Key_Tab);
        test::handleQueued();
    }
    void takeOut(int row) {
        const auto name = QStringLiteral("Take the closed days %1 out").arg(row);
        for (auto* button : m_page->findChildren<QToolButton*>())
            if (button->accessibleName() == name) {
                button->click();
                test::handleQueued();
                return;
            }
        FAIL() << "no button for row " << row;
    }
    const std::vector<ClosedDays>& kept() { return m_session->shop().closedDays; }
    std::string text(const char* name) {
        auto* found = field(name);
        return found ? found->text().toStdString() : "no field";
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<shop::ShopPage> m_page;
};

const ClosedDays kFair{december(10), december(12), "fair"};
const ClosedDays kFeast{december(20), december(24), "feast"};

TEST_F(ClosedDaysInShop, theRowThatWasRefusedIsTheOneTakenOut) {
    type("closedFrom1", "2026-12-05");
    type("closedTo1", "2026-12-01");
    ASSERT_EQ(kept(), (std::vector{kFair, ClosedDays{december(5), december(24), "feast"}}))
        << "it ends before it begins";
    EXPECT_EQ(text("closedTo1"), "2026-12-01") << "what was typed stays";
    // What else happens in the book leaves it alone.
    auto shop = m_session->shop();
    shop.letterhead.name = "Corner bench";
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(shop); }));
    EXPECT_EQ(text("closedTo1"), "2026-12-01");
    takeOut(2);
    EXPECT_EQ(kept(), std::vector{kFair});
}

TEST_F(ClosedDaysInShop, rowsStayWhereTheyAreWhileOneTypes) {
    type("closedFrom1", "2026-12-05");
    EXPECT_EQ(kept(), (std::vector{kFair, ClosedDays{december(5), december(24), "feast"}}));
    EXPECT_EQ(text("closedWhy0"), "fair");
    EXPECT_EQ(text("closedWhy1"), "feast");
    EXPECT_EQ(QApplication::focusWidget(), field("closedTo1")) << "the next entry of the same row";
    type("closedTo1", "2026-12-06");
    EXPECT_EQ(kept(), (std::vector{kFair, ClosedDays{december(5), december(6), "feast"}}));
    // When they are shown the next time they stand by their days.
    m_page = std::make_unique<shop::ShopPage>(*m_session, *m_formatter);
    m_page->show();
    EXPECT_EQ(text("closedWhy0"), "feast");
    EXPECT_EQ(text("closedWhy1"), "fair");
}

TEST_F(ClosedDaysInShop, aBadEntryStaysWhenAnotherRowComesOrGoes) {
    type("closedTo1", "32 Dec");
    EXPECT_EQ(kept(), (std::vector{kFair, kFeast}));
    m_page->findChild<QPushButton*>(QStringLiteral("closedAdd"))->click();
    const ClosedDays added{december(25).plusDays(-30), december(25).plusDays(-30), {}}; // the held clock's day
    EXPECT_EQ(kept(), (std::vector{kFair, kFeast, added})) << "a bad row is as it was";
    EXPECT_EQ(text("closedTo1"), "32 Dec");
    takeOut(1);
    EXPECT_EQ(kept(), (std::vector{kFeast, added})) << "what was taken out is gone at once";
    EXPECT_EQ(text("closedTo0"), "32 Dec");
    type("closedTo0", "2026-12-23");
    EXPECT_EQ(kept(), (std::vector{ClosedDays{december(20), december(23), "feast"}, added}));
}

TEST_F(ClosedDaysInShop, anUndoneEntryIsShownAsItWas) {
    type("closedFrom1", "2026-12-05");
    ASSERT_TRUE(m_session->undo());
    EXPECT_EQ(kept(), (std::vector{kFair, kFeast}));
    EXPECT_EQ(text("closedFrom1"), "Sun, Dec 20, 2026");
}

} // namespace

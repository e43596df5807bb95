// SPDX-License-Identifier: MIT
// "By Friday?" at the Counter: answered under the field while one types, and where there is no answer it is said why.
#include "tests/app/demo_window.h"

#include <QPushButton>
#include <QTimer>

#include <algorithm>

using namespace sp;

namespace {

class PromiseAtTheCounter : public test::DemoWindow {
  protected:
    QLabel* promised() { return find<QLabel>("promised"); }
    bool isTold(const char* words) {
        return test::waitFor(
            [&] { return promised()->isVisible() && promised()->text().contains(QLatin1String(words)); });
    }
    void wantBy(const char* day) {
        field("wantedBy")->setFocus(Qt::TabFocusReason);
        field("wantedBy")->selectAll();
        type(day);
    }
    void changeShop(const std::function<void(catalogue::Shop&)>& work) {
        auto shop = m_window->session().shop();
        work(shop);
        ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(shop); }));
    }
};

TEST_F(PromiseAtTheCounter, isAnsweredWhileTheDayIsTyped) {
    EXPECT_FALSE(promised()->isVisible()) << "nothing is ordered yet";
    orderLantern();
    EXPECT_TRUE(isTold("Can be promised for "));
    wantBy("2026-12-24");
    EXPECT_TRUE(isTold("Holds, ready by "));
    EXPECT_EQ(static_cast<desk::TextLabel*>(promised())->role(), desk::Role::Good);
    wantBy("2026-11-25");
    EXPECT_TRUE(isTold("Not by then; "));
    EXPECT_EQ(static_cast<desk::TextLabel*>(promised())->role(), desk::Role::Warn);
    EXPECT_TRUE(promised()->toolTip().contains(QLatin1String("deposit"))) << promised()->toolTip().toStdString();
    field("wantedBy")->selectAll();
    press(Qt::Key_Delete);
    EXPECT_TRUE(isTold("Can be promised for "));
}

TEST_F(PromiseAtTheCounter, leadsToTheHoursWhereThereAreNone) {
    changeShop([](catalogue::Shop& shop) { shop.benchWeek = {}; });
    orderLantern();
    ASSERT_TRUE(isTold("bench hours"));
    Q_EMIT promised()->linkActivated(QStringLiteral("0"));
    ASSERT_TRUE(test::waitFor([this] { return focused() == "benchMonday"; })) << focused();
    type("60");
    press(Qt::Key_Return);
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_TRUE(isTold("Can be promised for ")) << promised()->text().toStdString();
}

TEST_F(PromiseAtTheCounter, saysSoWhereTheBenchIsClosedForGood) {
    const auto today = m_window->session().today();
    changeShop([&](catalogue::Shop& shop) { shop.closedDays = {{today, today.plusDays(5'000), "for good"}}; });
    orderLantern();
    EXPECT_TRUE(isTold("within 3 years"));
}

TEST_F(PromiseAtTheCounter, isAnotherWhenTheDayIs) {
    orderLantern();
    wantBy("2026-12-24");
    ASSERT_TRUE(isTold("Holds, ready by "));
    const auto before = promised()->text();
    m_clock.now += std::chrono::hours(24 * 7);
    auto* tick = m_window->session().findChild<QTimer*>(QString(), Qt::FindDirectChildrenOnly);
    ASSERT_NE(tick, nullptr);
    tick->setInterval(0);
    EXPECT_TRUE(test::waitFor([&] { return promised()->text() != before; })) << before.toStdString();
    EXPECT_TRUE(isTold("Holds, ready by "));
}

TEST_F(PromiseAtTheCounter, isGoneOnceItIsAgreed) {
    orderLantern();
    ASSERT_TRUE(isTold("Can be promised for "));
    find<QPushButton>("give")->click();
    test::handleQueued();
    const auto id = m_window->presenter().quote().id;
    EXPECT_TRUE(isTold("Can be promised for ")) << "given, but nobody has said yes";
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.setStage(id, db::Stage::Agreed); }));
    EXPECT_TRUE(test::waitFor([this] { return !promised()->isVisible(); }));
}

} // namespace

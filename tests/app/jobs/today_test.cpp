// SPDX-License-Identifier: MIT
// What today asks, beside the jobs, on the demo shop in the middle of its season.
#include "app/demo/demo_orders.h"
#include "app/desk/theme.h"
#include "app/jobs/jobs_page.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

#include <set>

namespace sp::jobs::test {

namespace {

using catalogue::Reminder;
using db::Stage;

class TodayAtJobs : public testing::Test {
  protected:
    TodayAtJobs() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createBusyDemo(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
        m_watch = std::make_unique<TodayWatch>(*m_session);
        m_page = std::make_unique<JobsPage>(*m_session, *m_watch, *m_formatter);
        m_page->resize(1240, 700);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        sp::test::handleQueued();
    }

    QListView& list() { return *m_page->findChild<QListView*>(QStringLiteral("today")); }
    /// A line each, heads with their number and sum.
    QStringList lines() {
        QStringList found;
        const auto& model = *list().model();
        for (int row = 0; row < model.rowCount(); ++row) {
            const auto at = model.index(row, 0);
            const bool isHead = !(model.flags(at) & Qt::ItemIsSelectable);
            found << (isHead ? QStringLiteral("= ") + at.data().toString()
                             : at.data(Qt::AccessibleTextRole).toString());
        }
        return found;
    }
    QModelIndex rowOf(const QString& text) {
        const auto& model = *list().model();
        for (int row = 0; row < model.rowCount(); ++row)
            if (model.index(row, 0).data().toString() == text) return model.index(row, 0);
        ADD_FAILURE() << "no row " << text.toStdString();
        return {};
    }
    base::Id jobAsking(Reminder reminder) {
        for (const auto& asked : m_watch->asked().jobs)
            if (asked.reminder == reminder) return asked.job.id;
        ADD_FAILURE();
        return {};
    }

    sp::test::HeldClock m_clock;
    sp::test::TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<TodayWatch> m_watch;
    std::unique_ptr<JobsPage> m_page;
};

TEST_F(TodayAtJobs, isOneListByUrgency) {
    QStringList heads;
    for (const auto& line : lines())
        if (line.startsWith(QLatin1String("= "))) heads << line.mid(2);
    EXPECT_EQ(heads, (QStringList{"To be ready", "Deposits missing", "Quotes about to lapse", "Money owed"}));
    EXPECT_EQ(m_page->findChild<QLabel*>(QStringLiteral("todayCount"))->text(), "4 things");
    EXPECT_TRUE(list().isVisible());
}

// A day on, what was ready waits to be collected; the day turns by itself when the place is shown.
TEST_F(TodayAtJobs, anotherDayAsksForMore) {
    const auto before = m_watch->asked().count();
    m_clock.now += std::chrono::hours(24);
    m_page->hide();
    m_page->show();
    EXPECT_GT(m_watch->asked().count(), before);
    EXPECT_TRUE(lines().contains(QStringLiteral("= Ready, not collected")));
}

TEST_F(TodayAtJobs, followsWhatIsDone) {
    const auto job = jobAsking(Reminder::Lapsing);
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.setStage(job, Stage::Declined); }));
    EXPECT_TRUE(sp::test::waitFor([this] { return !lines().contains(QStringLiteral("= Quotes about to lapse")); }));
    EXPECT_EQ(m_page->findChild<QLabel*>(QStringLiteral("todayCount"))->text(), "3 things");
}

TEST_F(TodayAtJobs, aRowMarksItsJobAndEnterOpensIt) {
    const auto at = rowOf(QStringLiteral("Wren and Daughter, florists"));
    list().setCurrentIndex(at);
    auto* table = m_page->findChild<QTableView*>(QStringLiteral("jobs"));
    EXPECT_EQ(table->currentIndex().sibling(table->currentIndex().row(), JobsTableModel::Customer).data().toString(),
              "Wren and Daughter, florists");
    QSignalSpy opened(m_page.get(), &JobsPage::openAsked);
    list().setFocus();
    QTest::keyClick(&list(), Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened.at(0).at(0).value<base::Id>(), jobAsking(Reminder::Owed));
}

TEST_F(TodayAtJobs, keysGoFromRowToRowPastTheHeads) {
    list().setFocus();
    list().setCurrentIndex(list().model()->index(1, 0));
    std::set<int> met{1};
    for (int i = 0; i < 10; ++i) {
        QTest::keyClick(&list(), Qt::Key_Down);
        met.insert(list().currentIndex().row());
    }
    EXPECT_EQ(met.size(), m_watch->asked().count());
    for (const int row : met) EXPECT_TRUE(list().model()->flags(list().model()->index(row, 0)) & Qt::ItemIsSelectable);
}

TEST_F(TodayAtJobs, certificatesThatEndAreNamed) {
    auto customers = m_session->customers();
    const auto exempt = std::ranges::find_if(customers, [](const auto& one) { return one.certificate.has_value(); });
    ASSERT_NE(exempt, customers.end());
    exempt->certificate->expiresOn = m_session->today().plusDays(10);
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(*exempt); }));
    ASSERT_TRUE(sp::test::waitFor([this] { return lines().contains(QStringLiteral("= Certificates that end")); }));
    QSignalSpy asked(m_page.get(), &JobsPage::certificateAsked);
    Q_EMIT list().activated(rowOf(QString::fromStdString(exempt->name)));
    EXPECT_EQ(asked.count(), 1);
}

TEST(TodayCardOfAnEmptyBook, saysThatNothingAsks) {
    sp::test::HeldClock clock;
    const sp::test::TempFolder folder;
    desk::Theme theme{*qApp, desk::Scheme::Light};
    session::BookSession session(*db::Book::create(folder / "empty.jobbook", clock.environment()));
    const desk::Formatter formatter(QLocale(), session.shop());
    TodayWatch watch(session);
    JobsPage page(session, watch, formatter);
    page.resize(1240, 700); // both sides are seen
    page.show();
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("todayNothing"))->isVisible());
    EXPECT_FALSE(page.findChild<QListView*>(QStringLiteral("today"))->isVisible());
}

} // namespace

TEST_F(TodayAtJobs, whatIsChosenIsShownThoughItWasFilteredOut) {
    auto* find = m_page->findChild<QLineEdit*>(QStringLiteral("findJob"));
    find->setFocus();
    QTest::keyClicks(find, QStringLiteral("nothing like it"));
    auto* table = m_page->findChild<QTableView*>(QStringLiteral("jobs"));
    ASSERT_EQ(table->model()->rowCount(), 0);
    const auto id = jobAsking(Reminder::Owed);
    const auto job = m_session->read([&](db::Book& book) { return book.summary(id); });
    list().setCurrentIndex(rowOf(QStringLiteral("Wren and Daughter, florists")));
    EXPECT_TRUE(find->text().isEmpty());
    ASSERT_TRUE(table->currentIndex().isValid());
    EXPECT_EQ(table->currentIndex().siblingAtColumn(0).data().toString().toStdString(), (*job)->number);
}

} // namespace sp::jobs::test

// SPDX-License-Identifier: MIT
// Which jobs are listed, in which order and with which columns, on the demo's orders; and the index made beside them.
#include "app/demo/demo_orders.h"
#include "app/desk/theme.h"
#include "app/jobs/jobs_page.h"
#include "app/jobs/payment_dialog.h"
#include "app/session/index_keeper.h"
#include "app/session/settings.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

#include <set>

namespace sp::jobs::test {

namespace {

class JobFiltersAtJobs : public testing::Test {
  protected:
    JobFiltersAtJobs() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        keepNothing();
        auto environment = m_clock.environment();
        environment.cacheFolder = m_folder / "cache";
        auto book = demo::createBusyDemo(m_folder / "demo.jobbook", environment);
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
        m_watch = std::make_unique<TodayWatch>(*m_session);
        open();
    }
    ~JobFiltersAtJobs() override { keepNothing(); }

    static void keepNothing() {
        session::save(session::kHiddenJobColumns, QString());
        session::save(session::kJobOrder, QString());
    }

    void open() {
        m_page = std::make_unique<JobsPage>(*m_session, *m_watch, *m_formatter);
        m_page->resize(1274, 768);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        sp::test::handleQueued();
    }
    template<class T>
    T* part(const char* name) {
        auto* found = m_page->findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    QAction* action(const char* button, const char* text) {
        for (auto* one : part<QToolButton>(button)->menu()->actions())
            if (one->text() == QLatin1String(text)) return one;
        ADD_FAILURE() << text;
        return nullptr;
    }
    std::vector<QString> column(Column column) {
        const auto* model = part<QTableView>("jobs")->model();
        std::vector<QString> cells;
        for (int row = 0; row < model->rowCount(); ++row) cells.push_back(model->index(row, column).data().toString());
        return cells;
    }
    std::set<QString> stages() {
        const auto cells = column(Column::Stage);
        return {cells.begin(), cells.end()};
    }

    sp::test::HeldClock m_clock;
    sp::test::TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<TodayWatch> m_watch;
    std::unique_ptr<JobsPage> m_page;
};

} // namespace

TEST_F(JobFiltersAtJobs, choosesByStageDayAndWhatIsNotPaid) {
    const auto all = column(Column::Number).size();
    action("jobsOnly", "Collected")->trigger();
    EXPECT_EQ(stages(), (std::set<QString>{"Collected"}));
    EXPECT_EQ(part<QToolButton>("jobsOnly")->text(), "On&ly: Collected");
    action("jobsOnly", "Not paid")->trigger();
    // Of the demo's collected jobs one was never paid after its deposit.
    EXPECT_EQ(column(Column::Number).size(), 1U);
    EXPECT_EQ(part<QToolButton>("jobsOnly")->text(), "On&ly: Collected, Not paid");
    EXPECT_EQ(part<QLabel>("jobsNote")->text(), "1 found");
    action("jobsOnly", "Lapsed")->trigger();
    action("jobsOnly", "Not paid")->trigger();
    EXPECT_EQ(stages(), (std::set<QString>{"Lapsed"}));
    action("jobsOnly", "Of any stage")->trigger();
    action("jobsOnly", "The last 7 days")->trigger();
    const auto ofLate = column(Column::Number).size();
    EXPECT_GT(ofLate, 0U);
    EXPECT_LT(ofLate, all);
    action("jobsOnly", "Last year")->trigger();
    EXPECT_TRUE(column(Column::Number).empty());
    EXPECT_TRUE(part<QToolButton>("jobsOnly")->isVisible()) << "or nobody could go back";
    action("jobsOnly", "Of any day")->trigger();
    EXPECT_EQ(column(Column::Number).size(), all);
    EXPECT_EQ(part<QToolButton>("jobsOnly")->text(), "A&ll jobs");
}

TEST_F(JobFiltersAtJobs, sortsByAColumnAndTheOtherWayRound) {
    auto* header = part<QTableView>("jobs")->horizontalHeader();
    const auto newest = column(Column::Number);
    Q_EMIT header->sectionClicked(Column::Customer);
    auto names = column(Column::Customer);
    EXPECT_TRUE(std::ranges::is_sorted(names, {}, [](const QString& name) { return name.toCaseFolded(); }));
    EXPECT_TRUE(header->isSortIndicatorShown());
    EXPECT_EQ(header->sortIndicatorSection(), Column::Customer);
    Q_EMIT header->sectionClicked(Column::Customer);
    names = column(Column::Customer);
    std::ranges::reverse(names);
    EXPECT_TRUE(std::ranges::is_sorted(names, {}, [](const QString& name) { return name.toCaseFolded(); }));
    action("jobsOrder", "The newest first")->trigger();
    EXPECT_EQ(column(Column::Number), newest);
    EXPECT_FALSE(header->isSortIndicatorShown());
}

TEST_F(JobFiltersAtJobs, theOrderIsKeptForTheNextStart) {
    const auto newest = column(Column::Number);
    action("jobsOrder", "By: Customer")->trigger();
    action("jobsOrder", "The other way round")->trigger();
    const auto sorted = column(Column::Number);
    EXPECT_NE(sorted, newest);
    open();
    EXPECT_EQ(column(Column::Number), sorted);
    EXPECT_TRUE(action("jobsOrder", "By: Customer")->isChecked());
    EXPECT_TRUE(action("jobsOrder", "The other way round")->isChecked());
    EXPECT_EQ(part<QTableView>("jobs")->horizontalHeader()->sortIndicatorSection(), Column::Customer);
    action("jobsOrder", "The newest first")->trigger();
    open();
    EXPECT_EQ(column(Column::Number), newest);
    EXPECT_FALSE(action("jobsOrder", "The other way round")->isChecked());
}

TEST_F(JobFiltersAtJobs, theOtherWayRoundIsInTheMenuToo) {
    const auto newest = column(Column::Number);
    auto* otherWay = action("jobsOrder", "The other way round");
    otherWay->trigger();
    auto oldest = column(Column::Number);
    std::ranges::reverse(oldest);
    EXPECT_EQ(oldest, newest);
    EXPECT_TRUE(otherWay->isChecked());
    action("jobsOrder", "By: Customer")->trigger();
    EXPECT_FALSE(otherWay->isChecked());
    EXPECT_EQ(m_page->findChild<QTableView*>("jobs")->horizontalHeader()->sortIndicatorOrder(), Qt::AscendingOrder);
    Q_EMIT part<QTableView>("jobs")->horizontalHeader()->sectionClicked(Column::Customer);
    EXPECT_TRUE(otherWay->isChecked());
}

TEST_F(JobFiltersAtJobs, aJobIsPaidOnThoughItIsNoLongerListedByWhatIsWanted) {
    action("jobsOnly", "Not paid")->trigger();
    ASSERT_GT(column(Column::Number).size(), 1U);
    // One that is paid in full at once by what is left.
    const auto all =
        m_session->read([](db::Book& book) { return book.find({.text = {}, .stage = {}, .isUnpaid = true}); });
    const auto id = all->jobs.front().id;
    const auto number = all->jobs.front().number;
    const auto next = all->jobs[1];
    const auto leftOf = [&](const base::Id& job) {
        return m_session->read([&](db::Book& book) { return book.account(job); })->left;
    };
    const auto leftOfNext = leftOf(next.id);
    const auto title = part<QLabel>("jobTitle")->text();
    part<QPushButton>("jobMoney")->click();
    sp::test::handleQueued();
    auto* dialog = m_page->window()->findChild<PaymentDialog*>();
    ASSERT_NE(dialog, nullptr);
    ASSERT_EQ(dialog->windowTitle().toStdString(), "Payments for " + number);
    auto* amount = dialog->findChild<QLineEdit*>("paymentAmount");
    amount->selectAll();
    QTest::keyClicks(amount, m_formatter->money(leftOf(id)));
    dialog->findChild<QPushButton*>("takePayment")->click();
    EXPECT_EQ(leftOf(id), units::Money{});
    EXPECT_EQ(dialog->findChild<desk::FigureLabel*>("accountLeft")->text(), m_formatter->money(units::Money{}));
    EXPECT_EQ(part<QLabel>("jobTitle")->text(), title) << "it stays until something else is wanted";
    EXPECT_EQ(column(Column::Number).front().toStdString(), number);
    EXPECT_EQ(part<QLabel>("jobsNote")->text(), QString::number(all->jobs.size() - 1) + " found");
    amount->selectAll();
    QTest::keyClicks(amount, "5");
    dialog->findChild<QPushButton*>("giveBack")->click();
    EXPECT_EQ(leftOf(id), units::Money::fromMicros(5'000'000)) << "of the same job";
    EXPECT_EQ(leftOf(next.id), leftOfNext);
    dialog->close();
}

TEST_F(JobFiltersAtJobs, aDialogStaysWithItsJobWhicheverIsCurrent) {
    JobsPresenter presenter(*m_session);
    presenter.setWanted({.text = {}, .stage = {}, .isUnpaid = true});
    ASSERT_GT(presenter.jobs().size(), 1U);
    const auto id = presenter.jobs()[0].id;
    presenter.select(0);
    PaymentDialog dialog(presenter, *m_formatter);
    presenter.select(1);
    auto* amount = dialog.findChild<QLineEdit*>("paymentAmount");
    amount->selectAll();
    QTest::keyClicks(amount, "1");
    const auto paid = [&] { return m_session->read([&](db::Book& book) { return book.account(id); })->paid; };
    const auto before = paid();
    dialog.findChild<QPushButton*>("takePayment")->click();
    EXPECT_EQ(paid(), before + units::Money::fromMicros(1'000'000));
}

TEST_F(JobFiltersAtJobs, theStageIsMovedOnOfTheSameJob) {
    action("jobsOnly", "Quoted")->trigger();
    const auto listed = column(Column::Number);
    ASSERT_GT(listed.size(), 1U);
    const auto stageOf = [&](const QString& number) {
        return m_session->read([&](db::Book& book) { return book.quoteNumbered(number.toStdString()); })->stage;
    };
    part<QPushButton>("jobNext")->click();
    EXPECT_EQ(column(Column::Number), listed) << "it stays where it was";
    part<QPushButton>("jobNext")->click();
    EXPECT_EQ(stageOf(listed[0]), db::Stage::InProduction);
    EXPECT_EQ(stageOf(listed[1]), db::Stage::Quoted);
    action("jobsOnly", "Collected")->trigger();
    action("jobsOnly", "Quoted")->trigger();
    EXPECT_EQ(column(Column::Number).size(), listed.size() - 1) << "until something else is wanted";
}

TEST_F(JobFiltersAtJobs, daysThatAreChosenGoByTheDayItIs) {
    action("jobsOnly", "The last 7 days")->trigger();
    ASSERT_GT(column(Column::Number).size(), 0U);
    const auto pass = [&](int days) {
        m_page->hide();
        m_clock.now += std::chrono::hours(24 * days);
        m_page->show();
    };
    pass(6);
    EXPECT_NE(part<QLabel>("jobsNote")->text(), "0 found") << "what is of the first day is on its seventh";
    pass(1);
    EXPECT_EQ(part<QLabel>("jobsNote")->text(), "0 found");
}

TEST_F(JobFiltersAtJobs, whereNoIndexCanBeMadeNoneIsTriedAgain) {
    m_page.reset();
    m_watch.reset();
    m_session.reset(); // it is open once
    auto environment = m_clock.environment();
    environment.cacheFolder = m_folder / "demo.jobbook" / "no folder";
    auto book = db::Book::open(m_folder / "demo.jobbook", environment);
    ASSERT_TRUE(book.has_value());
    session::BookSession session(std::move(*book));
    EXPECT_TRUE(session.canIndex());
    session::IndexKeeper keeper(session);
    keeper.look();
    ASSERT_TRUE(sp::test::waitFor([&] { return !keeper.isBusy(); }));
    EXPECT_FALSE(session.canIndex());
    EXPECT_FALSE(session.wantsIndex());
    keeper.look();
    EXPECT_FALSE(keeper.isBusy());
}

TEST_F(JobFiltersAtJobs, keepsWhichColumnsAreShown) {
    auto* table = part<QTableView>("jobs");
    EXPECT_FALSE(table->isColumnHidden(Column::Day));
    action("jobsOrder", "Show: Day")->trigger();
    EXPECT_TRUE(table->isColumnHidden(Column::Day));
    open();
    EXPECT_TRUE(part<QTableView>("jobs")->isColumnHidden(Column::Day)) << "the next time too";
    EXPECT_FALSE(action("jobsOrder", "Show: Day")->isChecked());
    action("jobsOrder", "Show: Day")->trigger();
    EXPECT_FALSE(part<QTableView>("jobs")->isColumnHidden(Column::Day));
}

TEST_F(JobFiltersAtJobs, findsTheSameBeforeAndAfterTheIndexIsThere) {
    QTest::keyClicks(part<QLineEdit>("findJob"), QStringLiteral("heron"));
    const auto before = column(Column::Number);
    EXPECT_FALSE(before.empty());
    session::IndexKeeper keeper(*m_session);
    keeper.look();
    ASSERT_TRUE(sp::test::waitFor([&] { return !keeper.isBusy(); }));
    EXPECT_FALSE(m_session->wantsIndex());
    part<QLineEdit>("findJob")->selectAll();
    QTest::keyClicks(part<QLineEdit>("findJob"), QStringLiteral("Heron"));
    EXPECT_EQ(column(Column::Number), before);
}

} // namespace sp::jobs::test

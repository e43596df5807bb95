// SPDX-License-Identifier: MIT
// The Bench on the demo shop in the middle of its season: four jobs to make, one of them late.
#include "app/bench/bench_page.h"
#include "app/bench/bench_presenter.h"
#include "app/demo/demo_orders.h"
#include "app/desk/figures_table.h"
#include "app/desk/message_bar.h"
#include "app/desk/theme.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <gtest/gtest.h>

namespace sp::bench::test {

namespace {

class AtTheBench : public testing::Test {
  protected:
    AtTheBench() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createBusyDemo(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        open(std::move(*book));
    }
    void open(std::unique_ptr<db::Book> book) {
        m_page.reset();
        m_session = std::make_unique<session::BookSession>(std::move(book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
        show();
    }
    void show() {
        m_page = std::make_unique<BenchPage>(*m_session, *m_formatter);
        m_page->resize(1240, 700);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        sp::test::handleQueued();
    }

    template<class T = QWidget>
    T& find(const char* name) {
        return *m_page->findChild<T*>(QLatin1String(name));
    }
    QString cell(int row, int column) {
        const auto& model = *find<desk::FiguresTable>("benchJobs").model();
        return model.index(row, column).data().toString();
    }
    int rows() { return find<desk::FiguresTable>("benchJobs").model()->rowCount(); }
    void setWeek(const catalogue::BenchWeek& week) {
        auto shop = m_session->shop();
        shop.benchWeek = week;
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(shop); }));
        sp::test::handleQueued();
    }

    sp::test::HeldClock m_clock;
    sp::test::TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<BenchPage> m_page;
};

TEST_F(AtTheBench, listsWhatIsToBeMadeAndSaysWhichIsLate) {
    ASSERT_EQ(rows(), 4);
    EXPECT_TRUE(find<QLabel>("benchNote").text().contains(QStringLiteral("1 late")));
    EXPECT_TRUE(cell(0, 1).endsWith(QStringLiteral(" × Lantern"))) << cell(0, 1).toStdString();
    EXPECT_TRUE(cell(0, 6).startsWith(QStringLiteral("late, by 5 days"))) << cell(0, 6).toStdString();
    for (int row = 1; row < rows(); ++row)
        EXPECT_TRUE(cell(row, 6).startsWith(QStringLiteral("holds"))) << row << cell(row, 6).toStdString();
    EXPECT_TRUE(find<QLabel>("anHourMore").text().startsWith(QStringLiteral("An hour more: ready ")));
    // What is painted is said as well: on the first day the first two jobs.
    const auto said = find<>("benchLoad").accessibleDescription();
    EXPECT_TRUE(said.contains(QStringLiteral("job 1: "))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("closed")) || said.contains(QStringLiteral("no hours")));
}

TEST_F(AtTheBench, movesTheChosenJobOn) {
    auto& table = find<desk::FiguresTable>("benchJobs");
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_Down);
    EXPECT_TRUE(find<QLabel>("benchTitle").text().contains(QStringLiteral("Studio crest")));
    QSignalSpy opened(m_page.get(), &BenchPage::openAsked);
    find<QPushButton>("benchOpen").click();
    EXPECT_EQ(opened.count(), 1);
    EXPECT_TRUE(find<QPushButton>("benchNext").text().contains(QStringLiteral("Ready")));
    find<QPushButton>("benchNext").click();
    sp::test::handleQueued();
    EXPECT_EQ(rows(), 3) << "what is ready is not to be made any more";
    EXPECT_TRUE(m_session->undo());
    sp::test::handleQueued();
    EXPECT_EQ(rows(), 4);
}

TEST_F(AtTheBench, saysWhatTheShelfLackedForTheJobThatWentOn) {
    const auto nextWith = [this](catalogue::UsedWhen when, int row) {
        auto shop = m_session->shop();
        shop.usedWhen = when;
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(shop); }));
        for (const auto& material : std::vector(m_session->materials()))
            ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.countShelf(material.id, 0, ""); }));
        sp::test::handleQueued();
        find<desk::FiguresTable>("benchJobs").selectRow(row);
        find<QPushButton>("benchNext").click();
        sp::test::handleQueued();
    };
    const auto says = [this] { return find<desk::MessageBar>("benchShelf").sentence(); };
    const auto agreed = [this] {
        for (int row = 0; row < rows(); ++row) {
            find<desk::FiguresTable>("benchJobs").selectRow(row);
            if (find<QPushButton>("benchNext").text().contains(QStringLiteral("Making"))) return row;
        }
        return -1;
    }();
    ASSERT_GE(agreed, 0);
    nextWith(catalogue::UsedWhen::Making, agreed);
    EXPECT_TRUE(says().endsWith(QStringLiteral("is taken then."))) << says().toStdString();
    EXPECT_TRUE(m_session->undo());
    EXPECT_EQ(says(), QString()) << "it is not so any more";
    nextWith(catalogue::UsedWhen::Ready, agreed);
    EXPECT_EQ(says(), QString()) << "nothing is taken before it is ready";
    nextWith(catalogue::UsedWhen::Ready, agreed);
    EXPECT_TRUE(says().contains(QStringLiteral("book what was used besides"))) << says().toStdString();
}

TEST_F(AtTheBench, asksAnewWhenTheDayIsAnother) {
    ASSERT_TRUE(cell(0, 6).startsWith(QStringLiteral("late, by 5 days")));
    const auto hour = find<QLabel>("anHourMore").text();
    const auto said = find<>("benchLoad").accessibleDescription();
    m_clock.now += std::chrono::hours(24);
    auto* tick = m_session->findChild<QTimer*>();
    ASSERT_NE(tick, nullptr);
    tick->setInterval(0);
    EXPECT_TRUE(sp::test::waitFor([&] { return cell(0, 6).startsWith(QStringLiteral("late, by 6 days")); }))
        << cell(0, 6).toStdString();
    EXPECT_NE(find<QLabel>("anHourMore").text(), hour);
    EXPECT_NE(find<>("benchLoad").accessibleDescription(), said);
}

TEST_F(AtTheBench, countsOneDayAsOne) {
    for (int days = 1; days < 30 && !cell(0, 6).startsWith(QStringLiteral("late, by 1 day")); ++days) {
        m_clock.now -= std::chrono::hours(24);
        m_session->notice();
        for (int row = 0; row < rows(); ++row)
            EXPECT_FALSE(cell(row, 6).startsWith(QStringLiteral("late, by 1 days"))) << days;
    }
    EXPECT_EQ(cell(0, 6).section(QLatin1Char(','), 0, 1), "late, by 1 day");
}

TEST_F(AtTheBench, readsTheQueueOnceForEachChange) {
    auto page = std::make_unique<BenchPage>(*m_session, *m_formatter);
    auto* presenter = page->findChild<BenchPresenter*>();
    ASSERT_NE(presenter, nullptr);
    EXPECT_TRUE(presenter->queue().entries.empty()) << "not before it is shown";
    QSignalSpy listed(presenter, &BenchPresenter::listed);
    page->show();
    EXPECT_EQ(listed.count(), 1);
    page->findChild<QPushButton*>(QStringLiteral("benchNext"))->click();
    sp::test::handleQueued();
    EXPECT_EQ(listed.count(), 2);
    page->hide();
    page->show();
    EXPECT_EQ(listed.count(), 2) << "nothing is another since";
    page->hide();
    ASSERT_TRUE(m_session->undo());
    EXPECT_EQ(listed.count(), 2);
    page->show();
    EXPECT_EQ(listed.count(), 3);
}

TEST_F(AtTheBench, saysWhyTheQueueCannotBeRead) {
    m_page.reset();
    m_session.reset();
    // What was given is sealed; another program writes into it.
    auto bytes = sp::test::bytesOf(m_folder / "demo.jobbook");
    for (auto at = bytes.find("Studio crest"); at != std::string::npos; at = bytes.find("Studio crest", at))
        bytes.replace(at, 12, "Studio crust");
    sp::test::writeBytes(m_folder / "demo.jobbook", bytes);
    auto book = db::Book::open(m_folder / "demo.jobbook", m_clock.environment());
    ASSERT_TRUE(book.has_value());
    open(std::move(*book));
    QSignalSpy troubled(m_session.get(), &session::BookSession::troubled);
    const auto said = find<desk::MessageBar>("benchUnread").sentence();
    EXPECT_TRUE(said.contains(QStringLiteral("damaged"))) << said.toStdString();
    EXPECT_TRUE(find<>("benchUnread").isVisible());
    EXPECT_FALSE(find<>("benchGo").isVisible()) << "not that there is nothing to make";
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(find<QLabel>("benchNote").text().isEmpty());
    m_page->hide();
    m_page->show();
    EXPECT_EQ(troubled.count(), 0) << "it is said here, and nothing is unsaved";
    m_page->focusStart();
}

TEST_F(AtTheBench, showsTheBenchSheet) {
    find<QPushButton>("benchSheet").click();
    sp::test::handleQueued();
    auto* dialog = m_page->window()->findChild<QDialog*>(QStringLiteral("benchPreview"));
    ASSERT_NE(dialog, nullptr);
    dialog->close();
}

TEST_F(AtTheBench, saysWhatToDoWhereNothingIsKnown) {
    setWeek({});
    EXPECT_FALSE(find<>("benchLoad").isVisible());
    EXPECT_EQ(rows(), 4) << "the jobs are there all the same";
    EXPECT_EQ(cell(0, 4), QString()) << "and no day is invented";
    QSignalSpy hours(m_page.get(), &BenchPage::hoursAsked);
    find<QPushButton>("benchHours").click();
    EXPECT_EQ(hours.count(), 1);
}

TEST_F(AtTheBench, saysWhatToDoWhereNothingIsToBeMade) {
    while (rows() > 0) {
        const int before = rows();
        find<QPushButton>("benchNext").click();
        sp::test::handleQueued();
        if (rows() == before) find<QPushButton>("benchNext").click(); // it was begun first
        sp::test::handleQueued();
        ASSERT_LT(rows(), before);
        if (rows() == 1) {
            EXPECT_EQ(find<QLabel>("benchNote").text().section(QLatin1Char(','), 0, 0), "1 job to make");
        }
    }
    EXPECT_TRUE(find<>("benchGo").isVisible());
    QSignalSpy jobs(m_page.get(), &BenchPage::jobsAsked);
    find<QPushButton>("benchGo").click();
    EXPECT_EQ(jobs.count(), 1);
}

} // namespace

} // namespace sp::bench::test

// SPDX-License-Identifier: MIT
// The Figures on the demo shop in the middle of its season, held against what the book says.
#include "app/figures/figures_page.h"

#include "app/demo/demo_book.h"
#include "app/demo/demo_orders.h"
#include "app/desk/figures_table.h"
#include "app/desk/theme.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace sp::figures::test {

namespace {

units::Date day(const char* iso) { return units::Date::parse(iso).value(); }

TEST(SpanAround, isWholeMonthsOfTheCalendar) {
    // A leap year's February; quarters begin in January, April, July and October.
    EXPECT_EQ(spanAround(day("2028-02-11"), Span::Month), (SpanDays{day("2028-02-01"), day("2028-02-29")}));
    EXPECT_EQ(spanAround(day("2026-12-31"), Span::Month), (SpanDays{day("2026-12-01"), day("2026-12-31")}));
    EXPECT_EQ(spanAround(day("2026-11-25"), Span::Quarter), (SpanDays{day("2026-10-01"), day("2026-12-31")}));
    EXPECT_EQ(spanAround(day("2026-04-01"), Span::Quarter), (SpanDays{day("2026-04-01"), day("2026-06-30")}));
    EXPECT_EQ(spanAround(day("2026-07-04"), Span::Year), (SpanDays{day("2026-01-01"), day("2026-12-31")}));
}

class AtTheFigures : public testing::Test {
  protected:
    AtTheFigures() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createBusyDemo(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        open(std::move(*book));
    }
    void open(std::unique_ptr<db::Book> book) {
        m_page.reset();
        m_session = std::make_unique<session::BookSession>(std::move(book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
        m_page = std::make_unique<FiguresPage>(*m_session, *m_formatter);
        m_page->resize(1240, 900);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        sp::test::handleQueued();
    }

    template<class T = QWidget>
    T& find(const char* name) {
        return *m_page->findChild<T*>(QLatin1String(name));
    }
    QString text(const char* name) { return find<QLabel>(name).text(); }
    QString cell(const char* table, int row, int column) {
        return find<desk::FiguresTable>(table).model()->index(row, column).data().toString();
    }
    int rows(const char* table) { return find<desk::FiguresTable>(table).model()->rowCount(); }
    void lookBy(int place) {
        find<QComboBox>("figuresBy").setCurrentIndex(place);
        sp::test::handleQueued();
    }
    /// What was handed over in the days shown.
    std::vector<EarnedLine> lines(const char* from, const char* to) {
        return m_session->read([&](db::Book& book) { return db::EarnedReader().earned(book, day(from), day(to)); })
            .value()
            .lines;
    }

    sp::test::HeldClock m_clock; // 25 November 2026
    sp::test::TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<FiguresPage> m_page;
};

TEST_F(AtTheFigures, tellTheMonthOfTodayAsTheBookHasIt) {
    EXPECT_EQ(text("figuresWhen"), QStringLiteral("November 2026"));
    EXPECT_FALSE(find<QPushButton>("figuresAfter").isEnabled()) << "what comes is not known";
    const auto all = figures::together(lines("2026-11-01", "2026-11-30")).earned;
    ASSERT_FALSE(all.income.isZero()) << "the demo has figures worth looking at";
    EXPECT_EQ(text("income"), m_formatter->money(all.income));
    EXPECT_EQ(text("cost"), m_formatter->money(all.cost + all.cardFee));
    EXPECT_EQ(text("left"), m_formatter->money(all.left()));
    EXPECT_EQ(text("perBenchHour"), m_formatter->money(all.perBenchHour().value()));
    EXPECT_TRUE(text("perBenchHourReckoning").contains(m_formatter->money(all.labour)));
    EXPECT_TRUE(find<>("perBenchHour").accessibleName().contains(QStringLiteral("Earned per bench hour")));
}

TEST_F(AtTheFigures, openEachRowToJobsThatAddUpToIt) {
    const auto split = figures::split(lines("2026-11-01", "2026-11-30"), By::Design, {});
    ASSERT_EQ(rows("figuresGroups"), static_cast<int>(split.size()));
    auto& table = find<desk::FiguresTable>("figuresGroups");
    table.setFocus();
    table.selectRow(0);
    for (std::size_t i = 0; i < split.size(); ++i) {
        const auto& group = split[i];
        EXPECT_EQ(rows("figuresJobs"), static_cast<int>(group.jobs.size())) << i;
        EXPECT_TRUE(text("figuresSum").endsWith(m_formatter->money(group.earned.income))) << i;
        for (std::size_t job = 0; job < group.jobs.size(); ++job)
            EXPECT_EQ(cell("figuresJobs", static_cast<int>(job), 0).toStdString(), group.jobs[job]);
        QTest::keyClick(&table, Qt::Key_Down);
    }
}

TEST_F(AtTheFigures, openAJobByEnter) {
    auto& table = find<desk::FiguresTable>("figuresGroups");
    table.setFocus();
    table.selectRow(0);
    QTest::keyClick(&table, Qt::Key_Return);
    auto& jobs = find<desk::FiguresTable>("figuresJobs");
    EXPECT_TRUE(jobs.hasFocus());
    jobs.selectRow(0);
    QSignalSpy opened(m_page.get(), &FiguresPage::openAsked);
    QTest::keyClick(&jobs, Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    const auto id = opened.front().front().value<base::Id>();
    const auto summary = m_session->read([&](db::Book& book) { return book.summary(id); }).value();
    ASSERT_TRUE(summary.has_value());
    EXPECT_EQ(summary->number, cell("figuresJobs", 0, 0).toStdString());
}

TEST_F(AtTheFigures, areTheSameWholeHoweverTheyAreSplit) {
    const auto income = text("income");
    for (int by = 0; by < find<QComboBox>("figuresBy").count(); ++by) {
        lookBy(by);
        EXPECT_GT(rows("figuresGroups"), 0) << by;
        EXPECT_EQ(text("income"), income) << by;
        for (int row = 0; row < rows("figuresGroups"); ++row)
            EXPECT_FALSE(cell("figuresGroups", row, 0).isEmpty()) << by << " " << row;
    }
}

TEST_F(AtTheFigures, takeAQuarterAndAYear) {
    find<QComboBox>("figuresSpan").setCurrentIndex(1);
    sp::test::handleQueued();
    EXPECT_EQ(text("figuresWhen"), QStringLiteral("Quarter 4 of 2026"));
    EXPECT_EQ(text("income"), m_formatter->money(figures::together(lines("2026-10-01", "2026-12-31")).earned.income));
    EXPECT_FALSE(find<>("breakEven").isVisible()) << "that is told of a month alone";
    find<QComboBox>("figuresSpan").setCurrentIndex(2);
    sp::test::handleQueued();
    EXPECT_EQ(text("figuresWhen"), QStringLiteral("2026"));
    EXPECT_EQ(text("income"), m_formatter->money(figures::together(lines("2026-01-01", "2026-12-31")).earned.income));
}

TEST_F(AtTheFigures, sayThatNothingWasHandedOver) {
    for (int i = 0; i < 24 && find<>("figuresGroups").isVisible(); ++i) find<QPushButton>("figuresBefore").click();
    sp::test::handleQueued();
    ASSERT_FALSE(find<>("figuresGroups").isVisible());
    EXPECT_TRUE(find<>("figuresBack").isVisible());
    EXPECT_FALSE(find<>("figuresGo").isVisible());
    EXPECT_TRUE(find<QPushButton>("figuresAfter").isEnabled());

    auto empty = db::Book::create(m_folder / "empty.jobbook", m_clock.environment());
    ASSERT_TRUE(empty);
    open(std::move(*empty));
    EXPECT_TRUE(find<>("figuresGo").isVisible());
    EXPECT_FALSE(find<>("figuresBack").isVisible());
    QSignalSpy asked(m_page.get(), &FiguresPage::jobsAsked);
    m_page->focusStart();
    QTest::keyClick(&find<>("figuresGo"), Qt::Key_Space);
    EXPECT_EQ(asked.count(), 1);
}

TEST_F(AtTheFigures, tellTheTaxOfTheInvoicesOfTheseDays) {
    EXPECT_FALSE(find<>("figuresTax").isVisible()) << "nothing is invoiced";
    const db::BillSheetMaker words = [](const quoting::Bill&, const db::Quote&, const catalogue::Shop&) {
        return quoting::SheetContent{};
    };
    const auto number = cell("figuresJobs", 0, 0).toStdString();
    ASSERT_TRUE(m_session->change([&](db::Book& book) -> base::Done {
        const auto quote = book.quoteNumbered(number);
        if (!quote) return base::fail(quote.error());
        const auto bill = book.issueInvoice(quote->id, words);
        return bill ? base::Done() : base::fail(bill.error());
    }));
    sp::test::handleQueued();
    const auto report =
        m_session->read([&](db::Book& book) { return book.taxReport(day("2026-11-01"), day("2026-11-30")); });
    ASSERT_TRUE(report);
    EXPECT_TRUE(find<>("figuresTax").isVisible());
    const int last = rows("figuresTax") - 1;
    EXPECT_EQ(cell("figuresTax", last, 1), m_formatter->money(report->total() - report->tax()));
    EXPECT_EQ(cell("figuresTax", last, 2), m_formatter->money(report->tax()));
    find<QPushButton>("figuresBefore").click();
    sp::test::handleQueued();
    EXPECT_FALSE(find<>("figuresTax").isVisible());
}

TEST_F(AtTheFigures, followTheBook) {
    const auto before = text("income");
    const auto number = cell("figuresJobs", 0, 0).toStdString();
    ASSERT_TRUE(m_session->change([&](db::Book& book) -> base::Done {
        const auto quote = book.quoteNumbered(number);
        if (!quote) return base::fail(quote.error());
        return book.setStage(quote->id, db::Stage::Ready);
    }));
    sp::test::handleQueued();
    EXPECT_NE(text("income"), before);
    ASSERT_TRUE(m_session->undo());
    sp::test::handleQueued();
    EXPECT_EQ(text("income"), before);
}

} // namespace

} // namespace sp::figures::test

// SPDX-License-Identifier: MIT
// The Figures on the demo shop in the middle of its season, held against what the book says.
#include "app/figures/figures_page.h"

#include "app/demo/demo_book.h"
#include "app/demo/demo_orders.h"
#include "app/desk/figures_table.h"
#include "app/desk/theme.h"
#include "db/messages.h"
#include "tests/support/amounts.h"
#include "tests/support/held_clock.h"
#include "tests/support/quote_result.h"
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

#include <set>

namespace sp::figures::test {

namespace {

using sp::support::cents;

units::Date day(const char* iso) { return units::Date::parse(iso).value(); }

/// What a job is sold for, and what it takes.
struct SoldFor {
    units::Money net;
    units::Money tax; ///< on top, 10 %
    units::Money cost;
    units::Money cardFee;
};

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

    /// A book without jobs.
    std::unique_ptr<db::Book> plainBook() {
        return demo::createDemoBook(m_folder / "plain.jobbook", m_clock.environment()).value();
    }
    /// Hands a job of 12 pieces over today that was sealed with these figures.
    base::Done handOver(db::Book& book, const SoldFor& sold) {
        auto order = book.startQuote().value().order;
        order.lines = {catalogue::lineOf(book.designs().value().front())};
        order.lines.front().quantity = units::Count::of(12);
        const auto prices = book.priceBook(order.customer).value();
        auto priced = pricing::priceOrder(order, prices, m_fits).value();
        priced.lines.front().charged = priced.goods = priced.subtotal = sold.net;
        priced.rush = priced.discount = priced.minimumOrderCharge = priced.deposit = {};
        priced.tax = sold.tax;
        priced.taxes = {{"Sales tax", units::Rate::fromPercent(10), sold.net, sold.tax}};
        priced.total = priced.balance = sold.net + sold.tax;
        priced.lines.front().cost.total = priced.earnings.cost = sold.cost;
        priced.lines.front().earnings.cardFee = priced.earnings.cardFee = sold.cardFee;
        auto result = sp::test::resultOf(priced.total);
        result.priced = std::move(priced);
        const auto quote = book.issueNew(order, prices, result, order.quotedOn.plusDays(21));
        if (!quote) return base::fail(quote.error());
        if (auto ok = book.setStage(quote->id, db::Stage::Agreed); !ok) return ok;
        return book.setStage(quote->id, db::Stage::Collected);
    }

    sp::test::HeldClock m_clock; // 25 November 2026
    sp::test::TempFolder m_folder;
    layout::FitMemo m_fits;
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
    EXPECT_EQ(find<QPushButton>("figuresBefore").accessibleDescription(), text("figuresWhen"));
    EXPECT_EQ(text("left"), m_formatter->money(all.left()));
    EXPECT_EQ(text("perBenchHour"), m_formatter->money(all.perBenchHour().value()));
    EXPECT_TRUE(text("perBenchHourReckoning").contains(m_formatter->money(all.labour)));
    EXPECT_TRUE(find<>("perBenchHour").accessibleName().contains(QStringLiteral("Earned per bench hour")));
}

// By hand: 110.00 + 90.00 = 200.00; 60.00 + 3.00 + 45.50 + 1.50 = 110.00; 200.00 - 110.00 = 90.00, of 200.00 45 %.
TEST_F(AtTheFigures, tellSumsAsTheyAreWorkedByHand) {
    auto book = plainBook();
    ASSERT_TRUE(handOver(*book, {cents(110'00), cents(11'00), cents(60'00), cents(3'00)}));
    ASSERT_TRUE(handOver(*book, {cents(90'00), cents(9'00), cents(45'50), cents(1'50)}));
    open(std::move(book));
    EXPECT_EQ(text("income"), m_formatter->money(cents(200'00)));
    EXPECT_EQ(text("cost"), m_formatter->money(cents(110'00)));
    EXPECT_EQ(text("left"), m_formatter->money(cents(90'00)));
    EXPECT_EQ(text("margin"), m_formatter->rate(units::Rate::fromPercent(45)));
    ASSERT_EQ(rows("figuresGroups"), 1);
    EXPECT_EQ(cell("figuresGroups", 0, 1), m_formatter->count(units::Count::of(24)));
    EXPECT_FALSE(find<>("figuresMoreJobs").isVisible());
}

TEST_F(AtTheFigures, showSoManyJobsOfAGroupAndSayHowManyMoreThereAre) {
    auto book = plainBook();
    const std::int64_t all = kMostJobsShown + 2;
    ASSERT_TRUE(book->batch(base::say(db::Note::Adding, "jobs"), [&]() -> base::Done {
        for (std::int64_t i = 0; i < all; ++i)
            if (auto ok = handOver(*book, {cents(10'00), cents(1'00), cents(4'00), {}}); !ok) return ok;
        return {};
    }));
    open(std::move(book));
    ASSERT_EQ(rows("figuresGroups"), 1);
    EXPECT_EQ(rows("figuresJobs"), kMostJobsShown);
    EXPECT_TRUE(find<>("figuresMoreJobs").isVisible());
    EXPECT_EQ(text("figuresMoreJobs"), QStringLiteral("and 2 more jobs"));
    EXPECT_TRUE(text("figuresSum").endsWith(m_formatter->money(cents(10'00 * all)))) << "that of all of them";
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
    const auto whole = figures::together(lines("2026-11-01", "2026-11-30")).earned;
    FiguresPresenter presenter(*m_session);
    presenter.look();
    for (int by = 0; by < find<QComboBox>("figuresBy").count(); ++by) {
        lookBy(by);
        presenter.setBy(static_cast<By>(find<QComboBox>("figuresBy").itemData(by).toInt()));
        const auto& groups = presenter.groups();
        ASSERT_EQ(rows("figuresGroups"), static_cast<int>(groups.size())) << by;
        Earned sum;
        for (std::size_t i = 0; i < groups.size(); ++i) {
            const auto& earned = groups[i].earned;
            const int row = static_cast<int>(i);
            sum += earned;
            EXPECT_FALSE(cell("figuresGroups", row, 0).isEmpty()) << by << " " << row;
            EXPECT_EQ(cell("figuresGroups", row, 1), m_formatter->count(earned.pieces)) << by << " " << row;
            EXPECT_EQ(cell("figuresGroups", row, 2),
                      QStringLiteral("cost %1, left %2")
                          .arg(m_formatter->money(earned.cost + earned.cardFee), m_formatter->money(earned.left())))
                << by << " " << row;
        }
        EXPECT_EQ(sum, whole) << by;
    }
}

TEST_F(AtTheFigures, keepOpenWhatWasOpenWhenAllIsReadAgain) {
    find<QComboBox>("figuresSpan").setCurrentIndex(2); // a year
    lookBy(2);                                         // by month
    const int before = rows("figuresGroups");
    ASSERT_GE(before, 3) << "the demo is of three months";
    auto& table = find<desk::FiguresTable>("figuresGroups");
    table.selectRow(1);
    const auto opened = text("figuresJobsTitle");
    ASSERT_EQ(opened, cell("figuresGroups", 1, 0));
    const auto year = lines("2026-01-01", "2026-12-31");
    std::set<base::Id> above;
    const auto months = figures::split(year, By::Month, {});
    for (const auto place : months.front().lines) above.insert(year[place].job);
    ASSERT_TRUE(m_session->change([&](db::Book& book) -> base::Done {
        for (const auto& job : above)
            if (auto ok = book.setStage(job, db::Stage::Ready); !ok) return ok;
        return {};
    }));
    ASSERT_TRUE(sp::test::waitFor([&] { return rows("figuresGroups") == before - 1; }));
    EXPECT_EQ(cell("figuresGroups", 0, 0), opened);
    EXPECT_EQ(text("figuresJobsTitle"), opened);
    EXPECT_EQ(table.currentIndex().row(), 0);
}

TEST_F(AtTheFigures, takeAQuarterAndAYear) {
    find<QComboBox>("figuresSpan").setCurrentIndex(1);
    sp::test::handleQueued();
    EXPECT_EQ(text("figuresWhen"), QStringLiteral("Quarter 4 of 2026"));
    EXPECT_EQ(find<QPushButton>("figuresAfter").accessibleDescription(), text("figuresWhen"));
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
    ASSERT_TRUE(sp::test::waitFor([this] { return find<>("figuresTax").isVisible(); }));
    const auto report =
        m_session->read([&](db::Book& book) { return book.taxReport(day("2026-11-01"), day("2026-11-30")); });
    ASSERT_TRUE(report);
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
    EXPECT_TRUE(sp::test::waitFor([&] { return text("income") != before; }));
    ASSERT_TRUE(m_session->undo());
    EXPECT_TRUE(sp::test::waitFor([&] { return text("income") == before; }));
}

TEST_F(AtTheFigures, areReadOnceForSeveralChangesInARow) {
    FiguresPresenter presenter(*m_session);
    presenter.look();
    const auto number = cell("figuresJobs", 0, 0).toStdString();
    QSignalSpy outdated(&presenter, &FiguresPresenter::outdated);
    for (const auto stage : {db::Stage::Ready, db::Stage::Collected, db::Stage::Ready})
        ASSERT_TRUE(m_session->change([&](db::Book& book) -> base::Done {
            const auto quote = book.quoteNumbered(number);
            if (!quote) return base::fail(quote.error());
            return book.setStage(quote->id, stage);
        }));
    EXPECT_EQ(outdated.count(), 0) << "more may come";
    ASSERT_TRUE(sp::test::waitFor([&] { return outdated.count() > 0; }));
    EXPECT_EQ(outdated.count(), 1);
}

} // namespace

} // namespace sp::figures::test

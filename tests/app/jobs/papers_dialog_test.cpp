// SPDX-License-Identifier: MIT
// The papers of a job, issued by their buttons, off screen.
#include "app/demo/demo_book.h"
#include "app/jobs/papers_dialog.h"
#include "app/paper/preview_dialog.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "core/catalogue/order.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <QAbstractItemView>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <gtest/gtest.h>

#include <map>
#include <memory>

namespace sp::jobs::test {

namespace {

class Papers : public testing::Test {
  protected:
    Papers() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
        m_quote = give();
        m_presenter = std::make_unique<JobsPresenter>(*m_session);
    }
    db::Quote give() {
        catalogue::Order order;
        order.quotedOn = m_session->today();
        auto line = catalogue::lineOf(m_session->designs().front());
        line.quantity = units::Count::of(24);
        order.lines = {line};
        const auto prices = m_session->prices({});
        const auto until = order.quotedOn.plusDays(30);
        const words::SheetWords words;
        const auto result = words::resultOf(order, prices, until, m_session->fits(), words);
        return *m_session->change([&](db::Book& book) { return book.issueNew(order, prices, *result, until); });
    }
    void agree() { EXPECT_FALSE(m_presenter->setStage(db::Stage::Agreed).has_value()); }
    void pay(std::int64_t cents) {
        catalogue::Payment payment;
        payment.job = m_quote.id;
        payment.amount = units::Money::fromMicros(cents * 10'000);
        payment.kind = "Cash";
        payment.paidOn = m_presenter->today();
        EXPECT_FALSE(m_presenter->pay(payment, pricing::Beyond::Refused, pricing::Tender::Cash).has_value());
    }
    void open() { m_dialog = std::make_unique<PapersDialog>(*m_presenter, *m_formatter); }
    QPushButton* button(const char* name) { return m_dialog->findChild<QPushButton*>(QLatin1String(name)); }
    QString cell(int row, int column) {
        const auto* model = m_dialog->findChild<QAbstractItemView*>(QStringLiteral("paperList"))->model();
        return model->index(row, column).data().toString();
    }
    int rows() { return m_dialog->findChild<QAbstractItemView*>(QStringLiteral("paperList"))->model()->rowCount(); }

    sp::test::TempFolder m_folder;
    sp::test::HeldClock m_clock;
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    db::Quote m_quote;
    std::unique_ptr<JobsPresenter> m_presenter;
    std::unique_ptr<PapersDialog> m_dialog;
};

TEST_F(Papers, whatCannotBeIssuedIsGreyAndSaysWhy) {
    open();
    ASSERT_EQ(rows(), 1) << "the quote";
    EXPECT_EQ(cell(0, 2), QString::fromStdString(m_quote.number));
    for (const auto* name : {"issueInvoice", "issueReceipt", "issueCredit"})
        EXPECT_FALSE(button(name)->isEnabled()) << name;
    EXPECT_TRUE(button("issueInvoice")->toolTip().contains(QStringLiteral("not agreed to yet")));
    EXPECT_TRUE(button("showPaper")->isEnabled());
}

TEST_F(Papers, ofARevisedJobListEveryQuoteAndTheDifference) {
    open();
    EXPECT_TRUE(button("showDifference")->isHidden()) << "there is one quote";
    auto order = m_quote.order;
    order.lines[0].quantity = units::Count::of(30);
    const auto prices = m_session->prices({});
    const words::SheetWords words;
    const auto result = words::resultOf(order, prices, order.quotedOn.plusDays(30), m_session->fits(), words);
    const auto second = *m_session->change([&](db::Book& book) {
        return book.issueRevision(m_quote.id, order, prices, *result, order.quotedOn.plusDays(30));
    });
    m_presenter->refresh();
    open();
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(cell(0, 1), "Quote, replaced");
    EXPECT_EQ(cell(0, 2), QString::fromStdString(m_quote.number));
    EXPECT_EQ(cell(1, 2), QString::fromStdString(second.number));
    button("showDifference")->click();
    auto* difference = m_dialog->findChild<QDialog*>(QStringLiteral("difference"));
    ASSERT_NE(difference, nullptr);
    EXPECT_TRUE(difference->windowTitle().contains(QString::fromStdString(second.number)));
    delete difference;
    m_dialog->findChild<QAbstractItemView*>(QStringLiteral("paperList"))
        ->setCurrentIndex(m_dialog->findChild<QAbstractItemView*>(QStringLiteral("paperList"))->model()->index(0, 0));
    button("showPaper")->click();
    auto* preview = m_dialog->findChild<paper::PreviewDialog*>();
    ASSERT_NE(preview, nullptr);
    EXPECT_TRUE(preview->windowTitle().endsWith(QString::fromStdString(m_quote.number)));
}

TEST_F(Papers, areIssuedByTheirButtonsAndShown) {
    agree();
    pay(2'000);
    open();
    button("issueReceipt")->click();
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(cell(1, 1), "Receipt");
    EXPECT_EQ(cell(1, 3), "20.00");
    EXPECT_FALSE(button("issueReceipt")->isEnabled());
    auto* preview = m_dialog->findChild<paper::PreviewDialog*>();
    ASSERT_NE(preview, nullptr);
    EXPECT_TRUE(preview->windowTitle().contains(QStringLiteral("Receipt R-")));
    delete preview;
    button("issueInvoice")->click();
    ASSERT_EQ(rows(), 3);
    EXPECT_FALSE(button("issueInvoice")->isEnabled()) << "once";
    auto* amount = m_dialog->findChild<QLineEdit*>(QStringLiteral("creditAmount"));
    QTest::keyClicks(amount, QStringLiteral("99999"));
    button("issueCredit")->click();
    EXPECT_EQ(rows(), 3);
    EXPECT_EQ(amount->text(), "99999") << "what was typed stays";
    EXPECT_TRUE(m_dialog->findChild<desk::ProblemNote*>()->text().contains(QStringLiteral("take back less")));
    amount->clear();
    QTest::keyClicks(amount, QStringLiteral("5"));
    button("issueCredit")->click();
    ASSERT_EQ(rows(), 4);
    EXPECT_EQ(cell(3, 1), "Credit note");
    EXPECT_TRUE(button("issueInvoice")->isEnabled()) << "of what was taken back";
}

TEST_F(Papers, everyButtonHasAKeyOfItsOwn) {
    agree();
    pay(2'000);
    open();
    std::map<QChar, int> keys;
    for (const auto* each : m_dialog->findChildren<QPushButton*>()) {
        EXPECT_FALSE(each->objectName().isEmpty());
        const auto at = each->text().indexOf(QLatin1Char('&'));
        if (at < 0) continue;
        EXPECT_EQ(++keys[each->text().at(at + 1).toLower()], 1) << each->text().toStdString();
    }
}

} // namespace

} // namespace sp::jobs::test

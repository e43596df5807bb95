// SPDX-License-Identifier: MIT
// What invoices, receipts and credit notes say, line by line, as a reader of their PDFs finds it.
#include "app/paper/output.h"
#include "app/words/bill_words.h"

#include "pdf_reader.h"
#include "printed_sale.h"
#include "tests/support/test_data.h"

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace sp::paper {

namespace {

using catalogue::Paper;
using catalogue::PaperKind;
using catalogue::Payment;
using quoting::Bill;
using test::cents;
using units::Money;

units::Date dayOf(const char* iso) { return *units::Date::parse(iso); }

QString textOf(const quoting::SheetContent& sheet, Paper paper) {
    const QTemporaryDir folder;
    const auto pdf = folder.filePath(QStringLiteral("bill.pdf"));
    EXPECT_TRUE(writePdf(sheet, paper, pdf));
    if (qEnvironmentVariableIsSet("STONEPENNY_KEEP_PDFS")) // to be looked at
        QFile::copy(pdf, qEnvironmentVariable("STONEPENNY_KEEP_PDFS") + QLatin1Char('/') +
                             QString::fromStdString(sheet.title) +
                             (paper == Paper::A4 ? QStringLiteral(" A4.pdf") : QStringLiteral(" Letter.pdf")));
    QString text;
    static const QRegularExpression kGap(QStringLiteral(" {2,}"));
    for (const auto& page : test::pagesOf(pdf))
        for (const auto& line : page.split(QLatin1Char('\n')))
            if (const auto plain = line.trimmed(); !plain.isEmpty())
                text += QString(plain).replace(kGap, QStringLiteral(" | ")) + QLatin1Char('\n');
    return text;
}

test::Sale taxedSale() {
    auto sale = test::shortSale();
    sale.book.shop.letterhead.care.clear();
    sale.book.shop.letterhead.terms = "Please name the invoice when you pay.";
    sale.book.shop.rules.setUp = catalogue::SetUpCharge::OwnLine;
    sale.book.shop.isDemo = true;
    sale.book.customer = catalogue::Customer{{}, "Rowan Bakery", "7 Mill Lane\nMillbrook", {}, {}, std::nullopt, {}};
    sale.order.lines[0].first().templatesOnWall = false;
    return sale;
}

/// A bill of the sale, with what it comes to, and these payments.
Bill billOf(const test::Sale& sale, PaperKind kind, const char* number, std::vector<Payment> payments) {
    const auto priced = sale.priced();
    Bill bill;
    bill.kind = kind;
    bill.number = number;
    bill.day = dayOf("2026-12-02");
    bill.quote = "2026-0042";
    bill.parts = pricing::partsOf(priced.taxes, priced.taxIncluded, priced.total);
    bill.taxIncluded = priced.taxIncluded;
    bill.amount = priced.total;
    bill.payments = std::move(payments);
    bill.account = pricing::accountOf(priced.total, {}, bill.payments);
    bill.currency = sale.book.shop.currency;
    bill.isWhole = true;
    return bill;
}

std::vector<Payment> deposit() { return {{{}, {}, cents(5'000), "Cash", dayOf("2026-11-26"), {}, {}}}; }

quoting::SheetContent sheetOf(const test::Sale& sale, const Bill& bill) {
    return quoting::billSheet(bill, test::sheetOf(sale), sale.book.shop, words::SheetWords(), words::BillWords());
}

quoting::SheetContent invoice() {
    const auto sale = taxedSale();
    auto bill = billOf(sale, PaperKind::Invoice, "I-2026-0007", deposit());
    bill.due = dayOf("2026-12-16");
    return sheetOf(sale, bill);
}

quoting::SheetContent receipt() {
    const auto sale = taxedSale();
    auto payments = deposit();
    payments.push_back({{}, {}, cents(2'000), "Card", dayOf("2026-11-30"), {}, {}});
    payments.push_back({{}, {}, -cents(2'000), "Card", dayOf("2026-12-01"), {}, base::Id()});
    payments.push_back({{}, {}, cents(3'000), "Transfer", dayOf("2026-12-02"), {}, {}});
    auto bill = billOf(sale, PaperKind::Receipt, "R-2026-0012", payments);
    bill.parts.clear();
    bill.amount = cents(3'000);
    bill.payment = payments.back();
    bill.invoice = "I-2026-0007";
    return sheetOf(sale, bill);
}

/// What is left is paid with a large note: change, and the rest to the smallest coin.
quoting::SheetContent change() {
    const auto sale = taxedSale();
    const auto total = sale.priced().total;
    const auto due = pricing::countedOut(total - cents(5'000), cents(5));
    const auto id = *base::Id::parse("01980000-0000-7000-8000-000000000001");
    auto payments = deposit();
    Payment taken{id, {}, cents(50'000), "Cash", dayOf("2026-12-02"), {}, {}};
    payments.push_back(taken);
    taken.id = {};
    taken.partOf = id;
    taken.role = catalogue::PaymentRole::Change;
    taken.amount = due - cents(50'000);
    payments.push_back(taken);
    taken.role = catalogue::PaymentRole::Rounding;
    taken.amount = total - cents(5'000) - due;
    payments.push_back(taken);
    auto bill = billOf(sale, PaperKind::Receipt, "R-2026-0013", payments);
    bill.parts.clear();
    bill.amount = due;
    bill.payment = payments[1];
    return sheetOf(sale, bill);
}

quoting::SheetContent credit() {
    const auto sale = taxedSale();
    auto bill = billOf(sale, PaperKind::Credit, "C-2026-0003", deposit());
    const auto total = bill.amount;
    bill.amount = cents(1'000);
    bill.parts = *pricing::shareOf(bill.parts, bill.amount, bill.currency);
    bill.isWhole = false;
    bill.invoice = "I-2026-0007";
    bill.account = pricing::accountOf(total - bill.amount, {}, bill.payments);
    return sheetOf(sale, bill);
}

struct Golden {
    const char* name;
    quoting::SheetContent (*sheet)();

    friend void PrintTo(const Golden& golden, std::ostream* out) { *out << golden.name; }
};

class BillText : public testing::TestWithParam<Golden> {};

} // namespace

/// STONEPENNY_WRITE_GOLDEN=1 rewrites the files.
TEST_P(BillText, readsAsItDid) {
    const auto sheet = GetParam().sheet();
    const auto text = textOf(sheet, Paper::Letter);
    EXPECT_EQ(text.toStdString(), textOf(sheet, Paper::A4).toStdString());
    QFile file(QString::fromStdString(sp::test::dataFile(std::string("paper/") + GetParam().name + ".txt")));
    if (qEnvironmentVariableIsSet("STONEPENNY_WRITE_GOLDEN")) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text.toUtf8());
        return;
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(text.toStdString(), file.readAll().toStdString());
}

INSTANTIATE_TEST_SUITE_P(Bills, BillText,
                         testing::Values(Golden{"invoice_part_paid", invoice}, Golden{"receipt", receipt},
                                         Golden{"credit_part", credit}, Golden{"receipt_change", change}),
                         [](const auto& golden) { return std::string(golden.param.name); });

// Whatever was sold: the rows of an invoice add up as printed, to the total and to what is left.
TEST(BillSheet, addsUpAsPrinted) {
    std::mt19937_64 random(20261202);
    for (int round = 0; round < 40; ++round) {
        const auto sale = test::anySale(random);
        const auto bill = billOf(sale, PaperKind::Invoice, "I-2026-0001", {});
        if (bill.amount.isZero()) continue;
        const auto sheet = sheetOf(sale, bill);
        auto sum = sheet.together.value;
        if (!bill.taxIncluded) {
            if (sheet.tax) sum += sheet.tax->amount.value;
            for (const auto& tax : sheet.moreTaxes) sum += tax.amount.value;
        }
        ASSERT_EQ(sum, sheet.toPay.value) << round;
        ASSERT_EQ(sheet.settlement.back().amount.value, bill.account.left) << round;
    }
}

} // namespace sp::paper

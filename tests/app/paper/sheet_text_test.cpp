// SPDX-License-Identifier: MIT
#include "app/paper/output.h"

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

/// The sheet as a reader finds it line by line. Wide gaps become one bar and empty lines fall away, so that the text is
/// the same in every font.
QString textOf(const quoting::SheetContent& sheet) {
    const QTemporaryDir folder;
    const auto pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    const auto done = writePdf(sheet, Paper::Letter, pdf);
    EXPECT_TRUE(done);
    QString text;
    static const QRegularExpression kGap(QStringLiteral(" {2,}"));
    for (const auto& page : test::pagesOf(pdf))
        for (const auto& line : page.split(QLatin1Char('\n')))
            if (const auto plain = line.trimmed(); !plain.isEmpty())
                text += QString(plain).replace(kGap, QStringLiteral(" | ")) + QLatin1Char('\n');
    return text;
}

struct Golden {
    const char* name;
    test::Sale (*sale)();

    friend void PrintTo(const Golden& golden, std::ostream* out) { *out << golden.name; }
};

/// As the studio's, with notes that need no line breaks.
test::Sale studio() {
    auto sale = test::studioSale();
    sale.book.shop.letterhead.care = "Let it cool.\nNot for children under three.";
    return sale;
}

test::Sale taxed() {
    auto sale = test::shortSale();
    sale.book.shop.letterhead.care.clear();
    sale.book.shop.rules.setUp = catalogue::SetUpCharge::OwnLine;
    sale.order.lines[0].first().templatesOnWall = false;
    sale.order.discount.share = units::Rate::fromPercent(10);
    return sale;
}

class SheetText : public testing::TestWithParam<Golden> {};

} // namespace

/// STONEPENNY_WRITE_GOLDEN=1 rewrites the files.
TEST_P(SheetText, readsAsItDid) {
    const auto text = textOf(test::sheetOf(GetParam().sale()));
    QFile file(QString::fromStdString(sp::test::dataFile(std::string("paper/") + GetParam().name + ".txt")));
    if (qEnvironmentVariableIsSet("STONEPENNY_WRITE_GOLDEN")) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text.toUtf8());
        return;
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(text.toStdString(), file.readAll().toStdString());
}

INSTANTIATE_TEST_SUITE_P(Sheets, SheetText,
                         testing::Values(Golden{"quote_exempt_rush", studio}, Golden{"quote_taxed_set_up", taxed}),
                         [](const auto& golden) { return std::string(golden.param.name); });

TEST(SheetText, saysNothingOfCostAndProfit) {
    const auto sale = test::studioSale();
    const auto text = textOf(test::sheetOf(sale));
    for (const auto* word :
         {"cost", "mark-up", "markup", "margin", "profit", "earn", "overhead", "labour", "spoil", "Tollgate"})
        EXPECT_FALSE(text.contains(QLatin1String(word), Qt::CaseInsensitive)) << word;
    const auto priced = sale.priced();
    for (const auto& line : priced.lines)
        for (const auto amount : {line.cost.total, line.cost.outOfPocket, line.earnings.profit, line.calculatedEach})
            EXPECT_FALSE(text.contains(QString::fromStdString(units::formatMoney(amount, sale.book.shop.currency))))
                << amount.micros();
}

} // namespace sp::paper

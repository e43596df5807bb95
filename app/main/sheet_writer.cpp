// SPDX-License-Identifier: MIT
#include "app/main/sheet_writer.h"

#include "app/paper/bench_paper.h"
#include "app/paper/care_card.h"
#include "app/paper/output.h"
#include "app/paper/replaced_mark.h"
#include "app/words/difference_words.h"
#include "app/words/proof_sheet.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "app/words/translations.h"

namespace sp::program {

base::Done writeSheet(db::Book& book, const db::Quote& quote, const std::string& path, db::IfThere ifThere) {
    const words::SheetWords words;
    layout::FitMemo fits;
    const auto write = [&](const quoting::SheetContent& sheet, const catalogue::PriceBook& prices) {
        auto document = paper::documentOf(sheet, prices.shop.paper);
        const words::LanguageScope language({QString::fromStdString(sheet.language)});
        if (const auto& by = quote.replacedBy)
            paper::layOver(document, words::replacedMark(*by, QString::fromStdString(words.date(by->day))),
                           prices.shop.paper);
        return paper::writePdf(document, prices.shop.paper, QString::fromStdString(path), ifThere);
    };
    if (quote.frozen) return write(words::issuedSheet(quote, fits, words), *quote.frozen);
    const auto prices = book.priceBook(quote.order.customer);
    if (!prices) return base::fail(prices.error());
    const auto result = words::resultOf(quote.order, *prices, quote.validUntil, fits, words);
    if (!result) return base::fail(result.error());
    return write(words::withProofs(*result, book, quote.order, *prices, words).sheetFor(quote.number), *prices);
}

base::Done writeCareCards(db::Book& book, const std::string& path, db::IfThere ifThere) {
    const auto shop = book.shop();
    if (!shop) return base::fail(shop.error());
    const auto bench = book.bench();
    if (!bench) return base::fail(bench.error());
    const desk::Formatter formatter(QLocale(), *shop);
    const words::LanguageScope language(words::paperLanguages(*shop, {}));
    const auto cards = paper::careCards(*shop, paper::careWords(*shop, bench->press, formatter));
    return paper::writePdf(cards, shop->paper, QString::fromStdString(path), ifThere);
}

base::Done writeBenchSheet(db::Book& book, const db::Quote& quote, const std::string& path, db::IfThere ifThere) {
    const auto shop = book.shop();
    if (!shop) return base::fail(shop.error());
    layout::FitMemo fits;
    const auto document = paper::benchPaper(book, quote, desk::Formatter(QLocale(), *shop), fits);
    if (!document) return base::fail(document.error());
    return paper::writePdf(*document, shop->paper, QString::fromStdString(path), ifThere);
}

base::Done writeBill(const db::IssuedBill& bill, const std::string& path, db::IfThere ifThere) {
    return paper::writePdf(bill.result.sheet, bill.result.paper, QString::fromStdString(path), ifThere);
}

} // namespace sp::program

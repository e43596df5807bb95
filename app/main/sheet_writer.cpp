// SPDX-License-Identifier: MIT
#include "app/main/sheet_writer.h"

#include "app/paper/output.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"

namespace sp::program {

base::Done writeSheet(db::Book& book, const db::Quote& quote, const std::string& path, db::IfThere ifThere) {
    const words::SheetWords words;
    layout::FitMemo fits;
    const auto write = [&](const quoting::SheetContent& sheet, const catalogue::PriceBook& prices) {
        return paper::writePdf(sheet, prices.shop.paper, QString::fromStdString(path), ifThere);
    };
    if (quote.frozen) return write(words::issuedSheet(quote, fits, words), *quote.frozen);
    const auto prices = book.priceBook(quote.order.customer);
    if (!prices) return base::fail(prices.error());
    const auto result = words::resultOf(quote.order, *prices, quote.validUntil, fits, words);
    if (!result) return base::fail(result.error());
    return write(result->sheetFor(quote.number), *prices);
}

} // namespace sp::program

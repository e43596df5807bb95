// SPDX-License-Identifier: MIT
#include "app/paper/bench_paper.h"

#include "app/desk/kept_picture.h"
#include "app/paper/bench_pages.h"
#include "app/paper/replaced_mark.h"
#include "app/words/difference_words.h"
#include "app/words/words.h"
#include "db/book/bench_queue.h"
#include "db/book/given_prices.h"

namespace sp::paper {

namespace {

/// Of a draft those of today; of one that revises, without the pieces of what it revises among those sold.
base::Result<catalogue::PriceBook> pricesOf(db::Book& book, const db::Quote& quote) {
    if (quote.frozen) return *quote.frozen;
    auto today = book.priceBook(quote.order.customer);
    if (!today || !quote.revises) return today;
    const auto revised = book.quote(quote.revises->id);
    if (!revised) return base::fail(revised.error());
    return db::pricesOfRevision(*revised, std::move(*today));
}

/// The day on which the plan has it done; none where it is not among what is to be made, or nothing is known. What was
/// replaced is not made: the plan's day is that of the revision which stands.
base::Result<std::optional<units::Date>> readyDay(db::Book& book, const db::Quote& quote) {
    if (quote.replacedBy) return std::optional<units::Date>();
    const auto queue = db::BenchReader().read(book);
    if (!queue) return base::fail(queue.error());
    const auto plan = queue->plan();
    if (!plan) return std::optional<units::Date>(); // no hours are known
    for (std::size_t i = 0; i < queue->entries.size(); ++i)
        if (queue->entries[i].job.id == quote.id) return plan->ready[i];
    return std::optional<units::Date>();
}

} // namespace

base::Result<Document> benchPaper(db::Book& book, const db::Quote& quote, const desk::Formatter& formatter,
                                  layout::FitMemo& fits) {
    const auto shop = book.shop();
    if (!shop) return base::fail(shop.error());
    const auto bench = book.bench();
    if (!bench) return base::fail(bench.error());
    const auto prices = pricesOf(book, quote);
    if (!prices) return base::fail(prices.error());
    const auto sets = book.setsThere();
    if (!sets) return base::fail(sets.error());
    auto sheet = quoting::benchSheetOf(quote.number, quote.order, *prices, fits, *sets);
    if (!sheet) return base::fail(sheet.error());
    if (sheet->lines.empty())
        return words::fail(base::Code::Missing, quote.number,
                           QT_TRANSLATE_NOOP("App", "Nothing of this order is made at the bench: there are charges "
                                                    "alone on it."));
    sheet->press = bench->press;
    const auto ready = readyDay(book, quote);
    if (!ready) return base::fail(ready.error());
    const auto picture = [&book](const base::Id& design) {
        if (design.isNone()) return QImage();
        const auto drawing = book.artwork(design);
        return drawing && *drawing ? desk::keptPicture((*drawing)->thumbnail) : QImage();
    };
    auto document = benchDocument({*shop, formatter, *sheet, *ready, picture, quote.choiceTaken.has_value()});
    if (const auto& by = quote.replacedBy)
        layOver(document, words::replacedMark(*by, formatter.date(by->day)), shop->paper);
    return document;
}

} // namespace sp::paper

// SPDX-License-Identifier: MIT
#include "app/paper/bench_paper.h"

#include "app/desk/kept_picture.h"
#include "app/paper/bench_pages.h"
#include "app/words/words.h"
#include "db/book/bench_queue.h"

namespace sp::paper {

namespace {

/// The day on which the plan has it done; none where it is not among what is to be made, or nothing is known.
base::Result<std::optional<units::Date>> readyDay(db::Book& book, const base::Id& job) {
    const auto queue = db::BenchReader().read(book);
    if (!queue) return base::fail(queue.error());
    const auto plan = queue->plan();
    if (!plan) return std::optional<units::Date>(); // no hours are known
    for (std::size_t i = 0; i < queue->entries.size(); ++i)
        if (queue->entries[i].job.id == job) return plan->ready[i];
    return std::optional<units::Date>();
}

} // namespace

base::Result<Document> benchPaper(db::Book& book, const db::Quote& quote, const desk::Formatter& formatter,
                                  layout::FitMemo& fits) {
    const auto shop = book.shop();
    if (!shop) return base::fail(shop.error());
    const auto bench = book.bench();
    if (!bench) return base::fail(bench.error());
    auto prices = quote.frozen;
    if (!prices) {
        auto today = book.priceBook(quote.order.customer);
        if (!today) return base::fail(today.error());
        prices = std::move(*today);
    }
    auto sheet = quoting::benchSheetOf(quote.number, quote.order, *prices, fits);
    if (!sheet) return base::fail(sheet.error());
    if (sheet->lines.empty())
        return words::fail(base::Code::Missing, quote.number,
                           QT_TRANSLATE_NOOP("App", "Nothing of this order is made at the bench: there are charges "
                                                    "alone on it."));
    sheet->press = bench->press;
    const auto ready = readyDay(book, quote.id);
    if (!ready) return base::fail(ready.error());
    const auto picture = [&book](const base::Id& design) {
        if (design.isNone()) return QImage();
        const auto drawing = book.artwork(design);
        return drawing && *drawing ? desk::keptPicture((*drawing)->thumbnail) : QImage();
    };
    return benchDocument({*shop, formatter, *sheet, *ready, picture});
}

} // namespace sp::paper

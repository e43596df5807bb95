// SPDX-License-Identifier: MIT
#include "app/main/sheet_writer.h"

#include "app/paper/output.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"

#include "core/quoting/sheet_maker.h"

namespace sp::program {

base::Done writeSheet(db::Book& book, const db::Quote& quote, const std::string& path) {
    auto inputs =
        quote.frozen ? base::Result<catalogue::PriceBook>(*quote.frozen) : book.priceBook(quote.order.customer);
    if (!inputs) return base::fail(inputs.error());
    layout::FitMemo fits;
    const auto priced = pricing::priceOrder(quote.order, *inputs, fits);
    if (!priced) return base::fail(priced.error());
    if (quote.sealedTotal && *quote.sealedTotal != priced->total)
        return words::fail(base::Code::Damaged, quote.number,
                           QT_TRANSLATE_NOOP("App", "Quote %1 no longer comes to the sum it was given at; no sheet was "
                                                    "written. Check the book and go back to a copy of it."),
                           quote.number);
    std::vector<std::vector<pricing::LadderPrice>> ladders;
    const bool exempt = priced->taxStanding == pricing::TaxStanding::Exempt;
    if (quote.order.lines.size() <= quoting::kMaxLadders)
        for (std::size_t i = 0; i < quote.order.lines.size(); ++i) {
            auto ladder = pricing::ladderFor(quote.order, i, *inputs, exempt, fits);
            if (!ladder) return base::fail(ladder.error());
            ladders.push_back(std::move(*ladder));
        }
    const words::SheetWords words;
    const auto sheet =
        quoting::contentOf({quote.number, quote.order, *inputs, *priced, ladders, quote.validUntil, words});
    return paper::writePdf(sheet, inputs->shop.paper, QString::fromStdString(path), paper::IfThere::Replace);
}

} // namespace sp::program

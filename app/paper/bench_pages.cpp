// SPDX-License-Identifier: MIT
#include "app/paper/bench_pages.h"

#include "app/paper/bench_bricks.h"
#include "app/paper/page_flow.h"

#include <QCoreApplication>

#include <utility>

namespace sp::paper {

Document benchDocument(const BenchSheetInput& input) {
    const Lettering lettering;
    const double width = columnWidth(input.shop.paper);
    const auto number = QString::fromStdString(input.sheet.number);
    Document document{QCoreApplication::translate("BenchSheet", "Bench sheet %1").arg(number).trimmed().toStdString(),
                      {}};
    const auto count = input.sheet.lines.size();
    for (std::size_t i = 0; i < count; ++i) {
        const auto& line = input.sheet.lines[i];
        const auto title = count > 1 ? QCoreApplication::translate("BenchSheet", "Bench sheet %1, %2 of %3")
                                           .arg(number)
                                           .arg(i + 1)
                                           .arg(count)
                                     : QString::fromStdString(document.title);
        auto head = headOf(OwnPaper{input.shop, title, QString::fromStdString(line.title), {}});
        head.shopLines.clear();
        const PageFrame frame(std::move(head), lettering, width);
        for (auto& page : layOnPages(BenchBricks(input, line, lettering, width).lay(), frame, input.shop.paper))
            document.pages.push_back(std::move(page));
    }
    return document;
}

} // namespace sp::paper

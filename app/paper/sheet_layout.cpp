// SPDX-License-Identifier: MIT
#include "app/paper/sheet_layout.h"

#include "app/paper/page_flow.h"
#include "app/paper/sheet_bricks.h"
#include "app/words/shown.h"

namespace sp::paper {

QSizeF pageSize(catalogue::Paper paper) {
    return paper == catalogue::Paper::Letter ? QSizeF(612, 792) : QSizeF(595, 842);
}

std::vector<PlacedPage> layOut(const quoting::SheetContent& sheet, catalogue::Paper paper, const Lettering& lettering) {
    const BrickMaker maker(sheet, lettering, columnWidth(paper));
    const CarriedAmounts carried{
        [&maker](const QString& label, const QString& amount) { return maker.carried(label, amount); },
        maker.tableHead(), words::shown(sheet.labels.carriedForward), words::shown(sheet.labels.broughtForward)};
    return layOnPages(maker.all(), maker.frame(), paper, carried);
}

} // namespace sp::paper

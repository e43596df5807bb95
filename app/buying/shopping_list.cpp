// SPDX-License-Identifier: MIT
#include "app/buying/shopping_list.h"

#include "app/buying/buying_words.h"
#include "app/buying/cost_curve_picture.h"
#include "app/buying/plan_rows.h"
#include "app/paper/lettering.h"
#include "app/paper/paper_colours.h"
#include "app/paper/sheet_layout.h"
#include "core/base/csv.h"
#include "core/supply/plan_figures.h"

#include <QCoreApplication>

namespace sp::buying {

using paper::DrawnPages;
using paper::Face;
using supply::Strategy;
using units::Money;

namespace {

constexpr double kMargin = 54; ///< points

/// "9.99": two decimals, or as many as there are.
std::string plainAmount(Money amount) { return units::formatExact(amount, units::Currency{}); }

/// One line of the printed list.
struct ListLine {
    Face face = Face::Body;
    QString text;
    QString figure;
    bool hasBox = false;
    double gap = 0; ///< free space above
};

std::vector<ListLine> linesOf(const Answer& answer, const QString& job, const desk::Formatter& formatter) {
    const auto& plan = *answer.plans.of(Strategy::Mix).plan;
    std::vector<ListLine> lines{{Face::Title, Buying::tr("Shopping list"), {}, false, 0},
                                {Face::Small, job, {}, false, 0}};
    for (const auto& note : sparesOf(answer)) lines.push_back({Face::Small, note, {}, false, 0});
    if (plan.packs.empty())
        lines.push_back({Face::Body, Buying::tr("Nothing has to be bought: the shelf is enough."), {}, false, 12});
    for (const auto& order : plan.orders) {
        lines.push_back({Face::Strong, QString::fromStdString(order.supplier),
                         formatter.money(supply::orderTotal(order)), false, 18});
        for (const auto& pack : plan.packs)
            if (pack.supplier == order.supplier)
                lines.push_back(
                    {Face::Body, packWords(answer.job, pack, formatter), formatter.money(pack.goods), true, 4});
        lines.push_back({Face::Small, Buying::tr("Shipping"), formatter.money(order.shipping), false, 4});
    }
    lines.push_back({Face::Strong, Buying::tr("Together"), formatter.moneyNamed(plan.cost), false, 18});
    return lines;
}

} // namespace

std::string shoppingCsv(const Answer& answer) {
    const auto& plan = *answer.plans.of(Strategy::Mix).plan;
    const auto words = [](const QString& text) { return text.toStdString(); };
    auto text = base::csvRecord({{words(Buying::tr("Supplier"))},
                                 {words(Buying::tr("Pack"))},
                                 {words(Buying::tr("Material"))},
                                 {words(Buying::tr("Packs"))},
                                 {words(Buying::tr("Each"))},
                                 {words(Buying::tr("Goods"))}});
    for (const auto& order : plan.orders) {
        for (const auto& pack : plan.packs) {
            const auto* offer = answer.job.offer(pack.id);
            if (pack.supplier != order.supplier || !offer) continue;
            text += base::csvRecord(
                {{order.supplier},
                 {offer->withTemplates ? offer->name + words(Buying::tr(", templates cut")) : offer->name},
                 {offer->material},
                 {std::to_string(pack.count.value()), true},
                 {plainAmount(supply::packEach(pack)), true},
                 {plainAmount(pack.goods), true}});
        }
        text += base::csvRecord({{order.supplier},
                                 {words(Buying::tr("Shipping"))},
                                 {""},
                                 {"", true},
                                 {"", true},
                                 {plainAmount(order.shipping), true}});
    }
    return text;
}

DrawnPages shoppingPages(const Answer& answer, const QString& job, const desk::Formatter& formatter,
                         catalogue::Paper paper) {
    const auto size = paper::pageSize(paper);
    const auto lettering = std::make_shared<paper::Lettering>();
    std::vector<std::vector<ListLine>> pages(1);
    double y = kMargin;
    for (auto& line : linesOf(answer, job, formatter)) {
        const double height = line.gap + lettering->leading(line.face);
        if (y + height > size.height() - kMargin) {
            pages.emplace_back();
            y = kMargin;
        }
        y += height;
        pages.back().push_back(std::move(line));
    }
    DrawnPages drawn{Buying::tr("Shopping list"), {}};
    for (auto& page : pages)
        drawn.pages.push_back([lettering, size, page = std::move(page)](QPainter& painter) {
            double top = kMargin;
            for (const auto& line : page) {
                top += line.gap;
                const double base = top + lettering->ascent(line.face);
                if (line.hasBox) {
                    painter.setPen(QPen(paper::kMutedInk, 0.6));
                    painter.setBrush(Qt::NoBrush);
                    painter.drawRect(QRectF(kMargin, base - 8, 8, 8));
                }
                const double room = size.width() - 2 * kMargin - 90;
                const auto words = lettering->wrap(line.face, line.text, room, 1).value(0);
                lettering->draw(painter, {kMargin + (line.hasBox ? 16 : 0), base}, line.face, paper::kInk, words);
                const double left = size.width() - kMargin - lettering->width(line.face, line.figure);
                lettering->draw(painter, {left, base}, line.face, paper::kInk, line.figure);
                top += lettering->leading(line.face);
            }
        });
    return drawn;
}

DrawnPages costCurvePage(std::shared_ptr<const supply::CostCurve> curve, std::int64_t horizon, const QString& job,
                         const desk::Formatter& formatter, catalogue::Paper paper) {
    const auto size = paper::pageSize(paper);
    const auto page = [curve = std::move(curve), horizon, job, formatter, size](QPainter& painter) {
        const paper::Lettering lettering;
        lettering.draw(painter, {kMargin, kMargin + 18}, Face::Title, paper::kInk,
                       Buying::tr("Cost of one piece by quantity"));
        lettering.draw(painter, {kMargin, kMargin + 36}, Face::Small, paper::kMutedInk, job);
        QFont font(painter.font());
        font.setPixelSize(9); // a unit is a point
        painter.setFont(font);
        const QRectF box(kMargin, kMargin + 48, size.width() - 2 * kMargin, 320);
        paintCostCurve(painter, box, {*curve, horizon, 0}, desk::Look::Light, formatter);
        double y = box.bottom() + 24;
        for (const auto& line : lettering.wrap(
                 Face::Body, costCurveWords(*curve, horizon, formatter).join(QStringLiteral(" · ")), box.width(), 20)) {
            lettering.draw(painter, {kMargin, y}, Face::Body, paper::kInk, line);
            y += lettering.leading(Face::Body);
        }
    };
    return {Buying::tr("Cost of one piece by quantity"), {page}};
}

} // namespace sp::buying

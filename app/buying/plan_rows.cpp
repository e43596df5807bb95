// SPDX-License-Identifier: MIT
#include "app/buying/plan_rows.h"

#include "app/buying/buying_words.h"
#include "app/words/names.h"
#include "app/words/spare_words.h"
#include "app/words/words.h"
#include "core/supply/plan_figures.h"
#include "core/units/apportion.h"

#include <QCoreApplication>

#include <algorithm>

namespace sp::buying {

using needs::NeedKind;
using supply::Strategy;
using units::Count;

namespace {

QString qs(const std::string& text) { return QString::fromStdString(text); }

PlanRow orderRow(const Answer& answer, const supply::PurchasePlan& plan, const supply::PlannedOrder& order,
                 const desk::Formatter& formatter) {
    PlanRow row{qs(order.supplier), {}, formatter.money(supply::orderTotal(order)), {}};
    for (const auto& pack : plan.packs) {
        const auto* offer = answer.job.offer(pack.id);
        if (pack.supplier != order.supplier || !offer) continue;
        const bool isKit = offer->material.empty();
        auto label = qs(isKit ? offer->name : offer->material);
        if (offer->withTemplates) label += Buying::tr(", templates cut");
        const auto count = formatter.count(pack.count);
        const auto each = formatter.money(supply::packEach(pack));
        row.parts.push_back({label,
                             isKit ? Buying::tr("%1 × kit, %2 each").arg(count, each)
                                   : Buying::tr("%1 × %2, %3 each").arg(count, qs(offer->name), each),
                             formatter.money(pack.goods),
                             {}});
    }
    const auto& suppliers = answer.job.suppliers;
    const auto at = std::find_if(suppliers.begin(), suppliers.end(),
                                 [&](const supply::Supplier& known) { return known.id == order.supplier; });
    QString rule = Buying::tr("once for the order");
    if (at != suppliers.end() && at->freeFrom)
        rule = order.goods < *at->freeFrom
                   ? Buying::tr("free from %1").arg(formatter.money(*at->freeFrom))
                   : Buying::tr("free, as the goods reach %1").arg(formatter.money(*at->freeFrom));
    row.parts.push_back({Buying::tr("Shipping"), rule, formatter.money(order.shipping), {}});
    return row;
}

QString takeRule(const supply::JobLine& line, const supply::JobTake& take, const desk::Formatter& formatter) {
    const auto taking = line.piecesTaking(take);
    const auto pieces = formatter.count(Count::of(taking));
    switch (take.kind) {
    case NeedKind::Stones:
        return take.loss.isZero() ? QStringLiteral("%1 × %2").arg(pieces, formatter.count(take.perPiece))
                                  : Buying::tr("%1 × %2 ÷ (1 − %3 lost)")
                                        .arg(pieces, formatter.count(take.perPiece), formatter.rate(take.loss));
    case NeedKind::Cuts:
        return take.lifts == 1
                   ? words::counted("Buying", QT_TRANSLATE_N_NOOP("Buying", "%1 pieces, %2 a sheet"),
                                    "%1 piece, %2 a sheet", taking)
                         .arg(pieces)
                         .arg(take.perSheet)
                   : words::counted("Buying",
                                    QT_TRANSLATE_N_NOOP("Buying", "%1 pieces, each cut lifts %2 times, %3 a sheet"),
                                    "%1 piece, each cut lifts %2 times, %3 a sheet", taking)
                         .arg(pieces)
                         .arg(take.lifts)
                         .arg(take.perSheet);
    case NeedKind::Templates:
        return words::counted("Buying", QT_TRANSLATE_N_NOOP("Buying", "once: %1 templates, %2 a sheet"),
                              "once: %1 template, %2 a sheet", take.cuts)
            .arg(take.cuts)
            .arg(take.perSheet);
    case NeedKind::ReadyCut: return Buying::tr("once, with a kit");
    case NeedKind::Things:
        return take.perPiece == Count::of(1) ? Buying::tr("one a piece")
                                             : Buying::tr("%1 a piece").arg(formatter.count(take.perPiece));
    case NeedKind::ForOrder: return Buying::tr("%1 for the order").arg(formatter.count(take.perPiece));
    }
    return {};
}

PlanRow needRow(const Answer& answer, const desk::Formatter& formatter) {
    PlanRow row{Buying::tr("Needed"), sparesOf(answer).join(QLatin1Char(' ')), {}, {}};
    for (const auto& need : answer.plans.needs) {
        QStringList rules;
        for (const auto& line : answer.job.lines)
            for (const auto& take : line.takes)
                if (take.material == need.material) rules << takeRule(line, take, formatter);
        const auto& shelf = answer.job.shelf;
        const auto at =
            std::find_if(shelf.begin(), shelf.end(), [&](const auto& item) { return item.material == need.material; });
        if (at != shelf.end()) rules << Buying::tr("%1 on the shelf").arg(formatter.count(at->count));
        row.parts.push_back({qs(need.material), rules.join(QStringLiteral("; ")), formatter.count(need.count), {}});
    }
    return row;
}

/// What is not known is not nothing.
QString worthOf(const std::optional<units::Money>& worth, const desk::Formatter& formatter) {
    return worth ? formatter.money(*worth) : Buying::tr("unknown");
}

PlanRow leftRow(const supply::StrategyPlan& strategy, const desk::Formatter& formatter) {
    PlanRow row{Buying::tr("Left on the shelf, worth"), {}, worthOf(strategy.leftWorth, formatter), {}};
    std::vector<std::optional<units::Money>> worth;
    for (const auto& left : strategy.left) worth.push_back(left.worth);
    const auto shown = units::shownParts(std::move(worth), formatter.currency());
    for (std::size_t i = 0; i < strategy.left.size(); ++i) {
        const auto& left = strategy.left[i];
        const auto rule = left.price ? QStringLiteral("%1 × %2 / %3")
                                           .arg(formatter.count(left.count), formatter.money(left.price->price),
                                                formatter.count(left.price->per))
                                     : Buying::tr("%1; nobody sells it in bulk").arg(formatter.count(left.count));
        row.parts.push_back({qs(left.material), rule, worthOf(shown[i], formatter), {}});
    }
    return row;
}

} // namespace

QString nameOf(Strategy strategy) {
    switch (strategy) {
    case Strategy::Kits: return Buying::tr("Kits only");
    case Strategy::Bulk: return Buying::tr("Bulk only");
    case Strategy::Mix: return Buying::tr("Cheapest mix");
    }
    return {};
}

QString packWords(const supply::Job& job, const supply::PlannedPack& pack, const desk::Formatter& formatter) {
    const auto* offer = job.offer(pack.id);
    if (!offer) return {};
    auto words = QStringLiteral("%1 × %2").arg(formatter.count(pack.count), qs(offer->name));
    if (!offer->material.empty()) words += QStringLiteral(", ") + qs(offer->material);
    if (offer->withTemplates) words += Buying::tr(", templates cut");
    return words;
}

QStringList sparesOf(const Answer& answer) {
    std::vector<words::SparesOfLine> lines;
    for (const auto& line : answer.job.lines) lines.push_back({line.title, line.spares});
    return words::spareNotes(lines, answer.job.spares);
}

std::vector<PlanRow> rowsOf(const Answer& answer, Strategy which, const desk::Formatter& formatter) {
    const auto& strategy = answer.plans.of(which);
    if (!strategy.plan) return {};
    std::vector<PlanRow> rows;
    for (const auto& order : strategy.plan->orders) rows.push_back(orderRow(answer, *strategy.plan, order, formatter));
    rows.push_back(needRow(answer, formatter));
    rows.push_back(leftRow(strategy, formatter));
    return rows;
}

QString buyLine(const Answer& answer, const desk::Formatter& formatter) {
    if (answer.plans.isOnShelf) return Buying::tr("Buy nothing: the shelf is enough");
    const auto& best = answer.plans.of(Strategy::Mix);
    if (!best.plan) return Buying::tr("Buy: %1").arg(words::sentence(*best.impossible));
    std::int64_t kits = 0;
    std::int64_t packs = 0;
    for (const auto& pack : best.plan->packs) {
        const auto* offer = answer.job.offer(pack.id);
        (offer && offer->material.empty() ? kits : packs) += pack.count.value();
    }
    QStringList parts;
    if (kits > 0) parts << words::counted(words::Thing::Kit, kits, formatter.count(Count::of(kits)));
    if (packs > 0) parts << words::counted(words::Thing::Pack, packs, formatter.count(Count::of(packs)));
    return Buying::tr("Buy: %1, %2").arg(parts.join(QStringLiteral(" + ")), formatter.money(best.plan->cost));
}

} // namespace sp::buying

// SPDX-License-Identifier: MIT
#include "app/buying/kit_choice_words.h"

#include "app/buying/buying_words.h"
#include "app/words/words.h"
#include "core/supply/plan_figures.h"

#include <algorithm>
#include <cmath>

namespace sp::buying {

using units::Count;

namespace {

QString shownCount(std::int64_t count, const desk::Formatter& formatter) { return formatter.count(Count::of(count)); }

/// Down to a tenth of a percent, so that nothing likely reads as certain.
QString oddsWords(double probability, const desk::Formatter& formatter) {
    return formatter.rate(units::Rate::fromPpm(static_cast<std::int64_t>(std::floor(probability * 1000)) * 1000));
}

QString lackWords(const supply::YieldAnswer& makes) {
    QStringList names;
    for (const auto& name : makes.limiting) names << QString::fromStdString(name);
    return names.join(Buying::tr(" and "));
}

QString rangeWords(const supply::KitRun& run, const supply::KitChoice& kit, const desk::Formatter& formatter) {
    const auto from = shownCount(run.from, formatter);
    if (kit.bulkForGoodFrom == run.from && !run.isKit) return Buying::tr("from %1 on").arg(from);
    return run.from == run.to ? from : QStringLiteral("%1–%2").arg(from, shownCount(run.to, formatter));
}

QString rangesWords(const supply::KitChoice& kit, bool ofKit, const desk::Formatter& formatter) {
    QStringList ranges;
    for (const auto& run : kit.runs)
        if (run.isKit == ofKit) ranges << rangeWords(run, kit, formatter);
    constexpr qsizetype kMostRanges = 5;
    if (ranges.size() > kMostRanges) {
        ranges.resize(kMostRanges);
        ranges << QStringLiteral("…");
    }
    return ranges.join(QStringLiteral(", "));
}

} // namespace

QString kitMakes(const supply::KitChoice& kit, const desk::Formatter& formatter) {
    if (!kit.makes) return words::sentence(kit.makes.error());
    const auto& makes = *kit.makes;
    const auto sure = makes.sure.value();
    const auto likely = makes.likely.pieces.value();
    if (likely == 0) return Buying::tr("Makes none: %1 is missing or too little.").arg(lackWords(makes));
    const auto odds = oddsWords(makes.likely.probability, formatter);
    const auto runsOut = words::counted("Buying", QT_TRANSLATE_N_NOOP("Buying", "%1 run out first."),
                                        "%1 runs out first.", static_cast<std::int64_t>(makes.limiting.size()))
                             .arg(lackWords(makes));
    const auto pieces =
        words::counted("Buying", QT_TRANSLATE_N_NOOP("Buying", "%1 pieces for sure"), "%1 piece for sure", sure)
            .arg(formatter.count(makes.sure));
    if (likely == sure) return Buying::tr("%1; %2", "so many pieces; what runs out").arg(pieces, runsOut);
    const auto upTo = formatter.count(makes.likely.pieces);
    return sure == 0 ? Buying::tr("No piece for sure, %1 with odds of %2; %3").arg(upTo, odds, runsOut)
                     : Buying::tr("%1, %2 with odds of %3; %4").arg(pieces, upTo, odds, runsOut);
}

std::vector<std::int64_t> kitQuantities(const supply::KitChoice& kit, std::int64_t asked) {
    std::vector<std::int64_t> shown{asked};
    if (kit.makes) {
        const auto one = kit.makes->sure.value() > 0 ? kit.makes->sure.value() : kit.makes->likely.pieces.value();
        for (const auto pieces : {one, 2 * one})
            if (pieces > 0) shown.push_back(pieces);
    }
    std::sort(shown.begin(), shown.end());
    shown.erase(std::unique(shown.begin(), shown.end()), shown.end());
    std::erase_if(shown, [&](std::int64_t pieces) { return kit.at(pieces) == nullptr; });
    return shown;
}

KitEach kitEach(const supply::KitPrice& price, const desk::Formatter& formatter) {
    const auto kit = supply::costEach(price.kit, price.pieces);
    const auto bulk = supply::costEach(price.bulk, price.pieces);
    const auto shown = [&](const std::optional<units::Money>& each) {
        return each ? formatter.money(*each) : QStringLiteral("—");
    };
    KitEach words{shownCount(price.pieces, formatter), shown(kit), shown(bulk), {}};
    if (const auto isKit = supply::isKitCheaper(price)) words.cheaper = *isKit ? Buying::tr("kit") : Buying::tr("bulk");
    return words;
}

QString kitRuns(const supply::KitChoice& kit, const desk::Formatter& formatter) {
    QStringList said;
    if (const auto ranges = rangesWords(kit, true, formatter); !ranges.isEmpty())
        said << Buying::tr("Cheaper from the kit: %1.").arg(ranges);
    if (const auto ranges = rangesWords(kit, false, formatter); !ranges.isEmpty())
        said << Buying::tr("Cheaper in bulk: %1.").arg(ranges);
    return said.join(QLatin1Char(' '));
}

QStringList kitLines(const std::vector<supply::KitChoice>& kits, std::int64_t asked, const desk::Formatter& formatter) {
    QStringList lines;
    for (const auto& kit : kits) {
        const auto name = QString::fromStdString(kit.name);
        const auto makes = kitMakes(kit, formatter);
        const auto quantities = kitQuantities(kit, asked);
        if (!kit.makes || kit.makes->likely.pieces.isZero() || quantities.empty()) {
            lines << Buying::tr("%1: %2", "a kit: what it makes").arg(name, makes);
            continue;
        }
        const auto each = kitEach(*kit.at(quantities.front()), formatter);
        lines << Buying::tr("%1: %2 Each of %3, shipping in: kit %4, bulk %5. %6")
                     .arg(name, makes, each.pieces, each.kit, each.bulk, kitRuns(kit, formatter));
    }
    return lines;
}

} // namespace sp::buying

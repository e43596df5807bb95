// SPDX-License-Identifier: MIT
#include "tests/reference/plain_sharing.h"

#include "tests/reference/plain_coster.h"

namespace sp::reference {

namespace {

/// Each material that goes with the order once is paid for the most that a line names, by those lines in proportion to
/// what they cost without it.
void sharePacking(const catalogue::Order& order, const catalogue::PriceBook& book, const std::vector<Whole>& costs,
                  std::vector<PlainShare>& shares) {
    std::map<base::Id, std::pair<Whole, std::vector<std::size_t>>> packed;
    for (std::size_t i = 0; i < order.lines.size(); ++i)
        for (const auto& use : packingOf(order.lines[i], book)) {
            if (use.per != catalogue::PackingPer::Order) continue;
            auto& [most, lines] = packed[use.material];
            most = std::max(most, use.amount.value());
            if (lines.empty() || lines.back() != i) lines.push_back(i);
        }
    for (const auto& [material, use] : packed) {
        const auto& most = use.first;
        const auto& lines = use.second;
        const auto& priced = *book.find(material);
        const auto known = shares[lines[0]].prices.find(material);
        const Whole price = known == shares[lines[0]].prices.end() ? priced.price->price.micros() : known->second;
        const Whole paid = even(Wide{most} * price, priced.price->per.value());
        Wide all = 0;
        for (const auto line : lines) all += costs[line];
        const auto split = [&](Whole amount, Whole PlainShare::*to) {
            Wide reached = 0;
            Whole given = 0;
            for (const auto line : lines) {
                reached += all == 0 ? 1 : costs[line];
                const Whole upTo = even(Wide{amount} * reached, all == 0 ? static_cast<Wide>(lines.size()) : all);
                shares[line].*to += upTo - given;
                given = upTo;
            }
        };
        split(paid, &PlainShare::packing);
        split(freightOf(*book.find(material), paid), &PlainShare::freight);
    }
}

bool areOneSet(const catalogue::Placement& a, const catalogue::Placement& b, const catalogue::PriceBook& book) {
    if (a.design.isNone() || a.design != b.design || a.templatesOnWall || b.templatesOnWall) return false;
    if (a.plannedPieces.has_value() != b.plannedPieces.has_value()) return false;
    if (a.width != b.width || a.height != b.height || a.stones.size() != b.stones.size()) return false;
    for (std::size_t i = 0; i < a.stones.size(); ++i) {
        const auto sizeOf = [&](const auto& row) { return book.find(row.material)->material.stone.size; };
        if (a.stones[i].count != b.stones[i].count || sizeOf(a.stones[i]) != sizeOf(b.stones[i])) return false;
    }
    return true;
}

/// The pieces of the lines that `is` says go with a line, itself among them.
Whole piecesWith(const catalogue::Order& order, std::size_t line, auto is) {
    Whole sum = 0;
    for (std::size_t i = 0; i < order.lines.size(); ++i)
        if (i == line || is(order.lines[line].first(), order.lines[i].first())) sum += order.lines[i].quantity.value();
    return sum;
}

/// What a pack of each material costs that an order takes, all of it together. Stones before their loss are added up,
/// whole sheets line by line, one set of templates for those that share it.
std::map<base::Id, Whole> packPrices(const catalogue::Order& order, const catalogue::PriceBook& book,
                                     layout::FitMemo& fits) {
    std::map<base::Id, Wide> taken;
    std::map<base::Id, Whole> once;
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        const auto& line = order.lines[i];
        const auto& place = line.first();
        const Whole n = line.quantity.value();
        const Coster coster{line, book, fits};
        for (const auto& stone : place.stones) taken[stone.material] += Wide{stone.count.value()} * n;
        const auto sheets = [&](const PricedMaterial& material, Whole cut) {
            taken[material.material.id] += up(cut, coster.perSheet(material.material.sheet));
        };
        if (const auto* tape = book.find(book.shop.usualTape)) sheets(*tape, up(n, tape->material.sheet.lifts));
        bool isFirst = !place.templatesOnWall;
        for (std::size_t k = 0; k < i; ++k) isFirst = isFirst && !areOneSet(place, order.lines[k].first(), book);
        if (const auto* sheet = book.find(book.shop.usualTemplate); sheet && isFirst)
            sheets(*sheet, static_cast<Whole>(place.stones.size()));
        if (const auto* base = line.customersGarment ? nullptr : book.find(line.baseMaterial)) {
            if (base->material.kind == MaterialKind::Backing)
                sheets(*base, n);
            else
                taken[line.baseMaterial] += n;
        }
        for (const auto& use : packingOf(line, book)) {
            if (use.per == catalogue::PackingPer::Order)
                once[use.material] = std::max(once[use.material], use.amount.value());
            else
                taken[use.material] += Wide{use.amount.value()} * n;
        }
    }
    for (const auto& [material, amount] : once) taken[material] += amount;
    std::map<base::Id, Whole> prices;
    for (const auto& [id, amount] : taken) {
        const auto& material = *book.find(id);
        const Whole kept =
            material.material.kind == MaterialKind::Stone ? kMillion - material.material.stone.loss.ppm() : kMillion;
        const Whole packs = up(up(amount * kMillion, kept), material.price->per.value());
        prices[id] = material.price->price.micros();
        for (const auto& step : material.breaks)
            if (packs >= step.from.value()) prices[id] = step.each.micros();
    }
    return prices;
}

/// How the set of a line is paid off: what is left of the plan is carried by all lines of the design, each piece the
/// same; a set that was not cut yet costs what it does today, as one piece by itself.
PlainSet plainSet(const catalogue::Order& order, std::size_t number, const catalogue::PriceBook& book,
                  layout::FitMemo& fits, const std::map<base::Id, Whole>& prices) {
    const auto& line = order.lines[number];
    const auto& place = line.first();
    if (!place.plannedPieces) return {};
    PlainSet set;
    set.planned = place.plannedPieces->value();
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        const auto& other = order.lines[i].first();
        if (i == number || (other.plannedPieces && !place.design.isNone() && other.design == place.design))
            set.ofPieces += order.lines[i].quantity.value();
    }
    const auto known = place.design.isNone() ? book.sets.end() : book.sets.find(place.design);
    const Whole sold = known == book.sets.end() ? 0 : known->second.sold.value();
    const Whole left = std::max<Whole>(0, set.planned - sold);
    if (left == 0 && !place.templatesOnWall) return {};
    set.carried = std::min(left, set.ofPieces);
    set.holdsWork = book.shop.paysOffWork;
    if (known != book.sets.end() && known->second.cost) {
        set.templates = known->second.cost->templates.micros();
        set.work = known->second.cost->work.micros();
        set.holdsWork = set.holdsWork || set.work != 0;
        return set;
    }
    auto alone = line;
    alone.quantity = units::Count::of(1);
    alone.sizes.clear();
    alone.first().templatesOnWall = false;
    alone.first().plannedPieces.reset();
    PlainShare bought;
    bought.prices = prices;
    const auto cost = plainCost(alone, book, fits, bought);
    for (const auto part : {Part::Template, Part::FreightOnTemplate})
        if (const auto at = cost.parts.find({part, 0}); at != cost.parts.end()) set.templates += at->second;
    if (set.holdsWork) set.work = cost.setUp - set.templates;
    return set;
}

} // namespace

void shareOrder(const catalogue::Order& order, const catalogue::PriceBook& book, layout::FitMemo& fits,
                std::vector<PlainShare>& shares) {
    const auto& press = book.bench.press;
    const bool isPressedOnce = shares.size() > 1;
    std::vector<Whole> costs;
    const auto prices = packPrices(order, book, fits);
    for (std::size_t i = 0; i < shares.size(); ++i) {
        auto& share = shares[i];
        share.prices = prices;
        share.isOfOrder = true;
        share.set = plainSet(order, i, book, fits, prices);
        share.setPieces = piecesWith(order, i, [&](const auto& a, const auto& b) { return areOneSet(a, b, book); });
        share.counted = order.lines[i].quantity.value();
        if (book.shop.countsDesignOverLines)
            share.counted = piecesWith(
                order, i, [](const auto& a, const auto& b) { return !a.design.isNone() && a.design == b.design; });
        if (isPressedOnce) share.warmUp = 0;
        costs.push_back(plainCost(order.lines[i], book, fits, share).total);
    }
    sharePacking(order, book, costs, shares);
    if (!isPressedOnce) return;
    Wide all = 0;
    for (const auto cost : costs) all += cost;
    const auto split = [&](Whole amount, Whole PlainShare::*to) {
        Wide reached = 0;
        Whole given = 0;
        for (std::size_t i = 0; i < shares.size(); ++i) {
            reached += all == 0 ? 1 : costs[i];
            const Whole upTo = even(Wide{amount} * reached, all == 0 ? static_cast<Wide>(shares.size()) : all);
            shares[i].*to = upTo - given;
            given = upTo;
        }
    };
    const Wide running = press.runningPerHour.micros();
    split(even(running * press.warmUp.milliseconds(), kHour), &PlainShare::warmUp);
    split(even(running * press.testPresses * (press.dwell + press.handling).milliseconds(), kHour), &PlainShare::tests);
    split(even(Wide{(press.price - press.salvage).micros()} * press.testPresses, press.lifePresses),
          &PlainShare::testWear);
}

} // namespace sp::reference

// SPDX-License-Identifier: MIT
#include "core/needs/order_work.h"

#include "core/base/overflow.h"
#include "core/needs/messages.h"
#include "core/needs/order_prices.h"
#include "core/needs/shared_sets.h"

#include <algorithm>

namespace sp::needs {

namespace {

using catalogue::OrderLine;
using units::Count;

bool isSetThere(const catalogue::Placement& place, const SetsThere& there) {
    return place.plannedPieces && there.contains(place.design);
}

/// What is made of the order, spares too; templates that are there hang on the wall.
std::vector<OrderLine> madeOf(std::span<const OrderLine> lines, const std::vector<LineSpares>& spares,
                              const SetsThere& there) {
    std::vector<OrderLine> made(lines.begin(), lines.end());
    for (std::size_t i = 0; i < made.size(); ++i) {
        made[i].quantity = made[i].quantity + Count::of(spares[i].pieces);
        for (auto& place : made[i].places) place.templatesOnWall = place.templatesOnWall || isSetThere(place, there);
    }
    return made;
}

std::vector<PlaceSet> setsOf(const std::vector<OrderLine>& made, const std::vector<std::vector<SharedSet>>& shared,
                             std::size_t line) {
    std::vector<PlaceSet> sets;
    for (std::size_t i = 0; i < made[line].places.size(); ++i)
        sets.push_back({made[line].places[i].templatesOnWall,
                        shared.empty() ? SharedSet{made[line].quantity.value(), line, i} : shared[line][i]});
    return sets;
}

/// What all lines take together; spares are not packed.
base::Result<std::vector<MaterialTake>> takesOf(const std::vector<OrderLine>& made, const std::vector<LineWork>& lines,
                                                const std::vector<std::vector<SharedSet>>& sets,
                                                const catalogue::PriceBook& book, layout::FitMemo& fits) {
    std::vector<Requirements> requirements;
    for (const auto& line : lines) requirements.push_back(line.takes);
    const auto prices = orderPrices(made, requirements, sets, book, fits, PricedBy::Anything);
    if (!prices) return base::fail(prices.error());
    std::vector<MaterialTake> takes;
    if (!*prices) return takes;
    for (const auto& [material, packed] : **prices) takes.push_back({material, packed.need});
    std::ranges::sort(takes, {}, &MaterialTake::material);
    for (const auto& line : lines)
        for (const auto& packing : line.takes.materials.packing) {
            if (packing.need.kind != NeedKind::Things) continue;
            const auto at = std::ranges::find(takes, packing.material->material.id, &MaterialTake::material);
            if (at != takes.end()) at->count -= line.spares.pieces * packing.need.perPiece.value();
        }
    return takes;
}

base::Result<OrderWork> allWorkOf(std::span<const OrderLine> lines, const catalogue::PriceBook& book,
                                  layout::FitMemo& fits, const SetsThere& there) {
    OrderWork work;
    const auto spares = sparesOf(lines, spareRuleOf(book.shop));
    const auto made = madeOf(lines, spares, there);
    const auto sets = sharedSets(made, book);
    for (std::size_t i = 0; i < made.size(); ++i) {
        std::vector<Count> setPieces;
        if (!sets.empty())
            for (const auto& set : sets[i]) setPieces.push_back(Count::of(set.pieces));
        auto needed = requirementsOf(made[i], book, made[i].quantity.value(), fits, setPieces);
        if (!needed) return base::fail(needed.error());
        LineWork line{spares[i], std::move(*needed), {}};
        line.bench = line.takes.bench;
        line.sets = setsOf(made, sets, i);
        if (spares[i].pieces > 0) {
            const std::vector<std::int64_t> cycles(made[i].places.size());
            const auto packed = benchTime(book.bench, lines[i], lines[i].quantity.value(), cycles);
            constexpr auto kPack = static_cast<std::size_t>(catalogue::Step::Pack);
            line.bench.steps[kPack] = packed.steps[kPack];
        }
        work.total += line.bench.total();
        work.lines.push_back(std::move(line));
    }
    auto takes = takesOf(made, work.lines, sets, book, fits);
    if (!takes) return base::fail(takes.error());
    work.takes = std::move(*takes);
    return work;
}

} // namespace

base::Result<OrderWork> workOf(std::span<const OrderLine> lines, const catalogue::PriceBook& book,
                               layout::FitMemo& fits, const SetsThere& there) {
    try {
        return allWorkOf(lines, book, fits, there);
    } catch (const base::Overflow&) { return base::fail(Fault::WorkTooLarge, "order"); }
}

} // namespace sp::needs

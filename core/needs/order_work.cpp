// SPDX-License-Identifier: MIT
#include "core/needs/order_work.h"

#include "core/needs/shared_sets.h"

namespace sp::needs {

namespace {

using catalogue::OrderLine;
using units::Count;

bool isSetThere(const catalogue::Placement& place, const catalogue::PriceBook& book) {
    if (!place.plannedPieces) return false;
    const auto set = book.sets.find(place.design);
    return set != book.sets.end() && set->second.sold > Count{};
}

/// The pieces for which the set of each place is made; nothing where all of it is for this line alone.
std::vector<Count> setPiecesOf(const OrderLine& line, std::size_t number,
                               const std::vector<std::vector<SharedSet>>& sets, const catalogue::PriceBook& book) {
    std::vector<Count> pieces(line.places.size(), line.quantity);
    bool isPlain = true;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (!sets.empty()) pieces[i] = Count::of(sets[number][i].pieces);
        if (isSetThere(line.places[i], book)) pieces[i] = {};
        isPlain = isPlain && pieces[i] == line.quantity;
    }
    if (isPlain) pieces.clear();
    return pieces;
}

} // namespace

base::Result<OrderWork> workOf(std::span<const OrderLine> lines, const catalogue::PriceBook& book,
                               layout::FitMemo& fits) {
    OrderWork work;
    const auto spares = sparesOf(lines, spareRuleOf(book.shop));
    std::vector<OrderLine> made(lines.begin(), lines.end());
    for (std::size_t i = 0; i < made.size(); ++i) made[i].quantity = made[i].quantity + Count::of(spares[i].pieces);
    const auto sets = sharedSets(made, book);
    for (std::size_t i = 0; i < made.size(); ++i) {
        const auto setPieces = setPiecesOf(made[i], i, sets, book);
        auto takes = requirementsOf(made[i], book, made[i].quantity.value(), fits, setPieces);
        if (!takes) return base::fail(takes.error());
        LineWork line{spares[i], std::move(*takes), {}};
        line.bench = line.takes.bench;
        if (spares[i].pieces > 0) {
            const std::vector<std::int64_t> cycles(made[i].places.size());
            const auto packed = benchTime(book.bench, lines[i], lines[i].quantity.value(), cycles);
            constexpr auto kPack = static_cast<std::size_t>(catalogue::Step::Pack);
            line.bench.steps[kPack] = packed.steps[kPack];
        }
        work.total += line.bench.total();
        work.lines.push_back(std::move(line));
    }
    return work;
}

} // namespace sp::needs

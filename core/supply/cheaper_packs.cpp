// SPDX-License-Identifier: MIT
#include "core/supply/cheaper_packs.h"

#include "core/needs/material_need.h"

#include <algorithm>

namespace sp::supply {

namespace {

using units::Fraction;
using units::Money;

Money packsAt(Money each, std::int64_t packs) { return Money::fromExact(each.exact() * Fraction::of(packs)); }

/// Takes the best of what it is shown; of equal ones the first.
class CheaperPacks {
  public:
    explicit CheaperPacks(Money below)
        : m_below(below) {}

    /// At that price from so many packs on, where `packs` are needed.
    void show(const std::string& supplier, const std::string& pack, std::int64_t packs,
              const catalogue::PriceBreak& step) {
        const auto count = std::max(packs, step.from.value());
        const auto cost = packsAt(step.each, count);
        if (!(cost < m_below)) return;
        m_below = cost;
        m_found = {supplier, pack, count, cost};
    }

    std::optional<PacksOfOneSort> found() && { return std::move(m_found); }

  private:
    Money m_below;
    std::optional<PacksOfOneSort> m_found;
};

} // namespace

std::optional<PacksOfOneSort> cheaperPacks(const catalogue::PricedMaterial& material, const needs::PackedNeed& need,
                                           const PackOffers* offers) {
    const auto& origin = material.origin;
    if (origin.kind != catalogue::PriceOrigin::Kind::Pack) return std::nullopt;
    CheaperPacks best(costOf(need));
    for (const auto& step : material.breaks) best.show(origin.supplier, origin.pack, need.packs, step);
    if (!offers) return std::move(best).found();
    for (const auto& pack : offers->packs) {
        if (pack.material != material.material.id) continue;
        const auto supplier = std::ranges::find(offers->suppliers, pack.supplier, &catalogue::Supplier::id);
        if (supplier == offers->suppliers.end()) continue;
        const auto packs = needs::ceilDivide(need.need, pack.amount.value());
        for (const auto& step : pack.prices)
            if (!step.each.isZero() || material.material.meantAsNothing)
                best.show(supplier->name, pack.name, packs, step);
    }
    return std::move(best).found();
}

units::Money costOf(const needs::PackedNeed& need) { return packsAt(need.price.price, need.packs); }

} // namespace sp::supply

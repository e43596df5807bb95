// SPDX-License-Identifier: MIT
#include "core/needs/order_prices.h"

#include "core/needs/order_packing.h"
#include "core/units/fraction.h"

namespace sp::needs {

namespace {

using catalogue::OrderLine;
using catalogue::PricedMaterial;
using units::Fraction;

/// Adds up what is taken, material by material, in whole numbers: stones before their loss, sheets, pieces.
class Tally {
  public:
    Tally(layout::FitMemo& fits, PricedBy which)
        : m_fits(fits)
        , m_which(which) {}

    base::Done add(const OrderLine& line, const Requirements& takes, std::size_t number,
                   const std::vector<std::vector<SharedSet>>& sets) {
        const auto& found = takes.materials;
        for (const auto& stone : found.stones) things(stone.material, stone.need, takes.pieces);
        for (const auto& packing : found.packing)
            if (packing.need.kind != NeedKind::ForOrder) things(packing.material, packing.need, takes.pieces);
        if (found.base && !found.isOnBacking()) things(found.base, {}, takes.pieces);
        for (std::size_t i = 0; i < takes.places.size(); ++i) {
            const auto& place = takes.places[i];
            if (auto ok = sheets(found.tape, place.tape, line.places[i]); !ok) return ok;
            if (found.isOnBacking())
                if (auto ok = sheets(found.base, place.backing, line.places[i]); !ok) return ok;
            if (hasOwnSet(sets, number, i))
                if (auto ok = sheets(found.templates, place.templates, line.places[i]); !ok) return ok;
        }
        return {};
    }

    void addForOrder(const PricedMaterial* material, units::Count amount) {
        if (counts(material)) m_taken[material] += amount.value();
    }

    OrderPrices prices() const {
        OrderPrices prices;
        for (const auto& [material, taken] : m_taken) {
            if (taken == 0) continue;
            const auto loss = material->material.kind == catalogue::MaterialKind::Stone ? material->material.stone.loss
                                                                                        : units::Rate{};
            const auto need = Fraction::ratio(taken * units::kPpm, units::kPpm - loss.ppm()).ceiling();
            const auto packs = ceilDivide(need, material->price->per.value());
            prices.emplace(material->material.id, PackedNeed{need, packs, priceAt(*material, packs)});
        }
        return prices;
    }

  private:
    bool counts(const PricedMaterial* material) const {
        return material && (m_which == PricedBy::Anything || !material->breaks.empty());
    }

    void things(const PricedMaterial* material, const MaterialNeed& need, std::int64_t pieces) {
        if (counts(material)) m_taken[material] += units::Int128{need.perPiece.value()} * pieces;
    }

    base::Done sheets(const PricedMaterial* material, const SheetRequirement& takes,
                      const catalogue::Placement& place) {
        if (!counts(material) || takes.use.cut == 0) return {};
        auto perSheet = takes.use.perSheet;
        if (material->material.sheet.form == catalogue::SheetForm::Roll) {
            const auto fit = piecesPerSheet(material->material, place.width, place.height, m_fits);
            if (!fit) return base::fail(base::about(material->material.name, fit.error()));
            perSheet = *fit;
        }
        m_taken[material] += ceilDivide(takes.use.cut, perSheet);
        return {};
    }

    layout::FitMemo& m_fits;
    PricedBy m_which;
    std::unordered_map<const PricedMaterial*, units::Int128> m_taken;
};

} // namespace

units::UnitPrice priceAt(const PricedMaterial& material, std::int64_t packs) {
    auto price = *material.price;
    for (const auto& step : material.breaks)
        if (step.from.value() <= packs) price.price = step.each;
    return price;
}

base::Result<std::shared_ptr<const OrderPrices>> orderPrices(std::span<const OrderLine> lines,
                                                             std::span<const Requirements> takes,
                                                             const std::vector<std::vector<SharedSet>>& sets,
                                                             const catalogue::PriceBook& book, layout::FitMemo& fits,
                                                             PricedBy which) {
    Tally tally(fits, which);
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (auto ok = tally.add(lines[i], takes[i], i, sets); !ok) return base::fail(ok.error());
    for (const auto& packing : orderPackingOf(lines, book.shop.packing))
        tally.addForOrder(book.find(packing.material), packing.amount);
    auto prices = tally.prices();
    if (prices.empty()) return std::shared_ptr<const OrderPrices>();
    return std::shared_ptr<const OrderPrices>(std::make_shared<OrderPrices>(std::move(prices)));
}

} // namespace sp::needs

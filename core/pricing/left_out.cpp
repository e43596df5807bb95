// SPDX-License-Identifier: MIT
#include "core/pricing/left_out.h"

#include "core/catalogue/fields/tables.h"
#include "core/pricing/messages.h"
#include "core/units/text.h"

#include <algorithm>

namespace sp::pricing {

namespace {

using catalogue::fields::fieldOf;

bool hasTemplatesToCut(const catalogue::OrderLine& line) {
    return std::ranges::any_of(line.places, [](const auto& place) { return !place.templatesOnWall; });
}

class Finder {
  public:
    Finder(const catalogue::Order& order, const catalogue::PriceBook& book, const PricedOrder& priced)
        : m_order(order)
        , m_book(book)
        , m_priced(priced)
        , m_makes(std::ranges::any_of(order.lines, [](const auto& line) { return !line.isCharge(); }))
        , m_cuts(std::ranges::any_of(order.lines, hasTemplatesToCut)) {}

    std::vector<LeftOut> all() {
        if (m_makes) { // what is sold as it is takes no tape, work or machine
            chosen();
            rates();
            machines();
        }
        materials();
        return std::move(m_found);
    }

  private:
    void chosen() {
        const auto& shop = m_book.shop;
        if (shop.usualTape.isNone() && !shop.meantAsNothing.tape)
            add(base::say(Note::NoTape), fieldOf<&catalogue::Shop::usualTape>());
        if (m_cuts && shop.usualTemplate.isNone() && !shop.meantAsNothing.templates)
            add(base::say(Note::NoTemplate), fieldOf<&catalogue::Shop::usualTemplate>());
    }

    void rates() {
        const auto& rates = m_book.shop.rates;
        const auto& meant = m_book.shop.meantAsNothing;
        if (rates.labourPerHour.isZero() && !meant.labour)
            add(base::say(Note::NoLabour, nothing()), fieldOf<&catalogue::ShopRates::labourPerHour>());
        if (rates.overheadPerMonth.isZero() && !meant.overhead)
            add(base::say(Note::NoOverhead, nothing()), fieldOf<&catalogue::ShopRates::overheadPerMonth>());
        const bool isWorkPriced = !rates.labourPerHour.isZero() || !rates.overheadPerMonth.isZero();
        const bool hasTime =
            std::ranges::any_of(m_priced.lines, [](const auto& line) { return !line.cost.bench.total().isZero(); });
        if (isWorkPriced && !hasTime) add(base::say(Note::NoBenchTime), fieldOf<&catalogue::StepStandard::perPiece>());
    }

    void machines() {
        const auto& meant = m_book.shop.meantAsNothing;
        const auto& press = m_book.bench.press;
        const auto& cutter = m_book.bench.cutter;
        if (press.runningPerHour.isZero() && !meant.pressRunning)
            add(base::say(Note::NoPressRunning, nothing()), fieldOf<&catalogue::HeatPress::runningPerHour>());
        if (press.price == press.salvage && !meant.pressWear)
            add(base::say(Note::NoPressWear, nothing()), fieldOf<&catalogue::HeatPress::price>());
        if (m_cuts && cutter.price == cutter.salvage && !meant.cutterWear)
            add(base::say(Note::NoCutterWear, nothing()), fieldOf<&catalogue::Cutter::price>());
    }

    void materials() {
        for (const auto& line : m_order.lines) {
            for (const auto& place : line.places)
                for (const auto& stone : place.stones) material(stone.material);
            if (!line.customersGarment) material(line.baseMaterial);
        }
        if (m_makes) material(m_book.shop.usualTape);
        if (m_cuts) material(m_book.shop.usualTemplate);
        for (const auto& line : m_order.lines)
            for (const auto& use : catalogue::packingOf(line, m_book.shop.packing)) material(use.material);
    }

    /// Each once, whatever needs it.
    void material(const base::Id& id) {
        const auto* known = m_book.find(id);
        if (!known || !known->price || !known->price->price.isZero() || known->material.meantAsNothing) return;
        if (std::ranges::any_of(m_found, [&](const LeftOut& found) { return found.material == id; })) return;
        m_found.push_back({base::say(Note::CostsNothing, known->material.name, nothing()),
                           &fieldOf<&catalogue::PriceBreak::each>(), id});
    }

    void add(base::Message what, const catalogue::fields::Field& field) {
        m_found.push_back({std::move(what), &field, {}});
    }

    std::string nothing() const { return units::formatExact(units::Money{}, m_book.shop.currency); }

    const catalogue::Order& m_order;
    const catalogue::PriceBook& m_book;
    const PricedOrder& m_priced;
    bool m_makes; ///< some line is no charge
    bool m_cuts;  ///< some line has templates to be cut
    std::vector<LeftOut> m_found;
};

} // namespace

std::vector<LeftOut> leftOutOf(const catalogue::Order& order, const catalogue::PriceBook& book,
                               const PricedOrder& priced) {
    return Finder(order, book, priced).all();
}

} // namespace sp::pricing

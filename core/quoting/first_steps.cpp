// SPDX-License-Identifier: MIT
#include "core/quoting/first_steps.h"

#include <algorithm>

namespace sp::quoting {

namespace {

using catalogue::MaterialKind;
using catalogue::PriceBook;
using catalogue::PricedMaterial;

/// 0 counts where it is meant.
bool hasPrice(const PricedMaterial& priced) {
    return priced.price && (!priced.price->price.isZero() || priced.material.meantAsNothing);
}

/// Those of a kind that have a price, by name.
std::vector<const PricedMaterial*> pricedOf(MaterialKind kind, const PriceBook& book) {
    std::vector<const PricedMaterial*> found;
    for (const auto& entry : book.materials)
        if (entry.second.material.kind == kind && hasPrice(entry.second)) found.push_back(&entry.second);
    std::ranges::sort(found, [](const auto* a, const auto* b) {
        return std::tie(a->material.name, a->material.id) < std::tie(b->material.name, b->material.id);
    });
    return found;
}

base::Result<pricing::PricedOrder> priceWithTenMore(const catalogue::Order& order, PriceBook book,
                                                    layout::FitMemo& fits) {
    book.shop.rates.labourPerHour =
        book.shop.rates.labourPerHour + units::Money::fromMicros(10 * units::kMicrosPerUnit);
    return pricing::priceOrder(order, book, fits);
}

} // namespace

bool isSettled(FirstStep step, const FirstThings& things) {
    const auto& shop = things.book.shop;
    const auto& meant = shop.meantAsNothing;
    switch (step) {
    case FirstStep::Letterhead: return !shop.letterhead.name.empty();
    case FirstStep::MoneyAndTax: return !shop.rules.tax.rate.isZero() || meant.tax;
    case FirstStep::HoursWorth:
        return (!shop.rates.labourPerHour.isZero() || meant.labour) &&
               (!shop.rates.overheadPerMonth.isZero() || meant.overhead);
    case FirstStep::EveryLine:
        return (!shop.usualTape.isNone() || meant.tape) && (!shop.usualTemplate.isNone() || meant.templates);
    case FirstStep::Stones:
        return std::ranges::any_of(things.book.materials, [](const auto& entry) {
            return entry.second.material.kind == MaterialKind::Stone && hasPrice(entry.second);
        });
    case FirstStep::Design: return things.hasDesign;
    case FirstStep::Quote: return things.hasQuote;
    }
    return false;
}

base::Result<Trial> trialOf(const catalogue::Design& design, const PriceBook& book, units::Date today,
                            layout::FitMemo& fits) {
    Trial trial;
    trial.order.quotedOn = today;
    trial.order.lines = {catalogue::lineOf(design)};
    trial.order.lines.front().quantity = kTrialPieces;
    trial.order.lines.front().customersGarment = design.usualBase.isNone();
    auto priced = pricing::priceOrder(trial.order, book, fits);
    if (!priced) return base::fail(priced.error());
    auto cost = pricing::costSheetOf(trial.order, 0, book, fits);
    if (!cost) return base::fail(cost.error());
    const auto more = priceWithTenMore(trial.order, book, fits);
    if (!more) return base::fail(more.error());
    trial.leftOut = pricing::leftOutOf(trial.order, book, *priced);
    trial.perTenAnHour = more->lines.front().each - priced->lines.front().each;
    trial.priced = std::move(*priced);
    trial.cost = std::move(*cost);
    return trial;
}

std::optional<catalogue::Design> trialDesign(const PriceBook& book) {
    const auto stones = pricedOf(MaterialKind::Stone, book);
    if (stones.empty()) return std::nullopt;
    constexpr std::array kCounts{units::Count::of(214), units::Count::of(62)};
    catalogue::Design design;
    design.width = units::Length::fromInch64ths(224);
    design.height = design.width;
    for (std::size_t i = 0; i < std::min(stones.size(), kCounts.size()); ++i)
        design.stones.push_back({stones[i]->material.id, kCounts[i]});
    const auto backings = pricedOf(MaterialKind::Backing, book);
    if (!backings.empty()) design.usualBase = backings.front()->material.id;
    return design;
}

} // namespace sp::quoting

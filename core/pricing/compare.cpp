// SPDX-License-Identifier: MIT
#include "core/pricing/compare.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <utility>

namespace sp::pricing {

namespace {

using catalogue::PriceBook;

class Comparer {
  public:
    Comparer(const catalogue::Order& order, const PriceBook& now, layout::FitMemo& fits,
             const units::NumberStyle& style, PriceBook then, units::Money totalThen)
        : m_order(order)
        , m_now(now)
        , m_fits(fits)
        , m_style(style)
        , m_book(std::move(then))
        , m_total(totalThen) {
        // What is new to the shop is in reach when a usual material becomes another one.
        for (const auto& [id, material] : now.materials) m_book.materials.try_emplace(id, material);
    }

    base::Result<std::vector<PriceCause>> causes() {
        for (const auto& id : used())
            if (auto ok = material(id); !ok) return base::fail(ok.error());
        for (auto step : {&Comparer::usual, &Comparer::rates, &Comparer::bench, &Comparer::rules})
            if (auto ok = (this->*step)(); !ok) return base::fail(ok.error());
        return std::move(m_causes);
    }

  private:
    std::vector<base::Id> used() const {
        std::vector<base::Id> ids;
        const auto add = [&](const base::Id& id) {
            if (!id.isNone() && std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
        };
        for (const auto& line : m_order.lines) {
            for (const auto& stone : line.stones) add(stone.material);
            if (!line.customersGarment) add(line.onto);
        }
        for (const auto* shop : {&m_book.shop, &m_now.shop}) {
            add(shop->usualTape);
            add(shop->usualTemplate);
            for (const auto& id : shop->packing) add(id);
        }
        return ids;
    }

    std::string money(units::Money amount) const {
        auto text = units::formatExact(amount, m_now.shop.currency);
        if (const auto point = text.find('.'); point != std::string::npos && m_style.decimalMark < 128)
            text[point] = static_cast<char>(m_style.decimalMark);
        return text;
    }
    std::string price(const units::UnitPrice& price) const {
        if (price.per == units::Count::of(1)) return money(price.price);
        return fmt::format("{} / {}", money(price.price), units::formatCount(price.per, m_style));
    }
    std::string share(units::Rate rate) const { return units::formatRate(rate, m_style) + " %"; }

    /// Puts one cause in place through `put` and notes what it does to the total.
    base::Done swap(std::string what, std::string was, std::string now, const std::function<void(PriceBook&)>& put) {
        put(m_book);
        const auto priced = priceOrder(m_order, m_book, m_fits);
        if (!priced) return base::fail(priced.error());
        m_causes.push_back({std::move(what), std::move(was), std::move(now), priced->total - m_total});
        m_total = priced->total;
        return {};
    }

    /// The same for a part of the shop that is compared as a whole; `say` writes it.
    template<class Part, class Say>
    base::Done part(std::string what, Part& (*of)(PriceBook&), Say say) {
        auto wanted = m_now;
        const Part now = of(wanted);
        const Part was = of(m_book);
        if (was == now) return {};
        return swap(std::move(what), say(was), say(now), [&](PriceBook& book) { of(book) = now; });
    }
    template<class Part>
    base::Done part(std::string what, Part& (*of)(PriceBook&)) {
        return part(std::move(what), of, [](const Part&) { return std::string(); });
    }

    base::Done material(const base::Id& id) {
        const auto* now = m_now.find(id);
        auto& was = m_book.materials[id];
        if (!now) return {}; // taken out since: not needed with the book of today, or it would not have been priced
        if (was.price != now->price) {
            const auto say = [&](const auto& price) { return price ? this->price(*price) : std::string(); };
            auto ok = swap(now->material.name, say(was.price), say(now->price), [&](PriceBook& book) {
                book.materials[id].price = now->price;
                book.materials[id].priceFrom = now->priceFrom;
            });
            if (!ok) return ok;
        }
        return traits(id, *now);
    }

    base::Done traits(const base::Id& id, const catalogue::PricedMaterial& now) {
        const auto& was = m_book.materials[id].material;
        if (was.stone.loss != now.material.stone.loss) {
            auto ok = swap(now.material.name + ", what is lost", share(was.stone.loss), share(now.material.stone.loss),
                           [&](PriceBook& book) { book.materials[id].material.stone.loss = now.material.stone.loss; });
            if (!ok) return ok;
        }
        if (was.sheet != now.material.sheet) {
            auto ok = swap(now.material.name + ", its sheet", {}, {},
                           [&](PriceBook& book) { book.materials[id].material.sheet = now.material.sheet; });
            if (!ok) return ok;
        }
        if (was.sizes != now.material.sizes) {
            auto ok = swap(now.material.name + ", its sizes", {}, {},
                           [&](PriceBook& book) { book.materials[id].material.sizes = now.material.sizes; });
            if (!ok) return ok;
        }
        m_book.materials[id] = now; // what is left has no part in a price
        return {};
    }

    std::string nameOf(const base::Id& id) const {
        const auto* material = m_book.find(id);
        return material ? material->material.name : std::string();
    }

    base::Done usual() {
        const auto name = [this](const base::Id& id) { return nameOf(id); };
        if (auto ok = part<base::Id>(
                "Usual tape", [](PriceBook& book) -> base::Id& { return book.shop.usualTape; }, name);
            !ok)
            return ok;
        if (auto ok = part<base::Id>(
                "Usual template sheet", [](PriceBook& book) -> base::Id& { return book.shop.usualTemplate; }, name);
            !ok)
            return ok;
        return part<std::vector<base::Id>>("Packing",
                                           [](PriceBook& book) -> std::vector<base::Id>& { return book.shop.packing; });
    }

    base::Done rates() {
        const auto amount = [this](units::Money value) { return money(value); };
        const auto percent = [this](units::Rate value) { return share(value); };
        if (auto ok = part<units::Money>(
                "Labour an hour", [](PriceBook& b) -> units::Money& { return b.shop.rates.labourPerHour; }, amount);
            !ok)
            return ok;
        const auto hours = [this](units::Duration value) { return units::formatDuration(value, m_style); };
        if (auto ok = part<units::Duration>(
                "Bench hours a month", [](PriceBook& b) -> units::Duration& { return b.shop.rates.productivePerMonth; },
                hours);
            !ok)
            return ok;
        if (auto ok = part<units::Money>(
                "Overhead a month", [](PriceBook& b) -> units::Money& { return b.shop.rates.overheadPerMonth; },
                amount);
            !ok)
            return ok;
        if (auto ok = part<units::Rate>(
                "Spoilage", [](PriceBook& b) -> units::Rate& { return b.shop.rates.spoilage; }, percent);
            !ok)
            return ok;
        return part<units::Money>(
            "Allowance for a customer's garment",
            [](PriceBook& b) -> units::Money& { return b.shop.rates.garmentAllowance; }, amount);
    }

    base::Done bench() {
        using Steps = decltype(catalogue::BenchStandards::steps);
        if (auto ok = part<Steps>("Bench times", [](PriceBook& b) -> Steps& { return b.bench.steps; }); !ok) return ok;
        if (auto ok = part<catalogue::HeatPress>("Heat press",
                                                 [](PriceBook& b) -> catalogue::HeatPress& { return b.bench.press; });
            !ok)
            return ok;
        if (auto ok =
                part<catalogue::Cutter>("Cutter", [](PriceBook& b) -> catalogue::Cutter& { return b.bench.cutter; });
            !ok)
            return ok;
        return part<catalogue::CardFee>(
            "Card fee", [](PriceBook& b) -> catalogue::CardFee& { return b.shop.rules.cardFee; },
            [this](const catalogue::CardFee& fee) { return fee.charged ? share(fee.rate) : std::string("none"); });
    }

    base::Done rules() {
        using Ladder = std::vector<catalogue::MarkUpStep>;
        using Rush = std::vector<catalogue::RushStep>;
        if (auto ok = part<Ladder>("Mark-up ladder", [](PriceBook& b) -> Ladder& { return b.shop.rules.ladder; }); !ok)
            return ok;
        if (auto ok = part<catalogue::Rounding>(
                "Rounding of prices", [](PriceBook& b) -> catalogue::Rounding& { return b.shop.rules.rounding; });
            !ok)
            return ok;
        if (auto ok = part<catalogue::SetUpCharge>(
                "Charge for set-up", [](PriceBook& b) -> catalogue::SetUpCharge& { return b.shop.rules.setUp; });
            !ok)
            return ok;
        if (auto ok = part<Rush>("Rush surcharges", [](PriceBook& b) -> Rush& { return b.shop.rules.rush; }); !ok)
            return ok;
        if (auto ok = part<units::Money>(
                "Smallest order", [](PriceBook& b) -> units::Money& { return b.shop.rules.minimumOrder; },
                [this](units::Money value) { return money(value); });
            !ok)
            return ok;
        if (auto ok = part<catalogue::TaxRule>(
                "Tax", [](PriceBook& b) -> catalogue::TaxRule& { return b.shop.rules.tax; },
                [this](const catalogue::TaxRule& tax) { return share(tax.rate); });
            !ok)
            return ok;
        // Currency, deposit and letterhead make no price; the certificate decides on tax.
        if (m_order.asksExemption && certificateOf(m_book) != certificateOf(m_now))
            if (auto ok =
                    swap("Exemption certificate", {}, {}, [&](PriceBook& book) { book.customer = m_now.customer; });
                !ok)
                return ok;
        return {};
    }

    static std::optional<catalogue::Certificate> certificateOf(const PriceBook& book) {
        return book.customer ? book.customer->certificate : std::nullopt;
    }

    const catalogue::Order& m_order;
    const PriceBook& m_now;
    layout::FitMemo& m_fits;
    const units::NumberStyle& m_style;
    PriceBook m_book; ///< `then`, becoming `now` cause by cause
    units::Money m_total;
    std::vector<PriceCause> m_causes;
};

} // namespace

base::Result<PriceComparison> comparePrices(const catalogue::Order& order, const PriceBook& then, const PriceBook& now,
                                            layout::FitMemo& fits, const units::NumberStyle& style) {
    const auto before = priceOrder(order, then, fits);
    if (!before) return base::fail(before.error());
    const auto after = priceOrder(order, now, fits);
    if (!after) return base::fail(after.error());
    PriceComparison out;
    out.totalThen = before->total;
    out.totalNow = after->total;
    for (std::size_t i = 0; i < order.lines.size(); ++i)
        out.lines.push_back({order.lines[i].title, order.lines[i].quantity, before->lines[i].each, after->lines[i].each,
                             before->lines[i].charged, after->lines[i].charged});
    auto causes = Comparer(order, now, fits, style, then, before->total).causes();
    if (!causes) return base::fail(causes.error());
    out.causes = std::move(*causes);
    return out;
}

} // namespace sp::pricing

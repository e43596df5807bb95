// SPDX-License-Identifier: MIT
#include "core/pricing/compare.h"

#include "core/catalogue/fields/tables.h"
#include "core/pricing/messages.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace sp::pricing {

namespace {

using catalogue::PriceBook;
namespace fields = catalogue::fields;
using fields::Sort;

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
        // Materials that only the newer book has must be known before a usual material changes to one of them.
        for (const auto& [id, material] : now.materials) m_book.materials.try_emplace(id, material);
    }

    /// All causes, in the order given in the header; what then still differs from `total` is one more.
    std::vector<PriceCause> causesOf(units::Money total) {
        for (const auto& id : used()) material(id);
        sets();
        auto& shop = m_book.shop;
        compareFields(fields::objectOf<catalogue::Shop>(), &shop, &m_now.shop,
                      &fields::fieldOf<&catalogue::Shop::rules>());
        compareFields(fields::objectOf<catalogue::BenchStandards>(), &m_book.bench, &m_now.bench);
        // A deposit is in the price by the card fee of its payment alone.
        const bool chargesCards = shop.rules.cardFee.charged || m_now.shop.rules.cardFee.charged;
        compareFields(fields::objectOf<catalogue::PriceRules>(), &shop.rules, &m_now.shop.rules,
                      chargesCards ? nullptr : &fields::fieldOf<&catalogue::PriceRules::depositRate>());
        certificate();
        if (m_total != total) m_causes.push_back({base::say(Note::ReckonedOtherwise), {}, {}, total - m_total});
        return std::move(m_causes);
    }

  private:
    std::vector<base::Id> used() const {
        std::vector<base::Id> ids;
        const auto add = [&](const base::Id& id) {
            if (!id.isNone() && std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
        };
        for (const auto& line : m_order.lines) {
            for (const auto& place : line.places)
                for (const auto& stone : place.stones) add(stone.material);
            if (!line.customersGarment) add(line.baseMaterial);
            if (line.packing)
                for (const auto& use : *line.packing) add(use.material);
        }
        for (const auto* shop : {&m_book.shop, &m_now.shop}) {
            add(shop->usualTape);
            add(shop->usualTemplate);
            for (const auto& use : shop->packing) add(use.material);
        }
        return ids;
    }

    std::string money(units::Money amount) const { return exactText(amount, m_now.shop.currency, m_style); }
    std::string price(const units::UnitPrice& price) const {
        if (price.per == units::Count::of(1)) return money(price.price);
        return fmt::format("{} / {}", money(price.price), units::formatCount(price.per, m_style));
    }
    std::string share(units::Rate rate) const { return units::formatRate(rate, m_style) + " %"; }

    /// "7.25 %", "7.25 %, 3 %".
    std::string ratesOf(const catalogue::TaxRule& rule) const {
        auto text = share(rule.rate);
        for (const auto& other : rule.others) text += ", " + share(other.rate);
        return text;
    }

    /// Notes a cause that has been put in place, and what it does to the total. Where the order cannot be priced before
    /// the next cause is in place too (a blank has become a backing and has its sheet only then), the next one takes
    /// the effect of both.
    void note(base::Message what, base::Value was, base::Value now) {
        const auto priced = priceOrder(m_order, m_book, m_fits);
        const auto total = priced ? priced->total : m_total;
        m_causes.push_back({std::move(what), std::move(was), std::move(now), total - m_total});
        m_total = total;
    }

    /// Whether two values differ in a field that affects prices.
    static bool differs(const fields::Field& field, const void* was, const void* now) {
        if (!field.noPrice.empty() || field.type->equal(was, now)) return false;
        if (field.type->sort != Sort::Object) return true;
        const auto& inner = field.type->object().fields;
        return std::any_of(inner.begin(), inner.end(),
                           [&](const auto& part) { return differs(part, part.in(was), part.in(now)); });
    }

    /// Sets every field of `was` that affects prices to its value in `now`, one cause after another. `of` is the
    /// material it belongs to, or empty.
    void compareFields(const fields::Object& object, void* was, const void* now, const fields::Field* leftOut = nullptr,
                       const std::string& of = {}) {
        for (const auto& field : object.fields) {
            void* old = field.of(was);
            const void* present = field.in(now);
            if (&field == leftOut || !differs(field, old, present)) continue;
            if (field.type->sort == Sort::Object && !field.isOneCause) {
                compareFields(field.type->object(), old, present, nullptr, of);
                continue;
            }
            const auto before = say(field, old);
            field.type->assign(old, present);
            note(headingOf(field, of), before, say(field, present));
        }
    }

    /// "Labour an hour", "Jet, what is lost". The price of a material is called as the material is.
    static base::Message headingOf(const fields::Field& field, const std::string& of) {
        if (&field == &fields::fieldOf<&catalogue::PricedMaterial::price>()) return base::say(Note::PriceOf, of);
        const fields::Cause cause{field.words};
        return of.empty() ? base::say(cause) : base::say(Note::PartOf, of, cause);
    }

    base::Value say(const fields::Field& field, const void* value) const {
        if (&field == &fields::fieldOf<&catalogue::PriceRules::cardFee>() &&
            !static_cast<const catalogue::CardFee*>(value)->charged)
            return base::asValue(Note::NoCardFee);
        return base::asValue(figure(field, value));
    }

    /// A value as a figure; empty where no figure says it.
    std::string figure(const fields::Field& field, const void* value) const {
        if (&field == &fields::fieldOf<&catalogue::PriceRules::tax>())
            return ratesOf(*static_cast<const catalogue::TaxRule*>(value));
        if (&field == &fields::fieldOf<&catalogue::PriceRules::cardFee>())
            return share(static_cast<const catalogue::CardFee*>(value)->rate);
        if (&field == &fields::fieldOf<&catalogue::PricedMaterial::price>()) {
            const auto& known = *static_cast<const std::optional<units::UnitPrice>*>(value);
            return known ? price(*known) : std::string();
        }
        if (&field == &fields::fieldOf<&catalogue::DesignSet::cost>()) {
            const auto& cost = *static_cast<const std::optional<catalogue::SetCost>*>(value);
            return cost ? money(cost->total()) : std::string();
        }
        switch (field.type->sort) {
        case Sort::Money: return money(*static_cast<const units::Money*>(value));
        case Sort::Rate: return share(*static_cast<const units::Rate*>(value));
        case Sort::Duration: return units::formatDuration(*static_cast<const units::Duration*>(value), m_style);
        case Sort::Count: return units::formatCount(*static_cast<const units::Count*>(value), m_style);
        case Sort::Currency: return static_cast<const units::Currency*>(value)->code();
        case Sort::Id: return nameOf(*static_cast<const base::Id*>(value));
        case Sort::YesNo:
        case Sort::Whole:
        case Sort::Length:
        case Sort::Word:
        case Sort::Text:
        case Sort::Date:
        case Sort::Temperature:
        case Sort::Maybe:
        case Sort::List:
        case Sort::Steps:
        case Sort::Object: return {};
        }
        return {};
    }

    void material(const base::Id& id) {
        const auto* now = m_now.find(id);
        if (!now) return; // removed since: the order does not need it, or it could not have been priced
        auto& was = m_book.materials[id];
        compareFields(fields::objectOf<catalogue::PricedMaterial>(), &was, now, nullptr, now->material.name);
        was = *now; // the remaining differences do not affect prices
    }

    /// How far the sets of the order's designs are paid off.
    void sets() {
        std::vector<base::Id> done;
        for (const auto& line : m_order.lines)
            for (const auto& place : line.places) {
                if (!place.plannedPieces || place.design.isNone() ||
                    std::ranges::find(done, place.design) != done.end())
                    continue;
                done.push_back(place.design);
                const auto known = m_now.sets.find(place.design);
                catalogue::DesignSet now{place.design, {}, {}};
                if (known != m_now.sets.end()) now = known->second;
                auto& was =
                    m_book.sets.try_emplace(place.design, catalogue::DesignSet{place.design, {}, {}}).first->second;
                compareFields(fields::objectOf<catalogue::DesignSet>(), &was, &now, nullptr,
                              place.title.empty() ? line.title : place.title);
            }
    }

    std::string nameOf(const base::Id& id) const {
        const auto* material = m_book.find(id);
        return material ? material->material.name : std::string();
    }

    /// The customer's certificate decides on tax if the order asks for exemption.
    void certificate() {
        const auto of = [this](const PriceBook& book) {
            return book.customer ? catalogue::certificateOn(*book.customer, m_order.quotedOn)
                                 : std::optional<catalogue::Certificate>();
        };
        if (!m_order.asksExemption || of(m_book) == of(m_now)) return;
        m_book.customer = m_now.customer;
        note(base::say(Note::CertificateChanged), {}, {});
    }

    const catalogue::Order& m_order;
    const PriceBook& m_now;
    layout::FitMemo& m_fits;
    const units::NumberStyle& m_style;
    PriceBook m_book; ///< starts as `then` and becomes `now` cause by cause
    units::Money m_total;
    std::vector<PriceCause> m_causes;
};

} // namespace

std::string exactText(units::Money amount, const units::Currency& currency, const units::NumberStyle& style) {
    auto text = units::formatExact(amount, currency);
    if (const auto point = text.find('.'); point != std::string::npos && style.decimalMark < 128)
        text[point] = static_cast<char>(style.decimalMark);
    return text;
}

base::Result<PriceComparison> comparePrices(const catalogue::Order& order, const PriceBook& then, const PriceBook& now,
                                            layout::FitMemo& fits, const units::NumberStyle& style,
                                            std::optional<units::Money> given) {
    const auto before = priceOrder(order, then, fits);
    if (!before) return base::fail(before.error());
    const auto after = priceOrder(order, now, fits);
    if (!after) return base::fail(after.error());
    PriceComparison out;
    out.totalThen = given.value_or(before->total);
    out.totalNow = after->total;
    for (std::size_t i = 0; i < order.lines.size(); ++i)
        out.lines.push_back({order.lines[i].title, order.lines[i].quantity, before->lines[i].each, after->lines[i].each,
                             before->lines[i].charged, after->lines[i].charged});
    Comparer comparer(order, now, fits, style, then, before->total);
    out.causes = comparer.causesOf(after->total + (before->total - out.totalThen));
    return out;
}

} // namespace sp::pricing

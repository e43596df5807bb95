// SPDX-License-Identifier: MIT
#include "core/pricing/order_difference.h"

#include "core/catalogue/fields/tables.h"
#include "core/pricing/compare.h"
#include "core/pricing/messages.h"
#include "core/units/values.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace sp::pricing {

using catalogue::Order;
using catalogue::OrderLine;
using catalogue::Placement;
using units::Money;
namespace fields = catalogue::fields;

OrderAmounts amountsOf(const PricedOrder& priced) {
    OrderAmounts amounts{.lines = {},
                         .rush = priced.rush,
                         .discount = priced.discount,
                         .minimumOrderCharge = priced.minimumOrderCharge,
                         .tax = priced.taxIncluded ? Money{} : priced.tax,
                         .total = priced.total};
    for (const auto& line : priced.lines) amounts.lines.push_back({line.each, line.charged});
    return amounts;
}

Money LineDifference::difference() const { return (is ? is->charged : Money{}) - (was ? was->charged : Money{}); }

bool OrderDifference::isNothing() const {
    return difference().isZero() && parts.empty() && amounts.empty() &&
           std::ranges::all_of(lines, [](const auto& line) { return line.fate == LineFate::Same; });
}

namespace {

using Matched = std::vector<std::optional<std::size_t>>;

/// Pairs lines of both orders that are still alone, in the order they stand in, where `keyOf` says the same of both and
/// `isOne` holds. A line without a key stays alone.
template<class KeyOf, class IsOne>
void pairLines(const std::vector<OrderLine>& was, const std::vector<OrderLine>& is, Matched& matched,
               std::vector<bool>& taken, const KeyOf& keyOf, const IsOne& isOne) {
    std::map<std::string, std::vector<std::size_t>> waiting;
    for (std::size_t i = 0; i < was.size(); ++i) {
        if (taken[i]) continue;
        if (auto key = keyOf(was[i]); !key.empty()) waiting[std::move(key)].push_back(i);
    }
    for (std::size_t i = 0; i < is.size(); ++i) {
        if (matched[i]) continue;
        const auto alike = waiting.find(keyOf(is[i]));
        if (alike == waiting.end()) continue;
        auto& places = alike->second;
        const auto found = std::ranges::find_if(places, [&](std::size_t place) { return isOne(was[place], is[i]); });
        if (found == places.end()) continue;
        matched[i] = *found;
        taken[*found] = true;
        places.erase(found);
    }
}

std::string titleKey(const OrderLine& line) { return "t" + line.title; }
std::string designKey(const OrderLine& line) {
    return line.isCharge() || line.first().design.isNone() ? std::string() : line.first().design.text();
}

bool isSame(const OrderLine& a, const OrderLine& b) {
    OrderLine one = a;
    one.id = b.id; // who made it is no difference
    return one == b;
}
bool isRenamed(const OrderLine& a, const OrderLine& b) {
    OrderLine one = a;
    one.title = b.title;
    return isSame(one, b);
}

/// Tells what of a line or an order is not as it was, in the words of the table of fields.
class Teller {
  public:
    Teller(const OrderSide& was, const OrderSide& is, const units::NumberStyle& style)
        : m_was(was)
        , m_is(is)
        , m_style(style) {}

    std::vector<ChangedPart> line(const OrderLine& was, const OrderLine& is) {
        m_parts.clear();
        tell(was, is);
        return std::move(m_parts);
    }

    /// But for the day it was quoted on, which a revision always has anew, and what its lines say.
    std::vector<ChangedPart> order() {
        m_parts.clear();
        const auto& was = m_was.order;
        const auto& is = m_is.order;
        if (was.customer != is.customer) add(term<&Order::customer>(), nameOf(m_was.book), nameOf(m_is.book));
        if (was.wantedBy != is.wantedBy) add(term<&Order::wantedBy>(), dayOf(was.wantedBy), dayOf(is.wantedBy));
        if (was.discount != is.discount)
            add(term<&Order::discount>(), discountOf(was.discount), discountOf(is.discount));
        if (was.asksExemption != is.asksExemption) add(term<&Order::asksExemption>());
        if (was.atNoCharge != is.atNoCharge) add(term<&Order::atNoCharge>());
        if (was.title != is.title) add(term<&Order::title>(), base::asValue(was.title), base::asValue(is.title));
        if (was.others != is.others) add(term<&Order::others>());
        return std::move(m_parts);
    }

  private:
    template<auto Member>
    static base::Message term() {
        return base::say(fields::fieldOf<Member>().words);
    }
    void add(base::Message what, base::Value was = {}, base::Value is = {}) {
        m_parts.push_back({std::move(what), std::move(was), std::move(is)});
    }

    void tell(const OrderLine& was, const OrderLine& is) {
        if (was.title != is.title) add(term<&OrderLine::title>(), base::asValue(was.title), base::asValue(is.title));
        if (was.quantity != is.quantity)
            add(term<&OrderLine::quantity>(), units::asValue(was.quantity), units::asValue(is.quantity));
        if (was.baseMaterial != is.baseMaterial || was.customersGarment != is.customersGarment)
            add(term<&OrderLine::baseMaterial>(), baseOf(was, m_was.book), baseOf(is, m_is.book));
        if (was.sizes != is.sizes)
            add(term<&OrderLine::sizes>(), base::asValue(sizesOf(was)), base::asValue(sizesOf(is)));
        places(was, is);
        if (was.overrideEach != is.overrideEach)
            add(term<&OrderLine::overrideEach>(), typedOf(was.overrideEach, m_was.book),
                typedOf(is.overrideEach, m_is.book));
        if (was.packing != is.packing) add(term<&OrderLine::packing>());
        if (was.taxable != is.taxable) add(term<&OrderLine::taxable>());
        if (was.atNoCharge != is.atNoCharge) add(term<&OrderLine::atNoCharge>());
        if (was.taxRate != is.taxRate) add(term<&OrderLine::taxRate>(), rateOf(was, m_was.book), rateOf(is, m_is.book));
    }

    void places(const OrderLine& was, const OrderLine& is) {
        if (was.places == is.places) return;
        const auto known = m_parts.size();
        if (const auto before = designsOf(was), now = designsOf(is);
            before != now || was.places.size() != is.places.size())
            add(was.places.size() == is.places.size() ? term<&Placement::design>() : term<&OrderLine::places>(),
                base::asValue(before), base::asValue(now));
        if (was.places.size() != is.places.size()) return;
        const auto differs = [&](auto member) {
            return !std::ranges::equal(was.places, is.places, {}, member, member);
        };
        if (differs(&Placement::width)) add(term<&Placement::width>());
        if (differs(&Placement::height)) add(term<&Placement::height>());
        if (differs(&Placement::stones)) add(term<&Placement::stones>(), stonesOf(was), stonesOf(is));
        if (differs(&Placement::templatesOnWall)) add(term<&Placement::templatesOnWall>());
        if (differs(&Placement::plannedPieces)) add(term<&Placement::plannedPieces>());
        if (differs(&Placement::artTime)) add(term<&Placement::artTime>());
        if (m_parts.size() == known) add(term<&Placement::design>()); // another entry of the same name
    }

    /// "Heron, Front + Lantern, Sleeve".
    static std::string designsOf(const OrderLine& line) {
        std::string names;
        for (const auto& place : line.places) {
            const auto& title = place.title.empty() ? line.title : place.title;
            names += (names.empty() ? "" : " + ") + title;
            if (!place.place.empty()) names += ", " + place.place;
        }
        return names;
    }
    static base::Value stonesOf(const OrderLine& line) {
        units::Count stones;
        for (const auto& place : line.places)
            for (const auto& stone : place.stones) stones += stone.count;
        return units::asValue(stones);
    }
    std::string sizesOf(const OrderLine& line) const {
        std::string sizes;
        for (const auto& size : line.sizes)
            sizes += (sizes.empty() ? "" : ", ") +
                     fmt::format("{} × {}", units::formatCount(size.count, m_style), size.size);
        return sizes;
    }
    /// By name; a line that names none has the usual one.
    static base::Value rateOf(const OrderLine& line, const catalogue::PriceBook& book) {
        return base::asValue(line.taxRate.empty() ? book.shop.rules.tax.name : line.taxRate);
    }

    static base::Value baseOf(const OrderLine& line, const catalogue::PriceBook& book) {
        if (line.customersGarment) return base::asValue(Note::BroughtByCustomer);
        const auto* material = book.find(line.baseMaterial);
        return material ? base::asValue(material->material.name) : base::Value();
    }
    base::Value typedOf(const std::optional<Money>& typed, const catalogue::PriceBook& book) const {
        return typed ? base::asValue(exactText(*typed, book.shop.currency, m_style)) : base::Value();
    }
    static base::Value nameOf(const catalogue::PriceBook& book) {
        return book.customer ? base::asValue(book.customer->name) : base::Value();
    }
    static base::Value dayOf(const std::optional<units::Date>& day) {
        return day ? units::asValue(*day) : base::Value();
    }
    base::Value discountOf(const catalogue::Discount& discount) const {
        if (discount.share) return base::asValue(units::formatRate(*discount.share, m_style) + " %");
        return typedOf(discount.amount, m_is.book);
    }

    const OrderSide& m_was;
    const OrderSide& m_is;
    const units::NumberStyle& m_style;
    std::vector<ChangedPart> m_parts;
};

LineDifference::Side sideOf(const OrderSide& side, std::size_t i) {
    const auto& line = side.order.lines[i];
    LineDifference::Side out{line.title, line.quantity, {}, {}};
    if (i < side.amounts.lines.size()) {
        out.each = side.amounts.lines[i].each;
        out.charged = side.amounts.lines[i].charged;
    }
    return out;
}

void addLines(OrderDifference& out, const OrderSide& was, const OrderSide& is, Teller& teller) {
    const auto matched = matchedLines(was.order.lines, is.order.lines);
    std::vector<bool> stays(was.order.lines.size(), false);
    for (const auto& line : matched)
        if (line) stays[*line] = true;
    std::size_t next = 0; // of the older order, which is not yet listed
    const auto listRemoved = [&](std::size_t before) {
        for (; next < before; ++next)
            if (!stays[next]) out.lines.push_back({LineFate::Removed, sideOf(was, next), std::nullopt, {}});
    };
    for (std::size_t i = 0; i < is.order.lines.size(); ++i) {
        if (!matched[i]) {
            out.lines.push_back({LineFate::Added, std::nullopt, sideOf(is, i), {}});
            continue;
        }
        if (*matched[i] >= next) {
            listRemoved(*matched[i]);
            next = *matched[i] + 1;
        }
        LineDifference line{LineFate::Same, sideOf(was, *matched[i]), sideOf(is, i),
                            teller.line(was.order.lines[*matched[i]], is.order.lines[i])};
        if (!line.parts.empty() || line.was != line.is) line.fate = LineFate::Changed;
        out.lines.push_back(std::move(line));
    }
    listRemoved(was.order.lines.size());
}

} // namespace

Matched matchedLines(const std::vector<OrderLine>& was, const std::vector<OrderLine>& is) {
    Matched matched(is.size());
    std::vector<bool> taken(was.size(), false);
    // What stands where it stood needs no search: nearly all of a long order.
    for (std::size_t i = 0; i < std::min(was.size(), is.size()) && isSame(was[i], is[i]); ++i) {
        matched[i] = i;
        taken[i] = true;
    }
    const auto any = [](const OrderLine&, const OrderLine&) { return true; };
    pairLines(was, is, matched, taken, titleKey, isSame);
    pairLines(was, is, matched, taken, titleKey, any);
    pairLines(was, is, matched, taken, designKey, any);
    pairLines(
        was, is, matched, taken, [](const OrderLine&) { return std::string("any"); }, isRenamed);
    return matched;
}

OrderDifference differenceOf(const OrderSide& was, const OrderSide& is, const units::NumberStyle& style) {
    OrderDifference out;
    out.totalWas = was.amounts.total;
    out.totalIs = is.amounts.total;
    Teller teller(was, is, style);
    out.parts = teller.order();
    addLines(out, was, is, teller);
    const auto add = [&](Note what, Money before, Money now) {
        if (before != now) out.amounts.push_back({base::say(what), before, now});
    };
    const auto& before = was.amounts;
    const auto& now = is.amounts;
    add(Note::RushOfOrder, before.rush, now.rush);
    add(Note::DiscountOfOrder, -before.discount, -now.discount);
    add(Note::SmallestOrder, before.minimumOrderCharge, now.minimumOrderCharge);
    add(Note::TaxOfOrder, before.tax, now.tax);
    const auto restOf = [](const OrderAmounts& amounts) {
        Money rest = amounts.total - amounts.rush + amounts.discount - amounts.minimumOrderCharge - amounts.tax;
        for (const auto& line : amounts.lines) rest = rest - line.charged;
        return rest;
    };
    add(Note::ReckonedOtherwise, restOf(before), restOf(now));
    return out;
}

} // namespace sp::pricing

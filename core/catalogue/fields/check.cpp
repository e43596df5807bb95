// SPDX-License-Identifier: MIT
#include "core/catalogue/fields/check.h"

#include "core/catalogue/stone_size.h"
#include "core/units/characters.h"

#include <algorithm>
#include <set>

namespace sp::catalogue::fields {

namespace {

using base::Done;

/// A whole number as a value of the sentence that refuses it.
base::Value shown(Sort sort, std::int64_t whole) {
    using Unit = base::Quantity::Unit;
    if (sort == Sort::Money) return {base::Quantity{Unit::Micros, whole}};
    if (sort == Sort::Length) return {base::Quantity{Unit::Nanometres, whole}};
    if (sort == Sort::Rate) return {base::Quantity{Unit::Ppm, whole}};
    if (sort == Sort::Duration) return {base::Quantity{Unit::Milliseconds, whole}};
    return base::asValue(whole);
}

std::string nameOf(const Object& object, const void* value) {
    for (const auto& field : object.fields)
        if (field.key == "name") return *static_cast<const std::string*>(field.in(value));
    return {};
}

/// Goes through the fields of a value and stops at the first that holds what it may not.
class RangeCheck {
  public:
    /// `thing` is how the person knows it: a name, or empty.
    explicit RangeCheck(std::string thing)
        : m_thing(std::move(thing)) {}

    Done object(const Object& object, const void* owner) const {
        for (const auto& field : object.fields)
            if (auto good = value(field, *field.type, field.in(owner)); !good) return good;
        return {};
    }

  private:
    template<class... Values>
    Done wrong(const Field& field, Fault fault, const Values&... values) const {
        return wrongField(fault, m_thing, field.words, values...);
    }

    Done value(const Field& field, const Type& type, const void* value) const {
        switch (type.sort) {
        case Sort::YesNo:
        case Sort::Currency: return {};
        case Sort::Whole:
        case Sort::Money:
        case Sort::Rate:
        case Sort::Length:
        case Sort::Duration:
        case Sort::Count: return whole(field, type, value);
        case Sort::Word:
            if (type.whole(value) >= 0 && type.whole(value) < static_cast<std::int64_t>(type.names.size())) return {};
            return wrong(field, Fault::NoneOfTheList);
        case Sort::Text: return text(field, *static_cast<const std::string*>(value));
        case Sort::Id:
            if (field.bounds.key == Key::MayBeNone || !static_cast<const base::Id*>(value)->isNone()) return {};
            return wrong(field, Fault::NotChosen);
        case Sort::Date: return day(field, *static_cast<const units::Date*>(value));
        case Sort::Temperature: return temperature(field, *static_cast<const units::Temperature*>(value));
        case Sort::List:
            if (type.size(value) > field.bounds.length.longest)
                return wrong(field, Fault::ListTooLong, field.bounds.length.longest);
            return items(field, type, value);
        case Sort::Maybe:
        case Sort::Steps: return items(field, type, value);
        case Sort::Object: return object(type.object(), value);
        }
        return {};
    }

    Done items(const Field& field, const Type& type, const void* list) const {
        for (std::size_t i = 0; i < type.size(list); ++i)
            if (auto good = value(field, *type.inner, type.at(list, i)); !good) return good;
        return {};
    }

    Done whole(const Field& field, const Type& type, const void* value) const {
        const auto& range = field.bounds.range;
        if (range.holds(type.whole(value))) return {};
        return wrong(field, Fault::FieldOutOfRange, shown(type.sort, range.lowest), shown(type.sort, range.highest));
    }

    Done text(const Field& field, const std::string& value) const {
        const auto& bounds = field.bounds.text;
        if (!units::isText(value)) return wrong(field, Fault::NotText);
        if (value.size() < bounds.shortest) return wrong(field, Fault::NotTyped);
        if (value.size() > bounds.longest) return wrong(field, Fault::FieldTooLong, bounds.longest);
        const bool hasControls = std::any_of(value.begin(), value.end(), [&](char c) {
            const auto byte = static_cast<unsigned char>(c);
            return (byte < 0x20 && !(bounds.hasLines && (c == '\n' || c == '\t'))) || byte == 0x7F;
        });
        if (hasControls) return wrong(field, Fault::HoldsControls);
        if (bounds.shortest == 1 && value.find_first_not_of(' ') == std::string::npos)
            return wrong(field, Fault::NotTyped);
        return {};
    }

    Done day(const Field& field, units::Date value) const {
        const auto first = std::chrono::sys_days(std::chrono::year(1) / 1 / 1);
        const auto last = std::chrono::sys_days(std::chrono::year(9999) / 12 / 31);
        if (value.days() >= first && value.days() <= last) return {};
        return wrong(field, Fault::DayOutOfRange);
    }

    Done temperature(const Field& field, units::Temperature value) const {
        // -50 to 500 °C is what a person can type, see parseTemperature.
        if (value >= units::Temperature::fromMillicelsius(-50'000) &&
            value <= units::Temperature::fromMillicelsius(500'000))
            return {};
        return wrong(field, Fault::TemperatureOutOfRange);
    }

    std::string m_thing;
};

/// A list by quantity: ascending, the first from 1.
template<class Row>
Done checkFromOne(std::string_view thing, Term words, const std::vector<Row>& rows) {
    if (rows.empty() || rows.front().from != units::Count::of(1)) return wrongField(Fault::NotFromOne, thing, words);
    for (std::size_t i = 1; i < rows.size(); ++i)
        if (rows[i].from <= rows[i - 1].from) return wrongField(Fault::NotAscending, thing, words);
    return {};
}

} // namespace

Done checkRanges(const Object& object, const void* value) {
    return RangeCheck(nameOf(object, value)).object(object, value);
}

base::Message fieldNamed(std::string_view thing, Term words) {
    return thing.empty() ? base::say(Note::TheField, words) : base::say(Note::TheFieldOf, words, thing);
}

Done checkTogether(const Material& material) {
    if (material.kind == MaterialKind::Stone && !stoneSizeNamed(material.stone.size))
        return wrongField(Fault::UnknownStoneSize, material.name, Term::StoneSize);
    std::set<std::string_view> names;
    for (const auto& size : material.sizes)
        if (!names.insert(size.name).second) return wrongField(Fault::SizeTwice, material.name, Term::Sizes);
    return {};
}

Done checkTogether(const PricedMaterial& priced) {
    units::Count least = units::Count::of(2);
    for (const auto& step : priced.breaks) {
        if (step.from < least) return wrongField(Fault::NotAscending, priced.material.name, Term::PricesOfMorePacks);
        least = step.from + units::Count::of(1);
    }
    return {};
}

Done checkTogether(const Pack& pack) { return checkFromOne(pack.name, Term::Price, pack.prices); }

Done checkTogether(const Shop& shop) {
    if (auto good = checkFromOne({}, Term::MarkUp, shop.rules.ladder); !good) return good;
    for (std::size_t i = 1; i < shop.rules.rush.size(); ++i)
        if (shop.rules.rush[i].days <= shop.rules.rush[i - 1].days)
            return wrongField(Fault::DaysNotAscending, {}, Term::RushSurcharge);
    const auto& places = shop.rules.places;
    for (std::size_t i = 1; i < places.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (isOnePlace(places[i].place, places[j].place))
                return wrongField(Fault::PlaceTwice, {}, Term::SurchargesByPlace);
    for (const auto& span : shop.closedDays)
        if (span.to < span.from) return wrongField(Fault::EndsBeforeItBegins, {}, Term::ClosedTo);
    if (shop.smallestCoin.micros() % shop.currency.microsPerMinor() != 0)
        return wrongField(Fault::NotWholeMinor, {}, Term::SmallestCoin);
    std::set<std::string_view> rates{shop.rules.tax.name};
    for (const auto& rate : shop.rules.tax.others)
        if (!rates.insert(rate.name).second) return wrongField(Fault::RateTwice, {}, Term::FurtherTaxRates);
    const auto& ways = shop.waysToPay;
    for (std::size_t i = 1; i < ways.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (isOnePlace(ways[i].name, ways[j].name)) return wrongField(Fault::WayToPayTwice, {}, Term::WaysToPay);
    return {};
}

Done checkTogether(const Customer& customer) {
    for (const auto& one : certificatesOf(customer))
        if (one.expiresOn && *one.expiresOn < one.issuedOn)
            return wrongField(Fault::ExpiresBeforeIssue, customer.name, Term::DayOfExpiry);
    return {};
}

Done checkTogether(const Design& design) {
    for (const auto& stone : design.stones)
        if (stone.material.isNone()) return wrongField(Fault::StoneNotChosen, design.name, Term::Stone);
    return {};
}

Done checkTogether(const Kit& kit) {
    std::set<base::Id> materials;
    for (const auto& item : kit.items)
        if (!materials.insert(item.material).second) return wrongField(Fault::MaterialTwice, kit.name, Term::Contents);
    return {};
}

Done checkTogether(const ColourMaterial& colour) {
    if (!stoneSizeNamed(colour.stoneSize)) return wrongField(Fault::UnknownStoneSize, {}, Term::StoneSize);
    return {};
}

Done checkTogether(const PriceListColumns& list) {
    std::set<ListColumn> columns;
    for (const auto& column : list.columns)
        if (!columns.insert(column.column).second)
            return wrongField(Fault::ColumnTwice, {}, Term::ColumnsOfThePriceList);
    return {};
}

Done checkTogether(const Order& order) {
    if (order.discount.share && order.discount.amount) return wrongField(Fault::DiscountTwice, {}, Term::Discount);
    return {};
}

} // namespace sp::catalogue::fields

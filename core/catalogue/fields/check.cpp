// SPDX-License-Identifier: MIT
#include "core/catalogue/fields/check.h"

#include "core/catalogue/stone_size.h"
#include "core/units/characters.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace sp::catalogue::fields {

namespace {

using base::Done;

/// A decimal of `value` in millionths, without trailing zeros.
std::string millionths(std::int64_t value) {
    const bool isNegative = value < 0;
    const auto size = isNegative ? 0 - static_cast<std::uint64_t>(value) : static_cast<std::uint64_t>(value);
    std::string text = fmt::format("{}{}.{:06}", isNegative ? "-" : "", size / 1'000'000, size % 1'000'000);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

/// What a number reads as in the sentence that refuses it: "12.5", "3.5 mm", "8.875 %".
std::string inWords(Sort sort, std::int64_t whole) {
    if (sort == Sort::Money) return millionths(whole);
    if (sort == Sort::Length) return millionths(whole) + " mm";
    if (sort == Sort::Rate) return millionths(whole * 100) + " %";
    if (sort == Sort::Duration) return millionths(whole * 1'000) + " s";
    return fmt::format("{}", whole);
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
    Done wrong(const Field& field, std::string_view rest) const { return wrongField(m_thing, field.words, rest); }

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
            return wrong(field, "is none of those there are; choose one of the list");
        case Sort::Text: return text(field, *static_cast<const std::string*>(value));
        case Sort::Id:
            if (field.bounds.key == Key::MayBeNone || !static_cast<const base::Id*>(value)->isNone()) return {};
            return wrong(field, "is missing; choose one");
        case Sort::Date: return day(field, *static_cast<const units::Date*>(value));
        case Sort::Temperature: return temperature(field, *static_cast<const units::Temperature*>(value));
        case Sort::List:
            if (type.size(value) > field.bounds.length.longest)
                return wrong(field, fmt::format("are more than {}; take some out", field.bounds.length.longest));
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
        return wrong(field, fmt::format("must be from {} to {}", inWords(type.sort, range.lowest),
                                        inWords(type.sort, range.highest)));
    }

    Done text(const Field& field, const std::string& value) const {
        const auto& bounds = field.bounds.text;
        if (!units::isText(value)) return wrong(field, "holds characters that are not text; type it again");
        if (value.size() < bounds.shortest) return wrong(field, "is missing; type one");
        if (value.size() > bounds.longest)
            return wrong(field, fmt::format("is longer than {} bytes; shorten it", bounds.longest));
        const bool hasControls = std::any_of(value.begin(), value.end(), [&](char c) {
            const auto byte = static_cast<unsigned char>(c);
            return (byte < 0x20 && !(bounds.hasLines && (c == '\n' || c == '\t'))) || byte == 0x7F;
        });
        if (hasControls) return wrong(field, "holds control characters; type it again");
        if (bounds.shortest == 1 && value.find_first_not_of(' ') == std::string::npos)
            return wrong(field, "is missing; type one");
        return {};
    }

    Done day(const Field& field, units::Date value) const {
        const auto first = std::chrono::sys_days(std::chrono::year(1) / 1 / 1);
        const auto last = std::chrono::sys_days(std::chrono::year(9999) / 12 / 31);
        if (value.days() >= first && value.days() <= last) return {};
        return wrong(field, "must be a day of the years 1 to 9999");
    }

    Done temperature(const Field& field, units::Temperature value) const {
        // -50 to 500 °C is what a person can type, see parseTemperature.
        if (value >= units::Temperature::fromMillicelsius(-50'000) &&
            value <= units::Temperature::fromMillicelsius(500'000))
            return {};
        return wrong(field, "must be from -50 to 500 °C");
    }

    std::string m_thing;
};

/// A list by quantity: ascending, the first from 1.
template<class Row>
Done checkFromOne(std::string_view thing, Term words, const std::vector<Row>& rows) {
    if (rows.empty() || rows.front().from != units::Count::of(1))
        return wrongField(thing, words, "must begin with a row from 1");
    for (std::size_t i = 1; i < rows.size(); ++i)
        if (rows[i].from <= rows[i - 1].from) return wrongField(thing, words, "must have its rows in ascending order");
    return {};
}

} // namespace

Done checkRanges(const Object& object, const void* value) {
    return RangeCheck(nameOf(object, value)).object(object, value);
}

Done wrongField(std::string_view thing, Term words, std::string_view rest) {
    const std::string of = thing.empty() ? std::string() : fmt::format(" of “{}”", thing);
    return base::fail(base::Code::Invalid, std::string(english(words)),
                      fmt::format("The {}{} {}.", english(words), of, rest));
}

Done checkTogether(const Material& material) {
    if (material.kind == MaterialKind::Stone && !stoneSizeNamed(material.stone.size))
        return wrongField(material.name, Term::StoneSize, "is not in the table of sizes; choose one from SS6 to SS40");
    std::set<std::string_view> names;
    for (const auto& size : material.sizes)
        if (!names.insert(size.name).second)
            return wrongField(material.name, Term::Sizes, "name a size twice; rename one");
    return {};
}

Done checkTogether(const Pack& pack) { return checkFromOne(pack.name, Term::Price, pack.prices); }

Done checkTogether(const Shop& shop) {
    if (auto good = checkFromOne({}, Term::MarkUp, shop.rules.ladder); !good) return good;
    for (std::size_t i = 1; i < shop.rules.rush.size(); ++i)
        if (shop.rules.rush[i].days <= shop.rules.rush[i - 1].days)
            return wrongField({}, Term::RushSurcharge, "must have its days in ascending order");
    return {};
}

Done checkTogether(const Customer& customer) {
    if (!customer.certificate || !customer.certificate->expiresOn) return {};
    if (*customer.certificate->expiresOn < customer.certificate->issuedOn)
        return wrongField(customer.name, Term::DayOfExpiry, "lies before the day of issue");
    return {};
}

Done checkTogether(const Design& design) {
    for (const auto& stone : design.stones)
        if (stone.material.isNone()) return wrongField(design.name, Term::Stone, "is missing in a row; choose one");
    return {};
}

Done checkTogether(const Kit& kit) {
    std::set<base::Id> materials;
    for (const auto& item : kit.items)
        if (!materials.insert(item.material).second)
            return wrongField(kit.name, Term::Contents, "name a material twice; put the two rows into one");
    return {};
}

Done checkTogether(const ColourMaterial& colour) {
    if (!stoneSizeNamed(colour.stoneSize))
        return wrongField({}, Term::StoneSize, "is not in the table of sizes; choose one from SS6 to SS40");
    return {};
}

Done checkTogether(const PriceListColumns& list) {
    std::set<ListColumn> columns;
    for (const auto& column : list.columns)
        if (!columns.insert(column.column).second)
            return wrongField({}, Term::ColumnsOfThePriceList, "say the same twice; choose one column for each");
    return {};
}

Done checkTogether(const Order& order) {
    if (order.discount.share && order.discount.amount)
        return wrongField({}, Term::Discount, "is given twice; keep the share or the amount");
    return {};
}

} // namespace sp::catalogue::fields

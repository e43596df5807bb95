// SPDX-License-Identifier: MIT
#include "db/db_error.h"
#include "db/records/json.h"
#include "db/records/record.h"
#include "db/records/temperature_parts.h"

#include <algorithm>
#include <limits>
#include <set>

namespace sp::db::records {

namespace fields = catalogue::fields;
using fields::Sort;

void refuseKey(std::string_view key) { throwError(Fault::RecordKeyDamaged, std::string(key), key); }

Json takeOut(Json& object, std::string_view key) {
    const auto found = object.is_object() ? object.find(std::string(key)) : object.end();
    if (!object.is_object() || found == object.end()) refuseKey(key);
    Json value = std::move(*found);
    object.erase(found);
    return value;
}

namespace {

/// Deeper than any record of ours, and not so deep that reading it takes much memory.
constexpr int kDeepest = 32;

bool isTooDeep(std::string_view text) {
    int depth = 0;
    bool isString = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (isString && c == '\\')
            ++i; // whatever is escaped
        else if (c == '"')
            isString = !isString;
        else if (!isString && (c == '{' || c == '['))
            if (++depth > kDeepest) return true;
        if (!isString && (c == '}' || c == ']')) --depth;
    }
    return false;
}

/// JSON text as a tree; a key that stands twice in one object is refused.
Json parse(std::string_view text) {
    if (isTooDeep(text)) throwError(Fault::RecordUnreadable, {});
    std::vector<std::set<std::string>> keys;
    bool isDouble = false;
    const auto look = [&](int, Json::parse_event_t event, Json& parsed) {
        if (event == Json::parse_event_t::object_start) keys.emplace_back();
        if (event == Json::parse_event_t::object_end) keys.pop_back();
        if (event == Json::parse_event_t::key && !keys.back().insert(parsed.get<std::string>()).second) isDouble = true;
        return true;
    };
    Json tree = Json::parse(text, look, false);
    if (tree.is_discarded() || isDouble || !tree.is_object()) throwError(Fault::RecordUnreadable, {});
    return tree;
}

std::int64_t wholeOf(const Json& json, std::string_view key) {
    if (!json.is_number_integer()) refuseKey(key);
    if (json.is_number_unsigned() &&
        json.get<std::uint64_t>() > static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max()))
        refuseKey(key);
    return json.get<std::int64_t>();
}

std::string textOf(const Json& json, std::string_view key) {
    if (!json.is_string()) refuseKey(key);
    return json.get<std::string>();
}

template<class T>
T parsed(const Json& json, std::string_view key) {
    const auto value = T::parse(textOf(json, key));
    if (!value) refuseKey(key);
    return *value;
}

std::int64_t placeOfWord(const Json& json, std::span<const std::string_view> names, std::string_view key) {
    const auto found = std::find(names.begin(), names.end(), textOf(json, key));
    if (found == names.end()) refuseKey(key);
    return found - names.begin();
}

base::Id idOf(const Json& json, std::string_view key) {
    if (json.is_null()) return {};
    const auto id = parsed<base::Id>(json, key);
    if (id.isNone()) refuseKey(key);
    return id;
}

units::Temperature temperatureOf(const Json& json, std::string_view key) {
    if (!json.is_object() || json.size() != 2 || !json.contains("milli") || !json.contains("unit")) refuseKey(key);
    TemperatureParts parts;
    parts.milli = wholeOf(json["milli"], key);
    if (parts.milli < -1'000'000'000 || parts.milli > 1'000'000'000) refuseKey(key);
    parts.unit =
        static_cast<units::TemperatureUnit>(placeOfWord(json["unit"], fields::kNames<units::TemperatureUnit>, key));
    return fromParts(parts);
}

/// Fills a value from the JSON of a record that was written in version `m_version` and upgraded since. Refuses, as
/// Damaged, a key too few or too many and what is not of its type. Ranges are left to the check.
class Reader {
  public:
    Reader(std::string_view kind, int version)
        : m_kind(kind)
        , m_version(version) {}

    /// `key` is where the object stands; empty for the whole record.
    void object(const fields::Object& object, const Json& json, void* owner, std::string_view key) const {
        if (!json.is_object() && key.empty()) throwError(Fault::RecordUnreadable, {});
        if (!json.is_object()) refuseKey(key);
        std::size_t taken = 0;
        for (const auto& field : object.fields) {
            const auto found = json.find(std::string(field.key));
            if (found != json.end()) {
                value(*field.type, *found, field.of(owner), field.key);
                ++taken;
            } else if (field.before && m_version < field.sinceIn(m_kind)) {
                field.before(field.of(owner));
            } else {
                refuseKey(field.key);
            }
        }
        if (taken != json.size()) throwError(Fault::RecordHoldsMore, std::string(object.name));
    }

    /// Refuses keys that a record of this version cannot have yet. Where an upgrade is to put something else in the
    /// place of what is there, the new fields do not fit the old JSON, and it is left to be.
    void throwLater(const fields::Object& object, const Json& json) const {
        if (!json.is_object()) return;
        for (const auto& field : object.fields) {
            const auto found = json.find(std::string(field.key));
            if (found == json.end()) continue;
            if (m_version < field.sinceIn(m_kind)) refuseKey(field.key);
            throwLater(*field.type, *found);
        }
    }

  private:
    void throwLater(const fields::Type& type, const Json& json) const {
        if (type.sort == Sort::Object) return throwLater(type.object(), json);
        if (type.sort == Sort::Maybe) return throwLater(*type.inner, json);
        if (type.sort != Sort::List && type.sort != Sort::Steps) return;
        if (json.is_structured())
            for (const auto& item : json) throwLater(*type.inner, item);
    }

    void value(const fields::Type& type, const Json& json, void* to, std::string_view key) const {
        switch (type.sort) {
        case Sort::YesNo:
            if (!json.is_boolean()) refuseKey(key);
            *static_cast<bool*>(to) = json.get<bool>();
            return;
        case Sort::Whole:
        case Sort::Money:
        case Sort::Rate:
        case Sort::Length:
        case Sort::Duration:
        case Sort::Count: {
            const auto whole = wholeOf(json, key);
            if (whole < type.leastWhole || whole > type.mostWhole) refuseKey(key);
            return type.setWhole(to, whole);
        }
        case Sort::Word: return type.setWhole(to, placeOfWord(json, type.names, key));
        case Sort::Text: *static_cast<std::string*>(to) = textOf(json, key); return;
        case Sort::Id: *static_cast<base::Id*>(to) = idOf(json, key); return;
        case Sort::Date: *static_cast<units::Date*>(to) = parsed<units::Date>(json, key); return;
        case Sort::Currency: *static_cast<units::Currency*>(to) = parsed<units::Currency>(json, key); return;
        case Sort::Temperature: *static_cast<units::Temperature*>(to) = temperatureOf(json, key); return;
        case Sort::Maybe:
            type.clear(to);
            if (!json.is_null()) value(*type.inner, json, type.add(to), key);
            return;
        case Sort::List:
            if (!json.is_array()) refuseKey(key);
            type.clear(to);
            for (const auto& item : json) value(*type.inner, item, type.add(to), key);
            return;
        case Sort::Steps: return steps(type, json, to, key);
        case Sort::Object: return object(type.object(), json, to, key);
        }
    }

    void steps(const fields::Type& type, const Json& json, void* to, std::string_view key) const {
        if (!json.is_object() || json.size() != type.size(to)) refuseKey(key);
        for (const auto step : catalogue::kSteps) {
            const auto word = fields::wordOf(step);
            const auto found = json.find(std::string(word));
            if (found == json.end()) refuseKey(word);
            value(*type.inner, *found, type.itemOf(to, static_cast<std::size_t>(step)), key);
        }
    }

    std::string_view m_kind;
    int m_version;
};

/// The version a record says it is of; refuses what is no record of that kind, and what is still to come.
int versionOf(const Kind& kind, const Json& tree) {
    const auto wrong = [] { throwError(Fault::RecordOfAnotherSort, {}); };
    const auto format = tree.find("format");
    const auto name = tree.find("kind");
    if (format == tree.end() || !format->is_number_integer() || name == tree.end() || *name != std::string(kind.name))
        wrong();
    if (*format > kind.version) throwError(Fault::RecordTooNew, std::string(kind.name), kind.name, format->dump());
    if (*format < 1 || !tree.contains("value") || tree.size() != 3) wrong();
    return format->get<int>();
}

/// Makes the value of a record of that version one of the newest, but for the fields that only came new, in the shape
/// in which the program holds it.
void upgrade(const Kind& kind, int version, Json& value) {
    try {
        for (auto step = static_cast<std::size_t>(version) - 1; step < kind.upgrades.size(); ++step)
            if (kind.upgrades[step]) kind.upgrades[step](value);
        if (kind.outOfShape) kind.outOfShape(value);
    } catch (const Json::exception&) { refuseKey(kind.name); } // something there is of another sort than it was
}

} // namespace

base::Done read(const Kind& kind, std::string_view json, void* value) {
    return catchToResult([&] {
        Json tree = parse(json);
        const int version = versionOf(kind, tree);
        Json& saved = tree["value"];
        const Reader reader(kind.name, version);
        if (version < kind.version) reader.throwLater(kind.object(), saved);
        upgrade(kind, version, saved);
        reader.object(kind.object(), saved, value, {});
        if (auto good = kind.check(value); !good) {
            good.error().code = base::Code::Damaged;
            throw DbError(std::move(good.error()));
        }
    });
}

base::Result<bool> saySame(const Kind& kind, std::string_view one, std::string_view other) {
    if (one == other) return true;
    const auto first = kind.renewed(one);
    if (!first) return base::fail(first.error());
    const auto second = kind.renewed(other);
    if (!second) return base::fail(second.error());
    return *first == *second;
}

} // namespace sp::db::records

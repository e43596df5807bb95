// SPDX-License-Identifier: MIT
#include "db/records/json.h"
#include "db/records/record.h"
#include "db/records/temperature_parts.h"

namespace sp::db::records {

namespace fields = catalogue::fields;
using fields::Sort;

namespace {

Json jsonOf(const fields::Type& type, const void* value) {
    switch (type.sort) {
    case Sort::YesNo: return *static_cast<const bool*>(value);
    case Sort::Whole:
    case Sort::Money:
    case Sort::Rate:
    case Sort::Length:
    case Sort::Duration:
    case Sort::Count: return type.whole(value);
    case Sort::Word: {
        const auto place = static_cast<std::size_t>(type.whole(value));
        return std::string(place < type.names.size() ? type.names[place] : std::string_view());
    }
    case Sort::Text: return *static_cast<const std::string*>(value);
    case Sort::Id: {
        const auto& id = *static_cast<const base::Id*>(value);
        return id.isNone() ? Json(nullptr) : Json(id.text());
    }
    case Sort::Date: return static_cast<const units::Date*>(value)->iso();
    case Sort::Currency: return static_cast<const units::Currency*>(value)->code();
    case Sort::Temperature: {
        const auto parts = partsOf(*static_cast<const units::Temperature*>(value));
        return {{"milli", parts.milli}, {"unit", std::string(fields::wordOf(parts.unit))}};
    }
    case Sort::Maybe: return type.size(value) == 0 ? Json(nullptr) : jsonOf(*type.inner, type.at(value, 0));
    case Sort::List: {
        Json list = Json::array();
        for (std::size_t i = 0; i < type.size(value); ++i) list.push_back(jsonOf(*type.inner, type.at(value, i)));
        return list;
    }
    case Sort::Steps: {
        Json steps = Json::object();
        for (const auto step : catalogue::kSteps)
            steps[std::string(fields::wordOf(step))] =
                jsonOf(*type.inner, type.at(value, static_cast<std::size_t>(step)));
        return steps;
    }
    case Sort::Object: return plainJson(type.object(), value);
    }
    return {};
}

} // namespace

Json plainJson(const fields::Object& object, const void* value) {
    Json json = Json::object();
    for (const auto& field : object.fields) json[std::string(field.key)] = jsonOf(*field.type, field.in(value));
    return json;
}

std::string write(const Kind& kind, const void* value) {
    Json saved = plainJson(kind.object(), value);
    if (kind.inShape) kind.inShape(saved);
    return Json{{"format", kind.version}, {"kind", std::string(kind.name)}, {"value", std::move(saved)}}.dump();
}

} // namespace sp::db::records

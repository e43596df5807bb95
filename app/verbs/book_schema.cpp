// SPDX-License-Identifier: MIT
#include "app/verbs/book_schema.h"

#include "app/words/words.h"
#include "db/records/kind.h"

namespace sp::verbs {

namespace fields = catalogue::fields;
using fields::Sort;

namespace {

/// What a whole number of that sort counts, and the pattern of a text, are said by the definitions of the schema.
struct Definition {
    Sort sort;
    const char* name;
    const char* type;
    const char* what;
};
constexpr Definition kDefinitions[] = {
    {Sort::Money, "money", "integer", QT_TRANSLATE_NOOP("App", "millionths of the currency’s unit: 6.94 is 6940000")},
    {Sort::Rate, "share", "integer", QT_TRANSLATE_NOOP("App", "millionths of a whole: 8.875 % is 88750")},
    {Sort::Length, "length", "integer", QT_TRANSLATE_NOOP("App", "nanometres")},
    {Sort::Duration, "time", "integer", QT_TRANSLATE_NOOP("App", "milliseconds")},
    {Sort::Id, "key", "string", QT_TRANSLATE_NOOP("App", "the 36 characters of a UUID")},
    {Sort::Date, "day", "string", QT_TRANSLATE_NOOP("App", "year, month and day: 2026-10-12")},
    {Sort::Currency, "currency", "string", QT_TRANSLATE_NOOP("App", "the three letters of ISO 4217")},
};

Json typeJson(const fields::Type& type, const fields::Field* field);

Json objectJson(const fields::Object& object) {
    Json properties = Json::object();
    Json required = Json::array();
    for (const auto& field : object.fields) {
        auto json = typeJson(*field.type, &field);
        json["description"] = words::sentence(base::say(field.words)).toStdString();
        properties[std::string(field.key)] = std::move(json);
        required.push_back(std::string(field.key));
    }
    return {{"type", "object"},
            {"properties", std::move(properties)},
            {"required", std::move(required)},
            {"additionalProperties", false}};
}

Json orNothing(Json schema) { return {{"anyOf", Json::array({std::move(schema), {{"type", "null"}}})}}; }

Json ofSort(Sort sort) {
    for (const auto& one : kDefinitions)
        if (one.sort == sort) return {{"$ref", std::string("#/$defs/") + one.name}};
    return {{"type", "integer"}};
}

Json bounded(Json schema, const fields::Field* field) {
    if (!field) return schema;
    const auto& range = field->bounds.range;
    if (range.lowest != fields::Range{}.lowest) schema["minimum"] = range.lowest;
    return schema;
}

Json typeJson(const fields::Type& type, const fields::Field* field) {
    switch (type.sort) {
    case Sort::YesNo: return {{"type", "boolean"}};
    case Sort::Whole:
    case Sort::Count:
    case Sort::Money:
    case Sort::Rate:
    case Sort::Length:
    case Sort::Duration: return bounded(ofSort(type.sort), field);
    case Sort::Word: {
        Json names = Json::array();
        for (const auto name : type.names) names.push_back(std::string(name));
        return {{"enum", std::move(names)}};
    }
    case Sort::Text: return {{"type", "string"}};
    case Sort::Id: return orNothing(ofSort(type.sort));
    case Sort::Date:
    case Sort::Currency: return ofSort(type.sort);
    case Sort::Temperature:
        return {{"type", "object"},
                {"properties",
                 {{"milli", {{"type", "integer"}}}, {"unit", {{"enum", Json::array({"celsius", "fahrenheit"})}}}}},
                {"required", Json::array({"milli", "unit"})},
                {"additionalProperties", false}};
    case Sort::Maybe: return orNothing(typeJson(*type.inner, field));
    case Sort::List: return {{"type", "array"}, {"items", typeJson(*type.inner, field)}};
    case Sort::Steps: {
        Json properties = Json::object();
        for (const auto step : catalogue::kSteps)
            properties[std::string(fields::wordOf(step))] = typeJson(*type.inner, nullptr);
        return {{"type", "object"}, {"properties", std::move(properties)}, {"additionalProperties", false}};
    }
    case Sort::Object: return {{"$ref", "#/$defs/" + std::string(type.object().name)}};
    }
    return {};
}

/// Adds a type's own fields and those of the types it holds.
void define(Json& definitions, const fields::Object& object) {
    const std::string name(object.name);
    if (definitions.contains(name)) return;
    definitions[name] = objectJson(object);
    for (const auto& field : object.fields) {
        const auto* type = field.type;
        while (type->inner != nullptr) type = type->inner;
        if (type->sort == Sort::Object) define(definitions, type->object());
    }
}

Json listOf(Json item) { return {{"type", "array"}, {"items", std::move(item)}}; }

Json closed(Json properties) {
    Json required = Json::array();
    for (const auto& one : properties.items()) required.push_back(one.key());
    return {{"type", "object"},
            {"properties", std::move(properties)},
            {"required", std::move(required)},
            {"additionalProperties", false}};
}

} // namespace

Json bookSchema() {
    Json definitions = Json::object();
    for (const auto& one : kDefinitions)
        definitions[one.name] = {{"type", one.type}, {"description", words::told(one.what, {}).toStdString()}};
    const auto ref = [&](const fields::Object& object) -> Json {
        define(definitions, object);
        return {{"$ref", "#/$defs/" + std::string(object.name)}};
    };
    const Json text{{"type", "string"}};
    const Json key = ofSort(Sort::Id);
    const Json stage = typeJson(fields::typeOf<db::Stage>(), nullptr);
    using namespace catalogue;
    Json properties{{"format", {{"type", "integer"}}},
                    {"shop", ref(fields::objectOf<Shop>())},
                    {"bench", ref(fields::objectOf<BenchStandards>())},
                    {"suppliers", listOf(ref(fields::objectOf<Supplier>()))},
                    {"materials", listOf(ref(fields::objectOf<Material>()))},
                    {"packs", listOf(ref(fields::objectOf<Pack>()))},
                    {"kits", listOf(ref(fields::objectOf<Kit>()))},
                    {"designs", listOf(ref(fields::objectOf<Design>()))},
                    {"colours", listOf(ref(fields::objectOf<ColourMaterial>()))},
                    {"price_lists", listOf(ref(fields::objectOf<PriceListColumns>()))},
                    {"customers", listOf(ref(fields::objectOf<Customer>()))},
                    {"stock_moves", listOf(ref(fields::objectOf<db::records::StockMove>()))},
                    {"drawings", listOf(ref(fields::objectOf<db::records::ArtworkRecord>()))},
                    {"payments", listOf(ref(fields::objectOf<Payment>()))}};
    properties["jobs"] = listOf(closed({{"id", key},
                                        {"number", text},
                                        {"revision", {{"type", "integer"}}},
                                        {"revises", orNothing(key)},
                                        {"stage", stage},
                                        {"choice_taken", orNothing({{"type", "integer"}})},
                                        {"order", ref(fields::objectOf<Order>())}}));
    properties["revisions"] = listOf(closed({{"job", key},
                                             {"number", text},
                                             {"revision", {{"type", "integer"}}},
                                             {"choice_taken", orNothing({{"type", "integer"}})},
                                             {"order", ref(fields::objectOf<Order>())}}));
    properties["papers"] = listOf(closed({{"id", key},
                                          {"job", key},
                                          {"kind", text},
                                          {"number", text},
                                          {"revision", {{"type", "integer"}}},
                                          {"issued_at", text},
                                          {"until", orNothing(ofSort(Sort::Date))},
                                          {"total_micros", ofSort(Sort::Money)},
                                          {"result", orNothing(ref(fields::objectOf<db::records::PaperResult>()))}}));
    properties["bills"] = listOf(closed({{"id", key},
                                         {"job", key},
                                         {"kind", typeJson(fields::typeOf<PaperKind>(), nullptr)},
                                         {"number", text},
                                         {"issued_at", text},
                                         {"due", orNothing(ofSort(Sort::Date))},
                                         {"total_micros", ofSort(Sort::Money)},
                                         {"result", ref(fields::objectOf<db::records::BillResult>())}}));
    auto schema = closed(std::move(properties));
    schema["$schema"] = "https://json-schema.org/draft/2020-12/schema";
    schema["title"] = words::told(QT_TRANSLATE_NOOP("App", "Everything in a job book"), {}).toStdString();
    schema["$defs"] = std::move(definitions);
    return schema;
}

} // namespace sp::verbs

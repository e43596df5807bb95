// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <regex>
#include <string>
#include <utility>

namespace sp::test {

/// The part of JSON Schema, draft 2020-12, that the schemas use; another keyword in them fails the test.
class Validator {
    using Json = nlohmann::json;

  public:
    explicit Validator(Json root)
        : m_root(std::move(root)) {}

    bool accepts(const Json& value) const { return accepts(m_root, value); }
    bool acceptsAnswer(const Json& value) const { return accepts(m_root["$defs"]["answer"], value); }

  private:
    static bool isOfType(const std::string& type, const Json& value) {
        if (type == "object") return value.is_object();
        if (type == "array") return value.is_array();
        if (type == "string") return value.is_string();
        if (type == "integer") return value.is_number_integer();
        if (type == "number") return value.is_number();
        if (type == "boolean") return value.is_boolean();
        if (type == "null") return value.is_null();
        ADD_FAILURE() << "unknown type " << type;
        return false;
    }

    bool accepts(const Json& schema, const Json& value) const {
        return std::all_of(schema.items().begin(), schema.items().end(),
                           [&](const auto& rule) { return holds(rule.key(), rule.value(), schema, value); });
    }

    bool holds(const std::string& key, const Json& rule, const Json& schema, const Json& value) const {
        if (key == "$schema" || key == "title" || key == "description" || key == "$defs") return true;
        if (key == "properties") return true; // with additionalProperties, which all objects here have
        if (key == "type") return isOfType(rule, value);
        if (key == "$ref") return accepts(m_root["$defs"].at(rule.get<std::string>().substr(8)), value);
        if (key == "anyOf")
            return std::any_of(rule.begin(), rule.end(), [&](const Json& one) { return accepts(one, value); });
        if (key == "pattern")
            return !value.is_string() ||
                   std::regex_search(value.get<std::string>(), std::regex(rule.get<std::string>()));
        if (key == "enum") return std::ranges::find(rule, value) != rule.end();
        if (key == "minimum") return !value.is_number() || value.get<double>() >= rule.get<double>();
        if (key == "items")
            return std::all_of(value.begin(), value.end(), [&](const Json& one) { return accepts(rule, one); });
        if (key == "required")
            return std::all_of(rule.begin(), rule.end(), [&](const Json& name) { return value.contains(name); });
        if (key == "additionalProperties") return haveRoom(rule, schema, value);
        ADD_FAILURE() << "unknown keyword " << key;
        return false;
    }

    bool haveRoom(const Json& others, const Json& schema, const Json& value) const {
        const Json known = schema.value("properties", Json::object());
        return std::all_of(value.items().begin(), value.items().end(), [&](const auto& one) {
            if (known.contains(one.key())) return accepts(known[one.key()], one.value());
            return others.is_object() && accepts(others, one.value());
        });
    }

    Json m_root;
};

} // namespace sp::test

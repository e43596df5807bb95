// SPDX-License-Identifier: MIT
#include "core/base/error.h"

#include "core/base/messages.h"

#include <fmt/format.h>

namespace sp::base {

namespace {

struct Describe {
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(std::int64_t count) const { return std::to_string(count); }
    std::string operator()(const Real& real) const { return fmt::format("{:.4g}", real.number); }
    std::string operator()(const Quantity& quantity) const { return std::to_string(quantity.amount); }
    std::string operator()(const Extent& extent) const { return fmt::format("{} x {}", extent.width, extent.height); }
    std::string operator()(const std::vector<Message>& messages) const {
        std::string text;
        for (const auto& message : messages) text += (text.empty() ? "" : "; ") + describe(message);
        return text;
    }
};

} // namespace

std::string describe(const Message& message) {
    std::string values;
    for (const auto& value : message.values)
        values += (values.empty() ? "" : ", ") + std::visit(Describe{}, value.held);
    return values.empty() ? std::string(message.id.name) : fmt::format("{}({})", message.id.name, values);
}

Error about(std::string name, const Error& error) {
    Error told;
    told.code = error.code;
    told.subject = name;
    told.fault = idOf(Note::About);
    told.values = {asValue(std::move(name)), asValue(error.message())};
    return told;
}

std::string describe(const Error& error) {
    return error.subject.empty() ? describe(error.message())
                                 : fmt::format("{} of {}", describe(error.message()), error.subject);
}

std::string_view nameOf(Code code) {
    switch (code) {
    case Code::Invalid: return "invalid";
    case Code::OutOfRange: return "out of range";
    case Code::TooLarge: return "too large";
    case Code::Missing: return "missing";
    case Code::NotFound: return "not found";
    case Code::Ambiguous: return "ambiguous";
    case Code::Conflict: return "conflict";
    case Code::Busy: return "busy";
    case Code::Full: return "full";
    case Code::ReadOnly: return "read-only";
    case Code::Foreign: return "foreign";
    case Code::TooNew: return "too new";
    case Code::Damaged: return "damaged";
    case Code::Failed: return "failed";
    }
    return "failed";
}

} // namespace sp::base

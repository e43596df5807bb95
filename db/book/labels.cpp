// SPDX-License-Identifier: MIT
#include "db/book/labels.h"

#include "core/base/ensure.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>

namespace sp::db {

using base::Message;
using base::say;
using base::Value;
using catalogue::Order;
using catalogue::OrderLine;
using catalogue::fields::onlyDifference;

namespace {

Value titleOf(const OrderLine& line) {
    return line.title.empty() ? base::asValue(Note::ALine) : base::asValue(line.title);
}

/// The one line that `more` has and `fewer` has not; nothing when they differ otherwise.
const OrderLine* extraLine(const Order& fewer, const Order& more) {
    if (more.lines.size() != fewer.lines.size() + 1) return nullptr;
    const auto [mine, theirs] = std::mismatch(fewer.lines.begin(), fewer.lines.end(), more.lines.begin());
    return std::equal(mine, fewer.lines.end(), theirs + 1, more.lines.end()) ? &*theirs : nullptr;
}

Message lineChange(const Order& before, const Order& after) {
    if (const auto* added = extraLine(before, after)) return say(Note::Adding, titleOf(*added));
    if (const auto* taken = extraLine(after, before)) return say(Note::Removing, titleOf(*taken));
    if (before.lines.size() != after.lines.size()) return say(Note::LinesOfQuote);
    const OrderLine* was = nullptr;
    const OrderLine* is = nullptr;
    for (std::size_t i = 0; i < after.lines.size(); ++i) {
        if (before.lines[i] == after.lines[i]) continue;
        if (is != nullptr) return say(Note::LinesOfQuote);
        was = &before.lines[i];
        is = &after.lines[i];
    }
    if (is == nullptr) return say(Note::ChangeOfQuote);
    const auto field = onlyDifference(*was, *is);
    return field ? say(Note::FieldOf, *field, titleOf(*is)) : say(Note::ChangeOf, titleOf(*is));
}

} // namespace

Note sortOf(std::string_view entity) {
    constexpr std::array<std::pair<std::string_view, Note>, 8> kSorts{{{"shop", Note::Shop},
                                                                       {"bench", Note::Bench},
                                                                       {"material", Note::Material},
                                                                       {"supplier", Note::Supplier},
                                                                       {"pack", Note::Pack},
                                                                       {"kit", Note::Kit},
                                                                       {"design", Note::Design},
                                                                       {"customer", Note::Customer}}};
    const auto found = std::find_if(kSorts.begin(), kSorts.end(), [&](const auto& row) { return row.first == entity; });
    base::ensure(found != kSorts.end(), "every sort of thing that is kept by name is in the list");
    return found->second;
}

Message changeOf(const catalogue::Shop& before, const catalogue::Shop& after) {
    const auto field = onlyDifference(before, after);
    return field ? say(*field) : say(Note::ChangeOfShop);
}

Message changeOf(const catalogue::BenchStandards& before, const catalogue::BenchStandards& after) {
    const auto field = onlyDifference(before, after);
    return field ? say(*field) : say(Note::ChangeOfBench);
}

Message changeOf(const Order& before, const Order& after) {
    Order head = before;
    head.lines = after.lines;
    if (head == after) return lineChange(before, after);
    if (before.lines != after.lines) return say(Note::ChangeOfQuote);
    const auto field = onlyDifference(before, after);
    return field ? say(Note::FieldOfQuote, *field) : say(Note::ChangeOfQuote);
}

} // namespace sp::db

// SPDX-License-Identifier: MIT
#include "db/book/words.h"

#include <algorithm>
#include <cstddef>

namespace sp::db {

using catalogue::Order;
using catalogue::OrderLine;

namespace {

std::string titleOf(const OrderLine& line) { return line.title.empty() ? std::string("a line") : line.title; }

/// The one line that `more` has and `fewer` has not; nothing when they differ otherwise.
const OrderLine* extraLine(const Order& fewer, const Order& more) {
    if (more.lines.size() != fewer.lines.size() + 1) return nullptr;
    const auto [mine, theirs] = std::mismatch(fewer.lines.begin(), fewer.lines.end(), more.lines.begin());
    return std::equal(mine, fewer.lines.end(), theirs + 1, more.lines.end()) ? &*theirs : nullptr;
}

std::string lineChange(const Order& before, const Order& after) {
    if (const auto* added = extraLine(before, after)) return "adding " + titleOf(*added);
    if (const auto* taken = extraLine(after, before)) return "removing " + titleOf(*taken);
    if (before.lines.size() != after.lines.size()) return "lines of the quote";
    const OrderLine* changed = nullptr;
    std::string field;
    for (std::size_t i = 0; i < after.lines.size(); ++i) {
        if (before.lines[i] == after.lines[i]) continue;
        if (changed != nullptr) return "lines of the quote";
        changed = &after.lines[i];
        field = fieldChanged(before.lines[i], after.lines[i]);
    }
    if (changed == nullptr) return "change of the quote";
    return (field.empty() ? std::string("change") : field) + " of " + titleOf(*changed);
}

} // namespace

std::string changeOf(const catalogue::Shop& before, const catalogue::Shop& after) {
    const std::string field = fieldChanged(before, after);
    return field.empty() ? "change of the shop" : field;
}

std::string changeOf(const catalogue::BenchStandards& before, const catalogue::BenchStandards& after) {
    const std::string field = fieldChanged(before, after);
    return field.empty() ? "change of the bench" : field;
}

std::string changeOf(const Order& before, const Order& after) {
    Order head = before;
    head.lines = after.lines;
    if (head == after) return lineChange(before, after);
    if (before.lines != after.lines) return "change of the quote";
    const std::string field = fieldChanged(before, after);
    return field.empty() ? "change of the quote" : field + " of the quote";
}

} // namespace sp::db

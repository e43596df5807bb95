// SPDX-License-Identifier: MIT
#include "core/catalogue/order.h"

#include <algorithm>
#include <utility>

namespace sp::catalogue {

const std::vector<PackingUse>& packingOf(const OrderLine& line, const std::vector<PackingUse>& ofShop) {
    static const std::vector<PackingUse> nothing;
    if (line.isCharge()) return nothing;
    return line.packing ? *line.packing : ofShop;
}

bool isOnePlace(std::string_view a, std::string_view b) {
    // Letters beyond A to Z are written by a shop as they are in its own list.
    const auto lowered = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
    return !a.empty() && std::ranges::equal(a, b, {}, lowered, lowered);
}

Placement placementOf(const Design& design) {
    return {.design = design.id,
            .title = design.name,
            .place = {},
            .width = design.width,
            .height = design.height,
            .stones = design.stones,
            .templatesOnWall = design.templatesOnWall,
            .plannedPieces = design.plannedPieces,
            .artTime = design.artTime};
}

OrderLine lineOf(const Design& design) {
    OrderLine line;
    line.title = design.name;
    line.first() = placementOf(design);
    line.first().title.clear();
    line.baseMaterial = design.usualBase;
    line.packing = design.packing;
    return line;
}

namespace {

Choice lookedAt(const Order& order) { return {order.title, order.discount, order.lines}; }

void putIn(Order& order, Choice choice) {
    order.title = std::move(choice.title);
    order.discount = choice.discount;
    order.lines = std::move(choice.lines);
}

} // namespace

std::size_t choiceCount(const Order& order) { return order.others.size() + 1; }

std::vector<Choice> choicesOf(const Order& order) {
    auto choices = order.others;
    choices.insert(choices.begin() + order.choice, lookedAt(order));
    return choices;
}

void lookAtChoice(Order& order, std::int64_t number) {
    if (number == order.choice) return;
    auto looked = lookedAt(order);
    lookAt(looked, order.others, order.choice, number);
    putIn(order, std::move(looked));
}

Order withChoice(const Order& order, std::int64_t number) {
    Order taken = order;
    lookAtChoice(taken, number);
    taken.others.clear();
    taken.choice = 0;
    return taken;
}

void addChoice(Order& order) {
    auto same = lookedAt(order);
    same.title.clear();
    order.others.push_back(std::move(same));
    lookAtChoice(order, static_cast<std::int64_t>(order.others.size()));
}

void removeChoice(Order& order) {
    const auto next = std::min(order.choice, static_cast<std::int64_t>(order.others.size()) - 1);
    putIn(order, std::move(order.others[static_cast<std::size_t>(next)]));
    order.others.erase(order.others.begin() + next);
    order.choice = next;
}

} // namespace sp::catalogue

// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "core/catalogue/customer.h"
#include "core/catalogue/material.h"

#include <initializer_list>
#include <vector>

namespace sp::desk {

/// Something of the book, by its key and name.
template<class Thing>
Choice choiceOf(const Thing& thing, const QString& detail = {}) {
    return {QVariant::fromValue(thing.id), QString::fromStdString(thing.name), detail, {}};
}
/// A stone is shown with its colour.
Choice choiceOf(const catalogue::Material& material);

/// A customer with a certificate is told; telephone and mail find one too.
Choice choiceOf(const catalogue::Customer& customer);

template<class Thing>
std::vector<Choice> choicesOf(const std::vector<Thing>& things) {
    std::vector<Choice> choices;
    for (const auto& thing : things) choices.push_back(choiceOf(thing));
    return choices;
}
/// Those of the kinds named.
std::vector<Choice> choicesOf(const std::vector<catalogue::Material>& materials,
                              std::initializer_list<catalogue::MaterialKind> kinds);

} // namespace sp::desk

// SPDX-License-Identifier: MIT
#include "app/desk/choices.h"

#include "app/desk/stone_painter.h"

#include <algorithm>

namespace sp::desk {

Choice choiceOf(const catalogue::Material& material) {
    Choice choice{QVariant::fromValue(material.id), QString::fromStdString(material.name), {}, {}};
    if (material.kind == catalogue::MaterialKind::Stone) choice.stones.push_back(stoneColour(material.stone.rgb));
    return choice;
}

std::vector<Choice> choicesOf(const std::vector<catalogue::Material>& materials,
                              std::initializer_list<catalogue::MaterialKind> kinds) {
    std::vector<Choice> choices;
    for (const auto& material : materials)
        if (std::find(kinds.begin(), kinds.end(), material.kind) != kinds.end()) choices.push_back(choiceOf(material));
    return choices;
}

} // namespace sp::desk

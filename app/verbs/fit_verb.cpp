// SPDX-License-Identifier: MIT
#include "app/verbs/size_words.h"
#include "app/verbs/verb_kit.h"
#include "core/layout/fit.h"

namespace sp::verbs {

Outcome fitVerb(const Arguments& arguments, const Helpers&) {
    const auto sheet = parseSize(arguments.of("--sheet"));
    if (!sheet) return refused(sheet.error());
    const auto piece = parseSize(arguments.of("--piece"));
    if (!piece) return refused(piece.error());
    layout::FitRules rules;
    rules.oneWay = arguments.has("--one-way");
    for (const auto& [option, length] : {std::pair{"--margin", &rules.margin}, std::pair{"--gap", &rules.gap}}) {
        const auto text = arguments.value(option);
        if (!text) continue;
        const auto read = parseStatedLength(*text);
        if (!read) return refused(read.error());
        *length = *read;
    }
    const auto fit = layout::fitSheet({sheet->width, sheet->height}, {piece->width, piece->height}, rules);
    if (!fit) return refused(fit.error());
    Json positions = Json::array();
    for (const auto& position : fit->positions)
        positions.push_back({{"x", decimal(position.x, sheet->unit)},
                             {"y", decimal(position.y, sheet->unit)},
                             {"turned", position.turned}});
    const Json json{{"count", fit->count},
                    {"bound", fit->bound},
                    {"proven", fit->proven},
                    {"unit", units::nameOf(sheet->unit)},
                    {"positions", std::move(positions)}};
    return answer(arguments, json,
                  fit->proven ? line(QT_TRANSLATE_NOOP("App", "%1 fit, and no more can."), fit->count)
                              : line(QT_TRANSLATE_NOOP("App", "%1 fit; at most %2 could."), fit->count, fit->bound));
}

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
#include "app/words/spare_words.h"

#include "app/words/shown.h"
#include "app/words/words.h"

#include <QCoreApplication>

namespace sp::words {

QStringList spareNotes(std::span<const SparesOfLine> lines, const needs::SpareRule& rule) {
    QStringList notes;
    for (const auto& line : lines) {
        const auto note = needs::spareNote(line.spares, rule);
        if (!note || (lines.size() > 1 && line.spares.pieces == 0)) continue;
        notes << (lines.size() == 1
                      ? sentence(*note)
                      : QCoreApplication::translate("Owner", "%1 – %2", "a line of an order and what is said of it")
                            .arg(shown(line.title), sentence(*note)));
    }
    return notes;
}

QStringList spareNotes(std::span<const catalogue::OrderLine> lines, const catalogue::Shop& shop) {
    const auto rule = needs::spareRuleOf(shop);
    const auto spares = needs::sparesOf(lines, rule);
    std::vector<SparesOfLine> said;
    for (std::size_t i = 0; i < lines.size(); ++i) said.push_back({lines[i].title, spares[i]});
    return spareNotes(said, rule);
}

} // namespace sp::words

// SPDX-License-Identifier: MIT
#include "app/counter/design_choices.h"

#include "app/desk/choices.h"
#include "app/desk/stone_painter.h"

namespace sp::counter {

std::vector<desk::Choice> designChoices(session::BookSession& session, const desk::Formatter& formatter,
                                        artwork::DesignPictures& pictures) {
    std::vector<desk::Choice> choices;
    for (const auto& design : session.designs()) {
        auto choice = desk::choiceOf(design, formatter.size(design.width, design.height));
        for (const auto& stone : design.stones)
            if (const auto* material = session.material(stone.material))
                choice.stones.push_back(desk::stoneColour(material->stone.rgb));
        choice.picture = [&pictures, id = design.id](QSize room, const QColor& ground, double ratio) {
            return pictures.small(id, room, ground, ratio);
        };
        choices.push_back(std::move(choice));
    }
    return choices;
}

} // namespace sp::counter

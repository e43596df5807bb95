// SPDX-License-Identifier: MIT
#include "core/catalogue/order.h"

namespace sp::catalogue {

const std::vector<PackingUse>& packingOf(const OrderLine& line, const std::vector<PackingUse>& ofShop) {
    static const std::vector<PackingUse> nothing;
    if (line.isCharge()) return nothing;
    return line.packing ? *line.packing : ofShop;
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

} // namespace sp::catalogue

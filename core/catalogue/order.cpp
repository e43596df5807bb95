// SPDX-License-Identifier: MIT
#include "core/catalogue/order.h"

namespace sp::catalogue {

OrderLine lineOf(const Design& design) {
    OrderLine line;
    line.design = design.id;
    line.title = design.name;
    line.width = design.width;
    line.height = design.height;
    line.stones = design.stones;
    line.baseMaterial = design.usualBase;
    line.templatesOnWall = design.templatesOnWall;
    line.plannedPieces = design.plannedPieces;
    line.artTime = design.artTime;
    line.packing = design.packing;
    return line;
}

} // namespace sp::catalogue

// SPDX-License-Identifier: MIT
#include "core/catalogue/material.h"

namespace sp::catalogue {

std::string_view nameOf(MaterialKind kind) {
    switch (kind) {
    case MaterialKind::Stone: return "stone";
    case MaterialKind::Tape: return "tape";
    case MaterialKind::Template: return "template";
    case MaterialKind::Backing: return "backing";
    case MaterialKind::Blank: return "blank";
    case MaterialKind::Packing: return "packing";
    }
    return "material";
}

bool Freight::isCarried() const {
    switch (kind) {
    case FreightKind::Nothing: break;
    case FreightKind::Share: return !share.isZero();
    case FreightKind::Spread: return !shipping.isZero() && !usualOrder.isZero();
    }
    return false;
}

units::Fraction Freight::ratio() const {
    if (!isCarried()) return {};
    return kind == FreightKind::Share ? units::Fraction::ratio(share.ppm(), units::kPpm)
                                      : units::Fraction::ratio(shipping.micros(), usualOrder.micros());
}

Freight freightOf(const Supplier& supplier) {
    switch (supplier.freight) {
    case FreightKind::Nothing: break;
    case FreightKind::Share: return {FreightKind::Share, supplier.freightShare, {}, {}};
    case FreightKind::Spread:
        if (supplier.freeFrom && *supplier.freeFrom <= supplier.usualOrder) break;
        return {FreightKind::Spread, {}, supplier.shipping, supplier.usualOrder};
    }
    return {};
}

} // namespace sp::catalogue

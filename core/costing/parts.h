// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/rules_version.h"
#include "core/costing/cost_sheet.h"
#include "core/costing/formula.h"
#include "core/needs/requirements.h"

#include <cstdint>
#include <span>

namespace sp::costing {

/// What else a cost is, besides its amount: set-up, floor, labour and spoilage are sums over these.
namespace tag {
inline constexpr std::uint16_t kOnce = 1;          ///< once for the job; else it grows with the pieces
inline constexpr std::uint16_t kPaidOut = 2;       ///< paid for this job: the floor is their sum
inline constexpr std::uint16_t kFallsAway = 4;     ///< with the templates on the wall: set-up is their sum
inline constexpr std::uint16_t kLabour = 8;        ///< own work at the bench
inline constexpr std::uint16_t kLostMaterial = 16; ///< lost with a spoiled piece: material
inline constexpr std::uint16_t kLostWork = 32;     ///< lost with a spoiled piece: work, wear, overhead
inline constexpr std::uint16_t kLostOnAny = 64;    ///< of those: lost on the customer's own garment too
inline constexpr std::uint16_t kOfPacking = 128;   ///< of those: a spoiled piece never gets it (before rules 3 it did)
inline constexpr std::uint16_t kOnCharge = 256;    ///< arises on a charge without stones too
inline constexpr std::uint16_t kPaysOff = 512;     ///< a share in a set
} // namespace tag

/// What the parts of a line are made from. The sums are over the parts above, in the order of the table.
struct PartInputs {
    const catalogue::OrderLine& line;
    const catalogue::PriceBook& book;
    const needs::Requirements& takes;
    const OrderShare& share;
    std::int64_t rules = catalogue::kRulesVersion; ///< by which it is costed
    units::Money above = {};                       ///< all of them
    units::Money lostMaterials = {};               ///< those lost with a spoiled piece of this line
    units::Money lostWork = {};

    /// From rules 3 on a spoiled piece costs nothing of its packing.
    bool losesPacking() const { return rules < 3; }
    /// From rules 3 on the card fee is taken off the price.
    bool holdsCardFee() const { return rules < 3 && book.shop.rules.cardFee.charged; }
    /// From rules 3 on what is bought carries its freight.
    bool carriesFreight(const catalogue::PricedMaterial* material) const {
        return material && rules >= 3 && material->freight.isCarried();
    }
    /// By the packs that the order takes of it.
    const units::UnitPrice& priceOf(const catalogue::PricedMaterial& material) const {
        if (!share.prices || material.breaks.empty()) return *material.price;
        const auto known = share.prices->find(material.material.id);
        return known == share.prices->end() ? *material.price : known->second.price;
    }
    /// How the set of a place is paid off; null where it is paid by the job.
    const SetShare* paidOff(std::size_t place) const {
        if (share.sets.empty() || share.sets[place].planned.isZero()) return nullptr;
        return &share.sets[place];
    }
    /// Whether the set of a place is cut for this line, or for it and others.
    bool isCut(std::size_t place) const {
        const auto* set = paidOff(place);
        return !line.places[place].templatesOnWall && !(set && set->holdsWork);
    }
    units::Count pieces() const { return units::Count::of(takes.pieces); }
};

/// A row of the table: a part with its rule. A part that is made of parts has no rule, it is their sum.
struct PartRow {
    using Rule = units::Fraction (*)(const PartInputs&, std::size_t);

    Part part = Part::Job;
    Part within = Part::Job; ///< the part that it is a part of
    std::uint16_t tags = 0;
    std::size_t first = 0;                                        ///< indices run from here
    std::size_t (*most)(const PartInputs&) = nullptr;             ///< to below it; null: the first alone
    bool (*arises)(const PartInputs&, std::size_t) = nullptr;     ///< null: always
    Rule amount = nullptr;                                        ///< micro-units, exactly; null: the sum of its parts
    Formula (*formula)(const PartInputs&, std::size_t) = nullptr; ///< the same as a value
    Rule lost = nullptr; ///< what of it is lost with spoiled pieces, before their share; null: the amount
};

/// All parts of the cost sheet, in reading order: each rule is written here, once. To add a cost is to add a row.
std::span<const PartRow> partTable();

} // namespace sp::costing

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"
#include "core/catalogue/order.h"
#include "core/catalogue/shop.h"
#include "core/units/fraction.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sp::needs {

// Pieces made besides those handed over, because some are expected to be spoiled: what is bought, cut and brushed
// reckons with them, and so that one spoiled garment does not stop a job. What spoilage costs stays exact (costing) and
// is not rounded to them. Common practice, no source.

/// When a shop plans spares, and what it expects to spoil.
struct SpareRule {
    units::Rate spoilage; ///< share of the pieces made; none planned outside 0 to below 100 %
    catalogue::Spares when = catalogue::Spares::Never;
};

inline SpareRule spareRuleOf(const catalogue::Shop& shop) { return {shop.rates.spoilage, shop.rates.spares}; }

/// The pieces expected to be spoiled until so many are good: n × s ÷ (1 − s).
units::Fraction expectedSpoiled(std::int64_t pieces, units::Rate spoilage);

/// The spares for so many pieces: that, rounded up; none where it is below half a piece, unless the shop always plans
/// one. Throws base::Overflow.
std::int64_t sparesFor(std::int64_t pieces, const SpareRule& rule);

/// The spares of a line.
struct LineSpares {
    std::int64_t pieces = 0; ///< made besides on this line
    std::string size;        ///< of the blank, that these are of; empty: the plain one
    std::int64_t all = 0;    ///< on the same blank in the whole order, on whichever line
    std::int64_t of = 0;     ///< pieces on that blank

    friend bool operator==(const LineSpares&, const LineSpares&) = default;
};

/// For each line of an order. Lines on the same blank or backing count together, and their spares are of the size with
/// most pieces, on the line with most of that size; of equal ones the first. Lines on the customer's own garments count
/// alone: a garment cannot be bought, a spare there is stones and tape. Of a charge there are none. Throws
/// base::Overflow.
std::vector<LineSpares> sparesOf(std::span<const catalogue::OrderLine> lines, const SpareRule& rule);

/// How many and why, or why none; nothing where the shop expects none to be spoiled or never plans spares.
std::optional<base::Message> spareNote(const LineSpares& spares, const SpareRule& rule);

} // namespace sp::needs

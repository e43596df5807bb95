// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/count.h"
#include "core/units/date.h"
#include "core/units/money.h"
#include "core/units/rate.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::catalogue {

/// Stones, whole sheets or pieces of one material in a kit. The size of a sheet is the material's.
struct KitItem {
    base::Id material;
    units::Count count; ///< 1 or more

    friend bool operator==(const KitItem&, const KitItem&) = default;
};

/// A bundle of materials that a supplier sells at one price, as a rule for one design.
struct Kit {
    base::Id id;
    std::string name; ///< unique in a book
    base::Id supplier;
    base::Id design;    ///< whose templates come with it ready cut, and for which it is meant; may be none
    units::Money price; ///< without templates cut
    std::optional<units::Money> priceWithTemplates; ///< the same with the design's templates cut; none: not offered
    std::vector<KitItem> items;                     ///< each material once
    std::vector<std::string> tools;                 ///< what comes along and does not limit how many pieces can be made
    units::Rate shortCount;                         ///< share of its stones that is missing as a rule; 0 to below one
    std::optional<units::Date> pricedOn;            ///< when the price was last seen

    friend bool operator==(const Kit&, const Kit&) = default;
};

} // namespace sp::catalogue

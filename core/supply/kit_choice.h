// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/job_plan.h"
#include "core/supply/kit_yield.h"

#include "core/catalogue/design.h"
#include "core/catalogue/price_book.h"

namespace sp::supply {

/// What so many pieces cost by one kind of kit (and what no kit holds, in bulk) and in bulk alone. Nothing from the
/// shelf; shipping in both.
struct KitPrice {
    std::int64_t pieces = 1;
    StrategyCost kit;
    StrategyCost bulk;
};

/// Whether the kit is the cheaper of the two, or costs the same; none where neither covers the quantity.
std::optional<bool> isKitCheaper(const KitPrice& price);

/// A run of quantities for which the same of the two costs less; the kit where both cost the same.
struct KitRun {
    std::int64_t from = 1;
    std::int64_t to = 1;
    bool isKit = false;

    friend bool operator==(const KitRun&, const KitRun&) = default;
};

/// A kit beside bulk packs, for one design.
struct KitChoice {
    base::Id kit;
    std::string name;
    base::Result<YieldAnswer> makes; ///< of one kit; errors: as yieldProblemOf and kitYield
    std::vector<KitPrice> prices;    ///< of 1, 2, … pieces, and at last of those asked for where they are more
    std::vector<KitRun> runs; ///< of 1, 2, … pieces, neighbours differ; quantities that neither covers stand in none
    /// From so many pieces on, for ever, bulk costs less; only when that is proven.
    std::optional<std::int64_t> bulkForGoodFrom;

    const KitPrice* at(std::int64_t pieces) const;
};

/// Whether a kit is for that design, or holds stones of every colour that it takes.
bool isServedBy(const catalogue::Design& design, const catalogue::Kit& kit);

/// Each kit of the supplies that serves the design beside bulk, in their order, for 1 to `last` pieces, for as many
/// more as show what holds for good where a few hundred do, and for those `asked` for. Where templates are not cut in
/// the shop, kits come with them. `isStopped` is asked before each quantity; what is worked out by then is left as it
/// is. Errors: as jobOf, for the design itself.
base::Result<std::vector<KitChoice>> kitChoices(const catalogue::Design& design, const Supplies& supplies,
                                                const catalogue::PriceBook& prices, std::int64_t asked,
                                                std::int64_t last, layout::FitMemo& fits,
                                                const std::function<bool()>& isStopped);

} // namespace sp::supply

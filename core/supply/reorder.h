// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/material.h"
#include "core/units/date.h"
#include "core/units/fraction.h"

#include <cstdint>
#include <vector>

// When to order more of a material, and how much: by what the shop used of it.
namespace sp::supply {

/// So many were used on a day; a negative count came back on it.
struct DayUse {
    units::Date day;
    std::int64_t count = 0;

    friend bool operator==(const DayUse&, const DayUse&) = default;
};

/// What is used of a material in a day, over the days that were looked at; one without use counts as nothing used.
struct Demand {
    std::int64_t used = 0;
    std::int64_t days = 0;
    units::Fraction perDay;
    units::Fraction variance; ///< of a day's use: squares off the mean ÷ (days − 1); 0 of a single day

    /// One day's use as it is known from elsewhere: its mean and its standard deviation.
    static Demand known(units::Fraction perDay, units::Fraction deviation);
};

/// From `from` to `to`, both counted. What came back on a day more than went out is no use, and nothing is taken off
/// other days for it; days outside are passed over. Throws base::Overflow for more than sums of 64 bits hold.
Demand demandOf(const std::vector<DayUse>& uses, units::Date from, units::Date to);

/// Fewer days than these say too little of what is used.
inline constexpr std::int64_t kLeastDaysKnown = 14;

/// Whether the days that were looked at tell when to order: kLeastDaysKnown or more, and no fewer than `leadDays`.
bool isKnownLongEnough(const Demand& demand, std::int64_t leadDays);

/// Packs of `inPack` things (1 or more) that a year of 365 days like these takes.
units::Fraction packsInAYear(const Demand& demand, units::Count inPack);

/// How sure a shop wants to be that a delivery comes before the shelf is empty, as the share of deliveries.
enum class Service { Percent90, Percent95, Percent98, Percent99 };

/// So many standard deviations of the use in the lead time are kept for that (normal distribution).
units::Fraction safetyFactor(Service service);

struct ReorderPoint {
    units::Fraction inLeadTime; ///< used on the average until a delivery is here
    std::int64_t safety = 0;    ///< kept for more than that, whole things, rounded up
    std::int64_t point = 0;     ///< with so many left, or fewer, more is to be ordered

    friend bool operator==(const ReorderPoint&, const ReorderPoint&) = default;
};

/// Mean of a day × lead days + factor × deviation of a day × √lead days, the two rounded up together. Errors: Missing
/// where nothing was used; OutOfRange for lead days that no supplier can have (catalogue::fields::kDays); TooLarge.
base::Result<ReorderPoint> reorderPointOf(const Demand& demand, std::int64_t leadDays, units::Fraction factor);

/// What an order of a material in packs costs beside the packs. A year, or whatever time `used` and `holding` are of.
struct OrderTerms {
    units::Fraction used;                      ///< packs in a year, above 0
    units::Money perOrder;                     ///< each order costs, above 0: shipping, and the time for it
    units::Rate holding;                       ///< a year of holding costs so much of a pack's price, above 0
    std::vector<catalogue::PriceBreak> prices; ///< by `from`, ascending, the first from 1
};

/// The number of packs to order at a time that costs least in a year.
struct EconomicOrder {
    std::int64_t packs = 0;
    units::Fraction goods;    ///< micro-units in a year
    units::Fraction ordering; ///< orders in a year × what each costs
    units::Fraction holding;  ///< half an order lies there on the average
    units::Fraction cost() const { return goods + ordering + holding; }
};

/// Looks at each price with √(2 × used × per order ÷ holding of a pack), as far as the price is had for so many, and at
/// the fewest for which it is; of equals the smaller order. Errors: Missing where nothing is used, and where a pack has
/// no price or one of nothing; OutOfRange where an order or holding costs nothing; TooLarge, also for an order of more
/// than 1,000,000,000 packs.
base::Result<EconomicOrder> economicOrderOf(const OrderTerms& terms);

} // namespace sp::supply

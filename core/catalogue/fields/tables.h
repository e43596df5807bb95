// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/customer.h"
#include "core/catalogue/design.h"
#include "core/catalogue/design_artwork.h"
#include "core/catalogue/fields/field.h"
#include "core/catalogue/kit.h"
#include "core/catalogue/material.h"
#include "core/catalogue/order.h"
#include "core/catalogue/payment.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/price_list.h"
#include "core/catalogue/shop.h"

/// The one table of fields: what a field is called in a file and by a person, what it may hold, since when it is
/// there. Records are written, read and checked by it, and so is what a person may type.
namespace sp::catalogue::fields {

inline constexpr Range kAmount{0, 1'000'000'000'000'000}; ///< money, micro-units: to a thousand million
inline constexpr Range kEitherAmount{-kAmount.highest, kAmount.highest};
inline constexpr Range kShare{0, 1'000'000};   ///< ppm, 0 to 100 %
inline constexpr Range kPartShare{0, 999'999}; ///< ppm, 0 to below 100 %
inline constexpr Range kLengths{0, units::kMaxLength.nanometres()};
inline constexpr Range kTimes{0, 36'000'000'000}; ///< ms, to 10,000 hours
inline constexpr Range kDayTimes{0, 864'000'000}; ///< ms of a day: ten who never rest
inline constexpr Range kCounts{0, 1'000'000'000};
inline constexpr Range kFromOne{1, 1'000'000'000};
inline constexpr Range kSums{0, 1'000'000'000'000'000}; ///< of counts
inline constexpr Range kDays{0, 36'500};
inline constexpr Range kColour{0, 0xFFFFFF};
inline constexpr Range kLife{1, 1'000'000'000'000};

inline constexpr Text kName{1, 200, false};
inline constexpr Text kLine{0, 200, false};
inline constexpr Text kLines{0, 20'000, true};

template<>
const Object& objectOf<StoneTraits>();
template<>
const Object& objectOf<SheetTraits>();
template<>
const Object& objectOf<BlankSize>();
template<>
const Object& objectOf<Material>();
template<>
const Object& objectOf<Freight>();
template<>
const Object& objectOf<Supplier>();
template<>
const Object& objectOf<PriceBreak>();
template<>
const Object& objectOf<Pack>();
template<>
const Object& objectOf<PackingUse>();
template<>
const Object& objectOf<StoneCount>();
template<>
const Object& objectOf<SetCost>();
template<>
const Object& objectOf<DesignSet>();
template<>
const Object& objectOf<Design>();
template<>
const Object& objectOf<KitItem>();
template<>
const Object& objectOf<Kit>();
template<>
const Object& objectOf<ColourMaterial>();
template<>
const Object& objectOf<ColumnHeading>();
template<>
const Object& objectOf<PriceListColumns>();
template<>
const Object& objectOf<Certificate>();
template<>
const Object& objectOf<Customer>();
template<>
const Object& objectOf<StepStandard>();
template<>
const Object& objectOf<HeatPress>();
template<>
const Object& objectOf<Cutter>();
template<>
const Object& objectOf<BenchStandards>();
template<>
const Object& objectOf<MarkUpStep>();
template<>
const Object& objectOf<RushStep>();
template<>
const Object& objectOf<PlaceSurcharge>();
template<>
const Object& objectOf<Rounding>();
template<>
const Object& objectOf<TaxRate>();
template<>
const Object& objectOf<TaxRule>();
template<>
const Object& objectOf<CardFee>();
template<>
const Object& objectOf<PriceRules>();
template<>
const Object& objectOf<ShopRates>();
template<>
const Object& objectOf<Letterhead>();
template<>
const Object& objectOf<MeantAsNothing>();
template<>
const Object& objectOf<BenchWeek>();
template<>
const Object& objectOf<ClosedDays>();
template<>
const Object& objectOf<WayToPay>();
template<>
const Object& objectOf<Shop>();
template<>
const Object& objectOf<SizeCount>();
template<>
const Object& objectOf<Placement>();
template<>
const Object& objectOf<OrderLine>();
template<>
const Object& objectOf<Discount>();
template<>
const Object& objectOf<Payment>();
template<>
const Object& objectOf<Choice>();
template<>
const Object& objectOf<Order>();
template<>
const Object& objectOf<units::UnitPrice>();
template<>
const Object& objectOf<PriceOrigin>();
template<>
const Object& objectOf<PricedMaterial>();

} // namespace sp::catalogue::fields

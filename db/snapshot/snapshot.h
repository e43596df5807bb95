// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "db/snapshot/records.h"

#include <string>
#include <string_view>

namespace sp::db::snapshot {

/// The one version of the JSON that is written: {"format":1,"kind":"material","value":{…}}. Whole numbers in the
/// units of the file, enumerators as words, days as 2026-10-12, nothing as null, keys sorted, no white space: equal
/// values give equal bytes.
inline constexpr int kFormat = 1;

/// The value as JSON. For Shop, BenchStandards, Material, Supplier, Pack, Kit, Design, ColourMaterial,
/// PriceListColumns, Customer, Order, PricedMaterial and the records.
template<class T>
std::string write(const T& value);

/// Reads what `write` wrote; every key there once and no other, whole numbers whole, everything within its range.
/// Errors: TooNew for a later format; Damaged for anything else.
template<class T>
base::Result<T> read(std::string_view json);

/// Whether a value may be saved: the ranges of Fields and what the catalogue's headers say beyond them.
/// Errors: Invalid, naming the field and the thing.
template<class T>
base::Done check(const T& value);

/// In words, what differs between two values of one thing: the field, when it is one ("fixed price"); empty when it
/// is several.
template<class T>
std::string difference(const T& before, const T& after);

} // namespace sp::db::snapshot

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"
#include "core/units/count.h"
#include "core/units/date.h"
#include "core/units/length.h"

namespace sp::units {

// How measured values enter a message.
inline base::Value asValue(Length length) {
    return {base::Quantity{base::Quantity::Unit::Nanometres, length.nanometres()}};
}
inline base::Value asValue(Count count) { return {count.value()}; }
inline base::Value asValue(const Date& day) {
    return {base::Quantity{base::Quantity::Unit::Days, day.days().time_since_epoch().count()}};
}
inline base::Extent extent(Length width, Length height) { return {width.nanometres(), height.nanometres()}; }

} // namespace sp::units

// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/count.h"
#include "core/units/rate.h"

namespace sp::supply {

/// The chance that at least `needed` of `received` stones end up on a piece when each is lost on its own with the
/// chance `loss` (0 to one million parts per million, both included): the upper tail of the binomial distribution.
/// `received` is 0 to 1,000,000,000. Relative error below 1e-11 for results above 1e-300.
/// Source: C. Loader, "Fast and accurate computation of binomial probabilities" (2000), for the first term (from
/// memory); the rest of the tail is summed from it outwards, all terms of one sign.
double chanceOfAtLeast(units::Count needed, units::Count received, units::Rate loss);

} // namespace sp::supply

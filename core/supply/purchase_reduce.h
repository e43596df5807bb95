// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_model.h"

namespace sp::supply {

/// The model as the search can hold it: of a material of which very much is needed a part is bought ahead at the least
/// price a unit, and what is then still too much is counted in larger units. A plan of it covers the whole need;
/// `floor` stays a bound for the whole problem.
Model reducedModel(Model model);

} // namespace sp::supply

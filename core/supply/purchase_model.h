// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase.h"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

namespace sp::supply {

/// No price, no plan: larger than any sum, small enough that a few of them add up without wrapping.
inline constexpr std::int64_t kNever = std::int64_t{1} << 58;

/// A number of the model, which is not negative where it counts places, as an index.
template<class T>
constexpr std::size_t at(T n) {
    return static_cast<std::size_t>(n);
}

/// The purchase problem in whole numbers. Money counts granules (the greatest common divisor of all sums in the
/// problem), materials count units (the greatest common divisor of what packs give). Only packs that can be bought
/// remain; packs that give nothing needed belong to the last material, which needs nothing.
struct ModelGive {
    int material = 0;
    std::int64_t units = 0;
};
struct ModelTier {
    std::int64_t from = 1;
    std::int64_t each = 0;
};
struct ModelPack {
    std::size_t source = 0; ///< index into PurchaseProblem::packs
    int supplier = 0;
    std::vector<ModelGive> gives;
    std::vector<ModelTier> tiers; ///< rising `from`
    std::int64_t most = 0;
    std::int64_t value = 0; ///< of what one pack gives, in thousandths of a micro-unit

    bool isKit() const { return gives.size() > 1; }
    /// Granules for `count` packs, kNever when so many cannot be bought.
    std::int64_t cost(std::int64_t count) const;
    /// The largest count worth thinking of to cover `need` units of its give `g`, or to reach a later price.
    std::int64_t lastFrom() const { return tiers.back().from; }
};
struct ModelSupplier {
    std::int64_t shipping = 0;
    std::int64_t freeFrom = kNever;
    std::int64_t minimum = 0;
    std::int64_t goods = 0; ///< bought before the search
};
struct Model {
    std::int64_t granule = 1;        ///< micro-units
    std::vector<std::int64_t> needs; ///< units; the last is the material that needs nothing
    std::vector<ModelPack> packs;
    std::vector<ModelSupplier> suppliers;
    std::vector<std::int64_t> bought; ///< packs bought before the search, by model pack
    std::int64_t cost = 0;            ///< of them
    std::int64_t floor = 0;           ///< a bound for the whole problem, used when it is reduced
    bool isReduced = false;           ///< see reducedModel
};

/// A problem that cannot be covered says why in `impossible`.
struct Modelled {
    Model model;
    std::optional<base::Message> impossible;
    std::vector<base::Message> warnings;
    std::vector<MaterialCount> needs;        ///< each needed material once, as asked
    std::vector<std::int64_t> valuePerStone; ///< by material index of `materials`
    std::vector<std::string> materials;      ///< needed ones first
};

/// Checks the problem and turns it into whole numbers. Errors as planPurchase.
base::Result<Modelled> modelled(const PurchaseProblem& problem);

} // namespace sp::supply

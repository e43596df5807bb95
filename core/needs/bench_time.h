// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/order.h"
#include "core/units/duration.h"

#include <array>
#include <cstdint>
#include <span>

namespace sp::needs {

/// How long the bench is busy with a line, by step; steps that fall away are zero.
struct BenchTime {
    std::array<units::Duration, catalogue::kSteps.size()> steps{};

    units::Duration of(catalogue::Step step) const { return steps[static_cast<std::size_t>(step)]; }
    units::Duration oncePerJob() const;
    units::Duration forPieces() const;
    units::Duration untilPacked() const; ///< that for pieces without packing, which a spoiled piece never gets
    units::Duration total() const { return oncePerJob() + forPieces(); }

    friend bool operator==(const BenchTime&, const BenchTime&) = default;
};

/// The bench standards applied to so many pieces of a line (see catalogue::StepStandard for the formula): rounded once
/// per step and place to the millisecond. Of a place with its templates on the wall art, cutting, weeding and set-up
/// are zero; trimming and packing are done once for a piece, with the colours and stones of all its places. A charge
/// takes no time. `cycles`: the press cycles at each place. `setPieces`, place by place, are the pieces of all that
/// share a set (sharedSets): of what is done once for it the line has its part by pieces, nothing where it is 0; empty:
/// every set is the line's alone. Throws base::Overflow.
BenchTime benchTime(const catalogue::BenchStandards& standards, const catalogue::OrderLine& line, std::int64_t pieces,
                    std::span<const std::int64_t> cycles, std::span<const units::Count> setPieces = {});

} // namespace sp::needs

// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/scalar.h"

namespace sp::units {

/// Stones, pieces, sheets: things that are counted.
class Count : public Scalar<Count> {
  public:
    constexpr Count() = default;
    static constexpr Count of(std::int64_t things) { return Count(things); }
    constexpr std::int64_t value() const { return m_count; }

  private:
    friend class Scalar<Count>;
    using Scalar::Scalar;
};

/// The trade's counting units (common practice, no source): a gross is twelve dozen.
inline constexpr std::int64_t kGross = 144;

} // namespace sp::units

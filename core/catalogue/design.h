// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/catalogue/design_set.h"
#include "core/catalogue/packing.h"
#include "core/units/count.h"
#include "core/units/duration.h"
#include "core/units/length.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sp::catalogue {

/// The most stones of one material in a piece, and the most materials in it.
inline constexpr std::int64_t kMaxStonesAPiece = 1'000'000;
inline constexpr std::int64_t kMaxColours = 200;

/// So many stones of one material in one piece.
struct StoneCount {
    base::Id material;
    units::Count count;

    friend bool operator==(const StoneCount&, const StoneCount&) = default;
};

struct Design {
    base::Id id;
    std::string name; ///< unique in a book
    units::Length width;
    units::Length height;
    std::vector<StoneCount> stones;
    bool templatesOnWall = false;              ///< cut already: no art, no cutting to charge
    std::optional<units::Count> plannedPieces; ///< pay the set of templates off over so many pieces instead of one job
    base::Id usualBase;                        ///< backing or blank it goes on unless told otherwise; may be none
    std::optional<units::Duration> artTime;    ///< instead of the bench standard's
    /// Its own, instead of the shop's; empty: it goes out without any. None: as the shop packs.
    std::optional<std::vector<PackingUse>> packing;
    std::string note;
    std::optional<SetCost> setCost; ///< see DesignSet; only of one with planned pieces

    friend bool operator==(const Design&, const Design&) = default;
};

} // namespace sp::catalogue

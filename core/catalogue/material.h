// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/count.h"
#include "core/units/date.h"
#include "core/units/fraction.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sp::catalogue {

enum class MaterialKind { Stone, Tape, Template, Backing, Blank, Packing };

/// Which price of a material the cost sheet uses.
enum class PriceBasis {
    Replacement,  ///< what the usual pack costs today
    ShelfAverage, ///< the moving average of what lies on the shelf
    Fixed         ///< a costing price the owner set
};

enum class SheetForm { Sheet, Roll };

/// What of a sheet that was cut into is charged.
enum class ShareBasis {
    WholeSheets, ///< what is cut into is gone
    ByPosition   ///< offcuts are kept: each piece pays for its position
};

/// What a stone loses until the shop knows better: of those that are taken out, spilled or flawed (common practice, no
/// source).
inline constexpr units::Rate kUsualStoneLoss = units::Rate::fromPercent(2);

struct StoneTraits {
    std::string colour;        ///< as the trade says it: "Aquamarine"
    std::uint32_t rgb = 0;     ///< 0xRRGGBB, for drawing
    std::string size = "SS10"; ///< a name of the SS table
    units::Rate loss;          ///< share of the stones taken out that is spilled or flawed; 0 to below 100 %

    friend bool operator==(const StoneTraits&, const StoneTraits&) = default;
};

/// Tape, template and backing: sheets, or rolls of a width (`height` is then the roll's length).
struct SheetTraits {
    SheetForm form = SheetForm::Sheet;
    units::Length width;
    units::Length height;
    units::Length margin; ///< strip all round a sheet that cannot be used
    units::Length border; ///< added on every side of the design to make the piece that is cut
    units::Length gap;    ///< kept between neighbouring pieces
    bool oneWay = false;  ///< the material has a direction: no quarter turns
    ShareBasis basis = ShareBasis::WholeSheets;
    std::int64_t lifts = 1; ///< tape: how often one piece lifts stones before it is spent; others 1

    friend bool operator==(const SheetTraits&, const SheetTraits&) = default;
};

struct BlankSize {
    std::string name;       ///< "2XL"
    units::Money extraCost; ///< what this size costs the shop beyond the blank's price
    units::Money surcharge; ///< what the customer pays on top

    friend bool operator==(const BlankSize&, const BlankSize&) = default;
};

/// A thing bought and used up. Only the traits of its kind mean anything: `stone` for stones, `sheet` for tape,
/// template and backing, `sizes` for blanks; packing has none.
struct Material {
    base::Id id;
    std::string name; ///< unique in a book, as shown: "Aquamarine SS10"
    MaterialKind kind = MaterialKind::Stone;
    PriceBasis basis = PriceBasis::Replacement;
    units::Money fixedPrice; ///< for one thing (stone, sheet, piece), used with PriceBasis::Fixed
    StoneTraits stone;
    SheetTraits sheet;
    std::vector<BlankSize> sizes;
    bool meantAsNothing = false; ///< a price of 0 is meant: nobody is told of it, and it is bought for nothing

    friend bool operator==(const Material&, const Material&) = default;
};

/// How much of a supplier's shipping what is bought there carries.
enum class FreightKind {
    Nothing,
    Share, ///< a share of the goods' price
    Spread ///< the shipping of an order, spread over the goods of a usual one
};

/// What a price carries of the freight to the shop, besides the goods. None where the price holds it already.
struct Freight {
    FreightKind kind = FreightKind::Nothing;
    units::Rate share;       ///< of the goods' price, 0 to 100 %
    units::Money shipping;   ///< of an order
    units::Money usualOrder; ///< goods of a usual order, above zero where something is spread over them

    bool isCarried() const;
    /// Freight for each of the goods' price, exactly; 0 where nothing is carried.
    units::Fraction ratio() const;

    friend bool operator==(const Freight&, const Freight&) = default;
};

struct Supplier {
    base::Id id;
    std::string name;
    std::int64_t leadDays = 0;
    units::Money shipping;
    std::optional<units::Money> freeFrom;       ///< goods sum from which shipping is free
    units::Money minimum;                       ///< goods sum below which no order is taken
    FreightKind freight = FreightKind::Nothing; ///< what costs carry of the shipping
    units::Rate freightShare = {};              ///< with FreightKind::Share, 0 to 100 %
    units::Money usualOrder = {};               ///< with FreightKind::Spread: goods of a usual order

    friend bool operator==(const Supplier&, const Supplier&) = default;
};

/// From `from` packs on, each pack costs `each` (all of them, not only the further ones).
struct PriceBreak {
    units::Count from = units::Count::of(1);
    units::Money each;

    friend bool operator==(const PriceBreak&, const PriceBreak&) = default;
};

/// A supplier's offer of one material.
struct Pack {
    base::Id id;
    base::Id material;
    base::Id supplier;
    std::string name;                    ///< "bag of 10 gross"
    units::Count amount;                 ///< stones, sheets, rolls or pieces in it, 1 or more
    std::vector<PriceBreak> prices;      ///< by `from`, ascending, the first from 1
    bool usual = false;                  ///< the pack whose price is the replacement price
    std::optional<units::Date> pricedOn; ///< when the price was last seen
    std::string item = {};               ///< its number in the supplier's lists, else what they say of it; may be empty

    friend bool operator==(const Pack&, const Pack&) = default;
};

/// What the price of one of the supplier's packs carries: spread, nothing where a usual order is shipped free.
Freight freightOf(const Supplier& supplier);

/// "stone", "tape" and so on, in English, as errors and the headless verbs say it.
std::string_view nameOf(MaterialKind kind);

} // namespace sp::catalogue

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/catalogue/bench_week.h"
#include "core/catalogue/packing.h"
#include "core/units/count.h"
#include "core/units/currency.h"
#include "core/units/duration.h"
#include "core/units/money.h"
#include "core/units/rate.h"
#include "core/units/text.h"

#include <cstdint>
#include <string>
#include <vector>

namespace sp::catalogue {

/// From `from` pieces of a line on, this mark-up on cost.
struct MarkUpStep {
    units::Count from = units::Count::of(1);
    units::Rate markUp;

    friend bool operator==(const MarkUpStep&, const MarkUpStep&) = default;
};

/// Wanted within `days` of the quote: this surcharge on the goods.
struct RushStep {
    std::int64_t days = 0;
    units::Rate surcharge;

    friend bool operator==(const RushStep&, const RushStep&) = default;
};

/// With a design at this place of a piece, the customer pays so much more for the piece.
struct PlaceSurcharge {
    std::string place; ///< "Sleeve"; small and capital letters are one
    units::Money surcharge;

    friend bool operator==(const PlaceSurcharge&, const PlaceSurcharge&) = default;
};

enum class RoundingKind {
    Nearest, ///< to the nearest multiple of `step`, halves up
    Up,      ///< to the next multiple of `step`
    Ending   ///< to the next price whose last minor units are `ending` (95 of 100, 99 of 100)
};

/// How a piece price is rounded. All in minor units of the currency.
struct Rounding {
    RoundingKind kind = RoundingKind::Nearest;
    std::int64_t step = 1;    ///< Nearest and Up: 1, 5, 25, 50, 100 …
    std::int64_t ending = 95; ///< Ending: 0 to 99, repeated every 100 minor units

    friend bool operator==(const Rounding&, const Rounding&) = default;
};

enum class SetUpCharge { OwnLine, Spread };
enum class TaxRounding { PerInvoice, PerLine };
/// The tax on what is given away; what holds differs by place.
enum class TaxOnGifts {
    None,
    OnCost ///< the shop bears it: the line's rate on what it costs
};
enum class Paper { Letter, A4 };

/// A rate of tax that a line can name instead of the usual one.
struct TaxRate {
    std::string name; ///< as printed
    units::Rate rate; ///< 0 to 100 %

    friend bool operator==(const TaxRate&, const TaxRate&) = default;
};

struct TaxRule {
    std::string name = "Sales tax"; ///< of the usual rate, as printed
    units::Rate rate;               ///< the usual one, 0 to 100 %
    bool inclusive = false;         ///< prices asked already hold the tax
    TaxRounding rounding = TaxRounding::PerInvoice;
    std::vector<TaxRate> others = {}; ///< besides the usual one; no two rates have one name
    TaxOnGifts onGifts = TaxOnGifts::None;

    friend bool operator==(const TaxRule&, const TaxRule&) = default;
};

struct CardFee {
    bool charged = false;
    units::Rate rate;   ///< 0 to below 100 %
    units::Money fixed; ///< per payment

    friend bool operator==(const CardFee&, const CardFee&) = default;
};

/// What the shop decided about its prices.
struct PriceRules {
    std::vector<MarkUpStep> ladder;     ///< ascending, the first from 1
    std::vector<RushStep> rush;         ///< ascending by days
    std::vector<PlaceSurcharge> places; ///< no two of one place
    Rounding rounding;
    SetUpCharge setUp = SetUpCharge::Spread;
    units::Money minimumOrder;
    TaxRule tax;
    CardFee cardFee;
    units::Rate depositRate;  ///< share of the total asked before work starts, 0 to 100 %; a payment of its own
    units::Money depositStep; ///< the deposit is rounded up to a multiple of it; zero: the minor unit
    std::int64_t validDays = 30;
    std::int64_t daysToPay = 14; ///< from the day of an invoice

    friend bool operator==(const PriceRules&, const PriceRules&) = default;
};

/// When pieces are made besides those handed over, because some are expected to be spoiled (needs/spares.h).
enum class Spares {
    WhereExpected, ///< where half a piece or more is
    Always,        ///< one at least
    Never
};

/// What an hour and a month cost.
struct ShopRates {
    units::Money labourPerHour;
    units::Money overheadPerMonth;
    units::Duration productivePerMonth; ///< bench hours that carry the overhead, above zero
    units::Rate spoilage;               ///< share of the pieces made that cannot be sold, 0 to below 100 %
    units::Money garmentAllowance;      ///< what replacing one of the customer's own garments is reckoned at
    Spares spares = Spares::WhereExpected;

    friend bool operator==(const ShopRates&, const ShopRates&) = default;
};

/// What the shop means to cost nothing or to do without: there nobody is told that it is in no price. Each counts only
/// while it is so.
struct MeantAsNothing {
    bool tape = false;
    bool templates = false;
    bool labour = false;
    bool overhead = false;
    bool pressRunning = false;
    bool pressWear = false;
    bool cutterWear = false;
    bool tax = false; ///< none is charged

    friend bool operator==(const MeantAsNothing&, const MeantAsNothing&) = default;
};

struct Letterhead {
    std::string name;
    std::string lines; ///< address and how to reach the shop, lines of free text
    std::string terms; ///< printed under the totals
    std::string care;  ///< care and safety notes, printed last

    friend bool operator==(const Letterhead&, const Letterhead&) = default;
};

/// A way in which the shop is paid. Cash has change and a smallest coin.
struct WayToPay {
    std::string name;
    bool isCash = false;

    friend bool operator==(const WayToPay&, const WayToPay&) = default;
};

/// When what a job takes is booked as used.
enum class UsedWhen {
    Ready,  ///< once all of it is made
    Making, ///< once it is begun; what the shelf lacked then, when it is ready
    ByHand  ///< by nobody but who books it
};

/// Everything on the Shop place but the bench standards.
struct Shop {
    Letterhead letterhead;
    units::Currency currency;
    Paper paper = Paper::Letter;
    units::LengthUnit lengthUnit = units::LengthUnit::Inch;
    units::TemperatureUnit temperatureUnit = units::TemperatureUnit::Fahrenheit;
    ShopRates rates;
    PriceRules rules;
    std::vector<units::Count> ladderQuantities; ///< for which the slip shows the price of more pieces
    bool ladderOnSheet = true;
    bool offersMoreOnSheet = false;    ///< the sheet says where more pieces come to less
    bool countsDesignOverLines = true; ///< the mark-up goes by a design's pieces over all lines of an order
    bool paysOffWork = false;          ///< where a set is paid off over planned pieces, so are its art and cutting
    base::Id usualTape;                ///< the tape every line is lifted with; none: no tape is charged
    base::Id usualTemplate;            ///< the sheet templates are cut from; none: no template is charged
    std::vector<PackingUse> packing;   ///< what goes with every piece and every order, unless a design has its own
    MeantAsNothing meantAsNothing;
    BenchWeek benchWeek;                ///< nothing: no day is promised
    std::vector<ClosedDays> closedDays; ///< in any order; may overlap
    bool isBeingSetUp = false;          ///< the window has a place for the first steps of a new shop
    units::Money smallestCoin;          ///< cash is rounded to it, a whole number of minor units; 0: nothing is rounded
    std::vector<WayToPay> waysToPay;    ///< the first is offered first; none: cash, card, transfer and other
    UsedWhen usedWhen = UsedWhen::ByHand;
    std::string paperLanguage =
        {};              ///< of papers for customers with none of their own, a BCP 47 tag; empty: the window's
    bool isDemo = false; ///< the sheets and the window then say so

    friend bool operator==(const Shop&, const Shop&) = default;
};

} // namespace sp::catalogue

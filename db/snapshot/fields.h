// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/customer.h"
#include "core/catalogue/design.h"
#include "core/catalogue/design_artwork.h"
#include "core/catalogue/kit.h"
#include "core/catalogue/material.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/price_list.h"
#include "core/catalogue/shop.h"
#include "core/units/temperature.h"

#include <cstdint>
#include <string_view>

namespace sp::db::snapshot {

/// What a whole number may be, in the unit it is kept in.
struct Range {
    std::int64_t lowest = 0;
    std::int64_t highest = 0;
};

inline constexpr Range kAmount{0, 1'000'000'000'000'000}; ///< money, micro-units: to a thousand million
inline constexpr Range kEitherAmount{-kAmount.highest, kAmount.highest};
inline constexpr Range kShare{0, 1'000'000};   ///< ppm, 0 to 100 %
inline constexpr Range kPartShare{0, 999'999}; ///< ppm, 0 to below 100 %
inline constexpr Range kLengths{0, units::kLongest.nanometres()};
inline constexpr Range kTimes{0, 36'000'000'000}; ///< ms, to 10,000 hours
inline constexpr Range kCounts{0, 1'000'000'000};
inline constexpr Range kFromOne{1, 1'000'000'000};
inline constexpr Range kDays{0, 36'500};

/// What a text may be, in bytes of UTF-8.
struct Text {
    std::size_t shortest = 0;
    std::size_t longest = 200;
    bool hasLines = false;
};

inline constexpr Text kName{1, 200, false};
inline constexpr Text kLine{0, 200, false};
inline constexpr Text kLines{0, 20'000, true};

/// A key: may it be none?
enum class Key { Needed, MayBeNone };

/// How long a list may be.
struct Length {
    std::size_t longest = 0;
};

/// The fields of a value: its key in JSON, its name as a person knows it, the member, what it may hold. The writer,
/// the reader and the check of what is saved all walk this one list: Fields<T>::walk(visitor, value) calls
/// visitor(key, words, member, bounds) for each. Keys are part of the file format.
template<class T>
struct Fields;

template<>
struct Fields<catalogue::StoneTraits> {
    static void walk(auto& visit, auto& v) {
        visit("colour", "colour", v.colour, kLine);
        visit("rgb", "colour on the screen", v.rgb, Range{0, 0xFFFFFF});
        visit("size", "stone size", v.size, kLine);
        visit("loss_ppm", "loss", v.loss, kPartShare);
    }
};

template<>
struct Fields<catalogue::SheetTraits> {
    static void walk(auto& visit, auto& v) {
        visit("form", "form", v.form);
        visit("width_nm", "width", v.width, kLengths);
        visit("height_nm", "height", v.height, kLengths);
        visit("margin_nm", "margin", v.margin, kLengths);
        visit("border_nm", "border", v.border, kLengths);
        visit("gap_nm", "gap", v.gap, kLengths);
        visit("one_way", "direction", v.oneWay);
        visit("basis", "way of charging", v.basis);
        visit("lifts", "number of lifts", v.lifts, kFromOne);
    }
};

template<>
struct Fields<catalogue::BlankSize> {
    static void walk(auto& visit, auto& v) {
        visit("name", "name of a size", v.name, kName);
        visit("extra_cost_micros", "extra cost of a size", v.extraCost, kAmount);
        visit("surcharge_micros", "surcharge of a size", v.surcharge, kAmount);
    }
};

template<>
struct Fields<catalogue::Material> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::Needed);
        visit("name", "name", v.name, kName);
        visit("kind", "kind", v.kind);
        visit("basis", "kind of price", v.basis);
        visit("fixed_price_micros", "fixed price", v.fixedPrice, kAmount);
        visit("stone", "stone", v.stone);
        visit("sheet", "sheet", v.sheet);
        visit("sizes", "sizes", v.sizes, Length{200});
    }
};

template<>
struct Fields<catalogue::Supplier> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::Needed);
        visit("name", "name", v.name, kName);
        visit("lead_days", "lead time in days", v.leadDays, kDays);
        visit("shipping_micros", "shipping", v.shipping, kAmount);
        visit("free_from_micros", "sum for free shipping", v.freeFrom, kAmount);
        visit("minimum_micros", "smallest order", v.minimum, kAmount);
    }
};

template<>
struct Fields<catalogue::PriceBreak> {
    static void walk(auto& visit, auto& v) {
        visit("from", "number of packs", v.from, kFromOne);
        visit("each_micros", "price", v.each, kAmount);
    }
};

template<>
struct Fields<catalogue::Pack> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::Needed);
        visit("material", "material", v.material, Key::Needed);
        visit("supplier", "supplier", v.supplier, Key::Needed);
        visit("name", "name", v.name, kName);
        visit("amount", "amount in a pack", v.amount, kFromOne);
        visit("prices", "price", v.prices, Length{50});
        visit("usual", "usual pack", v.usual);
        visit("priced_on", "day of the price", v.pricedOn);
    }
};

template<>
struct Fields<catalogue::StoneCount> {
    static void walk(auto& visit, auto& v) {
        visit("material", "stone", v.material, Key::MayBeNone);
        visit("count", "number of stones", v.count, kCounts);
    }
};

template<>
struct Fields<catalogue::Design> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::Needed);
        visit("name", "name", v.name, kName);
        visit("width_nm", "width", v.width, kLengths);
        visit("height_nm", "height", v.height, kLengths);
        visit("stones", "stones", v.stones, Length{200});
        visit("templates_on_wall", "templates on the wall", v.templatesOnWall);
        visit("planned_pieces", "planned pieces", v.plannedPieces, kFromOne);
        visit("usual_base", "usual base", v.usualBase, Key::MayBeNone);
        visit("art_time_ms", "art time", v.artTime, kTimes);
        visit("note", "note", v.note, kLines);
    }
};

template<>
struct Fields<catalogue::KitItem> {
    static void walk(auto& visit, auto& v) {
        visit("material", "material", v.material, Key::Needed);
        visit("count", "number in the kit", v.count, kFromOne);
    }
};

template<>
struct Fields<catalogue::Kit> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::Needed);
        visit("name", "name", v.name, kName);
        visit("supplier", "supplier", v.supplier, Key::Needed);
        visit("design", "design", v.design, Key::MayBeNone);
        visit("price_micros", "price", v.price, kAmount);
        visit("with_templates_micros", "price with templates cut", v.priceWithTemplates, kAmount);
        visit("items", "contents", v.items, Length{200});
        visit("tools", "tools", v.tools, Length{100}, kName);
        visit("short_count_ppm", "short count", v.shortCount, kPartShare);
        visit("priced_on", "day of the price", v.pricedOn);
    }
};

template<>
struct Fields<catalogue::ColourMaterial> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::Needed);
        visit("rgb", "colour in the drawing", v.rgb, Range{0, 0xFFFFFF});
        visit("stone_size", "stone size", v.stoneSize, kLine);
        visit("material", "stone", v.material, Key::Needed);
    }
};

template<>
struct Fields<catalogue::ColumnHeading> {
    static void walk(auto& visit, auto& v) {
        visit("column", "meaning of a column", v.column);
        visit("heading", "heading of a column", v.heading, kName);
    }
};

template<>
struct Fields<catalogue::PriceListColumns> {
    static void walk(auto& visit, auto& v) {
        visit("supplier", "supplier", v.supplier, Key::Needed);
        visit("decimal_comma", "decimal comma", v.decimalComma);
        visit("columns", "columns of the price list", v.columns, Length{20});
    }
};

template<>
struct Fields<catalogue::Certificate> {
    static void walk(auto& visit, auto& v) {
        visit("number", "certificate number", v.number, kLine);
        visit("place", "place of the certificate", v.place, kLine);
        visit("issued_on", "day of issue", v.issuedOn);
        visit("expires_on", "day of expiry", v.expiresOn);
    }
};

template<>
struct Fields<catalogue::Customer> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::Needed);
        visit("name", "name", v.name, kName);
        visit("contact", "address", v.contact, kLines);
        visit("certificate", "certificate", v.certificate);
    }
};

template<>
struct Fields<catalogue::StepStandard> {
    static void walk(auto& visit, auto& v) {
        visit("per_job_ms", "time for a job", v.perJob, kTimes);
        visit("per_colour_ms", "time for a colour", v.perColour, kTimes);
        visit("per_piece_ms", "time for a piece", v.perPiece, kTimes);
        visit("per_100_stones_ms", "time for 100 stones", v.per100Stones, kTimes);
        visit("learning_ppm", "learning rate", v.learning, Range{500'000, 1'000'000});
    }
};

template<>
struct Fields<catalogue::HeatPress> {
    static void walk(auto& visit, auto& v) {
        visit("price_micros", "price of the press", v.price, kAmount);
        visit("salvage_micros", "salvage of the press", v.salvage, kAmount);
        visit("life_presses", "life of the press", v.lifePresses, Range{1, 1'000'000'000'000});
        visit("platen_width_nm", "width of the platen", v.platenWidth, kLengths);
        visit("platen_height_nm", "height of the platen", v.platenHeight, kLengths);
        visit("dwell_ms", "dwell", v.dwell, kTimes);
        visit("handling_ms", "handling at the press", v.handling, kTimes);
        visit("warm_up_ms", "warm-up", v.warmUp, kTimes);
        visit("test_presses", "number of test presses", v.testPresses, kCounts);
        visit("second_press_ppm", "share of second presses", v.secondPressShare, kShare);
        visit("second_dwell_ms", "second dwell", v.secondDwell, kTimes);
        visit("running_per_hour_micros", "running cost of the press", v.runningPerHour, kAmount);
        visit("temperature", "temperature", v.temperature);
    }
};

template<>
struct Fields<catalogue::Cutter> {
    static void walk(auto& visit, auto& v) {
        visit("price_micros", "price of the cutter", v.price, kAmount);
        visit("salvage_micros", "salvage of the cutter", v.salvage, kAmount);
        visit("life_holes", "life of the cutter", v.lifeHoles, Range{1, 1'000'000'000'000});
    }
};

template<>
struct Fields<catalogue::BenchStandards> {
    static void walk(auto& visit, auto& v) {
        visit("steps", "bench times", v.steps);
        visit("press", "press", v.press);
        visit("cutter", "cutter", v.cutter);
    }
};

template<>
struct Fields<catalogue::MarkUpStep> {
    static void walk(auto& visit, auto& v) {
        visit("from", "quantity of a mark-up", v.from, kFromOne);
        visit("mark_up_ppm", "mark-up", v.markUp, Range{-1'000'000, 100'000'000});
    }
};

template<>
struct Fields<catalogue::RushStep> {
    static void walk(auto& visit, auto& v) {
        visit("days", "days of a rush surcharge", v.days, kDays);
        visit("surcharge_ppm", "rush surcharge", v.surcharge, Range{0, 100'000'000});
    }
};

template<>
struct Fields<catalogue::Rounding> {
    static void walk(auto& visit, auto& v) {
        visit("kind", "rounding", v.kind);
        visit("step", "step of the rounding", v.step, kFromOne);
        visit("ending", "ending of a price", v.ending, Range{0, 99});
    }
};

template<>
struct Fields<catalogue::TaxRule> {
    static void walk(auto& visit, auto& v) {
        visit("name", "name of the tax", v.name, kLine);
        visit("rate_ppm", "tax rate", v.rate, kShare);
        visit("inclusive", "tax in the price", v.inclusive);
        visit("rounding", "rounding of the tax", v.rounding);
    }
};

template<>
struct Fields<catalogue::CardFee> {
    static void walk(auto& visit, auto& v) {
        visit("charged", "card fee", v.charged);
        visit("rate_ppm", "card fee rate", v.rate, kPartShare);
        visit("fixed_micros", "fixed card fee", v.fixed, kAmount);
    }
};

template<>
struct Fields<catalogue::PriceRules> {
    static void walk(auto& visit, auto& v) {
        visit("ladder", "mark-up", v.ladder, Length{50});
        visit("rush", "rush surcharge", v.rush, Length{50});
        visit("rounding", "rounding", v.rounding);
        visit("set_up", "charge for setting up", v.setUp);
        visit("minimum_order_micros", "smallest order", v.minimumOrder, kAmount);
        visit("tax", "tax", v.tax);
        visit("card_fee", "card fee", v.cardFee);
        visit("deposit_ppm", "deposit", v.depositRate, kShare);
        visit("deposit_step_micros", "step of the deposit", v.depositStep, kAmount);
        visit("valid_days", "days a quote is valid", v.validDays, kDays);
    }
};

template<>
struct Fields<catalogue::ShopRates> {
    static void walk(auto& visit, auto& v) {
        visit("labour_per_hour_micros", "labour rate", v.labourPerHour, kAmount);
        visit("overhead_per_month_micros", "overhead", v.overheadPerMonth, kAmount);
        visit("productive_per_month_ms", "bench hours of a month", v.productivePerMonth, Range{1, kTimes.highest});
        visit("spoilage_ppm", "spoilage", v.spoilage, kPartShare);
        visit("garment_allowance_micros", "allowance for garments", v.garmentAllowance, kAmount);
    }
};

template<>
struct Fields<catalogue::Letterhead> {
    static void walk(auto& visit, auto& v) {
        visit("name", "name of the shop", v.name, kLine);
        visit("lines", "address of the shop", v.lines, kLines);
        visit("terms", "terms", v.terms, kLines);
        visit("care", "care notes", v.care, kLines);
    }
};

template<>
struct Fields<catalogue::Shop> {
    static void walk(auto& visit, auto& v) {
        visit("letterhead", "letterhead", v.letterhead);
        visit("currency", "currency", v.currency);
        visit("paper", "paper", v.paper);
        visit("length_unit", "unit of length", v.lengthUnit);
        visit("temperature_unit", "unit of temperature", v.temperatureUnit);
        visit("rates", "rates", v.rates);
        visit("rules", "price rules", v.rules);
        visit("ladder_quantities", "quantities of the ladder", v.ladderQuantities, Length{50}, kFromOne);
        visit("ladder_on_sheet", "ladder on the sheet", v.ladderOnSheet);
        visit("usual_tape", "usual tape", v.usualTape, Key::MayBeNone);
        visit("usual_template", "usual template", v.usualTemplate, Key::MayBeNone);
        visit("packing", "packing", v.packing, Length{50}, Key::Needed);
        visit("demo", "demo mark", v.isDemo);
    }
};

template<>
struct Fields<catalogue::SizeCount> {
    static void walk(auto& visit, auto& v) {
        visit("size", "size", v.size, kLine);
        visit("count", "number of a size", v.count, kCounts);
    }
};

template<>
struct Fields<catalogue::OrderLine> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::MayBeNone);
        visit("design", "design", v.design, Key::MayBeNone);
        visit("title", "title", v.title, kLine);
        visit("width_nm", "width", v.width, kLengths);
        visit("height_nm", "height", v.height, kLengths);
        visit("stones", "stones", v.stones, Length{200});
        visit("onto", "base", v.onto, Key::MayBeNone);
        visit("customers_garment", "customer's garment", v.customersGarment);
        visit("templates_on_wall", "templates on the wall", v.templatesOnWall);
        visit("planned_pieces", "planned pieces", v.plannedPieces, kFromOne);
        visit("art_time_ms", "art time", v.artTime, kTimes);
        visit("quantity", "quantity", v.quantity, kCounts);
        visit("sizes", "sizes", v.sizes, Length{200});
        visit("typed_each_micros", "typed price", v.typedEach, kAmount);
        visit("taxable", "tax mark", v.taxable);
    }
};

template<>
struct Fields<catalogue::Discount> {
    static void walk(auto& visit, auto& v) {
        visit("share_ppm", "discount", v.share, kShare);
        visit("amount_micros", "discount", v.amount, kAmount);
    }
};

template<>
struct Fields<catalogue::Order> {
    static void walk(auto& visit, auto& v) {
        visit("customer", "customer", v.customer, Key::MayBeNone);
        visit("quoted_on", "day", v.quotedOn);
        visit("wanted_by", "day it is wanted", v.wantedBy);
        visit("discount", "discount", v.discount);
        visit("asks_exemption", "exemption", v.asksExemption);
        visit("lines", "lines", v.lines, Length{5'000});
    }
};

template<>
struct Fields<units::UnitPrice> {
    static void walk(auto& visit, auto& v) {
        visit("price_micros", "price", v.price, kAmount);
        visit("per", "number it is for", v.per, Range{1, 1'000'000'000'000'000});
    }
};

template<>
struct Fields<catalogue::PricedMaterial> {
    static void walk(auto& visit, auto& v) {
        visit("material", "material", v.material);
        visit("price", "price", v.price);
        visit("price_from", "origin of the price", v.priceFrom, Text{0, 1'000, false});
    }
};

template<class T>
concept Walkable = requires {
    sizeof(Fields<T>);
};

} // namespace sp::db::snapshot

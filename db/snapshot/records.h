// SPDX-License-Identifier: MIT
#pragma once

#include "db/snapshot/fields.h"
#include "db/snapshot/names.h"
#include "db/snapshot/stage.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::db::snapshot {

template<>
inline constexpr std::array<std::string_view, 7> kNames<Stage>{"enquiry", "quoted",    "agreed", "making",
                                                               "ready",   "collected", "let-go"};

/// One movement on the shelf.
struct StockMove {
    base::Id id;
    base::Id material;
    std::int64_t amount = 0;          ///< in is positive, out negative, never 0
    std::optional<units::Money> cost; ///< of the whole movement; only of what comes in
    std::string note;
    std::optional<base::Id> reverses; ///< the movement that this one takes back

    friend bool operator==(const StockMove&, const StockMove&) = default;
};

/// The drawing of a design, its bytes by the digests (64 hexadecimal digits) of their files.
struct ArtworkRecord {
    base::Id design;
    std::string fileName;
    catalogue::ArtworkFormat format = catalogue::ArtworkFormat::Svg;
    std::string file;
    std::string thumbnail; ///< empty for none
    units::Length unit;
    catalogue::ScaleOrigin scaleFrom = catalogue::ScaleOrigin::File;
    std::string unitName;
    units::Length holeAllowance;
    std::string counts;

    friend bool operator==(const ArtworkRecord&, const ArtworkRecord&) = default;
};

struct StageMark {
    Stage stage = Stage::Enquiry;

    friend bool operator==(const StageMark&, const StageMark&) = default;
};

/// The prices of one moment, by the digests (64 hexadecimal digits) of their parts.
struct PriceList {
    std::string shop;
    std::string bench;
    std::vector<std::string> materials; ///< in the order of the materials' keys

    friend bool operator==(const PriceList&, const PriceList&) = default;
};

/// A quote as it was given: what is put under the seal.
struct SealedQuote {
    base::Id quote;
    std::string number;
    std::string givenAt;
    units::Date validUntil;
    units::Money total;
    catalogue::Order order;
    std::optional<catalogue::Customer> customer;
    std::string prices;   ///< digest of a PriceList
    std::string previous; ///< digest of the quote sealed before; empty for the first

    friend bool operator==(const SealedQuote&, const SealedQuote&) = default;
};

template<>
struct Fields<StockMove> {
    static void walk(auto& visit, auto& v) {
        visit("id", "key", v.id, Key::Needed);
        visit("material", "material", v.material, Key::Needed);
        visit("amount", "amount", v.amount, Range{-kCounts.highest, kCounts.highest});
        visit("cost_micros", "cost", v.cost, kAmount);
        visit("note", "note", v.note, kLines);
        visit("reverses", "movement it takes back", v.reverses, Key::Needed);
    }
};

template<>
struct Fields<ArtworkRecord> {
    static void walk(auto& visit, auto& v) {
        visit("design", "design", v.design, Key::Needed);
        visit("file_name", "name of the file", v.fileName, kName);
        visit("format", "kind of file", v.format);
        visit("file", "drawing", v.file, Text{64, 64, false});
        visit("thumbnail", "small picture", v.thumbnail, Text{0, 64, false});
        visit("unit_nm", "scale", v.unit, Range{1, kLengths.highest});
        visit("scale_from", "origin of the scale", v.scaleFrom);
        visit("unit_name", "unit of the drawing", v.unitName, kLine);
        visit("hole_allowance_nm", "allowance of the holes", v.holeAllowance, kLengths);
        visit("counts", "counts of the drawing", v.counts, Text{0, 1'000'000, true});
    }
};

template<>
struct Fields<StageMark> {
    static void walk(auto& visit, auto& v) { visit("stage", "stage", v.stage); }
};

template<>
struct Fields<PriceList> {
    static void walk(auto& visit, auto& v) {
        visit("shop", "shop", v.shop, Text{64, 64, false});
        visit("bench", "bench", v.bench, Text{64, 64, false});
        visit("materials", "materials", v.materials, Length{100'000}, Text{64, 64, false});
    }
};

template<>
struct Fields<SealedQuote> {
    static void walk(auto& visit, auto& v) {
        visit("quote", "key", v.quote, Key::Needed);
        visit("number", "number", v.number, kName);
        visit("given_at", "moment", v.givenAt, kName);
        visit("valid_until", "last day", v.validUntil);
        visit("total_micros", "total", v.total, kEitherAmount);
        visit("order", "order", v.order);
        visit("customer", "customer", v.customer);
        visit("prices", "prices", v.prices, Text{64, 64, false});
        visit("previous", "quote before", v.previous, Text{0, 64, false});
    }
};

} // namespace sp::db::snapshot

// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/fields/check.h"
#include "db/records/stage.h"

#include <optional>
#include <string>
#include <vector>

// What only the job book knows of, beside the values of the catalogue.
namespace sp::db::records {

/// What a movement on the shelf was.
enum class MoveKind {
    Bought,   ///< comes in
    Used,     ///< made into something, goes out
    Lost,     ///< goes out: spilt, mislaid
    Counted,  ///< puts the shelf right by what was counted, either way
    Returned, ///< from the bench comes in, to a supplier goes out
    Spoiled   ///< goes out with pieces that were spoiled
};

/// One movement on the shelf.
struct StockMove {
    base::Id id;
    base::Id material;
    std::int64_t amount = 0;          ///< in is positive, out negative, never 0
    std::optional<units::Money> cost; ///< of the whole movement; only of what comes in
    std::string note;                 ///< the reason, as somebody said it
    std::optional<base::Id> reverses; ///< the movement that this one takes back, of the same kind and job
    MoveKind kind = MoveKind::Counted;
    std::optional<base::Id> job = {}; ///< that it was for

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

/// What a draft is to become the next revision of: a given job, as it was when the draft was begun.
struct Revises {
    base::Id job;
    std::int64_t revision = 1;

    friend bool operator==(const Revises&, const Revises&) = default;
};

/// How far a job is.
struct StageMark {
    Stage stage = Stage::Enquiry;
    std::optional<std::int64_t> choice;  ///< the choice that the customer takes, from 0; none while that is open
    std::optional<Revises> revises = {}; ///< of a draft alone

    friend bool operator==(const StageMark&, const StageMark&) = default;
};

/// The prices of one moment, by the digests (64 hexadecimal digits) of their parts.
struct PriceList {
    std::string shop;
    std::string bench;
    std::vector<std::string> materials;     ///< in the order of the materials' keys
    std::vector<catalogue::DesignSet> sets; ///< in the order of the designs' keys

    friend bool operator==(const PriceList&, const PriceList&) = default;
};

/// A quote as it was given: what is put under the seal.
struct SealedQuote {
    base::Id quote;
    std::string number;
    std::string issuedAt;
    units::Date validUntil;
    units::Money total;
    catalogue::Order order;
    std::optional<catalogue::Customer> customer;
    std::string prices;   ///< digest of a PriceList
    std::string previous; ///< digest of the quote sealed before; empty for the first

    friend bool operator==(const SealedQuote&, const SealedQuote&) = default;
};

base::Done checkTogether(const StockMove& move);
base::Done checkTogether(const ArtworkRecord& artwork);

} // namespace sp::db::records

namespace sp::catalogue::fields {

template<>
inline constexpr std::array<std::string_view, 7> kNames<db::Stage>{"enquiry", "quoted",    "agreed", "making",
                                                                   "ready",   "collected", "let-go"};
template<>
inline constexpr std::array<std::string_view, 6> kNames<db::records::MoveKind>{"bought",  "used",     "lost",
                                                                               "counted", "returned", "spoiled"};

template<>
const Object& objectOf<db::records::StockMove>();
template<>
const Object& objectOf<db::records::ArtworkRecord>();
template<>
const Object& objectOf<db::records::Revises>();
template<>
const Object& objectOf<db::records::StageMark>();
template<>
const Object& objectOf<db::records::PriceList>();
template<>
const Object& objectOf<db::records::SealedQuote>();

} // namespace sp::catalogue::fields

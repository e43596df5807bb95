// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/date.h"
#include "core/units/money.h"
#include "db/records/stage.h"

#include <cstdint>
#include <optional>
#include <string>

namespace sp::db {

/// A quote as the job book lists it.
struct QuoteSummary {
    base::Id id;
    std::string number; ///< "2026-0042"; empty while it has not been given
    Stage stage = Stage::Enquiry;
    std::string customer;   ///< name, may be empty
    std::string firstTitle; ///< of its first line in the choice taken, else the first; may be empty
    std::string revises;    ///< of a draft that revises a given quote, that one's newest number; else empty
    std::int64_t lines = 0;
    units::Date quotedOn;
    std::optional<units::Date> wantedBy;
    units::Date stageSince;             ///< the day, in UTC, on which its stage or choice was last changed
    std::optional<units::Date> lastDay; ///< of a given quote
    bool isLapsed = false;              ///< past it without an answer
    std::int64_t choices = 1;
    std::optional<std::int64_t> choiceTaken;  ///< from 0
    std::optional<units::Money> total;        ///< of a given quote; of several choices the lowest, until one is taken
    units::Money paid;                        ///< received less given back
    std::optional<units::Money> highestTotal; ///< of several, the highest, until one is taken
    bool isInvoiced = false;                  ///< and not all of it credited

    /// It is to be paid: once it is agreed to, and what is invoiced at any stage.
    bool isOwed() const { return catalogue::isAgreedTo(stage) || isInvoiced; }
    /// Money is asked for it: once it is to be paid, or something was paid.
    bool isAsked() const { return isOwed() || !paid.isZero(); }
    /// What is asked and not paid, above nothing; none of what was let go, or while a choice is to be taken.
    std::optional<units::Money> left() const {
        const bool isKnown = total && !highestTotal && stage != Stage::Declined && isAsked();
        return isKnown && *total > paid ? std::optional(*total - paid) : std::nullopt;
    }
};

} // namespace sp::db

// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/money.h"
#include "db/records/wanted.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sp::db::stores {

/// A job with everything that it is found by, as it lies in the book: `texts` and `sums` one a line.
struct ListedJob {
    QuoteSummary summary;
    std::int64_t place = 0; ///< by when it was started, the higher the later
    std::string texts;
    std::string sums; ///< micros
};

/// The same made ready: what is compared is written as it is compared.
struct FoundJob {
    base::Id id;
    std::int64_t place = 0;
    std::string words; ///< see wordsOf
    std::string number, customer, what;
    Stage stage = Stage::Enquiry;
    units::Date day;
    std::optional<units::Date> lastDay;
    std::optional<units::Money> total;
    std::optional<units::Money> left; ///< to be paid and not paid, above nothing; else none
};

FoundJob foundJob(const ListedJob& job);

/// The words of a text as they are kept and looked for: letter case folded, marks above letters gone, each once, two
/// spaces before each and behind the last; also the parts of words that hold more than letters and digits, and what
/// numbers are without zeros before them.
std::string wordsOf(std::string_view texts, std::string_view sums);

/// What of a text is looked for: pieces that the words of a job hold.
struct Needles {
    std::vector<std::string> words; ///< all of these; none: everything is found
    std::string sum;                ///< or this; empty where the text is no amount
    bool isMarksAlone = false;      ///< something was typed that is no word: nothing is found
};
Needles needlesOf(std::string_view text);
bool isIn(const Needles& needles, std::string_view words);

/// Whether the job is among the wanted ones.
bool isWanted(const FoundJob& job, const Wanted& wanted, const Needles& needles, units::Date today);
/// Whether `a` is shown before `b`.
bool isShownBefore(const FoundJob& a, const FoundJob& b, const Wanted& wanted);

} // namespace sp::db::stores

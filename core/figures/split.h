// SPDX-License-Identifier: MIT
#pragma once

#include "core/figures/earned.h"

#include <cstdint>
#include <limits>
#include <span>
#include <string>
#include <vector>

namespace sp::figures {

/// By what lines are told apart. Weeks begin on Monday (ISO 8601).
enum class By { Month, Week, Design, Customer, Quantity, Blank };

/// So many pieces of a line, both ends in it. From 0: charges, which have none.
struct QuantitySpan {
    units::Count from;
    std::optional<units::Count> to; ///< none: and more

    friend bool operator==(const QuantitySpan&, const QuantitySpan&) = default;
};

/// Lines that are alike in what they were told apart by.
struct Group {
    units::Date begins;      ///< by month and week: its first day
    base::Id key;            ///< by design, customer and blank
    std::string name;        ///< the newest of it; empty: without any
    QuantitySpan quantities; ///< by quantity
    Earned earned;
    std::vector<std::string> jobs;  ///< their numbers, each once, in the order of the lines
    std::vector<std::size_t> lines; ///< their places among the lines that were split, rising
};

/// What of a job is in a group.
struct JobPart {
    base::Id job;
    std::string number;
    std::string customerName;
    units::Date day;
    Earned earned;
};

/// The spans that begin at these quantities, one piece or more, in any order: "1 to 11", "12 to 23", "24 and more".
std::vector<QuantitySpan> spansFrom(std::span<const units::Count> begins);

/// Every line in one group, so that they add up to all lines. Months and weeks come in their order, those without any
/// line left out; quantities in theirs; the others by what an hour at the bench earns, the most first, then by name.
/// `begins` are the spans of quantities. A thing without a key is known by its name. The lines of a job stand one after
/// another, jobs by the day they were handed over. Throws base::Overflow.
std::vector<Group> split(std::span<const EarnedLine> lines, By by, std::span<const units::Count> begins);

/// Whether both are of the same month, week, span of quantities or thing, as two splits by the same have them: a thing
/// that is called otherwise since is the same.
bool isSame(const Group& a, const Group& b);

/// The jobs of a group of these lines, in their order; they add up to it. Throws base::Overflow.
std::vector<JobPart> jobsIn(const Group& group, std::span<const EarnedLine> lines);

/// All of them together. Throws base::Overflow.
Group together(std::span<const EarnedLine> lines);

/// The first day of the month, or of the week, that day is in.
units::Date monthOf(units::Date day);
units::Date weekOf(units::Date day);

} // namespace sp::figures

// SPDX-License-Identifier: MIT
#pragma once

#include "core/figures/split.h"

#include <cstdint>
#include <span>
#include <vector>

namespace sp::figures {

enum class Answer {
    Won,  ///< agreed to
    Lost, ///< let go, or lapsed without an answer
    Open
};

/// A line of a quote that was given, with the price that was asked for each of its pieces; no charge and no gift.
struct OfferedLine {
    units::Count quantity; ///< 1 or more
    units::Money each;
    Answer answer = Answer::Open;
};

/// What became of offers of so many pieces.
struct Answers {
    QuantitySpan quantities;
    std::int64_t won = 0;
    std::int64_t lost = 0;
    std::int64_t open = 0;
    std::optional<units::Money> wonAt = {};  ///< the middle one of their prices, of two in the middle the lower
    std::optional<units::Money> lostAt = {}; ///< likewise

    /// won ÷ (won + lost); none before anything was answered.
    std::optional<units::Rate> shareWon() const;

    friend bool operator==(const Answers&, const Answers&) = default;
};

/// By quantity, spans without any offer left out; `begins` as for split.
std::vector<Answers> answersTo(std::span<const OfferedLine> lines, std::span<const units::Count> begins);

} // namespace sp::figures

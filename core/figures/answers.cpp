// SPDX-License-Identifier: MIT
#include "core/figures/answers.h"

#include "core/units/fraction.h"

#include <algorithm>

namespace sp::figures {

namespace {

std::optional<units::Money> middleOf(std::vector<units::Money> prices) {
    if (prices.empty()) return std::nullopt;
    const auto middle = prices.begin() + static_cast<std::ptrdiff_t>((prices.size() - 1) / 2);
    std::ranges::nth_element(prices, middle);
    return *middle;
}

} // namespace

std::optional<units::Rate> Answers::shareWon() const {
    if (won + lost == 0) return std::nullopt;
    return units::Rate::fromPpm(units::Fraction::ratio(units::Int128{won} * units::kPpm, won + lost).roundedHalfEven());
}

std::vector<Answers> answersTo(std::span<const OfferedLine> lines, std::span<const units::Count> begins) {
    std::vector<Answers> all;
    for (const auto& span : spansFrom(begins)) {
        Answers answers{.quantities = span};
        std::vector<units::Money> won;
        std::vector<units::Money> lost;
        for (const auto& line : lines) {
            if (line.quantity < span.from || (span.to && *span.to < line.quantity)) continue;
            if (line.answer == Answer::Open) ++answers.open;
            if (line.answer == Answer::Won) won.push_back(line.each);
            if (line.answer == Answer::Lost) lost.push_back(line.each);
        }
        answers.won = std::ssize(won);
        answers.lost = std::ssize(lost);
        answers.wonAt = middleOf(std::move(won));
        answers.lostAt = middleOf(std::move(lost));
        if (answers.won + answers.lost + answers.open > 0) all.push_back(answers);
    }
    return all;
}

} // namespace sp::figures

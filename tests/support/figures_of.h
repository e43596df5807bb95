// SPDX-License-Identifier: MIT
#pragma once

#include "core/costing/cost_line.h"

#include <gtest/gtest.h>

#include <optional>

/// The figures of a cost sheet by name, for tests of money: what a sheet looks like inside is known here alone.
namespace sp::sample {

/// Costs a line and fails the test where it is refused.
inline costing::CostSheet costed(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                 const costing::OrderShare& share = {}) {
    layout::FitMemo fits;
    auto sheet = costing::costLine(line, book, fits, share);
    EXPECT_TRUE(sheet.has_value()) << (sheet ? "" : describe(sheet.error()));
    return sheet.value_or(costing::CostSheet{});
}

/// The amount of a part, none where the sheet has no such part.
inline std::optional<units::Money> findAmount(const costing::CostSheet& sheet, costing::Part part,
                                              std::size_t index = 0) {
    for (const auto& node : sheet.nodes)
        if (node.part == part && node.index == index) return node.amount;
    return std::nullopt;
}

/// The amount of a part that the sheet must have.
inline units::Money amountOf(const costing::CostSheet& sheet, costing::Part part, std::size_t index = 0) {
    const auto amount = findAmount(sheet, part, index);
    EXPECT_TRUE(amount.has_value()) << "no part " << static_cast<int>(part) << ", " << index;
    return amount.value_or(units::Money{});
}

inline units::Money totalOf(const costing::CostSheet& sheet) { return sheet.total; }
inline units::Money setUpOf(const costing::CostSheet& sheet) { return sheet.setUp; }
/// What is paid out for the job: below it a price loses money.
inline units::Money floorOf(const costing::CostSheet& sheet) { return sheet.outOfPocket; }
inline units::Money labourOf(const costing::CostSheet& sheet) { return sheet.labour; }

inline std::int64_t cyclesOf(const costing::CostSheet& sheet) { return sheet.places[0].press.cycles; }
inline std::int64_t piecesPerPressOf(const costing::CostSheet& sheet) { return sheet.places[0].press.piecesPerPress; }
inline std::int64_t pressesPerPieceOf(const costing::CostSheet& sheet) { return sheet.places[0].press.pressesPerPiece; }
inline units::Duration benchTimeOf(const costing::CostSheet& sheet, catalogue::Step step) {
    return sheet.bench.of(step);
}

} // namespace sp::sample

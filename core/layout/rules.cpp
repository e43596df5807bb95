// SPDX-License-Identifier: MIT
#include "core/layout/rules.h"

#include "core/layout/messages.h"

#include <algorithm>
#include <numeric>

namespace sp::layout {

using base::fail;
using units::Int128;
using units::Length;

namespace {

/// What can be wrong with one measure of a question: not being above nothing (or, of a rule, below it), and being
/// longer than anything that is cut.
struct Check {
    const char* subject;
    Length length;
    bool mayBeZero;
    Fault tooShort;
    Fault tooLong;
};

base::Done check(const Check& one) {
    if (one.length.isNegative() || (one.length.isZero() && !one.mayBeZero)) return fail(one.tooShort, one.subject);
    if (one.length > units::kMaxLength) return fail(one.tooLong, one.subject);
    return {};
}

Fault tooLarge(bool oneWay, bool isRoll) {
    if (isRoll) return oneWay ? Fault::PieceTooWideForRollOneWay : Fault::PieceTooWideForRoll;
    return oneWay ? Fault::PieceTooLargeForSheetOneWay : Fault::PieceTooLargeForSheet;
}

} // namespace

base::Result<Scaled> scale(const Sheet& sheet, const Piece& piece, const FitRules& rules, bool isRoll) {
    for (const auto& one : {
             isRoll ? Check{"roll width", sheet.width, false, Fault::RollWidthZero, Fault::RollWidthTooLong}
                    : Check{"sheet width", sheet.width, false, Fault::SheetWidthZero, Fault::SheetWidthTooLong},
             Check{"sheet height", sheet.height, false, Fault::SheetHeightZero, Fault::SheetHeightTooLong},
             Check{"piece width", piece.width, false, Fault::PieceWidthZero, Fault::PieceWidthTooLong},
             Check{"piece height", piece.height, false, Fault::PieceHeightZero, Fault::PieceHeightTooLong},
             Check{"margin", rules.margin, true, Fault::MarginNegative, Fault::MarginTooLong},
             Check{"gap", rules.gap, true, Fault::GapNegative, Fault::GapTooLong},
         }) {
        if (auto ok = check(one); !ok) return fail(ok.error());
    }
    const Length margins = rules.margin + rules.margin;
    const Length width = sheet.width - margins;
    const Length height = isRoll ? sheet.height : sheet.height - margins;
    if (width <= Length{} || height <= Length{}) {
        if (isRoll) return fail(Fault::MarginLeavesNoRoll, "margin", rules.margin, sheet.width);
        return fail(Fault::MarginLeavesNoSheet, "margin", rules.margin, units::extent(sheet.width, sheet.height));
    }
    const bool upright = piece.width <= width && piece.height <= height;
    const bool turned = !rules.oneWay && piece.height <= width && piece.width <= height;
    if (!upright && !turned) {
        const auto size = units::extent(piece.width, piece.height);
        const auto room = isRoll ? asValue(width) : base::asValue(units::extent(width, height));
        return fail(tooLarge(rules.oneWay, isRoll), "piece", size, room);
    }

    const std::int64_t gap = rules.gap.nanometres();
    Scaled scaled;
    scaled.margin = rules.margin;
    scaled.unit = std::gcd(piece.width.nanometres() + gap, piece.height.nanometres() + gap);
    scaled.problem = {(width.nanometres() + gap) / scaled.unit, (height.nanometres() + gap) / scaled.unit,
                      (piece.width.nanometres() + gap) / scaled.unit, (piece.height.nanometres() + gap) / scaled.unit};
    return scaled;
}

Position Scaled::position(const Spot& spot) const {
    return {Length::fromNanometres(spot.x * unit) + margin, Length::fromNanometres(spot.y * unit) + margin,
            spot.turned};
}

std::vector<Position> Scaled::positions(const std::vector<Spot>& spots) const {
    const std::size_t count = std::min(spots.size(), static_cast<std::size_t>(kMaxPositions));
    std::vector<Position> positions;
    positions.reserve(count);
    for (std::size_t k = 0; k < count; ++k) positions.push_back(position(spots[k]));
    return positions;
}

} // namespace sp::layout

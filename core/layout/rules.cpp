// SPDX-License-Identifier: MIT
#include "core/layout/rules.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <string_view>

namespace sp::layout {

using base::Code;
using base::fail;
using units::Int128;
using units::Length;

namespace {

/// At most three decimals, trailing zeros dropped; a length that is not zero never reads as zero.
std::string decimals(double value) {
    std::string text = fmt::format("{:.3f}", value);
    if (text == "0.000" && value > 0) text = fmt::format("{:.6f}", value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

double inches(Length length) { return length.millimetres() / 25.4; }

std::string oneInWords(Length length) {
    return fmt::format("{} mm ({} in)", decimals(length.millimetres()), decimals(inches(length)));
}

base::Done checkSide(std::string_view what, Length side) {
    if (side <= Length{}) {
        return fail(Code::OutOfRange, std::string(what),
                    fmt::format("The {} must be more than zero; enter its size.", what));
    }
    if (side > units::kLongest) {
        return fail(Code::OutOfRange, std::string(what),
                    fmt::format("The {} is longer than 1 km; check the unit it was entered in.", what));
    }
    return {};
}

base::Done checkRule(std::string_view what, Length rule) {
    if (rule.isNegative()) {
        return fail(Code::OutOfRange, std::string(what),
                    fmt::format("The {} cannot be less than zero; enter 0 for none.", what));
    }
    if (rule > units::kLongest) {
        return fail(Code::OutOfRange, std::string(what),
                    fmt::format("The {} is longer than 1 km; check the unit it was entered in.", what));
    }
    return {};
}

base::Error tooLarge(const Piece& piece, Length width, Length height, bool oneWay, bool isRoll) {
    const std::string room = isRoll ? fmt::format("the usable width of the roll, {}", oneInWords(width))
                                    : fmt::format("the usable part of the sheet, {}", inWords(width, height));
    return {Code::TooLarge, "piece",
            fmt::format("A piece of {} does not fit {}{}; make the piece smaller or choose a larger {}.",
                        inWords(piece.width, piece.height), room,
                        oneWay ? ", the way the material runs" : ", either way round", isRoll ? "roll" : "sheet")};
}

} // namespace

std::string inWords(Length width, Length height) {
    return fmt::format("{} x {} mm ({} x {} in)", decimals(width.millimetres()), decimals(height.millimetres()),
                       decimals(inches(width)), decimals(inches(height)));
}

base::Result<Scaled> scale(const Sheet& sheet, const Piece& piece, const FitRules& rules, bool isRoll) {
    const std::string_view what = isRoll ? "roll" : "sheet";
    for (const auto& check :
         {checkSide(isRoll ? "roll width" : "sheet width", sheet.width), checkSide("sheet height", sheet.height),
          checkSide("piece width", piece.width), checkSide("piece height", piece.height),
          checkRule("margin", rules.margin), checkRule("gap", rules.gap)}) {
        if (!check) return fail(check.error());
    }
    const Length margins = rules.margin + rules.margin;
    const Length width = sheet.width - margins;
    const Length height = isRoll ? sheet.height : sheet.height - margins;
    if (width <= Length{} || height <= Length{}) {
        return fail(Code::OutOfRange, "margin",
                    fmt::format("A margin of {} all round leaves nothing of a {} of {}; make the margin smaller.",
                                oneInWords(rules.margin), what,
                                isRoll ? oneInWords(sheet.width) : inWords(sheet.width, sheet.height)));
    }
    const bool upright = piece.width <= width && piece.height <= height;
    const bool turned = !rules.oneWay && piece.height <= width && piece.width <= height;
    if (!upright && !turned) return fail(tooLarge(piece, width, height, rules.oneWay, isRoll));

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
    const std::size_t count = std::min(spots.size(), static_cast<std::size_t>(kMostPositions));
    std::vector<Position> positions;
    positions.reserve(count);
    for (std::size_t k = 0; k < count; ++k) positions.push_back(position(spots[k]));
    return positions;
}

} // namespace sp::layout

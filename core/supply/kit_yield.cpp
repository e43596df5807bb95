// SPDX-License-Identifier: MIT
#include "core/supply/kit_yield.h"

#include "core/base/overflow.h"
#include "core/supply/messages.h"
#include "core/supply/odds.h"

#include <algorithm>
#include <limits>

namespace sp::supply {

using units::Count;
using units::Fraction;
using units::Int128;

namespace {

constexpr std::int64_t kNoLimit = std::numeric_limits<std::int64_t>::max();

std::int64_t whole(Int128 value) {
    if (value > kNoLimit) throw base::Overflow();
    return static_cast<std::int64_t>(value);
}

std::int64_t received(const CountedStock& stock) {
    return whole(Int128{stock.bought.value()} * (units::kPpm - stock.shortShare.ppm()) / units::kPpm);
}

std::int64_t usable(const CountedStock& stock) {
    const Int128 kept = Int128{units::kPpm - stock.shortShare.ppm()} * (units::kPpm - stock.loss.ppm());
    return whole(stock.bought.value() * kept / (Int128{units::kPpm} * units::kPpm));
}

std::int64_t cuts(const SheetStock& stock) {
    Int128 sum = 0;
    for (const auto& lot : stock.lots) {
        const Int128 fromSheets = Int128{lot.sheets.value()} * lot.perSheet.value();
        if (fromSheets > kNoLimit) throw base::Overflow();
        const Int128 uses = stock.once ? 1 : lot.uses.value();
        sum += whole(fromSheets * uses);
        if (sum > kNoLimit) throw base::Overflow();
    }
    return whole(sum);
}

bool isUsed(const YieldLine& line) {
    return line.counted ? !line.counted->perPiece.isZero() : !line.sheets->perPiece.isZero();
}

/// Pieces that this line allows.
std::int64_t allowed(const YieldLine& line) {
    if (!isUsed(line)) return kNoLimit;
    if (line.counted) return usable(*line.counted) / line.counted->perPiece.value();
    const std::int64_t sets = cuts(*line.sheets) / line.sheets->perPiece.value();
    if (line.sheets->once) return sets > 0 ? kNoLimit : 0;
    return sets;
}

std::int64_t least(const std::vector<YieldLine>& lines) {
    std::int64_t pieces = kNoLimit;
    for (const auto& line : lines) pieces = std::min(pieces, allowed(line));
    return pieces;
}

base::Done checked(const YieldLine& line) {
    if (line.counted.has_value() == line.sheets.has_value())
        return base::fail(Fault::CountedOrCut, line.material, line.material);
    if (line.counted) {
        const auto& stock = *line.counted;
        if (stock.bought.isNegative() || stock.bought.value() > kMaxStones || stock.perPiece.isNegative() ||
            stock.perPiece.value() > kMaxStones)
            return base::fail(Fault::KitCountOutOfRange, line.material, line.material);
        for (const auto share : {stock.loss, stock.shortShare})
            if (share.isNegative() || share.ppm() >= units::kPpm)
                return base::fail(Fault::ShareLostOutOfRange, line.material, line.material);
        return {};
    }
    if (line.sheets->perPiece.isNegative()) return base::fail(Fault::CutsNegative, line.material, line.material);
    for (const auto& lot : line.sheets->lots)
        if (lot.sheets.isNegative() || lot.perSheet.isNegative() || lot.uses.value() < 1)
            return base::fail(Fault::KitSheetsOutOfRange, line.material, line.material);
    return {};
}

double chance(const std::vector<YieldLine>& lines, std::int64_t pieces) {
    double product = 1;
    for (const auto& line : lines) {
        if (!isUsed(line)) continue;
        if (line.counted) {
            const Int128 stones = Int128{pieces} * line.counted->perPiece.value();
            if (stones > received(*line.counted)) return 0;
            product *=
                chanceOfAtLeast(Count::of(whole(stones)), Count::of(received(*line.counted)), line.counted->loss);
        } else if (allowed(line) < pieces) {
            return 0;
        }
    }
    return product;
}

/// The largest number of pieces whose chance is at least `threshold`; 0 is certain.
std::int64_t mostWithChance(const std::vector<YieldLine>& lines, std::int64_t highest, double threshold) {
    std::int64_t low = 0;
    std::int64_t high = highest;
    while (low < high) {
        const std::int64_t middle = low + (high - low + 1) / 2;
        if (chance(lines, middle) >= threshold)
            low = middle;
        else
            high = middle - 1;
    }
    return low;
}

/// Pieces if nothing were lost: no more can come out.
std::int64_t mostOf(const std::vector<YieldLine>& lines) {
    std::int64_t most = kNoLimit;
    for (const auto& line : lines) {
        if (!isUsed(line)) continue;
        most = std::min(most, line.counted ? received(*line.counted) / line.counted->perPiece.value() : allowed(line));
    }
    return most;
}

std::vector<YieldChance> oddsOf(const std::vector<YieldLine>& lines, std::int64_t pieces, std::int64_t highest) {
    constexpr double kPrintsAsCertain = 0.99995;
    constexpr double kPrintsAsNever = 0.00005;
    const std::int64_t sure = mostWithChance(lines, highest, kPrintsAsCertain);
    const std::int64_t last = mostWithChance(lines, highest, kPrintsAsNever);
    const std::int64_t from = std::max<std::int64_t>(1, std::min(sure, pieces));
    const std::int64_t to = std::max({from, pieces, std::min(last + 1, highest)});
    const auto most = static_cast<std::int64_t>(kMaxOdds);
    std::vector<std::int64_t> chosen;
    if (to - from < most) {
        for (std::int64_t k = from; k <= to; ++k) chosen.push_back(k);
    } else {
        for (std::int64_t i = 0; i < most - 1; ++i) chosen.push_back(from + whole(Int128{to - from} * i / (most - 2)));
        chosen.push_back(pieces);
        std::sort(chosen.begin(), chosen.end());
        chosen.erase(std::unique(chosen.begin(), chosen.end()), chosen.end());
    }
    std::vector<YieldChance> odds;
    for (const std::int64_t k : chosen)
        if (k > 0) odds.push_back({Count::of(k), chance(lines, k)});
    return odds;
}

YieldLeft leftOf(const YieldLine& line, std::int64_t pieces) {
    YieldLeft left;
    left.material = line.material;
    if (line.counted) {
        left.count = Count::of(usable(*line.counted) - pieces * line.counted->perPiece.value());
    } else if (!isUsed(line)) {
        std::int64_t sheets = 0;
        for (const auto& lot : line.sheets->lots) sheets += lot.sheets.value();
        left.count = Count::of(sheets);
    } else {
        left.inPieces = true;
        const std::int64_t sets = cuts(*line.sheets) / line.sheets->perPiece.value();
        left.count = Count::of(sets - (line.sheets->once ? std::min<std::int64_t>(1, sets) : pieces));
    }
    if (line.bulk && !left.inPieces)
        left.value = units::Money::fromExact(line.bulk->each() * Fraction::of(left.count.value()));
    return left;
}

YieldAnswer answered(const YieldProblem& problem) {
    YieldAnswer answer;
    const std::int64_t pieces = least(problem.lines);
    answer.pieces = Count::of(pieces);
    for (const auto& line : problem.lines) {
        if (allowed(line) == pieces) answer.limiting.push_back(line.material);
        answer.left.push_back(leftOf(line, pieces));
    }
    auto more = problem.lines;
    for (auto& line : more) {
        if (!line.counted) continue;
        const auto bought = line.counted->bought;
        line.counted->bought += Count::of(units::kGross);
        if (const auto added = least(more) - pieces; added > 0)
            answer.gains.push_back({line.material, Count::of(added)});
        line.counted->bought = bought;
    }
    const std::int64_t highest = mostOf(problem.lines);
    const std::int64_t likely = mostWithChance(problem.lines, highest, kLikelyOdds);
    const std::int64_t sure = mostWithChance(problem.lines, likely, kSureOdds);
    answer.sure = Count::of(sure);
    answer.likely = {Count::of(likely), chance(problem.lines, likely)};
    answer.odds = oddsOf(problem.lines, pieces, highest);
    if (sure > 0) answer.costEach = units::Money::fromExact(Fraction::ratio(problem.price.micros(), sure));
    return answer;
}

} // namespace

base::Result<YieldAnswer> kitYield(const YieldProblem& problem) {
    if (problem.price.isNegative()) return base::fail(Fault::KitPriceNegative, "price");
    if (problem.lines.size() > kMaxLines) return base::fail(Fault::KitTooLarge, "kit");
    for (const auto& line : problem.lines)
        if (const auto done = checked(line); !done) return base::fail(done.error());
    try {
        if (least(problem.lines) == kNoLimit) return base::fail(Fault::NothingLimits, "piece");
        return answered(problem);
    } catch (const base::Overflow&) { return base::fail(Fault::KitHoldsTooMuch, "kit"); }
}

units::Money leftWorth(const YieldAnswer& answer) {
    units::Money worth;
    for (const auto& left : answer.left)
        if (left.value) worth += *left.value;
    return worth;
}

} // namespace sp::supply

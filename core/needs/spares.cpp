// SPDX-License-Identifier: MIT
#include "core/needs/spares.h"

#include "core/needs/messages.h"

#include <algorithm>

namespace sp::needs {

namespace {

using catalogue::OrderLine;
using catalogue::Spares;
using units::Fraction;

std::int64_t piecesOf(const OrderLine& line) { return std::max<std::int64_t>(line.quantity.value(), 0); }

/// So many pieces of a line are of a size; what its sizes do not name is of the plain one.
struct SizedPieces {
    std::size_t line = 0;
    std::string size;
    std::int64_t pieces = 0;
};

void addSizes(std::vector<SizedPieces>& all, std::size_t number, const OrderLine& line) {
    auto plain = piecesOf(line);
    for (const auto& size : line.sizes) {
        all.push_back({number, size.size, size.count.value()});
        plain -= size.count.value();
    }
    all.push_back({number, {}, plain});
}

/// Where the spares of these lines belong: the size with most pieces, there the line with most of it.
SizedPieces mostOf(const std::vector<SizedPieces>& all) {
    const auto ofSize = [&](const std::string& size) {
        std::int64_t sum = 0;
        for (const auto& one : all)
            if (one.size == size) sum += one.pieces;
        return sum;
    };
    SizedPieces most = all.front();
    std::int64_t mostOfSize = ofSize(most.size);
    for (const auto& one : all) {
        const auto sum = ofSize(one.size);
        if (sum < mostOfSize || (sum == mostOfSize && (one.size != most.size || one.pieces <= most.pieces))) continue;
        most = one;
        mostOfSize = sum;
    }
    return most;
}

/// Lines that a spare of one of them can serve.
bool countTogether(const OrderLine& a, const OrderLine& b) {
    return !a.customersGarment && !b.customersGarment && !a.baseMaterial.isNone() && a.baseMaterial == b.baseMaterial;
}

} // namespace

Fraction expectedSpoiled(std::int64_t pieces, units::Rate spoilage) {
    return Fraction::of(pieces) * Fraction::ratio(spoilage.ppm(), units::kPpm - spoilage.ppm());
}

std::int64_t sparesFor(std::int64_t pieces, const SpareRule& rule) {
    const auto share = rule.spoilage.ppm();
    if (pieces < 1 || share < 1 || share >= units::kPpm || rule.when == Spares::Never) return 0;
    const auto expected = expectedSpoiled(pieces, rule.spoilage);
    if (rule.when == Spares::WhereExpected && expected < Fraction::ratio(1, 2)) return 0;
    return expected.ceiling();
}

std::vector<LineSpares> sparesOf(std::span<const OrderLine> lines, const SpareRule& rule) {
    std::vector<LineSpares> spares(lines.size());
    std::vector<bool> isDone(lines.size());
    for (std::size_t first = 0; first < lines.size(); ++first) {
        if (isDone[first] || lines[first].isCharge()) continue;
        std::vector<std::size_t> together;
        std::vector<SizedPieces> sizes;
        std::int64_t pieces = 0;
        for (std::size_t i = first; i < lines.size(); ++i) {
            if (i != first && (lines[i].isCharge() || !countTogether(lines[first], lines[i]))) continue;
            isDone[i] = true;
            together.push_back(i);
            addSizes(sizes, i, lines[i]);
            pieces += piecesOf(lines[i]);
        }
        const auto all = sparesFor(pieces, rule);
        for (const auto i : together) spares[i] = {0, {}, all, pieces};
        if (all == 0) continue;
        const auto most = mostOf(sizes);
        spares[most.line].pieces = all;
        spares[most.line].size = most.size;
    }
    return spares;
}

std::optional<base::Message> spareNote(const LineSpares& spares, const SpareRule& rule) {
    const auto share = rule.spoilage.ppm();
    if (rule.when == Spares::Never || share < 1 || share >= units::kPpm || spares.of < 1) return std::nullopt;
    const base::Real expected{expectedSpoiled(spares.of, rule.spoilage).approximate(), 2};
    if (spares.all == 0) return base::say(Note::NoSpares, expected, spares.of);
    if (spares.pieces == 0) return base::say(Note::SparesElsewhere, spares.all, expected, spares.of);
    if (spares.size.empty()) return base::say(Note::SparesPlanned, spares.pieces, expected, spares.of);
    return base::say(Note::SparesOfSize, spares.pieces, expected, spares.of, spares.size);
}

} // namespace sp::needs

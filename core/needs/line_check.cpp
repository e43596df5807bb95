// SPDX-License-Identifier: MIT
#include "core/needs/line_check.h"

#include "core/needs/messages.h"

#include <algorithm>

namespace sp::needs {

namespace {

using base::Done;
using base::fail;
using catalogue::MaterialKind;

bool isStonesAPiece(units::Count count) { return count.value() >= 1 && count.value() <= catalogue::kMaxStonesAPiece; }

bool isLoss(units::Rate loss) { return !loss.isNegative() && loss.ppm() < units::kPpm; }

base::Value nameOf(const catalogue::OrderLine& line) {
    return line.title.empty() ? base::asValue(Note::ThisLine) : base::asValue(line.title);
}

/// The material, when it can play that role; the role is asked for only when it cannot.
base::Result<const catalogue::PricedMaterial*> material(const catalogue::OrderLine& line,
                                                        const catalogue::PriceBook& book, const base::Id& id,
                                                        std::initializer_list<MaterialKind> kinds, auto role) {
    const auto* priced = book.find(id);
    if (!priced) return fail(Fault::SupplyGone, line.title, role(), nameOf(line));
    const auto& found = priced->material;
    bool fits = false;
    for (const auto kind : kinds) fits = fits || found.kind == kind;
    if (!fits) return fail(Fault::WrongKind, found.name, found.name, role(), nameOf(line), found.kind);
    if (!priced->price) return fail(Fault::NoPrice, found.name, found.name);
    return priced;
}

Done findStones(const catalogue::OrderLine& line, const catalogue::PriceBook& book, LineMaterials& out) {
    if (line.stones.empty() || static_cast<std::int64_t>(line.stones.size()) > catalogue::kMaxColours)
        return checkColours(line, nameOf(line));
    for (std::size_t i = 0; i < line.stones.size(); ++i) {
        const auto& stone = line.stones[i];
        const auto found = material(line, book, stone.material, {MaterialKind::Stone},
                                    [i] { return base::say(Note::StoneInRow, i + 1); });
        if (!found) return fail(found.error());
        const auto& known = (*found)->material;
        if (!isStonesAPiece(stone.count)) return checkStone(known, stone.count, nameOf(line));
        const bool again = std::any_of(line.stones.begin(), line.stones.begin() + static_cast<std::ptrdiff_t>(i),
                                       [&](const auto& earlier) { return earlier.material == stone.material; });
        if (again) return fail(Fault::StoneTwice, known.name, nameOf(line), known.name);
        if (!isLoss(known.stone.loss)) return checkStone(known, stone.count, nameOf(line));
        out.stones.push_back({*found, needOfStone(stone.count, known)});
    }
    return {};
}

Done checkSizes(const catalogue::OrderLine& line, const catalogue::PricedMaterial* base) {
    std::int64_t named = 0;
    for (const auto& size : line.sizes) {
        if (size.count.isNegative() || size.count > line.quantity)
            return fail(Fault::SizeCountOutOfRange, size.size, size.count.value(), size.size, line.quantity.value());
        named += size.count.value();
        bool known = false;
        if (base)
            for (const auto& row : base->material.sizes) known = known || row.name == size.size;
        if (!known) return fail(Fault::NoSuchSize, size.size, size.size, nameOf(line));
    }
    if (named > line.quantity.value())
        return fail(Fault::TooManySizedPieces, line.title, nameOf(line), named, line.quantity.value());
    return {};
}

Done checkMeasures(const catalogue::OrderLine& line, std::int64_t pieces) {
    if (!isNumberOfPieces(pieces)) return fail(Fault::PiecesOutOfRange, line.title, pieces, nameOf(line));
    if (!hasSize(line)) return fail(Fault::SizeOutOfRange, line.title, nameOf(line));
    if (line.overrideEach && line.overrideEach->isNegative())
        return fail(Fault::TypedPriceNegative, line.title, nameOf(line));
    if (line.plannedPieces && line.plannedPieces->value() < 1)
        return fail(Fault::PlannedPiecesBelowOne, line.title, nameOf(line), line.plannedPieces->value());
    return {};
}

} // namespace

bool hasSize(const catalogue::OrderLine& line) {
    const auto isSide = [](units::Length side) { return side > units::Length{} && side <= units::kMaxLength; };
    return isSide(line.width) && isSide(line.height);
}

Done checkColours(const catalogue::OrderLine& line, const base::Value& name) {
    if (line.stones.empty()) return fail(Fault::NoStones, line.title, name);
    if (static_cast<std::int64_t>(line.stones.size()) > catalogue::kMaxColours)
        return fail(Fault::TooManyColours, line.title, name, catalogue::kMaxColours);
    return {};
}

Done checkStone(const catalogue::Material& stone, units::Count perPiece, const base::Value& name) {
    if (!isStonesAPiece(perPiece)) return fail(Fault::StonesOutOfRange, stone.name, name, perPiece.value(), stone.name);
    if (!isLoss(stone.stone.loss)) return fail(Fault::LossOutOfRange, stone.name, stone.name);
    return {};
}

base::Result<LineMaterials> checkLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                      std::int64_t pieces) {
    if (auto ok = checkMeasures(line, pieces); !ok) return fail(ok.error());
    LineMaterials out;
    out.stones.reserve(line.stones.size());
    if (auto ok = findStones(line, book, out); !ok) return fail(ok.error());
    const auto find = [&](const catalogue::PricedMaterial*& place, const base::Id& id,
                          std::initializer_list<MaterialKind> kinds, Note role) -> Done {
        const auto found = material(line, book, id, kinds, [role] { return role; });
        if (!found) return fail(found.error());
        place = *found;
        return {};
    };
    if (!line.customersGarment) {
        if (line.baseMaterial.isNone()) return fail(Fault::NoBase, line.title, nameOf(line));
        if (auto ok = find(out.base, line.baseMaterial, {MaterialKind::Backing, MaterialKind::Blank}, Note::Base); !ok)
            return fail(ok.error());
    }
    if (auto ok = checkSizes(line, out.base); !ok) return fail(ok.error());
    const auto& shop = book.shop;
    if (!shop.usualTape.isNone())
        if (auto ok = find(out.tape, shop.usualTape, {MaterialKind::Tape}, Note::Tape); !ok) return fail(ok.error());
    if (!shop.usualTemplate.isNone())
        if (auto ok = find(out.templates, shop.usualTemplate, {MaterialKind::Template}, Note::Template); !ok)
            return fail(ok.error());
    const auto& packing = catalogue::packingOf(line, shop.packing);
    out.packing.reserve(packing.size());
    for (const auto& use : packing) {
        auto& take = out.packing.emplace_back(LineTake{nullptr, needOfPacking(use)});
        if (auto ok = find(take.material, use.material, {MaterialKind::Packing}, Note::Packing); !ok)
            return fail(ok.error());
    }
    return out;
}

} // namespace sp::needs

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

base::Value nameOf(const catalogue::OrderLine& line, const catalogue::Placement& place) {
    return place.title.empty() ? nameOf(line) : base::asValue(place.title);
}

Done findStones(const catalogue::OrderLine& line, std::size_t number, const catalogue::PriceBook& book,
                LineMaterials& out) {
    const auto& place = line.places[number];
    const auto& stones = place.stones;
    if (stones.empty() || static_cast<std::int64_t>(stones.size()) > catalogue::kMaxColours)
        return checkColours(line, place, nameOf(line, place));
    for (std::size_t i = 0; i < stones.size(); ++i) {
        const auto& stone = stones[i];
        const auto found = material(line, book, stone.material, {MaterialKind::Stone},
                                    [i] { return base::say(Note::StoneInRow, i + 1); });
        if (!found) return fail(found.error());
        const auto& known = (*found)->material;
        if (!isStonesAPiece(stone.count)) return checkStone(known, stone.count, nameOf(line, place));
        const bool again = std::any_of(stones.begin(), stones.begin() + static_cast<std::ptrdiff_t>(i),
                                       [&](const auto& earlier) { return earlier.material == stone.material; });
        if (again) return fail(Fault::StoneTwice, known.name, nameOf(line, place), known.name);
        if (!isLoss(known.stone.loss)) return checkStone(known, stone.count, nameOf(line, place));
        out.stones.push_back({*found, needOfStone(stone.count, known)});
    }
    return {};
}

/// Finds a material of the line or the shop and puts it into its place.
Done find(const catalogue::PricedMaterial*& put, const catalogue::OrderLine& line, const catalogue::PriceBook& book,
          const base::Id& id, std::initializer_list<MaterialKind> kinds, Note role) {
    const auto found = material(line, book, id, kinds, [role] { return role; });
    if (!found) return fail(found.error());
    put = *found;
    return {};
}

/// What is sold as it is, or nothing but a price.
Done findCharged(const catalogue::OrderLine& line, const catalogue::PriceBook& book, LineMaterials& out) {
    if (!line.baseMaterial.isNone())
        return find(out.base, line, book, line.baseMaterial, {MaterialKind::Blank, MaterialKind::Packing}, Note::Base);
    if (!line.overrideEach) return fail(Fault::ChargeWithoutPrice, line.title, nameOf(line));
    return {};
}

Done findUsed(const catalogue::OrderLine& line, const catalogue::PriceBook& book, LineMaterials& out) {
    const auto& shop = book.shop;
    out.stones.reserve(line.first().stones.size());
    const auto& packing = catalogue::packingOf(line, shop.packing);
    out.packing.reserve(packing.size());
    for (std::size_t i = 0; i < line.places.size(); ++i)
        if (auto ok = findStones(line, i, book, out); !ok) return ok;
    if (!line.customersGarment) {
        if (line.baseMaterial.isNone()) return fail(Fault::NoBase, line.title, nameOf(line));
        if (auto ok =
                find(out.base, line, book, line.baseMaterial, {MaterialKind::Backing, MaterialKind::Blank}, Note::Base);
            !ok)
            return ok;
    }
    if (!shop.usualTape.isNone())
        if (auto ok = find(out.tape, line, book, shop.usualTape, {MaterialKind::Tape}, Note::Tape); !ok) return ok;
    if (!shop.usualTemplate.isNone())
        if (auto ok = find(out.templates, line, book, shop.usualTemplate, {MaterialKind::Template}, Note::Template);
            !ok)
            return ok;
    for (const auto& use : packing) {
        auto& take = out.packing.emplace_back(LineTake{nullptr, needOfPacking(use)});
        if (auto ok = find(take.material, line, book, use.material, {MaterialKind::Packing}, Note::Packing); !ok)
            return ok;
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
    if (line.overrideEach && line.overrideEach->isNegative())
        return fail(Fault::TypedPriceNegative, line.title, nameOf(line));
    if (line.places.size() > catalogue::kMaxPlaces)
        return fail(Fault::TooManyPlaces, line.title, nameOf(line), catalogue::kMaxPlaces);
    for (const auto& place : line.places) {
        if (!hasSize(place)) return fail(Fault::SizeOutOfRange, line.title, nameOf(line, place));
        if (place.plannedPieces && place.plannedPieces->value() < 1)
            return fail(Fault::PlannedPiecesBelowOne, line.title, nameOf(line, place), place.plannedPieces->value());
    }
    return {};
}

} // namespace

const std::string& titleOf(const catalogue::OrderLine& line, const catalogue::Placement& place) {
    return place.title.empty() ? line.title : place.title;
}

bool hasSize(const catalogue::Placement& place) {
    const auto isSide = [](units::Length side) { return side > units::Length{} && side <= units::kMaxLength; };
    return isSide(place.width) && isSide(place.height);
}

Done checkColours(const catalogue::OrderLine& line, const catalogue::Placement& place, const base::Value& name) {
    if (place.stones.empty()) return fail(Fault::NoStones, line.title, name);
    if (static_cast<std::int64_t>(place.stones.size()) > catalogue::kMaxColours)
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
    if (auto ok = line.isCharge() ? findCharged(line, book, out) : findUsed(line, book, out); !ok)
        return fail(ok.error());
    if (auto ok = checkSizes(line, out.base); !ok) return fail(ok.error());
    return out;
}

} // namespace sp::needs

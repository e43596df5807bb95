// SPDX-License-Identifier: MIT
#include "core/costing/line_check.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::costing {

namespace {

using base::Code;
using base::Done;
using base::fail;
using catalogue::MaterialKind;

std::string nameOf(const catalogue::OrderLine& line) { return line.title.empty() ? "This line" : line.title; }

/// The material, when it can play that role.
base::Result<const catalogue::PricedMaterial*> material(const catalogue::OrderLine& line,
                                                        const catalogue::PriceBook& book, const base::Id& id,
                                                        std::initializer_list<MaterialKind> kinds,
                                                        std::string_view role) {
    const auto* priced = book.find(id);
    if (!priced)
        return fail(Code::NotFound, nameOf(line),
                    fmt::format("The {} of {} is no longer among the supplies; choose another.", role, nameOf(line)));
    const auto& found = priced->material;
    bool fits = false;
    for (const auto kind : kinds) fits = fits || found.kind == kind;
    if (!fits)
        return fail(Code::Invalid, found.name,
                    fmt::format("{} cannot be the {} of {}: it is {}; choose another.", found.name, role, nameOf(line),
                                catalogue::nameOf(found.kind)));
    if (!priced->price)
        return fail(Code::Missing, found.name,
                    fmt::format("{} has no price; add a pack with a price to it in Supplies.", found.name));
    return priced;
}

Done findStones(const catalogue::OrderLine& line, const catalogue::PriceBook& book, LineMaterials& out) {
    if (line.stones.empty())
        return fail(Code::Missing, nameOf(line),
                    fmt::format("{} has no stones; add a colour and how many a piece takes.", nameOf(line)));
    if (static_cast<std::int64_t>(line.stones.size()) > kMostColours)
        return fail(Code::OutOfRange, nameOf(line),
                    fmt::format("{} has more than {} colours; leave some out.", nameOf(line), kMostColours));
    for (std::size_t i = 0; i < line.stones.size(); ++i) {
        const auto& stone = line.stones[i];
        const auto found =
            material(line, book, stone.material, {MaterialKind::Stone}, fmt::format("stone in row {}", i + 1));
        if (!found) return fail(found.error());
        out.stones.push_back(*found);
        const auto& known = (*found)->material;
        if (stone.count.value() < 1 || stone.count.value() > kMostStonesAPiece)
            return fail(Code::OutOfRange, known.name,
                        fmt::format("{} takes {} of {} a piece; give a number from 1 to 1,000,000.", nameOf(line),
                                    stone.count.value(), known.name));
        const bool again = std::any_of(line.stones.begin(), line.stones.begin() + static_cast<std::ptrdiff_t>(i),
                                       [&](const auto& earlier) { return earlier.material == stone.material; });
        if (again)
            return fail(Code::Invalid, known.name,
                        fmt::format("{} names {} twice; put both counts in one row.", nameOf(line), known.name));
        const auto loss = known.stone.loss.ppm();
        if (loss < 0 || loss >= units::kPpm)
            return fail(
                Code::OutOfRange, known.name,
                fmt::format("The loss of {} must be from 0 to below 100 %; correct it in Supplies.", known.name));
    }
    return {};
}

Done checkSizes(const catalogue::OrderLine& line, const catalogue::PricedMaterial* base) {
    std::int64_t named = 0;
    for (const auto& size : line.sizes) {
        if (size.count.isNegative() || size.count > line.quantity)
            return fail(Code::OutOfRange, size.size,
                        fmt::format("{} of {} is not from 0 to the {} pieces of the line; correct the sizes.",
                                    size.count.value(), size.size, line.quantity.value()));
        named += size.count.value();
        bool known = false;
        if (base)
            for (const auto& row : base->material.sizes) known = known || row.name == size.size;
        if (!known)
            return fail(
                Code::NotFound, size.size,
                fmt::format("{} is not a size of what {} goes on; choose one of its sizes.", size.size, nameOf(line)));
    }
    if (named > line.quantity.value())
        return fail(Code::OutOfRange, nameOf(line),
                    fmt::format("The sizes of {} add up to {}, more than its {} pieces; correct one of them.",
                                nameOf(line), named, line.quantity.value()));
    return {};
}

Done checkMeasures(const catalogue::OrderLine& line) {
    if (line.quantity.value() < 1 || line.quantity.value() > kMostPieces)
        return fail(Code::OutOfRange, nameOf(line),
                    fmt::format("{} pieces of {} cannot be priced; give a number from 1 to 1,000,000.",
                                line.quantity.value(), nameOf(line)));
    for (const auto side : {line.width, line.height})
        if (side <= units::Length{} || side > units::kLongest)
            return fail(
                Code::OutOfRange, nameOf(line),
                fmt::format("{} needs a width and a height above nothing and up to a kilometre.", nameOf(line)));
    if (line.typedEach && line.typedEach->isNegative())
        return fail(Code::OutOfRange, nameOf(line),
                    fmt::format("The price asked for {} is below nothing; type 0 or more.", nameOf(line)));
    if (line.plannedPieces && line.plannedPieces->value() < 1)
        return fail(Code::OutOfRange, nameOf(line),
                    fmt::format("The templates of {} cannot be spread over {} pieces; plan for 1 or more.",
                                nameOf(line), line.plannedPieces->value()));
    return {};
}

} // namespace

base::Result<LineMaterials> checkLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book) {
    if (auto ok = checkMeasures(line); !ok) return fail(ok.error());
    LineMaterials out;
    out.stones.reserve(line.stones.size());
    out.packing.reserve(book.shop.packing.size());
    if (auto ok = findStones(line, book, out); !ok) return fail(ok.error());
    const auto find = [&](const catalogue::PricedMaterial*& place, const base::Id& id,
                          std::initializer_list<MaterialKind> kinds, std::string_view role) -> Done {
        const auto found = material(line, book, id, kinds, role);
        if (!found) return fail(found.error());
        place = *found;
        return {};
    };
    if (!line.customersGarment) {
        if (line.onto.isNone())
            return fail(
                Code::Missing, nameOf(line),
                fmt::format("Say what {} goes on: a backing, a blank, or the customer's own garment.", nameOf(line)));
        if (auto ok = find(out.base, line.onto, {MaterialKind::Backing, MaterialKind::Blank}, "base"); !ok)
            return fail(ok.error());
    }
    if (auto ok = checkSizes(line, out.base); !ok) return fail(ok.error());
    const auto& shop = book.shop;
    if (!shop.usualTape.isNone())
        if (auto ok = find(out.tape, shop.usualTape, {MaterialKind::Tape}, "tape"); !ok) return fail(ok.error());
    if (!shop.usualTemplate.isNone())
        if (auto ok = find(out.templates, shop.usualTemplate, {MaterialKind::Template}, "template"); !ok)
            return fail(ok.error());
    for (const auto& id : shop.packing)
        if (auto ok = find(out.packing.emplace_back(), id, {MaterialKind::Packing}, "packing"); !ok)
            return fail(ok.error());
    return out;
}

} // namespace sp::costing

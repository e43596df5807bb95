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

Done checkMaterial(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const base::Id& id,
                   std::initializer_list<MaterialKind> kinds, std::string_view role) {
    const auto* priced = book.find(id);
    if (!priced)
        return fail(Code::NotFound, nameOf(line),
                    fmt::format("The {} of {} is no longer among the supplies; choose another.", role, nameOf(line)));
    const auto& material = priced->material;
    bool fits = false;
    for (const auto kind : kinds) fits = fits || material.kind == kind;
    if (!fits)
        return fail(Code::Invalid, material.name,
                    fmt::format("{} cannot be the {} of {}: it is {}; choose another.", material.name, role,
                                nameOf(line), catalogue::nameOf(material.kind)));
    if (!priced->price)
        return fail(Code::Missing, material.name,
                    fmt::format("{} has no price; add a pack with a price to it in Supplies.", material.name));
    return {};
}

Done checkStones(const catalogue::OrderLine& line, const catalogue::PriceBook& book) {
    if (line.stones.empty())
        return fail(Code::Missing, nameOf(line),
                    fmt::format("{} has no stones; add a colour and how many a piece takes.", nameOf(line)));
    if (static_cast<std::int64_t>(line.stones.size()) > kMostColours)
        return fail(Code::OutOfRange, nameOf(line),
                    fmt::format("{} has more than {} colours; leave some out.", nameOf(line), kMostColours));
    for (std::size_t i = 0; i < line.stones.size(); ++i) {
        const auto& stone = line.stones[i];
        if (auto ok = checkMaterial(line, book, stone.material, {MaterialKind::Stone}, "stone"); !ok) return ok;
        const auto& material = book.find(stone.material)->material;
        if (stone.count.value() < 1 || stone.count.value() > kMostStonesAPiece)
            return fail(Code::OutOfRange, material.name,
                        fmt::format("{} takes {} of {} a piece; give a number from 1 to 1,000,000.", nameOf(line),
                                    stone.count.value(), material.name));
        const bool again = std::any_of(line.stones.begin(), line.stones.begin() + static_cast<std::ptrdiff_t>(i),
                                       [&](const auto& earlier) { return earlier.material == stone.material; });
        if (again)
            return fail(Code::Invalid, material.name,
                        fmt::format("{} names {} twice; put both counts in one row.", nameOf(line), material.name));
        const auto loss = material.stone.loss.ppm();
        if (loss < 0 || loss >= units::kPpm)
            return fail(Code::OutOfRange, material.name,
                        fmt::format("The loss of {} must be from 0 to below 100 %; correct it in Supplies.",
                                    material.name));
    }
    return {};
}

Done checkSizes(const catalogue::OrderLine& line, const catalogue::PriceBook& book) {
    std::int64_t named = 0;
    const auto* base = book.find(line.onto);
    for (const auto& size : line.sizes) {
        if (size.count.isNegative() || size.count > line.quantity)
            return fail(Code::OutOfRange, size.size,
                        fmt::format("{} of {} is not from 0 to the {} pieces of the line; correct the sizes.",
                                    size.count.value(), size.size, line.quantity.value()));
        named += size.count.value();
        bool known = false;
        if (base && !line.customersGarment)
            for (const auto& row : base->material.sizes) known = known || row.name == size.size;
        if (!known)
            return fail(Code::NotFound, size.size,
                        fmt::format("{} is not a size of what {} goes on; choose one of its sizes.", size.size,
                                    nameOf(line)));
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
            return fail(Code::OutOfRange, nameOf(line),
                        fmt::format("{} needs a width and a height above nothing and up to a kilometre.",
                                    nameOf(line)));
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

Done checkLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book) {
    if (auto ok = checkMeasures(line); !ok) return ok;
    if (auto ok = checkStones(line, book); !ok) return ok;
    if (!line.customersGarment) {
        if (line.onto.isNone())
            return fail(Code::Missing, nameOf(line),
                        fmt::format("Say what {} goes on: a backing, a blank, or the customer's own garment.",
                                    nameOf(line)));
        if (auto ok = checkMaterial(line, book, line.onto, {MaterialKind::Backing, MaterialKind::Blank}, "base"); !ok)
            return ok;
    }
    if (auto ok = checkSizes(line, book); !ok) return ok;
    const auto& shop = book.shop;
    if (!shop.usualTape.isNone())
        if (auto ok = checkMaterial(line, book, shop.usualTape, {MaterialKind::Tape}, "tape"); !ok) return ok;
    if (!shop.usualTemplate.isNone() && !line.templatesOnWall)
        if (auto ok = checkMaterial(line, book, shop.usualTemplate, {MaterialKind::Template}, "template"); !ok)
            return ok;
    for (const auto& id : shop.packing)
        if (auto ok = checkMaterial(line, book, id, {MaterialKind::Packing}, "packing"); !ok) return ok;
    return {};
}

} // namespace sp::costing

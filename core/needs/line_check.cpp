// SPDX-License-Identifier: MIT
#include "core/needs/line_check.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::needs {

namespace {

using base::Code;
using base::Done;
using base::fail;
using catalogue::MaterialKind;

bool isStonesAPiece(units::Count count) { return count.value() >= 1 && count.value() <= catalogue::kMaxStonesAPiece; }

bool isLoss(units::Rate loss) { return !loss.isNegative() && loss.ppm() < units::kPpm; }

std::string nameOf(const catalogue::OrderLine& line) { return line.title.empty() ? "This line" : line.title; }

/// The material, when it can play that role; the words for the role are asked for only when it cannot.
base::Result<const catalogue::PricedMaterial*> material(const catalogue::OrderLine& line,
                                                        const catalogue::PriceBook& book, const base::Id& id,
                                                        std::initializer_list<MaterialKind> kinds, auto roleWords) {
    const auto* priced = book.find(id);
    if (!priced)
        return fail(
            Code::NotFound, nameOf(line),
            fmt::format("The {} of {} is no longer among the supplies; choose another.", roleWords(), nameOf(line)));
    const auto& found = priced->material;
    bool fits = false;
    for (const auto kind : kinds) fits = fits || found.kind == kind;
    if (!fits)
        return fail(Code::Invalid, found.name,
                    fmt::format("{} cannot be the {} of {}: it is {}; choose another.", found.name, roleWords(),
                                nameOf(line), catalogue::nameOf(found.kind)));
    if (!priced->price)
        return fail(Code::Missing, found.name,
                    fmt::format("{} has no price; add a pack with a price to it in Supplies.", found.name));
    return priced;
}

Done findStones(const catalogue::OrderLine& line, const catalogue::PriceBook& book, LineMaterials& out) {
    if (line.stones.empty() || static_cast<std::int64_t>(line.stones.size()) > catalogue::kMaxColours)
        return checkColours(line, nameOf(line));
    for (std::size_t i = 0; i < line.stones.size(); ++i) {
        const auto& stone = line.stones[i];
        const auto found = material(line, book, stone.material, {MaterialKind::Stone},
                                    [i] { return fmt::format("stone in row {}", i + 1); });
        if (!found) return fail(found.error());
        const auto& known = (*found)->material;
        if (!isStonesAPiece(stone.count)) return checkStone(known, stone.count, nameOf(line));
        const bool again = std::any_of(line.stones.begin(), line.stones.begin() + static_cast<std::ptrdiff_t>(i),
                                       [&](const auto& earlier) { return earlier.material == stone.material; });
        if (again)
            return fail(Code::Invalid, known.name,
                        fmt::format("{} names {} twice; put both counts in one row.", nameOf(line), known.name));
        if (!isLoss(known.stone.loss)) return checkStone(known, stone.count, nameOf(line));
        out.stones.push_back({*found, needOfStone(stone.count, known)});
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

Done checkMeasures(const catalogue::OrderLine& line, std::int64_t pieces) {
    if (!isNumberOfPieces(pieces))
        return fail(
            Code::OutOfRange, nameOf(line),
            fmt::format("{} pieces of {} cannot be priced; give a number from 1 to 1,000,000.", pieces, nameOf(line)));
    if (!hasSize(line))
        return fail(Code::OutOfRange, nameOf(line),
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

bool hasSize(const catalogue::OrderLine& line) {
    const auto isSide = [](units::Length side) { return side > units::Length{} && side <= units::kLongest; };
    return isSide(line.width) && isSide(line.height);
}

Done checkColours(const catalogue::OrderLine& line, const std::string& title) {
    if (line.stones.empty())
        return fail(Code::Missing, title,
                    fmt::format("{} has no stones; add a colour and how many a piece takes.", title));
    if (static_cast<std::int64_t>(line.stones.size()) > catalogue::kMaxColours)
        return fail(Code::OutOfRange, title,
                    fmt::format("{} has more than {} colours; leave some out.", title, catalogue::kMaxColours));
    return {};
}

Done checkStone(const catalogue::Material& stone, units::Count perPiece, const std::string& title) {
    if (!isStonesAPiece(perPiece))
        return fail(Code::OutOfRange, stone.name,
                    fmt::format("{} takes {} of {} a piece; give a number from 1 to 1,000,000.", title,
                                perPiece.value(), stone.name));
    if (!isLoss(stone.stone.loss))
        return fail(Code::OutOfRange, stone.name,
                    fmt::format("The loss of {} must be from 0 to below 100 %; correct it in Supplies.", stone.name));
    return {};
}

base::Result<LineMaterials> checkLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                      std::int64_t pieces) {
    if (auto ok = checkMeasures(line, pieces); !ok) return fail(ok.error());
    LineMaterials out;
    out.stones.reserve(line.stones.size());
    out.packing.reserve(book.shop.packing.size());
    if (auto ok = findStones(line, book, out); !ok) return fail(ok.error());
    const auto find = [&](const catalogue::PricedMaterial*& place, const base::Id& id,
                          std::initializer_list<MaterialKind> kinds, std::string_view role) -> Done {
        const auto found = material(line, book, id, kinds, [role] { return role; });
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

} // namespace sp::needs

// SPDX-License-Identifier: MIT
#include "app/first_hour/usual_supplies.h"

#include "app/words/names.h"
#include "core/catalogue/stone_colour.h"

#include <QCoreApplication>

#include <algorithm>

namespace sp::first_hour {

namespace {

using catalogue::MaterialKind;
using catalogue::StoneColour;
using units::Count;
using units::Length;

struct Size {
    Length width;
    Length height;
};

Size sheetSize(units::LengthUnit unit, std::int64_t halfInches, std::int64_t millimetres) {
    if (unit == units::LengthUnit::Inch)
        return {Length::fromInch64ths(halfInches * 32), Length::fromInch64ths(12 * 64)};
    return {Length::fromMicrometres(millimetres * 1'000), Length::fromMicrometres(300'000)};
}

UsualSupply sheetsOf(MaterialKind kind, const QString& name, std::int64_t sheets, Size size) {
    UsualSupply supply;
    supply.material.name = name.toStdString();
    supply.material.kind = kind;
    supply.material.sheet.width = size.width;
    supply.material.sheet.height = size.height;
    supply.material.sheet.gap = Length::fromInch64ths(8);
    supply.pack = QCoreApplication::translate("UsualSupplies", "%1 sheets").arg(sheets).toStdString();
    supply.amount = Count::of(sheets);
    return supply;
}

UsualSupply packingOf(const QString& name, const QString& pack, std::int64_t amount) {
    UsualSupply supply;
    supply.material.name = name.toStdString();
    supply.material.kind = MaterialKind::Packing;
    supply.pack = pack.toStdString();
    supply.amount = Count::of(amount);
    return supply;
}

std::vector<UsualSupply> sheets(units::LengthUnit unit) {
    auto tape = sheetsOf(MaterialKind::Tape, QCoreApplication::translate("UsualSupplies", "Hot-fix tape"), 10,
                         sheetSize(unit, 19, 240));
    tape.material.sheet.border = Length::fromInch64ths(16);
    tape.material.sheet.gap = {};
    auto flock = sheetsOf(MaterialKind::Template, QCoreApplication::translate("UsualSupplies", "Template sheet"), 5,
                          sheetSize(unit, 18, 230));
    flock.material.sheet.margin = Length::fromInch64ths(16);
    flock.material.sheet.border = Length::fromInch64ths(32);
    auto clear = sheetsOf(MaterialKind::Backing, QCoreApplication::translate("UsualSupplies", "Clear decal backing"),
                          10, sheetSize(unit, 18, 230));
    clear.material.sheet.border = Length::fromInch64ths(8);
    return {std::move(tape), std::move(flock), std::move(clear),
            packingOf(QCoreApplication::translate("UsualSupplies", "Clear bag"),
                      QCoreApplication::translate("UsualSupplies", "%1 bags").arg(100), 100),
            packingOf(QCoreApplication::translate("UsualSupplies", "Care card"),
                      QCoreApplication::translate("UsualSupplies", "%1 cards").arg(250), 250)};
}

UsualSupply stone(StoneColour colour, const char* size) {
    constexpr std::int64_t kGross = 144;
    const auto known = catalogue::stoneColours();
    const auto drawn = std::ranges::find(known, colour, &catalogue::DrawnColour::colour);
    UsualSupply supply;
    auto& material = supply.material;
    material.kind = MaterialKind::Stone;
    material.stone.colour = words::nameOf(colour).toStdString();
    material.stone.size = size;
    material.stone.rgb = drawn->rgb;
    material.stone.loss = catalogue::kUsualStoneLoss;
    material.name = material.stone.colour + " " + size;
    supply.pack = QCoreApplication::translate("UsualSupplies", "%1 gross").arg(10).toStdString();
    supply.amount = Count::of(10 * kGross);
    return supply;
}

std::vector<UsualSupply> stones() {
    return {stone(StoneColour::Crystal, "SS6"),   stone(StoneColour::Crystal, "SS10"),
            stone(StoneColour::Crystal, "SS16"),  stone(StoneColour::Jet, "SS10"),
            stone(StoneColour::Jet, "SS16"),      stone(StoneColour::Siam, "SS10"),
            stone(StoneColour::Rose, "SS10"),     stone(StoneColour::Amber, "SS10"),
            stone(StoneColour::Emerald, "SS10"),  stone(StoneColour::Aquamarine, "SS10"),
            stone(StoneColour::Sapphire, "SS10"), stone(StoneColour::Amethyst, "SS10")};
}

} // namespace

std::vector<UsualSupply> usualSupplies(SupplyGroup group, units::LengthUnit unit) {
    return group == SupplyGroup::Sheets ? sheets(unit) : stones();
}

} // namespace sp::first_hour

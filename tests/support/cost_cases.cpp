// SPDX-License-Identifier: MIT
#include "tests/support/cost_cases.h"

#include "tests/support/sample_shop.h"

namespace sp::sample {

using namespace catalogue;
using units::Count;
using units::Duration;
using units::Length;
using units::Money;
using units::Rate;

namespace {

Length inches(std::int64_t n) { return Length::fromInch64ths(n * 64); }

SheetTraits& sheetOf(CostCase& of, const char* name) { return of.book.materials[idOf(name)].material.sheet; }

void onHoodie(CostCase& of) {
    of.line.baseMaterial = idOf("Hoodie");
    of.line.sizes = {{"M", Count::of(5)}, {"2XL", Count::of(3)}};
}

/// The order takes 24 of them and five packs of Aqua; the usual pack of either says so.
void atThePriceOfMany(CostCase& of) {
    onHoodie(of);
    auto prices = std::make_shared<needs::OrderPrices>();
    const auto at = [&](const char* name, std::int64_t need, std::int64_t packs, std::int64_t each) {
        auto& material = of.book.materials[idOf(name)];
        material.breaks = {{Count::of(packs), cents(each)}, {Count::of(packs + 1), cents(each / 2)}};
        (*prices)[idOf(name)] = {need, packs, {cents(each), material.price->per}};
    };
    at("Hoodie", 24, 24, 1279);
    at("Aqua", 5'800, 5, 950);
    of.share.prices = prices;
}

void onCustomersGarment(CostCase& of) {
    of.line.baseMaterial = {};
    of.line.customersGarment = true;
}

void rolls(CostCase& of) {
    for (const char* name : {"Tape", "Template", "Backing"}) {
        auto& sheet = sheetOf(of, name);
        sheet.form = SheetForm::Roll;
        sheet.width = inches(12);
        sheet.height = inches(360);
        sheet.border = Length::fromInch64ths(8);
        sheet.gap = Length::fromInch64ths(4);
    }
}

void otherBasis(CostCase& of) {
    sheetOf(of, "Tape").basis = ShareBasis::WholeSheets;
    sheetOf(of, "Tape").lifts = 1;
    sheetOf(of, "Template").basis = ShareBasis::ByPosition;
    sheetOf(of, "Backing").basis = ShareBasis::ByPosition;
    sheetOf(of, "Backing").border = Length::fromInch64ths(16);
    sheetOf(of, "Backing").margin = Length::fromInch64ths(10);
}

void manyLifts(CostCase& of) {
    sheetOf(of, "Tape").basis = ShareBasis::WholeSheets;
    sheetOf(of, "Tape").lifts = 5;
}

void planned(CostCase& of) { of.line.first().plannedPieces = Count::of(96); }

void plannedFewer(CostCase& of) { of.line.first().plannedPieces = Count::of(12); }

/// Kept at 6.50 and 22.40; of 96 pieces 80 are sold, what is left is shared with another line of 12.
void paidOff(CostCase& of) {
    of.line.first().plannedPieces = Count::of(96);
    of.share.sets = {{.planned = Count::of(96),
                      .sold = Count::of(80),
                      .carried = Count::of(16),
                      .ofPieces = Count::of(of.line.quantity.value() + 12),
                      .cost = {cents(650), cents(2240)},
                      .isKept = true,
                      .holdsWork = true}};
    of.share.setPieces = {Count{}};
}

/// Not cut yet, without its work.
void paidOffFromNowOn(CostCase& of) {
    paidOff(of);
    auto& set = of.share.sets[0];
    set.sold = {};
    set.carried = set.ofPieces = of.line.quantity;
    set.cost.work = {};
    set.isKept = set.holdsWork = false;
    of.share.setPieces.clear();
}

void paidOffWhole(CostCase& of) {
    paidOff(of);
    of.line.first().templatesOnWall = true;
    of.share.sets[0].sold = Count::of(97);
    of.share.sets[0].carried = {};
}

void onTheWall(CostCase& of) { of.line.first().templatesOnWall = true; }

void withCardFee(CostCase& of) {
    of.book.shop.rules.cardFee = {true, Rate::fromPpm(29'000), cents(30)};
    of.share.cardFixed = cents(15);
    of.rules = 2;
}

void packedByTheShop(CostCase& of) {
    of.book.shop.packing = {{idOf("Bag"), Count::of(2)}, {idOf("Box"), Count::of(3), PackingPer::Order}};
    of.share.packing = cents(180);
}

/// What goes with the order comes first.
void packedByItself(CostCase& of) {
    of.line.packing = {{idOf("Box"), Count::of(1), PackingPer::Order}, {idOf("Bag"), Count::of(3)}, {idOf("Box")}};
    of.share.packing = Money::fromMicros(333'333);
}

void unpacked(CostCase& of) { of.line.packing.emplace(); }

void freightInShare(CostCase& of) {
    for (auto& [id, material] : of.book.materials)
        material.freight = {FreightKind::Share, Rate::fromPpm(35'000), {}, {}};
}

void freightInSpread(CostCase& of) {
    for (auto& [id, material] : of.book.materials)
        material.freight = {FreightKind::Spread, {}, cents(750), cents(6'000)};
    of.share.freight = cents(11);
}

void learning(CostCase& of) {
    auto& bench = of.book.bench;
    bench.of(Step::Art).perColour = Duration::fromSeconds(20);
    bench.of(Step::Brush).learning = Rate::fromPercent(85);
    bench.of(Step::Press).learning = Rate::fromPpm(925'000);
    bench.of(Step::Lift) = {Duration::fromSeconds(90), {}, Duration::fromMilliseconds(12'500), {}};
    of.line.first().artTime = Duration::fromMinutes(40);
}

void largerThanThePlaten(CostCase& of) {
    of.line.first().width = inches(18);
    of.line.first().height = inches(21);
    for (const char* name : {"Tape", "Template", "Backing"}) {
        sheetOf(of, name).width = inches(24);
        sheetOf(of, name).height = inches(36);
    }
}

void pressedTwice(CostCase& of) {
    auto& press = of.book.bench.press;
    press.secondPressShare = Rate::fromPpm(125'000);
    press.secondDwell = Duration::fromMilliseconds(5'500);
    press.testPresses = 2;
    of.book.bench.cutter.salvage = cents(7'550);
    of.book.materials[idOf("Aqua")].price->price = Money::fromMicros(4'861'250);
}

void pressedTogether(CostCase& of) {
    of.book.bench.of(Step::Press) = {Duration::fromSeconds(30), {}, Duration::fromMilliseconds(8'500), {}};
    of.book.bench.of(Step::Press).perCycle = Duration::fromSeconds(45);
    of.book.bench.of(Step::Trim).perCycle = Duration::fromSeconds(5);
}

void nextToNothing(CostCase& of) {
    of.book.shop.usualTape = {};
    of.book.shop.usualTemplate = {};
    of.book.shop.packing = {};
    of.book.shop.rates.overheadPerMonth = {};
    of.book.shop.rates.spoilage = {};
    of.book.bench.press.warmUp = {};
    of.book.bench.press.testPresses = 0;
    of.book.materials[idOf("Aqua")].material.stone.loss = {};
    of.book.materials[idOf("Jet")].origin = {};
    of.book.bench.steps = {};
    of.line.title.clear();
}

void abroad(CostCase& of) {
    of.book.shop.currency = *units::Currency::parse("JPY");
    of.book.shop.lengthUnit = units::LengthUnit::Millimetre;
    rolls(of);
}

CostCase caseOf(std::string name, std::int64_t pieces) {
    return {std::move(name), lantern(pieces), priceBook(), {}, catalogue::kRulesVersion};
}

} // namespace

std::vector<CostCase> costCases() {
    struct Row {
        const char* name;
        std::int64_t pieces;
        std::vector<void (*)(CostCase&)> changes;
    };
    const std::vector<Row> rows{
        {"backing", 24, {}},
        {"one piece", 1, {}},
        {"a thousand and one", 1'001, {}},
        {"hoodie with sizes", 24, {onHoodie}},
        {"at the price of many packs", 24, {atThePriceOfMany}},
        {"customer's garment", 10, {onCustomersGarment}},
        {"customer's garment, templates on the wall, card fee", 10, {onCustomersGarment, onTheWall, withCardFee}},
        {"rolls", 24, {rolls}},
        {"the other basis", 25, {otherBasis}},
        {"tape of many lifts by whole sheets", 24, {manyLifts}},
        {"planned pieces", 24, {planned}},
        {"fewer planned pieces", 24, {plannedFewer}},
        {"a set that is paid off", 24, {paidOff}},
        {"a set that is paid off from now on", 24, {paidOffFromNowOn}},
        {"a set that is paid off on the wall", 24, {onTheWall, paidOff}},
        {"a set whose plan is reached", 24, {paidOffWhole}},
        {"templates on the wall", 24, {onTheWall}},
        {"card fee", 24, {withCardFee}},
        {"learning and art time", 60, {learning}},
        {"larger than the platen", 7, {largerThanThePlaten}},
        {"pressed twice", 33, {pressedTwice}},
        {"pressed together", 33, {pressedTogether}},
        {"next to nothing", 3, {nextToNothing}},
        {"abroad", 24, {abroad}},
        {"packing by amount and for the order", 24, {packedByTheShop}},
        {"packing of its own", 24, {packedByItself}},
        {"out of the shop's packing", 24, {unpacked}},
        {"freight in, a share", 24, {freightInShare}},
        {"freight in, spread", 24, {onHoodie, packedByTheShop, freightInSpread}},
        {"freight in on the customer's garment", 24, {onCustomersGarment, onTheWall, freightInShare}},
        {"everything at once", 48, {onHoodie, rolls, planned, withCardFee, learning, pressedTwice}},
    };
    std::vector<CostCase> cases;
    for (const auto& row : rows) {
        auto& made = cases.emplace_back(caseOf(row.name, row.pieces));
        for (const auto change : row.changes) change(made);
    }
    return cases;
}

} // namespace sp::sample

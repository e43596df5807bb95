// SPDX-License-Identifier: MIT
#include "tests/support/sample_shop.h"

#include <algorithm>

namespace sp::sample {

using namespace catalogue;
using units::Count;
using units::Duration;
using units::Length;
using units::Money;
using units::Rate;

base::Id idOf(std::string_view name) {
    base::Id::Bytes bytes{};
    std::copy_n(name.begin(), std::min(name.size(), bytes.size()), bytes.begin());
    return base::Id::fromBytes(bytes);
}

units::Date day(std::string_view iso) { return *units::Date::parse(iso); }

namespace {

void put(PriceBook& book, Material material, Money price, std::int64_t per) {
    material.id = idOf(material.name);
    book.materials[material.id] = {material,
                                   units::UnitPrice{price, Count::of(per)},
                                   {catalogue::PriceOrigin::Kind::Pack, false, {}, "sample supplier", std::nullopt}};
}

Material sheet(std::string name, MaterialKind kind, Length width, Length height) {
    Material material;
    material.name = std::move(name);
    material.kind = kind;
    material.sheet.width = width;
    material.sheet.height = height;
    return material;
}

Material stone(std::string name) {
    Material material;
    material.name = std::move(name);
    material.kind = MaterialKind::Stone;
    material.stone.loss = Rate::fromPercent(2);
    return material;
}

void setBench(BenchStandards& bench) {
    bench.of(Step::Art) = {Duration::fromMinutes(15), {}, {}, {}};
    bench.of(Step::Cut) = {Duration::fromMinutes(2), {}, {}, Duration::fromSeconds(60)};
    bench.of(Step::Weed) = {{}, Duration::fromMinutes(1), {}, Duration::fromSeconds(30)};
    bench.of(Step::SetUp) = {Duration::fromMinutes(4), {}, {}, {}};
    bench.of(Step::Brush) = {{}, Duration::fromSeconds(25), {}, Duration::fromSeconds(30)};
    bench.of(Step::Press) = {{}, {}, Duration::fromSeconds(40), {}};
    bench.of(Step::Pack) = {{}, {}, Duration::fromSeconds(20), {}};
    bench.press.price = cents(1'000'000);
    bench.press.salvage = cents(100'000);
    bench.press.lifePresses = 100'000;
    bench.press.platenWidth = Length::fromInch64ths(16 * 64);
    bench.press.platenHeight = Length::fromInch64ths(20 * 64);
    bench.press.dwell = Duration::fromSeconds(10);
    bench.press.handling = Duration::fromSeconds(20);
    bench.press.warmUp = Duration::fromMinutes(12);
    bench.press.runningPerHour = cents(45);
    bench.cutter.price = cents(60'000);
    bench.cutter.lifeHoles = 1'000'000;
}

} // namespace

PriceBook priceBook() {
    PriceBook book;
    const auto inches = [](std::int64_t n) { return Length::fromInch64ths(n * 64); };
    put(book, stone("Aqua"), cents(999), 1440);
    put(book, stone("Jet"), cents(650), 1440);
    auto tape = sheet("Tape", MaterialKind::Tape, Length::fromInch64ths(9 * 64 + 32), inches(12));
    tape.sheet.lifts = 2;
    tape.sheet.basis = ShareBasis::ByPosition;
    put(book, tape, cents(145), 1);
    put(book, sheet("Template", MaterialKind::Template, inches(9), inches(12)), cents(325), 1);
    put(book, sheet("Backing", MaterialKind::Backing, inches(9), inches(12)), cents(118), 1);
    Material hoodie;
    hoodie.name = "Hoodie";
    hoodie.kind = MaterialKind::Blank;
    hoodie.sizes = {{"M", {}, {}}, {"2XL", cents(210), cents(275)}};
    put(book, hoodie, cents(1390), 1);
    Material bag;
    bag.name = "Bag";
    bag.kind = MaterialKind::Packing;
    put(book, bag, cents(620), 100);
    Material box;
    box.name = "Box";
    box.kind = MaterialKind::Packing;
    put(book, box, cents(145), 1);
    auto& shop = book.shop;
    shop.usualTape = idOf("Tape");
    shop.usualTemplate = idOf("Template");
    shop.packing = {{idOf("Bag")}};
    shop.rates.labourPerHour = cents(1800);
    shop.rates.overheadPerMonth = cents(54'000);
    shop.rates.productivePerMonth = Duration::fromMinutes(120 * 60);
    shop.rates.spoilage = Rate::fromPercent(3);
    shop.rates.garmentAllowance = cents(2000);
    shop.rules.ladder = {{Count::of(1), Rate::fromPercent(95)}, {Count::of(24), Rate::fromPercent(65)}};
    shop.rules.rush = {{2, Rate::fromPercent(60)}, {7, Rate::fromPercent(20)}};
    shop.rules.tax.rate = Rate::fromPpm(72'500);
    shop.rules.depositRate = Rate::fromPercent(50);
    shop.rules.depositStep = cents(500);
    shop.ladderQuantities = {Count::of(12), Count::of(24), Count::of(48)};
    setBench(book.bench);
    return book;
}

PriceBook freeBook() {
    auto book = priceBook();
    for (auto& [id, material] : book.materials) {
        material.price->price = {};
        material.material.stone.loss = {};
    }
    auto& shop = book.shop;
    shop.rates = {};
    shop.rules = {};
    shop.usualTape = shop.usualTemplate = {};
    shop.packing.clear();
    const auto press = book.bench.press;
    book.bench = {};
    book.bench.press.platenWidth = press.platenWidth;
    book.bench.press.platenHeight = press.platenHeight;
    book.bench.press.testPresses = 0;
    return book;
}

OrderLine square(std::int64_t quantity) {
    auto line = lantern(quantity);
    line.title = "Square";
    line.first().width = line.first().height = Length::fromInch64ths(4 * 64);
    line.first().stones = {{idOf("Aqua"), Count::of(200)}, {idOf("Jet"), Count::of(100)}};
    return line;
}

OrderLine lantern(std::int64_t quantity) {
    OrderLine line;
    line.title = "Lantern";
    line.first().width = Length::fromInch64ths(3 * 64 + 32);
    line.first().height = Length::fromInch64ths(2 * 64 + 48);
    line.first().stones = {{idOf("Aqua"), Count::of(212)}, {idOf("Jet"), Count::of(96)}};
    line.baseMaterial = idOf("Backing");
    line.quantity = Count::of(quantity);
    return line;
}

PlainJob::PlainJob(std::int64_t quantity, Money each) {
    book.materials[idOf("Hoodie")].price->price = each;
    line.quantity = Count::of(quantity);
    line.baseMaterial = idOf("Hoodie");
}

Order orderOf(std::vector<OrderLine> lines) {
    Order order;
    order.quotedOn = day("2026-11-25");
    order.lines = std::move(lines);
    return order;
}

} // namespace sp::sample

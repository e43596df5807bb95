// SPDX-License-Identifier: MIT
#include "tests/reference/price_random.h"

#include "tests/support/sample_shop.h"

#include <algorithm>
#include <array>

namespace sp::reference {

namespace {

using namespace catalogue;
using sample::cents;
using sample::idOf;
using units::Count;
using units::Duration;
using units::Length;
using units::Money;
using units::Rate;

class Draw {
  public:
    explicit Draw(std::mt19937_64& random)
        : m_random(random) {}

    std::int64_t from(std::int64_t least, std::int64_t most) {
        return least + static_cast<std::int64_t>(m_random() % static_cast<std::uint64_t>(most - least + 1));
    }
    bool once(std::int64_t in) { return from(1, in) == 1; }
    /// Nothing one time in four.
    Money money(std::int64_t mostMicros) { return Money::fromMicros(once(4) ? 0 : from(1, mostMicros)); }
    Duration time(std::int64_t mostMilliseconds) {
        return Duration::fromMilliseconds(once(4) ? 0 : from(1, mostMilliseconds));
    }
    Rate share(std::int64_t mostPpm) { return Rate::fromPpm(once(4) ? 0 : from(1, mostPpm)); }
    Length quarters(std::int64_t least, std::int64_t most) { return Length::fromInch64ths(16 * from(least, most)); }

    void sheet(SheetTraits& sheet) {
        sheet.form = once(6) ? SheetForm::Roll : SheetForm::Sheet;
        sheet.height = Length::fromInch64ths(64 * (sheet.form == SheetForm::Roll ? 360 : 18));
        sheet.width = Length::fromInch64ths(64 * 12);
        sheet.basis = once(2) ? ShareBasis::WholeSheets : ShareBasis::ByPosition;
        sheet.margin = quarters(0, 1);
        sheet.border = quarters(0, 1);
        sheet.gap = quarters(0, 1);
        sheet.oneWay = once(3);
    }

  private:
    std::mt19937_64& m_random;
};

std::vector<PackingUse> drawPacking(Draw& draw) {
    std::vector<PackingUse> packing;
    for (const auto* name : {"Bag", "Box"})
        for (const auto per : {PackingPer::Piece, PackingPer::Order})
            if (draw.once(3)) packing.push_back({idOf(name), Count::of(draw.from(1, 4)), per});
    return packing;
}

void drawMaterials(Draw& draw, PriceBook& book) {
    for (const auto* name : {"Aqua", "Jet", "Tape", "Template", "Backing", "Hoodie", "Bag", "Box"}) {
        auto& priced = book.materials[idOf(name)];
        priced.price = units::UnitPrice{draw.money(30'000'000), Count::of(draw.from(1, 1440))};
        if (draw.once(2))
            for (auto from = draw.from(2, 6); from < 40 && !draw.once(3); from += draw.from(1, 12))
                priced.breaks.push_back({Count::of(from), draw.money(30'000'000)});
        if (draw.once(2))
            priced.freight = {draw.once(2) ? FreightKind::Share : FreightKind::Spread, draw.share(400'000),
                              draw.money(20'000'000), Money::fromMicros(draw.from(10'000'000, 200'000'000))};
        auto& material = priced.material;
        if (material.kind == MaterialKind::Stone) material.stone.loss = draw.share(200'000);
        if (material.kind == MaterialKind::Tape) material.sheet.lifts = draw.from(1, 4);
        if (material.kind == MaterialKind::Tape || material.kind == MaterialKind::Template ||
            material.kind == MaterialKind::Backing)
            draw.sheet(material.sheet);
        if (material.kind == MaterialKind::Blank)
            material.sizes = {{"M", {}, {}},
                              {"XL", draw.money(3'000'000), {}},
                              {"2XL", draw.money(3'000'000), draw.money(4'000'000)}};
    }
    auto& shop = book.shop;
    if (draw.once(5)) shop.usualTape = {};
    if (draw.once(5)) shop.usualTemplate = {};
    shop.packing = drawPacking(draw);
}

void drawBench(Draw& draw, PriceBook& book) {
    auto& rates = book.shop.rates;
    rates.labourPerHour = draw.money(60'000'000);
    rates.overheadPerMonth = draw.money(2'000'000'000);
    rates.productivePerMonth = Duration::fromMilliseconds(draw.from(3'600'000, 600'000'000));
    rates.spoilage = draw.share(200'000);
    rates.garmentAllowance = draw.money(40'000'000);
    for (auto& step : book.bench.steps) {
        step = {draw.time(1'800'000), draw.time(120'000),     draw.time(120'000),
                draw.time(60'000),    Rate::fromPercent(100), draw.once(3) ? draw.time(180'000) : Duration{}};
        if (draw.once(5)) step.learning = Rate::fromPpm(draw.from(500'000, 999'999));
    }
    auto& press = book.bench.press;
    press.salvage = draw.money(500'000'000);
    press.price = press.salvage + draw.money(2'000'000'000);
    press.lifePresses = draw.from(1, 200'000);
    press.dwell = draw.time(20'000);
    press.handling = draw.time(40'000);
    press.warmUp = draw.time(1'200'000);
    press.testPresses = draw.from(0, 3);
    press.secondPressShare = draw.share(1'000'000);
    press.secondDwell = draw.time(10'000);
    press.runningPerHour = draw.money(3'000'000);
    if (draw.once(2)) { // smaller than some pieces
        press.platenWidth = Length::fromInch64ths(64 * 5);
        press.platenHeight = Length::fromInch64ths(64 * 7);
    }
    book.bench.cutter.salvage = draw.money(500'000'000);
    book.bench.cutter.price = book.bench.cutter.salvage + draw.money(2'000'000'000);
    book.bench.cutter.lifeHoles = draw.from(1, 10'000'000);
}

void drawRules(Draw& draw, PriceBook& book) {
    auto& rules = book.shop.rules;
    rules.ladder.clear();
    for (std::int64_t from = draw.from(1, 10); from < 100; from += draw.from(1, 40))
        rules.ladder.push_back({Count::of(from), Rate::fromPpm(draw.from(-200'000, 2'000'000))});
    rules.rush = {{draw.from(0, 3), draw.share(600'000)}, {draw.from(4, 8), draw.share(300'000)}};
    constexpr std::array<std::int64_t, 5> steps{1, 5, 25, 50, 100};
    constexpr std::array kinds{RoundingKind::Nearest, RoundingKind::Up, RoundingKind::Ending};
    rules.rounding = {kinds[static_cast<std::size_t>(draw.from(0, 2))],
                      steps[static_cast<std::size_t>(draw.from(0, 4))], draw.from(0, 99)};
    rules.setUp = draw.once(2) ? SetUpCharge::OwnLine : SetUpCharge::Spread;
    rules.minimumOrder = draw.money(300'000'000);
    rules.tax = {"Tax", draw.share(300'000), draw.once(2),
                 draw.once(2) ? TaxRounding::PerLine : TaxRounding::PerInvoice};
    if (draw.once(2)) rules.tax.others = {{"Reduced", draw.share(300'000)}, {"Other", draw.share(300'000)}};
    rules.cardFee = {draw.once(2), draw.share(60'000), draw.money(1'000'000)};
    if (draw.once(2)) rules.places = {{"Sleeve", draw.money(5'000'000)}, {"Hem", draw.money(5'000'000)}};
    rules.depositRate = draw.share(1'000'000);
    rules.depositStep = draw.once(2) ? Money{} : cents(draw.from(1, 1000));
    if (draw.once(2)) {
        book.customer = Customer{};
        auto& paper = book.customer->certificate.emplace();
        paper.issuedOn = sample::day("2026-11-25").plusDays(draw.from(-3, 1));
        if (draw.once(2)) paper.expiresOn = sample::day("2026-11-25").plusDays(draw.from(-1, 3));
    }
}

OrderLine drawLine(Draw& draw, const PriceBook& book) {
    auto line = sample::lantern(draw.once(3) ? draw.from(1, 400) : draw.from(1, 40));
    constexpr std::array<std::pair<std::int64_t, std::int64_t>, 5> sizes{
        {{14, 11}, {16, 16}, {24, 18}, {10, 40}, {36, 32}}};
    const auto& [width, height] = sizes[static_cast<std::size_t>(draw.from(0, 4))];
    line.first().width = draw.quarters(width, width);
    line.first().height = draw.quarters(height, height);
    line.first().stones[0].count = Count::of(draw.from(1, 900));
    line.first().stones[1].count = Count::of(draw.from(1, 900));
    if (draw.once(4)) line.first().stones.pop_back();
    line.first().templatesOnWall = draw.once(3);
    if (draw.once(4)) line.first().plannedPieces = Count::of(draw.from(1, 200));
    if (draw.once(4)) line.first().artTime = draw.time(3'600'000);
    if (draw.once(4)) line.overrideEach = draw.money(20'000'000);
    line.taxable = !draw.once(4);
    if (const auto& rates = book.shop.rules.tax.others; !rates.empty() && draw.once(2))
        line.taxRate = rates[static_cast<std::size_t>(draw.from(0, 1))].name;
    if (draw.once(4)) line.packing = drawPacking(draw);
    if (draw.once(3)) line.first().place = "sleeve";
    switch (draw.from(0, 2)) {
    case 0: break;
    case 1:
        line.customersGarment = true;
        line.baseMaterial = {};
        break;
    default: {
        line.baseMaterial = idOf("Hoodie");
        auto left = line.quantity.value();
        for (const auto& size : book.find(line.baseMaterial)->material.sizes) {
            const auto count = draw.from(0, left);
            left -= count;
            if (!draw.once(3)) line.sizes.push_back({size.name, Count::of(count)});
        }
    }
    }
    return line;
}

} // namespace

PriceCase randomPriceCase(std::mt19937_64& random) {
    Draw draw(random);
    PriceCase made{{}, sample::priceBook()};
    drawMaterials(draw, made.book);
    drawBench(draw, made.book);
    drawRules(draw, made.book);
    std::vector<OrderLine> lines;
    for (auto n = draw.from(1, 4); n > 0; --n) lines.push_back(drawLine(draw, made.book));
    // Of the same design now and then, with one set of templates or with one each.
    for (std::size_t i = 0; i < lines.size(); ++i) {
        auto& place = lines[i].first();
        if (draw.once(2)) place.design = idOf("Lantern");
        if (i == 0 || !draw.once(2)) continue;
        place.width = lines[0].first().width;
        place.height = lines[0].first().height;
        place.stones = lines[0].first().stones;
    }
    made.book.shop.countsDesignOverLines = draw.once(2);
    made.book.shop.paysOffWork = draw.once(2);
    if (draw.once(2)) {
        auto& set = made.book.sets[idOf("Lantern")];
        set = {idOf("Lantern"), Count::of(draw.from(0, 150)), {}};
        if (draw.once(2)) set.cost = SetCost{draw.money(20'000'000), draw.money(20'000'000)};
    }
    auto& order = made.order = sample::orderOf(std::move(lines));
    if (draw.once(2)) order.wantedBy = order.quotedOn.plusDays(draw.from(0, 10));
    if (draw.once(2))
        order.discount.share = draw.share(1'000'000);
    else if (draw.once(2))
        order.discount.amount = draw.money(1'000'000);
    order.asksExemption = draw.once(2);
    return made;
}

} // namespace sp::reference

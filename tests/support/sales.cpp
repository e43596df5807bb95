// SPDX-License-Identifier: MIT
#include "tests/support/sales.h"

#include "core/layout/fit_memo.h"
#include "core/pricing/ladder.h"

#include <fmt/format.h>

#include <stdexcept>

namespace sp::test {

namespace {

using catalogue::MaterialKind;
using units::Count;
using units::Date;
using units::Length;
using units::Money;
using units::Rate;

base::Id idOf(std::uint8_t number) {
    base::Id::Bytes bytes{};
    bytes.back() = number;
    return base::Id::fromBytes(bytes);
}

const base::Id kAquamarine = idOf(1);
const base::Id kJet = idOf(2);
const base::Id kAmber = idOf(3);
const base::Id kBacking = idOf(4);
const base::Id kHoodie = idOf(5);
const base::Id kStudio = idOf(9);

Length inch64ths(std::int64_t n) { return Length::fromInch64ths(n); }

void addMaterial(catalogue::PriceBook& book, const base::Id& id, std::string name, MaterialKind kind, std::uint32_t rgb,
                 Money price) {
    catalogue::PricedMaterial priced;
    priced.material.id = id;
    priced.material.name = std::move(name);
    priced.material.kind = kind;
    priced.material.stone.rgb = rgb;
    priced.material.sheet.width = inch64ths(9 * 64);
    priced.material.sheet.height = inch64ths(12 * 64);
    priced.price = units::UnitPrice{price, Count::of(kind == MaterialKind::Stone ? 1'440 : 1)};
    priced.origin = {catalogue::PriceOrigin::Kind::Pack, false, "Tollgate Film and Tape", "list of October",
                     std::nullopt};
    book.materials.emplace(id, std::move(priced));
}

catalogue::PriceBook studioBook() {
    catalogue::PriceBook book;
    auto& shop = book.shop;
    shop.letterhead = {"Heron Street Sparkle", "14 Heron Street\nMillbrook\nbench@heronstreet.example",
                       "Work starts when the deposit is in.\nThe balance is due on collection.",
                       "Freshly pressed work is hot.\nKeep the iron off the stones."};
    shop.isDemo = true;
    shop.ladderQuantities = {Count::of(12), Count::of(48), Count::of(96)};
    shop.rates.labourPerHour = cents(2'400);
    auto& rules = shop.rules;
    rules.ladder = {{Count::of(1), Rate::fromPercent(120)}, {Count::of(48), Rate::fromPercent(90)}};
    rules.rush = {{7, Rate::fromPercent(25)}, {16, Rate::fromPercent(10)}};
    rules.tax.rate = Rate::fromPpm(88'750);
    rules.depositRate = Rate::fromPercent(50);
    rules.depositStep = cents(500);
    book.bench.press.platenWidth = inch64ths(16 * 64);
    book.bench.press.platenHeight = inch64ths(20 * 64);
    book.bench.of(catalogue::Step::Art).perJob = units::Duration::fromMinutes(20);
    book.bench.of(catalogue::Step::Brush).perPiece = units::Duration::fromMinutes(5);
    addMaterial(book, kAquamarine, "Aquamarine SS10", MaterialKind::Stone, 0x4FC3CF, cents(999));
    addMaterial(book, kJet, "Jet SS10", MaterialKind::Stone, 0x23262D, cents(650));
    addMaterial(book, kAmber, "Amber SS10", MaterialKind::Stone, 0xD9A03A, cents(890));
    addMaterial(book, kBacking, "Clear decal backing", MaterialKind::Backing, 0, cents(183));
    addMaterial(book, kHoodie, "Hoodie, navy", MaterialKind::Blank, 0, cents(1'417));
    book.materials.at(kHoodie).material.sizes = {{"M", {}, {}}, {"2XL", cents(120), cents(275)}};
    return book;
}

catalogue::OrderLine lineOf(std::string title, std::int64_t pieces, Money each, const base::Id& baseMaterial) {
    catalogue::OrderLine line;
    line.title = std::move(title);
    line.quantity = Count::of(pieces);
    line.overrideEach = each;
    line.baseMaterial = baseMaterial;
    line.first().width = inch64ths(3 * 64 + 32);
    line.first().height = inch64ths(2 * 64 + 48);
    line.first().stones = {{kAquamarine, Count::of(212)}, {kJet, Count::of(96)}};
    return line;
}

} // namespace

pricing::PricedOrder Sale::priced() const {
    layout::FitMemo fits;
    auto priced = pricing::priceOrder(order, book, fits);
    if (!priced) throw std::runtime_error(describe(priced.error()));
    return std::move(*priced);
}

quoting::SheetContent Sale::sheet(const quoting::SheetWords& words, const std::string& number) const {
    layout::FitMemo fits;
    std::vector<std::vector<pricing::LadderPrice>> ladders;
    if (order.lines.size() <= quoting::kMaxLadders)
        for (std::size_t i = 0; i < order.lines.size(); ++i)
            ladders.push_back(*pricing::ladderFor(order, i, book, false, fits));
    const auto priced = this->priced();
    return quoting::contentOf({number, order, book, priced, ladders, order.quotedOn.plusDays(book.shop.rules.validDays),
                               words, quoting::offersOf(order, book, priced, fits)});
}

Sale studioSale() {
    Sale sale{studioBook(), {}};
    sale.book.customer = catalogue::Customer{
        kStudio,
        "Larkspur Lane Dance Studio",
        "2 Larkspur Lane\nMillbrook",
        {},
        {},
        catalogue::Certificate{"14-2201", "Ohio", *Date::parse("2026-01-03"), *Date::parse("2027-12-31")},
        {}};
    auto& order = sale.order;
    order.customer = kStudio;
    order.asksExemption = true;
    order.quotedOn = *Date::parse("2026-11-25");
    order.wantedBy = *Date::parse("2026-12-11");
    auto lantern = lineOf("Lantern", 24, cents(695), kBacking);
    lantern.first().templatesOnWall = true;
    auto crest = lineOf("Studio crest on hoodie", 6, cents(3'150), kHoodie);
    crest.first().stones = {{kAmber, Count::of(180)}};
    crest.sizes = {{"M", Count::of(4)}, {"2XL", Count::of(2)}};
    auto plate = lineOf("Nameplate “Odette”", 1, cents(900), kBacking);
    plate.first().width = inch64ths(5 * 64);
    plate.first().height = inch64ths(64);
    order.lines = {lantern, crest, plate};
    return sale;
}

Sale shortSale() {
    Sale sale = studioSale();
    sale.book.customer.reset();
    sale.book.shop.isDemo = false;
    sale.order.customer = {};
    sale.order.asksExemption = false;
    sale.order.wantedBy.reset();
    sale.order.lines.resize(1);
    return sale;
}

Sale longSale(int lines) {
    Sale sale = studioSale();
    sale.order.lines.clear();
    for (int i = 0; i < lines; ++i) {
        auto line = lineOf(fmt::format("Team name {}", i + 1), 1 + i % 37, cents(500 + i * 7 % 1'900),
                           i % 5 == 0 ? kHoodie : kBacking);
        if (i % 5 == 0) line.sizes = {{"2XL", Count::of(1)}};
        if (i % 3 == 0) line.first().stones = {{kAmber, Count::of(150)}};
        line.first().templatesOnWall = i % 4 == 0;
        sale.order.lines.push_back(std::move(line));
    }
    return sale;
}

Sale anySale(std::mt19937_64& random) {
    const auto roll = [&](std::int64_t low, std::int64_t high) {
        return std::uniform_int_distribution<std::int64_t>(low, high)(random);
    };
    Sale sale = longSale(static_cast<int>(roll(1, 12)));
    auto& shop = sale.book.shop;
    auto& rules = shop.rules;
    constexpr std::array kCodes{"USD", "JPY", "KWD"};
    shop.currency = *units::Currency::parse(kCodes[static_cast<std::size_t>(roll(0, 2))]);
    rules.tax.rate = Rate::fromPpm(roll(0, 3) == 0 ? 0 : roll(1, 260'000));
    rules.tax.inclusive = roll(0, 2) == 0;
    rules.tax.rounding = roll(0, 1) == 0 ? catalogue::TaxRounding::PerLine : catalogue::TaxRounding::PerInvoice;
    rules.setUp = roll(0, 1) == 0 ? catalogue::SetUpCharge::OwnLine : catalogue::SetUpCharge::Spread;
    rules.minimumOrder = Money::fromMicros(roll(0, 900) * roll(0, 1'000'000));
    rules.depositRate = Rate::fromPercent(roll(0, 100));
    rules.places = {{"Sleeve", Money::fromMicros(roll(0, 5'000'000))}};
    sale.order.asksExemption = roll(0, 2) == 0;
    if (roll(0, 1) == 0) sale.order.wantedBy.reset();
    if (roll(0, 1) == 0) sale.order.discount.share = Rate::fromPpm(roll(0, 400'000));
    for (auto& line : sale.order.lines) {
        line.overrideEach = Money::fromMicros(roll(0, 60'000'000));
        line.taxable = roll(0, 4) != 0;
        if (roll(0, 1) == 0) line.overrideEach.reset();
        if (!line.isCharge() && roll(0, 2) == 0) line.first().place = "Sleeve";
    }
    return sale;
}

} // namespace sp::test

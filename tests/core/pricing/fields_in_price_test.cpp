// SPDX-License-Identifier: MIT
// Every field that a price book is made of is changed alone. Either the table says why it is in no price, and it is in
// none; or some order comes to something else, and the comparison names a cause for it that makes the whole difference.
#include "core/catalogue/fields/tables.h"
#include "core/pricing/compare.h"
#include "core/pricing/messages.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

#include <functional>
#include <map>

namespace sp::pricing {

namespace {

namespace fields = catalogue::fields;
using catalogue::PriceBook;
using fields::Sort;
using units::Count;
using units::Duration;
using units::Rate;

struct Scene {
    PriceBook book;
    catalogue::Order order;
};

/// A shop in which nothing is switched off.
PriceBook fullBook() {
    auto book = sample::priceBook();
    auto& rules = book.shop.rules;
    rules.cardFee = {true, Rate::fromPercent(3), sample::cents(30)};
    rules.tax.others = {{"Reduced", Rate::fromPercent(2)}};
    rules.places = {{"Sleeve", sample::cents(150)}};
    for (auto& standard : book.bench.steps) {
        standard.perJob += Duration::fromSeconds(31);
        standard.perColour += Duration::fromSeconds(17);
        standard.perPiece += Duration::fromSeconds(13);
        standard.per100Stones += Duration::fromSeconds(11);
        standard.learning = Rate::fromPercent(90);
    }
    book.bench.press.secondPressShare = Rate::fromPercent(20);
    book.bench.press.secondDwell = Duration::fromSeconds(4);
    book.bench.press.testPresses = 2;
    auto& sizes = book.materials[sample::idOf("Hoodie")].material.sizes;
    sizes[0] = {"M", sample::cents(50), sample::cents(65)};
    sizes.push_back({"L", sample::cents(50), {}});
    const auto again = [&](const char* of, const char* name) {
        auto other = *book.find(sample::idOf(of));
        other.material.id = sample::idOf(name);
        other.material.name = name;
        other.price->price += sample::cents(77);
        book.materials[other.material.id] = other;
    };
    again("Tape", "Wide tape");
    again("Template", "Wide template");
    again("Bag", "Box");
    for (auto& [id, material] : book.materials) {
        material.material.sheet.margin = units::Length::fromInch64ths(8);
        material.material.sheet.border = units::Length::fromInch64ths(4);
        material.material.sheet.gap = units::Length::fromInch64ths(2);
    }
    for (const auto* name : {"Aqua", "Hoodie"})
        book.materials[sample::idOf(name)].freight = {catalogue::FreightKind::Spread, Rate::fromPercent(3),
                                                      sample::cents(750), sample::cents(6'000)};
    book.materials[sample::idOf("Hoodie")].breaks = {{Count::of(5), sample::cents(1275)}};
    book.materials[sample::idOf("Jet")].freight = {catalogue::FreightKind::Share, Rate::fromPercent(5),
                                                   sample::cents(900), sample::cents(8'000)};
    return book;
}

catalogue::Order fullOrder() {
    auto garment = sample::lantern(17);
    garment.customersGarment = true;
    garment.baseMaterial = {};
    auto blank = sample::square(9);
    blank.baseMaterial = sample::idOf("Hoodie");
    blank.sizes = {{"M", Count::of(4)}, {"2XL", Count::of(3)}, {"L", Count::of(2)}};
    auto order = sample::orderOf({sample::lantern(24), garment, blank, sample::square(5)});
    order.lines[3].taxRate = "Reduced";
    order.lines[3].first().place = "Sleeve";
    order.wantedBy = sample::day("2026-11-29");
    return order;
}

std::vector<Scene> scenes() {
    std::vector<Scene> all(8, {fullBook(), fullOrder()});
    all[1].book.shop.rules.rounding = {catalogue::RoundingKind::Ending, 1, 95};
    all[1].book.shop.rules.tax.inclusive = true;
    all[1].book.shop.rules.setUp = catalogue::SetUpCharge::OwnLine;
    all[1].order.lines[2].sizes = {{"2XL", Count::of(3)}};
    all[2].book.shop.rules.minimumOrder = sample::cents(900'000);
    all[2].order = sample::orderOf({sample::lantern(1)});
    all[3].book.shop.rules.rounding = {catalogue::RoundingKind::Up, 25, 95};
    for (auto& [id, material] : all[3].book.materials) {
        auto& sheet = material.material.sheet;
        sheet.form = catalogue::SheetForm::Roll;
        sheet.height = units::Length::fromInch64ths(300 * 64);
        sheet.basis = catalogue::ShareBasis::ByPosition;
    }
    all[3].order.wantedBy = sample::day("2026-11-26");
    all[4].order = sample::orderOf({sample::lantern(700), sample::square(130)});
    all[5].order = sample::orderOf({sample::lantern(20), sample::lantern(10)});
    for (auto& line : all[5].order.lines) line.first().design = sample::idOf("Lantern");
    all[6].order = all[7].order = all[5].order;
    for (auto* planned : {&all[6], &all[7]})
        for (auto& line : planned->order.lines) line.first().plannedPieces = Count::of(40);
    all[7].book.sets[sample::idOf("Lantern")] = {sample::idOf("Lantern"), Count::of(16),
                                                 catalogue::SetCost{sample::cents(6'000), sample::cents(9'000)}};
    return all;
}

/// Changes one value after the other inside a price book, alone, and puts each back.
class Walk {
  public:
    /// `isPriced`: no field on the way says why it is in no price.
    using Seen = std::function<void(const std::string& id, bool isPriced)>;

    Walk(const PriceBook& book, Seen seen)
        : m_book(book)
        , m_seen(std::move(seen)) {}

    void object(const fields::Object& object, void* owner, bool isPriced = true) {
        for (const auto& field : object.fields)
            value(field, *field.type, field.of(owner), isPriced && field.noPrice.empty());
    }

  private:
    template<class T>
    void with(const fields::Field& field, void* at, std::vector<T> values, bool isPriced) {
        T& place = *static_cast<T*>(at);
        const T was = place;
        for (const auto& other : values) {
            if (other == was) continue;
            place = other;
            m_seen(field.id(), isPriced);
        }
        place = was;
    }

    void whole(const fields::Field& field, const fields::Type& type, void* at, bool isPriced) {
        const auto was = type.whole(at);
        for (const auto other : {was * 2, was / 2, was + 1, was - 1, was + 10, was + 9'000, was + 1'000'000,
                                 was + 60'000'000, was + 300'000'000}) {
            if (other == was || other < type.leastWhole || other > type.mostWhole) continue;
            if (!field.bounds.range.holds(other)) continue;
            type.setWhole(at, other);
            m_seen(field.id(), isPriced);
        }
        type.setWhole(at, was);
    }

    void value(const fields::Field& field, const fields::Type& type, void* at, bool isPriced) {
        switch (type.sort) {
        case Sort::YesNo: return with<bool>(field, at, {false, true}, isPriced);
        case Sort::Whole:
        case Sort::Money:
        case Sort::Rate:
        case Sort::Length:
        case Sort::Duration:
        case Sort::Count: return whole(field, type, at, isPriced);
        case Sort::Word: {
            const auto was = type.whole(at);
            for (std::size_t i = 0; i < type.names.size(); ++i) {
                if (static_cast<std::int64_t>(i) == was) continue;
                type.setWhole(at, static_cast<std::int64_t>(i));
                m_seen(field.id(), isPriced);
            }
            return type.setWhole(at, was);
        }
        case Sort::Text: return with<std::string>(field, at, {"2XL", "SS20", "another"}, isPriced);
        case Sort::Id: {
            std::vector<base::Id> ids{{}};
            for (const auto& [id, material] : m_book.materials) ids.push_back(id);
            return with<base::Id>(field, at, std::move(ids), isPriced);
        }
        case Sort::Date:
            return with<units::Date>(field, at, {sample::day("2026-01-01"), sample::day("2027-01-01")}, isPriced);
        case Sort::Currency:
            return with<units::Currency>(
                field, at, {units::Currency::parse("EUR").value(), units::Currency::parse("JPY").value()}, isPriced);
        case Sort::Temperature:
            return with<units::Temperature>(field, at, {units::Temperature::fromMillicelsius(150'000)}, isPriced);
        case Sort::Maybe: {
            const bool isThere = type.size(at) == 1;
            if (!isThere) type.add(at);
            value(field, *type.inner, type.itemOf(at, 0), isPriced);
            if (!isThere) type.clear(at);
            return;
        }
        case Sort::List:
        case Sort::Steps:
            for (std::size_t i = 0; i < type.size(at); ++i) value(field, *type.inner, type.itemOf(at, i), isPriced);
            return;
        case Sort::Object: return object(type.object(), at, isPriced);
        }
    }

    const PriceBook& m_book;
    Seen m_seen;
};

TEST(FieldsInPrice, everyOneMakesAPriceOrSaysWhyNot) {
    std::map<std::string, bool> hasEffect; // of those that say nothing
    for (const auto& scene : scenes()) {
        layout::FitMemo fits;
        const auto then = scene.book;
        const auto before = priceOrder(scene.order, then, fits);
        ASSERT_TRUE(before) << describe(before.error());
        auto now = then;
        const auto seen = [&](const std::string& id, bool isPriced) {
            if (isPriced) hasEffect.try_emplace(id, false);
            const auto compared = comparePrices(scene.order, then, now, fits);
            if (!compared) return; // what cannot be priced has no price
            units::Money sum;
            for (const auto& cause : compared->causes) {
                sum += cause.effect;
                EXPECT_NE(cause.what.id, idOf(Note::ReckonedOtherwise)) << id;
            }
            EXPECT_EQ(sum, compared->totalNow - compared->totalThen) << id;
            if (compared->totalNow == compared->totalThen) return;
            EXPECT_TRUE(isPriced) << id << " makes a price, and the table says it does not";
            EXPECT_FALSE(compared->causes.empty()) << id;
            hasEffect[id] = true;
        };
        Walk walk(then, seen);
        walk.object(fields::objectOf<catalogue::Shop>(), &now.shop);
        walk.object(fields::objectOf<catalogue::BenchStandards>(), &now.bench);
        for (auto& [id, material] : now.materials)
            walk.object(fields::objectOf<catalogue::PricedMaterial>(), &material);
        for (auto& [id, set] : now.sets) walk.object(fields::objectOf<catalogue::DesignSet>(), &set);
    }
    EXPECT_GT(hasEffect.size(), 50U);
    for (const auto& [id, has] : hasEffect) EXPECT_TRUE(has) << id << " is in no price, and the table does not say why";
}

} // namespace

} // namespace sp::pricing

// SPDX-License-Identifier: MIT
// A quote given is a quote kept: whatever the book's prices do, it reopens to the same cent.
#include "app/demo/demo_book.h"
#include "core/pricing/price_order.h"
#include "tests/support/held_clock.h"
#include "tests/support/quote_result.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

using namespace sp;

namespace {

units::Money twice(units::Money amount) { return amount + amount; }

/// A list out of its Result, by value: a range-for keeps nothing else alive.
template<class T>
T all(base::Result<T> read) {
    EXPECT_TRUE(read.has_value()) << (read ? "" : describe(read.error()));
    return read.value_or(T{});
}

/// The order of the demo's whole catalogue: one line of every design.
catalogue::Order everyDesign(db::Book& book, const base::Id& customer) {
    catalogue::Order order;
    order.customer = customer;
    order.quotedOn = *units::Date::parse("2026-11-25");
    order.wantedBy = *units::Date::parse("2026-12-01");
    order.asksExemption = true;
    for (const auto& design : all(book.designs())) {
        auto line = catalogue::lineOf(design);
        line.quantity = units::Count::of(17);
        order.lines.push_back(line);
    }
    return order;
}

/// Changes every price, rate, standard, design and certificate the book has.
void changeEverything(db::Book& book) {
    for (auto pack : all(book.packs())) {
        for (auto& step : pack.prices) step.each = twice(step.each);
        ASSERT_TRUE(book.save(pack).has_value());
    }
    for (auto material : all(book.materials())) {
        material.stone.loss = units::Rate::fromPercent(40);
        material.sheet.border += units::Length::fromInch64ths(8);
        for (auto& size : material.sizes) size.surcharge = twice(size.surcharge);
        ASSERT_TRUE(book.save(material).has_value()) << material.name;
    }
    for (auto design : all(book.designs())) {
        for (auto& stone : design.stones) stone.count = units::Count::of(stone.count.value() * 3);
        design.name += " changed";
        ASSERT_TRUE(book.save(design).has_value());
    }
    for (auto customer : all(book.customers())) {
        customer.certificate.reset();
        customer.name += " changed";
        ASSERT_TRUE(book.save(customer).has_value());
    }
    auto shop = book.shop().value();
    shop.rates.labourPerHour = twice(shop.rates.labourPerHour);
    shop.rates.overheadPerMonth = twice(shop.rates.overheadPerMonth);
    shop.rates.spoilage = units::Rate::fromPercent(30);
    for (auto& step : shop.rules.ladder) step.markUp += units::Rate::fromPercent(100);
    shop.rules.tax.rate = units::Rate::fromPercent(50);
    shop.rules.rounding = {catalogue::RoundingKind::Ending, 1, 99};
    shop.rules.setUp = catalogue::SetUpCharge::OwnLine;
    shop.rules.minimumOrder = units::Money::fromMicros(9'000'000'000);
    shop.rules.rush.clear();
    ASSERT_TRUE(book.save(shop).has_value());
    auto bench = book.bench().value();
    for (auto& step : bench.steps) step.perPiece += units::Duration::fromMinutes(7);
    bench.press.price = twice(bench.press.price);
    ASSERT_TRUE(book.save(bench).has_value());
}

TEST(FrozenQuote, reopensToTheSameCentAfterEveryPriceChanged) {
    test::HeldClock clock;
    const test::TempFolder folder;
    const auto file = folder / "book.jobbook";
    std::string number;
    units::Money total;
    {
        auto book = demo::createDemoBook(file, clock.environment());
        ASSERT_TRUE(book.has_value()) << describe(book.error());
        base::Id customer;
        for (const auto& known : all((*book)->customers()))
            if (known.certificate) customer = known.id;
        auto quote = (*book)->startQuote().value();
        quote.order = everyDesign(**book, customer);
        const auto inputs = (*book)->priceBook(customer).value();
        layout::FitMemo fits;
        const auto priced = pricing::priceOrder(quote.order, inputs, fits);
        ASSERT_TRUE(priced.has_value()) << describe(priced.error());
        total = priced->total;
        quote.version = (*book)->saveDraft(quote).value();
        const auto issued = (*book)->issue(quote, inputs, test::resultOf(total), quote.order.quotedOn.plusDays(30));
        ASSERT_TRUE(issued.has_value()) << describe(issued.error());
        number = issued->number;
        changeEverything(**book);
    }
    clock.now += std::chrono::years(1);
    auto book = db::Book::open(file, clock.environment());
    ASSERT_TRUE(book.has_value()) << describe(book.error());
    const auto quote = (*book)->quoteNumbered(number);
    ASSERT_TRUE(quote.has_value()) << describe(quote.error());
    ASSERT_TRUE(quote->frozen.has_value());
    layout::FitMemo fits;
    const auto again = pricing::priceOrder(quote->order, *quote->frozen, fits);
    ASSERT_TRUE(again.has_value()) << describe(again.error());
    EXPECT_EQ(again->total, total);
    EXPECT_EQ(quote->sealedTotal, total);
    // The control: at today's prices the same order comes to something else.
    const auto today = pricing::priceOrder(quote->order, (*book)->priceBook(quote->order.customer).value(), fits);
    ASSERT_TRUE(today.has_value()) << describe(today.error());
    EXPECT_NE(today->total, total);
}

} // namespace

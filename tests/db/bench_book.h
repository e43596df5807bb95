// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"
#include "db/messages.h"
#include "tests/support/described.h"
#include "tests/support/held_clock.h"
#include "tests/support/quote_result.h"
#include "tests/support/samples.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <memory>
#include <string>

namespace sp::test {

/// The value itself, to walk over: a reference into a Result that is gone would dangle.
template<class T>
T valueOf(base::Result<T> result) {
    return std::move(result.value());
}

/// What a paper says of a customer whose person was taken out.
inline quoting::SheetCustomer erasedCustomer() {
    quoting::SheetCustomer customer;
    customer.isErased = true;
    return customer;
}

/// A fresh book in a folder of its own, with what a quote needs.
class BookTest : public testing::Test {
  protected:
    void SetUp() override {
        auto made = db::Book::create(file, clock.environment());
        ASSERT_TRUE(made) << describe(made.error());
        book = std::move(*made);
    }
    /// As a new start of the program finds it.
    void reopen() {
        book.reset();
        auto opened = db::Book::open(file, clock.environment());
        ASSERT_TRUE(opened) << describe(opened.error());
        book = std::move(*opened);
    }
    /// One of everything; the keys are noted below.
    void stock() {
        stone = book->save(sampleStone()).value();
        tape = book->save(sampleTape()).value();
        blank = book->save(sampleBlank()).value();
        supplier = book->save(sampleSupplier()).value();
        pack = book->save(samplePack(stone, supplier)).value();
        design = sampleDesign(stone, blank);
        design.id = book->save(design).value();
        customer = book->save(sampleCustomer()).value();
        ASSERT_TRUE(book->save(sampleShop(tape)));
        ASSERT_TRUE(book->save(sampleBench()));
    }
    db::Quote draft() {
        auto quote = book->startQuote().value();
        quote.order = sampleOrder(customer, design);
        quote.version = book->saveDraft(quote).value();
        return quote;
    }
    db::Quote issued() {
        const auto quote = draft();
        return book
            ->issue(quote, book->priceBook(customer).value(), resultOf(units::Money::fromMicros(412'500'000)),
                    quote.order.quotedOn.plusDays(21))
            .value();
    }
    /// Nothing but what is said, by a check that goes through everything.
    void expectSound() {
        const auto report = db::Book::check(file);
        ASSERT_TRUE(report) << describe(report.error());
        EXPECT_EQ(test::described(report->damage), std::vector<std::string>{});
    }

    TempFolder folder;
    std::filesystem::path file = folder / "Stone Bench.jobbook";
    HeldClock clock;
    std::unique_ptr<db::Book> book;
    base::Id stone, tape, blank, supplier, pack, customer;
    catalogue::Design design;
};

} // namespace sp::test

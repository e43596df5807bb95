// SPDX-License-Identifier: MIT
#pragma once

#include "core/costing/part.h"
#include "tests/support/amounts.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <functional>
#include <string_view>

/// One row a part of the cost sheet: what is changed of 24 squares in a book where nothing costs anything, and the
/// figure worked by hand. The suites have their rows in the files of their subject.
namespace sp::costing {

using catalogue::Step;
using sample::cents;
using sample::idOf;
using support::inches;
using units::Count;
using units::Duration;
using units::Length;
using units::Money;
using units::Rate;

using Line = catalogue::OrderLine;
using Book = catalogue::PriceBook;

constexpr auto kWhole = catalogue::ShareBasis::WholeSheets;
constexpr auto kByPosition = catalogue::ShareBasis::ByPosition;

constexpr std::size_t indexOf(Step step) { return static_cast<std::size_t>(step); }

inline Length quarters(std::int64_t n) { return Length::fromInch64ths(n * 16); }

void setPrice(Book& book, std::string_view name, std::int64_t price, std::int64_t per = 1);
catalogue::SheetTraits& sheetOf(Book& book, std::string_view name);
void useTape(Book& book, std::int64_t lifts, std::int64_t price, catalogue::ShareBasis basis);
void useTemplates(Book& book, std::int64_t price);
/// 9 in wide and 120 in long.
void makeRoll(catalogue::SheetTraits& sheet);
/// Fifty for 5.00.
void addCard(Book& book);
void onHoodie(Line& line);
/// 18.00 an hour is 0.30 a minute.
void labourCosts(Book& book);
void pressRunsAt(Book& book, std::int64_t perHour);
/// 540 a month over 120 hours is 4.50 an hour.
void overheadIs(Book& book);

struct PartCase {
    const char* name;
    std::function<void(Line&, Book&)> change; ///< of 24 squares in a book where nothing costs anything
    Part part;
    std::size_t index;
    std::int64_t micros;

    friend void PrintTo(const PartCase& row, std::ostream* out) { *out << row.name; }
};

class PartFigure : public testing::TestWithParam<PartCase> {};

} // namespace sp::costing

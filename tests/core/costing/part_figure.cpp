// SPDX-License-Identifier: MIT
#include "tests/core/costing/part_figure.h"

#include "tests/support/figures_of.h"

namespace sp::costing {

void setPrice(Book& book, std::string_view name, std::int64_t price, std::int64_t per) {
    book.materials[idOf(name)].price = units::UnitPrice{cents(price), Count::of(per)};
}

catalogue::SheetTraits& sheetOf(Book& book, std::string_view name) { return book.materials[idOf(name)].material.sheet; }

void useTape(Book& book, std::int64_t lifts, std::int64_t price, catalogue::ShareBasis basis) {
    book.shop.usualTape = idOf("Tape");
    setPrice(book, "Tape", price);
    sheetOf(book, "Tape").lifts = lifts;
    sheetOf(book, "Tape").basis = basis;
}

void useTemplates(Book& book, std::int64_t price) {
    book.shop.usualTemplate = idOf("Template");
    setPrice(book, "Template", price);
}

void makeRoll(catalogue::SheetTraits& sheet) {
    sheet.form = catalogue::SheetForm::Roll;
    sheet.width = inches(9);
    sheet.height = inches(120);
}

void addCard(Book& book) {
    catalogue::Material card;
    card.id = idOf("Card");
    card.name = "Card";
    card.kind = catalogue::MaterialKind::Packing;
    book.materials[card.id] = {card, units::UnitPrice{cents(500), Count::of(50)}, {}};
}

void pressRunsAt(Book& book, std::int64_t perHour) {
    book.bench.press.runningPerHour = cents(perHour);
    book.bench.press.dwell = Duration::fromSeconds(10);
    book.bench.press.handling = Duration::fromSeconds(20);
}

void onHoodie(Line& line) { line.baseMaterial = idOf("Hoodie"); }

void labourCosts(Book& book) { book.shop.rates.labourPerHour = cents(1800); }

void overheadIs(Book& book) {
    book.shop.rates.overheadPerMonth = cents(54'000);
    book.shop.rates.productivePerMonth = Duration::fromMinutes(120 * 60);
}

TEST_P(PartFigure, isTheOneWorkedByHand) {
    auto line = sample::square(24);
    auto book = sample::freeBook();
    GetParam().change(line, book);
    EXPECT_EQ(sample::amountOf(sample::costed(line, book), GetParam().part, GetParam().index).micros(),
              GetParam().micros);
}

} // namespace sp::costing

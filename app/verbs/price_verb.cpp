// SPDX-License-Identifier: MIT
#include "app/verbs/cost_tree.h"
#include "app/verbs/give_quote.h"
#include "app/verbs/named.h"
#include "app/verbs/order_answer.h"
#include "app/verbs/order_reader.h"
#include "app/verbs/owner_answer.h"
#include "app/verbs/verb_kit.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"
#include "core/costing/per_piece.h"
#include "core/pricing/ladder.h"
#include "core/pricing/left_out.h"
#include "core/quoting/owner_figures.h"
#include "core/quoting/sheet_maker.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::verbs {

namespace {

using base::fail;
using units::Money;

/// The order the command line describes: one line of one design.
base::Result<OrderFor> orderFrom(const Arguments& arguments, db::Book& book, units::Date today) {
    OrderFor of;
    auto& order = of.order;
    order.quotedOn = today;
    const auto designs = book.designs();
    if (!designs) return fail(designs.error());
    const auto design =
        named(*designs, arguments.of("--design"),
              QT_TRANSLATE_NOOP("App", "There is no design named “%1” in this book; check the spelling."));
    if (!design) return fail(design.error());
    const auto quantity = units::parseCount(arguments.of("--quantity"));
    if (!quantity) return fail(quantity.error());
    auto line = catalogue::lineOf(*design);
    if (arguments.has("--wall-templates")) line.first().templatesOnWall = true;
    line.quantity = *quantity;
    if (const auto on = arguments.value("--on")) {
        auto materials = book.materials();
        if (!materials) return fail(materials.error());
        std::erase_if(*materials, [](const catalogue::Material& material) {
            return material.kind != catalogue::MaterialKind::Backing && material.kind != catalogue::MaterialKind::Blank;
        });
        const auto material = named(
            *materials, *on,
            QT_TRANSLATE_NOOP("App", "There is no backing or blank named “%1” in this book; check the spelling."));
        if (!material) return fail(material.error());
        line.baseMaterial = material->id;
    }
    order.lines.push_back(std::move(line));
    if (const auto due = arguments.value("--due")) {
        const auto day = units::Date::parse(*due);
        if (!day) return fail(day.error());
        order.wantedBy = *day;
    }
    if (const auto name = arguments.value("--customer")) {
        const auto customers = book.customers();
        if (!customers) return fail(customers.error());
        if (const auto set = setCustomer(of, *customers, *name); !set) return fail(set.error());
    }
    return of;
}

} // namespace

base::Result<catalogue::PriceBook> inputsFor(const OrderFor& of, db::Book& book) {
    auto inputs = book.priceBook(of.order.customer);
    if (inputs && of.stranger) inputs->customer = of.stranger;
    return inputs;
}

base::Result<OrderFor> orderOf(const Arguments& arguments, db::Book& book, units::Date today) {
    const auto file = arguments.value("--order");
    if (!file) return orderFrom(arguments, book, today);
    const auto text = textOf(*file);
    if (!text) return fail(text.error());
    return readOrder(*text, book, today);
}

namespace {

struct Priced {
    catalogue::Order order;
    catalogue::PriceBook book;
    pricing::PricedOrder priced;
    words::CostTree cost;         ///< of the order's only line
    std::vector<Money> costShown; ///< what is read of each of its nodes, in reading order
    std::vector<pricing::LadderPrice> ladder;
    std::vector<pricing::LeftOut> leftOut;
    std::optional<pricing::MoreForLess> more;
    quoting::SheetContent sheet; ///< what the customer reads
};

/// What the shop can buy today.
struct Offered {
    std::vector<catalogue::Pack> packs;
    std::vector<catalogue::Supplier> suppliers;

    static base::Result<Offered> in(db::Book& book) {
        auto packs = book.packs();
        if (!packs) return fail(packs.error());
        auto suppliers = book.suppliers();
        if (!suppliers) return fail(suppliers.error());
        return Offered{std::move(*packs), std::move(*suppliers)};
    }
    supply::PackOffers offers() const { return {packs, suppliers}; }
};

base::Result<Priced> priceFrom(const Arguments& arguments, db::Book& book, const Helpers& helpers) {
    Priced out;
    auto of = orderFrom(arguments, book, helpers.environment.today());
    if (!of) return fail(of.error());
    out.order = of->order;
    auto inputs = inputsFor(*of, book);
    if (!inputs) return fail(inputs.error());
    out.book = std::move(*inputs);
    layout::FitMemo fits;
    auto priced = pricing::priceOrder(out.order, out.book, fits);
    if (!priced) return fail(priced.error());
    out.priced = std::move(*priced);
    const auto sheet = pricing::costSheetOf(out.order, 0, out.book, fits);
    if (!sheet) return fail(sheet.error());
    const auto offered = Offered::in(book);
    if (!offered) return fail(offered.error());
    const auto offers = offered->offers();
    out.cost = words::explain(out.order.lines.front(), out.book, *sheet, {}, &offers);
    out.costShown = costing::shownForOneOf(*sheet, units::Count::of(1), out.book.shop.currency);
    const bool exempt = out.priced.taxStanding == pricing::TaxStanding::Exempt;
    auto ladder = pricing::ladderFor(out.order, 0, out.book, exempt, fits);
    if (!ladder) return fail(ladder.error());
    out.ladder = std::move(*ladder);
    out.leftOut = pricing::leftOutOf(out.order, out.book, out.priced);
    out.more = pricing::moreForLess(out.order, out.priced, 0, out.book, fits);
    out.sheet = quoting::contentOf({{}, out.order, out.book, out.priced, {}, {}, words::SheetWords()});
    return out;
}

struct Row {
    std::string label;
    Money amount;
};

/// What makes up the subtotal, in the order it is charged.
std::vector<Row> rowsOf(const Priced& priced) {
    const auto& line = priced.sheet.lines.front();
    std::vector<Row> rows{{fmt::format("{} × {}", line.pieces, line.title), line.amount.value}};
    for (const auto& extra : line.extras) rows.push_back({extra.label, extra.amount.value});
    for (const auto& row : priced.sheet.adjustments) rows.push_back({row.label, row.amount.value});
    return rows;
}

Json priceJson(const Priced& priced) {
    const auto& currency = priced.book.shop.currency;
    const auto money = [&](Money amount) { return units::formatExact(amount, currency); };
    const auto& line = priced.priced.lines.front();
    const auto& ordered = priced.order.lines.front();
    const auto& earned = priced.priced.earnings;
    Json ladder = Json::array();
    for (const auto& step : priced.ladder)
        ladder.push_back(
            {{"pieces", step.quantity.value()}, {"price_each", money(step.each)}, {"total", money(step.total)}});
    Json rows = Json::array();
    for (const auto& row : rowsOf(priced)) rows.push_back({{"label", row.label}, {"amount", money(row.amount)}});
    return {{"currency", currency.code()},
            {"design", ordered.title},
            {"pieces", ordered.quantity.value()},
            {"cost", costJson(priced.cost, currency)},
            {"cost_each", money(quoting::ownerFigures(line, ordered.quantity).costEach)},
            {"price_each", money(line.each)},
            {"net", money(earned.net)},
            {"paid_out", money(earned.paidOut)},
            {"card_fee", money(earned.cardFee)},
            {"floor", money(earned.floor)},
            {"profit", money(earned.profit)},
            {"markup", orNull(earned.markUp)},
            {"margin", orNull(earned.margin)},
            {"earned_per_bench_hour", earned.perBenchHour ? Json(money(*earned.perBenchHour)) : Json(nullptr)},
            {"coverage", codeOf(earned.coverage)},
            {"not_in_the_price", leftOutJson(priced.leftOut)},
            {"ladder", std::move(ladder)},
            {"more_for_less", moreJson(priced.more, currency)},
            {"lines", std::move(rows)},
            {"subtotal", money(priced.priced.subtotal)},
            {"tax", money(priced.priced.tax)},
            {"total", money(priced.priced.total)},
            {"deposit", money(priced.priced.deposit)},
            {"balance", money(priced.priced.balance)}};
}

std::string priceText(const Priced& priced) {
    const auto& currency = priced.book.shop.currency;
    const auto& ordered = priced.priced.lines.front();
    std::string text = line(QT_TRANSLATE_NOOP("App", "What it costs the shop"));
    text += costText(priced.cost, priced.costShown, currency);
    text += "\n" + line(QT_TRANSLATE_NOOP("App", "What the customer pays, %1"), currency.code());
    const auto& sheet = priced.sheet;
    const auto& labels = sheet.labels;
    std::vector<Row> rows{{labels.each, ordered.each}};
    for (const auto& charge : rowsOf(priced)) rows.push_back(charge);
    rows.push_back({labels.together, priced.priced.subtotal});
    if (sheet.tax) rows.push_back({quoting::taxLabel(sheet, sheet), sheet.tax->amount.value});
    rows.push_back({labels.toPay, priced.priced.total});
    rows.push_back({labels.deposit, priced.priced.deposit});
    rows.push_back({labels.balance, priced.priced.balance});
    std::size_t widest = 28;
    for (const auto& row : rows) widest = std::max(widest, row.label.size());
    for (const auto& row : rows)
        text += fmt::format("  {:<{}}{:>12}\n", row.label, widest, units::formatMoney(row.amount, currency));
    if (!sheet.taxIncluded.empty()) text += "  " + sheet.taxIncluded + "\n";
    text += "\n" + earnedText(priced.priced.earnings, currency);
    text += leftOutText(priced.leftOut);
    text += "\n" + line(QT_TRANSLATE_NOOP("App", "More pieces, each"));
    for (const auto& step : priced.ladder)
        text +=
            fmt::format("  {:>8}{:>12}\n", units::formatCount(step.quantity), units::formatMoney(step.each, currency));
    text += moreText(priced.more, priced.order.lines.front().quantity, currency);
    return text;
}

Outcome priceWholeOrder(const Arguments& arguments, db::Book& book, units::Date today) {
    const auto of = orderOf(arguments, book, today);
    if (!of) return refused(of.error());
    const auto inputs = inputsFor(*of, book);
    if (!inputs) return refused(inputs.error());
    const auto offered = Offered::in(book);
    if (!offered) return refused(offered.error());
    const auto answered = answerFor(of->order, *inputs, offered->offers());
    if (!answered) return refused(answered.error());
    return answer(arguments, answered->json, answered->text);
}

} // namespace

Outcome priceVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    if (arguments.has("--order")) return priceWholeOrder(arguments, **book, helpers.environment.today());
    const auto priced = priceFrom(arguments, **book, helpers);
    if (!priced) return refused(priced.error());
    return answer(arguments, priceJson(*priced), priceText(*priced));
}

Outcome quoteVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto of = orderOf(arguments, **book, helpers.environment.today());
    if (!of) return refused(of.error());
    const auto issued = give(**book, *of);
    if (!issued) return refused(issued.error());
    return answer(arguments, givenJson(*issued), givenText(*issued));
}

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
#include "core/quoting/sheet_maker.h"

#include "core/base/ensure.h"
#include "core/pricing/tax.h"
#include "core/quoting/differences.h"
#include "core/quoting/line_words.h"
#include "core/quoting/printed.h"

#include <algorithm>
#include <string_view>

namespace sp::quoting {

namespace {

using units::Money;

using units::Count;

/// In the place of an amount that is not known.
constexpr std::string_view kNoAmount = "\u2014";

bool isCharged(const SheetTax& tax) { return !tax.amount.value.isZero(); }

bool chargesTax(const SheetChoice& choice) {
    return (choice.tax && isCharged(*choice.tax)) || std::ranges::any_of(choice.moreTaxes, isCharged) ||
           !choice.taxIncluded.empty();
}

class Writer {
  public:
    explicit Writer(const SheetInput& input)
        : m_input(input)
        , m_words(input.words)
        , m_numbers(input.words.numbers())
        , m_shop(input.book.shop)
        , m_lineWords(input.book, input.words) {}

    SheetContent write();
    /// The choice that is looked at, without a name.
    void writeChoice(SheetChoice& sheet);

  private:
    std::string money(Money amount) const;
    SheetAmount amount(Money value) const { return {value, money(value)}; }
    std::string percent(units::Rate rate) const { return units::formatRate(rate, m_numbers) + " %"; }
    std::string count(units::Count n) const { return units::formatCount(n, m_numbers); }

    /// Adds a row to the column of amounts.
    SheetRow row(std::string label, Money value);

    void writeHead(SheetContent& sheet) const;
    SheetLine line(std::size_t number);
    std::string noteOf(const catalogue::OrderLine& line, const pricing::PricedLine& priced,
                       const std::optional<pricing::MoreForLess>& offer) const;
    void writeAdjustments(SheetChoice& sheet);
    void writeTotals(SheetChoice& sheet) const;
    void writeExemption(SheetCustomer& customer) const;
    void writeTax(SheetChoice& sheet) const;
    void writeLadders(SheetChoice& sheet) const;
    void writeOthers(SheetContent& sheet) const;

    const SheetInput& m_input;
    const SheetWords& m_words;
    units::NumberStyle m_numbers;
    const catalogue::Shop& m_shop;
    LineWords m_lineWords;
    Money m_running;
};

std::string Writer::money(Money amount) const { return printedMoney(amount, m_shop.currency, m_numbers); }

SheetRow Writer::row(std::string label, Money value) {
    m_running += value;
    return {std::move(label), amount(value), amount(m_running)};
}

void Writer::writeHead(SheetContent& sheet) const {
    sheet.language = m_words.language();
    sheet.labels = m_words.labels();
    sheet.shopName = m_shop.letterhead.name;
    sheet.shopLines = printedLines(m_shop.letterhead.lines);
    sheet.title = m_input.number.empty() ? m_words.draft() : m_words.quote(m_input.number);
    if (m_shop.isDemo) sheet.demo = m_words.demo();
    sheet.facts.push_back({m_words.quotedOn(), m_words.date(m_input.order.quotedOn)});
    if (m_input.validUntil) sheet.facts.push_back({m_words.validUntil(), m_words.date(*m_input.validUntil)});
    if (m_input.order.wantedBy)
        sheet.facts.push_back({m_words.wantedBy(), m_words.weekdayDate(*m_input.order.wantedBy)});
    if (const auto& customer = m_input.book.customer) {
        sheet.customer.name = customer->name;
        sheet.customer.lines = printedLines(customer->contact);
    }
    if (m_input.priced.taxStanding == pricing::TaxStanding::Exempt) writeExemption(sheet.customer);
    sheet.currency = m_shop.currency.code();
    sheet.terms = printedLines(m_shop.letterhead.terms);
    sheet.care = printedLines(m_shop.letterhead.care);
}

std::string Writer::noteOf(const catalogue::OrderLine& line, const pricing::PricedLine& priced,
                           const std::optional<pricing::MoreForLess>& offer) const {
    std::string note;
    const auto add = [&note](const std::string& what) { note += (note.empty() ? "" : " · ") + what; };
    const auto isOnWall = [](const catalogue::Placement& place) { return place.templatesOnWall; };
    if (!line.isCharge() && std::ranges::all_of(line.places, isOnWall) && priced.cost.paidOff.isZero())
        add(m_words.templatesOnWall());
    if (catalogue::isGivenAway(m_input.order, line)) {
        add(m_words.atNoCharge());
        return note;
    }
    const auto& tax = m_shop.rules.tax;
    const bool isTaxed = m_input.priced.taxStanding != pricing::TaxStanding::Exempt;
    if (isTaxed && !tax.rate.isZero() && !line.taxable) add(m_words.untaxed(tax.name));
    if (const auto number = pricing::findRate(tax, line.taxRate); isTaxed && line.taxable && number && *number > 0)
        add(m_words.tax(pricing::nameAt(tax, *number), percent(pricing::rateAt(tax, *number))));
    if (offer) add(m_words.moreForLess(count(offer->quantity), money(offer->charged), money(offer->ordered)));
    return note;
}

SheetLine Writer::line(std::size_t number) {
    const auto& ordered = m_input.order.lines[number];
    const auto& priced = m_input.priced.lines[number];
    SheetLine line;
    line.pieces = count(ordered.quantity);
    line.title = ordered.title;
    line.detail = m_lineWords.detailOf(ordered);
    line.stones = m_lineWords.coloursOf(ordered);
    line.each = money(priced.each);
    m_running += priced.goods;
    line.amount = amount(priced.goods);
    line.running = amount(m_running);
    for (const auto* charges : {&priced.sizes, &priced.places})
        for (const auto& charge : *charges)
            line.extras.push_back(
                row(m_words.surcharge(count(charge.count), charge.name, money(charge.each)), charge.amount));
    if (!priced.setUp.isZero()) line.extras.push_back(row(m_words.setUp(), priced.setUp));
    line.note = noteOf(ordered, priced, m_input.offers.empty() ? std::nullopt : m_input.offers[number]);
    return line;
}

void Writer::writeAdjustments(SheetChoice& sheet) {
    const auto& priced = m_input.priced;
    const auto& order = m_input.order;
    auto& rows = sheet.adjustments;
    if (!priced.rush.isZero() && order.wantedBy)
        rows.push_back(row(m_words.rush(*order.wantedBy, percent(priced.rushRate)), priced.rush));
    if (!priced.discount.isZero())
        rows.push_back(row(m_words.discount(order.discount.share ? percent(*order.discount.share) : std::string()),
                           -priced.discount));
    if (!priced.minimumOrderCharge.isZero())
        rows.push_back(row(m_words.topUp(money(priced.subtotal)), priced.minimumOrderCharge));
}

void Writer::writeExemption(SheetCustomer& customer) const {
    const auto add = [](std::string& to, const std::string& more) { to += (to.empty() ? "" : "; ") + more; };
    for (const auto& one : catalogue::certificatesOn(*m_input.book.customer, m_input.order.quotedOn)) {
        add(customer.exemption, m_words.certificate(one.number, one.place));
        add(customer.exemptionDates,
            m_words.certificateDates(m_words.date(one.issuedOn), one.expiresOn ? m_words.date(*one.expiresOn) : ""));
    }
}

void Writer::writeTax(SheetChoice& sheet) const {
    const auto& priced = m_input.priced;
    const auto& rule = m_shop.rules.tax;
    if (priced.taxStanding == pricing::TaxStanding::Exempt) {
        sheet.tax = SheetTax{m_words.taxExempt(rule.name), {}, amount(priced.tax)};
        return;
    }
    auto taxes = priced.taxes;
    if (taxes.empty()) taxes.push_back({rule.name, rule.rate, {}, {}}); // no line is taxed
    std::erase_if(taxes, [](const pricing::TaxAmount& tax) { return tax.rate.isZero(); });
    if (taxes.empty()) return;
    std::string note;
    const auto add = [](std::string& to, const std::string& more) { to += (to.empty() ? "" : ". ") + more; };
    if (priced.taxStanding == pricing::TaxStanding::ExemptionMissing) note = m_words.certificateMissing();
    if (priced.taxIncluded) {
        for (const auto& tax : taxes)
            add(sheet.taxIncluded, m_words.taxIncluded(tax.name, percent(tax.rate), money(tax.tax)));
        if (!note.empty()) add(sheet.taxIncluded, note);
        return;
    }
    if (rule.rounding == catalogue::TaxRounding::PerLine) add(note, m_words.roundedByLine());
    const auto label = [&](const pricing::TaxAmount& tax) {
        return taxes.size() == 1 ? m_words.tax(tax.name, percent(tax.rate))
                                 : m_words.taxOn(tax.name, percent(tax.rate), money(tax.on));
    };
    for (const auto& tax : taxes) {
        if (!sheet.tax)
            sheet.tax = SheetTax{label(tax), note, amount(tax.tax)};
        else
            sheet.moreTaxes.push_back({label(tax), {}, amount(tax.tax)});
    }
}

void Writer::writeTotals(SheetChoice& sheet) const {
    const auto& priced = m_input.priced;
    base::ensure(m_running == priced.subtotal, "the sheet's rows add up to the order's subtotal");
    sheet.together = amount(priced.subtotal);
    writeTax(sheet);
    sheet.showsTogether = sheet.tax.has_value();
    sheet.toPay = amount(priced.total);
    if (!priced.deposit.isZero()) sheet.deposit = amount(priced.deposit);
    sheet.balance = amount(priced.balance);
}

void Writer::writeLadders(SheetChoice& sheet) const {
    const auto& lines = m_input.order.lines;
    if (!m_shop.ladderOnSheet || m_input.ladders.empty() || lines.size() > kMaxLadders) return;
    base::ensure(m_input.ladders.size() == lines.size(), "every line has its ladder");
    auto surcharges = Surcharges::None;
    bool hasSetUp = false;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (m_input.ladders[i].size() < 2 || catalogue::isGivenAway(m_input.order, lines[i])) continue;
        SheetLadder ladder{lines[i].title, {}};
        for (const auto& price : m_input.ladders[i]) {
            ladder.steps.push_back({price.quantity, count(price.quantity), money(price.each), price.isOrdered});
            hasSetUp = hasSetUp || !price.setUp.isZero();
        }
        sheet.ladders.push_back(std::move(ladder));
        const auto& priced = m_input.priced.lines[i];
        if (!priced.places.empty())
            surcharges = Surcharges::OfPlacesToo;
        else if (!priced.sizes.empty())
            surcharges = std::max(surcharges, Surcharges::OfSizes);
    }
    if (sheet.ladders.empty()) return;
    sheet.ladderNote = m_words.ladderNote(surcharges, hasSetUp, sheet.tax && isCharged(*sheet.tax));
}

void Writer::writeChoice(SheetChoice& sheet) {
    const auto lines = m_input.order.lines.size();
    base::ensure(lines == m_input.priced.lines.size(), "every line of the order is priced");
    base::ensure(m_input.offers.empty() || lines == m_input.offers.size(), "every line has its offer or none");
    sheet.lines.reserve(lines);
    for (std::size_t i = 0; i < lines; ++i) sheet.lines.push_back(line(i));
    writeAdjustments(sheet);
    writeTotals(sheet);
    writeLadders(sheet);
}

void Writer::writeOthers(SheetContent& sheet) const {
    const auto& order = m_input.order;
    base::ensure(order.others.size() == m_input.others.size(), "every choice of the order is on its sheet");
    sheet.choice = order.choice;
    for (const auto& other : m_input.others) {
        auto& choice = sheet.others.emplace_back();
        choice.toPay.text = kNoAmount;
        if (!other.priced) continue;
        Writer({m_input.number, other.order, m_input.book, *other.priced, other.ladders, m_input.validUntil, m_words,
                other.offers})
            .writeChoice(choice);
    }
    if (sheet.others.empty()) return;
    const auto differences = differencesOf(order, m_input.book, m_words);
    sheet.choicesNote = m_words.choicesNote(count(Count::of(static_cast<std::int64_t>(differences.size()))));
    for (std::size_t i = 0; i < differences.size(); ++i) {
        const auto number = static_cast<std::int64_t>(i);
        auto& choice =
            number == sheet.choice ? static_cast<SheetChoice&>(sheet) : sheet.others[number < sheet.choice ? i : i - 1];
        choice.name = m_words.choice(count(Count::of(number + 1)));
        choice.difference = differences[i];
    }
}

SheetContent Writer::write() {
    SheetContent sheet;
    writeHead(sheet);
    writeChoice(sheet);
    writeOthers(sheet);
    if (!std::ranges::any_of(choicesOf(sheet), [](const SheetChoice* choice) { return chargesTax(*choice); }))
        std::erase_if(sheet.care, [this](const std::string& line) { return m_words.isTaxCaution(line); });
    return sheet;
}

} // namespace

SheetContent contentOf(const SheetInput& input) { return Writer(input).write(); }

base::Result<std::vector<std::vector<pricing::LadderPrice>>> laddersOf(const catalogue::Order& order,
                                                                       const catalogue::PriceBook& book,
                                                                       const pricing::PricedOrder& priced,
                                                                       layout::FitMemo& fits) {
    std::vector<std::vector<pricing::LadderPrice>> ladders;
    if (order.lines.size() > kMaxLadders) return ladders;
    const bool exempt = priced.taxStanding == pricing::TaxStanding::Exempt;
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        auto ladder = pricing::ladderFor(order, i, book, exempt, fits, priced.rules);
        if (!ladder) return base::fail(ladder.error());
        ladders.push_back(std::move(*ladder));
    }
    return ladders;
}

std::vector<PricedChoice> priceOthers(const catalogue::Order& order, const catalogue::PriceBook& book,
                                      layout::FitMemo& fits, std::optional<std::pair<std::int64_t, base::Error>>& why,
                                      std::int64_t rules) {
    std::vector<PricedChoice> others;
    for (std::int64_t number = 0; number < static_cast<std::int64_t>(choiceCount(order)); ++number) {
        if (number == order.choice) continue;
        auto& other = others.emplace_back();
        other.order = catalogue::withChoice(order, number);
        auto priced = pricing::priceOrder(other.order, book, fits, rules);
        if (priced)
            other.priced = std::move(*priced);
        else if (!why)
            why.emplace(number, priced.error());
    }
    return others;
}

std::vector<std::optional<pricing::MoreForLess>> offersOf(const catalogue::Order& order,
                                                          const catalogue::PriceBook& book,
                                                          const pricing::PricedOrder& priced, layout::FitMemo& fits) {
    std::vector<std::optional<pricing::MoreForLess>> offers;
    if (!book.shop.offersMoreOnSheet) return offers;
    for (std::size_t i = 0; i < order.lines.size(); ++i)
        offers.push_back(pricing::moreForLess(order, priced, i, book, fits));
    return offers;
}

SheetContent contentOfTotal(const std::string& number, const catalogue::Order& order, const catalogue::PriceBook& book,
                            units::Money total, std::optional<units::Date> validUntil, const SheetWords& words) {
    catalogue::Order known = order;
    known.discount = {};
    catalogue::OrderLine line;
    line.title = words.linesLost();
    known.lines = {line};
    catalogue::PriceBook untaxed = book;
    untaxed.shop.rules.tax.rate = {};
    untaxed.shop.rules.tax.others.clear();
    pricing::PricedOrder priced;
    pricing::PricedLine pricedLine;
    pricedLine.goods = total;
    priced.lines = {pricedLine};
    priced.goods = priced.subtotal = priced.total = priced.balance = total;
    auto sheet = contentOf({number, known, untaxed, priced, {}, validUntil, words});
    sheet.lines[0].pieces.clear();
    sheet.lines[0].each.clear();
    return sheet;
}

} // namespace sp::quoting

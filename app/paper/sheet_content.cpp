// SPDX-License-Identifier: MIT
#include "app/paper/sheet_content.h"

#include "core/base/ensure.h"
#include "core/pricing/rounding.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <string_view>

namespace sp::paper {

namespace {

using units::Money;

/// A typographic minus: a hyphen is too short beside figures.
constexpr std::string_view kMinus = "\u2212";

std::vector<std::string> linesOf(std::string_view text) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const auto end = text.find('\n');
        auto line = text.substr(0, end);
        while (!line.empty() && (line.back() == '\r' || line.back() == ' ')) line.remove_suffix(1);
        if (!line.empty()) lines.emplace_back(line);
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return lines;
}

class Writer {
  public:
    explicit Writer(const SheetInput& input)
        : m_input(input)
        , m_shop(input.book.shop) {}

    SheetContent write();

  private:
    std::string money(Money amount) const;
    SheetAmount amount(Money value) const { return {value, money(value)}; }
    std::string percent(units::Rate rate) const { return units::formatRate(rate, m_input.words.numbers) + " %"; }
    std::string count(units::Count n) const { return units::formatCount(n, m_input.words.numbers); }

    /// Adds a row to the column of amounts.
    SheetRow row(std::string label, Money value);

    void writeHead(SheetContent& sheet) const;
    SheetLine line(const catalogue::OrderLine& ordered, const pricing::PricedLine& priced);
    std::string detailOf(const catalogue::OrderLine& line) const;
    std::vector<StoneColour> coloursOf(const catalogue::OrderLine& line) const;
    std::string noteOf(const catalogue::OrderLine& line) const;
    void writeAdjustments(SheetContent& sheet);
    void writeTotals(SheetContent& sheet) const;
    void writeTax(SheetContent& sheet) const;
    std::string certificateWords() const;
    void writeLadders(SheetContent& sheet) const;

    const SheetInput& m_input;
    const catalogue::Shop& m_shop;
    Money m_running;
};

std::string Writer::money(Money amount) const {
    if (amount.isNegative()) return fmt::format("{}{}", kMinus, money(-amount));
    return units::formatMoney(amount, m_shop.currency, m_input.words.numbers);
}

SheetRow Writer::row(std::string label, Money value) {
    m_running += value;
    return {std::move(label), amount(value), amount(m_running)};
}

void Writer::writeHead(SheetContent& sheet) const {
    const auto& words = m_input.words;
    sheet.shopName = m_shop.letterhead.name;
    sheet.shopLines = linesOf(m_shop.letterhead.lines);
    sheet.title = m_input.number.empty() ? "Draft" : "Quote " + m_input.number;
    if (m_input.version > 1) sheet.version = fmt::format("Version {}", m_input.version);
    if (m_shop.isDemo) sheet.demo = "Demo: invented names and prices";
    sheet.facts.push_back({"Quoted", words.date(m_input.order.quotedOn)});
    if (m_input.validUntil) sheet.facts.push_back({"Valid until", words.date(*m_input.validUntil)});
    if (m_input.order.wantedBy) sheet.facts.push_back({"Wanted by", words.weekday(*m_input.order.wantedBy)});
    if (const auto& customer = m_input.book.customer) {
        sheet.customerName = customer->name;
        sheet.customerLines = linesOf(customer->contact);
    }
    sheet.currency = m_shop.currency.code();
    sheet.terms = linesOf(m_shop.letterhead.terms);
    sheet.care = linesOf(m_shop.letterhead.care);
    sheet.code = m_input.code;
}

std::vector<StoneColour> Writer::coloursOf(const catalogue::OrderLine& line) const {
    std::vector<StoneColour> colours;
    for (const auto& stone : line.stones)
        if (const auto* found = m_input.book.find(stone.material))
            colours.push_back({found->material.name, found->material.stone.rgb});
    return colours;
}

std::string Writer::detailOf(const catalogue::OrderLine& line) const {
    std::string what;
    if (line.customersGarment)
        what = "On your own garment";
    else if (const auto* onto = m_input.book.find(line.onto))
        what = onto->material.name;
    if (!line.width.isZero() && !line.height.isZero()) {
        const auto side = [&](units::Length length) {
            return units::formatLength(length, m_shop.lengthUnit, m_input.words.numbers);
        };
        what += fmt::format("{}{} × {} {}", what.empty() ? "" : ", ", side(line.width), side(line.height),
                            units::nameOf(m_shop.lengthUnit));
    }
    std::string stones;
    for (const auto& colour : coloursOf(line)) stones += (stones.empty() ? "" : ", ") + colour.name;
    if (what.empty() || stones.empty()) return what + stones;
    return fmt::format("{} · {}", what, stones);
}

std::string Writer::noteOf(const catalogue::OrderLine& line) const {
    std::string note;
    if (line.templatesOnWall) note = "Templates on the wall: no set-up charged";
    const bool isTaxed = !m_shop.rules.tax.rate.isZero() && m_input.priced.taxStanding != pricing::TaxStanding::Exempt;
    if (isTaxed && !line.taxable) note += fmt::format("{}No {}", note.empty() ? "" : " · ", m_shop.rules.tax.name);
    return note;
}

SheetLine Writer::line(const catalogue::OrderLine& ordered, const pricing::PricedLine& priced) {
    SheetLine line;
    line.pieces = count(ordered.quantity);
    line.title = ordered.title;
    line.detail = detailOf(ordered);
    line.stones = coloursOf(ordered);
    line.each = money(priced.each);
    m_running += priced.goods;
    line.amount = amount(priced.goods);
    line.running = amount(m_running);
    for (const auto& size : priced.sizes)
        line.extras.push_back(
            row(fmt::format("{} at {}, + {}", count(size.count), size.size, money(size.each)), size.amount));
    if (!priced.setUp.isZero()) line.extras.push_back(row("Art and set-up", priced.setUp));
    line.note = noteOf(ordered);
    return line;
}

void Writer::writeAdjustments(SheetContent& sheet) {
    const auto& priced = m_input.priced;
    const auto& order = m_input.order;
    auto& rows = sheet.adjustments;
    if (!priced.rush.isZero() && order.wantedBy)
        rows.push_back(row(
            fmt::format("Rush, wanted by {} ({})", m_input.words.weekday(*order.wantedBy), percent(priced.rushRate)),
            priced.rush));
    if (!priced.discount.isZero())
        rows.push_back(row(order.discount.share ? fmt::format("Discount ({})", percent(*order.discount.share))
                                                : std::string("Discount"),
                           -priced.discount));
    if (!priced.topUp.isZero())
        rows.push_back(row(fmt::format("Up to our smallest order, {}", money(priced.subtotal)), priced.topUp));
}

std::string Writer::certificateWords() const {
    const auto& certificate = *m_input.book.customer->certificate;
    std::string words = "certificate " + certificate.number;
    if (!certificate.place.empty()) words += ", " + certificate.place;
    return words;
}

void Writer::writeTax(SheetContent& sheet) const {
    const auto& priced = m_input.priced;
    const auto& rule = m_shop.rules.tax;
    if (priced.taxStanding == pricing::TaxStanding::Exempt) {
        const auto& certificate = *m_input.book.customer->certificate;
        auto dates = "Issued " + m_input.words.date(certificate.issuedOn);
        if (certificate.expiresOn) dates += ", good until " + m_input.words.date(*certificate.expiresOn);
        sheet.tax = SheetTax{fmt::format("{}, exempt ({})", rule.name, certificateWords()), dates, amount(priced.tax)};
        return;
    }
    if (rule.rate.isZero()) return;
    std::string note;
    if (priced.taxStanding == pricing::TaxStanding::ExemptionMissing)
        note = "Charged: no exemption certificate in force is on file";
    if (priced.taxIncluded) {
        sheet.taxIncluded = fmt::format("{} {} is in the price: {}", rule.name, percent(rule.rate), money(priced.tax));
        if (!note.empty()) sheet.taxIncluded += fmt::format(". {}", note);
        return;
    }
    if (rule.rounding == catalogue::TaxRounding::PerLine)
        note += fmt::format("{}Rounded line by line", note.empty() ? "" : ". ");
    sheet.tax = SheetTax{fmt::format("{} {}", rule.name, percent(rule.rate)), note, amount(priced.tax)};
}

void Writer::writeTotals(SheetContent& sheet) const {
    const auto& priced = m_input.priced;
    base::ensure(m_running == priced.subtotal, "the sheet's rows add up to the order's subtotal");
    sheet.together = amount(priced.subtotal);
    writeTax(sheet);
    sheet.showsTogether = sheet.tax.has_value();
    sheet.toPay = amount(priced.total);
    if (!priced.deposit.isZero()) sheet.deposit = amount(priced.deposit);
    sheet.balance = amount(priced.balance);
}

void Writer::writeLadders(SheetContent& sheet) const {
    const auto& lines = m_input.order.lines;
    if (!m_shop.ladderOnSheet || m_input.ladders.empty() || lines.size() > kMostLadders) return;
    base::ensure(m_input.ladders.size() == lines.size(), "every line has its ladder");
    bool hasSizes = false;
    bool hasSetUp = false;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (m_input.ladders[i].size() < 2) continue;
        SheetLadder ladder{lines[i].title, {}};
        for (const auto& price : m_input.ladders[i]) {
            ladder.steps.push_back({price.quantity, count(price.quantity), money(price.each), price.isOrdered});
            hasSetUp = hasSetUp || !price.setUp.isZero();
        }
        sheet.ladders.push_back(std::move(ladder));
        hasSizes = hasSizes || !m_input.priced.lines[i].sizes.empty();
    }
    if (sheet.ladders.empty()) return;
    sheet.ladderNote = fmt::format("Each, before {}{}rush, discount{}", hasSizes ? "size surcharges, " : "",
                                   hasSetUp ? "set-up, " : "", sheet.tax ? " and tax" : "");
}

SheetContent Writer::write() {
    const auto& ordered = m_input.order.lines;
    const auto& priced = m_input.priced.lines;
    base::ensure(ordered.size() == priced.size(), "every line of the order is priced");
    SheetContent sheet;
    writeHead(sheet);
    sheet.lines.reserve(ordered.size());
    for (std::size_t i = 0; i < ordered.size(); ++i) sheet.lines.push_back(line(ordered[i], priced[i]));
    writeAdjustments(sheet);
    writeTotals(sheet);
    writeLadders(sheet);
    return sheet;
}

std::chrono::year_month_day civil(units::Date day) { return std::chrono::year_month_day{day.days()}; }

} // namespace

std::string plainDate(units::Date day) {
    static constexpr std::array<std::string_view, 12> kMonths{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                              "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    const auto date = civil(day);
    return fmt::format("{} {} {}", unsigned{date.day()}, kMonths[unsigned{date.month()} - 1], int{date.year()});
}

std::string weekdayDate(units::Date day) {
    static constexpr std::array<std::string_view, 7> kDays{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
    return fmt::format("{} {}", kDays[std::chrono::weekday{day.days()}.c_encoding()], plainDate(day));
}

SheetContent contentOf(const SheetInput& input) { return Writer(input).write(); }

} // namespace sp::paper

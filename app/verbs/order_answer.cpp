// SPDX-License-Identifier: MIT
#include "app/verbs/order_answer.h"

#include "app/verbs/cost_tree.h"
#include "app/verbs/owner_answer.h"
#include "app/verbs/verb_kit.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"
#include "core/catalogue/fields/names.h"
#include "core/costing/per_piece.h"
#include "core/needs/spares.h"
#include "core/pricing/ladder.h"
#include "core/quoting/differences.h"
#include "core/quoting/owner_figures.h"
#include "core/quoting/sheet_maker.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::verbs {

namespace {

using pricing::TaxStanding;
using units::Money;

std::string_view standingCode(TaxStanding standing) {
    switch (standing) {
    case TaxStanding::Charged: return "charged";
    case TaxStanding::Exempt: return "exempt";
    case TaxStanding::ExemptionMissing: return "exemption_missing";
    }
    return {};
}

class Answering {
  public:
    Answering(const catalogue::Order& order, const catalogue::PriceBook& book, const supply::PackOffers& offers,
              const pricing::PricedOrder& priced)
        : m_order(order)
        , m_book(book)
        , m_offers(offers)
        , m_priced(priced)
        , m_spares(needs::sparesOf(order.lines, needs::spareRuleOf(book.shop)))
        , m_sheet(quoting::contentOf({{}, order, book, priced, {}, {}, words::SheetWords()})) {}

    base::Result<OrderAnswer> make(layout::FitMemo& fits) {
        for (std::size_t i = 0; i < m_order.lines.size(); ++i)
            if (auto done = addLine(i, fits); !done) return base::fail(done.error());
        return OrderAnswer{whole(), m_text + customersText() + ownersText()};
    }

  private:
    const units::Currency& currency() const { return m_book.shop.currency; }
    std::string exact(Money amount) const { return units::formatExact(amount, currency()); }
    std::string shown(Money amount) const { return units::formatMoney(amount, currency()); }

    Json sparesJson(const needs::LineSpares& spares) const {
        const auto rule = needs::spareRuleOf(m_book.shop);
        const auto note = needs::spareNote(spares, rule);
        if (!note) return nullptr;
        return {{"pieces", spares.pieces},
                {"of_pieces", spares.of},
                {"expected", needs::expectedSpoiled(spares.of, rule.spoilage).approximate()},
                {"says", words::text(*note)}};
    }

    std::string sparesText(const needs::LineSpares& spares) const {
        const auto note = needs::spareNote(spares, needs::spareRuleOf(m_book.shop));
        return note ? words::text(*note) + "\n" : std::string();
    }

    base::Done addLine(std::size_t i, layout::FitMemo& fits) {
        const auto& ordered = m_order.lines[i];
        const auto& line = m_priced.lines[i];
        const auto sheet = pricing::costSheetOf(m_order, i, m_book, fits);
        if (!sheet) return base::fail(sheet.error());
        const auto tree = words::explain(ordered, m_book, *sheet, {}, &m_offers);
        const auto ladder = pricing::ladderFor(m_order, i, m_book, m_priced.taxStanding == TaxStanding::Exempt, fits);
        if (!ladder) return base::fail(ladder.error());
        const auto more = pricing::moreForLess(m_order, m_priced, i, m_book, fits);
        const auto figures = quoting::ownerFigures(line, ordered.quantity);
        Json sizes = Json::array();
        for (const auto& size : line.sizes)
            sizes.push_back({{"size", size.name},
                             {"pieces", size.count.value()},
                             {"each", exact(size.each)},
                             {"amount", exact(size.amount)}});
        Json places = Json::array();
        for (const auto& place : line.places)
            places.push_back({{"place", place.name},
                              {"pieces", place.count.value()},
                              {"each", exact(place.each)},
                              {"amount", exact(place.amount)}});
        Json packing = Json::array();
        for (const auto& use : catalogue::packingOf(ordered, m_book.shop.packing))
            packing.push_back({{"packing", m_book.find(use.material)->material.name},
                               {"amount", use.amount.value()},
                               {"per", catalogue::fields::wordOf(use.per)}});
        Json steps = Json::array();
        for (const auto& step : *ladder)
            steps.push_back(
                {{"pieces", step.quantity.value()}, {"price_each", exact(step.each)}, {"total", exact(step.total)}});
        m_lines.push_back({{"title", ordered.title},
                           {"pieces", ordered.quantity.value()},
                           {"price_each", exact(line.each)},
                           {"calculated_each", exact(line.calculatedEach)},
                           {"price_is_typed", ordered.overrideEach.has_value()},
                           {"goods", exact(line.goods)},
                           {"sizes", std::move(sizes)},
                           {"places", std::move(places)},
                           {"set_up", exact(line.setUp)},
                           {"charged", exact(line.charged)},
                           {"at_no_charge", catalogue::isGivenAway(m_order, ordered)},
                           {"packing", std::move(packing)},
                           {"cost", costJson(tree, currency())},
                           {"cost_each", exact(figures.costEach)},
                           {"paid_out_each", exact(figures.paidOutEach)},
                           {"card_fee_each", exact(figures.cardFeeEach)},
                           {"floor_each", exact(figures.floorEach)},
                           {"profit_each", exact(figures.profitEach)},
                           {"spares", sparesJson(m_spares[i])},
                           {"earnings", earningsJson(line.earnings, currency())},
                           {"ladder", std::move(steps)},
                           {"more_for_less", moreJson(more, currency())}});
        m_text += verbs::line(QT_TRANSLATE_NOOP("App", "What %1 × %2 costs the shop"),
                              units::formatCount(ordered.quantity), ordered.title) +
                  costText(tree, costing::shownForOneOf(*sheet, units::Count::of(1), currency()), currency()) +
                  moreText(more, ordered.quantity, currency()) + sparesText(m_spares[i]) + "\n";
        return {};
    }

    Json taxesJson() const {
        Json taxes = Json::array();
        for (const auto& tax : m_priced.taxes)
            taxes.push_back(
                {{"name", tax.name}, {"rate", decimal(tax.rate)}, {"on", exact(tax.on)}, {"tax", exact(tax.tax)}});
        return taxes;
    }

    Json whole() {
        return {{"currency", currency().code()},
                {"day", m_order.quotedOn.iso()},
                {"customer", m_book.customer ? Json(m_book.customer->name) : Json(nullptr)},
                {"lines", std::move(m_lines)},
                {"goods", exact(m_priced.goods)},
                {"rush", exact(m_priced.rush)},
                {"rush_share", decimal(m_priced.rushRate)},
                {"discount", exact(m_priced.discount)},
                {"minimum_order_charge", exact(m_priced.minimumOrderCharge)},
                {"subtotal", exact(m_priced.subtotal)},
                {"tax", exact(m_priced.tax)},
                {"taxes", taxesJson()},
                {"tax_included", m_priced.taxIncluded},
                {"tax_standing", standingCode(m_priced.taxStanding)},
                {"total", exact(m_priced.total)},
                {"deposit", exact(m_priced.deposit)},
                {"balance", exact(m_priced.balance)},
                {"earnings", earningsJson(m_priced.earnings, currency())},
                {"not_in_the_price", leftOutJson(pricing::leftOutOf(m_order, m_book, m_priced))}};
    }

    std::string customersText() const {
        struct Row {
            std::string label;
            Money amount;
        };
        std::vector<Row> rows;
        for (const auto& line : m_sheet.lines) {
            rows.push_back({fmt::format("{} × {}, {}", line.pieces, line.title, line.each), line.amount.value});
            for (const auto& extra : line.extras) rows.push_back({extra.label, extra.amount.value});
        }
        for (const auto& row : m_sheet.adjustments) rows.push_back({row.label, row.amount.value});
        const auto& labels = m_sheet.labels;
        rows.push_back({labels.together, m_priced.subtotal});
        if (m_sheet.tax) rows.push_back({quoting::taxLabel(m_sheet, m_sheet), m_sheet.tax->amount.value});
        for (const auto& tax : m_sheet.moreTaxes) rows.push_back({tax.label, tax.amount.value});
        rows.push_back({labels.toPay, m_priced.total});
        rows.push_back({labels.deposit, m_priced.deposit});
        rows.push_back({labels.balance, m_priced.balance});
        std::size_t widest = 28;
        for (const auto& row : rows) widest = std::max(widest, row.label.size());
        auto text = line(QT_TRANSLATE_NOOP("App", "What the customer pays, %1"), currency().code());
        for (const auto& row : rows) text += fmt::format("  {:<{}}{:>12}\n", row.label, widest, shown(row.amount));
        if (!m_sheet.taxIncluded.empty()) text += "  " + m_sheet.taxIncluded + "\n";
        return text;
    }

    std::string ownersText() const {
        return "\n" + earnedText(m_priced.earnings, currency()) +
               leftOutText(pricing::leftOutOf(m_order, m_book, m_priced));
    }

    const catalogue::Order& m_order;
    const catalogue::PriceBook& m_book;
    const supply::PackOffers& m_offers;
    const pricing::PricedOrder& m_priced;
    std::vector<needs::LineSpares> m_spares;
    quoting::SheetContent m_sheet;
    Json m_lines = Json::array();
    std::string m_text;
};

} // namespace

namespace {

base::Result<OrderAnswer> answerForChoice(const catalogue::Order& order, const catalogue::PriceBook& book,
                                          const supply::PackOffers& offers, layout::FitMemo& fits) {
    const auto priced = pricing::priceOrder(order, book, fits);
    if (!priced) return base::fail(priced.error());
    return Answering(order, book, offers, *priced).make(fits);
}

} // namespace

base::Result<OrderAnswer> answerFor(const catalogue::Order& order, const catalogue::PriceBook& book,
                                    const supply::PackOffers& offers) {
    layout::FitMemo fits;
    const auto choices = catalogue::choiceCount(order);
    if (choices == 1) return answerForChoice(order, book, offers, fits);
    const words::SheetWords words;
    const auto differences = quoting::differencesOf(order, book, words);
    OrderAnswer whole{{{"currency", book.shop.currency.code()}, {"choices", Json::array()}}, {}};
    for (std::size_t i = 0; i < choices; ++i) {
        const auto name = words.choice(std::to_string(i + 1));
        auto answer = answerForChoice(catalogue::withChoice(order, static_cast<std::int64_t>(i)), book, offers, fits);
        if (!answer) return base::fail(answer.error());
        Json choice{{"name", name}, {"difference", differences[i]}};
        choice.update(answer->json);
        whole.json["choices"].push_back(std::move(choice));
        whole.text += fmt::format("{}{}: {}\n\n{}", i == 0 ? "" : "\n", name, differences[i], answer->text);
    }
    return whole;
}

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "core/units/text.h"

#include <fmt/format.h>

namespace sp::verbs {

namespace {

using units::Money;

std::string taxText(const pricing::TaxReport& report, const units::Currency& currency) {
    const auto row = [&](const std::string& label, Money net, const std::string& tax) {
        return fmt::format("{:<28} {:>14} {:>12}\n", label, units::formatExact(net, currency), tax);
    };
    const auto exact = [&](Money amount) { return units::formatExact(amount, currency); };
    auto text = fmt::format("{:<28} {:>14} {:>12}\n", told(QT_TRANSLATE_NOOP("App", "in %1"), currency.code()),
                            told(QT_TRANSLATE_NOOP("App", "without tax")), told(QT_TRANSLATE_NOOP("App", "tax")));
    for (const auto& part : report.rates)
        text += row(fmt::format("{} {} %", part.name, units::formatRate(part.rate)), part.net, exact(part.tax));
    if (!report.exempt.isZero()) text += row(told(QT_TRANSLATE_NOOP("App", "customers exempt")), report.exempt, "");
    if (!report.untaxed.isZero()) text += row(told(QT_TRANSLATE_NOOP("App", "not taxed")), report.untaxed, "");
    text += row(told(QT_TRANSLATE_NOOP("App", "together")), report.total() - report.tax(), exact(report.tax()));
    text += line(QT_TRANSLATE_NOOP("App", "Invoices: %1, credit notes: %2; with the tax they come to %3."),
                 report.invoices, report.creditNotes, exact(report.total()));
    return text;
}

Json taxJson(const pricing::TaxReport& report, const units::Currency& currency) {
    const auto exact = [&](Money amount) { return units::formatExact(amount, currency); };
    Json rates = Json::array();
    for (const auto& part : report.rates)
        rates.push_back({{"name", part.name},
                         {"rate_percent", units::formatRate(part.rate)},
                         {"net", exact(part.net)},
                         {"tax", exact(part.tax)}});
    return {{"currency", currency.code()},        {"invoices", report.invoices},
            {"credit_notes", report.creditNotes}, {"by_rate", std::move(rates)},
            {"taxable", exact(report.taxable())}, {"exempt", exact(report.exempt)},
            {"not_taxed", exact(report.untaxed)}, {"tax", exact(report.tax())},
            {"total", exact(report.total())}};
}

} // namespace

Outcome taxVerb(const Arguments& arguments, const Helpers& helpers) {
    const auto days = daysOf(arguments);
    if (!days) return refused(days.error());
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto shop = (*book)->shop();
    if (!shop) return refused(shop.error());
    const auto report = (*book)->taxReport(days->from, days->to);
    if (!report) return refused(report.error());
    const auto caution =
        told(QT_TRANSLATE_NOOP("App", "What is owed of it, to whom and when, your tax authority or an "
                                      "accountant says; invoices that were not made here are not in it."));
    Json json{{"from", days->from.iso()}, {"to", days->to.iso()}};
    json.update(taxJson(*report, shop->currency));
    json["caution"] = caution;
    return answer(arguments, json, taxText(*report, shop->currency) + caution + "\n");
}

} // namespace sp::verbs

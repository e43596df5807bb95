// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "app/words/names.h"
#include "app/words/sources.h"
#include "core/units/text.h"

#include <fmt/format.h>

namespace sp::verbs {

namespace {

using db::Stage;

/// The stage that a word means, as the answers for programs name it, letter case ignored.
std::optional<Stage> stageNamed(const std::string& word) {
    const auto asked = QString::fromStdString(word);
    for (const auto stage : {Stage::Enquiry, Stage::Quoted, Stage::Agreed, Stage::InProduction, Stage::Ready,
                             Stage::Collected, Stage::Declined})
        if (asked.compare(QString::fromUtf8(words::sourceOf(stage).text), Qt::CaseInsensitive) == 0) return stage;
    return std::nullopt;
}

base::Result<std::optional<units::Date>> dayOf(const Arguments& arguments, std::string_view option) {
    const auto text = arguments.value(option);
    if (!text) return std::optional<units::Date>();
    const auto day = units::Date::parse(*text);
    if (!day) return base::fail(day.error());
    return std::optional(*day);
}

base::Result<db::Wanted> wantedOf(const Arguments& arguments) {
    db::Wanted wanted;
    wanted.text = arguments.words().front();
    wanted.isUnpaid = arguments.has("--unpaid");
    wanted.isLapsed = arguments.has("--lapsed");
    if (const auto word = arguments.value("--stage")) {
        wanted.stage = stageNamed(*word);
        if (!wanted.stage)
            return base::fail(words::makeError(
                base::Code::Invalid, "stage",
                QT_TRANSLATE_NOOP("App", "There is no stage “%1”; take one that the verb quotes lists."), *word));
    }
    const auto from = dayOf(arguments, "--from");
    if (!from) return base::fail(from.error());
    const auto to = dayOf(arguments, "--to");
    if (!to) return base::fail(to.error());
    wanted.from = *from;
    wanted.to = *to;
    if (const auto limit = arguments.value("--limit")) {
        const auto count = units::parseCount(*limit);
        if (!count) return base::fail(count.error());
        wanted.limit = count->value();
    }
    return wanted;
}

} // namespace

Outcome answerQuotes(const Arguments& arguments, const std::vector<db::QuoteSummary>& quotes,
                     const catalogue::Shop& shop, const char* none, const std::optional<bool>& hasMore) {
    Json list = Json::array();
    std::string text;
    for (const auto& quote : quotes) {
        const auto total = quote.total ? units::formatExact(*quote.total, shop.currency) : std::string();
        const auto highest =
            quote.highestTotal ? units::formatExact(*quote.highestTotal, shop.currency) : std::string();
        list.push_back({{"number", quote.number.empty() ? Json(nullptr) : Json(quote.number)},
                        {"stage", words::sourceOf(quote.stage).text}, // as programs read it
                        {"customer", quote.customer},
                        {"title", words::titleOf(quote).toStdString()},
                        {"quoted_on", quote.quotedOn.iso()},
                        {"valid_until", quote.lastDay ? Json(quote.lastDay->iso()) : Json(nullptr)},
                        {"lapsed", quote.isLapsed},
                        {"choices", quote.choices},
                        {"choice_taken", quote.choiceTaken ? Json(*quote.choiceTaken + 1) : Json(nullptr)},
                        {"total", quote.total ? Json(total) : Json(nullptr)},
                        {"highest_total", highest.empty() ? Json(nullptr) : Json(highest)}});
        text += fmt::format(
            "{:<11} {} {:<8} {} {} {}\n", quote.number.empty() ? told(QT_TRANSLATE_NOOP("App", "draft")) : quote.number,
            quote.quotedOn.iso(), words::nameOf(quote.stage).toStdString(), words::titleOf(quote).toStdString(),
            quote.customer.empty() ? std::string() : told(QT_TRANSLATE_NOOP("App", "for %1"), quote.customer),
            highest.empty() ? total : told(QT_TRANSLATE_NOOP("App", "%1 to %2"), total, highest));
    }
    if (quotes.empty()) text = line(none);
    Json all{{"quotes", std::move(list)}};
    if (hasMore) all["more"] = *hasMore;
    if (hasMore.value_or(false)) text += line(QT_TRANSLATE_NOOP("App", "There are more; take a higher limit."));
    return answer(arguments, std::move(all), text);
}

Outcome findVerb(const Arguments& arguments, const Helpers& helpers) {
    const auto wanted = wantedOf(arguments);
    if (!wanted) return refused(wanted.error());
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto shop = (*book)->shop();
    if (!shop) return refused(shop.error());
    const auto found = (*book)->find(*wanted);
    if (!found) return refused(found.error());
    return answerQuotes(arguments, found->jobs, *shop, QT_TRANSLATE_NOOP("App", "No quote is what you asked for."),
                        found->hasMore);
}

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "app/words/names.h"
#include "app/words/payment_words.h"
#include "app/words/shelf_words.h"
#include "app/words/sources.h"
#include "core/units/text.h"
#include "db/messages.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::verbs {

namespace {

using db::Stage;
using units::Money;

base::Result<db::Quote> quoteOf(const Arguments& arguments, db::Book& book) {
    return book.quoteNumbered(arguments.of("--quote"));
}

Json accountJson(const db::Quote& quote, const pricing::Account& account) {
    const auto& currency = quote.frozen->shop.currency;
    const auto exact = [&](Money amount) { return units::formatExact(amount, currency); };
    return {{"number", quote.number},           {"currency", currency.code()},
            {"total", exact(account.total)},    {"deposit", exact(account.deposit)},
            {"paid", exact(account.paid)},      {"left", exact(account.left)},
            {"credit", exact(account.credit)},  {"deposit_left", exact(account.depositLeft())},
            {"rounded", exact(account.rounded)}};
}

/// What was handed over, what of it was given back at once, and what it was rounded by.
struct Handed {
    Money taken;
    Money change;
    Money rounded;
};

Handed handedBy(const base::Id& payment, const std::vector<catalogue::Payment>& rows) {
    Handed handed;
    for (const auto& row : rows) {
        if (row.reverses || (row.id != payment && row.partOf != payment)) continue;
        switch (row.role) {
        case catalogue::PaymentRole::Money: handed.taken = row.amount; break;
        case catalogue::PaymentRole::Change: handed.change = -row.amount; break;
        case catalogue::PaymentRole::Rounding: handed.rounded = row.amount; break;
        }
    }
    return handed;
}

Money absolute(Money amount) { return amount.isNegative() ? -amount : amount; }

/// `sign` is −1 where money was given back.
Outcome answerAccount(const Arguments& arguments, db::Book& book, const db::Quote& quote, const base::Id& payment,
                      int sign) {
    const auto account = book.account(quote.id);
    if (!account) return refused(account.error());
    const auto rows = book.payments(quote.id);
    if (!rows) return refused(rows.error());
    const auto handed = handedBy(payment, *rows);
    const auto& currency = quote.frozen->shop.currency;
    const auto exact = [&](Money amount) { return units::formatExact(amount, currency); };
    std::string text;
    if (!handed.change.isZero())
        text += line(QT_TRANSLATE_NOOP("App", "%1 taken, %2 change."), exact(handed.taken), exact(handed.change));
    if (!handed.rounded.isZero())
        text += line(QT_TRANSLATE_NOOP("App", "Rounded to the coin: %1 in cash for %2."),
                     exact(absolute(handed.taken - handed.change)),
                     exact(absolute(handed.taken - handed.change + handed.rounded)));
    text += quote.stage == Stage::Declined && account->total == quote.sealedTotal
                ? line(QT_TRANSLATE_NOOP("App", "%1 was let go; %2 of what was paid stay."), quote.number,
                       exact(account->paid))
                : line(QT_TRANSLATE_NOOP("App", "%1: %2 paid of %3, %4 left."), quote.number, exact(account->paid),
                       exact(account->total), exact(account->left));
    if (!account->credit.isZero())
        text += line(QT_TRANSLATE_NOOP("App", "%1 are the customer’s credit."), exact(account->credit));
    auto json = accountJson(quote, *account);
    if (sign < 0) {
        json["given_back"] = exact(-handed.taken);
    } else {
        json["taken"] = exact(handed.taken);
        json["change"] = exact(handed.change);
    }
    return answer(arguments, std::move(json), text);
}

/// Pays, or with `sign` −1 gives back, --amount.
Outcome payment(const Arguments& arguments, const Helpers& helpers, int sign) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto quote = quoteOf(arguments, **book);
    if (!quote) return refused(quote.error());
    const auto amount =
        units::parseMoney(arguments.of("--amount"), quote->frozen.value_or(catalogue::PriceBook{}).shop.currency);
    if (!amount) return refused(amount.error());
    if (amount->isNegative())
        return refused(
            words::makeError(base::Code::Invalid, "amount",
                             QT_TRANSLATE_NOOP("App", "--amount is without a minus; use refund to give back.")));
    catalogue::Payment made;
    made.job = quote->id;
    made.amount = sign < 0 ? -*amount : *amount;
    const auto shop = (*book)->shop();
    if (!shop) return refused(shop.error());
    const auto ways = words::waysToPay(shop->waysToPay);
    const auto cash = std::ranges::find_if(ways, &catalogue::WayToPay::isCash);
    made.kind = arguments.value("--kind").value_or(cash == ways.end() ? ways.front().name : cash->name);
    made.note = arguments.value("--note").value_or(std::string());
    made.paidOn = helpers.environment.today();
    if (const auto day = arguments.value("--day")) {
        const auto parsed = units::Date::parse(*day);
        if (!parsed) return refused(parsed.error());
        made.paidOn = *parsed;
    }
    const bool keeps = arguments.has("--credit");
    const bool givesChange = arguments.has("--change");
    if (keeps && givesChange)
        return refused(words::makeError(
            base::Code::Invalid, "--change",
            QT_TRANSLATE_NOOP("App", "--change and --credit are two things to do with what is too much; say one.")));
    const auto beyond = keeps         ? pricing::Beyond::Kept
                        : givesChange ? pricing::Beyond::Change
                                      : pricing::Beyond::Refused;
    const auto paid = (*book)->pay(made, beyond, words::tenderOf(QString::fromStdString(made.kind), shop->waysToPay));
    if (!paid) return refused(paid.error());
    return answerAccount(arguments, **book, *quote, *paid, sign);
}

/// What was taken off the shelf.
struct SaidOfShelf {
    Json json;
    std::string text; ///< what it lacks, and what is booked beyond
};

base::Result<SaidOfShelf> saidOf(db::Book& book, const db::ShelfUse& use) {
    const auto materials = book.materials();
    if (!materials) return base::fail(materials.error());
    const auto nameOf = [&](const base::Id& id) {
        const auto found = std::ranges::find(*materials, id, &catalogue::Material::id);
        return found == materials->end() ? id.text() : found->name;
    };
    const auto listed = [&](const std::vector<needs::MaterialTake>& takes) {
        Json rows = Json::array();
        for (const auto& take : takes) rows.push_back({{"name", nameOf(take.material)}, {"count", take.count}});
        return rows;
    };
    SaidOfShelf said;
    said.json = {{"used", listed(use.used)},
                 {"lacks", listed(use.lacks)},
                 {"lacks_later", use.lacksLater},
                 {"beyond", listed(use.beyond)},
                 {"stays_booked", listed(use.stays)},
                 {"why_none", use.whyNone ? Json(words::text(*use.whyNone)) : Json(nullptr)}};
    const auto sentences = words::lackSentences(
        use, [&](const base::Id& id) { return QString::fromStdString(nameOf(id)); },
        [](std::int64_t count) { return QString::number(count); });
    for (const auto& sentence : sentences) said.text += sentence.toStdString() + "\n";
    return said;
}

Outcome moveTo(const Arguments& arguments, const Helpers& helpers, Stage stage) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto quote = quoteOf(arguments, **book);
    if (!quote) return refused(quote.error());
    base::Result<db::ShelfUse> use;
    const auto move = [&]() -> base::Done {
        if (const auto choice = arguments.value("--choice")) {
            const auto number = units::parseCount(*choice);
            if (!number) return base::fail(number.error());
            if (auto taken = (*book)->takeChoice(quote->id, number->value() - 1); !taken) return taken;
        }
        use = (*book)->useAt(quote->id, stage);
        if (!use) return base::fail(use.error());
        return (*book)->setStage(quote->id, stage);
    };
    const auto done = (*book)->batch(base::say(db::Note::StageOf, quote->number), move);
    if (!done) return refused(done.error());
    const auto word = words::nameOf(stage).toStdString();
    const auto shelf = saidOf(**book, *use);
    if (!shelf) return refused(shelf.error());
    Json json{{"number", quote->number}, {"stage", words::sourceOf(stage).text}};
    json.update(shelf->json);
    return answer(arguments, json, line(QT_TRANSLATE_NOOP("App", "%1: %2."), quote->number, word) + shelf->text);
}

} // namespace

Outcome payVerb(const Arguments& arguments, const Helpers& helpers) { return payment(arguments, helpers, 1); }
Outcome refundVerb(const Arguments& arguments, const Helpers& helpers) { return payment(arguments, helpers, -1); }

Outcome agreeVerb(const Arguments& arguments, const Helpers& helpers) {
    return moveTo(arguments, helpers, Stage::Agreed);
}
Outcome startVerb(const Arguments& arguments, const Helpers& helpers) {
    return moveTo(arguments, helpers, Stage::InProduction);
}
Outcome readyVerb(const Arguments& arguments, const Helpers& helpers) {
    return moveTo(arguments, helpers, Stage::Ready);
}
Outcome collectVerb(const Arguments& arguments, const Helpers& helpers) {
    return moveTo(arguments, helpers, Stage::Collected);
}
Outcome letGoVerb(const Arguments& arguments, const Helpers& helpers) {
    return moveTo(arguments, helpers, Stage::Declined);
}

Outcome owedVerb(const Arguments& arguments, const Helpers& helpers) {
    const auto of = openQuotes(arguments, helpers);
    if (!of) return refused(of.error());
    const auto& shop = of->shop;
    const auto exact = [&](Money amount) { return units::formatExact(amount, shop.currency); };
    Json list = Json::array();
    std::string text;
    Money sum;
    for (const auto& quote : of->quotes) {
        if (!quote.isOwed() || !quote.total || *quote.total <= quote.paid) continue;
        const auto left = *quote.total - quote.paid;
        sum += left;
        list.push_back({{"number", quote.number},
                        {"customer", quote.customer},
                        {"stage", words::sourceOf(quote.stage).text},
                        {"total", exact(*quote.total)},
                        {"paid", exact(quote.paid)},
                        {"left", exact(left)}});
        text += fmt::format("{:<11} {:>12}  {}\n", quote.number, exact(left), quote.customer);
    }
    if (list.empty()) text = line(QT_TRANSLATE_NOOP("App", "Nothing is owed."));
    return answer(arguments, {{"owed", std::move(list)}, {"sum", exact(sum)}, {"currency", shop.currency.code()}},
                  text);
}

} // namespace sp::verbs

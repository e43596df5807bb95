// SPDX-License-Identifier: MIT
#include "app/customers/all_of_customer.h"
#include "app/verbs/named.h"
#include "app/verbs/verb_kit.h"
#include "app/words/contact_words.h"
#include "app/words/names.h"
#include "app/words/sources.h"
#include "core/units/text.h"
#include "db/book/written_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace sp::verbs {

namespace {

using catalogue::ContactFit;
using catalogue::Customer;
using customers::contactJson;

std::string oneLine(const Customer& customer) {
    std::string text = customer.name;
    for (const auto& part : {customer.telephone, customer.mail})
        if (!part.empty()) text += "  " + part;
    return text + "\n";
}

base::Result<Customer> customerNamed(db::Book& book, const std::string& name) {
    const auto all = book.customers();
    if (!all) return base::fail(all.error());
    return named(*all, name, QT_TRANSLATE_NOOP("App", "There is no customer “%1” in the book."));
}

// ---------------------------------------------------------------------------------------------------------- one of
// them

Outcome showOne(const Arguments& arguments, db::Book& book) {
    const auto found = customerNamed(book, arguments.of("--customer"));
    if (!found) return refused(found.error());
    const auto file = book.customerFile(found->id);
    const auto shop = book.shop();
    if (!file) return refused(file.error());
    if (!shop) return refused(shop.error());
    const auto exact = [&](units::Money amount) { return units::formatExact(amount, shop->currency); };
    auto json = contactJson(file->customer);
    auto text = oneLine(file->customer);
    Json jobs = Json::array();
    for (const auto& job : file->jobs) {
        jobs.push_back({{"number", job.number.empty() ? Json(nullptr) : Json(job.number)},
                        {"stage", words::sourceOf(job.stage).text},
                        {"day", job.quotedOn.iso()},
                        {"title", job.firstTitle},
                        {"total", job.total ? Json(exact(*job.total)) : Json(nullptr)},
                        {"paid", exact(job.paid)}});
        text += fmt::format("{:<10} {} {:>12}  {}  {}\n", job.number, job.quotedOn.iso(),
                            job.total ? exact(*job.total) : std::string(), words::nameOf(job.stage).toStdString(),
                            job.firstTitle);
    }
    json["jobs"] = std::move(jobs);
    json["owed"] = exact(file->owed);
    json["credit"] = exact(file->credit);
    json["currency"] = shop->currency.code();
    text += line(QT_TRANSLATE_NOOP("App", "Owed: %1 %2. Credit: %3 %2."), exact(file->owed), shop->currency.code(),
                 exact(file->credit));
    return answer(arguments, json, text);
}

// ------------------------------------------------------------------------------------------------- all of one of them

Outcome writeOne(const Arguments& arguments, db::Book& book, const Helpers& helpers) {
    const auto found = customerNamed(book, arguments.of("--customer"));
    if (!found) return refused(found.error());
    const std::filesystem::path folder = arguments.of("--dir");
    const auto papers = customers::writeAllOf(book, found->id, folder, {helpers.writeSheet, helpers.writeBill});
    if (!papers) return refused(papers.error());
    return answer(
        arguments, {{"folder", folder.string()}, {"papers", *papers}},
        line(QT_TRANSLATE_NOOP("App", "All that the book has of the customer is in “%1”: customer.json, and each "
                                      "paper as it was sealed."),
             folder.string()));
}

// ------------------------------------------------------------------------------------------------------------- erasing

/// Copies of the book that hold the person still, and when they go.
struct CopiesLeft {
    Json json = Json::array();
    std::string text;
    bool isSecondAway = false; ///< what is in the second place is not among them

    CopiesLeft(db::Book& book, const Helpers& helpers) {
        const auto mark = book.mark();
        if (!mark) return;
        for (const auto& copy : db::copiesOf(book.file(), helpers.backups, *mark,
                                             std::chrono::floor<std::chrono::seconds>(helpers.environment.now()))) {
            const auto file = copy.backup.file.string();
            const auto day = copy.day ? units::Date::fromDays(*copy.day).iso() : std::string();
            json.push_back({{"file", file}, {"goes_on", day.empty() ? Json(nullptr) : Json(day)}});
            text +=
                day.empty()
                    ? line(QT_TRANSLATE_NOOP("App", "“%1” holds the person until you delete it."), file)
                    : line(QT_TRANSLATE_NOOP("App", "“%1” holds the person until %2, if the book is used every day."),
                           file, day);
        }
        if (!helpers.backups.isSecondAway()) return;
        isSecondAway = true;
        text += words::secondPlaceIsAway(QString::fromStdString(helpers.backups.second.string())).toStdString() + "\n";
    }
};

/// The entries of that whole name, letter case ignored: nobody is erased for a slip of the pen. First the one of the
/// list, then those that were removed from it. Errors: NotFound; Ambiguous where the list has several.
base::Result<std::vector<Customer>> calledWhole(db::Book& book, const std::string& name) {
    const auto isCalled = [&](const Customer& one) { return lowered(one.name) == lowered(name); };
    const auto all = book.customers();
    if (!all) return base::fail(all.error());
    const auto removed = book.removedCustomers();
    if (!removed) return base::fail(removed.error());
    std::vector<Customer> called;
    std::ranges::copy_if(*all, std::back_inserter(called), isCalled);
    if (called.size() > 1)
        return words::fail(base::Code::Ambiguous, name,
                           QT_TRANSLATE_NOOP("App", "There are %2 customers “%1” in the book, and nobody was erased; "
                                                    "make them one or call one otherwise, then erase."),
                           name, static_cast<std::int64_t>(called.size()));
    std::ranges::copy_if(*removed, std::back_inserter(called), isCalled);
    if (!called.empty()) return called;
    return words::fail(base::Code::NotFound, name,
                       QT_TRANSLATE_NOOP("App", "There is no customer “%1” in the book; give the whole name."), name);
}

Outcome erase(const Arguments& arguments, db::Book& book, const Helpers& helpers) {
    const auto name = arguments.of("--erase");
    const auto called = calledWhole(book, name);
    if (!called) return refused(called.error());
    const CopiesLeft copies(book, helpers);
    const auto stays = words::whatErasingLeaves().toStdString();
    Json json = {{"customer", name}, {"entries", called->size()}, {"erased", arguments.has("--yes")},
                 {"stays", stays},   {"copies", copies.json},     {"second_place_away", copies.isSecondAway}};
    const auto several =
        called->size() > 1
            ? line(QT_TRANSLATE_NOOP("App", "Entries of this name, with those removed from the list: %1; "
                                            "all of them go."),
                   static_cast<std::int64_t>(called->size()))
            : std::string();
    if (!arguments.has("--yes"))
        return answer(arguments, json,
                      stays + "\n" + several + copies.text +
                          line(QT_TRANSLATE_NOOP("App", "Nothing was changed; add --yes to erase “%1”."), name));
    for (const auto& one : *called)
        if (const auto done = book.eraseCustomer(one.id); !done) return refused(done.error());
    return answer(arguments, json, line(QT_TRANSLATE_NOOP("App", "The customer is erased.")) + copies.text);
}

// ----------------------------------------------------------------------------------------------------------- in and
// out

Outcome writeAll(const Arguments& arguments, db::Book& book) {
    const auto path = arguments.of("--export");
    const auto all = book.customers();
    if (!all) return refused(all.error());
    const auto ending = lowered(std::filesystem::path(path).extension().string());
    if (ending != ".csv" && ending != ".vcf")
        return refused(words::makeError(
            base::Code::Invalid, path,
            QT_TRANSLATE_NOOP("App", "“%1” ends neither in .csv nor in .vcf; call a table .csv and cards .vcf."),
            path));
    const auto version = arguments.has("--v3") ? catalogue::CardVersion::V3 : catalogue::CardVersion::V4;
    const auto bytes = ending == ".csv" ? catalogue::writeContactTable(*all) : catalogue::writeCards(*all, version);
    if (const auto done = db::writeFile(path, bytes, ifThere(arguments)); !done) return notWritten(done.error(), path);
    return answer(
        arguments, {{"file", path}, {"customers", all->size()}},
        line(QT_TRANSLATE_NOOP("App", "“%1” is written; it names customers, keep it as you keep the book."), path));
}

const char* fitCode(ContactFit fit) {
    switch (fit) {
    case ContactFit::New: return "new";
    case ContactFit::Same: return "filled_in";
    case ContactFit::Known: return "known";
    case ContactFit::Doubtful: return "doubtful";
    }
    return "";
}

const char* fitSource(const catalogue::ContactRow& row) {
    if (row.fillsCertificate)
        return QT_TRANSLATE_NOOP("App", "there already, filled in, with a certificate of exemption: %1");
    switch (row.fit) {
    case ContactFit::New: return QT_TRANSLATE_NOOP("App", "new: %1");
    case ContactFit::Same: return QT_TRANSLATE_NOOP("App", "there already, filled in: %1");
    case ContactFit::Known: return QT_TRANSLATE_NOOP("App", "there already: %1");
    case ContactFit::Doubtful:
        return QT_TRANSLATE_NOOP("App", "left out, somebody else has the name, telephone or mail: %1");
    }
    return "";
}

Outcome readAll(const Arguments& arguments, db::Book& book) {
    const auto path = arguments.of("--import");
    const auto bytes = textOf(path);
    if (!bytes) return refused(bytes.error());
    const auto contacts = words::readContacts(*bytes, path);
    if (!contacts) return refused(contacts.error());
    const bool isMeant = arguments.has("--yes");
    const auto plan = isMeant ? book.takeContacts(*contacts) : book.planContacts(*contacts);
    if (!plan) return refused(plan.error());
    Json rows = Json::array();
    std::string text;
    for (std::size_t i = 0; i < plan->rows.size(); ++i) {
        const auto& row = plan->rows[i];
        const auto& refusal = plan->refusals[i];
        Json json = {{"name", row.contact.name}, {"becomes", refusal ? "refused" : fitCode(row.fit)}};
        if (!refusal && row.fillsCertificate) json["certificate_filled_in"] = true;
        if (refusal) json["because"] = words::text(*refusal);
        rows.push_back(std::move(json));
        text += refusal ? line(QT_TRANSLATE_NOOP("App", "left out: %1"), words::text(*refusal))
                        : line(fitSource(row), row.contact.name);
    }
    if (!isMeant) text += line(QT_TRANSLATE_NOOP("App", "Nothing was changed; add --yes to take them into the book."));
    return answer(arguments, {{"written", isMeant}, {"contacts", rows}}, text);
}

} // namespace

Outcome customersVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    if (arguments.value("--erase")) return erase(arguments, **book, helpers);
    if (arguments.value("--import")) return readAll(arguments, **book);
    if (arguments.value("--export")) return writeAll(arguments, **book);
    if (arguments.value("--customer") && arguments.value("--dir")) return writeOne(arguments, **book, helpers);
    if (arguments.value("--customer")) return showOne(arguments, **book);
    const auto all = (*book)->customers();
    if (!all) return refused(all.error());
    const auto wanted = lowered(arguments.value("--find").value_or(std::string()));
    Json json = Json::array();
    std::string text;
    for (const auto& one : *all) {
        if (lowered(one.name + "\n" + one.telephone + "\n" + one.mail).find(wanted) == std::string::npos) continue;
        json.push_back(contactJson(one));
        text += oneLine(one);
    }
    if (text.empty()) text = line(QT_TRANSLATE_NOOP("App", "No customer is called or reached so."));
    return answer(arguments, {{"customers", json}}, text);
}

} // namespace sp::verbs

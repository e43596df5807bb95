// SPDX-License-Identifier: MIT
#include "app/customers/all_of_customer.h"

#include "app/words/sources.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"
#include "core/units/text.h"
#include "db/book/written_file.h"

#include <algorithm>

namespace sp::customers {

using catalogue::Customer;

namespace {

using Json = nlohmann::ordered_json;

Json certificateJson(const catalogue::Certificate& filed) {
    return {{"number", filed.number},
            {"place", filed.place},
            {"issued_on", filed.issuedOn.iso()},
            {"expires_on", filed.expiresOn ? Json(filed.expiresOn->iso()) : Json(nullptr)}};
}

/// A new folder, its owner's alone; one that is there must be empty.
base::Done makeFolder(const std::filesystem::path& folder) {
    std::error_code error;
    if (std::filesystem::exists(folder, error) && !std::filesystem::is_empty(folder, error))
        return words::fail(base::Code::Conflict, folder.string(),
                           QT_TRANSLATE_NOOP("App", "“%1” is there already; name a new or an empty folder."),
                           folder.string());
    std::filesystem::create_directory(folder, error);
    if (!error)
        std::filesystem::permissions(folder, std::filesystem::perms::owner_all, std::filesystem::perm_options::replace,
                                     error);
    if (!error) return {};
    return words::fail(base::Code::Failed, folder.string(),
                       QT_TRANSLATE_NOOP("App",
                                         "The folder “%1” cannot be made; look whether the one it is to be in is "
                                         "there and yours to write."),
                       folder.string());
}

/// Whether a quote was given to a person other than the one of the file: a revision can be for somebody else.
bool isAnothers(const db::Quote& quote, const db::CustomerFile& file) {
    if (!quote.frozen || !quote.frozen->customer) return false;
    const auto& to = quote.frozen->customer->id;
    return to != file.customer.id &&
           std::ranges::none_of(file.merged, [&](const Customer& entry) { return entry.id == to; });
}

/// The papers of a job as PDF beside each other, each of its revisions too, and what they are as JSON.
base::Result<Json> writePapers(db::Book& book, const PaperWriters& writers, const db::CustomerFile& file,
                               const db::QuoteSummary& job, const std::filesystem::path& folder,
                               const units::Currency& currency) {
    Json papers = Json::array();
    if (job.number.empty()) return papers;
    const auto givens = book.givenOf(job.id);
    if (!givens) return base::fail(givens.error());
    const auto billing = book.billing(job.id);
    if (!billing) return base::fail(billing.error());
    const auto note = [&](const std::string& kind, const std::string& number, units::Money total) {
        papers.push_back({{"kind", kind},
                          {"number", number},
                          {"total", units::formatExact(total, currency)},
                          {"file", number + ".pdf"}});
    };
    for (const auto& given : *givens) {
        const auto quote = book.quoteAsGiven(given.number);
        if (!quote) return base::fail(quote.error());
        if (isAnothers(*quote, file)) continue;
        if (const auto done =
                writers.quote(book, *quote, (folder / (quote->number + ".pdf")).string(), db::IfThere::Refuse);
            !done)
            return base::fail(done.error());
        note("quote", quote->number, quote->sealedTotal.value_or(units::Money{}));
    }
    for (const auto& bill : billing->bills) {
        if (const auto done = writers.bill(bill, (folder / (bill.number + ".pdf")).string(), db::IfThere::Refuse);
            !done)
            return base::fail(done.error());
        note(std::string(catalogue::fields::wordOf(bill.kind)), bill.number, bill.total);
    }
    return papers;
}

base::Result<Json> writeJob(db::Book& book, const PaperWriters& writers, const db::CustomerFile& file,
                            const db::QuoteSummary& job, const std::filesystem::path& folder,
                            const units::Currency& currency) {
    auto papers = writePapers(book, writers, file, job, folder, currency);
    if (!papers) return base::fail(papers.error());
    const auto payments = book.payments(job.id);
    if (!payments) return base::fail(payments.error());
    Json paid = Json::array();
    for (const auto& payment : *payments)
        paid.push_back({{"day", payment.paidOn.iso()},
                        {"kind", payment.kind},
                        {"role", catalogue::fields::wordOf(payment.role)},
                        {"amount", units::formatExact(payment.amount, currency)},
                        {"note", payment.note}});
    return Json{{"number", job.number.empty() ? Json(nullptr) : Json(job.number)},
                {"stage", words::sourceOf(job.stage).text},
                {"day", job.quotedOn.iso()},
                {"title", job.firstTitle},
                {"total", job.total ? Json(units::formatExact(*job.total, currency)) : Json(nullptr)},
                {"payments", std::move(paid)},
                {"papers", std::move(*papers)}};
}

} // namespace

nlohmann::ordered_json contactJson(const Customer& customer) {
    Json others = Json::array();
    for (const auto& one : customer.otherCertificates) others.push_back(certificateJson(one));
    return {{"name", customer.name},
            {"address", customer.contact},
            {"telephone", customer.telephone},
            {"mail", customer.mail},
            {"language", customer.language},
            {"note", customer.note},
            {"certificate", customer.certificate ? certificateJson(*customer.certificate) : Json(nullptr)},
            {"other_certificates", std::move(others)}};
}

base::Result<std::int64_t> writeAllOf(db::Book& book, const base::Id& customer, const std::filesystem::path& folder,
                                      const PaperWriters& writers) {
    const auto file = book.customerFile(customer);
    const auto shop = book.shop();
    if (!file) return base::fail(file.error());
    if (!shop) return base::fail(shop.error());
    if (const auto made = makeFolder(folder); !made) return base::fail(made.error());
    auto json = contactJson(file->customer);
    json["currency"] = shop->currency.code();
    Json merged = Json::array();
    for (const auto& one : file->merged) merged.push_back(contactJson(one));
    json["entries_made_one"] = std::move(merged);
    Json jobs = Json::array();
    for (const auto& job : file->jobs) {
        auto written = writeJob(book, writers, *file, job, folder, shop->currency);
        if (!written) return base::fail(written.error());
        jobs.push_back(std::move(*written));
    }
    json["jobs"] = std::move(jobs);
    json["owed"] = units::formatExact(file->owed, shop->currency);
    json["credit"] = units::formatExact(file->credit, shop->currency);
    const auto text = json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
    if (const auto done = db::writeFile(folder / "customer.json", text, db::IfThere::Refuse); !done)
        return base::fail(done.error());
    return file->papers;
}

} // namespace sp::customers

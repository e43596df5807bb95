// SPDX-License-Identifier: MIT
// What a book has of one customer, and how a person is taken out of it.
#include "core/catalogue/fields/check.h"
#include "core/catalogue/stage.h"
#include "db/book/action.h"
#include "db/records/record.h"

#include <algorithm>

namespace sp::db {

using base::Done;
using base::Id;
using base::Result;
using catalogue::Customer;
using units::Money;

namespace {

constexpr std::chrono::minutes kTidyingBudget{10};

/// An entry, and those that turned out to be the same person.
std::vector<Id> entriesOf(Stores& stores, const Id& id) {
    std::vector<Id> ids{id};
    for (const auto& merged : stores.customers.mergedInto(id)) ids.push_back(merged.id);
    return ids;
}

/// No step to undo speaks of them any more: not of the entry, of its jobs or of what was paid for those
/// or left the shelf for them.
void addNoLongerUndone(std::vector<Id>& ids, Stores& stores, const Id& entry) {
    ids.push_back(entry);
    for (const auto& job : stores.jobs.ofCustomer(entry)) {
        ids.push_back(job);
        for (const auto& payment : stores.payments.ofJob(job)) ids.push_back(payment.id);
        for (const auto& move : stores.stock.keysFor(job)) ids.push_back(move);
    }
}

/// What asks for money, or has some of the customer's, as a list shows it.
void addSums(CustomerFile& file, const QuoteSummary& job) {
    // What was paid on a job that is let go is theirs, whatever it came to.
    if (job.stage == Stage::Declined) file.credit += job.paid;
    if (job.stage == Stage::Declined || !job.total || job.highestTotal || !job.isOwed()) return;
    if (*job.total > job.paid) file.owed += *job.total - job.paid;
    if (job.paid > *job.total) file.credit += job.paid - *job.total;
}

} // namespace

Result<CustomerFile> Book::customerFile(const Id& id) {
    return m_in->read([&] {
        auto& stores = m_in->stores;
        auto customer = m_in->customerNow(id);
        if (!customer) throwError(Fault::CustomerGone, id.text());
        CustomerFile file;
        file.merged = stores.customers.mergedInto(customer->id);
        file.jobs = stores.jobs.listOf(customer->id);
        for (const auto& job : file.jobs) addSums(file, job);
        file.papers = stores.papers.countOf(customer->id);
        file.customer = std::move(*customer);
        return file;
    });
}

std::size_t ContactsPlan::count(catalogue::ContactFit fit) const {
    std::size_t number = 0;
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (rows[i].fit == fit && !refusals[i]) ++number;
    return number;
}

ContactsPlan Book::Inside::planOf(const std::vector<Customer>& there, const std::vector<Customer>& contacts) const {
    ContactsPlan plan;
    std::vector<Customer> good;
    std::vector<std::optional<base::Error>> refusals;
    for (const auto& contact : contacts) {
        auto keyed = contact;
        keyed.id = newId();
        const auto checked = catalogue::fields::check(keyed);
        refusals.push_back(checked ? std::nullopt : std::optional(checked.error()));
        if (checked) good.push_back(contact);
    }
    auto rows = catalogue::planContacts(there, good);
    auto next = rows.begin();
    for (std::size_t i = 0; i < contacts.size(); ++i) {
        plan.rows.push_back(refusals[i] ? catalogue::ContactRow{contacts[i], catalogue::ContactFit::Doubtful, 0}
                                        : std::move(*next++));
        plan.refusals.push_back(std::move(refusals[i]));
    }
    return plan;
}

Result<ContactsPlan> Book::planContacts(const std::vector<Customer>& contacts) {
    return m_in->read([&] { return m_in->planOf(m_in->stores.customers.all(), contacts); });
}

Result<ContactsPlan> Book::takeContacts(const std::vector<Customer>& contacts) {
    return m_in->write([&] {
        auto& in = *m_in;
        const auto there = in.stores.customers.all();
        auto plan = in.planOf(there, contacts);
        if (!in.action->step.what) in.action->step.what = base::say(Note::ContactsOfAFile);
        std::vector<Id> ids;
        for (const auto& one : there) ids.push_back(one.id);
        for (std::size_t i = 0; i < plan.rows.size(); ++i) {
            auto& row = plan.rows[i];
            if (plan.refusals[i]) continue;
            if (row.fit == catalogue::ContactFit::New) {
                row.contact.id = valueOrThrow(save(row.contact));
                ids.push_back(row.contact.id);
            } else if (row.fit == catalogue::ContactFit::Same) {
                row.contact.id = ids.at(row.like);
                valueOrThrow(save(row.contact));
            }
        }
        return plan;
    });
}

/// Nobody is taken out while there is something left to do for them, or to pay.
void Book::Inside::expectQuits(const Customer& customer, const Id& entry) {
    for (const auto& id : stores.jobs.ofCustomer(entry)) {
        const auto job = stores.jobs.find(id).value();
        if (job.stage == Stage::Declined) {
            // It need have no choice taken, and comes to nothing: whatever is paid on it is theirs.
            if (!pricing::accountOf({}, {}, stores.payments.ofJob(id)).paid.isZero())
                throwError(Fault::CustomerNotSettled, customer.name, customer.name, job.number);
            continue;
        }
        if (job.stage != Stage::Collected)
            throwError(Fault::CustomerHasOpenJob, customer.name, customer.name,
                       job.number.empty() ? base::asValue(Note::ADraft) : base::asValue(job.number));
        const auto account = accountOf(whole(job));
        if (!account.left.isZero() || !account.credit.isZero())
            throwError(Fault::CustomerNotSettled, customer.name, customer.name, job.number);
    }
}

Result<std::vector<Customer>> Book::removedCustomers() {
    return m_in->read([&] { return m_in->stores.customers.removed(); });
}

Done Book::eraseCustomer(const Id& asked) {
    if (m_in->depth > 0) return base::fail(Fault::ActionGivenUp, file().string(), file().filename().string());
    // What is taken out of a page is overwritten from here on.
    if (const auto shredding = catchToResult([&] { m_in->opened.connection->shred(); }); !shredding) return shredding;
    const auto done = m_in->write([&] {
        auto& in = *m_in;
        auto customer = in.customerNow(asked);
        if (!customer) customer = in.stores.customers.findRemoved(asked);
        if (!customer) throwError(Fault::CustomerGone, asked.text());
        const auto entries = entriesOf(in.stores, customer->id);
        for (const auto& entry : entries) in.expectQuits(*customer, entry);
        in.action->isUndone = false;
        for (const auto& entry : entries) {
            const auto before = in.stores.customers.find(entry);
            const auto stamp = in.record("erase", base::say(Note::Erasing),
                                         {"customer", entry, before ? records::write(*before) : std::string(), {}});
            in.stores.papers.erasePersons(entry, stamp.at);
            in.stores.log.erase("customer", entry, stamp.at);
            in.stores.customers.erase(entry, stamp);
            addNoLongerUndone(in.action->issued, in.stores, entry);
        }
    });
    if (!done) return done;
    const auto forgotten = catchToResult([&] { m_in->forgetIndex(); });
    const auto tidied = tidy();
    return tidied ? forgotten : tidied;
}

/// Where the program ended between erasing somebody and what that ends with, it was cut short, or the file still has
/// pages that are free or no longer belong to it. Another time would do as well, so that a refusal is none of whoever
/// opens the book.
void Book::finishErasing() {
    auto& connection = *m_in->opened.connection;
    const auto isUnfinished = catchToResult([&] {
        return m_in->stores.log.endsWithErasing() &&
               (m_in->opened.wasCutShort || connection.hasFreePages() || connection.bytesBehindTheEnd() > 0);
    });
    if (isUnfinished && *isUnfinished) static_cast<void>(tidy());
}

/// Old text may lie in what is free of the file, from before it was erased: all pages are written anew.
Done Book::tidy() {
    const auto tidied = catchToResult([&] {
        auto& connection = *m_in->opened.connection;
        m_in->throwIfDisplaced();
        connection.allow(kTidyingBudget);
        const auto vacuumed = catchToResult([&] { connection.vacuum(); });
        connection.allow(kWorkBudget);
        m_in->noteHowItIsLeft();
        valueOrThrow(vacuumed);
    });
    if (tidied) return {};
    return base::fail(Fault::ErasedNotTidied, file().string(), file().filename().string(), tidied.error().message());
}

} // namespace sp::db

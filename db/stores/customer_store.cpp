// SPDX-License-Identifier: MIT
#include "db/stores/customer_store.h"

#include "db/db_error.h"
#include "db/records/record.h"

namespace sp::db::stores {

using catalogue::Certificate;
using catalogue::Customer;

namespace {

const std::string kCustomerColumns = "name, contact, telephone, mail, merged_into_id, certificate_number, "
                                     "certificate_place, certificate_issued_on, certificate_expires_on";
/// The same, then the whole of it as it was saved last, for what has no column.
const std::string kCustomerRead = kCustomerColumns + ", language, (SELECT r.json FROM change h JOIN record r "
                                                     "ON r.digest = coalesce(h.after, h.before) "
                                                     "WHERE h.seq = customer.change_seq)";

} // namespace

Customer CustomerStore::take(sqlite::Statement& row) {
    Customer customer;
    std::optional<std::string> number;
    std::optional<std::string> place;
    std::optional<units::Date> issuedOn;
    std::optional<units::Date> expiresOn;
    row >> customer.id >> customer.name >> customer.contact >> customer.telephone >> customer.mail;
    customer.mergedInto = takeIdOrNone(row);
    row >> number >> place >> issuedOn >> expiresOn >> customer.language;
    if (const auto json = row.takeRecord(); !json.empty()) {
        auto saved = valueOrThrow(records::read<Customer>(json));
        customer.note = std::move(saved.note);
        customer.otherCertificates = std::move(saved.otherCertificates);
    }
    if (number.has_value() != place.has_value() || number.has_value() != issuedOn.has_value() || (expiresOn && !number))
        throwDamaged(m_db, base::fail(Fault::HalfACertificate, customer.name));
    if (number) customer.certificate = Certificate{*number, *place, *issuedOn, expiresOn};
    throwDamaged(m_db, catalogue::fields::check(customer));
    return customer;
}

std::vector<Customer> CustomerStore::all() {
    std::vector<Customer> customers;
    auto rows = m_db.query("SELECT id, " + kCustomerRead +
                           " FROM customer WHERE +deleted_at IS NULL AND merged_into_id IS NULL "
                           "ORDER BY +name COLLATE COUNTING, id"); // see things.h
    while (rows.step()) customers.push_back(take(rows));
    return customers;
}

std::vector<Customer> CustomerStore::mergedInto(const base::Id& id) {
    std::vector<Customer> customers;
    auto rows = m_db.query("SELECT id, " + kCustomerRead +
                               " FROM customer WHERE merged_into_id = ? AND deleted_at IS NULL ORDER BY id",
                           id);
    while (rows.step()) customers.push_back(take(rows));
    return customers;
}

std::optional<Customer> CustomerStore::find(const base::Id& id) {
    auto row = m_db.query("SELECT id, " + kCustomerRead + " FROM customer WHERE id = ? AND deleted_at IS NULL", id);
    if (!row.step()) return std::nullopt;
    return take(row);
}

void CustomerStore::write(const Customer& c, const Stamp& stamp) {
    expectFreeName(c);
    static const std::string sql = upsert("customer", "id", kCustomerColumns + ", language");
    const auto part = [&](auto member) {
        using Value = std::remove_cvref_t<decltype((*c.certificate).*member)>;
        return c.certificate ? std::optional<Value>((*c.certificate).*member) : std::nullopt;
    };
    m_db.run(sql, c.id, c.name, c.contact, c.telephone, c.mail, orNull(c.mergedInto), part(&Certificate::number),
             part(&Certificate::place), part(&Certificate::issuedOn),
             c.certificate ? c.certificate->expiresOn : std::nullopt, c.language, stamp.seq);
}

/// The file may hold two of one name; nothing on screen tells them apart yet.
void CustomerStore::expectFreeName(const Customer& c) {
    if (!c.mergedInto.isNone()) return; // shown nowhere any more
    auto other = m_db.query("SELECT 1 FROM customer WHERE name = ? COLLATE NOCASE AND id <> ? AND deleted_at IS NULL "
                            "AND merged_into_id IS NULL",
                            c.name, c.id);
    if (other.step()) throwError(Fault::CustomerTwice, c.name);
}

std::vector<Customer> CustomerStore::removed() {
    std::vector<Customer> customers;
    auto rows = m_db.query("SELECT id, " + kCustomerRead +
                               " FROM customer WHERE deleted_at IS NOT NULL AND name <> ? "
                               "ORDER BY +name COLLATE COUNTING, id",
                           kErasedName);
    while (rows.step()) customers.push_back(take(rows));
    return customers;
}

std::optional<Customer> CustomerStore::findRemoved(const base::Id& id) {
    auto row = m_db.query("SELECT id, " + kCustomerRead +
                              " FROM customer WHERE id = ? AND deleted_at IS NOT NULL AND name <> ?",
                          id, kErasedName);
    if (!row.step()) return std::nullopt;
    return take(row);
}

void CustomerStore::erase(const base::Id& id, const Stamp& stamp) {
    m_db.run("UPDATE customer SET name = ?, contact = '', telephone = '', mail = '', language = '', "
             "certificate_number = NULL, certificate_place = NULL, certificate_issued_on = NULL, "
             "certificate_expires_on = NULL, deleted_at = coalesce(deleted_at, ?), change_seq = ?, "
             "row_version = row_version + 1 WHERE id = ?",
             kErasedName, stamp.at, stamp.seq, id);
}

void CustomerStore::remove(const base::Id& id, const Stamp& stamp) {
    markRemoved(m_db, "customer", id, stamp.seq, stamp.at);
}

} // namespace sp::db::stores

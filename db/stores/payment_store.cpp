// SPDX-License-Identifier: MIT
#include "db/stores/payment_store.h"

#include "db/db_error.h"

namespace sp::db::stores {

using catalogue::Payment;

namespace {

Payment takePayment(sqlite::Connection& db, sqlite::Statement& row) {
    Payment payment;
    row >> payment.id >> payment.job >> payment.amount >> payment.kind >> payment.paidOn >> payment.note >>
        payment.reverses >> payment.role >> payment.partOf;
    throwDamaged(db, catalogue::fields::check(payment));
    return payment;
}

} // namespace

std::optional<Payment> PaymentStore::find(const base::Id& id) {
    auto row = m_db.query(
        "SELECT id, job_id, amount_micros, kind, paid_on, note, reverses, role, part_of FROM payment WHERE id = ?", id);
    if (!row.step()) return std::nullopt;
    return takePayment(m_db, row);
}

void PaymentStore::add(const Payment& payment, const Stamp& stamp) {
    m_db.run("INSERT INTO payment (id, change_seq, job_id, customer_id, kind, amount_micros, paid_on, note, reverses, "
             "role, part_of) "
             "VALUES (?1, ?2, ?3, (SELECT customer_id FROM job WHERE id = ?3), ?4, ?5, ?6, ?7, ?8, ?9, ?10)",
             payment.id, stamp.seq, payment.job, payment.kind, payment.amount, payment.paidOn, payment.note,
             payment.reverses, payment.role, payment.partOf);
}

std::vector<Payment> PaymentStore::ofJob(const base::Id& job) {
    std::vector<Payment> payments;
    auto rows =
        m_db.query("SELECT id, job_id, amount_micros, kind, paid_on, note, reverses, role, part_of FROM payment "
                   "WHERE job_id = ? ORDER BY change_seq",
                   job);
    while (rows.step()) payments.push_back(takePayment(m_db, rows));
    return payments;
}

std::vector<Payment> PaymentStore::madeWith(const base::Id& id) {
    std::vector<Payment> rows;
    if (auto whole = find(id)) rows.push_back(std::move(*whole));
    auto parts =
        m_db.query("SELECT id, job_id, amount_micros, kind, paid_on, note, reverses, role, part_of FROM payment "
                   "WHERE part_of = ? AND reverses IS NULL ORDER BY change_seq",
                   id);
    while (parts.step()) rows.push_back(takePayment(m_db, parts));
    return rows;
}

bool PaymentStore::isReversed(const base::Id& id) {
    auto row = m_db.query("SELECT 1 FROM payment WHERE reverses = ?", id);
    return row.step();
}

} // namespace sp::db::stores

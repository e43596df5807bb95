// SPDX-License-Identifier: MIT
#include "app/jobs/jobs_table_model.h"

#include "app/words/names.h"

#include <algorithm>
#include <limits>

namespace sp::jobs {

JobsTableModel::JobsTableModel(const desk::Formatter& formatter, QObject* parent)
    : QAbstractTableModel(parent)
    , m_formatter(formatter) {}

void JobsTableModel::setRows(std::vector<Row> rows, bool hasMore) {
    m_hasMore = hasMore;
    const auto before = m_rows.size();
    const bool continues = rows.size() >= before && std::equal(m_rows.begin(), m_rows.end(), rows.begin(),
                                                               [](const Row& a, const Row& b) { return a.id == b.id; });
    if (!continues || before == 0) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
        return;
    }
    if (rows.size() > before) {
        beginInsertRows({}, static_cast<int>(before), static_cast<int>(rows.size()) - 1);
        m_rows = std::move(rows);
        endInsertRows();
    } else {
        m_rows = std::move(rows);
    }
    Q_EMIT dataChanged(index(0, 0), index(static_cast<int>(before) - 1, Columns - 1));
}

bool JobsTableModel::canFetchMore(const QModelIndex& parent) const { return !parent.isValid() && m_hasMore; }

void JobsTableModel::fetchMore(const QModelIndex& parent) {
    if (canFetchMore(parent)) Q_EMIT moreWanted();
}

QString totalOf(const db::QuoteSummary& quote, const desk::Formatter& formatter) {
    if (!quote.total) return QStringLiteral("—");
    const auto total = formatter.money(*quote.total);
    return quote.highestTotal ? JobsTableModel::tr("%1 to %2").arg(total, formatter.money(*quote.highestTotal)) : total;
}

QString leftOf(const db::QuoteSummary& quote, const desk::Formatter& formatter) {
    if (!quote.total || quote.highestTotal || !quote.isAsked()) return {};
    if (quote.stage == db::Stage::Declined) return JobsTableModel::tr("%1 paid").arg(formatter.money(quote.paid));
    const auto left = *quote.total - quote.paid;
    if (left.isZero()) return JobsTableModel::tr("paid");
    return left.isNegative() ? JobsTableModel::tr("%1 credit").arg(formatter.money(-left))
                             : JobsTableModel::tr("%1 left").arg(formatter.money(left));
}

int JobsTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int JobsTableModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : Columns; }

QString JobsTableModel::shown(const Row& row, int column) const {
    switch (column) {
    case Number: return row.number.empty() ? tr("draft") : QString::fromStdString(row.number);
    case Day: return m_formatter.date(row.quotedOn);
    case Customer: return QString::fromStdString(row.customer);
    case Title: return words::titleOf(row);
    case Stage: return row.isLapsed ? tr("Lapsed") : words::nameOf(row.stage);
    case Total: return totalOf(row, m_formatter);
    case Left:
        // The column's head says what the figure is.
        if (const auto left = row.left()) return m_formatter.money(*left);
        return leftOf(row, m_formatter);
    default: return {};
    }
}

QVariant JobsTableModel::sortKey(const Row& row, int column) {
    switch (column) {
    case Number: return QString::fromStdString(row.number);
    case Day: return QVariant::fromValue<qlonglong>(row.quotedOn.days().time_since_epoch().count());
    case Customer: return QString::fromStdString(row.customer).toCaseFolded();
    case Title: return words::titleOf(row).toCaseFolded();
    case Stage: return static_cast<int>(row.stage);
    case Total:
        return QVariant::fromValue<qlonglong>(row.total ? row.total->micros() : std::numeric_limits<qlonglong>::min());
    case Left: {
        const bool isKnown = row.total && !row.highestTotal;
        return QVariant::fromValue<qlonglong>(isKnown ? (*row.total - row.paid).micros()
                                                      : std::numeric_limits<qlonglong>::min());
    }
    default: return {};
    }
}

QVariant JobsTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole: return shown(row, index.column());
    case SortRole: return sortKey(row, index.column());
    case Qt::AccessibleTextRole:
        return index.column() == Total && !row.total ? tr("no total yet") : shown(row, index.column());
    case Qt::TextAlignmentRole:
        return static_cast<int>((index.column() >= Total ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default: return {};
    }
}

QVariant JobsTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= Columns) return {};
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>((section >= Total ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && section == Total)
        return tr("In order of this, drafts stand together: what they come to today is not kept");
    if (role != Qt::DisplayRole) return {};
    const QString words[] = {tr("Number"), tr("Day"),    tr("Customer"),   tr("What"),
                             tr("Stage"),  tr("To pay"), tr("Left to pay")};
    return words[section];
}

} // namespace sp::jobs

#include "moc_jobs_table_model.cpp"

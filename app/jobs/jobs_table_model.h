// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "db/book/book.h"

#include <QAbstractTableModel>

#include <vector>

namespace sp::jobs {

/// What a quote comes to as it is listed: a span while one of several choices is still to be taken, a dash for a draft
/// that has no price.
QString totalOf(const db::QuoteSummary& quote, const desk::Formatter& formatter);
/// What is left to pay of it, once it is agreed to or something was paid: "281.75 left", "paid"; of what was let go,
/// what was paid. Else empty.
QString leftOf(const db::QuoteSummary& quote, const desk::Formatter& formatter);

/// Quotes as a table, in the order given. The total is what the customer pays. SortRole gives
/// days and money as numbers.
class JobsTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Number, Day, Customer, Title, Stage, Total, Left, Columns };
    enum Roles { SortRole = Qt::UserRole + 1 };
    using Row = db::QuoteSummary;

    explicit JobsTableModel(const desk::Formatter& formatter, QObject* parent = nullptr);

    /// Replaces the rows. If the new rows begin with the same quotes, views are told of changes and of rows added at
    /// the end instead of a reset. `hasMore`: older ones can be fetched.
    void setRows(std::vector<Row> rows, bool hasMore = false);

    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  Q_SIGNALS:
    void moreWanted(); ///< the end of the list was reached

  private:
    QString shown(const Row& row, int column) const;
    static QVariant sortKey(const Row& row, int column);

    desk::Formatter m_formatter;
    std::vector<Row> m_rows;
    bool m_hasMore = false;
};

using Column = JobsTableModel::Column;

} // namespace sp::jobs

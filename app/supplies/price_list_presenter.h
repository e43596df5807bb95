// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "core/supply/price_list_csv.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace sp::supplies {

/// What is decided when a supplier's price list is read: which column says what (remembered for that supplier), what
/// would change, and the one action that changes it.
class PriceListPresenter {
  public:
    /// `seenOn` becomes the day of every price.
    PriceListPresenter(session::BookSession& session, const base::Id& supplier, units::Date seenOn);

    /// Reads a file. Empty when that was done, else the sentence.
    QString load(const QString& path);
    const QString& fileName() const { return m_fileName; }
    /// The first row of the list.
    QStringList headings() const;

    const catalogue::PriceListColumns& columns() const { return m_columns; }
    /// The heading that says this; empty: none does.
    QString heading(catalogue::ListColumn column) const;
    void setHeading(catalogue::ListColumn column, const QString& heading);
    void setDecimalComma(bool on);

    /// What the list would do to the book as it is. Errors: Missing without a file; those of supply::readPriceList.
    base::Result<supply::PriceListReading> reading();
    /// Remembers the columns and saves every change as one action. Empty when that was done, else the sentence.
    QString import();

  private:
    session::BookSession& m_session;
    units::Date m_seenOn;
    QString m_fileName;
    std::optional<base::CsvTable> m_table;
    catalogue::PriceListColumns m_columns;
};

} // namespace sp::supplies

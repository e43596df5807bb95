// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/supply/price_list_csv.h"

#include <QAbstractTableModel>

#include <vector>

namespace sp::supplies {

/// What becomes of the rows of a price list: those that cannot be taken first, then the packs that change. Texts are
/// made when they are looked at, so that a list may be long.
class ListRowsModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Line, Said, Material, Pack, Holds, PriceNow, PriceListed, kColumns };

    ListRowsModel(const desk::Formatter& formatter, QObject* parent);

    /// The reading must stay until another is shown. Null: nothing to show.
    void show(const supply::PriceListReading* reading);
    /// The lines of the file that a row stands for.
    std::vector<std::size_t> linesOf(int row) const;
    /// Why a row is not taken; empty for one that is.
    QString reasonOf(int row) const;
    /// Where the first line of the row is `line`; -1 where there is none.
    int rowOf(std::size_t line) const;
    /// The material that a row is; none where that is not known, or is made.
    base::Id materialOf(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QString troubleText(const supply::PriceListTrouble& trouble, int column) const;
    QString changeText(const supply::PriceListChange& change, int column) const;
    const supply::PriceListTrouble* troubleAt(int row) const;
    const supply::PriceListChange& changeAt(int row) const;

    const desk::Formatter& m_formatter;
    const supply::PriceListReading* m_reading = nullptr;
};

} // namespace sp::supplies

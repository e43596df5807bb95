// SPDX-License-Identifier: MIT
#include "app/supplies/list_rows_model.h"

#include "app/supplies/price_text.h"
#include "app/words/words.h"

namespace sp::supplies {

ListRowsModel::ListRowsModel(const desk::Formatter& formatter, QObject* parent)
    : QAbstractTableModel(parent)
    , m_formatter(formatter) {}

void ListRowsModel::show(const supply::PriceListReading* reading) {
    beginResetModel();
    m_reading = reading;
    endResetModel();
}

const supply::PriceListTrouble* ListRowsModel::troubleAt(int row) const {
    const auto at = static_cast<std::size_t>(row);
    return at < m_reading->troubles.size() ? &m_reading->troubles[at] : nullptr;
}

const supply::PriceListChange& ListRowsModel::changeAt(int row) const {
    return m_reading->changes[static_cast<std::size_t>(row) - m_reading->troubles.size()];
}

std::vector<std::size_t> ListRowsModel::linesOf(int row) const {
    if (const auto* trouble = troubleAt(row)) return {trouble->line};
    return changeAt(row).lines;
}

QString ListRowsModel::reasonOf(int row) const {
    const auto* trouble = troubleAt(row);
    return trouble ? words::sentence(trouble->reason) : QString();
}

base::Id ListRowsModel::materialOf(int row) const { return troubleAt(row) ? base::Id() : changeAt(row).pack.material; }

int ListRowsModel::rowOf(std::size_t line) const {
    for (int row = 0; row < rowCount(); ++row)
        if (const auto lines = linesOf(row); !lines.empty() && lines.front() == line) return row;
    return -1;
}

int ListRowsModel::rowCount(const QModelIndex& parent) const {
    if (parent.isValid() || !m_reading) return 0;
    return static_cast<int>(m_reading->troubles.size() + m_reading->changes.size());
}

int ListRowsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kColumns; }

QVariant ListRowsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !m_reading) return {};
    const bool isFigure = index.column() == Line || index.column() >= Holds;
    if (role == Qt::TextAlignmentRole && isFigure) return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const auto* trouble = troubleAt(index.row());
    return trouble ? troubleText(*trouble, index.column()) : changeText(changeAt(index.row()), index.column());
}

QString ListRowsModel::troubleText(const supply::PriceListTrouble& trouble, int column) const {
    switch (column) {
    case Line: return m_formatter.count(units::Count::of(static_cast<std::int64_t>(trouble.line)));
    case Said: return QString::fromStdString(trouble.name);
    case Material: return words::sentence(trouble.reason);
    default: return {};
    }
}

QString ListRowsModel::changeText(const supply::PriceListChange& change, int column) const {
    const auto& pack = change.pack;
    const auto firstKept = pack.prices.end() - static_cast<std::ptrdiff_t>(change.kept);
    switch (column) {
    case Line: return m_formatter.count(units::Count::of(static_cast<std::int64_t>(change.line)));
    case Said: return QString::fromStdString(change.said);
    case Material:
        return change.made ? tr("new: %1").arg(QString::fromStdString(change.material))
                           : QString::fromStdString(change.material);
    case Pack: return QString::fromStdString(pack.name);
    case Holds: {
        const auto holds = m_formatter.count(pack.amount);
        if (!change.before || change.before->amount == pack.amount) return holds;
        return tr("%1 (now %2)").arg(holds, m_formatter.count(change.before->amount));
    }
    case PriceNow: return change.before ? writePrices(change.before->prices, m_formatter) : tr("new pack");
    case PriceListed: {
        const auto prices = writePrices({pack.prices.begin(), firstKept}, m_formatter);
        if (change.kept == 0) return prices;
        return tr("%1; as before: %2").arg(prices, writePrices({firstKept, pack.prices.end()}, m_formatter));
    }
    default: return {};
    }
}

QVariant ListRowsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole && (section == Line || section >= Holds))
        return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case Line: return tr("Line");
    case Said: return tr("In the list");
    case Material: return tr("In the book");
    case Pack: return tr("Pack");
    case Holds: return tr("Holds");
    case PriceNow: return tr("Price now");
    case PriceListed: return tr("Price in the list");
    default: return {};
    }
}

} // namespace sp::supplies

#include "moc_list_rows_model.cpp"

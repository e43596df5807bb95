// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "app/words/cost_words.h"

#include <QAbstractItemModel>

#include <span>
#include <vector>

namespace sp::counter {

/// A cost sheet as a tree of labels, rules and amounts, for one piece or for the whole job. The job itself is not a
/// row; its parts are the top rows.
class CostTreeModel : public QAbstractItemModel {
    Q_OBJECT

  public:
    enum Column { Label, Amount, Columns };

    explicit CostTreeModel(QObject* parent = nullptr);

    /// Shows another sheet, for one of `pieces`; `shown` is what is read of each node, in reading order
    /// (costing::shownForOneOf). Rows that stay keep their place, so what was opened stays open.
    void setTree(const words::CostTree& tree, std::span<const units::Money> shown, units::Count pieces,
                 const desk::Formatter& formatter);
    void clear();

    QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    QModelIndex parent(const QModelIndex& child) const override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

  private:
    struct Node {
        QString label;
        QString rule;
        QString amount;
        int parent = -1;
        int row = 0;
        std::vector<int> children;
    };

    int add(const words::CostTree& tree, std::span<const units::Money> shown, int parent, units::Count pieces,
            const desk::Formatter& formatter, std::vector<Node>& nodes) const;
    bool sameShape(const std::vector<Node>& nodes) const;
    const Node& nodeOf(const QModelIndex& index) const;

    std::vector<Node> m_nodes; ///< the job first
};

} // namespace sp::counter

// SPDX-License-Identifier: MIT
#include "app/counter/cost_tree_model.h"

#include "app/format/rule_role.h"

#include <algorithm>

namespace sp::counter {

CostTreeModel::CostTreeModel(QObject* parent)
    : QAbstractItemModel(parent) {}

/// Adds the node and its parts in reading order, so that a node and its figure have the same index.
int CostTreeModel::add(const words::CostTree& tree, std::span<const units::Money> shown, int parent,
                       units::Count pieces, const desk::Formatter& formatter, std::vector<Node>& nodes) const {
    const int at = static_cast<int>(nodes.size());
    auto rule = QString::fromStdString(tree.rule);
    // The rule is for the whole job and the figure for one piece, so the job's amount is added to the rule.
    if (tree.children.empty() && pieces.value() > 1 && !tree.amount.isZero())
        rule += tr(" = %1 for %2 pieces", nullptr, static_cast<int>(pieces.value()))
                    .arg(formatter.money(tree.amount), formatter.count(pieces));
    const int row = parent < 0 ? 0 : static_cast<int>(nodes[static_cast<std::size_t>(parent)].children.size());
    nodes.push_back({QString::fromStdString(tree.label), rule, formatter.money(shown[nodes.size()]), parent, row, {}});
    for (const auto& part : tree.children) {
        const int child = add(part, shown, at, pieces, formatter, nodes);
        nodes[static_cast<std::size_t>(at)].children.push_back(child);
    }
    return at;
}

bool CostTreeModel::sameShape(const std::vector<Node>& nodes) const {
    return std::equal(nodes.begin(), nodes.end(), m_nodes.begin(), m_nodes.end(), [](const Node& a, const Node& b) {
        return a.parent == b.parent && a.label == b.label && a.children.size() == b.children.size();
    });
}

void CostTreeModel::setTree(const words::CostTree& tree, std::span<const units::Money> shown, units::Count pieces,
                            const desk::Formatter& formatter) {
    std::vector<Node> nodes;
    add(tree, shown, -1, pieces, formatter, nodes);
    // The title of the job is not shown and may change while one types.
    if (!m_nodes.empty() && !nodes.empty()) nodes.front().label = m_nodes.front().label;
    if (sameShape(nodes)) {
        m_nodes = std::move(nodes);
        for (int i = 0; i < static_cast<int>(m_nodes.size()); ++i) {
            const auto& node = m_nodes[static_cast<std::size_t>(i)];
            if (node.parent >= 0)
                Q_EMIT dataChanged(createIndex(node.row, Label, static_cast<quintptr>(i)),
                                   createIndex(node.row, Amount, static_cast<quintptr>(i)));
        }
        return;
    }
    beginResetModel();
    m_nodes = std::move(nodes);
    endResetModel();
}

void CostTreeModel::clear() {
    beginResetModel();
    m_nodes.clear();
    endResetModel();
}

const CostTreeModel::Node& CostTreeModel::nodeOf(const QModelIndex& index) const {
    return m_nodes[index.isValid() ? static_cast<std::size_t>(index.internalId()) : 0];
}

QModelIndex CostTreeModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) return {};
    return createIndex(row, column, static_cast<quintptr>(nodeOf(parent).children[static_cast<std::size_t>(row)]));
}

QModelIndex CostTreeModel::parent(const QModelIndex& child) const {
    if (!child.isValid()) return {};
    const int parent = nodeOf(child).parent;
    if (parent <= 0) return {};
    return createIndex(m_nodes[static_cast<std::size_t>(parent)].row, Label, static_cast<quintptr>(parent));
}

int CostTreeModel::rowCount(const QModelIndex& parent) const {
    if (m_nodes.empty() || parent.column() > 0) return 0;
    return static_cast<int>(nodeOf(parent).children.size());
}

int CostTreeModel::columnCount(const QModelIndex&) const { return Columns; }

QVariant CostTreeModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const auto& node = nodeOf(index);
    if (role == Qt::DisplayRole) return index.column() == Label ? node.label : node.amount;
    if (role == desk::kRuleRole || role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole) return node.rule;
    if (role == Qt::TextAlignmentRole && index.column() == Amount) return int(Qt::AlignRight | Qt::AlignTop);
    return {};
}

} // namespace sp::counter

#include "moc_cost_tree_model.cpp"

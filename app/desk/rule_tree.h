// SPDX-License-Identifier: MIT
#pragma once

#include <QTreeView>

namespace sp::desk {

/// Figures that open: the label with its rule below, and in the second column the figure. A sum opens to what it is
/// made of by a click, Enter or the arrow keys; a sum with parts needs no rule of its own. The focus is seen as an
/// outline.
class RuleTree : public QTreeView {
    Q_OBJECT

  public:
    explicit RuleTree(QWidget* parent = nullptr);

    /// The model has two columns, label and figure, and says the rule under kRuleRole (app/format/rule_role.h).
    void setModel(QAbstractItemModel* model) override;

    /// Labels of the top rows that are open, and opening them again in another model.
    QStringList opened() const;
    void open(const QStringList& labels);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
};

} // namespace sp::desk

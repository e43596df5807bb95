// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"

#include <QFrame>
#include <QListView>
#include <QStandardItemModel>

namespace sp::desk {

/// The list under a ChoiceField. Never takes the focus; the field hands it the keys.
class ChoicePopup : public QFrame {
    Q_OBJECT

  public:
    explicit ChoicePopup(QWidget* field);

    /// Fills it; `action` is the last row's words, empty for none.
    void fill(const std::vector<Choice>& rows, const QString& action);
    int rowCount() const;
    bool isAction(int row) const;
    int marked() const; ///< -1: none
    void mark(int row);
    void showUnder(const QWidget& field);

  Q_SIGNALS:
    void taken(int row);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QListView* m_list;
    QStandardItemModel* m_model;
    bool m_hasAction = false;
};

} // namespace sp::desk

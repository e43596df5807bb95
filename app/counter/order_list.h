// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/counter/line_pictures.h"
#include "app/format/formatter.h"

#include <QAbstractListModel>
#include <QListView>
#include <QStyledItemDelegate>

namespace sp::counter {

/// The lines of the order as a list: pieces, title, what it goes on, the price of one.
class OrderListModel : public QAbstractListModel {
    Q_OBJECT

  public:
    enum Roles { TitleRole = Qt::UserRole + 1, DetailRole, EachRole, StonesRole };

    OrderListModel(CounterPresenter& presenter, const desk::Formatter& formatter, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    void refresh();

  private:
    QString title(int row) const;
    QString detail(int row) const;
    QString each(int row) const;

    CounterPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    int m_rows = 0;
};

/// Draws each line as a card; the chosen one has the jewel outline.
class OrderListDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    OrderListDelegate(LinePicture pictures, QObject* parent);
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    /// The line's picture, else its stones; returns the width it takes.
    int paintLook(QPainter& painter, const QRect& inner, const QModelIndex& index) const;

    LinePicture m_pictures;
};

/// The list itself: arrows choose a line, Delete asks to remove it, Enter goes on to its fields.
class OrderList : public QListView {
    Q_OBJECT

  public:
    explicit OrderList(LinePicture pictures, QWidget* parent = nullptr);

  Q_SIGNALS:
    void removeAsked();
    void entered();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
};

} // namespace sp::counter

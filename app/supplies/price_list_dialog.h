// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/desk/row_table.h"
#include "app/format/formatter.h"
#include "app/supplies/list_columns.h"
#include "app/supplies/list_rows_model.h"
#include "app/supplies/price_list_presenter.h"

#include <QCheckBox>
#include <QDialog>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

namespace sp::supplies {

/// Reads a supplier's price list: choose the file, see what each column is taken for, what would change and which rows
/// cannot be taken, say what a row is where that is not known, and take it over as one step that can be undone; a very
/// long one goes part by part, can be stopped, and says how far it came.
class PriceListDialog : public QDialog {
    Q_OBJECT

  public:
    PriceListDialog(session::BookSession& session, const desk::Formatter& formatter, const base::Id& supplier,
                    units::Date seenOn, QWidget* parent = nullptr);

    /// Shows the list in that file, once it is read.
    void load(const QString& path);
    bool isBusy() const { return m_presenter.isBusy(); }
    void chooseFile();
    void reject() override;

  private:
    void build(QVBoxLayout* column);
    QWidget* buildOptions();
    QWidget* buildTable();
    QWidget* buildProgress();
    QWidget* buildButtons();
    void refresh();
    void showReading(const supply::PriceListReading& reading);
    void showRow();
    void say(const QString& sentence, desk::Role role);
    void showProgress();
    void fitSaving();

    PriceListPresenter m_presenter;
    const desk::Formatter& m_formatter;
    desk::TextLabel* m_file = nullptr;
    ListColumns* m_columns = nullptr;
    QCheckBox* m_comma = nullptr;
    QCheckBox* m_make = nullptr;
    ListRowsModel* m_rows = nullptr;
    desk::RowTable* m_table = nullptr;
    desk::ChoiceField* m_match = nullptr;
    desk::TextLabel* m_reason = nullptr;
    desk::TextLabel* m_sum = nullptr;
    QWidget* m_progressRow = nullptr;
    QProgressBar* m_progress = nullptr;
    QPushButton* m_stop = nullptr;
    QTimer* m_longEnough = nullptr; ///< what takes less is not told of
    QPushButton* m_take = nullptr;
    std::size_t m_line = 0; ///< the first line of the row that is looked at; 0: none
};

} // namespace sp::supplies

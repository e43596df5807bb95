// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "app/desk/figures_table.h"
#include "app/format/formatter.h"
#include "app/supplies/price_list_presenter.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>
#include <vector>

namespace sp::supplies {

/// Reads a supplier's price list: choose the file, say once which column means what, see what would change and which
/// rows cannot be taken, and take it over as one step that can be undone.
class PriceListDialog : public QDialog {
    Q_OBJECT

  public:
    PriceListDialog(session::BookSession& session, const desk::Formatter& formatter, const base::Id& supplier,
                    units::Date seenOn, QWidget* parent = nullptr);

    /// Shows the list in that file.
    void load(const QString& path);

  private:
    void build(QVBoxLayout* column);
    void buildColumns(QVBoxLayout* column);
    void chooseFile();
    void fillHeadings();
    void preview();
    void fillTable(const supply::PriceListReading& reading);
    void say(const QString& problem);

    PriceListPresenter m_presenter;
    const desk::Formatter& m_formatter;
    desk::TextLabel* m_file = nullptr;
    std::vector<std::pair<catalogue::ListColumn, QComboBox*>> m_columns;
    QCheckBox* m_comma = nullptr;
    desk::FiguresTable* m_table = nullptr;
    desk::TextLabel* m_sum = nullptr;
    desk::TextLabel* m_troubles = nullptr;
    QPushButton* m_take = nullptr;
};

} // namespace sp::supplies

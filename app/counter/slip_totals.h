// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "core/quoting/sheet_content.h"

#include <QWidget>

class QGridLayout;

namespace sp::counter {

/// The lower part of the slip's front, always visible: sum, tax, total, deposit, and prices of other quantities of the
/// current line. Without a price it shows a dash and the reason.
class SlipTotals : public QWidget {
    Q_OBJECT

  public:
    explicit SlipTotals(QWidget* parent = nullptr);

    /// `ladder` is that of the current line; empty steps: none.
    void setContent(const quoting::SheetContent& content, const quoting::SheetLadder& ladder);
    /// `isLink`: it can be followed to what mends it.
    void setNoPrice(const QString& why, bool isLink);
    const QString toPay() const { return m_toPay->text(); }

  Q_SIGNALS:
    void missingPriceFollowed();

  private:
    struct Row {
        desk::TextLabel* label;
        desk::FigureLabel* amount;
    };
    struct Step {
        QWidget* cell;
        desk::TextLabel* pieces;
        desk::TextLabel* each;
    };

    Row addRow(QGridLayout* grid, int row, const QString& objectName);
    desk::TextLabel* addNote(QGridLayout* grid, int row);
    void fill(const Row& row, const QString& label, const QString& amount);
    void fillMoreTaxes(const std::vector<quoting::SheetTax>& taxes);
    void fillLadder(const quoting::SheetLadder& ladder);

    Row m_together{};
    Row m_tax{};
    QGridLayout* m_moreGrid = nullptr;
    std::vector<Row> m_moreTaxes; ///< as many as were ever shown
    Row m_deposit{};
    Row m_balance{};
    desk::TextLabel* m_payWord = nullptr;
    desk::FigureLabel* m_toPay = nullptr;
    desk::TextLabel* m_why = nullptr;
    desk::TextLabel* m_taxNote = nullptr; ///< how the tax was calculated, or why there is none
    desk::TextLabel* m_included = nullptr;
    desk::TextLabel* m_ladderTitle = nullptr;
    QWidget* m_ladder = nullptr;
    std::vector<Step> m_steps;
    desk::TextLabel* m_care = nullptr;
};

} // namespace sp::counter

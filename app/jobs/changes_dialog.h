// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/pricing/compare.h"
#include "db/book/book.h"

#include <QDialog>

class QGridLayout;
class QVBoxLayout;

namespace sp::jobs {

/// What a given quote would come to today, or its repeat comes to, by line and by cause. For the owner only: it shows
/// the shop's own prices. Show it with open().
class ChangesDialog : public QDialog {
    Q_OBJECT

  public:
    /// What is compared with the quote: the same order today, or its repeat.
    enum class With { Today, Repeat };
    ChangesDialog(const std::string& number, With with, const base::Result<pricing::PriceComparison>& compared,
                  const desk::Formatter& formatter, QWidget* parent = nullptr);

  private:
    void buildTotals(QVBoxLayout* column, const pricing::PriceComparison& compared);
    QWidget* buildTables(const pricing::PriceComparison& compared);
    void buildLines(QVBoxLayout* column, const pricing::PriceComparison& compared);
    void buildCauses(QVBoxLayout* column, const pricing::PriceComparison& compared);
    void putWords(QGridLayout* grid, int row, int column, const QString& words, bool muted);
    void putFigure(QGridLayout* grid, int row, int column, const QString& figure, const QString& meaning);

    desk::Formatter m_formatter;
    With m_with;
};

} // namespace sp::jobs

// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"

#include <QString>
#include <QStringList>

#include <vector>

class QGridLayout;
class QVBoxLayout;
class QWidget;

// What the dialogs of changes and of differences are laid out with.
namespace sp::jobs {

/// "+2.50", "−2.50", "0.00".
QString signedMoney(units::Money amount, const desk::Formatter& formatter);

/// A sum of the whole order, and the object name of its label.
struct Total {
    QString label;
    QString figure;
    const char* name;
};

/// Sums side by side, large, each below its label.
void addTotals(QVBoxLayout* column, const std::vector<Total>& totals, QWidget* parent);

/// A titled grid whose first column takes the room there is, the others figures at their right; rows begin at 2.
QGridLayout* rowsGrid(QVBoxLayout* column, const QString& title, const QStringList& heads, QWidget* parent);

/// The rows of a dialog, which scroll downwards where there is no room for all.
QWidget* scrolling(QWidget* rows, const char* name, QWidget* parent);

} // namespace sp::jobs

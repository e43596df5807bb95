// SPDX-License-Identifier: MIT
#pragma once

#include "core/planning/cut_plan.h"

#include <QCoreApplication>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <vector>

namespace sp::paper {

/// Where the parts of a sheet of a cutting plan are drawn, the same on the screen and on paper. The longer side of the
/// sheet lies across.
struct PlanShape {
    struct Part {
        QRectF box;
        std::size_t piece = 0;
        bool turned = false; ///< as drawn, a quarter from the way its size is written
    };

    QRectF sheet;
    std::vector<Part> parts;
    QRectF left; ///< what stays free; null where nothing does
};

/// A piece on a sheet as it is drawn, from the sheet's left and upper edge.
struct DrawnPlace {
    std::size_t piece = 0;
    bool turned = false;
    units::Length left;
    units::Length top;
    layout::Piece size; ///< as drawn
};

/// In the order of the sheet's places.
std::vector<DrawnPlace> drawnPlaces(const planning::CutPlan& plan, const planning::CutSheet& sheet);

/// Width and height of that sheet as drawn, in millimetres.
QSizeF planSize(const planning::CutPlan& plan);
/// Draws from `corner` (upper left) with `scale` units a millimetre.
PlanShape shapeOf(const planning::CutPlan& plan, const planning::CutSheet& sheet, QPointF corner, double scale);

/// The mark of the piece at `index` of a list: A to Z, then AA, AB and so on.
QString pieceMark(std::size_t index);

/// How lengths of a plan are written. Lengths that are cut are never short, bounds never too long: to 1/64 in or 0.1
/// mm.
struct PlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)

  public:
    units::NumberStyle numbers;
    units::LengthUnit unit = units::LengthUnit::Inch;

    QString length(units::Length length) const;    ///< "3 1/2 in"
    QString size(const layout::Piece& size) const; ///< "3 1/2 × 2 3/4 in"
    QString count(std::int64_t count) const;
    /// "Template 9 × 12 in" where the name does not say its size by itself.
    QString material(const catalogue::Material& material) const;
    /// "3 sheets, fewest possible", "3 sheets; no plan needs fewer than 2", "14 in off the roll, shortest possible".
    QString verdict(const planning::CutPlan& plan) const;
    /// "4 1/2 × 9 in left of the last sheet".
    QString left(const planning::CutPlan& plan) const;
    /// "4", "1 to 3", of a roll "Roll"; `first` counts from 1.
    QString sheetNumbers(const planning::CutPlan& plan, const planning::CutSheet& sheet, std::int64_t first) const;
    /// "Sheet 4", "Sheets 1 to 3, cut alike", "Roll".
    QString sheetName(const planning::CutPlan& plan, const planning::CutSheet& sheet, std::int64_t first) const;
};

} // namespace sp::paper

// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/plan_shape.h"

#include <QWidget>

namespace sp::plans {

/// One sheet of a cutting plan to scale: the pieces with their marks, turned ones with a cut corner, what is left
/// dashed; the sheet's name below. Grows and shrinks with its width.
class PlanPicture : public QWidget {
    Q_OBJECT

  public:
    /// `first`: the number of the sheet in its plan, from 1. `scale`: pixels a millimetre, the same for all sheets of a
    /// plan.
    PlanPicture(const planning::CutPlan& plan, std::size_t sheet, std::int64_t first, double scale,
                paper::PlanWords words, QWidget* parent = nullptr);

    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paintLeft(QPainter& painter, const QRectF& left) const;
    void paintPart(QPainter& painter, const paper::PlanShape::Part& part) const;
    int captionHeight() const;

    planning::CutPlan m_plan;
    std::size_t m_sheet;
    double m_scale;
    paper::PlanWords m_words;
    QString m_name;
};

} // namespace sp::plans

// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/palette.h"
#include "app/format/formatter.h"
#include "core/supply/cost_curve.h"

#include <QPainter>
#include <QWidget>

#include <memory>

namespace sp::buying {

/// What a costCurve says: "Kits win from 1 to 9, the mix from 10 on" and so on, one sentence for each run, and the
/// quantity from which bulk stays cheaper where that is proven.
QStringList costCurveWords(const supply::CostCurve& curve, std::int64_t horizon, const desk::Formatter& formatter);

/// How far a complete curve goes, and why no further; nothing where it shows all that was meant to be seen. `pieces`
/// is the number asked for.
QString shownWords(const supply::CostCurve& curve, std::int64_t horizon, std::int64_t pieces,
                   const desk::Formatter& formatter);

/// "24 pieces, each: kits 1.20, bulk 1.10, mix 1.05; mix is cheapest"
QString pointWords(const supply::CostCurvePoint& point, const desk::Formatter& formatter);

struct CostCurveDrawing {
    const supply::CostCurve& curve;
    std::int64_t horizon = 0;
    std::int64_t marked = 0; ///< the quantity with the upright line; 0: none
};

/// Draws the curve into `box`: kits dashed ink, bulk dotted ink, the mix a wide jewel line, each with its name on it;
/// where the winner changes an upright with the quantity and its name. Read in black and white.
void paintCostCurve(QPainter& painter, const QRectF& box, const CostCurveDrawing& drawing, desk::Look look,
                    const desk::Formatter& formatter);

/// The curve on the screen. Left and Right move along the quantities, Page Up and Page Down by twelve, Home and End to
/// the ends; the quantity is read out.
class CostCurvePicture : public QWidget {
    Q_OBJECT

  public:
    CostCurvePicture(const desk::Formatter& formatter, QWidget* parent = nullptr);

    void setCurve(std::shared_ptr<const supply::CostCurve> curve, std::int64_t horizon);
    void setMarked(std::int64_t pieces);
    std::int64_t marked() const { return m_marked; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  Q_SIGNALS:
    void moved(std::int64_t pieces);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void moveTo(std::int64_t pieces);
    void announce();

    const desk::Formatter& m_formatter;
    std::shared_ptr<const supply::CostCurve> m_curve;
    std::int64_t m_horizon = 0;
    std::int64_t m_marked = 0;
};

} // namespace sp::buying

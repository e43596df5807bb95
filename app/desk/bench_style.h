// SPDX-License-Identifier: MIT
#pragma once

#include <QProxyStyle>
#include <QPushButton>

namespace sp::desk {

/// How controls look: Fusion underneath, our fields, buttons, check boxes, combo boxes, scroll bars, lists and menus
/// above. All measures in device-independent pixels on the 4 px grid. Theme installs it; nobody else needs it.
class BenchStyle : public QProxyStyle {
    Q_OBJECT

  public:
    BenchStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                         const QWidget* widget) const override;
    QRect subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                           const QWidget* widget) const override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override;
    /// A chosen row does not tint its picture: a stone keeps its colour.
    QPixmap generatedIconPixmap(QIcon::Mode mode, const QPixmap& pixmap, const QStyleOption* option) const override;
    void polish(QWidget* widget) override;
};

/// The one button of a page that acts: filled with the jewel.
void makePrimary(QPushButton& button);
/// A button that is a word in the jewel, without outline ("+ colour", the action of a message bar).
void makeQuiet(QPushButton& button);
/// Marks a widget's entry as wrong (warn outline) or right again.
void markWrong(QWidget& field, bool wrong);

/// Corner radii and the heights everything aligns to.
inline constexpr int kFieldRadius = 6;
inline constexpr int kCardRadius = 10;

/// A field's height at the zoom in force: 32 at 100 %.
int fieldHeight();

/// An open arrow that points down to `tip`, as on what opens a list.
void paintChevron(QPainter& painter, QPointF tip, const QColor& ink);

} // namespace sp::desk

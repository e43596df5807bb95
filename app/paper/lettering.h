// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QFont>
#include <QFontMetricsF>
#include <QString>
#include <QStringList>

#include <array>
#include <vector>

class QPainter;
class QPointF;

namespace sp::paper {

/// The kinds of lettering on our papers. Ink on white, whatever the screen's theme.
enum class Face { Shop, Title, Total, Strong, Body, Small, SmallStrong, Fine };

inline constexpr int kFaces = 8;

/// Lettering measured in points (1/72 in) and free of any device: the same lines break at the same words on screen,
/// printer and PDF. The first of desk::textFamilies() that is there; other scripts come from whatever fonts the system
/// has. Needs a QGuiApplication.
class Lettering {
  public:
    Lettering();

    /// Distance from one baseline to the next.
    double leading(Face face) const;
    /// From the top of a line to its baseline.
    double ascent(Face face) const;
    double width(Face face, const QString& text) const;

    /// Breaks at words, inside a word that is wider than the line. What does not fit in `mostLines` ends in an
    /// ellipsis. Line ends in the text count as spaces.
    QStringList wrap(Face face, const QString& text, double width, int mostLines) const;

    // Drawing, on a painter whose unit is the point. `baseline` is the left end.
    void draw(QPainter& painter, QPointF baseline, Face face, const QColor& colour, const QString& text) const;

  private:
    struct Cut {
        QFont font;
        QFontMetricsF metrics;
    };

    const Cut& of(Face face, const QString& text) const;

    std::vector<Cut> m_cuts;
};

} // namespace sp::paper

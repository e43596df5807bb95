// SPDX-License-Identifier: MIT
#include "app/paper/brick.h"

#include "app/paper/paper_colours.h"

namespace sp::paper {

void BrickPen::write(Brick& brick, double x, double y, Face face, const QColor& colour, const QString& words) const {
    brick.parts.texts.push_back({{x, y + m_lettering.ascent(face)}, words, face, colour, false});
}

void BrickPen::writeRight(Brick& brick, double right, double y, Face face, const QColor& colour,
                          const QString& words) const {
    write(brick, right - m_lettering.width(face, words), y, face, colour, words);
}

void BrickPen::figuresRight(Brick& brick, double right, double y, Face face, const QColor& colour,
                            const QString& figures) const {
    const double x = right - m_lettering.width(face, figures);
    brick.parts.texts.push_back({{x, y + m_lettering.ascent(face)}, figures, face, colour, true});
}

double BrickPen::paragraph(Brick& brick, double x, double y, Face face, const QColor& colour, const QString& words,
                           double width, int mostLines) const {
    for (const auto& line : m_lettering.wrap(face, words, width, mostLines)) {
        write(brick, x, y, face, colour, line);
        y += m_lettering.leading(face);
    }
    return y;
}

void BrickPen::rule(Brick& brick, double x, double y, double length) const {
    brick.parts.rules.push_back({{x, y}, length, 0.6, kHairline});
}

QString BrickPen::fitted(Face face, const QString& words, double width) const {
    return m_lettering.wrap(face, words, width, 1).value(0);
}

} // namespace sp::paper

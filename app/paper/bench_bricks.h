// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "app/paper/bench_pages.h"
#include "app/paper/brick.h"

#include <vector>

namespace sp::paper {

/// The parts of the bench sheet of one line, from top to bottom.
class BenchBricks : private BrickPen {
  public:
    BenchBricks(const BenchSheetInput& input, const quoting::BenchLine& line, const Lettering& lettering, double width)
        : BrickPen(lettering, width)
        , m_input(input)
        , m_line(line) {}

    std::vector<Brick> lay() const;

  private:
    Brick head() const;
    Brick quantities() const;
    Brick place(const quoting::BenchPlace& place) const;
    double picture(Brick& brick, const quoting::BenchPlace& place, double width) const;
    double colours(Brick& brick, double x, double y, const quoting::BenchPlace& place) const;
    double cuts(Brick& brick, double x, double y, const quoting::BenchPlace& place) const;
    Brick press() const;
    Brick stepHead() const;
    Brick step(const quoting::BenchStep& step) const;
    Brick ticks() const;
    Brick care() const;

    void tick(Brick& brick, double x, double y, double side) const;
    QString count(std::int64_t number) const { return m_input.formatter.count(units::Count::of(number)); }
    QString onWhat() const;
    QString stepWords(const quoting::BenchStep& step) const;
    QString cutWords(const quoting::BenchCut& cut) const;
    QString templateWords(const quoting::BenchPlace& place) const;

    const BenchSheetInput& m_input;
    const quoting::BenchLine& m_line;
};

} // namespace sp::paper

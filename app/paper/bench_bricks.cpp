// SPDX-License-Identifier: MIT
#include "app/paper/bench_bricks.h"

#include "app/paper/care_notes.h"
#include "app/paper/paper_colours.h"
#include "app/paper/plan_shape.h"
#include "core/scheduling/minutes.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace sp::paper {

using catalogue::MaterialKind;
using catalogue::Step;
using quoting::BenchCut;
using quoting::BenchLine;
using quoting::BenchPlace;
using quoting::BenchStep;

namespace {

constexpr double kLeftShare = 0.44;      ///< of the width, for the picture
constexpr double kBetween = 20;          ///< the two sides
constexpr double kTallestPicture = 160;  ///< points
constexpr double kTallestFrame = 96;     ///< where there is no picture
constexpr double kTickBox = 10;          ///< side of a box to tick
constexpr double kStepHeight = 19;       ///< room to write in
constexpr std::int64_t kMostTicks = 100; ///< beyond that they are counted, not ticked

QString benchWords(const char* source) { return QCoreApplication::translate("BenchSheet", source); }
QString markOf(std::int64_t mark) { return pieceMark(static_cast<std::size_t>(mark)); }

} // namespace

void BenchBricks::tick(Brick& brick, double x, double y, double side) const {
    brick.parts.boxes.push_back({{x, y, side, side}, kInk, {}, false});
}

QString BenchBricks::onWhat() const {
    return m_line.base.empty() ? benchWords(QT_TRANSLATE_NOOP("BenchSheet", "the customer’s own garment"))
                               : QString::fromStdString(m_line.base);
}

std::vector<Brick> BenchBricks::lay() const {
    std::vector<Brick> bricks{head(), quantities()};
    for (const auto& one : m_line.places) bricks.push_back(place(one));
    bricks.push_back(press());
    bricks.push_back(stepHead());
    for (const auto& one : m_line.steps) bricks.push_back(step(one));
    bricks.push_back(ticks());
    bricks.push_back(care());
    return bricks;
}

Brick BenchBricks::head() const {
    Brick brick;
    const auto& sheet = m_input.sheet;
    const auto wanted = sheet.wantedBy ? benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Wanted by %1"))
                                             .arg(m_input.formatter.dateWithDay(*sheet.wantedBy))
                                       : QString();
    const double right = m_lettering.width(Face::Title, wanted);
    const auto title = QStringLiteral("%1 × %2").arg(count(m_line.pieces), QString::fromStdString(m_line.title));
    const double y = paragraph(brick, 0, 0, Face::Shop, kInk, title, m_width - right - 16, 2);
    writeRight(brick, m_width, 2, Face::Title, kInk, wanted);
    QStringList facts{onWhat()};
    if (!sheet.customer.empty())
        facts << benchWords(QT_TRANSLATE_NOOP("BenchSheet", "for %1")).arg(QString::fromStdString(sheet.customer));
    if (!sheet.number.empty()) facts << QString::fromStdString(sheet.number);
    const auto choice =
        sheet.choices < 2
            ? QString()
            : benchWords(m_input.isChoiceTaken ? QT_TRANSLATE_NOOP("BenchSheet", "choice %1 of %2")
                                               : QT_TRANSLATE_NOOP("BenchSheet", "Choice %1 of %2: none is taken yet."))
                  .arg(count(sheet.choice + 1), count(sheet.choices));
    if (m_input.isChoiceTaken && !choice.isEmpty()) facts << choice;
    const auto plan = m_input.ready ? benchWords(QT_TRANSLATE_NOOP("BenchSheet", "on the plan for %1"))
                                          .arg(m_input.formatter.dateWithDay(*m_input.ready))
                                    : QString();
    const double rightPlan = m_lettering.width(Face::Small, plan);
    double below = paragraph(brick, 0, y + 2, Face::Small, kMutedInk, facts.join(QStringLiteral(" · ")),
                             m_width - rightPlan - 16, 2);
    writeRight(brick, m_width, y + 2, Face::Small, kMutedInk, plan);
    if (!m_input.isChoiceTaken && !choice.isEmpty()) // it must be seen from a step away
        below = paragraph(brick, 0, below + 2, Face::Strong, kInk, choice, m_width, 1);
    brick.height = below + 6;
    brick.parts.rules.push_back({{0, brick.height}, m_width, 1.4, kInk});
    return brick;
}

/// How many, and of which size; the spare is said where it is.
Brick BenchBricks::quantities() const {
    Brick brick;
    brick.gap = 10;
    const auto made = m_line.spares.pieces > 0
                          ? benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Lay out %1, hand over %2"))
                                .arg(count(m_line.made()), count(m_line.pieces))
                          : benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Lay out %1")).arg(count(m_line.made()));
    write(brick, 0, 0, Face::Strong, kInk, made);
    double x = m_lettering.width(Face::Strong, made) + 20;
    const double line = m_lettering.leading(Face::Strong);
    double y = 0;
    for (const auto& size : m_line.sizes) {
        const auto name = size.size.empty() ? benchWords(QT_TRANSLATE_NOOP("BenchSheet", "plain"))
                                            : QString::fromStdString(size.size);
        const auto number = count(size.count.value());
        const double wide = m_lettering.width(Face::Small, name) + m_lettering.width(Face::Strong, number) + 26;
        if (x + wide > m_width) {
            x = 0;
            y += line + 8;
        }
        brick.parts.boxes.push_back({{x, y - 2, wide - 6, line + 4}, kInk, {}, false});
        write(brick, x + 6, y + 1, Face::Small, kMutedInk, name);
        writeRight(brick, x + wide - 12, y, Face::Strong, kInk, number);
        x += wide;
    }
    y += line;
    if (m_line.spares.pieces > 0) {
        const auto said =
            m_line.spares.size.empty()
                ? benchWords(QT_TRANSLATE_NOOP("BenchSheet", "%1 to spare, for what may be spoiled."))
                      .arg(count(m_line.spares.pieces))
                : benchWords(QT_TRANSLATE_NOOP("BenchSheet", "%1 of size %2 to spare, for what may be spoiled."))
                      .arg(count(m_line.spares.pieces), QString::fromStdString(m_line.spares.size));
        y = paragraph(brick, 0, y + 4, Face::Small, kMutedInk, said, m_width, 2);
    }
    brick.height = y;
    return brick;
}

/// The picture with its size; an empty frame of the design's shape where there is none. Returns the y below.
double BenchBricks::picture(Brick& brick, const BenchPlace& place, double width) const {
    const auto mm = [](units::Length length) { return static_cast<double>(length.nanometres()) / 1e6; };
    const auto image = m_input.picture ? m_input.picture(place.design) : QImage();
    const double tallest = image.isNull() ? kTallestFrame : kTallestPicture;
    const double scale = std::min(width / mm(place.width), tallest / mm(place.height));
    const QSizeF size(mm(place.width) * scale, mm(place.height) * scale);
    const QRectF area(QPointF((width - size.width()) / 2, 0), size);
    if (image.isNull()) {
        brick.parts.boxes.push_back({area, kMutedInk, {}, true});
        const auto none =
            fitted(Face::Small, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "no drawing is kept")), size.width());
        write(brick, area.center().x() - m_lettering.width(Face::Small, none) / 2,
              area.center().y() - m_lettering.leading(Face::Small) / 2, Face::Small, kMutedInk, none);
    } else {
        brick.parts.pictures.push_back(
            {area, [image](QPainter& painter, const QRectF& box) {
                 painter.setRenderHint(QPainter::SmoothPixmapTransform);
                 const auto fits = QSizeF(image.size()).scaled(box.size(), Qt::KeepAspectRatio);
                 painter.drawImage(QRectF(box.center() - QPointF(fits.width(), fits.height()) / 2, fits), image);
             }});
    }
    QString words = m_input.formatter.size(place.width, place.height);
    if (!place.place.empty()) words = QStringLiteral("%1, %2").arg(QString::fromStdString(place.place), words);
    return paragraph(brick, 0, size.height() + 4, Face::Small, kInk, words, width, 2);
}

double BenchBricks::colours(Brick& brick, double x, double y, const BenchPlace& place) const {
    const double right = m_width;
    const double laid = right - 52;
    const double each = laid - 46;
    write(brick, x, y, Face::SmallStrong, kInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Brush in this order")));
    y += m_lettering.leading(Face::SmallStrong) + 2;
    write(brick, x, y, Face::Fine, kMutedInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "most stones first")));
    writeRight(brick, each, y, Face::Fine, kMutedInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "a piece")));
    writeRight(brick, laid, y, Face::Fine, kMutedInk,
               benchWords(QT_TRANSLATE_NOOP("BenchSheet", "for %1")).arg(count(m_line.made())));
    writeRight(brick, right, y, Face::Fine, kMutedInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "to fetch")));
    y += m_lettering.leading(Face::Fine) + 3;
    const double row = m_lettering.leading(Face::Body) + 6;
    auto mark = place.firstMark;
    for (const auto& colour : place.colours) {
        rule(brick, x, y, right - x);
        const double middle = y + row / 2;
        write(brick, x, y + 4, Face::Strong, kInk, markOf(mark++));
        brick.parts.stones.push_back({{x + 24, middle}, 5, QColor::fromRgb(colour.rgb)});
        write(brick, x + 34, y + 4, Face::Body, kInk,
              fitted(Face::Body, QString::fromStdString(colour.name), each - 32 - x - 34));
        figuresRight(brick, each, y + 4, Face::Body, kInk, count(colour.perPiece));
        figuresRight(brick, laid, y + 4, Face::Body, kInk, count(colour.laidOut));
        figuresRight(brick, right, y + 4, Face::Strong, kInk, count(colour.toFetch));
        y += row;
    }
    rule(brick, x, y, right - x);
    return y + 8;
}

QString BenchBricks::cutWords(const BenchCut& cut) const {
    const auto size = m_input.formatter.size(cut.piece.width, cut.piece.height);
    auto words = cut.form == catalogue::SheetForm::Roll
                     ? benchWords(QT_TRANSLATE_NOOP("BenchSheet", "%1 of %2, %3 off the roll"))
                           .arg(count(cut.use.cut), size, m_input.formatter.length(cut.use.rollLength))
                     : benchWords(QT_TRANSLATE_NOOP("BenchSheet", "%1 of %2, %3 a sheet: sheets to cut into: %4"))
                           .arg(count(cut.use.cut), size, count(cut.use.perSheet), count(cut.use.sheets));
    if (cut.kind == MaterialKind::Template)
        words += QStringLiteral(". ") + benchWords(QT_TRANSLATE_NOOP("BenchSheet", "One a colour, cut once."));
    else if (cut.kind == MaterialKind::Tape && cut.lifts > 1)
        words +=
            QStringLiteral(". ") +
            benchWords(QT_TRANSLATE_NOOP("BenchSheet", "It covers the widest colour; hinge it, lift %1 times with it."))
                .arg(count(cut.lifts));
    else if (cut.kind == MaterialKind::Tape)
        words += QStringLiteral(". ") +
                 benchWords(QT_TRANSLATE_NOOP("BenchSheet", "It covers the widest colour; hinge it."));
    return words;
}

/// Where the templates are that are not cut here; nothing where they are.
QString BenchBricks::templateWords(const BenchPlace& place) const {
    if (place.isOnWall) return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "The templates are on the wall."));
    if (!place.setFrom) return {};
    const auto& lines = m_input.sheet.lines;
    const auto& line = lines[place.setFrom->line];
    const auto& cut = line.places[place.setFrom->place];
    const auto spot = QString::fromStdString(cut.place.empty() ? cut.title : cut.place);
    if (&line == &m_line)
        return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "The templates are those cut above, for %1.")).arg(spot);
    return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "The templates are those cut on bench sheet %1 of %2, for %3."))
        .arg(count(static_cast<std::int64_t>(place.setFrom->line) + 1), count(static_cast<std::int64_t>(lines.size())),
             QString::fromStdString(line.title));
}

double BenchBricks::cuts(Brick& brick, double x, double y, const BenchPlace& place) const {
    write(brick, x, y, Face::SmallStrong, kInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Cut")));
    tick(brick, m_width - kTickBox, y + 2, kTickBox);
    writeRight(brick, m_width - kTickBox - 6, y, Face::Small, kMutedInk,
               benchWords(QT_TRANSLATE_NOOP("BenchSheet", "done")));
    y += m_lettering.leading(Face::SmallStrong) + 2;
    for (const auto& cut : place.cuts) {
        y = paragraph(brick, x, y, Face::Small, kInk, QString::fromStdString(cut.material), m_width - x, 1);
        y = paragraph(brick, x, y, Face::Small, kMutedInk, cutWords(cut), m_width - x, 3) + 3;
    }
    if (const auto words = templateWords(place); !words.isEmpty())
        y = paragraph(brick, x, y, Face::Small, kInk, words, m_width - x, 3);
    if (!m_line.isOnBacking)
        y = paragraph(brick, x, y, Face::Small, kMutedInk,
                      benchWords(QT_TRANSLATE_NOOP("BenchSheet", "No backing: it goes on %1.")).arg(onWhat()),
                      m_width - x, 2);
    return y;
}

Brick BenchBricks::place(const BenchPlace& place) const {
    Brick brick;
    brick.gap = 14;
    const double left = m_width * kLeftShare;
    const double below = picture(brick, place, left);
    const double x = left + kBetween;
    brick.height = std::max(below, cuts(brick, x, colours(brick, x, 0, place), place));
    return brick;
}

/// Large enough for a step away; what the makers say stands first.
Brick BenchBricks::press() const {
    Brick brick;
    brick.gap = 14;
    const auto& heat = m_input.sheet.press;
    const auto& formatter = m_input.formatter;
    const bool isKnown = heat.dwell.milliseconds() > 0;
    const auto maker = benchWords(QT_TRANSLATE_NOOP("BenchSheet", "as the makers say"));
    struct Fact {
        QString value;
        QString label;
    };
    std::vector<Fact> facts{
        {isKnown ? formatter.temperature(heat.temperature) : maker,
         benchWords(QT_TRANSLATE_NOOP("BenchSheet", "platen"))},
        {isKnown ? formatter.duration(heat.dwell) : maker, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "dwell"))},
        // On decal film: common practice, no source. On cloth the makers' data decide.
        {m_line.isOnBacking ? benchWords(QT_TRANSLATE_NOOP("BenchSheet", "medium")) : maker,
         benchWords(QT_TRANSLATE_NOOP("BenchSheet", "pressure, even all over"))}};
    if (heat.secondDwell.milliseconds() > 0)
        facts.push_back({formatter.duration(heat.secondDwell),
                         benchWords(QT_TRANSLATE_NOOP("BenchSheet", "second press, where an edge is loose"))});
    const double across = (m_width - 24) / static_cast<double>(facts.size());
    double y = 10;
    double below = y;
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const double x = 12 + across * static_cast<double>(i);
        const auto face = m_lettering.width(Face::Shop, facts[i].value) > across - 8 ? Face::Strong : Face::Shop;
        const double label = y + m_lettering.leading(Face::Shop) + 1;
        paragraph(brick, x, y, face, kInk, facts[i].value, across - 8, 1);
        below = std::max(below, paragraph(brick, x, label, Face::Fine, kMutedInk, facts[i].label, across - 8, 2));
    }
    y = paragraph(
        brick, 12, below + 4, Face::Small, kInk,
        benchWords(QT_TRANSLATE_NOOP("BenchSheet", "What the makers of stones, tape and cloth say comes first. Press "
                                                   "one and look at it before the rest.")),
        m_width - 24, 3);
    brick.height = y + 8;
    brick.parts.boxes.push_back({{0, 0, m_width, brick.height}, kInk, {}, false});
    return brick;
}

Brick BenchBricks::stepHead() const {
    Brick brick;
    brick.gap = 12;
    brick.keepWithNext = true;
    const auto title = benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Steps"));
    write(brick, 0, 0, Face::Strong, kInk, title);
    write(brick, m_lettering.width(Face::Strong, title) + 8, 2, Face::Small, kMutedInk,
          benchWords(QT_TRANSLATE_NOOP("BenchSheet", "%1 planned"))
              .arg(m_input.formatter.duration(units::Duration::fromMinutes(scheduling::minutesBegun(m_line.planned)))));
    const double y = 2;
    writeRight(brick, m_width * 0.60, y, Face::Fine, kMutedInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "planned")));
    write(brick, m_width * 0.64, y, Face::Fine, kMutedInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "who")));
    write(brick, m_width * 0.76, y, Face::Fine, kMutedInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "day")));
    writeRight(brick, m_width, y, Face::Fine, kMutedInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "minutes taken")));
    brick.height = m_lettering.leading(Face::Strong) + 2;
    brick.parts.rules.push_back({{0, brick.height}, m_width, 1, kInk});
    return brick;
}

QString BenchBricks::stepWords(const BenchStep& step) const {
    const auto mark = step.mark ? markOf(*step.mark) : QString();
    switch (step.step) {
    case Step::Art: return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Draw"));
    case Step::Cut: return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Cut; retract the blade before loading"));
    case Step::Weed: return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Weed"));
    case Step::SetUp: return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Set up"));
    case Step::Brush:
        return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Brush %1, small circles, no hole empty")).arg(mark);
    case Step::Lift: return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Lift %1, the tape hinged")).arg(mark);
    case Step::Press: return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Press; look along the edges of the stones"));
    case Step::Trim: return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Trim, check against the picture"));
    case Step::Pack: return benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Pack %1")).arg(count(m_line.pieces));
    }
    return {};
}

Brick BenchBricks::step(const BenchStep& step) const {
    Brick brick;
    const double y = (kStepHeight - m_lettering.leading(Face::Body)) / 2 + 2;
    tick(brick, 0, y + 1, kTickBox);
    write(brick, kTickBox + 10, y, Face::Body, kInk, fitted(Face::Body, stepWords(step), m_width * 0.48));
    if (!step.planned.isZero())
        writeRight(
            brick, m_width * 0.60, y, Face::Small, kMutedInk,
            benchWords(QT_TRANSLATE_NOOP("BenchSheet", "%1 min")).arg(count(scheduling::minutesBegun(step.planned))));
    for (const auto& [from, to] : {std::pair(0.64, 0.74), std::pair(0.76, 0.86), std::pair(0.88, 1.0)})
        rule(brick, m_width * from, kStepHeight - 1, m_width * (to - from));
    brick.height = kStepHeight;
    return brick;
}

/// A box for each piece, in fives.
Brick BenchBricks::ticks() const {
    Brick brick;
    brick.gap = 12;
    const auto pieces = m_line.made();
    write(brick, 0, 0, Face::Strong, kInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Pressed")));
    const double right = m_width - 70;
    const double from = 64;
    double x = from;
    double y = 2;
    for (std::int64_t i = 0; i < std::min(pieces, kMostTicks); ++i) {
        if (x + kTickBox > right) {
            x = from;
            y += kTickBox + 5;
        }
        tick(brick, x, y, kTickBox);
        x += kTickBox + (i % 5 == 4 ? 9 : 3);
    }
    if (pieces > kMostTicks) {
        y += kTickBox + 5;
        write(brick, from, y, Face::Small, kMutedInk,
              benchWords(QT_TRANSLATE_NOOP("BenchSheet", "and so on, up to %1")).arg(count(pieces)));
    }
    rule(brick, m_width - 60, 14, 60);
    writeRight(brick, m_width, 16, Face::Fine, kMutedInk, benchWords(QT_TRANSLATE_NOOP("BenchSheet", "spoiled")));
    brick.height = std::max(y + kTickBox, 16 + m_lettering.leading(Face::Fine)) + 4;
    return brick;
}

Brick BenchBricks::care() const {
    Brick brick;
    brick.gap = 10;
    rule(brick, 0, 0, m_width);
    const auto title = benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Take care"));
    write(brick, 0, 6, Face::SmallStrong, kInk, title);
    const double x = m_lettering.width(Face::SmallStrong, title) + 14;
    double y = 6;
    for (const auto& sentence :
         {benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Press and fresh work burn: gloves, a cover sheet, fresh air.")),
          benchWords(QT_TRANSLATE_NOOP("BenchSheet", "Blades cut: retract before loading.")),
          benchWords(QT_TRANSLATE_NOOP("BenchSheet",
                                       "Stones may hold lead, small parts choke: not for under three. Makers’ "
                                       "certificates, local rules and licensed practice decide."))})
        y = paragraph(brick, x, y, Face::Small, kInk, sentence, m_width - x, 3);
    brick.height = y;
    return brick;
}

} // namespace sp::paper

// SPDX-License-Identifier: MIT
#include "app/paper/care_card.h"

#include "app/paper/page_flow.h"
#include "app/paper/paper_colours.h"
#include "app/words/sheet_words.h"
#include "app/words/shown.h"

#include <QCoreApplication>
#include <QPainter>

#include <utility>

namespace sp::paper {

namespace {

constexpr double kInside = 26;      ///< from a cut, or the page's edge, to the words: what printers leave white
constexpr double kMarkFrom = 18;    ///< where a mark begins, from the page's edge
constexpr double kMark = 12;        ///< its length
constexpr int kNoLimit = 1'000'000; ///< lines of a sentence

QString say(const char* source) { return QCoreApplication::translate("CareCard", source); }

/// What stands on one card, in bricks of the width they have there.
class CardBricks : private BrickPen {
  public:
    using BrickPen::BrickPen;

    std::vector<Brick> lay(const PaperHead& head, const CareWords& words) const {
        std::vector<Brick> bricks;
        bricks.push_back(top(head));
        part(bricks, say(QT_TRANSLATE_NOOP("CareCard", "Care and safety")), words.care);
        part(bricks, say(QT_TRANSLATE_NOOP("CareCard", "To apply a decal")), words.applying);
        return bricks;
    }

  private:
    Brick top(const PaperHead& head) const {
        Brick brick;
        double y = paragraph(brick, 0, 0, Face::Strong, kInk, head.shopName, m_width, 2);
        if (!head.shopLines.isEmpty())
            y = paragraph(brick, 0, y, Face::Fine, kMutedInk, head.shopLines.join(QStringLiteral(" · ")), m_width, 2);
        if (!head.demo.isEmpty()) y = paragraph(brick, 0, y, Face::Fine, kJewel, head.demo, m_width, 1);
        brick.height = y;
        return brick;
    }

    void part(std::vector<Brick>& bricks, const QString& title, const QStringList& sentences) const {
        if (sentences.isEmpty()) return;
        Brick head;
        head.gap = 8;
        head.height = paragraph(head, 0, 0, Face::SmallStrong, kInk, title, m_width, 1);
        head.keepWithNext = true;
        bricks.push_back(std::move(head));
        for (const auto& sentence : sentences) {
            Brick brick;
            brick.gap = 2;
            write(brick, 0, 0, Face::Fine, kMutedInk, QStringLiteral("–"));
            brick.height = paragraph(brick, 9, 0, Face::Fine, kInk, sentence, m_width - 9, kNoLimit);
            bricks.push_back(std::move(brick));
        }
    }
};

double heightOf(const std::vector<Brick>& bricks) {
    double height = 0;
    for (const auto& brick : bricks) height += brick.gap + brick.height;
    return height;
}

/// A page cut into so many columns and rows.
struct Cut {
    int columns;
    int rows;
};

/// Short lines where a cut begins and ends, and a cross where two meet.
void drawMarks(QPainter& painter, QSizeF page, Cut cut) {
    QPen pen(kMutedInk, 0.5);
    painter.setPen(pen);
    const double x = page.width() / 2;
    const double y = page.height() / 2;
    if (cut.columns > 1) {
        painter.drawLine(QPointF(x, kMarkFrom), QPointF(x, kMarkFrom + kMark));
        painter.drawLine(QPointF(x, page.height() - kMarkFrom), QPointF(x, page.height() - kMarkFrom - kMark));
    }
    painter.drawLine(QPointF(kMarkFrom, y), QPointF(kMarkFrom + kMark, y));
    painter.drawLine(QPointF(page.width() - kMarkFrom, y), QPointF(page.width() - kMarkFrom - kMark, y));
    if (cut.columns == 1) return;
    painter.drawLine(QPointF(x - kMark / 2, y), QPointF(x + kMark / 2, y));
    painter.drawLine(QPointF(x, y - kMark / 2), QPointF(x, y + kMark / 2));
}

PlacedPage pageOf(const std::vector<Brick>& bricks, QSizeF size, Cut cut) {
    PlacedPage page;
    const QSizeF card(size.width() / cut.columns, size.height() / cut.rows);
    for (int row = 0; row < cut.rows; ++row)
        for (int column = 0; column < cut.columns; ++column) {
            double y = row * card.height() + kInside;
            for (const auto& brick : bricks) {
                y += brick.gap;
                moveInto(page, brick.parts, {column * card.width() + kInside, y});
                y += brick.height;
            }
        }
    page.pictures.push_back({QRectF(QPointF(0, 0), size),
                             [size, cut](QPainter& painter, const QRectF&) { drawMarks(painter, size, cut); }});
    return page;
}

} // namespace

CareWords careWords(const catalogue::Shop& shop, const catalogue::HeatPress& press, const desk::Formatter& formatter) {
    CareWords words;
    const words::SheetWords sheet;
    for (const auto& line : QString::fromStdString(shop.letterhead.care).split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        if (!sheet.isTaxCaution(line.trimmed().toStdString())) words.care << line.trimmed(); // that is about the bill
    // How hot-fix stones are applied: common practice, no source.
    words.applying << say(QT_TRANSLATE_NOOP("CareCard", "Press the empty garment for a few seconds, to drive out damp "
                                                        "and creases."))
                   << say(QT_TRANSLATE_NOOP("CareCard", "Peel off the backing, lay the decal with its film up, and "
                                                        "cover it."));
    const bool isKnown = press.dwell.milliseconds() > 0;
    words.applying << (isKnown
                           ? QCoreApplication::translate("CareCard", "Press at %1 for %2, evenly and firmly; try it on "
                                                                     "a hidden spot of delicate cloth first.")
                                 .arg(formatter.temperature(press.temperature), formatter.duration(press.dwell))
                           : say(QT_TRANSLATE_NOOP("CareCard", "Press evenly and firmly, as hot and as long as the "
                                                               "maker of the stones says.")));
    words.applying << say(QT_TRANSLATE_NOOP("CareCard", "Let it cool, then peel the film off flat. A stone that comes "
                                                        "along is pressed once more, from the inside."))
                   << say(QT_TRANSLATE_NOOP("CareCard",
                                            "A press burns: gloves, and nothing meltable under it. What the "
                                            "makers of cloth and stones say comes first."));
    return words;
}

Document careCards(const catalogue::Shop& shop, const CareWords& words) {
    const Lettering lettering;
    const auto title = say(QT_TRANSLATE_NOOP("CareCard", "Care card"));
    const auto head = headOf(OwnPaper{shop, title, {}, {}});
    const auto size = pageSize(shop.paper);
    Document document{title.toStdString(), {}};
    for (const auto cut : {Cut{2, 2}, Cut{1, 2}}) {
        const double width = size.width() / cut.columns - 2 * kInside;
        const auto bricks = CardBricks(lettering, width).lay(head, words);
        if (heightOf(bricks) > size.height() / cut.rows - 2 * kInside) continue;
        document.pages.push_back(pageOf(bricks, size, cut));
        return document;
    }
    const auto width = columnWidth(shop.paper);
    const PageFrame frame(head, lettering, width);
    document.pages = layOnPages(CardBricks(lettering, width).lay(head, words), frame, shop.paper);
    return document;
}

} // namespace sp::paper

// SPDX-License-Identifier: MIT
#include "app/paper/plan_pages.h"

#include "app/paper/care_notes.h"
#include "app/paper/cut_grid.h"
#include "app/paper/page_flow.h"
#include "app/paper/paper_colours.h"
#include "app/words/names.h"

#include <algorithm>

namespace sp::paper {

namespace {

constexpr double kSheetGap = 18;
constexpr double kTallestSheet = 250; ///< points
constexpr double kHeadHeight = 60;    ///< of a further page, amply
constexpr double kPointsPerMm = 72 / 25.4;

class PlanPages {
  public:
    explicit PlanPages(const PlanSheetInput& input)
        : m_input(input)
        , m_page(pageSize(input.shop->paper))
        , m_frame(headFor(input), m_lettering, width()) {}

    std::vector<PlacedPage> lay() {
        startPage();
        head();
        for (const auto& plan : m_input.plans) layPlan(plan);
        putFeet(m_pages, m_frame, m_input.shop->paper);
        return std::move(m_pages);
    }

  private:
    /// The bench knows where the shop is: its name is enough.
    static PaperHead headFor(const PlanSheetInput& input) {
        auto head = headOf(OwnPaper{*input.shop, PlanWords::tr("Cutting plan"), input.title, input.day});
        head.shopLines.clear();
        return head;
    }

    double width() const { return columnWidth(m_input.shop->paper); }
    double bottom() const { return m_page.height() - kBottomMargin; }
    PlacedPage& page() { return m_pages.back(); }

    void write(double x, double top, Face face, const QColor& colour, const QString& words) {
        page().texts.push_back({{x, top + m_lettering.ascent(face)}, words, face, colour, false});
    }
    void writeRight(double right, double top, Face face, const QColor& colour, const QString& words) {
        write(right - m_lettering.width(face, words), top, face, colour, words);
    }
    /// One line, cut off where it is too long.
    QString fitted(Face face, const QString& words, double room) const {
        return m_lettering.wrap(face, words, room, 1).value(0);
    }
    void paragraph(Face face, const QColor& colour, const QString& words) {
        for (const auto& line : m_lettering.wrap(face, words, width(), 4)) {
            write(kSideMargin, m_y, face, colour, line);
            m_y += m_lettering.leading(face);
        }
    }

    void put(const Brick& brick) {
        moveInto(page(), brick.parts, {kSideMargin, m_y});
        m_y += brick.height;
    }

    void startPage() {
        m_pages.emplace_back();
        m_y = kTopMargin;
        if (m_pages.size() > 1) {
            put(m_frame.pageHead());
            m_y += 12;
        }
        m_top = m_y;
    }
    /// Breaks the page unless so much is left on it; what goes on there says of which material it is.
    void need(double height) {
        if (m_y + height <= bottom() || m_y <= m_top) return;
        startPage();
        if (m_goesOn.isEmpty()) return;
        write(kSideMargin, m_y, Face::SmallStrong, kInk, fitted(Face::SmallStrong, m_goesOn, width()));
        m_y += m_lettering.leading(Face::SmallStrong) + 4;
    }

    void head() {
        put(m_frame.letterhead());
        m_y += 12;
        put(m_frame.addressee());
        m_y += 8;
        paragraph(Face::Small, kInk, bladeCaution());
        paragraph(
            Face::Small, kMutedInk,
            PlanWords::tr("Drawn to scale. A filled corner is a piece turned a quarter; dashes are what is left."));
        if (!m_input.note.isEmpty()) paragraph(Face::Small, kInk, m_input.note);
        m_y += 6;
        page().rules.push_back({{kSideMargin, m_y}, width(), 0.6, kHairline});
        m_y += 12;
    }

    void layPlan(const planning::CutPlan& plan) {
        const auto& words = m_input.words;
        const double line = m_lettering.leading(Face::Small);
        const auto rows = static_cast<double>(plan.list.pieces.size());
        const double scale = scaleOf(plan);
        // A material begins where its words and its first sheet stand together, if a page holds them at all.
        m_goesOn.clear();
        need(std::min(60 + rows * line + planSize(plan).height() * scale + 24, bottom() - kTopMargin - kHeadHeight));
        m_goesOn = PlanWords::tr("%1, continued").arg(words.material(plan.list.material));
        write(kSideMargin, m_y, Face::Strong, kInk, fitted(Face::Strong, words.material(plan.list.material), width()));
        m_y += m_lettering.leading(Face::Strong);
        paragraph(Face::Body, kInk, words.verdict(plan));
        paragraph(Face::Small, kMutedInk, words.left(plan));
        m_y += 6;
        legend(plan);
        sheets(plan, scale);
        measures(plan);
        m_y += 10;
    }

    /// Where each piece lies, in grids where they do.
    void measures(const planning::CutPlan& plan) {
        std::int64_t first = 1;
        for (const auto& sheet : plan.sheets) {
            need(2 * m_lettering.leading(Face::Fine));
            write(kSideMargin, m_y, Face::Fine, kInk, m_input.words.sheetName(plan, sheet, first));
            m_y += m_lettering.leading(Face::Fine);
            for (const auto& grid : cutGrids(plan, sheet)) {
                need(m_lettering.leading(Face::Fine));
                paragraph(Face::Fine, kMutedInk, inWords(grid, plan.list, m_input.words));
            }
            first += sheet.count;
        }
    }

    void legend(const planning::CutPlan& plan) {
        const double right = kSideMargin + width();
        for (std::size_t i = 0; i < plan.list.pieces.size(); ++i) {
            need(m_lettering.leading(Face::Small));
            const auto& piece = plan.list.pieces[i];
            write(kSideMargin, m_y, Face::SmallStrong, kInk, pieceMark(i));
            write(kSideMargin + 24, m_y, Face::Small, kInk,
                  fitted(Face::Small, QString::fromStdString(piece.name), width() - 220));
            writeRight(right - 70, m_y, Face::Small, kInk, m_input.words.size(piece.size));
            writeRight(right, m_y, Face::Small, kMutedInk,
                       words::counted(words::Thing::Piece, piece.count, m_input.words.count(piece.count)));
            m_y += m_lettering.leading(Face::Small);
        }
        m_y += 8;
    }

    /// Two sheets beside each other; a roll as wide as the page. Never larger than it is.
    double scaleOf(const planning::CutPlan& plan) const {
        const QSizeF size = planSize(plan);
        const bool roll = plan.list.material.sheet.form == catalogue::SheetForm::Roll;
        const double widest = roll ? width() : (width() - kSheetGap) / 2;
        return std::min({widest / size.width(), kTallestSheet / size.height(), kPointsPerMm});
    }

    void sheets(const planning::CutPlan& plan, double scale) {
        const QSizeF size = planSize(plan) * scale;
        const double high = size.height() + m_lettering.leading(Face::Fine) + 4;
        std::int64_t first = 1;
        double x = kSideMargin;
        bool isRowOpen = false;
        for (const auto& sheet : plan.sheets) {
            if (isRowOpen && x + size.width() > kSideMargin + width() + 0.5) {
                m_y += high + 10;
                x = kSideMargin;
                isRowOpen = false;
            }
            if (!isRowOpen) need(high);
            isRowOpen = true;
            draw(plan, sheet, shapeOf(plan, sheet, {x, m_y}, scale));
            write(x, m_y + size.height() + 3, Face::Fine, kMutedInk, caption(plan, sheet, first));
            first += sheet.count;
            x += size.width() + kSheetGap;
        }
        m_y += high + 4;
    }

    QString caption(const planning::CutPlan& plan, const planning::CutSheet& sheet, std::int64_t first) const {
        const auto& traits = plan.list.material.sheet;
        const bool roll = traits.form == catalogue::SheetForm::Roll;
        return m_input.words.sheetName(plan, sheet, first) + QStringLiteral(" · ") +
               m_input.words.size({traits.width, roll ? plan.length : traits.height});
    }

    void draw(const planning::CutPlan& plan, const planning::CutSheet& sheet, const PlanShape& shape) {
        page().boxes.push_back({shape.sheet, kInk, {}, false});
        if (!shape.left.isNull() && shape.left.width() > 8 && shape.left.height() > 8) {
            page().boxes.push_back({shape.left.adjusted(2, 2, -2, -2), kMutedInk, {}, true});
            centred(shape.left, Face::Fine, kMutedInk, PlanWords::tr("%1 left").arg(m_input.words.size(sheet.left)), 0);
        }
        for (const auto& part : shape.parts) {
            page().boxes.push_back({part.box, kInk, kSoftJewel, false});
            if (part.turned) {
                const double fold = std::min({part.box.width() / 3, part.box.height() / 3, 6.0});
                page().corners.push_back({part.box.topRight(), fold, kInk});
            }
            const auto& piece = plan.list.pieces[part.piece];
            const double line = m_lettering.leading(Face::Fine);
            const auto size = m_input.words.size(piece.size);
            const bool both =
                part.box.height() > 2 * line + 2 && m_lettering.width(Face::Fine, size) + 6 < part.box.width();
            centred(part.box, Face::SmallStrong, kInk, pieceMark(part.piece), both ? -line / 2 : 0);
            if (both) centred(part.box, Face::Fine, kMutedInk, size, line / 2 + 1);
        }
    }

    /// In the middle of the box, `down` points below it; nothing where it does not fit.
    void centred(const QRectF& box, Face face, const QColor& colour, const QString& words, double down) {
        const double wide = m_lettering.width(face, words);
        if (wide + 4 > box.width() || m_lettering.leading(face) > box.height() + 2) return;
        write(box.center().x() - wide / 2, box.center().y() - m_lettering.leading(face) / 2 + down, face, colour,
              words);
    }

    const PlanSheetInput& m_input;
    QSizeF m_page;
    Lettering m_lettering;
    PageFrame m_frame;
    std::vector<PlacedPage> m_pages;
    double m_y = 0;
    double m_top = 0; ///< where the flow of this page begins
    QString m_goesOn; ///< what a page that begins inside a material says first
};

} // namespace

Document planDocument(const PlanSheetInput& input) {
    //: The name of a document.
    return {PlanWords::tr("Cutting plan, %1").arg(input.title).toStdString(), PlanPages(input).lay()};
}

} // namespace sp::paper

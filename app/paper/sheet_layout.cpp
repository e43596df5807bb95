// SPDX-License-Identifier: MIT
#include "app/paper/sheet_layout.h"

#include "app/paper/sheet_bricks.h"

#include <utility>

namespace sp::paper {

namespace {

constexpr double kSideMargin = 54;
constexpr double kTopMargin = 44;
constexpr double kBottomMargin = 56;
constexpr double kFootAbove = 44; ///< from the page's lower edge to the top of its foot

class Pages {
  public:
    Pages(const quoting::SheetContent& sheet, catalogue::Paper paper, const Lettering& lettering)
        : m_size(pageSize(paper))
        , m_labels(sheet.labels)
        , m_maker(sheet, lettering, m_size.width() - 2 * kSideMargin)
        , m_carriedHeight(needOf(m_maker.carried({}, {}))) {}

    std::vector<PlacedPage> lay();

  private:
    static double needOf(const Brick& brick) { return brick.gap + brick.height; }
    double bottom() const { return m_size.height() - kBottomMargin; }
    /// Whether the bricks from `first` on that stand together fit below m_y.
    bool fits(std::size_t first) const;
    void put(const Brick& brick);
    void breakPage(const Brick* above, const Brick& next);

    QSizeF m_size;
    const quoting::SheetLabels& m_labels;
    BrickMaker m_maker;
    double m_carriedHeight;
    std::vector<Brick> m_bricks;
    std::vector<PlacedPage> m_pages;
    double m_y = 0;
    double m_head = 0; ///< where the flow of this page begins
};

void moveInto(PlacedPage& page, const PlacedPage& parts, QPointF by) {
    for (auto tint : parts.tints) {
        tint.area.translate(by);
        page.tints.push_back(std::move(tint));
    }
    for (auto rule : parts.rules) {
        rule.from += by;
        page.rules.push_back(std::move(rule));
    }
    for (auto stone : parts.stones) {
        stone.centre += by;
        page.stones.push_back(std::move(stone));
    }
    for (auto text : parts.texts) {
        text.baseline += by;
        page.texts.push_back(std::move(text));
    }
    for (auto box : parts.boxes) {
        box.area.translate(by);
        page.boxes.push_back(std::move(box));
    }
}

bool Pages::fits(std::size_t first) const {
    double need = 0;
    for (std::size_t i = first; i < m_bricks.size(); ++i) {
        need += needOf(m_bricks[i]);
        const bool isLast = !m_bricks[i].keepWithNext || i + 1 == m_bricks.size();
        if (!isLast) continue;
        if (m_bricks[i].isAmount) need += m_carriedHeight;
        break;
    }
    if (m_y + need <= bottom()) return true;
    // What is too tall for any page is broken between its bricks.
    if (kTopMargin + 80 + need <= bottom()) return false;
    const auto& brick = m_bricks[first];
    return m_y + needOf(brick) + (brick.isAmount ? m_carriedHeight : 0) <= bottom();
}

void Pages::put(const Brick& brick) {
    if (m_y > m_head) m_y += brick.gap;
    moveInto(m_pages.back(), brick.parts, {kSideMargin, m_y});
    m_y += brick.height;
}

void Pages::breakPage(const Brick* above, const Brick& next) {
    const bool carries = above && above->isAmount && next.needsBroughtForward;
    if (carries) put(m_maker.carried(QString::fromStdString(m_labels.carriedForward), above->running));
    m_pages.emplace_back();
    m_head = 0;
    m_y = kTopMargin;
    put(m_maker.pageHead());
    if (carries) {
        put(m_maker.tableHead());
        auto brought = m_maker.carried(QString::fromStdString(m_labels.broughtForward), above->running);
        brought.parts.rules.clear();
        brought.gap = 0;
        put(brought);
        return;
    }
    m_y += 16;
    m_head = m_y;
}

std::vector<PlacedPage> Pages::lay() {
    m_bricks = m_maker.all();
    m_pages.emplace_back();
    m_y = m_head = kTopMargin;
    for (std::size_t i = 0; i < m_bricks.size(); ++i) {
        const bool isKept = i > 0 && m_bricks[i - 1].keepWithNext;
        const bool mayStay = m_y <= m_head || fits(i);
        // Inside a group that was found to fit there is nothing to ask; one too tall is asked brick by brick.
        if (!mayStay && (!isKept || m_bricks[i].isAmount)) breakPage(i > 0 ? &m_bricks[i - 1] : nullptr, m_bricks[i]);
        put(m_bricks[i]);
    }
    const int pages = static_cast<int>(m_pages.size());
    for (int page = 1; page <= pages; ++page)
        moveInto(m_pages[static_cast<std::size_t>(page - 1)], m_maker.pageFoot(page, pages).parts,
                 {kSideMargin, m_size.height() - kFootAbove});
    return std::move(m_pages);
}

} // namespace

QSizeF pageSize(catalogue::Paper paper) {
    return paper == catalogue::Paper::Letter ? QSizeF(612, 792) : QSizeF(595, 842);
}

std::vector<PlacedPage> layOut(const quoting::SheetContent& sheet, catalogue::Paper paper, const Lettering& lettering) {
    return Pages(sheet, paper, lettering).lay();
}

} // namespace sp::paper

// SPDX-License-Identifier: MIT
#include "app/paper/page_flow.h"

#include <utility>

namespace sp::paper {

namespace {

constexpr double kBelowHead = 16;

class PageFlow {
  public:
    PageFlow(const PageFrame& frame, catalogue::Paper paper, const std::optional<CarriedAmounts>& carried)
        : m_size(pageSize(paper))
        , m_frame(frame)
        , m_carried(carried)
        , m_carriedHeight(carried ? needOf(carried->row({}, {})) : 0) {}

    std::vector<PlacedPage> lay(const std::vector<Brick>& bricks);

  private:
    static double needOf(const Brick& brick) { return brick.gap + brick.height; }
    double bottom() const { return m_size.height() - kBottomMargin; }
    /// Whether the bricks from `first` on that stand together fit below m_y.
    bool fits(const std::vector<Brick>& bricks, std::size_t first) const;
    void put(const Brick& brick);
    void breakPage(const Brick* above, const Brick& next);

    QSizeF m_size;
    const PageFrame& m_frame;
    const std::optional<CarriedAmounts>& m_carried;
    double m_carriedHeight;
    std::vector<PlacedPage> m_pages;
    double m_y = 0;
    double m_head = 0; ///< where the flow of this page begins
};

bool PageFlow::fits(const std::vector<Brick>& bricks, std::size_t first) const {
    double need = 0;
    for (std::size_t i = first; i < bricks.size(); ++i) {
        need += needOf(bricks[i]);
        const bool isLast = !bricks[i].keepWithNext || i + 1 == bricks.size();
        if (!isLast) continue;
        if (bricks[i].isAmount) need += m_carriedHeight;
        break;
    }
    if (m_y + need <= bottom()) return true;
    // What is too tall for any page is broken between its bricks.
    if (kTopMargin + 80 + need <= bottom()) return false;
    const auto& brick = bricks[first];
    return m_y + needOf(brick) + (brick.isAmount ? m_carriedHeight : 0) <= bottom();
}

void PageFlow::put(const Brick& brick) {
    if (m_y > m_head) m_y += brick.gap;
    moveInto(m_pages.back(), brick.parts, {kSideMargin, m_y});
    m_y += brick.height;
}

void PageFlow::breakPage(const Brick* above, const Brick& next) {
    const bool carries = m_carried && above && above->isAmount && next.needsBroughtForward;
    if (carries) put(m_carried->row(m_carried->forward, above->running));
    m_pages.emplace_back();
    m_head = 0;
    m_y = kTopMargin;
    put(m_frame.pageHead());
    if (carries) {
        put(m_carried->tableHead);
        auto brought = m_carried->row(m_carried->brought, above->running);
        brought.parts.rules.clear();
        brought.gap = 0;
        put(brought);
        return;
    }
    m_y += kBelowHead;
    m_head = m_y;
    if (next.headAgain) put(*next.headAgain);
}

std::vector<PlacedPage> PageFlow::lay(const std::vector<Brick>& bricks) {
    m_pages.emplace_back();
    m_y = m_head = kTopMargin;
    for (std::size_t i = 0; i < bricks.size(); ++i) {
        const bool isKept = i > 0 && bricks[i - 1].keepWithNext;
        const bool mayStay = m_y <= m_head || fits(bricks, i);
        // Inside a group that was found to fit there is nothing to ask; one too tall is asked brick by brick.
        if (!mayStay && (!isKept || bricks[i].isAmount)) breakPage(i > 0 ? &bricks[i - 1] : nullptr, bricks[i]);
        put(bricks[i]);
    }
    return std::move(m_pages);
}

} // namespace

void moveInto(PlacedPage& page, const PlacedPage& parts, QPointF by) {
    const auto move = [](const auto& from, auto& to, const auto& shift) {
        for (auto part : from) {
            shift(part);
            to.push_back(std::move(part));
        }
    };
    move(parts.tints, page.tints, [&](PlacedTint& tint) { tint.area.translate(by); });
    move(parts.rules, page.rules, [&](PlacedRule& rule) { rule.from += by; });
    move(parts.stones, page.stones, [&](PlacedStone& stone) { stone.centre += by; });
    move(parts.texts, page.texts, [&](PlacedText& text) { text.baseline += by; });
    move(parts.boxes, page.boxes, [&](PlacedBox& box) { box.area.translate(by); });
    move(parts.corners, page.corners, [&](PlacedCorner& corner) { corner.at += by; });
    move(parts.pictures, page.pictures, [&](PlacedPicture& picture) { picture.area.translate(by); });
}

void putFeet(std::vector<PlacedPage>& pages, const PageFrame& frame, catalogue::Paper paper) {
    const int count = static_cast<int>(pages.size());
    for (int page = 1; page <= count; ++page)
        moveInto(pages[static_cast<std::size_t>(page - 1)], frame.pageFoot(page, count).parts,
                 {kSideMargin, pageSize(paper).height() - kFootAbove});
}

std::vector<PlacedPage> layOnPages(const std::vector<Brick>& bricks, const PageFrame& frame, catalogue::Paper paper,
                                   const std::optional<CarriedAmounts>& carried) {
    auto pages = PageFlow(frame, paper, carried).lay(bricks);
    putFeet(pages, frame, paper);
    return pages;
}

} // namespace sp::paper

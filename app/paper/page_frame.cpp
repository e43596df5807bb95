// SPDX-License-Identifier: MIT
#include "app/paper/page_frame.h"

#include "app/paper/paper_colours.h"
#include "app/words/sheet_words.h"
#include "app/words/shown.h"
#include "app/words/translations.h"

#include <QCoreApplication>

#include <algorithm>

namespace sp::paper {

namespace {

constexpr int kMaxAddressLines = 12;
constexpr double kHalf = 0.56; ///< share of the width for the shop and for whom it is

QStringList shownLines(const std::vector<std::string>& lines) {
    QStringList shown;
    for (const auto& line : lines) shown << words::shown(line);
    return shown;
}

} // namespace

double columnWidth(catalogue::Paper paper) { return pageSize(paper).width() - 2 * kSideMargin; }

PaperHead headOf(const quoting::SheetContent& sheet) {
    using words::shown;
    const words::LanguageScope language({QString::fromStdString(sheet.language)});
    PaperHead head{shown(sheet.shopName),
                   shownLines(sheet.shopLines),
                   shown(sheet.title),
                   shown(sheet.demo),
                   {},
                   shown(sheet.labels.customer),
                   sheet.customer.isErased ? QCoreApplication::translate("PageFrame", "customer removed")
                                           : shown(sheet.customer.name),
                   shownLines(sheet.customer.lines),
                   shown(sheet.labels.customerAgain),
                   shown(sheet.labels.page)};
    for (const auto& fact : sheet.facts) head.facts.push_back({shown(fact.label), shown(fact.value)});
    return head;
}

PaperHead headOf(const OwnPaper& paper) {
    using words::shown;
    const words::SheetWords words;
    const auto labels = words.labels();
    const auto& letterhead = paper.shop.letterhead;
    PaperHead head{shown(letterhead.name),
                   shown(letterhead.lines).split(QLatin1Char('\n'), Qt::SkipEmptyParts),
                   paper.title,
                   paper.shop.isDemo ? shown(words.demo()) : QString(),
                   {},
                   shown(labels.customer),
                   paper.forWhat,
                   {},
                   shown(labels.customerAgain),
                   shown(labels.page)};
    head.facts.push_back({QCoreApplication::translate("PageFrame", "Date"), paper.day});
    return head;
}

PageFrame::PageFrame(PaperHead head, const Lettering& lettering, double width)
    : BrickPen(lettering, width)
    , m_head(std::move(head)) {}

Brick PageFrame::letterhead() const {
    Brick brick;
    const double half = m_width * kHalf;
    double left = paragraph(brick, 0, 0, Face::Shop, kInk, m_head.shopName, half, 3) + 2;
    for (const auto& line : m_head.shopLines.mid(0, kMaxAddressLines))
        left = paragraph(brick, 0, left, Face::Small, kMutedInk, line, half, 2);
    double right = 4;
    writeRight(brick, m_width, right, Face::Title, kInk, m_head.title);
    right += m_lettering.leading(Face::Title) + 2;
    if (!m_head.demo.isEmpty()) {
        writeRight(brick, m_width, right, Face::SmallStrong, kJewel, m_head.demo);
        right += m_lettering.leading(Face::SmallStrong);
    }
    brick.height = std::max(left, right) + 12;
    rule(brick, 0, brick.height, m_width);
    return brick;
}

Brick PageFrame::addressee() const {
    Brick brick;
    brick.gap = 12;
    const double half = m_width * kHalf;
    double left = 0;
    if (!m_head.forWhom.isEmpty()) {
        write(brick, 0, 0, Face::Fine, kMutedInk, m_head.forLabel);
        left = paragraph(brick, 0, m_lettering.leading(Face::Fine) + 2, Face::Strong, kInk, m_head.forWhom, half, 3);
        for (const auto& line : m_head.forLines.mid(0, kMaxAddressLines))
            left = paragraph(brick, 0, left, Face::Small, kMutedInk, line, half, 2);
    }
    double right = m_head.forWhom.isEmpty() ? 0 : m_lettering.leading(Face::Fine) + 2;
    for (const auto& fact : m_head.facts) {
        write(brick, m_width * 0.69, right, Face::Small, kMutedInk, fact.label);
        figuresRight(brick, m_width, right, Face::Small, kInk, fact.value);
        right += m_lettering.leading(Face::Small) + 2;
    }
    brick.height = std::max(left, right);
    return brick;
}

Brick PageFrame::pageHead() const {
    Brick brick;
    const QString shop = fitted(Face::SmallStrong, m_head.shopName, m_width * 0.44);
    write(brick, 0, 0, Face::SmallStrong, kInk, shop);
    if (!m_head.forWhom.isEmpty()) {
        const double x = m_lettering.width(Face::SmallStrong, shop) + 12;
        write(brick, x, 0, Face::Small, kMutedInk,
              fitted(Face::Small, m_head.forAgain.arg(m_head.forWhom), m_width * 0.74 - x));
    }
    writeRight(brick, m_width, 0, Face::SmallStrong, kInk, m_head.title);
    brick.height = m_lettering.leading(Face::Small) + 6;
    rule(brick, 0, brick.height, m_width);
    return brick;
}

Brick PageFrame::pageFoot(int page, int pages) const {
    Brick brick;
    rule(brick, 0, 0, m_width);
    write(brick, 0, 6, Face::Fine, kMutedInk, m_head.title);
    if (!m_head.demo.isEmpty()) {
        const double width = m_lettering.width(Face::Fine, m_head.demo);
        write(brick, (m_width - width) / 2, 6, Face::Fine, kMutedInk, m_head.demo);
    }
    writeRight(brick, m_width, 6, Face::Fine, kMutedInk, m_head.page.arg(page).arg(pages));
    brick.height = 6 + m_lettering.leading(Face::Fine);
    return brick;
}

} // namespace sp::paper

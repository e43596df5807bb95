// SPDX-License-Identifier: MIT
#include "app/counter/slip_lines.h"

#include "app/desk/figures.h"
#include "app/desk/palette.h"

#include <QAccessible>
#include <QEvent>
#include <QPainter>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTextLayout>

#include <algorithm>
#include <utility>

namespace sp::counter {

namespace {

using desk::Role;
using desk::TextSize;
using desk::Weight;

constexpr int kSide = 24;
constexpr int kPiecesWidth = 34; ///< at least
constexpr int kAmountWidth = 84; ///< at least
constexpr int kGap = 10;         ///< between a figure and the words beside it
constexpr int kEachWidth = 66;
constexpr int kPictureSide = 38;  ///< two rows of a line
constexpr int kMostPictured = 30; ///< beyond so many lines pictures help nobody

QString text(const std::string& words) { return QString::fromStdString(words); }

/// The text in lines no wider than `width`, in pixels; a word wider than that is broken.
QStringList wrapped(const QString& words, const QFont& font, int width) {
    if (QFontMetrics(font).horizontalAdvance(words) <= width) return {words};
    QTextLayout layout(words, font);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    QStringList lines;
    layout.beginLayout();
    for (auto line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(std::max(width, 1));
        lines << words.mid(line.textStart(), line.textLength()).trimmed();
    }
    layout.endLayout();
    return lines;
}

} // namespace

SlipLines::SlipLines(LinePicture pictures, QWidget* parent)
    : QAbstractScrollArea(parent)
    , m_pictures(std::move(pictures)) {
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(tr("The slip, as the customer gets it"));
    verticalScrollBar()->setSingleStep(24);
}

void SlipLines::setContent(const quoting::SheetContent* content, int current) {
    const bool moved = current != m_current;
    m_content = content;
    m_current = current;
    layRows();
    if (moved) showCurrent();
    if (QAccessible::isActive()) describe();
    viewport()->update();
}

void SlipLines::layAnew() {
    layRows();
    viewport()->update();
}

void SlipLines::describe() {
    QStringList spoken;
    for (const auto& row : m_rows) {
        const QStringList parts{row.left.trimmed(), row.text, row.each, row.amount};
        const auto line = QStringList(parts).filter(QRegularExpression(QStringLiteral("."))).join(QLatin1Char(' '));
        if (!line.isEmpty()) spoken << line;
    }
    setAccessibleDescription(spoken.join(QLatin1Char('\n')));
}

void SlipLines::addRow(Row row, int height, int line) {
    row.top = m_height;
    row.lead = desk::scaled(height);
    row.line = line;
    // A keystroke changes one row; measuring the text of all rows again would take most of the time.
    const auto at = m_rows.size();
    if (at < m_before.size() && isLaidLike(m_before[at], row)) {
        row.words = std::move(m_before[at].words);
        row.height = row.lead + m_before[at].height - m_before[at].lead;
    } else {
        const auto font = fontOf(row);
        row.words = wrapped(row.text, font, wordsOf(row, 0).width());
        row.height = row.lead + (static_cast<int>(row.words.size()) - 1) * QFontMetrics(font).lineSpacing();
    }
    m_height += row.height;
    m_rows.push_back(std::move(row));
}

bool SlipLines::isLaidLike(const Row& before, const Row& now) {
    const bool sameRoom =
        before.kind == Row::Kind::Title ? before.amount == now.amount : before.amount.isEmpty() == now.amount.isEmpty();
    return before.kind == now.kind && before.text == now.text && sameRoom &&
           before.left.isEmpty() == now.left.isEmpty() && before.each.isEmpty() == now.each.isEmpty();
}

bool SlipLines::fitFigures() {
    int pieces = desk::scaled(kPiecesWidth);
    int amount = desk::scaled(kAmountWidth);
    const QFontMetrics strong(desk::textFont(TextSize::Body, Weight::Strong));
    const QFontMetricsF plain(desk::textFont(TextSize::Body));
    const auto fit = [&](const std::string& figure) {
        amount = std::max(amount, static_cast<int>(desk::figuresWidth(plain, text(figure))) + desk::scaled(kGap));
    };
    int picture = 0;
    if (m_content) {
        const auto lines = static_cast<int>(m_content->lines.size());
        const int side = desk::scaled(kPictureSide);
        for (int i = 0; i < lines && lines <= kMostPictured && picture == 0; ++i)
            if (!m_pictures(i, {side, side}, desk::colour(Role::Paper), devicePixelRatioF()).isNull())
                picture = side + desk::scaled(kGap);
        for (const auto& line : m_content->lines) {
            pieces = std::max(pieces, strong.horizontalAdvance(text(line.pieces)) + desk::scaled(kGap));
            fit(line.amount.text);
            for (const auto& extra : line.extras) fit(extra.amount.text);
        }
        for (const auto& row : m_content->adjustments) fit(row.amount.text);
    }
    const bool isOther = pieces != m_piecesWidth || amount != m_amountWidth || picture != m_pictureWidth;
    m_pictureWidth = picture;
    m_piecesWidth = pieces;
    m_amountWidth = amount;
    return isOther;
}

void SlipLines::layRows() {
    const int width = viewport()->width();
    const bool isOther = fitFigures() || width != m_laidWidth;
    m_before = isOther ? std::vector<Row>() : std::exchange(m_rows, {});
    m_laidWidth = width;
    m_rows.clear();
    m_height = desk::scaled(14);
    if (m_content) {
        addRow({Row::Kind::Title, 0, 0, -1, {}, text(m_content->shopName), {}, text(m_content->title)}, 32, -1);
        QStringList facts;
        for (const auto& fact : m_content->facts) facts << text(fact.label + " " + fact.value);
        addRow({Row::Kind::Detail, 0, 0, -1, {}, facts.join(QStringLiteral(" · ")), {}, {}}, 18, -1);
        if (const auto& name = m_content->customer.name; !name.empty())
            addRow({Row::Kind::Detail, 0, 0, -1, {}, text(m_content->labels.customerAgain).arg(text(name)), {}, {}}, 18,
                   -1);
        addRow({Row::Kind::Rule, 0, 0, -1, {}, {}, {}, {}}, 18, -1);
        for (std::size_t i = 0; i < m_content->lines.size(); ++i) {
            const auto& line = m_content->lines[i];
            const int at = static_cast<int>(i);
            const int top = m_height;
            addRow({Row::Kind::Main, 0, 0, -1, text(line.pieces), text(line.title), text(line.each),
                    text(line.amount.text)},
                   22, at);
            if (!line.detail.empty())
                addRow({Row::Kind::Detail, 0, 0, -1, QStringLiteral(" "), text(line.detail), {}, {}}, 18, at);
            for (const auto& extra : line.extras)
                addRow(
                    {Row::Kind::Plain, 0, 0, -1, QStringLiteral(" "), text(extra.label), {}, text(extra.amount.text)},
                    20, at);
            if (!line.note.empty())
                addRow({Row::Kind::Detail, 0, 0, -1, QStringLiteral(" "), text(line.note), {}, {}}, 18, at);
            if (m_pictureWidth > 0) m_height = std::max(m_height, top + desk::scaled(kPictureSide + 2));
            m_height += desk::scaled(6);
        }
        for (const auto& row : m_content->adjustments)
            addRow({Row::Kind::Plain, 0, 0, -1, QStringLiteral(" "), text(row.label), {}, text(row.amount.text)}, 24,
                   -1);
    }
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setRange(0, std::max(0, m_height - viewport()->height()));
}

void SlipLines::showCurrent() {
    if (m_current < 0) return;
    int top = -1;
    int bottom = -1;
    for (const auto& row : m_rows) {
        if (row.line != m_current) continue;
        if (top < 0) top = row.top;
        bottom = row.top + row.height;
    }
    if (top < 0) return;
    auto* bar = verticalScrollBar();
    if (bottom > bar->value() + viewport()->height()) bar->setValue(bottom - viewport()->height() + desk::scaled(8));
    if (top < bar->value()) bar->setValue(top - desk::scaled(8));
}

QFont SlipLines::fontOf(const Row& row) const {
    if (row.kind == Row::Kind::Detail) return desk::textFont(TextSize::Small);
    if (row.kind != Row::Kind::Title) return desk::textFont(TextSize::Body);
    const auto font = desk::textFont(TextSize::Title, Weight::Strong);
    const bool fits = QFontMetrics(font).horizontalAdvance(row.text) <= wordsOf(row, 0).width();
    return fits ? font : desk::textFont(TextSize::Body, Weight::Strong);
}

QRect SlipLines::wordsOf(const Row& row, int y) const {
    const int side = desk::scaled(kSide);
    int right = row.each.isEmpty() ? 0 : desk::scaled(kEachWidth);
    if (row.kind == Row::Kind::Title)
        right += QFontMetrics(desk::textFont(TextSize::Small)).horizontalAdvance(row.amount) + 12;
    else if (!row.amount.isEmpty())
        right += m_amountWidth;
    const int left = row.left.isEmpty() ? 0 : m_pictureWidth + m_piecesWidth;
    return {side + left, y, viewport()->width() - 2 * side - left - right, row.lead};
}

void SlipLines::paintRow(QPainter& painter, const Row& row, int y) const {
    const int side = desk::scaled(kSide);
    const QRect all(side, y, viewport()->width() - 2 * side, row.lead);
    if (row.kind == Row::Kind::Rule) {
        painter.setPen(desk::colour(Role::Hairline));
        painter.drawLine(all.left(), all.center().y(), all.right(), all.center().y());
        return;
    }
    const bool title = row.kind == Row::Kind::Title;
    if (row.kind == Row::Kind::Main) paintPicture(painter, row, y);
    if (!row.left.trimmed().isEmpty()) {
        painter.setFont(desk::textFont(TextSize::Body, Weight::Strong));
        painter.setPen(desk::colour(Role::Ink));
        painter.drawText(all.adjusted(m_pictureWidth, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, row.left);
    }
    const auto font = fontOf(row);
    painter.setFont(font);
    painter.setPen(desk::colour(row.kind == Row::Kind::Detail ? Role::Muted : Role::Ink));
    QRect words = wordsOf(row, y);
    for (const auto& line : row.words) {
        painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, line);
        words.translate(0, QFontMetrics(font).lineSpacing());
    }
    if (!row.each.isEmpty()) {
        painter.setPen(desk::colour(Role::Muted));
        painter.setFont(desk::textFont(TextSize::Small));
        desk::drawFigures(painter, all.adjusted(0, 0, -m_amountWidth, 0), Qt::AlignRight | Qt::AlignVCenter, row.each);
    }
    if (!row.amount.isEmpty()) {
        painter.setFont(desk::textFont(title ? TextSize::Small : TextSize::Body));
        painter.setPen(desk::colour(title ? Role::Muted : Role::Ink));
        desk::drawFigures(painter, all, Qt::AlignRight | Qt::AlignVCenter, row.amount);
    }
}

void SlipLines::paintPicture(QPainter& painter, const Row& row, int y) const {
    if (m_pictureWidth == 0) return;
    const int side = desk::scaled(kPictureSide);
    painter.drawPixmap(QPoint(desk::scaled(kSide), y + desk::scaled(2)),
                       m_pictures(row.line, {side, side}, desk::colour(Role::Paper), devicePixelRatioF()));
}

void SlipLines::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    const int offset = verticalScrollBar()->value();
    for (const auto& row : m_rows) {
        if (row.top + std::max(row.height, m_pictureWidth) < offset) continue;
        if (row.top > offset + viewport()->height()) break;
        paintRow(painter, row, row.top - offset);
    }
}

void SlipLines::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    layRows();
}

void SlipLines::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() != QEvent::FontChange) return;
    m_laidWidth = -1;
    layRows();
}

} // namespace sp::counter

#include "moc_slip_lines.cpp"

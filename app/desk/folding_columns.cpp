// SPDX-License-Identifier: MIT
#include "app/desk/folding_columns.h"

#include "app/desk/bench_style.h"
#include "app/desk/figures.h"
#include "app/desk/tab_order.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QScrollArea>

namespace sp::desk {

namespace {

constexpr int kColumnGap = 20;
constexpr int kRoomForStretch = 440; ///< least useful width of the stretching column

} // namespace

class FoldingColumns::Figure : public QWidget {
  public:
    explicit Figure(QWidget* parent)
        : QWidget(parent) {
        auto* row = new QHBoxLayout(this);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(8);
        m_meaning = new TextLabel({}, TextSize::Body, Role::Muted, Weight::Plain, this);
        m_amount = new FigureLabel({}, TextSize::Title, Role::Ink, Weight::Strong, this);
        m_amount->setObjectName(QStringLiteral("stripFigure"));
        row->addWidget(m_meaning);
        row->addWidget(m_amount);
    }
    void set(const QString& meaning, const QString& amount) {
        m_meaning->setText(meaning);
        m_amount->setMeaning(meaning);
        m_amount->setFigure(amount);
    }

  private:
    TextLabel* m_meaning;
    FigureLabel* m_amount;
};

FoldingColumns::FoldingColumns(QWidget* parent)
    : QWidget(parent)
    , m_strip(new QWidget(this))
    , m_figure(new Figure(m_strip)) {
    auto* row = new QHBoxLayout(m_strip);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addStretch(1);
    row->addWidget(m_figure);
    m_strip->hide();
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        for (const auto& column : m_columns)
            if (now && column.frame->isAncestorOf(now)) column.frame->ensureWidgetVisible(now, 0, 28);
    });
}

void FoldingColumns::addColumn(QWidget* column, const QString& word, int width, bool stretch) {
    // If the window is lower than the column needs, the column scrolls instead of being squeezed.
    auto* frame = new QScrollArea(this);
    frame->setFrameShape(QFrame::NoFrame);
    frame->setWidgetResizable(true);
    frame->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    frame->setFocusPolicy(Qt::NoFocus);
    frame->viewport()->setAutoFillBackground(false);
    frame->setWidget(column);
    column->setAutoFillBackground(false);
    auto* tab = new QPushButton(word, m_strip);
    tab->setCheckable(true);
    tab->setAutoExclusive(true);
    tab->setObjectName(QStringLiteral("columnTab%1").arg(m_columns.size()));
    makeQuiet(*tab);
    const int at = static_cast<int>(m_columns.size());
    static_cast<QHBoxLayout*>(m_strip->layout())->insertWidget(at, tab);
    connect(tab, &QPushButton::clicked, this, [this, at] { showColumn(at); });
    m_columns.push_back({frame, tab, width, stretch});
}

void FoldingColumns::setWord(int column, const QString& word) {
    constexpr int kWidestTab = 240; // px at 100 %
    auto* tab = m_columns[static_cast<std::size_t>(column)].tab;
    const QFontMetrics strong(textFont(TextSize::Body, Weight::Strong));
    tab->setText(
        strong.elidedText(word, Qt::ElideRight, scaled(kWidestTab)).replace(QLatin1Char('&'), QLatin1String("&&")));
    tab->setAccessibleName(word);
    tab->setToolTip(word);
}

void FoldingColumns::setFigure(const QString& meaning, const QString& figure) { m_figure->set(meaning, figure); }

void FoldingColumns::showColumn(int column) {
    m_shown = column;
    m_columns[static_cast<std::size_t>(column)].tab->setChecked(true);
    arrange();
}

void FoldingColumns::reveal(const QWidget& inside) {
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        if (m_columns[i].frame->isAncestorOf(&inside) && m_shown != static_cast<int>(i))
            showColumn(static_cast<int>(i));
}

void FoldingColumns::focusShown() { m_columns[static_cast<std::size_t>(m_shown)].tab->setFocus(Qt::OtherFocusReason); }

int FoldingColumns::columnWithFocus() const {
    const auto* focus = QApplication::focusWidget();
    for (std::size_t i = 0; focus && i < m_columns.size(); ++i)
        if (m_columns[i].frame->isAncestorOf(focus)) return static_cast<int>(i);
    return -1;
}

void FoldingColumns::focusIn(int column) {
    const auto stops = tabStops(*m_columns[static_cast<std::size_t>(column)].frame->widget());
    if (!stops.empty()) stops.front()->setFocus(Qt::OtherFocusReason);
}

void FoldingColumns::arrange() {
    if (m_columns.empty()) return;
    int fixed = kColumnGap * (static_cast<int>(m_columns.size()) - 1);
    for (const auto& column : m_columns) fixed += scaled(column.stretch ? kRoomForStretch : column.width);
    const int focused = columnWithFocus();
    const bool folds = width() < fixed && !m_folded;
    m_folded = width() < fixed;
    m_strip->setVisible(m_folded);
    if (folds && focused >= 0) m_shown = focused; // the page with the focus
    if (m_folded) {
        const int height = fieldHeight() + 8;
        m_strip->setGeometry(0, 0, width(), height);
        m_columns[static_cast<std::size_t>(m_shown)].tab->setChecked(true);
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            m_columns[i].frame->setVisible(static_cast<int>(i) == m_shown);
            m_columns[i].frame->setGeometry(0, height + 8, width(), QWidget::height() - height - 8);
        }
        // If the focus was on the page that is hidden now, it moves to the one shown.
        if (focused >= 0 && focused != m_shown) focusIn(m_shown);
        return;
    }
    int taken = kColumnGap * (static_cast<int>(m_columns.size()) - 1);
    for (const auto& column : m_columns)
        if (!column.stretch) taken += scaled(column.width);
    int x = 0;
    for (const auto& column : m_columns) {
        const int wide = column.stretch ? width() - taken : scaled(column.width);
        column.frame->setVisible(true);
        column.frame->setGeometry(x, 0, wide, height());
        x += wide + kColumnGap;
    }
}

void FoldingColumns::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void FoldingColumns::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) arrange();
}

bool FoldingColumns::event(QEvent* event) {
    const bool handled = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) arrange();
    return handled;
}

} // namespace sp::desk

#include "moc_folding_columns.cpp"

// SPDX-License-Identifier: MIT
#include "app/artwork/page_parts.h"

#include "app/desk/bench_style.h"
#include "app/desk/scroll_page.h"
#include "app/words/names.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QToolButton>
#include <QVBoxLayout>

namespace sp::artwork {

namespace {

constexpr int kSideWidth = 400;
constexpr int kMinSideWidth = 320; ///< whatever the size of the text
constexpr QSize kThumbnail{280, 200};

QToolButton* toolButton(const QString& word, const QString& what, const char* name, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setText(word);
    button->setToolTip(what);
    button->setAccessibleName(what);
    button->setObjectName(QLatin1String(name));
    button->setMinimumHeight(desk::fieldHeight());
    button->setMinimumWidth(desk::fieldHeight());
    return button;
}

} // namespace

SideCard::SideCard(QWidget* parent)
    : Card(parent)
    , m_foot(new QVBoxLayout) {
    setMinimumWidth(kMinSideWidth);
    setMaximumWidth(desk::scaled(kSideWidth));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(1, 1, 1, 1);
    auto* scroll = new desk::ScrollPage({20, 20, 20, 12}, this);
    m_entries = scroll->column();
    column->addWidget(scroll, 1);
    m_foot->setContentsMargins(20, 0, 20, 20);
    m_foot->setSpacing(8);
    column->addLayout(m_foot);
}

QSize SideCard::sizeHint() const { return {desk::scaled(kSideWidth), Card::sizeHint().height()}; }

void addZoomButtons(QHBoxLayout* row, ArtworkView* view, QWidget* page) {
    constexpr double kPress = 1.5;
    auto* smaller =
        toolButton(QStringLiteral("−"), QCoreApplication::translate("artwork", "Smaller (−)"), "zoomOut", page);
    auto* larger =
        toolButton(QStringLiteral("+"), QCoreApplication::translate("artwork", "Larger (+)"), "zoomIn", page);
    auto* whole = toolButton(QCoreApplication::translate("artwork", "Fit"),
                             QCoreApplication::translate("artwork", "All of it (0)"), "zoomFit", page);
    for (auto* button : {smaller, larger, whole}) row->addWidget(button, 0, Qt::AlignTop);
    QObject::connect(smaller, &QToolButton::clicked, view, [view] { view->zoomBy(1 / kPress, view->rect().center()); });
    QObject::connect(larger, &QToolButton::clicked, view, [view] { view->zoomBy(kPress, view->rect().center()); });
    QObject::connect(whole, &QToolButton::clicked, view, &ArtworkView::fit);
}

QString stonesInWords(std::int64_t stones, const desk::Formatter& formatter) {
    return words::counted(words::Thing::Stone, stones, formatter.count(units::Count::of(stones)));
}

desk::TextLabel* smallWords(QWidget* parent) {
    auto* label = new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, parent);
    label->setWordWrap(true);
    return label;
}

QByteArray thumbnailOf(Picture picture) {
    ArtworkView view;
    view.resize(kThumbnail);
    view.setPicture(std::move(picture), true);
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    view.grab().save(&buffer, "PNG");
    return png;
}

} // namespace sp::artwork

#include "moc_page_parts.cpp"

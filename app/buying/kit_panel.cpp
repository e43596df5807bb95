// SPDX-License-Identifier: MIT
#include "app/buying/kit_panel.h"

#include "app/buying/kit_choice_words.h"
#include "app/desk/stone_painter.h"

#include <QGridLayout>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::buying {

using desk::Role;
using desk::TextSize;
using desk::Weight;

namespace {

constexpr std::int64_t kMostDrawn = 12;

} // namespace

KitPieces::KitPieces(std::int64_t sure, std::int64_t likely, std::vector<QColor> stones, QWidget* parent)
    : QWidget(parent)
    , m_sure(std::min(sure, kMostDrawn))
    , m_likely(std::min(likely, kMostDrawn))
    , m_stones(std::move(stones)) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAttribute(Qt::WA_TransparentForMouseEvents); // the words beside it say the same
}

QSize KitPieces::sizeHint() const {
    return {static_cast<int>(std::max<std::int64_t>(m_sure, m_likely)) * desk::scaled(36), desk::scaled(36)};
}
QSize KitPieces::minimumSizeHint() const { return {desk::scaled(120), desk::scaled(36)}; }

void KitPieces::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto count = static_cast<int>(std::max<std::int64_t>(m_sure, m_likely));
    const double gap = desk::scaled(6);
    const double side = std::min<double>(desk::scaled(32), (width() - gap * (count - 1)) / std::max(1, count));
    for (int i = 0; i < count; ++i) {
        const QRectF box(i * (side + gap) + 0.5, (height() - side) / 2 + 0.5, side - 1, side - 1);
        const bool isSure = i < m_sure;
        QPen pen(desk::colour(isSure ? Role::Ink : Role::FieldOutline), isSure ? 1.5 : 1);
        if (!isSure) pen.setDashPattern({3, 3});
        painter.setPen(pen);
        painter.setBrush(desk::colour(Role::Paper));
        painter.drawRoundedRect(box, 5, 5);
        const auto colours = static_cast<int>(std::min<std::size_t>(m_stones.size(), 2));
        const double stone = std::min(side * 0.46, side - 8);
        for (int c = 0; c < colours; ++c) {
            const double off = colours == 1 ? 0 : (c == 0 ? -1 : 1) * stone * 0.44;
            painter.setOpacity(isSure ? 1 : 0.55);
            desk::paintStone(
                painter, QRectF(box.center().x() + off - stone / 2, box.center().y() + off - stone / 2, stone, stone),
                m_stones[static_cast<std::size_t>(c)], desk::colour(Role::Paper));
            painter.setOpacity(1);
        }
    }
}

KitPanel::KitPanel(BuyingPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : Card(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    setObjectName(QStringLiteral("kitPanel"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(16, 12, 16, 12);
    outer->setSpacing(0);
    connect(&m_presenter, &BuyingPresenter::kitsChanged, this, &KitPanel::refresh);
    refresh();
}

/// Until the next kits are compared the last ones stay away: what is shown is of what is asked.
void KitPanel::refresh() {
    delete m_body;
    m_body = new QWidget(this);
    m_column = new QVBoxLayout(m_body);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(6);
    layout()->addWidget(m_body);
    const auto& kits = m_presenter.kits();
    const bool isThere = kits && !kits->empty() && m_presenter.pieces();
    if (isThere)
        for (const auto& kit : *kits) add(kit);
    if (isThere)
        m_column->addWidget(new desk::TextLabel(tr("Nothing is taken from the shelf here."), TextSize::Small,
                                                Role::Muted, Weight::Plain, m_body));
    m_column->addStretch(1);
    setVisible(isThere);
}

void KitPanel::add(const supply::KitChoice& kit) {
    if (m_column->count() > 0) m_column->addWidget(new desk::Hairline(m_body));
    const auto name = QString::fromStdString(kit.name);
    const bool makesAny = kit.makes && !kit.makes->likely.pieces.isZero();
    auto* title = desk::sectionTitle(makesAny ? tr("What one %1 makes").arg(name) : name, m_body);
    title->setWordWrap(true);
    m_column->addWidget(title);
    auto* makes = new desk::TextLabel(kitMakes(kit, m_formatter), TextSize::Body, makesAny ? Role::Ink : Role::Muted,
                                      Weight::Plain, m_body);
    makes->setObjectName(QStringLiteral("kitPieces"));
    makes->setWordWrap(true);
    if (makesAny) {
        std::vector<QColor> stones;
        if (const auto* design = m_presenter.session().design(m_presenter.design()))
            for (const auto& stone : design->stones)
                if (const auto* material = m_presenter.session().material(stone.material))
                    stones.push_back(desk::stoneColour(material->stone.rgb));
        m_column->addWidget(
            new KitPieces(kit.makes->sure.value(), kit.makes->likely.pieces.value(), std::move(stones), m_body));
    }
    m_column->addWidget(makes);
    if (makesAny) addFigures(kit);
}

void KitPanel::addFigures(const supply::KitChoice& kit) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(0, 1);
    const auto put = [&](int row, int column, const QString& text, Role role, Weight weight, const char* name) {
        const auto size = row == 0 ? TextSize::Small : TextSize::Body;
        auto* label = column == 0 || column == 3
                          ? new desk::TextLabel(text, size, role, weight, m_body)
                          : static_cast<desk::TextLabel*>(new desk::FigureLabel(text, size, role, weight, m_body));
        if (name != nullptr) label->setObjectName(QLatin1String(name));
        grid->addWidget(label, row, column, column == 0 ? Qt::AlignLeft : Qt::AlignRight);
    };
    put(0, 0, tr("A piece, shipping in"), Role::Muted, Weight::Plain, nullptr);
    put(0, 1, tr("from kits"), Role::Muted, Weight::Plain, nullptr);
    put(0, 2, tr("from bulk"), Role::Muted, Weight::Plain, nullptr);
    int row = 1;
    for (const auto pieces : kitQuantities(kit, *m_presenter.pieces())) {
        const auto* price = kit.at(pieces);
        const auto each = kitEach(*price, m_formatter);
        const auto cheaper = supply::isKitCheaper(*price);
        const auto weightOf = [&](bool ofKit) { return cheaper == ofKit ? Weight::Strong : Weight::Plain; };
        put(row, 0, tr("if you make %1").arg(each.pieces), Role::Ink, Weight::Plain, nullptr);
        put(row, 1, each.kit, Role::Ink, weightOf(true), "kitEach");
        put(row, 2, each.bulk, Role::Ink, weightOf(false), "kitBulkEach");
        put(row, 3, each.cheaper, Role::Muted, Weight::Plain, "kitCheaper");
        ++row;
    }
    m_column->addLayout(grid);
    auto* runs = new desk::TextLabel(kitRuns(kit, m_formatter), TextSize::Body, Role::Ink, Weight::Strong, m_body);
    runs->setObjectName(QStringLiteral("kitRuns"));
    runs->setWordWrap(true);
    m_column->addWidget(runs);
}

} // namespace sp::buying

#include "moc_kit_panel.cpp"

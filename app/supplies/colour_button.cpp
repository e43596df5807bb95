// SPDX-License-Identifier: MIT
#include "app/supplies/colour_button.h"

#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "app/desk/stone_painter.h"
#include "app/words/names.h"

#include <QColorDialog>
#include <QDialog>
#include <QEvent>
#include <QGridLayout>
#include <QIcon>
#include <QPainter>
#include <QVBoxLayout>

namespace sp::supplies {

namespace {

constexpr int kAcross = 5;

QIcon stoneIcon(std::uint32_t rgb, int side) {
    QPixmap picture(side, side);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    desk::paintStone(painter, QRectF(0, 0, side, side), desk::stoneColour(rgb), desk::colour(desk::Role::Field));
    return picture;
}

} // namespace

ColourButton::ColourButton(QWidget* parent)
    : QPushButton(parent) {
    setToolTip(tr("Choose from a picture of colours"));
    connect(this, &QPushButton::clicked, this, &ColourButton::openPicture);
}

void ColourButton::setColour(std::uint32_t rgb) {
    m_rgb = rgb;
    dress();
}

void ColourButton::dress() {
    const int side = desk::scaled(22);
    setIcon(stoneIcon(m_rgb, side));
    setIconSize({side, side});
    setText(words::nameOf(catalogue::nearestColour(m_rgb)));
    setAccessibleName(tr("Picture’s colour: %1").arg(text()));
}

void ColourButton::changeEvent(QEvent* event) {
    QPushButton::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) dress();
}

/// A press or Enter takes a colour and closes; the arrow keys go from one to the next.
void ColourButton::openPicture() {
    auto* picture = new QDialog(window());
    picture->setObjectName(QStringLiteral("pictureOfColours"));
    picture->setWindowTitle(tr("Colours"));
    picture->setAttribute(Qt::WA_DeleteOnClose);
    auto* column = new QVBoxLayout(picture);
    auto* grid = new QGridLayout;
    column->addLayout(grid);
    const int side = desk::scaled(28);
    const auto nearest = catalogue::nearestColour(m_rgb);
    int at = 0;
    for (const auto& drawn : catalogue::stoneColours()) {
        auto* one = new QPushButton(stoneIcon(drawn.rgb, side), words::nameOf(drawn.colour), picture);
        one->setObjectName(QStringLiteral("colour%1").arg(at));
        one->setIconSize({side, side});
        one->setAutoDefault(false);
        desk::makeQuiet(*one);
        grid->addWidget(one, at / kAcross, at % kAcross);
        ++at;
        if (drawn.colour == nearest) one->setFocus(Qt::OtherFocusReason);
        connect(one, &QPushButton::clicked, this, [this, picture, rgb = drawn.rgb] {
            picture->accept();
            Q_EMIT chosen(rgb);
        });
    }
    auto* another = new QPushButton(tr("&Another colour…"), picture);
    another->setObjectName(QStringLiteral("anotherColour"));
    another->setAutoDefault(false);
    column->addWidget(another, 0, Qt::AlignRight);
    connect(another, &QPushButton::clicked, this, [this, picture] {
        picture->reject();
        openChooser();
    });
    picture->open();
}

void ColourButton::openChooser() {
    auto* chooser = new QColorDialog(desk::stoneColour(m_rgb), window());
    chooser->setAttribute(Qt::WA_DeleteOnClose);
    connect(chooser, &QColorDialog::colorSelected, this,
            [this](const QColor& colour) { Q_EMIT chosen(colour.rgb() & 0xFFFFFF); });
    chooser->open();
}

} // namespace sp::supplies

#include "moc_colour_button.cpp"

// SPDX-License-Identifier: MIT
#include "app/customers/customer_pictures.h"

#include "app/desk/bench_style.h"
#include "app/desk/figures.h"

#include <QLabel>
#include <QPixmap>
#include <QVBoxLayout>

namespace sp::customers {

namespace {

constexpr int kColumns = 6;
constexpr int kSide = 96; ///< of a picture at 100 %, px

} // namespace

CustomerPictures::CustomerPictures(QWidget* parent)
    : QWidget(parent)
    , m_grid(new desk::FlowGrid(kColumns)) {
    setLayout(m_grid);
    m_grid->setContentsMargins(0, 0, 0, 0);
    setObjectName(QStringLiteral("customerPictures"));
    setAccessibleName(tr("Designs of their jobs"));
}

void CustomerPictures::show(const std::vector<db::DesignPicture>& pictures) {
    while (auto* item = m_grid->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const auto& picture : pictures) add(picture);
    setVisible(m_grid->count() > 0);
}

void CustomerPictures::add(const db::DesignPicture& picture) {
    QPixmap pixmap;
    if (!pixmap.loadFromData(QByteArray::fromStdString(picture.thumbnail), "PNG")) return;
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* shown = new QLabel(box);
    const double dots = devicePixelRatioF(); // as many as the screen has
    const int side = qRound(desk::scaled(kSide) * dots);
    pixmap = pixmap.scaled(side, side, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    pixmap.setDevicePixelRatio(dots);
    shown->setPixmap(pixmap);
    const auto name = QString::fromStdString(picture.name);
    shown->setAccessibleName(tr("Picture of %1").arg(name));
    column->addWidget(shown);
    auto* label = new desk::TextLabel(name, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, box);
    label->setElides(true);
    column->addWidget(label);
    column->addStretch(1);
    m_grid->add(box);
}

} // namespace sp::customers

#include "moc_customer_pictures.cpp"

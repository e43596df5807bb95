// SPDX-License-Identifier: MIT
#include "app/desk/fonts.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QEvent>
#include <QFontDatabase>
#include <QScreen>
#include <QWidget>

#include <algorithm>
#include <array>

namespace sp::desk {

namespace {

constexpr std::array<int, 8> kZooms = {80, 90, 100, 110, 125, 150, 175, 200};

const QString kInter = QStringLiteral("Inter");

const QString& family() {
    static const QString chosen = [] {
        if (!ownFamily().isEmpty()) return ownFamily();
        return QFontDatabase::hasFamily(kInter) ? kInter
                                                : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
    }();
    return chosen;
}

} // namespace

const QString& ownFamily() {
    static const QString loaded = [] {
        QString found;
        const QDir folder(QStringLiteral(":/fonts"));
        for (const auto& file : folder.entryList())
            if (const int id = QFontDatabase::addApplicationFont(folder.filePath(file)); id >= 0)
                found = QFontDatabase::applicationFontFamilies(id).value(0);
        return found;
    }();
    return loaded;
}

QStringList textFamilies() {
    QStringList families{kInter, QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")};
    if (!ownFamily().isEmpty()) families.prepend(ownFamily());
    return families;
}

int zoom() {
    const QVariant set = QCoreApplication::instance() ? QCoreApplication::instance()->property("textZoom") : QVariant();
    return set.isValid() ? set.toInt() : 100;
}

void setZoom(int percent) {
    qApp->setProperty("textZoom", std::clamp(percent, kZooms.front(), kZooms.back()));
    QApplication::setFont(textFont(TextSize::Body));
    for (auto* widget : QApplication::allWidgets()) {
        // Labels have fonts of their own, of which Qt changes none.
        QEvent fontChanged(QEvent::ApplicationFontChange);
        QCoreApplication::sendEvent(widget, &fontChanged);
        // A combo box keeps the least width that it had in the font before, until its style changes.
        QEvent styleChanged(QEvent::StyleChange);
        if (!qobject_cast<QComboBox*>(widget)) continue;
        QCoreApplication::sendEvent(widget, &styleChanged);
        widget->updateGeometry();
    }
}

int zoomLarger(int percent) {
    const auto next = std::upper_bound(kZooms.begin(), kZooms.end(), percent);
    return next == kZooms.end() ? kZooms.back() : *next;
}

int zoomSmaller(int percent) {
    const auto at = std::lower_bound(kZooms.begin(), kZooms.end(), percent);
    return at == kZooms.begin() ? kZooms.front() : *std::prev(at);
}

QFont textFont(TextSize size, Weight weight) {
    QFont font(family());
    font.setPixelSize(scaled(static_cast<int>(size)));
    font.setWeight(weight == Weight::Strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

int scaled(int px) { return (px * zoom() + 50) / 100; }

QSize withinScreen(const QWidget& window, QSize wanted) {
    constexpr QSize kFrame(40, 80);
    return wanted.boundedTo(window.screen()->availableSize() - kFrame);
}

} // namespace sp::desk

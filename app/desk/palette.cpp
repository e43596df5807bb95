// SPDX-License-Identifier: MIT
#include "app/desk/palette.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QVariant>

#include <algorithm>
#include <array>
#include <cmath>

namespace sp::desk {

namespace {

struct Row {
    QRgb light;
    QRgb dark;
    QRgb lightContrast;
    QRgb darkContrast;
};

// In the order of Role.
constexpr std::array<Row, 13> kColours = {{
    {0xFFECE8E1, 0xFF17191C, 0xFFE2E2E2, 0xFF1F1F1F}, // Bench
    {0xFFF8F6F2, 0xFF202428, 0xFFFFFFFF, 0xFF000000}, // Card
    {0xFFFFFFFF, 0xFF292E33, 0xFFFFFFFF, 0xFF000000}, // Paper
    {0xFFFFFFFF, 0xFF191C1F, 0xFFFFFFFF, 0xFF000000}, // Field
    {0xFF1D2730, 0xFFEDF0F2, 0xFF000000, 0xFFFFFFFF}, // Ink
    {0xFF5A646D, 0xFFA7B0B8, 0xFF222222, 0xFFE6E6E6}, // Muted
    {0xFFD5CFC5, 0xFF3B4248, 0xFF9A9A9A, 0xFF5C5C5C}, // Hairline
    {0xFF857F74, 0xFF767F87, 0xFF000000, 0xFFFFFFFF}, // FieldOutline
    {0xFF8A2846, 0xFFE79AB2, 0xFF6B0F2E, 0xFFFFB3C9}, // Jewel
    {0xFFFFFFFF, 0xFF2A0C17, 0xFFFFFFFF, 0xFF000000}, // OnJewel
    {0xFFF1E3E8, 0xFF3A2730, 0xFFFFE6EE, 0xFF3D0F20}, // JewelSoft
    {0xFF2E6B4F, 0xFF7CC7A0, 0xFF0B4A2C, 0xFF8CF0B8}, // Good
    {0xFF7A5200, 0xFFE0B45C, 0xFF5A3300, 0xFFFFD479}, // Warn
}};

QColor systemColour(Role role) {
    const QPalette palette = QGuiApplication::palette();
    switch (role) {
    case Role::Bench:
    case Role::Card: return palette.color(QPalette::Window);
    case Role::Paper:
    case Role::Field: return palette.color(QPalette::Base);
    case Role::Ink:
    case Role::Muted:
    case Role::Hairline:
    case Role::FieldOutline:
    case Role::Good:
    case Role::Warn: return palette.color(QPalette::WindowText);
    case Role::Jewel: return palette.color(QPalette::Highlight);
    case Role::OnJewel: return palette.color(QPalette::HighlightedText);
    case Role::JewelSoft: return palette.color(QPalette::Window);
    }
    return palette.color(QPalette::WindowText);
}

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

} // namespace

Look currentLook() {
    if (!QCoreApplication::instance()) return Look::Light;
    return static_cast<Look>(QCoreApplication::instance()->property("benchLook").toInt());
}

QColor colour(Role role, Look look) {
    const Row& row = kColours.at(static_cast<std::size_t>(role));
    switch (look) {
    case Look::Light: return QColor::fromRgb(row.light);
    case Look::Dark: return QColor::fromRgb(row.dark);
    case Look::Contrast: return systemColour(role);
    case Look::LightContrast: return QColor::fromRgb(row.lightContrast);
    case Look::DarkContrast: return QColor::fromRgb(row.darkContrast);
    }
    return QColor::fromRgb(row.light);
}

QColor colour(Role role) { return colour(role, currentLook()); }

QColor blended(const QColor& over, const QColor& under, double share) {
    const auto mix = [share](float a, float b) {
        return static_cast<float>(
            std::clamp(share * static_cast<double>(a) + (1 - share) * static_cast<double>(b), 0.0, 1.0));
    };
    return QColor::fromRgbF(mix(over.redF(), under.redF()), mix(over.greenF(), under.greenF()),
                            mix(over.blueF(), under.blueF()));
}

QColor lightened(const QColor& colour, double share) { return blended(QColor(Qt::white), colour, share); }

QColor deepened(const QColor& colour, double share) { return blended(QColor(Qt::black), colour, share); }

QColor jewelStep(int step, Role ground) {
    constexpr std::array<double, 7> kShares = {1.0, 0.8, 0.64, 0.5, 0.38, 0.28, 0.2};
    const auto i = static_cast<std::size_t>(std::clamp(step, 0, static_cast<int>(kShares.size()) - 1));
    return blended(colour(Role::Jewel), colour(ground), kShares.at(i));
}

double contrast(const QColor& a, const QColor& b) {
    const double first = luminance(a) + 0.05;
    const double second = luminance(b) + 0.05;
    return first > second ? first / second : second / first;
}

QPalette paletteFor(Look look) {
    if (look == Look::Contrast) return QGuiApplication::palette();
    const auto c = [look](Role role) { return colour(role, look); };
    QPalette p;
    p.setColor(QPalette::Window, c(Role::Bench));
    p.setColor(QPalette::WindowText, c(Role::Ink));
    p.setColor(QPalette::Base, c(Role::Field));
    p.setColor(QPalette::AlternateBase, c(Role::Card));
    p.setColor(QPalette::Text, c(Role::Ink));
    p.setColor(QPalette::PlaceholderText, c(Role::Muted));
    p.setColor(QPalette::Button, c(Role::Card));
    p.setColor(QPalette::ButtonText, c(Role::Ink));
    p.setColor(QPalette::BrightText, c(Role::Warn));
    p.setColor(QPalette::ToolTipBase, c(Role::Paper));
    p.setColor(QPalette::ToolTipText, c(Role::Ink));
    p.setColor(QPalette::Highlight, c(Role::Jewel));
    p.setColor(QPalette::HighlightedText, c(Role::OnJewel));
    p.setColor(QPalette::Link, c(Role::Jewel));
    p.setColor(QPalette::LinkVisited, c(Role::Jewel));
    p.setColor(QPalette::Light, c(Role::Paper));
    p.setColor(QPalette::Midlight, c(Role::Card));
    p.setColor(QPalette::Mid, c(Role::Hairline));
    p.setColor(QPalette::Dark, c(Role::FieldOutline));
    p.setColor(QPalette::Shadow, c(Role::Hairline));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::PlaceholderText})
        p.setColor(QPalette::Disabled, role, c(Role::Muted));
    p.setColor(QPalette::Disabled, QPalette::Base, c(Role::Card));
    return p;
}

} // namespace sp::desk

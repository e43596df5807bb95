// SPDX-License-Identifier: MIT
#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "app/desk/stone_painter.h"
#include "app/desk/theme.h"
#include "tests/app/desk/desk_fixture.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <memory>

namespace sp::desk::test {

namespace {

struct InkRow {
    Role ink;
    Role ground;
};

} // namespace

// WCAG 2.2: 1.4.3 asks 4.5 : 1 of text, 1.4.11 asks 3 : 1 of what shows a control. Checked first against the ratios
// that follow from its definition: black on white 21, a colour on itself 1.
TEST(Palette, keepsTextReadableOnItsGround) {
    EXPECT_NEAR(contrast(QColor(Qt::black), QColor(Qt::white)), 21, 1e-9);
    EXPECT_NEAR(contrast(QColor(Qt::red), QColor(Qt::red)), 1, 1e-9);
    for (const Look look : {Look::Light, Look::Dark}) {
        for (const Role ground : {Role::Bench, Role::Card, Role::Paper, Role::Field, Role::JewelSoft})
            for (const Role ink : {Role::Ink, Role::Muted, Role::Jewel, Role::Good, Role::Warn})
                EXPECT_GE(contrast(colour(ink, look), colour(ground, look)), 4.5)
                    << static_cast<int>(look) << ' ' << static_cast<int>(ink) << " on " << static_cast<int>(ground);
        EXPECT_GE(contrast(colour(Role::OnJewel, look), colour(Role::Jewel, look)), 4.5);
        for (const Role ground : {Role::Bench, Role::Card, Role::Field})
            EXPECT_GE(contrast(colour(Role::FieldOutline, look), colour(ground, look)), 3)
                << static_cast<int>(look) << ' ' << static_cast<int>(ground);
    }
}

// WCAG 2.2, 1.4.6 (enhanced contrast): 7 : 1. What shows a control as well.
TEST(Palette, keepsMoreOfItInHighContrast) {
    for (const Look look : {Look::LightContrast, Look::DarkContrast}) {
        for (const Role ground : {Role::Bench, Role::Card, Role::Paper, Role::Field, Role::JewelSoft})
            for (const Role ink : {Role::Ink, Role::Muted, Role::Jewel, Role::Good, Role::Warn, Role::FieldOutline})
                EXPECT_GE(contrast(colour(ink, look), colour(ground, look)), 7)
                    << static_cast<int>(look) << ' ' << static_cast<int>(ink) << " on " << static_cast<int>(ground);
        EXPECT_GE(contrast(colour(Role::OnJewel, look), colour(Role::Jewel, look)), 7);
        // A button that cannot be pressed is muted on the hairline's ground.
        EXPECT_GE(contrast(colour(Role::Muted, look), colour(Role::Hairline, look)), 4.5);
    }
}

TEST(Palette, keepsQtsOwnTextReadable) {
    for (const Look look : {Look::Light, Look::Dark, Look::LightContrast, Look::DarkContrast}) {
        const QPalette p = paletteFor(look);
        const auto ratio = [&](QPalette::ColorGroup group, QPalette::ColorRole ink, QPalette::ColorRole ground) {
            return contrast(p.color(group, ink), p.color(group, ground));
        };
        EXPECT_GE(ratio(QPalette::Active, QPalette::HighlightedText, QPalette::Highlight), 4.5);
        EXPECT_GE(ratio(QPalette::Active, QPalette::PlaceholderText, QPalette::Base), 4.5);
        EXPECT_GE(ratio(QPalette::Disabled, QPalette::Text, QPalette::Base), 4.5);
        EXPECT_GE(ratio(QPalette::Disabled, QPalette::ButtonText, QPalette::Button), 4.5);
        EXPECT_GE(ratio(QPalette::Active, QPalette::Link, QPalette::Window), 4.5);
    }
}

TEST(Theme, judgesTheSystemByItsPalette) {
    QPalette system;
    system.setColor(QPalette::Window, QColor(Qt::lightGray));
    system.setColor(QPalette::Base, QColor(Qt::white));
    system.setColor(QPalette::WindowText, QColor(Qt::black));
    EXPECT_EQ(lookOf(system), Look::Light);
    system.setColor(QPalette::Window, QColor(Qt::darkGray).darker(300));
    system.setColor(QPalette::WindowText, QColor(Qt::white));
    EXPECT_EQ(lookOf(system), Look::Dark);
    system.setColor(QPalette::Window, QColor(Qt::black));
    system.setColor(QPalette::Base, QColor(Qt::black));
    EXPECT_EQ(lookOf(system), Look::Contrast);
}

TEST(Theme, changesEveryColourWithTheScheme) {
    const auto theme = std::make_unique<Theme>(*qApp, Scheme::Light);
    EXPECT_EQ(colour(Role::Ink), colour(Role::Ink, Look::Light));
    theme->setScheme(Scheme::Dark);
    EXPECT_EQ(colour(Role::Ink), colour(Role::Ink, Look::Dark));
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), colour(Role::Bench, Look::Dark));
    theme->setScheme(Scheme::DarkContrast);
    EXPECT_EQ(colour(Role::Muted), colour(Role::Muted, Look::DarkContrast));
    EXPECT_EQ(QApplication::palette().color(QPalette::Base), colour(Role::Field, Look::DarkContrast));
    theme->setScheme(Scheme::LightContrast);
    EXPECT_EQ(currentLook(), Look::LightContrast);
    theme->setScheme(Scheme::Light);
}

TEST(Fonts, zoomWithinTheirBounds) {
    setZoom(1'000);
    EXPECT_EQ(zoom(), 200);
    EXPECT_EQ(textFont(TextSize::Body).pixelSize(), 28);
    setZoom(0);
    EXPECT_EQ(zoom(), 80);
    setZoom(100);
    EXPECT_EQ(textFont(TextSize::Total).pixelSize(), 40);
    EXPECT_EQ(zoomLarger(100), 110);
    EXPECT_EQ(zoomSmaller(100), 90);
    EXPECT_EQ(zoomLarger(200), 200);
    EXPECT_EQ(zoomSmaller(80), 80);
}

TEST(StonePainter, paintsTheSameStoneTheSameAndSeenOnAnyGround) {
    for (const Look look : {Look::Light, Look::Dark, Look::LightContrast, Look::DarkContrast}) {
        const QColor ground = colour(Role::Card, look);
        for (const std::uint32_t rgb : {0x15181DU, 0xFFFFFFU, 0x45B8C8U, 0x000000U}) {
            for (const int side : {16, 24, 64, 200}) {
                const auto paint = [&] {
                    QImage picture(side, side, QImage::Format_ARGB32_Premultiplied);
                    picture.fill(Qt::transparent);
                    QPainter painter(&picture);
                    paintStone(painter, QRectF(0, 0, side, side), stoneColour(rgb), ground);
                    return picture;
                };
                const QImage once = paint();
                EXPECT_EQ(once, paint());
                double seen = 1; // the rim's pixels at the top, which soft edges share with what lies beside them
                for (int y = 0; y < 3; ++y) {
                    const QColor rim = once.pixelColor(side / 2, y);
                    if (rim.alpha() > 128) seen = std::max(seen, contrast(rim, ground));
                }
                EXPECT_GE(seen, 1.4) << side << ' ' << rgb << ' ' << static_cast<int>(look);
                EXPECT_EQ(once.pixelColor(0, 0).alpha(), 0) << "round";
            }
        }
    }
}

} // namespace sp::desk::test

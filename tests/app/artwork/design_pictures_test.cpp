// SPDX-License-Identifier: MIT
#include "app/artwork/design_pictures.h"

#include "app/artwork/design_view.h"
#include "app/demo/demo_book.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QEvent>
#include <QImage>

#include <algorithm>
#include <memory>

namespace {

using namespace sp;

class DesignPictures : public testing::Test {
  protected:
    DesignPictures()
        : m_session(demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment()).value())
        , m_pictures(m_session) {}

    catalogue::Design named(const std::string& name) {
        for (const auto& design : m_session.designs())
            if (design.name == name) return design;
        ADD_FAILURE() << name;
        return {};
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    session::BookSession m_session;
    artwork::DesignPictures m_pictures;
    desk::Formatter m_formatter{QLocale(QLocale::English, QLocale::UnitedStates), m_session.shop()};
};

TEST_F(DesignPictures, showTheStonesThatTheDesignTakes) {
    for (const auto& design : m_session.designs()) {
        const auto picture = m_pictures.stones(design.id);
        ASSERT_TRUE(picture) << design.name;
        EXPECT_TRUE(artwork::showsTheCounts(*picture, design.stones)) << design.name;
    }
}

TEST_F(DesignPictures, knowThatCountsWereChangedByHand) {
    auto design = named("Heron");
    const auto picture = m_pictures.stones(design.id);
    ASSERT_TRUE(picture);
    design.stones.front().count = units::Count::of(design.stones.front().count.value() + 1);
    EXPECT_FALSE(artwork::showsTheCounts(*picture, design.stones));
}

TEST_F(DesignPictures, areOfTheDrawingThatIsKeptNow) {
    const auto design = named("Heron");
    ASSERT_TRUE(m_pictures.stones(design.id));
    EXPECT_FALSE(m_pictures.small(design.id, {36, 36}, Qt::white, 1).isNull());
    ASSERT_TRUE(m_session.change([&](db::Book& book) { return book.removeArtwork(design.id); }));
    EXPECT_FALSE(m_pictures.stones(design.id));
    EXPECT_TRUE(m_pictures.small(design.id, {36, 36}, Qt::white, 1).isNull());
}

/// Clear stones on white, one device pixel each, still leave a mark.
TEST_F(DesignPictures, smallOnesAreSeenOnWhite) {
    const auto picture = m_pictures.small(named("Heron").id, {36, 36}, Qt::white, 1).toImage();
    int seen = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x) {
            const QColor pixel = picture.pixelColor(x, y);
            if (pixel.alpha() > 128 && pixel.lightness() < 215 && pixel.saturation() < 60 && pixel.lightness() > 100)
                ++seen;
        }
    EXPECT_GT(seen, 40);
}

TEST_F(DesignPictures, smallOnesAreOfTheirGround) {
    const auto heron = named("Heron").id;
    const auto onWhite = m_pictures.small(heron, {36, 36}, Qt::white, 1).toImage();
    const auto onBlack = m_pictures.small(heron, {36, 36}, Qt::black, 1).toImage();
    artwork::DesignPictures others(m_session);
    EXPECT_EQ(onBlack, others.small(heron, {36, 36}, Qt::black, 1).toImage());
    EXPECT_NE(onBlack, onWhite);
}

/// Where neither the drawing nor its stones are others there is nothing to read or paint anew.
TEST_F(DesignPictures, areKeptWhileNothingOfThemChanges) {
    auto design = named("Heron");
    const auto before = m_pictures.stones(design.id);
    ASSERT_TRUE(before);
    int told = 0;
    QObject::connect(&m_pictures, &artwork::DesignPictures::changed, &m_pictures, [&] { ++told; });
    design.note = "For the window";
    ASSERT_TRUE(m_session.change([&](db::Book& book) { return book.save(design); }));
    EXPECT_EQ(told, 1);
    EXPECT_EQ(m_pictures.stones(design.id), before);
}

TEST_F(DesignPictures, areInTheColoursThatTheStonesHaveNow) {
    const auto design = named("Heron");
    ASSERT_FALSE(design.stones.empty());
    const auto before = m_pictures.small(design.id, {36, 36}, Qt::white, 1).toImage();
    auto material = *m_session.material(design.stones.front().material);
    ASSERT_TRUE(m_pictures.stones(design.id)->counts.contains(material.id));
    const auto rgb = material.stone.rgb ^ 0x181818U; // near enough to be the drawing's still
    material.stone.rgb = rgb;
    ASSERT_TRUE(m_session.change([&](db::Book& book) { return book.save(material); }));
    const auto stones = m_pictures.stones(design.id)->stones;
    EXPECT_TRUE(std::ranges::any_of(stones, [rgb](const auto& stone) { return stone.rgb == rgb; }));
    EXPECT_NE(m_pictures.small(design.id, {36, 36}, Qt::white, 1).toImage(), before);
}

TEST_F(DesignPictures, sayWhatTheyShow) {
    artwork::DesignView view;
    const auto heron = named("Heron");
    const auto picture = m_pictures.stones(heron.id);
    view.showDesign(QStringLiteral("Heron"), picture, heron.width, heron.height, m_formatter);
    EXPECT_EQ(view.accessibleName(), QStringLiteral("Picture of Heron"));
    EXPECT_EQ(view.accessibleDescription(), QStringLiteral("522 stones, 5 in wide, 7 in high"));
    view.showDesign(QStringLiteral("Heron"), picture, heron.height, heron.width, m_formatter);
    EXPECT_EQ(view.accessibleDescription(), QStringLiteral("522 stones")) << "measures of other proportions";
    view.showDesign(QStringLiteral("Heron"), picture, heron.width + heron.width, heron.height + heron.height,
                    m_formatter);
    EXPECT_EQ(view.accessibleDescription(), QStringLiteral("522 stones, 10 in wide, 14 in high"));
    view.showDesign(QStringLiteral("Heron"), nullptr, heron.width, heron.height, m_formatter);
    EXPECT_EQ(view.accessibleName(), QStringLiteral("No picture of Heron"));
    EXPECT_EQ(view.accessibleDescription(), QString());
}

TEST_F(DesignPictures, sayManyStonesAsTheLocaleWritesThem) {
    auto many = std::make_shared<artwork::Picture>();
    for (int row = 0; row < 36; ++row)
        for (int column = 0; column < 40; ++column) {
            artwork::Picture::SetStone stone;
            stone.centre = {4.0 * column, 4.0 * row};
            stone.diameter = 3;
            many->stones.push_back(stone);
        }
    artwork::DesignView view;
    view.showDesign(QStringLiteral("Field"), many, {}, {}, m_formatter);
    EXPECT_EQ(view.accessibleDescription(), QStringLiteral("1,440 stones"));
}

class PaintCount : public QObject {
  public:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Paint) ++painted;
        return false;
    }
    int painted = 0;
};

TEST_F(DesignPictures, areNotPaintedAnewWhileNothingChanges) {
    const auto heron = named("Heron");
    const auto picture = m_pictures.stones(heron.id);
    artwork::DesignView view;
    PaintCount count;
    view.installEventFilter(&count);
    view.showDesign(QStringLiteral("Heron"), picture, heron.width, heron.height, m_formatter);
    view.resize(320, 220);
    view.show();
    ASSERT_TRUE(test::waitFor([&] { return count.painted > 0; }));
    test::handleQueued();
    const int before = count.painted;
    view.showDesign(QStringLiteral("Heron"), picture, heron.width, heron.height, m_formatter);
    test::handleQueued();
    EXPECT_EQ(count.painted, before);
    view.showDesign(QStringLiteral("Heron"), picture, heron.height, heron.width, m_formatter);
    EXPECT_TRUE(test::waitFor([&] { return count.painted > before; }));
}

} // namespace

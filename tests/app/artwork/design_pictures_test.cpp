// SPDX-License-Identifier: MIT
#include "app/artwork/design_pictures.h"

#include "app/artwork/design_view.h"
#include "app/demo/demo_book.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>

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

TEST_F(DesignPictures, sayWhatTheyShow) {
    artwork::DesignView view;
    view.showDesign(QStringLiteral("Heron"), m_pictures.stones(named("Heron").id), QStringLiteral("5 in"),
                    QStringLiteral("7 in"));
    EXPECT_EQ(view.accessibleName(), QStringLiteral("Picture of Heron"));
    EXPECT_EQ(view.accessibleDescription(), QStringLiteral("522 stones"));
    view.showDesign(QStringLiteral("Heron"), nullptr, {}, {});
    EXPECT_EQ(view.accessibleName(), QStringLiteral("No picture of Heron"));
}

} // namespace

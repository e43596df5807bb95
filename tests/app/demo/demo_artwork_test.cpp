// SPDX-License-Identifier: MIT
// The demo's drawings are what a shop would hand to its cutter: holes that do not tear into one another, in rows that
// look even, and as many as the price is made of.
#include "app/demo/demo_artwork.h"

#include "app/demo/demo_book.h"
#include "core/artwork/artwork_file.h"
#include "core/artwork/count.h"
#include "tests/support/described.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>

namespace {

using namespace sp;

class DemoArtwork : public testing::Test {
  protected:
    DemoArtwork() {
        auto book = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_book = std::move(*book);
    }

    /// What is kept with it, counted like a customer's file.
    artwork::Counted counted(const catalogue::Design& design) {
        const auto kept = m_book->artwork(design.id);
        EXPECT_TRUE(kept && *kept) << design.name;
        if (!kept || !*kept) return {};
        const auto drawing = artwork::readArtwork((*kept)->file, (*kept)->fileName);
        EXPECT_TRUE(drawing) << design.name;
        if (!drawing) return {};
        artwork::CountOptions options;
        options.millimetresPerUnit = (*kept)->unit.millimetres();
        auto stones = artwork::countStones(*drawing, options, (*kept)->fileName);
        EXPECT_TRUE(stones) << design.name;
        return stones ? *stones : artwork::Counted{};
    }

    std::vector<catalogue::Design> designs() { return m_book->designs().value(); }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    std::unique_ptr<db::Book> m_book;
};

TEST_F(DemoArtwork, everyDesignIsOfAnotherKind) {
    std::set<std::string> kinds;
    for (const auto& shape : demo::demoShapes()) kinds.insert(shape.kind);
    EXPECT_EQ(kinds, (std::set<std::string>{"filled", "two colours", "lettering", "outline", "three sizes", "a row"}));
    EXPECT_EQ(designs().size(), kinds.size());
}

TEST_F(DemoArtwork, aDesignHasTheStonesOfItsDrawing) {
    std::map<base::Id, catalogue::Material> materials;
    const auto known = m_book->materials().value();
    for (const auto& material : known) materials[material.id] = material;
    for (const auto& design : designs()) {
        const auto drawn = counted(design);
        std::map<std::string, std::int64_t> bySize;
        for (const auto& group : drawn.groups)
            bySize[artwork::publishedStoneSizes()[group.size.value()].name] += group.count.value();
        std::map<std::string, std::int64_t> priced;
        for (const auto& stone : design.stones) priced[materials[stone.material].stone.size] += stone.count.value();
        EXPECT_EQ(priced, bySize) << design.name;
        EXPECT_EQ(drawn.groups.size(), design.stones.size()) << design.name;
        EXPECT_EQ(drawn.duplicates, 0U) << design.name;
    }
}

TEST_F(DemoArtwork, isAsLargeAsItsDesign) {
    for (const auto& design : designs()) {
        const auto drawn = counted(design);
        EXPECT_NEAR(drawn.box.width(), design.width.millimetres(), 0.02) << design.name;
        EXPECT_NEAR(drawn.box.height(), design.height.millimetres(), 0.02) << design.name;
    }
}

/// Holes are cut as wide as their stones, and what stands between two must not tear when it is weeded; a neighbour is
/// at most half a stone away (common practice, no source).
TEST_F(DemoArtwork, stonesNeitherOverlapNorStandAlone) {
    for (const auto& design : designs()) {
        const auto drawn = counted(design);
        EXPECT_EQ(drawn.collisions, 0U) << design.name;
        std::size_t alone = 0;
        for (std::size_t i = 0; i < drawn.stones.size(); ++i) {
            double nearest = 1e9;
            for (std::size_t k = 0; k < drawn.stones.size(); ++k) {
                if (k == i) continue;
                const auto& one = drawn.stones[i];
                const auto& other = drawn.stones[k];
                nearest = std::min(nearest,
                                   artwork::distance(one.centre, other.centre) - (one.diameter + other.diameter) / 2);
            }
            EXPECT_GT(nearest, 0) << design.name << " at " << drawn.stones[i].centre.x << ", "
                                  << drawn.stones[i].centre.y;
            if (nearest > drawn.stones[i].diameter / 2) ++alone;
        }
        EXPECT_LE(alone, 1U) << design.name; // an eye
    }
}

/// The demo's prices are told in many places: its counts are held here.
TEST_F(DemoArtwork, countsAreThoseThatTheDemoIsToldWith) {
    std::map<std::string, std::vector<std::int64_t>> counts;
    for (const auto& design : designs())
        for (const auto& stone : design.stones) counts[design.name].push_back(stone.count.value());
    EXPECT_EQ(counts["Lantern"], (std::vector<std::int64_t>{212, 96}));
    EXPECT_EQ(counts["Studio crest"], (std::vector<std::int64_t>{410, 186}));
    EXPECT_EQ(counts["Nameplate “Odette”"], (std::vector<std::int64_t>{148}));
    EXPECT_EQ(counts["Heron"], (std::vector<std::int64_t>{318, 140, 64}));
    EXPECT_EQ(counts["Paper boat"], (std::vector<std::int64_t>{76, 74, 60}));
    EXPECT_EQ(counts["Clover row"], (std::vector<std::int64_t>{264}));
}

} // namespace

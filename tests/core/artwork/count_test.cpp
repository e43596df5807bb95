// SPDX-License-Identifier: MIT
#include "core/artwork/count.h"
#include "core/artwork/messages.h"
#include "core/artwork/scale.h"
#include "tests/support/seed.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <cmath>
#include <numbers>
#include <random>

namespace sp::artwork {
namespace {

using testing::ElementsAre;
using testing::Pair;

/// A drawing of discs in millimetres: x, y, diameter.
struct Round {
    double x, y, diameter;
    const char* colour = "#1f3a93";
};

Drawing drawingOf(const std::vector<Round>& rounds) {
    DrawingBuilder builder("test");
    for (const auto& r : rounds)
        builder.add(Disc{{r.x, r.y}, r.diameter / 2, builder.inkOf(r.colour, "", true), builder.nextShape()});
    return builder.finish().value();
}

Counted counted(const Drawing& drawing, CountOptions options = {}) {
    const auto result = countStones(drawing, options, "test");
    EXPECT_TRUE(result) << describe(result.error());
    return result.value_or(Counted{});
}

std::string namesOf(const Counted& result) {
    std::string names;
    for (const auto& group : result.groups)
        names += fmt::format("{}{} {} {}", names.empty() ? "" : ", ", group.count.value(), group.colour,
                             group.size ? publishedStoneSizes()[*group.size].name : "none");
    return names;
}

struct SizeRow {
    double diameter;
    double allowance;
    const char* size;
};
void PrintTo(const SizeRow& row, std::ostream* out) { *out << row.diameter << " mm"; }
class Sizes : public testing::TestWithParam<SizeRow> {};
TEST_P(Sizes, followTheTable) {
    const auto& row = GetParam();
    const auto size = sizeOfHole(row.diameter, row.allowance, publishedStoneSizes());
    EXPECT_EQ(size ? publishedStoneSizes()[*size].name : "none", row.size);
}
// threadart.com, "Rhinestone facts", and taylorcrystal.hu, size table: ranges in millimetres.
INSTANTIATE_TEST_SUITE_P(Published, Sizes,
                         testing::Values(SizeRow{1.9, 0, "SS6"}, SizeRow{2.1, 0, "SS6"}, SizeRow{2.2, 0, "none"},
                                         SizeRow{2.4, 0, "SS8"}, SizeRow{2.8, 0, "SS10"}, SizeRow{2.95, 0, "none"},
                                         SizeRow{3.2, 0, "SS12"}, SizeRow{3.2, 0.3, "SS10"}, SizeRow{3.9, 0, "SS16"},
                                         SizeRow{4.7, 0, "SS20"}, SizeRow{6.4, 0, "SS30"}, SizeRow{7.2, 0, "SS34"},
                                         SizeRow{9, 0, "none"}));

TEST(Count, countsDuplicatesOnce) {
    const auto result = counted(drawingOf({{0, 0, 2.8}, {0, 0, 2.8}, {0.015, 0, 2.81}, {10, 0, 2.8}}));
    EXPECT_EQ(result.stones.size(), 2);
    EXPECT_EQ(result.duplicates, 2);
    EXPECT_EQ(result.collisions, 0);
}

TEST(Count, keepsTheDuplicateThatIsSeen) {
    EXPECT_EQ(namesOf(counted(drawingOf({{0, 0, 2.8, "#111111"}, {0, 0, 2.8, "#222222"}}))), "1 #222222 SS10");
}

TEST(Count, reportsHolesThatWouldTear) {
    const auto result = counted(drawingOf({{0, 0, 2.8}, {2.7, 0, 2.8}, {5.5, 0, 2.8}, {20, 0, 2.8}}));
    EXPECT_EQ(result.stones.size(), 4);
    EXPECT_EQ(result.collisions, 1);
    EXPECT_TRUE(result.stones[0].collides && result.stones[1].collides);
    EXPECT_FALSE(result.stones[2].collides || result.stones[3].collides);
}

TEST(Count, takesRingsForOneStone) {
    const auto result = counted(drawingOf({{0, 0, 2.8}, {0, 0, 2.0}, {0, 0, 5.5}}));
    EXPECT_EQ(namesOf(result), "1 #1f3a93 SS10"); // the largest that fits a size
    EXPECT_THAT(result.leftOut, ElementsAre(Pair(base::say(Note::Ring), 2)));
}

TEST(Count, takesARoundLineAroundStonesForALine) {
    const auto result = counted(drawingOf({{0, 0, 11}, {-3, 0, 2.8}, {3, 0, 2.8}}));
    EXPECT_EQ(result.stones.size(), 2);
    EXPECT_EQ(result.collisions, 0);
    EXPECT_THAT(result.leftOut, ElementsAre(Pair(base::say(Note::LineAroundStones), 1)));
}

TEST(Count, leavesOutWhatIsNoStonesSize) {
    const auto result = counted(drawingOf({{0, 0, 2.8}, {40, 0, 30}, {80, 0, 0.5}}));
    EXPECT_THAT(result.leftOut, ElementsAre(Pair(base::say(Note::TooLarge), 1), Pair(base::say(Note::TooSmall), 1)));
}

TEST(Count, keepsDiscsThatFitNoSizeVisible) {
    const auto result = counted(drawingOf({{0, 0, 2.8}, {10, 0, 5.5}, {20, 0, 5.5}, {30, 0, 9}}));
    EXPECT_EQ(namesOf(result), "1 #1f3a93 SS10, 2 #1f3a93 none, 1 #1f3a93 none");
}

TEST(Count, saysHowLargeDiscsAreThatCannotBeStones) {
    const auto tooSmall = countStones(drawingOf({{0, 0, 0.2}, {5, 0, 0.4}}), {}, "v21.dxf");
    ASSERT_FALSE(tooSmall);
    EXPECT_EQ(describe(tooSmall.error().message()), "NoStones(v21.dxf, OutlinesThereAre(CountOf(2, TooSmall(2))), "
                                                    "SaveAtTrueSize(0.2, 0.4, 1.5, 12))");
    const auto empty = countStones(drawingOf({}), {}, "empty.svg");
    ASSERT_FALSE(empty);
    EXPECT_EQ(describe(empty.error().message()), "NoStones(empty.svg, NoOutlines, DrawStonesAsCircles)");
}

TEST(Count, sortsByColourAndSpreadOfDiameters) {
    const auto result = counted(drawingOf({{0, 0, 2.79}, {10, 0, 2.81, "#c0392b"}, {20, 0, 2.80}, {30, 0, 3.1}}));
    EXPECT_EQ(namesOf(result), "2 #1f3a93 SS10, 1 #c0392b SS10, 1 #1f3a93 SS12");
    EXPECT_EQ(result.groups[0].smallest.nanometres(), 2'790'000);
    EXPECT_EQ(result.groups[0].largest.nanometres(), 2'800'000);
}

TEST(Count, measuresTheWholeAndEachColour) {
    const auto result = counted(drawingOf({{0, 0, 2.8}, {10, 20, 2.8}, {5, 5, 2.8, "#c0392b"}}));
    EXPECT_EQ(result.width().nanometres(), 12'800'000);
    EXPECT_EQ(result.height().nanometres(), 22'800'000);
    ASSERT_EQ(result.colours.size(), 2);
    EXPECT_NEAR(result.colours[1].box.width(), 2.8, 1e-9);
    EXPECT_EQ(result.colours[0].count.value(), 2);
}

TEST(Count, tellsEllipsesFromOtherShapes) {
    DrawingBuilder builder("test");
    const auto ink = builder.inkOf("#000000", "", true);
    const auto ring = [&](auto pointAt, int corners) {
        std::vector<Point> points;
        for (int i = 0; i < corners; ++i) points.push_back(pointAt(2 * std::numbers::pi * i / corners));
        builder.add(points, true, false, ink, builder.nextShape());
    };
    ring([](double a) { return Point{3 * std::cos(a), 1.5 * std::sin(a)}; }, 48);
    ring([](double a) { return Point{std::cos(a) * (2 + std::cos(5 * a)), std::sin(a) * (2 + std::cos(5 * a))}; }, 60);
    ring([](double a) { return Point{40 * std::cos(a), 10 * std::sin(a)}; }, 4);
    builder.add(Disc{{0, 0}, 1.4, ink, builder.nextShape()});
    const auto result = counted(builder.finish().value());
    EXPECT_THAT(result.outlineClasses,
                ElementsAre(Classification::Ellipse, Classification::NotRound, Classification::Large));
}

// The laws: moving, turning and mirroring change nothing; a scale of the drawing and of the unit cancel out.
TEST(Count, doesNotCareWhereTheDrawingStands) {
    std::mt19937_64 random(test::printedSeed());
    std::uniform_real_distribution<double> place(0, 120);
    const double diameters[] = {2.0, 2.8, 3.1, 3.9, 5.5, 0.7, 40};
    for (int round = 0; round < 20; ++round) {
        std::vector<Round> rounds;
        for (int i = 0; i < 300; ++i) rounds.push_back({place(random), place(random), diameters[random() % 7]});
        const Drawing before = drawingOf(rounds);
        const auto expected = counted(before);
        const double scale = std::exp(std::uniform_real_distribution<double>(-3, 3)(random));
        const Matrix move = Matrix::translation(place(random) * 50, -place(random)) * Matrix::rotation(place(random)) *
                            Matrix::scaling(scale, -scale);
        Drawing after = before;
        for (Disc& disc : after.discs) disc = {move(disc.centre), disc.radius * scale, disc.ink, disc.shape};
        CountOptions options;
        options.millimetresPerUnit = 1 / scale;
        const auto result = counted(after, options);
        EXPECT_EQ(namesOf(result), namesOf(expected));
        EXPECT_EQ(result.discClasses, expected.discClasses);
        EXPECT_EQ(result.duplicates, expected.duplicates);
        EXPECT_EQ(result.collisions, expected.collisions);
    }
}

// Every pair compared with every other, the slow way.
TEST(Count, findsTheCollisionsThatComparingAllPairsFinds) {
    std::mt19937_64 random(test::printedSeed());
    std::uniform_real_distribution<double> place(0, 60);
    for (int round = 0; round < 20; ++round) {
        std::vector<Round> rounds;
        for (int i = 0; i < 250; ++i) rounds.push_back({place(random), place(random), i % 3 == 0 ? 3.9 : 2.0});
        const auto result = counted(drawingOf(rounds));
        std::size_t pairs = 0;
        for (std::size_t i = 0; i < result.stones.size(); ++i)
            for (std::size_t j = 0; j < i; ++j) {
                const auto& a = result.stones[i];
                const auto& b = result.stones[j];
                pairs += distance(a.centre, b.centre) < (a.diameter + b.diameter) / 2 - 0.02;
            }
        EXPECT_EQ(result.collisions, pairs);
    }
}

struct ScaleRow {
    const char* name;
    double unit; ///< millimetres
};
void PrintTo(const ScaleRow& row, std::ostream* out) { *out << row.name; }
class Scales : public testing::TestWithParam<ScaleRow> {};
TEST_P(Scales, areFoundFromTheStones) {
    std::vector<Round> rounds;
    double x = 0;
    for (const double diameter : {2.0, 2.8, 2.8, 3.1, 3.9, 4.7, 6.4})
        rounds.push_back({x += 10 / GetParam().unit, 0, diameter / GetParam().unit});
    const auto proposals = proposeScales(drawingOf(rounds), {});
    ASSERT_EQ(proposals.size(), 5);
    EXPECT_EQ(proposals.front().name, GetParam().name);
    EXPECT_EQ(proposals.front().fitting, 7);
}
INSTANTIATE_TEST_SUITE_P(Units, Scales,
                         testing::Values(ScaleRow{"96 dpi", 25.4 / 96}, ScaleRow{"90 dpi", 25.4 / 90},
                                         ScaleRow{"72 dpi", 25.4 / 72}, ScaleRow{"mm", 1}, ScaleRow{"in", 25.4}));

TEST(Scales, areReadFromWords) {
    EXPECT_NEAR(parseScale("96 dpi")->millimetresPerUnit, 25.4 / 96, 1e-12);
    EXPECT_NEAR(parseScale(" 72DPI ")->millimetresPerUnit, 25.4 / 72, 1e-12);
    EXPECT_NEAR(parseScale("0.2646")->millimetresPerUnit, 0.2646, 1e-12);
    EXPECT_EQ(parseScale("in")->millimetresPerUnit, 25.4);
    for (const char* bad : {"", "dpi", "12 parsecs", "nan"})
        EXPECT_EQ(parseScale(bad).error().code, base::Code::Invalid);
    for (const char* far : {"0", "-1", "0 dpi", "1e8"}) EXPECT_EQ(parseScale(far).error().code, base::Code::OutOfRange);
}

} // namespace
} // namespace sp::artwork

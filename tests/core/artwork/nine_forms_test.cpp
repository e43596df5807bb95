// SPDX-License-Identifier: MIT
#include "core/artwork/artwork_file.h"
#include "core/artwork/count.h"
#include "tests/support/nine_forms.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <map>

namespace sp::artwork {
namespace {

using support::HoleForm;
using Histogram = std::map<std::string, std::int64_t>;

Histogram histogramOf(const Counted& counted) {
    Histogram histogram;
    for (const auto& group : counted.groups)
        histogram[fmt::format("{} {}", group.colour,
                              group.size ? publishedStoneSizes()[*group.size].name : "no size")] += group.count.value();
    return histogram;
}

class NineForms : public testing::TestWithParam<HoleForm> {};

/// 1,000 holes in rows of 32: every third from the first is large; a row is blue when its number is even.
Histogram drawn() {
    Histogram histogram;
    for (int i = 0; i < 1000; ++i)
        ++histogram[fmt::format("{} {}", (i / 32) % 2 == 0 ? "#1f3a93" : "#c0392b", i % 3 == 0 ? "SS12" : "SS10")];
    return histogram;
}

TEST_P(NineForms, countTheSame) {
    const auto drawing = readArtwork(support::drawHoles(GetParam(), 1000), "holes.svg");
    ASSERT_TRUE(drawing) << describe(drawing.error());
    ASSERT_TRUE(drawing->millimetresPerUnit);
    EXPECT_NEAR(*drawing->millimetresPerUnit, 1, 1e-12);
    const auto counted = countStones(*drawing, {}, "holes.svg");
    ASSERT_TRUE(counted) << describe(counted.error());
    EXPECT_EQ(histogramOf(*counted), drawn());
    EXPECT_EQ(counted->duplicates, 0);
    EXPECT_EQ(counted->collisions, 0);
    EXPECT_TRUE(counted->leftOut.empty());
    EXPECT_TRUE(drawing->warnings.empty());
    // The outermost discs of the grid: 31 steps of 5 mm and a disc.
    EXPECT_NEAR(counted->width().millimetres(), 31 * 5 + 1.55 + 1.55, 0.16);
    for (const Stone& stone : counted->stones) EXPECT_NEAR(stone.diameter, stone.diameter > 2.95 ? 3.1 : 2.8, 0.002);
}

INSTANTIATE_TEST_SUITE_P(Holes, NineForms, testing::ValuesIn(support::kHoleForms), [](const auto& tested) {
    std::string name;
    for (const char c : support::nameOf(tested.param))
        if (std::isalnum(static_cast<unsigned char>(c)) != 0) name.push_back(c);
    return name;
});

TEST(NineForms, countTheSameAsDxf) {
    const auto drawing = readArtwork(support::drawHolesAsDxf(1000), "holes.dxf");
    ASSERT_TRUE(drawing) << describe(drawing.error());
    EXPECT_EQ(drawing->millimetresPerUnit, 1);
    const auto counted = countStones(*drawing, {}, "holes.dxf");
    ASSERT_TRUE(counted) << describe(counted.error());
    Histogram expected; // colours 5 and 1 of the numbered palette
    for (const auto& [key, count] : drawn())
        expected[(key.starts_with("#1f") ? "#0000ff" : "#ff0000") + key.substr(7)] = count;
    EXPECT_EQ(histogramOf(*counted), expected);
}

} // namespace
} // namespace sp::artwork

// SPDX-License-Identifier: MIT
// Figures are worked by hand from two rules: an edge or a closed line takes round(length / pitch) stones between its
// corners, an open line one more (common practice, no source); an edge's stones stand half a stone inside it.
#include "core/artwork/artwork_file.h"
#include "core/artwork/colour_parts.h"
#include "core/artwork/estimate_by_colour.h"
#include "core/artwork/region.h"
#include "tests/support/amounts.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace sp::artwork {
namespace {

EstimateRequest stones(double diameter, double pitch, StoneStyle style = StoneStyle::Outline) {
    return {support::decimalMm(diameter), support::decimalMm(pitch), {}, style, {}};
}

Drawing drawn(const std::string& inside) {
    auto drawing = readArtwork("<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' "
                               "viewBox='0 0 100 100'>" +
                                   inside + "</svg>",
                               "drawing.svg");
    EXPECT_TRUE(drawing) << describe(drawing.error());
    return drawing.value_or(Drawing{});
}

std::vector<ColourEstimate> estimated(const std::string& inside, const std::vector<ColourRequest>& requests,
                                      bool withLines = true) {
    auto estimates = estimateByColour(drawn(inside), 1, requests, withLines, "drawing.svg");
    EXPECT_TRUE(estimates) << describe(estimates.error());
    return estimates.value_or(std::vector<ColourEstimate>{});
}

/// No two stones of any colours nearer than both are wide; a stone that just fits may lack 2 um to an edge.
void expectClear(const std::vector<ColourEstimate>& estimates, const std::vector<ColourRequest>& requests) {
    std::vector<std::pair<Point, double>> all;
    for (const auto& colour : estimates)
        for (const auto& request : requests)
            if (request.colour == colour.colour && request.stones)
                for (const Point p : colour.estimate.centres)
                    all.emplace_back(p, request.stones->diameter.millimetres() / 2);
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            ASSERT_GE(distance(all[i].first, all[k].first), all[i].second + all[k].second - 0.005);
}

// A disc of 1.4 mm radius has 118 corners, pi sqrt(1,400) = 117.5 rounded up: 847 of them are 99,946 corners.
TEST(EstimateByColour, refusesTooManyCornersBeforeTheyAreDrawn) {
    Drawing drawing;
    drawing.inks = {{"#ff0000", "", true}};
    drawing.discs.assign(848, {{10, 10}, 1.4, 0, 0});
    const auto refused = checkCorners(drawing, 1, "discs.svg");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, base::Code::TooLarge);
    drawing.discs.pop_back();
    EXPECT_TRUE(checkCorners(drawing, 1, "discs.svg"));
    EXPECT_FALSE(checkCorners(drawing, 4, "discs.svg")); // drawn larger, a circle has more
}

TEST(EstimateByColour, tellsRedAndBlueApart) {
    const std::vector<ColourRequest> requests{{"#ff0000", stones(2.8, 3.1)}, {"#0000ff", stones(4, 4.5)}};
    const auto estimates = estimated("<rect x='5' y='5' width='30' height='20' fill='red'/>"
                                     "<rect x='35' y='5' width='40' height='20' fill='blue'/>",
                                     requests);
    ASSERT_EQ(estimates.size(), 2U);
    EXPECT_EQ(estimates[0].colour, "#ff0000");
    // 27.2 / 3.1 = 8.8 and 17.2 / 3.1 = 5.5 (5.548): 2 x (9 + 6)
    EXPECT_EQ(estimates[0].estimate.count.value(), 30);
    EXPECT_NEAR(estimates[0].estimate.area, 600, 0.01);
    EXPECT_EQ(estimates[1].colour, "#0000ff");
    // 36 / 4.5 = 8 and 16 / 4.5 = 3.6: 2 x (8 + 4)
    EXPECT_EQ(estimates[1].estimate.count.value(), 24);
    expectClear(estimates, requests);
}

TEST(EstimateByColour, cutsWhatLiesOnTopOutOfWhatLiesBelow) {
    const std::string shapes = "<rect width='40' height='40'/><rect x='10' y='10' width='20' height='20' fill='#fff'/>";
    const auto estimates = estimated(shapes, {{"#000000", stones(2.8, 3.1, StoneStyle::Fill)}, {"#ffffff", {}}});
    ASSERT_EQ(estimates.size(), 2U);
    EXPECT_NEAR(estimates[0].estimate.area, 40 * 40 - 20 * 20, 0.01);
    for (const Point p : estimates[0].estimate.centres) {
        const bool isInWhite = p.x > 10 - 1.39 && p.x < 30 + 1.39 && p.y > 10 - 1.39 && p.y < 30 + 1.39;
        const double fromCorner =
            std::hypot(std::max(std::abs(p.x - 20) - 10, 0.0), std::max(std::abs(p.y - 20) - 10, 0.0));
        EXPECT_TRUE(!isInWhite || fromCorner > 1.39) << p.x << ", " << p.y;
    }
    EXPECT_TRUE(estimates[1].isFree);
    EXPECT_EQ(estimates[1].estimate.count.value(), 0);
    // The other way round the white one is all that is to be seen of what it hides.
    const auto hidden =
        estimated("<rect x='10' y='10' width='20' height='20' fill='red'/><rect width='40' height='40'/>",
                  {{"#000000", stones(2.8, 3.1)}, {"#ff0000", stones(2.8, 3.1)}});
    ASSERT_EQ(hidden.size(), 2U);
    EXPECT_EQ(hidden[0].colour, "#ff0000");
    EXPECT_EQ(hidden[0].estimate.count.value(), 0);
    EXPECT_TRUE(hidden[0].estimate.box.isEmpty());
    EXPECT_EQ(hidden[1].estimate.count.value(), 4 * 12); // 37.2 / 3.1 = 12
}

TEST(EstimateByColour, takesTheSmallerOfTwoCutLinesForTheUpper) {
    for (const bool smallFirst : {false, true}) {
        const std::string large = "<rect width='40' height='40' fill='none' stroke='red'/>";
        const std::string small = "<rect x='10' y='10' width='20' height='20' fill='none' stroke='blue'/>";
        const auto parts = colourPartsOf(drawn(smallFirst ? small + large : large + small), 1, true, "drawing.svg");
        ASSERT_TRUE(parts);
        for (const auto& part : *parts)
            EXPECT_NEAR(areaOf(part.region), part.colour == "#ff0000" ? 1200 : 400, 0.01) << part.colour;
    }
}

TEST(EstimateByColour, setsALineAsARow) {
    const std::vector<ColourRequest> black{{"#000000", stones(2.8, 3.1)}};
    const auto one = [&](const std::string& line) {
        const auto estimates = estimated(line, black);
        return estimates.empty() ? -1 : estimates[0].estimate.count.value();
    };
    EXPECT_EQ(one("<path d='M5 5 h31' fill='none' stroke='black'/>"), 31 / 3.1 + 1);
    // Half a circle of radius 20 is 62.83 long: 62.83 / 3.1 = 20.3.
    EXPECT_EQ(one("<path d='M10 50 a20 20 0 0 1 40 0' fill='none' stroke='black'/>"), 20 + 1);
    // Two arms of 31 that meet at a right angle share the stone on the corner.
    EXPECT_EQ(one("<path d='M5 5 h31 v31' fill='none' stroke='black'/>"), 10 + 10 + 1);
    // Beside a filled shape a closed line is a row, too: 2 pi 20 / 3.1 = 40.5 (40.54).
    const auto ring = estimated("<rect x='70' y='70' width='20' height='20' fill='red'/>"
                                "<circle cx='30' cy='30' r='20' fill='none' stroke='black'/>",
                                {{"#000000", stones(2.8, 3.1)}, {"#ff0000", {}}});
    ASSERT_EQ(ring.size(), 2U);
    EXPECT_EQ(ring[1].estimate.count.value(), 41);
    // Of 31 only 15.5 are to be seen.
    const auto half = estimated("<path d='M5 50 h31' fill='none' stroke='black'/>"
                                "<rect x='20.5' y='40' width='30' height='20' fill='red'/>",
                                {{"#000000", stones(2.8, 3.1)}, {"#ff0000", {}}});
    ASSERT_EQ(half.size(), 2U);
    EXPECT_EQ(half[0].estimate.count.value(), 5 + 1);
    EXPECT_NEAR(ring[1].estimate.lineLength, 40 * std::numbers::pi, 0.01);
}

TEST(EstimateByColour, keepsRowsAndFillingsClearOfOneAnother) {
    const std::vector<ColourRequest> requests{
        {"#ff0000", stones(2.8, 3.1, StoneStyle::Fill)}, {"#0000ff", stones(4, 4.5)}, {"#008000", stones(1.9, 2.3)}};
    const auto estimates = estimated("<rect x='5' y='5' width='60' height='40' fill='red'/>"
                                     "<path d='M0 25 C20 0 40 50 80 20' fill='none' stroke='blue'/>"
                                     "<path d='M0 10 L80 40' fill='none' stroke='green'/>",
                                     requests);
    ASSERT_EQ(estimates.size(), 3U);
    for (const auto& colour : estimates) EXPECT_GT(colour.estimate.count.value(), 5) << colour.colour;
    expectClear(estimates, requests);
}

TEST(EstimateByColour, setsAnOutlineInAnotherStoneThanTheFilling) {
    const Shape plate{{{{0, 0}, {60, 0}, {60, 40}, {0, 40}}}, false};
    auto request = stones(4, 4.5, StoneStyle::Both);
    request.outline = StoneSetting{support::decimalMm(2), support::decimalMm(2.4)};
    const auto estimate = estimateStones(std::span(&plate, 1), request, "plate");
    ASSERT_TRUE(estimate);
    EXPECT_EQ(estimate->outline.count.value(), 2 * (24 + 16)); // 58 / 2.4 = 24.2, 38 / 2.4 = 15.8
    EXPECT_GT(estimate->filling().count.value(), 0);
    EXPECT_EQ(estimate->outline.count.value() + estimate->filling().count.value(), estimate->count.value());
    const auto edge = static_cast<std::size_t>(estimate->outline.count.value());
    for (std::size_t i = 0; i < estimate->centres.size(); ++i)
        for (std::size_t k = 0; k < i; ++k) {
            const double apart = i < edge ? 2 : k < edge ? 3 : 4;
            ASSERT_GE(distance(estimate->centres[i], estimate->centres[k]), apart - 1e-3);
        }
}

TEST(EstimateByColour, saysWhereALayoutByHandMayDiffer) {
    // A plate of 30 x 20 with a tongue of 2 x 20, too narrow for a stone of 2.8.
    const Shape shape{{{{0, 0}, {30, 0}, {30, 9}, {50, 9}, {50, 11}, {30, 11}, {30, 20}, {0, 20}}}, false};
    const auto estimate = estimateStones(std::span(&shape, 1), stones(2.8, 3.1), "plate");
    ASSERT_TRUE(estimate);
    ASSERT_FALSE(estimate->range.empty());
    const auto& narrow = estimate->range.back();
    EXPECT_EQ(narrow.id, idOf(Note::NarrowPartsMayHold)) << describe(narrow);
    ASSERT_EQ(narrow.values.size(), 2U);
    EXPECT_EQ(narrow.values[0], base::asValue(1));
    // Half of its perimeter, about 22, over 3.1.
    EXPECT_EQ(narrow.values[1], base::asValue(7));
    // The mouth of the tongue is a corner on the long way round, so that it has five stretches.
    EXPECT_EQ(estimate->range.front(), base::say(Note::StretchesMayDiffer, 5));
    EXPECT_EQ(estimate->most.value() - estimate->count.value(), 5 + 7);
    const Shape plate{{{{0, 0}, {30, 0}, {30, 20}, {0, 20}}}, false};
    const auto plain = estimateStones(std::span(&plate, 1), stones(2.8, 3.1), "plate");
    ASSERT_TRUE(plain);
    EXPECT_EQ(plain->range, std::vector{base::say(Note::StretchesMayDiffer, 4)});
}

TEST(EstimateByColour, refusesWhereNothingIsToBeSet) {
    const auto drawing = drawn("<rect width='40' height='40'/>");
    const auto refused = estimateByColour(drawing, 1, std::vector<ColourRequest>{{"#000000", {}}}, true, "drawing.svg");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, base::Code::Missing);
    const auto narrow =
        estimateByColour(drawing, 0.01, std::vector<ColourRequest>{{"#000000", stones(2.8, 3.1)}}, true, "drawing.svg");
    ASSERT_FALSE(narrow);
    EXPECT_EQ(narrow.error().fault, idOf(Fault::NarrowerThanAStone));
}

} // namespace
} // namespace sp::artwork

// SPDX-License-Identifier: MIT
//
// What stones, tape, templates and backing cost. With the figure worked by hand beside each row where no source is
// named. All prices and times are invented.
#include "tests/core/costing/part_figure.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

INSTANTIATE_TEST_SUITE_P(Stones, PartFigure,
                         testing::Values(
                             // 24 × 200 × 9.99 / 1,440
                             PartCase{"stones", [](Line&, Book& b) { setPrice(b, "Aqua", 999, 1440); }, Part::Stone, 0,
                                      33'300'000},
                             // 24 × 100 ÷ 0.96 = 2,500, × 6.50 / 1,440 = 11.2847222…
                             PartCase{"stones of the second row, with loss",
                                      [](Line&, Book& b) {
                                          setPrice(b, "Jet", 650, 1440);
                                          b.materials[idOf("Jet")].material.stone.loss = Rate::fromPercent(4);
                                      },
                                      Part::Stone, 1, 11'284'722},
                             // 24 × 200 ÷ 0.8 × 0.01 = 60 and 24 × 100 × 0.005 = 12
                             PartCase{"stones together",
                                      [](Line&, Book& b) {
                                          setPrice(b, "Aqua", 1440, 1440);
                                          setPrice(b, "Jet", 720, 1440);
                                          b.materials[idOf("Aqua")].material.stone.loss = Rate::fromPercent(20);
                                      },
                                      Part::Stones, 0, 72'000'000}));

INSTANTIATE_TEST_SUITE_P(
    Sheets, PartFigure,
    testing::Values(
        // 24 ÷ 3 lifts = 8 pieces of tape, six to a sheet: 2 sheets
        PartCase{"tape, whole sheets", [](Line&, Book& b) { useTape(b, 3, 145, kWhole); }, Part::Tape, 0, 2'900'000},
        // 18 ÷ 3 = 6: 1 sheet
        PartCase{"tape, a sheet exactly",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(18);
                     useTape(b, 3, 145, kWhole);
                 },
                 Part::Tape, 0, 1'450'000},
        // 19 ÷ 3 is 7 pieces: 2 sheets
        PartCase{"tape, one lift over",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(19);
                     useTape(b, 3, 145, kWhole);
                 },
                 Part::Tape, 0, 2'900'000},
        // 25 ÷ 2 lifts ÷ 6 × 1.44: the half-used piece is paid by half
        PartCase{"tape by position",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     useTape(b, 2, 144, kByPosition);
                 },
                 Part::Tape, 0, 3'000'000},
        // 25 ÷ 2 lifts is 13 pieces, two beside each other: 7 rows of 4 in, 28 of 120 in × 6.00
        PartCase{"tape off a roll",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     useTape(b, 2, 600, kWhole);
                     makeRoll(sheetOf(b, "Tape"));
                 },
                 Part::Tape, 0, 1'400'000},
        // Half an inch of margin leaves 8 of 9 in: still two beside each other, 28 + 1 in × 6.00 / 120
        PartCase{"tape off a roll with margins",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     useTape(b, 2, 600, kByPosition);
                     makeRoll(sheetOf(b, "Tape"));
                     sheetOf(b, "Tape").margin = quarters(2);
                 },
                 Part::Tape, 0, 1'450'000},
        // One for each of two colours: 1 sheet
        PartCase{"templates, whole sheets", [](Line&, Book& b) { useTemplates(b, 325); }, Part::Template, 0, 3'250'000},
        // 2 ÷ 6 × 3.24, however many pieces
        PartCase{"templates by position",
                 [](Line&, Book& b) {
                     useTemplates(b, 324);
                     sheetOf(b, "Template").basis = kByPosition;
                 },
                 Part::Template, 0, 1'080'000},
        // 2 beside each other: 4 of 120 in × 30.00
        PartCase{"templates off a roll",
                 [](Line&, Book& b) {
                     useTemplates(b, 3000);
                     makeRoll(sheetOf(b, "Template"));
                 },
                 Part::Template, 0, 1'000'000},
        // 24 of 96 × 3.25
        PartCase{"templates with planned pieces",
                 [](Line& l, Book& b) {
                     useTemplates(b, 325);
                     l.first().plannedPieces = Count::of(96);
                 },
                 Part::Template, 0, 812'500},
        // More ordered than planned: the job carries them all, once
        PartCase{"templates with fewer pieces planned",
                 [](Line& l, Book& b) {
                     useTemplates(b, 325);
                     l.first().plannedPieces = Count::of(23);
                 },
                 Part::Template, 0, 3'250'000},
        PartCase{"templates on the wall",
                 [](Line& l, Book& b) {
                     useTemplates(b, 325);
                     l.first().templatesOnWall = true;
                 },
                 Part::Template, 0, 0},
        // Six to a sheet: 25 are 5 sheets
        PartCase{"backing, whole sheets",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     setPrice(b, "Backing", 118);
                 },
                 Part::Base, 0, 5'900'000},
        // 25 ÷ 6 × 1.20
        PartCase{"backing by position",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     setPrice(b, "Backing", 120);
                     sheetOf(b, "Backing").basis = kByPosition;
                 },
                 Part::Base, 0, 5'000'000},
        // 25 are 13 rows of 4 in: 52 of 120 in × 6.00; a roll has no whole sheets
        PartCase{"backing off a roll",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     setPrice(b, "Backing", 600);
                     makeRoll(sheetOf(b, "Backing"));
                 },
                 Part::Base, 0, 2'600'000},
        // Cut as 4 1/2 × 4 1/2 in: four to a sheet of 9 × 12, 25 are 7 sheets
        PartCase{"backing with a border",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     setPrice(b, "Backing", 118);
                     sheetOf(b, "Backing").border = quarters(1);
                 },
                 Part::Base, 0, 8'260'000},
        // Half an inch all round leaves 8 × 11 in: four to a sheet
        PartCase{"backing with a margin",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     setPrice(b, "Backing", 118);
                     sheetOf(b, "Backing").margin = quarters(2);
                 },
                 Part::Base, 0, 8'260'000},
        // An inch between neighbours: 4 + 1 + 4 twice across 9 in, twice in 12 in: four to a sheet
        PartCase{"backing with a gap",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     setPrice(b, "Backing", 118);
                     sheetOf(b, "Backing").gap = inches(1);
                 },
                 Part::Base, 0, 8'260'000},
        // 6 × 4 1/2 in: turned, four fill 9 × 12 in: 25 are 7 sheets
        PartCase{"backing turned",
                 [](Line& l, Book& b) {
                     l.first().width = inches(6);
                     l.first().height = quarters(18);
                     l.quantity = Count::of(25);
                     setPrice(b, "Backing", 118);
                 },
                 Part::Base, 0, 8'260'000},
        // … and not turned two: 13 sheets
        PartCase{"backing with a direction",
                 [](Line& l, Book& b) {
                     l.first().width = inches(6);
                     l.first().height = quarters(18);
                     l.quantity = Count::of(25);
                     setPrice(b, "Backing", 118);
                     sheetOf(b, "Backing").oneWay = true;
                 },
                 Part::Base, 0, 15'340'000}));

} // namespace

} // namespace sp::costing

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/layout/fit_memo.h"
#include "core/needs/order_work.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sp::quoting {

// What stands on the bench sheet of a job, beside the press while it is made, as values in the order of working. It
// holds no price. Its words are found by whoever paints it.

/// A colour of a place, brushed where it stands: most stones first, of equals as the line has them (common practice, no
/// source).
struct BenchColour {
    std::string name; ///< of the material
    std::uint32_t rgb = 0;
    std::int64_t perPiece = 0;
    std::int64_t laidOut = 0; ///< for all pieces made
    std::int64_t toFetch = 0; ///< the same with what is lost

    friend bool operator==(const BenchColour&, const BenchColour&) = default;
};

/// What is cut of a sheet or a roll for a place.
struct BenchCut {
    catalogue::MaterialKind kind = catalogue::MaterialKind::Tape;
    std::string material;
    catalogue::SheetForm form = catalogue::SheetForm::Sheet;
    layout::Piece piece; ///< that is cut, the border around the design
    layout::Piece sheet;
    needs::SheetUse use;
    std::int64_t lifts = 1; ///< of tape
};

/// A place on another line of the sheet, or on the same.
struct BenchSpot {
    std::size_t line = 0;  ///< from 0
    std::size_t place = 0; ///< of that line, from 0

    friend bool operator==(const BenchSpot&, const BenchSpot&) = default;
};

struct BenchPlace {
    base::Id design; ///< none for a one-off
    std::string title;
    std::string place; ///< "Front"; may be empty
    units::Length width;
    units::Length height;
    bool isOnWall = false;            ///< its templates are, by the order or since its set was cut before
    std::optional<BenchSpot> setFrom; ///< where its templates are cut, of a set that it shares with an earlier place
    std::vector<BenchColour> colours;
    std::vector<BenchCut> cuts; ///< templates, tape, backing: those there are; templates where their set is cut
    std::int64_t firstMark = 0; ///< of its colours, counted over the places of the line from 0
};

/// A step to tick. Brushing and lifting stand for each colour, the others once for the line; what is done once for a
/// set stands whole where its templates are cut.
struct BenchStep {
    catalogue::Step step = catalogue::Step::Brush;
    std::optional<std::int64_t> mark; ///< of the colour
    units::Duration planned;

    friend bool operator==(const BenchStep&, const BenchStep&) = default;
};

/// A line of the order that is made.
struct BenchLine {
    std::string title;
    std::int64_t pieces = 0; ///< to hand over
    needs::LineSpares spares;
    std::vector<catalogue::SizeCount> sizes; ///< of all that are made; empty where there are none
    std::string base;                        ///< the blank or backing; empty for the customer's own garment
    bool isOnBacking = false;
    std::vector<BenchPlace> places;
    std::vector<BenchStep> steps;
    units::Duration planned;
    std::int64_t cycles = 0; ///< of the press, at all places

    std::int64_t made() const { return pieces + spares.pieces; }
};

struct BenchSheet {
    std::string number;
    std::string customer; ///< may be empty
    std::optional<units::Date> wantedBy;
    catalogue::HeatPress press;
    std::int64_t choice = 0;      ///< that is looked at, from 0
    std::int64_t choices = 1;     ///< that the order has
    std::vector<BenchLine> lines; ///< without charges
    units::Duration planned;
};

/// The bench sheet of an order (of the choice that is looked at) at the standards and supplies of that book. It has no
/// lines where nothing is made. Errors: as needs::workOf.
base::Result<BenchSheet> benchSheetOf(std::string number, const catalogue::Order& order,
                                      const catalogue::PriceBook& book, layout::FitMemo& fits,
                                      const needs::SetsThere& there = {});

} // namespace sp::quoting

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/csv.h"
#include "core/catalogue/material.h"
#include "core/catalogue/price_list.h"

#include <string>
#include <vector>

namespace sp::supply {

/// A list from its headings on: lines above them, such as the supplier's name, are left out, and a list that begins
/// with its first price gets headings of its own ("#1", "#2"). So that every row has a heading over each of its cells.
base::CsvTable fromHeadings(base::CsvTable table);

/// What each column is called, each name once: a column without a name (or with one too long to be kept), and one whose
/// name stands before it already, get their number: "#3", "Price #5".
std::vector<std::string> headingsOf(const base::CsvTable& table);

/// Which column says what, from the headings and from what stands under them in the first rows, and whether prices
/// are written with a decimal comma. `materials` are those of the book: their names and colours are known again. A
/// column that cannot be told is left out.
catalogue::PriceListColumns guessColumns(const base::CsvTable& table, const base::Id& supplier,
                                         const std::vector<catalogue::Material>& materials);

/// Whether every column that is named there is in the list.
bool hasColumns(const base::CsvTable& table, const catalogue::PriceListColumns& columns);

} // namespace sp::supply

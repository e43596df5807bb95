// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/mixed.h"

#include <string>
#include <vector>

/// The published rectangle problems kept in tests/data/rectangles, where their sources are named; sides in millimetres.
namespace sp::reference {

/// A strip whose least length is known: its pieces were cut from it without waste.
struct PublishedStrip {
    std::string name; ///< "C1P1" to "C7P3"
    units::Length width;
    units::Length leastLength;
    std::vector<layout::MixedPiece> pieces;
};
std::vector<PublishedStrip> publishedStrips();

/// One of the 500 problems of many bins of one size.
struct PublishedBin {
    int kind = 0;   ///< 1 to 10: the published class
    int pieces = 0; ///< 20, 40, 60, 80 or 100
    int number = 0; ///< 1 to 10
    layout::Sheet sheet;
    std::vector<layout::MixedPiece> laid;
};
/// Ten problems of one class and size, and the fewest bins they are known to go into together.
struct PublishedBins {
    std::vector<PublishedBin> problems;
    int fewest = 0;
};
/// In the order of class and size.
std::vector<PublishedBins> publishedBins();

} // namespace sp::reference

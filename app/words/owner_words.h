// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"

#include <QString>

namespace sp::words {

// What the owner is told of a price, on the back of the slip and by verbs. Amounts come as they are written there.

/// Why a line's price does not pay; empty where it does. `floor` is the least that pays for what is paid out for a
/// piece.
QString lineCoverage(pricing::PriceCoverage coverage, const QString& floor);
/// The same of an order.
QString orderCoverage(pricing::PriceCoverage coverage, const QString& floor);
/// What the card takes of the price of a piece and of the line.
QString cardFee(const QString& each, const QString& line);
/// What of the line's cost is tax that the shop bears on what it gives away.
QString ownTax(const QString& line);
/// That `more` pieces come to `charged`, less than the `ordered` of the `pieces` asked for.
QString moreForLess(const QString& more, const QString& pieces, const QString& charged, const QString& ordered);

} // namespace sp::words

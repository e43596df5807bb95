// SPDX-License-Identifier: MIT
#pragma once

#include "db/records/json.h"

namespace sp::db::records {

// Records that hold more than the program works with as yet: `…InShape` puts the fields of the program's own value
// where they belong and writes what it does not use yet with its plain value, `…OutOfShape` takes them out again. A
// record that holds anything but plain values in those places was written by a later program; it is refused as TooNew.

/// Before they had places, lines had their one design themselves.
void linesGetPlaces(Json& order);
/// Before it had choices, an order had lines and a discount itself.
void orderGetsChoices(Json& order);

/// An order → up to four choices → lines → places on a line → entries. The program's order is one choice without
/// entries.
void orderInShape(Json& order);
/// Likewise of version 1: every line at the usual rate of tax.
void orderGetsChoices(Json& order);
void orderOutOfShape(Json& order);

/// A shop that had one of each packing with every piece, and one rate of tax, as one of version 2.
void shopGetsLists(Json& shop);
/// A shop with its rates of tax in one list, the usual one first.
void shopInShape(Json& shop);
void shopOutOfShape(Json& shop);

} // namespace sp::db::records

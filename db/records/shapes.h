// SPDX-License-Identifier: MIT
#pragma once

#include "db/records/json.h"

namespace sp::db::records {

// Records that hold more than the program works with as yet: `…InShape` puts the fields of the program's own value
// where they belong and writes what it does not use yet with its plain value, `…OutOfShape` takes them out again. A
// record that holds anything but plain values in those places was written by a later program; it is refused as TooNew.

/// Before they had places, lines had their one design themselves.
void linesGetPlaces(Json& order);
/// Before it had choices, an order had lines and a discount itself; every line was at the usual rate of tax.
void orderGetsChoices(Json& order);
/// Before version 4 there was one choice, and it was the one looked at.
void orderLooksAtChoice(Json& order);

/// An order → up to four choices → lines → places on a line → entries. The program's order keeps the choice that is
/// looked at apart, and has no entries.
void orderInShape(Json& order);
void orderOutOfShape(Json& order);

/// A shop that had one of each packing with every piece, and one rate of tax, as one of version 2.
void shopGetsLists(Json& shop);
/// A shop with its rates of tax in one list, the usual one first.
void shopInShape(Json& shop);
void shopOutOfShape(Json& shop);

} // namespace sp::db::records

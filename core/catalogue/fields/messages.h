// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/fields/terms.h"

namespace sp::catalogue::fields {

// The first value of each is the field, see `fieldNamed`.
#define SP_FIELDS_FAULTS(X)                                                                                            \
    X(FieldOutOfRange, Invalid)                                                                                        \
    X(NoneOfTheList, Invalid)                                                                                          \
    X(NotChosen, Invalid)                                                                                              \
    X(ListTooLong, Invalid)                                                                                            \
    X(NotText, Invalid)                                                                                                \
    X(NotTyped, Invalid)                                                                                               \
    X(FieldTooLong, Invalid)                                                                                           \
    X(HoldsControls, Invalid)                                                                                          \
    X(DayOutOfRange, Invalid)                                                                                          \
    X(TemperatureOutOfRange, Invalid)                                                                                  \
    X(NotFromOne, Invalid)                                                                                             \
    X(NotAscending, Invalid)                                                                                           \
    X(DaysNotAscending, Invalid)                                                                                       \
    X(UnknownStoneSize, Invalid)                                                                                       \
    X(SizeTwice, Invalid)                                                                                              \
    X(ExpiresBeforeIssue, Invalid)                                                                                     \
    X(EndsBeforeItBegins, Invalid)                                                                                     \
    X(StoneNotChosen, Invalid)                                                                                         \
    X(MaterialTwice, Invalid)                                                                                          \
    X(PlaceTwice, Invalid)                                                                                             \
    X(RateTwice, Invalid)                                                                                              \
    X(WayToPayTwice, Invalid)                                                                                          \
    X(NotWholeMinor, Invalid)                                                                                          \
    X(ColumnTwice, Invalid)                                                                                            \
    X(DiscountTwice, Invalid)

// A field by itself, and that of a thing with a name.
#define SP_FIELDS_NOTES(X)                                                                                             \
    X(TheField)                                                                                                        \
    X(TheFieldOf)

SP_FAULTS(Fields, SP_FIELDS_FAULTS)
SP_NOTES(Fields, SP_FIELDS_NOTES)

} // namespace sp::catalogue::fields

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"

namespace sp::units {

// Of most faults the first value is what was typed, in quotes and shortened.
#define SP_UNITS_FAULTS(X)                                                                                             \
    X(NotACurrency, Invalid)                                                                                           \
    X(NotADay, Invalid)                                                                                                \
    X(TextTooLong, Invalid)                                                                                            \
    X(TextDamaged, Invalid)                                                                                            \
    X(NothingTyped, Invalid)                                                                                           \
    X(UnitTooMany, Invalid)                                                                                            \
    X(UnknownUnit, Invalid)                                                                                            \
    X(SignMissing, Invalid)                                                                                            \
    X(BracketTooMany, Invalid)                                                                                         \
    X(NotReadHere, Invalid)                                                                                            \
    X(DividesByItsKind, Invalid)                                                                                       \
    X(CouldBeRange, Ambiguous)                                                                                         \
    X(CouldBeSize, Ambiguous)                                                                                          \
    X(DividesByNothing, Invalid)                                                                                       \
    X(BracketsTooDeep, Invalid)                                                                                        \
    X(BracketNotClosed, Invalid)                                                                                       \
    X(FeetAndInches, Ambiguous)                                                                                        \
    X(NotAClockTime, Invalid)                                                                                          \
    X(MixedOrDifference, Ambiguous)                                                                                    \
    X(AddsPlainNumber, Invalid)                                                                                        \
    X(MultipliesMeasures, Invalid)                                                                                     \
    X(DividesByMeasure, Invalid)                                                                                       \
    X(AmbiguousNumber, Ambiguous)                                                                                      \
    X(HoldsAmbiguousNumber, Ambiguous)                                                                                 \
    X(PowerOfTen, Invalid)                                                                                             \
    X(TooManyDigits, OutOfRange)                                                                                       \
    X(OddMarks, Invalid)                                                                                               \
    X(HoldsOddMarks, Invalid)                                                                                          \
    X(EndsWithoutNumber, Invalid)                                                                                      \
    X(NotANumber, Invalid)                                                                                             \
    X(NoNumberHere, Invalid)                                                                                           \
    X(TooLargeOrTooFine, OutOfRange)                                                                                   \
    X(BeyondRange, OutOfRange)                                                                                         \
    X(NotWhole, Invalid)

// What is read, an example of it, what to do about a unit that is not known, and the ranges.
#define SP_UNITS_NOTES(X)                                                                                              \
    X(ALength)                                                                                                         \
    X(AnAmount)                                                                                                        \
    X(ARate)                                                                                                           \
    X(ACount)                                                                                                          \
    X(ATime)                                                                                                           \
    X(ATemperature)                                                                                                    \
    X(LengthExample)                                                                                                   \
    X(AmountExample)                                                                                                   \
    X(RateExample)                                                                                                     \
    X(CountExample)                                                                                                    \
    X(TimeExample)                                                                                                     \
    X(TemperatureExample)                                                                                              \
    X(LengthUnits)                                                                                                     \
    X(AmountUnits)                                                                                                     \
    X(RateUnits)                                                                                                       \
    X(CountUnits)                                                                                                      \
    X(TimeUnits)                                                                                                       \
    X(TemperatureUnits)                                                                                                \
    X(LengthRange)                                                                                                     \
    X(AmountRange)                                                                                                     \
    X(RateRange)                                                                                                       \
    X(CountRange)                                                                                                      \
    X(TimeRange)                                                                                                       \
    X(CelsiusRange)                                                                                                    \
    X(FahrenheitRange)

SP_FAULTS(Units, SP_UNITS_FAULTS)
SP_NOTES(Units, SP_UNITS_NOTES)

} // namespace sp::units

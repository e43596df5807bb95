// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/units/messages.h"

namespace sp::words {

Source sourceOf(units::Fault fault) {
    using enum units::Fault;
    switch (fault) {
    case NotACurrency: return {QT_TRANSLATE_NOOP("Units", "A currency is three capital letters, such as USD or EUR.")};
    case NotADay: return {QT_TRANSLATE_NOOP("Units", "“%1” is not a day; write it as 2026-12-11 (year-month-day).")};
    case TextTooLong: return {QT_TRANSLATE_NOOP("Units", "This text is too long for %1; type at most 200 characters.")};
    case TextDamaged:
        return {QT_TRANSLATE_NOOP("Units", "This text is damaged and cannot be read as %1; type it again.")};
    case NothingTyped: return {QT_TRANSLATE_NOOP("Units", "Nothing is typed here; type %1 such as %2.")};
    case UnitTooMany: return {QT_TRANSLATE_NOOP("Units", "%1 has a unit too many, %2; remove it.")};
    case UnknownUnit: return {QT_TRANSLATE_NOOP("Units", "%1 has %2, which cannot be read here; %3.")};
    case SignMissing:
        return {QT_TRANSLATE_NOOP("Units", "%1 needs a sign or a unit before %2; put +, -, * or / there.")};
    case BracketTooMany: return {QT_TRANSLATE_NOOP("Units", "%1 has a closing bracket too many; remove it.")};
    case NotReadHere: return {QT_TRANSLATE_NOOP("Units", "%1 has %2, which cannot be read here; remove it.")};
    case DividesByItsKind:
        return {
            QT_TRANSLATE_NOOP("Units", "%1 divides %2 by %2, which leaves a plain number; divide by a plain number.")};
    case CouldBeRange:
        return {QT_TRANSLATE_NOOP("Units", "%1 could be a range; type one number, or give both numbers a unit.")};
    case CouldBeSize:
        return {QT_TRANSLATE_NOOP("Units", "%1 could be a size of two lengths; type one length, or * to multiply.")};
    case DividesByNothing:
        return {QT_TRANSLATE_NOOP("Units", "%1 divides by nothing; change the number after the division sign.")};
    case BracketsTooDeep:
        return {QT_TRANSLATE_NOOP("Units", "%1 has more than 50 brackets inside each other; use fewer.")};
    case BracketNotClosed:
        return {QT_TRANSLATE_NOOP("Units", "%1 has a bracket that is not closed; add a closing bracket.")};
    case FeetAndInches:
        return {
            QT_TRANSLATE_NOOP("Units", "%1 could add or subtract the inches; put a space or \" - \" after the feet.")};
    case NotAClockTime:
        return {QT_TRANSLATE_NOOP("Units",
                                  "%1 is not minutes and seconds; type 1:30, or 1 h 30 min, with seconds below 60.")};
    case MixedOrDifference: return {QT_TRANSLATE_NOOP("Units", "%1 could mean %2 %3 or %2 - %3; write one of these.")};
    case AddsPlainNumber:
        return {QT_TRANSLATE_NOOP("Units", "%1 adds a plain number to %2; give every part of the sum a unit.")};
    case MultipliesMeasures: return {QT_TRANSLATE_NOOP("Units", "%1 multiplies %2 by %2; multiply by a plain number.")};
    case DividesByMeasure: return {QT_TRANSLATE_NOOP("Units", "%1 divides by %2; divide by a plain number.")};
    case AmbiguousNumber: return {QT_TRANSLATE_NOOP("Units", "%1 could mean %2 or %3; write one of these.")};
    case HoldsAmbiguousNumber:
        return {QT_TRANSLATE_NOOP("Units", "%1 has %2, which could mean %3 or %4; write one of these.")};
    case PowerOfTen:
        return {QT_TRANSLATE_NOOP("Units", "%1 is written with a power of ten; write the number out in full.")};
    case TooManyDigits: return {QT_TRANSLATE_NOOP("Units", "%1 has a number of more than 30 digits; use fewer.")};
    case OddMarks: return {QT_TRANSLATE_NOOP("Units", "%1 has marks in odd places; write at most one decimal mark.")};
    case HoldsOddMarks:
        return {
            QT_TRANSLATE_NOOP("Units", "%1 has %2, which has marks in odd places; write at most one decimal mark.")};
    case EndsWithoutNumber:
        return {QT_TRANSLATE_NOOP("Units", "%1 stops where a number should stand; type %2 such as %3.")};
    case NotANumber: return {QT_TRANSLATE_NOOP("Units", "%1 is not a number; type %2 such as %3.")};
    case NoNumberHere:
        return {QT_TRANSLATE_NOOP("Units", "%1 has %2 where a number should stand; type %3 such as %4.")};
    case TooLargeOrTooFine:
        return {
            QT_TRANSLATE_NOOP("Units", "%1 leads to figures too large or too fine to work with; use fewer digits.")};
    case BeyondRange: return {QT_TRANSLATE_NOOP("Units", "%1 is out of range; type %2 %3.")};
    case NotWhole: return {QT_TRANSLATE_NOOP("Units", "%1 does not come to a whole number; type a whole number.")};
    }
    return {};
}

Source sourceOf(units::Note note) {
    using enum units::Note;
    switch (note) {
    case ALength: return {QT_TRANSLATE_NOOP("Units", "a length")};
    case AnAmount: return {QT_TRANSLATE_NOOP("Units", "an amount")};
    case ARate: return {QT_TRANSLATE_NOOP("Units", "a rate")};
    case ACount: return {QT_TRANSLATE_NOOP("Units", "a count")};
    case ATime: return {QT_TRANSLATE_NOOP("Units", "a time")};
    case ATemperature: return {QT_TRANSLATE_NOOP("Units", "a temperature")};
    case LengthExample: return {QT_TRANSLATE_NOOP("Units", "3 1/2 in")};
    case AmountExample: return {QT_TRANSLATE_NOOP("Units", "24*0.29")};
    case RateExample: return {QT_TRANSLATE_NOOP("Units", "8.875 %")};
    case CountExample: return {QT_TRANSLATE_NOOP("Units", "24 or 10 gross")};
    case TimeExample: return {QT_TRANSLATE_NOOP("Units", "1 min 30 s")};
    case TemperatureExample: return {QT_TRANSLATE_NOOP("Units", "320 F or 160 C")};
    case LengthUnits: return {QT_TRANSLATE_NOOP("Units", "use in, ft, yd, mm, cm or m")};
    case AmountUnits: return {QT_TRANSLATE_NOOP("Units", "type the amount in %1")};
    case RateUnits: return {QT_TRANSLATE_NOOP("Units", "type a number of percent")};
    case CountUnits: return {QT_TRANSLATE_NOOP("Units", "use dozen, gross or great gross")};
    case TimeUnits: return {QT_TRANSLATE_NOOP("Units", "use s, min or h")};
    case TemperatureUnits: return {QT_TRANSLATE_NOOP("Units", "write F or C once, at the end")};
    case LengthRange: return {QT_TRANSLATE_NOOP("Units", "from 0 to 1 km")};
    case AmountRange: return {QT_TRANSLATE_NOOP("Units", "of at most 1,000,000,000 either way")};
    case RateRange: return {QT_TRANSLATE_NOOP("Units", "of at most 10,000 % either way")};
    case CountRange: return {QT_TRANSLATE_NOOP("Units", "from 0 to 1,000,000,000")};
    case TimeRange: return {QT_TRANSLATE_NOOP("Units", "from 0 to 10,000 hours")};
    case CelsiusRange: return {QT_TRANSLATE_NOOP("Units", "from -50 to 500 °C")};
    case FahrenheitRange: return {QT_TRANSLATE_NOOP("Units", "from -58 to 932 °F")};
    }
    return {};
}

} // namespace sp::words

// SPDX-License-Identifier: MIT
#include "core/units/number_scan.h"

#include "core/units/characters.h"

#include <algorithm>
#include <vector>

namespace sp::units {

namespace {

constexpr std::size_t kMaxDigits = 30;
constexpr std::size_t kThousand = 3; ///< digits in a group

/// Digits and the marks between them, marks[i] standing before groups[i + 1].
struct Pieces {
    std::vector<std::u32string> groups;
    std::vector<char32_t> marks;
    std::size_t end = 0;
};

char32_t at(std::u32string_view text, std::size_t place) { return place < text.size() ? text[place] : U'\0'; }

bool isBlankMark(char32_t c) { return isSpace(c) || c == U'\''; }

bool isPointMark(char32_t c, const NumberStyle& style) {
    if (c == U'\0' || isBlankMark(c)) return false;
    return c == U'.' || c == U',' || c == style.decimalMark || c == style.groupMark;
}

/// Whether a space or apostrophe may stand between thousands in this style.
bool groups(char32_t c, const NumberRules& rules) {
    if (c == U'\'') return !rules.apostropheIsAFoot || rules.style.groupMark == U'\'';
    return c == kHardSpace || isSpace(rules.style.groupMark);
}

bool canLead(std::u32string_view group) { return !group.empty() && group.size() <= kThousand && group.front() != U'0'; }

bool areThousands(const Pieces& pieces, std::size_t count) {
    return canLead(pieces.groups.front()) &&
           std::all_of(pieces.groups.begin() + 1, pieces.groups.begin() + static_cast<std::ptrdiff_t>(count),
                       [](const auto& group) { return group.size() == kThousand; });
}

Pieces takeApart(std::u32string_view text, std::size_t from, const NumberRules& rules) {
    Pieces out;
    const auto take = [&](std::size_t place) {
        out.groups.emplace_back(digitsAt(text, place));
        out.end = place + out.groups.back().size();
    };
    take(from);
    while (out.end < text.size()) {
        const char32_t mark = text[out.end];
        const std::size_t digits = digitsAt(text, out.end + 1).size();
        if (isPointMark(mark, rules.style) && digits > 0) {
            out.marks.push_back(mark);
        } else if (isBlankMark(mark) && groups(mark, rules) && digits == kThousand &&
                   areThousands(out, out.groups.size()) &&
                   std::all_of(out.marks.begin(), out.marks.end(), isBlankMark)) {
            out.marks.push_back(isSpace(mark) ? U' ' : mark);
        } else {
            const bool closes = mark == rules.style.decimalMark && out.marks.empty() && !out.groups.front().empty();
            if (closes && !isPointMark(at(text, out.end + 1), rules.style)) ++out.end;
            break;
        }
        take(out.end + 1);
    }
    return out;
}

std::u32string joined(const Pieces& pieces, std::size_t count) {
    std::u32string digits;
    for (std::size_t i = 0; i < count; ++i) digits += pieces.groups[i];
    return digits;
}

tl::unexpected<NumberProblem> problem(NumberFault fault, const Pieces& pieces, std::u32string first = {},
                                      std::u32string second = {}) {
    return tl::unexpected(NumberProblem{fault, pieces.end, std::move(first), std::move(second)});
}

tl::expected<ScannedNumber, NumberProblem> valueOf(const Pieces& pieces, std::size_t wholeGroups) {
    std::u32string whole = joined(pieces, wholeGroups);
    std::u32string broken = wholeGroups < pieces.groups.size() ? pieces.groups.back() : std::u32string();
    whole.erase(0, std::min(whole.find_first_not_of(U'0'), whole.size()));
    broken.erase(broken.find_last_not_of(U'0') + 1);
    if (whole.size() + broken.size() > kMaxDigits) return problem(NumberFault::TooManyDigits, pieces);
    Int128 numerator = 0;
    Int128 denominator = 1;
    for (const char32_t digit : whole + broken) numerator = numerator * 10 + static_cast<int>(digit - U'0');
    for (std::size_t i = 0; i < broken.size(); ++i) denominator *= 10;
    return ScannedNumber{Fraction::ratio(numerator, denominator), wholeGroups == pieces.groups.size(), pieces.end};
}

/// One mark: the style decides, and where it cannot, three digits after the mark are asked about.
tl::expected<ScannedNumber, NumberProblem> readWithOneMark(const Pieces& pieces, const NumberRules& rules) {
    const char32_t mark = pieces.marks.front();
    if (mark == rules.style.decimalMark) return valueOf(pieces, 1);
    const bool thousands = areThousands(pieces, 2);
    if (thousands && (isBlankMark(mark) || (mark == rules.style.groupMark && rules.thousandsExpected)))
        return valueOf(pieces, 2);
    if (thousands)
        return problem(NumberFault::Ambiguous, pieces, pieces.groups[0] + rules.style.decimalMark + pieces.groups[1],
                       joined(pieces, 2));
    if (mark == U'.' || mark == U',') return valueOf(pieces, 1);
    return problem(NumberFault::OddMarks, pieces);
}

tl::expected<ScannedNumber, NumberProblem> readWithMarks(const Pieces& pieces) {
    const auto& marks = pieces.marks;
    const auto same = [&](std::size_t count) {
        return std::all_of(marks.begin(), marks.begin() + static_cast<std::ptrdiff_t>(count),
                           [&](char32_t mark) { return mark == marks.front(); });
    };
    const std::size_t count = marks.size();
    if (same(count) && areThousands(pieces, count + 1)) return valueOf(pieces, count + 1);
    if (same(count - 1) && marks.back() != marks.front() && areThousands(pieces, count)) return valueOf(pieces, count);
    return problem(NumberFault::OddMarks, pieces);
}

bool isPowerOfTen(std::u32string_view text, std::size_t place) {
    if (lowered(at(text, place)) != U'e') return false;
    const char32_t next = at(text, place + 1);
    return isDigit(next) || ((next == U'-' || next == U'+') && isDigit(at(text, place + 2)));
}

/// "1 200/400" with spaces between thousands: 1 and a half, or 1200 parts of 400.
bool couldBeMixed(std::u32string_view text, const Pieces& pieces, const NumberRules& rules) {
    const bool spaced = !pieces.marks.empty() && std::all_of(pieces.marks.begin(), pieces.marks.end(), isSpace);
    if (!spaced) return false;
    const auto ratio = scanRatio(text, pieces.end - kThousand, rules);
    return ratio && ratio->isProper();
}

} // namespace

std::u32string_view digitsAt(std::u32string_view text, std::size_t at) {
    std::size_t end = std::min(at, text.size());
    const std::size_t from = end;
    while (end < text.size() && isDigit(text[end])) ++end;
    return text.substr(from, end - from);
}

bool startsNumber(std::u32string_view text, std::size_t place, const NumberRules& rules) {
    const char32_t c = at(text, place);
    if (isDigit(c)) return true;
    return (c == U'.' || c == U',' || (c != 0 && c == rules.style.decimalMark)) && isDigit(at(text, place + 1));
}

std::optional<ScannedRatio> scanRatio(std::u32string_view text, std::size_t place, const NumberRules& rules) {
    constexpr std::size_t kMaxPartLength = 9;
    const auto part = [&](std::size_t from) -> std::optional<Int128> {
        const auto digits = digitsAt(text, from);
        if (digits.empty() || digits.size() > kMaxPartLength) return std::nullopt;
        Int128 value = 0;
        for (const char32_t digit : digits) value = value * 10 + static_cast<int>(digit - U'0');
        return value;
    };
    const auto pastSpaces = [&](std::size_t from) {
        while (isSpace(at(text, from))) ++from;
        return from;
    };
    const auto numerator = part(place);
    if (!numerator) return std::nullopt;
    const std::size_t stroke = pastSpaces(place + digitsAt(text, place).size());
    if (at(text, stroke) != U'/') return std::nullopt;
    const std::size_t below = pastSpaces(stroke + 1);
    const auto denominator = part(below);
    const std::size_t end = below + digitsAt(text, below).size();
    const char32_t after = at(text, end);
    const std::size_t more = digitsAt(text, end + 1).size();
    if (isPointMark(after, rules.style) && more > 0) return std::nullopt;
    if (isBlankMark(after) && groups(after, rules) && more == kThousand) return std::nullopt;
    if (!denominator) return std::nullopt;
    return ScannedRatio{*numerator, *denominator, end};
}

tl::expected<ScannedNumber, NumberProblem> scanNumber(std::u32string_view text, std::size_t place,
                                                      const NumberRules& rules) {
    const Pieces pieces = takeApart(text, place, rules);
    if (isPowerOfTen(text, pieces.end)) return problem(NumberFault::PowerOfTen, pieces);
    if (couldBeMixed(text, pieces, rules)) {
        const std::u32string lead = joined(pieces, pieces.groups.size() - 1);
        const auto ratio = scanRatio(text, pieces.end - kThousand, rules);
        const std::u32string over(text.substr(pieces.end, ratio->end - pieces.end));
        return problem(NumberFault::Ambiguous, pieces, lead + U" + " + pieces.groups.back() + over,
                       joined(pieces, pieces.groups.size()) + over);
    }
    if (pieces.marks.empty()) return valueOf(pieces, 1);
    return pieces.marks.size() == 1 ? readWithOneMark(pieces, rules) : readWithMarks(pieces);
}

} // namespace sp::units

// SPDX-License-Identifier: MIT
#include "core/units/expression.h"

#include "core/base/overflow.h"
#include "core/units/characters.h"
#include "core/units/number_scan.h"

#include <algorithm>
#include <optional>

namespace sp::units {

namespace {

constexpr std::size_t kMaxBytes = 200;
constexpr int kMaxDepth = 50;

/// What stands at a place in an expression. A quotient of two measured values is a Ratio: a number, but not
/// one that may take the field's unit.
enum class Kind { Bare, Measured, Ratio };

struct Value {
    Fraction amount; ///< Measured: in the smallest thing; else a plain number
    Kind kind = Kind::Bare;
    /// Size of the unit when this is one number with one unit after it, else 0.
    std::int64_t unit = 0;
};

struct FoundUnit {
    const UnitName* name = nullptr; ///< null: a word or sign that is no unit here
    std::size_t end = 0;
};

/// Recursive descent over the folded text. A rule that answers nothing has set m_error.
class Parser {
  public:
    Parser(const TypedText& text, std::size_t end, const Grammar& grammar, const NumberStyle& style)
        : m_whole(text)
        , m_text(std::u32string_view(text.folded).substr(0, end))
        , m_grammar(grammar)
        , m_rules{{folded(style.decimalMark), folded(style.groupMark)}, grammar.thousandsExpected, grammar.isLength} {}

    base::Result<Fraction> run();

  private:
    std::optional<Value> sum();
    std::optional<Value> product();
    std::optional<Value> factor(bool isDivisor);
    std::optional<Value> primary(bool isDivisor);
    std::optional<Value> bracket();
    std::optional<Value> quantity(bool isDivisor);
    std::optional<Value> withUnit(Value value);
    std::optional<Value> compound(Fraction amount, std::int64_t unit);
    std::optional<Fraction> number(bool isDivisor);
    std::optional<Fraction> mixedTail(std::size_t from, const ScannedNumber& whole);
    std::optional<Fraction> hyphenated(std::size_t from, const ScannedNumber& whole);
    std::optional<Value> clock(const Fraction& first);

    std::optional<Value> added(const Value& a, const Value& b);
    std::optional<Value> multiplied(const Value& a, const Value& b);
    std::optional<Value> divided(const Value& a, const Value& b);

    char32_t peek(std::size_t ahead = 0) const { return m_at + ahead < m_text.size() ? m_text[m_at + ahead] : U'\0'; }
    bool atEnd() const { return m_at >= m_text.size(); }
    void skipSpaces() {
        while (!atEnd() && isSpace(peek())) ++m_at;
    }
    bool takeSign(bool& negative);
    FoundUnit unitHere() const;
    /// A word or a sign of money that names no unit of this field.
    bool isForeignUnit() const {
        const FoundUnit unit = unitHere();
        return !unit.name && (unit.end > m_at || (peek() != 0 && std::u32string_view(U"$€£¥%°").find(peek()) !=
                                                                     std::u32string_view::npos));
    }
    std::size_t wordEnd(std::size_t from) const;
    std::string typed(std::size_t from, std::size_t end) const;
    std::string typedHere() const;

    template<class... Values>
    std::nullopt_t refuseWith(Fault fault, const Values&... values) {
        m_error = refuse(fault, m_whole, values...).value();
        return std::nullopt;
    }
    std::nullopt_t refuseNumber(std::size_t from, const NumberProblem& problem);
    std::nullopt_t refuseMissingNumber();
    std::nullopt_t refuseLeftover();
    std::nullopt_t refuseSize() { return refuseWith(Fault::CouldBeSize); }
    std::nullopt_t refuseDivisionByNothing() { return refuseWith(Fault::DividesByNothing); }

    const TypedText& m_whole;
    std::u32string_view m_text;
    const Grammar& m_grammar;
    NumberRules m_rules;
    std::size_t m_at = 0;
    int m_depth = 0;
    base::Error m_error;
};

std::string Parser::typed(std::size_t from, std::size_t end) const {
    return quoted(std::u32string_view(m_whole.typed).substr(from, end - from));
}

/// The word, number or sign that stands here, in quotes.
std::string Parser::typedHere() const {
    std::size_t end = wordEnd(m_at);
    if (end == m_at) end += digitsAt(m_text, m_at).size();
    return typed(m_at, std::max(end, m_at + 1));
}

std::nullopt_t Parser::refuseNumber(std::size_t from, const NumberProblem& problem) {
    const bool isAll = problem.end - from == m_whole.typed.size();
    switch (problem.fault) {
    case NumberFault::Ambiguous:
        if (isAll) return refuseWith(Fault::AmbiguousNumber, encode(problem.first), encode(problem.second));
        return refuseWith(Fault::HoldsAmbiguousNumber, typed(from, problem.end), encode(problem.first),
                          encode(problem.second));
    case NumberFault::PowerOfTen: return refuseWith(Fault::PowerOfTen);
    case NumberFault::TooManyDigits: return refuseWith(Fault::TooManyDigits);
    case NumberFault::OddMarks: break;
    }
    if (isAll) return refuseWith(Fault::OddMarks);
    return refuseWith(Fault::HoldsOddMarks, typed(from, problem.end));
}

std::nullopt_t Parser::refuseMissingNumber() {
    if (atEnd()) return refuseWith(Fault::EndsWithoutNumber, m_grammar.kind, m_grammar.example);
    if (m_grammar.unitsLead && isForeignUnit()) return refuseLeftover();
    if (typedHere() == quoted(m_whole.typed)) return refuseWith(Fault::NotANumber, m_grammar.kind, m_grammar.example);
    return refuseWith(Fault::NoNumberHere, typedHere(), m_grammar.kind, m_grammar.example);
}

/// Something stands after what could be read.
std::nullopt_t Parser::refuseLeftover() {
    const std::string here = typedHere();
    if (unitHere().name) return refuseWith(Fault::UnitTooMany, here);
    if (m_grammar.isLength && lowered(peek()) == U'x' && wordEnd(m_at) == m_at + 1) return refuseSize();
    if (isForeignUnit()) return refuseWith(Fault::UnknownUnit, here, m_grammar.unitHelp);
    if (peek() == U'(' || vulgarFraction(peek()) || startsNumber(m_text, m_at, m_rules))
        return refuseWith(Fault::SignMissing, here);
    if (peek() == U')') return refuseWith(Fault::BracketTooMany);
    return refuseWith(Fault::NotReadHere, here);
}

std::size_t Parser::wordEnd(std::size_t from) const {
    while (from < m_text.size() && isWordCharacter(m_text[from])) ++from;
    return from;
}

/// The unit at this place: the longest of two words, one word, two signs, one sign.
FoundUnit Parser::unitHere() const {
    const auto named = [&](std::u32string_view written) -> const UnitName* {
        std::u32string name(written);
        std::transform(name.begin(), name.end(), name.begin(), lowered);
        std::replace(name.begin(), name.end(), kHardSpace, U' ');
        const auto found = std::find_if(m_grammar.units.begin(), m_grammar.units.end(),
                                        [&](const UnitName& row) { return row.name == name; });
        return found == m_grammar.units.end() ? nullptr : &*found;
    };
    const auto found = [&](std::size_t end) { return FoundUnit{named(m_text.substr(m_at, end - m_at)), end}; };
    const std::size_t word = wordEnd(m_at);
    if (word > m_at) {
        const std::size_t second = word < m_text.size() && isSpace(m_text[word]) ? wordEnd(word + 1) : word;
        if (const FoundUnit two = found(second); second > word + 1 && two.name) return two;
        return found(word);
    }
    for (const std::size_t signs : {std::size_t{2}, std::size_t{1}})
        if (m_at + signs <= m_text.size())
            if (const FoundUnit sign = found(m_at + signs); sign.name) return sign;
    return {nullptr, m_at};
}

bool Parser::takeSign(bool& negative) {
    skipSpaces();
    if (peek() != U'+' && peek() != U'-') return false;
    negative = peek() == U'-';
    ++m_at;
    return true;
}

base::Result<Fraction> Parser::run() {
    const auto value = sum();
    if (!value) return base::fail(m_error);
    skipSpaces();
    if (!atEnd()) {
        refuseLeftover();
        return base::fail(m_error);
    }
    if (value->kind == Kind::Ratio) {
        refuseWith(Fault::DividesByItsKind, m_grammar.kind);
        return base::fail(m_error);
    }
    return value->kind == Kind::Bare ? value->amount * Fraction::of(m_grammar.bareSize) : value->amount;
}

std::optional<Value> Parser::sum() {
    auto left = product();
    while (left) {
        bool negative = false;
        if (!takeSign(negative)) break;
        const bool isTight = m_at >= 2 && !isSpace(m_text[m_at - 2]) && !isSpace(peek());
        auto right = product();
        if (!right) return std::nullopt;
        if (negative && isTight && left->kind == Kind::Bare && right->kind == Kind::Measured && right->unit != 0)
            return refuseWith(Fault::CouldBeRange);
        if (negative) right->amount = Fraction::of(0) - right->amount;
        left = added(*left, *right);
    }
    return left;
}

std::optional<Value> Parser::product() {
    auto left = factor(false);
    while (left) {
        skipSpaces();
        const char32_t sign = peek();
        if (sign == U'×' && m_grammar.isLength) return refuseSize();
        if (sign != U'*' && sign != U'×' && sign != U'/') break;
        ++m_at;
        const auto right = factor(sign == U'/');
        if (!right) return std::nullopt;
        left = sign == U'/' ? divided(*left, *right) : multiplied(*left, *right);
    }
    return left;
}

std::optional<Value> Parser::factor(bool isDivisor) {
    bool negative = false;
    bool isSigned = takeSign(negative);
    skipSpaces();
    const FoundUnit leading = m_grammar.unitsLead ? unitHere() : FoundUnit{};
    if (leading.name) {
        m_at = leading.end;
        if (!isSigned) isSigned = takeSign(negative);
    }
    auto value = primary(isDivisor);
    if (!value) return std::nullopt;
    if (leading.name) {
        if (value->kind != Kind::Measured) value->amount = value->amount * Fraction::of(leading.name->size);
        *value = {value->amount, Kind::Measured, 0};
    }
    if (negative) value->amount = Fraction::of(0) - value->amount;
    return value;
}

std::optional<Value> Parser::primary(bool isDivisor) {
    skipSpaces();
    if (peek() == U'(') return bracket();
    if (!startsNumber(m_text, m_at, m_rules) && !vulgarFraction(peek())) return refuseMissingNumber();
    return quantity(isDivisor);
}

std::optional<Value> Parser::bracket() {
    if (++m_depth > kMaxDepth) return refuseWith(Fault::BracketsTooDeep);
    ++m_at;
    auto value = sum();
    if (!value) return std::nullopt;
    skipSpaces();
    if (atEnd()) return refuseWith(Fault::BracketNotClosed);
    if (peek() != U')') return refuseLeftover();
    ++m_at;
    --m_depth;
    value->unit = 0;
    if (value->kind != Kind::Bare) return value;
    value = withUnit(*value);
    if (value) value->unit = 0;
    return value;
}

std::optional<Value> Parser::quantity(bool isDivisor) {
    const std::size_t digitsEnd = m_at + digitsAt(m_text, m_at).size();
    const auto amount = number(isDivisor);
    if (!amount) return std::nullopt;
    if (m_grammar.clockTimes && m_at == digitsEnd && peek() == U':') return clock(*amount);
    const auto value = withUnit({*amount, Kind::Bare, 0});
    if (!value || value->kind == Kind::Bare) return value;
    return compound(value->amount, value->unit);
}

/// Takes the unit that stands here, if one does.
std::optional<Value> Parser::withUnit(Value value) {
    const std::size_t before = m_at;
    skipSpaces();
    const FoundUnit unit = unitHere();
    if (!unit.name) {
        if (unit.end > m_at) return refuseLeftover();
        m_at = before;
        return value;
    }
    const bool isWord = isWordCharacter(m_text[unit.end - 1]);
    m_at = unit.end;
    if (isWord && peek() == U'.' && !isDigit(peek(1))) ++m_at; // "3 in."
    return Value{value.amount * Fraction::of(unit.name->size), Kind::Measured, unit.name->size};
}

/// "1 ft 2 in": further numbers, each with a smaller unit than the one before.
std::optional<Value> Parser::compound(Fraction amount, std::int64_t unit) {
    bool isSingle = true;
    for (std::int64_t last = unit;;) {
        const std::size_t before = m_at;
        skipSpaces();
        if (m_grammar.isLength && last == kNanometresPerFoot && peek() == U'-' && isDigit(peek(1)))
            return refuseWith(Fault::FeetAndInches);
        if (!startsNumber(m_text, m_at, m_rules) && !vulgarFraction(peek())) {
            m_at = before;
            return Value{amount, Kind::Measured, isSingle ? unit : 0};
        }
        const std::size_t from = m_at;
        const auto part = number(false);
        if (!part) return std::nullopt;
        const auto more = withUnit({*part, Kind::Bare, 0});
        if (!more) return std::nullopt;
        if (more->kind == Kind::Bare || more->unit >= last) {
            m_at = from;
            return refuseLeftover();
        }
        amount = amount + more->amount;
        last = more->unit;
        isSingle = false;
    }
}

/// After a division sign "1/2" is not taken as one number, so that 6/1/2 goes from left to right.
std::optional<Fraction> Parser::number(bool isDivisor) {
    const std::size_t from = m_at;
    if (const auto vulgar = vulgarFraction(peek())) {
        ++m_at;
        return Fraction::ratio(vulgar->numerator, vulgar->denominator);
    }
    if (const auto ratio = isDivisor ? std::nullopt : scanRatio(m_text, m_at, m_rules)) {
        if (ratio->denominator == 0) return refuseDivisionByNothing();
        m_at = ratio->end;
        return Fraction::ratio(ratio->numerator, ratio->denominator);
    }
    const auto scanned = scanNumber(m_text, m_at, m_rules);
    if (!scanned) return refuseNumber(from, scanned.error());
    m_at = scanned->end;
    return scanned->isWhole ? mixedTail(from, *scanned) : scanned->value;
}

/// What may follow a whole number to make it a mixed one: "1/2" after a space, "½", or "-1/2" without spaces.
std::optional<Fraction> Parser::mixedTail(std::size_t from, const ScannedNumber& whole) {
    if (peek() == U'-') return hyphenated(from, whole);
    skipSpaces();
    if (const auto vulgar = vulgarFraction(peek())) {
        ++m_at;
        return whole.value + Fraction::ratio(vulgar->numerator, vulgar->denominator);
    }
    if (const auto ratio = scanRatio(m_text, m_at, m_rules); ratio && m_at > whole.end && ratio->isProper()) {
        m_at = ratio->end;
        return whole.value + Fraction::ratio(ratio->numerator, ratio->denominator);
    }
    m_at = whole.end;
    return whole.value;
}

/// "3-1/2": the trade's three and a half inches. Taken so for lengths, with the fractions a ruler has, when
/// it stands clear of other signs; asked about otherwise.
std::optional<Fraction> Parser::hyphenated(std::size_t from, const ScannedNumber& whole) {
    const auto ratio = scanRatio(m_text, m_at + 1, m_rules);
    const bool tight =
        ratio && m_text.substr(m_at, ratio->end - m_at).find_first_of(U" \u00A0") == std::u32string::npos;
    if (!tight || !ratio->isProper()) return whole.value;
    constexpr std::u32string_view kOperators = U"+-*/×";
    const bool clear =
        (from == 0 || kOperators.find(m_text[from - 1]) == std::u32string_view::npos || from == 1) &&
        (ratio->end == m_text.size() || kOperators.find(m_text[ratio->end]) == std::u32string_view::npos);
    const bool onARuler = ratio->denominator <= 64 && (ratio->denominator & (ratio->denominator - 1)) == 0;
    if (!m_grammar.isLength || !clear || !onARuler) {
        const std::u32string_view written = m_text.substr(from, ratio->end - from);
        const std::size_t hyphen = m_at - from;
        const std::string first = encode(written.substr(0, hyphen));
        const std::string second = encode(written.substr(hyphen + 1));
        return refuseWith(Fault::MixedOrDifference, first, second);
    }
    m_at = ratio->end;
    return whole.value + Fraction::ratio(ratio->numerator, ratio->denominator);
}

/// "1:30" and "1:30:00": minutes and seconds, hours before them; `first` has been read. Two digits below 60
/// in each further part, the last of which may have decimals.
std::optional<Value> Parser::clock(const Fraction& first) {
    const auto wrong = [&] { return refuseWith(Fault::NotAClockTime); };
    Fraction seconds = first;
    for (int parts = 1; peek() == U':'; ++parts) {
        ++m_at;
        const auto digits = digitsAt(m_text, m_at);
        if (parts > 2 || digits.size() != 2 || digits.front() > U'5') return wrong();
        const auto part = scanNumber(m_text, m_at, m_rules);
        if (!part) return refuseNumber(m_at, part.error());
        m_at = part->end;
        seconds = seconds * Fraction::of(60) + part->value;
        if (!part->isWhole) break;
    }
    skipSpaces();
    if (unitHere().end > m_at || startsNumber(m_text, m_at, m_rules) || peek() == U':') return wrong();
    return Value{seconds * Fraction::of(1000), Kind::Measured, 0};
}

std::optional<Value> Parser::added(const Value& a, const Value& b) {
    if (a.kind == b.kind) return Value{a.amount + b.amount, a.kind, 0};
    if (a.kind != Kind::Measured && b.kind != Kind::Measured) return Value{a.amount + b.amount, Kind::Bare, 0};
    if (a.kind == Kind::Ratio || b.kind == Kind::Ratio) return refuseWith(Fault::AddsPlainNumber, m_grammar.kind);
    const Fraction size = Fraction::of(m_grammar.bareSize);
    const Fraction left = a.kind == Kind::Bare ? a.amount * size : a.amount;
    const Fraction right = b.kind == Kind::Bare ? b.amount * size : b.amount;
    return Value{left + right, Kind::Measured, 0};
}

std::optional<Value> Parser::multiplied(const Value& a, const Value& b) {
    if (a.kind == Kind::Measured && b.kind == Kind::Measured)
        return refuseWith(Fault::MultipliesMeasures, m_grammar.kind);
    const bool measured = a.kind == Kind::Measured || b.kind == Kind::Measured;
    const bool ratio = a.kind == Kind::Ratio && b.kind == Kind::Ratio;
    return Value{a.amount * b.amount, measured ? Kind::Measured : ratio ? Kind::Ratio : Kind::Bare, 0};
}

std::optional<Value> Parser::divided(const Value& a, const Value& b) {
    if (b.amount.numerator() == 0) return refuseDivisionByNothing();
    if (b.kind != Kind::Measured) return Value{a.amount / b.amount, a.kind, 0};
    if (a.kind == Kind::Measured) return Value{a.amount / b.amount, Kind::Ratio, 0};
    if (a.kind == Kind::Bare && b.unit != 0) {
        const Fraction unit = Fraction::of(b.unit);
        return Value{a.amount / (b.amount / unit) * unit, Kind::Measured, 0};
    }
    return refuseWith(Fault::DividesByMeasure, m_grammar.kind);
}

} // namespace

std::string shown(const TypedText& text) { return quoted(text.typed); }

base::Result<TypedText> takeIn(std::string_view text, const Grammar& grammar) {
    if (text.size() > kMaxBytes) return base::fail(Fault::TextTooLong, {}, grammar.kind);
    const auto characters = decode(text);
    if (!characters) return base::fail(Fault::TextDamaged, {}, grammar.kind);
    TypedText out{*characters, *characters};
    std::transform(out.folded.begin(), out.folded.end(), out.folded.begin(), folded);
    if (std::all_of(out.folded.begin(), out.folded.end(), isSpace))
        return base::fail(Fault::NothingTyped, {}, grammar.kind, grammar.example);
    return out;
}

base::Result<Fraction> evaluate(const TypedText& text, std::size_t end, const Grammar& grammar,
                                const NumberStyle& style) {
    try {
        return Parser(text, end, grammar, style).run();
    } catch (const base::Overflow&) { return refuse(Fault::TooLargeOrTooFine, text); }
}

} // namespace sp::units

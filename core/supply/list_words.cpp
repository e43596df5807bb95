// SPDX-License-Identifier: MIT
#include "core/supply/list_words.h"

#include "core/catalogue/stone_size.h"
#include "core/units/characters.h"

#include <algorithm>
#include <array>
#include <vector>

namespace sp::supply {

using units::Count;

namespace {

bool isLetterByte(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}
bool isDigitByte(char c) { return c >= '0' && c <= '9'; }

/// What a word of a pack's name is there for.
enum class PackWord { Filler, Thing, Gross, Great, Dozen, Half, Thousand, Times, Unknown };

PackWord packWord(std::string_view word) {
    struct Known {
        std::string_view word;
        PackWord meaning;
    };
    using enum PackWord;
    constexpr std::array kKnown{
        Known{"of", Filler},     Known{"per", Filler},     Known{"a", Filler},        Known{"in", Filler},
        Known{"bag", Filler},    Known{"bags", Filler},    Known{"pack", Filler},     Known{"packs", Filler},
        Known{"packet", Filler}, Known{"packets", Filler}, Known{"package", Filler},  Known{"pkt", Filler},
        Known{"pkts", Filler},   Known{"pk", Filler},      Known{"pkg", Filler},      Known{"box", Filler},
        Known{"card", Filler},   Known{"carton", Filler},  Known{"envelope", Filler}, Known{"tube", Filler},
        Known{"jar", Filler},    Known{"poly", Filler},    Known{"polybag", Filler},  Known{"each", Thing},
        Known{"ea", Thing},      Known{"piece", Thing},    Known{"pieces", Thing},    Known{"pcs", Thing},
        Known{"pc", Thing},      Known{"pce", Thing},      Known{"unit", Thing},      Known{"units", Thing},
        Known{"stone", Thing},   Known{"stones", Thing},   Known{"single", Thing},    Known{"sheet", Thing},
        Known{"sheets", Thing},  Known{"roll", Thing},     Known{"rolls", Thing},     Known{"count", Thing},
        Known{"ct", Thing},      Known{"gross", Gross},    Known{"gr", Gross},        Known{"grs", Gross},
        Known{"gro", Gross},     Known{"great", Great},    Known{"dozen", Dozen},     Known{"dozens", Dozen},
        Known{"doz", Dozen},     Known{"dz", Dozen},       Known{"half", Half},       Known{"thousand", Thousand},
        Known{"x", Times}};
    const auto found =
        std::find_if(kKnown.begin(), kKnown.end(), [&](const Known& known) { return known.word == word; });
    return found == kKnown.end() ? Unknown : found->meaning;
}

/// Writes a pack's name anew as a sum that units::parseCount reads: "bag of 12 x 1 gross" as "12*1 gross".
class PackSum {
  public:
    explicit PackSum(std::string_view words)
        : m_words(words) {}

    /// Nothing where a word is not known or stands where it says nothing.
    std::optional<std::string> run() {
        while (m_at < m_words.size())
            if (!take()) return std::nullopt;
        if (m_sum.empty()) return m_isThing ? std::optional<std::string>("1") : std::nullopt;
        return m_sum;
    }

  private:
    bool take() {
        const char c = m_words[m_at];
        if (isDigitByte(c)) return takeNumber();
        if (isLetterByte(c)) return takeWord();
        ++m_at;
        if (c == '*') return times();
        return c == ' ' || c == '.' || c == ',' || c == ':' || c == '-' || c == '/';
    }

    bool takeNumber() {
        if (m_isClosed || m_isNumber) return false;
        const auto start = m_at;
        while (m_at < m_words.size() && !isLetterByte(m_words[m_at]) && m_words[m_at] != '*' && m_words[m_at] != '-')
            ++m_at;
        auto number = m_words.substr(start, m_at - start);
        while (!isDigitByte(number.back())) number.remove_suffix(1);
        m_sum += number;
        m_isNumber = true;
        return true;
    }

    bool takeWord() {
        const auto start = m_at;
        while (m_at < m_words.size() && isLetterByte(m_words[m_at])) ++m_at;
        switch (packWord(m_words.substr(start, m_at - start))) {
        case PackWord::Filler:
            m_isClosed = !m_sum.empty();
            return m_sum != "1"; // "1 bag" says nothing of what is in it
        case PackWord::Thing:
            m_isThing = true;
            m_isClosed = !m_sum.empty();
            return true;
        case PackWord::Gross: return unit(" gross");
        case PackWord::Dozen: return unit(" dozen");
        case PackWord::Great: return m_isGreat = true;
        case PackWord::Half:
            if (m_isClosed || m_isNumber) return false;
            m_sum += "1/2";
            return m_isNumber = true;
        case PackWord::Thousand:
            if (m_isClosed || !m_isNumber) return false;
            m_sum += "*1000";
            return true;
        case PackWord::Times: return times();
        case PackWord::Unknown: break;
        }
        return false;
    }

    bool unit(std::string_view name) {
        if (m_isClosed) return false;
        if (!m_isNumber) m_sum += '1';
        if (m_isGreat) m_sum += " great";
        m_sum += name;
        m_isNumber = true;
        m_isClosed = true;
        m_isGreat = false;
        return true;
    }

    bool times() {
        if (!m_isNumber) return false;
        m_sum += '*';
        m_isNumber = false;
        m_isClosed = false;
        return true;
    }

    std::string_view m_words; ///< lower case
    std::string m_sum;
    std::size_t m_at = 0;
    bool m_isNumber = false; ///< the factor at the end has its number
    bool m_isClosed = false; ///< and its unit, or the pack's name has come after it
    bool m_isGreat = false;
    bool m_isThing = false;
};

/// Letters in lower case, look-alikes and odd spaces as the plain ones.
std::string plain(std::string_view text) {
    const auto characters = units::decode(text);
    if (!characters) return {};
    std::u32string folded;
    for (const auto c : *characters) {
        const auto one = c == U'×' ? U'*' : units::lowered(units::folded(c));
        folded += units::isSpace(one) || one == U'\t' ? U' ' : one;
    }
    return units::encode(folded);
}

std::string tidy(std::string_view text) {
    constexpr std::string_view kLoose = " \t-,;/|·";
    const auto first = text.find_first_not_of(kLoose);
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(kLoose) - first + 1));
}

/// Past spaces and one dash.
std::size_t pastGap(std::string_view text, std::size_t at) {
    while (at < text.size() && (text[at] == ' ' || text[at] == '-')) ++at;
    return at;
}

std::size_t pastDigits(std::string_view text, std::size_t at) {
    while (at < text.size() && isDigitByte(text[at])) ++at;
    return at;
}

bool isSs(std::string_view text, std::size_t at) {
    return at + 1 < text.size() && (text[at] == 's' || text[at] == 'S') && (text[at + 1] == 's' || text[at + 1] == 'S');
}

} // namespace

std::string lowerTrimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) return {};
    std::string lower(text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1));
    for (auto& c : lower)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

std::string oneLine(std::string_view cell) {
    std::string text(cell);
    for (auto& c : text)
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) c = ' ';
    const auto first = text.find_first_not_of(' ');
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::optional<Count> packAmount(std::string_view words, const units::NumberStyle& style) {
    std::optional<Count> amount;
    const auto text = plain(words);
    std::size_t from = 0;
    while (from <= text.size()) {
        const auto end = std::min(text.find_first_of("()[]=", from), text.size());
        const auto part = tidy(std::string_view(text).substr(from, end - from));
        from = end + 1;
        if (part.empty()) continue;
        // A part that is only the name of a pack is passed over: "bag (1440)", "1 bag = 144".
        PackSum sum(part);
        const auto written = sum.run();
        if (!written) {
            if (part.find_first_of("023456789") == std::string::npos) continue;
            return std::nullopt;
        }
        const auto read = units::parseCount(*written, style);
        if (!read || (amount && *amount != *read)) return std::nullopt;
        amount = *read;
    }
    return amount;
}

std::optional<SizeInText> sizeInText(std::string_view text) {
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (at > 0 && (isLetterByte(text[at - 1]) || isDigitByte(text[at - 1]))) continue;
        std::size_t digits = at;
        std::size_t end = at;
        if (isSs(text, at)) {
            digits = pastGap(text, at + 2);
            end = pastDigits(text, digits);
        } else if (isDigitByte(text[at])) {
            const auto after = pastDigits(text, at);
            const auto mark = pastGap(text, after);
            if (!isSs(text, mark)) continue;
            end = mark + 2;
        } else {
            continue;
        }
        if (end < text.size() && (isLetterByte(text[end]) || isDigitByte(text[end]))) continue;
        const auto number = text.substr(digits, pastDigits(text, digits) - digits);
        const auto size = catalogue::stoneSizeNamed("SS" + std::string(number));
        if (size) return SizeInText{size->name, tidy(tidy(text.substr(0, at)) + " " + tidy(text.substr(end)))};
    }
    return std::nullopt;
}

std::optional<std::string_view> listedSize(std::string_view cell) {
    if (const auto found = sizeInText(cell)) return found->size;
    const auto number = lowerTrimmed(cell);
    if (number.empty() || pastDigits(number, 0) != number.size()) return std::nullopt;
    const auto size = catalogue::stoneSizeNamed("SS" + number);
    return size ? std::optional(size->name) : std::nullopt;
}

} // namespace sp::supply

// SPDX-License-Identifier: MIT
#include "core/artwork/plt_script.h"

#include <algorithm>
#include <iterator>

namespace sp::artwork {

namespace {

constexpr char kEscape = '\x1b';
constexpr char kEndOfText = '\x03';

constexpr char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - ('a' - 'A')) : c; }
bool isControl(char c) { return static_cast<unsigned char>(c) <= ' ' || c == '\x7f'; }
bool beginsNumber(char c) { return isDigit(c) || c == '-' || c == '+' || c == '.'; }

/// Those whose numbers are followed.
constexpr std::uint16_t kNumbered[] = {pltWord("AA"), pltWord("AR"), pltWord("AT"), pltWord("BR"), pltWord("BZ"),
                                       pltWord("CI"), pltWord("CR"), pltWord("EA"), pltWord("ER"), pltWord("EW"),
                                       pltWord("FP"), pltWord("IP"), pltWord("NP"), pltWord("PA"), pltWord("PC"),
                                       pltWord("PD"), pltWord("PM"), pltWord("PR"), pltWord("PU"), pltWord("RA"),
                                       pltWord("RR"), pltWord("RT"), pltWord("SC"), pltWord("SP"), pltWord("WG")};

/// Others with which files begin: HP-GL/2 and what it keeps of its forerunner.
constexpr std::uint16_t kOther[] = {
    pltWord("AC"), pltWord("AF"), pltWord("BP"), pltWord("CO"), pltWord("CT"), pltWord("DF"), pltWord("DT"),
    pltWord("EC"), pltWord("EP"), pltWord("FT"), pltWord("IN"), pltWord("IR"), pltWord("IW"), pltWord("LA"),
    pltWord("LB"), pltWord("LO"), pltWord("LT"), pltWord("MC"), pltWord("MG"), pltWord("PE"), pltWord("PG"),
    pltWord("PP"), pltWord("PS"), pltWord("PW"), pltWord("QL"), pltWord("RO"), pltWord("SI"), pltWord("SM"),
    pltWord("SR"), pltWord("TR"), pltWord("UL"), pltWord("VS"), pltWord("WU")};

template<std::size_t n>
bool isOf(const std::uint16_t (&words)[n], std::uint16_t word) {
    return std::find(std::begin(words), std::end(words), word) != std::end(words);
}

} // namespace

PltScript::PltScript(std::string_view text)
    : m_text(text)
    , m_labelEnd(kEndOfText) {}

/// On to the letters of the next instruction, or to something that is none.
bool PltScript::toLetters() {
    while (!isAtEnd()) {
        const char c = peek();
        if (c == kEscape) {
            skipEscape();
        } else if (m_otherLanguage || isControl(c) || c == ';' || c == ',' || c == '!') {
            ++m_at;
        } else if (c == '@') { // a line for the printer's job control
            m_at = std::min(m_text.find('\n', m_at), m_text.size());
        } else {
            return true;
        }
    }
    return false;
}

/// ESC. and a letter, with numbers up to a colon, speak to the plotter's line; ESC% changes the language; all others
/// are of printers.
void PltScript::skipEscape() {
    ++m_at;
    const char kind = peek();
    if (kind == '.') {
        m_at = std::min(m_at + 2, m_text.size());
        std::size_t end = m_at;
        while (end < m_text.size() && (isDigit(m_text[end]) || m_text[end] == ';')) ++end;
        if (end < m_text.size() && m_text[end] == ':') m_at = end + 1;
        return;
    }
    if (kind == '%') {
        std::size_t end = m_at + 1;
        while (end < m_text.size() && (isDigit(m_text[end]) || m_text[end] == '-')) ++end;
        if (end < m_text.size() && upper(m_text[end]) == 'A') m_otherLanguage = true;
        if (end < m_text.size() && upper(m_text[end]) == 'B') m_otherLanguage = false;
        m_at = std::min(end + 1, m_text.size());
        return;
    }
    if (kind >= '0' && kind <= '~') { // ESC E
        ++m_at;
        m_otherLanguage = m_otherLanguage || m_text.find("\x1b%", m_at) != std::string_view::npos;
        return;
    }
    skipPcl();
}

/// ESC*b12W and twelve bytes; several in one end with small letters, the last with a capital.
void PltScript::skipPcl() {
    constexpr std::size_t kMostBytes = 100'000'000;
    std::size_t number = 0;
    while (!isAtEnd() && peek() != kEscape) {
        const char c = m_text[m_at++];
        if (isDigit(c)) {
            number = std::min(number * 10 + static_cast<std::size_t>(c - '0'), kMostBytes);
            continue;
        }
        if (c >= '@' && c <= '^') {
            if (c == 'W') m_at = std::min(m_at + number, m_text.size());
            return;
        }
        if (isLetter(c)) number = 0;
    }
}

bool PltScript::next(PltInstruction& instruction) {
    instruction.numbers.clear();
    instruction.text = {};
    if (m_goesOn) {
        takeNumbers(instruction.numbers);
        return !m_garbled;
    }
    if (m_garbled || !toLetters()) return false;
    if (!isLetter(peek()) || !isLetter(peek(1))) {
        m_garbled = true;
        return false;
    }
    const char name[3] = {upper(peek()), upper(peek(1)), '\0'};
    instruction.word = pltWord(name);
    m_at += 2;
    switch (instruction.word) {
    case pltWord("LB"):
    case pltWord("BL"):
    case pltWord("WD"): instruction.text = takeUntil(m_labelEnd); break;
    case pltWord("PE"): instruction.text = takeUntil(';'); break;
    case pltWord("DT"): takeTerminator(); break;
    case pltWord("SM"): takeSymbol(instruction); break;
    case pltWord("CO"): skipComment(); break;
    case pltWord("IN"):
    case pltWord("DF"):
        m_labelEnd = kEndOfText;
        skipParameters();
        break;
    default:
        if (isOf(kNumbered, instruction.word))
            takeNumbers(instruction.numbers);
        else
            skipParameters();
    }
    return !m_garbled;
}

void PltScript::takeNumbers(std::vector<double>& numbers) {
    constexpr std::size_t kMostNumbers = 6000; // of one part; pairs and curves are whole in it
    Scanner scanner(m_text.substr(m_at));
    scanner.skipSeparator();
    double value = 0;
    while (numbers.size() < kMostNumbers && scanner.number(value)) numbers.push_back(value);
    scanner.skipSpace();
    m_goesOn = numbers.size() == kMostNumbers && beginsNumber(scanner.peek());
    m_at = m_text.size() - scanner.rest().size();
    if (m_goesOn) return;
    const char after = peek();
    // Half a pair and then nothing at all: the file was cut off there.
    const bool isCut = isAtEnd() && numbers.size() % 2 == 1 && numbers.size() > 1;
    m_garbled = isCut || after == ',' || beginsNumber(after);
}

void PltScript::skipParameters() {
    while (!isAtEnd() && !isLetter(peek()) && peek() != ';' && peek() != kEscape && !m_garbled) {
        const char c = m_text[m_at++];
        if (c == '"') takeUntil('"');
        if (static_cast<unsigned char>(c) >= 0x80) m_garbled = true;
    }
}

std::string_view PltScript::takeUntil(char end) {
    const auto found = m_text.find(end, m_at);
    m_garbled = found == std::string_view::npos;
    if (m_garbled) return {};
    const auto text = m_text.substr(m_at, found - m_at);
    m_at = found + 1;
    return text;
}

/// DT*, or DT alone for the usual one.
void PltScript::takeTerminator() {
    const char c = peek();
    if (c == ';' || isAtEnd()) {
        m_labelEnd = kEndOfText;
        return;
    }
    m_labelEnd = c;
    ++m_at;
    skipParameters();
}

void PltScript::takeSymbol(PltInstruction& instruction) {
    if (isAtEnd() || peek() == ';' || peek() == kEscape || isControl(peek())) return;
    instruction.text = m_text.substr(m_at++, 1);
}

void PltScript::skipComment() {
    while (peek() == ' ') ++m_at;
    if (peek() == '"') {
        ++m_at;
        takeUntil('"');
    } else {
        takeUntil(';');
    }
}

bool looksLikePlt(std::string_view text) {
    constexpr int kEnough = 6;
    PltScript script(text);
    PltInstruction instruction;
    bool isSeparated = false;
    int known = 0;
    int unknown = 0; // what some makers add
    for (std::size_t from = 0; known + unknown < kEnough && script.next(instruction); from = script.position()) {
        const bool isKnown = isOf(kNumbered, instruction.word) || isOf(kOther, instruction.word);
        ++(isKnown ? known : unknown);
        if (known == 0) return false;
        const auto written = text.substr(from, script.position() + 1 - from);
        isSeparated = isSeparated || !instruction.numbers.empty() || written.find(';') != std::string_view::npos;
    }
    return known > 0 && known >= 2 * unknown && isSeparated && !script.isGarbled();
}

} // namespace sp::artwork

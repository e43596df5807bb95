// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/scanner.h"

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace sp::artwork {

/// The two letters that name an instruction, as one number: pltWord("PU").
constexpr std::uint16_t pltWord(const char (&name)[3]) {
    return static_cast<std::uint16_t>(static_cast<unsigned char>(name[0]) << 8U | static_cast<unsigned char>(name[1]));
}

struct PltInstruction {
    std::uint16_t word = 0;      ///< upper case
    std::vector<double> numbers; ///< of the instructions that draw or set something we follow
    std::string_view text;       ///< what PE encodes, what a label says
};

/// Walks through the instructions of an HP-GL/2 text, which must outlive it: two letters, then numbers with blanks,
/// commas or signs between them, then a semicolon or the next letters. Labels, comments, the escape sequences around
/// them and what stands in other printer languages are passed over. Very long rows of numbers come in parts, each with
/// whole pairs of a curve.
class PltScript {
  public:
    explicit PltScript(std::string_view text);

    /// False at the end, or where the text is none of these (then `isGarbled`).
    bool next(PltInstruction& instruction);
    bool isGarbled() const { return m_garbled; }
    std::size_t position() const { return m_at; }

  private:
    bool toLetters();
    void skipEscape();
    void skipPcl();
    void takeNumbers(std::vector<double>& numbers);
    void skipParameters();
    std::string_view takeUntil(char end);
    void takeTerminator();
    void takeSymbol(PltInstruction& instruction);
    void skipComment();
    char peek(std::size_t further = 0) const { return m_at + further < m_text.size() ? m_text[m_at + further] : '\0'; }
    bool isAtEnd() const { return m_at >= m_text.size(); }

    std::string_view m_text;
    std::size_t m_at = 0;
    char m_labelEnd;
    bool m_otherLanguage = false; ///< between ESC%A and ESC%B
    bool m_goesOn = false;        ///< the last instruction has more numbers
    bool m_garbled = false;
};

/// Whether the text begins as files of this language do.
bool looksLikePlt(std::string_view text);

} // namespace sp::artwork

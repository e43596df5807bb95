// SPDX-License-Identifier: MIT
#include "core/artwork/entities.h"

#include "core/artwork/messages.h"
#include "core/artwork/scanner.h"

#include <unordered_map>

namespace sp::artwork {

namespace {

constexpr std::size_t kMaxGrowth = 16'000'000;
constexpr int kMaxNestingDepth = 16;

using Entities = std::unordered_map<std::string_view, std::string_view>;

/// Past the quoted text, comment or declaration that starts at `at`, or the end.
std::size_t after(std::string_view text, std::size_t at, std::string_view mark) {
    const auto found = text.find(mark, at);
    return found == std::string_view::npos ? text.size() : found + mark.size();
}

void readDeclaration(std::string_view declaration, Entities& entities, EntityNotes& notes) {
    Scanner scanner(declaration);
    scanner.skipSpace();
    if (scanner.peek() == '%') { // an entity of the DTD's own; nothing in a drawing refers to it
        if (declaration.find("SYSTEM") != std::string_view::npos ||
            declaration.find("PUBLIC") != std::string_view::npos)
            ++notes.external;
        return;
    }
    const auto rest = scanner.rest();
    std::size_t end = 0;
    while (end < rest.size() && !isSpace(rest[end])) ++end;
    const auto name = rest.substr(0, end);
    const auto value = trimmed(rest.substr(end));
    if (value.empty()) return;
    if (value.front() != '"' && value.front() != '\'') {
        ++notes.external;
        return;
    }
    const auto close = value.find(value.front(), 1);
    if (close != std::string_view::npos) entities.try_emplace(name, value.substr(1, close - 1)); // the first one binds
}

/// Reads <!DOCTYPE … [ … ]> from `at`; returns the place after it.
std::size_t readDoctype(std::string_view text, std::size_t at, Entities& entities, EntityNotes& notes) {
    bool inside = false;
    while (at < text.size()) {
        const char c = text[at];
        if (c == '"' || c == '\'') {
            at = after(text, at + 1, std::string_view(&c, 1));
        } else if (c == '[') {
            inside = true;
            ++at;
        } else if (c == ']') {
            inside = false;
            ++at;
        } else if (c == '>' && !inside) {
            return at + 1;
        } else if (text.substr(at, 4) == "<!--") {
            at = after(text, at + 4, "-->");
        } else if (text.substr(at, 8) == "<!ENTITY") {
            auto end = at + 8; // to the > outside quotes
            while (end < text.size() && text[end] != '>') {
                const char q = text[end];
                end = q == '"' || q == '\'' ? after(text, end + 1, std::string_view(&q, 1)) : end + 1;
            }
            if (end < text.size()) readDeclaration(text.substr(at + 8, end - at - 8), entities, notes);
            at = end;
        } else {
            ++at;
        }
    }
    return at;
}

/// Copies text to `out` with references replaced.
class Expander {
  public:
    Expander(const Entities& entities, std::size_t most)
        : m_entities(entities)
        , m_most(most) {}

    std::string out;

    /// False when a bound was hit.
    bool copy(std::string_view text, int depth) {
        if (depth > kMaxNestingDepth) return false;
        for (std::size_t at = 0; at < text.size();) {
            const auto mark = text.find_first_of("&<", at);
            if (!append(text.substr(at, mark == std::string_view::npos ? mark : mark - at))) return false;
            if (mark == std::string_view::npos) break;
            at = mark;
            if (text[at] == '<') {
                auto end = at + 1;
                if (text.substr(at, 4) == "<!--") end = after(text, at + 4, "-->");
                if (text.substr(at, 9) == "<![CDATA[") end = after(text, at + 9, "]]>");
                if (!append(text.substr(at, end - at))) return false;
                at = end;
                continue;
            }
            const auto end = text.substr(at, kMaxNameLength).find(';');
            const auto known =
                end == std::string_view::npos ? m_entities.end() : m_entities.find(text.substr(at + 1, end - 1));
            if (known == m_entities.end()) {
                if (!append("&")) return false;
                ++at;
            } else {
                if (++m_replaced > kMaxReplaced || !copy(known->second, depth + 1)) return false;
                at += end + 1;
            }
        }
        return true;
    }

  private:
    static constexpr std::size_t kMaxNameLength = 128;
    static constexpr std::size_t kMaxReplaced = 2'000'000;

    bool append(std::string_view text) {
        out.append(text);
        return out.size() <= m_most;
    }

    const Entities& m_entities;
    std::size_t m_most;
    std::size_t m_replaced = 0;
};

} // namespace

base::Result<std::string> expandEntities(std::string document, std::string_view fileName, EntityNotes& notes) {
    const std::string_view text = document;
    const auto start = text.substr(0, 1'000'000).find("<!DOCTYPE");
    if (start == std::string_view::npos) return document;
    Entities entities;
    const auto body = readDoctype(text, start + 9, entities, notes);
    if (entities.empty()) return document;
    Expander expander(entities, document.size() + kMaxGrowth);
    expander.out.reserve(document.size() + document.size() / 8);
    expander.out.append(text.substr(0, start));
    if (!expander.copy(text.substr(body), 0))
        return base::fail(Fault::EndlessEntities, std::string(fileName), fileName);
    return std::move(expander.out);
}

} // namespace sp::artwork

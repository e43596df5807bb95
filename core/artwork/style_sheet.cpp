// SPDX-License-Identifier: MIT
#include "core/artwork/style_sheet.h"

#include "core/artwork/scanner.h"

#include <pugixml.hpp>

#include <algorithm>
#include <array>

namespace sp::artwork {

namespace {

constexpr std::array<std::string_view, kProperties> kNames = {"fill",
                                                              "stroke",
                                                              "color",
                                                              "display",
                                                              "visibility",
                                                              "opacity",
                                                              "fill-rule",
                                                              "stop-color",
                                                              "clip-path",
                                                              "mask",
                                                              "transform",
                                                              "cx",
                                                              "cy",
                                                              "r",
                                                              "rx",
                                                              "ry",
                                                              "stroke-dasharray",
                                                              "stroke-dashoffset",
                                                              "stroke-linecap",
                                                              "stroke-width",
                                                              "marker",
                                                              "marker-start",
                                                              "marker-mid",
                                                              "marker-end",
                                                              "vector-effect",
                                                              "transform-origin"};

/// The single transforms of CSS Transforms Level 2, section 3.
constexpr std::array<std::string_view, 4> kOtherMoves = {"translate", "rotate", "scale", "offset-path"};

constexpr std::size_t kMaxRules = 20'000;

/// The text without its comments.
std::string withoutComments(std::string_view text) {
    std::string plain;
    plain.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const auto open = text.find("/*", at);
        plain.append(text.substr(at, open == std::string_view::npos ? open : open - at));
        if (open == std::string_view::npos) break;
        plain.push_back(' ');
        const auto close = text.find("*/", open + 2);
        if (close == std::string_view::npos) break;
        at = close + 2;
    }
    return plain;
}

/// Where the block that opens at `open` ends: at its closing brace, or at the end of the text.
std::size_t endOfBlock(std::string_view text, std::size_t open) {
    int depth = 0;
    for (std::size_t i = open; i < text.size(); ++i) {
        if (text[i] == '{') ++depth;
        if (text[i] == '}' && --depth == 0) return i;
    }
    return text.size();
}

} // namespace

std::string_view localName(std::string_view name) {
    const auto colon = name.rfind(':');
    return colon == std::string_view::npos ? name : name.substr(colon + 1);
}

bool propertyFrom(std::string_view name, Property& property) {
    for (std::size_t i = 0; i < kProperties; ++i) {
        if (name.size() == kNames[i].size() && name == kNames[i]) {
            property = static_cast<Property>(i);
            return true;
        }
    }
    if (std::find(kOtherMoves.begin(), kOtherMoves.end(), name) == kOtherMoves.end()) return false;
    property = Property::OtherMove;
    return true;
}

bool nextDeclaration(std::string_view text, std::size_t& at, Declaration& declaration) {
    while (at < text.size()) {
        auto end = at; // a semicolon in brackets, as in url(data:…;…), does not end it
        for (int depth = 0; end < text.size() && (text[end] != ';' || depth > 0); ++end) {
            if (text[end] == '(') ++depth;
            if (text[end] == ')') --depth;
        }
        const std::string_view one = text.substr(at, end - at);
        at = std::min(end + 1, text.size());
        const auto colon = one.find(':');
        if (colon == std::string_view::npos) continue;
        if (!propertyFrom(trimmed(one.substr(0, colon)), declaration.property)) continue;
        declaration.value = trimmed(one.substr(colon + 1));
        declaration.important = false;
        if (const auto bang = declaration.value.rfind('!');
            bang != std::string_view::npos &&
            equalsIgnoringCase(trimmed(declaration.value.substr(bang + 1)), "important")) {
            declaration.important = true;
            declaration.value = trimmed(declaration.value.substr(0, bang));
        }
        return true;
    }
    return false;
}

void StyleSheet::add(std::string_view source) {
    m_texts.push_back(withoutComments(source));
    const std::string_view text = m_texts.back();
    for (std::size_t at = 0; at < text.size();) {
        const auto open = text.find_first_of("{;", at);
        const std::string_view head = trimmed(text.substr(at, open == std::string_view::npos ? open : open - at));
        if (open == std::string_view::npos) break;
        if (text[open] == ';') { // @import, @charset, or a stray semicolon
            if (head.starts_with("@import")) m_imports = true;
            at = open + 1;
            continue;
        }
        const auto close = endOfBlock(text, open);
        if (head.starts_with('@')) {
            if (!head.starts_with("@font-face")) ++m_unread;
        } else if (m_rules.size() < kMaxRules) {
            addRule(head, text.substr(open + 1, close - open - 1));
        } else {
            m_budget = 0; // the colours of what the rest is about would be wrong
            return;
        }
        at = close + 1;
    }
}

void StyleSheet::addRule(std::string_view selectors, std::string_view declarations) {
    const auto first = static_cast<std::uint32_t>(m_declarations.size());
    eachDeclaration(declarations, [this](const Declaration& d) { m_declarations.push_back(d); });
    const auto end = static_cast<std::uint32_t>(m_declarations.size());
    if (first == end) return;
    for (std::size_t at = 0; at <= selectors.size() && m_rules.size() < kMaxRules;) {
        const auto comma = std::min(selectors.find(',', at), selectors.size());
        Rule rule;
        rule.firstDeclaration = first;
        rule.endDeclaration = end;
        if (parseSelector(trimmed(selectors.substr(at, comma - at)), rule)) {
            const Compound& own = rule.chain.front();
            const auto number = static_cast<std::uint32_t>(m_rules.size());
            if (!own.id.empty())
                m_byId[own.id].push_back(number);
            else if (!own.classes.empty())
                m_byClass[own.classes.front()].push_back(number);
            else
                m_byElement[own.element].push_back(number);
            m_rules.push_back(std::move(rule));
        } else {
            ++m_unread;
        }
        at = comma + 1;
    }
}

bool StyleSheet::parseSelector(std::string_view text, Rule& rule) const {
    constexpr std::size_t kMaxChainLength = 16;
    Scanner scanner(text);
    bool child = false;
    while (!scanner.isDone()) {
        Compound compound;
        bool any = false;
        for (bool more = true; more;) {
            if (scanner.take('*')) {
                any = true;
            } else if (scanner.take('.')) {
                compound.classes.push_back(scanner.word());
                any = !compound.classes.back().empty();
                rule.specificity += 0x100;
            } else if (scanner.take('#')) {
                compound.id = scanner.word();
                any = !compound.id.empty();
                rule.specificity += 0x10000;
            } else if (const auto word = scanner.word(); !word.empty() && !any) {
                compound.element = word;
                any = true;
                rule.specificity += 1;
            } else {
                more = false;
            }
            if (!any) return false;
        }
        compound.childOfNext = child;
        rule.chain.insert(rule.chain.begin(), std::move(compound));
        if (rule.chain.size() > kMaxChainLength) return false;
        scanner.skipSpace();
        child = scanner.take('>');
        if (child) scanner.skipSpace();
    }
    return !child && !rule.chain.empty();
}

bool StyleSheet::matches(const Compound& compound, std::string_view name, std::string_view classes,
                         std::string_view id) {
    m_budget -= 1 + static_cast<std::int64_t>((classes.size() + id.size()) / 64);
    if (!compound.element.empty() && compound.element != name) return false;
    if (!compound.id.empty() && compound.id != id) return false;
    for (const auto& wanted : compound.classes) {
        bool has = false;
        eachWord(classes, [&](std::string_view word) { has = has || word == wanted; });
        m_budget -= 1 + static_cast<std::int64_t>(classes.size() / 16);
        if (!has) return false;
    }
    return true;
}

bool StyleSheet::ancestorsMatch(const Rule& rule, std::size_t next, pugi::xml_node element) {
    if (next == rule.chain.size()) return true;
    const bool onlyParent = rule.chain[next - 1].childOfNext;
    for (auto up = element.parent(); up.type() == pugi::node_element && isWithinBudget(); up = up.parent()) {
        if (matches(rule.chain[next], localName(up.name()), up.attribute("class").value(),
                    up.attribute("id").value()) &&
            ancestorsMatch(rule, next + 1, up))
            return true;
        if (onlyParent) return false;
    }
    return false;
}

void StyleSheet::collect(const Index& index, std::string_view key, const pugi::xml_node& element, std::string_view name,
                         std::string_view classes, std::string_view id) {
    const auto found = index.find(key);
    if (found == index.end()) return;
    for (const auto number : found->second) {
        if (!isWithinBudget()) return;
        const Rule& rule = m_rules[number];
        if (matches(rule.chain.front(), name, classes, id) && ancestorsMatch(rule, 1, element))
            m_found.push_back(number);
    }
}

std::span<const Declaration* const> StyleSheet::matching(const pugi::xml_node& element, std::string_view name,
                                                         std::string_view classes, std::string_view id) {
    m_found.clear();
    m_matched.clear();
    if (!m_byElement.empty()) {
        collect(m_byElement, "", element, name, classes, id);
        collect(m_byElement, name, element, name, classes, id);
    }
    if (!classes.empty() && !m_byClass.empty())
        eachWord(classes, [&](std::string_view word) { collect(m_byClass, word, element, name, classes, id); });
    if (!id.empty() && !m_byId.empty()) collect(m_byId, id, element, name, classes, id);
    if (m_found.size() > 1) {
        std::sort(m_found.begin(), m_found.end(), [this](std::uint32_t a, std::uint32_t b) {
            return m_rules[a].specificity != m_rules[b].specificity ? m_rules[a].specificity < m_rules[b].specificity
                                                                    : a < b;
        });
        m_found.erase(std::unique(m_found.begin(), m_found.end()), m_found.end());
    }
    for (const auto number : m_found)
        for (auto i = m_rules[number].firstDeclaration; i < m_rules[number].endDeclaration; ++i)
            m_matched.push_back(&m_declarations[i]);
    m_budget -= static_cast<std::int64_t>(m_matched.size());
    return m_matched;
}

} // namespace sp::artwork

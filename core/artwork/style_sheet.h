// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <deque>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace pugi {
class xml_node;
}

namespace sp::artwork {

/// The properties that decide what is drawn and in which colour.
enum class Property : std::uint8_t {
    Fill,
    Stroke,
    Colour,
    Display,
    Visibility,
    Opacity,
    FillRule,
    StopColour,
    ClipPath,
    Mask,
    Transform,
    CentreX,
    CentreY,
    Radius,
    RadiusX,
    RadiusY,
    Dashes,
    DashOffset,
    LineCap,
    LineWidth,
    Marker,
    MarkerStart,
    MarkerMiddle,
    MarkerEnd,
    VectorEffect,
    OtherMove ///< a property that moves things and is not followed
};
inline constexpr std::size_t kProperties = 26;

/// The property of this name (lower case), or false.
bool propertyFrom(std::string_view name, Property& property);

struct Declaration {
    Property property;
    bool important = false;
    std::string_view value; ///< trimmed, without !important
};

/// Calls `take` with each declaration of "fill: red; stroke: none" that names one of our properties.
template<class Take>
void eachDeclaration(std::string_view text, Take take);

/// The <style> blocks of one file together. Understands selectors of elements, classes, ids, *, lists,
/// descendants and children, ranked by specificity and order (Selectors Level 3, sections 5 to 9); other
/// selectors and @-rules are left alone and counted.
class StyleSheet {
  public:
    void add(std::string_view text);

    bool isEmpty() const { return m_rules.empty(); }
    /// Selectors and @-rules that were not understood.
    std::size_t unread() const { return m_unread; }
    bool wantsOtherFiles() const { return m_imports; }

    /// Declarations for this element in rising rank (a later one wins unless an earlier is important).
    /// Elements are matched by their own place in the file, also when met through a use. The span lasts until
    /// the next call.
    std::span<const Declaration* const> matching(const pugi::xml_node& element, std::string_view name,
                                                 std::string_view classes, std::string_view id);
    /// False once matching has cost more than is reasonable for any honest file.
    bool isWithinBudget() const { return m_budget > 0; }

  private:
    struct Compound { ///< e.g. circle.small#a
        std::string_view element;
        std::string_view id;
        std::vector<std::string_view> classes;
        bool childOfNext = false; ///< must be the very child of the compound next in the chain
    };
    struct Rule {
        std::vector<Compound> chain; ///< from the element itself outwards
        std::uint32_t specificity = 0;
        std::uint32_t firstDeclaration = 0;
        std::uint32_t endDeclaration = 0;
    };
    using Index = std::unordered_map<std::string_view, std::vector<std::uint32_t>>;

    void addRule(std::string_view selectors, std::string_view declarations);
    bool parseSelector(std::string_view text, Rule& rule) const;
    bool matches(const Compound& compound, std::string_view name, std::string_view classes, std::string_view id);
    bool ancestorsMatch(const Rule& rule, std::size_t next, pugi::xml_node element);
    void collect(const Index& index, std::string_view key, const pugi::xml_node& element, std::string_view name,
                 std::string_view classes, std::string_view id);

    std::deque<std::string> m_texts; ///< never moved: the rules look into them
    std::vector<Rule> m_rules;
    std::vector<Declaration> m_declarations;
    Index m_byId, m_byClass, m_byElement;
    std::vector<std::uint32_t> m_found;
    std::vector<const Declaration*> m_matched;
    std::size_t m_unread = 0;
    bool m_imports = false;
    std::int64_t m_budget = 12'000'000;
};

/// Calls `take` with each word of a class attribute.
template<class Take>
void eachWord(std::string_view text, Take take) {
    std::size_t at = 0;
    while (at < text.size()) {
        while (at < text.size() && static_cast<unsigned char>(text[at]) <= ' ') ++at;
        const std::size_t from = at;
        while (at < text.size() && static_cast<unsigned char>(text[at]) > ' ') ++at;
        if (at > from) take(text.substr(from, at - from));
    }
}

/// Part of eachDeclaration: the next declaration, from `at` on; false at the end.
bool nextDeclaration(std::string_view text, std::size_t& at, Declaration& declaration);

template<class Take>
void eachDeclaration(std::string_view text, Take take) {
    Declaration declaration{};
    for (std::size_t at = 0; nextDeclaration(text, at, declaration);) take(declaration);
}

/// The name without its prefix: "svg:circle" is "circle".
std::string_view localName(std::string_view name);

} // namespace sp::artwork

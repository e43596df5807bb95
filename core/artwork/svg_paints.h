// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"
#include "core/artwork/style_sheet.h"

#include <pugixml.hpp>

#include <cstdint>
#include <optional>
#include <string_view>
#include <unordered_map>

namespace sp::artwork {

/// What a shape is filled or drawn with.
struct SvgPaint {
    enum class Kind : std::uint8_t { None, Solid, Pattern };
    Kind kind = Kind::None;
    std::uint32_t rgb = 0;
};

/// Finds the parts of an SVG document that others refer to, and what their references paint. The document, the sheet
/// and the builder, whose work is counted, must outlive it.
class SvgPaints {
  public:
    SvgPaints(const pugi::xml_document& document, StyleSheet& sheet, DrawingBuilder& builder);

    /// The name without the drawing's own prefix; empty for elements of other kinds of file.
    std::string_view svgName(std::string_view name) const;
    /// The element with this id, or none.
    pugi::xml_node byId(std::string_view id);
    /// What its href says, "#name" for a part of the same file.
    std::string_view referenceOf(pugi::xml_node node);
    /// `inherited` is what holds outside, for "inherit" and for what cannot be read; `colour` is currentColor.
    SvgPaint paintFrom(std::string_view text, SvgPaint inherited, std::uint32_t colour);
    /// Gradients that stand for one colour, that of their middle.
    std::size_t gradients() const { return m_gradients.size(); }

  private:
    SvgPaint paintServer(std::string_view text, SvgPaint inherited, std::uint32_t colour);
    struct Stop {
        double offset = 0; ///< 0 to 1
        std::uint32_t rgb = 0;
    };

    /// Where half of the gradient's area is passed: at a half of a linear one, at 0.71 of a radial one's radius; mixed
    /// in sRGB (SVG 1.1, section 13.2).
    std::optional<std::uint32_t> middleColour(pugi::xml_node gradient, std::uint32_t colour);
    Stop stopOf(pugi::xml_node node, std::uint32_t colour);
    static std::uint32_t mixed(const Stop& before, const Stop& after, double offset);
    void gatherIds(pugi::xml_node node);

    const pugi::xml_document& m_document;
    StyleSheet& m_sheet;
    DrawingBuilder& m_builder;
    std::string_view m_prefix; ///< of the root's name, "svg:" or nothing
    std::unordered_map<std::string_view, pugi::xml_node> m_ids;
    std::unordered_map<std::string_view, SvgPaint> m_gradients; ///< by id, in the colour they stand for
    bool m_idsKnown = false;
};

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#include "core/artwork/svg_paints.h"

#include "core/artwork/colour.h"
#include "core/artwork/scanner.h"
#include "core/artwork/svg_values.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

SvgPaints::SvgPaints(const pugi::xml_document& document, StyleSheet& sheet, DrawingBuilder& builder)
    : m_document(document)
    , m_sheet(sheet)
    , m_builder(builder) {
    const std::string_view root = document.document_element().name();
    if (root.ends_with("svg")) m_prefix = root.substr(0, root.size() - 3);
}

std::string_view SvgPaints::svgName(std::string_view name) const {
    if (!m_prefix.empty() && name.starts_with(m_prefix))
        name.remove_prefix(m_prefix.size());
    else if (name.starts_with("svg:"))
        name.remove_prefix(4);
    return name.find(':') == std::string_view::npos ? name : std::string_view();
}

pugi::xml_node SvgPaints::byId(std::string_view id) {
    if (!m_idsKnown) {
        m_idsKnown = true;
        const pugi::xml_node root = m_document.document_element();
        gatherIds(root);
    }
    const auto found = m_ids.find(id);
    return found == m_ids.end() ? pugi::xml_node() : found->second;
}

void SvgPaints::gatherIds(pugi::xml_node node) {
    if (const auto id = node.attribute("id")) m_ids.try_emplace(id.value(), node);
    for (const auto& child : node.children())
        if (child.type() == pugi::node_element) gatherIds(child);
}

std::string_view SvgPaints::referenceOf(pugi::xml_node node) {
    for (const auto& attribute : node.attributes())
        if (localName(attribute.name()) == "href") {
            const std::string_view value = attribute.value();
            m_builder.spend(value.size());
            return trimmed(value);
        }
    return {};
}

SvgPaint SvgPaints::paintFrom(std::string_view text, SvgPaint inherited, std::uint32_t colour) {
    if (text == "none" || text == "transparent") return {};
    if (text == "inherit") return inherited;
    if (equalsIgnoringCase(text, "currentcolor")) return {SvgPaint::Kind::Solid, colour};
    if (text.starts_with("url(")) return paintServer(text, inherited, colour);
    if (const auto rgb = parseColour(text)) return {SvgPaint::Kind::Solid, *rgb};
    return inherited;
}

SvgPaint SvgPaints::paintServer(std::string_view text, SvgPaint inherited, std::uint32_t colour) {
    const auto close = std::min(text.find(')'), text.size());
    std::string_view target = trimmed(text.substr(4, close - 4));
    while (!target.empty() && (target.front() == '"' || target.front() == '\'' || target.front() == '#'))
        target.remove_prefix(1);
    while (!target.empty() && (target.back() == '"' || target.back() == '\'')) target.remove_suffix(1);
    const pugi::xml_node server = byId(target);
    const std::string_view name = localName(server.name());
    if (name == "pattern") return {SvgPaint::Kind::Pattern, 0};
    if (name == "linearGradient" || name == "radialGradient" || name == "meshgradient") {
        const auto [known, isNew] = m_gradients.try_emplace(target);
        if (isNew)
            if (const auto rgb = middleColour(server, colour)) known->second = {SvgPaint::Kind::Solid, *rgb};
        return known->second;
    }
    const auto fallback = close < text.size() ? trimmed(text.substr(close + 1)) : std::string_view();
    return fallback.empty() || fallback.starts_with("url(") ? SvgPaint{} : paintFrom(fallback, inherited, colour);
}

std::optional<std::uint32_t> SvgPaints::middleColour(pugi::xml_node gradient, std::uint32_t colour) {
    // As much of the area lies before this offset as after it.
    const double middle = localName(gradient.name()) == "radialGradient" ? std::sqrt(0.5) : 0.5;
    for (int hops = 0; hops < 8 && gradient; ++hops) {
        std::optional<Stop> before;
        for (const auto& node : gradient.children()) {
            if (svgName(node.name()) != "stop") continue;
            Stop stop = stopOf(node, colour);
            stop.offset = std::clamp(stop.offset, before ? before->offset : 0.0, 1.0);
            if (stop.offset > middle) return before ? mixed(*before, stop, middle) : stop.rgb;
            before = stop;
        }
        if (before) return before->rgb;
        const auto reference = referenceOf(gradient);
        gradient = reference.starts_with('#') ? byId(reference.substr(1)) : pugi::xml_node();
    }
    return std::nullopt;
}

SvgPaints::Stop SvgPaints::stopOf(pugi::xml_node node, std::uint32_t colour) {
    std::string_view text = node.attribute("stop-color").value();
    for (const Declaration* d :
         m_sheet.matching(node, "stop", node.attribute("class").value(), node.attribute("id").value()))
        if (d->property == Property::StopColour) text = d->value;
    eachDeclaration(node.attribute("style").value(), [&](const Declaration& d) {
        if (d.property == Property::StopColour) text = d.value;
    });
    const auto offset = parseSvgLength(node.attribute("offset").value());
    return {offset ? offset->value / (offset->unit == "%" ? 100 : 1) : 0,
            equalsIgnoringCase(text, "currentcolor") ? colour : parseColour(text).value_or(0)};
}

std::uint32_t SvgPaints::mixed(const Stop& before, const Stop& after, double offset) {
    const double share = (offset - before.offset) / (after.offset - before.offset);
    std::uint32_t rgb = 0;
    for (const int shift : {16, 8, 0}) {
        const double from = (before.rgb >> shift) & 0xFF;
        const double to = (after.rgb >> shift) & 0xFF;
        rgb |= static_cast<std::uint32_t>(std::lround(from + share * (to - from))) << shift;
    }
    return rgb;
}

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#include "core/artwork/svg_reader.h"

#include "core/artwork/colour.h"
#include "core/artwork/entities.h"
#include "core/artwork/path_data.h"
#include "core/artwork/scanner.h"
#include "core/artwork/style_sheet.h"
#include "core/artwork/svg_kinds.h"
#include "core/artwork/svg_paints.h"
#include "core/artwork/svg_values.h"

#include <pugixml.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <set>
#include <unordered_map>

namespace sp::artwork {

namespace {

/// What an element hands on to those inside it.
struct State {
    Matrix matrix;
    SvgPaint fill{SvgPaint::Kind::Solid, 0};
    SvgPaint stroke;
    std::uint32_t colour = 0;
    bool evenOdd = false;
    bool visible = true;
    bool shown = true; ///< no display:none and no opacity 0 from here outwards
    bool clipped = false;
    std::string_view dashes; ///< as written; a text of the document or of the sheet
    std::string_view dashOffset;
    double lineWidth = 1;
    bool keepsWidth = false; ///< the stroke is as wide whatever the transforms
    bool roundCaps = false;
    bool hasMarkers = false;
    std::uint32_t layer = 0;
    bool layerIsNamed = false; ///< by a layer group, which a plain group inside does not change
    bool hasLayer = false;
    double viewWidth = 100;
    double viewHeight = 100;
    int depth = 0;
    int uses = 0;
};

constexpr int kMaxUseDepth = 32;

class SvgReader {
  public:
    SvgReader(const pugi::xml_document& document, std::string_view fileName, const Limits& limits)
        : m_document(document)
        , m_fileName(fileName)
        , m_builder(fileName, limits)
        , m_hidden(fileName, limits)
        , m_unpainted(fileName, limits)
        , m_paints(document, m_sheet, m_builder) {}

    DrawingBuilder& builder() { return m_builder; }

    base::Result<Drawing> read() {
        const pugi::xml_node root = m_document.document_element();
        if (localName(root.name()) != "svg") return base::fail(Fault::NotSvg, std::string(m_fileName), m_fileName);
        if (!gatherStyles(root))
            return base::fail(Fault::NestedTooDeep, std::string(m_fileName), m_fileName, kMaxDepth);
        readRoot(root);
        return finish();
    }

  private:
    base::Result<Drawing> finish() {
        for (auto [aside, reason] : {std::pair{&m_hidden, Note::Hidden}, std::pair{&m_unpainted, Note::NotPainted}}) {
            auto drawing = aside->finish();
            if (!drawing) return drawing;
            if (const auto count = drawing->discs.size() + drawing->outlines.size()) m_builder.reject(reason, count);
        }
        if (!m_sheet.isWithinBudget())
            m_builder.refuse(base::makeError(Fault::StyleSheetTooInvolved, std::string(m_fileName), m_fileName));
        if (m_sheet.unread() > 0) m_builder.warn(base::say(Note::StyleRulesNotRead, m_sheet.unread()));
        if (m_sheet.wantsOtherFiles()) m_builder.warn(base::say(Note::StyleSheetElsewhere));
        if (m_paints.gradients() > 0) m_builder.warn(base::say(Note::GradientsStandFor, m_paints.gradients()));
        if (m_clippedShapes > 0) m_builder.warn(base::say(Note::ShapesCountedWhole, m_clippedShapes));
        if (m_unreadTransforms > 0) m_builder.warn(base::say(Note::TransformsNotRead, m_unreadTransforms));
        return m_builder.finish();
    }

    /// Adds every style block to the sheet. False when the file is nested too deep to walk.
    bool gatherStyles(pugi::xml_node root) {
        int depth = 0;
        for (pugi::xml_node node = root; node;) {
            if (localName(node.name()) == "style")
                for (const auto& text : node.children()) m_sheet.add(text.value());
            if (node.first_child()) {
                if (++depth > kMaxDepth) return false;
                node = node.first_child();
                continue;
            }
            while (node != root && !node.next_sibling()) {
                node = node.parent();
                --depth;
            }
            if (node == root) break;
            node = node.next_sibling();
        }
        return true;
    }

    void readRoot(pugi::xml_node root) {
        State state;
        m_layers.emplace_back();
        const auto width = parseSvgLength(root.attribute("width").value());
        const auto height = parseSvgLength(root.attribute("height").value());
        const auto box = parseViewBox(root.attribute("viewBox").value());
        const bool isPhysical = (width && width->isPhysical()) || (height && height->isPhysical());
        const auto sizeOf = [](const std::optional<SvgLength>& length) {
            return length && length->unit != "%" && length->value > 0 ? length->pixels(0) : 0.0;
        };
        double w = sizeOf(width);
        double h = sizeOf(height);
        if (box) {
            if (w <= 0 && h <= 0) {
                w = box->width;
                h = box->height;
            } else if (w <= 0) {
                w = h * box->width / box->height;
            } else if (h <= 0) {
                h = w * box->height / box->width;
            }
            state.matrix = fitViewBox(*box, w, h, parseAspectRatio(root.attribute("preserveAspectRatio").value()));
            state.viewWidth = box->width;
            state.viewHeight = box->height;
        } else {
            state.viewWidth = w > 0 ? w : 100;
            state.viewHeight = h > 0 ? h : 100;
        }
        if (isPhysical) { // back to units of the viewBox, so that one unit is a plain number of millimetres
            const double unit = box ? state.matrix.a : 1;
            if (box) state.matrix = Matrix::scaling(1 / unit, 1 / unit) * state.matrix;
            m_builder.setUnit(unit * kMillimetresPerPixel, width && width->isPhysical() ? width->unit : height->unit);
        } else {
            m_builder.setUnit(std::nullopt, "px");
        }
        if (!state.matrix.isFinite()) state.matrix = {};
        const State inner = entered(root, SvgKind::Svg, state);
        readChildren(root, inner);
    }

    void readChildren(pugi::xml_node parent, const State& state) {
        for (const auto& child : parent.children()) {
            m_builder.visit();
            if (m_builder.isFull() || !m_sheet.isWithinBudget()) return;
            if (child.type() == pugi::node_element) readElement(child, state);
        }
    }

    void readElement(pugi::xml_node node, const State& outer) {
        const std::string_view name = m_paints.svgName(node.name());
        if (name.empty() || outer.depth > kMaxDepth) return;
        const SvgKind kind = svgKindOf(name);
        switch (kind) {
        case SvgKind::NotDrawn: return;
        case SvgKind::Unknown: return leaveUnknown(name);
        case SvgKind::Script: return m_builder.reject(Note::Script);
        case SvgKind::Foreign: return m_builder.reject(Note::EmbeddedPage);
        case SvgKind::Image: return m_builder.reject(Note::BitmapInside);
        case SvgKind::Text: return m_builder.reject(Note::Text);
        case SvgKind::Group: return readChildren(node, entered(node, kind, outer));
        case SvgKind::Switch: return readSwitch(node, entered(node, kind, outer));
        case SvgKind::Svg: return readViewport(node, entered(node, kind, outer), node);
        case SvgKind::Use: return readUse(node, entered(node, kind, outer));
        case SvgKind::Circle:
        case SvgKind::Ellipse:
        case SvgKind::Rectangle:
        case SvgKind::Path:
        case SvgKind::Polygon:
        case SvgKind::Polyline:
        case SvgKind::Line: return readShape(node, kind, entered(node, kind, outer));
        }
    }

    void leaveUnknown(std::string_view name) {
        constexpr std::size_t kMaxNames = 20;
        constexpr std::size_t kMaxNameLength = 40;
        const bool room = m_unknown.size() < kMaxNames && name.size() <= kMaxNameLength;
        if (room) m_unknown.emplace(name);
        m_builder.reject(m_unknown.contains(std::string(name)) ? base::say(Note::UnknownElement, cleanText(name))
                                                               : base::say(Note::OtherElements));
    }

    State entered(pugi::xml_node node, SvgKind kind, const State& outer) {
        State state = outer;
        ++state.depth;
        m_values.fill({});
        m_ranks.fill(0);
        std::string_view classes, id, style, label, mode, transform;
        for (const auto& attribute : node.attributes()) {
            const std::string_view name = attribute.name();
            m_builder.spend(8 + name.size());
            Property property{};
            if (name == "class")
                classes = valueOf(attribute);
            else if (name == "id")
                id = valueOf(attribute);
            else if (name == "style")
                style = valueOf(attribute);
            else if (name == "transform")
                transform = valueOf(attribute);
            else if (name.size() > 3 && propertyFrom(name, property))
                set(property, trimmed(valueOf(attribute)), 1);
            else if (kind == SvgKind::Group && name.ends_with(":label"))
                label = valueOf(attribute);
            else if (kind == SvgKind::Group && name.ends_with(":groupmode"))
                mode = valueOf(attribute);
        }
        if (!m_sheet.isEmpty())
            for (const Declaration* d : m_sheet.matching(node, m_paints.svgName(node.name()), classes, id))
                set(d->property, d->value, d->important ? 4 : 2);
        if (!style.empty())
            eachDeclaration(style, [this](const Declaration& d) { set(d.property, d.value, d.important ? 5 : 3); });
        move(transform, state);
        applyValues(outer, state);
        if (kind == SvgKind::Group) nameLayer(state, mode == "layer", label.empty() ? id : label);
        return state;
    }

    std::string_view valueOf(const pugi::xml_attribute& attribute) {
        const std::string_view value = attribute.value();
        m_builder.spend(value.size());
        return value;
    }

    void set(Property property, std::string_view value, std::uint8_t rank) {
        const auto i = static_cast<std::size_t>(property);
        if (rank < m_ranks[i]) return;
        m_ranks[i] = rank;
        m_values[i] = value;
    }

    /// By the transform of the style, where there is one, else by the attribute.
    void move(std::string_view attribute, State& state) {
        const std::string_view styled = m_values[static_cast<std::size_t>(Property::Transform)];
        if (!m_values[static_cast<std::size_t>(Property::OtherMove)].empty()) ++m_unreadTransforms;
        if (attribute.empty() && styled.empty()) return;
        if (const auto matrix = styled.empty() ? parseTransform(attribute) : parseStyleTransform(styled))
            state.matrix = state.matrix * *matrix;
        else
            ++m_unreadTransforms;
        if (!state.matrix.isFinite()) state.matrix = Matrix::scaling(0, 0);
    }

    void applyValues(const State& outer, State& state) {
        const auto value = [this](Property property) { return m_values[static_cast<std::size_t>(property)]; };
        if (const auto text = value(Property::Colour); !text.empty())
            if (const auto rgb = parseColour(text)) state.colour = *rgb;
        if (const auto text = value(Property::Fill); !text.empty())
            state.fill = m_paints.paintFrom(text, outer.fill, state.colour);
        if (const auto text = value(Property::Stroke); !text.empty())
            state.stroke = m_paints.paintFrom(text, outer.stroke, state.colour);
        if (value(Property::Display) == "none") state.shown = false;
        if (const auto text = value(Property::Visibility); !text.empty() && text != "inherit")
            state.visible = text == "visible";
        if (const auto text = value(Property::Opacity); !text.empty())
            if (const auto opacity = numberFrom(text); opacity && *opacity <= 0) state.shown = false;
        if (const auto text = value(Property::FillRule); !text.empty() && text != "inherit")
            state.evenOdd = text == "evenodd";
        applyStroke(state);
        for (const Property property : {Property::ClipPath, Property::Mask})
            if (const auto text = value(property); text.starts_with("url")) state.clipped = true;
    }

    void applyStroke(State& state) {
        const auto value = [this](Property property) { return m_values[static_cast<std::size_t>(property)]; };
        const auto effect = value(Property::VectorEffect); // not handed on to those inside it
        state.keepsWidth = !effect.empty() && effect != "none";
        if (const auto text = value(Property::Dashes); !text.empty() && text != "inherit") state.dashes = text;
        if (const auto text = value(Property::LineCap); !text.empty() && text != "inherit")
            state.roundCaps = text == "round";
        if (const auto width = parseSvgLength(value(Property::LineWidth)))
            state.lineWidth = width->pixels(diagonal(state));
        if (const auto text = value(Property::DashOffset); !text.empty() && text != "inherit") state.dashOffset = text;
        for (const Property property :
             {Property::Marker, Property::MarkerStart, Property::MarkerMiddle, Property::MarkerEnd})
            if (const auto text = value(property); !text.empty() && text != "inherit")
                state.hasMarkers = text.starts_with("url");
    }

    /// What a percentage in a stroke is of (SVG 1.1, section 7.10).
    static double diagonal(const State& state) {
        return std::hypot(state.viewWidth, state.viewHeight) / std::numbers::sqrt2;
    }

    /// The dots of a dotted stroke go in as discs where it is certain which they are; else the line is named.
    void readDots(pugi::xml_node node, const State& state, Placing& placing) {
        m_dots.reset();
        if (state.stroke.kind == SvgPaint::Kind::None || !state.roundCaps || !(state.lineWidth > 0)) return;
        const auto dashes = dashesFrom(state.dashes, diagonal(state));
        if (!areDots(dashes, state.lineWidth)) return;
        const auto offset = parseSvgLength(state.dashOffset.empty() ? "0" : state.dashOffset);
        const bool isPlain =
            state.stroke.kind == SvgPaint::Kind::Solid && offset && !state.keepsWidth && !node.attribute("pathLength");
        if (isPlain)
            m_dots = DottedLine::from(dashes, offset->pixels(diagonal(state)), state.lineWidth, state.matrix,
                                      m_builder.inkOf(colourText(state.stroke.rgb), m_layers[state.layer], true));
        if (!m_dots) {
            m_builder.reject(Note::DottedLine);
            m_builder.warn(base::say(Note::TurnDotsIntoOutlines));
            return;
        }
        placing.dots = &*m_dots;
        placing.isOutline = state.fill.kind != SvgPaint::Kind::None;
    }

    /// What a shape shows besides its outline, which is not counted.
    void nameUncounted(SvgKind kind, const State& state) {
        const auto name = [this](Note what, Note advice) {
            m_builder.reject(what);
            m_builder.warn(base::say(advice));
        };
        if (state.fill.kind == SvgPaint::Kind::Pattern) name(Note::PatternInside, Note::TurnPatternsIntoOutlines);
        const bool mayHaveMarkers =
            kind == SvgKind::Path || kind == SvgKind::Line || kind == SvgKind::Polyline || kind == SvgKind::Polygon;
        if (state.hasMarkers && mayHaveMarkers) name(Note::MarkersOnALine, Note::TurnMarkersIntoOutlines);
    }

    void nameLayer(State& state, bool isLayer, std::string_view name) {
        if (!isLayer && (state.layerIsNamed || state.hasLayer)) return;
        state.layerIsNamed = state.layerIsNamed || isLayer;
        state.hasLayer = true;
        if (m_layers.back() != name) m_layers.emplace_back(name);
        state.layer = static_cast<std::uint32_t>(m_layers.size() - 1);
    }

    void readSwitch(pugi::xml_node node, const State& state) {
        for (const auto& child : node.children()) {
            m_builder.visit();
            if (child.type() != pugi::node_element || m_paints.svgName(child.name()).empty()) continue;
            if (child.attribute("requiredExtensions") || child.attribute("requiredFeatures").value()[0] != '\0')
                continue;
            const std::string_view language = child.attribute("systemLanguage").value();
            if (!language.empty() && !language.starts_with("en")) continue;
            return readElement(child, state);
        }
    }

    double lengthOf(pugi::xml_node node, const char* name, double whole, double otherwise) {
        const auto attribute = node.attribute(name);
        if (!attribute) return otherwise;
        const auto length = parseSvgLength(valueOf(attribute));
        if (!length) {
            m_unreadable = m_unreadable || attribute.value()[0] != '\0';
            return otherwise;
        }
        return length->pixels(whole);
    }

    /// The same, which the element's style may say instead (SVG 2, section 7.2).
    double lengthOf(pugi::xml_node node, Property property, const char* name, double whole, double otherwise) {
        const std::string_view styled = m_values[static_cast<std::size_t>(property)];
        if (styled.empty()) return lengthOf(node, name, whole, otherwise);
        const auto length = parseSvgLength(styled);
        if (!length) m_unreadable = m_unreadable || styled != "auto";
        return length ? length->pixels(whole) : otherwise;
    }

    /// A nested svg or a used symbol: `frame` says where and how large.
    void readViewport(pugi::xml_node node, State state, pugi::xml_node frame) {
        const bool isSymbol = node != frame;
        const double x = isSymbol ? 0 : lengthOf(frame, "x", state.viewWidth, 0);
        const double y = isSymbol ? 0 : lengthOf(frame, "y", state.viewHeight, 0);
        double width = lengthOf(node, "width", state.viewWidth, state.viewWidth);
        double height = lengthOf(node, "height", state.viewHeight, state.viewHeight);
        if (isSymbol) {
            width = lengthOf(frame, "width", state.viewWidth, width);
            height = lengthOf(frame, "height", state.viewHeight, height);
        }
        if (!(width > 0) || !(height > 0)) return;
        state.matrix = state.matrix * Matrix::translation(x, y);
        state.viewWidth = width;
        state.viewHeight = height;
        if (const auto box = parseViewBox(node.attribute("viewBox").value())) {
            state.matrix = state.matrix * fitViewBox(*box, width, height,
                                                     parseAspectRatio(node.attribute("preserveAspectRatio").value()));
            state.viewWidth = box->width;
            state.viewHeight = box->height;
        }
        readChildren(node, state);
    }

    void readUse(pugi::xml_node node, State state) {
        const auto reference = m_paints.referenceOf(node);
        if (!reference.starts_with('#')) return m_builder.reject(Note::PartOfAnotherFile);
        const pugi::xml_node target = m_paints.byId(reference.substr(1));
        if (!target) return m_builder.reject(Note::CopyOfNothing);
        if (state.uses >= kMaxUseDepth || std::find(m_using.begin(), m_using.end(), target) != m_using.end())
            return m_builder.reject(Note::CopyInsideItself);
        ++state.uses;
        state.matrix = state.matrix * Matrix::translation(lengthOf(node, "x", state.viewWidth, 0),
                                                          lengthOf(node, "y", state.viewHeight, 0));
        m_using.push_back(target);
        const std::string_view name = m_paints.svgName(target.name());
        if (name == "symbol" || name == "svg")
            readViewport(target, entered(target, SvgKind::Svg, state), node);
        else
            readElement(target, state);
        m_using.pop_back();
    }

    std::uint32_t inkFor(const State& state) {
        const bool filled = state.fill.kind != SvgPaint::Kind::None;
        const SvgPaint paint = filled ? state.fill : state.stroke;
        const std::uint64_t key = static_cast<std::uint64_t>(state.layer) << 28 |
                                  static_cast<std::uint64_t>(filled) << 27 |
                                  static_cast<std::uint64_t>(paint.kind) << 24 | paint.rgb;
        const auto [found, isNew] = m_inks.try_emplace(key, 0);
        if (isNew)
            found->second = m_builder.inkOf(paint.kind == SvgPaint::Kind::Pattern ? "pattern" : colourText(paint.rgb),
                                            m_layers[state.layer], filled);
        return found->second;
    }

    void readShape(pugi::xml_node node, SvgKind kind, const State& state) {
        DrawingBuilder* target = &m_builder;
        Placing placing{state.matrix, state.evenOdd, 0, 0};
        if (!state.shown || !state.visible) {
            target = &m_hidden;
        } else if (state.fill.kind == SvgPaint::Kind::None && state.stroke.kind == SvgPaint::Kind::None) {
            target = &m_unpainted;
        } else {
            placing.ink = inkFor(state);
            placing.shape = m_builder.nextShape();
            m_clippedShapes += state.clipped;
            readDots(node, state, placing);
            nameUncounted(kind, state);
        }
        m_unreadable = false;
        const bool good = addShape(node, kind, state, placing, *target);
        const bool isRound = kind == SvgKind::Circle || kind == SvgKind::Ellipse;
        if (!good || m_unreadable) m_builder.reject(isRound ? Note::PlaceNotRead : Note::FaultyShape);
        if (target->isFull() && target != &m_builder) { // a bound holds wherever it is met
            auto refused = target->finish();
            if (!refused) m_builder.refuse(std::move(refused.error()));
        }
    }

    bool addShape(pugi::xml_node node, SvgKind kind, const State& state, const Placing& placing, DrawingBuilder& to) {
        const double w = state.viewWidth;
        const double h = state.viewHeight;
        if (kind == SvgKind::Path) return addPath(valueOf(node.attribute("d")), placing, m_path, to);
        if (kind == SvgKind::Polygon || kind == SvgKind::Polyline)
            return addPolygon(valueOf(node.attribute("points")), kind == SvgKind::Polygon, placing, m_path, to);
        if (kind == SvgKind::Line) {
            m_path.start(placing.matrix({lengthOf(node, "x1", w, 0), lengthOf(node, "y1", h, 0)}));
            m_path.lineTo(placing.matrix({lengthOf(node, "x2", w, 0), lengthOf(node, "y2", h, 0)}));
            placing.add(m_path, to);
            return true;
        }
        if (kind == SvgKind::Rectangle) {
            const double width = lengthOf(node, "width", w, 0);
            const double height = lengthOf(node, "height", h, 0);
            if (!(width > 0) || !(height > 0)) return true;
            double rx = lengthOf(node, Property::RadiusX, "rx", w, -1);
            double ry = lengthOf(node, Property::RadiusY, "ry", h, -1);
            if (rx < 0) rx = std::max(ry, 0.0);
            if (ry < 0) ry = rx;
            addRectangle({lengthOf(node, "x", w, 0), lengthOf(node, "y", h, 0)}, width, height,
                         std::min(rx, 0.5 * width), std::min(ry, 0.5 * height), placing, m_path, to);
            return true;
        }
        const Point centre{lengthOf(node, Property::CentreX, "cx", w, 0),
                           lengthOf(node, Property::CentreY, "cy", h, 0)};
        double rx = 0;
        double ry = 0;
        if (kind == SvgKind::Circle) {
            rx = ry = lengthOf(node, Property::Radius, "r", std::sqrt(0.5 * (w * w + h * h)), 0);
        } else {
            rx = lengthOf(node, Property::RadiusX, "rx", w, -1);
            ry = lengthOf(node, Property::RadiusY, "ry", h, -1);
            if (rx < 0) rx = ry;
            if (ry < 0) ry = rx;
        }
        if (rx > 0 && ry > 0 && !m_unreadable) addEllipse(centre, rx, ry, placing, m_path, to);
        return true;
    }

    const pugi::xml_document& m_document;
    std::string_view m_fileName;
    DrawingBuilder m_builder;
    DrawingBuilder m_hidden;    ///< only counted
    DrawingBuilder m_unpainted; ///< only counted
    StyleSheet m_sheet;
    SvgPaints m_paints;
    Subpath m_path;
    std::optional<DottedLine> m_dots;       ///< of the shape that is being read
    std::vector<std::string_view> m_layers; ///< their text is the document's
    std::unordered_map<std::uint64_t, std::uint32_t> m_inks;
    std::array<std::string_view, kProperties> m_values;
    std::array<std::uint8_t, kProperties> m_ranks{};
    std::vector<pugi::xml_node> m_using;
    std::set<std::string> m_unknown;
    std::size_t m_clippedShapes = 0;
    std::size_t m_unreadTransforms = 0;
    bool m_unreadable = false;
};

/// How often a mark stands in a text; summed in bytes, which the compiler does sixteen at a time.
std::size_t countOf(std::string_view text, char mark) {
    constexpr std::size_t kMaxInByte = 255;
    std::size_t count = 0;
    while (!text.empty()) {
        std::uint8_t here = 0;
        for (const char c : text.substr(0, kMaxInByte)) here = static_cast<std::uint8_t>(here + (c == mark));
        count += here;
        text.remove_prefix(std::min(text.size(), kMaxInByte));
    }
    return count;
}

/// An upper bound of what the parsed file will take, from its marks.
bool fitsMemory(std::string_view text) {
    constexpr std::size_t kMaxMemory = 150'000'000;
    constexpr std::size_t kPerTag = 72;
    constexpr std::size_t kPerAttribute = 48;
    return text.size() + countOf(text, '<') * kPerTag + countOf(text, '=') * kPerAttribute <= kMaxMemory;
}

} // namespace

base::Result<Drawing> readSvg(std::string text, std::string_view fileName, const Limits& limits) {
    const auto tooLarge = [&] {
        return base::fail(Fault::FileTooLarge, std::string(fileName), fileName, text.size() / 1'000'000);
    };
    if (text.size() > limits.bytes) return tooLarge();
    EntityNotes notes;
    auto expanded = expandEntities(std::move(text), fileName, notes);
    if (!expanded) return base::fail(std::move(expanded.error()));
    text = std::move(*expanded);
    if (!fitsMemory(text)) return tooLarge();
    pugi::xml_document document;
    const auto parsed = document.load_buffer_inplace(
        text.data(), text.size(), pugi::parse_cdata | pugi::parse_escapes | pugi::parse_wconv_attribute);
    if (!parsed && !document.document_element()) return base::fail(Fault::NotSvg, std::string(fileName), fileName);
    if (!parsed)
        return base::fail(Fault::GarbledSvg, std::string(fileName), fileName, parsed.offset, parsed.description());
    SvgReader reader(document, fileName, limits);
    if (notes.external > 0) reader.builder().warn(base::say(Note::TextElsewhere));
    return reader.read();
}

} // namespace sp::artwork

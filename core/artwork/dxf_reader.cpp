// SPDX-License-Identifier: MIT
#include "core/artwork/dxf_reader.h"

#include "core/artwork/colour.h"
#include "core/artwork/dxf_hatch.h"
#include "core/artwork/dxf_pairs.h"
#include "core/artwork/dxf_spline.h"
#include "core/artwork/piece_chains.h"
#include "core/artwork/scanner.h"
#include "core/artwork/subpath.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <tuple>

namespace sp::artwork {

namespace {

constexpr int kByBlock = 0;
constexpr int kByLayer = 256;
constexpr int kMaxInsertDepth = 16;
constexpr std::size_t kPairsAreSlow = 3; ///< a byte of pairs takes so much longer than a byte of text
constexpr std::size_t kMaxLayerNameLength = 200;

struct DxfUnit {
    int number;
    double millimetres;
    std::string_view name;
};
// Values of $INSUNITS (DXF reference, HEADER section); no shop works in the astronomical ones.
constexpr DxfUnit kDxfUnits[] = {{1, 25.4, "in"},   {2, 304.8, "ft"}, {4, 1, "mm"},        {5, 10, "cm"},
                                 {7, 1e6, "km"},    {6, 1000, "m"},   {8, 25.4e-6, "µin"}, {9, 0.0254, "mil"},
                                 {10, 914.4, "yd"}, {13, 1e-3, "µm"}, {14, 100, "dm"}};

struct Layer {
    int colour = 7;
    std::optional<std::uint32_t> trueColour;
    bool hidden = false;
};

struct Colour {
    int number = 7;
    std::optional<std::uint32_t> trueColour;
};

/// What an entity in a block takes over from the INSERT it comes by.
struct Context {
    Matrix matrix;
    std::string_view layer = "0";
    Colour colour;
    bool hidden = false;
    int depth = 0;
};

struct ArcPiece {
    Matrix fromUnitCircle;
    double start = 0; ///< radians, in the frame of the unit circle
    double sweep = 0;
    Point centre;
    double radius = 0; ///< in the drawing; 0 when the arc is not of a circle there
    double from = 0;   ///< radians in the drawing
    double span = 0;
    std::uint32_t ink = 0;
};

class DxfReader {
  public:
    DxfReader(std::string_view text, std::string_view fileName, const Limits& limits)
        : m_text(text)
        , m_fileName(fileName)
        , m_builder(fileName, limits, catalogue::ArtworkFormat::Dxf) {}

    base::Result<Drawing> read() {
        m_builder.setUnit(std::nullopt, "unit");
        DxfPairs pairs(m_text);
        DxfEntity entity;
        bool ended = false;
        while (!ended && entity.read(pairs)) {
            if (entity.type() == "SECTION") readSection(entity, pairs);
            ended = entity.type() == "EOF";
        }
        for (const std::size_t start : m_entitySections) readEntities(start, m_top);
        joinArcs();
        m_chains.joinInto(m_builder);
        if (m_hidden > 0) m_builder.reject(Note::Hidden, m_hidden);
        if (pairs.isGarbled() || !ended) refuseDamaged(pairs);
        return m_builder.finish();
    }

  private:
    void refuseDamaged(const DxfPairs& pairs) {
        m_builder.refuse(base::makeError(Fault::Garbled, std::string(m_fileName), m_fileName, pairs.position()));
    }

    void readSection(const DxfEntity& section, DxfPairs& pairs) {
        const auto name = trimmed(section.text(2));
        if (name == "HEADER") readHeader(section);
        if (name == "TABLES") readTables(pairs);
        if (name == "BLOCKS") readBlocks(pairs);
        if (name == "ENTITIES") {
            m_entitySections.push_back(pairs.position());
            pairs.skipPast("ENDSEC");
        }
    }

    /// The header has no 0 before its ENDSEC, so all of it came with the section's own pairs.
    void readHeader(const DxfEntity& header) {
        bool isUnits = false;
        for (const DxfPair& pair : header.pairs()) {
            if (pair.code == 9) isUnits = trimmed(pair.value) == "$INSUNITS";
            if (!isUnits || pair.code != 70) continue;
            const auto number = numberFrom(pair.value);
            for (const DxfUnit& unit : kDxfUnits)
                if (number && unit.number == *number) m_builder.setUnit(unit.millimetres, unit.name);
        }
    }

    void readTables(DxfPairs& pairs) {
        DxfEntity entry;
        while (entry.read(pairs) && entry.type() != "ENDSEC") {
            if (entry.type() != "LAYER") continue;
            Layer layer;
            const int colour = entry.whole(62, 7);
            layer.colour = std::abs(colour);
            layer.trueColour = trueColourOf(entry);
            layer.hidden = colour < 0 || (entry.whole(70, 0) & 1) != 0;
            m_layers.try_emplace(trimmed(entry.text(2)).substr(0, kMaxLayerNameLength), layer);
        }
    }

    void readBlocks(DxfPairs& pairs) {
        DxfEntity entity;
        while (entity.read(pairs) && entity.type() != "ENDSEC") {
            if (entity.type() != "BLOCK") continue;
            Block block{pairs.position(), {entity.number(10, 0), entity.number(20, 0)}};
            m_blocks.try_emplace(trimmed(entity.text(2)), block);
        }
    }

    static std::optional<std::uint32_t> trueColourOf(const DxfEntity& entity) {
        const auto value = entity.number(420);
        if (!value || *value < 0 || *value > 0xffffff) return std::nullopt;
        return static_cast<std::uint32_t>(*value);
    }

    /// Everything from `start` to the end of its section or block.
    void readEntities(std::size_t start, const Context& context) {
        DxfPairs pairs(m_text, start);
        DxfEntity entity;
        for (std::size_t from = start; !m_builder.isFull() && entity.read(pairs); from = pairs.position()) {
            m_builder.spend(kPairsAreSlow * (pairs.position() - from));
            const auto type = entity.type();
            if (type == "ENDSEC" || type == "ENDBLK" || type == "EOF") return;
            m_builder.visit();
            readEntity(entity, pairs, context);
        }
        if (pairs.isGarbled()) refuseDamaged(pairs); // what follows would be missing without a word
    }

    Context placed(const DxfEntity& entity, const Context& outer) const {
        Context here = outer;
        const auto layer = trimmed(entity.text(8)).substr(0, kMaxLayerNameLength);
        if (!layer.empty() && layer != "0") here.layer = layer;
        const auto known = m_layers.find(here.layer);
        if (known != m_layers.end() && known->second.hidden) here.hidden = true;
        if (entity.whole(60, 0) != 0) here.hidden = true;
        const int number = entity.whole(62, kByLayer);
        if (const auto exact = trueColourOf(entity))
            here.colour = {number, exact};
        else if (number == kByLayer && known != m_layers.end())
            here.colour = {known->second.colour, known->second.trueColour};
        else if (number == kByLayer)
            here.colour = {7, {}};
        else if (number != kByBlock)
            here.colour = {number, {}};
        if (entity.number(230, 1) < 0) here.matrix = here.matrix * Matrix::scaling(-1, 1); // seen from below
        return here;
    }

    std::uint32_t inkOf(const Context& here, bool filled = false) {
        const auto rgb = here.colour.trueColour ? *here.colour.trueColour : colourOfNumber(here.colour.number);
        if (rgb != m_lastRgb || m_lastColour.empty()) {
            m_lastRgb = rgb;
            m_lastColour = colourText(rgb);
        }
        return m_builder.inkOf(m_lastColour, here.layer, filled);
    }

    void readEntity(const DxfEntity& entity, DxfPairs& pairs, const Context& outer) {
        const auto type = entity.type();
        if (entity.whole(67, 0) == 1) return m_builder.reject(Note::OnThePaperSheet);
        const Context here = placed(entity, outer);
        if (type == "INSERT") return readInsert(entity, here);
        if (type == "POLYLINE") return readPolyline(entity, pairs, here);
        const bool isTilted = entity.number(230, 1) < 0.999999 && entity.number(230, 1) > -0.999999;
        const bool isRead = type == "CIRCLE" || type == "ARC" || type == "ELLIPSE" || type == "LWPOLYLINE" ||
                            type == "SPLINE" || type == "LINE" || type == "HATCH";
        if (isRead && here.hidden) {
            ++m_hidden;
            return;
        }
        if (isRead && isTilted) return m_builder.reject(Note::Tilted);
        if (type == "CIRCLE")
            readCircle(entity, here);
        else if (type == "ARC")
            readArc(entity, here);
        else if (type == "ELLIPSE")
            readEllipse(entity, here);
        else if (type == "LWPOLYLINE")
            readLightPolyline(entity, here);
        else if (type == "SPLINE")
            readSpline(entity, here);
        else if (type == "LINE")
            readLine(entity, here);
        else if (type == "HATCH")
            readHatch(entity, here);
        else
            leaveOther(type);
    }

    void leaveOther(std::string_view type) {
        static constexpr std::string_view kSilent[] = {"SEQEND", "VIEWPORT", "ATTRIB"};
        if (std::find(std::begin(kSilent), std::end(kSilent), type) != std::end(kSilent)) return;
        if (type == "TEXT" || type == "MTEXT" || type == "ATTDEF") return m_builder.reject(Note::Text);
        if (type == "POINT") {
            m_builder.warn(base::say(Note::DrawCirclesOnPoints));
            return m_builder.reject(Note::PointWithoutSize);
        }
        if (type == "IMAGE" || type == "OLE2FRAME") return m_builder.reject(Note::BitmapInside);
        static constexpr std::string_view kKnown[] = {"SOLID", "TRACE",  "3DFACE", "DIMENSION", "LEADER",
                                                      "MLINE", "REGION", "MESH",   "3DSOLID",   "BODY",
                                                      "RAY",   "XLINE",  "WIPEOUT"};
        const bool isKnown = std::find(std::begin(kKnown), std::end(kKnown), type) != std::end(kKnown);
        m_builder.reject(isKnown ? base::say(Note::EntityNotRead, type) : base::say(Note::OtherEntities));
    }

    static bool isNumbers(std::initializer_list<std::optional<double>> values) {
        return std::all_of(values.begin(), values.end(), [](const auto& value) { return value.has_value(); });
    }

    void rejectFaulty() { m_builder.reject(Note::FaultyEntity); }

    void addConic(const Matrix& fromUnitCircle, std::uint32_t ink) {
        const HalfAxes axes = halfAxes(fromUnitCircle, 1, 1);
        const auto shape = m_builder.nextShape();
        if (axes.large - axes.small <= kRoundness * (axes.large + axes.small)) {
            m_builder.add(Disc{fromUnitCircle({0, 0}), 0.5 * (axes.large + axes.small), ink, shape});
            return;
        }
        addArc(fromUnitCircle, 0, 2 * std::numbers::pi, ink);
    }

    void addArc(const Matrix& fromUnitCircle, double start, double sweep, std::uint32_t ink) {
        const Point arm{std::cos(start), std::sin(start)};
        m_path.start(fromUnitCircle(arm));
        m_path.arc(fromUnitCircle, arm, sweep);
        if (std::abs(sweep) > 2 * std::numbers::pi - 1e-6) m_path.close();
        m_path.addTo(m_builder, false, ink, m_builder.nextShape());
    }

    void readCircle(const DxfEntity& entity, const Context& here) {
        const auto x = entity.number(10), y = entity.number(20), r = entity.number(40);
        if (!isNumbers({x, y, r}) || !(*r > 0)) return rejectFaulty();
        addConic(here.matrix * Matrix{*r, 0, 0, *r, *x, *y}, inkOf(here));
    }

    void readArc(const DxfEntity& entity, const Context& here) {
        const auto x = entity.number(10), y = entity.number(20), r = entity.number(40);
        const auto from = entity.number(50), to = entity.number(51);
        if (!isNumbers({x, y, r, from, to}) || !(*r > 0)) return rejectFaulty();
        double sweep = std::fmod(*to - *from, 360);
        if (sweep <= 1e-9) sweep += 360;
        takeArc(here.matrix * Matrix{*r, 0, 0, *r, *x, *y}, *from * kRadian, sweep * kRadian, inkOf(here));
    }

    /// Keeps the arc back, in case others make a circle with it.
    void takeArc(const Matrix& fromUnitCircle, double start, double sweep, std::uint32_t ink) {
        ArcPiece piece{fromUnitCircle, start, sweep, fromUnitCircle({0, 0}), 0, 0, 0, ink};
        const HalfAxes axes = halfAxes(fromUnitCircle, 1, 1);
        if (axes.large - axes.small <= kRoundness * (axes.large + axes.small)) {
            piece.radius = 0.5 * (axes.large + axes.small);
            const double end = start + sweep;
            const bool mirrored = fromUnitCircle.determinant() < 0;
            const double first = mirrored ? end : start;
            const Point at = fromUnitCircle({std::cos(first), std::sin(first)}) - piece.centre;
            piece.from = std::atan2(at.y, at.x);
            piece.span = sweep;
        }
        if (m_arcs.size() < m_builder.limits().outlines)
            m_arcs.push_back(piece);
        else
            addArc(fromUnitCircle, start, sweep, ink);
    }

    /// Arcs of one ink, centre and radius that go round together are one disc; the others may meet other pieces.
    void joinArcs() {
        const auto key = [](const ArcPiece& arc) {
            const double grain = std::max(arc.radius, 1e-9) / 1000;
            const auto whole = [grain](double v) { return std::floor(v / grain + 0.37); };
            return std::tuple(arc.ink, arc.radius > 0 ? std::floor(std::log(arc.radius) * 1000 + 0.37) : 0.0,
                              whole(arc.centre.x), whole(arc.centre.y));
        };
        std::stable_sort(m_arcs.begin(), m_arcs.end(),
                         [&](const ArcPiece& a, const ArcPiece& b) { return key(a) < key(b); });
        for (std::size_t first = 0; first < m_arcs.size() && !m_builder.isFull();) {
            std::size_t end = first + 1;
            while (end < m_arcs.size() && key(m_arcs[end]) == key(m_arcs[first])) ++end;
            const std::span<ArcPiece> group(&m_arcs[first], end - first);
            if (group.front().radius > 0 && goesRound(group))
                for (int times = timesRound(group); times > 0; --times)
                    m_builder.add(
                        Disc{group.front().centre, group.front().radius, group.front().ink, m_builder.nextShape()});
            else
                for (const ArcPiece& arc : group) m_chains.addArc(arc.fromUnitCircle, arc.start, arc.sweep, arc.ink);
            first = end;
        }
    }

    static bool goesRound(std::span<ArcPiece> arcs) {
        std::sort(arcs.begin(), arcs.end(), [](const ArcPiece& a, const ArcPiece& b) { return a.from < b.from; });
        double reached = arcs.front().from;
        for (const ArcPiece& arc : arcs) {
            if (arc.from > reached + kMaxGap) return false;
            reached = std::max(reached, arc.from + arc.span);
        }
        return reached >= arcs.front().from + 2 * std::numbers::pi - kMaxGap;
    }

    /// How often arcs that go round do so: what is drawn twice is two discs, of which one is a copy.
    static int timesRound(std::span<const ArcPiece> arcs) {
        double sum = 0;
        for (const ArcPiece& arc : arcs) sum += arc.span;
        return std::max(1, static_cast<int>((sum + kMaxGap) / (2 * std::numbers::pi)));
    }

    void readEllipse(const DxfEntity& entity, const Context& here) {
        const auto x = entity.number(10), y = entity.number(20);
        const auto dx = entity.number(11), dy = entity.number(21), ratio = entity.number(40);
        if (!isNumbers({x, y, dx, dy, ratio}) || !(std::abs(*ratio) <= 1)) return rejectFaulty();
        const Matrix conic = here.matrix * Matrix{*dx, *dy, -*dy * *ratio, *dx * *ratio, *x, *y};
        const double from = entity.number(41, 0);
        double sweep = entity.number(42, 2 * std::numbers::pi) - from;
        if (std::abs(sweep) > 2 * std::numbers::pi - 1e-6) return addConic(conic, inkOf(here));
        if (sweep < 0) sweep += 2 * std::numbers::pi;
        takeArc(conic, from, sweep, inkOf(here));
    }

    void readLine(const DxfEntity& entity, const Context& here) {
        const auto x1 = entity.number(10), y1 = entity.number(20), x2 = entity.number(11), y2 = entity.number(21);
        if (!isNumbers({x1, y1, x2, y2})) return rejectFaulty();
        const Point from = here.matrix({*x1, *y1}), to = here.matrix({*x2, *y2});
        if (m_chains.size() >= m_builder.limits().outlines) return m_builder.refuseSegments();
        m_chains.addLine(from, to, inkOf(here));
    }

    void addCorners(bool closed, const Context& here) {
        if (m_corners.empty()) return;
        followCorners(closed, here);
        m_path.addTo(m_builder, false, inkOf(here), m_builder.nextShape());
    }

    void followCorners(bool closed, const Context& here) {
        m_path.start(here.matrix(m_corners.front().at));
        const std::size_t steps = closed ? m_corners.size() : m_corners.size() - 1;
        for (std::size_t i = 0; i < steps; ++i) {
            const DxfCorner& from = m_corners[i];
            const Point to = m_corners[(i + 1) % m_corners.size()].at;
            const Point chord = to - from.at;
            m_builder.countSegments(1);
            if (std::abs(from.bulge) < 1e-9 || !(std::abs(from.bulge) < 1e6) || chord == Point{}) {
                m_path.lineTo(here.matrix(to));
                continue;
            }
            const double b = from.bulge;
            const Point centre = middle(from.at, to) + ((1 - b * b) / (4 * b)) * Point{-chord.y, chord.x};
            const double radius = distance(centre, from.at);
            const Point arm = from.at - centre;
            m_path.arc(here.matrix * Matrix{radius, 0, 0, radius, centre.x, centre.y}, (1 / radius) * arm,
                       4 * std::atan(b));
        }
        if (closed) m_path.close();
    }

    /// Filled in one colour and with edges that are certain, it is a shape; anything else is left out by name.
    void readHatch(const DxfEntity& hatch, const Context& here) {
        auto paths = solidHatchOf(hatch.pairs());
        if (!paths) {
            m_builder.warn(base::say(Note::ExplodeHatches));
            return m_builder.reject(base::say(Note::EntityNotRead, hatch.type()));
        }
        const auto shape = m_builder.nextShape();
        for (auto& path : *paths) {
            m_corners = std::move(path);
            followCorners(true, here);
            m_path.addTo(m_builder, true, inkOf(here, true), shape);
        }
    }

    void readLightPolyline(const DxfEntity& entity, const Context& here) {
        m_corners.clear();
        for (const DxfPair& pair : entity.pairs()) {
            if (pair.code != 10 && pair.code != 20 && pair.code != 42) continue;
            const auto value = numberFrom(pair.value);
            if (!value || (pair.code != 10 && m_corners.empty())) return rejectFaulty();
            if (pair.code == 10) m_corners.push_back({{*value, 0}, 0});
            if (pair.code == 20) m_corners.back().at.y = *value;
            if (pair.code == 42) m_corners.back().bulge = *value;
        }
        addCorners((entity.whole(70, 0) & 1) != 0, here);
    }

    void readPolyline(const DxfEntity& polyline, DxfPairs& pairs, const Context& here) {
        const int flags = polyline.whole(70, 0);
        m_corners.clear();
        DxfEntity vertex;
        bool faulty = false;
        for (DxfPairs before = pairs; vertex.read(pairs) && vertex.type() != "SEQEND"; before = pairs) {
            if (vertex.type() != "VERTEX") { // SEQEND is missing
                pairs = before;
                break;
            }
            if ((vertex.whole(70, 0) & 16) != 0) continue; // a control point of a smoothed line, not on it
            const auto x = vertex.number(10), y = vertex.number(20);
            if (!isNumbers({x, y}))
                faulty = true;
            else
                m_corners.push_back({{*x, *y}, vertex.number(42, 0)});
        }
        if (here.hidden)
            ++m_hidden;
        else if ((flags & (16 | 64)) != 0)
            m_builder.reject(Note::Mesh);
        else if (faulty)
            rejectFaulty();
        else
            addCorners((flags & 1) != 0, here);
    }

    void readSpline(const DxfEntity& entity, const Context& here) {
        Spline spline;
        if (!readSplineOf(entity, spline)) return m_builder.reject(Note::SplineNotRead);
        const auto points = pointsOn(spline);
        if (points.size() < 2) return rejectFaulty();
        m_path.start(here.matrix(points.front()));
        for (std::size_t i = 1; i < points.size(); ++i) {
            m_path.lineTo(here.matrix(points[i]));
            m_builder.countSegments(1);
        }
        if (spline.closed) m_path.close();
        m_path.addTo(m_builder, false, inkOf(here), m_builder.nextShape());
    }

    void readInsert(const DxfEntity& insert, const Context& here) {
        const auto block = m_blocks.find(trimmed(insert.text(2)));
        if (block == m_blocks.end()) return m_builder.reject(Note::CopyOfNothing);
        if (here.depth >= kMaxInsertDepth) return m_builder.reject(Note::CopyInsideItself);
        const Matrix turn = Matrix::rotation(insert.number(50, 0));
        const Matrix scale = Matrix::scaling(insert.number(41, 1), insert.number(42, 1));
        const Matrix at = Matrix::translation(insert.number(10, 0), insert.number(20, 0));
        const Matrix base = Matrix::translation(-block->second.base.x, -block->second.base.y);
        const int columns = std::max(1, insert.whole(70, 1));
        const int rows = std::max(1, insert.whole(71, 1));
        const double across = insert.number(44, 0);
        const double down = insert.number(45, 0);
        for (int row = 0; row < rows; ++row) {
            for (int column = 0; column < columns && !m_builder.isFull(); ++column) {
                m_builder.visit();
                Context inside = here;
                ++inside.depth;
                inside.matrix =
                    here.matrix * at * turn * Matrix::translation(column * across, row * down) * scale * base;
                if (inside.matrix.isFinite()) readEntities(block->second.start, inside);
            }
            if (m_builder.isFull()) return;
        }
    }

    struct Block {
        std::size_t start = 0;
        Point base;
    };

    std::string_view m_text;
    std::string_view m_fileName;
    DrawingBuilder m_builder;
    Subpath m_path;
    const Context m_top{Matrix::scaling(1, -1), "0", {}, false, 0};
    std::vector<std::size_t> m_entitySections;
    std::unordered_map<std::string_view, Layer> m_layers;
    std::unordered_map<std::string_view, Block> m_blocks;
    std::vector<ArcPiece> m_arcs;
    PieceChains m_chains;
    std::vector<DxfCorner> m_corners;
    std::size_t m_hidden = 0;
    std::uint32_t m_lastRgb = 0;
    std::string m_lastColour;
};

} // namespace

std::uint32_t colourOfNumber(int number) {
    constexpr std::array<std::uint32_t, 10> kFirst = {0x000000, 0xff0000, 0xffff00, 0x00ff00, 0x00ffff,
                                                      0x0000ff, 0xff00ff, 0x000000, 0x808080, 0xc0c0c0};
    constexpr std::array<std::uint32_t, 6> kGreys = {0x000000, 0x656565, 0x666666, 0x999999, 0xcccccc, 0xffffff};
    if (number < 0 || number > 255) return 0;
    if (number < 10) return kFirst[static_cast<std::size_t>(number)];
    if (number >= 250) return kGreys[static_cast<std::size_t>(number - 250)];
    // 24 hues of 15 degrees, each in five darknesses, each of those full and half pale.
    constexpr std::array<double, 5> kValues = {255, 165, 127, 76, 38};
    const int hue = (number - 10) / 10;
    const int shade = (number - 10) % 10;
    const double high = kValues[static_cast<std::size_t>(shade / 2)];
    const double low = shade % 2 == 0 ? 0 : high / 2;
    std::uint32_t rgb = 0;
    for (const int peak : {0, 8, 16}) {
        const int around = (hue - peak + 24) % 24;
        const int away = std::min(around, 24 - around);
        const double share = away <= 4 ? 1 : std::max(0.0, 1 - (away - 4) / 4.0);
        rgb = rgb << 8 | static_cast<std::uint32_t>(low + share * (high - low));
    }
    return rgb;
}

base::Result<Drawing> readDxf(std::string_view text, std::string_view fileName, const Limits& limits) {
    return DxfReader(text, fileName, limits).read();
}

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#include "core/artwork/plt_reader.h"

#include "core/artwork/plt_encoded.h"
#include "core/artwork/plt_pens.h"
#include "core/artwork/plt_scale.h"
#include "core/artwork/plt_script.h"
#include "core/artwork/subpath.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sp::artwork {

namespace {

constexpr double kWholeTurn = 2 * std::numbers::pi;
constexpr double kBetweenSheets = 400; ///< plotter units

using Numbers = std::vector<double>;

/// Whether the circle or the area itself is painted, or its line.
enum class Painted { Line, Area };

/// What PM stores for EP and FP. The subpaths share a shape.
struct Polygon {
    std::vector<Subpath> parts;
    std::size_t segments = 0;
    bool hasLines = false; ///< some of it was stored with the pen down
    bool isDrawn = false;
    bool isFilled = false;
    bool isEvenOdd = true;
    std::uint32_t ink = 0;
};

class PltReader {
  public:
    PltReader(std::string_view text, std::string_view fileName, const Limits& limits)
        : m_script(text)
        , m_fileName(fileName)
        , m_builder(fileName, limits, catalogue::ArtworkFormat::Plt) {
        updateMatrix();
    }

    base::Result<Drawing> read() {
        PltInstruction instruction;
        std::size_t from = 0;
        while (!m_builder.isFull() && m_script.next(instruction)) {
            m_builder.spend(m_script.position() - from);
            from = m_script.position();
            take(instruction);
        }
        finishPath();
        drawPolygon();
        if (m_script.isGarbled()) refuseGarbled();
        if (m_hasNoUnit)
            m_builder.setUnit(std::nullopt, "unit");
        else
            m_builder.setUnit(kMillimetresPerPlotterUnit, "1/40 mm");
        return m_builder.finish();
    }

  private:
    void refuseGarbled() {
        m_builder.refuse(base::makeError(Fault::Garbled, std::string(m_fileName), m_fileName, m_script.position()));
    }

    void take(const PltInstruction& instruction) {
        if (takeState(instruction) || takeMoves(instruction) || takeArcs(instruction)) return;
        if (m_isStoring)
            takeStored(instruction);
        else
            takeShapes(instruction);
    }

    // What holds for the instructions that follow.

    bool takeState(const PltInstruction& instruction) {
        const Numbers& numbers = instruction.numbers;
        switch (instruction.word) {
        case pltWord("IN"): initialise(); return true;
        case pltWord("DF"): setDefaults(); return true;
        case pltWord("IP"): m_scale.setPoints(numbers); break;
        case pltWord("IR"): m_scale.forgetPoints(); break;
        case pltWord("SC"): m_scale.setUserUnits(numbers); break;
        case pltWord("SP"): selectPen(m_pens.penFor(numbers.empty() ? 0 : numbers[0])); return true;
        case pltWord("PC"): m_pens.setColour(numbers); break;
        case pltWord("CR"): m_pens.setRange(numbers); break;
        case pltWord("NP"): m_pens.setCount(numbers); break;
        case pltWord("LB"):
        case pltWord("BL"):
        case pltWord("SM"):
            if (!instruction.text.empty()) m_builder.reject(Note::Text);
            return true;
        case pltWord("PG"):
        case pltWord("AF"):
        case pltWord("FR"):
        case pltWord("RO"): beginSheet(); return true;
        default: return false;
        }
        if (!m_isStoring) finishPath();
        m_inkOfPen.reset();
        updateMatrix();
        return true;
    }

    void initialise() {
        setDefaults();
        m_scale.forgetPoints();
        m_pens.reset();
        m_at = m_matrix({0, 0});
        m_isDown = false;
    }

    void setDefaults() {
        finishPath();
        m_scale.dropUserUnits();
        if (m_isStoring) m_polygon = {};
        m_isRelative = m_isStoring = false;
        updateMatrix();
    }

    /// From coordinates as written to the drawing, the sheets beside one another and y downwards.
    void updateMatrix() { m_matrix = Matrix::translation(m_sheetLeft, 0) * Matrix::scaling(1, -1) * m_scale.matrix(); }

    void beginSheet() {
        finishPath();
        drawPolygon();
        if (m_drawn.isEmpty()) return;
        const double left = m_drawn.right + kBetweenSheets;
        m_at.x += left - m_sheetLeft;
        m_sheetLeft = left;
        updateMatrix();
    }

    void selectPen(int pen) {
        if (m_isStoring || m_pen == pen) return;
        finishPath();
        m_pen = pen;
        m_inkOfPen.reset();
    }

    std::uint32_t ink(Painted painted) {
        if (!m_inkOfPen || m_inkPainted != painted) {
            const int pen = m_pen.value_or(1);
            const auto layer = m_pen ? fmt::format("SP{}", pen) : std::string();
            m_inkOfPen = m_builder.inkOf(m_pens.colourOf(pen), layer, painted == Painted::Area);
            m_inkPainted = painted;
        }
        return *m_inkOfPen;
    }

    /// Whether what is drawn now can be seen.
    bool hasPen() {
        if (m_pen != 0) return true;
        m_builder.reject(Note::NotPainted);
        return false;
    }

    void see(Point p) {
        m_drawn.add(p);
        if (!m_scale.isKnown()) m_hasNoUnit = true;
    }

    // Lines.

    bool takeMoves(const PltInstruction& instruction) {
        switch (instruction.word) {
        case pltWord("PA"): m_isRelative = false; break;
        case pltWord("PR"): m_isRelative = true; break;
        case pltWord("PD"): lower(); break;
        case pltWord("PU"): lift(); break;
        case pltWord("PE"): followEncoded(instruction.text); return true;
        case pltWord("BZ"):
        case pltWord("BR"): followCurves(instruction.numbers, instruction.word == pltWord("BR")); return true;
        default: return false;
        }
        const Numbers& numbers = instruction.numbers;
        for (std::size_t i = 0; i + 1 < numbers.size(); i += 2) goTo(place({numbers[i], numbers[i + 1]}, m_isRelative));
        return true;
    }

    Point place(Point written, bool isRelative) const {
        return isRelative ? Point{m_at.x + m_matrix.a * written.x, m_at.y + m_matrix.d * written.y} : m_matrix(written);
    }

    void goTo(Point to) {
        countSegments(1);
        if (m_isStoring && !m_hasPath) { // where the next part of the polygon begins
            m_at = to;
            beginPath();
        } else if (draws()) {
            beginPath();
            m_hasLine = m_hasLine || !(to == m_at);
            m_path.lineTo(to);
            see(to);
        } else if (!(to == m_at)) {
            finishPath();
        }
        m_at = to;
    }

    /// In a polygon every point counts, however the pen stands.
    bool draws() const { return m_isDown || m_isStoring; }

    void countSegments(std::size_t count) {
        constexpr std::size_t kMostStored = 1'000'000;
        m_builder.countSegments(count);
        if (!m_isStoring) return;
        m_polygon.segments += count;
        if (m_polygon.segments > kMostStored) m_builder.refuseSegments();
    }

    void lower() {
        m_isDown = true;
        if (m_isStoring) {
            m_polygon.hasLines = true;
            return;
        }
        beginPath();
        m_path.lineTo(m_at); // a dot, if nothing more comes
    }

    void lift() {
        // A closed outline is whole; another one may begin in the same place.
        if (!m_isStoring && m_hasPath && m_at == m_pathStart && m_hasLine) finishPath();
        m_isDown = false;
    }

    void beginPath() {
        if (m_hasPath) return;
        m_hasPath = true;
        m_hasLine = false;
        m_pathStart = m_at;
        m_path.start(m_at);
        see(m_at);
    }

    void finishPath() {
        if (!m_hasPath) return;
        m_hasPath = false;
        if (m_isStoring) {
            m_path.close();
            m_polygon.parts.push_back(m_path);
        } else if (hasPen()) {
            m_path.addTo(m_builder, false, ink(Painted::Line), m_builder.nextShape());
        }
    }

    void followEncoded(std::string_view text) {
        PltEncoded encoded(text);
        while (const auto step = encoded.next()) {
            if (step->kind == PltEncoded::Kind::Pen) {
                selectPen(m_pens.penFor(step->pen));
                continue;
            }
            if (step->isUp)
                lift();
            else
                lower();
            goTo(place({step->x, step->y}, !step->isAbsolute));
        }
        if (encoded.isGarbled()) refuseGarbled();
    }

    void followCurves(const Numbers& numbers, bool isRelative) {
        for (std::size_t i = 0; i + 5 < numbers.size(); i += 6) {
            countSegments(1);
            const Point first = place({numbers[i], numbers[i + 1]}, isRelative);
            const Point second = place({numbers[i + 2], numbers[i + 3]}, isRelative);
            const Point to = place({numbers[i + 4], numbers[i + 5]}, isRelative);
            if (draws()) {
                beginPath();
                m_hasLine = true;
                m_path.cubicTo(first, second, to);
                see(to);
            } else {
                finishPath();
            }
            m_at = to;
        }
    }

    // Arcs.

    bool takeArcs(const PltInstruction& instruction) {
        const Numbers& n = instruction.numbers;
        const bool isRelative = instruction.word == pltWord("AR") || instruction.word == pltWord("RT");
        switch (instruction.word) {
        case pltWord("CI"):
            if (!n.empty()) drawCircle(n[0], Painted::Line);
            return true;
        case pltWord("AA"):
        case pltWord("AR"):
            if (n.size() >= 3) turnAround(place({n[0], n[1]}, isRelative), n[2] * kRadian);
            return true;
        case pltWord("AT"):
        case pltWord("RT"):
            if (n.size() >= 4) turnThrough(place({n[0], n[1]}, isRelative), place({n[2], n[3]}, isRelative));
            return true;
        default: return false;
        }
    }

    /// From the current place to there, in units as written.
    Point written(Point to) const { return {(to.x - m_at.x) / m_matrix.a, (to.y - m_at.y) / m_matrix.d}; }

    Matrix circleAround(Point centre, double radius) const {
        return {m_matrix.a * radius, 0, 0, m_matrix.d * radius, centre.x, centre.y};
    }

    void turnAround(Point centre, double sweep) {
        constexpr double kMostTurns = 2;
        const Point back = -1.0 * written(centre);
        const double radius = std::hypot(back.x, back.y);
        if (!(radius > 0)) return;
        const Matrix circle = circleAround(centre, radius);
        const Point arm{back.x / radius, back.y / radius};
        sweep = std::clamp(sweep, -kMostTurns * kWholeTurn, kMostTurns * kWholeTurn);
        const Point end{arm.x * std::cos(sweep) - arm.y * std::sin(sweep),
                        arm.x * std::sin(sweep) + arm.y * std::cos(sweep)};
        const bool isWhole = std::abs(std::remainder(sweep, kWholeTurn)) < 1e-9;
        countSegments(4);
        if (draws()) {
            beginPath();
            m_hasLine = true;
            m_path.arc(circle, arm, sweep);
            see(circle({-1, -1}));
            see(circle({1, 1}));
        } else {
            finishPath();
        }
        if (!isWhole) m_at = circle(end);
    }

    void turnThrough(Point between, Point to) {
        const Point first = written(between);
        const Point last = written(to);
        if (to == m_at && !(between == m_at)) return turnAround(middle(m_at, between), kWholeTurn);
        const double twice = 2 * cross(first, last);
        const double size = std::max(dot(first, first), dot(last, last));
        if (!(std::abs(twice) > 1e-9 * size)) return goTo(to);
        const double a = dot(first, first);
        const double b = dot(last, last);
        const Point centre{(last.y * a - first.y * b) / twice, (first.x * b - last.x * a) / twice};
        const auto angleFrom = [&](Point p) { // counter-clockwise from the current place, 0 to a whole turn
            const double angle = std::atan2(cross(-1.0 * centre, p - centre), dot(-1.0 * centre, p - centre));
            return angle < 0 ? angle + kWholeTurn : angle;
        };
        const double sweep = angleFrom(first) < angleFrom(last) ? angleFrom(last) : angleFrom(last) - kWholeTurn;
        turnAround({m_at.x + m_matrix.a * centre.x, m_at.y + m_matrix.d * centre.y}, sweep);
        m_at = to; // to the last bit
    }

    /// Around the current place, whatever the pen does; it stays there.
    void drawCircle(double radius, Painted painted) {
        if (radius == 0) return m_builder.reject(Note::PointWithoutSize);
        const Point centre = m_at;
        if (m_hasPath && !m_hasLine) m_hasPath = false; // the dot of a pen that came down in the middle
        finishPath();
        countSegments(4);
        const Matrix circle = circleAround(centre, radius);
        Subpath path;
        path.start(circle({1, 0}));
        path.arc(circle, {1, 0}, kWholeTurn);
        path.close();
        see(circle({-1, -1}));
        see(circle({1, 1}));
        if (m_isStoring) {
            m_polygon.hasLines = true;
            m_polygon.parts.push_back(path);
        } else if (hasPen()) {
            path.addTo(m_builder, false, ink(painted), m_builder.nextShape());
        }
    }

    // Shapes and polygons.

    void takeShapes(const PltInstruction& instruction) {
        const Numbers& n = instruction.numbers;
        const bool isRelative = instruction.word == pltWord("ER") || instruction.word == pltWord("RR");
        switch (instruction.word) {
        case pltWord("EA"):
        case pltWord("ER"):
            if (n.size() >= 2) drawRectangle(place({n[0], n[1]}, isRelative), Painted::Line);
            break;
        case pltWord("RA"):
        case pltWord("RR"):
            if (n.size() >= 2) drawRectangle(place({n[0], n[1]}, isRelative), Painted::Area);
            break;
        case pltWord("EW"):
            if (n.size() >= 3) drawWedge(n[0], n[1] * kRadian, n[2] * kRadian, Painted::Line);
            break;
        case pltWord("WG"):
            if (n.size() >= 3) drawWedge(n[0], n[1] * kRadian, n[2] * kRadian, Painted::Area);
            break;
        case pltWord("PM"):
            if (n.empty() || n[0] == 0) beginPolygon();
            break;
        case pltWord("EP"): paintPolygon(Painted::Line, 0); break;
        case pltWord("FP"): paintPolygon(Painted::Area, n.empty() ? 0 : n[0]); break;
        default: break;
        }
    }

    void drawRectangle(Point to, Painted painted) {
        finishPath();
        Subpath path;
        path.start(m_at);
        path.lineTo({to.x, m_at.y});
        path.lineTo(to);
        path.lineTo({m_at.x, to.y});
        path.close();
        see(m_at);
        see(to);
        if (hasPen()) path.addTo(m_builder, false, ink(painted), m_builder.nextShape());
    }

    void drawWedge(double radius, double start, double sweep, Painted painted) {
        if (std::abs(sweep) >= kWholeTurn - 1e-9) return drawCircle(radius, painted);
        finishPath();
        countSegments(4);
        const Matrix circle = circleAround(m_at, radius);
        const Point arm{std::cos(start), std::sin(start)};
        Subpath path;
        path.start(m_at);
        path.lineTo(circle(arm));
        path.arc(circle, arm, sweep);
        path.close();
        see(circle({-1, -1}));
        see(circle({1, 1}));
        if (hasPen()) path.addTo(m_builder, false, ink(painted), m_builder.nextShape());
    }

    void beginPolygon() {
        finishPath();
        drawPolygon();
        m_polygon = {};
        m_isStoring = true;
        m_polygon.hasLines = m_wasDown = m_isDown;
        beginPath();
    }

    void takeStored(const PltInstruction& instruction) {
        if (instruction.word != pltWord("PM") || instruction.numbers.empty()) return;
        if (instruction.numbers[0] != 1 && instruction.numbers[0] != 2) return;
        finishPath();
        m_isStoring = instruction.numbers[0] == 1;
        if (!m_isStoring) m_isDown = m_wasDown;
    }

    /// Both are remembered, since a polygon that is filled and edged is one.
    void paintPolygon(Painted painted, double method) {
        finishPath();
        if (painted == Painted::Line && !m_polygon.hasLines) return;
        if (m_polygon.isDrawn && (m_polygon.isFilled || painted == Painted::Line)) return;
        m_polygon.isFilled = painted == Painted::Area;
        m_polygon.isEvenOdd = method != 1;
        m_polygon.isDrawn = hasPen();
        m_polygon.ink = ink(painted);
    }

    void drawPolygon() {
        if (!m_polygon.isDrawn) return;
        const auto shape = m_builder.nextShape();
        for (Subpath& part : m_polygon.parts) part.addTo(m_builder, m_polygon.isEvenOdd, m_polygon.ink, shape);
        m_polygon = {};
    }

    PltScript m_script;
    std::string_view m_fileName;
    DrawingBuilder m_builder;
    PltScale m_scale;
    PltPens m_pens;
    Matrix m_matrix;        ///< without a turn: b and c are 0, a and d are not
    Box m_drawn;            ///< around everything
    double m_sheetLeft = 0; ///< of the sheet that is drawn on
    bool m_hasNoUnit = false;

    Point m_at; ///< of the pen, in the drawing
    bool m_isDown = false;
    bool m_wasDown = false; ///< before the polygon
    bool m_isRelative = false;
    std::optional<int> m_pen; ///< none selected yet: a cutter's only one
    std::optional<std::uint32_t> m_inkOfPen;
    Painted m_inkPainted = Painted::Line;

    Subpath m_path;
    Point m_pathStart;
    bool m_hasPath = false;
    bool m_hasLine = false; ///< it is more than a dot
    Polygon m_polygon;
    bool m_isStoring = false;
};

} // namespace

base::Result<Drawing> readPlt(std::string_view text, std::string_view fileName, const Limits& limits) {
    return PltReader(text, fileName, limits).read();
}

} // namespace sp::artwork

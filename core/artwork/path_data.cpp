// SPDX-License-Identifier: MIT
#include "core/artwork/path_data.h"

#include "core/artwork/scanner.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace sp::artwork {

namespace {

/// Control points of a quarter circle of radius 1 lie this far along the tangents.
constexpr double kQuarter = 0.5522847498307936;

class PathReader {
  public:
    PathReader(std::string_view data, const Placing& placing, Subpath& path, DrawingBuilder& builder)
        : m_scanner(data)
        , m_placing(placing)
        , m_path(path)
        , m_builder(builder) {}

    bool read() {
        m_scanner.skipSpace();
        char command = 0;
        bool good = true;
        while (good && !m_scanner.isDone() && !m_builder.isFull()) {
            if (isLetter(m_scanner.peek())) {
                command = m_scanner.peek();
                m_scanner.skip();
                if (!m_begun && lower(command) != 'm') good = false;
            } else if (command == 0 || lower(command) == 'z') {
                good = false;
            }
            m_builder.countSegments(1);
            good = good && apply(command);
            if (lower(command) == 'm') command = command == 'm' ? 'l' : 'L';
        }
        finish();
        return good;
    }

  private:
    void finish() {
        if (m_open) m_placing.add(m_path, m_builder);
        m_open = false;
    }

    /// Begins a sub-path where the pen stands, if none is open: after a close the next one starts there.
    void begin() {
        if (m_open) return;
        m_start = m_at;
        m_path.start(m_placing.matrix(m_at));
        m_open = true;
    }

    template<std::size_t N>
    bool numbers(std::array<double, N>& values) {
        for (auto& value : values)
            if (!m_scanner.number(value)) return false;
        return true;
    }

    void line(Point to) {
        begin();
        m_path.lineTo(m_placing.matrix(to));
        m_at = m_control = to;
    }

    void cubic(Point c1, Point c2, Point to) {
        begin();
        m_path.cubicTo(m_placing.matrix(c1), m_placing.matrix(c2), m_placing.matrix(to));
        m_at = to;
    }

    void quadratic(Point control, Point to) {
        const Point from = m_at;
        cubic(from + (2.0 / 3.0) * (control - from), to + (2.0 / 3.0) * (control - to), to);
        m_control = control;
    }

    /// SVG 1.1, appendix F.6.5 and F.6.6.
    void arc(double rx, double ry, double degrees, bool large, bool sweep, Point to) {
        const Point from = m_at;
        rx = std::abs(rx);
        ry = std::abs(ry);
        if (from == to) return;
        if (!(rx > 1e-12) || !(ry > 1e-12)) return line(to);
        const bool isUpright = degrees == 0 || rx == ry; // a circle has no axes
        const Matrix turned = isUpright ? Matrix{} : Matrix::rotation(degrees);
        Point half = 0.5 * (from - to);
        if (!isUpright) half = Matrix{turned.a, -turned.b, -turned.c, turned.d, 0, 0}(half);
        // In the frame where the ellipse is the unit circle.
        Point h{half.x / rx, half.y / ry};
        double square = dot(h, h);
        if (square > 1) { // radii that do not reach are made to
            const double lambda = std::sqrt(square);
            rx *= lambda;
            ry *= lambda;
            h = (1 / lambda) * h;
            square = 1;
        }
        const double beyond = 1 - square; // 0 for half an ellipse
        double reach = beyond > 1e-9 ? std::sqrt(beyond / square) : 0;
        if (large == sweep) reach = -reach;
        const Point centre{reach * h.y, -reach * h.x};
        const Point u = h - centre;
        const Point v = Point{-h.x, -h.y} - centre;
        // Two halves are how most programs write a hole.
        const bool isHalf = reach == 0;
        double span = isHalf ? (sweep ? std::numbers::pi : -std::numbers::pi) : std::atan2(cross(u, v), dot(u, v));
        if (sweep && span < 0) span += 2 * std::numbers::pi;
        if (!sweep && span > 0) span -= 2 * std::numbers::pi;
        const Point aside{centre.x * rx, centre.y * ry};
        const Point here = middle(from, to) + (isUpright ? aside : turned(aside));
        const Matrix toHere{turned.a * rx, turned.b * rx, turned.c * ry, turned.d * ry, here.x, here.y};
        m_path.arc(m_placing.matrix * toHere, u, span);
        m_at = m_control = to;
        m_builder.countSegments(3); // it becomes up to four curves
    }

    bool apply(char command) {
        const bool relative = command >= 'a';
        const Point from = relative ? m_at : Point{};
        switch (lower(command)) {
        case 'm': return move(from);
        case 'l': {
            std::array<double, 2> v{};
            if (!numbers(v)) return false;
            line(from + Point{v[0], v[1]});
            break;
        }
        case 'h': {
            std::array<double, 1> v{};
            if (!numbers(v)) return false;
            line({from.x + v[0], m_at.y});
            break;
        }
        case 'v': {
            std::array<double, 1> v{};
            if (!numbers(v)) return false;
            line({m_at.x, from.y + v[0]});
            break;
        }
        case 'c':
        case 's':
        case 'q':
        case 't': return curve(lower(command), from);
        case 'a': return readArc(from);
        case 'z':
            if (m_open) {
                m_path.close();
                m_at = m_control = m_start;
                finish();
            }
            m_scanner.skipSeparator();
            break;
        default: return false;
        }
        m_previous = lower(command);
        return true;
    }

    bool move(Point from) {
        std::array<double, 2> v{};
        if (!numbers(v)) return false;
        finish();
        m_at = m_control = from + Point{v[0], v[1]};
        m_begun = true;
        begin();
        m_previous = 'm';
        return true;
    }

    bool curve(char command, Point from) {
        std::array<double, 6> v{};
        const std::size_t wanted = command == 'c' ? 6 : command == 't' ? 2 : 4;
        for (std::size_t i = 0; i < wanted; ++i)
            if (!m_scanner.number(v[i])) return false;
        const auto at = [&](std::size_t i) { return from + Point{v[i], v[i + 1]}; };
        const Point mirrored = m_at + (m_at - m_control);
        if (command == 'c') {
            cubic(at(0), at(2), at(4));
            m_control = at(2);
        } else if (command == 's') {
            cubic(m_previous == 'c' || m_previous == 's' ? mirrored : m_at, at(0), at(2));
            m_control = at(0);
        } else if (command == 'q') {
            quadratic(at(0), at(2));
        } else {
            quadratic(m_previous == 'q' || m_previous == 't' ? mirrored : m_at, at(0));
        }
        m_previous = command;
        return true;
    }

    bool readArc(Point from) {
        std::array<double, 3> shape{};
        std::array<double, 2> to{};
        if (!numbers(shape)) return false;
        bool large = false;
        bool sweep = false;
        if (!m_scanner.flag(large) || !m_scanner.flag(sweep) || !numbers(to)) return false;
        begin();
        arc(shape[0], shape[1], shape[2], large, sweep, from + Point{to[0], to[1]});
        m_previous = 'a';
        return true;
    }

    Scanner m_scanner;
    const Placing& m_placing;
    Subpath& m_path;
    DrawingBuilder& m_builder;
    Point m_at;
    Point m_start;
    Point m_control; ///< the last control point, for the smooth commands
    char m_previous = 0;
    bool m_begun = false;
    bool m_open = false;
};

} // namespace

void Placing::add(Subpath& path, DrawingBuilder& builder) const {
    if (isOutline) path.addTo(builder, evenOdd, ink, shape);
    if (dots != nullptr) path.addDotsTo(builder, *dots);
}

bool addPath(std::string_view data, const Placing& placing, Subpath& scratch, DrawingBuilder& builder) {
    return PathReader(data, placing, scratch, builder).read();
}

bool addPolygon(std::string_view points, bool closed, const Placing& placing, Subpath& scratch,
                DrawingBuilder& builder) {
    Scanner scanner(points);
    scanner.skipSpace();
    bool first = true;
    bool good = true;
    while (!scanner.isDone() && !builder.isFull()) {
        Point at;
        if (!scanner.number(at.x) || !scanner.number(at.y)) {
            good = false;
            break;
        }
        if (first)
            scratch.start(placing.matrix(at));
        else
            scratch.lineTo(placing.matrix(at));
        builder.countSegments(1);
        first = false;
    }
    if (first) return good;
    if (closed) scratch.close();
    placing.add(scratch, builder);
    return good;
}

void addEllipse(Point centre, double rx, double ry, const Placing& placing, Subpath& scratch, DrawingBuilder& builder) {
    const HalfAxes axes = halfAxes(placing.matrix, rx, ry);
    if (placing.dots == nullptr && axes.large - axes.small <= kRoundness * (axes.large + axes.small)) {
        builder.add(Disc{placing.matrix(centre), 0.5 * (axes.large + axes.small), placing.ink, placing.shape});
        return;
    }
    const auto at = [&](double x, double y) { return placing.matrix(centre + Point{x * rx, y * ry}); };
    scratch.start(at(1, 0));
    scratch.cubicTo(at(1, kQuarter), at(kQuarter, 1), at(0, 1));
    scratch.cubicTo(at(-kQuarter, 1), at(-1, kQuarter), at(-1, 0));
    scratch.cubicTo(at(-1, -kQuarter), at(-kQuarter, -1), at(0, -1));
    scratch.cubicTo(at(kQuarter, -1), at(1, -kQuarter), at(1, 0));
    scratch.close();
    placing.add(scratch, builder);
}

void addRectangle(Point corner, double width, double height, double rx, double ry, const Placing& placing,
                  Subpath& scratch, DrawingBuilder& builder) {
    const double right = corner.x + width;
    const double bottom = corner.y + height;
    const auto at = [&](double x, double y) { return placing.matrix({x, y}); };
    if (rx >= 0.4999999 * width && ry >= 0.4999999 * height)
        return addEllipse({corner.x + 0.5 * width, corner.y + 0.5 * height}, 0.5 * width, 0.5 * height, placing,
                          scratch, builder);
    if (rx <= 0 || ry <= 0) {
        scratch.start(at(corner.x, corner.y));
        scratch.lineTo(at(right, corner.y));
        scratch.lineTo(at(right, bottom));
        scratch.lineTo(at(corner.x, bottom));
    } else {
        const double kx = rx * (1 - kQuarter);
        const double ky = ry * (1 - kQuarter);
        scratch.start(at(corner.x + rx, corner.y));
        scratch.lineTo(at(right - rx, corner.y));
        scratch.cubicTo(at(right - kx, corner.y), at(right, corner.y + ky), at(right, corner.y + ry));
        scratch.lineTo(at(right, bottom - ry));
        scratch.cubicTo(at(right, bottom - ky), at(right - kx, bottom), at(right - rx, bottom));
        scratch.lineTo(at(corner.x + rx, bottom));
        scratch.cubicTo(at(corner.x + kx, bottom), at(corner.x, bottom - ky), at(corner.x, bottom - ry));
        scratch.lineTo(at(corner.x, corner.y + ry));
        scratch.cubicTo(at(corner.x, corner.y + ky), at(corner.x + kx, corner.y), at(corner.x + rx, corner.y));
    }
    scratch.close();
    placing.add(scratch, builder);
}

} // namespace sp::artwork

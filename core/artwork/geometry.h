// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <limits>
#include <numbers>

namespace sp::artwork {

inline constexpr double kRadian = std::numbers::pi / 180; ///< of one degree

/// A place or a step in the plane; y grows downwards. Doubles: artwork is approximate by nature, and what
/// leaves this room (counts, lengths) is whole numbers again.
struct Point {
    double x = 0;
    double y = 0;

    friend bool operator==(const Point&, const Point&) = default;
    friend Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend Point operator*(double k, Point p) { return {k * p.x, k * p.y}; }
};

inline double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
inline double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
double distance(Point a, Point b);
inline Point middle(Point a, Point b) { return {0.5 * (a.x + b.x), 0.5 * (a.y + b.y)}; }

/// An upright rectangle, empty until something is added.
struct Box {
    double left = std::numeric_limits<double>::infinity();
    double top = std::numeric_limits<double>::infinity();
    double right = -std::numeric_limits<double>::infinity();
    double bottom = -std::numeric_limits<double>::infinity();

    bool isEmpty() const { return right < left || bottom < top; }
    double width() const { return isEmpty() ? 0 : right - left; }
    double height() const { return isEmpty() ? 0 : bottom - top; }
    void add(Point p) { add(Box{p.x, p.y, p.x, p.y}); }
    /// Adds a disc's square.
    void add(Point centre, double radius) {
        add(Box{centre.x - radius, centre.y - radius, centre.x + radius, centre.y + radius});
    }
    void add(const Box& other) {
        left = std::min(left, other.left);
        top = std::min(top, other.top);
        right = std::max(right, other.right);
        bottom = std::max(bottom, other.bottom);
    }

    friend bool operator==(const Box&, const Box&) = default;
};

/// The map x' = a x + c y + e, y' = b x + d y + f (the order of SVG 1.1, section 7.4).
struct Matrix {
    double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;

    Point operator()(Point p) const { return {a * p.x + c * p.y + e, b * p.x + d * p.y + f}; }
    double determinant() const { return a * d - b * c; }
    bool isFinite() const;

    static Matrix translation(double x, double y) { return {1, 0, 0, 1, x, y}; }
    static Matrix scaling(double x, double y) { return {x, 0, 0, y, 0, 0}; }
    /// Counted from the x axis towards the y axis.
    static Matrix rotation(double degrees);

    /// First `inner`, then `outer`.
    friend Matrix operator*(const Matrix& outer, const Matrix& inner) {
        return {outer.a * inner.a + outer.c * inner.b,           outer.b * inner.a + outer.d * inner.b,
                outer.a * inner.c + outer.c * inner.d,           outer.b * inner.c + outer.d * inner.d,
                outer.a * inner.e + outer.c * inner.f + outer.e, outer.b * inner.e + outer.d * inner.f + outer.f};
    }
    friend bool operator==(const Matrix&, const Matrix&) = default;
};

/// Half the long and half the short axis of what the matrix makes of the ellipse with half axes rx and ry.
struct HalfAxes {
    double large = 0;
    double small = 0;
};
HalfAxes halfAxes(const Matrix& matrix, double rx, double ry);

} // namespace sp::artwork

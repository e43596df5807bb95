// SPDX-License-Identifier: MIT
#include "core/artwork/subpath.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sp::artwork {

namespace {

inline Point onCubic(Point p0, Point p1, Point p2, Point p3, double t) {
    const double u = 1 - t;
    const double w0 = u * u * u;
    const double w1 = 3 * u * u * t;
    const double w2 = 3 * u * t * t;
    const double w3 = t * t * t;
    return {w0 * p0.x + w1 * p1.x + w2 * p2.x + w3 * p3.x, w0 * p0.y + w1 * p1.y + w2 * p2.y + w3 * p3.y};
}

/// Least squares circle (Kasa): the normal equations of x² + y² = 2 a x + 2 b y + c about the mean point.
std::optional<RoundFit> kasa(const std::vector<Point>& points) {
    const double n = static_cast<double>(points.size());
    Point mean;
    for (const Point p : points) mean = mean + p;
    mean = (1 / n) * mean;
    double xx = 0, xy = 0, yy = 0, xz = 0, yz = 0, zz = 0;
    for (const Point p : points) {
        const Point q = p - mean;
        const double square = dot(q, q);
        xx += q.x * q.x;
        xy += q.x * q.y;
        yy += q.y * q.y;
        xz += q.x * square;
        yz += q.y * square;
        zz += square;
    }
    const double determinant = xx * yy - xy * xy;
    if (!(determinant > 1e-6 * zz * zz)) return std::nullopt; // all on one line, or not finite
    const Point centre{(xz * yy - yz * xy) / (2 * determinant), (yz * xx - xz * xy) / (2 * determinant)};
    return RoundFit{mean + centre, std::sqrt(dot(centre, centre) + zz / n)};
}

/// Whether no point strays from the circle by more than kRoundness.
bool holds(const RoundFit& fit, const std::vector<Point>& samples) {
    const double least = fit.radius * (1 - kRoundness);
    const double most = fit.radius * (1 + kRoundness);
    return std::all_of(samples.begin(), samples.end(), [&](Point p) {
        const Point q = p - fit.centre;
        const double square = dot(q, q);
        return square >= least * least && square <= most * most;
    });
}

/// Samples spread evenly over a circle have their mean in its centre; then there is nothing to fit.
std::optional<RoundFit> aboutMean(const std::vector<Point>& samples) {
    constexpr double kEven = 0.01;
    const double n = static_cast<double>(samples.size());
    Point mean;
    for (const Point p : samples) mean = mean + p;
    mean = (1 / n) * mean;
    double least = HUGE_VAL, most = 0, sum = 0;
    for (const Point p : samples) {
        const double square = dot(p - mean, p - mean);
        least = std::min(least, square);
        most = std::max(most, square);
        sum += square;
    }
    if (!(most - least <= 2 * kEven * least)) return std::nullopt;
    return RoundFit{mean, std::sqrt(sum / n)};
}

constexpr double kMostRound = 5 * std::numbers::pi; ///< an overcut; what goes round more often is a spiral or a spring

std::optional<RoundFit> fitWithin(const std::vector<Point>& samples) {
    if (auto even = aboutMean(samples)) return even;
    auto fit = kasa(samples);
    return fit && holds(*fit, samples) ? fit : std::nullopt;
}

double areaOf(const std::vector<Point>& ring, Point about) {
    double twice = 0;
    Point before = ring.back() - about;
    for (const Point p : ring) {
        const Point now = p - about;
        twice += cross(before, now);
        before = now;
    }
    return 0.5 * twice;
}

} // namespace

void Subpath::start(Point at) {
    m_first = m_last = at;
    m_closed = m_curved = m_wasDrawn = m_isTooLong = false;
    m_segments.clear();
    m_turns.clear();
}

void Subpath::append(const Segment& segment) {
    m_isTooLong = m_segments.size() >= kMaxSegmentsInOne;
    if (!m_isTooLong) m_segments.push_back(segment);
}

void Subpath::lineTo(Point to) {
    if (!m_turns.empty()) drawTurns();
    m_wasDrawn = true;
    if (to == m_last) return;
    append({false, {}, {}, to});
    m_last = to;
}

void Subpath::cubicTo(Point control1, Point control2, Point to) {
    if (!m_turns.empty()) drawTurns();
    m_wasDrawn = true;
    if (to == m_last && control1 == m_last && control2 == m_last) return;
    append({true, control1, control2, to});
    m_last = to;
    m_curved = true;
}

void Subpath::arc(const Matrix& fromUnitCircle, Point arm, double sweep) {
    constexpr std::size_t kMaxTurns = 8;
    if (m_segments.empty() && m_turns.size() < kMaxTurns) {
        m_turns.push_back({fromUnitCircle, arm, sweep});
        return;
    }
    if (!m_turns.empty()) drawTurns();
    draw({fromUnitCircle, arm, sweep});
}

void Subpath::drawTurns() {
    const auto turns = std::move(m_turns);
    m_turns.clear();
    for (const Turn& turn : turns) draw(turn);
}

void Subpath::draw(const Turn& turn) {
    auto [fromUnitCircle, arm, sweep] = turn;
    const double quarters = std::ceil(std::abs(sweep) / (std::numbers::pi / 2) - 1e-6);
    const int pieces = static_cast<int>(std::clamp(quarters, 1.0, 8.0));
    if (const double angle = sweep / pieces; !(std::abs(angle - m_step.angle) < 1e-13))
        m_step = {angle, std::cos(angle), std::sin(angle), 4.0 / 3.0 * std::tan(angle / 4)};
    for (int i = 0; i < pieces; ++i) {
        const Point next{arm.x * m_step.cosine - arm.y * m_step.sine, arm.x * m_step.sine + arm.y * m_step.cosine};
        cubicTo(fromUnitCircle(arm + m_step.reach * Point{-arm.y, arm.x}),
                fromUnitCircle(next - m_step.reach * Point{-next.y, next.x}), fromUnitCircle(next));
        arm = next;
    }
}

bool Subpath::endsMeet(double reach) const { return distance(m_first, m_last) <= reach; }

/// The one circle that all arcs lie on and together go round once; nothing where only a fit can tell.
std::optional<RoundFit> Subpath::wheel() const {
    constexpr double kAlike = 1e-3;
    const Matrix& first = m_turns.front().fromUnitCircle;
    const HalfAxes axes = halfAxes(first, 1, 1);
    const double radius = 0.5 * (axes.large + axes.small);
    const double play = kAlike * radius;
    if (!(axes.large - axes.small <= play)) return std::nullopt;
    double round = 0;
    double swept = 0;
    for (const Turn& turn : m_turns) {
        const Matrix& m = turn.fromUnitCircle;
        const double strays = std::max({std::abs(m.a - first.a), std::abs(m.b - first.b), std::abs(m.c - first.c),
                                        std::abs(m.d - first.d), std::abs(m.e - first.e), std::abs(m.f - first.f)});
        if (!(strays <= play)) return std::nullopt;
        round += turn.sweep;
        swept += std::abs(turn.sweep);
    }
    const double turned = std::abs(round);
    const bool isOneWay = std::abs(turned - swept) <= kAlike;
    if (!isOneWay || turned < 2 * std::numbers::pi - kAlike || turned > kMostRound) return std::nullopt;
    return RoundFit{{first.e, first.f}, radius};
}

std::optional<RoundFit> Subpath::fitCircle() {
    if (!m_turns.empty()) {
        if (auto whole = wheel()) return whole;
        drawTurns();
    }
    if (auto whole = fitWhole()) return whole;
    return m_curved || mayOvercut() ? fitCut() : std::nullopt;
}

/// Whether short lines may make a circle and go on along it.
bool Subpath::mayOvercut() const {
    constexpr std::size_t kFewest = 10; // corners of what passes as round
    return !m_curved && !m_closed && m_segments.size() > kFewest && !(m_first == m_last);
}

/// The points of the curves alone, or of lines where there are no others, into m_samples; answers how far they turn
/// about their fitted centre, one way all along, or 0. Lines may stand before the first curve and after the last.
double Subpath::sampleCurves() {
    m_samples.clear();
    Point at = m_first;
    bool hasEnded = false;
    for (const Segment& segment : m_segments) {
        if (segment.curved || !m_curved) {
            if (hasEnded) return 0;
            if (m_samples.empty()) m_samples.push_back(at);
            if (segment.curved)
                for (const double t : {0.25, 0.5, 0.75})
                    m_samples.push_back(onCubic(at, segment.control1, segment.control2, segment.to, t));
            else
                m_samples.push_back(middle(at, segment.to));
            m_samples.push_back(segment.to);
        } else {
            hasEnded = hasEnded || !m_samples.empty();
        }
        at = segment.to;
    }
    if (m_samples.size() < 5) return 0;
    const auto fit = kasa(m_samples);
    if (!fit || !holds(*fit, m_samples)) return 0;
    double turned = 0;
    double swept = 0;
    for (std::size_t i = 1; i < m_samples.size(); ++i) {
        const Point from = m_samples[i - 1] - fit->centre;
        const Point to = m_samples[i] - fit->centre;
        const double step = std::atan2(cross(from, to), dot(from, to));
        turned += step;
        swept += std::abs(step);
    }
    return swept - std::abs(turned) <= 1e-3 ? turned : 0;
}

std::optional<RoundFit> Subpath::fitCut() {
    constexpr double kWhole = 0.99 * 2 * std::numbers::pi;
    constexpr double kLead = 2; // radii from the centre
    const double turned = std::abs(sampleCurves());
    if (turned < kWhole || turned > kMostRound) return std::nullopt;
    auto fit = kasa(m_samples);
    const auto isNear = [&](Point p) { return distance(p, fit->centre) <= kLead * fit->radius; };
    if (!fit || !isNear(m_first)) return std::nullopt;
    const bool areNear = std::all_of(m_segments.begin(), m_segments.end(),
                                     [&](const Segment& segment) { return segment.curved || isNear(segment.to); });
    if (!areNear) return std::nullopt;
    if (!m_curved) fit->radius = radiusOfCorners(fit->centre);
    return fit;
}

double Subpath::radiusOfCorners(Point centre) const {
    double sum = 0;
    for (const Segment& segment : m_segments) sum += distance(segment.to, centre);
    return sum / static_cast<double>(m_segments.size());
}

std::optional<ArcPart> Subpath::fitArc() {
    constexpr double kShortest = 0.5; // radians: of less no circle can be told
    if (!m_curved || std::any_of(m_segments.begin(), m_segments.end(), [](const Segment& s) { return !s.curved; }))
        return std::nullopt;
    const double turned = sampleCurves();
    if (std::abs(turned) < kShortest) return std::nullopt;
    const auto fit = kasa(m_samples);
    if (!fit) return std::nullopt;
    const Point first = (turned > 0 ? m_samples.front() : m_samples.back()) - fit->centre;
    return ArcPart{fit->centre, fit->radius, std::atan2(first.y, first.x), std::abs(turned)};
}

std::optional<RoundFit> Subpath::fitWhole() {
    if (m_segments.size() < 2 && !m_curved) return std::nullopt;
    m_samples.clear();
    Point at = m_first;
    for (const Segment& segment : m_segments) {
        if (segment.curved) {
            m_samples.push_back(onCubic(at, segment.control1, segment.control2, segment.to, 0.25));
            m_samples.push_back(onCubic(at, segment.control1, segment.control2, segment.to, 0.5));
            m_samples.push_back(onCubic(at, segment.control1, segment.control2, segment.to, 0.75));
        } else {
            m_samples.push_back(middle(at, segment.to));
        }
        m_samples.push_back(at = segment.to);
    }
    if (m_closed && !(at == m_first)) { // the closing line, when it is long enough to matter
        m_samples.push_back(middle(at, m_first));
        m_samples.push_back(m_first);
    }
    if (m_samples.size() < 7) return std::nullopt;
    auto fit = fitWithin(m_samples);
    if (!fit || (!m_closed && !endsMeet(kMaxGap * fit->radius))) return std::nullopt;
    const double share = std::abs(areaOf(m_samples, fit->centre)) / (std::numbers::pi * fit->radius * fit->radius);
    if (share < 0.85 || share > 1.1) return std::nullopt; // a part of a circle, or round it twice
    if (!m_curved) fit->radius = radiusOfCorners(fit->centre);
    return fit;
}

std::vector<Point>& Subpath::flatten() {
    if (!m_turns.empty()) drawTurns();
    m_samples.assign(1, m_first);
    Point at = m_first;
    for (const Segment& s : m_segments) {
        if (s.curved) {
            const double bend =
                std::max(distance(middle(at, s.control2), s.control1), distance(middle(s.control1, s.to), s.control2)) *
                2;
            const double length =
                distance(at, s.control1) + distance(s.control1, s.control2) + distance(s.control2, s.to);
            const double wanted = length > 0 ? std::sqrt(0.75 * bend / (length / 2000)) : 1;
            const int pieces = std::clamp(static_cast<int>(std::ceil(wanted)), 1, 64);
            for (int i = 1; i < pieces; ++i)
                m_samples.push_back(onCubic(at, s.control1, s.control2, s.to, static_cast<double>(i) / pieces));
        }
        m_samples.push_back(at = s.to);
    }
    return m_samples;
}

void Subpath::addDotsTo(DrawingBuilder& builder, const DottedLine& dots) {
    if (m_segments.empty() && m_turns.empty()) {
        if (m_wasDrawn || m_closed) builder.reject(Note::PointWithoutSize);
        return;
    }
    if (m_isTooLong) return builder.refuseSegments();
    auto& corners = flatten();
    if (m_closed && corners.size() > 1 && corners.back() == corners.front()) corners.pop_back();
    dots.addTo(builder, corners, m_closed);
}

void Subpath::addTo(DrawingBuilder& builder, bool evenOdd, std::uint32_t ink, std::uint32_t shape) {
    if (m_segments.empty() && m_turns.empty()) {
        if (m_wasDrawn || m_closed) builder.reject(Note::PointWithoutSize);
        return;
    }
    if (m_isTooLong) return builder.refuseSegments();
    if (const auto fit = fitCircle()) {
        builder.add(Disc{fit->centre, fit->radius, ink, shape});
        return;
    }
    auto& corners = flatten();
    if (corners.size() < 2) return; // arcs of no size
    Box box;
    for (const Point p : corners) box.add(p);
    const bool meets = endsMeet(1e-3 * (box.width() + box.height()));
    if (meets && corners.size() > 2 && corners.back() == corners.front()) corners.pop_back();
    const bool isClosed = m_closed || meets;
    builder.add(corners, isClosed, evenOdd, ink, shape);
    if (!isClosed)
        if (const auto part = fitArc()) builder.markArc(*part);
}

} // namespace sp::artwork

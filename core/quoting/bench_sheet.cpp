// SPDX-License-Identifier: MIT
#include "core/quoting/bench_sheet.h"

#include <algorithm>
#include <array>
#include <limits>
#include <span>

namespace sp::quoting {

using catalogue::MaterialKind;
using catalogue::Step;
using needs::BenchTime;
using units::Duration;
using units::Int128;

namespace {

/// A time in parts by weight, which add up to it; equal weights where all are nothing.
std::vector<Duration> inParts(Duration time, const std::vector<Int128>& weights) {
    Int128 sum = 0;
    for (const auto weight : weights) sum += weight;
    const bool isEven = sum == 0;
    if (isEven) sum = static_cast<Int128>(weights.size());
    // Beyond 63 bits a weight times a time would leave the 128; what falls off then is less than a millisecond.
    int spare = 0;
    while (sum >> spare > std::numeric_limits<std::int64_t>::max()) ++spare;
    sum >>= spare;
    std::vector<Duration> parts;
    Int128 running = 0;
    std::int64_t before = 0;
    for (const auto weight : weights) {
        running += isEven ? 1 : weight;
        const auto until = static_cast<std::int64_t>((running >> spare) * time.milliseconds() / sum);
        parts.push_back(Duration::fromMilliseconds(until - before));
        before = until;
    }
    return parts;
}

bool isOwnSet(const needs::PlaceSet& set, std::size_t line, std::size_t place) {
    return set.isThere || (set.shared.line == line && set.shared.place == place);
}

/// The time of each line. A set of several lines is cut on the first of them, and there all of its time is spent: the
/// parts that the others have of it by their pieces go over to that one.
std::vector<BenchTime> timesOf(std::span<const catalogue::OrderLine> lines, const needs::OrderWork& work,
                               const catalogue::BenchStandards& bench) {
    std::vector<BenchTime> times;
    for (const auto& line : work.lines) times.push_back(line.bench);
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t k = 0; k < lines[i].places.size(); ++k) {
            const auto& set = work.lines[i].sets[k];
            if (isOwnSet(set, i, k)) continue;
            auto alone = lines[i];
            alone.places = {lines[i].places[k]};
            const std::array<std::int64_t, 1> noCycles{};
            const std::array setPieces{units::Count::of(set.shared.pieces)};
            const auto part = needs::benchTime(bench, alone, work.lines[i].takes.pieces, noCycles, setPieces);
            for (const auto step : catalogue::kSteps) {
                if (!catalogue::isOncePerJob(step)) continue;
                const auto at = static_cast<std::size_t>(step);
                times[i].steps[at] -= part.of(step);
                times[set.shared.line].steps[at] += part.of(step);
            }
        }
    return times;
}

class BenchLineMaker {
  public:
    /// `number` is that of the line in the order; `onSheet` are those of all lines on the sheet.
    BenchLineMaker(std::size_t number, const catalogue::OrderLine& ordered, const needs::LineWork& work,
                   const BenchTime& time, std::span<const std::size_t> onSheet, const catalogue::PriceBook& book)
        : m_number(number)
        , m_ordered(ordered)
        , m_work(work)
        , m_time(time)
        , m_onSheet(onSheet)
        , m_book(book) {}

    BenchLine make() {
        m_line.title = m_ordered.title;
        m_line.pieces = m_ordered.quantity.value();
        m_line.spares = m_work.spares;
        m_line.planned = m_time.total();
        const auto& materials = m_work.takes.materials;
        if (materials.base) m_line.base = materials.base->material.name;
        m_line.isOnBacking = materials.isOnBacking();
        addSizes();
        std::size_t row = 0;
        for (std::size_t i = 0; i < m_ordered.places.size(); ++i) addPlace(i, row);
        addSteps();
        return std::move(m_line);
    }

  private:
    /// Pieces of the plain size stand under no name.
    void addSizes() {
        m_line.sizes = m_ordered.sizes;
        if (m_line.sizes.empty()) return;
        auto plain = m_line.pieces;
        for (const auto& size : m_line.sizes) plain -= size.count.value();
        if (plain > 0) m_line.sizes.insert(m_line.sizes.begin(), {std::string(), units::Count::of(plain)});
        if (m_line.spares.pieces == 0) return;
        const auto spare = std::ranges::find(m_line.sizes, m_line.spares.size, &catalogue::SizeCount::size);
        if (spare != m_line.sizes.end()) spare->count = spare->count + units::Count::of(m_line.spares.pieces);
    }

    void addPlace(std::size_t number, std::size_t& row) {
        const auto& ordered = m_ordered.places[number];
        const auto& set = m_work.sets[number];
        BenchPlace place{ordered.design,
                         needs::titleOf(m_ordered, ordered),
                         ordered.place,
                         ordered.width,
                         ordered.height,
                         set.isThere,
                         {},
                         {},
                         {},
                         m_marks};
        const bool isCutHere = isOwnSet(set, m_number, number);
        if (!isCutHere) place.setFrom = BenchSpot{m_onSheet[set.shared.line], set.shared.place};
        for (const auto& stone : ordered.stones) {
            const auto& take = m_work.takes.materials.stones[row];
            const auto& material = take.material->material;
            place.colours.push_back({material.name, material.stone.rgb, stone.count.value(),
                                     stone.count.value() * m_line.made(),
                                     needs::wholeFor(take.need, m_work.takes.pieces)});
            ++row;
        }
        std::ranges::stable_sort(place.colours, std::ranges::greater(), &BenchColour::perPiece);
        const auto& takes = m_work.takes.places[number];
        const auto& materials = m_work.takes.materials;
        if (isCutHere) addCut(place, materials.templates, takes.templates.use);
        addCut(place, materials.tape, takes.tape.use);
        if (m_line.isOnBacking) addCut(place, materials.base, takes.backing.use);
        m_line.cycles += takes.press.cycles;
        m_marks += static_cast<std::int64_t>(place.colours.size());
        m_line.places.push_back(std::move(place));
    }

    static void addCut(BenchPlace& place, const catalogue::PricedMaterial* priced, const needs::SheetUse& use) {
        if (!priced || use.cut == 0) return;
        const auto& material = priced->material;
        const auto& sheet = material.sheet;
        place.cuts.push_back({material.kind,
                              material.name,
                              sheet.form,
                              needs::pieceOf(sheet, place.width, place.height),
                              {sheet.width, sheet.height},
                              use,
                              sheet.lifts});
    }

    void addSteps() {
        for (const auto step : catalogue::kSteps) {
            const auto planned = m_time.of(step);
            if (step == Step::Brush)
                addColours();
            else if (step != Step::Lift && (step == Step::Press || !planned.isZero()))
                m_line.steps.push_back({step, std::nullopt, planned});
        }
    }

    /// Each colour is brushed and lifted before the next one: the time of the two steps by what each colour takes.
    void addColours() {
        const auto brushed = inParts(m_time.of(Step::Brush), weightsOf(Step::Brush));
        const auto lifted = inParts(m_time.of(Step::Lift), weightsOf(Step::Lift));
        for (std::size_t i = 0; i < brushed.size(); ++i) {
            m_line.steps.push_back({Step::Brush, static_cast<std::int64_t>(i), brushed[i]});
            m_line.steps.push_back({Step::Lift, static_cast<std::int64_t>(i), lifted[i]});
        }
    }
    std::vector<Int128> weightsOf(Step step) const {
        const auto& standard = m_book.bench.of(step);
        const auto hundredths = [](Duration time) { return Int128{100} * time.milliseconds(); };
        std::vector<Int128> weights;
        for (const auto& place : m_line.places)
            for (const auto& colour : place.colours)
                weights.push_back(hundredths(standard.perColour) +
                                  Int128{standard.per100Stones.milliseconds()} * colour.perPiece +
                                  hundredths(standard.perPiece) / static_cast<std::int64_t>(place.colours.size()));
        return weights;
    }

    const std::size_t m_number;
    const catalogue::OrderLine& m_ordered;
    const needs::LineWork& m_work;
    const BenchTime& m_time;
    const std::span<const std::size_t> m_onSheet;
    const catalogue::PriceBook& m_book;
    BenchLine m_line;
    std::int64_t m_marks = 0;
};

} // namespace

base::Result<BenchSheet> benchSheetOf(std::string number, const catalogue::Order& order,
                                      const catalogue::PriceBook& book, layout::FitMemo& fits,
                                      const needs::SetsThere& there) {
    const auto work = needs::workOf(order.lines, book, fits, there);
    if (!work) return base::fail(work.error());
    BenchSheet sheet;
    sheet.number = std::move(number);
    if (book.customer) sheet.customer = book.customer->name;
    sheet.wantedBy = order.wantedBy;
    sheet.press = book.bench.press;
    sheet.planned = work->total;
    sheet.choice = order.choice;
    sheet.choices = static_cast<std::int64_t>(catalogue::choiceCount(order));
    const auto times = timesOf(order.lines, *work, book.bench);
    std::vector<std::size_t> onSheet;
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        onSheet.push_back(sheet.lines.size());
        if (order.lines[i].isCharge()) continue;
        sheet.lines.push_back(BenchLineMaker(i, order.lines[i], work->lines[i], times[i], onSheet, book).make());
    }
    return sheet;
}

} // namespace sp::quoting

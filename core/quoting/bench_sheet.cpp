// SPDX-License-Identifier: MIT
#include "core/quoting/bench_sheet.h"

#include <algorithm>

namespace sp::quoting {

using catalogue::MaterialKind;
using catalogue::Step;
using units::Duration;

namespace {

/// A time in parts by weight, which add up to it; equal weights where all are nothing.
std::vector<Duration> inParts(Duration time, const std::vector<std::int64_t>& weights) {
    units::Int128 sum = 0;
    for (const auto weight : weights) sum += weight;
    const bool isEven = sum == 0;
    if (isEven) sum = static_cast<units::Int128>(weights.size());
    std::vector<Duration> parts;
    units::Int128 running = 0;
    std::int64_t before = 0;
    for (const auto weight : weights) {
        running += isEven ? 1 : weight;
        const auto until = static_cast<std::int64_t>(running * time.milliseconds() / sum);
        parts.push_back(Duration::fromMilliseconds(until - before));
        before = until;
    }
    return parts;
}

class BenchLineMaker {
  public:
    BenchLineMaker(const catalogue::OrderLine& ordered, const needs::LineWork& work, const catalogue::PriceBook& book)
        : m_ordered(ordered)
        , m_work(work)
        , m_book(book) {}

    BenchLine make() {
        m_line.title = m_ordered.title;
        m_line.pieces = m_ordered.quantity.value();
        m_line.spares = m_work.spares;
        m_line.planned = m_work.bench.total();
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
        BenchPlace place{ordered.design,
                         needs::titleOf(m_ordered, ordered),
                         ordered.place,
                         ordered.width,
                         ordered.height,
                         ordered.templatesOnWall,
                         {},
                         {},
                         m_marks};
        std::vector<std::int64_t> weights;
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
        addCut(place, materials.templates, takes.templates.use);
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
            const auto planned = m_work.bench.of(step);
            if (step == Step::Brush)
                addColours();
            else if (step != Step::Lift && (step == Step::Press || !planned.isZero()))
                m_line.steps.push_back({step, std::nullopt, planned});
        }
    }

    /// Each colour is brushed and lifted before the next one: the time of the two steps by what each colour takes.
    void addColours() {
        const auto brushed = inParts(m_work.bench.of(Step::Brush), weightsOf(Step::Brush));
        const auto lifted = inParts(m_work.bench.of(Step::Lift), weightsOf(Step::Lift));
        for (std::size_t i = 0; i < brushed.size(); ++i) {
            m_line.steps.push_back({Step::Brush, static_cast<std::int64_t>(i), brushed[i]});
            m_line.steps.push_back({Step::Lift, static_cast<std::int64_t>(i), lifted[i]});
        }
    }
    std::vector<std::int64_t> weightsOf(Step step) const {
        const auto& standard = m_book.bench.of(step);
        std::vector<std::int64_t> weights;
        for (const auto& place : m_line.places)
            for (const auto& colour : place.colours)
                weights.push_back(
                    standard.perColour.milliseconds() * 100 + standard.per100Stones.milliseconds() * colour.perPiece +
                    standard.perPiece.milliseconds() * 100 / static_cast<std::int64_t>(place.colours.size()));
        return weights;
    }

    const catalogue::OrderLine& m_ordered;
    const needs::LineWork& m_work;
    const catalogue::PriceBook& m_book;
    BenchLine m_line;
    std::int64_t m_marks = 0;
};

} // namespace

base::Result<BenchSheet> benchSheetOf(std::string number, const catalogue::Order& order,
                                      const catalogue::PriceBook& book, layout::FitMemo& fits) {
    const auto work = needs::workOf(order.lines, book, fits);
    if (!work) return base::fail(work.error());
    BenchSheet sheet;
    sheet.number = std::move(number);
    if (book.customer) sheet.customer = book.customer->name;
    sheet.wantedBy = order.wantedBy;
    sheet.press = book.bench.press;
    sheet.planned = work->total;
    for (std::size_t i = 0; i < order.lines.size(); ++i)
        if (!order.lines[i].isCharge())
            sheet.lines.push_back(BenchLineMaker(order.lines[i], work->lines[i], book).make());
    return sheet;
}

} // namespace sp::quoting

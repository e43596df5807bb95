// SPDX-License-Identifier: MIT
#include "core/supply/job.h"

#include "core/needs/line_check.h"
#include "core/needs/messages.h"
#include "core/needs/shared_sets.h"
#include "core/needs/sheet_use.h"
#include "core/supply/messages.h"

#include <algorithm>
#include <set>

namespace sp::supply {

using catalogue::MaterialKind;
using needs::NeedKind;
using std::int64_t;
using units::Count;
using units::Fraction;

namespace {

template<class T>
const T* withId(const std::vector<T>& things, const base::Id& id) {
    const auto at = std::find_if(things.begin(), things.end(), [&](const T& thing) { return thing.id == id; });
    return at == things.end() ? nullptr : &*at;
}

/// What the design at a place of a line is called.
const std::string& nameOf(const catalogue::OrderLine& ordered, const catalogue::Placement& place, const JobLine& line) {
    const auto& title = needs::titleOf(ordered, place);
    return title.empty() ? line.title : title;
}

/// Puts the takes of the lines together.
class Takes {
  public:
    Takes(const Supplies& supplies, const std::vector<catalogue::OrderLine>& lines, layout::FitMemo& fits)
        : m_supplies(supplies)
        , m_fits(fits)
        , m_sets(needs::sharedSets(lines, [&supplies](const base::Id& id) { return withId(supplies.materials, id); })) {
    }

    /// `number`: which of the lines.
    base::Result<JobLine> lineOf(const catalogue::OrderLine& ordered, std::size_t number) {
        JobLine line{
            ordered.title.empty() ? m_supplies.words.untitled : ordered.title, ordered.quantity.value(), {}, {}};
        if (!needs::isNumberOfPieces(line.pieces))
            return base::fail(needs::Fault::PiecesOutOfRange, line.title, line.pieces, line.title);
        for (std::size_t i = 0; i < ordered.places.size(); ++i) {
            const auto& place = ordered.places[i];
            if (auto ok = stones(ordered, place, line); !ok) return base::fail(ok.error());
            if (auto ok = sheets(ordered, place, needs::hasOwnSet(m_sets, number, i), line); !ok)
                return base::fail(ok.error());
        }
        if (auto ok = blank(ordered, line); !ok) return base::fail(ok.error());
        packing(ordered, line);
        return line;
    }

  private:
    base::Done stones(const catalogue::OrderLine& ordered, const catalogue::Placement& place, JobLine& line) {
        if (auto ok = needs::checkColours(ordered, place, base::asValue(line.title)); !ok) return ok;
        for (const auto& stone : place.stones) {
            const auto* material = withId(m_supplies.materials, stone.material);
            if (!material) return base::fail(Fault::StoneGone, line.title, line.title);
            if (auto ok = needs::checkStone(*material, stone.count, base::asValue(line.title)); !ok) return ok;
            line.takes.push_back({needs::needOfStone(stone.count, *material), material->name, material->kind});
        }
        return {};
    }

    base::Done sheets(const catalogue::OrderLine& ordered, const catalogue::Placement& place, bool hasOwnSet,
                      JobLine& line) {
        if (const auto* tape = withId(m_supplies.materials, m_supplies.usualTape))
            if (auto ok = cut(*tape, place, needs::needOfTape(*tape), line); !ok) return ok;
        if (hasOwnSet)
            if (auto ok = templates(ordered, place, line); !ok) return ok;
        const auto* backing = withId(m_supplies.materials, ordered.baseMaterial);
        if (ordered.customersGarment || !backing || backing->kind != MaterialKind::Backing) return {};
        return cut(*backing, place, needs::needOfBase(*backing), line);
    }

    /// What the designs are set on, if that is not cut for each of them; of a charge what is sold.
    base::Done blank(const catalogue::OrderLine& ordered, JobLine& line) {
        if (ordered.customersGarment || ordered.baseMaterial.isNone()) return {};
        const auto* material = withId(m_supplies.materials, ordered.baseMaterial);
        if (!material) return base::fail(Fault::BaseGone, line.title, line.title);
        if (material->kind != MaterialKind::Backing)
            line.takes.push_back({needs::needOfBase(*material), material->name, material->kind});
        return {};
    }

    base::Done templates(const catalogue::OrderLine& ordered, const catalogue::Placement& place, JobLine& line) {
        if (place.templatesOnWall) return {};
        if (!m_supplies.cutsTemplates) {
            line.takes.push_back({{.kind = NeedKind::ReadyCut},
                                  m_supplies.words.readyCut(nameOf(ordered, place, line)),
                                  MaterialKind::Template});
            return {};
        }
        const auto* sheet = withId(m_supplies.materials, m_supplies.usualTemplate);
        if (!sheet) return {};
        return cut(*sheet, place, needs::needOfTemplates(place), line);
    }

    /// What goes once with the order is taken by the first line that names it, and by a later one that names more of
    /// it: the rest (needs::orderPackingOf).
    void packing(const catalogue::OrderLine& ordered, JobLine& line) {
        for (const auto& use : catalogue::packingOf(ordered, m_supplies.packing)) {
            const auto* material = withId(m_supplies.materials, use.material);
            if (!material) continue;
            auto need = needs::needOfPacking(use);
            if (need.kind == NeedKind::ForOrder) {
                auto& packed = m_packed[use.material];
                if (use.amount <= packed) continue;
                need.perPiece = use.amount - packed;
                packed = use.amount;
            }
            line.takes.push_back({need, material->name, material->kind});
        }
    }

    base::Done cut(const catalogue::Material& material, const catalogue::Placement& place, needs::MaterialNeed need,
                   JobLine& line) {
        const auto fit = needs::piecesPerSheet(material, place.width, place.height, m_fits);
        if (!fit) return base::fail(base::about(material.name, fit.error()));
        need.perSheet = *fit;
        line.takes.push_back({need, material.name, material.kind});
        return {};
    }

    const Supplies& m_supplies;
    layout::FitMemo& m_fits;
    std::vector<std::vector<needs::SharedSet>> m_sets;
    std::unordered_map<base::Id, units::Count> m_packed; ///< what lines before take for the order, likewise
};

/// Turns the catalogue's packs and kits into the planner's.
class Offers {
  public:
    Offers(const Supplies& supplies, const std::vector<catalogue::OrderLine>& lines, Job& job)
        : m_supplies(supplies)
        , m_lines(lines)
        , m_job(job) {
        for (const auto& line : job.lines)
            for (const auto& take : line.takes) m_taken.insert(take.material);
    }

    void fill() {
        for (const auto& pack : m_supplies.packs) addBulk(pack);
        for (const auto& kit : m_supplies.kits) addKit(kit);
        m_job.hasKits = !m_supplies.kits.empty();
        std::sort(m_job.offers.begin(), m_job.offers.end(), [](const Offer& a, const Offer& b) { return a.id < b.id; });
        std::set<std::string> used;
        for (const auto* packs : {&m_job.kits, &m_job.bulk})
            for (const auto& pack : *packs) used.insert(pack.supplier);
        for (const auto& supplier : m_supplies.suppliers)
            if (used.count(supplier.name) > 0)
                m_job.suppliers.push_back({supplier.name, supplier.shipping, supplier.freeFrom, supplier.minimum});
        for (const auto& material : m_supplies.materials)
            if (const auto at = m_supplies.shelf.find(material.id);
                m_taken.count(material.name) > 0 && at != m_supplies.shelf.end() && at->second > 0)
                m_job.shelf.push_back({material.name, Count::of(at->second)});
    }

  private:
    void addBulk(const catalogue::Pack& pack) {
        const auto* material = withId(m_supplies.materials, pack.material);
        const auto* supplier = withId(m_supplies.suppliers, pack.supplier);
        if (!material || !supplier || m_taken.count(material->name) == 0 || pack.prices.empty()) return;
        const auto isNothing = [](const auto& price) { return price.each.isZero(); };
        if (!material->meantAsNothing && std::any_of(pack.prices.begin(), pack.prices.end(), isNothing)) {
            m_job.unpriced.push_back({material->id, material->name, pack.name});
            return;
        }
        Pack out{pack.id.text(), supplier->name, {{material->name, pack.amount}}, {}, std::nullopt};
        for (const auto& price : pack.prices) out.prices.push_back({price.from, price.each});
        m_job.offers.push_back({out.id, material->name, pack.name, false, pack.pricedOn});
        const bool isBesides = material->kind == MaterialKind::Blank || material->kind == MaterialKind::Packing;
        if (isBesides) m_job.besides.push_back(out);
        m_job.bulk.push_back(std::move(out));
    }

    void addKit(const catalogue::Kit& kit) {
        const auto* supplier = withId(m_supplies.suppliers, kit.supplier);
        if (!supplier) return;
        Pack out{kit.id.text(), supplier->name, {}, {{Count::of(1), kit.price}}, std::nullopt};
        bool isOfUse = false;
        for (const auto& item : kit.items) {
            const auto* material = withId(m_supplies.materials, item.material);
            if (!material) continue;
            auto count = item.count.value();
            if (material->kind == MaterialKind::Stone)
                count =
                    Fraction::ratio(units::Int128{count} * (units::kPpm - kit.shortCount.ppm()), units::kPpm).floor();
            if (count < 1) continue;
            isOfUse = isOfUse || m_taken.count(material->name) > 0;
            out.gives.push_back({material->name, Count::of(count)});
        }
        auto readyCut = readyCutOf(kit);
        if (isOfUse) {
            m_job.offers.push_back({out.id, {}, kit.name, false, kit.pricedOn});
            m_job.kits.push_back(out);
        }
        if (!readyCut) return;
        out.id += "/templates";
        out.prices.front().each = *kit.priceWithTemplates;
        out.gives.push_back({std::move(*readyCut), Count::of(1)});
        m_job.offers.push_back({out.id, {}, kit.name, true, kit.pricedOn});
        m_job.kits.push_back(std::move(out));
    }

    /// The templates that come with it, where the job takes them.
    std::optional<std::string> readyCutOf(const catalogue::Kit& kit) const {
        if (!kit.priceWithTemplates || kit.design.isNone()) return std::nullopt;
        for (std::size_t i = 0; i < m_lines.size(); ++i)
            for (const auto& place : m_lines[i].places) {
                if (place.design != kit.design) continue;
                auto name = m_supplies.words.readyCut(nameOf(m_lines[i], place, m_job.lines[i]));
                if (m_taken.count(name) > 0) return name;
            }
        return std::nullopt;
    }

    const Supplies& m_supplies;
    const std::vector<catalogue::OrderLine>& m_lines;
    Job& m_job;
    std::set<std::string> m_taken;
};

/// What n pieces take, as a band over n. The needs of the pieces made lie in a band over their number m, and m lies
/// between n ÷ (1 − s) − 1/2, where less than half a piece is expected to be spoiled, and n ÷ (1 − s) + 1, where that
/// is rounded up.
NeedBand withSpares(NeedBand band, const needs::SpareRule& rule) {
    using catalogue::Spares;
    const auto share = rule.spoilage.ppm();
    if (rule.when == Spares::Never || share < 1 || share >= units::kPpm) return band;
    const auto below = rule.when == Spares::WhereExpected ? Fraction::ratio(1, 2) : Fraction{};
    band.once = band.once - band.perPiece * below;
    band.extra = band.extra + band.perPiece * (below + Fraction::of(1));
    band.perPiece = band.perPiece * Fraction::ratio(units::kPpm, units::kPpm - share);
    return band;
}

NeedBand bandOf(const JobTake& take) {
    const auto perSheet = take.perSheet;
    switch (take.kind) {
    case NeedKind::Stones: return {take.material, needs::takenFor(take, 1), {}, Fraction::of(1)};
    case NeedKind::Cuts:
        // ceil(n / lifts) < n / lifts + 1, and once more for the sheet: below n / (lifts perSheet) + 1 / perSheet + 1.
        return {take.material,
                Fraction::ratio(1, units::Int128{take.lifts} * perSheet),
                {},
                Fraction::ratio(1, perSheet) + Fraction::of(1)};
    case NeedKind::Templates:
    case NeedKind::ReadyCut:
    case NeedKind::ForOrder: return {take.material, {}, needs::takenFor(take, 1), {}};
    case NeedKind::Things: return {take.material, needs::takenFor(take, 1), {}, {}};
    }
    return {};
}

} // namespace

int64_t Job::pieces() const {
    int64_t sum = 0;
    for (const auto& line : lines) sum += line.pieces;
    return sum;
}

const Offer* Job::offer(const std::string& id) const {
    const auto at = std::lower_bound(offers.begin(), offers.end(), id,
                                     [](const Offer& offer, const std::string& wanted) { return offer.id < wanted; });
    return at != offers.end() && at->id == id ? &*at : nullptr;
}

base::Result<Job> jobOf(const std::vector<catalogue::OrderLine>& lines, const Supplies& supplies,
                        layout::FitMemo& fits) {
    if (lines.empty()) return base::fail(Fault::EmptyOrder, "order");
    Job job;
    job.spares = supplies.spares;
    const auto spares = needs::sparesOf(lines, job.spares);
    Takes takes(supplies, lines, fits);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        auto line = takes.lineOf(lines[i], i);
        if (!line) return base::fail(line.error());
        line->spares = spares[i];
        job.lines.push_back(std::move(*line));
    }
    Offers(supplies, lines, job).fill();
    return job;
}

void setPieces(Job& job, int64_t pieces) {
    auto& line = job.lines.front();
    line.pieces = pieces;
    line.spares.pieces = line.spares.all = needs::sparesFor(pieces, job.spares);
    line.spares.of = pieces;
}

catalogue::OrderLine lineOf(const catalogue::Design& design, const std::vector<catalogue::Material>& materials,
                            int64_t pieces) {
    auto line = catalogue::lineOf(design);
    if (!withId(materials, line.baseMaterial)) line.baseMaterial = {};
    line.quantity = Count::of(pieces);
    return line;
}

std::vector<MaterialCount> needsOf(const Job& job) {
    std::vector<std::pair<std::string, Fraction>> sums;
    for (const auto& line : job.lines)
        for (const auto& take : line.takes) {
            const auto taken = needs::takenFor(take, line.piecesTaking(take));
            const auto at =
                std::find_if(sums.begin(), sums.end(), [&](const auto& sum) { return sum.first == take.material; });
            if (at == sums.end())
                sums.emplace_back(take.material, taken);
            else
                at->second = at->second + taken;
        }
    std::vector<MaterialCount> needs;
    for (const auto& [material, sum] : sums) needs.push_back({material, Count::of(sum.ceiling())});
    return needs;
}

BuyingStrategies strategiesOf(const Job& job) {
    BuyingStrategies strategies{{}, job.shelf, job.kits, job.bulk, job.besides, job.suppliers};
    for (const auto& take : job.lines.front().takes) {
        const auto band = take.of == MaterialKind::Packing ? bandOf(take) : withSpares(bandOf(take), job.spares);
        const auto at = std::find_if(strategies.needs.begin(), strategies.needs.end(),
                                     [&](const NeedBand& known) { return known.material == band.material; });
        if (at == strategies.needs.end()) {
            strategies.needs.push_back(band);
            continue;
        }
        at->perPiece = at->perPiece + band.perPiece;
        at->once = at->once + band.once;
        at->extra = at->extra + band.extra;
    }
    return strategies;
}

} // namespace sp::supply

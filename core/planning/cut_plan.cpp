// SPDX-License-Identifier: MIT
#include "core/planning/cut_plan.h"

#include "core/layout/free_places.h"
#include "core/needs/line_check.h"
#include "core/needs/shared_sets.h"
#include "core/needs/sheet_use.h"
#include "core/needs/spares.h"
#include "core/planning/messages.h"

#include <algorithm>
#include <utility>

namespace sp::planning {

namespace {

using catalogue::MaterialKind;
using units::Length;

constexpr std::size_t kMaxForLeft = 600; ///< pieces on a sheet; what is left between more of them is of no use

class Lists {
  public:
    explicit Lists(const catalogue::PriceBook& book)
        : m_book(book) {}

    base::Done add(const base::Id& id, const catalogue::Placement& place, const std::string& name, std::int64_t count) {
        const auto* known = m_book.find(id);
        if (!known) return base::fail(Fault::MaterialGone, name, name);
        const auto& material = known->material;
        if (material.kind == MaterialKind::Blank) return {};
        auto list =
            std::find_if(m_lists.begin(), m_lists.end(), [&](const CutList& other) { return other.material.id == id; });
        if (list == m_lists.end()) list = m_lists.insert(list, CutList{material, {}});
        const auto size = needs::pieceOf(material.sheet, place.width, place.height);
        for (auto& piece : list->pieces)
            if (piece.name == name && piece.size == size) {
                piece.count += count;
                return {};
            }
        list->pieces.push_back({name, size, count});
        return {};
    }

    std::string stoneName(const base::Id& id) const {
        const auto* stone = m_book.find(id);
        return stone ? stone->material.name : std::string("stone");
    }

    std::vector<CutList> take() { return std::move(m_lists); }

  private:
    const catalogue::PriceBook& m_book;
    std::vector<CutList> m_lists;
};

/// "Lantern"; of one of several places "Lantern, Front".
std::string nameOf(const catalogue::OrderLine& line, const catalogue::Placement& place) {
    const auto& title = needs::titleOf(line, place);
    return line.places.size() == 1 || place.place.empty() ? title : title + ", " + place.place;
}

/// A design on a line, with what it is called.
struct LineDesign {
    const catalogue::OrderLine* line;
    const catalogue::Placement* place;
    std::string name;
    bool hasOwnSet;    ///< else an earlier one's templates serve it
    std::int64_t made; ///< pieces, the spares counted in
};

std::vector<LineDesign> designsOf(std::span<const catalogue::OrderLine> lines, const catalogue::PriceBook& book) {
    const auto sets = needs::sharedSets(lines, book);
    const auto spares = needs::sparesOf(lines, needs::spareRuleOf(book.shop));
    std::vector<LineDesign> designs;
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t k = 0; k < lines[i].places.size(); ++k) {
            const auto& place = lines[i].places[k];
            designs.push_back({&lines[i], &place, nameOf(lines[i], place), needs::hasOwnSet(sets, i, k),
                               lines[i].quantity.value() + spares[i].pieces});
        }
    return designs;
}

base::Done checkLineSize(const catalogue::OrderLine& line) {
    if (needs::isNumberOfPieces(line.quantity.value()) && std::ranges::all_of(line.places, needs::hasSize)) return {};
    return base::fail(Fault::NothingToCut, line.title,
                      line.title.empty() ? base::asValue(Note::ALine) : base::asValue(line.title));
}

void findLeft(CutSheet& sheet, const CutList& list, const layout::Sheet& size) {
    if (sheet.places.size() > kMaxForLeft) return;
    const auto& traits = list.material.sheet;
    const auto place = [](Length left, Length low, Length right, Length high) {
        return layout::FreePlaces::Place{left.nanometres(), low.nanometres(), right.nanometres(), high.nanometres()};
    };
    layout::FreePlaces free(
        place(traits.margin, traits.margin, size.width - traits.margin, size.height - traits.margin));
    for (const auto& [number, at] : sheet.places) {
        const auto& piece = list.pieces[number].size;
        const Length wide = at.turned ? piece.height : piece.width;
        const Length high = at.turned ? piece.width : piece.height;
        free.take(place(at.x - traits.gap, at.y - traits.gap, at.x + wide + traits.gap, at.y + high + traits.gap));
    }
    const auto areaOf = [](const layout::Piece& piece) {
        return piece.width.millimetres() * piece.height.millimetres();
    };
    for (const auto& box : free.places()) {
        const layout::Piece piece{Length::fromNanometres(box.right - box.left),
                                  Length::fromNanometres(box.high - box.low)};
        if (areaOf(piece) <= areaOf(sheet.left)) continue;
        sheet.left = piece;
        sheet.leftAt = {Length::fromNanometres(box.left), Length::fromNanometres(box.low), false};
    }
}

/// The sizes of a list, each once, and how what was laid of a size is dealt out to the pieces that have it.
class Sizes {
  public:
    explicit Sizes(const CutList& list)
        : m_list(list) {
        const bool mayTurn = !list.material.sheet.oneWay;
        for (std::size_t i = 0; i < list.pieces.size(); ++i) {
            const auto& piece = list.pieces[i];
            const layout::Piece across{piece.size.height, piece.size.width};
            const auto same = std::find_if(m_mixed.begin(), m_mixed.end(), [&](const layout::MixedPiece& other) {
                return other.size == piece.size || (mayTurn && other.size == across);
            });
            const auto at = static_cast<std::size_t>(same - m_mixed.begin());
            if (same == m_mixed.end()) {
                m_mixed.push_back({piece.name, piece.size, piece.count});
                m_pieces.push_back({i});
            } else {
                same->count += piece.count;
                m_pieces[at].push_back(i);
            }
        }
        m_dealt.resize(list.pieces.size());
        m_next.resize(m_mixed.size());
    }

    const std::vector<layout::MixedPiece>& mixed() const { return m_mixed; }

    /// The next place of that size, in the order in which sheets are cut.
    CutPlace deal(std::size_t size, layout::Position at) {
        auto& next = m_next[size];
        while (m_dealt[m_pieces[size][next]] == m_list.pieces[m_pieces[size][next]].count) ++next;
        const auto piece = m_pieces[size][next];
        ++m_dealt[piece];
        if (m_list.pieces[piece].size != m_mixed[size].size) at.turned = !at.turned;
        return {piece, at};
    }

  private:
    const CutList& m_list;
    std::vector<layout::MixedPiece> m_mixed;
    std::vector<std::vector<std::size_t>> m_pieces; ///< of each size
    std::vector<std::int64_t> m_dealt;              ///< of each piece
    std::vector<std::size_t> m_next;                ///< of each size, into m_pieces
};

/// What was laid, sheet by sheet and on a sheet from its left to its right, with the pieces it is.
std::vector<std::vector<CutPlace>> dealt(std::vector<layout::Placement> laid, std::size_t sheets, Sizes& sizes) {
    std::sort(laid.begin(), laid.end(), [](const layout::Placement& a, const layout::Placement& b) {
        return std::tuple(a.sheet, a.at.x, a.at.y) < std::tuple(b.sheet, b.at.x, b.at.y);
    });
    std::vector<std::vector<CutPlace>> places(sheets);
    for (const auto& placed : laid)
        places[static_cast<std::size_t>(placed.sheet)].push_back(sizes.deal(placed.piece, placed.at));
    return places;
}

/// Sheets cut alike become one, the one with most left last.
void gather(CutPlan& plan, std::vector<std::vector<CutPlace>> sheets, const layout::Sheet& size) {
    const auto order = [](const CutPlace& a, const CutPlace& b) {
        return std::tuple(a.at.x, a.at.y, a.piece, a.at.turned) < std::tuple(b.at.x, b.at.y, b.piece, b.at.turned);
    };
    for (auto& places : sheets) {
        std::sort(places.begin(), places.end(), order);
        const auto same = std::find_if(plan.sheets.begin(), plan.sheets.end(),
                                       [&](const CutSheet& other) { return other.places == places; });
        if (same != plan.sheets.end()) {
            ++same->count;
            continue;
        }
        auto& sheet = plan.sheets.emplace_back();
        sheet.places = std::move(places);
        findLeft(sheet, plan.list, size);
    }
    const auto area = [](const CutSheet& sheet) {
        return sheet.left.width.millimetres() * sheet.left.height.millimetres();
    };
    std::stable_sort(plan.sheets.begin(), plan.sheets.end(),
                     [&](const CutSheet& a, const CutSheet& b) { return area(a) < area(b); });
}

} // namespace

base::Result<std::vector<CutList>> cutLists(std::span<const catalogue::OrderLine> lines,
                                            const catalogue::PriceBook& book) {
    Lists found(book);
    for (const auto& line : lines)
        if (auto ok = checkLineSize(line); !ok) return base::fail(ok.error());
    const auto designs = designsOf(lines, book);
    if (const auto& sheet = book.shop.usualTemplate; !sheet.isNone())
        for (const auto& [line, place, name, hasOwnSet, made] : designs) {
            if (place->templatesOnWall || !hasOwnSet) continue;
            for (const auto& stone : place->stones)
                if (auto ok = found.add(sheet, *place, name + ", " + found.stoneName(stone.material), 1); !ok)
                    return base::fail(ok.error());
        }
    if (const auto& tape = book.shop.usualTape; !tape.isNone()) {
        const auto* known = book.find(tape);
        const auto need = known ? needs::needOfTape(known->material) : needs::MaterialNeed{};
        for (const auto& [line, place, name, hasOwnSet, made] : designs)
            if (auto ok = found.add(tape, *place, name, needs::cutsFor(need, made)); !ok) return base::fail(ok.error());
    }
    for (const auto& [line, place, name, hasOwnSet, made] : designs) {
        if (line->customersGarment || line->baseMaterial.isNone()) continue;
        if (auto ok = found.add(line->baseMaterial, *place, name, made); !ok) return base::fail(ok.error());
    }
    return found.take();
}

base::Result<CutPlan> planCut(const CutList& list, const layout::MixedEffort& effort) {
    const auto& traits = list.material.sheet;
    const auto rules = needs::rulesOf(traits);
    CutPlan plan;
    plan.list = list;
    Sizes sizes(list);
    if (traits.form == catalogue::SheetForm::Roll) {
        const auto roll = layout::packRoll(traits.width, sizes.mixed(), rules, effort);
        if (!roll) return base::fail(base::about(list.material.name, roll.error()));
        plan.count = plan.bound = 1;
        plan.length = roll->length;
        plan.lengthBound = roll->bound;
        plan.proven = roll->proven;
        gather(plan, dealt(roll->placements, 1, sizes), {traits.width, roll->length});
        return plan;
    }
    // Every sheet costs the same one unit: the cheapest plan is the one with the fewest sheets.
    const layout::Sheet size{traits.width, traits.height};
    const std::vector<layout::MixedSheet> kinds{
        {list.material.name, size, units::Money::fromMicros(units::kMicrosPerUnit), std::nullopt}};
    const auto packed = layout::packSheets(kinds, sizes.mixed(), rules, effort);
    if (!packed) return base::fail(base::about(list.material.name, packed.error()));
    plan.count = static_cast<std::int64_t>(packed->sheets.size());
    plan.bound = packed->sheetBound; // of one kind of sheet what they cost bounds no more
    plan.proven = plan.count == plan.bound;
    gather(plan, dealt(packed->placements, packed->sheets.size(), sizes), size);
    return plan;
}

} // namespace sp::planning

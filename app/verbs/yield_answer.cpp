// SPDX-License-Identifier: MIT
#include "app/verbs/problem_reader.h"
#include "app/verbs/problem_verbs.h"
#include "app/words/words.h"
#include "core/layout/fit.h"
#include "core/supply/kit_yield.h"
#include "core/units/apportion.h"
#include "core/units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::verbs {

using base::Code;
using units::Count;

namespace {

struct SheetOfKit {
    std::size_t line;
    Count sheets;
    Count uses;
    layout::Sheet sheet;
};

struct NeedOfPiece {
    std::size_t line;
    layout::Piece piece;
    layout::FitRules rules;
};

template<class... Values>
[[noreturn]] void refuseMaterial(Code code, const std::string& material, const char* source, const Values&... values) {
    throw ProblemError{words::makeError(code, material, source, values...)};
}

class YieldReader {
  public:
    supply::YieldProblem read(ProblemObject& problem) {
        m_kits = problem.has("kits") ? problem.count("kits") : Count::of(1);
        if (m_kits.value() < 1 || m_kits.value() > 1'000'000)
            refuseMaterial(Code::OutOfRange, "kits",
                           QT_TRANSLATE_NOOP("App", "There must be 1 to 1,000,000 kits: change kits."));
        readKit(problem.object("kit"));
        readPiece(problem.object("piece"));
        readShares(problem, "loss", &supply::CountedStock::loss);
        readShares(problem, "short", &supply::CountedStock::shortShare);
        cutSheets();
        return std::move(m_problem);
    }

  private:
    std::size_t lineOf(const std::string& material) {
        auto& lines = m_problem.lines;
        const auto found =
            std::find_if(lines.begin(), lines.end(), [&](const auto& line) { return line.material == material; });
        if (found != lines.end()) return static_cast<std::size_t>(found - lines.begin());
        if (lines.size() >= 10'000)
            refuseMaterial(Code::TooLarge, material, QT_TRANSLATE_NOOP("App", "A kit has 10,000 materials at most."));
        lines.push_back({material, std::nullopt, std::nullopt, std::nullopt});
        return lines.size() - 1;
    }

    supply::CountedStock& counted(std::size_t line) {
        auto& at = m_problem.lines[line];
        if (at.sheets)
            refuseMaterial(
                Code::Invalid, at.material,
                QT_TRANSLATE_NOOP("App", "%1 is counted in one place and cut from sheets in another: make them agree."),
                at.material);
        if (!at.counted) at.counted.emplace();
        return *at.counted;
    }

    supply::SheetStock& sheets(std::size_t line) {
        auto& at = m_problem.lines[line];
        if (at.counted)
            refuseMaterial(
                Code::Invalid, at.material,
                QT_TRANSLATE_NOOP("App", "%1 is counted in one place and cut from sheets in another: make them agree."),
                at.material);
        if (!at.sheets) {
            at.sheets.emplace();
            at.sheets->perPiece = Count();
        }
        return *at.sheets;
    }

    Count pooled(Count inKit, const std::string& material) const {
        if (inKit.isNegative() || inKit.value() > supply::kMaxStones / m_kits.value())
            refuseMaterial(
                Code::OutOfRange, material,
                QT_TRANSLATE_NOOP("App", "All kits together must hold 0 to 1,000,000,000 of %1: change its count."),
                material);
        return Count::of(inKit.value() * m_kits.value());
    }

    void readKit(ProblemObject kit) {
        const auto price = kit.has("price") ? kit.money("price") : units::Money();
        m_problem.price = units::allOf(price, m_kits);
        for (auto& item : kit.list("items")) {
            const auto material = item.text("material");
            const auto line = lineOf(material);
            if (item.has("count")) {
                counted(line).bought += pooled(item.count("count"), material);
            } else {
                sheets(line);
                const auto count = pooled(item.count("sheets"), material);
                const auto size = item.size("sheet");
                const auto uses = item.has("uses") ? item.count("uses") : Count::of(1);
                m_sheets.push_back({line, count, uses, {size.width, size.height}});
            }
            item.done();
        }
        kit.done();
    }

    void readPiece(ProblemObject piece) {
        for (auto& need : piece.list("needs")) {
            const auto material = need.text("material");
            const auto line = lineOf(material);
            if (need.has("count")) {
                const auto count = need.count("count");
                if (count.isNegative() || count.value() > supply::kMaxStones)
                    refuseMaterial(
                        Code::OutOfRange, material,
                        QT_TRANSLATE_NOOP("App", "A piece takes 0 to 1,000,000,000 of %1: change its count."),
                        material);
                counted(line).perPiece += count;
            } else {
                const auto size = need.size("size");
                layout::FitRules rules;
                if (need.has("margin")) rules.margin = need.length("margin");
                if (need.has("gap")) rules.gap = need.length("gap");
                addCut({line, {size.width, size.height}, rules}, material);
            }
            need.done();
        }
        piece.done();
    }

    /// The same cut named twice is needed twice; of one material only one size can be fitted.
    void addCut(const NeedOfPiece& need, const std::string& material) {
        for (const auto& known : m_needs) {
            if (known.line != need.line) continue;
            const bool isTurned = known.piece.width == need.piece.height && known.piece.height == need.piece.width;
            if ((known.piece != need.piece && !isTurned) || known.rules != need.rules)
                refuseMaterial(Code::Ambiguous, material,
                               QT_TRANSLATE_NOOP("App", "%1 is needed in two sizes: name one."), material);
            sheets(need.line).perPiece += Count::of(1);
            return;
        }
        sheets(need.line).perPiece = Count::of(1);
        m_needs.push_back(need);
    }

    void readShares(ProblemObject& problem, std::string_view key, units::Rate supply::CountedStock::*share) {
        if (!problem.has(key)) return;
        for (const auto& [material, rate] : problem.shares(key)) {
            const auto found = std::find_if(m_problem.lines.begin(), m_problem.lines.end(),
                                            [&wanted = material](const auto& line) { return line.material == wanted; });
            if (found == m_problem.lines.end() || !found->counted)
                refuseMaterial(
                    Code::NotFound, material,
                    QT_TRANSLATE_NOOP("App", "%1 names %2, which is not among the counted materials: check its name."),
                    key, material);
            (*found->counted).*share = rate;
        }
    }

    void cutSheets() {
        for (const auto& lot : m_sheets) {
            std::int64_t perSheet = 0;
            for (const auto& need : m_needs)
                if (need.line == lot.line) perSheet = fitted(lot, need);
            m_problem.lines[lot.line].sheets->lots.push_back({lot.sheets, Count::of(perSheet), lot.uses});
        }
    }

    /// A piece that is larger than what the margin leaves of the sheet is an answer (none fits), not an error.
    std::int64_t fitted(const SheetOfKit& lot, const NeedOfPiece& need) const {
        const auto twice = need.rules.margin + need.rules.margin;
        const auto width = lot.sheet.width - twice;
        const auto height = lot.sheet.height - twice;
        const bool isSheet = lot.sheet.width > units::Length{} && lot.sheet.height > units::Length{};
        if (isSheet && !need.rules.margin.isNegative() && (width <= units::Length{} || height <= units::Length{}))
            return 0;
        const auto fit = layout::fitSheet(lot.sheet, need.piece, need.rules);
        if (fit) return fit->count;
        const bool isLarger = (need.piece.width > width || need.piece.height > height) &&
                              (need.piece.height > width || need.piece.width > height);
        if (fit.error().code == Code::TooLarge && isLarger) return 0;
        throw ProblemError{fit.error()};
    }

    Count m_kits;
    supply::YieldProblem m_problem;
    std::vector<SheetOfKit> m_sheets;
    std::vector<NeedOfPiece> m_needs;
};

} // namespace

base::Result<Json> yieldAnswer(std::string_view problemText) {
    const auto problem = readProblem(problemText, [](ProblemObject& object) { return YieldReader().read(object); });
    if (!problem) return base::fail(problem.error());
    const auto answer = supply::kitYield(*problem);
    if (!answer) return base::fail(answer.error());
    Json left = Json::array();
    for (std::size_t i = 0; i < answer->left.size(); ++i) {
        const auto& item = answer->left[i];
        const bool isSheets = !item.inPieces && problem->lines[i].sheets.has_value();
        left.push_back({{"material", item.material},
                        {item.inPieces ? "pieces"
                         : isSheets    ? "sheets"
                                       : "count",
                         item.count.value()}});
    }
    const auto probability = [](double odds) { return fmt::format("{:.4f}", odds); };
    Json odds = Json::array();
    for (const auto& chance : answer->odds)
        odds.push_back({{"pieces", chance.pieces.value()}, {"probability", probability(chance.probability)}});
    Json json{{"pieces", answer->pieces.value()},
              {"sure", answer->sure.value()},
              {"likely",
               {{"pieces", answer->likely.pieces.value()}, {"probability", probability(answer->likely.probability)}}},
              {"limiting", answer->limiting},
              {"left", std::move(left)},
              {"odds", std::move(odds)},
              {"cost_each", nullptr}};
    if (answer->costEach) {
        const units::Currency currency;
        json["cost_each"] = units::formatExact(units::shownEachOf(problem->price, answer->sure, currency), currency);
    }
    return json;
}

} // namespace sp::verbs

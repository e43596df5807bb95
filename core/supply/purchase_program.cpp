// SPDX-License-Identifier: MIT
#include "core/supply/purchase_program.h"

#include "core/supply/purchase_basket.h"
#include "core/supply/purchase_plan.h"
#include "core/supply/purchase_ties.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

namespace sp::supply {

using std::int64_t;

namespace {

/// More of a pack than any cheapest plan holds: all of a need, or all of a sum to be reached, by it alone.
int64_t mostOf(const Model& model, const ModelPack& pack) {
    int64_t most = pack.lastFrom();
    for (const auto& give : pack.gives)
        if (give.units > 0) most = std::max(most, (model.needs[at(give.material)] + give.units - 1) / give.units);
    const ModelSupplier& supplier = model.suppliers[at(pack.supplier)];
    const int64_t sum = std::max(supplier.minimum, supplier.freeFrom >= kNever ? 0 : supplier.freeFrom);
    int64_t least = pack.tiers.front().each;
    for (const auto& tier : pack.tiers) least = std::min(least, tier.each);
    if (least > 0) most = std::max(most, (sum + least - 1) / least);
    return std::min(most, pack.most);
}

/// Lines of a programme, broken before they grow too long to be read.
class Writer {
  public:
    void term(int64_t factor, char kind, std::size_t a, std::optional<std::size_t> b = std::nullopt) {
        if (factor == 0) return;
        m_text += factor < 0 ? " - " : " + ";
        m_text += std::to_string(std::abs(factor)) + " ";
        name(kind, a, b);
        if (m_text.size() - m_lineStart > 200) line();
    }
    void name(char kind, std::size_t a, std::optional<std::size_t> b = std::nullopt) {
        m_text += kind;
        m_text += std::to_string(a);
        if (b) m_text += "_" + std::to_string(*b);
    }
    void text(std::string_view words) { m_text += words; }
    void line() {
        m_text += "\n";
        m_lineStart = m_text.size();
    }
    void end(std::string_view relation, int64_t bound) {
        m_text += std::string(relation) + std::to_string(bound);
        line();
    }
    std::string taken() && { return std::move(m_text); }

  private:
    std::string m_text;
    std::size_t m_lineStart = 0;
};

/// Variables: x packs of a pack at a price, b whether that price is used, y whether a supplier is ordered from, z
/// whether it ships free.
class ProgramOf {
  public:
    explicit ProgramOf(const Model& model)
        : m_model(model) {}

    std::string write() {
        m_out.text("Minimize");
        m_out.line();
        m_out.text(" obj:");
        eachPrice([&](std::size_t p, std::size_t t, int64_t, int64_t) {
            m_out.term(m_model.packs[p].tiers[t].each, 'x', p, t);
        });
        for (std::size_t s = 0; s < m_model.suppliers.size(); ++s) {
            m_out.term(m_model.suppliers[s].shipping, 'y', s);
            m_out.term(-m_model.suppliers[s].shipping, 'z', s);
        }
        m_out.text(" + 0 none");
        m_out.line();
        m_out.text("Subject To");
        m_out.line();
        prices();
        needs();
        suppliers();
        m_out.text("Bounds");
        m_out.line();
        m_out.text(" none <= 1");
        m_out.line();
        variables();
        m_out.text("End");
        m_out.line();
        return std::move(m_out).taken();
    }

  private:
    /// Calls with the pack, the price and the least and the most packs at it.
    template<class Take>
    void eachPrice(Take take) const {
        for (std::size_t p = 0; p < m_model.packs.size(); ++p) {
            const ModelPack& pack = m_model.packs[p];
            const int64_t most = mostOf(m_model, pack);
            for (std::size_t t = 0; t < pack.tiers.size(); ++t) {
                const int64_t last = t + 1 < pack.tiers.size() ? std::min(most, pack.tiers[t + 1].from - 1) : most;
                if (pack.tiers[t].from <= last) take(p, t, pack.tiers[t].from, last);
            }
        }
    }

    void prices() {
        std::vector<std::vector<std::size_t>> used(m_model.packs.size());
        eachPrice([&](std::size_t p, std::size_t t, int64_t first, int64_t last) {
            used[p].push_back(t);
            m_out.term(1, 'x', p, t);
            m_out.term(-last, 'b', p, t);
            m_out.end(" <= ", 0);
            m_out.term(1, 'x', p, t);
            m_out.term(-first, 'b', p, t);
            m_out.end(" >= ", 0);
            m_out.term(1, 'b', p, t);
            m_out.term(-1, 'y', at(m_model.packs[p].supplier));
            m_out.end(" <= ", 0);
        });
        for (std::size_t p = 0; p < used.size(); ++p) {
            if (used[p].size() < 2) continue;
            for (const std::size_t t : used[p]) m_out.term(1, 'b', p, t);
            m_out.end(" <= ", 1);
        }
    }

    void needs() {
        for (std::size_t m = 0; m < m_model.needs.size(); ++m) {
            if (m_model.needs[m] < 1) continue;
            eachPrice([&](std::size_t p, std::size_t t, int64_t, int64_t) {
                for (const auto& give : m_model.packs[p].gives)
                    if (at(give.material) == m) m_out.term(give.units, 'x', p, t);
            });
            m_out.end(" >= ", m_model.needs[m]);
        }
    }

    void suppliers() {
        for (std::size_t s = 0; s < m_model.suppliers.size(); ++s) {
            const ModelSupplier& supplier = m_model.suppliers[s];
            const auto goods = [&] {
                eachPrice([&](std::size_t p, std::size_t t, int64_t, int64_t) {
                    if (at(m_model.packs[p].supplier) == s) m_out.term(m_model.packs[p].tiers[t].each, 'x', p, t);
                });
            };
            if (supplier.minimum > 0) {
                goods();
                m_out.term(-supplier.minimum, 'y', s);
                m_out.end(" >= ", 0);
            }
            m_out.term(1, 'z', s);
            m_out.term(-1, 'y', s);
            m_out.end(" <= ", 0);
            if (supplier.freeFrom < kNever) {
                goods();
                m_out.term(-supplier.freeFrom, 'z', s);
            } else {
                m_out.term(-1, 'z', s);
            }
            m_out.end(" >= ", 0);
        }
    }

    void variables() {
        m_out.text("Generals");
        m_out.line();
        eachPrice([&](std::size_t p, std::size_t t, int64_t, int64_t) {
            m_out.text(" ");
            m_out.name('x', p, t);
            m_out.line();
        });
        m_out.text("Binaries");
        m_out.line();
        eachPrice([&](std::size_t p, std::size_t t, int64_t, int64_t) {
            m_out.text(" ");
            m_out.name('b', p, t);
            m_out.line();
        });
        for (std::size_t s = 0; s < m_model.suppliers.size(); ++s)
            for (const char kind : {'y', 'z'}) {
                m_out.text(" ");
                m_out.name(kind, s);
                m_out.line();
            }
    }

    const Model& m_model;
    Writer m_out;
};

std::string_view nextWord(std::string_view& line) {
    const auto first = line.find_first_not_of(" \t\r*");
    if (first == std::string_view::npos) return line = {};
    line.remove_prefix(first);
    const auto word = line.substr(0, line.find_first_of(" \t\r"));
    line.remove_prefix(word.size());
    return word;
}

template<class Number>
std::optional<Number> numberOf(std::string_view word) {
    Number number{};
    const auto read = std::from_chars(word.data(), word.data() + word.size(), number);
    if (word.empty() || read.ec != std::errc() || read.ptr != word.data() + word.size()) return std::nullopt;
    return number;
}

/// The packs bought, or nothing where a line cannot be read or is no plan of this model.
std::optional<std::vector<int64_t>> countsOf(const Model& model, std::string_view lines) {
    constexpr double kWhole = 1e-4;
    std::vector<int64_t> counts(model.packs.size(), 0);
    while (!lines.empty()) {
        const auto end = std::min(lines.find('\n'), lines.size());
        std::string_view line = lines.substr(0, end);
        lines.remove_prefix(std::min(end + 1, lines.size()));
        const auto number = nextWord(line);
        if (number.empty()) continue;
        const auto name = nextWord(line);
        const auto value = numberOf<double>(nextWord(line));
        if (name.empty() || !value || !std::isfinite(*value)) return std::nullopt;
        if (name.front() != 'x') continue;
        const auto pack = numberOf<std::size_t>(name.substr(1, name.find('_') - 1));
        if (!pack || *pack >= counts.size()) return std::nullopt;
        const double whole = std::round(*value);
        if (std::abs(*value - whole) > kWhole * std::max(1.0, std::abs(whole)) || whole < 0 || whole > 1e12)
            return std::nullopt;
        counts[*pack] += static_cast<int64_t>(whole);
        const ModelPack& of = model.packs[*pack];
        if (counts[*pack] > mostOf(model, of) || (counts[*pack] > 0 && of.cost(counts[*pack]) >= kNever))
            return std::nullopt;
    }
    return counts;
}

} // namespace

base::Result<std::string> purchaseProgram(const PurchaseProblem& problem) {
    const auto made = modelled(problem);
    if (!made) return base::fail(made.error());
    return ProgramOf(made->model).write();
}

void takeSolution(const PurchaseProblem& problem, std::string_view solution, PurchasePlan& plan) {
    auto made = modelled(problem);
    if (!made || made->impossible) return;
    const Model& model = made->model;
    const auto end = std::min(solution.find('\n'), solution.size());
    const std::string_view says = solution.substr(0, end);
    const auto counts = countsOf(model, solution.substr(end));
    constexpr std::string_view kAt = "value"; // after the word for what it minimizes
    const auto value = says.find(kAt);
    if (!counts || value == std::string_view::npos) return;
    std::string_view rest = says.substr(value + kAt.size());
    const auto claimed = numberOf<double>(nextWord(rest));
    Basket basket(model);
    for (std::size_t p = 0; p < counts->size(); ++p) basket.set(p, (*counts)[p]);
    if (!basket.isPlan() || !claimed) return;
    SearchResult found{*counts, basket.cost(), 0};
    const auto known = plan.cost.micros() / model.granule;
    if (found.cost > known) return;
    // Sums are whole granules: within less than one of what it claims as the least, nothing is cheaper.
    const bool isProof = says.starts_with("Optimal") && std::abs(*claimed - static_cast<double>(found.cost)) < 0.5;
    found.bound = isProof ? found.cost : plan.bound.micros() / model.granule;
    if (found.cost == known) { // the plan known stays: it was chosen among its equals
        if (isProof) plan.bound = plan.cost;
        plan.proven = plan.bound == plan.cost;
        return;
    }
    plan = *planned(problem, *made, isProof ? bestOfEqual(model, found, kTieSteps) : found).plan;
}

} // namespace sp::supply

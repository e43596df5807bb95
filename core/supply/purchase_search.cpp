// SPDX-License-Identifier: MIT
#include "core/supply/purchase_search.h"

#include "core/supply/purchase_ascent.h"
#include "core/supply/purchase_labels.h"
#include "core/supply/purchase_relaxation.h"

#include <algorithm>
#include <cmath>
#include <queue>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr int64_t kWorkBetweenChecks = 100'000;
constexpr int64_t kWorkForTies = 4'000'000;
constexpr std::size_t kFewLabels = 300;
constexpr std::size_t kManyLabels = 60'000;
constexpr int kSteps = 40;
constexpr int kLeafSteps = 16;
constexpr int64_t kMaxCap = int64_t{1} << 42; // no plan within the model's sums costs more

struct Plan {
    std::vector<int64_t> counts;
    int64_t cost = kNever;
    int64_t value = 0;
    int suppliers = 0;
    int64_t packs = 0;

    /// The order of the contract; equal in all of it, the earlier packs win, so that the answer is stable.
    bool isBetterThan(const Plan& other) const {
        if (cost != other.cost) return cost < other.cost;
        if (value != other.value) return value > other.value;
        if (suppliers != other.suppliers) return suppliers < other.suppliers;
        if (packs != other.packs) return packs < other.packs;
        return counts > other.counts;
    }
};

struct Node {
    int64_t bound = 0; ///< granules
    std::size_t number = 0;
    std::vector<State> states;
    int branch = -1;      ///< the supplier to decide next; -1: all are decided
    bool isTight = false; ///< the bound has been raised by multipliers, which are kept
    int64_t slack = 0;    ///< how far above the bound the next search of this node looks
    Multipliers multipliers;

    bool operator<(const Node& other) const { // for a queue with the least bound on top
        if (bound != other.bound) return bound > other.bound;
        return number < other.number;
    }
};

class Search {
  public:
    Search(const Model& model, const PlanEffort& effort)
        : m_model(model)
        , m_effort(effort)
        , m_market(model, effort.steps) {
        tick(0);
    }

    SearchResult run(const std::vector<int64_t>& plan) {
        if (!m_market.isWhole()) return {};
        m_used.assign(m_model.suppliers.size(), 0);
        std::vector<Bought> known;
        for (std::size_t p = 0; p < plan.size(); ++p)
            if (plan[p] > 0) known.push_back({static_cast<int>(p), plan[p]});
        if (!plan.empty()) offer(known);
        start();
        const int64_t bound = explore();
        SearchResult result;
        if (m_best.cost < kNever && bound >= m_best.cost) {
            m_seeksTies = true;
            m_tieWorkEnd = m_work + kWorkForTies;
            m_queue = std::move(m_closed);
            explore();
        }
        result.counts = m_best.counts;
        result.cost = m_best.cost;
        result.bound = std::min(bound, m_best.cost);
        if (m_model.isReduced || !m_market.isExact())
            result.bound = std::min({m_best.cost, m_model.floor, result.bound});
        return result;
    }

  private:
    // ---- plans

    /// The real cost of what is bought, when the suppliers take the orders.
    void offer(const std::vector<Bought>& bought) {
        Plan plan;
        plan.counts.assign(m_model.packs.size(), 0);
        for (const auto& item : bought) plan.counts[at(item.pack)] += item.count;
        std::vector<int64_t> goods;
        for (const auto& supplier : m_model.suppliers) goods.push_back(supplier.goods);
        plan.cost = m_model.cost;
        for (const auto& item : bought) {
            auto& count = plan.counts[at(item.pack)];
            if (count <= 0) continue;
            const ModelPack& pack = m_model.packs[at(item.pack)];
            const int64_t cost = pack.cost(count);
            if (cost >= kNever) return;
            goods[at(pack.supplier)] += cost;
            plan.cost += cost;
            plan.value += pack.value * count;
            plan.packs += count;
            m_used[at(pack.supplier)] = m_round;
            count = -count; // counted; turned back below
        }
        for (auto& count : plan.counts) count = std::abs(count);
        for (std::size_t s = 0; s < goods.size(); ++s) {
            const ModelSupplier& supplier = m_model.suppliers[s];
            if (supplier.goods == 0 && m_used[s] != m_round) continue;
            ++plan.suppliers;
            if (goods[s] < supplier.minimum) {
                ++m_round;
                return;
            }
            if (goods[s] < supplier.freeFrom) plan.cost += supplier.shipping;
        }
        ++m_round;
        if (plan.isBetterThan(m_best)) m_best = std::move(plan);
    }

    /// Kits as given, everything else at its cheapest from the allowed suppliers.
    void offerAround(const Relaxation& relaxation, const std::vector<int64_t>& kits) {
        std::vector<Bought> bought;
        std::vector<int64_t> needs = needsAfter(kits);
        for (std::size_t k = 0; k < kits.size(); ++k)
            if (kits[k] > 0) bought.push_back({m_market.kits()[k], kits[k]});
        for (int m = 0; m < m_market.materials(); ++m) {
            if (relaxation.all(m).best()[at(needs[at(m)])].money >= kNever) return;
            relaxation.all(m).collect(static_cast<int>(needs[at(m)]), bought);
        }
        offer(bought);
        tick(static_cast<int64_t>(m_model.packs.size()));
    }

    std::vector<int64_t> needsAfter(const std::vector<int64_t>& kits) const {
        std::vector<int64_t> needs = m_model.needs;
        for (int m = 0; m < m_market.materials(); ++m)
            for (const auto& use : m_market.kitsOf(m))
                needs[at(m)] = std::max<int64_t>(0, needs[at(m)] - use.units * kits[at(use.kit)]);
        return needs;
    }

    /// Goods of kits and of the cheapest cover, sums and shipping left aside.
    int64_t looseCost(const Relaxation& relaxation, const std::vector<int64_t>& kits) const {
        int64_t cost = 0;
        for (const int k : relaxation.kits()) {
            const int64_t price = m_market.kit(k).cost(kits[at(k)]);
            if (price >= kNever) return kNever;
            cost += price;
        }
        const std::vector<int64_t> needs = needsAfter(kits);
        for (int m = 0; m < m_market.materials(); ++m)
            cost = std::min(kNever, cost + relaxation.all(m).best()[at(needs[at(m)])].money);
        return cost;
    }

    /// From what the materials chose on their own to kit counts that agree, bettered one kit at a time.
    void offerFromChoice(const Relaxation& relaxation) {
        const auto choice = relaxation.choice();
        std::vector<int64_t> most(m_market.kits().size(), 0);
        std::vector<int64_t> least(m_market.kits().size(), 0);
        for (const int k : relaxation.kits()) {
            const auto& copies = choice.copies[at(k)];
            most[at(k)] = *std::max_element(copies.begin(), copies.end());
            least[at(k)] = *std::min_element(copies.begin(), copies.end());
        }
        for (auto kits : {least, most}) {
            int64_t now = looseCost(relaxation, kits);
            bool better = true;
            for (int round = 0; round < 20 && better; ++round) {
                better = false;
                for (const int k : relaxation.kits())
                    for (const int64_t step : {int64_t{-1}, int64_t{1}}) {
                        if (kits[at(k)] + step < 0 || kits[at(k)] + step > m_market.kitMost(k)) continue;
                        kits[at(k)] += step;
                        const int64_t cost = looseCost(relaxation, kits);
                        if (cost < now) {
                            now = cost;
                            better = true;
                        } else {
                            kits[at(k)] -= step;
                        }
                    }
                tick(static_cast<int64_t>(relaxation.kits().size()) * m_market.materials() * 4);
            }
            if (now < kNever) offerAround(relaxation, kits);
            if (relaxation.kits().empty()) break;
        }
    }

    // ---- the tree over the suppliers

    /// Plans at or above this many granules are of no interest now.
    int64_t limit() const {
        return std::min(m_cap, m_best.cost >= kNever ? kNever : m_best.cost + (m_seeksTies ? 1 : 0));
    }

    bool tick(int64_t work) {
        m_work += work + m_market.takeWork();
        if (m_work >= m_nextCheck) {
            m_nextCheck = m_work + kWorkBetweenChecks;
            if (m_effort.isStopped && m_effort.isStopped()) m_isStopped = true;
        }
        if (m_work > m_effort.steps) m_isStopped = true;
        if (m_seeksTies && m_work > m_tieWorkEnd) m_isStopped = true;
        return m_isStopped;
    }

    Multipliers plainMultipliers(std::size_t sums) const {
        Multipliers plain = m_rootMultipliers;
        plain.goods.assign(sums, 0);
        return plain;
    }

    /// Shares in proportion to what each material costs in bulk.
    void splitByBulkPrice(const Relaxation& relaxation) {
        std::vector<double> price(m_model.needs.size(), 0);
        for (int m = 0; m < m_market.materials(); ++m) {
            const int64_t need = m_market.need(m);
            const int64_t money = relaxation.all(m).best()[at(need)].money;
            if (need > 0 && money < kNever) price[at(m)] = static_cast<double>(money) / static_cast<double>(need);
        }
        for (std::size_t k = 0; k < m_market.kits().size(); ++k) {
            const auto& gives = m_market.kit(static_cast<int>(k)).gives;
            double whole = 0;
            for (const auto& give : gives) whole += price[at(give.material)] * static_cast<double>(give.units);
            std::vector<int> shares;
            for (const auto& give : gives) {
                const double part = whole > 0 ? price[at(give.material)] * static_cast<double>(give.units) / whole
                                              : 1.0 / static_cast<double>(gives.size());
                shares.push_back(static_cast<int>(std::floor(part * static_cast<double>(kShareScale))));
            }
            m_rootMultipliers.shares.push_back(std::move(shares));
        }
    }

    void start() {
        std::vector<State> states(m_model.suppliers.size(), State::Off);
        for (const auto& pack : m_model.packs) states[at(pack.supplier)] = State::Open;
        for (std::size_t s = 0; s < states.size(); ++s) {
            const ModelSupplier& supplier = m_model.suppliers[s];
            if (states[s] == State::Open && supplier.shipping == 0 && supplier.minimum <= supplier.goods)
                states[s] = State::Paid; // ordering there is never a decision
        }
        Relaxation root(m_market, states, false);
        splitByBulkPrice(root);
        Multipliers multipliers = plainMultipliers(0);
        int64_t bound = raise(root, multipliers, kSteps);
        m_rootMultipliers.shares = multipliers.shares;
        offerFromChoice(root);
        shrinkSuppliers(states);
        push(states, root, bound, multipliers);
        m_closed = m_queue;
    }

    /// Starts from the suppliers that the loose optimum uses and drops them one by one while that is cheaper.
    void shrinkSuppliers(std::vector<State> states) {
        if (m_best.cost >= kNever) return;
        for (bool better = true; better && !m_isStopped;) {
            better = false;
            std::vector<char> used(states.size(), 0);
            for (std::size_t i = 0; i < m_best.counts.size(); ++i)
                if (m_best.counts[i] > 0) used[at(m_model.packs[i].supplier)] = 1;
            for (std::size_t s = 0; s < states.size(); ++s)
                if (!used[s] && m_model.suppliers[s].goods == 0) states[s] = State::Off;
            for (std::size_t s = 0; s < states.size() && !m_isStopped; ++s) {
                if (states[s] != State::Open || m_model.suppliers[s].goods > 0) continue;
                auto fewer = states;
                fewer[s] = State::Off;
                const int64_t before = m_best.cost;
                Relaxation relaxation(m_market, fewer, false);
                if (relaxation.evaluate(plainMultipliers(0)) >= kScaledNever) continue;
                offerFromChoice(relaxation);
                if (m_best.cost < before) {
                    better = true;
                    break;
                }
            }
        }
    }

    /// The open supplier whose goods the relaxed plan spends most on; any open one when it uses none.
    int branchOf(const std::vector<State>& states, const Relaxation& relaxation) const {
        std::vector<Bought> bought;
        const auto choice = relaxation.choice();
        std::vector<int64_t> kits(m_market.kits().size(), 0);
        for (const int k : relaxation.kits())
            kits[at(k)] = *std::max_element(choice.copies[at(k)].begin(), choice.copies[at(k)].end());
        const auto needs = needsAfter(kits);
        for (std::size_t k = 0; k < kits.size(); ++k)
            if (kits[k] > 0) bought.push_back({m_market.kits()[k], kits[k]});
        for (int m = 0; m < m_market.materials(); ++m)
            relaxation.all(m).collect(static_cast<int>(needs[at(m)]), bought);
        std::vector<int64_t> goods(states.size(), -1);
        for (std::size_t s = 0; s < states.size(); ++s)
            if (states[s] == State::Open) goods[s] = 0;
        for (const auto& item : bought) {
            const ModelPack& pack = m_model.packs[at(item.pack)];
            if (states[at(pack.supplier)] == State::Open) goods[at(pack.supplier)] += pack.cost(item.count);
        }
        const auto most = std::max_element(goods.begin(), goods.end());
        return most == goods.end() || *most < 0 ? -1 : static_cast<int>(most - goods.begin());
    }

    void push(const std::vector<State>& states, const Relaxation& relaxation, int64_t bound,
              const Multipliers& multipliers) {
        if (bound >= kNever) return;
        Node node;
        node.bound = bound;
        node.number = ++m_nodes;
        node.states = states;
        node.branch = branchOf(states, relaxation);
        node.multipliers = multipliers;
        m_queue.push(std::move(node));
    }

    void branch(const Node& node) {
        const auto s = at(node.branch);
        const ModelSupplier& supplier = m_model.suppliers[s];
        for (const State state : {State::Off, State::Paid, State::Free}) {
            if (state == State::Off && supplier.goods > 0) continue;
            if (state == State::Free && (supplier.freeFrom >= kNever || supplier.shipping == 0)) continue;
            auto states = node.states;
            states[s] = state;
            Relaxation relaxation(m_market, states, false);
            tick(20'000);
            Multipliers multipliers = plainMultipliers(0);
            const int64_t bound = std::max(node.bound, roundedUp(relaxation.evaluate(multipliers)));
            if (bound >= kNever) continue;
            if (state == State::Off && bound < limit()) offerFromChoice(relaxation);
            push(states, relaxation, bound, multipliers);
        }
    }

    /// Runs the tree; answers with a bound on everything not excluded.
    int64_t explore() {
        int64_t open = kNever;
        while (!m_queue.empty()) {
            if (m_queue.top().bound >= limit()) break;
            if (m_isStopped || tick(1'000)) return std::min(open, m_queue.top().bound);
            Node node = m_queue.top();
            m_queue.pop();
            if (node.branch >= 0) {
                branch(node);
                continue;
            }
            Relaxation relaxation(m_market, node.states, true);
            if (!node.isTight) {
                node.multipliers = plainMultipliers(relaxation.sums().size());
                node.bound = std::max(node.bound, raise(relaxation, node.multipliers, kSteps));
                node.isTight = true;
                offerFromChoice(relaxation);
                m_queue.push(node);
                continue;
            }
            node.slack = std::max<int64_t>(4, node.slack == 0 ? node.bound / 1000 : node.slack * 2);
            m_cap = std::min(kMaxCap, node.bound + node.slack);
            m_next = kNever;
            const bool isComplete = decideKits(relaxation, node.multipliers);
            m_cap = kNever;
            if (!isComplete) {
                open = std::min(open, node.bound);
            } else if (m_next < std::min(limit(), kMaxCap)) {
                node.bound = std::max(node.bound, m_next);
                m_queue.push(node);
            }
        }
        return std::min(open, limit());
    }

    /// Raises the bound (granules) of the relaxation; leaves the best multipliers and their tables.
    int64_t raise(Relaxation& relaxation, Multipliers& multipliers, int steps) {
        return raiseBound(m_market, relaxation, multipliers,
                          {steps, m_best.cost, limit(), [this](int64_t work) { return tick(work); }});
    }

    // ---- kits, then goods sums

    struct Branch {
        Relaxation& relaxation;
        Relaxation& sums; ///< the same state, its multipliers fitted to the kits decided
        std::vector<int64_t> kits;
        std::vector<int64_t> needs;
        int64_t kitPrice = 0; ///< scaled
        bool isComplete = true;
    };

    bool decideKits(Relaxation& relaxation, const Multipliers& multipliers) {
        relaxation.evaluate(multipliers);
        Relaxation sums(m_market, relaxation.states(), true);
        Branch branch{relaxation, sums, std::vector<int64_t>(m_market.kits().size(), 0), m_model.needs};
        decideKit(branch, 0);
        return branch.isComplete;
    }

    int64_t boundOf(const Branch& branch, std::size_t decided) const {
        int64_t bound = branch.relaxation.fixedPart() + branch.kitPrice;
        for (int m = 0; m < m_market.materials(); ++m)
            bound = std::min(kScaledNever, bound + branch.relaxation.undecided(m, decided, branch.needs[at(m)]));
        return bound;
    }

    void decideKit(Branch& branch, std::size_t decided) {
        if (m_isStopped || tick(50)) {
            branch.isComplete = false;
            return;
        }
        if (decided == branch.relaxation.kits().size()) {
            reachSums(branch);
            return;
        }
        const int k = branch.relaxation.kits()[decided];
        struct Child {
            int64_t bound;
            int64_t count;
            int64_t price;
        };
        std::vector<Child> children;
        const auto needs = branch.needs;
        const int64_t priceBefore = branch.kitPrice;
        for (int64_t count = 0; count <= m_market.kitMost(k); ++count) {
            const int64_t price = branch.relaxation.kitPrice(k, count);
            if (price >= kScaledNever) continue;
            take(branch, needs, k, count);
            branch.kitPrice = priceBefore + price;
            const int64_t bound = boundOf(branch, decided + 1);
            if (isOpen(roundedUp(bound))) children.push_back({bound, count, price});
        }
        tick(m_market.kitMost(k) * m_market.materials());
        std::stable_sort(children.begin(), children.end(),
                         [](const Child& a, const Child& b) { return a.bound < b.bound; });
        for (const auto& child : children) {
            if (!isOpen(roundedUp(child.bound))) continue;
            take(branch, needs, k, child.count);
            branch.kitPrice = priceBefore + child.price;
            decideKit(branch, decided + 1);
        }
        branch.needs = needs;
        branch.kits[at(k)] = 0;
        branch.kitPrice = priceBefore;
    }

    /// Whether a part with this bound is searched now; if not, the node comes back for it.
    bool isOpen(int64_t bound) {
        if (bound < limit()) return true;
        m_next = std::min(m_next, bound);
        return false;
    }

    void take(Branch& branch, const std::vector<int64_t>& needs, int k, int64_t count) const {
        branch.kits[at(k)] = count;
        for (const auto& give : m_market.kit(k).gives)
            branch.needs[at(give.material)] = std::max<int64_t>(0, needs[at(give.material)] - give.units * count);
    }

    void reachSums(Branch& branch) {
        const Relaxation& relaxation = branch.relaxation;
        int64_t spent = relaxation.shipping() + m_model.cost;
        for (const int k : relaxation.kits()) spent += m_market.kit(k).cost(branch.kits[at(k)]);
        int64_t loose = spent;
        for (int m = 0; m < m_market.materials(); ++m)
            loose = std::min(kNever, loose + relaxation.all(m).best()[at(branch.needs[at(m)])].money);
        if (!isOpen(loose)) return;
        offerAround(relaxation, branch.kits);
        if (relaxation.sums().empty()) return;

        LabelSearch::Task task;
        task.needs = branch.needs;
        task.goods.assign(relaxation.sums().size(), 0);
        for (std::size_t c = 0; c < relaxation.sums().size(); ++c)
            for (const int k : relaxation.kits())
                if (m_market.kit(k).supplier == relaxation.sums()[c])
                    task.goods[c] += m_market.kit(k).cost(branch.kits[at(k)]);
        task.spent = spent;
        fitSums(branch, task);
        LabelSearch labels(m_market, branch.sums, [this](int64_t work) { return tick(work); });
        if (!isOpen(roundedUp(labels.boundOf(task)))) return;
        for (const std::size_t most : {kFewLabels, kManyLabels}) {
            task.limit = limit();
            task.mostLabels = most;
            const auto outcome = labels.run(task);
            if (outcome.plan) offerWithKits(*outcome.plan, branch.kits);
            if (!outcome.isComplete) continue;
            if (!outcome.plan) m_next = std::min(m_next, task.limit);
            return;
        }
        branch.isComplete = false;
    }

    /// Prices of the sums for these kits, by steps from the node's own.
    void fitSums(Branch& branch, const LabelSearch::Task& task) {
        Relaxation& relaxation = branch.sums;
        const std::size_t sums = relaxation.sums().size();
        std::vector<int> best = branch.relaxation.multipliers().goods;
        std::vector<double> goods(sums);
        for (std::size_t c = 0; c < sums; ++c) goods[c] = best[c] / static_cast<double>(kScale);
        relaxation.evaluateSums(best);
        LabelSearch labels(m_market, relaxation, [this](int64_t work) { return tick(work); });
        int64_t bestBound = labels.boundOf(task);
        int64_t now = bestBound;
        double pace = 1;
        for (int step = 0; step < kLeafSteps && roundedUp(bestBound) < limit() && pace > 0.05; ++step) {
            auto bought = task.goods;
            for (int m = 0; m < m_market.materials(); ++m) relaxation.addGoods(m, task.needs[at(m)], bought);
            double norm = 0;
            std::vector<double> missing(sums);
            for (std::size_t c = 0; c < sums; ++c) {
                missing[c] = static_cast<double>(relaxation.sum(c) - bought[c]);
                if (missing[c] < 0 && goods[c] <= 0) missing[c] = 0;
                norm += missing[c] * missing[c];
            }
            if (norm <= 0) break;
            const double aim = static_cast<double>(std::min(limit(), m_best.cost));
            const double room = aim - static_cast<double>(now) / static_cast<double>(kScale);
            for (std::size_t c = 0; c < sums; ++c)
                goods[c] = std::clamp(goods[c] + pace * std::max(room, 1.0) / norm * missing[c], 0.0, 0.9997);
            const auto next = roundedMultipliers(goods, {}).goods;
            relaxation.evaluateSums(next);
            tick(workOfRelaxation(m_market, relaxation));
            now = labels.boundOf(task);
            if (now > bestBound) {
                bestBound = now;
                best = next;
            } else {
                pace /= 1.5;
            }
        }
        relaxation.evaluateSums(best);
    }

    void offerWithKits(std::vector<Bought> bought, const std::vector<int64_t>& kits) {
        for (std::size_t k = 0; k < kits.size(); ++k)
            if (kits[k] > 0) bought.push_back({m_market.kits()[k], kits[k]});
        offer(bought);
    }

    const Model& m_model;
    const PlanEffort& m_effort;
    Market m_market;
    Multipliers m_rootMultipliers;
    std::priority_queue<Node> m_queue;
    std::priority_queue<Node> m_closed; ///< where the search for ties starts again
    std::size_t m_nodes = 0;
    Plan m_best;
    std::vector<int> m_used;
    int m_round = 1;
    bool m_seeksTies = false;
    bool m_isStopped = false;
    int64_t m_cap = kNever;  ///< the node now searched is searched for plans below this
    int64_t m_next = kNever; ///< the least bound among what it left for later
    int64_t m_work = 0;
    int64_t m_nextCheck = 0;
    int64_t m_tieWorkEnd = 0;
};

} // namespace

SearchResult searchPurchase(const Model& model, const std::vector<int64_t>& start, const PlanEffort& effort) {
    return Search(model, effort).run(start);
}

} // namespace sp::supply

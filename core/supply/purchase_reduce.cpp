// SPDX-License-Identifier: MIT
#include "core/supply/purchase_reduce.h"

#include <algorithm>
#include <cmath>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr int64_t kMaxUnits = 50'000;    // of one material within the search
constexpr double kMaxCurveWork = 2e7;    // steps to make the curves of one material
constexpr int64_t kMaxCells = 8'000'000; // packs times units, for memory

class Reducer {
  public:
    explicit Reducer(Model model)
        : m_model(std::move(model)) {}

    Model reduced() {
        const auto wholeFloor = static_cast<int64_t>(std::ceil(priceFloor()));
        for (std::size_t m = 0; m + 1 < m_model.needs.size(); ++m) {
            const int64_t most = mostUnits(static_cast<int>(m));
            if (m_model.needs[m] <= most) continue;
            m_model.isReduced = true;
            std::vector<std::size_t> order;
            for (std::size_t i = 0; i < m_model.packs.size(); ++i)
                for (const auto& give : m_model.packs[i].gives)
                    if (give.material == static_cast<int>(m)) order.push_back(i);
            const auto ratio = [&](std::size_t i) {
                int64_t units = 0;
                for (const auto& give : m_model.packs[i].gives)
                    if (give.material == static_cast<int>(m)) units = give.units;
                return static_cast<double>(m_model.packs[i].tiers.back().each) / static_cast<double>(units);
            };
            std::stable_sort(order.begin(), order.end(),
                             [&](std::size_t a, std::size_t b) { return ratio(a) < ratio(b); });
            for (const std::size_t i : order)
                if (ratio(i) <= 1.5 * ratio(order.front())) buyAhead(i, static_cast<int>(m), most);
            coarsen(m, most);
        }
        m_model.floor = std::max<int64_t>(wholeFloor, 0);
        for (std::size_t i = 0; i < m_model.packs.size(); ++i) {
            if (m_model.bought[i] == 0) continue;
            m_model.packs[i].tiers = {{1, m_model.packs[i].tiers.back().each}};
            m_model.packs[i].most -= m_model.bought[i];
        }
        return std::move(m_model);
    }

  private:
    /// Least price of a unit of each material: bulk packs at their best price; a kit's price is split over what it
    /// gives in proportion to those. No plan can be cheaper than needs times these, nor than the next whole granule.
    long double priceFloor() const {
        std::vector<long double> least(m_model.needs.size(), -1);
        const auto lower = [&least](int material, long double price) {
            auto& now = least[static_cast<std::size_t>(material)];
            if (now < 0 || price < now) now = price;
        };
        const auto bestPrice = [](const ModelPack& pack) {
            int64_t best = pack.tiers.front().each;
            for (const auto& tier : pack.tiers) best = std::min(best, tier.each);
            return static_cast<long double>(best);
        };
        for (const auto& pack : m_model.packs)
            if (!pack.isKit() && pack.gives[0].units > 0)
                lower(pack.gives[0].material, bestPrice(pack) / static_cast<long double>(pack.gives[0].units));
        auto weights = least;
        for (auto& weight : weights)
            if (weight < 0) weight = 1;
        for (const auto& pack : m_model.packs) {
            if (!pack.isKit()) continue;
            long double whole = 0;
            for (const auto& give : pack.gives)
                whole += weights[static_cast<std::size_t>(give.material)] * static_cast<long double>(give.units);
            for (const auto& give : pack.gives)
                lower(give.material,
                      whole <= 0 ? 0 : bestPrice(pack) * weights[static_cast<std::size_t>(give.material)] / whole);
        }
        long double sum = 0;
        for (std::size_t m = 0; m < m_model.needs.size(); ++m)
            if (least[m] > 0) sum += least[m] * static_cast<long double>(m_model.needs[m]);
        return sum * (1 - 1e-12L);
    }

    /// What memory and the time to make its curves allow of one material: a pack of u units takes need^2 / 2u steps.
    int64_t mostUnits(int material) const {
        double perSquare = 0;
        for (const auto& pack : m_model.packs)
            for (const auto& give : pack.gives)
                if (give.material == material && give.units > 0) perSquare += 0.5 / static_cast<double>(give.units);
        const int64_t byMemory =
            std::clamp<int64_t>(kMaxCells / (static_cast<int64_t>(m_model.packs.size()) + 1), 50, kMaxUnits);
        if (perSquare <= 0) return byMemory;
        return std::min(byMemory, std::max<int64_t>(50, static_cast<int64_t>(std::sqrt(kMaxCurveWork / perSquare))));
    }

    /// Counts material `m` in larger units when it still has too many: needs rounded up, packs rounded down.
    void coarsen(std::size_t m, int64_t most) {
        if (m_model.needs[m] <= most) return;
        const int64_t unit = (m_model.needs[m] + most - 1) / most;
        m_model.needs[m] = (m_model.needs[m] + unit - 1) / unit;
        for (auto& pack : m_model.packs)
            for (auto& give : pack.gives)
                if (give.material == static_cast<int>(m)) give.units /= unit;
    }

    void buyAhead(std::size_t i, int material, int64_t most) {
        auto& pack = m_model.packs[i];
        const int64_t need = m_model.needs[static_cast<std::size_t>(material)];
        if (need <= most) return;
        int64_t units = 0;
        for (const auto& give : pack.gives)
            if (give.material == material) units = give.units;
        const int64_t room = pack.most - m_model.bought[i];
        const int64_t count = std::min(room, (need - most / 2) / units);
        if (count < 1 || m_model.bought[i] + count < pack.lastFrom()) return;
        const int64_t spent = m_model.bought[i] * pack.tiers.back().each;
        const int64_t cost = (m_model.bought[i] + count) * pack.tiers.back().each - spent;
        m_model.bought[i] += count;
        m_model.cost += cost;
        m_model.suppliers[static_cast<std::size_t>(pack.supplier)].goods += cost;
        for (const auto& give : pack.gives) {
            auto& left = m_model.needs[static_cast<std::size_t>(give.material)];
            left = std::max<int64_t>(0, left - give.units * count);
        }
    }

    Model m_model;
};

} // namespace

Model reducedModel(Model model) { return Reducer(std::move(model)).reduced(); }

} // namespace sp::supply

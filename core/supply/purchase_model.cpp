// SPDX-License-Identifier: MIT
#include "core/supply/purchase_model.h"

#include "core/supply/messages.h"

#include <algorithm>
#include <numeric>
#include <string_view>
#include <unordered_map>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr int64_t kMaxMoney = int64_t{1} << 40;  // granules in any one sum
constexpr int64_t kMaxCount = 1'000'000'000'000; // stones or packs
constexpr std::size_t kMaxMaterials = 1'000;
constexpr std::size_t kMaxPrices = 100; // of one pack
constexpr int64_t kUnlimited = int64_t{1} << 40;

using Index = std::unordered_map<std::string_view, int>;

base::Done checkedPack(const Pack& pack) {
    if (pack.gives.empty()) return base::fail(Fault::PackGivesNothing, pack.id, pack.id);
    for (const auto& give : pack.gives)
        if (give.count.value() < 1 || give.count.value() > kMaxCount)
            return base::fail(Fault::PackGivesOutOfRange, pack.id, pack.id, give.material);
    if (pack.prices.empty()) return base::fail(Fault::PackWithoutPrice, pack.id, pack.id);
    if (pack.prices.size() > kMaxPrices) return base::fail(Fault::PackWithTooManyPrices, pack.id, pack.id);
    for (const auto& price : pack.prices) {
        if (price.from.value() < 1 || price.from.value() > kMaxCount)
            return base::fail(Fault::PriceFromOutOfRange, pack.id, pack.id);
        if (price.each.isNegative()) return base::fail(Fault::PackPriceNegative, pack.id, pack.id);
    }
    if (pack.atMost && pack.atMost->isNegative()) return base::fail(Fault::PackLimitNegative, pack.id, pack.id);
    return {};
}

base::Done checkedSupplier(const Supplier& supplier) {
    const bool negative = supplier.shipping.isNegative() || supplier.minimum.isNegative() ||
                          (supplier.freeFrom && supplier.freeFrom->isNegative());
    if (!negative) return {};
    return base::fail(Fault::SupplierTermsNegative, supplier.id, supplier.id);
}

/// The breaks of a pack in rising order. Warns when a larger order costs more for each pack.
base::Result<std::vector<PackPrice>> sortedPrices(const Pack& pack, std::vector<base::Message>& warnings) {
    auto prices = pack.prices;
    std::stable_sort(prices.begin(), prices.end(),
                     [](const PackPrice& a, const PackPrice& b) { return a.from < b.from; });
    for (std::size_t i = 1; i < prices.size(); ++i) {
        if (prices[i].from == prices[i - 1].from)
            return base::fail(Fault::PackPricedTwice, pack.id, pack.id, prices[i].from.value());
        if (prices[i].each > prices[i - 1].each)
            warnings.push_back(base::say(Note::PriceRises, pack.id, prices[i].from));
    }
    return prices;
}

int64_t gcdOf(int64_t a, const units::Money& b) { return std::gcd(a, b.micros()); }

class Builder {
  public:
    explicit Builder(const PurchaseProblem& problem)
        : m_problem(problem) {}

    base::Result<Modelled> build() {
        if (const auto done = takeNeeds(); !done) return base::fail(done.error());
        if (const auto done = takeSuppliers(); !done) return base::fail(done.error());
        if (const auto done = takePacks(); !done) return base::fail(done.error());
        dropUnreachableMinimums();
        if (m_out.impossible || !canBeCovered()) return std::move(m_out);
        chooseUnits();
        if (const auto done = checkedSums(); !done) return base::fail(done.error());
        return std::move(m_out);
    }

  private:
    struct Raw { ///< a pack before units are chosen: stones of needed materials
        std::vector<std::pair<int, int64_t>> stones;
    };

    base::Done takeNeeds() {
        if (m_problem.needs.empty()) return base::fail(Fault::NothingNeeded, "needs");
        for (const auto& need : m_problem.needs) {
            if (need.count.isNegative()) return base::fail(Fault::NeedBelowNothing, need.material, need.material);
            if (need.count.value() > kMaxCount) return base::fail(Fault::NeedTooLarge, need.material, need.material);
            const auto [at, isNew] = m_materials.try_emplace(need.material, static_cast<int>(m_stones.size()));
            if (isNew) {
                m_out.materials.push_back(need.material);
                m_out.needs.push_back(need);
                m_stones.push_back(0);
            } else {
                m_out.needs[static_cast<std::size_t>(at->second)].count += need.count;
            }
            m_stones[static_cast<std::size_t>(at->second)] += need.count.value();
            if (m_stones[static_cast<std::size_t>(at->second)] > kMaxCount)
                return base::fail(Fault::NeedTooLarge, need.material, need.material);
        }
        if (m_stones.size() > kMaxMaterials) return base::fail(Fault::TooManyNeeds, "needs");
        for (const auto& item : m_problem.shelf) {
            if (item.count.isNegative() || item.count.value() > kMaxCount)
                return base::fail(Fault::ShelfOutOfRange, item.material, item.material);
            if (const auto at = m_materials.find(item.material); at != m_materials.end()) {
                auto& stones = m_stones[static_cast<std::size_t>(at->second)];
                stones = std::max<int64_t>(0, stones - item.count.value());
            }
        }
        return {};
    }

    base::Done takeSuppliers() {
        int64_t granule = 0;
        for (const auto& supplier : m_problem.suppliers) {
            if (const auto done = checkedSupplier(supplier); !done) return done;
            if (!m_suppliers.try_emplace(supplier.id, static_cast<int>(m_suppliers.size())).second)
                return base::fail(Fault::SupplierTwice, supplier.id, supplier.id);
            granule = gcdOf(gcdOf(gcdOf(granule, supplier.shipping), supplier.minimum),
                            supplier.freeFrom.value_or(units::Money()));
        }
        for (const auto& pack : m_problem.packs)
            for (const auto& price : pack.prices) granule = gcdOf(granule, price.each);
        m_out.model.granule = std::max<int64_t>(granule, 1);
        for (const auto& supplier : m_problem.suppliers) {
            ModelSupplier made;
            made.shipping = supplier.shipping.micros() / m_out.model.granule;
            made.minimum = supplier.minimum.micros() / m_out.model.granule;
            if (supplier.freeFrom) made.freeFrom = supplier.freeFrom->micros() / m_out.model.granule;
            if (made.shipping == 0) made.freeFrom = kNever;
            if (made.shipping > kMaxMoney || made.minimum > kMaxMoney)
                return base::fail(Fault::SupplierSumsTooLarge, supplier.id, supplier.id);
            m_out.model.suppliers.push_back(made);
        }
        return {};
    }

    base::Done takePacks() {
        if (m_problem.packs.size() > kMaxPacks) return base::fail(Fault::TooManyPacks, "packs");
        Index seen;
        for (std::size_t i = 0; i < m_problem.packs.size(); ++i) {
            const Pack& pack = m_problem.packs[i];
            if (const auto done = checkedPack(pack); !done) return done;
            if (!seen.try_emplace(pack.id, 0).second) return base::fail(Fault::PackTwice, pack.id, pack.id);
            const auto supplier = m_suppliers.find(pack.supplier);
            if (supplier == m_suppliers.end())
                return base::fail(Fault::PackOfUnknownSupplier, pack.supplier, pack.id, pack.supplier);
            const auto prices = sortedPrices(pack, m_out.warnings);
            if (!prices) return base::fail(prices.error());
            addPack(i, supplier->second, *prices);
        }
        valuePacks();
        return {};
    }

    void addPack(std::size_t source, int supplier, const std::vector<PackPrice>& prices) {
        const Pack& pack = m_problem.packs[source];
        ModelPack made;
        made.source = source;
        made.supplier = supplier;
        made.most = std::min(kUnlimited, pack.atMost ? pack.atMost->value() : kUnlimited);
        Raw raw;
        for (const auto& give : pack.gives) {
            const auto known = m_materials.try_emplace(give.material, static_cast<int>(m_materials.size()));
            if (known.second) m_out.materials.push_back(give.material);
            const int material = known.first->second;
            const auto index = static_cast<std::size_t>(material);
            if (index >= m_stones.size() || m_stones[index] == 0) continue;
            const auto same = std::find_if(raw.stones.begin(), raw.stones.end(),
                                           [&](const auto& stones) { return stones.first == material; });
            if (same != raw.stones.end())
                same->second += give.count.value();
            else
                raw.stones.emplace_back(material, give.count.value());
        }
        for (const auto& price : prices)
            if (price.from.value() <= made.most)
                made.tiers.push_back({price.from.value(), price.each.micros() / m_out.model.granule});
        if (made.tiers.empty()) return; // its least order is more than can be had
        m_out.model.packs.push_back(std::move(made));
        m_raw.push_back(std::move(raw));
    }

    /// What is left is valued at the least price per stone among packs that give that material alone.
    void valuePacks() {
        m_out.valuePerStone.assign(m_out.materials.size(), -1);
        for (const auto& pack : m_problem.packs) {
            if (pack.gives.size() != 1) continue;
            int64_t least = std::numeric_limits<int64_t>::max();
            for (const auto& price : pack.prices) least = std::min(least, price.each.micros());
            const auto each = static_cast<int64_t>(units::Int128{least} * 1000 / pack.gives[0].count.value());
            auto& value = m_out.valuePerStone[static_cast<std::size_t>(m_materials.at(pack.gives[0].material))];
            if (value < 0 || each < value) value = each;
        }
        for (auto& value : m_out.valuePerStone) value = std::max<int64_t>(value, 0);
        for (auto& made : m_out.model.packs) {
            units::Int128 value = 0;
            for (const auto& give : m_problem.packs[made.source].gives)
                value += units::Int128{give.count.value()} *
                         m_out.valuePerStone[static_cast<std::size_t>(m_materials.at(give.material))];
            made.value = static_cast<int64_t>(std::min<units::Int128>(value, kNever / 1'000'000));
        }
    }

    /// A supplier whose whole range costs less than its minimum takes no order at all.
    void dropUnreachableMinimums() {
        auto& model = m_out.model;
        std::vector<units::Int128> most(model.suppliers.size(), 0);
        for (const auto& pack : model.packs) {
            units::Int128 dearest = 0; // one price holds for all packs of a line
            for (std::size_t t = 0; t < pack.tiers.size(); ++t) {
                const int64_t last = t + 1 < pack.tiers.size() ? pack.tiers[t + 1].from - 1 : pack.most;
                dearest = std::max(dearest, units::Int128{std::min(last, pack.most)} * pack.tiers[t].each);
            }
            most[static_cast<std::size_t>(pack.supplier)] += dearest;
        }
        std::vector<ModelPack> kept;
        std::vector<Raw> keptRaw;
        for (std::size_t i = 0; i < model.packs.size(); ++i) {
            const auto s = static_cast<std::size_t>(model.packs[i].supplier);
            if (most[s] < model.suppliers[s].minimum) {
                for (const auto& stones : m_raw[i].stones) m_dropped.push_back({stones.first, model.packs[i].supplier});
                continue;
            }
            kept.push_back(std::move(model.packs[i]));
            keptRaw.push_back(std::move(m_raw[i]));
        }
        model.packs = std::move(kept);
        m_raw = std::move(keptRaw);
    }

    bool canBeCovered() {
        std::vector<units::Int128> offered(m_stones.size(), 0);
        for (std::size_t i = 0; i < m_raw.size(); ++i)
            for (const auto& [material, stones] : m_raw[i].stones)
                offered[static_cast<std::size_t>(material)] += units::Int128{stones} * m_out.model.packs[i].most;
        for (std::size_t m = 0; m < m_stones.size(); ++m) {
            if (offered[m] >= m_stones[m]) continue;
            m_out.impossible = whyNot(static_cast<int>(m), static_cast<int64_t>(offered[m]));
            return false;
        }
        return true;
    }

    base::Message whyNot(int material, int64_t offered) const {
        const std::string& name = m_out.materials[static_cast<std::size_t>(material)];
        for (const auto& [dropped, supplier] : m_dropped)
            if (dropped == material)
                return base::say(Note::MinimumNotReached, m_problem.suppliers[static_cast<std::size_t>(supplier)].id,
                                 name);
        if (offered == 0) {
            for (const auto& pack : m_problem.packs)
                for (const auto& give : pack.gives)
                    if (give.material == name) return base::say(Note::PacksNotToBeHad, name);
            return base::say(Note::NoPackGives, name);
        }
        return base::say(Note::PacksHoldTooLittle, name, offered, m_stones[static_cast<std::size_t>(material)]);
    }

    void chooseUnits() {
        auto& model = m_out.model;
        std::vector<int64_t> unit(m_stones.size(), 0);
        for (const auto& raw : m_raw)
            for (const auto& [material, stones] : raw.stones)
                unit[static_cast<std::size_t>(material)] = std::gcd(unit[static_cast<std::size_t>(material)], stones);
        for (std::size_t m = 0; m < m_stones.size(); ++m)
            model.needs.push_back(unit[m] == 0 ? 0 : (m_stones[m] + unit[m] - 1) / unit[m]);
        for (std::size_t i = 0; i < m_raw.size(); ++i) {
            for (const auto& [material, stones] : m_raw[i].stones)
                model.packs[i].gives.push_back({material, stones / unit[static_cast<std::size_t>(material)]});
            if (m_raw[i].stones.empty()) model.packs[i].gives.push_back({static_cast<int>(m_stones.size()), 0});
        }
        model.needs.push_back(0);
        model.bought.assign(model.packs.size(), 0);
    }

    /// The dearest way to cover everything must still be a sum the search can hold.
    base::Done checkedSums() const {
        const auto& model = m_out.model;
        units::Int128 sum = 0;
        for (std::size_t m = 0; m < model.needs.size(); ++m) {
            units::Int128 dearest = 0;
            for (const auto& pack : model.packs)
                for (const auto& give : pack.gives)
                    if (give.material == static_cast<int>(m)) {
                        const int64_t count = give.units == 0 ? 1 : (model.needs[m] + give.units - 1) / give.units;
                        for (const auto& tier : pack.tiers)
                            dearest = std::max(dearest, units::Int128{std::max(count, tier.from)} * tier.each);
                    }
            sum += dearest;
        }
        for (const auto& supplier : model.suppliers) sum += units::Int128{supplier.shipping} + supplier.minimum;
        if (sum <= kMaxMoney) return {};
        return base::fail(Fault::PurchaseTooLarge, "needs");
    }

    const PurchaseProblem& m_problem;
    Modelled m_out;
    Index m_materials;
    Index m_suppliers;
    std::vector<int64_t> m_stones; ///< still to buy, by needed material
    std::vector<Raw> m_raw;
    std::vector<std::pair<int, int>> m_dropped; ///< material, supplier
};

} // namespace

int64_t ModelPack::cost(int64_t count) const {
    if (count == 0) return 0;
    if (count < tiers.front().from || count > most) return kNever;
    std::size_t t = tiers.size() - 1;
    while (tiers[t].from > count) --t;
    return count * tiers[t].each;
}

base::Result<Modelled> modelled(const PurchaseProblem& problem) { return Builder(problem).build(); }

} // namespace sp::supply

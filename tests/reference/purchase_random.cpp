// SPDX-License-Identifier: MIT
#include "tests/reference/purchase_random.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace sp::reference {

using supply::Pack;
using units::Count;
using units::Money;

namespace {

class Draw {
  public:
    explicit Draw(std::uint64_t seed)
        : m_engine(seed * 0x9E3779B97F4A7C15ULL + 12345) {
        m_engine.discard(8);
    }
    std::int64_t from(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(m_engine() % static_cast<std::uint64_t>(high - low + 1));
    }
    double unit() { return static_cast<double>(m_engine() >> 11) * 0x1p-53; }
    bool chance(double p) { return unit() < p; }
    double between(double low, double high) { return low + (high - low) * unit(); }

  private:
    std::mt19937_64 m_engine;
};

Money cents(double amount) {
    return Money::fromMicros(std::max<std::int64_t>(1, static_cast<std::int64_t>(std::llround(amount * 100))) * 10'000);
}

void addPrices(Draw& draw, Pack& pack, double each, bool wild) {
    pack.prices.push_back({Count::of(1), cents(each)});
    const std::int64_t breaks = draw.from(0, 2);
    std::int64_t from = 1;
    for (std::int64_t i = 0; i < breaks; ++i) {
        from += draw.from(1, 5);
        each *= draw.between(wild ? 0.8 : 0.88, wild ? 1.02 : 0.98);
        pack.prices.push_back({Count::of(from), cents(each)});
    }
    if (wild && draw.chance(0.3)) pack.atMost = Count::of(draw.from(1, 12));
}

std::string name(char kind, int n) { return kind + std::to_string(n + 1); }

} // namespace

supply::PurchaseProblem randomPurchase(const PurchaseShape& shape, std::uint64_t seed) {
    constexpr std::int64_t kSizes[] = {1, 2, 5, 10, 50, 100};
    Draw draw(seed);
    supply::PurchaseProblem problem;
    for (int s = 0; s < shape.suppliers; ++s) {
        supply::Supplier supplier{name('S', s), cents(draw.between(3, 12)), std::nullopt, Money()};
        if (draw.chance(0.8)) supplier.freeFrom = cents(std::round(draw.between(30, 150)));
        if (draw.chance(0.5)) supplier.minimum = cents(std::round(draw.between(5, 40)));
        if (shape.wild && draw.chance(0.2)) supplier.shipping = Money();
        problem.suppliers.push_back(supplier);
    }
    std::vector<double> gross; // what a gross costs, about
    for (int m = 0; m < shape.materials; ++m) {
        gross.push_back(draw.between(0.6, 3.0));
        const std::int64_t need = draw.from(200, shape.wild ? 4'000 : 9'000);
        problem.needs.push_back({name('M', m), Count::of(need)});
        if (draw.chance(0.4))
            problem.shelf.push_back({name('M', m), Count::of(draw.from(0, shape.wild ? need + 50 : need / 3))});
    }
    int number = 0;
    for (int m = 0; m < shape.materials; ++m)
        for (int s = 0; s < shape.suppliers; ++s) {
            const double dear = draw.between(0.85, 1.2);
            for (int i = 0; i < shape.packSizes; ++i) {
                if (!draw.chance(shape.offered)) continue;
                const std::int64_t size = kSizes[i];
                Pack pack{name('P', number++), name('S', s), {}, {}, std::nullopt};
                const std::int64_t odd = shape.wild && draw.chance(0.3) ? draw.from(-20, 20) : 0;
                pack.gives.push_back({name('M', m), Count::of(size * units::kGross + odd)});
                const double bulk = std::pow(static_cast<double>(size), draw.between(0.86, 0.96));
                addPrices(draw, pack, gross[static_cast<std::size_t>(m)] * dear * bulk, shape.wild);
                problem.packs.push_back(std::move(pack));
            }
        }
    for (int k = 0; k < shape.kits; ++k) {
        Pack pack{name('K', k), name('S', static_cast<int>(draw.from(0, shape.suppliers - 1))), {}, {}, std::nullopt};
        const std::int64_t gives = std::min<std::int64_t>(shape.materials, draw.from(2, 4));
        double worth = 0;
        for (std::int64_t g = 0; g < gives; ++g) {
            const auto m = static_cast<int>(draw.from(0, shape.materials - 1));
            const std::int64_t size = kSizes[draw.from(0, 3)];
            pack.gives.push_back({name('M', m), Count::of(size * units::kGross)});
            worth += gross[static_cast<std::size_t>(m)] * std::pow(static_cast<double>(size), 0.93);
        }
        addPrices(draw, pack, worth * draw.between(0.7, 1.1), shape.wild);
        problem.packs.push_back(std::move(pack));
    }
    return problem;
}

} // namespace sp::reference

// SPDX-License-Identifier: MIT
#include "core/supply/purchase_ascent.h"

#include <algorithm>
#include <cmath>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr int64_t kWorkToRaise = 4'000'000;

std::vector<std::vector<double>> sharesOf(const Multipliers& multipliers) {
    std::vector<std::vector<double>> shares;
    for (const auto& row : multipliers.shares) {
        shares.emplace_back();
        for (const int share : row) shares.back().push_back(share / static_cast<double>(kShareScale));
    }
    return shares;
}

/// The nearest shares that are not negative and add up to one.
void project(std::vector<double>& row) {
    auto sorted = row;
    std::sort(sorted.rbegin(), sorted.rend());
    double sum = 0;
    double shift = 0;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        sum += sorted[i];
        const double candidate = (sum - 1) / static_cast<double>(i + 1);
        if (sorted[i] > candidate) shift = candidate;
    }
    for (auto& value : row) value = std::max(0.0, value - shift);
}

int64_t boundNow(const Market& market, const Relaxation& relaxation) {
    int64_t bound = relaxation.fixedPart();
    for (int m = 0; m < market.materials(); ++m)
        bound = std::min(kScaledNever, bound + relaxation.undecided(m, 0, market.need(m)));
    return bound;
}

/// One step; false when the relaxed choice breaks nothing, so that no step helps.
bool advance(const Market& market, const Relaxation& relaxation, int64_t best, std::vector<double>& goods,
             std::vector<std::vector<double>>& shares, double pace) {
    const auto choice = relaxation.choice();
    const std::size_t sums = relaxation.sums().size();
    std::vector<double> missing(sums, 0);
    std::vector<double> bought(choice.goods.begin(), choice.goods.end());
    std::vector<std::vector<double>> pull(shares.size());
    double norm = 0;
    for (const int k : relaxation.kits()) {
        const ModelPack& pack = market.kit(k);
        double whole = 0;
        double mean = 0;
        auto& row = pull[at(k)];
        for (std::size_t g = 0; g < pack.gives.size(); ++g) {
            row.push_back(static_cast<double>(pack.cost(choice.copies[at(k)][g])));
            whole += row.back() * shares[at(k)][g];
            mean += row.back() / static_cast<double>(pack.gives.size());
        }
        for (auto& value : row) {
            value -= mean;
            norm += value * value;
        }
        for (std::size_t c = 0; c < sums; ++c)
            if (relaxation.sums()[c] == pack.supplier) bought[c] += whole;
    }
    for (std::size_t c = 0; c < sums; ++c) {
        missing[c] = static_cast<double>(relaxation.sum(c)) - bought[c];
        if (missing[c] < 0 && goods[c] <= 0) missing[c] = 0;
        norm += missing[c] * missing[c];
    }
    if (norm <= 0) return false;
    const double now = static_cast<double>(boundNow(market, relaxation)) / static_cast<double>(kScale);
    const double aim = best >= kNever ? 1.05 * now : static_cast<double>(best);
    const double step = pace * std::max(aim - now, 1e-3 * std::abs(aim)) / norm;
    for (std::size_t c = 0; c < sums; ++c) goods[c] = std::clamp(goods[c] + step * missing[c], 0.0, 0.9997);
    for (const int k : relaxation.kits()) {
        for (std::size_t g = 0; g < shares[at(k)].size(); ++g) shares[at(k)][g] += step * pull[at(k)][g];
        project(shares[at(k)]);
    }
    return true;
}

} // namespace

Multipliers roundedMultipliers(const std::vector<double>& goods, const std::vector<std::vector<double>>& shares) {
    Multipliers out;
    for (const double g : goods)
        out.goods.push_back(
            std::clamp(static_cast<int>(std::floor(g * static_cast<double>(kScale))), 0, static_cast<int>(kScale) - 1));
    for (const auto& row : shares) {
        out.shares.emplace_back();
        for (const double share : row)
            out.shares.back().push_back(static_cast<int>(std::floor(share * static_cast<double>(kShareScale) + 1e-9)));
    }
    return out;
}

int64_t raiseBound(const Market& market, Relaxation& relaxation, Multipliers& multipliers, const Ascent& ascent) {
    Multipliers best = multipliers;
    int64_t bestBound = relaxation.evaluate(multipliers);
    const std::size_t sums = relaxation.sums().size();
    std::vector<double> goods(sums, 0);
    for (std::size_t c = 0; c < sums; ++c) goods[c] = multipliers.goods[c] / static_cast<double>(kScale);
    auto shares = sharesOf(multipliers);
    double pace = 1;
    int stale = 0;
    const int64_t work = workOfRelaxation(market, relaxation);
    const auto steps = static_cast<int>(std::clamp<int64_t>(kWorkToRaise / work, 6, ascent.steps));
    for (int step = 0; step < steps && (sums > 0 || !relaxation.kits().empty()); ++step) {
        if (roundedUp(bestBound) >= ascent.enough || bestBound >= kScaledNever) break;
        if (ascent.tick(work)) break;
        if (!advance(market, relaxation, ascent.best, goods, shares, pace)) break;
        const Multipliers next = roundedMultipliers(goods, shares);
        const int64_t bound = relaxation.evaluate(next);
        if (bound > bestBound) {
            bestBound = bound;
            best = next;
            stale = 0;
        } else if (++stale >= 4) {
            stale = 0;
            pace /= 2;
            for (std::size_t c = 0; c < sums; ++c) goods[c] = best.goods[c] / static_cast<double>(kScale);
            shares = sharesOf(best);
            relaxation.evaluate(best);
        }
    }
    multipliers = best;
    relaxation.evaluate(best);
    return roundedUp(bestBound);
}

int64_t workOfRelaxation(const Market& market, const Relaxation& relaxation) {
    int64_t work = 500;
    for (const int k : relaxation.kits())
        work += 3 * market.kitMost(k) * (1 + static_cast<int64_t>(market.kit(k).gives.size()));
    for (int m = 0; m < market.materials(); ++m) {
        work += market.need(m) * (1 + static_cast<int64_t>(relaxation.sums().size()) * 4);
        auto steps = static_cast<int64_t>(relaxation.rest(m).steps().size());
        for (std::size_t c = 0; c < relaxation.sums().size(); ++c) {
            const Curve* curve = relaxation.sumCurve(m, c);
            if (curve == nullptr) continue;
            const auto pairs = steps * static_cast<int64_t>(curve->steps().size());
            work += pairs;
            steps = std::min(pairs, market.need(m) + 1);
        }
        for (const auto& use : market.kitsOf(m))
            work += market.need(m) * (1 + market.need(m) / (2 * std::max<int64_t>(1, use.units)));
    }
    return work;
}

} // namespace sp::supply

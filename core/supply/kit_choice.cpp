// SPDX-License-Identifier: MIT
#include "core/supply/kit_choice.h"

#include "core/supply/kit_of_design.h"

#include <algorithm>

namespace sp::supply {

namespace {

using catalogue::Design;
using catalogue::Kit;

constexpr std::int64_t kKitSteps = 200'000'000; ///< of a search
constexpr std::int64_t kMostForProof = 400;     ///< quantities looked at for what holds for good

/// The job as bought with that kit alone, nothing being on the shelf.
Job onlyWith(Job job, const Kit& kit) {
    const auto key = kit.id.text();
    job.shelf.clear();
    std::erase_if(job.kits, [&](const Pack& pack) { return !pack.id.starts_with(key); });
    return job;
}

/// No cost where that way cannot cover the job, or no plan was found.
base::Result<StrategyCost> costOf(const Job& job, Strategy strategy) {
    const auto found = planStrategy(job, strategy, {kKitSteps});
    if (!found) return base::fail(found.error());
    if (!found->plan) return StrategyCost{};
    return StrategyCost{found->plan->cost, found->plan->bound};
}

bool isProven(const StrategyCost& cost) { return !cost.cost || *cost.cost == cost.bound; }

void findRuns(KitChoice& choice, const Job& job, std::int64_t last) {
    bool areProven = true;
    for (const auto& price : choice.prices) {
        if (price.pieces > last) break;
        areProven = areProven && isProven(price.kit) && isProven(price.bulk);
        const auto isKit = isKitCheaper(price);
        if (!isKit) continue;
        auto& runs = choice.runs;
        if (!runs.empty() && runs.back().isKit == *isKit && runs.back().to == price.pieces - 1)
            runs.back().to = price.pieces;
        else
            runs.push_back({price.pieces, price.pieces, *isKit});
    }
    if (choice.runs.empty() || choice.runs.back().isKit || !areProven) return;
    const auto beyond = provenBeyond(strategiesOf(job));
    if (beyond && *beyond <= choice.runs.back().to + 1) choice.bulkForGoodFrom = choice.runs.back().from;
}

} // namespace

std::optional<bool> isKitCheaper(const KitPrice& price) {
    if (!price.kit.cost && !price.bulk.cost) return std::nullopt;
    return price.kit.cost && (!price.bulk.cost || *price.kit.cost <= *price.bulk.cost);
}

const KitPrice* KitChoice::at(std::int64_t pieces) const {
    const auto found =
        std::find_if(prices.begin(), prices.end(), [&](const KitPrice& price) { return price.pieces == pieces; });
    return found == prices.end() ? nullptr : &*found;
}

bool isServedBy(const Design& design, const Kit& kit) {
    if (!kit.design.isNone() && kit.design == design.id) return true;
    return !design.stones.empty() && std::all_of(design.stones.begin(), design.stones.end(), [&](const auto& stone) {
        return std::any_of(kit.items.begin(), kit.items.end(),
                           [&](const auto& item) { return item.material == stone.material; });
    });
}

base::Result<std::vector<KitChoice>> kitChoices(const Design& design, const Supplies& supplies,
                                                const catalogue::PriceBook& prices, std::int64_t asked,
                                                std::int64_t last, layout::FitMemo& fits,
                                                const std::function<bool()>& isStopped) {
    auto job = jobOf({lineOf(design, supplies.materials, 1)}, supplies, fits);
    if (!job) return base::fail(job.error());
    std::vector<KitChoice> choices;
    std::vector<Job> jobs;
    for (const auto& kit : supplies.kits) {
        if (!isServedBy(design, kit)) continue;
        const auto problem = yieldProblemOf(kit, units::Count::of(1), !supplies.cutsTemplates, design, prices, fits);
        choices.push_back({kit.id,
                           kit.name,
                           problem ? kitYield(*problem) : base::Result<YieldAnswer>(base::fail(problem.error())),
                           {},
                           {},
                           std::nullopt});
        jobs.push_back(onlyWith(*job, kit));
    }
    if (choices.empty()) return choices;
    for (const auto& alone : jobs)
        if (const auto beyond = provenBeyond(strategiesOf(alone)); beyond && *beyond <= kMostForProof)
            last = std::max(last, *beyond - 1);
    std::vector<std::int64_t> quantities;
    for (std::int64_t n = 1; n <= last; ++n) quantities.push_back(n);
    if (asked > last) quantities.push_back(asked);
    for (const auto pieces : quantities) {
        if (isStopped()) break;
        std::optional<StrategyCost> bulk; // the same beside every kit
        for (std::size_t i = 0; i < choices.size(); ++i) {
            setPieces(jobs[i], pieces);
            if (!bulk) {
                const auto found = costOf(jobs[i], Strategy::Bulk);
                if (!found) return base::fail(found.error());
                bulk = *found;
            }
            const auto kit = costOf(jobs[i], Strategy::Kits);
            if (!kit) return base::fail(kit.error());
            choices[i].prices.push_back({pieces, *kit, *bulk});
        }
    }
    for (std::size_t i = 0; i < choices.size(); ++i) findRuns(choices[i], jobs[i], last);
    return choices;
}

} // namespace sp::supply

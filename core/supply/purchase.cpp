// SPDX-License-Identifier: MIT
#include "core/supply/purchase.h"

#include "core/base/overflow.h"
#include "core/supply/messages.h"
#include "core/supply/purchase_improve.h"
#include "core/supply/purchase_model.h"
#include "core/supply/purchase_plain.h"
#include "core/supply/purchase_plan.h"
#include "core/supply/purchase_reduce.h"
#include "core/supply/purchase_search.h"
#include "core/supply/purchase_single.h"
#include "core/supply/purchase_ties.h"

#include <algorithm>

namespace sp::supply {

using std::int64_t;

namespace {

SearchResult cheaper(SearchResult a, SearchResult b) {
    const bool takesB = !b.counts.empty() && (a.counts.empty() || b.cost < a.cost);
    return takesB ? std::move(b) : std::move(a);
}

constexpr int64_t kFirstSteps = 2'000'000; ///< enough for a start that the search can do with

/// A plain plan bettered, from there the search, and what it cannot prove bettered again: none of them makes the plan
/// dearer. Where the search has to look at a part of the need only, the others see the whole of it.
SearchResult searched(const Model& whole, const PlanEffort& effort) {
    const SearchResult plain = plainPurchase(whole);
    SearchResult best = cheaper(plain, improvedPurchase(whole, plain.counts, std::min(effort.steps / 32, kFirstSteps)));
    const Model model = reducedModel(whole);
    SearchResult found = searchPurchase(model, model.isReduced ? std::vector<int64_t>() : best.counts,
                                        {effort.steps / 2, effort.isStopped});
    int64_t bound = std::max(found.bound, plain.bound);
    if (found.counts.empty() && model.isReduced) {
        found = plainPurchase(model);
        bound = std::max(bound, found.bound);
    }
    for (std::size_t p = 0; p < found.counts.size(); ++p) found.counts[p] += model.bought[p];
    best = cheaper(std::move(found), std::move(best)); // of equal ones the search's, which looks at ties
    if (best.cost > bound) best = cheaper(best, improvedPurchase(whole, best.counts, effort.steps / 4));
    best.bound = std::min(bound, best.cost);
    return best;
}

/// Why what only one pack gives cannot be had.
base::Message minimumNotReached(const PurchaseProblem& problem, const Modelled& made, const ModelPack& pack) {
    return base::say(Note::MinimumNotReached, problem.suppliers[at(pack.supplier)].id,
                     made.materials[at(pack.gives.front().material)]);
}

} // namespace

base::Result<PurchaseAnswer> planPurchase(const PurchaseProblem& problem, const PlanEffort& effort) {
    try {
        auto made = modelled(problem);
        if (!made) return base::fail(made.error());
        const Model& model = made->model;
        const auto single = made->impossible ? std::nullopt : singlePurchase(model);
        if (single && single->unreached)
            made->impossible = minimumNotReached(problem, *made, model.packs[*single->unreached]);
        if (made->impossible) {
            PurchaseAnswer answer;
            answer.impossible = std::move(made->impossible);
            answer.warnings = std::move(made->warnings);
            return answer;
        }
        if (std::all_of(model.needs.begin(), model.needs.end(), [](int64_t need) { return need == 0; }))
            return nothingToBuy(problem, *made);
        if (single) return planned(problem, *made, single->found);
        const auto found = searched(model, effort);
        if (found.counts.empty()) return base::fail(Fault::NoPlanFound, "packs");
        return planned(problem, *made,
                       found.cost == found.bound ? bestOfEqual(model, found, std::min(effort.steps / 16, kTieSteps))
                                                 : found);
    } catch (const base::Overflow&) { return base::fail(Fault::PurchaseTooLarge, "needs"); }
}

} // namespace sp::supply

// SPDX-License-Identifier: MIT
#include "app/verbs/problem_reader.h"
#include "app/verbs/problem_verbs.h"
#include "app/words/words.h"
#include "core/supply/plan_figures.h"
#include "core/supply/purchase.h"
#include "core/supply/purchase_program.h"
#include "core/units/apportion.h"
#include "core/units/text.h"

namespace sp::verbs {

namespace {

std::vector<supply::MaterialCount> materialCounts(ProblemObject& object, std::string_view key) {
    std::vector<supply::MaterialCount> counts;
    for (auto& item : object.list(key)) {
        counts.push_back({item.text("material"), item.count("count")});
        item.done();
    }
    return counts;
}

supply::Pack packOf(ProblemObject& object) {
    supply::Pack pack{object.text("id"), object.text("supplier"), materialCounts(object, "gives"), {}, std::nullopt};
    for (auto& price : object.list("prices")) {
        pack.prices.push_back({price.count("from"), price.money("each")});
        price.done();
    }
    if (object.has("at_most")) pack.atMost = object.count("at_most");
    object.done();
    return pack;
}

supply::Supplier supplierOf(ProblemObject& object) {
    supply::Supplier supplier{object.text("id"), {}, std::nullopt, {}};
    if (object.has("shipping")) supplier.shipping = object.money("shipping");
    if (object.has("free_from")) supplier.freeFrom = object.money("free_from");
    if (object.has("minimum")) supplier.minimum = object.money("minimum");
    object.done();
    return supplier;
}

supply::PurchaseProblem purchaseOf(ProblemObject& object) {
    supply::PurchaseProblem problem;
    problem.needs = materialCounts(object, "needs");
    if (object.has("shelf")) problem.shelf = materialCounts(object, "shelf");
    for (auto& pack : object.list("packs")) problem.packs.push_back(packOf(pack));
    for (auto& supplier : object.list("suppliers")) problem.suppliers.push_back(supplierOf(supplier));
    return problem;
}

} // namespace

base::Result<Json> buyAnswer(std::string_view problemText, std::int64_t steps, const Solver& solver) {
    const auto problem = readProblem(problemText, purchaseOf);
    if (!problem) return base::fail(problem.error());
    auto answer = supply::planPurchase(*problem, {steps});
    if (!answer) return base::fail(answer.error());
    if (solver && answer->plan && !answer->plan->proven)
        if (const auto programme = supply::purchaseProgram(*problem))
            if (const auto solution = solver(*programme)) supply::takeSolution(*problem, *solution, *answer->plan);
    Json json = Json::object();
    if (!answer->plan) {
        json["impossible"] = words::text(*answer->impossible);
    } else {
        const units::Currency currency;
        const auto& plan = *answer->plan;
        const auto told = [&currency](units::Money amount) {
            return units::formatExact(units::toMinor(amount.exact(), currency), currency);
        };
        Json packs = Json::array();
        for (const auto& pack : plan.packs) packs.push_back({{"id", pack.id}, {"count", pack.count.value()}});
        Json shipping = Json::array();
        for (const auto& order : plan.orders)
            shipping.push_back({{"supplier", order.supplier}, {"amount", told(order.shipping)}});
        Json left = Json::array();
        for (const auto& item : plan.left) left.push_back({{"material", item.material}, {"count", item.count.value()}});
        json = {{"cost", told(plan.cost)},
                {"bound", units::formatExact(supply::boundInMinor(plan, currency), currency)},
                {"proven", plan.proven},
                {"packs", std::move(packs)},
                {"shipping", std::move(shipping)},
                {"left", std::move(left)}};
    }
    for (const auto& warning : answer->warnings) json["warnings"].push_back(words::text(warning));
    return json;
}

} // namespace sp::verbs

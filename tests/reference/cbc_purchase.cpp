// SPDX-License-Identifier: MIT
#include "tests/reference/cbc_purchase.h"

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

namespace sp::reference {

namespace {

double amount(const units::Money& money) { return static_cast<double>(money.micros()) / 1e6; }

double processorSecondsOfChildren() {
    rusage usage{};
    getrusage(RUSAGE_CHILDREN, &usage);
    const auto seconds = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) / 1e6;
    };
    return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

std::string programOf(const supply::PurchaseProblem& problem) {
    std::map<std::string, std::int64_t> needs;
    for (const auto& need : problem.needs) needs[need.material] += need.count.value();
    for (const auto& item : problem.shelf)
        if (needs.count(item.material) != 0) needs[item.material] -= item.count.value();
    std::ostringstream objective;
    std::ostringstream rows;
    std::ostringstream bounds;
    std::ostringstream integers;
    std::ostringstream binaries;
    objective.precision(15);
    rows.precision(15);
    std::map<std::string, std::ostringstream> cover;
    std::map<std::string, std::ostringstream> goods;
    std::map<std::string, double> sums;
    for (const auto& supplier : problem.suppliers)
        sums[supplier.id] = std::max(amount(supplier.minimum), supplier.freeFrom ? amount(*supplier.freeFrom) : 0.0);
    for (std::size_t p = 0; p < problem.packs.size(); ++p) {
        const auto& pack = problem.packs[p];
        auto prices = pack.prices;
        std::sort(prices.begin(), prices.end(), [](const auto& a, const auto& b) { return a.from < b.from; });
        std::int64_t most = prices.back().from.value();
        for (const auto& give : pack.gives)
            if (needs.count(give.material) != 0) most = std::max(most, needs[give.material] / give.count.value() + 1);
        const double cheapest = amount(prices.back().each);
        if (cheapest > 0) most = std::max(most, static_cast<std::int64_t>(sums[pack.supplier] / cheapest) + 1);
        if (pack.atMost) most = std::min(most, pack.atMost->value());
        std::string one;
        for (std::size_t t = 0; t < prices.size(); ++t) {
            const std::string tail = std::to_string(p) + "_" + std::to_string(t);
            std::string x = "x";
            x += tail;
            std::string b = "b";
            b += tail;
            const std::int64_t from = prices[t].from.value();
            const std::int64_t to = t + 1 < prices.size() ? std::min(most, prices[t + 1].from.value() - 1) : most;
            if (from > to) continue;
            objective << " + " << amount(prices[t].each) << " " << x;
            std::map<std::string, std::int64_t> gives;
            for (const auto& give : pack.gives) gives[give.material] += give.count.value();
            for (const auto& [material, count] : gives) cover[material] << " + " << count << " " << x;
            goods[pack.supplier].precision(15);
            goods[pack.supplier] << " + " << amount(prices[t].each) << " " << x;
            rows << " " << x << " - " << to << " " << b << " <= 0\n";
            rows << " " << x << " - " << from << " " << b << " >= 0\n";
            rows << " " << b << " - y_" << pack.supplier << " <= 0\n";
            one += " + ";
            one += b;
            integers << " " << x << "\n";
            binaries << " " << b << "\n";
        }
        if (!one.empty()) rows << one << " <= 1\n";
    }
    for (const auto& [material, count] : needs)
        if (count > 0)
            rows << (cover[material].str().empty() ? " 0 none" : cover[material].str()) << " >= " << count << "\n";
    for (const auto& supplier : problem.suppliers) {
        const std::string& id = supplier.id;
        objective << " + " << amount(supplier.shipping) << " y_" << id << " - " << amount(supplier.shipping) << " z_"
                  << id;
        binaries << " y_" << id << "\n z_" << id << "\n";
        rows << " z_" << id << " - y_" << id << " <= 0\n";
        const std::string sum = goods[id].str();
        if (sum.empty()) {
            rows << " y_" << id << " <= 0\n";
            continue;
        }
        if (!supplier.minimum.isZero()) rows << sum << " - " << amount(supplier.minimum) << " y_" << id << " >= 0\n";
        if (supplier.freeFrom)
            rows << sum << " - " << amount(*supplier.freeFrom) << " z_" << id << " >= 0\n";
        else
            rows << " z_" << id << " <= 0\n";
    }
    return "Minimize\n obj:" + objective.str() + " + 0 none\nSubject To\n" + rows.str() +
           "Bounds\n none <= 1\nGenerals\n" + integers.str() + "Binaries\n" + binaries.str() + "End\n";
}

} // namespace

bool hasCbc() { return std::system("command -v cbc > /dev/null 2>&1") == 0; }

CbcAnswer solveWithCbc(const supply::PurchaseProblem& problem, const std::string& folder, bool plainly) {
    const std::string program = folder + "/purchase.lp";
    const std::string solution = folder + "/purchase.sol";
    std::ofstream(program) << programOf(problem);
    std::remove(solution.c_str());
    const auto command = [&](const std::string& options) {
        return "cbc '" + program + "' sec " + (plainly ? "300 preprocess off" : "60") + " ratioGap 0 allowableGap 0 " +
               options + " solve solution '" + solution + "' > '" + folder + "/cbc.log' 2>&1";
    };
    const double before = processorSecondsOfChildren();
    const auto start = std::chrono::steady_clock::now();
    const bool ran = std::system(command("").c_str()) == 0 || std::system(command("primalPivot dantzig").c_str()) == 0;
    CbcAnswer answer;
    answer.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    answer.processorSeconds = processorSecondsOfChildren() - before;
    std::ifstream in(solution);
    std::string line;
    std::getline(in, line);
    if (ran && (line.rfind("Infeasible", 0) == 0 || line.rfind("Integer infeasible", 0) == 0)) return answer;
    const auto at = line.find("objective value");
    answer.isAnswered = ran && line.rfind("Optimal", 0) == 0 && at != std::string::npos;
    if (answer.isAnswered) answer.cost = std::stod(line.substr(at + 15));
    return answer;
}

} // namespace sp::reference

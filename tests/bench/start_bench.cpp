// SPDX-License-Identifier: MIT
// Figures to hold against: start to first painted window at most 1.5 times a bare QMainWindow, with 10,000 quotes in
// the book. Runs both programs in turn and compares them pair by pair, from before each is spawned to its first paint.
#include "app/demo/demo_book.h"
#include "app/words/words.h"
#include "core/pricing/price_order.h"
#include "db/messages.h"
#include "tests/support/quote_result.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <random>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

extern char** environ;

namespace {

using namespace sp;

struct Cost {
    double wall = 0; ///< ms
    double cpu = 0;  ///< ms, user and system
};

/// Runs a program that says when it had painted and what CPU time that took (first_paint.h), from before it is spawned
/// until then.
Cost runOnce(const std::vector<std::string>& command) {
    std::vector<char*> words;
    for (const auto& word : command) words.push_back(const_cast<char*>(word.c_str()));
    words.push_back(nullptr);
    int ends[2] = {};
    if (pipe(ends) != 0) return {};
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    posix_spawn_file_actions_addclose(&actions, ends[0]);
    const auto begin = std::chrono::steady_clock::now().time_since_epoch();
    pid_t child = 0;
    const bool runs = posix_spawn(&child, words[0], &actions, nullptr, words.data(), environ) == 0;
    posix_spawn_file_actions_destroy(&actions);
    close(ends[1]);
    std::string said;
    char part[128];
    for (ssize_t got = 0; runs && (got = read(ends[0], part, sizeof part)) > 0;)
        said.append(part, static_cast<std::size_t>(got));
    close(ends[0]);
    if (runs) waitpid(child, nullptr, 0);
    long long painted = 0, cpu = 0;
    if (std::sscanf(said.c_str(), "%lld %lld", &painted, &cpu) != 2) return {};
    const std::chrono::nanoseconds took = std::chrono::nanoseconds(painted) - begin;
    return {std::chrono::duration<double, std::milli>(took).count(), static_cast<double>(cpu) / 1e3};
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

/// A demo book with so many given quotes in it. False when it could not be made.
bool makeBook(const std::filesystem::path& file, int quotes) {
    auto book = demo::createDemoBook(file, db::systemEnvironment());
    if (!book) return false;
    const auto designs = (*book)->designs();
    const auto inputs = (*book)->priceBook({});
    if (!designs || !inputs) return false;
    layout::FitMemo fits;
    const auto filled = (*book)->batch(base::say(db::Note::NewQuote), [&]() -> base::Done {
        for (int i = 0; i < quotes; ++i) {
            auto quote = (*book)->startQuote();
            if (!quote) return base::fail(quote.error());
            const auto& design = (*designs)[static_cast<std::size_t>(i) % designs->size()];
            catalogue::OrderLine line;
            line.title = design.name;
            line.first().width = design.width;
            line.first().height = design.height;
            line.first().stones = design.stones;
            line.baseMaterial = design.usualBase;
            line.quantity = units::Count::of(1 + i % 90);
            quote->order.lines.push_back(line);
            const auto priced = pricing::priceOrder(quote->order, *inputs, fits);
            if (!priced) return base::fail(priced.error());
            const auto version = (*book)->saveDraft(*quote);
            if (!version) return base::fail(version.error());
            quote->version = *version;
            const auto given =
                (*book)->issue(*quote, *inputs, test::resultOf(priced->total), quote->order.quotedOn.plusDays(30));
            if (!given) return base::fail(given.error());
        }
        return {};
    });
    if (!filled) fmt::print(stderr, "{}\n", words::text(filled.error()));
    return filled.has_value();
}

void compare(const char* what, const std::vector<std::string>& bare, const std::vector<std::string>& ours, int runs) {
    std::vector<double> bareWall, bareCpu, ourWall, ourCpu, wallRatio, cpuRatio;
    runOnce(bare);
    runOnce(ours);
    for (int i = 0; i < runs; ++i) {
        const auto a = runOnce(bare);
        const auto b = runOnce(ours);
        bareWall.push_back(a.wall);
        bareCpu.push_back(a.cpu);
        ourWall.push_back(b.wall);
        ourCpu.push_back(b.cpu);
        wallRatio.push_back(b.wall / a.wall);
        cpuRatio.push_back(b.cpu / a.cpu);
    }
    fmt::print("{}\n", what);
    fmt::print("  bare window: wall {:.1f} ms, cpu {:.1f} ms\n", median(bareWall), median(bareCpu));
    fmt::print("  job book:    wall {:.1f} ms, cpu {:.1f} ms\n", median(ourWall), median(ourCpu));
    fmt::print("  ratio:       wall {:.2f}, cpu {:.2f} (medians of {} pairs)\n", median(wallRatio), median(cpuRatio),
               runs);
}

} // namespace

int main(int argc, char** argv) {
    const int quotes = argc > 1 ? std::atoi(argv[1]) : 10'000;
    const int runs = argc > 2 ? std::atoi(argv[2]) : 21;
    setenv("QT_QPA_PLATFORM", "offscreen", 0);
    const auto folder = std::filesystem::temp_directory_path() / fmt::format("start_bench_{}", std::random_device{}());
    std::filesystem::create_directories(folder);
    const auto book = folder / "many.jobbook";
    if (!makeBook(book, quotes)) return 1;
    fmt::print("{} quotes, {:.1f} MB\n", quotes, static_cast<double>(std::filesystem::file_size(book)) / 1e6);
    const std::vector<std::string> bare{BARE_WINDOW};
    const std::vector<std::string> first{BOOK_WINDOW, book.string()};
    compare("first painted window", bare, first, runs);
    compare("the Counter with its price", bare, {BOOK_WINDOW, book.string(), "filled"}, runs);
    std::filesystem::remove_all(folder);
    return 0;
}

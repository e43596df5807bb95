// SPDX-License-Identifier: MIT
#include "core/base/ensure.h"
#include "db/book/book.h"
#include "db/messages.h"
#include "tests/support/quote_result.h"
#include "tests/support/samples.h"
#include "tests/support/temp_folder.h"

#include <benchmark/benchmark.h>

#include <string>

// Figures to hold against: opening, the newest fifty and the last draft must not be felt at the start of the program
// with 10,000 quotes in the book; a commit of one edit within a few milliseconds (it waits for the disk).

using namespace sp;

namespace {

constexpr int kQuotes = 10'000;
constexpr int kStones = 60;
constexpr int kAtOnce = 500;
constexpr int kGivenAtOnePrice = 20;

/// A book with as many given quotes as a shop writes in years, made once. Prices change every twenty quotes.
class BigBook {
  public:
    static BigBook& instance() {
        static BigBook book;
        return book;
    }
    const std::filesystem::path& file() const { return m_file; }
    std::unique_ptr<db::Book> open() const { return db::Book::open(m_file, db::systemEnvironment()).value(); }

  private:
    BigBook() {
        auto book = db::Book::create(m_file, db::systemEnvironment()).value();
        std::vector<catalogue::Material> stones;
        for (int i = 0; i < kStones; ++i) {
            stones.push_back(test::sampleStone("Stone " + std::to_string(i)));
            stones.back().basis = catalogue::PriceBasis::Fixed;
            stones.back().id = book->save(stones.back()).value();
        }
        auto design = test::sampleDesign(stones[0].id, {});
        design.id = book->save(design).value();
        for (int done = 0; done < kQuotes; done += kAtOnce) {
            const auto written = book->batch(base::say(db::Note::NewQuote), [&]() -> base::Done {
                for (int i = done; i < done + kAtOnce; ++i) giveOne(*book, stones, design, i);
                return {};
            });
            base::ensure(written.has_value(), "the benchmark's book can be written");
        }
        const auto draft = book->startQuote();
        base::ensure(draft.has_value(), "the benchmark's book has a draft");
    }
    static void giveOne(db::Book& book, std::vector<catalogue::Material>& stones, const catalogue::Design& design,
                        int i) {
        if (i % kGivenAtOnePrice == 0) {
            auto& stone = stones[static_cast<std::size_t>(i / kGivenAtOnePrice % kStones)];
            stone.fixedPrice += units::Money::fromMicros(1);
            book.save(stone).value();
        }
        auto quote = book.startQuote().value();
        quote.order = test::sampleOrder({}, design);
        quote.version = book.saveDraft(quote).value();
        book.issue(quote, book.priceBook({}).value(), test::resultOf(units::Money::fromMicros(i)), quote.order.quotedOn)
            .value();
    }

    test::TempFolder m_folder;
    std::filesystem::path m_file = m_folder / "big.jobbook";
};

void openBig(benchmark::State& state) {
    const auto& big = BigBook::instance();
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(big.open());
    state.counters["MB"] = static_cast<double>(std::filesystem::file_size(big.file())) / 1e6;
}
BENCHMARK(openBig)->Unit(benchmark::kMillisecond)->UseRealTime();

void newestFifty(benchmark::State& state) {
    const auto book = BigBook::instance().open();
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(book->quotes("", 50));
}
BENCHMARK(newestFifty)->Unit(benchmark::kMillisecond);

void searchThroughAll(benchmark::State& state) {
    const auto book = BigBook::instance().open();
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(book->quotes("no such title", 50));
}
BENCHMARK(searchThroughAll)->Unit(benchmark::kMillisecond);

void lastDraft(benchmark::State& state) {
    const auto book = BigBook::instance().open();
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(book->lastDraft());
}
BENCHMARK(lastDraft)->Unit(benchmark::kMillisecond);

void priceBook(benchmark::State& state) {
    const auto book = BigBook::instance().open();
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(book->priceBook({}));
}
BENCHMARK(priceBook)->Unit(benchmark::kMillisecond);

void openIssuedQuote(benchmark::State& state) {
    const auto book = BigBook::instance().open();
    const auto newest = book->quotes("", 2)->at(1).number;
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(book->quoteNumbered(newest));
}
BENCHMARK(openIssuedQuote)->Unit(benchmark::kMillisecond);

/// One edit of a draft of so many lines, to disk.
void saveDraft(benchmark::State& state) {
    const auto book = BigBook::instance().open();
    auto quote = book->lastDraft()->value();
    const auto design = book->designs()->at(0);
    quote.order.lines.assign(static_cast<std::size_t>(state.range(0)), test::sampleLine(design));
    for (auto& line : quote.order.lines) line.baseMaterial = {};
    std::int64_t quantity = 0;
    for ([[maybe_unused]] auto round : state) {
        quote.order.lines[0].quantity = units::Count::of(++quantity);
        quote.version = book->saveDraft(quote).value();
    }
}
BENCHMARK(saveDraft)->Arg(1)->Arg(10)->Arg(100)->Unit(benchmark::kMillisecond)->UseRealTime();

void checkEverything(benchmark::State& state) {
    const auto& file = BigBook::instance().file();
    for ([[maybe_unused]] auto round : state) {
        const auto report = db::Book::check(file);
        base::ensure(report && report->damage.empty(), "the benchmark's book is sound");
    }
}
BENCHMARK(checkEverything)->Unit(benchmark::kMillisecond)->Iterations(1);

} // namespace

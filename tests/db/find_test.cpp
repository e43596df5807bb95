// SPDX-License-Identifier: MIT
//
// Finding jobs, with an index of the book and without one. What is found is said by hand; that the index finds the same
// as the book itself, over a shop at work, is a law. Names and sums are made up.
#include "app/demo/demo_book.h"
#include "tests/db/bench_book.h"
#include "tests/support/seed.h"
#include "tests/support/shop_year.h"

#include <sqlite3.h>

#include <fstream>
#include <sys/stat.h>

namespace {

using namespace sp;
using db::FoundBy;
using db::Stage;
using db::Wanted;
using test::valueOf;
using units::Money;

std::string bytesOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

class FindTest : public test::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        reopenWith(cache);
    }
    void reopenWith(const std::filesystem::path& folderOfIndex) {
        auto environment = clock.environment();
        environment.cacheFolder = folderOfIndex;
        book.reset();
        auto opened = db::Book::open(file, environment);
        ASSERT_TRUE(opened) << describe(opened.error());
        book = std::move(*opened);
    }
    void index() {
        const auto made = db::Book::makeIndex(file, cache);
        ASSERT_TRUE(made) << describe(made.error());
        book->takeIndex();
        ASSERT_FALSE(book->wantsIndex());
    }
    std::filesystem::path indexFile() const {
        for (const auto& entry : std::filesystem::directory_iterator(cache)) return entry.path();
        return {};
    }
    std::vector<std::string> found(Wanted wanted) {
        std::vector<std::string> numbers;
        for (const auto& job : valueOf(book->find(wanted)).jobs)
            numbers.push_back(job.number.empty() ? "draft" : job.number);
        return numbers;
    }
    std::vector<std::string> typed(const std::string& text) { return found({.text = text, .stage = {}}); }
    /// Given to the sample customer, with one line of that title, for that sum.
    db::Quote given(const std::string& title, std::int64_t cents) {
        auto quote = valueOf(book->startQuote());
        quote.order = test::sampleOrder(customer, design);
        quote.order.lines[0].title = title;
        quote.version = valueOf(book->saveDraft(quote));
        clock.now += std::chrono::hours(24);
        return valueOf(book->issue(quote, book->priceBook(customer).value(),
                                   test::resultOf(Money::fromMicros(cents * 10'000)),
                                   quote.order.quotedOn.plusDays(5)));
    }

    std::filesystem::path cache = folder / "cache" / "stonepenny";
};

struct Row {
    std::string text;
    std::vector<std::string> numbers;
};

TEST_F(FindTest, anythingThatIsTypedIsFoundWithAnIndexAndWithout) {
    stock();
    auto kept = valueOf(book->customer(customer));
    kept->name = "Rowan Bäckerei";
    kept->telephone = "(555) 014-2233";
    kept->mail = "oven@rowan.example";
    ASSERT_TRUE(book->save(*kept));
    const auto first = given("Paper boat, sleeve", 12'345);
    const auto second = given("Nameplate “Odette”", 9'900);
    ASSERT_TRUE(book->setStage(second.id, Stage::Agreed));
    catalogue::Payment payment;
    payment.job = second.id;
    payment.amount = Money::fromMicros(40'000'000);
    payment.kind = "Cash";
    payment.note = "envelope under the door";
    payment.paidOn = clock.environment().today();
    ASSERT_TRUE(book->pay(payment, pricing::Beyond::Refused));
    const auto a = first.number;
    const auto b = second.number;
    const std::vector<Row> rows{
        {"", {b, a}},
        {"boat", {a}},
        {"BOAT sleeve", {a}},
        {"oat eev", {a}},
        {"boat odette", {}},
        {"Odette", {b}},
        {"od", {b}}, // begins a word, though a mark stands before it
        {"de", {}},  // two letters begin a word
        {"n", {b}},
        {"rowan bäckerei", {b, a}},
        {"rowan backerei", {b, a}},
        {"5550142233", {b, a}},
        {"555 014", {b, a}},
        {"oven@rowan", {b, a}},
        {"under door", {b}},
        {"cash", {b}},
        {b, {b}},
        {"0002", {b}},
        {"2", {b, a}}, // of the year and of the number
        {"123.45", {a}},
        {"123,45", {a}},
        {"99", {b}},
        {"59.00", {b}},      // left to pay
        {"40", {b}},         // was paid
        {"lantern", {b, a}}, // the design's name, whatever the line is called
        {"nothing like it", {}},
        {"\" OR *", {}}, // no language of its own
        {"“”", {}},      // no word at all
    };
    for (const bool isIndexed : {false, true}) {
        if (isIndexed) index();
        EXPECT_EQ(book->wantsIndex(), !isIndexed);
        for (const auto& row : rows)
            EXPECT_EQ(typed(row.text), row.numbers) << row.text << (isIndexed ? " by the index" : " in the book");
    }
}

TEST_F(FindTest, whatIsNotYetInTheIndexIsFoundAllTheSame) {
    stock();
    const auto first = given("Paper boat", 1'000);
    index();
    const auto second = given("Paper lantern", 2'000);
    EXPECT_EQ(typed("paper"), (std::vector{second.number, first.number}));
    auto kept = valueOf(book->customer(customer));
    kept->name = "Thistle Skaters";
    ASSERT_TRUE(book->save(*kept));
    EXPECT_EQ(typed("thistle"), (std::vector{second.number, first.number}));
    EXPECT_EQ(typed("bakery"), std::vector<std::string>{});
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(typed("bakery"), (std::vector{second.number, first.number}));
    auto renamed = design;
    renamed.name = "Kingfisher";
    ASSERT_TRUE(book->save(renamed));
    EXPECT_EQ(typed("kingfisher").size(), 2U);
    reopenWith(cache);
    EXPECT_FALSE(book->wantsIndex());
    EXPECT_EQ(typed("kingfisher").size(), 2U);
}

TEST_F(FindTest, jobsAreChosenAndSorted) {
    stock();
    const auto a = given("Bee", 3'000).number;
    const auto second = given("Ant", 1'000);
    const auto b = second.number;
    const auto c = given("Cat", 2'000).number;
    ASSERT_TRUE(book->setStage(second.id, Stage::Agreed));
    for (const bool isIndexed : {false, true}) {
        if (isIndexed) index();
        EXPECT_EQ(found({.text = {}, .stage = Stage::Agreed}), std::vector{b});
        EXPECT_EQ(found({.text = {}, .stage = {}, .isUnpaid = true}), std::vector{b});
        EXPECT_EQ(found({.text = {}, .stage = {}, .by = FoundBy::Total}), (std::vector{a, c, b}));
        EXPECT_EQ(found({.text = {}, .stage = {}, .by = FoundBy::Total, .isAscending = true}), (std::vector{b, c, a}));
        EXPECT_EQ(found({.text = {}, .stage = {}, .by = FoundBy::What, .isAscending = true}), (std::vector{b, a, c}));
        EXPECT_EQ(found({.text = {}, .stage = {}, .by = FoundBy::Started, .isAscending = true}),
                  (std::vector{a, b, c}));
        const auto two = valueOf(book->find({.text = "rowan", .stage = {}, .by = FoundBy::Number, .limit = 2}));
        EXPECT_EQ(two.jobs.size(), 2U);
        EXPECT_TRUE(two.hasMore);
        EXPECT_EQ(two.jobs[0].number, c);
    }
    clock.now += std::chrono::hours(24 * 30);
    EXPECT_EQ(found({.text = {}, .stage = {}, .isLapsed = true}), (std::vector{c, a}));
}

TEST_F(FindTest, withoutAnIndexOnlyTheNewestAreLookedThroughWhereThatIsAsked) {
    stock();
    given("Paper boat", 1'000);
    const auto newest = given("Paper lantern", 1'000);
    const auto some = valueOf(book->find({.text = "paper", .stage = {}, .lookThrough = 1}));
    ASSERT_EQ(some.jobs.size(), 1U);
    EXPECT_EQ(some.jobs[0].id, newest.id);
    EXPECT_FALSE(some.isWhole);
    EXPECT_TRUE(valueOf(book->find({.text = "paper", .stage = {}, .lookThrough = 2})).isWhole);
    index();
    EXPECT_TRUE(valueOf(book->find({.text = "paper", .stage = {}, .lookThrough = 1})).isWhole);
}

TEST_F(FindTest, theIndexIsItsOwnersAloneAndForgetsWhoIsErased) {
    stock();
    const auto job = given("Paper boat", 1'000);
    ASSERT_TRUE(book->setStage(job.id, Stage::Declined));
    index();
    const auto made = indexFile();
    struct stat facts {};
    ASSERT_EQ(::stat(made.c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 0777U, 0600U);
    ASSERT_EQ(::stat(cache.c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 0777U, 0700U);
    ASSERT_NE(bytesOf(made).find("rowan"), std::string::npos);
    // Under a second name the bytes would be seen after the first is gone.
    const auto seen = folder / "seen";
    std::filesystem::create_hard_link(made, seen);
    const auto erased = book->eraseCustomer(customer);
    ASSERT_TRUE(erased) << describe(erased.error());
    EXPECT_FALSE(std::filesystem::exists(made));
    EXPECT_EQ(bytesOf(seen).find_first_not_of('\0'), std::string::npos);
    EXPECT_TRUE(book->wantsIndex());
    EXPECT_EQ(typed("rowan"), std::vector<std::string>{});
    index();
    EXPECT_EQ(bytesOf(indexFile()).find("rowan"), std::string::npos);
    EXPECT_EQ(typed("boat"), std::vector{job.number});
}

TEST_F(FindTest, anIndexOfSomebodyErasedElsewhereIsForgotten) {
    stock();
    const auto job = given("Paper boat", 1'000);
    ASSERT_TRUE(book->setStage(job.id, Stage::Declined));
    index();
    const auto made = indexFile();
    reopenWith({}); // a seat that knows of no index
    ASSERT_TRUE(book->eraseCustomer(customer));
    ASSERT_TRUE(std::filesystem::exists(made));
    reopenWith(cache);
    EXPECT_EQ(typed("boat"), std::vector{job.number});
    EXPECT_FALSE(std::filesystem::exists(made));
}

TEST_F(FindTest, anIndexThatIsDamagedOrOfAnotherBookIsMadeAnew) {
    stock();
    const auto number = given("Paper boat", 1'000).number;
    index();
    const auto made = indexFile();
    book->takeIndex();
    std::ofstream(made, std::ios::binary | std::ios::trunc)
        << "no index at all, and long enough to be looked at: " << std::string(4'000, 'x');
    EXPECT_EQ(typed("boat"), std::vector{number});
    EXPECT_FALSE(std::filesystem::exists(made));
    index();
    // A copy of the book that went another way has the same identity.
    const auto copied = folder / "copy.jobbook";
    ASSERT_TRUE(book->copyTo(copied));
    const auto here = given("Paper crane", 1'000).number;
    EXPECT_EQ(typed("paper"), (std::vector{here, number}));
    auto environment = clock.environment();
    environment.cacheFolder = cache;
    const auto copy = valueOf(db::Book::open(copied, environment));
    EXPECT_EQ(valueOf(copy->quotes("paper", 10)).size(), 1U);
    EXPECT_FALSE(book->wantsIndex()) << "the copy leaves the index of the other alone";
    EXPECT_TRUE(copy->wantsIndex());
    ASSERT_TRUE(db::Book::makeIndex(copied, cache));
    copy->takeIndex();
    EXPECT_EQ(valueOf(copy->quotes("paper", 10)).size(), 1U);
    EXPECT_EQ(typed("paper"), (std::vector{here, number})) << "an open one is used on";
}

TEST_F(FindTest, anIndexDamagedBehindItsBeginningIsNoErrorOfTheBook) {
    stock();
    const auto job = given("Paper boat", 1'000);
    ASSERT_TRUE(book->setStage(job.id, Stage::Collected)); // and not paid
    const auto damage = [&] {
        index();
        book->takeIndex();
        const auto made = indexFile();
        constexpr std::int64_t kKept = 2 * 4096; // the schema, and the mark by which it is known
        const auto size = static_cast<std::int64_t>(std::filesystem::file_size(made));
        ASSERT_GT(size, kKept);
        std::fstream out(made, std::ios::binary | std::ios::in | std::ios::out);
        out.seekp(kKept);
        out << std::string(static_cast<std::size_t>(size - kKept), 'x');
    };
    damage();
    EXPECT_FALSE(book->wantsIndex()) << "or the damage is seen before it is asked";
    EXPECT_EQ(typed("boat"), std::vector{job.number});
    EXPECT_TRUE(book->wantsIndex());
    damage();
    EXPECT_EQ(valueOf(book->askedToday()).jobs.size(), 1U);
    EXPECT_TRUE(book->wantsIndex());
    index();
    EXPECT_EQ(typed("boat"), std::vector{job.number});
}

TEST_F(FindTest, theFolderOfTheIndexMayBeReachedByALink) {
    stock();
    const auto number = given("Paper boat", 1'000).number;
    std::filesystem::create_directories(folder / "elsewhere");
    std::filesystem::create_directory_symlink(folder / "elsewhere", folder / "linked");
    cache = folder / "linked" / "stonepenny";
    reopenWith(cache);
    index();
    EXPECT_EQ(typed("boat"), std::vector{number});
    EXPECT_FALSE(book->wantsIndex());
}

TEST_F(FindTest, ofAnUnfinishedIndexNobodysNameIsLeft) {
    stock();
    const auto job = given("Paper boat", 1'000);
    ASSERT_TRUE(book->setStage(job.id, Stage::Declined));
    const auto stopped = folder / "stopped";
    std::stop_source stop;
    const auto made = db::Book::makeIndex(file, cache, {stop.get_token(), [&](double) {
                                                            std::filesystem::create_hard_link(indexFile(), stopped);
                                                            stop.request_stop();
                                                        }});
    ASSERT_FALSE(made);
    ASSERT_GT(std::filesystem::file_size(stopped), 0U);
    EXPECT_EQ(bytesOf(stopped).find("rowan"), std::string::npos);
    index();
    // As one that was killed leaves it; no process has this number.
    const auto left = cache / ("." + indexFile().filename().string() + ".unfinished-1999999999");
    std::ofstream(left) << "rowan bakery";
    std::filesystem::create_hard_link(left, folder / "seen");
    ASSERT_TRUE(book->eraseCustomer(customer));
    EXPECT_FALSE(std::filesystem::exists(left));
    EXPECT_EQ(bytesOf(folder / "seen").find_first_not_of('\0'), std::string::npos);
}

TEST_F(FindTest, makingAnIndexCanBeStopped) {
    stock();
    given("Paper boat", 1'000);
    std::stop_source stop;
    const auto made = db::Book::makeIndex(file, cache, {stop.get_token(), [&](double) { stop.request_stop(); }});
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().fault, idOf(db::Fault::Stopped));
    EXPECT_TRUE(std::filesystem::is_empty(cache));
}

/// Law: by the index, brought up to the book time and again, the same jobs are found in the same order as in the book.
TEST_F(FindTest, findsByTheIndexWhatTheBookHolds) {
    book.reset();
    file = folder / "Year.jobbook";
    auto environment = clock.environment();
    environment.cacheFolder = cache;
    ASSERT_TRUE(demo::createDemoBook(file, environment));
    reopenWith(cache);
    const auto seed = test::printedSeed();
    test::ShopYear year(*book, clock, seed);
    year.open(6);
    for (int i = 0; i < 12; ++i) year.act();
    index();
    const std::vector<std::string> texts{"",     "team", "an",   "a",       "alder",   "heron winter", "555",  "0",
                                         "2026", "cash", "slip", "example", "lantern", "paper boat 1", "I-20", "1"};
    std::mt19937_64 random(seed);
    for (int round = 0; round < test::roundsOr("STONEPENNY_FINDS", 6); ++round) {
        for (int i = 0; i < 8; ++i) year.act();
        if (book->wantsIndex()) index(); // somebody was erased
        for (const auto& text : texts) {
            Wanted wanted{.text = text, .stage = {}};
            const auto chance = random();
            if (chance % 3 == 0) wanted.stage = static_cast<Stage>(chance / 3 % 7);
            wanted.isUnpaid = chance / 21 % 3 == 0;
            wanted.isLapsed = chance / 63 % 9 == 0;
            wanted.by = static_cast<FoundBy>(chance / 567 % 8);
            wanted.isAscending = chance / 4'536 % 2 == 0;
            wanted.limit = 1 + static_cast<std::int64_t>(chance / 9'072 % 40);
            const auto byIndex = valueOf(book->find(wanted));
            ASSERT_FALSE(book->wantsIndex()) << "it was brought up to the book";
            db::Found inBook;
            ASSERT_TRUE(book->batch(base::say(db::Note::NewQuote), [&]() -> base::Done {
                inBook = valueOf(book->find(wanted)); // inside an action the index is not asked
                return {};
            }));
            std::vector<base::Id> a;
            std::vector<base::Id> b;
            for (const auto& job : byIndex.jobs) a.push_back(job.id);
            for (const auto& job : inBook.jobs) b.push_back(job.id);
            ASSERT_EQ(a, b) << "“" << text << "”, by " << static_cast<int>(wanted.by) << ", limit " << wanted.limit;
            ASSERT_EQ(byIndex.hasMore, inBook.hasMore);
        }
        const auto asked = valueOf(book->askedToday());
        db::AskedToday inBook;
        ASSERT_TRUE(book->batch(base::say(db::Note::NewQuote), [&]() -> base::Done {
            inBook = valueOf(book->askedToday());
            return {};
        }));
        ASSERT_EQ(asked.jobs.size(), inBook.jobs.size());
        for (std::size_t i = 0; i < asked.jobs.size(); ++i) ASSERT_EQ(asked.jobs[i].job.id, inBook.jobs[i].job.id);
    }
}

} // namespace

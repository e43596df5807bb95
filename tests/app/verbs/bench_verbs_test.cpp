// SPDX-License-Identifier: MIT
// What the bench is asked in a terminal: what is to be made, and what can be promised. Days are held against the demo's
// bench hours, five hours a weekday and half of that on Saturday, counted out here by hand.
#include "app/demo/demo_book.h"
#include "app/verbs/verbs.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <chrono>
#include <map>

using namespace sp;
using Json = nlohmann::json;
using testing::HasSubstr;

namespace {

class BenchVerbs : public testing::Test {
  protected:
    BenchVerbs() { m_helpers.environment = m_clock.environment(); }

    /// A book with supplies for everything and no job.
    std::string bareBook() {
        const auto file = (m_folder / "bare.jobbook").string();
        EXPECT_TRUE(demo::createDemoBook(file, m_clock.environment()));
        changeBook(file, [](db::Book& book) {
            const auto materials = book.materials().value();
            for (const auto& material : materials)
                EXPECT_TRUE(book.moveStock(material.id, 100'000, std::nullopt, "plenty"));
            auto shop = book.shop().value();
            shop.closedDays.clear();
            shop.usedWhen = catalogue::UsedWhen::Ready;
            EXPECT_TRUE(book.save(shop));
        });
        return file;
    }
    /// The demo with its jobs.
    std::string busyBook() {
        const auto file = (m_folder / "busy.jobbook").string();
        EXPECT_EQ(run({"demo", file}).exit, 0);
        return file;
    }
    template<class Work>
    void changeBook(const std::string& file, const Work& work) {
        auto opened = db::Book::open(file, m_clock.environment());
        ASSERT_TRUE(opened);
        work(**opened);
    }
    void closeBench(const std::string& file, const catalogue::BenchWeek& week,
                    std::vector<catalogue::ClosedDays> days) {
        changeBook(file, [&](db::Book& book) {
            auto shop = book.shop().value();
            shop.benchWeek = week;
            shop.closedDays = std::move(days);
            EXPECT_TRUE(book.save(shop));
        });
    }

    verbs::Outcome run(const std::vector<std::string>& words) { return verbs::run(words, m_helpers); }
    Json json(std::vector<std::string> words) {
        words.push_back("--json");
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        return Json::parse(outcome.out, nullptr, false);
    }
    std::vector<std::string> lanterns(const std::string& file, const char* count, std::vector<std::string> more = {}) {
        std::vector<std::string> words{"promise", "--book", file, "--design", "Lantern", "--quantity", count};
        words.insert(words.end(), more.begin(), more.end());
        return words;
    }
    units::Date today() { return m_clock.environment().today(); }

    /// The day on which so many minutes are done, from tomorrow on, when nothing else is.
    units::Date doneAfter(std::int64_t minutes) {
        for (auto day = today().plusDays(1);; day = day.plusDays(1)) {
            const auto weekday = std::chrono::weekday(day.days()).iso_encoding();
            minutes -= weekday == 7 ? 0 : weekday == 6 ? 150 : 300;
            if (minutes <= 0) return day;
        }
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    verbs::Helpers m_helpers;
};

TEST_F(BenchVerbs, promiseIsTheDayOnWhichTheMinutesAreDone) {
    const auto file = bareBook();
    const auto free = json(lanterns(file, "120"));
    const auto minutes = free["minutes"].get<std::int64_t>();
    EXPECT_GT(minutes, 300);
    const auto day = doneAfter(minutes);
    EXPECT_EQ(free["first_day"], day.iso());
    EXPECT_TRUE(free["holds"].is_null()) << "no day is asked for";
    EXPECT_TRUE(free["supplies_by"].is_null());
    EXPECT_FALSE(free["supplies_unknown"].get<bool>());
    const auto held = json(lanterns(file, "120", {"--due", day.iso()}));
    EXPECT_TRUE(held["holds"].get<bool>());
    const auto early = json(lanterns(file, "120", {"--due", day.plusDays(-1).iso()}));
    EXPECT_FALSE(early["holds"].get<bool>());
    EXPECT_EQ(early["first_day"], day.iso());
    EXPECT_TRUE(early["would_be_late"].empty()) << "there is no other job";
    EXPECT_THAT(run(lanterns(file, "120", {"--due", day.iso()})).out,
                HasSubstr("Holds, ready by " + day.iso() + ".\n"));
    EXPECT_THAT(run(lanterns(file, "120", {"--due", day.plusDays(-1).iso()})).out,
                HasSubstr("Not by then; " + day.iso() + " is the first day that holds.\n"));
    EXPECT_THAT(run(lanterns(file, "120")).out, HasSubstr("Can be promised for " + day.iso() + ".\n"));
}

// The lead time of the stones' supplier is three days, that of the film four: nothing lies on the shelf.
TEST_F(BenchVerbs, promiseWaitsForSupplies) {
    const auto file = bareBook();
    changeBook(file, [](db::Book& book) {
        const auto shelf = book.shelf().value();
        for (const auto& [material, count] : shelf) EXPECT_TRUE(book.moveStock(material, -count, std::nullopt, "sold"));
    });
    const auto promise = json(lanterns(file, "1"));
    EXPECT_EQ(promise["supplies_by"], today().plusDays(4).iso());
    EXPECT_GE(promise["first_day"].get<std::string>(), today().plusDays(4).iso());
    EXPECT_THAT(run(lanterns(file, "1")).out, HasSubstr("can be here by " + today().plusDays(4).iso()));
    changeBook(file, [](db::Book& book) {
        auto suppliers = book.suppliers().value();
        for (auto& supplier : suppliers) {
            supplier.leadDays = 0;
            const auto saved = book.save(supplier);
            EXPECT_TRUE(saved) << describe(saved.error());
        }
    });
    EXPECT_TRUE(json(lanterns(file, "1"))["supplies_unknown"].get<bool>());
    EXPECT_THAT(run(lanterns(file, "1")).out, HasSubstr("when the rest comes is not known"));
}

TEST_F(BenchVerbs, theShelfIsPromisedToWhatIsAgreedTo) {
    const auto file = bareBook();
    const auto jet = [&] {
        const auto all = json({"shelf", "--book", file})["materials"];
        for (const auto& one : all)
            if (one["name"] == "Jet SS10") return one;
        return Json();
    };
    const auto before = jet();
    EXPECT_EQ(before["promised"], 0);
    EXPECT_EQ(before["free"], before["on_hand"]);
    auto asked = lanterns(file, "24");
    asked.front() = "quote";
    const auto number = json(asked)["number"].get<std::string>();
    EXPECT_EQ(jet(), before) << "an offer promises nothing";
    EXPECT_EQ(run({"agree", "--book", file, "--quote", number}).exit, 0);
    const auto agreed = jet();
    const auto promised = agreed["promised"].get<std::int64_t>();
    EXPECT_GT(promised, 0);
    EXPECT_EQ(agreed["on_hand"], before["on_hand"]);
    EXPECT_EQ(agreed["free"].get<std::int64_t>(), before["on_hand"].get<std::int64_t>() - promised);
    EXPECT_THAT(run({"shelf", "--book", file}).out, HasSubstr(" promised, "));
    const auto counted =
        run({"count-in", "--book", file, "--material", "jet ss10", "--counted", "7", "--reason", "spilt", "--json"});
    EXPECT_EQ(counted.exit, 0) << counted.err;
    EXPECT_EQ(jet()["free"], 7 - promised);
    EXPECT_THAT(run({"shelf", "--book", file}).out, HasSubstr(" lacking"));
    const auto ready = run({"ready", "--book", file, "--quote", number});
    EXPECT_THAT(ready.out, HasSubstr("of “Jet SS10” too few"));
    EXPECT_EQ(jet()["on_hand"], 0);
    EXPECT_EQ(jet()["promised"], 0);
    std::vector<std::string> weighed{"count-in", "--book", file, "--material", "Jet SS10", "--on-scale",
                                     "42",       "--tare", "12", "--sample",   "100",      "--sample-weight",
                                     "1.5"};
    EXPECT_THAT(run(weighed).out, HasSubstr("there may be 1992 to 2008"));
    EXPECT_EQ(jet()["on_hand"], 2'000);
    weighed[6] = "11.99";
    EXPECT_EQ(run(weighed).err, "11.99 g on the scale is less than the 12 g of the empty tray: weigh again.\n");
    EXPECT_EQ(run({"count-in", "--book", file, "--material", "Moon dust", "--counted", "7"}).err,
              "There is no material “Moon dust” in this book; “materials” lists them.\n");
}

TEST_F(BenchVerbs, sayWhenToOrderMore) {
    const auto file = bareBook();
    EXPECT_EQ(run({"reorder", "--book", file}).out, "Nothing was taken off the shelf in these days.\n");
    changeBook(file, [](db::Book& book) {
        const auto materials = book.materials().value();
        for (const auto& material : materials) {
            if (material.name != "Jet SS10") continue;
            EXPECT_TRUE(book.countShelf(material.id, 500, "stocktaking"));
            EXPECT_TRUE(book.moveStock({{}, material.id, -300, {}, "spilt", {}, db::records::MoveKind::Lost, {}}));
        }
    });
    EXPECT_EQ(run({"reorder", "--book", file}).out,
              "Jet SS10: days known: 1, too few to tell when to order; look again later.\n");
    const std::vector<std::string> howMany{"reorder", "--book", file, "--order-cost", "7.50", "--holding", "20"};
    const auto early = json(howMany);
    for (const auto* key : {"low", "safety", "reorder_point", "order_packs", "pack", "why_no_point", "why_no_order"})
        EXPECT_TRUE(early["materials"][0].at(key).is_null()) << key;
    EXPECT_EQ(early["not_reckoned"], Json::array());
    m_clock.now += 10 * std::chrono::hours(24);
    EXPECT_THAT(run({"reorder", "--book", file, "--days", "11"}).out,
                HasSubstr("days looked at: 11, too few to tell when to order; look at more with --days."));
    m_clock.now += 10 * std::chrono::hours(24);
    EXPECT_THAT(run({"reorder", "--book", file, "--days", "13"}).out, HasSubstr("Nothing was taken off"));
    const auto told = json(howMany)["materials"];
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0]["material"], "Jet SS10");
    EXPECT_EQ(told[0]["used"], 300);
    EXPECT_EQ(told[0]["free"], 200);
    EXPECT_EQ(told[0]["low"], told[0]["reorder_point"].get<std::int64_t>() >= 200);
    EXPECT_GE(told[0]["order_packs"].get<std::int64_t>(), 1);
    EXPECT_THAT(run({"reorder", "--book", file}).out, HasSubstr("Jet SS10: order now. Free: 200, low at: "));
    EXPECT_FALSE(told[0]["pack"].get<std::string>().empty());
    EXPECT_EQ(run({"reorder", "--book", file, "--holding", "20"}).exit, 1);
    EXPECT_EQ(run({"reorder", "--book", file, "--order-cost", "0", "--holding", "20"}).err,
              "--order-cost must be more than nothing, not “0”.\n");
    EXPECT_EQ(run({"reorder", "--book", file, "--order-cost", "7.50", "--holding", "0"}).err,
              "--holding must be more than nothing, not “0”.\n");
    EXPECT_EQ(run({"reorder", "--book", file, "--service", "50"}).err,
              "--service must be 90, 95, 98 or 99, not “50”.\n");
}

TEST_F(BenchVerbs, reorderGoesOnWhereSomethingIsWrongWithOneMaterial) {
    const auto file = bareBook();
    changeBook(file, [](db::Book& book) {
        const auto materials = book.materials().value();
        const auto packs = book.packs().value();
        for (const auto& material : materials) {
            if (material.name != "Jet SS10") continue;
            EXPECT_TRUE(book.moveStock({{}, material.id, -300, {}, "spilt", {}, db::records::MoveKind::Lost, {}}));
            for (auto pack : packs) {
                if (pack.material != material.id || !pack.usual) continue;
                for (auto& price : pack.prices) price.each = units::Money();
                EXPECT_TRUE(book.save(pack));
            }
        }
    });
    m_clock.now += 20 * std::chrono::hours(24);
    const std::vector<std::string> howMany{"reorder", "--book", file, "--order-cost", "7.50", "--holding", "20"};
    const auto said = run(howMany);
    EXPECT_EQ(said.exit, 0) << said.err;
    EXPECT_THAT(said.out, HasSubstr("Jet SS10: How much to order is not known"));
    const auto told = json(howMany)["materials"];
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0]["why_no_order"], "OrderedPackUnpriced");
    EXPECT_TRUE(told[0]["order_packs"].is_null());
    EXPECT_FALSE(told[0]["reorder_point"].is_null());
}

TEST_F(BenchVerbs, whatAgreedJobsLackIsOrderedAndWhatStaysBookedIsSaid) {
    const auto file = bareBook();
    changeBook(file, [](db::Book& book) {
        auto shop = book.shop().value();
        shop.usedWhen = catalogue::UsedWhen::Making;
        EXPECT_TRUE(book.save(shop));
    });
    auto asked = lanterns(file, "24");
    asked.front() = "quote";
    const auto number = json(asked)["number"].get<std::string>();
    EXPECT_EQ(run({"agree", "--book", file, "--quote", number}).exit, 0);
    EXPECT_EQ(run({"count-in", "--book", file, "--material", "Jet SS10", "--counted", "7"}).exit, 0);
    const auto lacking = json({"reorder", "--book", file})["materials"];
    ASSERT_EQ(lacking.size(), 1U);
    EXPECT_EQ(lacking[0]["low"], true);
    const auto count = -lacking[0]["free"].get<std::int64_t>();
    ASSERT_GT(count, 0);
    EXPECT_EQ(run({"reorder", "--book", file}).out,
              "Jet SS10: " + std::to_string(count) + " lacking for agreed jobs; order now.\n");
    const auto begun = json({"start", "--book", file, "--quote", number});
    EXPECT_TRUE(begun["lacks_later"].get<bool>());
    EXPECT_EQ(begun["lacks"], Json::array({{{"name", "Jet SS10"}, {"count", count}}}));
    for (const auto* key : {"beyond", "stays_booked"}) EXPECT_EQ(begun.at(key), Json::array()) << key;
    EXPECT_TRUE(begun.at("why_none").is_null());
    const auto said = run({"letgo", "--book", file, "--quote", number});
    EXPECT_EQ(said.exit, 0) << said.err;
    EXPECT_THAT(said.out, HasSubstr("7 of “Jet SS10” stay booked for this job; count in for it what is still there."));
}

TEST_F(BenchVerbs, saySoWhereNoDayCanBePromised) {
    const auto file = bareBook();
    closeBench(file, {}, {});
    EXPECT_EQ(run(lanterns(file, "1")).exit, 1);
    EXPECT_THAT(run(lanterns(file, "1")).err, HasSubstr("no weekday has time at the bench yet"));
    EXPECT_EQ(run({"bench", "--book", file}).out, "Nothing is to be made.\n");
    catalogue::BenchWeek week;
    week.monday = units::Duration::fromMinutes(60);
    closeBench(file, week, {{today().plusDays(-1), today().plusDays(4000), "for good"}});
    EXPECT_THAT(run(lanterns(file, "1")).err, HasSubstr("within 3 years"));
    closeBench(file, week, {{today(), today().plusDays(364), "a year off"}});
    EXPECT_GT(json(lanterns(file, "1"))["first_day"].get<std::string>(), today().plusDays(364).iso());
}

TEST_F(BenchVerbs, benchListsWhatIsToBeMadeByTheDayItIsWanted) {
    const auto bench = json({"bench", "--book", busyBook()});
    ASSERT_GE(bench["jobs"].size(), 4U);
    std::map<std::string, std::int64_t> planned;
    std::string before;
    int late = 0;
    for (const auto& job : bench["jobs"]) {
        EXPECT_THAT(job["stage"].get<std::string>(), testing::AnyOf("Agreed", "Making"));
        EXPECT_GT(job["minutes"].get<std::int64_t>(), 0);
        const auto wanted = job["wanted_by"].get<std::string>();
        EXPECT_LE(before, wanted);
        before = wanted;
        EXPECT_EQ(job["late"].get<bool>(), job["ready"].get<std::string>() > wanted);
        late += job["late"].get<bool>() ? 1 : 0;
    }
    EXPECT_EQ(late, 1) << bench.dump(2);
    for (const auto& day : bench["days"]) {
        EXPECT_LE(day["taken"].get<std::int64_t>(), day["minutes"].get<std::int64_t>());
        for (const auto& work : day["jobs"]) planned[work["number"]] += work["minutes"].get<std::int64_t>();
    }
    for (const auto& job : bench["jobs"]) // minutes begun are rounded up day by day
        EXPECT_NEAR(static_cast<double>(planned[job["number"]]),
                    static_cast<double>(job["minutes"].get<std::int64_t>()), 5);
    EXPECT_THAT(run({"bench", "--book", (m_folder / "busy.jobbook").string()}).out, HasSubstr(", late: wanted by "));
}

// Whatever is wanted at once pushes one of those that have no time to spare; nobody is named by name.
TEST_F(BenchVerbs, promiseNamesWhoWouldBeLate) {
    const auto file = busyBook();
    const auto bench = json({"bench", "--book", file});
    catalogue::BenchWeek week;
    week.monday = week.tuesday = week.wednesday = week.thursday = week.friday = units::Duration::fromMinutes(60);
    closeBench(file, week, {});
    changeBook(file, [](db::Book& book) {
        const auto materials = book.materials().value();
        for (const auto& material : materials)
            EXPECT_TRUE(book.moveStock(material.id, 100'000, std::nullopt, "plenty"));
    });
    Json promise;
    std::string due;
    const char* count = "";
    for (const auto* tried : {"2", "8", "20", "40", "80"})
        for (int days = 1; days < 20 && (due.empty() || promise["would_be_late"].empty()); ++days) {
            count = tried;
            due = today().plusDays(days).iso();
            promise = json(lanterns(file, count, {"--due", due}));
        }
    ASSERT_FALSE(promise["would_be_late"].empty());
    EXPECT_FALSE(promise["holds"].get<bool>());
    const auto text = run(lanterns(file, count, {"--due", due})).out;
    EXPECT_THAT(text, HasSubstr(promise["would_be_late"][0]["number"].get<std::string>()));
    for (const auto& job : bench["jobs"]) {
        const auto name = job["customer"].get<std::string>();
        EXPECT_FALSE(!name.empty() && text.find(name) != std::string::npos) << text;
    }
}

TEST_F(BenchVerbs, promiseTakesAWholeOrder) {
    const auto file = bareBook();
    const auto order = m_folder / "order.json";
    test::writeBytes(order, R"({"lines": [{"design": "Lantern", "pieces": 120}]})");
    EXPECT_EQ(json({"promise", "--book", file, "--order", order.string()}), json(lanterns(file, "120")));
}

} // namespace

// SPDX-License-Identifier: MIT
//
// What is exported is read back by the readers of records and of tables, and compared with the book.
#include "core/base/csv.h"
#include "db/records/json.h"
#include "db/records/record.h"
#include "tests/db/bench_book.h"
#include "tests/support/temp_folder.h"

#include <map>
#include <sys/stat.h>

namespace {

using namespace sp;
using base::Code;
using db::records::Json;
using test::valueOf;
namespace fs = std::filesystem;

/// A table by its headings.
using Rows = std::vector<std::map<std::string, std::string>>;

class ExportTest : public test::BookTest {
  protected:
    fs::path out() const { return folder / "out"; }
    void exportIt() {
        const auto done = book->exportTo(out());
        ASSERT_TRUE(done) << test::described(done.error());
    }
    Json json() const { return Json::parse(test::bytesOf(out() / "book.json")); }
    Rows table(const std::string& name) const {
        const auto text = test::bytesOf(out() / (name + ".csv"));
        const auto read = base::readCsv(text);
        EXPECT_TRUE(read.has_value() && !read->rows.empty()) << name;
        Rows rows;
        if (!read) return rows;
        const auto& head = read->rows.at(0).cells;
        for (std::size_t i = 1; i < read->rows.size(); ++i) {
            const auto& cells = read->rows[i].cells;
            EXPECT_EQ(cells.size(), head.size()) << name << ' ' << i;
            auto& row = rows.emplace_back();
            for (std::size_t at = 0; at < std::min(cells.size(), head.size()); ++at) row[head[at]] = cells[at];
        }
        return rows;
    }
    /// A value as the reader of records has it.
    template<class T>
    T back(Json value) const {
        const auto& kind = db::records::kindOf<T>();
        if (kind.inShape) kind.inShape(value);
        return valueOf(db::records::read<T>(
            Json{{"format", kind.version}, {"kind", std::string(kind.name)}, {"value", std::move(value)}}.dump()));
    }
    template<class T>
    std::vector<T> listBack(const Json& list) const {
        std::vector<T> values;
        for (const auto& value : list) values.push_back(back<T>(value));
        return values;
    }
};

TEST_F(ExportTest, readsBackAsTheBookIs) {
    stock();
    const auto quote = issued();
    catalogue::Payment payment;
    payment.job = quote.id;
    payment.amount = units::Money::fromMicros(12'340'000);
    payment.kind = "Cash";
    payment.paidOn = clock.environment().today();
    ASSERT_TRUE(book->pay(payment, pricing::Beyond::Refused));
    draft();
    exportIt();
    const auto all = json();
    EXPECT_EQ(back<catalogue::Shop>(all.at("shop")), valueOf(book->shop()));
    EXPECT_EQ(back<catalogue::BenchStandards>(all.at("bench")), valueOf(book->bench()));
    EXPECT_EQ(listBack<catalogue::Supplier>(all.at("suppliers")), valueOf(book->suppliers()));
    EXPECT_EQ(listBack<catalogue::Material>(all.at("materials")), valueOf(book->materials()));
    EXPECT_EQ(listBack<catalogue::Pack>(all.at("packs")), valueOf(book->packs()));
    EXPECT_EQ(listBack<catalogue::Kit>(all.at("kits")), valueOf(book->kits()));
    EXPECT_EQ(listBack<catalogue::Design>(all.at("designs")), valueOf(book->designs()));
    EXPECT_EQ(listBack<catalogue::Customer>(all.at("customers")), valueOf(book->customers()));
    ASSERT_EQ(all.at("jobs").size(), 2U) << "the draft, too";
    const auto& job = all.at("jobs").at(0);
    EXPECT_EQ(job.at("number"), quote.number);
    EXPECT_EQ(job.at("stage"), "quoted");
    EXPECT_EQ(back<catalogue::Order>(job.at("order")), quote.order);
    ASSERT_EQ(all.at("papers").size(), 1U);
    const auto& paper = all.at("papers").at(0);
    EXPECT_EQ(paper.at("number"), quote.number);
    EXPECT_EQ(paper.at("total_micros"), quote.sealedTotal->micros());
    EXPECT_EQ(back<db::records::PaperResult>(paper.at("result")), *quote.result);
    EXPECT_EQ(listBack<catalogue::Payment>(all.at("payments")), valueOf(book->payments(quote.id)));
}

TEST_F(ExportTest, writesTablesForPeople) {
    stock();
    const auto quote = issued();
    exportIt();
    const auto materials = valueOf(book->materials());
    const auto rows = table("materials");
    ASSERT_EQ(rows.size(), materials.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i].at("row"), std::to_string(i + 1));
        EXPECT_EQ(rows[i].at("id"), materials[i].id.text());
        EXPECT_EQ(rows[i].at("name"), materials[i].name);
    }
    const auto jobs = table("jobs");
    ASSERT_EQ(jobs.size(), 1U);
    EXPECT_EQ(jobs[0].at("number"), quote.number);
    EXPECT_EQ(jobs[0].at("quoted_on"), quote.order.quotedOn.iso());
    const auto lines = table("jobs_lines");
    ASSERT_EQ(lines.size(), quote.order.lines.size());
    EXPECT_EQ(lines[0].at("of"), "1") << "the row of its job";
    EXPECT_EQ(lines[0].at("title"), quote.order.lines[0].title);
    EXPECT_EQ(lines[0].at("quantity"), std::to_string(quote.order.lines[0].quantity.value()));
    const auto stones = table("jobs_lines_places_stones");
    ASSERT_FALSE(stones.empty());
    const auto& first = quote.order.lines[0].first().stones[0];
    EXPECT_EQ(stones[0].at("material"), first.material.text());
    EXPECT_EQ(stones[0].at("count"), std::to_string(first.count.value()));
    const auto papers = table("papers");
    ASSERT_EQ(papers.size(), 1U);
    EXPECT_EQ(papers[0].at("paper_total"), "412.5") << "412.50 of the currency’s unit, as a plain number";
    const auto steps = table("bench_steps");
    ASSERT_EQ(steps.size(), catalogue::kSteps.size());
    EXPECT_EQ(steps[0].at("step"), "art");
}

TEST_F(ExportTest, saysFiguresInUnitsOfPeople) {
    // Source: the units' own definitions; 8.875 % is 88,750 ppm, 1 in is 25.4 mm exactly (yard and pound agreement,
    // 1959).
    auto shop = valueOf(book->shop());
    shop.rates.labourPerHour = units::Money::fromMicros(18'250'000);
    shop.rates.spoilage = units::Rate::fromPpm(88'750);
    ASSERT_TRUE(book->save(shop));
    auto bench = valueOf(book->bench());
    bench.press.platenWidth = units::Length::fromNanometres(25'400'000);
    bench.press.dwell = units::Duration::fromMilliseconds(12'500);
    ASSERT_TRUE(book->save(bench));
    exportIt();
    const auto row = table("shop").at(0);
    EXPECT_EQ(row.at("rates_labour_per_hour"), "18.25");
    EXPECT_EQ(row.at("rates_spoilage_percent"), "8.875");
    const auto at = table("bench").at(0);
    EXPECT_EQ(at.at("press_platen_width_mm"), "25.4");
    EXPECT_EQ(at.at("press_dwell_seconds"), "12.5");
}

TEST_F(ExportTest, holdsNoCellThatASpreadsheetWouldRun) {
    for (const auto* name : {"=1+1", "+1", "-1", "@now", "'kept"}) {
        catalogue::Customer odd;
        odd.name = name;
        odd.contact = "=HYPERLINK(\"a\")\nsecond line";
        ASSERT_TRUE(book->save(odd));
    }
    exportIt();
    for (const auto& row : table("customers")) {
        EXPECT_EQ(row.at("name").front(), '\'');
        EXPECT_EQ(row.at("contact").front(), '\'');
    }
    std::vector<std::string> names;
    const auto all = json();
    for (const auto& one : all.at("customers")) names.push_back(one.at("name"));
    EXPECT_EQ(names, (std::vector<std::string>{"'kept", "+1", "-1", "=1+1", "@now"})) << "in JSON they are as typed";
}

TEST_F(ExportTest, isTheOwnersAloneAndNeedsAFolderOfItsOwn) {
    fs::create_directory(out());
    exportIt(); // an empty one will do
    struct stat facts {};
    ASSERT_EQ(::stat((out() / "book.json").c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 0777U, 0600U);
    ASSERT_EQ(::stat(out().c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 0777U, 0700U);
    const auto before = test::bytesOf(out() / "book.json");
    EXPECT_EQ(book->exportTo(out()).error().code, Code::Conflict);
    EXPECT_EQ(test::bytesOf(out() / "book.json"), before);
    EXPECT_EQ(book->exportTo(folder / "none" / "out").error().code, Code::Missing);
    test::writeBytes(folder / "file", "mine");
    EXPECT_EQ(book->exportTo(folder / "file").error().code, Code::Conflict);
    EXPECT_EQ(test::bytesOf(folder / "file"), "mine");
}

TEST_F(ExportTest, leavesNothingBehindWhenItIsStopped) {
    stock();
    issued();
    std::stop_source source;
    const db::Watch watch{source.get_token(), [&](double) { source.request_stop(); }};
    EXPECT_EQ(book->exportTo(out(), watch).error().code, Code::Failed);
    for (const auto& entry : fs::directory_iterator(folder.path())) EXPECT_FALSE(entry.is_directory()) << entry.path();
}

} // namespace

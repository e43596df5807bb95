// SPDX-License-Identifier: MIT
// Invoices, receipts and credit notes by verbs.
#include "app/demo/demo_book.h"
#include "app/verbs/verbs.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

using namespace sp;
using Json = nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;

namespace {

class BillVerbs : public testing::Test {
  protected:
    BillVerbs() {
        m_helpers.environment = m_clock.environment();
        m_helpers.writeSheet = [this](db::Book&, const db::Quote& quote, const std::string&,
                                      db::IfThere) -> base::Done {
            m_written.push_back(quote.number);
            return {};
        };
        m_helpers.writeBill = [this](const db::IssuedBill& bill, const std::string&, db::IfThere) -> base::Done {
            m_written.push_back(bill.number);
            return {};
        };
        EXPECT_TRUE(demo::createDemoBook(book(), m_clock.environment()));
        m_quote = json({"quote", "--design", "Lantern", "--quantity", "24"})["number"].get<std::string>();
        m_year = m_quote.substr(0, 4);
    }
    std::string book() const { return (m_folder / "demo.jobbook").string(); }
    verbs::Outcome run(std::vector<std::string> words) {
        words.insert(words.end(), {"--book", book()});
        return verbs::run(words, m_helpers);
    }
    Json json(std::vector<std::string> words) {
        words.push_back("--json");
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        return Json::parse(outcome.out, nullptr, false);
    }
    std::string refusal(std::vector<std::string> words) {
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 1) << outcome.out;
        return outcome.err;
    }
    void agree() { EXPECT_EQ(run({"agree", "--quote", m_quote}).exit, 0); }
    std::string written(std::vector<std::string> words) {
        m_written.clear();
        words.insert(words.begin(), "sheet");
        words.insert(words.end(), {"--pdf", (m_folder / "out.pdf").string()});
        json(words);
        return m_written.empty() ? std::string() : m_written.back();
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    verbs::Helpers m_helpers;
    std::vector<std::string> m_written;
    std::string m_quote;
    std::string m_year;
};

TEST_F(BillVerbs, fromYesToPaid) {
    agree();
    const auto total = json({"owed"})["sum"].get<std::string>();
    json({"pay", "--quote", m_quote, "--amount", "20"});
    const auto receipt = json({"receipt", "--quote", m_quote});
    EXPECT_EQ(receipt["number"], "R-" + m_year + "-0001");
    EXPECT_EQ(receipt["total"], "20.00");
    const auto invoice = json({"invoice", "--quote", m_quote});
    EXPECT_EQ(invoice["number"], "I-" + m_year + "-0001");
    EXPECT_EQ(invoice["total"], total);
    EXPECT_EQ(invoice["paid"], "20.00");
    EXPECT_TRUE(invoice["due"].is_string());
    EXPECT_THAT(invoice["caution"].get<std::string>(), HasSubstr("tax authority or an accountant"));
    const auto credit = json({"credit", "--invoice", invoice["number"], "--amount", "5"});
    EXPECT_EQ(credit["number"], "C-" + m_year + "-0001");
    EXPECT_EQ(credit["total"], "-5.00");
    const auto papers = json({"papers", "--quote", m_quote});
    ASSERT_EQ(papers["papers"].size(), 3U);
    EXPECT_EQ(papers["papers"][1]["kind"], "invoice");
    EXPECT_EQ(run({"papers", "--quote", m_quote}).exit, 0);
}

TEST_F(BillVerbs, sheetsAreFoundByKindAndByTheirOwnNumber) {
    agree();
    const auto number = json({"invoice", "--quote", m_quote})["number"].get<std::string>();
    EXPECT_EQ(written({"--quote", m_quote}), m_quote);
    EXPECT_EQ(written({"--quote", m_quote, "--kind", "quote"}), m_quote);
    EXPECT_EQ(written({"--quote", m_quote, "--kind", "invoice"}), number);
    EXPECT_EQ(written({"--quote", number}), number);
    EXPECT_EQ(written({"--quote", number, "--kind", "invoice"}), number);
    const auto path = (m_folder / "out.pdf").string();
    EXPECT_THAT(refusal({"sheet", "--quote", number, "--kind", "credit", "--pdf", path}), HasSubstr("another kind"));
    EXPECT_THAT(refusal({"sheet", "--quote", m_quote, "--kind", "credit", "--pdf", path}), HasSubstr("verb “credit”"));
    EXPECT_THAT(refusal({"sheet", "--quote", m_quote, "--kind", "letter", "--pdf", path}),
                AllOf(HasSubstr("“letter”"), HasSubstr("credit or bench")));
    EXPECT_THAT(refusal({"sheet", "--quote", "I-1999-0001", "--kind", "invoice", "--pdf", path}),
                HasSubstr("I-1999-0001"));
}

TEST_F(BillVerbs, taxOfASpanIsThatOfItsInvoicesLessItsCreditNotes) {
    const auto span = [&](const char* from, const char* to) {
        return json({"tax", "--from", m_year + from, "--to", m_year + to});
    };
    EXPECT_EQ(span("-01-01", "-12-31")["tax"], "0.00");
    agree();
    const auto invoice = json({"invoice", "--quote", m_quote});
    const auto charged = span("-01-01", "-12-31");
    EXPECT_EQ(charged["invoices"], 1);
    EXPECT_EQ(charged["total"], invoice["total"]);
    ASSERT_EQ(charged["by_rate"].size(), 1U);
    EXPECT_EQ(charged["by_rate"][0], invoice["by_rate"][0]);
    EXPECT_EQ(charged["tax"], invoice["by_rate"][0]["tax"]);
    EXPECT_EQ(charged["taxable"], invoice["by_rate"][0]["net"]);
    EXPECT_THAT(charged["caution"].get<std::string>(), HasSubstr("tax authority"));
    json({"credit", "--invoice", invoice["number"]});
    const auto after = span("-01-01", "-12-31");
    EXPECT_EQ(after["total"], "0.00");
    EXPECT_EQ(after["credit_notes"], 1);
    EXPECT_TRUE(after["by_rate"].empty());
    EXPECT_THAT(run({"tax", "--from", m_year + "-01-01", "--to", m_year + "-12-31"}).out, HasSubstr("Invoices: 1"));
    EXPECT_THAT(refusal({"tax", "--from", m_year + "-12-31", "--to", m_year + "-01-01"}),
                HasSubstr("turn the two round"));
    EXPECT_EQ(run({"tax", "--from", "soon", "--to", m_year + "-01-01"}).exit, 1);
}

TEST_F(BillVerbs, nothingIsLeftToPayOfWhatWasLetGo) {
    agree();
    json({"pay", "--quote", m_quote, "--amount", "10"});
    json({"letgo", "--quote", m_quote});
    EXPECT_EQ(run({"refund", "--quote", m_quote, "--amount", "4"}).out,
              m_quote + " was let go; 6.00 of what was paid stay.\n");
}

TEST_F(BillVerbs, whatCannotBeIsOneSentence) {
    EXPECT_EQ(refusal({"invoice", "--quote", m_quote}),
              "Quote " + m_quote + " is not agreed to yet; move it to Agreed before you invoice it.\n");
    agree();
    EXPECT_EQ(refusal({"receipt", "--quote", m_quote}),
              "No payment for " + m_quote + " is without a receipt; take a payment with pay first.\n");
    const auto number = json({"invoice", "--quote", m_quote})["number"].get<std::string>();
    EXPECT_EQ(refusal({"invoice", "--quote", m_quote}),
              "All of " + m_quote + " is invoiced by " + number + " already; print that again, or credit it first.\n");
    EXPECT_THAT(refusal({"credit", "--invoice", number, "--amount", "99999"}), HasSubstr("take back less"));
    EXPECT_EQ(refusal({"letgo", "--quote", m_quote}),
              m_quote + " is invoiced and stays agreed as it is; write a credit note first.\n");
    EXPECT_EQ(run({"credit"}).exit, 2);
}

} // namespace

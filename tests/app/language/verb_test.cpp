// SPDX-License-Identifier: MIT
// What the verbs answer a person, and what they refuse, in a language of accents. JSON is for programs: its keys and
// codes stay.
#include "app/demo/demo_book.h"
#include "app/session/book_session.h"
#include "app/verbs/verbs.h"
#include "tests/app/language/onlooker.h"
#include "tests/support/found_texts.h"
#include "tests/support/pseudo_language.h"
#include "tests/support/temp_folder.h"

#include <fstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace sp;

namespace {

class VerbsInAnotherLanguage : public testing::Test {
  protected:
    VerbsInAnotherLanguage() {
        m_helpers.environment = db::systemEnvironment();
        m_helpers.environment.today = [] { return *units::Date::parse("2026-11-25"); };
        m_helpers.outlines = artwork::outlinesOf;
        m_helpers.writeCareCards = [](db::Book&, const std::string&, db::IfThere) -> base::Done { return {}; };
        m_helpers.writeBenchSheet = [](db::Book&, const db::Quote&, const std::string&, db::IfThere) -> base::Done {
            return {};
        };
        m_helpers.writeBill = [](const db::IssuedBill&, const std::string&, db::IfThere) -> base::Done { return {}; };
        m_helpers.writeSheet = [](db::Book&, const db::Quote&, const std::string&, db::IfThere) -> base::Done {
            return {};
        };
        auto opened = demo::createDemoBook(book(), m_helpers.environment);
        EXPECT_TRUE(opened);
        session::BookSession session(std::move(*opened));
        m_onlooker.knowBook(session);
        // Where the file lies, and the words of the command line.
        m_onlooker.know(m_folder.path().string());
        m_onlooker.know(
            "stonepenny version json book design quantity on wall templates due customer BOOK NAME MATERIAL DATE "
            "agree choice ready collect letgo pay amount kind note keep credit refund owed today bench promise force "
            "pricelist "
            "supplier make missing take repeat give revise dir carecards pdf FILE invoice receipt credit papers kind "
            "letter tax from to DAY figures by month week blank change "
            "reorder days service cost holding shelf count in material counted reason lacks scale tare sample weight "
            "step "
            "customers find TEXT import yes csv vcf erase");
        m_onlooker.know("front needs"); // of the files given
    }
    void TearDown() override {
        EXPECT_EQ(m_onlooker.count(), 0U) << m_onlooker.found();
        if (!test::foundTexts().empty()) {
            EXPECT_THAT(test::notFound(m_language.asked()), testing::IsEmpty()) << "no translation would hold these";
        }
    }

    std::string book() const { return (m_folder / "demo.jobbook").string(); }
    std::string file(const char* name, const std::string& text) {
        std::ofstream(m_folder / name, std::ios::binary) << text;
        return (m_folder / name).string();
    }
    verbs::Outcome listen(const std::vector<std::string>& words, int exit) {
        QString where;
        for (const auto& word : words) {
            where += QString::fromStdString(word) + QLatin1Char(' ');
            m_onlooker.know(word);
        }
        const auto outcome = verbs::run(words, m_helpers);
        EXPECT_EQ(outcome.exit, exit) << where.toStdString() << outcome.out << outcome.err;
        const bool isJson = outcome.out.starts_with('{');
        if (!isJson) m_onlooker.look(where, QString::fromStdString(outcome.out));
        m_onlooker.look(where, QString::fromStdString(outcome.err));
        return outcome;
    }
    verbs::Outcome ask(const std::vector<std::string>& more, int exit) {
        std::vector<std::string> words{more.front(), "--book", book()};
        words.insert(words.end(), more.begin() + 1, more.end());
        return listen(words, exit);
    }

    test::PseudoLanguage m_language;
    test::TempFolder m_folder;
    verbs::Helpers m_helpers;
    test::Onlooker m_onlooker;
};

TEST_F(VerbsInAnotherLanguage, answers) {
    ask({"designs"}, 0);
    ask({"materials"}, 0);
    ask({"quotes"}, 0);
    ask({"find", "lantern"}, 0);
    ask({"find", "nothing like it"}, 0);
    ask({"find", "", "--stage", "nowhere"}, 1);
    ask({"owed"}, 0);
    ask({"price", "--design", "Lantern", "--quantity", "24"}, 0);
    ask({"price", "--design", "Lantern", "--quantity", "24", "--due", "2026-11-27", "--on", "Tee, black"}, 0);
    ask({"figures", "--from", "2026-01-01", "--to", "2026-12-31"}, 0);
    ask({"figures", "--from", "2026-11-01", "--to", "2026-11-30", "--by", "week"}, 0);
    ask({"figures", "--from", "2026-11-01", "--to", "2026-11-30", "--by", "moon"}, 1);
    ask({"bench"}, 0);
    ask({"shelf"}, 0);
    ask({"count-in", "--material", "Jet SS10", "--counted", "12"}, 0);
    ask({"count-in", "--material", "Jet SS10", "--counted", "12"}, 0);
    ask({"count-in", "--material", "Jet SS10", "--on-scale", "42", "--tare", "12", "--sample", "100", "--sample-weight",
         "1.5"},
        0);
    ask({"count-in", "--material", "nowhere", "--counted", "12"}, 1);
    ask({"reorder"}, 0);
    ask({"reorder", "--order-cost", "7.50", "--holding", "20", "--service", "99", "--days", "30"}, 0);
    ask({"reorder", "--order-cost", "7.50"}, 1);
    ask({"reorder", "--order-cost", "0", "--holding", "20"}, 1);
    ask({"reorder", "--order-cost", "7.50", "--holding", "0"}, 1);
    ask({"reorder", "--service", "50"}, 1);
    ask({"reorder", "--days", "1"}, 1);
    ask({"promise", "--design", "Lantern", "--quantity", "24"}, 0);
    ask({"promise", "--design", "Lantern", "--quantity", "24", "--due", "2026-11-27"}, 0);
    ask({"promise", "--design", "Lantern", "--quantity", "24", "--due", "2027-11-27"}, 0);
    ask({"promise", "--design", "Lantern", "--quantity", "900000"}, 1);
    ask({"quote", "--design", "Lantern", "--quantity", "24"}, 0);
    ask({"quotes"}, 0);
    ask({"agree", "--quote", "2026-0001"}, 0);
    ask({"bench"}, 0);
    ask({"repeat", "--quote", "2026-0001"}, 0);
    ask({"carecards", "--pdf", (m_folder / "cards.pdf").string()}, 0);
    ask({"export", "--dir", (m_folder / "out").string()}, 0);
    ask({"export", "--dir", (m_folder / "out").string()}, 1);
    ask({"repeat", "--quote", "2026-0001", "--give"}, 0);
    ask({"revise", "--quote", "2026-0001"}, 0);
    ask({"pay", "--quote", "2026-0001", "--amount", "5"}, 0);
    ask({"pay", "--quote", "2026-0001", "--amount", "5000"}, 1);
    ask({"owed"}, 0);
    ask({"sheet", "--quote", "2026-0001", "--pdf", (m_folder / "out.pdf").string()}, 0);
    ask({"sheet", "--quote", "2026-0001", "--kind", "bench", "--pdf", (m_folder / "out.pdf").string()}, 0);
    ask({"papers", "--quote", "2026-0001"}, 0);
    ask({"receipt", "--quote", "2026-0001"}, 0);
    ask({"receipt", "--quote", "2026-0001"}, 1);
    ask({"invoice", "--quote", "2026-0001"}, 0);
    ask({"invoice", "--quote", "2026-0001"}, 1);
    ask({"credit", "--invoice", "I-2026-0001", "--amount", "1"}, 0);
    ask({"credit", "--invoice", "R-2026-0001"}, 1);
    ask({"tax", "--from", "2026-01-01", "--to", "2026-12-31"}, 0);
    ask({"tax", "--from", "2026-02-01", "--to", "2026-01-01"}, 1);
    ask({"papers", "--quote", "2026-0001"}, 0);
    ask({"sheet", "--quote", "C-2026-0001", "--pdf", (m_folder / "out.pdf").string()}, 0);
    ask({"sheet", "--quote", "C-2026-0001", "--kind", "invoice", "--pdf", (m_folder / "out.pdf").string()}, 1);
    ask({"sheet", "--quote", "2026-0001", "--kind", "letter", "--pdf", (m_folder / "out.pdf").string()}, 1);
    ask({"revise", "--quote", "2026-0001", "--give"}, 0);
    ask({"agree", "--quote", "2026-0001"}, 1);
    ask({"papers", "--quote", "2026-0001"}, 0);
    listen({"check", book()}, 0);
    listen({"demo", (m_folder / "shop.jobbook").string()}, 0);
    listen({"today", "--book", (m_folder / "shop.jobbook").string()}, 0);
    ask({"today"}, 0);
    const auto list = file("list.csv", "No,Item,Pack,Price\n1,Jet SS10,10 gross,7.20\n2,Rose SS10,each,0.02\n"
                                       "3,Opal SS10,each,0.02\n4,Moon,each,1\n");
    m_onlooker.know("Opal Moon each SS list csv");
    ask({"pricelist", list, "--supplier", "Kestrel"}, 0);
    ask({"pricelist", list, "--supplier", "Nobody"}, 1);
    ask({"pricelist", list, "--supplier", "Kestrel", "--make-missing", "--take"}, 0);
    listen({"fit", "--sheet", "9x12in", "--piece", "3.5x2.75in"}, 0);
    listen({"count", file("plate.svg",
                          "<svg><g id='front' fill='#1f3a93'><circle r='5.2913'/><circle r='5.2913'/>"
                          "<circle cx='8' r='5.2913'/><circle cx='90' r='20'/></g><rect width='9' height='4'/></svg>")},
           0);
}

TEST_F(VerbsInAnotherLanguage, helpSaysWhatItIsFor) {
    // The names of verbs and options, and what stands for their values, are the command line's own.
    m_onlooker.know(
        "demo designs materials price pricelist supplier make missing take quote quotes sheet fit count estimate yield "
        "find TEXT stage lapsed unpaid from DAY to limit "
        "buy pack schema export carecards check OUT NAME on "
        "MATERIAL wall templates due DATE customer pdf piece margin gap one way FILE scale MM PER UNIT DPI then hole "
        "allowance text font height stone pitch style outline fill both inset problem YYYY DD by colour colours red "
        "white "
        "none lines");
    m_onlooker.look(QStringLiteral("help"), QString::fromStdString(verbs::help()));
}

TEST_F(VerbsInAnotherLanguage, refusals) {
    ask({"price", "--design", "Nothing", "--quantity", "3"}, 1);
    ask({"price", "--design", "Lantern", "--quantity", "0"}, 1);
    ask({"price", "--design", "Lantern", "--quantity", "2.5"}, 1);
    ask({"price", "--design", "Lantern", "--quantity", "99999999"}, 1);
    ask({"price", "--design", "Lantern", "--quantity", "24", "--due", "soon"}, 1);
    ask({"price", "--design", "Lantern", "--quantity", "24", "--due", "2026-11-24"}, 1);
    ask({"price", "--design", "Lantern", "--quantity", "24", "--on", "Jet SS10"}, 1);
    ask({"price", "--design", "Lantern", "--quantity", "24", "--on", "clear decal"}, 1);
    ask({"price", "--design", "Lantern", "--quantity", "24", "--customer", "Nobody"}, 0);
    ask({"price", "--design", "Lantern", "--quantity", "24", "--customer", " "}, 1);
    listen({}, 2);
    listen({"price", "--book"}, 2);
    listen({"designs", "--book", book(), "extra"}, 2);
    listen({"check"}, 2);
    listen({"demo", (m_folder / "shop.db").string()}, 1);
    listen({"fit", "--sheet", "nine", "--piece", "2x2in"}, 1);
    listen({"fit", "--sheet", "9x12", "--piece", "2x2in"}, 1);
    listen({"fit", "--sheet", "9x12in", "--piece", "20x20in"}, 1);
    listen({"count", file("gift.svg", "PK\3\4")}, 1);
    listen({"count", (m_folder / "none.svg").string()}, 1);
    listen({"count", file("empty.svg", "")}, 1);
    listen({"estimate",
            file("bar.svg", "<svg width='60mm' height='20mm' viewBox='0 0 60 20'><path d='M0,0H60V20H0Z'/></svg>"),
            "--stone", "SS99", "--pitch", "4mm", "--style", "fill"},
           1);
    listen({"estimate", file("bar.svg", "<svg/>"), "--stone", "SS10", "--pitch", "4mm", "--style", "loud"}, 1);
    for (const auto* colours : {"red", "pink=SS10"})
        listen({"estimate",
                file("bar.svg", "<svg width='60mm' height='20mm' viewBox='0 0 60 20'><path d='M0,0H60V20H0Z'/></svg>"),
                "--stone", "SS10", "--pitch", "4mm", "--style", "fill", "--colours", colours},
               1);
    listen({"estimate", file("bar.svg", "<svg/>"), "--stone", "SS10", "--pitch", "4mm", "--style", "fill",
            "--outline-stone", "SS6"},
           1);
    for (const auto* verb : {"yield", "buy", "pack"}) {
        listen({verb, "--problem", (m_folder / "none.json").string()}, 1);
        listen({verb, "--problem", file("bad.json", "{")}, 1);
        listen({verb, "--problem", file("odd.json", R"({"colour":"red"})")}, 1);
    }
    m_onlooker.know("jet");
    listen(
        {"buy", "--problem", file("buy.json", R"({"needs":[{"material":"jet","count":3}],"packs":[],"suppliers":[]})")},
        1);
}

} // namespace

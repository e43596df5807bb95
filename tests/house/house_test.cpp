// SPDX-License-Identifier: MIT
// The rules are our own (DEVELOPERS.md). Each is held against the tree this was built from, and, so that no
// rule can sleep, against a small tree that keeps it and the same tree with one breach planted.
#include "tests/house/house_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <ostream>
#include <random>

namespace house = sp::tests::house;
namespace fs = std::filesystem;

namespace {

using Rule = house::Breaches (*)(const fs::path&);

struct NamedRule {
    const char* name;
    Rule rule;
};

void PrintTo(const NamedRule& row, std::ostream* out) { *out << row.name; }

constexpr NamedRule kRules[] = {
    {"topLevel", house::topLevel},
    {"coreStandsAlone", house::coreStandsAlone},
    {"sqliteStaysInItsRoom", house::sqliteStaysInItsRoom},
    {"arrowsPointDown", house::arrowsPointDown},
    {"coloursLiveInThePalette", house::coloursLiveInThePalette},
    {"figuresAreMadeInCore", house::figuresAreMadeInCore},
    {"questionsGoThroughThePrompter", house::questionsGoThroughThePrompter},
    {"looksComeFromTheStyle", house::looksComeFromTheStyle},
    {"testsWaitForConditions", house::testsWaitForConditions},
    {"wordsStandInApp", house::wordsStandInApp},
    {"everySourceNamesItsLicence", house::everySourceNamesItsLicence},
    {"nothingIsPutOff", house::nothingIsPutOff},
};

class House : public testing::TestWithParam<NamedRule> {};

TEST_P(House, isKept) { EXPECT_THAT(GetParam().rule(SOURCE_TREE), testing::IsEmpty()); }

INSTANTIATE_TEST_SUITE_P(Rules, House, testing::ValuesIn(kRules),
                         [](const auto& row) { return std::string(row.param.name); });

/// A folder of its own that is gone with the object.
class PlantedTree {
  public:
    PlantedTree() {
        std::random_device device;
        do {
            m_root = fs::temp_directory_path() / ("house-" + std::to_string(device()));
        } while (!fs::create_directory(m_root));
    }
    ~PlantedTree() {
        std::error_code ignored;
        fs::remove_all(m_root, ignored);
    }
    PlantedTree(const PlantedTree&) = delete;
    PlantedTree& operator=(const PlantedTree&) = delete;

    const fs::path& root() const { return m_root; }

    void plant(const fs::path& file, const std::string& text) const {
        fs::create_directories((m_root / file).parent_path());
        std::ofstream stream(m_root / file);
        stream << text;
        ASSERT_TRUE(stream.flush()) << file;
    }

  private:
    fs::path m_root;
};

const std::string kLicence = "// SPDX-License-Identifier: MIT\n";

/// Everything that comes near a breach without being one.
void plantTidyHouse(const PlantedTree& tree) {
    tree.plant(".ci/run", "#!/bin/sh\n");
    tree.plant("CMakeLists.txt", "project(tidy)\n");
    tree.plant("DEVELOPERS.md", "Issue #123456 is no colour here.\n");
    tree.plant("README.md", "Nothing is put off. Mastodons are extinct.\n");
    tree.plant("build-debug/core/left_out.h", "#include <QString>\n");
    tree.plant("mine.jobbook", "");
    tree.plant("packaging/start", "#!/usr/bin/env bash\n# SPDX-License-Identifier: MIT\n");
    tree.plant("resources/icons/stone.svg", "<svg fill=\"#8a2846\"/>\n");
    tree.plant("core/CMakeLists.txt", "# Neither Qt nor SQLite is linked here.\nfind_package(fmt REQUIRED)\n");
    tree.plant("core/units/money.h",
               kLicence + "#include \"core/base/result.h\"\n// #include <QString> would be a breach\n");
    tree.plant("core/pricing/quote.h", kLicence + "#include \"core/units/money.h\"\n#include \"Quaint.h\"\n");
    tree.plant("db/sqlite/connection.cpp", kLicence + "#include \"core/units/money.h\"\n#include <sqlite3.h>\n");
    tree.plant("core/units/length.cpp",
               kLicence +
                   "ensure(ok, \"a length is no time\");\nauto s = format(\"{} mm, {} x {}\", a); // of a length\n");
    tree.plant("db/book/book.cpp", kLicence + "query(\"SELECT name FROM kit WHERE id is not null\");\n"
                                              "refuse(Fault::NoName, \"the name\");\nauto c = \"name, made_for\";\n");
    tree.plant("app/desk/palette.cpp", kLicence + "QColor jewel(\"#8A2846\");\n");
    tree.plant("app/paper/stone_painter.cpp", kLicence + "const QColor glint(255, 255, 255);\n");
    tree.plant("app/desk/prompter.cpp", kLicence + "return box.exec();\n");
    tree.plant("tests/app/shop_test.cpp", kLicence + "ASSERT_TRUE(waitFor([] { return true; }));\n");
    tree.plant("app/counter/page.cpp",
               kLicence + "#include \"db/book/book.h\"\n#include <QLabel>\nauto c = QColor(swatch); // quote #123, "
                          "#fff\nauto m = Money::fromMicros(5); // no Fraction\n");
    tree.plant("tests/db/sqlite/connection_test.cpp", kLicence + "#include <sqlite3.h>\n");
}

struct Breach {
    const char* name;
    Rule rule;
    const char* file;
    std::string text;
    std::string sentence;
};

void PrintTo(const Breach& row, std::ostream* out) { *out << row.name; }

class HouseBreach : public testing::TestWithParam<Breach> {};

TEST_P(HouseBreach, isNoticed) {
    const PlantedTree tree;
    plantTidyHouse(tree);
    ASSERT_THAT(GetParam().rule(tree.root()), testing::IsEmpty());
    tree.plant(GetParam().file, GetParam().text);
    EXPECT_THAT(GetParam().rule(tree.root()), testing::ElementsAre(GetParam().sentence));
}

// The marks are put together, or this file would breach the rule it tests.
const std::string kLater = std::string("TO") + "DO";
const std::string kBroken = std::string("FIX") + "ME";
const std::string kSleep = std::string("qW") + "ait(";
const std::string kOff = std::string("DISABLED") + "_prices";

INSTANTIATE_TEST_SUITE_P(
    Planted, HouseBreach,
    testing::Values(
        Breach{"StrangerAtTheTop", house::topLevel, "notes.txt", "", "notes.txt does not belong at the top level"},
        Breach{"FolderAtTheTop", house::topLevel, "scripts/run", "", "scripts does not belong at the top level"},
        Breach{"QtInCore", house::coreStandsAlone, "core/units/length.h", kLicence + "#include <QString>\n",
               "core/units/length.h:2 includes QString"},
        Breach{"QtModuleInCore", house::coreStandsAlone, "core/units/length.cpp",
               kLicence + " # include <QtCore/QString>\n", "core/units/length.cpp:2 includes QtCore/QString"},
        Breach{"SqliteInCore", house::coreStandsAlone, "core/units/length.h", kLicence + "#include \"sqlite3.h\"\n",
               "core/units/length.h:2 includes sqlite3.h"},
        Breach{"QtLinkedToCore", house::coreStandsAlone, "core/units/CMakeLists.txt",
               "room(core_units LINK Qt6::Core)\n", "core/units/CMakeLists.txt:1 names Qt6"},
        Breach{"SqliteLinkedToCore", house::coreStandsAlone, "core/units/CMakeLists.txt",
               "room(core_units LINK SQLite::SQLite3)\n", "core/units/CMakeLists.txt:1 names SQLite3"},
        Breach{"SqliteInApp", house::sqliteStaysInItsRoom, "app/shop/page.cpp", kLicence + "#include <sqlite3.h>\n",
               "app/shop/page.cpp:2 includes sqlite3.h"},
        Breach{"SqliteInAStore", house::sqliteStaysInItsRoom, "db/stores/design_store.cpp",
               kLicence + "#include <sqlite3.h>\n", "db/stores/design_store.cpp:2 includes sqlite3.h"},
        Breach{"SqliteInAppTests", house::sqliteStaysInItsRoom, "tests/app/shop_test.cpp",
               kLicence + "#include <sqlite3.h>\n", "tests/app/shop_test.cpp:2 includes sqlite3.h"},
        Breach{"DbFromCore", house::arrowsPointDown, "core/pricing/ladder.h",
               kLicence + "#include \"db/book/book.h\"\n", "core/pricing/ladder.h:2 includes db/book/book.h"},
        Breach{"AppFromDb", house::arrowsPointDown, "db/book/book.h", kLicence + "#include \"app/desk/palette.h\"\n",
               "db/book/book.h:2 includes app/desk/palette.h"},
        Breach{"UpwardsInCore", house::arrowsPointDown, "core/units/rate.h",
               kLicence + "#include \"core/pricing/quote.h\"\n",
               "core/units/rate.h:2 includes core/pricing/quote.h, a room above its own"},
        Breach{"UnknownRoomOfCore", house::arrowsPointDown, "core/helpers/all.h", kLicence,
               "core/helpers/all.h is in no known room of core"},
        Breach{"HexColourInApp", house::coloursLiveInThePalette, "app/shop/page.cpp",
               kLicence + "auto c = \"#8a2846\";\n", "app/shop/page.cpp:2 names a colour"},
        Breach{"ShortColourInApp", house::coloursLiveInThePalette, "app/shop/page.cpp",
               kLicence + "auto c = \"#fff\";\n", "app/shop/page.cpp:2 names a colour"},
        Breach{"NumberedColourInApp", house::coloursLiveInThePalette, "app/shop/page.cpp",
               kLicence + "const auto c = QColor(138, 40, 70);\n", "app/shop/page.cpp:2 names a colour"},
        Breach{"NamedColourInApp", house::coloursLiveInThePalette, "app/shop/page.cpp",
               kLicence + "const QColor c = Qt::darkGray;\n", "app/shop/page.cpp:2 names a colour"},
        Breach{"QuestionInAPage", house::questionsGoThroughThePrompter, "app/shop/page.cpp",
               kLicence + "if (dialog.exec()) save();\n", "app/shop/page.cpp:2 runs a loop of events"},
        Breach{"LoopInAPage", house::questionsGoThroughThePrompter, "app/shop/page.cpp",
               kLicence + "QEventLoop loop;\n", "app/shop/page.cpp:2 runs a loop of events"},
        Breach{"StyleSheetInApp", house::looksComeFromTheStyle, "app/shop/page.cpp",
               kLicence + "button->setStyleSheet(words);\n", "app/shop/page.cpp:2 sets a style sheet"},
        Breach{"SentenceInCore", house::wordsStandInApp, "core/units/rate.h",
               kLicence + "return \"The rate is missing; type one.\";\n",
               "core/units/rate.h:2 has words of its own: \"The rate is missing; type one.\""},
        Breach{"LabelInDb", house::wordsStandInApp, "db/book/book.cpp", kLicence + "return \"adding \" + name;\n",
               "db/book/book.cpp:2 has words of its own: \"adding \""},
        Breach{"PhraseInDb", house::wordsStandInApp, "db/book/book.cpp",
               kLicence + "say(\"“{}” is damaged\", name); // why\n",
               "db/book/book.cpp:2 has words of its own: \"“{}” is damaged\""},
        Breach{"TestThatSleeps", house::testsWaitForConditions, "tests/app/shop_test.cpp",
               kLicence + "QTest::" + kSleep + "1);\n", "tests/app/shop_test.cpp:2 sleeps"},
        Breach{"CostEachInApp", house::figuresAreMadeInCore, "app/shop/page.cpp",
               kLicence + "auto e = Money::fromExact(all);\n", "app/shop/page.cpp:2 makes a figure with fromExact"},
        Breach{"ShareInApp", house::figuresAreMadeInCore, "app/shop/page.cpp",
               kLicence + "auto e = units::Fraction::ratio(a, b);\n",
               "app/shop/page.cpp:2 makes a figure with Fraction"},
        Breach{"MicrosInApp", house::figuresAreMadeInCore, "app/shop/page.cpp",
               kLicence + "auto e = cost->micros() / 3;\n", "app/shop/page.cpp:2 makes a figure with micros()"},
        Breach{"HeaderWithoutLicence", house::everySourceNamesItsLicence, "db/book/book.h", "#pragma once\n",
               "db/book/book.h:1 does not begin with the SPDX line"},
        Breach{"EmptySource", house::everySourceNamesItsLicence, "db/book/book.cpp", "",
               "db/book/book.cpp:1 does not begin with the SPDX line"},
        Breach{"ScriptWithoutLicence", house::everySourceNamesItsLicence, "packaging/test", "#!/bin/sh\nset -e\n",
               "packaging/test:2 is not the SPDX line"},
        Breach{"WorkForLater", house::nothingIsPutOff, "core/base/id.h", kLicence + "// " + kLater + ": more\n",
               "core/base/id.h:2 says " + kLater},
        Breach{"BrokenInAScript", house::nothingIsPutOff, "packaging/test", "# " + kBroken + "\n",
               "packaging/test:1 says " + kBroken},
        Breach{"TestSwitchedOff", house::nothingIsPutOff, "tests/core/id_test.cpp",
               kLicence + "TEST(Id, " + kOff + ") {}\n", "tests/core/id_test.cpp:2 switches a test off"}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(House, noticesAMissingRoom) {
    const PlantedTree tree;
    plantTidyHouse(tree);
    fs::remove_all(tree.root() / "resources");
    EXPECT_THAT(house::topLevel(tree.root()), testing::ElementsAre("resources is missing"));
}

} // namespace

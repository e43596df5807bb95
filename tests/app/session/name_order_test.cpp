// SPDX-License-Identifier: MIT
// In what order names are listed: as people count, SS6 before SS10. QCollator in numeric mode, which has its order from
// ICU, puts letters and digits alike.
#include "tests/db/bench_book.h"
#include "tests/support/seed.h"

#include <QCollator>

#include <random>
#include <string>
#include <vector>

namespace {

using namespace sp;
using test::valueOf;

class NameOrder : public test::BookTest {
  protected:
    std::vector<std::string> listed() {
        std::vector<std::string> names;
        for (const auto& one : valueOf(book->suppliers())) names.push_back(one.name);
        return names;
    }
};

TEST_F(NameOrder, sizesStandByTheirNumber) {
    for (const char* name : {"Crystal SS16", "crystal SS10", "Crystal SS6", "Crystal", "Crystal SS6 b", "Ödil", "ödi"})
        EXPECT_TRUE(book->save(test::sampleSupplier(name)));
    EXPECT_EQ(listed(), (std::vector<std::string>{"Crystal", "Crystal SS6", "Crystal SS6 b", "crystal SS10",
                                                  "Crystal SS16", "ödi", "Ödil"}));
}

TEST_F(NameOrder, isTheOneOfUnicode) {
    std::mt19937_64 random(test::printedSeed());
    constexpr std::string_view kLetters = "abAB0012379";
    std::uniform_int_distribution<std::size_t> letter(0, kLetters.size() - 1);
    std::size_t saved = 0;
    for (int i = 0; i < 200; ++i) {
        std::string name;
        for (auto left = 1 + letter(random) / 2; left > 0; --left) name += kLetters[letter(random)];
        if (book->save(test::sampleSupplier(name))) ++saved; // no name twice
    }
    const auto names = listed();
    ASSERT_EQ(names.size(), saved);
    ASSERT_GT(saved, 100U);
    QCollator order{QLocale(QLocale::English)};
    order.setNumericMode(true);
    order.setCaseSensitivity(Qt::CaseInsensitive);
    for (std::size_t i = 1; i < names.size(); ++i)
        EXPECT_LE(order.compare(QString::fromStdString(names[i - 1]), QString::fromStdString(names[i])), 0)
            << names[i - 1] << ", then " << names[i];
}

} // namespace

// SPDX-License-Identifier: MIT
#include "app/format/likeness.h"

#include <gtest/gtest.h>

using namespace sp;

namespace {

struct Names {
    const char* one;
    const char* other;
};

bool areLike(const Names& names) {
    const auto one = QString::fromUtf8(names.one);
    const auto other = QString::fromUtf8(names.other);
    EXPECT_EQ(desk::isLike(one, other), desk::isLike(other, one)) << names.one << " and " << names.other;
    return desk::isLike(one, other);
}

// Invented names.
TEST(Likeness, seesThroughHaste) {
    for (const Names& names :
         {Names{"Marisol Venn", "Marisol Venner"}, Names{"Marisol Vener", "Marisol Venner"},
          Names{"marisol  venner", "Marisol Venner"}, Names{"Venner Marisol", "Marisol Venner"},
          Names{"Marisol", "Marisol Venner"}, Names{"Odete", "Odette"}, Names{"Elan Crow", "Élan Crow"}})
        EXPECT_TRUE(areLike(names)) << names.one << " and " << names.other;
}

TEST(Likeness, leavesOtherNamesApart) {
    for (const Names& names :
         {Names{"Marisol Venner", "Tamsin Venner"}, Names{"Ann", "Ana"}, Names{"", "Marisol Venner"},
          Names{"Bell Row Bakery", "Bell Row Boat Hire"}, Names{"Odette", "Colette"}})
        EXPECT_FALSE(areLike(names)) << names.one << " and " << names.other;
}

TEST(Likeness, isSaidOfVeryLongNamesToo) {
    const QString name(300, QLatin1Char('m'));
    EXPECT_TRUE(desk::isLike(name, name + QLatin1Char('x')));
    EXPECT_FALSE(desk::isLike(name, QString(300, QLatin1Char('n'))));
}

} // namespace

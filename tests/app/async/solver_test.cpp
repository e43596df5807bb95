// SPDX-License-Identifier: MIT
#include "app/async/solver.h"
#include "core/supply/purchase_program.h"
#include "tests/support/temp_folder.h"

#include <QFile>

#include <gtest/gtest.h>

using namespace sp;

namespace {

constexpr const char* kSmall = "Minimize\n obj: 3 x + 2 y\nSubject To\n 2 x + y >= 3\nGenerals\n x\n y\nEnd\n";

QString script(const test::TempFolder& folder, const char* text) {
    const QString path = QString::fromStdString(folder / "solver");
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
    file.close();
    EXPECT_TRUE(file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
    return path;
}

// By hand: x = 1, y = 1 costs 5; x = 2 costs 6, y = 3 costs 6.
TEST(Solver, answersASmallProgramme) {
    if (!async::hasSolver()) GTEST_SKIP() << "install coinor-cbc";
    const auto solution = async::solved(kSmall, 5, [] { return false; });
    ASSERT_TRUE(solution);
    EXPECT_EQ(solution->substr(0, 7), "Optimal");
    EXPECT_NE(solution->find("objective value 5."), std::string::npos) << *solution;
}

TEST(Solver, isMissedWithoutHarm) {
    EXPECT_FALSE(async::hasSolver(QStringLiteral("/nowhere/cbc")));
    EXPECT_FALSE(async::solved(
        kSmall, 5, [] { return false; }, QStringLiteral("/nowhere/cbc")));
}

TEST(Solver, thatFailsOrSaysNothingIsNoAnswer) {
    const test::TempFolder folder;
    EXPECT_FALSE(async::solved(
        kSmall, 5, [] { return false; }, script(folder, "#!/bin/sh\nexit 3\n")));
    EXPECT_FALSE(async::solved(
        kSmall, 5, [] { return false; }, script(folder, "#!/bin/sh\nexit 0\n")));
    EXPECT_FALSE(async::solved(
        kSmall, 5, [] { return false; }, script(folder, "not a program")));
}

TEST(Solver, endsWhenNobodyWaits) {
    const test::TempFolder folder;
    int asked = 0;
    EXPECT_FALSE(async::solved(
        kSmall, 60, [&asked] { return ++asked > 1; }, script(folder, "#!/bin/sh\nexec sleep 600\n")));
}

} // namespace

// SPDX-License-Identifier: MIT
// A second start of the program raises the first.
#include "app/main/doorbell.h"

#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QSignalSpy>

#include <atomic>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>

namespace {

using namespace sp;
using program::Doorbell;

class DoorbellTest : public testing::Test {
  protected:
    DoorbellTest() {
        qputenv("XDG_RUNTIME_DIR", QByteArray::fromStdString(folder.path().string()));
        ::chmod(folder.path().c_str(), 0700);
    }
    /// As another program would; what comes of it.
    bool ring(const QString& file) {
        std::atomic<bool> isTaken = false;
        std::atomic<bool> isDone = false;
        std::thread other([&] {
            isTaken = Doorbell::ring(file);
            isDone = true;
        });
        EXPECT_TRUE(test::waitFor([&] { return isDone.load(); }));
        other.join();
        return isTaken;
    }

    test::TempFolder folder;
};

TEST_F(DoorbellTest, isHeardByTheFirst) {
    EXPECT_FALSE(Doorbell::ring({})) << "nobody is there";
    Doorbell first;
    ASSERT_TRUE(first.listen());
    QSignalSpy rung(&first, &Doorbell::rung);
    EXPECT_TRUE(ring(QStringLiteral("/books/Étoile & Söhne.jobbook")));
    ASSERT_EQ(rung.count(), 1);
    EXPECT_EQ(rung.at(0).at(0).toString(), QStringLiteral("/books/Étoile & Söhne.jobbook"));
    EXPECT_TRUE(ring({}));
    EXPECT_EQ(rung.count(), 2);
    EXPECT_EQ(rung.at(1).at(0).toString(), QString());
}

TEST_F(DoorbellTest, isNotHeldUpByAProgramThatDied) {
    const auto left = folder / "stonepenny.socket";
    test::writeBytes(left, "");
    EXPECT_FALSE(Doorbell::ring({}));
    {
        Doorbell first;
        EXPECT_TRUE(first.listen());
        EXPECT_TRUE(ring({}));
    }
    EXPECT_FALSE(std::filesystem::exists(left));
}

} // namespace

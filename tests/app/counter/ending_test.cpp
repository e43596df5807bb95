// SPDX-License-Identifier: MIT
// The program is asked to end, as at logging out, and ends as if its window were closed.
#include "app/demo/demo_book.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QProcess>
#include <gtest/gtest.h>

#include <csignal>
#include <filesystem>

using namespace sp;

namespace {

class Ending : public testing::Test {
  protected:
    Ending() {
        const auto made = demo::createDemoBook(m_book, m_clock.environment());
        EXPECT_TRUE(made.has_value());
    }

    /// Opens the window on the book and sends the signal as soon as the book is held. Whether the program ended by
    /// itself.
    bool endsBy(int signal) {
        auto environment = QProcessEnvironment::systemEnvironment();
        for (const char* name : {"HOME", "XDG_RUNTIME_DIR", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
            environment.insert(QLatin1String(name), QString::fromStdString(m_folder.path().string()));
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
        QProcess program;
        program.setProcessEnvironment(environment);
        program.start(QStringLiteral(STONEPENNY), {QString::fromStdString(m_book.string())});
        EXPECT_TRUE(test::waitFor([&] { return std::filesystem::exists(m_book.string() + ".lock"); }));
        ::kill(static_cast<pid_t>(program.processId()), signal);
        EXPECT_TRUE(test::waitFor([&] { return program.state() == QProcess::NotRunning; }));
        return program.exitStatus() == QProcess::NormalExit && program.exitCode() == 0;
    }
    bool wasCutShort() {
        const auto book = db::Book::open(m_book, m_clock.environment());
        EXPECT_TRUE(book.has_value());
        return book && (*book)->cutShortAfter().has_value();
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    std::filesystem::path m_book = m_folder.path() / "demo.jobbook";
};

TEST_F(Ending, askedForIsAClosing) {
    for (const int signal : {SIGTERM, SIGHUP, SIGINT}) {
        EXPECT_TRUE(endsBy(signal)) << signal;
        EXPECT_FALSE(wasCutShort()) << signal;
    }
}

TEST_F(Ending, byForceIsToldAtTheNextOpening) {
    EXPECT_FALSE(endsBy(SIGKILL));
    EXPECT_TRUE(wasCutShort());
}

} // namespace

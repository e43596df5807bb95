// SPDX-License-Identifier: MIT
// The program asks nothing of the network, and takes nothing from the folder it is started in or from that of
// the book but what it was told to. The system's own calls are written down by strace (strace.io).
#include "db/book/book.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QProcess>
#include <QStandardPaths>
#include <gtest/gtest.h>

#include <algorithm>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

using namespace sp;
namespace fs = std::filesystem;

namespace {

/// What strace wrote down of a program and all that it started.
struct Trace {
    std::vector<std::string> network; ///< calls of the internet's families, as written
    std::vector<fs::path> opened;     ///< also what was not there
};

class Traced : public testing::Test {
  protected:
    Traced() {
        fs::create_directory(m_home);
        fs::create_directory(m_here);
        EXPECT_EQ(QProcess::execute(QStringLiteral(STONEPENNY),
                                    {QStringLiteral("demo"), QString::fromStdString(m_book.string())}),
                  0);
        // What a loader, Qt or SQLite might take if it looked for it there.
        for (const auto* name : {"qt.conf", "libQt6Core.so.6", "libQt6Widgets.so.6", "libsqlite3.so.0", "libfmt.so.9",
                                 "fonts.conf", ".sqliterc", "stonepenny.conf"})
            test::writeBytes(m_here / name, "[Paths]\nPlugins=.\n");
        for (const auto* name : {"platforms", "imageformats", "translations", "styles"}) {
            fs::create_directory(m_here / name);
            test::writeBytes(m_here / name / "libqtaken.so", "not a library");
        }
        test::writeBytes(m_here / "art.svg", R"(<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="20mm" )"
                                             R"(viewBox="0 0 40 20"><image href="taken.png" width="9" height="9"/>)"
                                             R"(<image href="http://127.0.0.1:9/far.png" width="9" height="9"/>)"
                                             R"(<circle cx="5" cy="5" r="1.5"/><circle cx="9" cy="5" r="1.5"/></svg>)");
        test::writeBytes(m_here / "taken.png", "no picture");
    }

    static bool canTrace() {
        return !QStandardPaths::findExecutable(QStringLiteral("strace")).isEmpty() &&
               QProcess::execute(QStringLiteral("strace"), {QStringLiteral("-qq"), QStringLiteral("-o"),
                                                            QStringLiteral("/dev/null"), QStringLiteral("true")}) == 0;
    }
    /// `meanwhile` is called with the process of strace once it runs.
    template<class Meanwhile>
    Trace traceOf(const QStringList& command, const Meanwhile& meanwhile) {
        const auto log = m_folder / "trace.txt";
        auto environment = QProcessEnvironment::systemEnvironment();
        for (const char* name : {"HOME", "XDG_RUNTIME_DIR", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
            environment.insert(QLatin1String(name), QString::fromStdString(m_home.string()));
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
        environment.insert(QStringLiteral("QT_PLUGIN_PATH"), QString::fromStdString(m_here.string()));
        environment.insert(QStringLiteral("ASAN_OPTIONS"), QStringLiteral("detect_leaks=0")); // it cannot be traced
        QProcess program;
        program.setProcessEnvironment(environment);
        program.setWorkingDirectory(QString::fromStdString(m_here.string()));
        program.start(QStringLiteral("strace"),
                      QStringList{QStringLiteral("-f"), QStringLiteral("-qq"), QStringLiteral("-s"),
                                  QStringLiteral("4096"), QStringLiteral("-e"),
                                  QStringLiteral("trace=open,openat,execve,socket,connect,sendto"),
                                  QStringLiteral("-o"), QString::fromStdString(log.string())} +
                          command);
        EXPECT_TRUE(program.waitForStarted());
        meanwhile(program.processId());
        EXPECT_TRUE(test::waitFor([&] { return program.state() == QProcess::NotRunning; }));
        EXPECT_TRUE(program.exitStatus() == QProcess::NormalExit);
        m_exit = program.exitCode();
        return read(log);
    }
    Trace traceOf(const QStringList& command) {
        return traceOf(command, [](qint64) {});
    }
    /// Of a verb of the program itself.
    Trace traceOfVerb(const std::vector<std::string>& words) {
        QStringList command{QStringLiteral(STONEPENNY)};
        for (const auto& word : words) command << QString::fromStdString(word);
        auto trace = traceOf(command);
        EXPECT_EQ(m_exit, 0) << words.front();
        return trace;
    }

    /// What was opened in the folder besides files with these beginnings.
    std::vector<std::string> takenHere(const Trace& trace, const std::vector<std::string>& told) const {
        std::vector<std::string> taken;
        for (const auto& path : trace.opened) {
            const auto asked = path.lexically_relative(m_here);
            if (asked.empty() || asked == "." || *asked.begin() == "..") continue;
            if (*asked.begin() == ":") continue; // how Qt names what it has within; it looks for one that is not there
            const auto isTold = [&](const std::string& name) { return asked.string().starts_with(name); };
            if (std::ranges::none_of(told, isTold)) taken.push_back(asked.string());
        }
        return taken;
    }
    void expectOnly(const Trace& trace, const std::vector<std::string>& told) const {
        EXPECT_GT(trace.opened.size(), 20U) << "hardly anything was written down";
        EXPECT_EQ(trace.network, std::vector<std::string>{});
        EXPECT_EQ(takenHere(trace, told), std::vector<std::string>{});
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    fs::path m_home = m_folder / "home";
    fs::path m_here = m_folder / "here";
    fs::path m_book = m_here / "Willow Bench.jobbook";
    int m_exit = -1; ///< of the program that was traced last

  private:
    Trace read(const fs::path& log) const {
        static const std::regex opening(R"(\bopen(?:at)?\((?:AT_FDCWD, )?"((?:[^"\\]|\\.)*)\")");
        Trace trace;
        std::istringstream lines(test::bytesOf(log));
        for (std::string line; std::getline(lines, line);) {
            if (line.find("AF_INET") != std::string::npos) trace.network.push_back(line);
            std::smatch found;
            if (std::regex_search(line, found, opening))
                trace.opened.push_back((m_here / found.str(1)).lexically_normal());
        }
        return trace;
    }
};

#define NEEDS_STRACE()                                                                                                 \
    if (!canTrace()) GTEST_SKIP() << "strace is not there, or this machine lets no program be traced"

TEST_F(Traced, verbsTakeWhatTheyWereToldAndAskNobody) {
    NEEDS_STRACE();
    const auto name = m_book.filename().string();
    expectOnly(traceOfVerb({"check", name}), {name});
    expectOnly(traceOfVerb({"count", "art.svg"}), {"art.svg"});
    expectOnly(traceOfVerb({"quotes", "--book", name}), {name});
    const auto number = [&] {
        const auto book = db::Book::open(m_book, m_clock.environment());
        const auto jobs = book.value()->quotes({}, 100).value();
        const auto given = std::ranges::find_if(jobs, [](const auto& job) { return !job.number.empty(); });
        return given->number;
    }();
    expectOnly(traceOfVerb({"sheet", "--book", name, "--quote", number, "--pdf", "quote.pdf"}),
               {name, "quote.pdf", "."});
    EXPECT_TRUE(fs::exists(m_here / "quote.pdf"));
}

TEST_F(Traced, theWindowTakesItsBookAndAsksNobody) {
    NEEDS_STRACE();
    const auto name = m_book.filename().string();
    const auto trace = traceOf({QStringLiteral(STONEPENNY), QString::fromStdString(name)}, [&](qint64 process) {
        const auto lock = m_book.string() + ".lock";
        EXPECT_TRUE(test::waitFor([&] { return fs::exists(lock) && !test::bytesOf(lock).empty(); }));
        // The only child of strace.
        const auto tracer = std::to_string(process);
        std::ifstream children("/proc/" + tracer + "/task/" + tracer + "/children");
        pid_t child = 0;
        ASSERT_TRUE(children >> child);
        ::kill(child, SIGTERM);
    });
    expectOnly(trace, {name});
}

// The control: what must not happen is seen where it does.
TEST_F(Traced, seesAProgramThatTakesAndAsks) {
    NEEDS_STRACE();
    const auto trace = traceOf({QStringLiteral("bash"), QStringLiteral("-c"),
                                QStringLiteral("cat qt.conf > /dev/null; exec 3<>/dev/tcp/127.0.0.1/9")});
    EXPECT_FALSE(trace.network.empty());
    EXPECT_EQ(takenHere(trace, {}), std::vector<std::string>{"qt.conf"});
}

} // namespace

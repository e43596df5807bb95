// SPDX-License-Identifier: MIT
#include "app/async/solver.h"

#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QTemporaryDir>

namespace sp::async {

namespace {

constexpr int kLookEvery = 50;             ///< ms: whether the answer is still wanted
constexpr int kGrace = 5'000;              ///< ms beyond its own limit
constexpr qint64 kMostAnswer = 32'000'000; ///< bytes

void end(QProcess& process) {
    process.kill();
    process.waitForFinished();
}

} // namespace

bool hasSolver(const QString& program) { return QFileInfo(program).isExecutable(); }

std::optional<std::string> solved(const std::string& programme, int seconds, const std::function<bool()>& isStopped,
                                  const QString& program) {
    if (!hasSolver(program)) return std::nullopt;
    const QTemporaryDir folder;
    const QString question = folder.filePath(QStringLiteral("purchase.lp"));
    const QString answer = folder.filePath(QStringLiteral("purchase.sol"));
    QFile file(question);
    const auto size = static_cast<qint64>(programme.size());
    if (!folder.isValid() || !file.open(QIODevice::WriteOnly) || file.write(programme.data(), size) != size)
        return std::nullopt;
    file.close();
    QProcess process;
    process.setStandardInputFile(QProcess::nullDevice());
    process.setStandardOutputFile(QProcess::nullDevice());
    process.setStandardErrorFile(QProcess::nullDevice());
    // Its preprocessing has been seen to lose the cheapest plan (tests/reference/cbc_purchase.h).
    process.start(program, {question, QStringLiteral("sec"), QString::number(seconds), QStringLiteral("preprocess"),
                            QStringLiteral("off"), QStringLiteral("ratioGap"), QStringLiteral("0"),
                            QStringLiteral("allowableGap"), QStringLiteral("0.5"), QStringLiteral("solve"),
                            QStringLiteral("solution"), answer});
    QElapsedTimer clock;
    clock.start();
    while (!process.waitForFinished(kLookEvery)) {
        if (process.state() == QProcess::NotRunning) return std::nullopt; // it did not start
        if (!isStopped() && !clock.hasExpired(seconds * 1'000 + kGrace)) continue;
        end(process);
        return std::nullopt;
    }
    QFile found(answer);
    if (process.exitStatus() != QProcess::NormalExit || process.exitCode() != 0 || found.size() > kMostAnswer ||
        !found.open(QIODevice::ReadOnly))
        return std::nullopt;
    return found.readAll().toStdString();
}

} // namespace sp::async

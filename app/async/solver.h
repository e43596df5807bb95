// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <functional>
#include <optional>
#include <string>

namespace sp::async {

/// The solver of mixed integer programmes that proves what our own search cannot: cbc of COIN-OR (Debian: coinor-cbc),
/// a program of its own, used where it is installed at its fixed place.
inline constexpr const char* kSolver = "/usr/bin/cbc";

bool hasSolver(const QString& program = QString::fromLatin1(kSolver));

/// What the solver answers to a programme (LP format, whole sums): the text of its solution file, with the best it
/// found when `seconds` of processor time were over. Nothing when it is not there, was stopped, failed or said nothing.
/// Waits for it: not for the screen's thread. Its files lie in a folder of their own, which goes with them.
std::optional<std::string> solved(const std::string& programme, int seconds, const std::function<bool()>& isStopped,
                                  const QString& program = QString::fromLatin1(kSolver));

} // namespace sp::async

// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <random>
#include <string>

namespace sp::test {

/// The seed of a random test: STONEPENNY_SEED when set, else a new one. Printed, so that a failure can be repeated.
inline std::uint64_t printedSeed() {
    const char* asked = std::getenv("STONEPENNY_SEED");
    const std::uint64_t seed = asked != nullptr ? std::stoull(asked) : std::random_device{}();
    std::cout << "seed: STONEPENNY_SEED=" << seed << '\n';
    return seed;
}

/// The seed of a test whose long form, asked for by that variable, searches: drawn anew there, the same in its short
/// form, which every change must pass.
inline std::uint64_t searchSeed(const char* longForm) {
    if (std::getenv(longForm) != nullptr || std::getenv("STONEPENNY_SEED") != nullptr) return printedSeed();
    return 20'261'202;
}

/// How many rounds a long test makes: the environment variable when set, else the default.
inline int roundsOr(const char* variable, int rounds) {
    const char* asked = std::getenv(variable);
    return asked != nullptr ? std::stoi(asked) : rounds;
}

} // namespace sp::test

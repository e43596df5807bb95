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

/// How many rounds a long test makes: the environment variable when set, else the default.
inline int roundsOr(const char* variable, int rounds) {
    const char* asked = std::getenv(variable);
    return asked != nullptr ? std::stoi(asked) : rounds;
}

} // namespace sp::test

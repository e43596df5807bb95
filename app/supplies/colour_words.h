// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <cstdint>
#include <optional>

namespace sp::supplies {

/// The colour whose name a person wrote, as the list has it; none for any other words.
std::optional<std::uint32_t> colourCalled(const QString& words);

/// How a stone is drawn that a supplier calls so: as the colour of that name, else as the longest one that stands in it
/// as words ("Light sapphire AB"), else grey.
std::uint32_t drawnAs(const QString& words);

} // namespace sp::supplies

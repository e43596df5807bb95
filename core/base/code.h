// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace sp::base {

/// What kind of thing went wrong; the app chooses its offer of help by this.
enum class Code {
    Invalid,    ///< the text or value cannot be read as what was asked for
    OutOfRange, ///< it can be read, but lies outside the stated range
    TooLarge,   ///< a size, count or sum is beyond what the program works with
    Missing,    ///< something the work needs is not there (a price, a pack, a file)
    NotFound,   ///< a named thing does not exist
    Ambiguous,  ///< the text could mean two things
    Conflict,   ///< somebody else changed the same thing meanwhile
    Busy,       ///< another program holds the file
    Full,       ///< the disk is full
    ReadOnly,   ///< the file or its folder cannot be written
    Foreign,    ///< the file is not a job book, or was not made by this program
    TooNew,     ///< the file was written by a later version
    Damaged,    ///< the file is a job book but its content does not hold together
    Failed      ///< the system refused for another reason, which the values name
};

/// The stable English name of a code, for logs and tests ("out of range").
std::string_view nameOf(Code code);

} // namespace sp::base

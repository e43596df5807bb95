// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/error.h"

#include <tl/expected.hpp>

#include <string>
#include <utility>

namespace sp::base {

/// A value, or the error that stands in its place.
template<class T>
using Result = tl::expected<T, Error>;

/// Success without a value.
using Done = Result<void>;

/// Makes the error side of any Result from a room's list of faults; the values stand in the order of the sentence's
/// places.
template<ListedFault F, class... Values>
tl::unexpected<Error> fail(F fault, std::string subject, const Values&... values) {
    return tl::unexpected<Error>(makeError(fault, std::move(subject), values...));
}

/// Hands an error on to a Result of another type.
inline tl::unexpected<Error> fail(Error error) { return tl::unexpected<Error>(std::move(error)); }

} // namespace sp::base

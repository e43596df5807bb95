// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"

#include <string>
#include <utility>
#include <vector>

namespace sp::base {

/// An error a person can meet. `subject` is the thing concerned (a field, a file, a material) as the person knows it.
/// The sentence (what happened, to what, what to do) is found by `fault` and filled with `values` (app/words).
struct Error {
    Code code = Code::Failed;
    std::string subject;
    MessageId fault = {};
    std::vector<Value> values = {};

    /// The sentence without its words, to stand inside another one.
    Message message() const { return {fault, values}; }

    friend bool operator==(const Error&, const Error&) = default;
};

/// The error of a fault, with its values in the order of the sentence's places.
template<ListedFault F, class... Values>
Error makeError(F fault, std::string subject, const Values&... values) {
    Error error;
    error.code = codeOf(fault);
    error.subject = std::move(subject);
    error.fault = idOf(fault);
    error.values = {asValue(values)...};
    return error;
}

/// The same error, told of the thing of this name: "Jet: …".
Error about(std::string name, const Error& error);

/// Without words, for logs and tests: "NothingToLay of pieces", "TooManyPieces(100000, 3) of piece".
std::string describe(const Error& error);

} // namespace sp::base

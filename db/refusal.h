// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/overflow.h"
#include "core/base/result.h"

#include <exception>
#include <string>
#include <type_traits>
#include <utility>

namespace sp::db {

/// How an error travels inside this room: thrown where it is met, turned into a Result at the room's door. It never
/// leaves `db`.
class Refusal : public std::exception {
  public:
    explicit Refusal(base::Error error)
        : m_error(std::move(error)) {}

    const base::Error& error() const { return m_error; }
    const char* what() const noexcept override { return m_error.detail.c_str(); }

  private:
    base::Error m_error;
};

[[noreturn]] inline void refuse(base::Code code, std::string subject, std::string detail) {
    throw Refusal(base::Error{code, std::move(subject), std::move(detail)});
}

/// The value, or the error thrown on.
template<class T>
T orRefuse(base::Result<T> result) {
    if (!result) throw Refusal(std::move(result.error()));
    if constexpr (!std::is_void_v<T>) return std::move(*result);
}

/// Runs `work` and turns whatever it throws into the error side of a Result.
template<class Work>
auto atTheDoor(Work&& work) -> base::Result<std::invoke_result_t<Work>> {
    using Value = std::invoke_result_t<Work>;
    try {
        if constexpr (std::is_void_v<Value>) {
            work();
            return {};
        } else {
            return work();
        }
    } catch (const Refusal& refusal) { return base::fail(refusal.error()); } catch (const base::Overflow&) {
        return base::fail(base::Code::Invalid, {},
                          "A figure is larger than the program works with; check the amounts.");
    } catch (const std::exception& error) {
        return base::fail(base::Code::Failed, {},
                          std::string("The job book could not finish this (") + error.what() + "); try again.");
    } catch (...) { return base::fail(base::Code::Failed, {}, "The job book could not finish this; try again."); }
}

} // namespace sp::db

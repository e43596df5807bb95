// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/overflow.h"
#include "core/base/result.h"
#include "db/messages.h"

#include <exception>
#include <string>
#include <type_traits>
#include <utility>

namespace sp::db {

/// How an error travels inside this room: thrown where it is met, turned into a Result at the room's door. It never
/// leaves `db`.
class DbError : public std::exception {
  public:
    explicit DbError(base::Error error)
        : m_error(std::move(error)) {}

    const base::Error& error() const { return m_error; }
    const char* what() const noexcept override { return m_error.fault.name.data(); }

  private:
    base::Error m_error;
};

template<class... Values>
[[noreturn]] void throwError(Fault fault, std::string subject, const Values&... values) {
    throw DbError(base::makeError(fault, std::move(subject), values...));
}

/// The value, or the error thrown on.
template<class T>
T valueOrThrow(base::Result<T> result) {
    if (!result) throw DbError(std::move(result.error()));
    if constexpr (!std::is_void_v<T>) return std::move(*result);
}

/// Runs `work` and turns whatever it throws into the error side of a Result.
template<class Work>
auto catchToResult(Work&& work) -> base::Result<std::invoke_result_t<Work>> {
    using Value = std::invoke_result_t<Work>;
    try {
        if constexpr (std::is_void_v<Value>) {
            work();
            return {};
        } else {
            return work();
        }
    } catch (const DbError& refusal) { return base::fail(refusal.error()); } catch (const base::Overflow&) {
        return base::fail(Fault::FigureTooLarge, {});
    } catch (const std::exception& error) {
        return base::fail(Fault::NotFinishedBecause, {}, error.what());
    } catch (...) { return base::fail(Fault::NotFinished, {}); }
}

} // namespace sp::db

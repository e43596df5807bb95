// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "db/records/kind.h"

#include <string>
#include <string_view>

// Values as JSON: {"format":1,"kind":"material","value":{…}}, where "format" is the version of that kind. What stands
// in there, field for field, and how to read a book without this program: FORMAT.md beside this file.
namespace sp::db::records {

std::string write(const Kind& kind, const void* value);
base::Done read(const Kind& kind, std::string_view json, void* value);

/// The value as JSON, in the newest version of its kind. Equal values give equal bytes.
template<class T>
std::string write(const T& value) {
    return write(kindOf<T>(), &value);
}

/// Reads a record of any version there has been: upgraded version by version, every key of the newest there once and
/// no other, whole numbers whole, everything within its range.
/// Errors: TooNew for a version that is still to come; Damaged for anything else.
template<class T>
base::Result<T> read(std::string_view json) {
    T value{};
    if (auto good = read(kindOf<T>(), json, &value); !good) return base::fail(good.error());
    return value;
}

/// A kind for values of type T, with the upgrades from version 1 on.
template<class T>
Kind makeKind(std::string_view name, std::vector<Upgrade> upgrades = {}) {
    Kind kind;
    kind.name = name;
    kind.object = &catalogue::fields::objectOf<T>;
    kind.version = newestVersion(name, catalogue::fields::objectOf<T>(), upgrades);
    kind.upgrades = std::move(upgrades);
    kind.check = [](const void* value) { return catalogue::fields::check(*static_cast<const T*>(value)); };
    kind.renewed = [](std::string_view json) -> base::Result<std::string> {
        const auto value = read<T>(json);
        if (!value) return base::fail(value.error());
        return write(*value);
    };
    return kind;
}

/// Whether two records of a kind say the same, each in whatever version it was written. Errors: as `read`.
base::Result<bool> saySame(const Kind& kind, std::string_view one, std::string_view other);

} // namespace sp::db::records

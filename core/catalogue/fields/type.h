// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/catalogue/bench.h"
#include "core/catalogue/fields/names.h"
#include "core/units/count.h"
#include "core/units/currency.h"
#include "core/units/date.h"
#include "core/units/duration.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"
#include "core/units/temperature.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace sp::catalogue::fields {

struct Object;

/// The fields of a type; each type with fields has its own, declared in tables.h.
template<class T>
const Object& objectOf();

enum class Sort {
    YesNo,
    Whole,
    Money,
    Rate,
    Length,
    Duration,
    Count,
    Word, ///< an enumerator
    Text,
    Id,
    Date,
    Currency,
    Temperature,
    Maybe,  ///< nothing or an inner value
    List,   ///< inner values in order
    Steps,  ///< an inner value for each step of the bench
    Object, ///< has fields
};

/// What can be done with a value of a type that is not known where it is done. Values are handed over by address; a
/// function that a type has no use for is null. With it the reader, the writer and the checks of a record are
/// compiled once and not once for each type.
struct Type {
    Sort sort = Sort::Object;
    // Whole, the five units and Word (the place of the enumerator).
    std::int64_t (*whole)(const void* value) = nullptr;
    void (*setWhole)(void* value, std::int64_t whole) = nullptr;
    std::int64_t leastWhole = std::numeric_limits<std::int64_t>::min(); ///< what the C++ type can hold
    std::int64_t mostWhole = std::numeric_limits<std::int64_t>::max();
    std::span<const std::string_view> names; ///< of the enumerators
    // Maybe, List and Steps.
    const Type* inner = nullptr;
    std::size_t (*size)(const void* value) = nullptr;
    const void* (*at)(const void* value, std::size_t place) = nullptr;
    void* (*add)(void* value) = nullptr; ///< one more inner value; not for Steps
    void (*clear)(void* value) = nullptr;
    // Object.
    const Object& (*object)() = nullptr;
    // All.
    bool (*equal)(const void* a, const void* b) = nullptr;
    void (*assign)(void* to, const void* from) = nullptr;

    void* itemOf(void* value, std::size_t place) const { return const_cast<void*>(at(value, place)); }
};

template<class T>
const Type& typeOf();

template<class T>
struct IsList : std::false_type {};
template<class T>
struct IsList<std::vector<T>> : std::true_type {};
template<class T>
struct IsMaybe : std::false_type {};
template<class T>
struct IsMaybe<std::optional<T>> : std::true_type {};
template<class T>
struct IsSteps : std::false_type {};
template<class T>
struct IsSteps<std::array<T, kSteps.size()>> : std::true_type {};

/// How the values that are one whole number are taken from it and made of it.
template<class T>
struct WholeOf;
template<>
struct WholeOf<std::int64_t> {
    static constexpr Sort kSort = Sort::Whole;
    static std::int64_t of(std::int64_t v) { return v; }
    static std::int64_t from(std::int64_t v) { return v; }
};
template<>
struct WholeOf<std::uint32_t> {
    static constexpr Sort kSort = Sort::Whole;
    static std::int64_t of(std::uint32_t v) { return v; }
    static std::uint32_t from(std::int64_t v) { return static_cast<std::uint32_t>(v); }
};
template<>
struct WholeOf<units::Money> {
    static constexpr Sort kSort = Sort::Money;
    static std::int64_t of(units::Money v) { return v.micros(); }
    static units::Money from(std::int64_t v) { return units::Money::fromMicros(v); }
};
template<>
struct WholeOf<units::Rate> {
    static constexpr Sort kSort = Sort::Rate;
    static std::int64_t of(units::Rate v) { return v.ppm(); }
    static units::Rate from(std::int64_t v) { return units::Rate::fromPpm(v); }
};
template<>
struct WholeOf<units::Length> {
    static constexpr Sort kSort = Sort::Length;
    static std::int64_t of(units::Length v) { return v.nanometres(); }
    static units::Length from(std::int64_t v) { return units::Length::fromNanometres(v); }
};
template<>
struct WholeOf<units::Duration> {
    static constexpr Sort kSort = Sort::Duration;
    static std::int64_t of(units::Duration v) { return v.milliseconds(); }
    static units::Duration from(std::int64_t v) { return units::Duration::fromMilliseconds(v); }
};
template<>
struct WholeOf<units::Count> {
    static constexpr Sort kSort = Sort::Count;
    static std::int64_t of(units::Count v) { return v.value(); }
    static units::Count from(std::int64_t v) { return units::Count::of(v); }
};
template<Named E>
struct WholeOf<E> {
    static constexpr Sort kSort = Sort::Word;
    static std::int64_t of(E v) { return static_cast<std::int64_t>(v); }
    static E from(std::int64_t v) { return static_cast<E>(v); }
};

template<class T>
concept IsWhole = requires {
    WholeOf<T>::kSort;
};

template<class T>
void describeWhole(Type& type) {
    type.sort = WholeOf<T>::kSort;
    type.whole = [](const void* value) { return WholeOf<T>::of(*static_cast<const T*>(value)); };
    type.setWhole = [](void* value, std::int64_t whole) { *static_cast<T*>(value) = WholeOf<T>::from(whole); };
    if constexpr (std::is_same_v<T, std::uint32_t>) {
        type.leastWhole = 0;
        type.mostWhole = std::numeric_limits<std::uint32_t>::max();
    }
    if constexpr (std::is_enum_v<T>) type.names = kNames<T>;
}

template<class T>
void describeInner(Type& type) {
    using Inner = typename T::value_type;
    type.inner = &typeOf<Inner>();
    if constexpr (IsMaybe<T>::value) {
        type.sort = Sort::Maybe;
        type.size = [](const void* v) { return static_cast<const T*>(v)->has_value() ? std::size_t{1} : 0; };
        type.at = [](const void* v, std::size_t) -> const void* { return &**static_cast<const T*>(v); };
        type.add = [](void* v) -> void* { return &static_cast<T*>(v)->emplace(); };
        type.clear = [](void* v) { static_cast<T*>(v)->reset(); };
    } else {
        type.sort = IsList<T>::value ? Sort::List : Sort::Steps;
        type.size = [](const void* v) { return static_cast<const T*>(v)->size(); };
        type.at = [](const void* v, std::size_t i) -> const void* { return &(*static_cast<const T*>(v))[i]; };
        if constexpr (IsList<T>::value) {
            type.add = [](void* v) -> void* { return &static_cast<T*>(v)->emplace_back(); };
            type.clear = [](void* v) { static_cast<T*>(v)->clear(); };
        }
    }
}

template<class T>
Type describe() {
    Type type;
    type.equal = [](const void* a, const void* b) { return *static_cast<const T*>(a) == *static_cast<const T*>(b); };
    type.assign = [](void* to, const void* from) { *static_cast<T*>(to) = *static_cast<const T*>(from); };
    if constexpr (IsWhole<T>)
        describeWhole<T>(type);
    else if constexpr (IsMaybe<T>::value || IsList<T>::value || IsSteps<T>::value)
        describeInner<T>(type);
    else if constexpr (std::is_same_v<T, bool>)
        type.sort = Sort::YesNo;
    else if constexpr (std::is_same_v<T, std::string>)
        type.sort = Sort::Text;
    else if constexpr (std::is_same_v<T, base::Id>)
        type.sort = Sort::Id;
    else if constexpr (std::is_same_v<T, units::Date>)
        type.sort = Sort::Date;
    else if constexpr (std::is_same_v<T, units::Currency>)
        type.sort = Sort::Currency;
    else if constexpr (std::is_same_v<T, units::Temperature>)
        type.sort = Sort::Temperature;
    else
        type.object = &objectOf<T>;
    return type;
}

template<class T>
const Type& typeOf() {
    static const Type type = describe<T>();
    return type;
}

} // namespace sp::catalogue::fields

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/ensure.h"
#include "core/catalogue/fields/terms.h"
#include "core/catalogue/fields/type.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace sp::catalogue::fields {

/// What a whole number may be, in the unit it is kept in; both ends included.
struct Range {
    std::int64_t lowest = std::numeric_limits<std::int64_t>::min();
    std::int64_t highest = std::numeric_limits<std::int64_t>::max();

    constexpr bool holds(std::int64_t value) const { return value >= lowest && value <= highest; }
    friend bool operator==(const Range&, const Range&) = default;
};

/// What a text may be, in bytes of UTF-8.
struct Text {
    std::size_t shortest = 0;
    std::size_t longest = 200;
    bool hasLines = false;
};

/// May a key be none?
enum class Key { Needed, MayBeNone };

/// How long a list may be.
struct Length {
    std::size_t longest = 0;
};

/// What a field may hold. Which of them counts is a matter of the field's type; of a list, Length bounds the list and
/// the others bound each of its items.
struct Bounds {
    Range range;
    Text text;
    Key key = Key::MayBeNone;
    Length length;

    void set(Range limit) { range = limit; }
    void set(Text limit) { text = limit; }
    void set(Key limit) { key = limit; }
    void set(Length limit) { length = limit; }
};

/// The version of a kind of record in which something came. A field of a type that several kinds hold (an order line
/// in an order, and in a quote under its seal) came into each with a version of that kind.
struct Since {
    std::string_view kind;
    int version = 1;
};

/// One field of a value: everything the program knows about it that is not said by the C++ type alone.
struct Field {
    std::string_view owner; ///< the name of the Object it is in
    std::string_view key;   ///< in JSON; part of the file format: never changed, never used again for something else
    Term words;             ///< how a person knows it
    const Type* type = nullptr;
    const void* (*in)(const void* owner) = nullptr; ///< the member of an owner
    const void* member = nullptr;                   ///< which member it is, see fieldOf
    Bounds bounds;
    std::vector<Since> since;          ///< empty: since version 1 of every kind that holds it
    std::function<void(void*)> before; ///< puts what it stood for before it came; empty: an upgrade has to say it
    std::string_view said;             ///< what that is, for the page on the file format
    std::optional<Range> asked; ///< what may be asked for and priced, where more may be kept (a draft half typed)
    std::string_view noPrice;   ///< why it has no effect on any price; empty: it may have one
    std::string_view noInput;   ///< why no screen has an input for it; empty: one has
    bool isOneCause = false;    ///< a change inside it is one reason for another price, not one a field

    /// The first version of `kind` that has this field.
    int sinceIn(std::string_view kind) const {
        for (const auto& row : since)
            if (row.kind == kind) return row.version;
        return 1;
    }
    void* of(void* whole) const { return const_cast<void*>(in(whole)); }
    /// "ShopRates.labour_per_hour_micros": one for each field of the table.
    std::string id() const { return std::string(owner).append(".").append(key); }

    /// The same field, which came with these versions of the kinds that hold it.
    Field cameWith(std::vector<Since> versions) && {
        since = std::move(versions);
        return std::move(*this);
    }
    /// The same field, and what it stands for in records of before: a value of the member's type, and how JSON has it.
    template<class T>
    Field standingFor(T value, std::string_view json) && {
        base::ensure(type == &typeOf<T>(), "what a field stood for before it came is of its type");
        before = [value = std::move(value)](void* to) { *static_cast<T*>(to) = value; };
        said = json;
        return std::move(*this);
    }

    /// The same of a field that may be nothing, and was.
    Field standingForNothing() && {
        base::ensure(type->sort == Sort::Maybe, "only what may be nothing can have been nothing");
        before = type->clear;
        said = "null";
        return std::move(*this);
    }

    /// What a person may type and a price may be made of.
    const Range& entryRange() const { return asked ? *asked : bounds.range; }

    /// The same field, of which only that much may be asked for.
    Field asking(Range range) && {
        asked = range;
        return std::move(*this);
    }
    /// The same field, which no screen has an input for, for this reason.
    Field notEntered(std::string_view reason) && {
        noInput = reason;
        return std::move(*this);
    }
    /// The same field, which is in no price, for this reason.
    Field unpriced(std::string_view reason) && {
        noPrice = reason;
        return std::move(*this);
    }
    /// The same field, whose own fields are one reason together.
    Field asOneCause() && {
        isOneCause = true;
        return std::move(*this);
    }
};

/// The fields of a type.
struct Object {
    Object(std::string_view itsName, std::vector<Field> rows)
        : name(itsName)
        , fields(std::move(rows)) {
        for (auto& row : fields) row.owner = name;
    }

    std::string_view name; ///< of the type, as in the page on the file format
    std::vector<Field> fields;
};

/// Hands over every field of a type and of the types its fields are of, a type's own first.
template<class Visit>
void forEachField(const Object& object, const Visit& visit) {
    for (const auto& field : object.fields) {
        visit(field);
        const auto* type = field.type;
        while (type->inner != nullptr) type = type->inner;
        if (type->object != nullptr) forEachField(type->object(), visit);
    }
}

/// One address a member: what tells fields of the table apart.
template<auto Member>
inline char kMemberMark = 0;

template<class M>
struct MemberOf;
template<class Owner, class Value>
struct MemberOf<Value Owner::*> {
    using OwnerType = Owner;
    using ValueType = Value;
};

/// The row of that member: fieldOf<&ShopRates::labourPerHour>().
template<auto Member>
const Field& fieldOf() {
    const auto& rows = objectOf<typename MemberOf<decltype(Member)>::OwnerType>().fields;
    for (const auto& row : rows)
        if (row.member == &kMemberMark<Member>) return row;
    base::ensure(false, "every member has its row in the table of fields");
    return rows.front();
}

/// A row of the table of `Whole` for a member that it may have from a base.
template<class Whole, auto Member, class... Limits>
Field fieldIn(std::string_view key, Term words, Limits... limits) {
    using Value = typename MemberOf<decltype(Member)>::ValueType;
    Field row;
    row.key = key;
    row.words = words;
    row.type = &typeOf<Value>();
    row.in = [](const void* owner) -> const void* { return &(static_cast<const Whole*>(owner)->*Member); };
    row.member = &kMemberMark<Member>;
    (row.bounds.set(limits), ...);
    return row;
}

/// A row of the table: field<&ShopRates::labourPerHour>("labour_per_hour_micros", Term::LabourRate, kAmount).
template<auto Member, class... Limits>
Field field(std::string_view key, Term words, Limits... limits) {
    return fieldIn<typename MemberOf<decltype(Member)>::OwnerType, Member>(key, words, limits...);
}

} // namespace sp::catalogue::fields

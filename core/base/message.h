// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/code.h"

#include <concepts>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

// What the program has to say, without its words: an identifier from the list of a room, and the values that belong in
// the sentence. Each room lists its own in its messages.h; the words are in app/words, one sentence for each
// identifier.
//
//   #define SP_LAYOUT_FAULTS(X) X(NothingToLay, Missing) X(PieceTooWide, TooLarge)
//   SP_FAULTS(Layout, SP_LAYOUT_FAULTS)
//
// gives the room an `enum class Fault`, and `base::fail(Fault::NothingToLay, "pieces")` makes an error of it. Notes are
// what is said without refusing anything, and the phrases that stand inside other sentences; they have no code.

namespace sp::base {

enum class Room : std::uint8_t {
    None,
    Base,
    Units,
    Kinds,
    Fields,
    Terms,
    Causes,
    Artwork,
    Layout,
    Needs,
    Planning,
    Costing,
    Pricing,
    Supply,
    Scheduling,
    Db,
    App
};

/// One entry of a room's list. `name` is for logs and tests.
struct MessageId {
    Room room = Room::None;
    bool isNote = false;
    std::uint16_t number = 0;
    std::string_view name;

    friend constexpr bool operator==(const MessageId& a, const MessageId& b) {
        return a.room == b.room && a.isNote == b.isNote && a.number == b.number;
    }
};

/// A measured value, to be written in the person's own units and marks.
struct Quantity {
    enum class Unit { Nanometres, Days, Milliseconds, Micros, Ppm };
    Unit unit = Unit::Nanometres;
    std::int64_t amount = 0; ///< Days: since 1970-01-01; Micros: of a currency, Ppm: of a whole

    friend bool operator==(const Quantity&, const Quantity&) = default;
};

/// Width and height in nanometres.
struct Extent {
    std::int64_t width = 0;
    std::int64_t height = 0;

    friend bool operator==(const Extent&, const Extent&) = default;
};

/// A number that is no count. `decimals` below 0: three digits that mean something ("2.86", "0.00012").
struct Real {
    double number = 0;
    int decimals = -1;

    friend bool operator==(const Real&, const Real&) = default;
};

struct Message;

/// What stands at one place of a sentence: text as the person knows it (a name, what they typed), a count, a measured
/// value, or another message; several messages are a list.
struct Value {
    std::variant<std::string, std::int64_t, Real, Quantity, Extent, std::vector<Message>> held;

    friend bool operator==(const Value&, const Value&);
};

struct Message {
    MessageId id;
    std::vector<Value> values;

    friend bool operator==(const Message&, const Message&) = default;
};

inline bool operator==(const Value& a, const Value& b) { return a.held == b.held; }

/// Without words, for logs and tests: "NothingToLay", "TooManyPieces(100000, 3)".
std::string describe(const Message& message);

/// An enumerator of a room's list.
template<class T>
concept Listed = requires(T one) {
    { idOf(one) } -> std::same_as<MessageId>;
};
/// One of its faults.
template<class T>
concept ListedFault = Listed<T> && requires(T one) {
    { codeOf(one) } -> std::same_as<Code>;
};

// How a value enters a message. Rooms add theirs for their own types (core/units/values.h).
inline Value asValue(Value value) { return value; }
inline Value asValue(std::string text) { return {std::move(text)}; }
inline Value asValue(std::string_view text) { return {std::string(text)}; }
inline Value asValue(const char* text) { return {std::string(text)}; }
inline Value asValue(std::integral auto count) { return {static_cast<std::int64_t>(count)}; }
inline Value asValue(Real number) { return {number}; }
inline Value asValue(Quantity quantity) { return {quantity}; }
inline Value asValue(Extent extent) { return {extent}; }
inline Value asValue(Message message) { return {std::vector<Message>{std::move(message)}}; }
inline Value asValue(std::vector<Message> messages) { return {std::move(messages)}; }
template<Listed T>
Value asValue(T one) {
    return asValue(Message{idOf(one), {}});
}

/// A message with its values in the order of the sentence's places.
template<Listed T, class... Values>
Message say(T one, const Values&... values) {
    return {idOf(one), {asValue(values)...}};
}

namespace detail {
struct FaultRow {
    Code code;
    std::string_view name;
};
} // namespace detail

} // namespace sp::base

#define SP_LISTED_NAME(name, ...) name,
#define SP_FAULT_ROW(name, code) ::sp::base::detail::FaultRow{::sp::base::Code::code, #name},
#define SP_NOTE_ROW(name) std::string_view(#name),

/// Declares `enum class Fault` of a room from its list of X(name, code), with idOf, codeOf and kFaults.
#define SP_FAULTS(room, list)                                                                                          \
    enum class Fault : std::uint16_t { list(SP_LISTED_NAME) };                                                         \
    inline constexpr ::sp::base::detail::FaultRow kFaults[] = {list(SP_FAULT_ROW)};                                    \
    constexpr ::sp::base::MessageId idOf(Fault fault) {                                                                \
        return {::sp::base::Room::room, false, static_cast<std::uint16_t>(fault),                                      \
                kFaults[static_cast<std::size_t>(fault)].name};                                                        \
    }                                                                                                                  \
    constexpr ::sp::base::Code codeOf(Fault fault) { return kFaults[static_cast<std::size_t>(fault)].code; }

/// Declares `enum class Note` of a room from its list of X(name), with idOf and kNotes.
#define SP_NOTES(room, list)                                                                                           \
    enum class Note : std::uint16_t { list(SP_LISTED_NAME) };                                                          \
    inline constexpr std::string_view kNotes[] = {list(SP_NOTE_ROW)};                                                  \
    constexpr ::sp::base::MessageId idOf(Note note) {                                                                  \
        return {::sp::base::Room::room, true, static_cast<std::uint16_t>(note),                                        \
                kNotes[static_cast<std::size_t>(note)]};                                                               \
    }

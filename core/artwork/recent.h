// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace sp::artwork {

/// Remembers the newest answers of a slow question. Made for long rows in which few different keys come again and
/// again; any other row costs one comparison more a key.
template<class Key, class Value>
class Recent {
  public:
    /// What `make()` gave for this key when it was last asked. `mixed` is a number that differs where keys do.
    template<class Make>
    const Value& of(const Key& key, std::uint64_t mixed, Make make) {
        Slot& slot = m_slots[(mixed * 0x9e3779b97f4a7c15ULL) >> (64U - kBits)];
        if (!slot.isKnown || !(slot.key == key)) slot = {key, make(), true};
        return slot.value;
    }

  private:
    static constexpr unsigned kBits = 8;
    struct Slot {
        Key key{};
        Value value{};
        bool isKnown = false;
    };
    std::array<Slot, std::size_t{1} << kBits> m_slots{};
};

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/design_artwork.h"
#include "core/catalogue/material.h"
#include "core/catalogue/packing.h"
#include "core/catalogue/payment.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/price_list.h"
#include "core/catalogue/shop.h"
#include "core/units/text.h"

#include <array>
#include <optional>
#include <string_view>

namespace sp::catalogue::fields {

/// The words by which an enumerator is kept in columns and in JSON, in the order of the enumerators. They are part of
/// the file format: never changed, only added to.
template<class E>
inline constexpr std::array<std::string_view, 0> kNames{};

template<>
inline constexpr std::array<std::string_view, 6> kNames<MaterialKind>{"stone",   "tape",  "template",
                                                                      "backing", "blank", "packing"};
template<>
inline constexpr std::array<std::string_view, 3> kNames<PriceBasis>{"replacement", "shelf-average", "fixed"};
template<>
inline constexpr std::array<std::string_view, 6> kNames<PriceOrigin::Kind>{"unsaid",        "pack",    "fixed",
                                                                           "shelf-average", "no-pack", "not-fixed"};
template<>
inline constexpr std::array<std::string_view, 3> kNames<FreightKind>{"nothing", "share", "spread"};
template<>
inline constexpr std::array<std::string_view, 2> kNames<SheetForm>{"sheet", "roll"};
template<>
inline constexpr std::array<std::string_view, 2> kNames<ShareBasis>{"whole-sheets", "by-position"};
template<>
inline constexpr std::array<std::string_view, 2> kNames<PackingPer>{"piece", "order"};
template<>
inline constexpr std::array<std::string_view, 3> kNames<RoundingKind>{"nearest", "up", "ending"};
template<>
inline constexpr std::array<std::string_view, 2> kNames<SetUpCharge>{"own-line", "spread"};
template<>
inline constexpr std::array<std::string_view, 2> kNames<TaxRounding>{"per-invoice", "per-line"};
template<>
inline constexpr std::array<std::string_view, 3> kNames<Spares>{"where-expected", "always", "never"};
template<>
inline constexpr std::array<std::string_view, 3> kNames<UsedWhen>{"ready", "making", "by-hand"};
template<>
inline constexpr std::array<std::string_view, 2> kNames<TaxOnGifts>{"none", "on-cost"};
template<>
inline constexpr std::array<std::string_view, 2> kNames<Paper>{"letter", "a4"};
template<>
inline constexpr std::array<std::string_view, 3> kNames<units::LengthUnit>{"inch", "millimetre", "centimetre"};
template<>
inline constexpr std::array<std::string_view, 2> kNames<units::TemperatureUnit>{"fahrenheit", "celsius"};
template<>
inline constexpr std::array<std::string_view, 9> kNames<Step>{"art",  "cut",   "weed", "set-up", "brush",
                                                              "lift", "press", "trim", "pack"};

template<>
inline constexpr std::array<std::string_view, 3> kNames<ArtworkFormat>{"svg", "dxf", "plt"};
template<>
inline constexpr std::array<std::string_view, 3> kNames<ScaleOrigin>{"file", "proposed", "typed"};
template<>
inline constexpr std::array<std::string_view, 8> kNames<ListColumn>{"material",   "pack", "amount", "price",
                                                                    "from-packs", "item", "size",   "colour"};

template<>
inline constexpr std::array<std::string_view, 3> kNames<PaymentRole>{"money", "change", "rounding"};

template<class E>
concept Named = std::is_enum_v<E> &&(kNames<E>.size() > 0);

/// The word of an enumerator; empty for a value that is none of them.
template<Named E>
constexpr std::string_view wordOf(E value) {
    const auto index = static_cast<std::size_t>(value);
    return index < kNames<E>.size() ? kNames<E>[index] : std::string_view();
}

template<Named E>
constexpr std::optional<E> namedBy(std::string_view word) {
    for (std::size_t i = 0; i < kNames<E>.size(); ++i)
        if (kNames<E>[i] == word) return static_cast<E>(i);
    return std::nullopt;
}

} // namespace sp::catalogue::fields

// SPDX-License-Identifier: MIT
#pragma once

#include "db/records/bills.h"
#include "db/records/papers.h"
#include "db/records/values.h"

#include <nlohmann/json_fwd.hpp>

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sp::db::records {

/// Turns the value of a record of one version into that of the next, where fields were moved, split or renamed: takes
/// the old keys out and puts the new ones in. Fields that only came new need none, the table says what they stood for.
/// It throws what `takeOut` throws; what it leaves behind and the next version does not know is refused after it.
using Upgrade = void (*)(nlohmann::json& value);

/// A kind of record: what its JSON is called and how its versions follow each other.
struct Kind {
    std::string_view name;
    const catalogue::fields::Object& (*object)() = nullptr;
    int version = 1;               ///< the newest, and the only one that is written, see newestVersion
    std::vector<Upgrade> upgrades; ///< the one at n - 1 turns version n into n + 1; null where fields only came new
    /// Where the record holds its fields in another shape than the program's value (see shapes.h): puts them into it,
    /// and takes them out of it.
    Upgrade inShape = nullptr;
    Upgrade outOfShape = nullptr;
    base::Done (*check)(const void* value) = nullptr;
    /// Reads a record of any version and writes it anew, in the newest.
    base::Result<std::string> (*renewed)(std::string_view json) = nullptr;
};

/// The version of a kind: the latest that any of its fields came with or that an upgrade makes. So nobody counts it by
/// hand, and a field that only comes new asks for nothing beside its row in the table.
int newestVersion(std::string_view kind, const catalogue::fields::Object& object, const std::vector<Upgrade>& upgrades);

/// The kind that holds values of that type.
template<class T>
const Kind& kindOf();

template<>
const Kind& kindOf<catalogue::Shop>();
template<>
const Kind& kindOf<catalogue::BenchStandards>();
template<>
const Kind& kindOf<catalogue::Material>();
template<>
const Kind& kindOf<catalogue::Supplier>();
template<>
const Kind& kindOf<catalogue::Pack>();
template<>
const Kind& kindOf<catalogue::Kit>();
template<>
const Kind& kindOf<ArtworkRecord>();
template<>
const Kind& kindOf<catalogue::ColourMaterial>();
template<>
const Kind& kindOf<catalogue::PriceListColumns>();
template<>
const Kind& kindOf<catalogue::Design>();
template<>
const Kind& kindOf<catalogue::Customer>();
template<>
const Kind& kindOf<catalogue::Order>();
template<>
const Kind& kindOf<catalogue::PricedMaterial>();
template<>
const Kind& kindOf<StockMove>();
template<>
const Kind& kindOf<StageMark>();
template<>
const Kind& kindOf<catalogue::Payment>();
template<>
const Kind& kindOf<PriceList>();
template<>
const Kind& kindOf<SealedQuote>();
template<>
const Kind& kindOf<SealedPaper>();
template<>
const Kind& kindOf<SealedPerson>();
template<>
const Kind& kindOf<PaperResult>();
template<>
const Kind& kindOf<SealedResult>();
template<>
const Kind& kindOf<BillResult>();

/// All of them, in the order of the page on the format.
std::span<const Kind* const> allKinds();
/// The kind of that name, or null.
const Kind* kindNamed(std::string_view name);

} // namespace sp::db::records

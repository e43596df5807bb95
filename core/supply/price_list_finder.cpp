// SPDX-License-Identifier: MIT
#include "core/supply/price_list_finder.h"

#include "core/supply/list_words.h"

namespace sp::supply {

using base::say;
using catalogue::Material;
using catalogue::MaterialKind;

namespace {

constexpr std::size_t kMaxItemLength = 200;   ///< bytes, as the book takes
constexpr std::size_t kMaxColourLength = 180; ///< bytes: with the size it is a name

std::string keyOf(std::string_view colour, std::string_view size) {
    return lowerTrimmed(colour).append(" ").append(lowerTrimmed(size));
}

} // namespace

std::string SaidRow::inOne() const {
    std::string text;
    for (const auto* part : {&item, &colour, &size, &name})
        if (!part->empty()) text += (text.empty() ? "" : " · ") + *part;
    return text;
}

PriceListFinder::PriceListFinder(const std::vector<SaidRow>& rows, const base::Id& supplier,
                                 const PriceListContext& context)
    : m_context(context) {
    for (const auto& material : context.materials) {
        m_named[lowerTrimmed(material.name)] = &material;
        m_byId[material.id] = &material;
        if (material.kind == MaterialKind::Stone && !material.stone.colour.empty())
            m_stones[keyOf(material.stone.colour, material.stone.size)].push_back(&material);
    }
    for (const auto& pack : context.packs) {
        const auto material = m_byId.find(pack.material);
        if (pack.supplier != supplier || pack.item.empty() || material == m_byId.end()) continue;
        const auto [known, isNew] = m_items.emplace(lowerTrimmed(pack.item), material->second);
        if (!isNew && known->second != material->second) known->second = nullptr;
    }
    std::unordered_map<std::string, const SaidRow*> first;
    for (const auto& row : rows) {
        if (row.item.empty()) continue;
        const auto [known, isNew] = first.emplace(lowerTrimmed(row.item), &row);
        const auto& other = *known->second;
        if (!isNew &&
            (lowerTrimmed(other.name) != lowerTrimmed(row.name) || lowerTrimmed(other.size) != lowerTrimmed(row.size) ||
             lowerTrimmed(other.colour) != lowerTrimmed(row.colour)))
            m_vague.insert(known->first);
    }
}

std::string PriceListFinder::itemOf(const SaidRow& row) const {
    if (!row.item.empty()) return m_vague.contains(lowerTrimmed(row.item)) ? std::string() : row.item;
    // Without a number what the list says is remembered of what a person has said once.
    auto said = row.inOne();
    const bool isRemembered = m_context.matched.contains(row.line) || m_items.contains(lowerTrimmed(said));
    return isRemembered && said.size() <= kMaxItemLength ? said : std::string();
}

const Material* PriceListFinder::named(const std::string& name) const {
    const auto found = m_named.find(lowerTrimmed(name));
    return found == m_named.end() ? nullptr : found->second;
}

const Material* PriceListFinder::byItem(const SaidRow& row) const {
    const auto item = itemOf(row);
    if (item.empty()) return nullptr;
    const auto found = m_items.find(lowerTrimmed(item));
    return found == m_items.end() ? nullptr : found->second;
}

PriceListFinder::Found PriceListFinder::byColour(const std::string& colour, std::string_view size,
                                                 const std::string& name) const {
    const auto found = m_stones.find(keyOf(colour, size));
    if (found == m_stones.end()) return named(keyOf(colour, size));
    if (found->second.size() == 1) return found->second.front();
    for (const auto* stone : found->second)
        if (lowerTrimmed(stone->name) == lowerTrimmed(name)) return stone;
    return say(Note::SeveralStones);
}

PriceListFinder::Found PriceListFinder::find(const SaidRow& row) {
    if (const auto chosen = m_context.matched.find(row.line); chosen != m_context.matched.end())
        if (const auto known = m_byId.find(chosen->second); known != m_byId.end()) return known->second;
    if (const auto* known = byItem(row)) return known;
    const auto size = listedSize(row.size);
    const auto isFound = [](const Found& found) {
        return std::holds_alternative<base::Message>(found) || std::get<const Material*>(found) != nullptr;
    };
    if (size && !row.colour.empty())
        if (auto found = byColour(row.colour, *size, row.name); isFound(found)) return found;
    if (const auto* known = named(row.name)) return known;
    const auto inName = sizeInText(row.name);
    const auto sizeSaid = size ? size : inName ? std::optional(inName->size) : std::nullopt;
    const auto colour = !row.colour.empty() ? row.colour : inName ? inName->rest : row.name;
    if (!sizeSaid || colour.empty()) {
        if (!row.size.empty() && !size && !row.colour.empty()) return say(Note::UnknownSizeInList, row.size);
        return say(Note::NoSuchMaterial);
    }
    if (auto found = byColour(colour, *sizeSaid, row.name); isFound(found)) return found;
    return missed(colour, *sizeSaid);
}

PriceListFinder::Found PriceListFinder::missed(const std::string& colour, std::string_view size) {
    if (colour.size() > kMaxColourLength) return say(Note::NoSuchMaterial);
    const auto [known, isNew] = m_missed.emplace(keyOf(colour, size), nullptr);
    if (isNew) {
        auto& stone = m_missing.emplace_back();
        stone.name = colour + " " + std::string(size);
        stone.kind = MaterialKind::Stone;
        stone.stone.colour = colour;
        stone.stone.loss = catalogue::kUsualStoneLoss;
        stone.stone.size = size;
        if (m_context.makesMissing && m_context.drawnAs) stone.stone.rgb = m_context.drawnAs(colour);
        known->second = &stone;
    }
    if (m_context.makesMissing) return known->second;
    return say(Note::NoSuchStone, colour, size);
}

} // namespace sp::supply

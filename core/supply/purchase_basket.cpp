// SPDX-License-Identifier: MIT
#include "core/supply/purchase_basket.h"

#include <algorithm>

namespace sp::supply {

using std::int64_t;

Basket::Basket(const Model& model)
    : m_model(&model)
    , m_counts(model.packs.size(), 0)
    , m_lines(model.packs.size(), 0)
    , m_missing(model.needs)
    , m_used(model.suppliers.size(), 0) {
    for (const ModelSupplier& supplier : model.suppliers) {
        if (supplier.goods > 0) m_used[m_goods.size()] = 1;
        m_goods.push_back(supplier.goods);
    }
}

void Basket::set(std::size_t pack, int64_t count) {
    const ModelPack& of = m_model->packs[pack];
    const auto s = at(of.supplier);
    const int64_t more = count - m_counts[pack];
    if (more == 0) return;
    const int64_t line = of.cost(count);
    m_goods[s] += line - m_lines[pack];
    m_lines[pack] = line;
    if (m_counts[pack] == 0) ++m_used[s];
    if (count == 0) --m_used[s];
    m_counts[pack] = count;
    m_value += of.value * more;
    for (const auto& give : of.gives) m_missing[at(give.material)] -= give.units * more;
}

bool Basket::isCovered() const {
    return std::all_of(m_missing.begin(), m_missing.end(), [](int64_t missing) { return missing <= 0; });
}

int64_t Basket::belowMinimum(std::size_t supplier) const {
    if (!isUsed(supplier)) return 0;
    return std::max<int64_t>(0, m_model->suppliers[supplier].minimum - m_goods[supplier]);
}

bool Basket::isPlan() const {
    if (!isCovered()) return false;
    for (std::size_t s = 0; s < m_goods.size(); ++s)
        if (belowMinimum(s) > 0) return false;
    return true;
}

int64_t Basket::cost() const {
    int64_t cost = m_model->cost;
    for (std::size_t s = 0; s < m_goods.size(); ++s) {
        const ModelSupplier& supplier = m_model->suppliers[s];
        cost += m_goods[s] - supplier.goods;
        if (isUsed(s) && m_goods[s] < supplier.freeFrom) cost += supplier.shipping;
    }
    return cost;
}

} // namespace sp::supply

// SPDX-License-Identifier: MIT
#include "app/supplies/price_text.h"

#include <QCoreApplication>
#include <QStringList>

namespace sp::supplies {

QString writePrices(const std::vector<catalogue::PriceBreak>& prices, const desk::Formatter& formatter) {
    QStringList parts;
    for (const auto& step : prices) {
        const auto each = formatter.moneyExact(step.each);
        parts << (step.from == units::Count::of(1) ? each
                                                   : QCoreApplication::translate("PriceText", "from %1 packs %2")
                                                         .arg(formatter.count(step.from), each));
    }
    return parts.join(QStringLiteral("; "));
}

std::optional<units::Count> risesFrom(const std::vector<catalogue::PriceBreak>& prices) {
    for (std::size_t i = 1; i < prices.size(); ++i)
        if (prices[i].each > prices[i - 1].each) return prices[i].from;
    return std::nullopt;
}

} // namespace sp::supplies

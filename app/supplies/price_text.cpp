// SPDX-License-Identifier: MIT
#include "app/supplies/price_text.h"

#include "app/words/words.h"

#include <QStringList>

namespace sp::supplies {

base::Result<std::vector<catalogue::PriceBreak>> parsePrices(const QString& text, const desk::Formatter& formatter) {
    std::vector<catalogue::PriceBreak> prices;
    for (const auto& part : text.split(QLatin1Char(';'))) {
        const auto colon = part.indexOf(QLatin1Char(':'));
        catalogue::PriceBreak step;
        if (colon >= 0) {
            const auto from = units::parseCount(part.left(colon).toStdString(), formatter.style());
            if (!from) return base::fail(from.error());
            step.from = *from;
        }
        const auto each = units::parseMoney(part.mid(colon + 1).toStdString(), formatter.currency(), formatter.style());
        if (!each) return base::fail(each.error());
        step.each = *each;
        const bool follows = prices.empty() ? step.from == units::Count::of(1) : prices.back().from < step.from;
        if (!(step.each > units::Money{}))
            return words::fail(
                base::Code::OutOfRange, part.toStdString(),
                QT_TRANSLATE_NOOP("App", "A pack costs more than nothing; count in on the shelf what came free."));
        if (!follows)
            return words::fail(
                base::Code::Invalid, part.toStdString(),
                QT_TRANSLATE_NOOP(
                    "App", "Write the price of one pack first, then dearer or cheaper steps upwards: 9.99; 5: 8.90."));
        prices.push_back(step);
    }
    return prices;
}

QString writePrices(const std::vector<catalogue::PriceBreak>& prices, const desk::Formatter& formatter) {
    QStringList parts;
    for (const auto& step : prices) {
        const auto each = formatter.moneyExact(step.each);
        parts << (step.from == units::Count::of(1) ? each : QStringLiteral("%1: %2").arg(step.from.value()).arg(each));
    }
    return parts.join(QStringLiteral("; "));
}

std::optional<units::Count> risesFrom(const std::vector<catalogue::PriceBreak>& prices) {
    for (std::size_t i = 1; i < prices.size(); ++i)
        if (prices[i].each > prices[i - 1].each) return prices[i].from;
    return std::nullopt;
}

} // namespace sp::supplies

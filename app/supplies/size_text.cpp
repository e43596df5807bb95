// SPDX-License-Identifier: MIT
#include "app/supplies/size_text.h"

#include "app/words/words.h"

#include <QStringList>

namespace sp::supplies {

namespace {

QChar between(const desk::Formatter& formatter) {
    return formatter.style().decimalMark == U',' ? QLatin1Char('/') : QLatin1Char(',');
}

base::Result<units::Money> amountIn(const QStringList& amounts, int at, const desk::Formatter& formatter) {
    if (at >= amounts.size() || amounts[at].trimmed().isEmpty()) return units::Money{};
    return units::parseMoney(amounts[at].toStdString(), formatter.currency(), formatter.style());
}

} // namespace

base::Result<std::vector<catalogue::BlankSize>> parseSizes(const QString& text, const desk::Formatter& formatter) {
    std::vector<catalogue::BlankSize> sizes;
    if (text.trimmed().isEmpty()) return sizes;
    for (const auto& part : text.split(QLatin1Char(';'))) {
        const auto colon = part.indexOf(QLatin1Char(':'));
        catalogue::BlankSize size;
        size.name = part.left(colon < 0 ? part.size() : colon).trimmed().toStdString();
        for (const auto& known : sizes)
            if (known.name == size.name) size.name.clear();
        if (size.name.empty())
            return words::fail(
                base::Code::Invalid, part.toStdString(),
                QT_TRANSLATE_NOOP("App", "A size stands twice or has no name; write sizes as S; M; 2XL: 2.10, 2.75."));
        if (colon >= 0) {
            const auto amounts = part.mid(colon + 1).split(between(formatter));
            const auto cost = amountIn(amounts, 0, formatter);
            const auto surcharge = amountIn(amounts, 1, formatter);
            if (!cost) return base::fail(cost.error());
            if (!surcharge) return base::fail(surcharge.error());
            size.extraCost = *cost;
            size.surcharge = *surcharge;
        }
        sizes.push_back(std::move(size));
    }
    return sizes;
}

QString writeSizes(const std::vector<catalogue::BlankSize>& sizes, const desk::Formatter& formatter) {
    QStringList parts;
    for (const auto& size : sizes) {
        const auto name = QString::fromStdString(size.name);
        const bool plain = size.extraCost.isZero() && size.surcharge.isZero();
        parts << (plain ? name
                        : QStringLiteral("%1: %2%3 %4")
                              .arg(name, formatter.moneyExact(size.extraCost), between(formatter),
                                   formatter.moneyExact(size.surcharge)));
    }
    return parts.join(QStringLiteral("; "));
}

} // namespace sp::supplies

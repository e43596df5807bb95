// SPDX-License-Identifier: MIT
#include "app/supplies/kit_words.h"

#include "app/words/words.h"
#include "core/units/apportion.h"

#include <QCoreApplication>

#include <array>
#include <cmath>

namespace sp::supplies {

namespace {

constexpr double kUnlikely = 0.05; ///< not worth a word
constexpr int kMaxChances = 3;

/// Where its texts are found by the translators.
struct KitWords {
    Q_DECLARE_TR_FUNCTIONS(KitWords)
};

QString named(const std::vector<std::string>& materials) {
    QStringList names;
    for (const auto& material : materials) names << QString::fromStdString(material);
    return names.join(KitWords::tr(" and "));
}

QString piecesInWords(const supply::YieldAnswer& answer, const desk::Formatter& formatter) {
    if (answer.pieces.value() == 0 && (answer.odds.empty() || answer.odds.back().pieces.value() == 0))
        return KitWords::tr("No piece comes out of it: %1 is missing or too little.").arg(named(answer.limiting));
    QStringList parts;
    if (answer.sure.value() > 0) parts << KitWords::tr("%1 for sure").arg(formatter.count(answer.sure));
    int told = 0;
    for (const auto& chance : answer.odds) {
        if (chance.pieces <= answer.sure || chance.probability < kUnlikely || ++told > kMaxChances) continue;
        parts << KitWords::tr("%1 %2").arg(formatter.count(chance.pieces), chanceInWords(chance.probability));
    }
    if (parts.isEmpty()) parts << formatter.count(answer.pieces);
    return words::counted("KitWords", QT_TRANSLATE_N_NOOP("KitWords", "Makes %1; %2 run out first."),
                          "Makes %1; %2 runs out first.", static_cast<std::int64_t>(answer.limiting.size()))
        .arg(parts.join(QStringLiteral(", ")), named(answer.limiting));
}

QString leftInWords(const supply::YieldAnswer& answer, const desk::Formatter& formatter) {
    QStringList parts;
    std::vector<std::optional<units::Money>> values;
    for (const auto& left : answer.left) values.push_back(left.value);
    const auto shown = units::shownParts(std::move(values), formatter.currency());
    for (std::size_t i = 0; i < answer.left.size(); ++i) {
        const auto& left = answer.left[i];
        if (left.count.value() == 0) continue;
        auto part = KitWords::tr("%1 %2").arg(formatter.count(left.count), QString::fromStdString(left.material));
        if (left.inPieces)
            part =
                KitWords::tr("%1 for %2 more").arg(QString::fromStdString(left.material), formatter.count(left.count));
        if (shown[i]) part += KitWords::tr(" (%1)").arg(formatter.money(*shown[i]));
        parts << part;
    }
    if (parts.isEmpty()) return KitWords::tr("Nothing is left over.");
    const auto worth = supply::leftWorth(answer);
    const auto list = KitWords::tr("Left over: %1.").arg(parts.join(QStringLiteral(", ")));
    return worth.isZero() ? list : KitWords::tr("%1 Worth %2 at bulk prices.").arg(list, formatter.moneyNamed(worth));
}

} // namespace

QString chanceInWords(double probability) {
    struct Chance {
        double share;
        const char* words;
    };
    static constexpr std::array kChances{Chance{0.05, QT_TRANSLATE_NOOP("KitWords", "now and then")},
                                         Chance{0.1, QT_TRANSLATE_NOOP("KitWords", "one time in ten")},
                                         Chance{0.2, QT_TRANSLATE_NOOP("KitWords", "one time in five")},
                                         Chance{0.25, QT_TRANSLATE_NOOP("KitWords", "one time in four")},
                                         Chance{1.0 / 3, QT_TRANSLATE_NOOP("KitWords", "one time in three")},
                                         Chance{0.5, QT_TRANSLATE_NOOP("KitWords", "every other time")},
                                         Chance{2.0 / 3, QT_TRANSLATE_NOOP("KitWords", "two times in three")},
                                         Chance{0.75, QT_TRANSLATE_NOOP("KitWords", "three times in four")},
                                         Chance{0.8, QT_TRANSLATE_NOOP("KitWords", "four times in five")},
                                         Chance{0.9, QT_TRANSLATE_NOOP("KitWords", "nine times in ten")},
                                         Chance{0.97, QT_TRANSLATE_NOOP("KitWords", "nearly always")}};
    const auto* nearest = &kChances.front();
    for (const auto& chance : kChances)
        if (std::abs(chance.share - probability) < std::abs(nearest->share - probability)) nearest = &chance;
    return KitWords::tr(nearest->words);
}

QStringList yieldInWords(const supply::YieldAnswer& answer, const desk::Formatter& formatter) {
    QStringList sentences{piecesInWords(answer, formatter)};
    if (answer.costEach) sentences << KitWords::tr("That is %1 a piece.").arg(formatter.moneyNamed(*answer.costEach));
    sentences << leftInWords(answer, formatter);
    for (const auto& gain : answer.gains)
        sentences << (gain.pieces.value() == 1
                          ? KitWords::tr("One more gross of %1 would add one piece.")
                                .arg(QString::fromStdString(gain.material))
                          : KitWords::tr("One more gross of %1 would add %2 pieces.", nullptr,
                                         static_cast<int>(gain.pieces.value()))
                                .arg(QString::fromStdString(gain.material), formatter.count(gain.pieces)));
    return sentences;
}

} // namespace sp::supplies

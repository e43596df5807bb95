// SPDX-License-Identifier: MIT
#include "app/format/likeness.h"

#include <QStringList>

#include <algorithm>
#include <numeric>
#include <utility>
#include <vector>

namespace sp::desk {

namespace {

constexpr qsizetype kShortest = 4;    ///< letters of a name that can be like another
constexpr qsizetype kLongName = 8;    ///< letters from which on two slips are allowed
constexpr qsizetype kComparedAt = 60; ///< letters looked at

QString inOrder(const QString& name) {
    auto words = name.split(QLatin1Char(' '));
    words.sort();
    return words.join(QLatin1Char(' '));
}

/// How many letters have to be put in, left out or changed.
qsizetype slipsBetween(const QString& one, const QString& other) {
    std::vector<qsizetype> row(static_cast<std::size_t>(other.size()) + 1);
    std::iota(row.begin(), row.end(), 0);
    for (qsizetype i = 0; i < one.size(); ++i) {
        qsizetype corner = row[0];
        row[0] = i + 1;
        for (qsizetype j = 0; j < other.size(); ++j) {
            const auto at = static_cast<std::size_t>(j);
            const auto changed = corner + (one[i] == other[j] ? 0 : 1);
            corner = row[at + 1];
            row[at + 1] = std::min({changed, row[at] + 1, row[at + 1] + 1});
        }
    }
    return row.back();
}

} // namespace

QString folded(const QString& text) {
    QString out;
    const QString apart = text.simplified().normalized(QString::NormalizationForm_KD).toCaseFolded();
    for (const QChar c : apart)
        if (c.category() != QChar::Mark_NonSpacing) out.append(c);
    return out;
}

bool isLike(const QString& one, const QString& other) {
    auto shorter = folded(one).left(kComparedAt);
    auto longer = folded(other).left(kComparedAt);
    if (shorter.size() > longer.size()) std::swap(shorter, longer);
    if (shorter.size() < kShortest) return false;
    if (longer.startsWith(shorter) || inOrder(shorter) == inOrder(longer)) return true;
    const qsizetype allowed = shorter.size() >= kLongName ? 2 : 1;
    return longer.size() - shorter.size() <= allowed && slipsBetween(shorter, longer) <= allowed;
}

} // namespace sp::desk

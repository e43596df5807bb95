// SPDX-License-Identifier: MIT
#include "app/words/owner_words.h"

#include <QCoreApplication>

namespace sp::words {

using pricing::PriceCoverage;

QString lineCoverage(PriceCoverage coverage, const QString& floor) {
    switch (coverage) {
    case PriceCoverage::Pays: break;
    case PriceCoverage::BelowCost:
        return QCoreApplication::translate("Owner", "Below what it costs with your own time, wear and overhead.");
    case PriceCoverage::BelowFloor:
        return QCoreApplication::translate("Owner",
                                           "Below the floor: it does not cover the %1 a piece that is paid out.")
            .arg(floor);
    }
    return {};
}

QString orderCoverage(PriceCoverage coverage, const QString& floor) {
    switch (coverage) {
    case PriceCoverage::Pays: break;
    case PriceCoverage::BelowCost:
        return QCoreApplication::translate(
            "Owner", "The whole order is below what it costs with your own time, wear and overhead.");
    case PriceCoverage::BelowFloor:
        return QCoreApplication::translate(
                   "Owner", "The whole order is below the floor: it does not cover the %1 that is paid out.")
            .arg(floor);
    }
    return {};
}

QString cardFee(const QString& each, const QString& line) {
    return QCoreApplication::translate("Owner", "Of the price the card takes %1 a piece, %2 on the line.")
        .arg(each, line);
}

QString ownTax(const QString& line) {
    return QCoreApplication::translate("Owner", "Of the line’s cost %1 is tax on what is given away.").arg(line);
}

QString moreForLess(const QString& more, const QString& pieces, const QString& charged, const QString& ordered) {
    return QCoreApplication::translate("Owner", "%1 cost less than %2, %3 instead of %4: offer %1.")
        .arg(more, pieces, charged, ordered);
}

} // namespace sp::words

// SPDX-License-Identifier: MIT
#include "app/words/payment_words.h"

#include <QCoreApplication>

namespace sp::words {

QStringList waysToPay() {
    return {QCoreApplication::translate("Payments", "Cash"), QCoreApplication::translate("Payments", "Card"),
            QCoreApplication::translate("Payments", "Transfer"),
            QCoreApplication::translate("Payments", "Other", "way to pay")};
}

pricing::Tender tenderOf(const QString& kind) {
    const auto typed = kind.trimmed();
    const bool isCash = typed.compare(waysToPay().front(), Qt::CaseInsensitive) == 0 ||
                        typed.compare(QLatin1String("Cash"), Qt::CaseInsensitive) == 0;
    return isCash ? pricing::Tender::Cash : pricing::Tender::Other;
}

QString roleOf(const catalogue::Payment& payment) {
    const bool isBack = payment.reverses.has_value();
    switch (payment.role) {
    case catalogue::PaymentRole::Money:
        return isBack ? QCoreApplication::translate("Payments", "taken back") : QString();
    case catalogue::PaymentRole::Change:
        return isBack ? QCoreApplication::translate("Payments", "change taken back")
                      : QCoreApplication::translate("Payments", "change");
    case catalogue::PaymentRole::Rounding:
        return isBack ? QCoreApplication::translate("Payments", "rounding taken back")
                      : QCoreApplication::translate("Payments", "rounded to the coin");
    }
    return {};
}

} // namespace sp::words

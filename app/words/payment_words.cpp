// SPDX-License-Identifier: MIT
#include "app/words/payment_words.h"

#include <QCoreApplication>

namespace sp::words {

using catalogue::WayToPay;

std::vector<WayToPay> waysToPay(const std::vector<WayToPay>& own) {
    if (!own.empty()) return own;
    return {{QCoreApplication::translate("Payments", "Cash").toStdString(), true},
            {QCoreApplication::translate("Payments", "Card").toStdString(), false},
            {QCoreApplication::translate("Payments", "Transfer").toStdString(), false},
            {QCoreApplication::translate("Payments", "Other", "way to pay").toStdString(), false}};
}

pricing::Tender tenderOf(const QString& kind, const std::vector<WayToPay>& own) {
    const auto typed = kind.trimmed();
    const auto isCalled = [&](const QString& name) { return typed.compare(name.trimmed(), Qt::CaseInsensitive) == 0; };
    bool isCash = own.empty() && isCalled(QStringLiteral("Cash"));
    for (const auto& way : waysToPay(own))
        isCash = isCash || (way.isCash && isCalled(QString::fromStdString(way.name)));
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

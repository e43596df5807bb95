// SPDX-License-Identifier: MIT
#include "app/shop/shop_fields.h"

#include "app/words/words.h"

#include <QCoreApplication>

namespace sp::shop {

void putCurrency(RecordFields<catalogue::Shop>& shop, FieldCard* card, const desk::Formatter& formatter,
                 const char* name) {
    auto* currency = new desk::WordField(
        formatter, QCoreApplication::translate("ShopFields", "Give the currency, three letters such as USD."), card);
    desk::standsFor(*currency, desk::kAt<&catalogue::Shop::currency>.field());
    card->put(currency, QCoreApplication::translate("ShopFields", "C&urrency"), name,
              QCoreApplication::translate("ShopFields", "three letters, such as USD"));
    shop.onLoad([&shop, currency] {
        if (!currency->isDirty()) currency->setRaw(QString::fromStdString(shop.record().currency.code()));
    });
    QObject::connect(currency, &desk::TypedField::committed, currency, [&shop, currency] {
        const auto read = units::Currency::parse(currency->words());
        currency->setOuterProblem(read ? shop.edit([&](catalogue::Shop& s) { s.currency = *read; })
                                       : words::sentence(read.error()));
    });
}

} // namespace sp::shop

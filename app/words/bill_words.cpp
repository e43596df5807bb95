// SPDX-License-Identifier: MIT
#include "app/words/bill_words.h"

#include "app/words/quote_sheet.h"
#include "app/words/shown.h"
#include "app/words/translations.h"

namespace sp::words {

using catalogue::PaperKind;

std::string BillWords::title(PaperKind kind, const std::string& number) const {
    const auto text = [&] {
        switch (kind) {
        case PaperKind::Quote: return tr("Quote %1");
        case PaperKind::Invoice: return tr("Invoice %1");
        case PaperKind::Receipt: return tr("Receipt %1");
        case PaperKind::Credit: return tr("Credit note %1");
        }
        return QString();
    };
    return text().arg(shown(number)).toStdString();
}

std::string BillWords::day() const { return tr("Date").toStdString(); }

std::string BillWords::due() const { return tr("Due").toStdString(); }

std::string BillWords::quote() const { return tr("Quote").toStdString(); }

std::string BillWords::invoice() const { return tr("Invoice").toStdString(); }

std::string BillWords::total(PaperKind kind) const {
    switch (kind) {
    case PaperKind::Quote:
    case PaperKind::Invoice: return tr("Total").toStdString();
    case PaperKind::Receipt: return tr("Received").toStdString();
    case PaperKind::Credit: return tr("Credited").toStdString();
    }
    return {};
}

std::string BillWords::untaxedOn(const std::string& amount) const {
    return tr("Without tax: %1").arg(shown(amount)).toStdString();
}

std::string BillWords::furtherTo(const std::string& invoice) const {
    return tr("Further to invoice %1").arg(shown(invoice)).toStdString();
}

std::string BillWords::takenBack(const std::string& invoice, bool isWhole) const {
    return (isWhole ? tr("Takes back all of invoice %1") : tr("Takes back a part of invoice %1"))
        .arg(shown(invoice))
        .toStdString();
}

std::string BillWords::receivedBy(const std::string& kind, const std::string& day, const std::string& quote) const {
    //: Of a payment: how it was paid, on which day, for which quote: "Cash, 3 Dec 2026, for quote 2026-0042".
    return tr("%1, %2, for quote %3").arg(shown(kind), shown(day), shown(quote)).toStdString();
}

std::string BillWords::takenAndChange(const std::string& taken, const std::string& change) const {
    return tr("Taken %1, change %2").arg(shown(taken), shown(change)).toStdString();
}

std::string BillWords::comesTo(bool isInvoiced) const {
    return (isInvoiced ? tr("Invoiced, less credited") : tr("The order comes to")).toStdString();
}

std::string BillWords::paid(const std::string& day, const std::string& kind) const {
    return tr("Paid %1, %2").arg(shown(day), shown(kind)).toStdString();
}

std::string BillWords::givenBack(const std::string& day, const std::string& kind) const {
    return tr("Given back %1, %2").arg(shown(day), shown(kind)).toStdString();
}

std::string BillWords::paymentTakenBack(const std::string& day, const std::string& kind) const {
    return tr("Payment taken back %1, %2").arg(shown(day), shown(kind)).toStdString();
}

std::string BillWords::rounded(const std::string& day, const std::string& kind) const {
    //: Of a payment whose sum was rounded to the smallest coin: its day, and how it was paid.
    return tr("Rounded %1, %2").arg(shown(day), shown(kind)).toStdString();
}

std::string BillWords::paidBefore() const { return tr("Paid before, less given back").toStdString(); }

std::string BillWords::left() const { return tr("Left to pay").toStdString(); }

std::string BillWords::leftBy(const std::string& day) const {
    return tr("Left to pay by %1").arg(shown(day)).toStdString();
}

std::string BillWords::credit() const { return tr("Your credit").toStdString(); }

db::BillSheetMaker billSheets(const quoting::SheetWords& words) {
    return [&words](const quoting::Bill& bill, const db::Quote& quote, const catalogue::Shop& shop) {
        layout::FitMemo fits;
        auto agreed = issuedSheet(quote, fits, words);
        const LanguageScope language({QString::fromStdString(agreed.language)}); // in one with the lines it takes over
        // There it may stand that more pieces come to less: advice before one orders.
        if (quote.frozen->shop.offersMoreOnSheet)
            for (auto& line : agreed.lines) line.note.clear();
        return quoting::billSheet(bill, agreed, shop, words, BillWords());
    };
}

QString nameOf(PaperKind kind) {
    switch (kind) {
    case PaperKind::Quote: return QCoreApplication::translate("BillWords", "Quote");
    case PaperKind::Invoice: return QCoreApplication::translate("BillWords", "Invoice");
    case PaperKind::Receipt: return QCoreApplication::translate("BillWords", "Receipt");
    case PaperKind::Credit: return QCoreApplication::translate("BillWords", "Credit note");
    }
    return {};
}

QString invoiceCaution() {
    return QCoreApplication::translate(
        "BillWords",
        "The law where you are may ask more of an invoice: other words, numbers, a tax number, how long it "
        "is kept. That is yours to confirm with your tax authority or an accountant.");
}

} // namespace sp::words

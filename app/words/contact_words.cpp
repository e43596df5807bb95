// SPDX-License-Identifier: MIT
#include "app/words/contact_words.h"

#include "app/words/words.h"
#include "core/units/encodings.h"

#include <QCoreApplication>

#include <algorithm>

namespace sp::words {

namespace {

using catalogue::ContactFault;

const char* contactSource(ContactFault fault) {
    using enum ContactFault;
    switch (fault) {
    case TooLarge: return QT_TRANSLATE_NOOP("App", "“%1” is larger than 16 MB; read it in parts.");
    case TooMany: return QT_TRANSLATE_NOOP("App", "“%1” holds more than 20,000 people; read it in parts.");
    case NoContacts: return QT_TRANSLATE_NOOP("App", "“%1” names nobody; choose another file.");
    case NotACard:
        return QT_TRANSLATE_NOOP("App", "Line %2 of “%1” belongs to no card; save the contacts as vCard 4.0 or 3.0.");
    case NotClosed:
        return QT_TRANSLATE_NOOP("App", "The card that begins in line %2 of “%1” has no end; save the file once more.");
    case OldVersion:
        return QT_TRANSLATE_NOOP("App", "Line %2 of “%1” says vCard 2.1, which is not read; save it as 4.0 or 3.0.");
    case UnknownVersion:
        return QT_TRANSLATE_NOOP("App",
                                 "The card in line %2 of “%1” is of no known version; save it as vCard 4.0 or 3.0.");
    case QuotedPrintable:
        return QT_TRANSLATE_NOOP("App",
                                 "Line %2 of “%1” is written as quoted-printable, which belongs to vCard 2.1; save "
                                 "the contacts as vCard 4.0 or 3.0.");
    case OtherCharset: return QT_TRANSLATE_NOOP("App", "Line %2 of “%1” is not in UTF-8; save the contacts in UTF-8.");
    case LineUnreadable:
        return QT_TRANSLATE_NOOP("App", "Line %2 of “%1” cannot be read as part of a card; mend it or leave it out.");
    case ValueTooLarge: return QT_TRANSLATE_NOOP("App", "Line %2 of “%1” is longer than 100,000 bytes; leave it out.");
    case NoNameColumn: return QT_TRANSLATE_NOOP("App", "“%1” has no column “name”; call one so in its first row.");
    case TableUnreadable:
        return QT_TRANSLATE_NOOP("App",
                                 "Line %2 of “%1” cannot be read as a table; look for a quotation mark that is not "
                                 "closed, or too many columns.");
    case DayUnreadable:
        return QT_TRANSLATE_NOOP("App", "Line %2 of “%1” has a day that cannot be read; write it like 2026-12-31.");
    }
    return "";
}

} // namespace

base::Result<std::vector<catalogue::Customer>> readContacts(std::string_view bytes, const std::string& name) {
    const auto text = units::readEncoded(bytes.substr(0, catalogue::kMaxContactBytes + 1));
    if (!text)
        return fail(base::Code::Invalid, name,
                    QT_TRANSLATE_NOOP("App", "“%1” is no text; choose a vCard file or a table."), name);
    const auto begin = text->utf8.find_first_not_of(" \t\r\n");
    constexpr std::string_view kBegin = "BEGIN:VC";
    const auto head = begin == std::string::npos ? std::string() : text->utf8.substr(begin, kBegin.size());
    const bool isCards =
        head.size() == kBegin.size() && std::equal(head.begin(), head.end(), kBegin.begin(), [](char a, char b) {
            return (a >= 'a' && a <= 'z' ? static_cast<char>(a - 'a' + 'A') : a) == b;
        });
    auto read = isCards ? catalogue::readCards(text->utf8) : catalogue::readContactTable(text->utf8);
    if (read) return std::move(*read);
    return fail(base::Code::Invalid, name, contactSource(read.error().fault), name,
                static_cast<std::int64_t>(read.error().line));
}

QString whatErasingLeaves() {
    return QCoreApplication::translate(
        "App",
        "Name, address, telephone, mail, note and certificate go for good, from the list, from the log of changes "
        "and from every paper. Jobs, sums, numbers and seals stay, and so does what was typed into titles, names "
        "on pieces, notes of payments and drawings. Printed or exported files are not touched. Whether you must "
        "keep records for the tax office is for you to ask. This cannot be undone.");
}

QString secondPlaceIsAway(const QString& folder) {
    return QCoreApplication::translate("App",
                                       "The second place for backups, “%1”, is not there now; copies in it may hold "
                                       "the person as well, so look through it when it is back.")
        .arg(folder);
}

} // namespace sp::words

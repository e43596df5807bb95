// SPDX-License-Identifier: MIT
// Customers in and out as vCard and as a table. Sources: RFC 6350 and RFC 2426 (examples named beside each check), RFC
// 4180, CWE-1236.
#include "core/catalogue/contacts.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>

namespace {

using namespace sp;
using catalogue::CardVersion;
using catalogue::ContactFault;
using catalogue::ContactFit;
using catalogue::Contacts;
using catalogue::Customer;

std::string card(const std::string& lines, const std::string& version = "4.0") {
    return "BEGIN:VCARD\r\nVERSION:" + version + "\r\n" + lines + "END:VCARD\r\n";
}

Customer only(const std::string& text) {
    const auto read = catalogue::readCards(text);
    EXPECT_TRUE(read && read->size() == 1);
    return read && !read->empty() ? read->front() : Customer{};
}

Customer named(const std::string& name, const std::string& telephone = {}, const std::string& mail = {}) {
    Customer made;
    made.name = name;
    made.telephone = telephone;
    made.mail = mail;
    return made;
}

// ------------------------------------------------------------------------------------------------------------- vCard

TEST(ContactCards, readTheExamplesOfTheStandards) {
    // RFC 6350, 3.2: the same line, folded.
    EXPECT_EQ(only(card("FN:A\r\nNOTE:This is a long description\r\n  that exists on a long line.\r\n")).note,
              "This is a long description that exists on a long line.");
    EXPECT_EQ(only(card("FN:A\r\nNOTE:This is a long descrip\r\n tion that exists o\r\n n a long line.\r\n")).note,
              "This is a long description that exists on a long line.");
    // RFC 6350, 4.1: escapes.
    EXPECT_EQ(only(card("FN:A\r\nNOTE:Mythical Manager\\nHyjinx Software Division\\nBabsCo\\, Inc.\\n\r\n")).note,
              "Mythical Manager\nHyjinx Software Division\nBabsCo, Inc.");
    // RFC 6350, 6.3.1.
    EXPECT_EQ(
        only(card("FN:A\r\nADR;GEO=\"geo:12.3457,78.910\";LABEL=\"Mr. John Q. Public, Esq.\\nMail Drop: TNE QB\\n"
                  "123 Main Street\\nAny Town, CA  91921-1234\\nU.S.A.\":;;123 Main Street;Any Town;CA;91921-1234;"
                  "U.S.A.\r\n"))
            .contact,
        "123 Main Street\nAny Town CA 91921-1234\nU.S.A.");
    // RFC 6350, 6.4.1, the number of which is a URI of RFC 3966.
    EXPECT_EQ(only(card("FN:A\r\nTEL;VALUE=uri;PREF=1;TYPE=\"voice,home\":tel:+1-555-555-5555;ext=5555\r\n"
                        "TEL;VALUE=uri;TYPE=home:tel:+33-01-23-45-67\r\n"))
                  .telephone,
              "+1-555-555-5555 x5555");
    // RFC 6350, 6.4.2 and 6.4.4.
    EXPECT_EQ(only(card("FN:A\r\nEMAIL;TYPE=work:jqpublic@xyz.example.com\r\n"
                        "EMAIL;PREF=1:jane_doe@example.com\r\n"))
                  .mail,
              "jane_doe@example.com");
    EXPECT_EQ(only(card("FN:A\r\nLANG;TYPE=work;PREF=1:en\r\nLANG;TYPE=work;PREF=2:fr\r\n")).language, "en");
    // RFC 2426, 3.1.1, 3.1.2 and 3.2.1.
    const auto old = only(card("FN:Mr. John Q. Public\\, Esq.\r\nN:Public;John;Quinlan;Mr.;Esq.\r\n"
                               "ADR;TYPE=dom,home,postal,parcel:;;123 Main Street;Any Town;CA;91921-1234\r\n"
                               "EMAIL;TYPE=internet:jqpublic@xyz.dom1.com\r\n"
                               "EMAIL;TYPE=internet,pref:jane_doe@abc.com\r\n",
                               "3.0"));
    EXPECT_EQ(old.name, "Mr. John Q. Public, Esq.");
    EXPECT_EQ(old.contact, "123 Main Street\nAny Town CA 91921-1234");
    EXPECT_EQ(old.mail, "jane_doe@abc.com");
}

TEST(ContactCards, nameSomebodyByWhatThereIs) {
    EXPECT_EQ(only(card("N:Quince;Ada;;;\r\n", "3.0")).name, "Ada Quince");
    EXPECT_EQ(only(card("ORG:Lantern Rowers;Boat house\r\n")).name, "Lantern Rowers");
    EXPECT_EQ(only(card("item1.FN:Ada\r\nitem1.TEL:555 0101\r\n")).telephone, "555 0101") << "groups, RFC 6350, 3.3";
    EXPECT_EQ(only(card("TEL:1\r\n")).name, "");
}

TEST(ContactCards, areRefusedInOneWord) {
    const auto faultOf = [](const std::string& text) {
        const auto read = catalogue::readCards(text);
        return read ? std::optional<ContactFault>() : read.error().fault;
    };
    EXPECT_EQ(faultOf(card("FN:A\r\n", "2.1")), ContactFault::OldVersion);
    EXPECT_EQ(faultOf(card("FN:A\r\n", "5")), ContactFault::UnknownVersion);
    EXPECT_EQ(faultOf("BEGIN:VCARD\r\nFN:A\r\nEND:VCARD\r\n"), ContactFault::UnknownVersion);
    EXPECT_EQ(faultOf(card("FN;ENCODING=QUOTED-PRINTABLE:A=20B\r\n", "3.0")), ContactFault::QuotedPrintable);
    EXPECT_EQ(faultOf(card("FN;CHARSET=ISO-8859-1:A\r\n", "3.0")), ContactFault::OtherCharset);
    EXPECT_EQ(faultOf("BEGIN:VCARD\r\nVERSION:4.0\r\nFN:A\r\n"), ContactFault::NotClosed);
    EXPECT_EQ(faultOf("BEGIN:VCARD\r\nVERSION:4.0\r\nBEGIN:VCARD\r\n"), ContactFault::NotClosed);
    EXPECT_EQ(faultOf("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n"), ContactFault::NotACard);
    EXPECT_EQ(faultOf("hello\r\n"), ContactFault::NotACard);
    EXPECT_EQ(faultOf(card("no colon\r\n")), ContactFault::LineUnreadable);
    EXPECT_EQ(faultOf(card("FN;X=\"open:A\r\n")), ContactFault::LineUnreadable);
    EXPECT_EQ(faultOf(""), ContactFault::NoContacts);
    EXPECT_EQ(faultOf(card("NOTE:" + std::string(catalogue::kMaxContactValue, 'x') + "\r\n")),
              ContactFault::ValueTooLarge);
    EXPECT_EQ(faultOf(std::string(catalogue::kMaxContactBytes + 1, ' ')), ContactFault::TooLarge);
}

// RFC 6350, 3.2: no line above 75 octets without its end; a letter of several octets is never cut.
TEST(ContactCards, areFoldedBetweenLetters) {
    auto long_ = named("A");
    for (int i = 0; i < 40; ++i) long_.note += i % 3 == 0 ? "\U0001F48E" : "\u05D0\u00E9x";
    const auto text = catalogue::writeCards({long_}, CardVersion::V4);
    std::size_t from = 0;
    while (from < text.size()) {
        const auto end = text.find("\r\n", from);
        ASSERT_NE(end, std::string::npos);
        EXPECT_LE(end - from, 75U);
        EXPECT_NE(static_cast<unsigned char>(text[from]) & 0xC0U, 0x80U);
        from = end + 2;
    }
    EXPECT_EQ(only(text).note, long_.note);
}

std::string anyText(std::mt19937_64& random, bool hasLines) {
    static const std::vector<std::string> kParts{"a", "B ", "\\",     ";", ",",  ":",          "\"", "'",      "=1+1",
                                                 "@", "-2", "\u00E9", "x", "\t", "\U0001F600", "^",  "\u202E", "n"};
    std::string text = "x";
    for (auto n = random() % 12; n > 0; --n) text += kParts[random() % kParts.size()];
    for (auto at = text.find('\t'); at != std::string::npos; at = text.find('\t')) text.replace(at, 1, "_");
    if (hasLines && random() % 2 == 0) text += "\ny";
    while (text.ends_with(' ')) text.pop_back();
    return text;
}

/// What is written is read again as it was, by each of the three forms.
TEST(ContactCards, lawsHoldForAnyText) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 300; ++round) {
        auto one = named(anyText(random, false), anyText(random, false), anyText(random, false));
        if (random() % 2 == 0) one.contact = anyText(random, true);
        if (random() % 2 == 0) one.note = anyText(random, true);
        if (random() % 3 == 0) one.name.insert(0, random() % 2 == 0 ? "=" : "'");
        if (random() % 2 == 0) one.language = "es-MX";
        EXPECT_EQ(only(catalogue::writeCards({one}, CardVersion::V4)), one);
        auto withoutLanguage = one;
        withoutLanguage.language.clear();
        EXPECT_EQ(only(catalogue::writeCards({one}, CardVersion::V3)), withoutLanguage);
        one.certificate = catalogue::Certificate{
            "14-" + anyText(random, false), "Ohio", units::Date::parse("2026-01-02").value(), {}};
        for (auto more = random() % 3; more > 0; --more)
            one.otherCertificates.push_back({anyText(random, false), anyText(random, false),
                                             units::Date::parse("2026-01-03").value(),
                                             units::Date::parse("2027-01-02").value()});
        const auto table = catalogue::writeContactTable({one});
        const auto read = catalogue::readContactTable(table);
        ASSERT_TRUE(read) << table;
        EXPECT_EQ(*read, std::vector{one}) << table;
    }
}

// ------------------------------------------------------------------------------------------------------------- tables

TEST(ContactTable, takesTheColumnsThatThereAre) {
    const auto read = catalogue::readContactTable("Phone;Name;Anything\r\n555 0101;Ada Quince;x\r\n;;\r\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, std::vector{named("Ada Quince", "555 0101")});
}

TEST(ContactTable, hasNoCellThatASpreadsheetWouldRun) {
    const auto text = catalogue::writeContactTable({named("=HYPERLINK(1)", "+1 555", "@x")});
    EXPECT_NE(text.find("'=HYPERLINK(1)"), std::string::npos);
    EXPECT_NE(text.find("'+1 555"), std::string::npos);
    EXPECT_EQ(catalogue::readContactTable(text)->front().telephone, "+1 555");
}

TEST(ContactTable, hasFurtherCertificatesUnderAnyNumbers) {
    const auto read = catalogue::readContactTable(
        "name,certificate_7,certificate_issued_on_7,certificate_issued_on_60,certificate_2,certificate_place_x\n"
        "Ada Quince,77,2026-01-03,2026-02-04,none of it,y\n");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->front().otherCertificates.size(), 2) << "the second has no day of issue";
    EXPECT_EQ(read->front().otherCertificates[0].number, "77");
    EXPECT_EQ(read->front().otherCertificates[1].issuedOn.iso(), "2026-02-04");
}

TEST(ContactTable, saysWhatItCannotRead) {
    const auto faultOf = [](const std::string& text) { return catalogue::readContactTable(text).error().fault; };
    EXPECT_EQ(faultOf("phone\n1\n"), ContactFault::NoNameColumn);
    EXPECT_EQ(faultOf("name\n\"open\n"), ContactFault::TableUnreadable);
    EXPECT_EQ(faultOf("name\n"), ContactFault::NoContacts);
    EXPECT_EQ(faultOf(""), ContactFault::NoContacts);
    EXPECT_EQ(faultOf("name,certificate_issued_on\nAda,2026-13-01\n"), ContactFault::DayUnreadable);
}

// ----------------------------------------------------------------------------------------------- who is there already

TEST(ContactPlan, knowsWhoIsThere) {
    const std::vector there{named("Ada Quince", "555 0101"), named("Lantern Rowers", {}, "row@example.org")};
    const auto rows =
        catalogue::planContacts(there, {named("ada quince ", "(555) 01-01"), named("Ada Quince", {}, "ada@example.org"),
                                        named("Ada Quince", "555 9999"), named("A. Quince", "5550101"),
                                        named("Row Club", {}, "ROW@example.org"), named("Nobody yet", "1"),
                                        named("Nobody yet", {}, "new@example.org")});
    std::vector<ContactFit> fits;
    for (const auto& row : rows) fits.push_back(row.fit);
    EXPECT_EQ(fits, (std::vector{ContactFit::Known, ContactFit::Same, ContactFit::Doubtful, ContactFit::Doubtful,
                                 ContactFit::Doubtful, ContactFit::New, ContactFit::Same}));
    EXPECT_EQ(rows[1].contact, named("Ada Quince", "555 0101", "ada@example.org"));
    EXPECT_EQ(rows[6].like, 2U) << "the first of the new ones";
}

TEST(ContactPlan, aRenewedCertificateIsPutBesideTheOldOne) {
    const auto day = [](const char* iso) { return units::Date::parse(iso).value(); };
    auto known = named("Ada Quince");
    known.certificate = catalogue::Certificate{"1", "Ohio", day("2025-01-01"), day("2026-12-31")};
    auto read = known;
    read.otherCertificates = {{"2", "Ohio", day("2027-01-01"), {}}};
    auto rows = catalogue::planContacts({known}, {read});
    ASSERT_EQ(rows.at(0).fit, ContactFit::Same);
    EXPECT_TRUE(rows[0].fillsCertificate);
    EXPECT_EQ(rows[0].contact, read);
    rows = catalogue::planContacts({read}, {read});
    EXPECT_EQ(rows.at(0).fit, ContactFit::Known) << "nothing is put in twice";
    auto cut = read;
    cut.otherCertificates[0].expiresOn = day("2027-03-31");
    rows = catalogue::planContacts({cut}, {read});
    EXPECT_EQ(rows.at(0).fit, ContactFit::Known) << "an older list does not lengthen one that was cut short";
    auto again = read;
    again.otherCertificates[0] = {"1", "OHIO", day("2027-01-01"), {}};
    rows = catalogue::planContacts({known}, {again});
    EXPECT_EQ(rows.at(0).fit, ContactFit::Same) << "renewed under its number";
}

} // namespace

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/csv.h"
#include "core/catalogue/customer.h"

#include <tl/expected.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

// Customers as other programs hand them over: vCard 3.0 and 4.0, and comma-separated tables.
// Sources: RFC 6350 (vCard 4.0), RFC 2426 with RFC 2425 (3.0), RFC 4180 (tables).
namespace sp::catalogue {

inline constexpr std::size_t kMaxContactBytes = 16'000'000;
inline constexpr std::size_t kMaxContacts = 20'000;
inline constexpr std::size_t kMaxContactValue = 100'000; ///< bytes of a property, unfolded

/// Why contacts cannot be read; whoever reads them says it in a sentence about the file.
enum class ContactFault {
    TooLarge,        ///< more than kMaxContactBytes
    TooMany,         ///< more than kMaxContacts
    NoContacts,      ///< neither a card nor a row
    NotACard,        ///< a line that belongs to no card
    NotClosed,       ///< a card without its end
    OldVersion,      ///< vCard 2.1
    UnknownVersion,  ///< neither 3.0 nor 4.0, or none is said
    QuotedPrintable, ///< that is of 2.1 alone
    OtherCharset,    ///< a charset other than UTF-8
    LineUnreadable,  ///< no name, no colon, a quotation mark that is not closed
    ValueTooLarge,   ///< a property of more than kMaxContactValue
    NoNameColumn,    ///< a table without a column of names
    TableUnreadable, ///< no table by RFC 4180, or too large a one
    DayUnreadable    ///< of a certificate
};

struct ContactTrouble {
    ContactFault fault;
    std::size_t line = 1; ///< of the file, from 1
};

/// Without keys, in the order of the file. A card's name is FN, else what N or ORG has; telephone and mail are the
/// preferred ones, else the first; the address is ADR a component a line; what else a card holds is not taken. A name
/// may be empty and anything longer than a customer can be: that is seen by catalogue::fields::check.
using Contacts = tl::expected<std::vector<Customer>, ContactTrouble>;

/// Cards of versions 3.0 and 4.0, in UTF-8; lines end with CRLF, LF or CR and may be folded.
Contacts readCards(std::string_view text);

enum class CardVersion { V3, V4 };
/// Name, telephone, mail, address, note and (4.0) language; lines folded at 75 octets, between letters.
std::string writeCards(const std::vector<Customer>& customers, CardVersion version);

/// A table whose first row names its columns as `writeContactTable` does (letter case ignored; phone, email, e-mail
/// and notes too); `name` must be among them, the others may be missing. Blank names are left out.
Contacts readContactTable(std::string_view text);
/// name, address, telephone, mail, language, note and the certificate, further ones in columns numbered from 2; no cell
/// that a spreadsheet would run.
std::string writeContactTable(const std::vector<Customer>& customers);

/// What becomes of a contact that is read.
enum class ContactFit {
    New,     ///< nobody like that is there
    Same,    ///< somebody who is there, and nothing contradicts; takes over what is lacking
    Known,   ///< the same, and nothing is lacking
    Doubtful ///< somebody has the name, the telephone or the mail, but something else contradicts
};

struct ContactRow {
    Customer contact; ///< Same: as the entry is to be
    ContactFit fit = ContactFit::New;
    std::size_t like = 0; ///< the one of those that are there, or, from their number on, of the new ones before
    bool fillsCertificate = false; ///< Same: what is filled in is a certificate of exemption, or one beside the rest
};

/// What is to be done with contacts, in their order, beside the customers that are there. Compared are names (letter
/// case of ASCII and spaces at the ends ignored), telephones by their digits, mail addresses as names.
std::vector<ContactRow> planContacts(const std::vector<Customer>& there, const std::vector<Customer>& contacts);

} // namespace sp::catalogue

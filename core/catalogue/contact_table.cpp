// SPDX-License-Identifier: MIT
#include "core/catalogue/contacts.h"

#include "core/catalogue/order.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <map>
#include <optional>
#include <unordered_map>

namespace sp::catalogue {

namespace {

enum class Column { Name, Address, Telephone, Mail, Language, Note, Number, Place, IssuedOn, ExpiresOn };

struct Heading {
    std::string_view word;
    Column column;
};
/// Those that are written come first, in the order of Column.
constexpr std::array kHeadings{Heading{"name", Column::Name},
                               Heading{"address", Column::Address},
                               Heading{"telephone", Column::Telephone},
                               Heading{"mail", Column::Mail},
                               Heading{"language", Column::Language},
                               Heading{"note", Column::Note},
                               Heading{"certificate", Column::Number},
                               Heading{"certificate_place", Column::Place},
                               Heading{"certificate_issued_on", Column::IssuedOn},
                               Heading{"certificate_expires_on", Column::ExpiresOn},
                               Heading{"phone", Column::Telephone},
                               Heading{"email", Column::Mail},
                               Heading{"e-mail", Column::Mail},
                               Heading{"notes", Column::Note}};
constexpr std::size_t kWritten = 10;

std::string lowered(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\n");
    if (first == std::string_view::npos) return {};
    std::string result(text.substr(first, text.find_last_not_of(" \t\n") - first + 1));
    for (auto& c : result)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return result;
}

std::string digitsOf(std::string_view telephone) {
    std::string digits;
    for (const char c : telephone)
        if (c >= '0' && c <= '9') digits += c;
    return digits;
}

/// A cell on one line, or on several; what no text of ours may hold is left out.
std::string cleaned(std::string_view cell, bool hasLines) {
    std::string text;
    for (const char c : base::unguarded(cell)) {
        if (c == '\n' && hasLines)
            text += '\n';
        else if (c == '\n' || c == '\t')
            text += ' ';
        else if (static_cast<unsigned char>(c) >= 0x20)
            text += c;
    }
    const auto first = text.find_first_not_of(" \n");
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(" \n") - first + 1);
}

/// The day of a cell; nothing in an empty one. Nothing at all for what is no day.
std::optional<std::optional<units::Date>> dayOf(const std::string& cell) {
    if (cell.empty()) return std::optional<units::Date>();
    const auto day = units::Date::parse(cell);
    if (!day) return std::nullopt;
    return std::optional(*day);
}

/// The columns of the further certificates: those of the first with a number from 2 on behind them.
constexpr std::array<std::string_view, 4> kOfCertificate{"certificate", "certificate_place", "certificate_issued_on",
                                                         "certificate_expires_on"};
std::string headOf(std::string_view column, std::size_t number) {
    return std::string(column) + '_' + std::to_string(number);
}

std::array<std::string, 4> cellsOf(const Certificate& filed) {
    return {filed.number, filed.place, filed.issuedOn.iso(), filed.expiresOn ? filed.expiresOn->iso() : std::string()};
}

using PlacesOfCertificate = std::array<std::optional<std::size_t>, 4>;

/// Where the further certificates stand, as far as there is a day of issue.
std::vector<PlacesOfCertificate> furtherPlaces(const std::vector<std::string>& heads) {
    std::map<std::uint64_t, PlacesOfCertificate> byNumber; // some may be missing
    for (std::size_t i = 0; i < heads.size(); ++i) {
        const auto head = lowered(heads[i]);
        const auto mark = head.rfind('_');
        if (mark == std::string::npos) continue;
        std::uint64_t number = 0;
        const auto* end = head.data() + head.size();
        const auto read = std::from_chars(head.data() + mark + 1, end, number);
        const auto column = std::ranges::find(kOfCertificate, std::string_view(head).substr(0, mark));
        if (read.ec != std::errc() || read.ptr != end || number < 2 || column == kOfCertificate.end()) continue;
        auto& place = byNumber[number].at(static_cast<std::size_t>(column - kOfCertificate.begin()));
        if (!place) place = i;
    }
    std::vector<PlacesOfCertificate> all;
    for (const auto& [number, places] : byNumber)
        if (places[2]) all.push_back(places);
    return all;
}

/// Whether two say the same, or one of them nothing.
bool agree(const std::string& one, const std::string& other) { return one.empty() || other.empty() || one == other; }

bool fill(std::string& kept, const std::string& found) {
    if (!kept.empty() || found.empty()) return false;
    kept = found;
    return true;
}

/// Whether it is the one on file, or what that was before it was put right or cut short.
bool isThatOrOlder(const Certificate& read, const Certificate& filed) {
    return read.number == filed.number && isOnePlace(read.place, filed.place) && read.issuedOn <= filed.issuedOn;
}

struct Keys {
    std::string name;
    std::string telephone;
    std::string mail;

    explicit Keys(const Customer& of)
        : name(lowered(of.name))
        , telephone(digitsOf(of.telephone))
        , mail(lowered(of.mail)) {}
};

} // namespace

Contacts readContactTable(std::string_view text) {
    using Fault = ContactFault;
    if (text.size() > kMaxContactBytes) return tl::unexpected(ContactTrouble{Fault::TooLarge, 1});
    const auto table = base::readCsv(text);
    if (!table) return tl::unexpected(ContactTrouble{Fault::TableUnreadable, table.error().line});
    if (table->rows.empty()) return tl::unexpected(ContactTrouble{Fault::NoContacts, 1});
    std::array<std::optional<std::size_t>, kWritten> places;
    const auto& heads = table->rows.front().cells;
    for (std::size_t i = 0; i < heads.size(); ++i)
        for (const auto& [word, column] : kHeadings)
            if (auto& place = places.at(static_cast<std::size_t>(column)); !place && lowered(heads[i]) == word)
                place = i;
    if (!places.front()) return tl::unexpected(ContactTrouble{Fault::NoNameColumn, table->rows.front().line});
    const auto further = furtherPlaces(heads);
    std::vector<Customer> contacts;
    for (std::size_t i = 1; i < table->rows.size(); ++i) {
        const auto& row = table->rows[i];
        const auto cellAt = [&](std::optional<std::size_t> place, bool hasLines = false) {
            return place && *place < row.cells.size() ? cleaned(row.cells[*place], hasLines) : std::string();
        };
        const auto cell = [&](Column column, bool hasLines = false) {
            return cellAt(places.at(static_cast<std::size_t>(column)), hasLines);
        };
        Customer made;
        made.name = cell(Column::Name);
        if (made.name.empty()) continue;
        made.contact = cell(Column::Address, true);
        made.telephone = cell(Column::Telephone);
        made.mail = cell(Column::Mail);
        made.language = cell(Column::Language);
        made.note = cell(Column::Note, true);
        const auto issued = dayOf(cell(Column::IssuedOn));
        const auto expires = dayOf(cell(Column::ExpiresOn));
        if (!issued || !expires) return tl::unexpected(ContactTrouble{Fault::DayUnreadable, row.line});
        if (*issued) made.certificate = Certificate{cell(Column::Number), cell(Column::Place), **issued, *expires};
        for (const auto& [number, place, issuedOn, expiresOn] : further) {
            const auto from = dayOf(cellAt(issuedOn));
            const auto to = dayOf(cellAt(expiresOn));
            if (!from || !to) return tl::unexpected(ContactTrouble{Fault::DayUnreadable, row.line});
            if (*from) made.otherCertificates.push_back({cellAt(number), cellAt(place), **from, *to});
        }
        if (contacts.size() == kMaxContacts) return tl::unexpected(ContactTrouble{Fault::TooMany, row.line});
        contacts.push_back(std::move(made));
    }
    if (contacts.empty()) return tl::unexpected(ContactTrouble{Fault::NoContacts, 1});
    return contacts;
}

std::string writeContactTable(const std::vector<Customer>& customers) {
    std::size_t most = 1;
    for (const auto& one : customers) most = std::max(most, certificatesOf(one).size());
    std::vector<base::CsvCell> heads;
    for (std::size_t i = 0; i < kWritten; ++i) heads.push_back({std::string(kHeadings.at(i).word)});
    for (std::size_t number = 2; number <= most; ++number)
        for (const auto column : kOfCertificate) heads.push_back({headOf(column, number)});
    auto out = base::csvRecord(heads);
    for (const auto& one : customers) {
        std::vector<base::CsvCell> cells;
        for (const auto& text : {one.name, one.contact, one.telephone, one.mail, one.language, one.note})
            cells.push_back({text});
        const auto filed = certificatesOf(one);
        for (std::size_t i = 0; i < most; ++i)
            for (const auto& text : i < filed.size() ? cellsOf(filed[i]) : std::array<std::string, 4>())
                cells.push_back({text});
        out += base::csvRecord(cells);
    }
    return out;
}

std::vector<ContactRow> planContacts(const std::vector<Customer>& there, const std::vector<Customer>& contacts) {
    std::vector<Customer> known = there;
    std::unordered_map<std::string, std::size_t> names;
    std::unordered_map<std::string, std::size_t> telephones;
    std::unordered_map<std::string, std::size_t> mails;
    const auto note = [&](std::size_t place) {
        const Keys keys(known[place]);
        names.emplace(keys.name, place);
        if (!keys.telephone.empty()) telephones.emplace(keys.telephone, place);
        if (!keys.mail.empty()) mails.emplace(keys.mail, place);
    };
    for (std::size_t i = 0; i < known.size(); ++i) note(i);
    const auto in = [](const auto& map, const std::string& key) -> std::optional<std::size_t> {
        const auto found = map.find(key);
        return key.empty() || found == map.end() ? std::nullopt : std::optional(found->second);
    };
    std::vector<ContactRow> rows;
    for (const auto& contact : contacts) {
        const Keys keys(contact);
        auto& row = rows.emplace_back(ContactRow{contact, ContactFit::New, 0});
        const auto byName = in(names, keys.name);
        auto like = byName;
        if (!like) like = in(mails, keys.mail);
        if (!like) like = in(telephones, keys.telephone);
        if (!like) {
            known.push_back(contact);
            note(known.size() - 1);
            continue;
        }
        row.like = *like;
        auto& other = known[*like];
        const Keys others(other);
        if (!byName || !agree(keys.telephone, others.telephone) || !agree(keys.mail, others.mail)) {
            row.fit = ContactFit::Doubtful;
            continue;
        }
        auto filled = other;
        bool isMore = false;
        for (const auto part :
             {&Customer::contact, &Customer::telephone, &Customer::mail, &Customer::note, &Customer::language})
            isMore = fill(filled.*part, contact.*part) || isMore;
        for (const auto& one : certificatesOf(contact)) {
            const auto filed = certificatesOf(filled);
            if (std::ranges::any_of(filed, [&](const Certificate& on) { return isThatOrOlder(one, on); })) continue;
            if (filed.empty())
                filled.certificate = one;
            else
                filled.otherCertificates.push_back(one);
            row.fillsCertificate = isMore = true;
        }
        row.fit = isMore ? ContactFit::Same : ContactFit::Known;
        if (!isMore) continue;
        row.contact = filled;
        other = std::move(filled);
        note(*like);
    }
    return rows;
}

} // namespace sp::catalogue

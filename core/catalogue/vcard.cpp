// SPDX-License-Identifier: MIT
#include "core/catalogue/contacts.h"

#include <algorithm>
#include <array>
#include <limits>
#include <optional>
#include <utility>

namespace sp::catalogue {

namespace {

using Fault = ContactFault;

std::string upper(std::string_view text) {
    std::string result(text);
    for (auto& c : result)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return result;
}

/// A line of the file after unfolding.
struct ContentLine {
    std::size_t line = 1;
    std::string text;
};

/// RFC 6350, 3.2: a line end before a space or tab is none. Blank lines are left out.
std::vector<ContentLine> unfolded(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    std::vector<ContentLine> lines;
    std::size_t number = 0;
    while (!text.empty()) {
        ++number;
        const auto end = text.find_first_of("\r\n");
        auto one = text.substr(0, end);
        std::size_t skipped = one.size();
        if (end != std::string_view::npos)
            skipped += text.substr(end).starts_with("\r\n") ? std::size_t{2} : std::size_t{1};
        text.remove_prefix(skipped);
        if (!one.empty() && (one.front() == ' ' || one.front() == '\t') && !lines.empty())
            lines.back().text += one.substr(1);
        else if (one.find_first_not_of(" \t") != std::string_view::npos)
            lines.push_back({number, std::string(one)});
    }
    return lines;
}

struct Parameter {
    std::string name; ///< in capitals
    std::string value;
};

struct Property {
    std::string name; ///< in capitals, without its group
    std::vector<Parameter> parameters;
    std::string value; ///< as it stands, escaped

    std::string of(std::string_view parameter) const {
        for (const auto& one : parameters)
            if (one.name == parameter) return one.value;
        return {};
    }
};

/// *(";" param) ":" value; quoted parameter values may hold both.
std::optional<Property> propertyOf(const std::string& text) {
    Property property;
    std::vector<std::string> parts(1);
    bool isQuoted = false;
    std::size_t at = 0;
    for (; at < text.size(); ++at) {
        const char c = text[at];
        if (c == '"') isQuoted = !isQuoted;
        if (!isQuoted && c == ':') break;
        if (!isQuoted && c == ';')
            parts.emplace_back();
        else if (c != '"')
            parts.back() += c;
    }
    if (isQuoted || at == text.size()) return std::nullopt;
    property.value = text.substr(at + 1);
    const auto& head = parts.front();
    property.name = upper(head.substr(head.find('.') == std::string::npos ? 0 : head.find('.') + 1));
    if (property.name.empty()) return std::nullopt;
    for (std::size_t i = 1; i < parts.size(); ++i) {
        const auto equals = parts[i].find('=');
        if (equals == std::string::npos)
            property.parameters.push_back({"TYPE", upper(parts[i])}); // as vCard 2.1 and many of 3.0 have it
        else
            property.parameters.push_back({upper(parts[i].substr(0, equals)), parts[i].substr(equals + 1)});
    }
    return property;
}

/// The components between unescaped semicolons, their escapes undone. RFC 6350, 3.4.
std::vector<std::string> componentsOf(std::string_view value) {
    std::vector<std::string> parts(1);
    for (std::size_t i = 0; i < value.size(); ++i) {
        const char c = value[i];
        if (c == '\\' && i + 1 < value.size()) {
            const char next = value[++i];
            parts.back() += next == 'n' || next == 'N' ? '\n' : next;
        } else if (c == ';') {
            parts.emplace_back();
        } else {
            parts.back() += c;
        }
    }
    return parts;
}

/// A text value; semicolons need no escape there. What no text of ours may hold is left out.
std::string textOf(std::string_view value, bool hasLines) {
    std::string text;
    for (std::size_t i = 0; i < value.size(); ++i) {
        char c = value[i];
        if (c == '\\' && i + 1 < value.size()) {
            c = value[++i];
            if (c == 'n' || c == 'N') c = '\n';
        }
        if (c == '\n' || c == '\t') c = hasLines && c == '\n' ? '\n' : ' ';
        if (static_cast<unsigned char>(c) >= 0x20 || c == '\n') text += c;
    }
    const auto first = text.find_first_not_of(" \n");
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(" \n") - first + 1);
}

std::string escaped(std::string_view text) {
    std::string result;
    for (const char c : text) {
        if (c == '\n')
            result += "\\n";
        else if (c == '\\' || c == ',' || c == ';')
            (result += '\\') += c;
        else if (static_cast<unsigned char>(c) >= 0x20)
            result += c;
    }
    return result;
}

/// How much a property is preferred, the least the most: PREF of 4.0, TYPE=pref of 3.0.
int preferenceOf(const Property& property) {
    constexpr int kNone = 101;
    int found = kNone;
    for (const auto& one : property.parameters) {
        if (one.name == "TYPE" && ("," + upper(one.value) + ",").find(",PREF,") != std::string::npos)
            found = std::min(found, 1);
        if (one.name == "PREF" && !one.value.empty() && one.value.size() <= 3 &&
            one.value.find_first_not_of("0123456789") == std::string::npos)
            found = std::min(found, std::stoi(one.value));
    }
    return found;
}

std::string telephoneOf(const Property& property) {
    auto text = textOf(property.value, false);
    if (upper(text.substr(0, 4)) != "TEL:") return text;
    text.erase(0, 4); // a URI, RFC 3966
    const auto rest = text.find(';');
    if (rest == std::string::npos) return text;
    const auto extension = text.find(";ext=");
    auto number = text.substr(0, rest);
    if (extension != std::string::npos) {
        const auto from = extension + 5;
        number += std::string(1, ' ') + "x" + text.substr(from, text.find(';', from) - from);
    }
    return number;
}

/// Each component that says something on a line of its own, the town with its region and code on one.
std::string addressOf(const Property& property) {
    auto parts = componentsOf(property.value);
    parts.resize(7);
    const auto joined = [](std::initializer_list<std::string> words, const char* between) {
        std::string all;
        for (const auto& one : words)
            if (!one.empty()) all += (all.empty() ? "" : between) + one;
        return all;
    };
    for (auto& part : parts) part = textOf(escaped(part), true);
    return joined({parts[0], parts[1], parts[2], joined({parts[3], parts[4], parts[5]}, " "), parts[6]}, "\n");
}

std::string nameOf(const Property& property) {
    auto parts = componentsOf(property.value);
    parts.resize(2);
    const auto given = textOf(escaped(parts[1]), false);
    const auto family = textOf(escaped(parts[0]), false);
    return given.empty() || family.empty() ? given + family : given + " " + family;
}

/// What of a card is looked at, in the order in which it counts.
class Card {
  public:
    tl::expected<void, Fault> take(const Property& property) {
        if (upper(property.of("ENCODING")) == "QUOTED-PRINTABLE" || upper(property.of("TYPE")) == "QUOTED-PRINTABLE")
            return tl::unexpected(Fault::QuotedPrintable);
        const auto charset = upper(property.of("CHARSET"));
        if (!charset.empty() && charset != "UTF-8" && charset != "US-ASCII") return tl::unexpected(Fault::OtherCharset);
        if (property.name == "VERSION") return takeVersion(property.value);
        if (property.name == "FN") keepFirst(m_fullName, textOf(property.value, false));
        if (property.name == "N") keepFirst(m_parts, nameOf(property));
        if (property.name == "ORG") keepFirst(m_firm, textOf(escaped(componentsOf(property.value).front()), false));
        if (property.name == "TEL") keepPreferred(m_telephone, property, telephoneOf(property));
        if (property.name == "EMAIL") keepPreferred(m_mail, property, textOf(property.value, false));
        if (property.name == "ADR") keepPreferred(m_address, property, addressOf(property));
        if (property.name == "LANG") keepPreferred(m_language, property, textOf(property.value, false));
        if (property.name == "NOTE") keepFirst(m_note, textOf(property.value, true));
        return {};
    }
    bool hasVersion() const { return m_hasVersion; }
    Customer customer() const {
        Customer made;
        made.name = !m_fullName.empty() ? m_fullName : !m_parts.empty() ? m_parts : m_firm;
        made.telephone = m_telephone.text;
        made.mail = m_mail.text;
        made.contact = m_address.text;
        made.language = m_language.text;
        made.note = m_note;
        return made;
    }

  private:
    struct Preferred {
        std::string text;
        int preference = std::numeric_limits<int>::max();
    };
    tl::expected<void, Fault> takeVersion(const std::string& value) {
        const auto version = textOf(value, false);
        if (version == "2.1") return tl::unexpected(Fault::OldVersion);
        if (version != "3.0" && version != "4.0") return tl::unexpected(Fault::UnknownVersion);
        m_hasVersion = true;
        return {};
    }
    static void keepFirst(std::string& kept, std::string text) {
        if (kept.empty()) kept = std::move(text);
    }
    static void keepPreferred(Preferred& kept, const Property& property, std::string text) {
        const int preference = preferenceOf(property);
        if (!text.empty() && preference < kept.preference) kept = {std::move(text), preference};
    }

    std::string m_fullName;
    std::string m_parts;
    std::string m_firm;
    std::string m_note;
    Preferred m_telephone;
    Preferred m_mail;
    Preferred m_address;
    Preferred m_language;
    bool m_hasVersion = false;
};

/// RFC 6350, 3.2: no line longer than 75 octets; never within a letter.
void addFolded(std::string& out, const std::string& line) {
    constexpr std::size_t kLongest = 75;
    std::size_t length = 0;
    for (std::size_t i = 0; i < line.size();) {
        std::size_t size = 1;
        while (i + size < line.size() && (static_cast<unsigned char>(line[i + size]) & 0xC0U) == 0x80U) ++size;
        if (length + size > kLongest) {
            out += "\r\n ";
            length = 1;
        }
        out.append(line, i, size);
        length += size;
        i += size;
    }
    out += "\r\n";
}

} // namespace

Contacts readCards(std::string_view text) {
    if (text.size() > kMaxContactBytes) return tl::unexpected(ContactTrouble{Fault::TooLarge, 1});
    std::vector<Customer> contacts;
    std::optional<Card> card;
    std::size_t begun = 1;
    for (const auto& line : unfolded(text)) {
        const auto trouble = [&](Fault fault) { return tl::unexpected(ContactTrouble{fault, line.line}); };
        if (line.text.size() > kMaxContactValue) return trouble(Fault::ValueTooLarge);
        const auto property = propertyOf(line.text);
        if (!property) return trouble(card ? Fault::LineUnreadable : Fault::NotACard);
        if (property->name == "BEGIN") {
            if (card) return tl::unexpected(ContactTrouble{Fault::NotClosed, begun});
            if (upper(textOf(property->value, false)) != "VCARD") return trouble(Fault::NotACard);
            card.emplace();
            begun = line.line;
            continue;
        }
        if (!card) return trouble(Fault::NotACard);
        if (property->name != "END") {
            if (const auto taken = card->take(*property); !taken) return trouble(taken.error());
            continue;
        }
        if (!card->hasVersion()) return tl::unexpected(ContactTrouble{Fault::UnknownVersion, begun});
        if (contacts.size() == kMaxContacts) return trouble(Fault::TooMany);
        contacts.push_back(card->customer());
        card.reset();
    }
    if (card) return tl::unexpected(ContactTrouble{Fault::NotClosed, begun});
    if (contacts.empty()) return tl::unexpected(ContactTrouble{Fault::NoContacts, 1});
    return contacts;
}

std::string writeCards(const std::vector<Customer>& customers, CardVersion version) {
    std::string out;
    const bool isNewest = version == CardVersion::V4;
    for (const auto& one : customers) {
        const auto add = [&](const char* name, const std::string& value) {
            if (!value.empty()) addFolded(out, name + value);
        };
        out += isNewest ? "BEGIN:VCARD\r\nVERSION:4.0\r\n" : "BEGIN:VCARD\r\nVERSION:3.0\r\n";
        add("FN:", escaped(one.name));
        if (!isNewest) add("N:", escaped(one.name) + ";;;;"); // 3.0 asks for one
        add("TEL:", escaped(one.telephone));
        add("EMAIL:", escaped(one.mail));
        if (!one.contact.empty()) add("ADR:", ";;" + escaped(one.contact) + ";;;;");
        if (isNewest) add("LANG:", escaped(one.language));
        add("NOTE:", escaped(one.note));
        if (!one.id.isNone()) add("UID:", "urn:uuid:" + one.id.text());
        out += "END:VCARD\r\n";
    }
    return out;
}

} // namespace sp::catalogue

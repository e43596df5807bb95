// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/date.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::catalogue {

/// An exemption certificate as filed. Whether it holds is for the shop and its tax authority to say.
struct Certificate {
    std::string number;
    std::string place; ///< the state or country it is good for
    units::Date issuedOn;
    std::optional<units::Date> expiresOn;

    /// In force on `day`: issued by then and not expired.
    bool holdsOn(units::Date day) const { return issuedOn <= day && (!expiresOn || day <= *expiresOn); }

    friend bool operator==(const Certificate&, const Certificate&) = default;
};

struct Customer {
    base::Id id;
    std::string name;
    std::string contact; ///< address: lines of free text for the sheet
    std::string telephone;
    std::string mail;
    std::optional<Certificate> certificate;
    base::Id mergedInto;       ///< the entry that this one turned out to be the same person as; none as a rule
    std::string note = {};     ///< the shop's own, on no paper
    std::string language = {}; ///< that papers for them are to be in, a BCP 47 tag such as "es"; empty for the shop's
    std::vector<Certificate> otherCertificates =
        {}; ///< on file beside `certificate`: of other places, or of other days

    friend bool operator==(const Customer&, const Customer&) = default;
};

/// All on file, in the order in which they stand there.
std::vector<Certificate> certificatesOf(const Customer& customer);
/// Those that are in force on `day`, in that order; of which place an order is, nothing says.
std::vector<Certificate> certificatesOn(const Customer& customer, units::Date day);
/// The first of those.
std::optional<Certificate> certificateOn(const Customer& customer, units::Date day);
/// Those that end within kCertificateEndsSoon days, or have ended, the first first; but none that another of the same
/// place (letter case apart) goes on for, in force already or from the day after the end on.
std::vector<Certificate> endingCertificates(const Customer& customer, units::Date today);

} // namespace sp::catalogue

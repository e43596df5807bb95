// SPDX-License-Identifier: MIT
//
// Customers out of cards and tables, on any bytes. What is read is written and read again as it was, in each form that
// can hold it; a refusal names a line of the file.
#include "core/base/ensure.h"
#include "core/catalogue/contacts.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

using namespace sp;

namespace {

void check(const catalogue::Contacts& read, std::string_view text) {
    if (!read) {
        base::ensure(read.error().line >= 1 && read.error().line <= text.size() + 1, "a refusal names a line");
        return;
    }
    base::ensure(!read->empty() && read->size() <= catalogue::kMaxContacts, "somebody was read, and not too many");
    const auto rows = catalogue::planContacts({}, *read);
    base::ensure(rows.size() == read->size(), "each has a row");
    auto again = *read;
    for (auto& one : again) one.certificate.reset();
    const auto cards = catalogue::writeCards(again, catalogue::CardVersion::V4);
    const auto back = catalogue::readCards(cards);
    if (!back) return; // a value of more than a card holds
    base::ensure(*back == again, "what is written as cards is read again");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    check(catalogue::readCards(bytes), bytes);
    check(catalogue::readContactTable(bytes), bytes);
    return 0;
}

// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/shop.h"
#include "core/pricing/account.h"

#include <QString>
#include <vector>

namespace sp::words {

/// The ways of paying that are offered: the shop's own, or where it has none cash, card, transfer and other as the
/// reader's language calls them.
std::vector<catalogue::WayToPay> waysToPay(const std::vector<catalogue::WayToPay>& own);

/// Whether `kind` is cash, which has change and a smallest coin: by the way of the shop's that is called so, letter
/// case and spaces around it apart. In a shop without ways of its own "Cash" is cash in every language.
pricing::Tender tenderOf(const QString& kind, const std::vector<catalogue::WayToPay>& own);

/// What a row of the ledger is beside its note: "change", "rounded to the coin", "taken back"; empty of money that was
/// received or given back.
QString roleOf(const catalogue::Payment& payment);

} // namespace sp::words

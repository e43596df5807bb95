// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/customer.h"
#include "core/catalogue/design.h"
#include "core/catalogue/design_artwork.h"
#include "core/catalogue/kit.h"
#include "core/catalogue/material.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_list.h"
#include "core/catalogue/shop.h"

#include <string>

namespace sp::test {

// Values with every field set to something else than it starts out with, all within their ranges. Names and prices
// are invented. Keys are none unless a parameter gives them.

catalogue::Material sampleStone(std::string name = "Aquamarine SS10");
catalogue::Material sampleTape();
catalogue::Material sampleBlank();
catalogue::Supplier sampleSupplier(std::string name = "Harbour Lane Beads");
catalogue::Pack samplePack(const base::Id& material, const base::Id& supplier);
catalogue::Kit sampleKit(const base::Id& stone, const base::Id& supplier, const base::Id& design);
catalogue::PriceListColumns samplePriceListColumns(const base::Id& supplier);
catalogue::DesignArtwork sampleArtwork(const base::Id& design);
catalogue::Design sampleDesign(const base::Id& stone, const base::Id& base, std::string name = "Lantern");
catalogue::Customer sampleCustomer(std::string name = "Rowan Bakery");
/// `goods` is a material that is packed, and for want of others the usual tape and template too; none for none.
catalogue::Shop sampleShop(const base::Id& goods);
catalogue::BenchStandards sampleBench();
catalogue::OrderLine sampleLine(const catalogue::Design& design);
catalogue::Order sampleOrder(const base::Id& customer, const catalogue::Design& design);

} // namespace sp::test

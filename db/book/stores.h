// SPDX-License-Identifier: MIT
#pragma once

#include "db/stores/artwork_store.h"
#include "db/stores/bill_store.h"
#include "db/stores/change_log.h"
#include "db/stores/customer_store.h"
#include "db/stores/design_store.h"
#include "db/stores/job_store.h"
#include "db/stores/kit_store.h"
#include "db/stores/material_store.h"
#include "db/stores/paper_store.h"
#include "db/stores/payment_store.h"
#include "db/stores/price_list_store.h"
#include "db/stores/record_store.h"
#include "db/stores/shop_store.h"
#include "db/stores/stock_store.h"
#include "db/stores/supply_store.h"

namespace sp::db {

/// All stores of one connection, which must outlive them.
struct Stores {
    explicit Stores(sqlite::Connection& db)
        : shop(db)
        , bench(db)
        , materials(db)
        , suppliers(db)
        , packs(db)
        , kits(db)
        , priceLists(db)
        , designs(db)
        , artworks(db)
        , colours(db)
        , customers(db)
        , stock(db)
        , jobs(db)
        , papers(db)
        , bills(db)
        , payments(db)
        , records(db)
        , log(db) {}

    stores::ShopStore shop;
    stores::BenchStore bench;
    stores::MaterialStore materials;
    stores::SupplierStore suppliers;
    stores::PackStore packs;
    stores::KitStore kits;
    stores::PriceListStore priceLists;
    stores::DesignStore designs;
    stores::ArtworkStore artworks;
    stores::ColourStore colours;
    stores::CustomerStore customers;
    stores::StockStore stock;
    stores::JobStore jobs;
    stores::PaperStore papers;
    stores::BillStore bills;
    stores::PaymentStore payments;
    stores::RecordStore records;
    stores::ChangeLog log;
};

/// By what a book is known, see BookMark: the first action was given when it was made; nothing takes it out.
inline std::string identityOf(stores::ChangeLog& log) {
    const auto begun = log.firstCommand();
    return begun ? begun->text().substr(24) : std::string(12, '0');
}

} // namespace sp::db

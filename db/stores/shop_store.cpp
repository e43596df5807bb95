// SPDX-License-Identifier: MIT
#include "db/stores/shop_store.h"

#include "db/records/record.h"
#include "db/records/temperature_parts.h"

namespace sp::db::stores {

using catalogue::BenchStandards;
using catalogue::Shop;

namespace {

const std::string kShopColumns =
    "name, lines, terms, care, currency, paper, length_unit, temperature_unit, labour_per_hour_micros, "
    "overhead_per_month_micros, productive_per_month_ms, spoilage_ppm, garment_allowance_micros, rounding_kind, "
    "rounding_step, rounding_ending, set_up_charge, minimum_order_micros, tax_name, tax_ppm, is_tax_inclusive, "
    "tax_rounding, has_card_fee, card_fee_ppm, card_fee_micros, deposit_ppm, deposit_step_micros, valid_days, "
    "is_ladder_on_sheet, is_demo, usual_tape_id, usual_template_id";

const std::string kBenchColumns =
    "press_price_micros, press_salvage_micros, press_life, platen_width_nm, platen_height_nm, dwell_ms, handling_ms, "
    "warm_up_ms, test_presses, second_press_ppm, second_dwell_ms, running_per_hour_micros, temperature_milli, "
    "temperature_unit, cutter_price_micros, cutter_salvage_micros, cutter_life";

constexpr std::int64_t kOnlyRow = 1;

} // namespace

std::optional<Shop> ShopStore::find() {
    const sqlite::Reading reading(m_db);
    auto row = m_db.query("SELECT " + kShopColumns + " FROM shop WHERE only_row = 1");
    if (!row.step()) return std::nullopt;
    Shop s;
    auto& rules = s.rules;
    row >> s.letterhead.name >> s.letterhead.lines >> s.letterhead.terms >> s.letterhead.care >> s.currency >>
        s.paper >> s.lengthUnit >> s.temperatureUnit >> s.rates.labourPerHour >> s.rates.overheadPerMonth >>
        s.rates.productivePerMonth >> s.rates.spoilage >> s.rates.garmentAllowance >> rules.rounding.kind >>
        rules.rounding.step >> rules.rounding.ending >> rules.setUp >> rules.minimumOrder >> rules.tax.name >>
        rules.tax.rate >> rules.tax.inclusive >> rules.tax.rounding >> rules.cardFee.charged >> rules.cardFee.rate >>
        rules.cardFee.fixed >> rules.depositRate >> rules.depositStep >> rules.validDays >> s.ladderOnSheet >> s.isDemo;
    s.usualTape = takeIdOrNone(row);
    s.usualTemplate = takeIdOrNone(row);
    takeLists(s);
    refuseDamaged(m_db, catalogue::fields::check(s));
    return s;
}

void ShopStore::takeLists(Shop& shop) {
    auto ladder = m_db.query("SELECT from_count, mark_up_ppm FROM mark_up_step ORDER BY position");
    while (ladder.step()) {
        auto& step = shop.rules.ladder.emplace_back();
        ladder >> step.from >> step.markUp;
    }
    auto rush = m_db.query("SELECT days, surcharge_ppm FROM rush_step ORDER BY position");
    while (rush.step()) {
        auto& step = shop.rules.rush.emplace_back();
        rush >> step.days >> step.surcharge;
    }
    auto quantities = m_db.query("SELECT quantity FROM ladder_quantity ORDER BY position");
    while (quantities.step()) quantities >> shop.ladderQuantities.emplace_back();
    auto packing = m_db.query("SELECT material_id FROM shop_packing ORDER BY position");
    while (packing.step()) packing >> shop.packing.emplace_back();
}

void ShopStore::write(const Shop& s, const Stamp& stamp) {
    static const std::string sql = upsert("shop", "only_row", kShopColumns, false);
    const auto& rules = s.rules;
    m_db.run(sql, kOnlyRow, s.letterhead.name, s.letterhead.lines, s.letterhead.terms, s.letterhead.care, s.currency,
             s.paper, s.lengthUnit, s.temperatureUnit, s.rates.labourPerHour, s.rates.overheadPerMonth,
             s.rates.productivePerMonth, s.rates.spoilage, s.rates.garmentAllowance, rules.rounding.kind,
             rules.rounding.step, rules.rounding.ending, rules.setUp, rules.minimumOrder, rules.tax.name,
             rules.tax.rate, rules.tax.inclusive, rules.tax.rounding, rules.cardFee.charged, rules.cardFee.rate,
             rules.cardFee.fixed, rules.depositRate, rules.depositStep, rules.validDays, s.ladderOnSheet, s.isDemo,
             orNull(s.usualTape), orNull(s.usualTemplate), stamp.seq);
    m_db.run("DELETE FROM mark_up_step");
    for (std::size_t i = 0; i < rules.ladder.size(); ++i)
        m_db.run("INSERT INTO mark_up_step (position, from_count, mark_up_ppm) VALUES (?, ?, ?)", i,
                 rules.ladder[i].from, rules.ladder[i].markUp);
    m_db.run("DELETE FROM rush_step");
    for (std::size_t i = 0; i < rules.rush.size(); ++i)
        m_db.run("INSERT INTO rush_step (position, days, surcharge_ppm) VALUES (?, ?, ?)", i, rules.rush[i].days,
                 rules.rush[i].surcharge);
    m_db.run("DELETE FROM ladder_quantity");
    for (std::size_t i = 0; i < s.ladderQuantities.size(); ++i)
        m_db.run("INSERT INTO ladder_quantity (position, quantity) VALUES (?, ?)", i, s.ladderQuantities[i]);
    m_db.run("DELETE FROM shop_packing");
    for (std::size_t i = 0; i < s.packing.size(); ++i)
        m_db.run("INSERT INTO shop_packing (position, material_id) VALUES (?, ?)", i, s.packing[i]);
}

std::optional<BenchStandards> BenchStore::find() {
    const sqlite::Reading reading(m_db);
    auto row = m_db.query("SELECT " + kBenchColumns + " FROM bench WHERE only_row = 1");
    if (!row.step()) return std::nullopt;
    BenchStandards bench;
    auto& press = bench.press;
    records::TemperatureParts temperature;
    row >> press.price >> press.salvage >> press.lifePresses >> press.platenWidth >> press.platenHeight >>
        press.dwell >> press.handling >> press.warmUp >> press.testPresses >> press.secondPressShare >>
        press.secondDwell >> press.runningPerHour >> temperature.milli >> temperature.unit >> bench.cutter.price >>
        bench.cutter.salvage >> bench.cutter.lifeHoles;
    if (temperature.milli < -1'000'000 || temperature.milli > 2'000'000)
        refuseDamaged(m_db, base::fail(base::Code::Damaged, "temperature", "The temperature is none there can be."));
    press.temperature = records::fromParts(temperature);
    auto steps = m_db.query("SELECT step, per_job_ms, per_colour_ms, per_piece_ms, per_100_stones_ms, learning_ppm "
                            "FROM bench_step ORDER BY step");
    std::size_t found = 0;
    while (steps.step()) {
        catalogue::Step step{};
        steps >> step;
        auto& standard = bench.of(step);
        steps >> standard.perJob >> standard.perColour >> standard.perPiece >> standard.per100Stones >>
            standard.learning;
        ++found;
    }
    if (found != catalogue::kSteps.size())
        refuseDamaged(m_db, base::fail(base::Code::Damaged, "bench", "A bench standard is missing."));
    refuseDamaged(m_db, catalogue::fields::check(bench));
    return bench;
}

void BenchStore::write(const BenchStandards& bench, const Stamp& stamp) {
    static const std::string sql = upsert("bench", "only_row", kBenchColumns, false);
    const auto& press = bench.press;
    const auto temperature = records::partsOf(press.temperature);
    m_db.run(sql, kOnlyRow, press.price, press.salvage, press.lifePresses, press.platenWidth, press.platenHeight,
             press.dwell, press.handling, press.warmUp, press.testPresses, press.secondPressShare, press.secondDwell,
             press.runningPerHour, temperature.milli, temperature.unit, bench.cutter.price, bench.cutter.salvage,
             bench.cutter.lifeHoles, stamp.seq);
    m_db.run("DELETE FROM bench_step");
    for (const auto step : catalogue::kSteps) {
        const auto& standard = bench.of(step);
        m_db.run("INSERT INTO bench_step (step, per_job_ms, per_colour_ms, per_piece_ms, per_100_stones_ms, "
                 "learning_ppm) VALUES (?, ?, ?, ?, ?, ?)",
                 step, standard.perJob, standard.perColour, standard.perPiece, standard.per100Stones,
                 standard.learning);
    }
}

} // namespace sp::db::stores

// SPDX-License-Identifier: MIT
#include "app/demo/demo_book.h"

#include "app/demo/demo_artwork.h"
#include "app/words/words.h"

#include <map>
#include <string>
#include <utility>

namespace sp::demo {

namespace {

using base::Done;
using base::fail;
using catalogue::Material;
using catalogue::MaterialKind;
using catalogue::Step;
using units::Count;
using units::Duration;
using units::Length;
using units::Money;
using units::Rate;

Money cents(std::int64_t amount) { return Money::fromMicros(amount * 10'000); }
Length sixteenths(std::int64_t n) { return Length::fromInch64ths(n * 4); }
Length inches(std::int64_t n) { return Length::fromInch64ths(n * 64); }
Duration seconds(std::int64_t n) { return Duration::fromSeconds(n); }
Duration minutes(std::int64_t n) { return Duration::fromMinutes(n); }

/// Fills the book room by room; the first thing that fails ends it.
class Scenario {
  public:
    explicit Scenario(db::Book& book)
        : m_book(book) {}

    Done fill() {
        for (const auto step : {&Scenario::suppliers, &Scenario::stones, &Scenario::sheets, &Scenario::blanks,
                                &Scenario::packing, &Scenario::designs, &Scenario::packCrest, &Scenario::planClover,
                                &Scenario::kits, &Scenario::customers, &Scenario::shop, &Scenario::bench})
            if (auto ok = (this->*step)(); !ok) return ok;
        return {};
    }

  private:
    struct Offer {
        const char* supplier;
        const char* name;
        std::int64_t amount;
        std::vector<std::pair<std::int64_t, std::int64_t>> centsFrom; ///< from so many packs, each so many cents
        bool usual = false;
    };

    const base::Id& id(const std::string& name) const { return m_ids.at(name); }

    Done keep(const std::string& name, base::Result<base::Id> saved) {
        if (!saved) return fail(saved.error());
        m_ids[name] = *saved;
        return {};
    }

    Done add(Material material, const std::vector<Offer>& offers, std::int64_t onShelf) {
        const auto name = material.name;
        if (auto ok = keep(name, m_book.save(material)); !ok) return ok;
        for (const auto& offer : offers) {
            catalogue::Pack pack;
            pack.material = id(name);
            pack.supplier = id(offer.supplier);
            pack.name = offer.name;
            pack.amount = Count::of(offer.amount);
            pack.usual = offer.usual;
            for (const auto& [from, price] : offer.centsFrom) pack.prices.push_back({Count::of(from), cents(price)});
            if (auto saved = m_book.save(pack); !saved) return fail(saved.error());
        }
        if (onShelf == 0) return {};
        return m_book.moveStock(id(name), onShelf, std::nullopt, "counted when the book was begun");
    }

    Done supplier(const char* name, std::int64_t leadDays, std::int64_t shipping, std::int64_t freeFrom,
                  std::int64_t minimum) {
        catalogue::Supplier supplier;
        supplier.name = name;
        supplier.leadDays = leadDays;
        supplier.shipping = cents(shipping);
        supplier.freeFrom = cents(freeFrom);
        supplier.minimum = cents(minimum);
        return keep(name, m_book.save(supplier));
    }

    Done suppliers() {
        if (auto ok = supplier("Kestrel Row Stones", 3, 750, 6000, 0); !ok) return ok;
        if (auto ok = supplier("Tollgate Film and Tape", 4, 950, 12000, 2000); !ok) return ok;
        if (auto ok = supplier("Millrace Blanks", 5, 1200, 20000, 0); !ok) return ok;
        auto saved = m_book.suppliers();
        if (!saved) return fail(saved.error());
        for (auto& blanks : *saved) {
            if (blanks.id != id("Millrace Blanks")) continue;
            blanks.freight = catalogue::FreightKind::Spread;
            blanks.usualOrder = cents(16000);
            return keep(blanks.name, m_book.save(blanks));
        }
        return {};
    }

    Done stone(const char* colour, std::uint32_t rgb, const char* size, std::int64_t tenGross, std::int64_t onShelf) {
        Material material;
        material.name = std::string(colour) + " " + size;
        material.kind = MaterialKind::Stone;
        material.stone = {colour, rgb, size, Rate::fromPercent(2)};
        return add(material,
                   {{"Kestrel Row Stones", "bag of 10 gross", 1440, {{1, tenGross}, {5, tenGross * 9 / 10}}, true},
                    {"Kestrel Row Stones", "bag of 1 gross", 144, {{1, tenGross * 14 / 100}}}},
                   onShelf);
    }

    Done stones() {
        struct Row {
            const char* colour;
            std::uint32_t rgb;
            const char* size;
            std::int64_t tenGross;
            std::int64_t onShelf;
        };
        for (const Row& row : {Row{"Aquamarine", 0x4FC3CF, "SS10", 999, 1980}, Row{"Jet", 0x23262D, "SS10", 650, 4310},
                               Row{"Crystal", 0xDDE6F0, "SS10", 580, 7200}, Row{"Amber", 0xD9A03A, "SS10", 890, 2300},
                               Row{"Rose", 0xE58BA8, "SS10", 1040, 860}, Row{"Emerald", 0x1F8A5B, "SS10", 960, 1440},
                               Row{"Crystal", 0xDDE6F0, "SS16", 1120, 1440}, Row{"Siam", 0xB3202E, "SS16", 1480, 720},
                               Row{"Sapphire", 0x2748A8, "SS6", 820, 2880}})
            if (auto ok = stone(row.colour, row.rgb, row.size, row.tenGross, row.onShelf); !ok) return ok;
        return {};
    }

    Material sheet(const char* name, MaterialKind kind, Length width, Length height) {
        Material material;
        material.name = name;
        material.kind = kind;
        material.sheet.width = width;
        material.sheet.height = height;
        material.sheet.gap = sixteenths(2);
        return material;
    }

    Done sheets() {
        auto tape = sheet("Hot-fix tape 9 1/2 × 12 in", MaterialKind::Tape, sixteenths(152), inches(12));
        tape.sheet.border = sixteenths(4);
        tape.sheet.gap = {};
        tape.sheet.lifts = 2;
        tape.sheet.basis = catalogue::ShareBasis::ByPosition;
        if (auto ok = add(tape, {{"Tollgate Film and Tape", "10 sheets", 10, {{1, 1450}}, true}}, 14); !ok) return ok;
        auto flock = sheet("Template sheet 9 × 12 in", MaterialKind::Template, inches(9), inches(12));
        flock.sheet.margin = sixteenths(4);
        flock.sheet.border = sixteenths(8);
        if (auto ok = add(flock, {{"Tollgate Film and Tape", "5 sheets", 5, {{1, 1625}, {4, 1500}}, true}}, 6); !ok)
            return ok;
        auto clear = sheet("Clear decal backing 9 × 12 in", MaterialKind::Backing, inches(9), inches(12));
        clear.sheet.border = sixteenths(2);
        clear.sheet.basis = catalogue::ShareBasis::ByPosition;
        if (auto ok = add(clear, {{"Tollgate Film and Tape", "10 sheets", 10, {{1, 1180}, {5, 1050}}, true}}, 22); !ok)
            return ok;
        auto roll = sheet("Clear decal backing, roll 12 in × 10 yd", MaterialKind::Backing, inches(12), inches(360));
        roll.sheet.form = catalogue::SheetForm::Roll;
        roll.sheet.border = sixteenths(2);
        return add(roll, {{"Tollgate Film and Tape", "roll", 1, {{1, 3900}}, true}}, 0);
    }

    Done blank(const char* name, std::int64_t price) {
        Material material;
        material.name = name;
        material.kind = MaterialKind::Blank;
        material.sizes = {{"S", {}, {}},
                          {"M", {}, {}},
                          {"L", {}, {}},
                          {"XL", {}, {}},
                          {"2XL", cents(210), cents(275)},
                          {"3XL", cents(320), cents(400)}};
        return add(material, {{"Millrace Blanks", "one", 1, {{1, price}, {24, price * 92 / 100}}, true}}, 0);
    }

    Done blanks() {
        if (auto ok = blank("Hoodie, navy", 1390); !ok) return ok;
        if (auto ok = blank("Tee, black", 410); !ok) return ok;
        return blank("Tote bag, canvas", 365);
    }

    Done packing() {
        Material bag;
        bag.kind = MaterialKind::Packing;
        bag.name = "Clear bag";
        if (auto ok = add(bag, {{"Tollgate Film and Tape", "100 bags", 100, {{1, 620}}, true}}, 240); !ok) return ok;
        Material card;
        card.kind = MaterialKind::Packing;
        card.name = "Care card";
        if (auto ok = add(card, {{"Tollgate Film and Tape", "250 cards", 250, {{1, 1875}}, true}}, 410); !ok) return ok;
        Material tissue;
        tissue.kind = MaterialKind::Packing;
        tissue.name = "Tissue sheet";
        if (auto ok = add(tissue, {{"Millrace Blanks", "100 sheets", 100, {{1, 420}}, true}}, 60); !ok) return ok;
        Material carton;
        carton.kind = MaterialKind::Packing;
        carton.name = "Carton";
        return add(carton, {{"Millrace Blanks", "10 cartons", 10, {{1, 950}}, true}}, 7);
    }

    /// The stones are those of its drawing, which is kept with it.
    Done design(const DemoShape& shape, Length width, Length height, const char* baseMaterial, bool onWall) {
        const auto artwork = layStones(shape);
        if (!artwork) return fail(artwork.error());
        catalogue::Design design;
        design.name = shape.design;
        design.width = width;
        design.height = height;
        design.templatesOnWall = onWall;
        design.usualBase = id(baseMaterial);
        for (const auto& [material, count] : artwork->stones) design.stones.push_back({id(material), Count::of(count)});
        if (auto ok = keep(design.name, m_book.save(design)); !ok) return ok;
        catalogue::DesignArtwork drawing;
        drawing.design = id(design.name);
        drawing.fileName = design.name + ".svg";
        drawing.file = artwork->svg;
        drawing.unit = Length::fromNanometres(units::kNanometresPerMillimetre);
        drawing.unitName = "mm";
        drawing.counts = artwork->counts;
        return m_book.save(drawing);
    }

    Done designs() {
        const auto* clear = "Clear decal backing 9 × 12 in";
        struct Row {
            Length width;
            Length height;
            const char* on;
            bool onWall;
        };
        const std::map<std::string, Row> rows{
            {"Lantern", {sixteenths(56), sixteenths(44), clear, true}},
            {"Studio crest", {inches(7), inches(6), "Hoodie, navy", false}},
            {"Nameplate “Odette”", {inches(5), inches(1), clear, false}},
            {"Heron", {inches(5), inches(7), "Tee, black", true}},
            {"Paper boat", {inches(4), inches(3), clear, false}},
            {"Clover row", {inches(8), sixteenths(20), "Tote bag, canvas", false}},
        };
        for (const auto& shape : demoShapes()) {
            const auto& row = rows.at(shape.design);
            if (auto ok = design(shape, row.width, row.height, row.on, row.onWall); !ok) return ok;
        }
        return {};
    }

    /// Its set is paid off over a season.
    Done planClover() {
        auto designs = m_book.designs();
        if (!designs) return fail(designs.error());
        for (auto& design : *designs) {
            if (design.id != id("Clover row")) continue;
            design.plannedPieces = Count::of(120);
            return keep(design.name, m_book.save(design));
        }
        return {};
    }

    /// Hoodies are folded in tissue and go out in one carton.
    Done packCrest() {
        auto designs = m_book.designs();
        if (!designs) return fail(designs.error());
        for (auto& design : *designs) {
            if (design.id != id("Studio crest")) continue;
            design.packing = {{id("Tissue sheet"), Count::of(2)},
                              {id("Care card")},
                              {id("Carton"), Count::of(1), catalogue::PackingPer::Order}};
            return keep(design.name, m_book.save(design));
        }
        return {};
    }

    Done kit(const char* name, const char* supplier, const char* design, std::int64_t price,
             std::optional<std::int64_t> withTemplates, const std::vector<std::pair<const char*, std::int64_t>>& items,
             std::vector<std::string> tools) {
        catalogue::Kit kit;
        kit.name = name;
        kit.supplier = id(supplier);
        kit.design = id(design);
        kit.price = cents(price);
        if (withTemplates) kit.priceWithTemplates = cents(*withTemplates);
        for (const auto& [material, count] : items) kit.items.push_back({id(material), Count::of(count)});
        kit.tools = std::move(tools);
        kit.shortCount = Rate::fromPercent(1);
        return keep(name, m_book.save(kit));
    }

    /// One that pays for small numbers, loses by a little in between, and loses for good beyond; and one that never
    /// pays.
    Done kits() {
        const auto* tape = "Hot-fix tape 9 1/2 × 12 in";
        const auto* flock = "Template sheet 9 × 12 in";
        const auto* clear = "Clear decal backing 9 × 12 in";
        if (auto ok = kit("Lantern starter kit", "Tollgate Film and Tape", "Lantern", 2490, 2990,
                          {{"Aquamarine SS10", 1440}, {"Jet SS10", 1440}, {tape, 2}, {flock, 1}, {clear, 2}},
                          {"soft brush", "tweezers"});
            !ok)
            return ok;
        return kit("Heron gift kit", "Tollgate Film and Tape", "Heron", 6400, {},
                   {{"Crystal SS10", 990}, {"Sapphire SS6", 576}, {"Jet SS10", 288}, {tape, 2}, {flock, 1}},
                   {"gift box"});
    }

    Done customer(const char* name, const char* contact, std::optional<catalogue::Certificate> certificate = {}) {
        catalogue::Customer customer;
        customer.name = name;
        customer.contact = contact;
        customer.certificate = std::move(certificate);
        return keep(name, m_book.save(customer));
    }

    Done customers() {
        catalogue::Certificate certificate;
        certificate.number = "14-2201";
        certificate.place = "Westmark";
        certificate.issuedOn = *units::Date::parse("2025-08-01");
        if (auto ok = customer("Larkspur Lane Dance Studio", "8 Larkspur Lane\nMillbrook", certificate); !ok) return ok;
        if (auto ok = customer("Juniper Hill Swim Club", "Juniper Hill Pool\nMillbrook"); !ok) return ok;
        return customer("Wren and Daughter, florists", "31 Bell Row\nMillbrook");
    }

    Done shop() {
        auto read = m_book.shop();
        if (!read) return fail(read.error());
        auto& shop = *read;
        shop.isDemo = true;
        shop.letterhead.name = "Heron Street Sparkle";
        shop.letterhead.lines = "12 Heron Street, Millbrook\nMonday to Saturday, 9 to 5";
        shop.letterhead.terms = "Half is due to start, rounded up to a full 5.00, the rest on collection. The price "
                                "holds until the day above; "
                                "changes after the proof is agreed are a new order.";
        shop.letterhead.care = "Wash inside out and cold, hang to dry, no iron on the stones. Small parts: not for "
                               "children under three. Stones may hold lead; for children's goods ask us for the "
                               "maker's certificate and check the rules where you live. Keep glass clear where you "
                               "drive; where a decal may go is for you to check.";
        shop.rates.labourPerHour = cents(1800);
        shop.rates.overheadPerMonth = cents(54000);
        shop.rates.productivePerMonth = minutes(120 * 60);
        shop.rates.spoilage = Rate::fromPercent(3);
        shop.rates.garmentAllowance = cents(2000);
        auto& rules = shop.rules;
        rules.ladder = {{Count::of(1), Rate::fromPercent(95)},  {Count::of(6), Rate::fromPercent(85)},
                        {Count::of(12), Rate::fromPercent(75)}, {Count::of(24), Rate::fromPercent(65)},
                        {Count::of(48), Rate::fromPercent(55)}, {Count::of(96), Rate::fromPercent(45)}};
        rules.rush = {{2, Rate::fromPercent(60)}, {3, Rate::fromPercent(50)}, {4, Rate::fromPercent(40)},
                      {5, Rate::fromPercent(30)}, {6, Rate::fromPercent(25)}, {7, Rate::fromPercent(20)}};
        rules.places = {{"Sleeve", cents(150)}};
        rules.rounding = {catalogue::RoundingKind::Nearest, 5, 95};
        rules.setUp = catalogue::SetUpCharge::Spread;
        rules.minimumOrder = cents(1500);
        rules.tax = {"Sales tax",
                     Rate::fromPpm(72'500),
                     false,
                     catalogue::TaxRounding::PerInvoice,
                     {{"Sales tax, garments", Rate::fromPercent(4)}}};
        rules.cardFee = {false, Rate::fromPpm(29'000), cents(30)};
        rules.depositRate = Rate::fromPercent(50);
        rules.depositStep = cents(500);
        shop.ladderQuantities = {Count::of(12), Count::of(24), Count::of(48), Count::of(96)};
        shop.usualTape = id("Hot-fix tape 9 1/2 × 12 in");
        shop.usualTemplate = id("Template sheet 9 × 12 in");
        shop.packing = {{id("Clear bag")}, {id("Care card")}};
        // Some 120 hours a month, as the overhead is spread over.
        auto& week = shop.benchWeek;
        week.monday = week.tuesday = week.wednesday = week.thursday = week.friday = minutes(5 * 60);
        week.saturday = minutes(150);
        const auto today = m_book.environment().today();
        shop.closedDays = {{today.plusDays(16), today.plusDays(18), "a fair in Millbrook"}};
        return m_book.save(shop);
    }

    Done bench() {
        catalogue::BenchStandards bench;
        bench.of(Step::Art) = {minutes(15), {}, {}, {}};
        bench.of(Step::Cut) = {minutes(2), minutes(1), {}, seconds(50)};
        bench.of(Step::Weed) = {{}, minutes(1), {}, seconds(40)};
        bench.of(Step::SetUp) = {minutes(4), minutes(1), {}, {}};
        bench.of(Step::Brush) = {minutes(2), seconds(25), {}, seconds(30)};
        bench.of(Step::Lift) = {{}, seconds(20), {}, {}};
        bench.of(Step::Press).perPiece = seconds(10); // laying it
        bench.of(Step::Press).perCycle = seconds(45); // loading, closing and opening the press
        bench.of(Step::Trim) = {{}, {}, seconds(30), {}};
        bench.of(Step::Pack) = {{}, {}, seconds(25), {}};
        bench.press.price = cents(84000);
        bench.press.salvage = cents(12000);
        bench.press.lifePresses = 60'000;
        bench.press.platenWidth = inches(16);
        bench.press.platenHeight = inches(20);
        bench.press.dwell = seconds(10);
        bench.press.handling = seconds(20);
        bench.press.warmUp = minutes(12);
        bench.press.testPresses = 1;
        bench.press.secondPressShare = Rate::fromPercent(10);
        bench.press.secondDwell = seconds(5);
        bench.press.runningPerHour = cents(45);
        bench.press.temperature = units::Temperature::fromMillifahrenheit(318'000);
        bench.cutter.price = cents(62000);
        bench.cutter.salvage = cents(9000);
        bench.cutter.lifeHoles = 4'000'000;
        return m_book.save(bench);
    }

    db::Book& m_book;
    std::map<std::string, base::Id> m_ids;
};

} // namespace

base::Result<std::unique_ptr<db::Book>> createDemoBook(const std::filesystem::path& file, db::Environment environment) {
    auto book = db::Book::create(file, std::move(environment));
    if (!book) return book;
    const auto filled = (*book)->batch(words::say(QT_TRANSLATE_NOOP("App", "the demo scenario")),
                                       [&] { return Scenario(**book).fill(); });
    if (!filled) return fail(filled.error());
    return book;
}

} // namespace sp::demo

// SPDX-License-Identifier: MIT
#include "core/catalogue/fields/tables.h"

namespace sp::catalogue::fields {

template<>
const Object& objectOf<StoneTraits>() {
    using T = StoneTraits;
    static const Object object{
        "StoneTraits",
        {
            field<&T::colour>("colour", Term::Colour, kLine).unpriced("is only shown"),
            field<&T::rgb>("rgb", Term::ColourOnTheScreen, kColour).unpriced("is only shown"),
            field<&T::size>("size", Term::StoneSize, kLine).unpriced("stones are priced by their packs"),
            field<&T::loss>("loss_ppm", Term::Loss, kPartShare),
        }};
    return object;
}

template<>
const Object& objectOf<SheetTraits>() {
    using T = SheetTraits;
    static const Object object{"SheetTraits",
                               {
                                   field<&T::form>("form", Term::Form),
                                   field<&T::width>("width_nm", Term::Width, kLengths),
                                   field<&T::height>("height_nm", Term::Height, kLengths),
                                   field<&T::margin>("margin_nm", Term::Margin, kLengths),
                                   field<&T::border>("border_nm", Term::Border, kLengths),
                                   field<&T::gap>("gap_nm", Term::Gap, kLengths),
                                   field<&T::oneWay>("one_way", Term::Direction),
                                   field<&T::basis>("basis", Term::WayOfCharging),
                                   field<&T::lifts>("lifts", Term::NumberOfLifts, kFromOne),
                               }};
    return object;
}

template<>
const Object& objectOf<BlankSize>() {
    using T = BlankSize;
    static const Object object{"BlankSize",
                               {
                                   field<&T::name>("name", Term::NameOfASize, kName),
                                   field<&T::extraCost>("extra_cost_micros", Term::ExtraCostOfASize, kAmount),
                                   field<&T::surcharge>("surcharge_micros", Term::SurchargeOfASize, kAmount),
                               }};
    return object;
}

template<>
const Object& objectOf<Material>() {
    using T = Material;
    static const Object object{
        "Material",
        {
            field<&T::id>("id", Term::Key, Key::Needed).unpriced("tells it apart").notEntered("is made by the program"),
            field<&T::name>("name", Term::Name, kName).unpriced("is only shown"),
            field<&T::kind>("kind", Term::Kind).notEntered("is chosen when a material is added, and stays"),
            field<&T::basis>("basis", Term::KindOfPrice).unpriced("has decided on the price before"),
            field<&T::fixedPrice>("fixed_price_micros", Term::FixedPrice, kAmount)
                .unpriced("has decided on the price before"),
            field<&T::stone>("stone", Term::Stone),
            field<&T::sheet>("sheet", Term::Sheet).asOneCause(),
            field<&T::sizes>("sizes", Term::Sizes, Length{200}),
            field<&T::meantAsNothing>("meant_as_nothing", Term::MeantAsNothing)
                .cameWith({{"material", 2}, {"priced-material", 3}})
                .standingFor(false, "false")
                .unpriced("says that nothing is meant, not how much"),
        }};
    return object;
}

template<>
const Object& objectOf<Freight>() {
    using T = Freight;
    static const Object object{"Freight",
                               {
                                   field<&T::kind>("kind", Term::FreightIn),
                                   field<&T::share>("share_ppm", Term::FreightShare, kShare),
                                   field<&T::shipping>("shipping_micros", Term::Shipping, kAmount),
                                   field<&T::usualOrder>("usual_order_micros", Term::UsualOrder, kAmount),
                               }};
    return object;
}

template<>
const Object& objectOf<Supplier>() {
    using T = Supplier;
    static const Object object{"Supplier",
                               {
                                   field<&T::id>("id", Term::Key, Key::Needed).notEntered("is made by the program"),
                                   field<&T::name>("name", Term::Name, kName),
                                   field<&T::leadDays>("lead_days", Term::LeadTimeInDays, kDays),
                                   field<&T::shipping>("shipping_micros", Term::Shipping, kAmount),
                                   field<&T::freeFrom>("free_from_micros", Term::SumForFreeShipping, kAmount),
                                   field<&T::minimum>("minimum_micros", Term::SmallestOrder, kAmount),
                                   field<&T::freight>("freight", Term::FreightIn)
                                       .cameWith({{"supplier", 2}})
                                       .standingFor(FreightKind::Nothing, "\"nothing\""),
                                   field<&T::freightShare>("freight_ppm", Term::FreightShare, kShare)
                                       .cameWith({{"supplier", 2}})
                                       .standingFor(units::Rate{}, "0"),
                                   field<&T::usualOrder>("usual_order_micros", Term::UsualOrder, kAmount)
                                       .cameWith({{"supplier", 2}})
                                       .standingFor(units::Money{}, "0"),
                               }};
    return object;
}

template<>
const Object& objectOf<PriceBreak>() {
    using T = PriceBreak;
    static const Object object{"PriceBreak",
                               {
                                   field<&T::from>("from", Term::NumberOfPacks, kFromOne),
                                   field<&T::each>("each_micros", Term::Price, kAmount),
                               }};
    return object;
}

template<>
const Object& objectOf<Pack>() {
    using T = Pack;
    static const Object object{"Pack",
                               {
                                   field<&T::id>("id", Term::Key, Key::Needed).notEntered("is made by the program"),
                                   field<&T::material>("material", Term::Material, Key::Needed)
                                       .notEntered("is the material under which the pack is typed"),
                                   field<&T::supplier>("supplier", Term::Supplier, Key::Needed),
                                   field<&T::name>("name", Term::Name, kName),
                                   field<&T::amount>("amount", Term::AmountInAPack, kFromOne),
                                   field<&T::prices>("prices", Term::Price, Length{50}),
                                   field<&T::usual>("usual", Term::UsualPack),
                                   field<&T::pricedOn>("priced_on", Term::DayOfThePrice)
                                       .notEntered("is the day on which the price was typed or read"),
                                   field<&T::item>("item", Term::ItemNumber, kLine)
                                       .cameWith({{"pack", 2}})
                                       .standingFor(std::string(), "\"\"")
                                       .unpriced("tells it apart in the supplier's lists"),
                               }};
    return object;
}

template<>
const Object& objectOf<StoneCount>() {
    using T = StoneCount;
    static const Object object{
        "StoneCount",
        {
            field<&T::material>("material", Term::Stone, Key::MayBeNone),
            field<&T::count>("count", Term::NumberOfStones, kCounts).asking({1, kMaxStonesAPiece}),
        }};
    return object;
}

template<>
const Object& objectOf<PackingUse>() {
    using T = PackingUse;
    static const Object object{"PackingUse",
                               {
                                   field<&T::material>("material", Term::Packing, Key::Needed),
                                   field<&T::amount>("amount", Term::NumberOfPacking, kFromOne),
                                   field<&T::per>("per", Term::WhatPackingIsFor),
                               }};
    return object;
}

template<>
const Object& objectOf<SetCost>() {
    using T = SetCost;
    static const Object object{"SetCost",
                               {
                                   field<&T::templates>("templates_micros", Term::CostOfTheTemplates, kAmount)
                                       .notEntered("is kept when a job of the design is agreed"),
                                   field<&T::work>("work_micros", Term::CostOfArtAndCutting, kAmount)
                                       .notEntered("is kept when a job of the design is agreed"),
                               }};
    return object;
}

template<>
const Object& objectOf<DesignSet>() {
    using T = DesignSet;
    static const Object object{"DesignSet",
                               {
                                   field<&T::design>("design", Term::Design, Key::Needed).unpriced("tells it apart"),
                                   field<&T::sold>("sold", Term::PiecesSold, kSums),
                                   field<&T::cost>("cost", Term::CostOfTheSet),
                               }};
    return object;
}

template<>
const Object& objectOf<Design>() {
    using T = Design;
    static const Object object{
        "Design",
        {
            field<&T::id>("id", Term::Key, Key::Needed).notEntered("is made by the program"),
            field<&T::name>("name", Term::Name, kName),
            field<&T::width>("width_nm", Term::Width, kLengths),
            field<&T::height>("height_nm", Term::Height, kLengths),
            field<&T::stones>("stones", Term::Stones, Length{200}),
            field<&T::templatesOnWall>("templates_on_wall", Term::TemplatesOnTheWall),
            field<&T::plannedPieces>("planned_pieces", Term::PlannedPieces, kFromOne),
            field<&T::usualBase>("usual_base", Term::UsualBase, Key::MayBeNone),
            field<&T::artTime>("art_time_ms", Term::ArtTime, kTimes),
            field<&T::packing>("packing", Term::Packing, Length{50}).cameWith({{"design", 2}}).standingForNothing(),
            field<&T::note>("note", Term::Note, kLines),
            field<&T::setCost>("set_cost", Term::CostOfTheSet)
                .cameWith({{"design", 3}})
                .standingForNothing()
                .notEntered("is kept when a job of the design is agreed"),
        }};
    return object;
}

template<>
const Object& objectOf<KitItem>() {
    using T = KitItem;
    static const Object object{"KitItem",
                               {
                                   field<&T::material>("material", Term::Material, Key::Needed),
                                   field<&T::count>("count", Term::NumberInTheKit, kFromOne),
                               }};
    return object;
}

template<>
const Object& objectOf<Kit>() {
    using T = Kit;
    static const Object object{
        "Kit",
        {
            field<&T::id>("id", Term::Key, Key::Needed).notEntered("is made by the program"),
            field<&T::name>("name", Term::Name, kName),
            field<&T::supplier>("supplier", Term::Supplier, Key::Needed),
            field<&T::design>("design", Term::Design, Key::MayBeNone),
            field<&T::price>("price_micros", Term::Price, kAmount),
            field<&T::priceWithTemplates>("with_templates_micros", Term::PriceWithTemplatesCut, kAmount),
            field<&T::items>("items", Term::Contents, Length{200}),
            field<&T::tools>("tools", Term::Tools, Length{100}, kName),
            field<&T::shortCount>("short_count_ppm", Term::ShortCount, kPartShare),
            field<&T::pricedOn>("priced_on", Term::DayOfThePrice).notEntered("is the day on which the price was typed"),
        }};
    return object;
}

template<>
const Object& objectOf<ColourMaterial>() {
    using T = ColourMaterial;
    static const Object object{"ColourMaterial",
                               {
                                   field<&T::id>("id", Term::Key, Key::Needed),
                                   field<&T::rgb>("rgb", Term::ColourInTheDrawing, kColour),
                                   field<&T::stoneSize>("stone_size", Term::StoneSize, kLine),
                                   field<&T::material>("material", Term::Stone, Key::Needed),
                               }};
    return object;
}

template<>
const Object& objectOf<ColumnHeading>() {
    using T = ColumnHeading;
    static const Object object{"ColumnHeading",
                               {
                                   field<&T::column>("column", Term::MeaningOfAColumn),
                                   field<&T::heading>("heading", Term::HeadingOfAColumn, kName),
                               }};
    return object;
}

template<>
const Object& objectOf<PriceListColumns>() {
    using T = PriceListColumns;
    static const Object object{"PriceListColumns",
                               {
                                   field<&T::supplier>("supplier", Term::Supplier, Key::Needed),
                                   field<&T::decimalComma>("decimal_comma", Term::DecimalComma),
                                   field<&T::columns>("columns", Term::ColumnsOfThePriceList, Length{20}),
                               }};
    return object;
}

} // namespace sp::catalogue::fields

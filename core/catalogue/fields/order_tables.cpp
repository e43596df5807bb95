// SPDX-License-Identifier: MIT
#include "core/catalogue/fields/tables.h"

namespace sp::catalogue::fields {

template<>
const Object& objectOf<Certificate>() {
    using T = Certificate;
    static const Object object{
        "Certificate",
        {
            field<&T::number>("number", Term::CertificateNumber, kLine).unpriced("is only printed"),
            field<&T::place>("place", Term::PlaceOfTheCertificate, kLine).unpriced("is only printed"),
            field<&T::issuedOn>("issued_on", Term::DayOfIssue),
            field<&T::expiresOn>("expires_on", Term::DayOfExpiry),
        }};
    return object;
}

template<>
const Object& objectOf<Customer>() {
    using T = Customer;
    static const Object object{
        "Customer",
        {
            field<&T::id>("id", Term::Key, Key::Needed).notEntered("is made by the program"),
            field<&T::name>("name", Term::Name, kName),
            field<&T::contact>("contact", Term::Address, kLines),
            field<&T::telephone>("telephone", Term::Telephone, kLine)
                .cameWith({{"customer", 2}, {"sealed-quote", 4}, {"sealed-person", 2}})
                .standingFor(std::string(), "\"\"")
                .unpriced("is only how somebody is reached"),
            field<&T::mail>("mail", Term::Mail, kLine)
                .cameWith({{"customer", 2}, {"sealed-quote", 4}, {"sealed-person", 2}})
                .standingFor(std::string(), "\"\"")
                .unpriced("is only how somebody is reached"),
            field<&T::certificate>("certificate", Term::Certificate),
            field<&T::mergedInto>("merged_into", Term::SamePerson, Key::MayBeNone)
                .cameWith({{"customer", 2}, {"sealed-quote", 4}, {"sealed-person", 2}})
                .standingFor(base::Id(), "null")
                .unpriced("leads to the entry that has the certificate")
                .notEntered("is made where two entries are said to be one person"),
            field<&T::note>("note", Term::Note, kLines)
                .cameWith({{"customer", 3}, {"sealed-quote", 5}, {"sealed-person", 3}})
                .standingFor(std::string(), "\"\"")
                .unpriced("is the shop's own"),
            field<&T::language>("language", Term::Language, kLine)
                .cameWith({{"customer", 3}, {"sealed-quote", 5}, {"sealed-person", 3}})
                .standingFor(std::string(), "\"\"")
                .unpriced("is only what papers are written in"),
            field<&T::otherCertificates>("other_certificates", Term::OtherCertificates, Length{50})
                .cameWith({{"customer", 4}, {"sealed-quote", 6}, {"sealed-person", 4}})
                .standingFor(std::vector<Certificate>{}, "[]"),
        }};
    return object;
}

template<>
const Object& objectOf<SizeCount>() {
    using T = SizeCount;
    static const Object object{
        "SizeCount",
        {
            field<&T::size>("size", Term::Size, kLine).notEntered("is one of the blank's, a field each"),
            field<&T::count>("count", Term::NumberOfASize, kCounts),
        }};
    return object;
}

template<>
const Object& objectOf<Placement>() {
    using T = Placement;
    static const Object object{
        "Placement",
        {
            field<&T::design>("design", Term::Design, Key::MayBeNone),
            field<&T::title>("title", Term::Title, kLine)
                .cameWith({{"order", 3}, {"sealed-quote", 2}})
                .standingFor(std::string(), "\"\"")
                .notEntered("is the name of the design that is chosen"),
            field<&T::place>("place", Term::PlaceOnThePiece, kLine),
            field<&T::width>("width_nm", Term::Width, kLengths),
            field<&T::height>("height_nm", Term::Height, kLengths),
            field<&T::stones>("stones", Term::Stones, Length{200}),
            field<&T::templatesOnWall>("templates_on_wall", Term::TemplatesOnTheWall),
            field<&T::plannedPieces>("planned_pieces", Term::PlannedPieces, kFromOne)
                .notEntered("comes with the design"),
            field<&T::artTime>("art_time_ms", Term::ArtTime, kTimes).notEntered("comes with the design"),
        }};
    return object;
}

template<>
const Object& objectOf<OrderLine>() {
    using T = OrderLine;
    static const Object object{"OrderLine",
                               {
                                   field<&T::id>("id", Term::Key, Key::MayBeNone).notEntered("is made by the program"),
                                   field<&T::title>("title", Term::Title, kLine),
                                   field<&T::places>("places", Term::PlacesOnThePiece, Length{kMaxPlaces}),
                                   field<&T::baseMaterial>("onto", Term::Base, Key::MayBeNone),
                                   field<&T::customersGarment>("customers_garment", Term::CustomersGarment),
                                   field<&T::packing>("packing", Term::Packing, Length{50})
                                       .cameWith({{"order", 3}, {"sealed-quote", 2}})
                                       .standingForNothing()
                                       .notEntered("comes with the design"),
                                   field<&T::quantity>("quantity", Term::Quantity, kCounts).asking({1, kMaxPieces}),
                                   field<&T::sizes>("sizes", Term::Sizes, Length{200}),
                                   field<&T::overrideEach>("typed_each_micros", Term::TypedPrice, kAmount),
                                   field<&T::taxable>("taxable", Term::TaxMark),
                                   field<&T::atNoCharge>("at_no_charge", Term::AtNoCharge)
                                       .cameWith({{"order", 2}, {"sealed-quote", 2}})
                                       .standingFor(false, "false"),
                                   field<&T::taxRate>("tax_rate", Term::TaxRateOfALine, kLine)
                                       .cameWith({{"order", 2}, {"sealed-quote", 2}})
                                       .standingFor(std::string{}, "\"\""),
                               }};
    return object;
}

template<>
const Object& objectOf<Discount>() {
    using T = Discount;
    static const Object object{"Discount",
                               {
                                   field<&T::share>("share_ppm", Term::Discount, kShare),
                                   field<&T::amount>("amount_micros", Term::Discount, kAmount),
                               }};
    return object;
}

template<>
const Object& objectOf<Payment>() {
    using T = Payment;
    static const Object object{"Payment",
                               {
                                   field<&T::id>("id", Term::Key, Key::Needed),
                                   field<&T::job>("job", Term::Key, Key::Needed),
                                   field<&T::amount>("amount_micros", Term::Amount, kEitherAmount),
                                   field<&T::kind>("kind", Term::KindOfPayment, Text{1, 60, false}),
                                   field<&T::paidOn>("paid_on", Term::Day),
                                   field<&T::note>("note", Term::Note, kLine),
                                   field<&T::reverses>("reverses", Term::PaymentItTakesBack, Key::Needed),
                                   field<&T::role>("role", Term::RoleOfAPayment)
                                       .cameWith({{"payment", 2}})
                                       .standingFor(PaymentRole::Money, "\"money\""),
                                   field<&T::partOf>("part_of", Term::PaymentItIsPartOf, Key::Needed)
                                       .cameWith({{"payment", 2}})
                                       .standingFor(std::optional<base::Id>(), "null"),
                               }};
    return object;
}

template<>
const Object& objectOf<Choice>() {
    using T = Choice;
    static const Object object{"Choice",
                               {
                                   field<&T::title>("title", Term::TitleOfAChoice, kLine)
                                       .notEntered("is entered while it is looked at")
                                       .unpriced("is priced by itself"),
                                   field<&T::discount>("discount", Term::Discount)
                                       .notEntered("is entered while it is looked at")
                                       .unpriced("is priced by itself"),
                                   field<&T::lines>("lines", Term::Lines, Length{5'000})
                                       .notEntered("is entered while it is looked at")
                                       .unpriced("is priced by itself"),
                               }};
    return object;
}

template<>
const Object& objectOf<Order>() {
    using T = Order;
    static const Object object{
        "Order",
        {
            field<&T::customer>("customer", Term::Customer, Key::MayBeNone),
            field<&T::quotedOn>("quoted_on", Term::Day).notEntered("is the day on which the order was begun"),
            field<&T::wantedBy>("wanted_by", Term::DayItIsWanted),
            field<&T::discount>("discount", Term::Discount),
            field<&T::asksExemption>("asks_exemption", Term::Exemption),
            field<&T::atNoCharge>("at_no_charge", Term::AtNoCharge)
                .cameWith({{"order", 2}, {"sealed-quote", 2}})
                .standingFor(false, "false"),
            field<&T::lines>("lines", Term::Lines, Length{5'000}),
            field<&T::title>("title", Term::TitleOfAChoice, kLine)
                .cameWith({{"order", 4}, {"sealed-quote", 3}})
                .standingFor(std::string(), "\"\"")
                .unpriced("is only printed"),
            field<&T::others>("others", Term::OtherChoices, Length{kMaxChoices - 1})
                .cameWith({{"order", 4}, {"sealed-quote", 3}})
                .standingFor(std::vector<Choice>{}, "[]")
                .unpriced("is priced by itself"),
            field<&T::choice>("choice", Term::ChoiceLookedAt, Range{0, kMaxChoices - 1})
                .cameWith({{"order", 4}, {"sealed-quote", 3}})
                .standingFor(std::int64_t{0}, "0")
                .notEntered("is said by the choice that is shown")
                .unpriced("says which choice the order is"),
        }};
    return object;
}

template<>
const Object& objectOf<units::UnitPrice>() {
    using T = units::UnitPrice;
    static const Object object{"UnitPrice",
                               {
                                   field<&T::price>("price_micros", Term::Price, kAmount),
                                   field<&T::per>("per", Term::NumberItIsFor, Range{1, 1'000'000'000'000'000}),
                               }};
    return object;
}

template<>
const Object& objectOf<PriceOrigin>() {
    using T = PriceOrigin;
    static constexpr const char* kWhy = "says where the price comes from";
    static const Object object{"PriceOrigin",
                               {
                                   field<&T::kind>("kind", Term::Kind).unpriced(kWhy),
                                   field<&T::isShelfBare>("shelf_is_bare", Term::Note).unpriced(kWhy),
                                   field<&T::supplier>("supplier", Term::Supplier, kLine).unpriced(kWhy),
                                   field<&T::pack>("pack", Term::Contents, Text{0, 1'000, false}).unpriced(kWhy),
                                   field<&T::pricedOn>("priced_on", Term::DayOfThePrice).unpriced(kWhy),
                               }};
    return object;
}

template<>
const Object& objectOf<PricedMaterial>() {
    using T = PricedMaterial;
    static const Object object{"PricedMaterial",
                               {
                                   field<&T::price>("price", Term::Price),
                                   field<&T::origin>("origin", Term::OriginOfThePrice)
                                       .cameWith({{"priced-material", 2}})
                                       .unpriced("says where the price comes from"),
                                   field<&T::freight>("freight", Term::FreightIn)
                                       .cameWith({{"priced-material", 3}})
                                       .standingFor(Freight{}, "nothing")
                                       .asOneCause(),
                                   field<&T::breaks>("breaks", Term::PricesOfMorePacks, Length{50})
                                       .cameWith({{"priced-material", 4}})
                                       .standingFor(std::vector<PriceBreak>{}, "none"),
                                   field<&T::material>("material", Term::Material),
                               }};
    return object;
}

} // namespace sp::catalogue::fields

// SPDX-License-Identifier: MIT
#include "db/records/values.h"

#include "db/messages.h"

#include <nlohmann/json.hpp>

namespace sp::catalogue::fields {

namespace {

constexpr Text kDigest{64, 64, false};

} // namespace

template<>
const Object& objectOf<db::records::StockMove>() {
    using T = db::records::StockMove;
    static const Object object{
        "StockMove",
        {
            field<&T::id>("id", Term::Key, Key::Needed),
            field<&T::material>("material", Term::Material, Key::Needed),
            field<&T::amount>("amount", Term::Amount, Range{-kCounts.highest, kCounts.highest}),
            field<&T::cost>("cost_micros", Term::Cost, kAmount),
            field<&T::note>("note", Term::Note, kLines),
            field<&T::reverses>("reverses", Term::MovementItTakesBack, Key::Needed),
            field<&T::kind>("kind", Term::KindOfMovement).cameWith({{"movement", 2}}),
            field<&T::job>("job", Term::JobItIsFor, Key::Needed).cameWith({{"movement", 2}}).standingForNothing(),
        }};
    return object;
}

template<>
const Object& objectOf<db::records::ArtworkRecord>() {
    using T = db::records::ArtworkRecord;
    static const Object object{"ArtworkRecord",
                               {
                                   field<&T::design>("design", Term::Design, Key::Needed),
                                   field<&T::fileName>("file_name", Term::NameOfTheFile, kName),
                                   field<&T::format>("format", Term::KindOfFile),
                                   field<&T::file>("file", Term::Drawing, kDigest),
                                   field<&T::thumbnail>("thumbnail", Term::SmallPicture, Text{0, 64, false}),
                                   field<&T::unit>("unit_nm", Term::Scale, Range{1, kLengths.highest}),
                                   field<&T::scaleFrom>("scale_from", Term::OriginOfTheScale),
                                   field<&T::unitName>("unit_name", Term::UnitOfTheDrawing, kLine),
                                   field<&T::holeAllowance>("hole_allowance_nm", Term::AllowanceOfTheHoles, kLengths),
                                   field<&T::counts>("counts", Term::CountsOfTheDrawing, Text{0, 1'000'000, true}),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::Revises>() {
    using T = db::records::Revises;
    static const Object object{"Revises",
                               {
                                   field<&T::job>("job", Term::Key, Key::Needed),
                                   field<&T::revision>("revision", Term::Number, Range{1, 1'000'000'000}),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::StageMark>() {
    using T = db::records::StageMark;
    static const Object object{
        "StageMark",
        {
            field<&T::stage>("stage", Term::Stage),
            field<&T::choice>("choice", Term::ChoiceTaken, Range{0, catalogue::kMaxChoices - 1})
                .cameWith({{"stage", 2}})
                .standingForNothing(),
            field<&T::revises>("revises", Term::QuoteItRevises).cameWith({{"stage", 3}}).standingForNothing(),
        }};
    return object;
}

template<>
const Object& objectOf<db::records::PriceList>() {
    using T = db::records::PriceList;
    static const Object object{"PriceList",
                               {
                                   field<&T::shop>("shop", Term::Shop, kDigest),
                                   field<&T::bench>("bench", Term::Bench, kDigest),
                                   field<&T::materials>("materials", Term::Materials, Length{100'000}, kDigest),
                                   field<&T::sets>("sets", Term::CostOfTheSet, Length{100'000})
                                       .cameWith({{"price-list", 2}})
                                       .standingFor(std::vector<catalogue::DesignSet>{}, "none"),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::SealedQuote>() {
    using T = db::records::SealedQuote;
    static const Object object{"SealedQuote",
                               {
                                   field<&T::quote>("quote", Term::Key, Key::Needed),
                                   field<&T::number>("number", Term::Number, kName),
                                   field<&T::issuedAt>("given_at", Term::Moment, kName),
                                   field<&T::validUntil>("valid_until", Term::LastDay),
                                   field<&T::total>("total_micros", Term::Total, kEitherAmount),
                                   field<&T::order>("order", Term::Order),
                                   field<&T::customer>("customer", Term::Customer),
                                   field<&T::prices>("prices", Term::Prices, kDigest),
                                   field<&T::previous>("previous", Term::QuoteBefore, Text{0, 64, false}),
                               }};
    return object;
}

} // namespace sp::catalogue::fields

namespace sp::db::records {

using catalogue::fields::Term;
using catalogue::fields::wrongField;

base::Done checkTogether(const ArtworkRecord& artwork) {
    if (!artwork.thumbnail.empty() && artwork.thumbnail.size() != artwork.file.size())
        return wrongField(Fault::PictureMisnamed, {}, Term::SmallPicture);
    if (!artwork.counts.empty() && !nlohmann::json::accept(artwork.counts))
        return wrongField(Fault::CountsUnreadable, {}, Term::CountsOfTheDrawing);
    return {};
}

namespace {

/// What is bought comes in, what is used, lost or spoiled goes out.
bool mayBe(MoveKind kind, std::int64_t amount) {
    switch (kind) {
    case MoveKind::Bought: return amount > 0;
    case MoveKind::Used:
    case MoveKind::Lost:
    case MoveKind::Spoiled: return amount < 0;
    case MoveKind::Counted:
    case MoveKind::Returned: return true;
    }
    return false;
}

} // namespace

base::Done checkTogether(const StockMove& move) {
    if (move.amount == 0) return wrongField(Fault::NothingMoved, {}, Term::Amount);
    if (move.cost && move.amount < 0 && !move.reverses) return wrongField(Fault::CostOfWhatGoesOut, {}, Term::Cost);
    if (!move.reverses && !mayBe(move.kind, move.amount))
        return wrongField(Fault::KindOfOtherWay, {}, Term::KindOfMovement);
    return {};
}

} // namespace sp::db::records

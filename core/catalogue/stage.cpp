// SPDX-License-Identifier: MIT
#include "core/catalogue/stage.h"

namespace sp::catalogue {

std::vector<Stage> stagesAfter(Stage stage, bool isGiven) {
    using enum Stage;
    switch (stage) {
    case Enquiry: return {Declined};
    case Quoted: return {Agreed, InProduction, Ready, Collected, Declined};
    case Agreed: return {InProduction, Ready, Collected, Quoted, Declined};
    case InProduction: return {Ready, Collected, Agreed, Declined};
    case Ready: return {Collected, InProduction, Agreed, Declined};
    case Collected: return {Ready};
    case Declined: return {isGiven ? Quoted : Enquiry};
    }
    return {};
}

std::optional<Stage> nextStage(Stage stage) {
    using enum Stage;
    switch (stage) {
    case Quoted: return Agreed;
    case Agreed: return InProduction;
    case InProduction: return Ready;
    case Ready: return Collected;
    case Enquiry:
    case Collected:
    case Declined: return std::nullopt;
    }
    return std::nullopt;
}

bool isAgreedTo(Stage stage) {
    using enum Stage;
    return stage == Agreed || stage == InProduction || stage == Ready || stage == Collected;
}

bool isLapsed(Stage stage, const std::optional<units::Date>& lastDay, units::Date today) {
    return stage == Stage::Quoted && lastDay && *lastDay < today;
}

} // namespace sp::catalogue

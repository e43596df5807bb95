// SPDX-License-Identifier: MIT
#include "app/verbs/estimate_verb.h"

#include "app/verbs/count_verb.h"
#include "app/words/words.h"
#include "core/artwork/artwork_file.h"
#include "core/artwork/colour.h"
#include "core/artwork/estimate_by_colour.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace sp::verbs {

namespace {

constexpr std::array<std::pair<std::string_view, artwork::StoneStyle>, 3> kStyles = {
    {{"outline", artwork::StoneStyle::Outline},
     {"fill", artwork::StoneStyle::Fill},
     {"both", artwork::StoneStyle::Both}}};

std::string_view nameOf(artwork::StoneStyle style) {
    for (const auto& [name, value] : kStyles)
        if (value == style) return name;
    return "fill";
}

tl::unexpected<base::Error> noSuchSize(const std::string& stone, const EstimateOrder& order) {
    const auto beside = artwork::sizesBeside(stone, order.sizes);
    if (beside.size() == 2)
        return words::fail(base::Code::NotFound, stone,
                           QT_TRANSLATE_NOOP("App", "There is no stone size %1; the next to it are %2 and %3."), stone,
                           order.sizes[beside[0]].name, order.sizes[beside[1]].name);
    if (beside.size() == 1)
        return words::fail(base::Code::NotFound, stone,
                           QT_TRANSLATE_NOOP("App", "There is no stone size %1; the next to it is %2."), stone,
                           order.sizes[beside[0]].name);
    std::string names;
    for (const auto& known : order.sizes) names += (names.empty() ? "" : ", ") + known.name;
    return words::fail(base::Code::NotFound, stone,
                       QT_TRANSLATE_NOOP("App", "There is no stone size %1; take one of these: %2."), stone, names);
}

double hundredths(double value) { return std::round(value * 100) / 100; }

/// Errors: NotFound.
base::Result<const artwork::StoneSize*> sizeFor(const std::string& stone, const EstimateOrder& order) {
    const auto size = artwork::sizeNamed(stone, order.sizes);
    if (!size) return noSuchSize(stone, order);
    return &order.sizes[*size];
}

/// A stone of the order, as it is set and as the answer names it.
struct NamedRequest {
    artwork::EstimateRequest request;
    std::string stone;
    std::string outlineStone; ///< empty: the same
};

base::Result<NamedRequest> requestFor(const std::string& stone, units::Length pitch, const EstimateOrder& order) {
    const auto size = sizeFor(stone, order);
    if (!size) return base::fail(size.error());
    NamedRequest named{{(*size)->middle(), pitch, order.edge, order.style, {}}, (*size)->name, {}};
    if (order.outlineStone.empty()) return named;
    const auto outline = sizeFor(order.outlineStone, order);
    if (!outline) return base::fail(outline.error());
    named.request.outline = artwork::StoneSetting{(*outline)->middle(), order.outlinePitch.value_or(pitch)};
    named.outlineStone = (*outline)->name;
    return named;
}

Json tallyJson(const artwork::Tally& tally) {
    return {{"count", tally.count.value()}, {"least", tally.least.value()}, {"most", tally.most.value()}};
}

Json partJson(const std::string& stone, units::Length pitch, const artwork::Tally& tally) {
    Json json{{"stone", stone}, {"pitch_mm", decimal(pitch, units::LengthUnit::Millimetre)}};
    json.update(tallyJson(tally));
    return json;
}

/// What is said of one estimate, without its warnings.
Json estimateJson(const artwork::Estimate& estimate, const NamedRequest& named) {
    Json json = partJson(named.stone, named.request.pitch, estimate);
    if (named.request.outline) {
        json["outline"] = partJson(named.outlineStone, named.request.outline->pitch, estimate.outline);
        json["filling"] = partJson(named.stone, named.request.pitch, estimate.filling());
    }
    json["style"] = nameOf(named.request.style);
    json["range"] = sentencesOf(estimate.range);
    json["how"] = words::text(estimate.how);
    json["size_mm"] = {hundredths(estimate.box.width()), hundredths(estimate.box.height())};
    json["area_mm2"] = hundredths(estimate.area);
    json["outline_mm"] = hundredths(estimate.outlineLength);
    if (estimate.lineLength > 0) json["lines_mm"] = hundredths(estimate.lineLength);
    return json;
}

base::Result<Json> estimated(std::span<const artwork::Shape> shapes, std::span<const artwork::Line> lines,
                             const EstimateOrder& order) {
    const auto named = requestFor(order.stone, order.pitch, order);
    if (!named) return base::fail(named.error());
    const auto estimate = artwork::estimateStones(shapes, lines, named->request, order.name);
    if (!estimate) return base::fail(estimate.error());
    Json json{{"estimate", true}};
    json.update(estimateJson(*estimate, *named));
    json["warnings"] = Json::array();
    if (estimate->warning) json["warnings"].push_back(words::text(*estimate->warning));
    return json;
}

/// What each colour of a drawing is set with, in the order of the drawing.
struct ColourPlan {
    std::vector<artwork::ColourRequest> requests;
    std::vector<NamedRequest> named; ///< for each; of no meaning where it is left free
};

base::Result<ColourPlan> planColours(const artwork::Drawing& drawing, const EstimateOrder& order) {
    const auto colours = artwork::coloursOf(drawing);
    for (const auto& told : order.colours)
        if (std::find(colours.begin(), colours.end(), told.colour) == colours.end()) {
            std::string names;
            for (const auto& colour : colours) names += (names.empty() ? "" : ", ") + colour;
            return words::fail(base::Code::NotFound, told.colour,
                               QT_TRANSLATE_NOOP("App", "There is no %1 in %2; its colours are: %3."), told.colour,
                               order.name, names);
        }
    ColourPlan plan;
    for (const auto& colour : colours) {
        const auto told = std::find_if(order.colours.begin(), order.colours.end(),
                                       [&](const ColourOrder& one) { return one.colour == colour; });
        const bool isTold = told != order.colours.end();
        const bool isFree = isTold ? told->stone.empty() : colour == artwork::kWhite && colours.size() > 1;
        auto named = requestFor(isTold && !isFree ? told->stone : order.stone,
                                isTold ? told->pitch.value_or(order.pitch) : order.pitch, order);
        if (!named) return base::fail(named.error());
        plan.requests.push_back({colour, isFree ? std::nullopt : std::optional(named->request)});
        plan.named.push_back(std::move(*named));
    }
    return plan;
}

base::Result<Json> estimatedByColour(const artwork::Drawing& drawing, double scale, bool withLines,
                                     const EstimateOrder& order) {
    const auto plan = planColours(drawing, order);
    if (!plan) return base::fail(plan.error());
    const auto estimates = artwork::estimateByColour(drawing, scale, plan->requests, withLines, order.name);
    if (!estimates) return base::fail(estimates.error());
    artwork::Tally sum;
    artwork::Box box;
    auto colours = Json::array();
    auto warnings = Json::array();
    for (const auto& part : *estimates) {
        Json json{{"colour", part.colour}};
        if (part.isFree) {
            json["free"] = true;
            colours.push_back(std::move(json));
            continue;
        }
        for (std::size_t i = 0; i < plan->requests.size(); ++i)
            if (plan->requests[i].colour == part.colour) json.update(estimateJson(part.estimate, plan->named[i]));
        colours.push_back(std::move(json));
        if (part.estimate.box.isEmpty())
            warnings.push_back(words::text(base::say(artwork::Note::ColourHidden, part.colour)));
        if (part.estimate.warning) warnings.push_back(words::text(*part.estimate.warning));
        sum.add(part.estimate);
        if (!part.estimate.box.isEmpty()) box.add(part.estimate.box);
    }
    Json json{{"estimate", true}};
    json.update(tallyJson(sum));
    json["size_mm"] = {hundredths(box.width()), hundredths(box.height())};
    json["colours"] = std::move(colours);
    json["warnings"] = std::move(warnings);
    return json;
}

} // namespace

base::Result<artwork::StoneStyle> parseStyle(std::string_view text) {
    for (const auto& [name, value] : kStyles)
        if (name == text) return value;
    return words::fail(
        base::Code::Invalid, "style",
        QT_TRANSLATE_NOOP("App", "\"%1\" is not a style of setting stones; write outline, fill or both."), text);
}

base::Result<std::vector<ColourOrder>> parseColours(std::string_view text) {
    std::vector<ColourOrder> colours;
    const auto wrong = [](std::string_view part) {
        return words::fail(base::Code::Invalid, "--colours",
                           QT_TRANSLATE_NOOP("App", "\"%1\" does not say how a colour is set; write as in "
                                                    "red=SS16@4.5mm or white=none, with commas between."),
                           part);
    };
    while (!text.empty()) {
        const auto comma = text.find(',');
        const auto part = text.substr(0, comma);
        text = comma == text.npos ? std::string_view{} : text.substr(comma + 1);
        const auto equals = part.find('=');
        if (equals == part.npos) return wrong(part);
        const auto rgb = artwork::parseColour(part.substr(0, equals));
        const auto setting = part.substr(equals + 1);
        const auto at = setting.find('@');
        if (!rgb || setting.empty() || at == 0) return wrong(part);
        ColourOrder order{artwork::colourText(*rgb), std::string(setting.substr(0, at)), {}};
        if (setting == "none") order.stone.clear();
        if (at != setting.npos) {
            const auto pitch = parseStatedLength(setting.substr(at + 1));
            if (!pitch) return base::fail(pitch.error());
            order.pitch = *pitch;
        }
        for (const auto& other : colours)
            if (other.colour == order.colour) return wrong(part);
        colours.push_back(std::move(order));
    }
    return colours;
}

base::Result<Json> estimateShapes(std::span<const artwork::Shape> shapes, const EstimateOrder& order) {
    return estimated(shapes, {}, order);
}

base::Result<Json> estimateFile(std::string bytes, const EstimateOrder& order) {
    const auto drawing = artwork::readArtwork(std::move(bytes), order.name);
    if (!drawing) return base::fail(drawing.error());
    auto warnings = sentencesOf(drawing->warnings);
    const ChosenScale scale = chooseScale(*drawing, order.scale, {1, {}, order.sizes}, warnings);
    const double unit = scale.millimetresPerUnit;
    const auto shapes = artwork::shapesOf(*drawing, unit);
    auto lines = artwork::linesOf(*drawing, unit);
    const bool withLines = order.withLines || shapes.empty();
    if (!withLines && !lines.empty()) {
        warnings.push_back(words::text(base::say(artwork::Note::LinesNotSet, lines.size())));
        lines.clear();
    }
    auto json = order.byColour ? estimatedByColour(*drawing, unit, withLines, order) : estimated(shapes, lines, order);
    if (!json) return json;
    for (const auto& warning : (*json)["warnings"]) warnings.push_back(warning.get<std::string>());
    json->erase("warnings"); // it stands last
    (*json)["scale"] = scaleJson(scale);
    (*json)["warnings"] = warnings;
    return json;
}

} // namespace sp::verbs

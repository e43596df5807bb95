// SPDX-License-Identifier: MIT
#include "app/verbs/count_verb.h"

#include "app/words/words.h"
#include "core/artwork/artwork_file.h"

#include <cmath>

namespace sp::verbs {

namespace {

/// Millimetres to a thousandth.
std::string micrometres(units::Length length) { return decimal((length.nanometres() + 500) / 1000, 3); }

Json stonesJson(const artwork::Counted& counted, std::span<const artwork::StoneSize> sizes) {
    Json stones = Json::array();
    for (const auto& group : counted.groups) {
        Json one;
        one["colour"] = group.colour;
        one["layer"] = group.layer;
        one["size"] = group.size ? Json(sizes[*group.size].name) : Json(nullptr);
        one["diameter_mm"] = {micrometres(group.smallest), micrometres(group.largest)};
        one["count"] = group.count.value();
        stones.push_back(std::move(one));
    }
    return stones;
}

Json leftOutJson(const artwork::LeftOut& leftOut) {
    Json list = Json::array();
    for (const auto& [reason, count] : leftOut)
        list.push_back({{"reason", words::text(artwork::leftOutBecause(reason, count))}, {"count", count}});
    return list;
}

} // namespace

namespace {

/// "1 mm", "1/96 in".
std::string unitInWords(const std::string& scale) {
    const auto dpi = scale.find(" dpi");
    return dpi == std::string::npos ? "1 " + scale : "1/" + scale.substr(0, dpi) + " in";
}

} // namespace

ChosenScale chooseScale(const artwork::Drawing& drawing, const std::optional<artwork::ScaleProposal>& wished,
                        const artwork::CountOptions& options, std::vector<std::string>& warnings) {
    if (wished) return {wished->millimetresPerUnit, "given"};
    if (drawing.millimetresPerUnit) return {*drawing.millimetresPerUnit, "file"};
    const auto proposals = artwork::proposeScales(drawing, options);
    const auto unit = unitInWords(proposals.front().name);
    warnings.push_back(
        words::told(QT_TRANSLATE_NOOP("App", "The file states no size; one unit was taken as %1. If that "
                                             "is wrong, give the scale."),
                    {base::asValue(unit)})
            .toStdString());
    return {proposals.front().millimetresPerUnit, "guess"};
}

std::vector<std::string> sentencesOf(const std::vector<base::Message>& warnings) {
    std::vector<std::string> sentences;
    for (const auto& warning : warnings) sentences.push_back(words::text(warning));
    return sentences;
}

Json scaleJson(const ChosenScale& scale) {
    return {{"mm_per_unit", decimal(std::llround(scale.millimetresPerUnit * 1e8), 8)}, {"from", scale.from}};
}

base::Result<Json> countStonesVerb(std::string bytes, const CountRequest& request) {
    const auto drawing = artwork::readArtwork(std::move(bytes), request.fileName);
    if (!drawing) return base::fail(drawing.error());
    artwork::CountOptions options{1, request.holeAllowance, request.sizes};
    auto warnings = sentencesOf(drawing->warnings);
    const ChosenScale scale = chooseScale(*drawing, request.scale, options, warnings);
    options.millimetresPerUnit = scale.millimetresPerUnit;
    const auto counted = artwork::countStones(*drawing, options, request.fileName);
    if (!counted) return base::fail(counted.error());
    const auto thousandths = [](units::Length length) { return std::round(length.millimetres() * 1000) / 1000; };
    Json json;
    json["size_mm"] = {thousandths(counted->width()), thousandths(counted->height())};
    json["scale"] = scaleJson(scale);
    json["stones"] = stonesJson(*counted, request.sizes);
    json["duplicates"] = counted->duplicates;
    json["collisions"] = counted->collisions;
    json["left_out"] = leftOutJson(counted->leftOut);
    json["warnings"] = warnings;
    return json;
}

} // namespace sp::verbs

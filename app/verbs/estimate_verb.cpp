// SPDX-License-Identifier: MIT
#include "app/verbs/estimate_verb.h"

#include "app/verbs/count_verb.h"
#include "app/words/words.h"
#include "core/artwork/artwork_file.h"

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

base::Result<Json> noSuchSize(const EstimateOrder& order) {
    const auto beside = artwork::sizesBeside(order.stone, order.sizes);
    if (beside.size() == 2)
        return words::fail(base::Code::NotFound, order.stone,
                           QT_TRANSLATE_NOOP("App", "There is no stone size %1; the next to it are %2 and %3."),
                           order.stone, order.sizes[beside[0]].name, order.sizes[beside[1]].name);
    if (beside.size() == 1)
        return words::fail(base::Code::NotFound, order.stone,
                           QT_TRANSLATE_NOOP("App", "There is no stone size %1; the next to it is %2."), order.stone,
                           order.sizes[beside[0]].name);
    std::string names;
    for (const auto& known : order.sizes) names += (names.empty() ? "" : ", ") + known.name;
    return words::fail(base::Code::NotFound, order.stone,
                       QT_TRANSLATE_NOOP("App", "There is no stone size %1; take one of these: %2."), order.stone,
                       names);
}

double hundredths(double value) { return std::round(value * 100) / 100; }

} // namespace

base::Result<artwork::StoneStyle> parseStyle(std::string_view text) {
    for (const auto& [name, value] : kStyles)
        if (name == text) return value;
    return words::fail(
        base::Code::Invalid, "style",
        QT_TRANSLATE_NOOP("App", "\"%1\" is not a style of setting stones; write outline, fill or both."), text);
}

base::Result<Json> estimateShapes(std::span<const artwork::Shape> shapes, const EstimateOrder& order) {
    const auto size = artwork::sizeNamed(order.stone, order.sizes);
    if (!size) return noSuchSize(order);
    const artwork::StoneSize& stone = order.sizes[*size];
    const auto estimate =
        artwork::estimateStones(shapes, {stone.middle(), order.pitch, order.edge, order.style}, order.name);
    if (!estimate) return base::fail(estimate.error());
    auto warnings = Json::array();
    if (estimate->warning) warnings.push_back(words::text(*estimate->warning));
    return Json{{"estimate", true},
                {"stone", stone.name},
                {"pitch_mm", decimal(order.pitch, units::LengthUnit::Millimetre)},
                {"style", nameOf(order.style)},
                {"count", estimate->count.value()},
                {"least", estimate->least.value()},
                {"most", estimate->most.value()},
                {"how", words::text(estimate->how)},
                {"size_mm", {hundredths(estimate->box.width()), hundredths(estimate->box.height())}},
                {"area_mm2", hundredths(estimate->area)},
                {"outline_mm", hundredths(estimate->outlineLength)},
                {"warnings", std::move(warnings)}};
}

base::Result<Json> estimateFile(std::string bytes, const EstimateOrder& order) {
    const auto drawing = artwork::readArtwork(std::move(bytes), order.name);
    if (!drawing) return base::fail(drawing.error());
    auto warnings = sentencesOf(drawing->warnings);
    const ChosenScale scale = chooseScale(*drawing, order.scale, {1, {}, order.sizes}, warnings);
    auto json = estimateShapes(artwork::shapesOf(*drawing, scale.millimetresPerUnit), order);
    if (!json) return json;
    for (const auto& warning : (*json)["warnings"]) warnings.push_back(warning.get<std::string>());
    json->erase("warnings"); // it stands last
    (*json)["scale"] = scaleJson(scale);
    (*json)["warnings"] = warnings;
    return json;
}

} // namespace sp::verbs

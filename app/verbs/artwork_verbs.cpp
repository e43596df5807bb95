// SPDX-License-Identifier: MIT
#include "app/artwork/file_bytes.h"
#include "app/verbs/count_verb.h"
#include "app/verbs/estimate_verb.h"
#include "app/verbs/size_words.h"
#include "app/verbs/verb_kit.h"
#include "app/words/words.h"

#include <fmt/format.h>

namespace sp::verbs {

namespace {

base::Result<std::optional<artwork::ScaleProposal>> scaleFrom(const Arguments& arguments) {
    const auto text = arguments.value("--scale");
    if (!text) return std::optional<artwork::ScaleProposal>();
    const auto scale = artwork::parseScale(*text);
    if (!scale) return base::fail(scale.error());
    return std::optional<artwork::ScaleProposal>(*scale);
}

std::string countText(const Json& json) {
    std::string text;
    for (const auto& row : json["stones"])
        text += fmt::format("{:>8}  {}  {}  {}\n", row["count"].get<std::int64_t>(),
                            row["size"].is_null() ? told(QT_TRANSLATE_NOOP("App", "no size"))
                                                  : row["size"].get<std::string>(),
                            row["colour"].is_null() ? std::string("-") : row["colour"].get<std::string>(),
                            row["layer"].is_null() ? std::string() : row["layer"].get<std::string>());
    const auto counted = [&](std::int64_t number, const std::string& words) {
        if (number > 0) text += fmt::format("{:>8}  {}\n", number, words);
    };
    counted(json["duplicates"].get<std::int64_t>(), told(QT_TRANSLATE_NOOP("App", "drawn twice, counted once")));
    counted(json["collisions"].get<std::int64_t>(),
            told(QT_TRANSLATE_NOOP("App", "pairs of holes that overlap and would tear")));
    for (const auto& row : json["left_out"])
        counted(row["count"].get<std::int64_t>(),
                told(QT_TRANSLATE_NOOP("App", "left out: %1"), row["reason"].get<std::string>()));
    for (const auto& warning : json["warnings"])
        text += line(QT_TRANSLATE_NOOP("App", "note: %1"), warning.get<std::string>());
    return text;
}

base::Result<Json> countFile(const std::string& file, CountRequest& request) {
    request.fileName = file;
    auto bytes = artwork::bytesOfFile(file);
    if (!bytes) return base::fail(bytes.error());
    return countStonesVerb(std::move(*bytes), request);
}

/// Those that cannot be counted are told of, the others are counted all the same.
Outcome countEach(const Arguments& arguments, CountRequest& request) {
    Outcome outcome;
    Json files = Json::array();
    std::string text;
    for (const auto& file : arguments.words()) {
        auto json = countFile(file, request);
        if (!json) {
            outcome.exit = 1;
            outcome.err += words::text(json.error()) + "\n";
            files.push_back({{"file", file}, {"error", words::text(json.error())}});
            continue;
        }
        text += file + ":\n" + countText(*json);
        Json named{{"file", file}};
        named.update(*json);
        files.push_back(std::move(named));
    }
    outcome.out = answer(arguments, {{"files", std::move(files)}}, text).out;
    return outcome;
}

} // namespace

Outcome countVerb(const Arguments& arguments, const Helpers&) {
    CountRequest request;
    const auto scale = scaleFrom(arguments);
    if (!scale) return refused(scale.error());
    request.scale = *scale;
    if (const auto text = arguments.value("--hole-allowance")) {
        const auto allowance = parseStatedLength(*text);
        if (!allowance) return refused(allowance.error());
        request.holeAllowance = *allowance;
    }
    if (arguments.words().size() > 1) return countEach(arguments, request);
    const auto json = countFile(arguments.words().front(), request);
    if (!json) return refused(json.error());
    return answer(arguments, *json, countText(*json));
}

namespace {

base::Result<EstimateOrder> estimateOrderFrom(const Arguments& arguments) {
    EstimateOrder order;
    order.stone = arguments.of("--stone");
    const auto pitch = parseStatedLength(arguments.of("--pitch"));
    if (!pitch) return base::fail(pitch.error());
    order.pitch = *pitch;
    if (const auto inset = arguments.value("--inset")) {
        const auto edge = parseStatedLength(*inset);
        if (!edge) return base::fail(edge.error());
        order.edge = *edge;
    }
    const auto style = parseStyle(arguments.of("--style"));
    if (!style) return base::fail(style.error());
    order.style = *style;
    order.outlineStone = arguments.value("--outline-stone").value_or("");
    if (!order.outlineStone.empty() && order.style != artwork::StoneStyle::Both)
        return words::fail(
            base::Code::Invalid, "--outline-stone",
            QT_TRANSLATE_NOOP("App", "An outline in a stone of its own goes with a filling; write --style both."));
    if (const auto text = arguments.value("--outline-pitch")) {
        const auto outline = parseStatedLength(*text);
        if (!outline) return base::fail(outline.error());
        order.outlinePitch = *outline;
    }
    order.withLines = arguments.has("--lines");
    const auto colours = parseColours(arguments.value("--colours").value_or(""));
    if (!colours) return base::fail(colours.error());
    order.colours = *colours;
    order.byColour = arguments.has("--by-colour") || !order.colours.empty();
    const auto scale = scaleFrom(arguments);
    if (!scale) return base::fail(scale.error());
    order.scale = *scale;
    return order;
}

base::Result<Json> estimateLettering(const Arguments& arguments, const Helpers& helpers, EstimateOrder order) {
    for (const auto* option : {"--font", "--height"})
        if (!arguments.has(option))
            return words::fail(
                base::Code::Missing, option,
                QT_TRANSLATE_NOOP("App", "Lettering needs --font and --height beside --text; %1 is missing."), option);
    const auto height = parseStatedLength(arguments.of("--height"));
    if (!height) return base::fail(height.error());
    order.name = arguments.of("--text");
    const auto shapes = helpers.outlines({order.name, arguments.of("--font"), *height});
    if (!shapes) return base::fail(shapes.error());
    return estimateShapes(*shapes, order);
}

} // namespace

Outcome estimateVerb(const Arguments& arguments, const Helpers& helpers) {
    auto order = estimateOrderFrom(arguments);
    if (!order) return refused(order.error());
    base::Result<Json> json;
    if (arguments.has("--text")) {
        json = estimateLettering(arguments, helpers, std::move(*order));
    } else {
        order->name = arguments.words().front();
        auto bytes = artwork::bytesOfFile(order->name);
        if (!bytes) return refused(bytes.error());
        json = estimateFile(std::move(*bytes), *order);
    }
    if (!json) return refused(json.error());
    return answer(arguments, *json, json->dump(2) + "\n");
}

} // namespace sp::verbs

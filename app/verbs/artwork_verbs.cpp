// SPDX-License-Identifier: MIT
#include "app/verbs/count_verb.h"
#include "app/verbs/estimate_verb.h"
#include "app/verbs/verb_kit.h"

#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <iterator>

namespace sp::verbs {

namespace {

constexpr std::uintmax_t kLargestFile = 64ULL * 1024 * 1024;

base::Result<std::string> bytesOf(const std::string& file) {
    std::error_code trouble;
    const auto size = std::filesystem::file_size(file, trouble);
    if (trouble)
        return base::fail(base::Code::Missing, file, fmt::format("“{}” cannot be read; check its name and folder.", file));
    if (size > kLargestFile)
        return base::fail(base::Code::TooLarge, file,
                          fmt::format("“{}” is larger than 64 MB; simplify the drawing and save it again.", file));
    std::ifstream in(file, std::ios::binary);
    std::string bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    if (in.bad() || bytes.size() != size)
        return base::fail(base::Code::Failed, file, fmt::format("“{}” could not be read to its end; try again.", file));
    return bytes;
}

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
                            row["size"].is_null() ? std::string("no size") : row["size"].get<std::string>(),
                            row["colour"].is_null() ? std::string("-") : row["colour"].get<std::string>(),
                            row["layer"].is_null() ? std::string() : row["layer"].get<std::string>());
    for (const auto& row : json["left_out"])
        text += fmt::format("{:>8}  left out: {}\n", row["count"].get<std::int64_t>(), row["reason"].get<std::string>());
    for (const auto& warning : json["warnings"]) text += fmt::format("note: {}\n", warning.get<std::string>());
    return text;
}

} // namespace

Outcome countVerb(const Arguments& arguments, const Helpers&) {
    CountRequest request;
    request.fileName = arguments.words().front();
    const auto scale = scaleFrom(arguments);
    if (!scale) return refused(scale.error());
    request.scale = *scale;
    if (const auto text = arguments.value("--hole-allowance")) {
        const auto allowance = units::parseLength(*text, units::LengthUnit::Millimetre);
        if (!allowance) return refused(allowance.error());
        request.holeAllowance = *allowance;
    }
    auto bytes = bytesOf(request.fileName);
    if (!bytes) return refused(bytes.error());
    const auto json = countStonesVerb(std::move(*bytes), request);
    if (!json) return refused(json.error());
    return answer(arguments, *json, countText(*json));
}

Outcome estimateVerb(const Arguments& arguments, const Helpers&) {
    EstimateOrder order;
    order.name = arguments.words().front();
    order.stone = arguments.of("--stone");
    const auto pitch = units::parseLength(arguments.of("--pitch"), units::LengthUnit::Millimetre);
    if (!pitch) return refused(pitch.error());
    order.pitch = *pitch;
    const auto style = parseStyle(arguments.of("--style"));
    if (!style) return refused(style.error());
    order.style = *style;
    const auto scale = scaleFrom(arguments);
    if (!scale) return refused(scale.error());
    order.scale = *scale;
    auto bytes = bytesOf(order.name);
    if (!bytes) return refused(bytes.error());
    const auto json = estimateFile(std::move(*bytes), order);
    if (!json) return refused(json.error());
    return answer(arguments, *json, json->dump(2) + "\n");
}

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
#include "core/artwork/artwork_file.h"

#include "core/artwork/dxf_reader.h"
#include "core/artwork/scanner.h"
#include "core/artwork/svg_reader.h"

#include <fmt/format.h>

namespace sp::artwork {

namespace {

using namespace std::string_view_literals;

struct Magic {
    std::string_view bytes;
    std::string_view sentence; ///< {} is the file's name
};

constexpr Magic kForeign[] = {
    {"PK\3\4"sv, "{} is a zip file, whatever its name says; unpack it and drop the drawing inside."},
    {"\x1f\x8b"sv, "{} is compressed; save it as plain SVG, not SVGZ, and drop that."},
    {"\x89PNG"sv, "{} is a bitmap, and a bitmap cannot be counted; ask for the drawing as SVG or DXF."},
    {"\xff\xd8\xff"sv, "{} is a photo or bitmap, and a bitmap cannot be counted; ask for the drawing as SVG or DXF."},
    {"GIF8"sv, "{} is a bitmap, and a bitmap cannot be counted; ask for the drawing as SVG or DXF."},
    {"BM"sv, "{} is a bitmap, and a bitmap cannot be counted; ask for the drawing as SVG or DXF."},
    {"RIFF"sv, "{} is a bitmap or a sound, and neither can be counted; ask for the drawing as SVG or DXF."},
    {"%PDF"sv, "{} is a PDF; open it in a drawing program, save the artwork as SVG and drop that."},
    {"%!PS"sv, "{} is PostScript; open it in a drawing program, save the artwork as SVG and drop that."},
    {"AutoCAD Binary DXF"sv, "{} is a binary DXF; save it as ASCII DXF and drop that."},
    {"AC10"sv, "{} is a DWG drawing; save it as ASCII DXF and drop that."},
};

/// The first code of a DXF is 0 (SECTION) or 999 (a remark).
bool looksLikeDxf(std::string_view text) {
    const auto end = text.find('\n');
    if (end == std::string_view::npos) return false;
    const auto code = trimmed(text.substr(0, end));
    return code == "0" || code == "999";
}

} // namespace

base::Result<Drawing> readArtwork(std::string bytes, std::string_view fileName) {
    const std::string name = cleanText(fileName);
    std::string_view start = bytes;
    if (start.starts_with("\xef\xbb\xbf")) start.remove_prefix(3);
    while (!start.empty() && isSpace(start.front())) start.remove_prefix(1);
    if (start.empty())
        return base::fail(base::Code::Missing, name, fmt::format("{} is empty; save the artwork again.", name));
    for (const Magic& magic : kForeign)
        if (start.starts_with(magic.bytes))
            return base::fail(base::Code::Foreign, name, fmt::format(fmt::runtime(magic.sentence), name));
    if (bytes.size() > Limits{}.bytes)
        return base::fail(base::Code::TooLarge, name,
                          fmt::format("{} is too large to be one design ({} MB); split it into parts and count each.",
                                      name, bytes.size() / 1'000'000));
    if (looksLikeDxf(start)) return readDxf(start, name);
    const bool isWide = start.starts_with("\xff\xfe") || start.starts_with("\xfe\xff") || start.starts_with("\0<"sv) ||
                        start.starts_with("<\0"sv) || start.starts_with("\0\0"sv);
    if (start.front() == '<' || isWide) return readSvg(std::move(bytes), name);
    return base::fail(base::Code::Foreign, name,
                      fmt::format("{} is neither SVG nor DXF; save the artwork as one of these and drop that.", name));
}

} // namespace sp::artwork

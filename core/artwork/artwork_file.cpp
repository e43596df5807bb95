// SPDX-License-Identifier: MIT
#include "core/artwork/artwork_file.h"

#include "core/artwork/dxf_reader.h"
#include "core/artwork/foreign_kinds.h"
#include "core/artwork/messages.h"
#include "core/artwork/plt_reader.h"
#include "core/artwork/plt_script.h"
#include "core/artwork/scanner.h"
#include "core/artwork/svg_reader.h"
#include "core/artwork/unpack.h"

namespace sp::artwork {

namespace {

using namespace std::string_view_literals;

/// The first code of a DXF is 0 (SECTION) or 999 (a remark).
bool looksLikeDxf(std::string_view text) {
    const auto end = text.find('\n');
    if (end == std::string_view::npos) return false;
    const auto code = trimmed(text.substr(0, end));
    return code == "0" || code == "999";
}

base::Result<Drawing> readUnpacked(std::string bytes, const std::string& name) {
    std::string_view start = bytes;
    if (start.starts_with("\xef\xbb\xbf")) start.remove_prefix(3);
    while (!start.empty() && isSpace(start.front())) start.remove_prefix(1);
    if (start.empty()) return base::fail(Fault::EmptyFile, name, name);
    if (const auto foreign = foreignKindOf(start)) {
        if (foreign->name.empty()) return base::fail(foreign->fault, name, name);
        return base::fail(foreign->fault, name, name, foreign->name);
    }
    if (bytes.size() > Limits{}.bytes) return base::fail(Fault::FileTooLarge, name, name, bytes.size() / 1'000'000);
    if (looksLikeDxf(start)) return readDxf(start, name);
    if (looksLikePlt(start)) return readPlt(start, name);
    const bool isWide = start.starts_with("\xff\xfe") || start.starts_with("\xfe\xff") || start.starts_with("\0<"sv) ||
                        start.starts_with("<\0"sv) || start.starts_with("\0\0"sv);
    if (start.front() == '<' || isWide) return readSvg(std::move(bytes), name);
    return base::fail(Fault::NoDrawing, name, name);
}

} // namespace

base::Result<Drawing> readArtwork(std::string bytes, std::string_view fileName) {
    const std::string name = cleanText(fileName);
    if (!isGzip(bytes)) return readUnpacked(std::move(bytes), name);
    auto unpacked = unpackGzip(bytes, Limits{}.bytes, name);
    if (!unpacked) return base::fail(std::move(unpacked.error()));
    bytes = {};
    return readUnpacked(std::move(*unpacked), name);
}

} // namespace sp::artwork

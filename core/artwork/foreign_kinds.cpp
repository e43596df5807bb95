// SPDX-License-Identifier: MIT
#include "core/artwork/foreign_kinds.h"

#include <algorithm>
#include <iterator>

namespace sp::artwork {

namespace {

using namespace std::string_view_literals;

struct Mark {
    std::size_t at;
    std::string_view bytes;
    Fault fault;
    std::string_view name = {};
};

// As the published descriptions of these kinds say, and Debian's table of them (file 5.44, "magic").
constexpr Mark kMarks[] = {
    {0, "%PDF"sv, Fault::Pdf},
    {0, "%!PS"sv, Fault::PostScriptFile},
    {0, "\xc5\xd0\xd3\xc6"sv, Fault::PostScriptFile}, // with a preview before it
    {0, "AutoCAD Binary DXF"sv, Fault::BinaryDxf},
    {0, "\x89PNG"sv, Fault::Bitmap, "PNG"},
    {0, "\xff\xd8\xff"sv, Fault::Bitmap, "JPEG"},
    {0, "GIF8"sv, Fault::Bitmap, "GIF"},
    {0, "II*\0"sv, Fault::Bitmap, "TIFF"},
    {0, "MM\0*"sv, Fault::Bitmap, "TIFF"},
    {0, "8BPS\0\1"sv, Fault::Bitmap, "PSD"},
    {0, "\0\0\1\0"sv, Fault::Bitmap, "ICO"},
    {4, "ftypheic"sv, Fault::Bitmap, "HEIC"},
    {4, "ftypmif1"sv, Fault::Bitmap, "HEIC"},
    {4, "ftypavif"sv, Fault::Bitmap, "AVIF"},
    {8, "WEBP"sv, Fault::Bitmap, "WebP"},
    {8, "CDR"sv, Fault::ProgramsOwnFile}, // in RIFF, a letter for the version after it
    {8, "cdr"sv, Fault::ProgramsOwnFile},
    {0, "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"sv, Fault::ProgramsOwnFile}, // a compound file
    {0, "SQLite format 3\0"sv, Fault::ProgramsOwnFile},
    {0, "\xd7\xcd\xc6\x9a"sv, Fault::Metafile, "WMF"},
    {40, " EMF"sv, Fault::Metafile, "EMF"},
};

/// A zip file's first entry says whether a program packed its document so: Open Document, Open Packaging, RIFF inside.
constexpr std::string_view kPackedDocuments[] = {"mimetype"sv,      "[Content_Types].xml"sv, "content/"sv,
                                                 "document.json"sv, "META-INF/"sv,           "metadata/"sv};

bool stands(const Mark& mark, std::string_view bytes) {
    return bytes.size() > mark.at && bytes.substr(mark.at).starts_with(mark.bytes);
}

bool isPackedDocument(std::string_view zip) {
    constexpr std::size_t kNameAt = 30; // of a local file header
    if (zip.size() <= kNameAt) return false;
    const auto name = zip.substr(kNameAt);
    return std::any_of(std::begin(kPackedDocuments), std::end(kPackedDocuments),
                       [&](std::string_view known) { return name.starts_with(known); });
}

/// A version in six characters, then nothing: letters and digits alone may be a plot file.
bool isDwg(std::string_view bytes) { return bytes.size() > 6 && bytes.starts_with("AC1") && bytes[6] == '\0'; }

/// A length of its own and a zero stand after the two letters of a bitmap.
bool isBmp(std::string_view bytes) {
    return bytes.size() > 10 && bytes.starts_with("BM") && bytes.substr(6, 4) == "\0\0\0\0"sv;
}

} // namespace

std::optional<ForeignKind> foreignKindOf(std::string_view bytes) {
    if (bytes.starts_with("PK\3\4"))
        return ForeignKind{isPackedDocument(bytes) ? Fault::ProgramsOwnFile : Fault::ZipFile, {}};
    if (isDwg(bytes)) return ForeignKind{Fault::Dwg, {}};
    if (isBmp(bytes)) return ForeignKind{Fault::Bitmap, "BMP"};
    const bool isText = bytes.starts_with('<'); // what stands inside a drawing is no mark of anything
    if (isText) return std::nullopt;
    for (const Mark& mark : kMarks)
        if (stands(mark, bytes)) return ForeignKind{mark.fault, mark.name};
    return std::nullopt;
}

} // namespace sp::artwork

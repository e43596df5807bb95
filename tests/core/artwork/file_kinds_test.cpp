// SPDX-License-Identifier: MIT
//
// What a file is, by its first bytes, and what gzip packed.
#include "core/artwork/artwork_file.h"
#include "core/artwork/unpack.h"

#include <gmock/gmock.h>
#include <zlib.h>

namespace sp::artwork {
namespace {

using namespace std::string_literals;

std::string packed(const std::string& text) {
    z_stream stream{};
    EXPECT_EQ(deflateInit2(&stream, Z_BEST_COMPRESSION, Z_DEFLATED, 15 + 16, 8, Z_DEFAULT_STRATEGY), Z_OK);
    std::string out(deflateBound(&stream, text.size()) + 64, '\0');
    std::string in = text;
    stream.next_in = reinterpret_cast<Bytef*>(in.data());
    stream.avail_in = static_cast<uInt>(in.size());
    stream.next_out = reinterpret_cast<Bytef*>(out.data());
    stream.avail_out = static_cast<uInt>(out.size());
    EXPECT_EQ(deflate(&stream, Z_FINISH), Z_STREAM_END);
    out.resize(stream.total_out);
    deflateEnd(&stream);
    return out;
}

struct OtherFile {
    const char* name;
    std::string bytes;
    const char* says;
    base::Code code = base::Code::Foreign;
};
void PrintTo(const OtherFile& row, std::ostream* out) { *out << row.name; }
class OtherFiles : public testing::TestWithParam<OtherFile> {};
TEST_P(OtherFiles, areNamedForWhatTheyAre) {
    const auto drawing = readArtwork(GetParam().bytes, "gift.svg");
    ASSERT_FALSE(drawing);
    EXPECT_EQ(describe(drawing.error().message()), GetParam().says);
    EXPECT_EQ(drawing.error().code, GetParam().code);
    EXPECT_EQ(drawing.error().subject, "gift.svg");
}

/// A zip file's first entry (PKWARE's APPNOTE, section 4.3.7): 30 bytes, then its name.
std::string zipOf(const std::string& name) { return "PK\3\4" + std::string(26, '\0') + name + "rest"; }

// The first bytes are from the published description of each kind: ISO 32000-1 (PDF), Adobe's EPSF 3.0, the DXF
// reference (binary), PNG 1.2, JFIF 1.02, GIF89a, TIFF 6.0, RFC 9649 (WebP), MS-WMF and MS-EMF, MS-CFB; those of DWG
// and of the RIFF of a drawing program from Debian's file 5.44.
INSTANTIATE_TEST_SUITE_P(
    Kinds, OtherFiles,
    testing::Values(OtherFile{"pdf", "%PDF-1.4", "Pdf(gift.svg)"},
                    OtherFile{"eps", "%!PS-Adobe-3.0 EPSF-3.0\n", "PostScriptFile(gift.svg)"},
                    OtherFile{"epsWithPreview", "\xc5\xd0\xd3\xc6\x20\0\0\0"s, "PostScriptFile(gift.svg)"},
                    OtherFile{"binaryDxf", "AutoCAD Binary DXF\r\n\x1a\0"s, "BinaryDxf(gift.svg)"},
                    OtherFile{"dwg", "AC1015\0\0\0\0\0"s, "Dwg(gift.svg)"},
                    OtherFile{"png", "\x89PNG\r\n\x1a\n", "Bitmap(gift.svg, PNG)"},
                    OtherFile{"jpeg", "\xff\xd8\xff\xe0", "Bitmap(gift.svg, JPEG)"},
                    OtherFile{"gif", "GIF89a", "Bitmap(gift.svg, GIF)"},
                    OtherFile{"bmp", "BM\x46\0\0\0\0\0\0\0\x36\0"s, "Bitmap(gift.svg, BMP)"},
                    OtherFile{"tiff", "II*\0\10"s, "Bitmap(gift.svg, TIFF)"},
                    OtherFile{"webp", "RIFF\x24\0\0\0WEBPVP8 "s, "Bitmap(gift.svg, WebP)"},
                    OtherFile{"heic", "\0\0\0\x18"s + "ftypheic", "Bitmap(gift.svg, HEIC)"},
                    OtherFile{"wmf", "\xd7\xcd\xc6\x9a\0\0"s, "Metafile(gift.svg, WMF)"},
                    OtherFile{"emf", "\1\0\0\0"s + std::string(36, '\1') + " EMF", "Metafile(gift.svg, EMF)"},
                    OtherFile{"drawingInRiff", "RIFF\x24\0\0\0CDRAvrsn"s, "ProgramsOwnFile(gift.svg)"},
                    OtherFile{"drawingInZip", zipOf("mimetypeapplication/vnd.oasis"), "ProgramsOwnFile(gift.svg)"},
                    OtherFile{"compoundFile", "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "ProgramsOwnFile(gift.svg)"},
                    OtherFile{"zip", zipOf("front.svg"), "ZipFile(gift.svg)"},
                    OtherFile{"shortZip", "PK\3\4", "ZipFile(gift.svg)"},
                    OtherFile{"sound", "RIFF\x24\0\0\0WAVEfmt "s, "NoDrawing(gift.svg)"},
                    OtherFile{"packedPicture", packed("\x89PNG\r\n"), "Bitmap(gift.svg, PNG)"},
                    OtherFile{"packedTwice", packed(packed("<svg/>")), "NoDrawing(gift.svg)"},
                    OtherFile{"packedNothing", packed(""), "EmptyFile(gift.svg)", base::Code::Missing},
                    OtherFile{"brokenOff", packed("<svg><circle r='1.4'/></svg>").substr(0, 24),
                              "GarbledPack(gift.svg)", base::Code::Damaged},
                    OtherFile{"headerAlone", "\x1f\x8b\x08", "GarbledPack(gift.svg)", base::Code::Damaged},
                    OtherFile{"aBomb", packed(std::string(64'000'001, ' ')), "UnpacksTooLarge(gift.svg, 64)",
                              base::Code::TooLarge}),
    [](const testing::TestParamInfo<OtherFile>& tested) { return std::string(tested.param.name); });

TEST(PackedDrawing, isReadLikeThePlainOne) {
    const std::string svg = "<svg width='9mm' viewBox='0 0 9 9'><circle cx='4' cy='4' r='1.4'/></svg>";
    const auto drawing = readArtwork(packed(svg), "gift.svgz");
    ASSERT_TRUE(drawing) << describe(drawing.error());
    EXPECT_EQ(drawing->discs.size(), 1);
    EXPECT_NEAR(drawing->millimetresPerUnit.value_or(0), 1, 1e-12);
    const auto plot = readArtwork(packed("IN;SP1;PU9,9;CI56;"), "gift.plt.gz");
    ASSERT_TRUE(plot) << describe(plot.error());
    EXPECT_EQ(plot->format, catalogue::ArtworkFormat::Plt);
}

// `printf 'stones' | gzip -9n`, and the same once more behind it, which is not looked at.
TEST(PackedDrawing, isUnpackedToTheLastByte) {
    const std::string stones =
        "\x1f\x8b\x08\0\0\0\0\0\x02\x03\x2b\x2e\xc9\xcf\x4b\x2d\x06\0\xd8\x26\xac\xc0\x06\0\0\0"s;
    EXPECT_EQ(unpackGzip(stones, 6, "stones").value_or("?"), "stones");
    EXPECT_EQ(unpackGzip(stones + stones, 6, "stones").value_or("?"), "stones");
    EXPECT_FALSE(unpackGzip(stones, 5, "stones"));
    for (std::size_t size = 0; size < stones.size(); ++size)
        EXPECT_FALSE(unpackGzip(std::string_view(stones).substr(0, size), 6, "stones"));
}

} // namespace
} // namespace sp::artwork

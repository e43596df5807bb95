// SPDX-License-Identifier: MIT
#include "app/artwork/shape_file.h"

#include "app/artwork/file_bytes.h"
#include "core/artwork/artwork_file.h"

#include <fmt/format.h>

#include <iterator>

namespace sp::artwork {

base::Result<std::shared_ptr<const ShapeFile>> readShapeFile(const std::string& path, const std::string& name) {
    auto bytes = bytesOfFile(path);
    if (!bytes) return base::fail(bytes.error());
    auto file = std::make_shared<ShapeFile>();
    file->name = name;
    file->bytes = *bytes;
    auto drawing = readArtwork(std::move(*bytes), name);
    if (!drawing) return base::fail(drawing.error());
    file->drawing = std::move(*drawing);
    for (const auto& shape : shapesOf(file->drawing, 1))
        for (const auto& ring : shape.rings)
            for (const Point corner : ring) file->box.add(corner);
    if (file->box.isEmpty())
        for (const auto& line : linesOf(file->drawing, 1))
            for (const Point corner : line.points) file->box.add(corner);
    // The sentence about no shape has its home in regionOf.
    if (!(file->box.width() > 0) || !(file->box.height() > 0)) return base::fail(regionOf({}, name).error());
    return std::shared_ptr<const ShapeFile>(std::move(file));
}

std::string svgOf(std::span<const Shape> shapes) {
    Box box;
    for (const auto& shape : shapes)
        for (const auto& ring : shape.rings)
            for (const Point corner : ring) box.add(corner);
    auto svg = fmt::format(R"(<svg xmlns="http://www.w3.org/2000/svg" width="{0:.4f}mm" height="{1:.4f}mm")"
                           R"( viewBox="{2:.4f} {3:.4f} {0:.4f} {1:.4f}">)",
                           box.width(), box.height(), box.left, box.top);
    auto out = std::back_inserter(svg);
    for (const auto& shape : shapes) {
        fmt::format_to(out, "\n<path fill-rule=\"{}\" d=\"", shape.evenOdd ? "evenodd" : "nonzero");
        for (const auto& ring : shape.rings) {
            char command = 'M';
            for (const Point corner : ring)
                fmt::format_to(out, "{}{:.4f},{:.4f}", std::exchange(command, 'L'), corner.x, corner.y);
            svg += 'Z';
        }
        svg += "\"/>";
    }
    return svg + "\n</svg>\n";
}

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#include "app/desk/kept_picture.h"

#include <QBuffer>
#include <QImageReader>

namespace sp::desk {

namespace {

constexpr int kMaxSide = 2'048;

} // namespace

QImage keptPicture(const std::string& png) {
    auto bytes = QByteArray::fromStdString(png);
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer, "PNG");
    reader.setDecideFormatFromContent(false);
    const auto size = reader.size(); // of the head, before anything is unpacked
    if (!size.isValid() || size.width() > kMaxSide || size.height() > kMaxSide) return {};
    return reader.read();
}

} // namespace sp::desk

// SPDX-License-Identifier: MIT
#include "app/desk/kept_picture.h"

#include <QBuffer>
#include <gtest/gtest.h>

namespace {

using namespace sp;

std::string pngOf(int width, int height) {
    QImage image(width, height, QImage::Format_Mono);
    image.fill(1);
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return png.toStdString();
}

TEST(KeptPicture, isWhatWasKept) {
    EXPECT_EQ(desk::keptPicture(pngOf(300, 200)).size(), QSize(300, 200));
    EXPECT_EQ(desk::keptPicture(pngOf(2'048, 2'048)).size(), QSize(2'048, 2'048));
}

TEST(KeptPicture, isNoneOfWhatWouldTakeTheMemory) {
    const auto large = pngOf(20'000, 20'000); // 1.6 GB once unpacked in colours
    EXPECT_LT(large.size(), 100'000U);
    EXPECT_TRUE(desk::keptPicture(large).isNull());
    EXPECT_TRUE(desk::keptPicture(pngOf(2'049, 1)).isNull());
}

TEST(KeptPicture, isNoneOfWhatIsNoPicture) {
    EXPECT_TRUE(desk::keptPicture({}).isNull());
    EXPECT_TRUE(desk::keptPicture("no picture at all").isNull());
    EXPECT_TRUE(desk::keptPicture(pngOf(300, 200).substr(0, 40)).isNull()) << "cut off";
    EXPECT_TRUE(desk::keptPicture("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>").isNull());
}

} // namespace

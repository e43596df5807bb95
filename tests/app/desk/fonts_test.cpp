// SPDX-License-Identifier: MIT
#include "app/desk/fonts.h"

#include <QDir>
#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QRawFont>

#include <gtest/gtest.h>

namespace sp::desk {

namespace {

class OwnFont : public testing::TestWithParam<Weight> {
  protected:
    void SetUp() override {
        // Not in a build without Debian's fonts-inter and python3-fonttools (packaging/dependencies/build.txt).
        if (!QDir(QStringLiteral(":/fonts")).exists()) GTEST_SKIP() << "the program was built without its own font";
    }
};

} // namespace

TEST_P(OwnFont, isWhatAllTextIsSetIn) {
    ASSERT_FALSE(ownFamily().isEmpty());
    EXPECT_EQ(textFamilies().front(), ownFamily());
    for (const auto size : {TextSize::Small, TextSize::Body, TextSize::Title, TextSize::Total}) {
        const QFontInfo found(textFont(size, GetParam()));
        EXPECT_EQ(found.family(), ownFamily());
        EXPECT_EQ(found.weight(), GetParam() == Weight::Strong ? QFont::DemiBold : QFont::Normal);
    }
}

TEST_P(OwnFont, hasDigitsOfOneWidth) {
    for (const auto size : {TextSize::Small, TextSize::Body, TextSize::Title, TextSize::Total}) {
        const QFontMetricsF metrics(textFont(size, GetParam()));
        for (char digit = '0'; digit <= '9'; ++digit)
            EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(QString(6, QLatin1Char(digit))),
                             metrics.horizontalAdvance(QStringLiteral("000000")))
                << digit;
        EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(QStringLiteral("1,117.71")),
                         metrics.horizontalAdvance(QStringLiteral("8,888.88")));
    }
}

/// Latin with Extended-A, Greek, Cyrillic, and every sign that the program writes.
TEST_P(OwnFont, holdsWhatIsWritten) {
    const auto font = QRawFont::fromFont(textFont(TextSize::Body, GetParam()));
    const QString written = QString::fromUtf8("AZaz09ÀÿĀſŐőŁłΑΩαωЁЯяё“”‘’…–—−×÷±·½¼¾°€£¥¢₹₽←↑→↓≤≥"
                                              "≠");
    for (const QChar letter : written) EXPECT_TRUE(font.supportsCharacter(letter)) << QString(letter).toStdString();
}

INSTANTIATE_TEST_SUITE_P(Weights, OwnFont, testing::Values(Weight::Plain, Weight::Strong),
                         [](const auto& weight) { return weight.param == Weight::Strong ? "Strong" : "Plain"; });

} // namespace sp::desk

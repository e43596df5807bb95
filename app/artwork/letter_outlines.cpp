// SPDX-License-Identifier: MIT
#include "app/artwork/letter_outlines.h"

#include "app/words/words.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPainterPath>

namespace sp::artwork {

namespace {

/// Large enough that Qt flattens curves finely.
constexpr int kPixels = 1000;
constexpr qsizetype kMaxLetters = 2000;
constexpr std::int64_t kTallestNm = 10'000'000'000;

/// It only says how the letter before it is to look, and leaves nothing of its own.
bool isVariationSelector(char32_t letter) {
    return (letter >= 0xFE00 && letter <= 0xFE0F) || (letter >= 0xE0100 && letter <= 0xE01EF);
}

QString installed(const QString& family) {
    for (const auto& known : QFontDatabase::families())
        if (known.compare(family, Qt::CaseInsensitive) == 0) return known;
    return {};
}

} // namespace

base::Result<std::vector<Shape>> outlinesOf(const LetteringOrder& order) {
    if (order.height.nanometres() <= 0 || order.height.nanometres() > kTallestNm)
        return words::fail(base::Code::OutOfRange, "height",
                           QT_TRANSLATE_NOOP("App", "Letters are between nothing and 10 m high; give another height."));
    const auto family = installed(QString::fromStdString(order.font).trimmed());
    if (family.isEmpty())
        return words::fail(base::Code::NotFound, order.font,
                           QT_TRANSLATE_NOOP("App", "The font “%1” is not installed here; install it or name another."),
                           order.font);
    const auto text = QString::fromStdString(order.text);
    if (text.size() > kMaxLetters)
        return words::fail(
            base::Code::TooLarge, "text",
            QT_TRANSLATE_NOOP("App", "More than 2,000 letters are not estimated at once; take a part of them."));
    QFont font(family);
    font.setPixelSize(kPixels);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::NoFontMerging);
    const QFontMetricsF metrics(font);
    const auto letters = text.toUcs4();
    for (const char32_t letter : letters)
        if (QChar::isPrint(letter) && !QChar::isSpace(letter) && !isVariationSelector(letter) &&
            !metrics.inFontUcs4(letter))
            return words::fail(
                base::Code::NotFound, order.font,
                QT_TRANSLATE_NOOP("App", "%1 has no “%2”; type letters that the font has or name another font."),
                family.toStdString(), QString::fromUcs4(&letter, 1).toStdString());
    QPainterPath path;
    double baseline = 0;
    for (const auto& line : text.split(QLatin1Char('\n'))) {
        path.addText(0, baseline, font, line);
        baseline += metrics.lineSpacing();
    }
    const double capitals = metrics.capHeight() > 0 ? metrics.capHeight() : metrics.ascent();
    const double scale = order.height.millimetres() / capitals;
    Shape shape;
    for (const auto& polygon : path.toSubpathPolygons()) {
        std::vector<Point> ring;
        for (const auto& corner : polygon) ring.push_back({corner.x() * scale, corner.y() * scale});
        if (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
        if (ring.size() > 2) shape.rings.push_back(std::move(ring));
    }
    if (shape.rings.empty())
        return words::fail(base::Code::Missing, order.text,
                           QT_TRANSLATE_NOOP("App", "“%1” leaves no outline in %2; type letters that the font has."),
                           order.text, family.toStdString());
    return std::vector<Shape>{std::move(shape)};
}

} // namespace sp::artwork

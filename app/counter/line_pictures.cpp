// SPDX-License-Identifier: MIT
#include "app/counter/line_pictures.h"

namespace sp::counter {

LinePicture linePictures(const CounterPresenter& presenter, artwork::DesignPictures& pictures) {
    return [&](int line, QSize room, const QColor& ground, double devicePixelRatio) {
        const auto& lines = presenter.order().lines;
        if (line < 0 || line >= static_cast<int>(lines.size())) return QPixmap();
        for (const auto& place : lines[static_cast<std::size_t>(line)].places) {
            if (place.design.isNone()) continue;
            // Of other stones than the line has it would be a picture of something else.
            const auto look = pictures.stones(place.design);
            if (!look || !artwork::showsTheCounts(*look, place.stones)) continue;
            if (auto picture = pictures.small(place.design, room, ground, devicePixelRatio); !picture.isNull())
                return picture;
        }
        return QPixmap();
    };
}

} // namespace sp::counter

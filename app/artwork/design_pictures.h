// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/picture.h"
#include "app/artwork/stone_sprites.h"
#include "app/session/book_session.h"

#include <QByteArray>
#include <QCache>
#include <QHash>
#include <QObject>
#include <QPixmap>
#include <QSize>

#include <map>
#include <memory>
#include <optional>

namespace sp::artwork {

/// The stones of a kept drawing as they lie, in the colours of the design's own stones: each colour and size of the
/// drawing is the stone of the design that it was counted as or looks like. Nothing where the drawing shows no stones
/// as discs (it was estimated from) or cannot be read.
std::shared_ptr<const Picture> pictureOf(const catalogue::Design& design, const catalogue::DesignArtwork& drawing,
                                         session::BookSession& session);

/// How many stones of each material a picture shows and a design takes are the same.
bool showsTheCounts(const Picture& picture, const std::vector<catalogue::StoneCount>& stones);

/// What the designs of the open book look like, for lists and cards: read when first asked for, painted once for each
/// size, at most 32 MB of pictures and a million stones kept. They are kept by what they are of: after a change of the
/// book a drawing is looked at once more, and read and painted anew only where it or its stones are others.
class DesignPictures : public QObject {
    Q_OBJECT

  public:
    explicit DesignPictures(session::BookSession& session, QObject* parent = nullptr);

    /// The stones as they lie; null where there is nothing to show.
    std::shared_ptr<const Picture> stones(const base::Id& design);
    /// The same painted into `room` (device-independent pixels) as large as it goes, without a ground. `ground` is the
    /// colour it will lie on. Null where there is nothing to show.
    QPixmap small(const base::Id& design, QSize room, const QColor& ground, double devicePixelRatio);

  Q_SIGNALS:
    /// The book changed, and what is asked for now is answered from it as it is. Who shows a picture asks again then:
    /// they may hear of the book's change before this does.
    void changed();

  private:
    QByteArray contentOf(const base::Id& design, std::optional<catalogue::DesignArtwork>& drawing);
    std::shared_ptr<const Picture> stonesOf(const base::Id& design, const QByteArray& content,
                                            std::optional<catalogue::DesignArtwork> drawing);
    QPixmap painted(const Picture& picture, QSize room, const QColor& ground, double devicePixelRatio);

    struct Kept {
        std::shared_ptr<const Picture> picture;
    };

    session::BookSession& m_session;
    StoneSprites m_sprites;
    QHash<QString, QByteArray> m_contents; ///< by design; of those that were asked for since the book changed
    QCache<QByteArray, Kept> m_stones;     ///< by content
    QCache<QString, QPixmap> m_small;
};

/// Paints the stones so that their box fills `room` of the painter but for what keeps its proportions, in its middle.
/// Answers where the box lies.
QRectF paintStonesInto(QPainter& painter, const Picture& picture, const QRectF& room, StoneSprites& sprites);

} // namespace sp::artwork

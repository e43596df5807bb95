// SPDX-License-Identifier: MIT
#include "app/artwork/design_pictures.h"

#include "app/words/proof_sheet.h"
#include "core/artwork/laid_stones.h"

#include <QCryptographicHash>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace sp::artwork {

namespace {

constexpr int kMaxStonesKept = 1'000'000;
constexpr int kMaxBytesKept = 32'000'000;

QString keyOf(const base::Id& design) { return QString::fromStdString(design.text()); }

/// The stones that the design takes, to look for a colour among.
std::vector<catalogue::Material> materialsOf(const catalogue::Design& design, session::BookSession& session) {
    std::vector<catalogue::Material> materials;
    for (const auto& stone : design.stones)
        if (const auto* material = session.material(stone.material)) materials.push_back(*material);
    return materials;
}

/// Of all that pictureOf looks at.
QByteArray digestOf(const catalogue::Design& design, const catalogue::DesignArtwork& drawing,
                    session::BookSession& session) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    const auto addNumber = [&](std::int64_t number) { hash.addData(QByteArray::number(qint64(number)) + ' '); };
    const auto addText = [&](const std::string& text) {
        addNumber(std::ssize(text));
        hash.addData(QByteArray::fromRawData(text.data(), static_cast<qsizetype>(text.size())));
    };
    addText(drawing.file);
    addText(drawing.fileName);
    addNumber(words::isEstimated(drawing) ? 1 : 0);
    addNumber(drawing.unit.nanometres());
    addNumber(drawing.holeAllowance.nanometres());
    for (const auto& material : materialsOf(design, session)) {
        addText(material.id.text());
        addNumber(static_cast<std::int64_t>(material.kind));
        addText(material.stone.size);
        addNumber(material.stone.rgb);
    }
    for (const auto& known : session.colourMaterials()) {
        addNumber(known.rgb);
        addText(known.stoneSize);
        addText(known.material.text());
    }
    return hash.result();
}

} // namespace

std::shared_ptr<const Picture> pictureOf(const catalogue::Design& design, const catalogue::DesignArtwork& drawing,
                                         session::BookSession& session) {
    if (words::isEstimated(drawing)) return nullptr;
    const auto materials = materialsOf(design, session);
    const auto laid = laidStones(drawing, materials, session.colourMaterials());
    auto picture = std::make_shared<Picture>();
    picture->stones.reserve(laid.size());
    for (const auto& stone : laid) {
        const auto& material = materials[stone.material];
        picture->stones.push_back({stone.centre, stone.diameter, material.stone.rgb});
        ++picture->counts[material.id];
    }
    if (picture->stones.empty()) return nullptr;
    return picture;
}

bool showsTheCounts(const Picture& picture, const std::vector<catalogue::StoneCount>& stones) {
    const auto isShown = [&](const catalogue::StoneCount& stone) {
        return stone.count.value() <= 0 || picture.counts.contains(stone.material);
    };
    const auto isTaken = [&](const std::pair<const base::Id, std::int64_t>& shown) {
        std::int64_t taken = 0;
        for (const auto& stone : stones)
            if (stone.material == shown.first && stone.count.value() > 0) taken += stone.count.value();
        return taken == shown.second;
    };
    return std::ranges::all_of(stones, isShown) && std::ranges::all_of(picture.counts, isTaken);
}

QRectF paintStonesInto(QPainter& painter, const Picture& picture, const QRectF& room, StoneSprites& sprites) {
    const Box box = picture.box();
    if (box.isEmpty() || room.isEmpty()) return {};
    const double scale = std::min(room.width() / box.width(), room.height() / box.height());
    const QPointF origin(room.center().x() - scale * (box.left + box.right) / 2,
                         room.center().y() - scale * (box.top + box.bottom) / 2);
    for (const auto& stone : picture.stones)
        sprites.paint(painter, origin + QPointF(stone.centre.x, stone.centre.y) * scale, stone.diameter * scale,
                      stone.rgb);
    return {origin + QPointF(box.left, box.top) * scale, QSizeF(box.width() * scale, box.height() * scale)};
}

DesignPictures::DesignPictures(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_stones(kMaxStonesKept)
    , m_small(kMaxBytesKept) {
    connect(&m_session, &session::BookSession::changed, this, [this] {
        m_contents.clear();
        Q_EMIT changed();
    });
}

/// What the picture of the design depends on, as a digest; empty where no drawing is kept. `drawing` is the kept one
/// where it had to be read to know.
QByteArray DesignPictures::contentOf(const base::Id& id, std::optional<catalogue::DesignArtwork>& drawing) {
    const auto known = m_contents.constFind(keyOf(id));
    if (known != m_contents.constEnd()) return *known;
    const auto* design = m_session.design(id);
    if (design) drawing = m_session.artwork(id);
    const auto content = drawing ? digestOf(*design, *drawing, m_session) : QByteArray();
    m_contents.insert(keyOf(id), content);
    return content;
}

std::shared_ptr<const Picture> DesignPictures::stonesOf(const base::Id& id, const QByteArray& content,
                                                        std::optional<catalogue::DesignArtwork> drawing) {
    if (content.isEmpty()) return nullptr;
    if (const auto* known = m_stones.object(content)) return known->picture;
    if (!drawing) drawing = m_session.artwork(id);
    const auto* design = m_session.design(id);
    auto picture = design && drawing ? pictureOf(*design, *drawing, m_session) : nullptr;
    const int cost = picture ? static_cast<int>(std::min<std::size_t>(picture->stones.size(), kMaxStonesKept)) : 1;
    m_stones.insert(content, new Kept{picture}, cost);
    return picture;
}

std::shared_ptr<const Picture> DesignPictures::stones(const base::Id& id) {
    std::optional<catalogue::DesignArtwork> drawing;
    const auto content = contentOf(id, drawing);
    return stonesOf(id, content, std::move(drawing));
}

QPixmap DesignPictures::small(const base::Id& design, QSize room, const QColor& ground, double devicePixelRatio) {
    std::optional<catalogue::DesignArtwork> drawing;
    const auto content = contentOf(design, drawing);
    if (content.isEmpty()) return {};
    const auto key = QStringLiteral("%1 %2 %3 %4 %5")
                         .arg(QString::fromLatin1(content.toHex()))
                         .arg(room.width())
                         .arg(room.height())
                         .arg(ground.rgba())
                         .arg(devicePixelRatio);
    if (const auto* known = m_small.object(key)) return *known;
    const auto picture = stonesOf(design, content, std::move(drawing));
    auto pixmap = picture ? painted(*picture, room, ground, devicePixelRatio) : QPixmap();
    m_small.insert(key, new QPixmap(pixmap), std::max(1, pixmap.width() * pixmap.height() * 4));
    return pixmap;
}

QPixmap DesignPictures::painted(const Picture& picture, QSize room, const QColor& ground, double devicePixelRatio) {
    QPixmap pixmap(room * devicePixelRatio);
    pixmap.setDevicePixelRatio(devicePixelRatio);
    pixmap.fill(Qt::transparent);
    m_sprites.setGround(ground, devicePixelRatio);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    paintStonesInto(painter, picture, QRectF(QPointF(), room), m_sprites);
    return pixmap;
}

} // namespace sp::artwork

#include "moc_design_pictures.cpp"

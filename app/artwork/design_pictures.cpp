// SPDX-License-Identifier: MIT
#include "app/artwork/design_pictures.h"

#include "app/artwork/made_design.h"
#include "core/artwork/artwork_file.h"
#include "core/artwork/colour.h"
#include "core/artwork/count.h"
#include "core/artwork/nearest_stone.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

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

const catalogue::Material* stoneOf(const StoneGroup& group, const std::vector<catalogue::Material>& materials,
                                   session::BookSession& session) {
    if (!group.size) return nullptr;
    const auto& size = publishedStoneSizes()[*group.size].name;
    const auto called = [&](const base::Id& id) -> const catalogue::Material* {
        const auto found = std::ranges::find(materials, id, &catalogue::Material::id);
        return found == materials.end() ? nullptr : &*found;
    };
    if (const auto rgb = parseColour(group.colour))
        for (const auto& known : session.colourMaterials())
            if (known.rgb == *rgb && known.stoneSize == size)
                if (const auto* material = called(known.material)) return material;
    const auto nearest = nearestStone(group.colour, size, materials);
    return nearest ? called(*nearest) : nullptr;
}

} // namespace

std::shared_ptr<const Picture> pictureOf(const catalogue::Design& design, const catalogue::DesignArtwork& drawing,
                                         session::BookSession& session) {
    if (isEstimated(drawing)) return nullptr;
    const auto read = readArtwork(drawing.file, drawing.fileName);
    if (!read) return nullptr;
    CountOptions options;
    options.millimetresPerUnit = drawing.unit.millimetres();
    options.holeAllowance = drawing.holeAllowance;
    const auto counted = countStones(*read, options, drawing.fileName);
    if (!counted) return nullptr;
    const auto materials = materialsOf(design, session);
    std::vector<const catalogue::Material*> stones;
    for (const auto& group : counted->groups) stones.push_back(stoneOf(group, materials, session));
    auto picture = std::make_shared<Picture>();
    picture->stones.reserve(counted->stones.size());
    for (const auto& stone : counted->stones) {
        const auto* material = stones[stone.group];
        if (!material) continue; // left out of the design
        picture->stones.push_back({stone.centre, stone.diameter, material->stone.rgb});
        ++picture->counts[material->id];
    }
    if (picture->stones.empty()) return nullptr;
    return picture;
}

bool showsTheCounts(const Picture& picture, const std::vector<catalogue::StoneCount>& stones) {
    std::map<base::Id, std::int64_t> counts;
    for (const auto& stone : stones)
        if (stone.count.value() > 0) counts[stone.material] += stone.count.value();
    return counts == picture.counts;
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
        m_stones.clear();
        m_small.clear();
    });
}

std::shared_ptr<const Picture> DesignPictures::stones(const base::Id& id) {
    const auto key = keyOf(id);
    if (const auto* known = m_stones.object(key)) return known->picture;
    const auto* design = m_session.design(id);
    const auto drawing = design ? m_session.artwork(id) : std::nullopt;
    auto picture = drawing ? pictureOf(*design, *drawing, m_session) : nullptr;
    const int cost = picture ? static_cast<int>(std::min<std::size_t>(picture->stones.size(), kMaxStonesKept)) : 1;
    m_stones.insert(key, new Kept{picture}, cost);
    return picture;
}

QPixmap DesignPictures::small(const base::Id& design, QSize room, const QColor& ground, double devicePixelRatio) {
    const auto key = QStringLiteral("%1 %2 %3 %4 %5")
                         .arg(keyOf(design))
                         .arg(room.width())
                         .arg(room.height())
                         .arg(ground.rgba())
                         .arg(devicePixelRatio);
    if (const auto* known = m_small.object(key)) return *known;
    const auto picture = stones(design);
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

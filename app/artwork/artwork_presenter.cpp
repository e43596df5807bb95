// SPDX-License-Identifier: MIT
#include "app/artwork/artwork_presenter.h"

#include "app/artwork/made_design.h"
#include "app/session/free_name.h"
#include "app/words/names.h"
#include "app/words/words.h"
#include "core/artwork/colour.h"
#include "core/artwork/nearest_stone.h"
#include "core/catalogue/order.h"
#include "core/catalogue/stone_colour.h"
#include "core/pricing/price_order.h"
#include "db/messages.h"

#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

/// Of two colours in L*a*b*: a dark and a light blue are up to some 40 apart, a red and an amber some 65.
constexpr double kLooksAlike = 45;
constexpr std::uint32_t kNoColour = 0xB8BEC4; ///< of a stone whose colour nobody knows

} // namespace

QString colourWords(const std::string& colour) {
    const auto rgb = colour.starts_with('#') ? parseColour(colour) : std::nullopt;
    return rgb ? ArtworkPresenter::tr("like %1").arg(words::nameOf(catalogue::nearestColour(*rgb)))
               : QString::fromStdString(colour);
}

ArtworkPresenter::ArtworkPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {
    connect(&m_reader, &CutFileReader::finished, this, &ArtworkPresenter::take);
    connect(&m_reader, &CutFileReader::failed, this, &ArtworkPresenter::refused);
    connect(&m_session, &session::BookSession::changed, this, [this] {
        if (!m_file) return;
        makeRows();
        Q_EMIT changed();
    });
}

void ArtworkPresenter::open(const QString& path) { m_reader.read(path); }

QString ArtworkPresenter::fileName() const { return m_file ? QString::fromStdString(m_file->name) : QString(); }

void ArtworkPresenter::take(const std::shared_ptr<const CutFile>& file) {
    const auto before = std::exchange(m_file, file);
    const auto scale =
        file->scales.empty() ? *file->drawing.millimetresPerUnit : file->scales.front().scale.millimetresPerUnit;
    m_assigned.discs.clear();
    m_before.clear();
    m_after.clear();
    m_isUsed = false;
    m_selected = -1;
    if (const auto counted = count(scale, {}); !counted) {
        m_file = before;
        Q_EMIT refused(words::sentence(counted.error()));
        return;
    }
    m_scale = 0;
    m_scaleChosen = false;
    m_allowance = {};
    Q_EMIT opened();
    Q_EMIT changed();
}

base::Done ArtworkPresenter::count(double millimetresPerUnit, units::Length allowance) {
    CountOptions options;
    options.millimetresPerUnit = millimetresPerUnit;
    options.holeAllowance = allowance;
    auto counted = countStones(m_file->drawing, options, m_file->name);
    if (!counted) return base::fail(counted.error());
    m_counted = std::move(*counted);
    m_selected = -1;
    makeRows();
    return {};
}

void ArtworkPresenter::chooseScale(int reading) {
    const auto& wanted = m_file->scales[static_cast<std::size_t>(reading)];
    if (const auto counted = count(wanted.scale.millimetresPerUnit, m_allowance); !counted) {
        Q_EMIT refused(words::sentence(counted.error()));
        return;
    }
    m_scale = reading;
    m_scaleChosen = true;
    Q_EMIT changed();
    Q_EMIT selectionChanged();
}

bool ArtworkPresenter::setHoleAllowance(units::Length allowance) {
    if (!m_file || allowance == m_allowance) return true;
    if (const auto counted = count(millimetresPerUnit(), allowance); !counted) {
        Q_EMIT refused(words::sentence(counted.error()));
        return false;
    }
    m_allowance = allowance;
    Q_EMIT changed();
    Q_EMIT selectionChanged();
    return true;
}

double ArtworkPresenter::millimetresPerUnit() const {
    return m_file->scales.empty() ? *m_file->drawing.millimetresPerUnit
                                  : m_file->scales[static_cast<std::size_t>(m_scale)].scale.millimetresPerUnit;
}

void ArtworkPresenter::makeRows() {
    m_rows.clear();
    m_rowOfGroup.clear();
    std::map<RowKey, std::size_t> found;
    std::vector<std::size_t> rowOfGroup;
    for (const auto& group : m_counted.groups) {
        const auto [at, isNew] = found.try_emplace(RowKey{group.colour, group.size}, m_rows.size());
        if (isNew) m_rows.push_back({group.colour, group.size, group.smallest, group.largest, {}, {}, {}});
        auto& row = m_rows[at->second];
        row.smallest = std::min(row.smallest, group.smallest);
        row.largest = std::max(row.largest, group.largest);
        row.count = units::Count::of(row.count.value() + group.count.value());
        if (!group.layer.empty() && std::find(row.layers.begin(), row.layers.end(), group.layer) == row.layers.end())
            row.layers.push_back(group.layer);
        rowOfGroup.push_back(at->second);
    }
    std::vector<std::size_t> order(m_rows.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [this](auto a, auto b) { return m_rows[a].count > m_rows[b].count; });
    std::vector<ColourRow> sorted;
    std::vector<int> place(m_rows.size());
    for (const auto from : order) {
        place[from] = static_cast<int>(sorted.size());
        sorted.push_back(std::move(m_rows[from]));
    }
    m_rows = std::move(sorted);
    for (const auto row : rowOfGroup) m_rowOfGroup.push_back(place[row]);
    assignRows();
}

void ArtworkPresenter::assignRows() {
    for (auto& row : m_rows) {
        const auto chosen = m_assigned.rows.find({row.colour, row.size});
        const bool isThere =
            chosen != m_assigned.rows.end() && (chosen->second.isNone() || m_session.material(chosen->second));
        row.material = isThere ? std::optional(chosen->second) : likelyMaterial(row);
        row.isFar = !isThere && isFarFrom(row);
    }
}

std::optional<base::Id> ArtworkPresenter::likelyMaterial(const ColourRow& row) const {
    if (!row.size) return std::nullopt;
    const auto& size = publishedStoneSizes()[*row.size].name;
    if (const auto rgb = parseColour(row.colour))
        for (const auto& known : m_session.colourMaterials())
            if (known.rgb == *rgb && known.stoneSize == size && m_session.material(known.material))
                return known.material;
    return nearestStone(row.colour, publishedStoneSizes()[*row.size].name, m_session.materials());
}

bool ArtworkPresenter::isFarFrom(const ColourRow& row) const {
    const auto* material = row.material ? m_session.material(*row.material) : nullptr;
    const auto drawn = parseColour(row.colour);
    if (!material || !drawn) return false;
    for (const auto& known : m_session.colourMaterials())
        if (known.rgb == *drawn && known.material == *row.material) return false; // chosen for it before
    return colourDistance(*drawn, material->stone.rgb) > kLooksAlike;
}

void ArtworkPresenter::assign(int row, const base::Id& material) {
    const auto& changedRow = m_rows[static_cast<std::size_t>(row)];
    if (changedRow.material == material) return;
    m_before.push_back(m_assigned);
    m_after.clear();
    m_isUsed = false;
    m_assigned.rows[{changedRow.colour, changedRow.size}] = material;
    assignRows();
    Q_EMIT changed();
}

void ArtworkPresenter::assignStone(int stone, const base::Id& material) {
    if (materialOf(stone) == material) return;
    m_before.push_back(m_assigned);
    m_after.clear();
    m_isUsed = false;
    const auto disc = m_counted.stones[static_cast<std::size_t>(stone)].disc;
    if (m_rows[static_cast<std::size_t>(rowOf(stone))].material == material)
        m_assigned.discs.erase(disc); // it follows its row again
    else
        m_assigned.discs[disc] = material;
    Q_EMIT changed();
}

bool ArtworkPresenter::turn(std::vector<Assigned>& from, std::vector<Assigned>& into) {
    if (from.empty()) return false;
    m_isUsed = false;
    into.push_back(std::exchange(m_assigned, std::move(from.back())));
    from.pop_back();
    assignRows();
    Q_EMIT changed();
    return true;
}

bool ArtworkPresenter::undoAssigning() { return turn(m_before, m_after); }
bool ArtworkPresenter::redoAssigning() { return turn(m_after, m_before); }

std::vector<std::int64_t> ArtworkPresenter::stonesOfRows() const {
    std::vector<std::int64_t> counts;
    for (const auto& row : m_rows) counts.push_back(row.count.value());
    if (m_assigned.discs.empty()) return counts;
    for (std::size_t i = 0; i < m_counted.stones.size(); ++i)
        if (m_assigned.discs.contains(m_counted.stones[i].disc))
            --counts[static_cast<std::size_t>(rowOf(static_cast<int>(i)))];
    return counts;
}

std::map<base::Id, std::int64_t> ArtworkPresenter::setOneByOne() const {
    std::map<base::Id, std::int64_t> counts;
    if (m_assigned.discs.empty()) return counts;
    for (const auto& stone : m_counted.stones)
        if (const auto own = m_assigned.discs.find(stone.disc); own != m_assigned.discs.end()) ++counts[own->second];
    return counts;
}

std::optional<base::Id> ArtworkPresenter::materialOf(int stone) const {
    const auto own = m_assigned.discs.find(m_counted.stones[static_cast<std::size_t>(stone)].disc);
    if (own != m_assigned.discs.end()) return own->second;
    return m_rows[static_cast<std::size_t>(rowOf(stone))].material;
}

void ArtworkPresenter::select(int stone) {
    if (stone == m_selected) return;
    m_selected = stone;
    Q_EMIT selectionChanged();
}

Picture ArtworkPresenter::picture() const {
    Picture picture;
    if (!m_file) return picture;
    const double scale = m_file->scales.empty()
                             ? *m_file->drawing.millimetresPerUnit
                             : m_file->scales[static_cast<std::size_t>(m_scale)].scale.millimetresPerUnit;
    picture.stones.reserve(m_counted.stones.size());
    std::unordered_map<base::Id, std::uint32_t> colours;
    for (const auto& material : m_session.materials()) colours[material.id] = material.stone.rgb;
    for (std::size_t i = 0; i < m_counted.stones.size(); ++i) {
        const auto& stone = m_counted.stones[i];
        const auto material = materialOf(static_cast<int>(i));
        const auto known = material ? colours.find(*material) : colours.end();
        const auto rgb = known != colours.end() ? known->second
                                                : parseColour(m_counted.groups[stone.group].colour).value_or(kNoColour);
        picture.stones.push_back({stone.centre, stone.diameter, rgb, stone.collides, material && material->isNone()});
    }
    const auto& drawing = m_file->drawing;
    for (std::size_t i = 0; i < drawing.discs.size(); ++i)
        if (const Classification classification = m_counted.discClasses[i]; classification != Classification::Stone)
            picture.discs.push_back({scale * drawing.discs[i].centre, scale * drawing.discs[i].radius, classification});
    for (std::size_t i = 0; i < drawing.outlines.size(); ++i) {
        const auto& outline = drawing.outlines[i];
        Picture::Line line{{}, outline.closed, m_counted.outlineClasses[i], {}};
        for (const auto& point : drawing.pointsOf(outline)) {
            line.points.push_back(scale * point);
            line.box.add(line.points.back());
        }
        picture.lines.push_back(std::move(line));
    }
    return picture;
}

QStringList ArtworkPresenter::warnings() const {
    QStringList sentences;
    if (m_file)
        for (const auto& warning : m_file->drawing.warnings) sentences << words::sentence(warning);
    return sentences;
}

std::vector<catalogue::StoneCount> ArtworkPresenter::stoneCounts() const {
    std::unordered_map<base::Id, std::int64_t> numbers;
    for (std::size_t i = 0; i < m_counted.stones.size(); ++i)
        if (const auto material = materialOf(static_cast<int>(i)); material && !material->isNone())
            ++numbers[*material];
    std::vector<catalogue::StoneCount> counts;
    for (const auto& [material, number] : numbers) counts.push_back({material, units::Count::of(number)});
    // Most stones first, as they are brushed.
    std::sort(counts.begin(), counts.end(), [](const auto& a, const auto& b) {
        return a.count != b.count ? a.count > b.count : a.material < b.material;
    });
    return counts;
}

Box ArtworkPresenter::usedBox() const {
    Box box;
    for (std::size_t i = 0; i < m_counted.stones.size(); ++i)
        if (const auto material = materialOf(static_cast<int>(i)); !material || !material->isNone())
            box.add(m_counted.stones[i].centre, m_counted.stones[i].diameter / 2);
    return box;
}

units::Length ArtworkPresenter::width() const { return roundedUp(usedBox().width(), m_session.shop().lengthUnit); }
units::Length ArtworkPresenter::height() const { return roundedUp(usedBox().height(), m_session.shop().lengthUnit); }

units::Count ArtworkPresenter::stonesUsed() const {
    std::int64_t all = 0;
    for (const auto& stone : stoneCounts()) all += stone.count.value();
    return units::Count::of(all);
}

std::int64_t ArtworkPresenter::stonesUndecided() const {
    std::int64_t open = 0;
    for (std::size_t i = 0; i < m_counted.stones.size(); ++i)
        if (!materialOf(static_cast<int>(i))) ++open;
    return open;
}

QString ArtworkPresenter::doubt() const {
    QStringList stones;
    for (const auto& row : m_rows)
        if (const auto* material = row.isFar && row.material ? m_session.material(*row.material) : nullptr)
            stones << tr("%1 for %2").arg(QString::fromStdString(material->name), colourWords(row.colour));
    if (stones.isEmpty()) return {};
    constexpr int kMaxNamed = 3;
    const auto more = static_cast<int>(stones.size()) - kMaxNamed;
    auto named = stones.mid(0, kMaxNamed).join(QStringLiteral(", "));
    if (more > 0) named = tr("%1 and %2 more").arg(named).arg(more);
    return tr("Check these: no stone of the size looks like the colour drawn: %1.").arg(named);
}

catalogue::Design ArtworkPresenter::applied(const catalogue::Design& design) const {
    auto after = design;
    after.stones = stoneCounts();
    after.width = width();
    after.height = height();
    if (isEstimateNote(design.note)) after.note.clear();
    // Templates cut for the earlier drawing do not fit another one.
    const bool sameHoles =
        after.stones == design.stones && after.width == design.width && after.height == design.height;
    after.templatesOnWall = design.templatesOnWall && sameHoles;
    return after;
}

QString ArtworkPresenter::whyNot() const {
    if (!m_file) return tr("No file has been counted.");
    if (asksScale()) return tr("Choose how the file is to be read first: it does not say how long its unit is.");
    for (std::size_t i = 0; i < m_counted.stones.size(); ++i)
        if (!materialOf(static_cast<int>(i))) {
            const auto& row = m_rows[static_cast<std::size_t>(rowOf(static_cast<int>(i)))];
            const auto size = row.size ? QString::fromStdString(publishedStoneSizes()[*row.size].name) : QString();
            return size.isEmpty()
                       ? tr("Some holes fit no stone size; choose a stone for them or leave them out.")
                       : tr("There is no %1 stone among the supplies; choose another or leave them out.").arg(size);
        }
    if (stonesUsed().value() == 0) return tr("Everything is left out; choose a stone for at least one colour.");
    return {};
}

std::optional<units::Money> ArtworkPresenter::priceEach(const catalogue::Design& design, units::Count pieces) const {
    catalogue::Order order;
    order.lines.push_back(catalogue::lineOf(design));
    auto& line = order.lines.front();
    line.quantity = pieces;
    const auto priced = pricing::priceOrder(order, m_session.prices({}), m_session.fits());
    if (!priced) return std::nullopt;
    return priced->lines.front().each;
}

QString ArtworkPresenter::freeName() const {
    return session::freeName(m_file ? QFileInfo(fileName()).completeBaseName() : tr("New design"), m_session.designs());
}

catalogue::DesignArtwork ArtworkPresenter::drawingFor(const base::Id& design, const QByteArray& thumbnail) const {
    catalogue::DesignArtwork artwork;
    artwork.design = design;
    artwork.fileName = m_file->name;
    artwork.format = m_file->drawing.format;
    artwork.file = m_file->bytes;
    artwork.thumbnail = thumbnail.toStdString();
    artwork.unit = units::Length::fromNanometres(std::max(1LL, std::llround(millimetresPerUnit() * 1e6)));
    artwork.scaleFrom = m_file->scales.empty() ? catalogue::ScaleOrigin::File : catalogue::ScaleOrigin::Proposed;
    artwork.unitName = m_file->scales.empty() ? m_file->drawing.unitName
                                              : m_file->scales[static_cast<std::size_t>(m_scale)].scale.name;
    artwork.holeAllowance = m_allowance;
    QJsonArray counts;
    for (const auto& row : m_rows)
        counts.append(QJsonObject{
            {QStringLiteral("colour"), QString::fromStdString(row.colour)},
            {QStringLiteral("size"),
             row.size ? QJsonValue(QString::fromStdString(publishedStoneSizes()[*row.size].name)) : QJsonValue()},
            {QStringLiteral("count"), static_cast<qint64>(row.count.value())}});
    artwork.counts = QJsonDocument(counts).toJson(QJsonDocument::Compact).toStdString();
    return artwork;
}

base::Result<base::Id> ArtworkPresenter::saveDesign(const catalogue::Design& design, const QByteArray& thumbnail) {
    return m_session.attempt([&](db::Book& book) -> base::Result<base::Id> {
        base::Id id = design.id;
        const auto kept = book.batch(base::say(db::Note::DrawingOf, design.name), [&]() -> base::Done {
            const auto saved = book.save(design);
            if (!saved) return base::fail(saved.error());
            id = *saved;
            if (auto done = book.save(drawingFor(id, thumbnail)); !done) return done;
            for (const auto& [key, material] : m_assigned.rows) {
                const auto rgb = parseColour(key.first);
                if (!rgb || !key.second || material.isNone() || !m_session.material(material)) continue;
                if (auto done = book.save(
                        catalogue::ColourMaterial{{}, *rgb, publishedStoneSizes()[*key.second].name, material});
                    !done)
                    return done;
            }
            return {};
        });
        if (!kept) return base::fail(kept.error());
        m_isUsed = true;
        return id;
    });
}

base::Result<base::Id> ArtworkPresenter::useForNew(const QString& name, const QByteArray& thumbnail) {
    catalogue::Design design;
    design.name = name.trimmed().toStdString();
    design.usualBase = firstBacking(m_session);
    return use(design, thumbnail);
}

base::Result<base::Id> ArtworkPresenter::useFor(const base::Id& id, const QByteArray& thumbnail) {
    const auto* design = m_session.design(id);
    if (!design)
        return words::fail(
            base::Code::NotFound, {},
            QT_TRANSLATE_NOOP("App", "This design is no longer in the book; use the file for a new one."));
    return use(*design, thumbnail);
}

base::Result<base::Id> ArtworkPresenter::use(const catalogue::Design& design, const QByteArray& thumbnail) {
    if (const auto problem = whyNot(); !problem.isEmpty())
        return words::fail(base::Code::Invalid, design.name, problem);
    return saveDesign(applied(design), thumbnail);
}

} // namespace sp::artwork

#include "moc_artwork_presenter.cpp"

// SPDX-License-Identifier: MIT
#include "db/stores/artwork_store.h"

#include "db/db_error.h"
#include "db/records/record.h"
#include "db/sqlite/digest.h"

namespace sp::db::stores {

using catalogue::ColourMaterial;
using records::ArtworkRecord;
using sqlite::Digest;

namespace {

const std::string kArtworkColumns = "file_name, format, file_digest, thumbnail_digest, unit_nm, scale_from, unit_name, "
                                    "hole_allowance_nm, counts";
const std::string kColourColumns = "rgb, stone_size, material_id";

ArtworkRecord takeArtwork(sqlite::Statement& row) {
    ArtworkRecord a;
    Digest file;
    std::optional<Digest> thumbnail;
    row >> a.design >> a.fileName >> a.format >> file >> thumbnail >> a.unit >> a.scaleFrom >> a.unitName >>
        a.holeAllowance >> a.counts;
    a.file = file.hex;
    if (thumbnail) a.thumbnail = thumbnail->hex;
    return a;
}

ColourMaterial takeColour(sqlite::Statement& row) {
    ColourMaterial c;
    row >> c.id >> c.rgb >> c.stoneSize >> c.material;
    return c;
}

} // namespace

std::vector<ArtworkRecord> ArtworkStore::all() {
    std::vector<ArtworkRecord> artworks;
    auto rows = m_db.query("SELECT design_id, " + kArtworkColumns +
                           " FROM design_artwork WHERE deleted_at IS NULL AND design_id IN "
                           "(SELECT id FROM design WHERE deleted_at IS NULL) ORDER BY design_id");
    while (rows.step()) artworks.push_back(takeArtwork(rows));
    for (const auto& artwork : artworks) throwDamaged(m_db, catalogue::fields::check(artwork));
    return artworks;
}

std::optional<ArtworkRecord> ArtworkStore::find(const base::Id& design) {
    auto row = m_db.query("SELECT design_id, " + kArtworkColumns +
                              " FROM design_artwork WHERE design_id = ? AND deleted_at IS NULL",
                          design);
    if (!row.step()) return std::nullopt;
    ArtworkRecord artwork = takeArtwork(row);
    throwDamaged(m_db, catalogue::fields::check(artwork));
    return artwork;
}

void ArtworkStore::write(const ArtworkRecord& a, const Stamp& stamp) {
    static const std::string sql = upsert("design_artwork", "design_id", kArtworkColumns);
    const auto thumbnail = a.thumbnail.empty() ? std::nullopt : std::optional(Digest{a.thumbnail});
    m_db.run(sql, a.design, a.fileName, a.format, Digest{a.file}, thumbnail, a.unit, a.scaleFrom, a.unitName,
             a.holeAllowance, a.counts, stamp.seq);
}

void ArtworkStore::remove(const base::Id& design, const Stamp& stamp) {
    markRemoved(m_db, "design_artwork", design, stamp.seq, stamp.at, "design_id");
}

std::vector<ArtworkStore::Pictured> ArtworkStore::inJobsOf(const base::Id& customer, std::int64_t limit) {
    std::vector<Pictured> pictured;
    auto rows = m_db.query(
        "SELECT d.id, d.name, a.thumbnail_digest FROM job j "
        "JOIN job_line l ON l.job_id = j.id AND l.revision = j.revision "
        "JOIN design d ON d.id = l.design_id AND d.deleted_at IS NULL "
        "JOIN design_artwork a ON a.design_id = d.id AND a.deleted_at IS NULL AND a.thumbnail_digest IS NOT NULL "
        "WHERE j.deleted_at IS NULL "
        "AND (j.customer_id = ?1 OR j.customer_id IN (SELECT id FROM customer WHERE merged_into_id = ?1)) "
        "GROUP BY d.id ORDER BY max(j.started_seq) DESC, d.name, d.id LIMIT ?2",
        customer, limit);
    while (rows.step()) {
        auto& one = pictured.emplace_back();
        Digest thumbnail;
        rows >> one.design >> one.name >> thumbnail;
        one.thumbnail = thumbnail.hex;
    }
    return pictured;
}

std::string ArtworkStore::keepFile(std::string_view bytes) {
    const auto digest = sqlite::digestOf(bytes);
    auto row =
        m_db.query("INSERT INTO artwork_file (digest, bytes) VALUES (?, ?) ON CONFLICT (digest) DO NOTHING", digest);
    row.bindBytes(bytes);
    while (row.step()) {}
    return digest.hex;
}

void ArtworkStore::throwFileError() const {
    throwError(Fault::DrawingDamaged, m_db.file().string(), m_db.file().filename().string());
}

std::string ArtworkStore::file(const std::string& digest) {
    if (digest.empty()) return {};
    auto row = m_db.query("SELECT bytes FROM artwork_file WHERE digest = ?", Digest{digest});
    std::string bytes;
    if (row.step()) bytes = row.takeBytes();
    if (sqlite::digestOf(bytes).hex != digest) throwFileError();
    return bytes;
}

void ArtworkStore::expectFiles() {
    auto rows = m_db.query("SELECT digest, bytes FROM artwork_file ORDER BY digest");
    while (rows.step()) {
        Digest digest;
        rows >> digest;
        if (sqlite::digestOf(rows.takeBytes()) != digest) throwFileError();
    }
}

std::vector<ColourMaterial> ColourStore::all() {
    std::vector<ColourMaterial> colours;
    auto rows = m_db.query("SELECT id, " + kColourColumns +
                           " FROM colour_material WHERE deleted_at IS NULL AND material_id IN "
                           "(SELECT id FROM material WHERE deleted_at IS NULL) ORDER BY rgb, stone_size, id");
    while (rows.step()) colours.push_back(takeColour(rows));
    for (const auto& colour : colours) throwDamaged(m_db, catalogue::fields::check(colour));
    return colours;
}

std::optional<ColourMaterial> ColourStore::one(sqlite::Statement row) {
    if (!row.step()) return std::nullopt;
    ColourMaterial colour = takeColour(row);
    throwDamaged(m_db, catalogue::fields::check(colour));
    return colour;
}

std::optional<ColourMaterial> ColourStore::find(const base::Id& id) {
    return one(
        m_db.query("SELECT id, " + kColourColumns + " FROM colour_material WHERE id = ? AND deleted_at IS NULL", id));
}

std::optional<ColourMaterial> ColourStore::find(std::uint32_t rgb, const std::string& stoneSize) {
    return one(m_db.query("SELECT id, " + kColourColumns +
                              " FROM colour_material WHERE rgb = ? AND stone_size = ? AND deleted_at IS NULL",
                          rgb, stoneSize));
}

void ColourStore::write(const ColourMaterial& c, const Stamp& stamp) {
    static const std::string sql = upsert("colour_material", "id", kColourColumns);
    m_db.run(sql, c.id, c.rgb, c.stoneSize, c.material, stamp.seq);
}

void ColourStore::remove(const base::Id& id, const Stamp& stamp) {
    markRemoved(m_db, "colour_material", id, stamp.seq, stamp.at);
}

} // namespace sp::db::stores

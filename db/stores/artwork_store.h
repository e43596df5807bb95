// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/design_artwork.h"
#include "db/stores/columns.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sp::db::stores {

/// The drawings of designs, keyed by the design; their bytes are kept once by digest and never changed. Drawings of a
/// removed design are left out and come back with it. Throws DbError.
class ArtworkStore {
  public:
    explicit ArtworkStore(sqlite::Connection& db)
        : m_db(db) {}

    std::vector<records::ArtworkRecord> all();
    std::optional<records::ArtworkRecord> find(const base::Id& design);
    void write(const records::ArtworkRecord& artwork, const Stamp& stamp);
    void remove(const base::Id& design, const Stamp& stamp);

    /// The designs with a picture in the jobs of a customer, the entries merged into it too, the newest job's first.
    struct Pictured {
        base::Id design;
        std::string name;
        std::string thumbnail; ///< digest
    };
    std::vector<Pictured> inJobsOf(const base::Id& customer, std::int64_t limit);

    /// Keeps these bytes; returns their digest.
    std::string keepFile(std::string_view bytes);
    /// The bytes of that digest; nothing for an empty one. Throws Damaged when they do not match it.
    std::string file(const std::string& digest);
    /// Throws Damaged when a file does not match its digest.
    void expectFiles();

  private:
    [[noreturn]] void throwFileError() const;

    sqlite::Connection& m_db;
};

/// The stones chosen for colours. Those of a removed material are left out of `all` and come back with it.
class ColourStore {
  public:
    explicit ColourStore(sqlite::Connection& db)
        : m_db(db) {}

    std::vector<catalogue::ColourMaterial> all();
    std::optional<catalogue::ColourMaterial> find(const base::Id& id);
    std::optional<catalogue::ColourMaterial> find(std::uint32_t rgb, const std::string& stoneSize);
    void write(const catalogue::ColourMaterial& colour, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);

  private:
    std::optional<catalogue::ColourMaterial> one(sqlite::Statement row);

    sqlite::Connection& m_db;
};

} // namespace sp::db::stores

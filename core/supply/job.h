// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/kit.h"
#include "core/catalogue/material.h"
#include "core/catalogue/order.h"
#include "core/layout/fit_memo.h"
#include "core/needs/material_need.h"
#include "core/needs/spares.h"
#include "core/supply/cost_curve.h"
#include "core/supply/purchase.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace sp::supply {

/// What people call what has no name in the book; the words come from whoever knows the reader's language.
struct JobWords {
    std::string untitled; ///< a line without a title
    /// Among the materials, the templates of a line that come ready cut. By itself a key, and no words.
    std::function<std::string(const std::string& title)> readyCut = [](const std::string& title) {
        return "templates:" + title;
    };
};

/// What a shop can buy and what it has: a copy out of the book that can be worked on away from it.
struct Supplies {
    std::vector<catalogue::Material> materials;
    std::vector<catalogue::Supplier> suppliers;
    std::vector<catalogue::Pack> packs;
    std::vector<catalogue::Kit> kits;
    std::unordered_map<base::Id, std::int64_t> shelf; ///< stones, whole sheets, whole rolls, pieces
    base::Id usualTape;                               ///< none: no tape is reckoned with
    base::Id usualTemplate;                           ///< likewise
    std::vector<catalogue::PackingUse> packing;       ///< of the shop
    needs::SpareRule spares;                          ///< without one none are planned
    bool cutsTemplates = true;                        ///< false: templates come ready cut with a kit or not at all
    JobWords words;
};

/// How one material serves a line.
struct JobTake : needs::MaterialNeed {
    std::string material; ///< its name; of templates ready cut the words for them
    catalogue::MaterialKind of = catalogue::MaterialKind::Stone;

    friend bool operator==(const JobTake&, const JobTake&) = default;
};

/// A line of the job: a design, and how many of it.
struct JobLine {
    std::string title;
    std::int64_t pieces = 1; ///< handed over
    std::vector<JobTake> takes;
    needs::LineSpares spares = {}; ///< made besides

    /// The pieces that take of it: a spare is not packed.
    std::int64_t piecesTaking(const JobTake& take) const {
        return take.of == catalogue::MaterialKind::Packing ? pieces : pieces + spares.pieces;
    }

    friend bool operator==(const JobLine&, const JobLine&) = default;
};

/// What stands behind a pack of the planner, to be shown.
struct Offer {
    std::string id;       ///< as in Pack::id
    std::string material; ///< of a bulk pack; empty for a kit
    std::string name;     ///< "bag of 10 gross", the kit's name
    bool withTemplates = false;
    std::optional<units::Date> pricedOn;
};

/// A bulk pack that says no price: 0 that is not meant. It is not offered.
struct UnpricedPack {
    base::Id of; ///< the material
    std::string material;
    std::string name;

    friend bool operator==(const UnpricedPack&, const UnpricedPack&) = default;
};

/// A job to buy for: what it takes, and every pack that gives some of that. Materials and suppliers go by their
/// names, which are unique in a book.
struct Job {
    std::vector<JobLine> lines;
    std::vector<MaterialCount> shelf;
    std::vector<Pack> kits;    ///< those that give something the job takes; with templates cut, an own pack
    std::vector<Pack> bulk;    ///< all packs of one material that the job takes
    std::vector<Pack> besides; ///< those of `bulk` with blanks and packing, bought along with kits too
    std::vector<Supplier> suppliers;
    std::vector<UnpricedPack> unpriced; ///< of what the job takes
    std::vector<Offer> offers;          ///< of kits and bulk, by rising id
    bool hasKits = false;               ///< the shop knows of any kit at all
    needs::SpareRule spares;

    std::int64_t pieces() const; ///< handed over
    const Offer* offer(const std::string& id) const;
};

/// Puts together what lines of an order (at least one) take of the supplies. Sheets are counted line by line as
/// layout::fitSheet counts them, a roll as one long sheet; lines with the same design share one set of templates. A
/// kit's stones are what is left after its short count, rounded down.
/// Errors: Missing for no lines or a line without stones; NotFound for a material that is gone; OutOfRange for pieces,
/// stones or a loss outside what needs allow; TooLarge for a piece that does not fit its sheet.
base::Result<Job> jobOf(const std::vector<catalogue::OrderLine>& lines, const Supplies& supplies,
                        layout::FitMemo& fits);

/// A line as if so many of a design were ordered.
catalogue::OrderLine lineOf(const catalogue::Design& design, const std::vector<catalogue::Material>& materials,
                            std::int64_t pieces);

/// The job with so many pieces of its one line instead, 1 or more.
void setPieces(Job& job, std::int64_t pieces);

/// What the whole job takes, each material once, rounded up once at the total.
std::vector<MaterialCount> needsOf(const Job& job);

/// The job's ways for `assembled`, valid for any number of pieces of its one line.
BuyingStrategies strategiesOf(const Job& job);

} // namespace sp::supply

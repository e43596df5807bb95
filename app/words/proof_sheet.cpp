// SPDX-License-Identifier: MIT
#include "app/words/proof_sheet.h"

#include "app/words/quote_sheet.h"
#include "app/words/translations.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <utility>

namespace sp::words {

namespace {

quoting::DesignLook lookOf(const catalogue::Design& design, const catalogue::DesignArtwork& drawing,
                           const std::vector<catalogue::ColourMaterial>& chosen, const catalogue::PriceBook& prices) {
    if (isEstimated(drawing)) return {};
    quoting::DesignLook look;
    std::vector<catalogue::Material> materials;
    for (const auto& stone : design.stones)
        if (const auto* material = prices.find(stone.material)) {
            materials.push_back(material->material);
            look.materials.push_back(stone.material);
        }
    look.stones = artwork::laidStones(drawing, materials, chosen);
    return look;
}

} // namespace

bool isEstimated(const catalogue::DesignArtwork& drawing) {
    const auto counts = QJsonDocument::fromJson(QByteArray::fromStdString(drawing.counts)).array();
    return counts.first().toObject().value(QLatin1String(kEstimateKey.data())).toBool();
}

db::QuoteResult withProofs(db::QuoteResult result, db::Book& book, const catalogue::Order& order,
                           const catalogue::PriceBook& prices, const quoting::SheetWords& words) {
    const auto designs = book.designs();
    const auto chosen = book.colourMaterials();
    if (!designs || !chosen) return result;
    const auto look = [&](const base::Id& id) {
        const auto design = std::ranges::find(*designs, id, &catalogue::Design::id);
        const auto drawing = book.artwork(id);
        const bool isThere = design != designs->end() && drawing && *drawing;
        return isThere ? lookOf(*design, **drawing, *chosen, prices) : quoting::DesignLook{};
    };
    const LanguageScope language(paperLanguages(prices.shop, prices.customer));
    auto proofs = quoting::proofsOf(order, prices, look, words);
    result.sheetFor = [sheetFor = std::move(result.sheetFor), proofs = std::move(proofs)](const std::string& number) {
        auto sheet = sheetFor(number);
        sheet.proofs = proofs;
        return sheet;
    };
    return result;
}

} // namespace sp::words

// SPDX-License-Identifier: MIT
#include "db/book/action.h"
#include "db/records/record.h"

#include <fmt/format.h>

namespace sp::db {

using base::Done;
using base::Id;
using base::Result;
using catalogue::ColourMaterial;
using catalogue::DesignArtwork;
using catalogue::PriceListColumns;
using records::ArtworkRecord;

namespace {

void throwIfFilesUnfit(const DesignArtwork& artwork) {
    const auto& name = artwork.fileName;
    if (artwork.file.empty()) throwError(Fault::DrawingEmpty, name, name);
    if (artwork.file.size() > catalogue::kMaxArtwork)
        throwError(Fault::DrawingTooLarge, name, name, catalogue::kMaxArtwork / 1'000'000);
    if (artwork.thumbnail.size() > catalogue::kMaxThumbnail)
        throwError(Fault::PictureTooLarge, name, name, catalogue::kMaxThumbnail / 1'000'000);
}

template<class T>
std::string writtenBefore(const std::optional<T>& before) {
    return before ? records::write(*before) : std::string();
}

} // namespace

Result<std::optional<DesignArtwork>> Book::artwork(const Id& design) {
    return m_in->read([&]() -> std::optional<DesignArtwork> {
        if (!m_in->stores.designs.find(design)) return std::nullopt;
        const auto kept = m_in->stores.artworks.find(design);
        if (!kept) return std::nullopt;
        return DesignArtwork{kept->design,
                             kept->fileName,
                             kept->format,
                             m_in->stores.artworks.file(kept->file),
                             m_in->stores.artworks.file(kept->thumbnail),
                             kept->unit,
                             kept->scaleFrom,
                             kept->unitName,
                             kept->holeAllowance,
                             kept->counts};
    });
}

Result<std::vector<DesignPicture>> Book::picturesFor(const Id& customer, std::int64_t limit) {
    return m_in->read([&] {
        std::vector<DesignPicture> pictures;
        for (auto& one : m_in->stores.artworks.inJobsOf(customer, limit))
            pictures.push_back({one.design, std::move(one.name), m_in->stores.artworks.file(one.thumbnail)});
        return pictures;
    });
}

Done Book::save(const DesignArtwork& artwork) {
    return m_in->write([&] {
        const auto design = m_in->stores.designs.find(artwork.design);
        if (!design) throwError(Fault::DesignOfDrawingGone, artwork.fileName, artwork.fileName);
        throwIfFilesUnfit(artwork);
        const ArtworkRecord now{artwork.design,
                                artwork.fileName,
                                artwork.format,
                                m_in->stores.artworks.keepFile(artwork.file),
                                artwork.thumbnail.empty() ? std::string()
                                                          : m_in->stores.artworks.keepFile(artwork.thumbnail),
                                artwork.unit,
                                artwork.scaleFrom,
                                artwork.unitName,
                                artwork.holeAllowance,
                                artwork.counts};
        valueOrThrow(catalogue::fields::check(now));
        const auto before = m_in->stores.artworks.find(now.design);
        if (before == now) return;
        m_in->stores.artworks.write(now,
                                    m_in->record(before ? "change" : "make", base::say(Note::DrawingOf, design->name),
                                                 {"artwork", now.design, writtenBefore(before), records::write(now)}));
    });
}

Done Book::removeArtwork(const Id& design) {
    return m_in->write([&] {
        const auto of = m_in->stores.designs.find(design);
        const auto before = m_in->stores.artworks.find(design);
        if (!of || !before) throwError(Fault::NoDrawing, design.text());
        m_in->stores.artworks.remove(design, m_in->record("remove", base::say(Note::RemovingDrawingOf, of->name),
                                                          {"artwork", design, records::write(*before), {}}));
    });
}

Result<std::vector<ColourMaterial>> Book::colourMaterials() {
    return m_in->read([&] { return m_in->stores.colours.all(); });
}

Done Book::save(const ColourMaterial& colour) {
    return m_in->write([&] {
        const auto before = m_in->stores.colours.find(colour.rgb, colour.stoneSize);
        ColourMaterial now = colour;
        now.id = before ? before->id : m_in->newId();
        valueOrThrow(catalogue::fields::check(now));
        if (before == now) return;
        if (!m_in->stores.materials.find(now.material)) throwError(Fault::StoneGone, now.material.text());
        m_in->stores.colours.write(now, m_in->record(before ? "change" : "make",
                                                     base::say(Note::StoneForColour, fmt::format("{:06x}", now.rgb)),
                                                     {"colour", now.id, writtenBefore(before), records::write(now)}));
    });
}

Result<std::vector<PriceListColumns>> Book::priceListColumns() {
    return m_in->read([&] { return m_in->stores.priceLists.all(); });
}

Done Book::save(const PriceListColumns& list) {
    return m_in->write([&] {
        const auto supplier = m_in->stores.suppliers.find(list.supplier);
        if (!supplier) throwError(Fault::SupplierGone, list.supplier.text());
        valueOrThrow(catalogue::fields::check(list));
        const auto before = m_in->stores.priceLists.find(list.supplier);
        if (before == list) return;
        m_in->stores.priceLists.write(
            list, m_in->record(before ? "change" : "make", base::say(Note::ColumnsOfListOf, supplier->name),
                               {"columns", list.supplier, writtenBefore(before), records::write(list)}));
    });
}

} // namespace sp::db

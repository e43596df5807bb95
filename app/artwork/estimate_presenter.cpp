// SPDX-License-Identifier: MIT
#include "app/artwork/estimate_presenter.h"

#include "app/artwork/made_design.h"
#include "app/session/free_name.h"
#include "app/words/words.h"
#include "core/artwork/estimate_by_colour.h"
#include "core/artwork/nearest_stone.h"
#include "core/catalogue/stone_size.h"

#include <QFileInfo>

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace sp::artwork {

namespace {

/// Between the edges of two stones: the hole is a little larger than its stone, and what stands between two holes must
/// not tear (common practice, no source).
constexpr std::int64_t kWallNm = 400'000;
constexpr std::int64_t kInch64Nm = units::kNanometresPerInch / 64;
constexpr std::int64_t kTenthMmNm = 100'000;
constexpr qsizetype kMaxQuotedLength = 30;
constexpr qsizetype kMaxProposedNameLength = 60;

/// Lettering as a sentence names it.
QString quoted(const QString& text) {
    auto words = text.simplified();
    if (words.size() > kMaxQuotedLength) words = words.left(kMaxQuotedLength).trimmed() + QChar(0x2026);
    return QStringLiteral("“%1”").arg(words);
}

} // namespace

EstimatePresenter::EstimatePresenter(session::BookSession& session, OutlineMaker outlines, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_outlines(std::move(outlines)) {}

void EstimatePresenter::readFile(const QString& path) {
    const auto name = QFileInfo(path).fileName().toStdString();
    m_reader.ask([path = path.toStdString(), name] { return readShapeFile(path, name); },
                 [this](base::Result<std::shared_ptr<const ShapeFile>> file) {
                     if (!file) {
                         Q_EMIT fileRefused(words::sentence(file.error()));
                         return;
                     }
                     m_file = std::move(*file);
                     m_colours = coloursOf(m_file->drawing);
                     Q_EMIT fileRead();
                 });
}

std::optional<units::Length> EstimatePresenter::drawnHeight() const {
    if (!m_file || !m_file->drawing.millimetresPerUnit) return std::nullopt;
    const double millimetres = m_file->box.height() * *m_file->drawing.millimetresPerUnit;
    if (millimetres > units::kMaxLength.millimetres()) return std::nullopt;
    return units::Length::fromNanometres(std::llround(millimetres * 1e6));
}

std::optional<units::Length> EstimatePresenter::diameterOf(const base::Id& stone) {
    const auto* material = m_session.material(stone);
    if (!material || material->kind != catalogue::MaterialKind::Stone) return std::nullopt;
    const auto size = catalogue::stoneSizeNamed(material->stone.size);
    return size ? std::optional(size->middle()) : std::nullopt;
}

std::optional<units::Length> EstimatePresenter::usualPitch(const base::Id& stone) {
    const auto diameter = diameterOf(stone);
    if (!diameter) return std::nullopt;
    // To the nearest mark of the shop's own rule.
    const auto step = m_session.shop().lengthUnit == units::LengthUnit::Inch ? kInch64Nm : kTenthMmNm;
    return units::Length::fromNanometres((diameter->nanometres() + kWallNm + step / 2) / step * step);
}

base::Id EstimatePresenter::usualStone() {
    std::unordered_map<base::Id, int> uses;
    for (const auto& design : m_session.designs())
        for (const auto& stone : design.stones) ++uses[stone.material];
    const catalogue::Material* best = nullptr;
    for (const auto& material : m_session.materials())
        if (material.kind == catalogue::MaterialKind::Stone && (!best || uses[material.id] > uses[best->id]))
            best = &material;
    return best ? best->id : base::Id{};
}

base::Id EstimatePresenter::likelyStone(const std::string& colour) {
    if (colour == kWhite && m_colours.size() > 1) return {};
    const auto usual = usualStone();
    const auto* material = m_session.material(usual);
    if (!material) return usual;
    return nearestStone(colour, material->stone.size, m_session.materials()).value_or(usual);
}

std::optional<Tally> EstimatePresenter::tallyOf(const std::string& colour) const {
    if (!m_answer) return std::nullopt;
    for (const auto& part : m_answer->parts)
        if (part.colour == colour) return part.estimate;
    return std::nullopt;
}

std::optional<QString> EstimatePresenter::missing(const EstimateInputs& inputs) {
    if (usualStone().isNone()) return tr("There is no stone among the supplies yet; add one at Supplies first.");
    if (inputs.isFile && !m_file) return tr("Choose a file with the shape to set with stones.");
    if (!inputs.isFile && inputs.text.trimmed().isEmpty()) return tr("Type what is to be spelled in stones.");
    if (!inputs.isFile && inputs.font.isEmpty()) return tr("Choose a font.");
    if (inputs.isFile && !inputs.height && !drawnHeight())
        return tr("%1 does not say how large it is; type how high it shall be.")
            .arg(QString::fromStdString(m_file->name));
    if (inputs.colours.empty() && !diameterOf(inputs.stone)) return tr("Choose a stone.");
    for (const auto& one : inputs.colours)
        if (!one.stone.isNone() && !diameterOf(one.stone))
            return tr("Choose a stone for each colour, or leave it out.");
    return std::nullopt;
}

double EstimatePresenter::millimetresPerUnit(const EstimateInputs& inputs) const {
    if (inputs.height) return inputs.height->millimetres() / m_file->box.height();
    return *m_file->drawing.millimetresPerUnit;
}

EstimateRequest EstimatePresenter::requestOf(const EstimateInputs& inputs) {
    EstimateRequest request{
        *diameterOf(inputs.stone), inputs.pitch.value_or(*usualPitch(inputs.stone)), inputs.edge, inputs.style, {}};
    const bool isOther = inputs.style == StoneStyle::Both && inputs.outlineStone != inputs.stone;
    const auto outline = isOther ? diameterOf(inputs.outlineStone) : std::nullopt;
    if (outline) request.outline = StoneSetting{*outline, *usualPitch(inputs.outlineStone)};
    return request;
}

void EstimatePresenter::ask(const EstimateInputs& inputs) {
    if (const auto sentence = missing(inputs)) {
        m_inputs = inputs;
        blank(*sentence);
        return;
    }
    m_inputs = inputs;
    m_answer.reset();
    m_problem.clear();
    m_subject.clear();
    m_waiting = false;
    if (!inputs.colours.empty()) return askByColour(inputs);
    const auto request = requestOf(inputs);
    Part asked{{}, {}, inputs.stone, request.outline ? inputs.outlineStone : base::Id{}};
    const auto answerOf = [request, asked](std::vector<Shape> shapes, std::vector<Line> lines,
                                           const std::string& name) -> base::Result<Answer> {
        auto estimate = estimateStones(shapes, lines, request, name);
        if (!estimate) return base::fail(estimate.error());
        auto part = asked;
        part.estimate = std::move(*estimate);
        std::vector<Part> parts{std::move(part)};
        auto whole = wholeOf(parts);
        return Answer{std::move(whole), std::move(parts), std::move(shapes), std::move(lines)};
    };
    const auto taken = [this](base::Result<Answer> answer) { take(std::move(answer)); };
    if (inputs.isFile) {
        m_estimator.ask(
            [file = m_file, scale = millimetresPerUnit(inputs), answerOf] {
                return answerOf(shapesOf(file->drawing, scale), linesOf(file->drawing, scale), file->name);
            },
            taken);
    } else {
        const LetteringOrder order{inputs.text.toStdString(), inputs.font.toStdString(),
                                   inputs.height.value_or(units::Length{})};
        m_estimator.ask(
            [outlines = m_outlines, order, name = quoted(inputs.text).toStdString(),
             answerOf]() -> base::Result<Answer> {
                auto shapes = outlines(order);
                if (!shapes) return base::fail(shapes.error());
                auto answer = answerOf(std::move(*shapes), {}, name);
                // What core says there is about files.
                if (!answer && answer.error().code == base::Code::TooLarge)
                    return words::fail(base::Code::TooLarge, name,
                                       tr("%1 takes more than is estimated at once; estimate a part of it.")
                                           .arg(QString::fromStdString(name)));
                return answer;
            },
            taken);
    }
    Q_EMIT changed();
}

void EstimatePresenter::askByColour(const EstimateInputs& inputs) {
    std::vector<ColourRequest> requests;
    for (const auto& one : inputs.colours) {
        ColourRequest request{one.colour, std::nullopt};
        if (!one.stone.isNone())
            request.stones =
                EstimateRequest{*diameterOf(one.stone), *usualPitch(one.stone), inputs.edge, inputs.style, {}};
        requests.push_back(std::move(request));
    }
    m_estimator.ask(
        [file = m_file, scale = millimetresPerUnit(inputs), requests,
         colours = inputs.colours]() -> base::Result<Answer> {
            auto estimates = estimateByColour(file->drawing, scale, requests, true, file->name);
            if (!estimates) return base::fail(estimates.error());
            std::vector<Part> parts;
            for (auto& one : *estimates) {
                const auto asked = std::ranges::find(colours, one.colour, &ColourStone::colour);
                if (one.isFree || asked == colours.end()) continue;
                parts.push_back({one.colour, std::move(one.estimate), asked->stone, {}});
            }
            auto whole = wholeOf(parts);
            return Answer{std::move(whole), std::move(parts), shapesOf(file->drawing, scale),
                          linesOf(file->drawing, scale)};
        },
        [this](base::Result<Answer> answer) { take(std::move(answer)); });
    Q_EMIT changed();
}

Estimate EstimatePresenter::wholeOf(const std::vector<Part>& parts) {
    Estimate whole;
    const auto addOnce = [](std::vector<base::Message>& to, const base::Message& one) {
        if (std::ranges::find(to, one) == to.end()) to.push_back(one);
    };
    for (const auto& part : parts) {
        const auto& estimate = part.estimate;
        whole.add(estimate);
        whole.outline.add(estimate.outline);
        if (estimate.box.isEmpty()) continue; // nothing of the colour is to be seen
        whole.box.add(estimate.box);
        for (const auto& reason : estimate.range) addOnce(whole.range, reason);
        if (!whole.warning) whole.warning = estimate.warning;
        if (parts.size() == 1) whole.how = estimate.how; // of several there are as many
    }
    return whole;
}

void EstimatePresenter::blank(const QString& sentence) {
    m_estimator.drop();
    m_answer.reset();
    m_problem = sentence;
    m_subject.clear();
    m_waiting = true;
    Q_EMIT changed();
}

void EstimatePresenter::take(base::Result<Answer> answer) {
    if (answer) {
        m_answer = std::move(*answer);
    } else {
        m_problem = words::sentence(answer.error());
        m_subject = answer.error().subject;
    }
    Q_EMIT changed();
}

void EstimatePresenter::addStones(Picture& picture, const Part& part) {
    const auto* stone = m_session.material(part.stone);
    const auto diameter = diameterOf(part.stone);
    if (!stone || !diameter) return; // gone since
    const auto* outline = m_session.material(part.outlineStone);
    const auto outlineDiameter = diameterOf(part.outlineStone);
    auto left = outline && outlineDiameter ? part.estimate.outline.count.value() : 0;
    for (const Point centre : part.estimate.centres) {
        if (left-- > 0)
            picture.stones.push_back({centre, outlineDiameter->millimetres(), outline->stone.rgb});
        else
            picture.stones.push_back({centre, diameter->millimetres(), stone->stone.rgb});
    }
}

Picture EstimatePresenter::picture() {
    Picture picture;
    if (!m_answer) return picture;
    for (const auto& part : m_answer->parts) addStones(picture, part);
    for (const auto& open : m_answer->lines) {
        Picture::Line line{open.points, false, Classification::Large, {}, true};
        for (const Point corner : open.points) line.box.add(corner);
        picture.lines.push_back(std::move(line));
    }
    for (const auto& shape : m_answer->shapes)
        for (const auto& ring : shape.rings) {
            Picture::Line line{ring, true, Classification::Large, {}, true};
            for (const Point corner : ring) line.box.add(corner);
            picture.lines.push_back(std::move(line));
        }
    return picture;
}

std::vector<catalogue::StoneCount> EstimatePresenter::stonesOfAnswer() const {
    std::vector<catalogue::StoneCount> stones;
    const auto add = [&](const base::Id& material, units::Count count) {
        if (count.value() == 0) return; // too narrow for more than an outline, or for any
        const auto same = std::ranges::find(stones, material, &catalogue::StoneCount::material);
        if (same == stones.end())
            stones.push_back({material, count});
        else
            same->count += count;
    };
    for (const auto& part : m_answer->parts) {
        add(part.stone, part.estimate.filling().count);
        add(part.outlineStone, part.estimate.outline.count);
    }
    return stones;
}

units::Length EstimatePresenter::width() {
    return roundedUp(m_answer ? m_answer->whole.box.width() : 0, m_session.shop().lengthUnit);
}

units::Length EstimatePresenter::height() {
    return roundedUp(m_answer ? m_answer->whole.box.height() : 0, m_session.shop().lengthUnit);
}

QString EstimatePresenter::freeName() {
    auto wanted = m_inputs.isFile && m_file ? QFileInfo(QString::fromStdString(m_file->name)).completeBaseName()
                                            : m_inputs.text.simplified();
    wanted = wanted.left(kMaxProposedNameLength).trimmed();
    return wanted.isEmpty() ? QString() : session::freeName(wanted, m_session.designs());
}

catalogue::DesignArtwork EstimatePresenter::drawingFor(const base::Id& design, const QByteArray& thumbnail) {
    catalogue::DesignArtwork artwork;
    artwork.design = design;
    artwork.thumbnail = thumbnail.toStdString();
    std::vector<SizedTally> tallies;
    for (const auto& part : m_answer->parts)
        tallies.push_back({part.estimate, m_session.material(part.stone)->stone.size});
    artwork.counts = estimatedCounts(tallies);
    if (!m_inputs.isFile) {
        artwork.fileName = tr("lettering in %1.svg").arg(m_inputs.font).toStdString();
        artwork.file = svgOf(m_answer->shapes);
        artwork.unit = units::Length::fromNanometres(units::kNanometresPerMillimetre);
        artwork.unitName = "mm";
        return artwork;
    }
    artwork.fileName = m_file->name;
    artwork.format = m_file->drawing.format;
    artwork.file = m_file->bytes;
    const double unitNm = millimetresPerUnit(m_inputs) * 1e6;
    artwork.unit = units::Length::fromNanometres(
        std::llround(std::clamp(unitNm, 1.0, static_cast<double>(units::kMaxLength.nanometres()))));
    if (m_inputs.height)
        artwork.scaleFrom = catalogue::ScaleOrigin::Typed;
    else
        artwork.unitName = m_file->drawing.unitName;
    return artwork;
}

base::Result<base::Id> EstimatePresenter::makeDesign(const QString& name, const QByteArray& thumbnail) {
    if (!m_answer)
        return words::fail(
            base::Code::Missing, "estimate",
            (m_problem.isEmpty() ? tr("The stones are still being set; try again in a moment.") : m_problem));
    const auto& estimate = m_answer->whole;
    catalogue::Design design;
    design.name = name.trimmed().toStdString();
    design.width = width();
    design.height = height();
    design.stones = stonesOfAnswer();
    design.usualBase = firstBacking(m_session);
    design.note =
        estimateNote(QString::number(estimate.least.value()), QString::number(estimate.most.value())).toStdString();
    return m_session.attempt([&](db::Book& book) -> base::Result<base::Id> {
        base::Id id;
        const auto kept =
            book.batch(words::say(QT_TRANSLATE_NOOP("App", "estimate of %1"), design.name), [&]() -> base::Done {
                const auto saved = book.save(design);
                if (!saved) return base::fail(saved.error());
                id = *saved;
                return book.save(drawingFor(id, thumbnail));
            });
        if (!kept) return base::fail(kept.error());
        return id;
    });
}

} // namespace sp::artwork

#include "moc_estimate_presenter.cpp"

// SPDX-License-Identifier: MIT
#include "app/paper/plan_shape.h"

#include "core/quoting/letters.h"

#include "app/words/words.h"

#include <algorithm>

namespace sp::paper {

namespace {

bool isRoll(const planning::CutPlan& plan) { return plan.list.material.sheet.form == catalogue::SheetForm::Roll; }

layout::Sheet sheetOf(const planning::CutPlan& plan) {
    const auto& traits = plan.list.material.sheet;
    return {traits.width, isRoll(plan) ? plan.length : traits.height};
}

/// The sheet is drawn with its height across.
bool isLaid(const planning::CutPlan& plan) {
    const auto size = sheetOf(plan);
    return size.height > size.width;
}

/// A rectangle of the plan, whose y goes up, as it is drawn.
DrawnPlace drawn(const planning::CutPlan& plan, const layout::Position& at, const layout::Piece& piece) {
    const auto sheet = sheetOf(plan);
    DrawnPlace place;
    place.size = at.turned ? layout::Piece{piece.height, piece.width} : piece;
    place.left = at.x;
    auto up = at.y;
    auto high = sheet.height;
    if (isLaid(plan)) {
        std::swap(place.size.width, place.size.height);
        std::swap(place.left, up);
        high = sheet.width;
    }
    place.top = high - up - place.size.height;
    return place;
}

std::int64_t stepOf(units::LengthUnit unit) {
    return unit == units::LengthUnit::Inch ? units::Length::fromInch64ths(1).nanometres() : 100'000;
}

units::Length roundedUp(units::Length length, units::LengthUnit unit) {
    const auto step = stepOf(unit);
    return units::Length::fromNanometres((length.nanometres() + step - 1) / step * step);
}

units::Length roundedDown(units::Length length, units::LengthUnit unit) {
    const auto step = stepOf(unit);
    return units::Length::fromNanometres(length.nanometres() / step * step);
}

} // namespace

QSizeF planSize(const planning::CutPlan& plan) {
    const auto sheet = sheetOf(plan);
    const double wide = sheet.width.millimetres();
    const double high = sheet.height.millimetres();
    return {std::max(wide, high), std::min(wide, high)};
}

std::vector<DrawnPlace> drawnPlaces(const planning::CutPlan& plan, const planning::CutSheet& sheet) {
    const bool mayTurn = !plan.list.material.sheet.oneWay;
    const bool laid = isLaid(plan);
    std::vector<DrawnPlace> places;
    places.reserve(sheet.places.size());
    for (const auto& part : sheet.places) {
        const auto& piece = plan.list.pieces[part.piece].size;
        auto place = drawn(plan, part.at, piece);
        place.piece = part.piece;
        place.turned = mayTurn && piece.width != piece.height && part.at.turned != laid;
        places.push_back(place);
    }
    return places;
}

PlanShape shapeOf(const planning::CutPlan& plan, const planning::CutSheet& sheet, QPointF corner, double scale) {
    PlanShape shape;
    shape.sheet = {corner, planSize(plan) * scale};
    const auto boxOf = [&](const DrawnPlace& place) {
        return QRectF(corner.x() + place.left.millimetres() * scale, corner.y() + place.top.millimetres() * scale,
                      place.size.width.millimetres() * scale, place.size.height.millimetres() * scale);
    };
    for (const auto& place : drawnPlaces(plan, sheet)) shape.parts.push_back({boxOf(place), place.piece, place.turned});
    if (!sheet.left.width.isZero()) shape.left = boxOf(drawn(plan, sheet.leftAt, sheet.left));
    return shape;
}

QString pieceMark(std::size_t index) { return QString::fromStdString(quoting::letterOf(index)); }

QString PlanWords::length(units::Length length) const {
    return QString::fromStdString(units::formatLength(length, unit, numbers)) + QLatin1Char(' ') +
           QString::fromStdString(std::string(units::nameOf(unit)));
}

QString PlanWords::size(const layout::Piece& size) const {
    return QString::fromStdString(units::formatLength(size.width, unit, numbers)) + QStringLiteral(" × ") +
           length(size.height);
}

QString PlanWords::count(std::int64_t count) const {
    return QString::fromStdString(units::formatCount(units::Count::of(count), numbers));
}

QString PlanWords::material(const catalogue::Material& material) const {
    const auto& sheet = material.sheet;
    const QString measures = sheet.form == catalogue::SheetForm::Roll ? tr("roll %1 wide").arg(length(sheet.width))
                                                                      : size({sheet.width, sheet.height});
    const auto name = QString::fromStdString(material.name);
    return name.contains(measures) ? name : name + QStringLiteral(", ") + measures;
}

QString PlanWords::verdict(const planning::CutPlan& plan) const {
    if (isRoll(plan)) {
        const auto cut = length(roundedUp(plan.length, unit));
        const QString words = plan.proven ? tr("%1 off the roll, shortest possible").arg(cut)
                                          : tr("%1 off the roll; no plan needs less than %2")
                                                .arg(cut, length(roundedDown(plan.lengthBound, unit)));
        if (plan.length <= plan.list.material.sheet.height) return words;
        return tr("%1. That is more than one roll of %2: plan it in parts.")
            .arg(words, length(plan.list.material.sheet.height));
    }
    if (plan.proven)
        return words::counted("PlanWords", QT_TRANSLATE_N_NOOP("PlanWords", "%1 sheets, fewest possible"),
                              "%1 sheet, fewest possible", plan.count)
            .arg(count(plan.count));
    return tr("%1 sheets; no plan needs fewer than %2", nullptr, static_cast<int>(plan.count))
        .arg(count(plan.count), count(plan.bound));
}

QString PlanWords::left(const planning::CutPlan& plan) const {
    if (plan.sheets.empty()) return {};
    const auto& last = plan.sheets.back();
    const auto width = roundedDown(last.left.width, unit);
    const auto height = roundedDown(last.left.height, unit);
    if (width.isZero() || height.isZero())
        return isRoll(plan) ? tr("nothing left beside the pieces") : tr("nothing left of the last sheet");
    return (isRoll(plan) ? tr("%1 left beside the pieces") : tr("%1 left of the last sheet"))
        .arg(size({width, height}));
}

QString PlanWords::sheetNumbers(const planning::CutPlan& plan, const planning::CutSheet& sheet,
                                std::int64_t first) const {
    if (isRoll(plan)) return tr("Roll");
    if (sheet.count == 1) return count(first);
    return tr("%1 to %2").arg(count(first), count(first + sheet.count - 1));
}

QString PlanWords::sheetName(const planning::CutPlan& plan, const planning::CutSheet& sheet, std::int64_t first) const {
    const auto which = sheetNumbers(plan, sheet, first);
    if (isRoll(plan)) return which;
    return (sheet.count == 1 ? tr("Sheet %1") : tr("Sheets %1, cut alike")).arg(which);
}

} // namespace sp::paper

// SPDX-License-Identifier: MIT
#include "app/artwork/made_design.h"

#include "app/words/proof_sheet.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cmath>

namespace sp::artwork {

namespace {

/// The note up to its first figure.
QString noteStart() { return QCoreApplication::translate("sp::artwork::EstimatePresenter", "Estimated, not counted"); }

} // namespace

units::Length roundedUp(double millimetres, units::LengthUnit unit) {
    const double step = unit == units::LengthUnit::Inch ? 0.254 : 0.1;
    const auto steps = std::llround(std::ceil(millimetres / step - 1e-6));
    return units::Length::fromNanometres(steps * std::llround(step * 1e6));
}

base::Id firstBacking(session::BookSession& session) {
    for (const auto& material : session.materials())
        if (material.kind == catalogue::MaterialKind::Backing) return material.id;
    return {};
}

QString estimateNote(const QString& least, const QString& most) {
    return QCoreApplication::translate("sp::artwork::EstimatePresenter", "%1: %2 to %3 stones laid out by hand.")
        .arg(noteStart(), least, most);
}

bool isEstimateNote(const std::string& note) { return QString::fromStdString(note).startsWith(noteStart()); }

std::string estimatedCounts(const std::vector<SizedTally>& tallies) {
    QJsonArray counts;
    for (const auto& one : tallies)
        counts.append(QJsonObject{{QLatin1String(words::kEstimateKey.data()), true},
                                  {QStringLiteral("size"), QString::fromStdString(one.stoneSize)},
                                  {QStringLiteral("count"), static_cast<qint64>(one.count.value())},
                                  {QStringLiteral("least"), static_cast<qint64>(one.least.value())},
                                  {QStringLiteral("most"), static_cast<qint64>(one.most.value())}});
    return QJsonDocument(counts).toJson(QJsonDocument::Compact).toStdString();
}

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#include "app/artwork/cut_file_reader.h"

#include "app/artwork/file_bytes.h"
#include "app/words/words.h"
#include "core/artwork/artwork_file.h"
#include "core/artwork/region.h"

#include <QFileInfo>

namespace sp::artwork {

namespace {

std::vector<ScaleReading> readScales(const Drawing& drawing, const std::string& name) {
    std::vector<ScaleReading> readings;
    for (auto& proposal : proposeScales(drawing, {})) {
        ScaleReading reading{std::move(proposal), false, 0, {}, {}};
        CountOptions options;
        options.millimetresPerUnit = reading.scale.millimetresPerUnit;
        if (const auto counted = countStones(drawing, options, name)) {
            for (const auto& group : counted->groups)
                if (group.size) reading.stones += static_cast<std::size_t>(group.count.value());
            reading.isCounted = true;
            reading.width = counted->width();
            reading.height = counted->height();
        }
        readings.push_back(std::move(reading));
    }
    return readings;
}

} // namespace

CutFileAnswer readCutFile(const std::string& path, const std::string& name) {
    auto bytes = bytesOfFile(path);
    if (!bytes) return {base::fail(bytes.error())};
    CutFile file{name, *bytes, {}, {}};
    auto drawing = readArtwork(std::move(*bytes), name);
    if (!drawing) return {base::fail(drawing.error())};
    file.drawing = std::move(*drawing);
    if (!file.drawing.millimetresPerUnit) file.scales = readScales(file.drawing, name);
    CountOptions options;
    options.millimetresPerUnit =
        file.scales.empty() ? *file.drawing.millimetresPerUnit : file.scales.front().scale.millimetresPerUnit;
    if (const auto counted = countStones(file.drawing, options, name); !counted)
        return {base::fail(counted.error()),
                counted.error().code == base::Code::Missing && !shapesOf(file.drawing, 1).empty()};
    return {std::move(file)};
}

CutFileReader::CutFileReader(QObject* parent)
    : QObject(parent) {}

void CutFileReader::read(const QString& path) {
    const auto name = QFileInfo(path).fileName().toStdString();
    m_newest.ask([file = path.toStdString(), name] { return readCutFile(file, name); },
                 [this, path](CutFileAnswer answer) {
                     if (answer.file)
                         Q_EMIT finished(std::make_shared<const CutFile>(std::move(*answer.file)));
                     else
                         Q_EMIT failed(words::sentence(answer.file.error()), answer.hasShapes ? path : QString());
                 });
}

} // namespace sp::artwork

#include "moc_cut_file_reader.cpp"

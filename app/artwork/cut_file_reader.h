// SPDX-License-Identifier: MIT
#pragma once

#include "app/async/latest_task.h"
#include "core/artwork/count.h"
#include "core/artwork/scale.h"

#include <QObject>
#include <QString>

#include <memory>
#include <string>
#include <vector>

namespace sp::artwork {

/// A way to read a drawing that states no unit, and what comes out.
struct ScaleReading {
    ScaleProposal scale;
    bool isCounted = false; ///< false: no disc could be a stone at this scale, and the rest says nothing
    std::size_t stones = 0; ///< that fit a size
    units::Length width;
    units::Length height;
};

/// A cut file as read: the drawing and, where it states no unit, the ways to read it, the likeliest first.
struct CutFile {
    std::string name; ///< without folder
    std::string bytes;
    Drawing drawing;
    std::vector<ScaleReading> scales;
};

/// A cut file, or why it is none.
struct CutFileAnswer {
    base::Result<CutFile> file;
    bool hasShapes = false; ///< it holds no stone, but an outline that stones can be set in
};

/// Reads a cut file. Errors: those of bytesOfFile and readArtwork; those of countStones when no scale gives a stone.
CutFileAnswer readCutFile(const std::string& path, const std::string& name);

/// Reads cut files away from the screen's thread, one at a time; the newest asked for is the one that is answered.
/// Reading is bounded (artwork::Limits), so that it is not cut short.
class CutFileReader : public QObject {
    Q_OBJECT

  public:
    explicit CutFileReader(QObject* parent = nullptr);

    void read(const QString& path);
    bool isReading() const { return m_newest.isBusy(); }

  Q_SIGNALS:
    void finished(const std::shared_ptr<const sp::artwork::CutFile>& file);
    /// `shapesIn`: the path where CutFileAnswer::hasShapes, else empty.
    void failed(const QString& sentence, const QString& shapesIn);

  private:
    async::LatestTask m_newest;
};

} // namespace sp::artwork

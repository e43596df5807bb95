// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/letter_outlines.h"
#include "app/artwork/picture.h"
#include "app/artwork/shape_file.h"
#include "app/async/latest_task.h"
#include "app/session/book_session.h"
#include "core/artwork/estimate.h"

#include <QByteArray>
#include <QObject>

#include <functional>
#include <memory>
#include <optional>

namespace sp::artwork {

/// Makes outlines of lettering: artwork::outlinesOf, handed in because it needs Qt's fonts. Called away from the
/// screen's thread.
using OutlineMaker = std::function<base::Result<std::vector<Shape>>(const LetteringOrder&)>;

/// What a colour of a file's drawing is set with.
struct ColourStone {
    std::string colour; ///< as coloursOf names it
    base::Id stone;     ///< at its usual pitch; none: the colour is left free
};

/// What an estimate is asked for, every entry well read.
struct EstimateInputs {
    bool isFile = false; ///< the shapes of the file that was read, else lettering
    QString text;
    QString font;
    std::optional<units::Length> height; ///< of the capitals, or of all of a file's shapes; none: as the file says
    base::Id stone;                      ///< none: not chosen
    std::optional<units::Length> pitch;  ///< none: the usual one for the stone
    units::Length edge;
    StoneStyle style = StoneStyle::Fill;
    /// With StoneStyle::Both, the outline in a stone of its own, at its usual pitch; none: the same stone.
    base::Id outlineStone = {};
    /// Of a file, each colour by itself, in place of `stone`, `pitch` and `outlineStone`; empty: all as one.
    std::vector<ColourStone> colours = {};
};

/// Decides what an estimate is asked of and what becomes of it. An estimate is worked out away from the screen; from
/// the moment something else is asked until that is answered there is none, so what is shown is never of other entries.
/// Nothing is in the book before makeDesign, one step of undo.
class EstimatePresenter : public QObject {
    Q_OBJECT

  public:
    EstimatePresenter(session::BookSession& session, OutlineMaker outlines, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }

    /// Reads a file's shapes; `fileRead` or `fileRefused` follows. A file that cannot be read leaves the one before.
    void readFile(const QString& path);
    bool isReading() const { return m_reader.isBusy(); }
    const ShapeFile* file() const { return m_file.get(); }
    /// Of the file, in drawing order.
    const std::vector<std::string>& colours() const { return m_colours; }
    /// The stone a colour most likely stands for, of the size most designs use; none, left free, for white among
    /// others.
    base::Id likelyStone(const std::string& colour);
    /// How high the file says its shapes are; nothing when it does not.
    std::optional<units::Length> drawnHeight() const;

    /// The middle of its size; nothing for what is no stone or has no known size.
    std::optional<units::Length> diameterOf(const base::Id& stone);
    /// Centre to centre, with a wall between the holes that a blade can leave standing.
    std::optional<units::Length> usualPitch(const base::Id& stone);
    /// The stone that most designs use, else the first; none when there is none.
    base::Id usualStone();

    /// `changed` follows at once, when there is no estimate, and again when there is an answer.
    void ask(const EstimateInputs& inputs);
    /// Nothing can be asked; `sentence` says what is wanted.
    void blank(const QString& sentence);

    bool isBusy() const { return m_estimator.isBusy(); }
    /// Of what was asked last, all colours together; null until it is answered, and when it cannot be.
    const Estimate* estimate() const { return m_answer ? &m_answer->whole : nullptr; }
    /// The stones of one of the colours asked for by itself; nothing while there is no estimate or it is left free.
    std::optional<Tally> tallyOf(const std::string& colour) const;
    /// Why there is no estimate, one sentence; empty while there is one or it is being worked out.
    const QString& problem() const { return m_problem; }
    /// The entry that problem is about, as core names it ("pitch", "height"); may be empty.
    const std::string& problemSubject() const { return m_subject; }
    /// The problem is only that something is not entered yet.
    bool isWaiting() const { return m_waiting; }

    Picture picture();
    units::Length width();
    units::Length height();
    /// A name that no design has, after the lettering or the file.
    QString freeName();
    /// Makes a design of the estimate, with its stone, size, and what it was estimated from (`thumbnail` is its PNG).
    /// The estimate must be there. Errors: those of the book, where nothing is kept then.
    base::Result<base::Id> makeDesign(const QString& name, const QByteArray& thumbnail);

  Q_SIGNALS:
    void changed();
    void fileRead();
    void fileRefused(const QString& sentence);

  private:
    /// What is set in one stone, or two with one for the outline.
    struct Part {
        std::string colour; ///< empty where all is set as one
        Estimate estimate;
        base::Id stone;
        base::Id outlineStone;
    };
    struct Answer {
        Estimate whole; ///< of the parts, without its stones
        std::vector<Part> parts;
        std::vector<Shape> shapes;
        std::vector<Line> lines; ///< of a file, those that end somewhere
    };

    static Estimate wholeOf(const std::vector<Part>& parts);
    void askByColour(const EstimateInputs& inputs);
    void take(base::Result<Answer> answer);
    void addStones(Picture& picture, const Part& part);
    /// Each stone once, that of a filling before that of its outline.
    std::vector<catalogue::StoneCount> stonesOfAnswer() const;
    EstimateRequest requestOf(const EstimateInputs& inputs);
    std::optional<QString> missing(const EstimateInputs& inputs);
    double millimetresPerUnit(const EstimateInputs& inputs) const;
    catalogue::DesignArtwork drawingFor(const base::Id& design, const QByteArray& thumbnail);

    session::BookSession& m_session;
    OutlineMaker m_outlines;
    std::shared_ptr<const ShapeFile> m_file;
    std::vector<std::string> m_colours;
    EstimateInputs m_inputs;
    std::optional<Answer> m_answer;
    QString m_problem;
    std::string m_subject;
    bool m_waiting = true;
    async::LatestTask m_reader;
    async::LatestTask m_estimator;
};

} // namespace sp::artwork

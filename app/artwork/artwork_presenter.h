// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/cut_file_reader.h"
#include "app/artwork/picture.h"
#include "app/session/book_session.h"

#include <QByteArray>
#include <QObject>
#include <QStringList>

#include <map>
#include <memory>
#include <optional>
#include <unordered_map>
#include <utility>
#include <vector>

namespace sp::artwork {

/// A colour of the file as a person reads it: its name where it has one, a code by the colour of a stone that it is
/// like.
QString colourWords(const std::string& colour);

/// Stones of one drawn colour and one size, whatever layer they lie on.
struct ColourRow {
    std::string colour;              ///< as Ink::colour
    std::optional<std::size_t> size; ///< index into publishedStoneSizes
    units::Length smallest;
    units::Length largest;
    units::Count count;
    std::vector<std::string> layers;
    std::optional<base::Id> material; ///< none: not chosen yet; the id none: left out by a person
    bool isFar = false;               ///< nobody chose the material, and its colour looks quite different
};

/// What is decided while a cut file is looked at: its scale, which material each drawn colour and size stands for, and
/// which design gets the result. Holds nothing until `open` read a file; a file that cannot be read leaves what was
/// there. Nothing is in the book before useForNew or useFor, each one step of undo.
class ArtworkPresenter : public QObject {
    Q_OBJECT

  public:
    explicit ArtworkPresenter(session::BookSession& session, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }

    /// Reads a file away from the screen; `opened` or `refused` follows.
    void open(const QString& path);
    bool isReading() const { return m_reader.isReading(); }
    bool hasFile() const { return m_file != nullptr; }
    QString fileName() const;
    const Counted& counted() const { return m_counted; }

    // The scale, where the file states none.
    const std::vector<ScaleReading>& scales() const { return m_file->scales; }
    bool asksScale() const { return m_file && !m_file->scales.empty() && !m_scaleChosen; }
    int scale() const { return m_scale; }
    void chooseScale(int reading);
    units::Length holeAllowance() const { return m_allowance; }
    /// False, and nothing is changed, when no stone would be left; `refused` says so.
    bool setHoleAllowance(units::Length allowance);

    // What stands for what.
    const std::vector<ColourRow>& rows() const { return m_rows; }
    /// The id none leaves them out.
    void assign(int row, const base::Id& material);
    /// One stone, instead of what its row says.
    void assignStone(int stone, const base::Id& material);
    std::optional<base::Id> materialOf(int stone) const;
    /// Of each row, the stones that follow it: those set one by one to something else are not among them.
    std::vector<std::int64_t> stonesOfRows() const;
    /// What stones were set to one by one, and how many; the id none: left out.
    std::map<base::Id, std::int64_t> setOneByOne() const;
    /// Takes back what was assigned last, and assigns it again; false when there is nothing.
    bool undoAssigning();
    /// A person chose what stands for something here, and no design has it.
    bool hasUnused() const { return m_file && !m_isUsed && !m_before.empty(); }
    bool redoAssigning();
    int rowOf(int stone) const { return m_rowOfGroup[m_counted.stones[static_cast<std::size_t>(stone)].group]; }

    int selected() const { return m_selected; } ///< index into counted().stones, -1 for none
    void select(int stone);

    Picture picture() const;
    /// Reason and number, in words.
    const LeftOut& leftOut() const { return m_counted.leftOut; }
    QStringList warnings() const;
    /// The design as the file says it, with everything else as `design` has it.
    catalogue::Design applied(const catalogue::Design& design) const;
    units::Count stonesUsed() const;
    /// Stones for which nothing is chosen yet, neither a stone nor to leave them out.
    std::int64_t stonesUndecided() const;
    /// What a person should look at before it is used, one sentence: colours that stand for stones of quite another
    /// colour because no other of the size is there. Empty when there is nothing.
    QString doubt() const;
    units::Length width() const;
    units::Length height() const;

    /// Why it cannot be used yet, one sentence; empty when it can.
    QString whyNot() const;
    /// Price of one of `pieces` pieces, with today's prices; nothing when it cannot be priced.
    std::optional<units::Money> priceEach(const catalogue::Design& design, units::Count pieces) const;
    /// Makes a design, or changes one, and keeps the drawing with it (`thumbnail` is its PNG), together with the stones
    /// that a person chose for colours. One step of undo. Errors: whyNot; what the book refuses.
    base::Result<base::Id> useForNew(const QString& name, const QByteArray& thumbnail);
    base::Result<base::Id> useFor(const base::Id& design, const QByteArray& thumbnail);
    /// A name that no design has, after the file's.
    QString freeName() const;

  Q_SIGNALS:
    void opened();
    /// `shapesIn` is the path of a file that holds no stone but a shape to set with stones, else empty.
    void refused(const QString& sentence, const QString& shapesIn = {});
    void changed();          ///< counts, rows or what stands for what
    void selectionChanged(); ///< another stone is selected

  private:
    void take(const std::shared_ptr<const CutFile>& file);
    base::Done count(double millimetresPerUnit, units::Length allowance);
    void makeRows();
    std::optional<base::Id> likelyMaterial(const ColourRow& row) const;
    bool isFarFrom(const ColourRow& row) const;
    std::vector<catalogue::StoneCount> stoneCounts() const;
    Box usedBox() const;
    double millimetresPerUnit() const;
    catalogue::DesignArtwork drawingFor(const base::Id& design, const QByteArray& thumbnail) const;
    base::Result<base::Id> use(const catalogue::Design& design, const QByteArray& thumbnail);
    base::Result<base::Id> saveDesign(const catalogue::Design& design, const QByteArray& thumbnail);

    using RowKey = std::pair<std::string, std::optional<std::size_t>>;
    /// What was chosen for rows and for single stones (by Drawing::discs, which outlive a new count).
    struct Assigned {
        std::map<RowKey, base::Id> rows;
        std::unordered_map<std::uint32_t, base::Id> discs;
    };
    bool turn(std::vector<Assigned>& from, std::vector<Assigned>& into);
    void assignRows();

    session::BookSession& m_session;
    CutFileReader m_reader;
    std::shared_ptr<const CutFile> m_file;
    Counted m_counted;
    std::vector<ColourRow> m_rows;
    std::vector<int> m_rowOfGroup;
    Assigned m_assigned;
    bool m_isUsed = false;          ///< a design has it as it is now
    std::vector<Assigned> m_before; ///< of this file, to be undone
    std::vector<Assigned> m_after;  ///< to be done again
    units::Length m_allowance;
    int m_scale = 0;
    bool m_scaleChosen = false;
    int m_selected = -1;
};

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/fit_memo.h"
#include "db/book/book.h"

#include <QObject>
#include <QString>
#include <QTime>
#include <QTimer>

#include <memory>
#include <optional>
#include <vector>

namespace sp::session {

/// The open job book as the places share it: what was read is kept until something changes, every change goes
/// through `change`, and whoever shows something of the book listens to `changed`. Lives as long as the window; the
/// places borrow it.
class BookSession : public QObject {
    Q_OBJECT

  public:
    explicit BookSession(std::unique_ptr<db::Book> book, QObject* parent = nullptr);

    const db::Book& book() const { return *m_book; }
    bool isReadOnly() const { return m_book->readOnlyBecause().has_value(); }

    // What the book holds, read when first asked for. When reading fails the list is empty, `troubled` was emitted.
    const catalogue::Shop& shop();
    const catalogue::BenchStandards& bench();
    const std::vector<catalogue::Material>& materials();
    const std::vector<catalogue::Supplier>& suppliers();
    const std::vector<catalogue::Pack>& packs();
    const std::vector<catalogue::Kit>& kits();
    const std::vector<catalogue::Design>& designs();
    const std::vector<catalogue::Customer>& customers();
    const std::vector<catalogue::ColourMaterial>& colourMaterials();
    const std::vector<catalogue::PriceListColumns>& priceListColumns();
    const std::unordered_map<base::Id, std::int64_t>& shelf();
    /// The drawing of a design, read each time: it may be large. None also when it cannot be read.
    std::optional<catalogue::DesignArtwork> artwork(const base::Id& design);
    /// The shop's day and time of day, by the clock the book goes by.
    units::Date today() const { return m_book->environment().today(); }
    QTime timeOfDay() const;
    /// Everything a price is made of today, with that customer (or none).
    catalogue::PriceBook prices(const base::Id& customer);

    const catalogue::Material* material(const base::Id& id);
    const catalogue::Supplier* supplier(const base::Id& id);
    const catalogue::Kit* kit(const base::Id& id);
    const catalogue::Design* design(const base::Id& id);
    /// One that was merged into another is that other one.
    const catalogue::Customer* customer(const base::Id& id);

    /// Layouts already worked out; they depend on sizes only and so outlive every change of the book.
    layout::FitMemo& fits() { return m_fits; }

    /// Does one thing to the book. Success forgets what was read and emits `changed` and `saved`; failure emits
    /// `troubled` and changes nothing. Returns what `work` returned. Refused while something of the book could not be
    /// read, so that the empty value shown in its place is never saved over it; it is then read once more.
    template<class Work>
    auto change(Work&& work) {
        return changeAnd(work, true);
    }
    /// The same for who says where it was asked why it was refused (a name that is taken, a thing that another needs):
    /// `troubled` is emitted for trouble with the book itself only.
    template<class Work>
    auto attempt(Work&& work) {
        return changeAnd(work, false);
    }
    /// The same for a part of something long, of which an attempt is the end: until then nothing is told, and what was
    /// read before is not read anew.
    template<class Work>
    auto attemptPart(Work&& work) {
        return work(*m_book);
    }
    /// The same for the draft at the Counter, which nobody else shows: `changed` is not emitted, `saved` is.
    template<class Work>
    auto keepDraft(Work&& work) {
        auto result = work(*m_book);
        if (result.has_value())
            Q_EMIT saved();
        else
            Q_EMIT troubled(result.error());
        return result;
    }
    template<class Work>
    auto read(Work&& work) {
        auto result = work(*m_book);
        if (!result.has_value()) Q_EMIT troubled(result.error());
        return result;
    }
    /// The same for who says in its own place why it could not be read: `troubled` is not emitted.
    template<class Work>
    auto readInPlace(Work&& work) {
        return work(*m_book);
    }

    // The file itself.
    /// Looks whether it is still the file that was opened, as it was left; emits `troubled` once where it is not. Looks
    /// at the day as well.
    void notice();
    /// How far the book has come, and a copy of it begun (see db::Book).
    base::Result<db::BookMark> mark() { return m_book->mark(); }
    base::Result<std::unique_ptr<db::BookCopy>> startCopy(const std::filesystem::path& target) {
        return m_book->startCopy(target);
    }
    /// What finds jobs quickly, see db::Book. `askForIndex` where it was missed.
    bool wantsIndex() { return canIndex() && m_book->wantsIndex(); }
    /// Whether one can be made for this seat, as far as is known.
    bool canIndex() const { return !m_isIndexGivenUp && !m_book->environment().cacheFolder.empty(); }
    /// None could be made, and none will be until the book is opened the next time.
    void giveUpIndex() {
        m_isIndexGivenUp = true;
        Q_EMIT indexed();
    }
    void askForIndex() { Q_EMIT indexAsked(); }
    void takeIndex() {
        m_book->takeIndex();
        Q_EMIT indexed();
    }
    base::Result<db::Lost> lostIn(const std::filesystem::path& backup) { return m_book->lostIn(backup); }

    QString undoText();
    QString redoText();
    /// False when there is nothing, or the book refused (`troubled`).
    bool undo();
    bool redo();

  Q_SIGNALS:
    void changed();                              ///< something of the book is no longer as it was read
    void saved();                                ///< it is on the disk
    void dayTurned();                            ///< today is another day; looked at each minute
    void indexAsked();                           ///< of the book
    void indexed();                              ///< there is one, or it is known that there will be none
    void troubled(const sp::base::Error& error); ///< it could not be read or kept

  private:
    template<class Work>
    auto changeAnd(Work& work, bool tellsRefusals) {
        if (const auto unread = errorForUnread()) return decltype(work(*m_book))(base::fail(*unread));
        auto result = work(*m_book);
        settle(result.has_value() ? std::optional<base::Error>() : result.error(), tellsRefusals);
        return result;
    }
    void settle(const std::optional<base::Error>& error, bool tellsRefusals);
    void forget();
    void noticeDay();
    std::optional<base::Error> errorForUnread();

    struct Read {
        std::optional<catalogue::Shop> shop;
        std::optional<catalogue::BenchStandards> bench;
        std::optional<std::vector<catalogue::Material>> materials;
        std::optional<std::vector<catalogue::Supplier>> suppliers;
        std::optional<std::vector<catalogue::Pack>> packs;
        std::optional<std::vector<catalogue::Kit>> kits;
        std::optional<std::vector<catalogue::Design>> designs;
        std::optional<std::vector<catalogue::Customer>> customers;
        std::optional<std::vector<catalogue::ColourMaterial>> colourMaterials;
        std::optional<std::vector<catalogue::PriceListColumns>> priceListColumns;
        std::optional<std::unordered_map<base::Id, std::int64_t>> shelf;
        std::optional<catalogue::PriceBook> prices;
    };

    template<class T, class Reader>
    const T& once(std::optional<T>& kept, Reader reader);

    std::unique_ptr<db::Book> m_book;
    bool m_isIndexGivenUp = false;
    Read m_read;
    std::optional<base::Error> m_unread; ///< why something in m_read is empty that may not be so in the book
    layout::FitMemo m_fits;
    std::optional<base::Error> m_noticed; ///< what was last said of the file
    units::Date m_day;                    ///< the last that was told
    QTimer m_dayTimer{this};
};

} // namespace sp::session

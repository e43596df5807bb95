// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "core/supply/kit_yield.h"
#include "db/book/shelf_state.h"

#include <QObject>
#include <QString>
#include <QStringList>

#include <functional>

namespace sp::supplies {

/// What is decided at the Supplies place: which material, supplier or kit is open and what becomes of it, its
/// packs and its shelf. Every edit is saved when it is made; what the book refuses comes back as the sentence to show.
class SuppliesPresenter : public QObject {
    Q_OBJECT

  public:
    explicit SuppliesPresenter(session::BookSession& session, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }
    const base::Id& currentId() const { return m_current; }
    const catalogue::Material* material() { return m_session.material(m_current); }
    const catalogue::Supplier* supplier() { return m_session.supplier(m_current); }
    const catalogue::Kit* kit() { return m_session.kit(m_current); }
    /// What one of the open kit makes of its design, without templates cut. Errors: Missing without a design; those of
    /// supply::yieldProblemOf and supply::kitYield.
    base::Result<supply::YieldAnswer> kitMakes();
    /// The packs of the open material, as the book lists them.
    std::vector<catalogue::Pack> packs();
    /// What is there of a material and promised of it; as it was where the book cannot be read now.
    db::OnShelf onShelf(const base::Id& material);
    void open(const base::Id& thing);

    QString edit(const std::function<void(catalogue::Material&)>& work);
    QString editSupplier(const std::function<void(catalogue::Supplier&)>& work);
    QString editPack(const base::Id& pack, const std::function<void(catalogue::Pack&)>& work);
    QString editKit(const std::function<void(catalogue::Kit&)>& work);
    void addMaterial(catalogue::MaterialKind kind);
    void addSupplier();
    /// A new kit of the first supplier. Empty when that was done, else the sentence.
    QString addKit();
    /// Puts one of a material that is not in it yet into the open kit.
    QString addKitItem();
    /// A new pack of the first supplier.
    QString addPack();
    /// Makes a supplier of that name and has the pack bought there; without a key: a new pack. In one step of undo.
    QString addSupplierOf(const base::Id& pack, const QString& name);
    void removePack(const base::Id& pack);
    /// Takes the open thing out. Empty when that was done, else the sentence.
    QString remove();
    /// What is to be said of the figures of the shelf, a sentence each: which jobs are not in them, and why they may be
    /// old.
    QStringList remarksOnShelf(const base::Id& material);
    /// The jobs something may be taken off the shelf for, or come back from: being made, agreed, ready, and the last of
    /// those that were let go or collected for which something is still booked.
    const std::vector<db::QuoteSummary>& jobsToTakeFor();
    /// Books so many of the open material in (positive) or out, for the reason that was typed; `kind` is what it was,
    /// `job` for whom it goes out, or from whose work it comes back.
    /// Empty when that was done, else the sentence.
    QString move(std::int64_t amount, db::records::MoveKind kind, std::optional<units::Money> cost,
                 const std::string& reason, const std::optional<base::Id>& job = {});
    /// So many of it were counted. Empty when the difference is booked, else the sentence.
    QString count(std::int64_t counted, const std::string& reason);

  Q_SIGNALS:
    void opened();
    void changed();

  private:
    void readShelf();
    catalogue::Pack newPack();
    std::string freeName(const QString& wanted);

    session::BookSession& m_session;
    base::Id m_current;
    db::BenchReader m_bench;
    db::ShelfState m_shelf; ///< as it was read last
    bool m_isShelfOld = true;
    bool m_isShelfKnown = true;                          ///< it could be read when it was tried last
    std::optional<std::vector<db::QuoteSummary>> m_jobs; ///< until the book changes
};

} // namespace sp::supplies

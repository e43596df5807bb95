// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "core/pricing/ladder_curve.h"

#include <QObject>
#include <QString>

#include <functional>

namespace sp::shop {

/// What the owner decides at the Shop place. Every edit is saved when it is made; what the book refuses comes back as
/// the sentence to show.
class ShopPresenter : public QObject {
    Q_OBJECT

  public:
    explicit ShopPresenter(session::BookSession& session, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }
    const catalogue::Shop& shop() { return m_session.shop(); }
    const catalogue::BenchStandards& bench() { return m_session.bench(); }
    QString editShop(const std::function<void(catalogue::Shop&)>& work);
    /// The ladder in money for a design of the book, on what it goes on as a rule. Errors: as pricing::ladderCurve.
    base::Result<pricing::LadderCurve> ladderCurve(const base::Id& design);
    QString editBench(const std::function<void(catalogue::BenchStandards&)>& work);

  Q_SIGNALS:
    void changed();

  private:
    session::BookSession& m_session;
};

} // namespace sp::shop

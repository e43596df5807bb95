// SPDX-License-Identifier: MIT
#include "app/shop/shop_presenter.h"

#include "app/words/words.h"

namespace sp::shop {

ShopPresenter::ShopPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {
    connect(&m_session, &session::BookSession::changed, this, &ShopPresenter::changed);
}

QString ShopPresenter::editShop(const std::function<void(catalogue::Shop&)>& work) {
    auto edited = shop();
    work(edited);
    if (edited == shop()) return {};
    const auto saved = m_session.attempt([&](db::Book& book) { return book.save(edited); });
    return saved ? QString() : words::sentence(saved.error());
}

QString ShopPresenter::editBench(const std::function<void(catalogue::BenchStandards&)>& work) {
    auto edited = bench();
    work(edited);
    if (edited == bench()) return {};
    const auto saved = m_session.attempt([&](db::Book& book) { return book.save(edited); });
    return saved ? QString() : words::sentence(saved.error());
}

base::Result<pricing::LadderCurve> ShopPresenter::ladderCurve(const base::Id& design) {
    const auto* known = m_session.design(design);
    return pricing::ladderCurve(known ? catalogue::lineOf(*known) : catalogue::OrderLine{}, m_session.prices({}),
                                m_session.fits());
}

} // namespace sp::shop

#include "moc_shop_presenter.cpp"

// SPDX-License-Identifier: MIT
#include "app/designs/designs_presenter.h"

#include "app/session/free_name.h"
#include "app/words/words.h"

#include <algorithm>

namespace sp::designs {

DesignsPresenter::DesignsPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {
    connect(&m_session, &session::BookSession::changed, this, &DesignsPresenter::changed);
    if (!m_session.designs().empty()) m_current = m_session.designs().front().id;
}

std::vector<catalogue::Design> DesignsPresenter::matching(const QString& text, const base::Id& kept) {
    std::vector<catalogue::Design> found;
    const auto wanted = text.trimmed();
    for (const auto& design : m_session.designs())
        if (design.id == kept || QString::fromStdString(design.name).contains(wanted, Qt::CaseInsensitive))
            found.push_back(design);
    return found;
}

const catalogue::Design* DesignsPresenter::current() { return m_session.design(m_current); }

void DesignsPresenter::open(const base::Id& design) {
    if (m_current == design) return;
    m_current = design;
    Q_EMIT opened();
}

QString DesignsPresenter::edit(const std::function<void(catalogue::Design&)>& work) {
    const auto* design = current();
    if (!design) return {};
    auto edited = *design;
    work(edited);
    if (!edited.plannedPieces) edited.setCost.reset(); // a plan that is made later is for another set
    if (edited == *design) return {};
    const auto saved = m_session.attempt([&](db::Book& book) { return book.save(edited); });
    return saved ? QString() : words::sentence(saved.error());
}

QString DesignsPresenter::freeName(const QString& wanted) { return session::freeName(wanted, m_session.designs()); }

bool DesignsPresenter::save(catalogue::Design design) {
    const auto saved = m_session.change([&](db::Book& book) { return book.save(design); });
    if (!saved) return false;
    m_current = *saved;
    Q_EMIT opened();
    return true;
}

void DesignsPresenter::create() {
    catalogue::Design design;
    design.name = freeName(tr("New design")).toStdString();
    design.width = design.height = units::Length::fromInch64ths(4 * 64);
    for (const auto& material : m_session.materials()) {
        if (design.usualBase.isNone() && material.kind == catalogue::MaterialKind::Backing)
            design.usualBase = material.id;
        if (design.stones.empty() && material.kind == catalogue::MaterialKind::Stone)
            design.stones.push_back({material.id, units::Count::of(1)});
    }
    save(std::move(design));
}

void DesignsPresenter::duplicate() {
    const auto* design = current();
    if (!design) return;
    auto copy = *design;
    copy.id = {};
    copy.name = freeName(tr("%1 copy").arg(QString::fromStdString(design->name))).toStdString();
    copy.templatesOnWall = false;
    copy.setCost.reset();
    save(std::move(copy));
}

void DesignsPresenter::remove() {
    const auto gone = m_current;
    const auto removed = m_session.change([&](db::Book& book) { return book.removeDesign(gone); });
    if (!removed) return;
    const auto& left = m_session.designs();
    m_current = left.empty() ? base::Id{} : left.front().id;
    Q_EMIT opened();
}

} // namespace sp::designs

#include "moc_designs_presenter.cpp"

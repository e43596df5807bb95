// SPDX-License-Identifier: MIT
#include "app/counter/bench_promise.h"

#include "core/scheduling/messages.h"

namespace sp::counter {

BenchPromise::BenchPromise(CounterPresenter& presenter, QObject* parent)
    : QObject(parent)
    , m_presenter(presenter) {
    m_idle.setSingleShot(true);
    m_idle.setInterval(0);
    connect(&m_idle, &QTimer::timeout, this, &BenchPromise::readQueue);
    const auto askAnew = [this] {
        m_queue.reset();
        m_unread.reset();
        ask();
    };
    connect(&presenter.session(), &session::BookSession::changed, this, askAnew);
    connect(&presenter.session(), &session::BookSession::dayTurned, this, askAnew);
    connect(&presenter, &CounterPresenter::changed, this, &BenchPromise::ask);
    ask();
}

bool BenchPromise::isWithoutHours() const {
    return m_whyNot && m_whyNot->fault == scheduling::idOf(scheduling::Fault::NoBenchTime);
}

void BenchPromise::readQueue() {
    // Said under the field: nothing of the order is lost or unsaved.
    auto read = m_presenter.session().readInPlace([this](db::Book& book) { return m_reader.read(book); });
    if (read)
        m_queue = std::move(*read);
    else
        m_unread = read.error();
    ask();
}

void BenchPromise::ask() {
    m_promise.reset();
    m_whyNot.reset();
    m_others.reset();
    const auto& quote = m_presenter.quote();
    const bool isOpen = quote.stage == db::Stage::Enquiry || quote.stage == db::Stage::Quoted;
    const bool isAsked = isOpen && m_presenter.priced() && !quote.order.lines.empty();
    const bool isRead = m_queue && m_queue->today == m_presenter.session().today();
    if (isAsked && m_unread)
        m_whyNot = m_unread;
    else if (isAsked && !isRead)
        m_idle.start();
    if (isAsked && isRead) {
        const auto work =
            db::benchWorkOf(quote.order, m_presenter.prices(), m_presenter.session().fits(), m_queue->sets);
        if (quote.revises) m_others = m_queue->without(quote.revises->id);
        const auto promise = queue().promise(work, quote.order.wantedBy);
        if (promise)
            m_promise = *promise;
        else
            m_whyNot = promise.error();
    }
    Q_EMIT told();
}

} // namespace sp::counter

#include "moc_bench_promise.cpp"

// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QThreadPool>

#include <memory>
#include <utility>

namespace sp::artwork {

/// Does work away from the screen's thread, one thing at a time. Only the newest thing asked for is answered: what was
/// asked before it, or before `drop`, never arrives. Work under way is not cut short, so it must be bounded; the
/// destructor waits for it.
class NewestAnswer : public QObject {
  public:
    explicit NewestAnswer(QObject* parent = nullptr)
        : QObject(parent) {
        m_pool.setMaxThreadCount(1);
    }
    ~NewestAnswer() override {
        m_pool.clear();
        m_pool.waitForDone();
    }

    /// `work()` runs in the other thread and owns what it looks at; `take(answer)` is called in this one. Both can be
    /// copied.
    template<class Work, class Take>
    void ask(Work work, Take take) {
        m_pool.clear();
        m_busy = true;
        m_pool.start([this, asked = ++m_asked, work = std::move(work), take = std::move(take)] {
            auto answer = std::make_shared<decltype(work())>(work());
            QMetaObject::invokeMethod(
                this,
                [this, asked, answer, take] {
                    if (asked != m_asked) return;
                    m_busy = false;
                    take(std::move(*answer));
                },
                Qt::QueuedConnection);
        });
    }
    /// Nothing is asked any more.
    void drop() {
        m_pool.clear();
        ++m_asked;
        m_busy = false;
    }
    bool isBusy() const { return m_busy; }

  private:
    QThreadPool m_pool;
    int m_asked = 0;
    bool m_busy = false;
};

} // namespace sp::artwork

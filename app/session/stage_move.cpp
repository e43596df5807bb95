// SPDX-License-Identifier: MIT
#include "app/session/stage_move.h"

#include "app/words/shelf_words.h"
#include "db/messages.h"

namespace sp::session {

base::Result<db::ShelfUse> moveToStage(BookSession& session, const db::QuoteSummary& job, db::Stage stage) {
    // A draft takes nothing off the shelf; its step is called as the book calls it.
    base::Result<db::ShelfUse> use{db::ShelfUse{}};
    const auto done = session.attempt([&](db::Book& book) -> base::Done {
        if (job.number.empty()) return book.setStage(job.id, stage);
        return book.batch(base::say(db::Note::StageOf, job.number), [&]() -> base::Done {
            use = book.useAt(job.id, stage);
            if (!use) return base::fail(use.error());
            return book.setStage(job.id, stage);
        });
    });
    if (!done) return base::fail(done.error());
    return use;
}

QStringList saidOfUse(BookSession& session, const db::ShelfUse& use,
                      const std::function<QString(std::int64_t)>& written) {
    const auto nameOf = [&](const base::Id& id) {
        const auto* material = session.material(id);
        return QString::fromStdString(material ? material->name : id.text());
    };
    return words::lackSentences(use, nameOf, written);
}

} // namespace sp::session

// SPDX-License-Identifier: MIT
#include "app/jobs/stage_words.h"

#include <QCoreApplication>

namespace sp::jobs {

QString stageWord(db::Stage stage) {
    const auto say = [](const char* word) { return QCoreApplication::translate("Stage", word); };
    switch (stage) {
    case db::Stage::Enquiry: return say("Enquiry");
    case db::Stage::Quoted: return say("Quoted");
    case db::Stage::Agreed: return say("Agreed");
    case db::Stage::Making: return say("Making");
    case db::Stage::Ready: return say("Ready");
    case db::Stage::Collected: return say("Collected");
    case db::Stage::LetGo: return say("Let go");
    }
    return {};
}

} // namespace sp::jobs

// SPDX-License-Identifier: MIT
#include "app/jobs/stage_words.h"

#include <QCoreApplication>

namespace sp::jobs {

QString stageWord(db::Stage stage) {
    switch (stage) {
    case db::Stage::Enquiry: return QCoreApplication::translate("Stage", "Enquiry");
    case db::Stage::Quoted: return QCoreApplication::translate("Stage", "Quoted");
    case db::Stage::Agreed: return QCoreApplication::translate("Stage", "Agreed");
    case db::Stage::Making: return QCoreApplication::translate("Stage", "Making");
    case db::Stage::Ready: return QCoreApplication::translate("Stage", "Ready");
    case db::Stage::Collected: return QCoreApplication::translate("Stage", "Collected");
    case db::Stage::LetGo: return QCoreApplication::translate("Stage", "Let go");
    }
    return {};
}

} // namespace sp::jobs

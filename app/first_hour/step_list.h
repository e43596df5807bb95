// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/first_steps.h"

#include <QButtonGroup>
#include <QWidget>

namespace sp::first_hour {

/// How a step stands; told by mark, words and colour.
enum class Standing { Done, PassedBy, ToCome };

/// The steps under each other, joined by a line: a mark, what it is, and in small words what is there or missing. One
/// is chosen. Up and Down move in it.
class StepList : public QWidget {
    Q_OBJECT

  public:
    explicit StepList(QWidget* parent = nullptr);

    void setStep(quoting::FirstStep step, Standing standing, const QString& note);
    void setCurrent(quoting::FirstStep step);
    /// What a step is called.
    static QString titleOf(quoting::FirstStep step);

  Q_SIGNALS:
    void chosen(sp::quoting::FirstStep step);

  private:
    QButtonGroup* m_group;
};

} // namespace sp::first_hour

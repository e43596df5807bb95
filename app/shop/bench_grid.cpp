// SPDX-License-Identifier: MIT
#include "app/shop/bench_grid.h"

#include "app/desk/field_binding.h"
#include "app/desk/figures.h"
#include "app/desk/problem_note.h"
#include "app/words/names.h"
#include "core/catalogue/fields/tables.h"

#include <QGridLayout>

namespace sp::shop {

BenchGrid::BenchGrid(ShopPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter) {
    using catalogue::StepStandard;
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(4);
    struct Part {
        QString head;
        units::Duration StepStandard::*part;
        const catalogue::fields::Field& field;
    };
    using catalogue::fields::fieldOf;
    const std::array parts{Part{tr("a job"), &StepStandard::perJob, fieldOf<&StepStandard::perJob>()},
                           Part{tr("a colour"), &StepStandard::perColour, fieldOf<&StepStandard::perColour>()},
                           Part{tr("a piece"), &StepStandard::perPiece, fieldOf<&StepStandard::perPiece>()},
                           Part{tr("100 stones"), &StepStandard::per100Stones, fieldOf<&StepStandard::per100Stones>()},
                           Part{tr("a press cycle"), &StepStandard::perCycle, fieldOf<&StepStandard::perCycle>()}};
    constexpr int kLearning = static_cast<int>(parts.size()) + 1;
    const auto label = [&](const QString& words, desk::Role role) {
        return new desk::TextLabel(words, desk::TextSize::Small, role, desk::Weight::Plain, this);
    };
    for (int i = 0; i + 1 < kLearning; ++i)
        grid->addWidget(label(parts[static_cast<std::size_t>(i)].head, desk::Role::Muted), 0, i + 1);
    grid->addWidget(label(tr("learning"), desk::Role::Muted), 0, kLearning);
    int row = 1;
    for (const auto step : catalogue::kSteps) {
        const auto name = words::nameOf(step);
        grid->addWidget(label(name, desk::Role::Ink), row, 0);
        for (int i = 0; i + 1 < kLearning; ++i) {
            const auto& part = parts[static_cast<std::size_t>(i)];
            const bool isForPieces = part.part == &StepStandard::perPiece || part.part == &StepStandard::perCycle;
            if (catalogue::isOncePerJob(step) && isForPieces) continue;
            auto* field = new desk::DurationField(formatter, this);
            desk::standsFor(*field, part.field);
            field->setObjectName(QStringLiteral("bench_%1_%2").arg(row).arg(i));
            field->setAccessibleName(QStringLiteral("%1, %2").arg(name, part.head));
            grid->addWidget(field, row, i + 1);
            connect(field, &desk::TypedField::committed, this, [this, field, step, which = part.part] {
                const auto value = field->value();
                if (!value) return;
                field->setOuterProblem(
                    m_presenter.editBench([&](catalogue::BenchStandards& bench) { bench.of(step).*which = *value; }));
            });
            m_cells.push_back({step, part.part, field});
        }
        if (!catalogue::isOncePerJob(step)) {
            auto* field = new desk::RateField(formatter, this);
            field->setObjectName(QStringLiteral("learning_%1").arg(row));
            field->setAccessibleName(tr("%1, learning").arg(name));
            field->setUnitText(QStringLiteral("%"));
            desk::standsFor(*field, fieldOf<&StepStandard::learning>());
            grid->addWidget(field, row, kLearning);
            connect(field, &desk::TypedField::committed, this, [this, field, step] {
                const auto value = field->value();
                if (!value) return;
                field->setOuterProblem(
                    m_presenter.editBench([&](catalogue::BenchStandards& bench) { bench.of(step).learning = *value; }));
            });
            m_learning.push_back({step, field});
        }
        ++row;
    }
    auto* problem = new desk::ProblemNote(this);
    grid->addWidget(problem, row, 0, 1, kLearning + 1);
    std::vector<desk::TypedField*> fields;
    for (const auto& cell : m_cells) fields.push_back(cell.field);
    for (const auto& learning : m_learning) fields.push_back(learning.field);
    problem->watch(fields);
}

void BenchGrid::load() {
    for (const auto& cell : m_cells)
        if (!cell.field->isDirty()) cell.field->setValue(m_presenter.bench().of(cell.step).*cell.part);
    for (const auto& learning : m_learning)
        if (!learning.field->isDirty()) learning.field->setValue(m_presenter.bench().of(learning.step).learning);
}

} // namespace sp::shop

#include "moc_bench_grid.cpp"

// SPDX-License-Identifier: MIT
#include "app/artwork/estimate_fields.h"

#include "app/artwork/colour_rows.h"
#include "app/artwork/made_design.h"
#include "app/artwork/page_parts.h"
#include "app/desk/fonts.h"

#include <QButtonGroup>
#include <QFontDatabase>
#include <QFontInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace sp::artwork {

namespace {

constexpr auto kTallest = units::Length::fromNanometres(10'000'000'000);
constexpr auto kMaxGapWidth = units::Length::fromNanometres(1'000'000'000);

/// Below it no stone fits, and a bound reads well in the shop's unit.
units::Length lowest(const desk::Formatter& formatter) {
    return formatter.lengthUnit() == units::LengthUnit::Inch ? units::Length::fromInch64ths(4)
                                                             : units::Length::fromMicrometres(1000);
}

units::Length usualHeight(const desk::Formatter& formatter) {
    return formatter.lengthUnit() == units::LengthUnit::Inch ? units::Length::fromInch64ths(2 * 64)
                                                             : units::Length::fromMicrometres(50'000);
}

/// Installed families whose letters leave outlines.
std::vector<desk::Choice> fontChoices() {
    std::vector<desk::Choice> choices;
    for (const auto& family : QFontDatabase::families())
        if (family != desk::ownFamily() && !QFontDatabase::isPrivateFamily(family) &&
            QFontDatabase::isSmoothlyScalable(family))
            choices.push_back({family, family, {}, {}});
    return choices;
}

/// Radio buttons in a row, one of them chosen. Tab stops at the chosen one alone, from which arrows choose another.
QButtonGroup* radioRow(QVBoxLayout* column, QWidget* parent, std::initializer_list<QRadioButton*> buttons,
                       QRadioButton* chosen) {
    auto* group = new QButtonGroup(parent);
    auto* row = new QHBoxLayout;
    row->setSpacing(20);
    for (auto* button : buttons) {
        group->addButton(button);
        row->addWidget(button);
        button->setFocusPolicy(Qt::ClickFocus);
        QObject::connect(button, &QRadioButton::toggled, button,
                         [button](bool on) { button->setFocusPolicy(on ? Qt::StrongFocus : Qt::ClickFocus); });
    }
    row->addStretch(1);
    column->addLayout(row);
    chosen->setChecked(true);
    return group;
}

QRadioButton* radio(const QString& words, const char* name, QWidget* parent) {
    auto* button = new QRadioButton(words, parent);
    button->setObjectName(QLatin1String(name));
    return button;
}

} // namespace

EstimateFields::EstimateFields(EstimatePresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    buildSource(column);
    buildLettering(column);
    buildFile(column);
    buildStones(column);
    buildStyle(column);
    m_font->setChoices(fontChoices());
    for (const auto& family : QStringList(QFontInfo(font()).family()) + desk::textFamilies())
        if (!m_font->current().isValid()) m_font->setCurrent(family);
    if (!m_font->current().isValid() && !m_font->choices().empty()) m_font->setCurrent(m_font->choices().front().id);
    m_height->setValue(usualHeight(m_formatter));
    loadChoices();
    if (const auto stone = m_presenter.usualStone(); !stone.isNone()) m_stone->setCurrent(QVariant::fromValue(stone));
    sourceChanged();
}

void EstimateFields::buildSource(QVBoxLayout* column) {
    m_fromLettering = radio(tr("&Lettering"), "estimateLettering", this);
    m_fromFile = radio(tr("S&hape in a file"), "estimateShape", this);
    auto* group = radioRow(column, this, {m_fromLettering, m_fromFile}, m_fromLettering);
    connect(group, &QButtonGroup::buttonClicked, this, [this] {
        sourceChanged();
        ask();
    });
}

void EstimateFields::buildLettering(QVBoxLayout* column) {
    m_lettering = new QWidget(this);
    auto* inner = new QVBoxLayout(m_lettering);
    inner->setContentsMargins(0, 0, 0, 0);
    inner->setSpacing(12);
    m_text = new desk::LongText(m_lettering);
    m_text->setObjectName(QStringLiteral("estimateText"));
    inner->addWidget(new desk::FieldBox(tr("&Text, on one or several lines"), m_text, m_lettering));
    connect(m_text, &QPlainTextEdit::textChanged, this, &EstimateFields::ask);
    m_font = new desk::ChoiceField(m_formatter, m_lettering);
    m_font->setObjectName(QStringLiteral("estimateFont"));
    m_font->setUnknownWording(tr("No font is called “%1” here; choose from the list."));
    connect(m_font, &desk::ChoiceField::chosen, this, &EstimateFields::ask);
    connect(m_font, &desk::TypedField::edited, this, &EstimateFields::ask);
    m_height = new desk::LengthField(m_formatter, m_lettering);
    m_height->setObjectName(QStringLiteral("estimateHeight"));
    follow(m_height);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(new desk::FieldBox(tr("F&ont"), m_font, m_lettering), 3);
    row->addWidget(new desk::FieldBox(tr("Height of c&apitals"), m_height, m_lettering), 2);
    inner->addLayout(row);
    column->addWidget(m_lettering);
}

void EstimateFields::buildFile(QVBoxLayout* column) {
    m_fileBox = new QWidget(this);
    auto* inner = new QVBoxLayout(m_fileBox);
    inner->setContentsMargins(0, 0, 0, 0);
    inner->setSpacing(12);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    m_fileName = new desk::TextLabel({}, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Plain, m_fileBox);
    m_fileName->setWordWrap(true);
    m_fileName->setObjectName(QStringLiteral("estimateFileName"));
    m_choose = new QPushButton(tr("&Choose a file…"), m_fileBox);
    m_choose->setObjectName(QStringLiteral("estimateChooseFile"));
    m_choose->setToolTip(tr("An SVG, DXF or PLT file with closed or filled outlines"));
    row->addWidget(m_fileName, 1);
    row->addWidget(m_choose);
    inner->addLayout(row);
    connect(m_choose, &QPushButton::clicked, this, &EstimateFields::fileAsked);
    m_fileHeight = new desk::LengthField(m_formatter, m_fileBox);
    m_fileHeight->setObjectName(QStringLiteral("estimateShapeHeight"));
    follow(m_fileHeight);
    m_fileHeightBox = new desk::FieldBox(tr("He&ight of all of it"), m_fileHeight, m_fileBox);
    inner->addWidget(m_fileHeightBox);
    m_colours = new EstimateColours(m_presenter, m_formatter, m_fileBox);
    inner->addWidget(m_colours);
    connect(m_colours, &EstimateColours::edited, this, [this] {
        showEntries();
        ask();
    });
    column->addWidget(m_fileBox);
}

void EstimateFields::buildStones(QVBoxLayout* column) {
    m_stone = new desk::ChoiceField(m_formatter, this);
    m_stone->setObjectName(QStringLiteral("estimateStone"));
    connect(m_stone, &desk::ChoiceField::chosen, this, [this] {
        loadRemarks();
        ask();
    });
    connect(m_stone, &desk::TypedField::edited, this, &EstimateFields::ask);
    m_stoneBox = new desk::FieldBox(tr("&Stone"), m_stone, this);
    column->addWidget(m_stoneBox);
    m_pitch = new desk::LengthField(m_formatter, this);
    m_pitch->setObjectName(QStringLiteral("estimatePitch"));
    m_pitch->setEmptyAllowed(true);
    m_pitch->setRange({}, kMaxGapWidth);
    connect(m_pitch, &desk::TypedField::edited, this, [this] {
        m_pitchDone = false;
        ask();
    });
    connect(m_pitch, &desk::TypedField::committed, this, [this] {
        m_pitchDone = true;
        showAnswer();
    });
    m_edge = new desk::LengthField(m_formatter, this);
    m_edge->setObjectName(QStringLiteral("estimateEdge"));
    m_edge->setEmptyAllowed(true);
    m_edge->setRange({}, kMaxGapWidth);
    connect(m_edge, &desk::TypedField::edited, this, &EstimateFields::ask);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    m_pitchBox = new desk::FieldBox(tr("Pitch, cent&re to centre"), m_pitch, this);
    auto* edgeBox = new desk::FieldBox(tr("&Free at the edge"), m_edge, this);
    edgeBox->setRemark(tr("empty: stones touch the edge"));
    row->addWidget(m_pitchBox, 1);
    row->addWidget(edgeBox, 1);
    column->addLayout(row);
}

void EstimateFields::buildStyle(QVBoxLayout* column) {
    auto* box = new QVBoxLayout;
    box->setSpacing(8);
    box->addWidget(new desk::TextLabel(tr("Stones stand"), desk::TextSize::Small, desk::Role::Muted));
    m_outline = radio(tr("along the o&utline"), "estimateOutline", this);
    m_fill = radio(tr("in ro&ws"), "estimateFill", this);
    m_both = radio(tr("&both"), "estimateBoth", this);
    for (auto* button : {m_outline, m_fill, m_both})
        button->setAccessibleDescription(tr("How the stones stand in the shape"));
    auto* group = radioRow(box, this, {m_outline, m_fill, m_both}, m_fill);
    column->addLayout(box);
    m_outlineStone = new desk::ChoiceField(m_formatter, this);
    m_outlineStone->setObjectName(QStringLiteral("estimateOutlineStone"));
    connect(m_outlineStone, &desk::ChoiceField::chosen, this, &EstimateFields::ask);
    connect(m_outlineStone, &desk::TypedField::edited, this, &EstimateFields::ask);
    m_outlineBox = new desk::FieldBox(tr("Stone of the outline"), m_outlineStone, this);
    m_outlineBox->setRemark(tr("empty: the same stone"));
    m_outlineBox->hide();
    column->addWidget(m_outlineBox);
    connect(group, &QButtonGroup::buttonClicked, this, [this] {
        showEntries();
        ask();
    });
}

void EstimateFields::follow(desk::LengthField* field) {
    field->setRange(lowest(m_formatter), kTallest);
    connect(field, &desk::TypedField::edited, this, &EstimateFields::ask);
}

void EstimateFields::loadChoices() {
    m_stone->setChoices(stonesToChoose(m_presenter.session(), std::nullopt));
    m_outlineStone->setChoices(stonesToChoose(m_presenter.session(), std::nullopt));
    m_colours->loadChoices();
    loadRemarks();
}

void EstimateFields::loadRemarks() {
    const auto stone = m_stone->current();
    const auto pitch = stone.isValid() ? m_presenter.usualPitch(stone.value<base::Id>()) : std::nullopt;
    m_pitchBox->setRemark(pitch ? tr("empty: %1").arg(m_formatter.length(*pitch)) : QString());
    const auto drawn = m_presenter.drawnHeight();
    m_fileHeight->setEmptyAllowed(drawn.has_value());
    m_fileHeightBox->setRemark(
        drawn ? tr("empty: as drawn, %1")
                    .arg(m_formatter.length(roundedUp(drawn->millimetres(), m_formatter.lengthUnit())))
              : QString());
    const auto* file = m_presenter.file();
    m_fileName->setText(file ? QString::fromStdString(file->name) : tr("No file is chosen yet."));
    m_fileName->setRole(file ? desk::Role::Ink : desk::Role::Muted);
}

void EstimateFields::sourceChanged() {
    m_lettering->setVisible(m_fromLettering->isChecked());
    m_fileBox->setVisible(m_fromFile->isChecked());
    showEntries();
    loadRemarks();
}

void EstimateFields::showEntries() {
    const bool isAsOne = !m_fromFile->isChecked() || !m_colours->isOn();
    m_stoneBox->setVisible(isAsOne);
    m_pitchBox->setVisible(isAsOne);
    m_outlineBox->setVisible(isAsOne && m_both->isChecked());
}

void EstimateFields::showFile() {
    m_fromFile->setChecked(true);
    m_fileHeight->setOptionalValue(std::nullopt);
    m_colours->loadFile();
    sourceChanged();
    ask();
}

StoneStyle EstimateFields::style() const {
    if (m_outline->isChecked()) return StoneStyle::Outline;
    return m_both->isChecked() ? StoneStyle::Both : StoneStyle::Fill;
}

QString EstimateFields::unreadEntry() const {
    const bool isFile = m_fromFile->isChecked();
    // Of an empty choice or a file's empty height the presenter has more to say.
    if (!isFile && !m_font->isBlank() && !m_font->problem().isEmpty()) return tr("the font");
    if (!isFile && !m_height->problem().isEmpty()) return tr("the height");
    if (isFile && !m_fileHeight->isBlank() && !m_fileHeight->problem().isEmpty()) return tr("the height");
    if (!m_edge->optionalValue()) return tr("what is free at the edge");
    if (isFile && m_colours->isOn()) return m_colours->chosen() ? QString() : tr("the stone of each colour");
    if (!m_stone->isBlank() && !m_stone->problem().isEmpty()) return tr("the stone");
    if (m_both->isChecked() && !m_outlineStone->isBlank() && !m_outlineStone->problem().isEmpty())
        return tr("the stone of the outline");
    if (!m_pitch->optionalValue()) return tr("the pitch");
    return {};
}

void EstimateFields::ask() {
    EstimateInputs inputs;
    inputs.isFile = m_fromFile->isChecked();
    inputs.text = m_text->toPlainText();
    inputs.style = style();
    if (const auto entry = unreadEntry(); !entry.isEmpty()) {
        m_presenter.blank(tr("There is no estimate until %1 is right.").arg(entry));
        return;
    }
    inputs.font = m_font->current().toString();
    const auto height = (inputs.isFile ? m_fileHeight : m_height)->optionalValue();
    if (height) inputs.height = *height;
    if (m_stone->current().isValid()) inputs.stone = m_stone->current().value<base::Id>();
    if (m_outlineStone->current().isValid()) inputs.outlineStone = m_outlineStone->current().value<base::Id>();
    if (inputs.isFile && m_colours->isOn()) inputs.colours = *m_colours->chosen();
    if (const auto pitch = m_pitch->optionalValue()) inputs.pitch = *pitch;
    inputs.edge = m_edge->optionalValue()->value_or(units::Length{});
    m_presenter.ask(inputs);
}

void EstimateFields::showAnswer() {
    m_colours->showTallies();
    const auto stone = m_stone->current();
    const auto diameter = stone.isValid() ? m_presenter.diameterOf(stone.value<base::Id>()) : std::nullopt;
    const bool isTight = diameter && m_presenter.problemSubject() == "pitch" && m_pitchDone;
    m_pitch->setOuterProblem(isTight ? tr("This stone is %1 mm across; give at least that.")
                                           .arg(m_formatter.locale().toString(diameter->millimetres(), 'f', 2))
                                     : QString());
}

void EstimateFields::focusStart() {
    if (m_fromFile->isChecked()) {
        m_choose->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_text->setFocus(Qt::OtherFocusReason);
    m_text->selectAll();
}

} // namespace sp::artwork

#include "moc_estimate_fields.cpp"

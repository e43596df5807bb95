// SPDX-License-Identifier: MIT
#include "app/artwork/artwork_page.h"

#include "app/artwork/made_design.h"
#include "app/artwork/page_parts.h"
#include "app/desk/bench_style.h"
#include "app/words/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QRadioButton>

namespace sp::artwork {

using desk::Role;
using desk::TextSize;

namespace {

constexpr std::int64_t kPiecesCompared = 24;

} // namespace

ArtworkPage::ArtworkPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent)
    : SplitPage(parent)
    , m_presenter(session)
    , m_formatter(formatter) {
    setObjectName(QStringLiteral("artworkPage"));
    auto* left = new QVBoxLayout;
    left->setSpacing(8);
    buildPicture(left);
    sides()->addLayout(left, 1);
    auto* card = new SideCard(this);
    buildSide(card->entries());
    buildUse(card->foot());
    sides()->addWidget(card);
    connectAll();
}

void ArtworkPage::buildPicture(QVBoxLayout* column) {
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    m_heading = desk::pageTitle({}, this);
    head->addWidget(m_heading, 1);
    m_view = new ArtworkView(this);
    m_view->setObjectName(QStringLiteral("artworkView"));
    addZoomButtons(head, m_view, this);
    column->addLayout(head);
    m_summary = new desk::TextLabel({}, TextSize::Body, Role::Muted, desk::Weight::Plain, this);
    column->addWidget(m_summary);
    column->addWidget(m_view, 1);
    m_note = smallWords(this);
    m_note->setObjectName(QStringLiteral("pictureNote"));
    column->addWidget(m_note);
}

void ArtworkPage::buildSide(QVBoxLayout* column) {
    buildScales(column);
    column->addWidget(desk::sectionTitle(tr("Stones a piece"), this));
    m_rows = new ColourRows(m_presenter, m_formatter, this);
    column->addWidget(m_rows);
    m_allowance = new desk::LengthField(m_formatter, this);
    m_allowance->setObjectName(QStringLiteral("holeAllowance"));
    m_allowance->setEmptyAllowed(true);
    m_allowance->setRange({}, units::Length::fromNanometres(2'000'000));
    auto* box = new desk::FieldBox(tr("&Holes are larger than their stones by"), m_allowance, this);
    box->setRemark(tr("empty: drawn at the size of the stone"));
    column->addWidget(box);
    buildStone(column);
    m_leftOut = new LeftOutList(m_formatter, this);
    column->addWidget(m_leftOut);
    column->addStretch(1);
}

void ArtworkPage::buildScales(QVBoxLayout* column) {
    m_scaleBox = new QWidget(this);
    m_scaleColumn = new QVBoxLayout(m_scaleBox);
    m_scaleColumn->setContentsMargins(0, 0, 0, 8);
    m_scaleColumn->setSpacing(4);
    m_scaleColumn->addWidget(desk::sectionTitle(tr("How long is one unit of this file?"), m_scaleBox));
    auto* words = smallWords(m_scaleBox);
    words->setText(tr("The file does not say. The likeliest is first and shown; choose the one whose size is right."));
    m_scaleColumn->addWidget(words);
    column->addWidget(m_scaleBox);
}

void ArtworkPage::buildStone(QVBoxLayout* column) {
    m_stoneWords = smallWords(this);
    m_stoneWords->setObjectName(QStringLiteral("selectedStone"));
    m_stone = new desk::ChoiceField(m_formatter, this);
    m_stone->setObjectName(QStringLiteral("selectedStoneChoice"));
    m_stone->setAccessibleName(tr("This one stone is"));
    m_stone->setPlaceholderText(tr("which stone?"));
    column->addWidget(desk::sectionTitle(tr("Picked stone"), this));
    column->addWidget(m_stoneWords);
    column->addWidget(m_stone);
}

void ArtworkPage::buildUse(QVBoxLayout* column) {
    column->addWidget(new desk::Hairline(this));
    m_differences = smallWords(this);
    m_differences->setObjectName(QStringLiteral("differences"));
    column->addWidget(m_differences);
    m_whyNot = smallWords(this);
    m_whyNot->setRole(Role::Warn);
    m_whyNot->setObjectName(QStringLiteral("whyNot"));
    column->addWidget(m_whyNot);
    m_name = new desk::WordField(m_formatter, tr("Give the design a name."), this);
    m_name->setObjectName(QStringLiteral("artworkName"));
    column->addWidget(new desk::FieldBox(tr("Design &name"), m_name, this));
    m_useNew = new QPushButton(tr("&Use for a new design"), this);
    m_useNew->setObjectName(QStringLiteral("useNew"));
    desk::makePrimary(*m_useNew);
    m_useOpen = new QPushButton(this);
    m_useOpen->setObjectName(QStringLiteral("useOpen"));
    auto* leave = new QPushButton(tr("&Close"), this);
    leave->setObjectName(QStringLiteral("leaveArtwork"));
    column->addWidget(m_useNew);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(m_useOpen, 1);
    row->addWidget(leave);
    column->addLayout(row);
    connect(leave, &QPushButton::clicked, this, &ArtworkPage::left);
}

void ArtworkPage::connectAll() {
    connect(&m_presenter, &ArtworkPresenter::opened, this, &ArtworkPage::loadFile);
    connect(&m_presenter, &ArtworkPresenter::changed, this, &ArtworkPage::load);
    connect(&m_presenter, &ArtworkPresenter::selectionChanged, this, &ArtworkPage::loadStone);
    connect(&m_presenter, &ArtworkPresenter::refused, this, [this](const QString& sentence, const QString& shapesIn) {
        if (!isVisible())
            Q_EMIT refused(sentence, shapesIn);
        else if (shapesIn.isEmpty())
            messages().tell(desk::Tone::Warn, sentence);
        else
            messages().tell(desk::Tone::Warn, sentence, estimateWord(),
                            [this, shapesIn] { Q_EMIT estimateAsked(shapesIn); });
    });
    connect(m_view, &ArtworkView::picked, this, [this](int stone) {
        m_presenter.select(stone);
        loadStone();
    });
    connect(m_view, &ArtworkView::pickedLine, this, [this](Classification classification) {
        m_presenter.select(-1);
        m_note->setText(classification == Classification::Duplicate
                            ? tr("Drawn twice, counted once.")
                            : tr("No stone: %1.").arg(words::sentence(base::say(noteOf(classification)))));
        m_view->say(m_note->text());
    });
    connect(m_leftOut, &LeftOutList::shown, m_view, &ArtworkView::setHighlighted);
    connect(m_allowance, &desk::TypedField::committed, this, [this] {
        const auto typed = m_allowance->optionalValue();
        if (typed) m_presenter.setHoleAllowance(typed->value_or(units::Length{}));
    });
    connect(m_stone, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        if (chosen.isValid() && m_presenter.selected() >= 0)
            m_presenter.assignStone(m_presenter.selected(), chosen.value<base::Id>());
    });
    connect(m_useNew, &QPushButton::clicked, this, &ArtworkPage::useNew);
    connect(m_useOpen, &QPushButton::clicked, this, &ArtworkPage::useOpen);
}

QString ArtworkPage::estimateWord() { return tr("Estimate from its shape"); }

void ArtworkPage::open(const QString& path, const Destination& destination) {
    m_destination = destination;
    m_presenter.open(path);
}

void ArtworkPage::loadFile() {
    messages().dismiss();
    m_fits = true;
    m_heading->setText(m_presenter.fileName());
    m_allowance->setOptionalValue(std::nullopt);
    m_name->setRaw(m_presenter.freeName());
    m_view->setHighlighted(std::nullopt);
    loadScales();
    const auto warnings = m_presenter.warnings();
    if (!warnings.isEmpty()) {
        messages().tell(desk::Tone::Warn, warnings.front());
        if (warnings.size() > 1) messages().setDetail(warnings.mid(1).join(QLatin1Char(' ')));
    }
    Q_EMIT opened();
    m_view->setFocus(Qt::OtherFocusReason);
}

void ArtworkPage::loadScales() {
    delete m_scales;
    for (auto* old : m_scaleBox->findChildren<QRadioButton*>()) delete old;
    m_scales = new QButtonGroup(this);
    const auto& scales = m_presenter.scales();
    m_scaleBox->setVisible(!scales.empty());
    for (std::size_t i = 0; i < scales.size(); ++i) {
        const auto& reading = scales[i];
        const auto name = QString::fromStdString(reading.scale.name);
        const auto stones = reading.stones > 0 ? stonesInWords(static_cast<std::int64_t>(reading.stones), m_formatter)
                                               : tr("no stone fits");
        const auto unit = m_presenter.session().shop().lengthUnit;
        const auto size = m_formatter.size(roundedUp(reading.width.millimetres(), unit),
                                           roundedUp(reading.height.millimetres(), unit));
        auto* button = new QRadioButton(reading.isCounted ? QStringLiteral("%1: %2, %3").arg(name, stones, size)
                                                          : tr("%1: nothing could be a stone").arg(name),
                                        m_scaleBox);
        button->setEnabled(reading.isCounted);
        button->setObjectName(QStringLiteral("scale%1").arg(i));
        m_scales->addButton(button, static_cast<int>(i));
        m_scaleColumn->addWidget(button);
    }
    connect(m_scales, &QButtonGroup::idClicked, this, [this](int reading) {
        m_fits = true;
        m_presenter.chooseScale(reading);
    });
}

void ArtworkPage::load() {
    if (!m_presenter.hasFile()) return;
    m_view->setPicture(m_presenter.picture(), std::exchange(m_fits, false));
    const auto used = m_presenter.stonesUsed().value();
    const auto open = m_presenter.stonesUndecided();
    QStringList summary{stonesInWords(used + open, m_formatter)};
    if (open > 0) summary << tr("%1 of them with no stone chosen yet").arg(m_formatter.count(units::Count::of(open)));
    summary << m_formatter.size(m_presenter.width(), m_presenter.height());
    m_summary->setText(summary.join(QStringLiteral(", ")));
    m_rows->load();
    m_leftOut->load(m_presenter);
    const auto whyNot = m_presenter.whyNot();
    const auto doubt = m_presenter.doubt();
    m_whyNot->setText(whyNot.isEmpty() ? doubt : whyNot);
    m_whyNot->setVisible(!m_whyNot->text().isEmpty());
    m_useNew->setEnabled(whyNot.isEmpty());
    const auto* design = m_presenter.session().design(m_destination.openDesign);
    m_useOpen->setVisible(design != nullptr);
    m_useOpen->setEnabled(whyNot.isEmpty());
    if (design)
        m_useOpen->setText(
            tr("Use for “%1”")
                .arg(QString::fromStdString(design->name).replace(QLatin1Char('&'), QLatin1String("&&"))));
    loadStone();
    loadDifferences();
}

void ArtworkPage::loadStone() {
    const int selected = m_presenter.selected();
    m_view->setSelected(selected);
    m_stone->setVisible(selected >= 0);
    if (selected < 0) {
        m_stoneWords->setText(tr("None. Click one, or Page Down in the picture."));
        m_note->setText(
            tr("Drag or the arrows move it, Ctrl and the wheel or + and − zoom; click a stone to see its size."));
        return;
    }
    const auto& stone = m_presenter.counted().stones[static_cast<std::size_t>(selected)];
    const auto& group = m_presenter.counted().groups[stone.group];
    const auto size = group.size ? QString::fromStdString(publishedStoneSizes()[*group.size].name) : tr("no size fits");
    // Stones are named in millimetres by the trade, whatever the shop measures in.
    QStringList words{tr("%1 mm across").arg(m_formatter.locale().toString(stone.diameter, 'f', 2)), size,
                      group.colour.empty() ? tr("no colour") : colourWords(group.colour)};
    if (!group.layer.empty()) words << tr("layer %1").arg(QString::fromStdString(group.layer));
    if (stone.collides) words << tr("overlaps its neighbour");
    m_stoneWords->setText(words.join(QStringLiteral(" · ")));
    m_note->setText(m_stoneWords->text());
    m_stone->setChoices(stoneChoices(m_presenter.session(), group.size));
    const auto material = m_presenter.materialOf(selected);
    m_stone->setCurrent(material ? QVariant::fromValue(*material) : QVariant());
    const auto* known = material ? m_presenter.session().material(*material) : nullptr;
    words << (known ? QString::fromStdString(known->name) : material ? tr("left out") : tr("no stone chosen yet"));
    m_view->say(
        tr("Stone %1 of %2: %3")
            .arg(m_formatter.count(units::Count::of(selected + 1)),
                 m_formatter.count(units::Count::of(static_cast<std::int64_t>(m_presenter.counted().stones.size()))),
                 words.join(QStringLiteral(", "))));
}

void ArtworkPage::loadDifferences() {
    const auto* design = m_presenter.session().design(m_destination.openDesign);
    const bool compares = design && m_presenter.whyNot().isEmpty();
    m_differences->setVisible(compares);
    if (!compares) return;
    const auto after = m_presenter.applied(*design);
    QStringList lines;
    if (isEstimateNote(design->note)) lines << tr("it is counted and no longer estimated");
    if (after.width != design->width || after.height != design->height)
        lines << tr("%1 becomes %2")
                     .arg(m_formatter.size(design->width, design->height), m_formatter.size(after.width, after.height));
    const auto countIn = [](const catalogue::Design& in, const base::Id& material) {
        for (const auto& stone : in.stones)
            if (stone.material == material) return stone.count;
        return units::Count{};
    };
    auto all = design->stones;
    for (const auto& stone : after.stones)
        if (countIn(*design, stone.material).value() == 0) all.push_back(stone);
    for (const auto& stone : all) {
        const auto before = countIn(*design, stone.material);
        const auto now = countIn(after, stone.material);
        const auto* material = m_presenter.session().material(stone.material);
        if (before == now || !material) continue;
        lines << tr("%1 from %2 to %3")
                     .arg(QString::fromStdString(material->name), m_formatter.count(before), m_formatter.count(now));
    }
    if (design->templatesOnWall && !after.templatesOnWall) lines << tr("templates are to be cut anew");
    const auto pieces = design->plannedPieces.value_or(units::Count::of(kPiecesCompared));
    const auto priceBefore = m_presenter.priceEach(*design, pieces);
    const auto priceAfter = m_presenter.priceEach(after, pieces);
    if (priceBefore && priceAfter)
        lines << words::counted("sp::artwork::ArtworkPage",
                                QT_TRANSLATE_N_NOOP("sp::artwork::ArtworkPage", "%1 pieces: %2 becomes %3 each"),
                                "%1 piece: %2 becomes %3", pieces.value())
                     .arg(m_formatter.count(pieces), m_formatter.money(*priceBefore), m_formatter.money(*priceAfter));
    const auto name = QString::fromStdString(design->name);
    m_differences->setText(after == *design ? tr("“%1” is so already.").arg(name)
                                            : tr("“%1” would change: %2.").arg(name, lines.join(QStringLiteral("; "))));
}

void ArtworkPage::useNew() {
    if (!m_name->problem().isEmpty()) {
        m_name->showError();
        m_name->setFocus(Qt::OtherFocusReason);
        return;
    }
    const auto design = m_presenter.useForNew(m_name->text(), thumbnailOf(m_presenter.picture()));
    if (design) {
        Q_EMIT used(*design);
    } else if (design.error().code == base::Code::Conflict) {
        m_name->setOuterProblem(words::sentence(design.error()));
        m_name->setFocus(Qt::OtherFocusReason);
    } else {
        messages().tell(desk::Tone::Warn, words::sentence(design.error()));
    }
}

void ArtworkPage::useOpen() {
    const auto design = m_presenter.useFor(m_destination.openDesign, thumbnailOf(m_presenter.picture()));
    if (design)
        Q_EMIT used(*design);
    else
        messages().tell(desk::Tone::Warn, words::sentence(design.error()));
}

void ArtworkPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        SplitPage::keyPressEvent(event);
}

} // namespace sp::artwork

#include "moc_artwork_page.cpp"

// SPDX-License-Identifier: MIT
// Shows the parts of the desk and saves them as pictures: desk_gallery FOLDER writes light.png and dark.png.
// Run it with QT_QPA_PLATFORM=offscreen, and with QT_SCALE_FACTOR=2 for the sharp ones.
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/choice_field.h"
#include "app/desk/choice_popup.h"
#include "app/desk/empty_state.h"
#include "app/desk/field_box.h"
#include "app/desk/message_bar.h"
#include "app/desk/rail.h"
#include "app/desk/share_bar.h"
#include "app/desk/sheet_picture.h"
#include "app/desk/stone_painter.h"
#include "app/desk/stone_swatches.h"
#include "app/desk/theme.h"
#include "app/desk/value_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QGridLayout>
#include <QHeaderView>
#include <QPlainTextEdit>
#include <QRadioButton>
#include <QStandardItemModel>
#include <QTableView>

using namespace sp;
using namespace sp::desk;

namespace {

const std::vector<std::uint32_t> kStones = {0x45B8C8, 0x15181D, 0xC98F2E, 0xF4F6F8, 0xB01030,
                                            0x1F4FA0, 0x2E8B57, 0xE79AC0, 0x7A3FA0, 0xE8D9A8};

class StoneTray : public QWidget {
  public:
    StoneTray() { setFixedHeight(210); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        double x = 0;
        for (const auto rgb : kStones) {
            paintStone(painter, QRectF(x, 0, 48, 48), stoneColour(rgb), colour(Role::Card));
            paintStone(painter, QRectF(x, 56, 24, 24), stoneColour(rgb), colour(Role::Card));
            paintStone(painter, QRectF(x + 30, 60, 16, 16), stoneColour(rgb), colour(Role::Card));
            x += 56;
        }
        x = 0;
        for (const auto rgb : {kStones[0], kStones[1], kStones[3], kStones[4]}) {
            paintStone(painter, QRectF(x, 88, 120, 120), stoneColour(rgb), colour(Role::Card));
            x += 132;
        }
    }
};

class IconTray : public QWidget {
  public:
    IconTray() { setFixedHeight(28); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        for (int i = 0; i <= static_cast<int>(Icon::Save); ++i)
            paintIcon(painter, QRectF(i * 30, 2, 24, 24), static_cast<Icon>(i),
                      colour(i % 2 ? Role::Jewel : Role::Ink));
    }
};

QWidget* fields(const Formatter& formatter) {
    auto* box = new QWidget;
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 0, 0, 0);
    auto* pieces = new CountField(formatter);
    pieces->setRaw(QStringLiteral("24"));
    auto* width = new LengthField(formatter);
    width->setRaw(QStringLiteral("3 1/2"));
    auto* height = new LengthField(formatter);
    height->setRaw(QStringLiteral("70 mm"));
    auto* price = new MoneyField(formatter);
    price->setRaw(QStringLiteral("6.9x"));
    auto* on = new ChoiceField(formatter);
    on->setChoices({{1, QStringLiteral("Clear decal backing"), QStringLiteral("9 × 12 in"), {}}});
    on->setCurrent(1);
    auto* wanted = new DateField(formatter, units::Date().plusDays(20'417));
    wanted->setRaw(QStringLiteral("+10"));
    grid->addWidget(new FieldBox(QStringLiteral("&Pieces"), pieces), 0, 0);
    grid->addWidget(new FieldBox(QStringLiteral("&On"), on), 0, 1);
    grid->addWidget(new FieldBox(QStringLiteral("&Width"), width), 0, 2);
    grid->addWidget(new FieldBox(QStringLiteral("&Height"), height), 0, 3);
    grid->addWidget(new FieldBox(QStringLiteral("Wanted &by"), wanted), 1, 0);
    grid->addWidget(new FieldBox(QStringLiteral("&Ask for instead"), price), 1, 1);
    auto* combo = new QComboBox;
    combo->addItems({QStringLiteral("Letter"), QStringLiteral("A4")});
    grid->addWidget(new FieldBox(QStringLiteral("Pape&r"), combo), 1, 2);
    auto* off = new CountField(formatter);
    off->setRaw(QStringLiteral("144"));
    off->setEnabled(false);
    grid->addWidget(new FieldBox(QStringLiteral("Disabled"), off), 1, 3);
    grid->setColumnStretch(1, 2);
    QMetaObject::invokeMethod(
        pieces, [pieces] { pieces->setFocus(Qt::TabFocusReason); }, Qt::QueuedConnection);
    return box;
}

QTableView* table() {
    auto* model = new QStandardItemModel(0, 4);
    model->setHorizontalHeaderLabels(
        {QStringLiteral("Stone"), QStringLiteral("Size"), QStringLiteral("to brush"), QStringLiteral("on the shelf")});
    const QStringList names = {QStringLiteral("Aquamarine"), QStringLiteral("Jet"), QStringLiteral("Topaz")};
    const QStringList needs = {QStringLiteral("5,192"), QStringLiteral("2,351"), QStringLiteral("1,111")};
    for (int i = 0; i < 3; ++i) {
        auto* name = new QStandardItem(names[i]);
        QPixmap stone(20, 20);
        stone.fill(Qt::transparent);
        QPainter painter(&stone);
        paintStone(painter, QRectF(0, 0, 20, 20), stoneColour(kStones[static_cast<std::size_t>(i)]),
                   colour(Role::Card));
        painter.end();
        name->setData(stone, Qt::DecorationRole);
        model->appendRow({name, new QStandardItem(QStringLiteral("SS10")), new QStandardItem(needs[i]),
                          new QStandardItem(QStringLiteral("4,310"))});
    }
    for (const int column : {2, 3})
        model->setHeaderData(column, Qt::Horizontal, static_cast<int>(Qt::AlignRight | Qt::AlignVCenter),
                             Qt::TextAlignmentRole);
    auto* view = new QTableView;
    view->setModel(model);
    view->setSelectionBehavior(QTableView::SelectRows);
    view->setItemDelegateForColumn(2, new FigureDelegate(view));
    view->setItemDelegateForColumn(3, new FigureDelegate(view));
    view->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    view->selectRow(1);
    view->setFixedHeight(146);
    return view;
}

QWidget* sheets() {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    const auto inch = [](double n) { return units::Length::fromInch64ths(static_cast<std::int64_t>(n * 64)); };
    for (int kind = 0; kind < 3; ++kind) {
        std::vector<layout::Position> at;
        for (int i = 0; i < 6; ++i) at.push_back({inch(0.25 + 3.75 * (i % 3)), inch(0.25 + 3 * (i / 3)), false});
        auto* picture = new SheetPicture;
        picture->setSheet({inch(kind == 1 ? 90 : 12), inch(9)}, {inch(3.5), inch(2.75)}, at);
        picture->setOutlined(kind == 2);
        picture->setCaption({QStringLiteral("Backing 9 × 12 in"), QStringLiteral("6 a sheet · 4 sheets")});
        line->addWidget(picture);
    }
    return row;
}

QWidget* buttons() {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    auto* give = new QPushButton(QStringLiteral("&Give this quote"));
    makePrimary(*give);
    auto* more = new QPushButton(QStringLiteral("+ colour"));
    makeQuiet(*more);
    auto* print = new QPushButton(icon(Icon::Print), QStringLiteral("P&rint"));
    auto* off = new QPushButton(QStringLiteral("Print"));
    off->setEnabled(false);
    auto* check = new QCheckBox(QStringLiteral("Exempt"));
    check->setChecked(true);
    auto* radio = new QRadioButton(QStringLiteral("Own line"));
    radio->setChecked(true);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{give, print, off, more, check, new QCheckBox(QStringLiteral("Rush")), radio})
        line->addWidget(widget);
    line->addStretch(1);
    return row;
}

QWidget* slip() {
    auto* paper = new Card(nullptr, Role::Paper);
    auto* grid = new QGridLayout(paper);
    grid->setContentsMargins(cardMargins());
    const QStringList sums = {QStringLiteral("166.80"), QStringLiteral("194.50"), QStringLiteral("37.11")};
    for (int i = 0; i < 3; ++i) {
        grid->addWidget(new TextLabel(QStringLiteral("Line"), TextSize::Body), i, 0);
        grid->addWidget(new FigureLabel(sums[i]), i, 1);
    }
    grid->addWidget(new TextLabel(QStringLiteral("To pay"), TextSize::Body, Role::Ink, Weight::Strong), 3, 0);
    grid->addWidget(new FigureLabel(QStringLiteral("407.33"), TextSize::Total, Role::Ink, Weight::Strong), 3, 1);
    auto* note = new QPlainTextEdit(QStringLiteral("Terms under the totals"));
    note->setFixedHeight(64);
    grid->addWidget(note, 4, 0, 1, 2);
    return paper;
}

QWidget* everything(const Formatter& formatter) {
    auto* window = new QWidget;
    auto* across = new QHBoxLayout(window);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(12);
    auto* rail = new Rail;
    const QStringList places = {QStringLiteral("Counter"), QStringLiteral("Designs"), QStringLiteral("Supplies"),
                                QStringLiteral("Buying"),  QStringLiteral("Jobs"),    QStringLiteral("Bench"),
                                QStringLiteral("Figures"), QStringLiteral("Shop")};
    for (int i = 0; i < places.size(); ++i) rail->addPlace(static_cast<Icon>(i), places[i], places[i]);
    across->addWidget(rail);

    auto* card = new Card;
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(cardMargins());
    auto* bar = new MessageBar;
    auto* warn = new MessageBar;
    column->addWidget(bar);
    column->addWidget(warn);
    column->addWidget(pageTitle(QStringLiteral("Lantern")));
    column->addWidget(fields(formatter));
    column->addWidget(table());
    column->addWidget(sectionTitle(QStringLiteral("Sheets")));
    column->addWidget(sheets());
    auto* shares = new ShareBar;
    shares->setShares({{QStringLiteral("brush"), 46, {}},
                       {QStringLiteral("lift"), 14, {}},
                       {QStringLiteral("press"), 16, {}},
                       {QStringLiteral("trim"), 14, {}},
                       {QStringLiteral("pack"), 10, {}}});
    column->addWidget(shares);
    column->addWidget(buttons());
    column->addStretch(1);
    bar->tell(Tone::Jewel, QStringLiteral("Aquamarine is short by 3,212 stones."), QStringLiteral("Buying"));
    bar->setDetail(QStringLiteral("Two days to restock; the promise above counts them in."));
    warn->tell(Tone::Warn, QStringLiteral("The disk is full; free some room, then save a copy."));
    across->addWidget(card, 3);

    auto* side = new QVBoxLayout;
    side->setContentsMargins(0, 20, 20, 20);
    side->addWidget(new StoneTray);
    side->addWidget(new IconTray);
    auto* swatches = new StoneSwatches;
    swatches->setStones({stoneColour(kStones[0]), stoneColour(kStones[1]), stoneColour(kStones[2]),
                         stoneColour(kStones[4]), stoneColour(kStones[5])});
    side->addWidget(swatches);
    auto* list = new ChoicePopup(window);
    list->setWindowFlags(Qt::Widget);
    list->fill({{1,
                 QStringLiteral("Lantern"),
                 QStringLiteral("3 1/2 × 2 3/4 in"),
                 {stoneColour(kStones[0]), stoneColour(kStones[1])}},
                {2, QStringLiteral("Lark"), QStringLiteral("5 × 1 in"), {stoneColour(kStones[2])}}},
               QStringLiteral("Add “La”…"));
    list->mark(0);
    list->setFixedHeight(112);
    side->addWidget(list);
    side->addWidget(slip());
    side->addWidget(new EmptyState(Icon::Designs, QStringLiteral("No designs yet; drop a cut file here."),
                                   QStringLiteral("Open a cut file")),
                    1);
    across->addLayout(side, 2);
    window->resize(1366, 900);
    return window;
}

} // namespace

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    Theme theme(app, Scheme::Light);
    const Formatter formatter(QLocale(QStringLiteral("en_US")), catalogue::Shop());
    const QDir folder(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString());
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
        theme.setScheme(scheme);
        const std::unique_ptr<QWidget> window(everything(formatter));
        window->show();
        window->activateWindow();
        for (int i = 0; i < 20; ++i) QApplication::processEvents();
        const QString name = scheme == Scheme::Light ? QStringLiteral("light.png") : QStringLiteral("dark.png");
        if (!window->grab().save(folder.filePath(name))) return 1;
    }
    return 0;
}

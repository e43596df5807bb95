// SPDX-License-Identifier: MIT
#include "app/main/main_window.h"

#include "app/artwork/artwork_page.h"
#include "app/buying/buying_page.h"
#include "app/counter/counter_page.h"
#include "app/designs/designs_page.h"
#include "app/desk/field_binding.h"
#include "app/desk/fonts.h"
#include "app/desk/message_bar.h"
#include "app/desk/palette.h"
#include "app/desk/tab_order.h"
#include "app/desk/typed_field.h"
#include "app/first_hour/first_hour_page.h"
#include "app/main/artwork_pages.h"
#include "app/session/settings.h"
#include "app/supplies/supplies_page.h"
#include "app/words/words.h"
#include "db/messages.h"

#include <QAction>
#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMimeData>
#include <QPointer>
#include <QScreen>
#include <QScrollArea>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace sp::program {

MainWindow::MainWindow(std::unique_ptr<db::Book> book, desk::Theme& theme, desk::Prompter& prompter, QWidget* parent)
    : QMainWindow(parent)
    , m_theme(theme)
    , m_prompter(prompter)
    , m_session(std::move(book))
    , m_presenter(m_session)
    , m_firstHour(m_session)
    , m_today(m_session)
    , m_indexKeeper(m_session)
    , m_formatter(QLocale(), m_session.shop()) {
    m_care = std::make_unique<BookCare>(
        BookCare::Parts{m_session, m_prompter, m_formatter, [this] { m_presenter.saveDraft(); }}, this);
    connect(m_care.get(), &BookCare::openBookAsked, this, &MainWindow::openBookAsked);
    connect(&m_session, &session::BookSession::troubled, this, &MainWindow::tell);
    connect(&m_presenter, &counter::CounterPresenter::repeated, this, &MainWindow::tellRepeated);
    connect(&m_session, &session::BookSession::saved, this, &MainWindow::noteSaved);
    connect(&m_session, &session::BookSession::changed, this, &MainWindow::refreshUndo);
    connect(&m_session, &session::BookSession::changed, this, &MainWindow::followShop);
    setAcceptDrops(true);
    nameWindow();
    resize(1366, 768);
    setMinimumSize(480, 320);
    restoreGeometry(session::kept(session::kWindowGeometry));
    stayOnScreen();
}

/// After the shop; while it has no name, after the file.
void MainWindow::nameWindow() {
    const auto& shop = m_session.shop();
    const auto name = shop.letterhead.name.empty()
                          ? QFileInfo(QString::fromStdString(m_session.book().file().string())).completeBaseName()
                          : QString::fromStdString(shop.letterhead.name);
    setWindowTitle(shop.isDemo ? tr("%1 (demo) – Stonepenny").arg(name) : tr("%1 – Stonepenny").arg(name));
}

void MainWindow::build() {
    desk::setZoom(session::kept(session::kZoom));
    auto* body = new QWidget(this);
    auto* row = new QHBoxLayout(body);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    auto* left = new QVBoxLayout;
    left->setContentsMargins(0, 0, 0, 0);
    left->setSpacing(0);
    m_rail = new desk::Rail(body);
    m_bookButton = new QToolButton(body);
    left->addWidget(m_rail, 1);
    // In a low window the rail scrolls, so that its last places can still be reached.
    auto* rail = new QWidget(body);
    rail->setLayout(left);
    auto* railFrame = new QScrollArea(body);
    railFrame->setFrameShape(QFrame::NoFrame);
    railFrame->setWidgetResizable(true);
    railFrame->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    railFrame->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    railFrame->setFocusPolicy(Qt::NoFocus);
    railFrame->setWidget(rail);
    row->addWidget(railFrame);
    m_railFrame = railFrame;
    auto* right = new QVBoxLayout;
    right->setSpacing(0);
    m_messages = new desk::MessageBar(body);
    m_messages->setContentsMargins(20, 20, 20, 0);
    right->addWidget(m_messages);
    m_stack = new QStackedWidget(body);
    right->addWidget(m_stack, 1);
    row->addLayout(right, 1);
    setCentralWidget(body);
    buildArtwork();
    buildRail();
    buildMenu();
    fitRail();
    m_rail->setCurrent(0);
    m_rail->setShown(railIndexOf(PlaceId::FirstSteps), m_session.shop().isBeingSetUp && !m_firstHour.isAllSettled());
}

/// As wide as its widest word, at the zoom in force.
void MainWindow::fitRail() { m_railFrame->setFixedWidth(m_rail->sizeHint().width()); }

/// The places use the session and the presenter, so they are deleted first. A backup may take a moment, which nobody
/// has to look at.
MainWindow::~MainWindow() {
    hide();
    m_care->end();
    delete takeCentralWidget();
}

/// Tab follows the layout; Qt's own chain follows the order of construction.
bool MainWindow::focusNextPrevChild(bool next) {
    return desk::moveFocus(*this, next) || QMainWindow::focusNextPrevChild(next);
}

void MainWindow::paintEvent(QPaintEvent* event) {
    QMainWindow::paintEvent(event);
    // The window is shown empty first, so that the user sees at once that the program starts. Its content needs the
    // fonts, which take longer to load.
    if (m_isFilled) return;
    // Runs once this paint is complete: queued behind it, then one more turn of the event loop.
    QMetaObject::invokeMethod(
        this, [this] { QTimer::singleShot(1, this, &MainWindow::fill); }, Qt::QueuedConnection);
}

void MainWindow::fill() {
    if (m_isFilled) return;
    m_isFilled = true;
    build();
    m_presenter.openLast();
    goTo(PlaceId::Counter);
    if (m_rail->isShown(railIndexOf(PlaceId::FirstSteps))) {
        m_firstHour.go(m_firstHour.firstOpen());
        goTo(PlaceId::FirstSteps);
    }
    refreshUndo();
    greet();
    m_care->begin(*m_messages);
    connect(&m_today, &jobs::TodayWatch::told, this, [this] {
        const auto number = static_cast<int>(m_today.asked().count());
        const auto said = words::counted("sp::program::MainWindow",
                                         QT_TRANSLATE_N_NOOP("sp::program::MainWindow", "%n things asked today"),
                                         "%n thing asked today", number);
        m_rail->setNumber(railIndexOf(PlaceId::Jobs), number, said);
    });
    m_today.look();
    m_indexKeeper.look();
    if (m_untold) tell(*std::exchange(m_untold, std::nullopt));
}

desk::MessageBar& MainWindow::messages() {
    fill();
    return *m_messages;
}

counter::CounterPage& MainWindow::counterPage() {
    fill();
    return *counter();
}

counter::CounterPresenter& MainWindow::presenter() {
    fill();
    return m_presenter;
}

void MainWindow::stayOnScreen() {
    const auto* there = screen();
    if (!there) return;
    const QRect room = there->availableGeometry().adjusted(0, 0, 0, -28); // the title bar
    resize(size().boundedTo(room.size()));
    if (!room.intersects(QRect(pos(), size()))) move(room.topLeft());
}

void MainWindow::buildRail() {
    m_places = placesOf(
        {m_session, m_presenter, m_firstHour, m_today, m_formatter, m_prompter, [this](PlaceId place) { goTo(place); },
         [this] { buyForOrder(); }, [this](const pricing::LeftOut& leftOut) { mend(leftOut); },
         [this] { askForCutFile(); }, [this] { m_artwork->estimate(); },
         [this](const base::Id& quote) {
             goTo(PlaceId::Counter);
             m_presenter.open(quote);
         },
         [this](const base::Id& quote) {
             goTo(PlaceId::Counter);
             if (m_presenter.open(quote)) m_presenter.repeat();
         },
         [this](const base::Id& quote) { revise(quote); }, [this](bool asksToGive) { showDifference(asksToGive); },
         [this](const base::Id& design) { design.isNone() ? goTo(PlaceId::Counter) : putOnOrder(design); },
         [this] { readPriceList(); },
         [this] {
             m_firstHour.setShown(false);
             goTo(PlaceId::Counter);
         }});
    for (const auto& place : m_places) m_rail->addPlace(place.icon, place.word, place.objectName);
    connect(m_rail, &desk::Rail::chosen, this,
            [this](int index) { goTo(m_places[static_cast<std::size_t>(index)].id); });
}

int MainWindow::railIndexOf(PlaceId id) const {
    const auto found =
        std::find_if(m_places.begin(), m_places.end(), [id](const Place& place) { return place.id == id; });
    return static_cast<int>(found - m_places.begin());
}

PlaceId MainWindow::current() const { return m_places[static_cast<std::size_t>(m_rail->current())].id; }

template<class Page>
Page* MainWindow::pageOf(PlaceId id) const {
    return m_places.empty() ? nullptr : qobject_cast<Page*>(m_places[static_cast<std::size_t>(railIndexOf(id))].page);
}

counter::CounterPage* MainWindow::counter() const { return pageOf<counter::CounterPage>(PlaceId::Counter); }

designs::DesignsPage* MainWindow::designs() const { return pageOf<designs::DesignsPage>(PlaceId::Designs); }

void MainWindow::buildArtwork() {
    m_artwork = new ArtworkPages(m_session, m_formatter, m_prompter, *m_stack, this);
    connect(m_artwork, &ArtworkPages::opening, this, [this] {
        fill();
        m_presenter.saveDraft();
    });
    connect(m_artwork, &ArtworkPages::refused, this, &MainWindow::tellHere);
    connect(m_artwork, &ArtworkPages::left, this, [this] { goTo(current()); });
    connect(m_artwork, &ArtworkPages::counted, this, &MainWindow::takeCounted);
    connect(m_artwork, &ArtworkPages::priced, this, &MainWindow::putOnOrder);
    connect(m_artwork, &ArtworkPages::made, this, [this](const base::Id& design) {
        goTo(PlaceId::Designs);
        designs()->open(design);
    });
}

void MainWindow::goTo(PlaceId place) {
    fill();
    m_presenter.saveDraft();
    const int index = railIndexOf(place);
    auto& wanted = m_places[static_cast<std::size_t>(index)];
    const bool isNew = wanted.page == nullptr;
    if (isNew) {
        wanted.page = wanted.make(m_stack);
        m_stack->addWidget(wanted.page);
    }
    if (!isNew && m_stack->currentWidget() == wanted.page && m_rail->current() == index && isVisible()) return;
    const auto unused = m_artwork->unusedFile();
    const auto before = current();
    m_stack->setCurrentWidget(wanted.page);
    if (m_rail->current() != index) m_rail->setCurrent(index);
    if (!unused.isEmpty()) tellUnused(unused, before);
    if (place == PlaceId::FirstSteps) pageOf<first_hour::FirstHourPage>(place)->focusStart();
    if (place != PlaceId::Counter) return;
    counter()->focusStart();
    tellUnread();
}

/// What was assigned is kept, and the way to it told.
void MainWindow::tellUnused(const QString& file, PlaceId countedAt) {
    m_messages->tell(desk::Tone::Jewel, tr("“%1” is counted and in no design yet.").arg(file), tr("Back to it"),
                     [this, countedAt] {
                         goTo(countedAt);
                         m_artwork->showCounted();
                     });
    m_messages->staysUntil(m_artwork, &ArtworkPages::opening);
}

void MainWindow::tellUnread() {
    if (m_session.isReadOnly()) return;
    if (m_messages->sentence() == std::exchange(m_unread, {})) m_messages->dismiss();
    for (const auto& there : m_places) {
        const QPointer<desk::TypedField> field =
            there.canHoldUnread && there.page ? desk::firstWrong(*there.page) : nullptr;
        if (!field) continue;
        m_unread = tr("%1, %2: what is typed there cannot be used; prices go by what was there before.")
                       .arg(there.word, field->accessibleName());
        m_messages->tell(desk::Tone::Warn, m_unread, tr("Mend it"), [this, place = there.id, field] {
            goTo(place);
            if (field) desk::focusOn(*field);
        });
        return;
    }
}

void MainWindow::buyForOrder() {
    goTo(PlaceId::Buying);
    auto* page = pageOf<buying::BuyingPage>(PlaceId::Buying);
    const auto& lines = m_presenter.order().lines;
    if (lines.size() == 1 && lines.front().places.size() == 1 && m_session.design(lines.front().first().design))
        page->showDesign(lines.front().first().design, lines.front().quantity.value());
    else
        page->showOrder();
    page->focusStart();
}

/// The same keys finish a step of setting up.
void MainWindow::giveOrGoOn() {
    if (current() == PlaceId::FirstSteps) return pageOf<first_hour::FirstHourPage>(PlaceId::FirstSteps)->goOn();
    goTo(PlaceId::Counter);
    counter()->issue();
}

/// To the field on which a price depends: the shop's and the bench's are in Shop, a material's in Supplies.
void MainWindow::mend(const pricing::LeftOut& leftOut) {
    const auto place = leftOut.material.isNone() ? PlaceId::Shop : PlaceId::Supplies;
    goTo(place);
    if (auto* supplies = pageOf<supplies::SuppliesPage>(PlaceId::Supplies); supplies && place == PlaceId::Supplies)
        supplies->open(leftOut.material);
    auto* page = m_places[static_cast<std::size_t>(railIndexOf(place))].page;
    auto* field = desk::entryOf(*page, *leftOut.field);
    if (!field) field = page->findChild<QWidget*>(QStringLiteral("addPack")); // of a material without any pack
    if (field) { desk::focusOn(*field); }
}

void MainWindow::greet() {
    if (m_session.isReadOnly()) {
        const auto& why = *m_session.book().readOnlyBecause();
        const bool isShared =
            why.fault == idOf(db::Fault::InNetworkFolder) || why.fault == idOf(db::Fault::InSyncedFolder);
        m_messages->tell(desk::Tone::Warn, words::sentence(why),
                         isShared ? tr("Copy it to this computer") : tr("Save a copy"),
                         [this, isShared] { isShared ? m_care->moveHere() : m_care->saveCopy(); });
        m_messages->setClosable(false);
        return;
    }
    if (m_session.shop().isDemo) greetDemo();
}

/// Stays when its button was pressed: one may think better of it, and the way to an own book is kept.
void MainWindow::greetDemo() {
    counter()->messages().setClosable(true); // a revision's note is not
    counter()->messages().tell(desk::Tone::Jewel, tr("A demo book: look around, nothing here is yours."),
                               tr("Start my own book"), [this] {
                                   greetDemo();
                                   Q_EMIT newBookAsked();
                               });
}

void MainWindow::followShop() {
    nameWindow();
    fitPlaces();
    const desk::Formatter now(QLocale(), m_session.shop());
    const bool same = now.currency() == m_formatter.currency() && now.lengthUnit() == m_formatter.lengthUnit() &&
                      now.temperatureUnit() == m_formatter.temperatureUnit();
    if (same) return;
    // Deferred: the page that made the change is still inside its own signal handler.
    QMetaObject::invokeMethod(this, &MainWindow::rebuildPages, Qt::QueuedConnection);
}

/// The first steps stay once they are all done, and leave when they are put away.
void MainWindow::fitPlaces() {
    if (!m_rail) return;
    const int index = railIndexOf(PlaceId::FirstSteps);
    const bool wanted = m_session.shop().isBeingSetUp;
    if (wanted != m_rail->isShown(index) && (!wanted || !m_firstHour.isAllSettled())) m_rail->setShown(index, wanted);
}

void MainWindow::readPriceList() {
    const auto supplier = m_firstHour.makeSupplier(first_hour::SupplyGroup::Stones);
    if (!supplier) return; // said above the places
    goTo(PlaceId::Supplies);
    auto* page = pageOf<supplies::SuppliesPage>(PlaceId::Supplies);
    page->open(*supplier);
    page->readPriceList();
}

void MainWindow::rebuildPages() {
    m_formatter = desk::Formatter(QLocale(), m_session.shop());
    const auto before = current();
    const auto focused = focusWidget() ? focusWidget()->objectName() : QString();
    for (auto& place : m_places) {
        delete place.page;
        place.page = nullptr;
    }
    m_artwork->reset();
    goTo(PlaceId::Counter);
    goTo(before);
    if (auto* field = focused.isEmpty() ? nullptr : m_stack->currentWidget()->findChild<QWidget*>(focused))
        desk::focusOn(*field); // where one was
}

void MainWindow::tell(const base::Error& error) {
    if (!m_messages) {
        m_untold = error;
        return;
    }
    const auto sentence = words::sentence(error);
    m_trouble = sentence;
    m_messages->tell(desk::Tone::Warn, sentence, tr("Save a copy"), [this] { m_care->saveCopy(); });
    if (auto* page = counter()) page->setSaveNote(tr("Not saved: %1").arg(sentence), true);
}

void MainWindow::noteSaved() {
    // This save succeeded, so the error of an earlier one is taken down.
    if (!m_trouble.isEmpty() && m_messages->sentence() == std::exchange(m_trouble, {})) m_messages->dismiss();
    if (auto* page = counter()) page->setSaveNote(tr("Saved %1").arg(m_formatter.clock(m_session.timeOfDay())), false);
    refreshUndo();
}

void MainWindow::refreshUndo() {
    if (!m_undo) return;
    const auto undo = m_session.undoText();
    const auto redo = m_session.redoText();
    m_undo->setText(undo.isEmpty() ? tr("Un&do") : tr("Un&do: %1").arg(undo));
    m_redo->setText(redo.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(redo));
}

void MainWindow::findHere() {
    fill();
    for (const auto& place : m_places)
        if (place.page && place.page == m_stack->currentWidget()) place.focusFind(*place.page);
}

void MainWindow::findQuote() {
    goTo(PlaceId::Jobs);
    findHere();
}

void MainWindow::undo() {
    if (m_artwork->undo()) return;
    m_presenter.saveDraft();
    const auto what = m_session.undoText();
    if (what.isEmpty()) return;
    const auto act = [this, what] {
        if (m_session.undo()) tellTurned(tr("Undone: %1.").arg(what));
    };
    if (!showsGivenQuote()) return act();
    m_messages->tell(desk::Tone::Jewel,
                     tr("Nothing of a given quote is undone. Elsewhere in the book the last was: %1.").arg(what),
                     tr("Undo that"), act);
    m_messages->staysUntil(&m_presenter, &counter::CounterPresenter::orderShown);
}

void MainWindow::redo() {
    if (m_artwork->redo()) return;
    m_presenter.saveDraft();
    const auto what = m_session.redoText();
    if (what.isEmpty()) return;
    const auto act = [this, what] {
        if (m_session.redo()) tellTurned(tr("Done again: %1.").arg(what));
    };
    if (!showsGivenQuote()) return act();
    m_messages->tell(desk::Tone::Jewel,
                     tr("Nothing of a given quote is done again. Elsewhere in the book it would be: %1.").arg(what),
                     tr("Do that again"), act);
    m_messages->staysUntil(&m_presenter, &counter::CounterPresenter::orderShown);
}

/// A change is always of something else then, and nobody sees it happen.
bool MainWindow::showsGivenQuote() const {
    return counter() && m_stack->currentWidget() == counter() && m_presenter.isIssued();
}

/// Shown by the window, since the change may belong to a place that is not in view.
void MainWindow::tellTurned(const QString& sentence) {
    m_messages->tell(desk::Tone::Jewel, sentence);
    m_messages->staysUntil(&m_session, &session::BookSession::saved);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    m_presenter.saveDraft();
    session::save(session::kWindowGeometry, saveGeometry());
    QMainWindow::closeEvent(event);
}

/// Somebody may have moved or overwritten the book from another window.
void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::ActivationChange && isActiveWindow()) m_session.notice();
}

void MainWindow::askForCutFile() {
    const auto file = m_prompter.fileToOpen({tr("Count a cut file"),
                                             session::folderOf(session::kCutFilesIn),
                                             {},
                                             tr("Cut files (*.svg *.svgz *.dxf *.plt);;All files (*)"),
                                             {}});
    if (!file) return;
    session::noteFolderOf(session::kCutFilesIn, *file);
    countFile(*file);
}

void MainWindow::countFile(const QString& file) {
    fill();
    artwork::Destination destination;
    const bool atDesigns = designs() && m_stack->currentWidget() == designs();
    destination.isOrder = current() == PlaceId::Counter;
    if (atDesigns)
        destination.openDesign = designs()->currentDesign();
    else if (destination.isOrder && m_presenter.place() && m_presenter.canChange())
        destination.openDesign = m_presenter.place()->design;
    m_artwork->count(file, destination);
}

void MainWindow::takeCounted(const base::Id& design) {
    const bool isOrder = current() == PlaceId::Counter;
    if (!isOrder) {
        goTo(current());
        if (designs()) designs()->open(design);
        return;
    }
    putOnOrder(design);
}

void MainWindow::putOnOrder(const base::Id& design) {
    goTo(PlaceId::Counter);
    if (m_presenter.isIssued()) m_presenter.startNew();
    if (m_presenter.place() && m_presenter.place()->design == design) {
        m_presenter.takeDesign();
        return;
    }
    m_presenter.addDesign(design);
    counter()->focusPieces();
}

void MainWindow::tellHere(const QString& sentence, const QString& shapesIn) {
    const bool atDesigns = designs() && m_stack->currentWidget() == designs();
    if (!atDesigns) goTo(PlaceId::Counter);
    auto& messages = atDesigns ? designs()->messages() : counter()->messages();
    if (shapesIn.isEmpty())
        messages.tell(desk::Tone::Warn, sentence);
    else
        messages.tell(desk::Tone::Warn, sentence, artwork::ArtworkPage::estimateWord(),
                      [this, shapesIn] { m_artwork->estimateFile(shapesIn); });
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    for (const auto& url : event->mimeData()->urls())
        if (url.isLocalFile()) event->acceptProposedAction();
}

/// A job book is opened; any other file is read as a cut file, and the reader says what is wrong with it.
void MainWindow::dropEvent(QDropEvent* event) {
    for (const auto& url : event->mimeData()->urls()) {
        if (!url.isLocalFile()) continue;
        event->acceptProposedAction();
        const auto file = url.toLocalFile();
        if (file.endsWith(QLatin1String(".jobbook")))
            Q_EMIT openBookAsked(file);
        else if (m_artwork->isEstimating())
            m_artwork->estimateFile(file);
        else
            countFile(file);
        return;
    }
}

} // namespace sp::program

#include "moc_main_window.cpp"

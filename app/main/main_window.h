// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/prompter.h"
#include "app/desk/rail.h"
#include "app/desk/theme.h"
#include "app/first_hour/first_hour_presenter.h"
#include "app/format/formatter.h"
#include "app/main/book_care.h"
#include "app/main/places.h"
#include "app/session/book_session.h"
#include "app/session/index_keeper.h"

#include <QMainWindow>
#include <QStackedWidget>

#include <functional>
#include <optional>

class QMenu;
class QToolButton;

namespace sp::counter {
class CounterPage;
}

namespace sp::designs {
class DesignsPage;
}

namespace sp::desk {
class MessageBar;
}

namespace sp::program {

class ArtworkPages;
struct KeyWords;

/// The window: the rail at the left, the current place beside it. It shows one job book; opening another makes a new
/// window.
class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    MainWindow(std::unique_ptr<db::Book> book, desk::Theme& theme, desk::Prompter& prompter, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Created on the first call, at the latest right after the window's first paint.
    counter::CounterPage& counterPage();
    counter::CounterPresenter& presenter();
    session::BookSession& session() { return m_session; }
    BookCare& care() { return *m_care; }
    /// Messages about the book, shown above every place.
    desk::MessageBar& messages();
    void goTo(PlaceId place);
    /// Counts a cut file and shows it; a file that cannot be read leaves everything as it is and says so.
    void countFile(const QString& file);

  Q_SIGNALS:
    void newBookAsked();
    void demoAsked();
    void openBookAsked(const QString& file); ///< empty: ask which

  protected:
    bool focusNextPrevChild(bool next) override;
    void paintEvent(QPaintEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void nameWindow();
    void build();
    void buildRail();
    void buildArtwork();
    PlaceId current() const;
    int railIndexOf(PlaceId id) const;
    /// Null until the place is visited.
    template<class Page>
    Page* pageOf(PlaceId id) const;
    counter::CounterPage* counter() const;
    designs::DesignsPage* designs() const;
    void buyForOrder();
    void giveOrGoOn();
    void mend(const pricing::LeftOut& leftOut);
    void buildMenu();
    void fitRail();
    QAction* act(QMenu* menu, const QString& text, const QKeySequence& keys, std::function<void()> work);
    static void greyUnless(QMenu* menu, QAction* action, std::function<bool()> canBeDone);
    void buildLookMenu(QMenu* menu);
    void buildLanguageMenu(QMenu* menu);
    void buildTurnBackMenu(QMenu* menu);
    void buildLastBooksMenu(QMenu* menu);
    void showKeys();
    std::vector<KeyWords> formulasOfATrial();
    void fill();
    void greet();
    void greetDemo();
    void stayOnScreen();
    void followShop();
    void fitPlaces();
    void readPriceList();
    void rebuildPages();
    void tell(const base::Error& error);
    void noteSaved();
    void findHere();
    /// Warns of an entry in another place that cannot be read: prices at the Counter still use its last good value.
    void tellUnused(const QString& file, PlaceId countedAt);
    void tellUnread();
    void findQuote();
    void undo();
    bool showsGivenQuote() const;
    void redo();
    void tellTurned(const QString& sentence);
    void tellRepeated(const db::Quote& given);
    void revise(const base::Id& quote);
    void showDifference(bool asksToGive);
    void refreshUndo();
    void about();
    void askForCutFile();
    void takeCounted(const base::Id& design);
    void putOnOrder(const base::Id& design);
    void tellHere(const QString& sentence, const QString& shapesIn = {});
    void zoomTo(int percent);

    desk::Theme& m_theme;
    desk::Prompter& m_prompter;
    session::BookSession m_session;
    counter::CounterPresenter m_presenter;
    first_hour::FirstHourPresenter m_firstHour;
    jobs::TodayWatch m_today;
    session::IndexKeeper m_indexKeeper;
    desk::Formatter m_formatter;
    std::unique_ptr<BookCare> m_care;
    desk::Rail* m_rail = nullptr;
    QWidget* m_railFrame = nullptr; ///< in which the rail scrolls
    QToolButton* m_bookButton = nullptr;
    desk::MessageBar* m_messages = nullptr;
    std::optional<base::Error> m_untold; ///< kept until the message bar exists
    QString m_unread;                    ///< the warning shown about an entry elsewhere that cannot be read
    QString m_trouble;                   ///< the error of the last read or save, until a save succeeds
    QStackedWidget* m_stack = nullptr;
    bool m_isFilled = false; ///< the first place has been built
    ArtworkPages* m_artwork = nullptr;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    std::vector<Place> m_places;
};

} // namespace sp::program

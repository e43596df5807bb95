// SPDX-License-Identifier: MIT
// Text zoom: everything grows at once, and nothing is cut or out of reach in windows of usual sizes.
#include "app/desk/fonts.h"
#include "tests/app/every_dialog.h"
#include "tests/app/language/onlooker.h"

#include <QAbstractButton>
#include <QLabel>
#include <QStyle>

using namespace sp;
using program::PlaceId;

namespace {

class Zoom : public test::EveryDialog {
  protected:
    ~Zoom() override { desk::setZoom(100); }

    void zoomTo(int percent) {
        while (desk::zoom() < percent) press(Qt::Key_Plus, Qt::ControlModifier);
        while (desk::zoom() > percent) press(Qt::Key_Minus, Qt::ControlModifier);
        test::handleQueued();
    }
    void expectInWindow(const char* name, const QString& where) {
        const auto* widget = find<>(name);
        EXPECT_EQ(widget->visibleRegion().boundingRect(), widget->rect()) << where.toStdString() << ": " << name;
    }

    test::Onlooker m_onlooker;
};

TEST_F(Zoom, cutsNothingInWindowsOfUsualSizes) {
    orderLantern();
    for (const QSize size : {QSize(1366, 768), QSize(1920, 1080)})
        for (const int percent : {80, 100, 125, 150, 200}) {
            m_window->resize(size);
            zoomTo(percent);
            for (int place = 0; place < test::kPlaceCount; ++place) {
                m_window->goTo(static_cast<PlaceId>(place));
                test::handleQueued();
                const auto where = QStringLiteral("%1 %, %2 wide, place %3").arg(percent).arg(size.width()).arg(place);
                m_onlooker.measureAll(*m_window, where);
                m_onlooker.lookForHidden(*m_window, where);
                for (const char* name : {"placeCounter", "placeShop", "book"}) expectInWindow(name, where);
            }
        }
    EXPECT_EQ(m_onlooker.count(), 0U) << m_onlooker.found();
}

TEST_F(Zoom, cutsNothingOfTheFirstSteps) {
    m_window->goTo(PlaceId::FirstSteps);
    for (const int percent : {100, 200}) {
        zoomTo(percent);
        for (int step = 1; step <= 7; ++step) {
            find<QAbstractButton>(QStringLiteral("firstStep%1").arg(step).toLatin1().constData())->click();
            test::handleQueued();
            const auto where = QStringLiteral("%1 %, step %2").arg(percent).arg(step);
            m_onlooker.measureAll(*m_window, where);
            m_onlooker.lookForHidden(*m_window, where);
        }
    }
    EXPECT_EQ(m_onlooker.count(), 0U) << m_onlooker.found();
}

// On a screen of 1366 × 768, of which the title bar and a panel take a part.
TEST_F(Zoom, cutsNothingOfTheDialogs) {
    zoomTo(200);
    forEachDialog([&](QDialog& dialog, const std::string& name) {
        const auto where = QStringLiteral("200 %, %1").arg(QString::fromStdString(name));
        const QSize room(1366, 700);
        const auto least = dialog.minimumSizeHint().expandedTo(dialog.minimumSize());
        EXPECT_LE(least.width(), room.width()) << name;
        EXPECT_LE(least.height(), room.height()) << name;
        dialog.resize(dialog.size().boundedTo(room));
        test::handleQueued();
        EXPECT_LE(dialog.width(), room.width()) << name;
        EXPECT_LE(dialog.height(), room.height()) << name;
        m_onlooker.measureAll(dialog, where);
    });
    EXPECT_EQ(m_onlooker.count(), 0U) << m_onlooker.found();
}

TEST_F(Zoom, growsAllAtOnce) {
    orderLantern();
    const auto heightOf = [this](const char* name) { return find<>(name)->sizeHint().height(); };
    const char* const names[] = {"toPay", "customer", "give", "onWall", "saved"};
    std::map<std::string, int> before;
    for (const char* name : names) before[name] = heightOf(name);
    const auto box = m_window->style()->pixelMetric(QStyle::PM_IndicatorWidth);
    std::map<const QLabel*, int> labels;
    for (const auto* label : m_window->findChildren<QLabel*>())
        if (!label->text().isEmpty()) labels[label] = label->font().pixelSize();
    ASSERT_GT(labels.size(), 40U);
    zoomTo(200);
    for (const auto& [label, size] : labels)
        EXPECT_EQ(label->font().pixelSize(), 2 * size) << label->text().toStdString();
    for (const char* name : names) EXPECT_GE(heightOf(name), before[name] * 3 / 2) << name;
    EXPECT_EQ(m_window->style()->pixelMetric(QStyle::PM_IndicatorWidth), box * 2);
    zoomTo(100);
    for (const char* name : names) EXPECT_EQ(heightOf(name), before[name]) << name;
}

// A folded list and its card are one place: what is chosen in the one is shown in the other.
TEST_F(Zoom, showsTheCardOfWhatIsChosenWhereThereIsRoomForOneSide) {
    zoomTo(200);
    m_window->goTo(PlaceId::Designs);
    test::handleQueued();
    EXPECT_FALSE(find<>("designName")->isVisible());
    find<>("designs")->setFocus();
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_TRUE(find<>("designName")->isVisible());
    press(Qt::Key_F, Qt::ControlModifier);
    EXPECT_EQ(focused(), "findDesign");
    EXPECT_TRUE(find<>("findDesign")->isVisible());
    find<QAbstractButton>("newDesign")->click();
    EXPECT_EQ(focused(), "designName");
    EXPECT_TRUE(find<>("designName")->isVisible());
}

} // namespace

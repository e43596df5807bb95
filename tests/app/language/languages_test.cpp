// SPDX-License-Identifier: MIT
// The languages that come with the program: each is whole, keeps the places for values, has room wherever English has,
// and serves papers for a customer while the window speaks another.
#include "app/format/parse_day.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "app/words/translations.h"
#include "tests/app/every_dialog.h"
#include "tests/app/language/onlooker.h"
#include "tests/support/found_texts.h"
#include "tests/support/sales.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>
#include <thread>

using namespace sp;
using program::PlaceId;
using testing::IsEmpty;

namespace {

/// A text and what a file makes of it, in as many forms as its language has.
struct Translated {
    QString source;
    QStringList forms;
    bool isFinished = true;
};
using TextKey = std::tuple<std::string, std::string, std::string>; ///< context, source, comment

std::map<TextKey, Translated> translatedIn(const QString& path) {
    std::map<TextKey, Translated> texts;
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    QString context;
    QString comment;
    QString said;
    Translated text;
    while (!xml.atEnd()) {
        const auto token = xml.readNext();
        const auto name = xml.name();
        if (token == QXmlStreamReader::StartElement) {
            if (name == QLatin1String("name")) context = xml.readElementText();
            if (name == QLatin1String("message")) {
                text = {};
                comment.clear();
            }
            if (name == QLatin1String("source")) text.source = xml.readElementText();
            if (name == QLatin1String("comment")) comment = xml.readElementText();
            if (name == QLatin1String("numerusform")) text.forms << xml.readElementText();
            if (name == QLatin1String("translation")) {
                text.isFinished = !xml.attributes().hasAttribute(QLatin1String("type"));
                said.clear();
            }
        } else if (token == QXmlStreamReader::Characters) {
            said += xml.text();
        } else if (token == QXmlStreamReader::EndElement && name == QLatin1String("translation")) {
            if (text.forms.isEmpty() && !said.trimmed().isEmpty()) text.forms << said;
        } else if (token == QXmlStreamReader::EndElement && name == QLatin1String("message")) {
            texts[{context.toStdString(), text.source.toStdString(), comment.toStdString()}] = text;
        }
    }
    EXPECT_FALSE(xml.hasError()) << path.toStdString();
    return texts;
}

/// The places for values in their order: "%1", "%L2", "%n".
QStringList placesOf(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%L?(?:\\d+|n)"));
    QStringList places;
    for (auto found = place.globalMatch(text); found.hasNext();) places << found.next().captured();
    places.sort();
    return places;
}

QStringList languageFiles() {
    QStringList files;
    const QDir folder(QStringLiteral(TRANSLATIONS));
    for (const auto& name : folder.entryList({QStringLiteral("stonepenny_*.ts")})) files << folder.filePath(name);
    return files;
}

TEST(LanguageFiles, areSpanishAndGermanAtLeast) {
    const auto names = QDir(QStringLiteral(TRANSLATIONS)).entryList({QStringLiteral("*.ts")});
    EXPECT_TRUE(names.contains(QStringLiteral("stonepenny_es.ts")));
    EXPECT_TRUE(names.contains(QStringLiteral("stonepenny_de.ts")));
}

TEST(LanguageFiles, haveEveryTextOfTheProgramAndNoOther) {
    const auto found = test::foundTexts();
    if (found.empty()) GTEST_SKIP() << "the tree was configured without lupdate (Debian: qt6-l10n-tools)";
    for (const auto& file : languageFiles()) {
        auto texts = translatedIn(file);
        std::vector<std::string> lacking;
        for (const auto& one : found) {
            const auto text = texts.find({one.context, one.source, one.comment});
            const bool isThere = text != texts.end() && text->second.isFinished && !text->second.forms.isEmpty();
            if (!isThere) lacking.push_back(one.context + ": " + one.source);
            if (text != texts.end()) texts.erase(text);
        }
        EXPECT_THAT(lacking, IsEmpty()) << file.toStdString() << ": bring it up to date (ninja translations)";
        for (const auto& [key, text] : texts)
            ADD_FAILURE() << file.toStdString() << ": nothing asks for \"" << std::get<1>(key) << "\"";
    }
}

TEST(LanguageFiles, keepThePlacesForValues) {
    for (const auto& file : languageFiles())
        for (const auto& [key, text] : translatedIn(file))
            for (const auto& form : text.forms) {
                auto wanted = placesOf(text.source);
                // "one piece" need not say its number.
                if (text.forms.size() > 1 && !form.contains(QLatin1String("%n")))
                    wanted.removeAll(QStringLiteral("%n"));
                EXPECT_EQ(placesOf(form), wanted) << file.toStdString() << ": " << std::get<0>(key) << ": "
                                                  << text.source.toStdString() << " -> " << form.toStdString();
                EXPECT_EQ(form.count(QLatin1Char('\n')), text.source.count(QLatin1Char('\n'))) << form.toStdString();
            }
}

TEST(ManPages, knowTheSameVerbsAndOptions) {
    const auto wordsOf = [](const QString& name) {
        QFile file(QStringLiteral(PACKAGING) + QLatin1Char('/') + name);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
        static const QRegularExpression word(QStringLiteral("\\\\-\\\\-[a-z]+(?:\\\\-[a-z]+)*"));
        std::multiset<QString> words;
        const auto page = QString::fromUtf8(file.readAll());
        for (auto found = word.globalMatch(page); found.hasNext();) words.insert(found.next().captured());
        EXPECT_GT(words.size(), 50U);
        for (const auto& line : page.split(QLatin1Char('\n')))
            if (line.startsWith(QLatin1String(".TP"))) words.insert(QStringLiteral("paragraph"));
        return words;
    };
    EXPECT_EQ(wordsOf("stonepenny.es.1"), wordsOf("stonepenny.1"));
}

#ifdef LRELEASE

/// The program in one of its languages; English again after it.
struct InLanguage {
    explicit InLanguage(const QStringList& languages) {
        words::speakFirstOf(languages, {QStringLiteral(MADE_TRANSLATIONS)});
    }
    ~InLanguage() {
        for (auto* translator : QCoreApplication::instance()->findChildren<QTranslator*>()) delete translator;
    }
    InLanguage(const InLanguage&) = delete;
    InLanguage& operator=(const InLanguage&) = delete;
};

QString quoted() { return QCoreApplication::translate("Stage", "Quoted"); }

TEST(LanguagesThere, areThoseWithAFileAndEnglish) {
    const InLanguage english({});
    EXPECT_EQ(words::languagesThere(), (QStringList{"en", "de", "es"}));
    EXPECT_EQ(words::ownNameOf("en"), QStringLiteral("English"));
    EXPECT_EQ(words::ownNameOf("es"), QStringLiteral("Español"));
    EXPECT_EQ(words::ownNameOf("de"), QStringLiteral("Deutsch"));
    EXPECT_EQ(words::ownNameOf("eo"), QStringLiteral("eo"));
}

TEST(LanguageScope, isSpokenAsLongAsItLives) {
    const InLanguage english({});
    EXPECT_EQ(quoted(), "Quoted");
    {
        const words::LanguageScope spanish({"fr", "es-MX"});
        EXPECT_TRUE(words::LanguageScope::isOther());
        EXPECT_EQ(words::SheetWords().language(), "es");
        const auto said = quoted();
        EXPECT_NE(said, "Quoted");
        {
            const words::LanguageScope back({"en"});
            EXPECT_EQ(quoted(), "Quoted");
            const words::LanguageScope none({"xx"});
            EXPECT_EQ(quoted(), "Quoted") << "what nobody translated changes nothing";
        }
        EXPECT_EQ(quoted(), said);
        QString elsewhere;
        std::thread([&] { elsewhere = quoted(); }).join();
        EXPECT_EQ(elsewhere, "Quoted") << "the window goes on in its own";
    }
    EXPECT_EQ(quoted(), "Quoted");
    EXPECT_FALSE(words::LanguageScope::isOther());
}

TEST(LanguageScope, isEnglishWithinAWindowOfAnother) {
    const InLanguage german({"de"});
    EXPECT_NE(quoted(), "Quoted");
    const words::LanguageScope english({"en-GB"});
    EXPECT_EQ(quoted(), "Quoted");
    EXPECT_TRUE(words::LanguageScope::isOther());
    const words::LanguageScope own({"de"});
    EXPECT_FALSE(words::LanguageScope::isOther());
}

quoting::SheetContent sheetOf(test::Sale& sale, const quoting::SheetWords& words = words::SheetWords()) {
    layout::FitMemo fits;
    const auto result = words::resultOf(sale.order, sale.book, units::Date::parse("2026-12-24").value(), fits, words);
    EXPECT_TRUE(result);
    return result ? result->sheetFor("2026-0042") : quoting::SheetContent{};
}

TEST(Papers, areInTheCustomersLanguageElseTheShopsElseTheWindows) {
    const InLanguage english({});
    auto sale = test::studioSale();
    sale.book.customer.emplace();
    sale.book.customer->name = "Juniper Hill";
    sale.book.shop.paperLanguage.clear();
    EXPECT_EQ(sheetOf(sale).language, "en");
    sale.book.shop.paperLanguage = "de";
    EXPECT_EQ(sheetOf(sale).language, "de");
    sale.book.customer->language = "es-MX";
    const auto sheet = sheetOf(sale);
    EXPECT_EQ(sheet.language, "es");
    EXPECT_EQ(sheet.title, "Presupuesto 2026-0042");
    sale.book.customer->language = "eo";
    EXPECT_EQ(sheetOf(sale).language, "de") << "which nobody has translated";
    sale.book.customer->language = "en";
    EXPECT_EQ(sheetOf(sale).title, "Quote 2026-0042");
}

TEST(Papers, writeDaysInTheirLanguageAndFiguresAsTheShopDoes) {
    const InLanguage english({});
    auto sale = test::studioSale();
    const words::SheetWords own(
        {}, [](units::Date) { return "as this window"; }, [](units::Date) { return "so too"; });
    const auto hasDay = [](const quoting::SheetContent& sheet, const std::string& day) {
        return std::any_of(sheet.facts.begin(), sheet.facts.end(), [&](const auto& fact) { return fact.value == day; });
    };
    EXPECT_TRUE(hasDay(sheetOf(sale, own), "as this window"));
    sale.book.shop.paperLanguage = "es";
    EXPECT_TRUE(hasDay(sheetOf(sale, own), "24 dic 2026"));
}

/// Prices do not depend on who reads them.
TEST(Papers, askTheSameInEveryLanguage) {
    const InLanguage english({});
    auto sale = test::studioSale();
    const auto before = sheetOf(sale);
    for (const char* language : {"es", "de"}) {
        sale.book.shop.paperLanguage = language;
        const auto sheet = sheetOf(sale);
        EXPECT_EQ(sheet.toPay.value, before.toPay.value);
        ASSERT_EQ(sheet.lines.size(), before.lines.size());
        for (std::size_t i = 0; i < sheet.lines.size(); ++i) EXPECT_EQ(sheet.lines[i].amount, before.lines[i].amount);
    }
}

TEST(Papers, leaveOutTheCautionAboutTaxInWhicheverLanguageItWasKept) {
    const InLanguage english({});
    std::string spanish;
    {
        const words::LanguageScope scope({"es"});
        spanish = words::SheetWords().taxCaution();
    }
    EXPECT_NE(spanish, words::SheetWords().taxCaution());
    EXPECT_TRUE(words::SheetWords().isTaxCaution(spanish));
    EXPECT_FALSE(words::SheetWords().isTaxCaution("Our tax is simple."));
}

TEST(Days, areTypedInTheWordsOfTheWindowAndInEnglish) {
    const InLanguage spanish({"es"});
    const auto today = units::Date::parse("2026-11-25").value();
    const auto read = [&](const char* typed) {
        const auto day = desk::parseDay(QString::fromUtf8(typed), QLocale("es_US"), today);
        return day ? day->iso() : std::string();
    };
    for (const char* typed : {"mañana", "Mañana", "tomorrow", "1 día", "+1", "1 d"})
        EXPECT_EQ(read(typed), "2026-11-26") << typed;
    EXPECT_EQ(read("hoy"), "2026-11-25");
    EXPECT_EQ(read("2 semanas"), "2026-12-09");
    EXPECT_EQ(read("2 Wochen"), "");
}

struct SpokenFirst {
    InLanguage language;
};

/// The window in a language that comes with the program: what does not fit is cut.
class HasRoom : private SpokenFirst, public test::EveryDialog, public testing::WithParamInterface<const char*> {
  protected:
    HasRoom()
        : SpokenFirst{InLanguage({QString::fromLatin1(GetParam())})} {}
    void TearDown() override { EXPECT_EQ(m_onlooker.count(), 0U) << m_onlooker.found(); }

    test::Onlooker m_onlooker;
};

TEST_P(HasRoom, inEveryPlaceOfWindowsOfUsualSizes) {
    orderLantern();
    for (const QSize size : {QSize(1280, 800), QSize(1366, 768), QSize(1920, 1080)}) {
        m_window->resize(size);
        for (int place = 0; place < test::kPlaceCount; ++place) {
            goTo(static_cast<PlaceId>(place));
            const auto where = QStringLiteral("%1 wide, place %2").arg(size.width()).arg(place);
            m_onlooker.measureAll(*m_window, where);
            m_onlooker.lookForHidden(*m_window, where);
        }
    }
    m_window->resize(1280, 800);
    goTo(PlaceId::FirstSteps);
    for (int step = 1; step <= 7; ++step) {
        click(QStringLiteral("firstStep%1").arg(step).toLatin1().constData());
        m_onlooker.measureAll(*m_window, QStringLiteral("step %1").arg(step));
        m_onlooker.lookForHidden(*m_window, QStringLiteral("step %1").arg(step));
    }
}

TEST_P(HasRoom, inEveryDialog) {
    forEachDialog(
        [&](QDialog& dialog, const std::string& name) { m_onlooker.measureAll(dialog, QString::fromStdString(name)); });
}

INSTANTIATE_TEST_SUITE_P(Languages, HasRoom, testing::Values("es", "de"),
                         [](const auto& language) { return std::string(language.param); });

#endif

} // namespace

// SPDX-License-Identifier: MIT
// The way of a translation: what lupdate finds in the sources, what lrelease makes of it, what the program then says.
#include "app/words/translations.h"

#include "app/desk/typed_field.h"
#include "app/words/sources.h"
#include "app/words/words.h"
#include "core/supply/messages.h"
#include "tests/support/found_texts.h"
#include "tests/support/pseudo_language.h"
#include "tests/support/temp_folder.h"

#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTranslator>
#include <QXmlStreamWriter>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace sp;
using testing::IsEmpty;

namespace {

TEST(Languages, areTriedUntilEnglishIs) {
    const auto tried = [](const QStringList& wanted) { return words::languagesBeforeEnglish(wanted); };
    EXPECT_EQ(tried({"de-AT", "de", "en-GB", "fr"}), (QStringList{"de_AT", "de"}));
    EXPECT_EQ(tried({"pt-BR", "pt-Latn-BR", "pt"}), (QStringList{"pt_BR", "pt_Latn_BR", "pt"}));
    EXPECT_EQ(tried({"en-US", "en", "de"}), QStringList());
    EXPECT_EQ(tried({"C"}), QStringList());
}

TEST(Languages, withoutAFileItIsEnglish) {
    const test::TempFolder folder;
    EXPECT_FALSE(words::speakFirstOf({"eo"}, {QString::fromStdString(folder.path().string())}));
    EXPECT_EQ(QCoreApplication::translate("Stage", "Quoted"), "Quoted");
}

/// The texts that lupdate finds; the tests of the window, the verbs and the papers hold theirs against them.
class Texts : public testing::Test {
  protected:
    void SetUp() override {
        if (m_texts.empty()) GTEST_SKIP() << "the tree was configured without lupdate (Debian: qt6-l10n-tools)";
    }
    std::vector<test::FoundText> m_texts = test::foundTexts();
};

TEST_F(Texts, belongToAClassOrRoomThatLupdateKnows) {
    // It says so where a tr() stands outside any class it can tell; what it says of names in std holds no text of ours.
    std::vector<std::string> complaints;
    for (const auto& line : test::saidByLupdate()) {
        const auto has = [&](const char* words) { return line.find(words) != std::string::npos; };
        if (has("/app/") && !has("Scanning") && !has("Updating") && !has("Found") && !has("::std"))
            complaints.push_back(line);
    }
    EXPECT_THAT(complaints, IsEmpty());
    for (const auto& text : m_texts) EXPECT_FALSE(text.context.empty()) << text.source;
}

TEST_F(Texts, thatCountWithAPlaceholderHaveAFormForEachNumber) {
    for (const auto& text : m_texts)
        EXPECT_TRUE(text.isNumerus || text.source.find("%n") == std::string::npos)
            << text.context << ": " << text.source;
}

#ifdef LRELEASE

/// A file of translations in which every text wears accents, as a translator would hand it in.
void writeAccented(const std::vector<test::FoundText>& texts, const QString& path) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    QXmlStreamWriter xml(&file);
    xml.writeStartDocument();
    xml.writeStartElement("TS");
    xml.writeAttribute("version", "2.1");
    xml.writeAttribute("language", "eo");
    std::string context;
    for (const auto& text : texts) {
        if (text.context != context) {
            if (!context.empty()) xml.writeEndElement();
            context = text.context;
            xml.writeStartElement("context");
            xml.writeTextElement("name", QString::fromStdString(context));
        }
        xml.writeStartElement("message");
        if (text.isNumerus) xml.writeAttribute("numerus", "yes");
        xml.writeTextElement("source", QString::fromStdString(text.source));
        if (!text.comment.empty()) xml.writeTextElement("comment", QString::fromStdString(text.comment));
        xml.writeStartElement("translation");
        const auto accented = test::PseudoLanguage::accented(QString::fromStdString(text.source));
        if (text.isNumerus) {
            xml.writeTextElement("numerusform", QStringLiteral("1: ") + accented);
            xml.writeTextElement("numerusform", QStringLiteral("n: ") + accented);
        } else {
            xml.writeCharacters(accented);
        }
        xml.writeEndElement();
        xml.writeEndElement();
    }
    xml.writeEndDocument();
}

class Translation : public Texts {
  protected:
    void SetUp() override {
        Texts::SetUp();
        if (IsSkipped()) return;
        std::filesystem::create_directories(m_prefix.path() / "bin");
        std::filesystem::create_directories(m_prefix.path() / "share/stonepenny/translations");
        const auto source = path("eo.ts");
        writeAccented(m_texts, source);
        const auto said =
            run(QStringLiteral(LRELEASE), {source, "-qm", path("share/stonepenny/translations/stonepenny_eo.qm")});
        EXPECT_EQ(said.indexOf("Warning"), -1) << said.toStdString(); // of duplicates, of texts that are the same
    }
    void TearDown() override {
        for (auto* translator : QCoreApplication::instance()->findChildren<QTranslator*>()) delete translator;
    }

    QString path(const char* name) const { return QString::fromStdString((m_prefix.path() / name).string()); }
    static QByteArray run(const QString& program, const QStringList& arguments,
                          const QProcessEnvironment& environment = QProcessEnvironment::systemEnvironment()) {
        QProcess process;
        process.setProcessEnvironment(environment);
        process.start(program, arguments);
        EXPECT_TRUE(process.waitForFinished(120'000)) << program.toStdString();
        EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
        return process.readAllStandardOutput() + process.readAllStandardError();
    }

    test::TempFolder m_prefix;
};

TEST_F(Translation, isSpokenOnceItsFileIsThere) {
    ASSERT_TRUE(words::speakFirstOf({"xx", "eo"}, words::translationFolders(path("bin"))));
    const auto accented = [](const char* source) { return test::PseudoLanguage::accented(QString::fromUtf8(source)); };
    EXPECT_EQ(QCoreApplication::translate("Stage", "Quoted"), accented("Quoted"));
    EXPECT_EQ(words::sentence(base::Message{idOf(supply::Note::NoKitInTheBook), {}}),
              accented("There is no kit in the book: add one in Supplies."));
    EXPECT_EQ(desk::TypedField::tr("This is still empty."), accented("This is still empty."));
    // As many forms as the language has.
    EXPECT_TRUE(words::sentence(base::say(artwork::Note::GradientsStandFor, 1)).startsWith(QStringLiteral("1: ")));
    EXPECT_TRUE(words::sentence(base::say(artwork::Note::GradientsStandFor, 7)).startsWith(QStringLiteral("n: ")));
}

TEST_F(Translation, isSpokenByTheInstalledProgram) {
    ASSERT_TRUE(QFile::copy(QStringLiteral(STONEPENNY), path("bin/stonepenny")));
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.remove("LC_ALL");
    environment.insert("LANG", "C.UTF-8");
    const auto sentence = QStringLiteral("Stonepenny: what will this order cost, and what shall the customer pay?");
    const auto help = [&] { return QString::fromUtf8(run(path("bin/stonepenny"), {"--help"}, environment)); };
    environment.insert("LANGUAGE", "eo:en");
    EXPECT_TRUE(help().startsWith(test::PseudoLanguage::accented(sentence))) << help().toStdString();
    environment.insert("LANGUAGE", "en:eo");
    EXPECT_TRUE(help().startsWith(sentence)) << help().toStdString();
}

#endif

} // namespace

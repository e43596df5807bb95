// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>
#include <QTranslator>

#include <mutex>
#include <set>
#include <string>
#include <tuple>

namespace sp::test {

/// A language for tests: every letter of the source wears an accent and the whole is a third longer, so that a letter
/// of ASCII on the screen was not translated. Places (%1, %n), mnemonics and tags stay what they are. It remembers what
/// it was asked for.
class PseudoLanguage : public QTranslator {
  public:
    PseudoLanguage() { QCoreApplication::installTranslator(this); }
    ~PseudoLanguage() override { QCoreApplication::removeTranslator(this); }
    Q_DISABLE_COPY_MOVE(PseudoLanguage)

    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* comment, int count) const override {
        const std::lock_guard guard(m_lock);
        m_asked.insert({context, source, comment == nullptr ? "" : comment});
        return accented(QString::fromUtf8(source), count);
    }

    /// How a text of the source reads.
    static QString accented(const QString& words, int count = -1) {
        QString out;
        qsizetype letters = 0;
        bool isTag = false;
        for (qsizetype i = 0; i < words.size(); ++i) {
            const QChar c = words[i];
            isTag = (isTag || (c == QLatin1Char('<') && i + 1 < words.size() && words[i + 1] != QLatin1Char(' '))) &&
                    c != QLatin1Char('>');
            if (c == QLatin1Char('%') && i + 1 < words.size() && words[i + 1] == QLatin1Char('n')) {
                out += count < 0 ? QStringLiteral("%n") : QString::number(count);
                ++i;
            } else if (isTag || c.unicode() > 'z' || !c.isLetter()) {
                out += c;
            } else {
                out += accented(c);
                ++letters;
            }
        }
        return out + QString(letters / 3, QChar(0x00B7));
    }

    /// Context, source and comment.
    using Text = std::tuple<std::string, std::string, std::string>;
    std::set<Text> asked() const {
        const std::lock_guard guard(m_lock);
        return m_asked;
    }

  private:
    static QChar accented(QChar c) {
        static const QString plain = QStringLiteral("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ");
        static const QString dressed = QStringLiteral("áƀćďéƒǵĥíĵķĺṁńóṕɋŕśťúṽŵẋýžÁƁĆĎÉƑǴĤÍĴĶĹṀŃÓṔɊŔŚŤÚṼŴẊÝŽ");
        return dressed[plain.indexOf(c)];
    }

    mutable std::mutex m_lock; ///< what is planned or read beside the screen has words too
    mutable std::set<Text> m_asked;
};

} // namespace sp::test

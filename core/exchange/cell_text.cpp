#include "core/exchange/cell_text.h"

#include <QLocale>
#include <QStringList>

namespace core::exchange {

QString cellText(const std::optional<Day>& day) { return day ? isoText(*day) : QString(); }

QString cellText(const std::optional<int>& number) { return number ? QString::number(*number) : QString(); }

QString cellText(const std::optional<double>& number) {
    return number ? QString::number(*number, 'f', QLocale::FloatingPointShortest) : QString();
}

QString cellText(const std::optional<Quarters>& frames) { return frames ? framesText(*frames) : QString(); }

QString cellText(const std::optional<Decagrams>& weight) { return weight ? kilogramsText(*weight) : QString(); }

QString cellText(const std::optional<Millimetres>& length) { return length ? metresText(*length) : QString(); }

QString cellText(Signs signs) {
    QStringList words;
    for (size_t i = 0; i < wordsOf<Sign>().size(); ++i)
        if (signs.has(static_cast<Sign>(i))) words << word(static_cast<Sign>(i));
    return words.join(u' ');
}

QString nameText(const QString& text) { return noteText(text).trimmed(); }

QString noteText(const QString& text) { return text.trimmed().isEmpty() ? QString() : QString(text).remove(QChar()); }

} // namespace core::exchange

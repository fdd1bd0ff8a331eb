#include "ui/print/paper_choice.h"

#include <QLocale>
#include <QSettings>

namespace ui::print {

using core::report::Language;
using core::report::Paper;

namespace {

QString languageKey() { return QStringLiteral("paper/language"); }
QString sizeKey() { return QStringLiteral("paper/size"); }
QString largeKey() { return QStringLiteral("paper/large"); }

constexpr char kSpanish[] = "es";
constexpr char kEnglish[] = "en";
constexpr char kLetter[] = "letter";
constexpr char kA4[] = "a4";

} // namespace

Paper usualPaper() {
    return QLocale::system().measurementSystem() == QLocale::MetricSystem ? Paper::A4 : Paper::Letter;
}

PaperChoice lastPaperChoice() {
    const QSettings settings;
    PaperChoice choice;
    choice.language = QLocale::system().language() == QLocale::Spanish ? Language::Spanish : Language::English;
    choice.paper = usualPaper();
    const QString language = settings.value(languageKey()).toString();
    if (language == QLatin1StringView(kSpanish)) choice.language = Language::Spanish;
    if (language == QLatin1StringView(kEnglish)) choice.language = Language::English;
    const QString size = settings.value(sizeKey()).toString();
    if (size == QLatin1StringView(kLetter)) choice.paper = Paper::Letter;
    if (size == QLatin1StringView(kA4)) choice.paper = Paper::A4;
    choice.large = settings.value(largeKey(), false).toBool();
    return choice;
}

void rememberPaperChoice(const PaperChoice& choice) {
    QSettings settings;
    settings.setValue(languageKey(), QLatin1StringView(choice.language == Language::Spanish ? kSpanish : kEnglish));
    settings.setValue(sizeKey(), QLatin1StringView(choice.paper == Paper::Letter ? kLetter : kA4));
    settings.setValue(largeKey(), choice.large);
}

} // namespace ui::print

#include "app/arguments.h"

#include <QCommandLineParser>

namespace app {

Arguments::Arguments(const QStringList& words, const std::vector<Option>& options, const QStringList& positional)
    : m_names(positional) {
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    for (const Option& o : options)
        parser.addOption(QCommandLineOption(o.name, QString(), o.takesValue ? QStringLiteral("value") : QString()));
    if (!parser.parse(QStringList{QStringLiteral("yardwright")} + words)) throw UsageError(parser.errorText());
    m_words = parser.positionalArguments();
    if (m_words.size() < positional.size())
        throw UsageError(QStringLiteral("%1 is missing.").arg(positional.at(m_words.size())));
    if (m_words.size() > positional.size())
        throw UsageError(QStringLiteral("“%1” was not expected.").arg(m_words.at(positional.size())));
    for (const Option& o : options) {
        QStringList given = o.takesValue ? parser.values(o.name) : QStringList();
        if (!o.takesValue && parser.isSet(o.name)) given << QString();
        if (given.size() > 1 && !o.repeatable) throw UsageError(QStringLiteral("--%1 is given twice.").arg(o.name));
        m_values.emplace_back(o.name, given);
    }
}

QString Arguments::word(const QString& positional) const { return m_words.at(m_names.indexOf(positional)); }

QStringList Arguments::values(const QString& option) const {
    for (const auto& [name, given] : m_values)
        if (name == option) return given;
    return {};
}

std::optional<QString> Arguments::value(const QString& option) const {
    const QStringList given = values(option);
    return given.isEmpty() ? std::nullopt : std::optional(given.first());
}

QString Arguments::required(const QString& option) const {
    const auto given = value(option);
    if (!given) throw UsageError(QStringLiteral("--%1 is missing.").arg(option));
    return *given;
}

core::Day Arguments::day(const QString& option) const {
    const QString text = required(option);
    const auto day = core::parseIsoDay(text);
    if (!day)
        throw UsageError(
            QStringLiteral("--%1 “%2” is not a date, a date as 2026-09-20 was expected.").arg(option, text));
    return *day;
}

std::optional<int> Arguments::count(const QString& option, int least, int most) const {
    const auto text = value(option);
    if (!text) return std::nullopt;
    bool whole = false;
    const int number = text->toInt(&whole);
    if (!whole || number < least || number > most)
        throw UsageError(QStringLiteral("--%1 “%2” is not a whole number from %3 to %4.")
                             .arg(option, *text, QString::number(least), QString::number(most)));
    return number;
}

QString Arguments::choice(const QString& option, const QStringList& choices) const {
    const QString text = value(option).value_or(choices.first());
    if (!choices.contains(text))
        throw UsageError(
            QStringLiteral("--%1 “%2” is not one of %3.").arg(option, text, choices.join(QStringLiteral(", "))));
    return text;
}

} // namespace app

#pragma once

#include <QString>
#include <QStringList>

#include <optional>
#include <stdexcept>
#include <vector>

#include "core/base/day.h"

namespace app {

/// Wrong usage: exit status 2. The text is one sentence.
struct UsageError : std::runtime_error {
    explicit UsageError(const QString& text) : std::runtime_error(text.toStdString()) {}
};

/// One option of a command: `--name VALUE`, or a flag without a value.
struct Option {
    QString name;
    bool takesValue = true;
    bool repeatable = false;
};

/// The words after the command, taken apart. Every accessor throws UsageError where a value is malformed.
class Arguments {
public:
    /// `positional`: the names of the words that must stand there, in order ("BOOK"). Throws UsageError.
    Arguments(const QStringList& words, const std::vector<Option>& options, const QStringList& positional);

    QString word(const QString& positional) const;
    bool has(const QString& option) const { return !values(option).isEmpty(); }
    QStringList values(const QString& option) const;
    std::optional<QString> value(const QString& option) const;
    QString required(const QString& option) const;
    core::Day day(const QString& option) const; ///< required, ISO 8601
    std::optional<int> count(const QString& option, int least, int most) const;
    /// The value if it is one of `choices`, the first of them if the option is not there.
    QString choice(const QString& option, const QStringList& choices) const;

private:
    QStringList m_names;
    QStringList m_words;
    std::vector<std::pair<QString, QStringList>> m_values;
};

} // namespace app

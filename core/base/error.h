#pragma once

#include <QByteArray>
#include <QString>

#include <exception>

namespace core {

/// The text as a message shows it, whatever a file had in it: control characters, which a terminal would obey, and ends
/// of lines are blanks.
QString oneLine(QString text);

/// The one exception type. `userMessage` says what happened and what to do; `detail` is for the log (SQL, path, errno).
class Error : public std::exception {
public:
    /// The command line's exit status: 1, 4, 5. Hold: an edit refused because of a disease hold (4).
    /// Correction: taking a record back would change a foulbrood hold; it needs a reason and a name (4).
    enum class Kind { Internal, BadData, Book, Hold, Correction };

    Error(Kind kind, QString userMessage, QString detail = {});

    Kind kind() const { return m_kind; }
    const QString& userMessage() const { return m_user; }
    const QString& detail() const { return m_detail; }
    const char* what() const noexcept override { return m_utf8.constData(); }

private:
    Kind m_kind;
    QString m_user;
    QString m_detail;
    QByteArray m_utf8;
};

} // namespace core

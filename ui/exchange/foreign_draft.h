#pragma once

#include "core/exchange/foreign_look.h"
#include "core/exchange/kept_mapping.h"

#include <QCoreApplication>
#include <QString>

#include <optional>

namespace ui::exchange {

/// A file of any program and how it is to be read, while that is being settled. No widgets.
class ForeignDraft {
    Q_DECLARE_TR_FUNCTIONS(ForeignDraft)
public:
    /// Reads the file and proposes how to read it: as one of `kept` that was made for its header, else by what is found
    /// in it. One sentence where it cannot be used; then there is no file.
    QString open(const QString& path, const std::vector<core::exchange::KeptMapping>& kept);
    bool isOpen() const { return !m_path.isEmpty(); }
    const QString& path() const { return m_path; }
    qint64 bytes() const { return m_bytes.size(); }
    const QByteArray& text() const { return m_text; } ///< UTF-8, lines ended by LF
    const QStringList& header() const { return m_header; }
    const QStringList& samples() const { return m_samples; } ///< by column of the file
    /// The name of the kept mapping that it is read by; empty: none, or it was changed since.
    const QString& keptName() const { return m_keptName; }

    core::exchange::FileKind kind() const { return m_mapping.kind; }
    const core::exchange::CellForms& forms() const { return m_mapping.forms; }
    core::exchange::Encoding encoding() const { return m_encoding; }
    core::exchange::FoundForms found() const { return m_found; }
    const core::exchange::Mapping& mapping() const { return m_mapping; }
    /// What gives a column of ours; nullopt: it is left out.
    std::optional<core::exchange::ColumnMapping> column(const QString& ours) const;

    /// Columns of the same name are taken again.
    void setKind(core::exchange::FileKind kind);
    /// One sentence, and nothing changed, where the file is not text in it.
    QString setEncoding(core::exchange::Encoding encoding);
    void setForms(const core::exchange::CellForms& forms); ///< a new separator: a new header
    void setColumn(const QString& ours, const std::optional<core::exchange::ColumnMapping>& column);
    void setMapping(const core::exchange::KeptMapping& kept);
    void setKeptName(const QString& name) { m_keptName = name; }

    /// What was found in the file, in one line; and what cannot be told from it, empty where all can.
    QString foundText() const;
    QString doubtText() const;

private:
    void take(core::exchange::Decoded decoded);
    void readHeader();
    void propose();

    QString m_path;
    QByteArray m_bytes;
    QByteArray m_text;
    core::exchange::Encoding m_encoding = core::exchange::Encoding::Utf8;
    core::exchange::Encoding m_foundEncoding = core::exchange::Encoding::Utf8;
    core::exchange::FoundForms m_found;
    QStringList m_header;
    QStringList m_samples;
    core::exchange::Mapping m_mapping;
    QString m_keptName;
};

QString shownEncoding(core::exchange::Encoding encoding);
QString shownSeparator(char separator);
QString shownDecimal(core::exchange::DecimalMark mark);
QString shownDays(core::exchange::DayOrder order);

/// "ja = seen; nein = none" and back. `-` at the right: not recorded. A pair without a right side is not yet one, and
/// left out.
QString wordsText(const std::vector<std::pair<QString, QString>>& words);
std::vector<std::pair<QString, QString>> wordsFromText(const QString& text);

} // namespace ui::exchange

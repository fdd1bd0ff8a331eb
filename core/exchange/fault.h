#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <functional>
#include <vector>

namespace core::exchange {

/// Sentences of this folder, for translation.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(Exchange)
};

/// One thing wrong in one file.
struct Fault {
    QString file;    ///< as it was given
    qint64 line = 1; ///< line on which the row begins, from 1
    QString column;  ///< name from the header, or namelessColumn(), or "file"
    QString what;    ///< what is wrong, what was expected
    /// "FILE:LINE: COLUMN: what is wrong, what was expected"
    QString text() const;
};

/// A column that has no name, by its position from 0: "column 3".
QString namelessColumn(size_t at);

/// All faults of an import: the first kMostFaults are kept, the others counted.
class Faults {
public:
    static constexpr int kMostFaults = 50;

    void add(Fault fault);
    /// Those of one file after these, each column under another name.
    void addAll(const Faults& others, const std::function<QString(const QString& column)>& named);
    bool none() const { return m_count == 0; }
    qint64 count() const { return m_count; }
    const std::vector<Fault>& kept() const { return m_kept; }
    /// One line a fault kept, then the count of the others, where there are more.
    QStringList lines() const;

private:
    std::vector<Fault> m_kept;
    qint64 m_count = 0;
};

} // namespace core::exchange

#pragma once

#include <QObject>
#include <QSettings>

namespace ui::window {

/// Whether what the program remembers of this machine (recent books, sizes, columns, names) can be written; says it
/// once where it cannot.
class Remembered : public QObject {
    Q_OBJECT
public:
    explicit Remembered(QObject* parent);

    /// Done by itself every few seconds.
    void look();

signals:
    void failed(const QString& sentence);

private:
    QSettings m_settings; ///< of the same file as all others: what they could not write waits in it
    bool m_said = false;
};

} // namespace ui::window

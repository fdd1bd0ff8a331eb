#pragma once

#include "ui/desk/desk.h"
#include "ui/desk/file_trouble.h"

#include <QObject>
#include <QTimer>

namespace ui::copies {

/// Whether the file of the open book is still the one that is open, and nobody else came to write it. While it is not,
/// the desk can only be read; what was typed stays typed. Looks when it is told to, after an edit that failed, and
/// every second and a half until the trouble is over.
class FileWatch : public QObject {
    Q_OBJECT
public:
    explicit FileWatch(desk::Desk& desk, QObject* parent = nullptr);

    const desk::FileTrouble& trouble() const { return m_trouble; }
    void look();
    /// Another machine's note is no longer true. Throws Error as Session::overruleNote.
    void overruleNote();

signals:
    void changed();

private:
    void lookAsReader();
    void set(const desk::FileTrouble& trouble);

    desk::Desk& m_desk;
    desk::FileTrouble m_trouble;
    QTimer m_poll;
};

} // namespace ui::copies

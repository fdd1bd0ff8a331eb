#pragma once

#include "core/edit/backups.h"
#include "ui/desk/desk.h"

#include <QTimer>

#include <memory>

namespace ui::backup {

/// Makes the backups of the book on the desk while people work: soon after it is opened, where the last one lacks
/// something; some minutes after an edit; and what is missing when it is left. In slices, so that the window stays
/// alive. What cannot be made is said and tried again.
class Keeping : public QObject {
    Q_OBJECT
public:
    explicit Keeping(desk::Desk& desk, QObject* parent = nullptr);
    ~Keeping() override;

    bool running() const { return m_run != nullptr; }
    double share() const;
    /// At once, whether it lacks something or not.
    void begin();
    void stop(); ///< nothing is left of it
    /// The book is left: what the last backup lacks, in one go; of a large book not, its next opening does that.
    void finish();
    /// How long after the opening and after an edit.
    void setPatience(int afterOpening, int afterEdit); ///< milliseconds
    void waitForAsking();                              ///< none is made by itself

signals:
    void moved(); ///< another share is done, or it is over
    void made(const core::edit::Backup& backup);
    void failed(const QString& sentence);

private:
    void look();
    void step();
    void fail(const QString& why);

    desk::Desk& m_desk;
    QTimer m_wait;
    QTimer m_tick;
    int m_afterEdit;
    bool m_byItself = true;
    std::unique_ptr<core::edit::BackupRun> m_run;
};

} // namespace ui::backup

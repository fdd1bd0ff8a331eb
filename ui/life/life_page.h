#pragma once

#include "core/model/rows.h"
#include "ui/desk/desk.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace ui::life {

/// A page beside the card that shows one colony and reads of it only while it is shown.
class LifePage : public QWidget {
    Q_OBJECT
public:
    LifePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);

    /// nullopt: none is chosen. The same colony again: what is in the book of it may have changed.
    void setColony(std::optional<core::ColonyId> colony);
    std::optional<core::ColonyId> colony() const { return m_colony; }
    virtual QWidget* keys() = 0; ///< where its keys begin

protected:
    /// Of m_colony, on the desk's day; only while it is shown. Throws Error(Book).
    virtual void fill() = 0;
    void showEvent(QShowEvent* event) override;
    void say(const QString& heading, const QString& line); ///< above all else
    QVBoxLayout* below() const { return m_below; }

    desk::Desk& m_desk;
    Dialogs& m_dialogs;

private:
    void refill();

    std::optional<core::ColonyId> m_colony;
    bool m_stale = true;
    QLabel* m_heading;
    QLabel* m_line;
    QVBoxLayout* m_below;
};

} // namespace ui::life

#pragma once

#include "core/edit/session.h"
#include "ui/dialogs.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ui::history {

/// Which lines are shown: of one colony (typed, with completion), of one yard, with some words.
class FilterBar : public QWidget {
    Q_OBJECT
public:
    FilterBar(const core::edit::Session& session, Dialogs& dialogs, QWidget* parent = nullptr);

    /// What there is to choose among may be other now; what is typed stays. Throws Error(Book).
    void offer();
    /// As typed and chosen; says so where no colony has that name. Throws Error(Book).
    core::edit::HistoryFilter filter() const;
    void clear();
    QWidget* lastPart() const; ///< in the tab order
    bool empty() const;        ///< nothing is typed or chosen

protected:
    /// The colonies are listed when one is to be typed.
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void changed();

private:
    void look(const QString& problem) const;

    const core::edit::Session& m_session;
    Dialogs& m_dialogs;
    bool m_listed = false;
    QLineEdit* m_colony;
    QComboBox* m_yard;
    QLineEdit* m_words;
    QPushButton* m_all;
    QLabel* m_problem;
};

} // namespace ui::history

#pragma once

#include "core/edit/salvage.h"
#include "ui/dialogs.h"

#include <QWidget>

#include <functional>
#include <memory>

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace ui::look {
class WrappedLabel;
}

namespace ui::salvage {

/// A damaged book: what is wrong with it, and the two ways on: the newest backup in its place, or what can be read in a
/// new book. What is missing is shown before and kept beside the new book. The damaged file stays as it is.
class SalvageWindow : public QWidget {
    Q_OBJECT
public:
    /// `wrong`: what opening it said; empty: it was not tried.
    SalvageWindow(const QString& damaged, const QString& wrong, const core::Clock& clock, Dialogs& dialogs,
                  QWidget* parent);
    ~SalvageWindow() override;

    /// Reads the file and looks for a backup: with progress, and can be stopped.
    void read();

    QPushButton* backupButton() const { return m_place; }
    QPushButton* makeButton() const { return m_make; }
    QPushButton* againButton() const { return m_again; }
    QString account() const;
    QString backupText() const;
    QString said() const;

signals:
    /// The backup is to become the book; `why`: where it may lack what holds rest on.
    void placeAsked(const QString& book, const core::edit::Backup& backup,
                    const std::optional<core::edit::PutBack>& why);
    /// A new book was made; what is missing stands in the file `account`.
    void bookMade(const QString& book, const QString& account);

private:
    void build(const QString& wrong);
    void addWay(QVBoxLayout* down, const QString& title, look::WrappedLabel* text, QPushButton* button);
    void watched(const QString& sentence, const std::function<void(const core::Progress&)>& work);
    void settle();
    void make();
    void place();
    QString summary() const;

    QString m_damaged;
    const core::Clock& m_clock;
    Dialogs& m_dialogs;
    std::unique_ptr<core::edit::Salvage> m_salvage;
    look::WrappedLabel* m_wrong;
    look::WrappedLabel* m_backupText;
    look::WrappedLabel* m_summary;
    QPlainTextEdit* m_account;
    QPushButton* m_place;
    QPushButton* m_make;
    QPushButton* m_again;
    look::WrappedLabel* m_said;
};

/// How the newest sound backup stands to the damaged book, in sentences.
QString backupSentence(const core::edit::SalvageAccount& account);

} // namespace ui::salvage

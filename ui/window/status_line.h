#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace ui::window {

/// The foot of the window: what was done last, whether it is saved (a button: it opens the history), and whose word
/// counts. A hint of a menu stands in for the sentence while the menu is open.
class StatusLine : public QWidget {
    Q_OBJECT
public:
    enum class Book { None, Writable, ReadOnly };

    explicit StatusLine(QWidget* parent = nullptr);

    void setBook(Book book);
    void say(const QString& sentence);
    /// What an edit did: now in the book.
    void sayDone(const QString& sentence);
    /// What kept an edit out of the book; stands until something else is said.
    void sayNotSaved(const QString& why);
    void hint(const QString& sentence);

    QString saying() const; ///< the sentence, with "· saved" after an edit
    QPushButton* savedButton() const { return m_saved; }

signals:
    void historyAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    enum class Kind { Plain, Done, NotSaved };
    void take(Kind kind, const QString& sentence);
    void settle();
    void elide();

    Kind m_kind = Kind::Plain;
    Book m_book = Book::None;
    QString m_sentence;
    QString m_why; ///< of what was not saved
    QString m_hint;
    QLabel* m_saying;
    QLabel* m_dot;
    QPushButton* m_saved;
    QLabel* m_advice;
};

} // namespace ui::window

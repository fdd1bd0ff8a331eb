#pragma once

#include <QStringList>
#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ui::window {

/// Shown where there is nothing to draw yet: one sentence on what to do next, with its button.
class Welcome : public QWidget {
    Q_OBJECT
public:
    explicit Welcome(QWidget* parent = nullptr);

    /// No book is open.
    void showStart(const QStringList& recent);
    /// The open book has no yard yet.
    void showEmptyBook(const QString& title);
    /// From now on the start offers to make an invented book.
    void setDemoOffered();

signals:
    void makeAsked();
    void openAsked();
    void importAsked();
    void demoAsked();
    void yardAsked();
    void recentAsked(const QString& path);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void clear();
    void addTitle(const QString& text, const QString& sentence);
    QPushButton* addButton(const QString& text, bool primary);
    QVBoxLayout* m_column;
    bool m_demoOffered = false;
    QStringList m_recent; ///< as the start shows them
    bool m_start = false;
};

} // namespace ui::window

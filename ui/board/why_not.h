#pragma once

#include "ui/board/offers.h"
#include "ui/board/why_not_words.h"

#include <QFrame>

#include <optional>

class QLabel;
class QPushButton;
class QScrollArea;

namespace ui::board {

/// What stands against two colonies, in the rules' sentences; pinned from here where they may unite.
class WhyNotView : public QFrame {
    Q_OBJECT
public:
    explicit WhyNotView(QWidget* parent = nullptr);
    /// `pin`: offered below; nullopt: nothing is.
    void tell(const WhyNotText& text, const std::optional<Offer>& pin);
    QString text() const;

signals:
    void offerTaken(const ui::board::Offer& offer);
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void leave();

    QLabel* m_title;
    QLabel* m_lines;
    QScrollArea* m_scroll;
    QPushButton* m_pin;
    QPushButton* m_close;
    std::optional<Offer> m_offer;
};

} // namespace ui::board

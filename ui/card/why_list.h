#pragma once

#include <QString>
#include <QWidget>

#include <vector>

class QPushButton;

namespace ui::card {

/// One reason: what it says, and the small print of its rule and limits.
struct WhyText {
    QString text;  ///< may be empty: it stands elsewhere on the card
    QString title; ///< of what: "Feed", "Hold B"
    QString rules; ///< "Rule 4.12: …"
    QString tip;   ///< facts and sources
};

/// Why the plan does what it does with a colony, in sentences; rules and limits unfold below them.
class WhyList : public QWidget {
    Q_OBJECT
public:
    WhyList(const std::vector<WhyText>& whys, bool unfolded, QWidget* parent = nullptr);

signals:
    void unfoldAsked(bool unfolded);

private:
    void unfold(bool unfolded);

    QPushButton* m_button;
    std::vector<QWidget*> m_rules;
};

} // namespace ui::card

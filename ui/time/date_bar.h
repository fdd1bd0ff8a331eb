#pragma once

#include "ui/time/strip.h"

class QLabel;
class QPushButton;

namespace ui::form {
class DayEdit;
}

namespace ui::time {

/// What stands under the plan: the strip of days with the day beside it as text, and below them what is recorded on it,
/// the way back to today and the lock of past days.
class DateBar : public QWidget {
    Q_OBJECT
public:
    DateBar(core::Day today, QWidget* parent);

    Strip* strip() const { return m_strip; }
    form::DayEdit* field() const { return m_field; }
    QPushButton* playButton() const { return m_play; }
    QPushButton* todayButton() const { return m_todayButton; }
    QPushButton* lockButton() const { return m_lock; }
    QPushButton* offerButton() const { return m_offer; }
    QLabel* words() const { return m_words; }

    /// What was typed in the field and not entered gives way.
    void setDay(core::Day day, core::Day today);
    void setWords(const QString& words);
    void setLock(bool shown, bool open);
    void setPlaying(bool playing);
    /// A day where more is known than today; nullopt: none is offered.
    void setOffer(std::optional<core::Day> day, const QString& why);

signals:
    void dayTyped(core::Day day);
    void said(const QString& sentence);
    void lockAsked(bool open);
    void offerTaken(core::Day day);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildLine();
    void buildFoot();
    void enter();
    void settleField();
    void elide();

    Strip* m_strip;
    form::DayEdit* m_field;
    QPushButton* m_play;
    QLabel* m_words;
    QPushButton* m_offer;
    QPushButton* m_lock;
    QPushButton* m_todayButton;
    core::Day m_day, m_today;
    QString m_text; ///< of the words, whole
    std::optional<core::Day> m_offered;
};

} // namespace ui::time

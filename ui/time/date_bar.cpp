#include "ui/time/date_bar.h"

#include "ui/form/day_edit.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

namespace ui::time {

namespace {

QPushButton* plainButton(const QString& text, const char* name, QWidget* parent) {
    auto* button = new QPushButton(text, parent);
    button->setProperty("plain", true);
    button->setObjectName(QLatin1StringView(name));
    return button;
}

} // namespace

DateBar::DateBar(core::Day today, QWidget* parent)
    : QWidget(parent),
      m_strip(new Strip(this)),
      m_field(new form::DayEdit(today, this)),
      m_play(plainButton({}, "playDays", this)),
      m_words(new QLabel(this)),
      m_offer(plainButton({}, "offeredDay", this)),
      m_lock(plainButton({}, "pastLock", this)),
      m_todayButton(plainButton(tr("Today"), "backToToday", this)),
      m_day(today),
      m_today(today) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(10, 4, 14, 4);
    all->setSpacing(0);
    buildLine();
    buildFoot();
    setLock(false, false);
    setPlaying(false);
    setOffer({}, {});
    settleField();
}

void DateBar::buildLine() {
    auto* line = new QHBoxLayout;
    line->setSpacing(12);
    line->addWidget(m_strip, 1);
    QFont bold = m_field->font();
    bold.setBold(true);
    m_field->setFont(bold);
    m_field->setObjectName(QStringLiteral("shownDay"));
    m_field->setAccessibleName(tr("The day shown"));
    m_field->setAlignment(Qt::AlignRight);
    m_field->installEventFilter(this);
    connect(m_field, &QLineEdit::returnPressed, this, &DateBar::enter);
    line->addWidget(m_field, 0, Qt::AlignTop);
    static_cast<QVBoxLayout*>(layout())->addLayout(line);
}

void DateBar::buildFoot() {
    auto* foot = new QHBoxLayout;
    foot->setSpacing(4);
    m_words->setProperty("quiet", true);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setObjectName(QStringLiteral("dayWords"));
    m_words->setMinimumWidth(1);
    m_lock->setCheckable(true);
    m_todayButton->setToolTip(tr("The yard as it stands now"));
    connect(m_lock, &QPushButton::toggled, this, &DateBar::lockAsked);
    m_offer->setAccessibleName(tr("Go to the last day with records"));
    connect(m_offer, &QPushButton::clicked, this, [this] {
        if (m_offered) emit offerTaken(*m_offered);
    });
    foot->addWidget(m_play);
    foot->addWidget(m_words, 1);
    foot->addWidget(m_offer);
    foot->addWidget(m_lock);
    foot->addWidget(m_todayButton);
    static_cast<QVBoxLayout*>(layout())->addLayout(foot);
}

void DateBar::setDay(core::Day day, core::Day today) {
    m_day = day;
    m_today = today;
    m_field->setText(form::typedDay(day));
    m_field->setModified(false);
    m_todayButton->setVisible(day != today);
}

void DateBar::setWords(const QString& words) {
    m_text = words;
    elide();
}

void DateBar::setLock(bool shown, bool open) {
    const QSignalBlocker quiet(m_lock);
    m_lock->setChecked(open);
    m_lock->setText(open ? tr("Past days can be written") : tr("Past days are for looking"));
    m_lock->setToolTip(open ? tr("What is carried or noted now is of the day shown. Press to only look again.")
                            : tr("Press to carry hives and note records on the day shown."));
    m_lock->setVisible(shown);
}

void DateBar::setPlaying(bool playing) {
    m_play->setText(playing ? tr("■ Stop") : tr("▶ Play"));
    m_play->setAccessibleName(playing ? tr("Stop playing") : tr("Play the days"));
    m_play->setToolTip(tr("Day by day through what is in view, from the day shown on; the space bar does the same"));
}

void DateBar::setOffer(std::optional<core::Day> day, const QString& why) {
    m_offered = day;
    m_offer->setVisible(day.has_value());
    if (!day) return;
    m_offer->setText(tr("Go to %1").arg(look::dayText(*day)));
    m_offer->setToolTip(tr("The last day on which something is recorded here"));
    setWords(why);
}

/// Bad input is told and stays typed.
void DateBar::enter() {
    const auto day = form::parseDay(m_field->text(), m_today);
    if (!day) return emit said(tr("A day, such as 2026-09-15, 15 Sep 2026 or 15.9."));
    if (*day < m_strip->first())
        return emit said(tr("Nothing is recorded here before %1.").arg(look::dayText(m_strip->first())));
    if (*day > m_strip->last()) return emit said(tr("The days here go on to %1.").arg(look::dayText(m_strip->last())));
    m_field->setModified(false);
    emit dayTyped(*day);
}

void DateBar::settleField() {
    const QFontMetrics wide(m_field->font());
    m_field->setFixedWidth(wide.horizontalAdvance(QStringLiteral("28 Sept 2026")) + 26);
}

void DateBar::elide() {
    const QString shown = m_words->fontMetrics().elidedText(m_text, Qt::ElideRight, m_words->width());
    m_words->setText(shown);
    m_words->setToolTip(shown == m_text ? QString() : m_text);
    m_words->setAccessibleName(m_text);
}

void DateBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layout()->activate();
    elide();
}

void DateBar::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) settleField();
}

/// Escape in the field: the day shown is there again, and the keys are on the line.
bool DateBar::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_field && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        setDay(m_day, m_today);
        m_strip->setFocus(Qt::OtherFocusReason);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ui::time

#include "ui/board/board_head.h"

#include "core/edit/merge_variant.h"
#include "ui/board/board_actions.h"
#include "ui/board/board_rows.h"
#include "ui/board/merge_desk.h"
#include "ui/look/type.h"

#include <QAction>
#include <QDateEdit>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::board {

namespace {

QPushButton* plainButton(const QString& text, QAction* action, QWidget* parent) {
    auto* button = new QPushButton(text, parent);
    button->setProperty("plain", true);
    button->setToolTip(QStringLiteral("%1 (%2)").arg(action->statusTip(), action->shortcut().toString()));
    QObject::connect(button, &QPushButton::clicked, action, &QAction::trigger);
    return button;
}

} // namespace

BoardHead::BoardHead(MergeDesk& merge, BoardActions& actions, QWidget* parent) : QWidget(parent), m_merge(merge) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 0, 20, 0);
    all->setSpacing(4);
    buildTitle();
    m_where = new QLabel(this);
    m_where->setProperty("quiet", true);
    m_where->setWordWrap(true);
    all->addWidget(m_where);
    m_expected = new QLabel(this);
    m_expected->setProperty("quiet", true);
    m_expected->setWordWrap(true);
    all->addWidget(m_expected);
    buildButtons(actions);
}

void BoardHead::buildTitle() {
    auto* line = new QHBoxLayout;
    auto* title = new QLabel(tr("Merge day"), this);
    title->setFont(look::headingFont(font()));
    line->addWidget(title, 1);
    m_day = new QDateEdit(this);
    m_day->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    m_day->setCalendarPopup(true);
    m_day->setAccessibleName(tr("Day of the merge day"));
    m_day->setObjectName(QStringLiteral("mergeDay"));
    m_day->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("30 Sept 2026")) + 58); // with its arrow
    connect(m_day, &QDateEdit::dateChanged, this, [this](QDate date) {
        if (!m_telling && date.isValid()) emit dayAsked(core::dayOf(date));
    });
    line->addWidget(m_day);
    static_cast<QVBoxLayout*>(layout())->addLayout(line);
}

void BoardHead::buildButtons(BoardActions& actions) {
    auto* all = static_cast<QVBoxLayout*>(layout());
    m_numbers = new QHBoxLayout;
    m_numbers->setSpacing(2);
    for (int number = 1; number <= core::edit::kMergeVariants; ++number) {
        auto* button = new QPushButton(tr("Variant %1").arg(number), this);
        button->setObjectName(QStringLiteral("variant%1").arg(number));
        button->setProperty("plain", true);
        button->setCheckable(true);
        connect(button, &QPushButton::clicked, this, [this, number] {
            m_merge.showVariant(number);
            showVariants();
        });
        m_numbers->addWidget(button);
        m_variants.push_back(button);
    }
    m_compare = plainButton(tr("Compare"), actions.compare, this);
    m_numbers->addWidget(m_compare);
    m_numbers->addStretch(1);
    all->addLayout(m_numbers);
    auto* asks = new QHBoxLayout;
    asks->setSpacing(2);
    m_limit = plainButton(tr("Limit…"), actions.limit, this);
    m_limit->setObjectName(QStringLiteral("mergeLimit"));
    auto* why = plainButton(tr("Why not?…"), actions.whyNot, this);
    auto* fresh = plainButton(tr("New variant"), actions.newVariant, this);
    fresh->setObjectName(QStringLiteral("newVariant"));
    connect(actions.newVariant, &QAction::changed, fresh,
            [fresh, action = actions.newVariant] { fresh->setEnabled(action->isEnabled()); });
    for (QPushButton* button : {m_limit, why, fresh}) asks->addWidget(button);
    asks->addStretch(1);
    all->addLayout(asks);
}

QPushButton* BoardHead::variant(int number) const {
    return number >= 1 && number <= core::edit::kMergeVariants ? m_variants[static_cast<size_t>(number - 1)] : nullptr;
}

void BoardHead::showVariants() {
    const bool several = m_merge.variants().size() > 1;
    for (QPushButton* button : m_variants) button->hide();
    for (const core::MergeDay& day : m_merge.variants()) {
        QPushButton* button = variant(day.variant);
        if (!button) continue;
        const bool shown = day.variant == m_merge.asked().day.variant;
        button->setVisible(several);
        button->setChecked(shown);
        button->setAccessibleName(shown ? tr("Variant %1, shown").arg(day.variant) : tr("Variant %1").arg(day.variant));
    }
    m_compare->setVisible(several);
}

QString BoardHead::whereText(const desk::Reading& reading, core::YardIx yard) const {
    int unions = 0;
    for (const core::rules::Union& u : reading.plan.unions) unions += u.yard == yard ? 1 : 0;
    QStringList parts{reading.snapshot.yard(yard).name};
    if (unions > 0) {
        const int minutes = core::rules::minutesFor(reading.snapshot.settings, unions);
        parts << (unions == 1 ? tr("1 union, about %1").arg(hoursText(minutes))
                              : tr("%1 unions, about %2").arg(QString::number(unions), hoursText(minutes)));
    }
    const core::MergeDay& day = m_merge.asked().day;
    parts << (day.id.value == 0 ? tr("as the rules propose") : tr("revision %1").arg(day.revision));
    return parts.join(QStringLiteral(" · "));
}

void BoardHead::show(const desk::Reading& reading, core::YardIx yard) {
    m_telling = true;
    m_day->setDate(core::toDate(reading.snapshot.on));
    m_telling = false;
    m_where->setText(whereText(reading, yard));
    const QString expected = expectedText(reading, yard);
    m_expected->setText(expected);
    m_expected->setVisible(!expected.isEmpty());
    const core::MergeDay& day = m_merge.asked().day;
    const QString limit = limitText({day.most, day.minutes});
    m_limit->setText(limit.isEmpty() ? tr("Limit…") : tr("Limit: %1…").arg(limit));
    showVariants();
}

} // namespace ui::board

#include "ui/board/notices.h"

#include "ui/board/difference_words.h"
#include "ui/board/merge_desk.h"
#include "ui/look/rule_words.h"
#include "ui/look/type.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::board {

namespace {

constexpr qsizetype kMostOfAKind = 3; // of unions that came, …

QLabel* wordsIn(QWidget* parent, const char* name) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1StringView(name));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

/// Which holds stand against a pin, by their names: their own rows say the rest. Anything else in its own sentence.
QString unmetText(const desk::Reading& r, const core::rules::Unmet& unmet) {
    if (!unmet.choice || unmet.choice->what != core::MergeAsk::Pin || !unmet.choice->other) return unmet.because;
    QStringList held;
    for (const core::ColonyId colony : {unmet.choice->colony, *unmet.choice->other}) {
        const auto ix = r.find(colony);
        QStringList kinds;
        if (ix)
            for (const core::rules::Hold& h : r.holdsOf(*ix)) kinds << look::holdWithin(h.kind);
        if (!kinds.isEmpty())
            held << Notices::tr("%1 is held (%2)").arg(labelOf(r, colony), kinds.join(QStringLiteral(", ")));
    }
    if (held.isEmpty()) return unmet.because;
    return Notices::tr("%1 + %2 cannot be pinned any more: %3.")
        .arg(labelOf(r, unmet.choice->colony), labelOf(r, *unmet.choice->other), held.join(QStringLiteral("; ")));
}

} // namespace

Notices::Notices(MergeDesk& merge, QWidget* parent) : QFrame(parent), m_merge(merge) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 2, 20, 2);
    all->setSpacing(6);
    m_closing = wordsIn(this, "mergeClosing");
    m_closing->setProperty("warns", true);
    all->addWidget(m_closing);
    m_unmetBox = new QFrame(this);
    m_unmetBox->setProperty("banner", true);
    auto* box = new QVBoxLayout(m_unmetBox);
    box->setContentsMargins(10, 6, 8, 6);
    m_unmet = wordsIn(m_unmetBox, "mergeUnmet");
    m_unmet->setFont(look::lesserFont(font()));
    m_drop = new QPushButton(tr("Drop these wishes"), m_unmetBox);
    box->addWidget(m_unmet);
    box->addWidget(m_drop, 0, Qt::AlignLeft);
    all->addWidget(m_unmetBox);
    m_difference = wordsIn(this, "mergeDifference");
    m_difference->setProperty("aside", true);
    m_difference->setFont(look::lesserFont(font()));
    m_difference->setAccessibleName(tr("What the last change did to the plan"));
    all->addWidget(m_difference);
    m_more = new QPushButton(tr("All of it"), this);
    m_more->setProperty("plain", true);
    all->addWidget(m_more, 0, Qt::AlignLeft);
    connect(m_drop, &QPushButton::clicked, &merge, &MergeDesk::dropUnmet);
    connect(m_more, &QPushButton::clicked, this, [this] {
        m_all = !m_all;
        showDifference();
    });
    connect(&merge, &MergeDesk::changed, this, [this] {
        m_all = false;
        showAll();
    });
    showAll();
}

void Notices::showAll() {
    m_closing->setVisible(m_merge.closing());
    if (m_merge.closing()) m_closing->setText(m_merge.barred());
    showUnmet();
    showDifference();
    setVisible(!m_closing->isHidden() || !m_unmetBox->isHidden() || !m_difference->isHidden());
}

void Notices::showUnmet() {
    QStringList sentences;
    for (const core::rules::Unmet& u : m_merge.unmet()) sentences << unmetText(m_merge.desk().reading(), u);
    sentences.removeDuplicates();
    m_unmetBox->setVisible(!sentences.isEmpty());
    m_unmet->setText(sentences.join(u'\n'));
    m_drop->setText(m_merge.unmet().size() == 1 ? tr("Drop this wish") : tr("Drop these wishes"));
    m_drop->setVisible(m_merge.barred().isEmpty());
}

void Notices::showDifference() {
    const auto& d = m_merge.difference();
    m_difference->setVisible(d.has_value());
    m_more->hide();
    if (!d) return m_difference->clear();
    const QStringList all = differenceLines(*d), few = differenceLines(*d, kMostOfAKind);
    m_more->setVisible(few != all);
    m_more->setText(m_all ? tr("In short") : tr("All of it"));
    const QStringList& lines = m_all ? all : few;
    m_difference->setText((QStringList{differenceHead(*d)} + lines).join(u'\n'));
}

} // namespace ui::board

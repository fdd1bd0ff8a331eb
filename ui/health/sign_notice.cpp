#include "ui/health/sign_notice.h"

#include "core/rules/held_by.h"
#include "ui/health/broken_plans.h"
#include "ui/health/sign_words.h"
#include "ui/health/what_now.h"
#include "ui/look/barrier.h"
#include "ui/look/wrapped_label.h"

#include <QAccessible>
#include <QAction>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::health {

using core::rules::HoldKind;

namespace {

constexpr int kRoom = 12;
constexpr int kInset = 8;

HoldKind kindOf(const SignRecord& record) {
    if (record.what == core::Sign::BroodDoubt) return HoldKind::BroodDoubt;
    if (record.what == core::Sign::Efb) return HoldKind::Efb;
    return record.found ? HoldKind::AfbConfirmed : HoldKind::AfbSuspected;
}

} // namespace

SignNotice::SignNotice(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QFrame(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_title(new QLabel(this)),
      m_now(new look::WrappedLabel(QStringLiteral("signNow"), this)),
      m_held(new look::WrappedLabel(QStringLiteral("signHeld"), this)),
      m_broken(new look::WrappedLabel(QStringLiteral("signBroken"), this)),
      m_health(new QPushButton(tr("Who is held (Ctrl+5)"), this)),
      m_away(new QPushButton(tr("Put away (Ctrl+Alt+N)"), this)) {
    setObjectName(QStringLiteral("signNotice"));
    build();
    hide();
    // After the desk, which reads the book anew on the same signal.
    connect(&desk.session(), &core::edit::Session::changed, this,
            [this](const core::edit::ChangeSet& change) { guarded(m_dialogs, [&] { take(change); }); });
    connect(&desk, &desk::Desk::read, this, [this] { guarded(m_dialogs, [this] { settle(); }); });
    connect(m_health, &QPushButton::clicked, this, &SignNotice::healthAsked);
    connect(m_away, &QPushButton::clicked, this, &SignNotice::putAway);
}

void SignNotice::build() {
    m_title->setObjectName(QStringLiteral("signTitle"));
    m_title->setTextFormat(Qt::PlainText);
    m_title->setWordWrap(true);
    m_title->setProperty("warns", true);
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_held->setFont(bold);
    m_health->setToolTip(tr("The page Held: who is held, why, and which record would lift it (Ctrl+5)"));
    m_away->setToolTip(tr("Puts this notice away; every hold stays (Ctrl+Alt+N)"));
    auto* away = new QAction(m_away->text(), this);
    away->setShortcut(QKeySequence(QStringLiteral("Ctrl+Alt+N"))); // wherever the keys are, while this is shown
    connect(away, &QAction::triggered, this, &SignNotice::putAway);
    addAction(away);
    auto* words = new QVBoxLayout;
    words->setSpacing(4);
    for (QLabel* label :
         {m_title, static_cast<QLabel*>(m_now), static_cast<QLabel*>(m_held), static_cast<QLabel*>(m_broken)})
        words->addWidget(label);
    words->addStretch(1);
    auto* keys = new QVBoxLayout;
    keys->addWidget(m_health);
    keys->addWidget(m_away);
    keys->addStretch(1);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(kInset + look::kBarrierWide + kRoom, kRoom, kInset + kRoom, kRoom);
    across->setSpacing(2 * kRoom);
    across->addLayout(words, 1);
    across->addLayout(keys);
}

/// The gravest first; what is shown already is not shown twice.
void SignNotice::take(const core::edit::ChangeSet& change) {
    std::vector<SignRecord> all = signsBrought(change, m_desk.session());
    if (all.empty()) return;
    for (const SignRecord& shown : m_records)
        if (std::ranges::find(all, shown) == all.end()) all.push_back(shown);
    const bool first = m_records.empty();
    std::ranges::stable_sort(all, {}, kindOf);
    m_records = std::move(all);
    tell();
    if (first && m_held->property("none").toBool()) return putAway(); // of old, and long answered
    show();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

/// The book or the day is another: what was taken back is no longer said.
void SignNotice::settle() {
    if (m_records.empty()) return;
    std::erase_if(m_records, [this](const SignRecord& r) { return !stands(r, m_desk.session()); });
    m_records.empty() ? putAway() : tell();
}

/// Of the day shown, or of the last of these days where that is later.
void SignNotice::tell() {
    const core::Day last = std::ranges::max_element(m_records, {}, &SignRecord::day)->day;
    if (last <= m_desk.day()) return tell(m_desk.reading().snapshot, m_desk.reading().plan.holds);
    const core::Snapshot s = m_desk.session().snapshot(last);
    tell(s, core::rules::holds(s));
}

void SignNotice::tell(const core::Snapshot& s, const std::vector<core::rules::Hold>& holds) {
    std::vector<core::rules::SignSeen> seen;
    for (const SignRecord& r : m_records) {
        const auto at = std::ranges::find(s.colonies, r.colony, &core::SnapColony::id);
        if (at != s.colonies.end()) seen.push_back({{static_cast<qint32>(at - s.colonies.begin())}, r.day});
    }
    const std::vector<core::ColonyIx> held = core::rules::heldBy(s, holds, seen);
    std::set<core::ColonyId> ids;
    for (const core::ColonyIx colony : held) ids.insert(s.colony(colony).id);
    m_title->setText(signTitles(s, m_records).join(u'\n'));
    const core::Sign gravest = std::ranges::min_element(m_records, {}, &SignRecord::what)->what;
    m_now->tell((whatNow(gravest) + u' ' + whomToTell(m_desk.session(), gravest)).trimmed());
    m_held->tell(heldByText(s, held));
    m_held->setProperty("none", held.empty());
    m_broken->tell(brokenPlans(m_desk, ids).join(u'\n'));
    setAccessibleName(tr("A sign of foulbrood"));
    setAccessibleDescription(text());
    update();
}

QString SignNotice::text() const {
    if (m_records.empty()) return {};
    QStringList all{m_title->text(), m_now->text(), m_held->text(), m_broken->text()};
    all.removeAll(QString());
    return all.join(u'\n');
}

void SignNotice::putAway() {
    m_records.clear();
    hide();
}

void SignNotice::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) return QFrame::keyPressEvent(event);
    putAway();
}

void SignNotice::paintEvent(QPaintEvent*) {
    if (m_records.empty()) return;
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing, true);
    const auto gravest = std::ranges::min(m_records, {}, kindOf);
    look::paintBarrier(p, QRectF(rect()).adjusted(kInset, 4, -kInset, -4), core::rules::holdLetter(kindOf(gravest)),
                       font(), look::coloursOf(*this));
}

} // namespace ui::health

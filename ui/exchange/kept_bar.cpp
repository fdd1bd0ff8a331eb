#include "ui/exchange/kept_bar.h"

#include "core/edit/file_mappings.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

namespace ui::exchange {

namespace ex = core::exchange;

KeptBar::KeptBar(desk::Desk& desk, Dialogs& dialogs, ForeignDraft& draft, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_draft(draft),
      m_choice(new QComboBox(this)),
      m_name(new QLineEdit(this)),
      m_keep(new QPushButton(tr("&Keep it"), this)),
      m_takeBack(new QPushButton(tr("No &longer keep"), this)) {
    const auto label = [this](const QString& text, QWidget* of) {
        auto* made = new QLabel(text, this);
        made->setBuddy(of);
        made->setProperty("quiet", true);
        return made;
    };
    m_choice->setObjectName(QStringLiteral("importKept"));
    m_choice->setAccessibleName(tr("Ways to read a file that the book keeps"));
    m_choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_choice->setMinimumContentsLength(20);
    m_name->setObjectName(QStringLiteral("importName"));
    m_name->setAccessibleName(tr("Name to keep this way to read a file under"));
    m_name->setPlaceholderText(tr("a name, as in Scale app"));
    m_keep->setToolTip(tr("The columns, units and words below are offered when such a file comes again"));
    m_takeBack->setToolTip(tr("The chosen way to read a file is taken from the book"));
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->addWidget(label(tr("Read &it as"), m_choice));
    across->addWidget(m_choice, 2);
    across->addWidget(m_takeBack);
    across->addSpacing(12);
    across->addWidget(label(tr("Keep under the &name"), m_name));
    across->addWidget(m_name, 2);
    across->addWidget(m_keep);
    for (QPushButton* b : {m_keep, m_takeBack}) b->setAutoDefault(false);
    connect(m_choice, &QComboBox::activated, this, &KeptBar::take);
    connect(m_name, &QLineEdit::textEdited, this, &KeptBar::settle);
    connect(m_name, &QLineEdit::returnPressed, this, &KeptBar::keep);
    connect(m_keep, &QPushButton::clicked, this, &KeptBar::keep);
    connect(m_takeBack, &QPushButton::clicked, this, &KeptBar::takeBack);
}

void KeptBar::read() {
    m_kept = ex::keptMappings(m_desk.session());
    const auto fits = ex::mappingsFor(m_kept, m_draft.header());
    const QSignalBlocker quiet(m_choice);
    m_choice->clear();
    m_choice->addItem(tr("– as chosen below –"));
    for (const bool fitting : {true, false})
        for (const ex::KeptMapping& k : m_kept) {
            const bool fit = std::ranges::any_of(fits, [&](const auto& f) { return f.id == k.id; });
            if (fit == fitting) m_choice->addItem(fit ? tr("%1 (for this header)").arg(k.name) : k.name, k.name);
        }
    settle();
}

void KeptBar::settle() {
    const bool may = m_draft.isOpen() && !m_desk.session().readOnly();
    m_choice->setCurrentIndex(std::max(0, m_choice->findData(m_draft.keptName())));
    if (m_draft.keptName().isEmpty()) m_choice->setCurrentIndex(0);
    m_choice->setEnabled(m_draft.isOpen() && !m_kept.empty());
    m_name->setEnabled(may);
    m_keep->setEnabled(may && !m_name->text().trimmed().isEmpty());
    m_takeBack->setEnabled(may && m_choice->currentIndex() > 0);
}

void KeptBar::take() {
    const QString name = m_choice->currentData().toString();
    const auto found = std::ranges::find(m_kept, name, &ex::KeptMapping::name);
    if (found == m_kept.end()) {
        m_draft.setKeptName({});
        settle();
        return;
    }
    m_draft.setMapping(*found);
    m_name->setText(found->name);
    emit changed();
}

void KeptBar::keep() {
    if (!m_keep->isEnabled()) return;
    const QString name = m_name->text().trimmed();
    guarded(m_dialogs, [&] {
        try {
            m_desk.save(tr("Keep how to read a file"), [&](const core::edit::EditContext& c) {
                return ex::keepMapping(c, name, m_draft.mapping(), m_draft.header());
            });
            m_draft.setKeptName(name);
            read();
            emit said(tr("Kept as “%1”; it is offered when a file with these columns comes again.").arg(name), false);
        } catch (const core::Error& e) {
            if (e.kind() != core::Error::Kind::BadData) throw;
            emit said(e.userMessage(), true);
        }
    });
}

void KeptBar::takeBack() {
    const auto found = std::ranges::find(m_kept, m_choice->currentData().toString(), &ex::KeptMapping::name);
    if (found == m_kept.end()) return;
    guarded(m_dialogs, [&] {
        const ex::KeptMapping gone = *found;
        m_desk.save(tr("No longer keep how to read a file"),
                    [&](const core::edit::EditContext& c) { return core::edit::takeBackFileMapping(c, gone.id); });
        m_draft.setKeptName({});
        read();
        emit said(tr("“%1” is no longer kept.").arg(gone.name), false);
    });
}

} // namespace ui::exchange

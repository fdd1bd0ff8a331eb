#include "ui/life/family_page.h"

#include "ui/close/key_list.h"
#include "ui/life/family_list.h"
#include "ui/life/family_words.h"
#include "ui/life/time_ruler.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::life {

FamilyPage::FamilyPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : LifePage(desk, dialogs, parent),
      m_model(new FamilyModel(this)),
      m_ruler(new TimeRuler(this)),
      m_list(new close::KeyList(
          tr("Family of the colony"), [this](int key) { return pressed(key); }, this)),
      m_reading(new QLabel(this)) {
    m_list->setModel(m_model);
    m_list->setObjectName(QStringLiteral("family"));
    m_list->setSpacing(0);
    m_list->setItemDelegate(new FamilyDelegate(*m_model, m_ruler->scale(), m_list));
    m_list->setWidthListener([this](int width) { m_ruler->setRoom(width); });
    m_reading->setWordWrap(true);
    m_reading->setTextFormat(Qt::PlainText);
    m_reading->setObjectName(QStringLiteral("familyReading"));
    below()->setSpacing(2);
    below()->addWidget(m_ruler);
    below()->addWidget(m_list, 1);
    below()->addWidget(m_reading);
    connect(m_list, &close::KeyList::rowMoved, this, &FamilyPage::read);
    connect(m_list, &QListView::doubleClicked, this, [this] { pressed(Qt::Key_Return); });
}

QWidget* FamilyPage::keys() { return m_list; }

QString FamilyPage::reading() const { return m_reading->text(); }

void FamilyPage::fill() {
    const Family family = colony() ? familyOf(m_desk.session(), *colony(), m_desk.day()) : Family{};
    const bool any = !family.kin.empty();
    for (QWidget* part : std::initializer_list<QWidget*>{m_ruler, m_list, m_reading}) part->setVisible(any);
    if (!any) return say({}, tr("Choose a hive to see the family of its colony."));
    say(family.kin[family.asked].name, familyLine(family));
    const auto first = std::ranges::min_element(family.kin, {}, &Kin::since)->since;
    m_ruler->setDays(first, family.last);
    const auto asked = static_cast<int>(family.asked);
    m_model->setFamily(family);
    m_list->goTo(asked);
    read();
}

bool FamilyPage::pressed(int key) {
    if (m_list->row() < 0) return false;
    const auto row = static_cast<size_t>(m_list->row());
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit colonyAsked(m_model->family().kin[row].colony);
        return true;
    case Qt::Key_Left:
    case Qt::Key_Right:
        follow(key == Qt::Key_Left);
        return true;
    default:
        return false;
    }
}

/// Back to where it first came from, or on to where it went last.
void FamilyPage::follow(bool back) {
    const auto row = static_cast<size_t>(m_list->row());
    const auto& ties = m_model->family().ties; // by day
    if (back) {
        const auto tie = std::ranges::find(ties, row, &KinTie::into);
        if (tie != ties.end()) m_list->goTo(static_cast<int>(tie->from));
        return;
    }
    const auto tie = std::find_if(ties.rbegin(), ties.rend(), [row](const KinTie& t) { return t.from == row; });
    if (tie != ties.rend()) m_list->goTo(static_cast<int>(tie->into));
}

void FamilyPage::read() {
    m_reading->setText(m_list->row() < 0 ? QString() : kinText(m_model->family(), static_cast<size_t>(m_list->row())));
}

} // namespace ui::life

#include "ui/life/places_page.h"

#include "ui/chart/hatch.h"
#include "ui/form/book_options.h"
#include "ui/life/time_ruler.h"
#include "ui/look/colours.h"
#include "ui/look/type.h"
#include "ui/records/record_delegate.h"
#include "ui/records/record_model.h"

#include <QListView>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::life {

PlacesPage::PlacesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : LifePage(desk, dialogs, parent),
      m_ruler(new TimeRuler(this)),
      m_list(new QListView(this)),
      m_model(new records::RecordModel(this)) {
    m_list->setModel(m_model);
    m_list->setObjectName(QStringLiteral("stays"));
    m_list->setAccessibleName(tr("Stands of the colony, the newest first"));
    m_list->setItemDelegate(new records::RecordDelegate(m_list));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setResizeMode(QListView::Adjust);
    m_list->viewport()->setAutoFillBackground(false);
    below()->addWidget(m_ruler);
    below()->addWidget(m_list, 1);
}

QWidget* PlacesPage::keys() { return m_list; }

void PlacesPage::fill() {
    const auto found = colony() ? m_desk.session().colony(*colony()) : std::nullopt;
    m_stays = found ? staysOf(m_desk.session(), found->id, m_desk.day()) : std::vector<Stay>{};
    m_ruler->setVisible(!m_stays.empty());
    m_list->setVisible(!m_stays.empty());
    if (!found) return say({}, tr("Choose a hive to see where its colony stood."));
    m_last = std::min(m_desk.day(), found->ended.value_or(m_desk.day()));
    say(form::nameOn(m_desk.session(), *found, m_last),
        m_stays.empty() ? tr("It stood nowhere by then.") : tr("Where its hive stood:"));
    if (m_stays.empty()) return;
    m_ruler->setDays(m_stays.front().since, std::max(m_last, m_stays.front().since + 28));
    m_ruler->setStrip(2 * fontMetrics().height() + 6, [this](QPainter& p, const QRectF& area) { paintStrip(p, area); });
    m_model->setRows(stayRows(m_stays));
    m_list->setCurrentIndex(m_model->index(0));
}

/// A box a stay; other yards are hatched in turn, so that a change of yard is seen.
void PlacesPage::paintStrip(QPainter& p, const QRectF& area) const {
    const look::Colours c = look::coloursOf(*this);
    const QFont font = look::lesserFont(this->font());
    const QFontMetricsF text(font);
    p.setFont(font);
    int yards = -1;
    QString yard;
    for (const Stay& s : m_stays) {
        if (s.yard != yard) ++yards;
        yard = s.yard;
        const double from = m_ruler->scale().xOf(s.since), to = m_ruler->scale().xOf(s.until.value_or(m_last));
        const QRectF box(from, area.top() + 2, std::max(to - from, 3.0), area.height() / 2 - 3);
        p.setPen(Qt::NoPen);
        p.fillRect(box, c.paper);
        if (yards % 2 == 1) chart::paintHatch(p, box, 1, QPen(c.quiet, 1), 5);
        p.setPen(QPen(c.ink, 1.2));
        p.setBrush(Qt::NoBrush);
        p.drawRect(box);
        const QString words = text.elidedText(s.stand, Qt::ElideRight, box.width() - 6);
        if (box.width() > text.horizontalAdvance(u'M') * 2) {
            const double wide = text.horizontalAdvance(words);
            const QRectF label(box.left() + 3, box.top() + 1, wide + 4, box.height() - 2);
            p.fillRect(label, c.paper);
            p.drawText(label, Qt::AlignCenter, words);
        }
    }
    // Each yard once, where its hive came there, as far as there is room.
    double free = 0;
    yard.clear();
    for (const Stay& s : m_stays) {
        if (s.yard == yard) continue;
        yard = s.yard;
        const double x = m_ruler->scale().xOf(s.since);
        const double room = area.right() - x;
        if (x < free || room < text.horizontalAdvance(u'M') * 4) continue;
        const QString words = text.elidedText(s.yard, Qt::ElideRight, room);
        p.setPen(c.quiet);
        p.drawText(QRectF(x, area.center().y() + 1, room, area.height() / 2), Qt::AlignLeft | Qt::AlignVCenter, words);
        free = x + text.horizontalAdvance(words) + 8;
    }
}

} // namespace ui::life

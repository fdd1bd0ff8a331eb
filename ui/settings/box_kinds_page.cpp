#include "ui/settings/box_kinds_page.h"

#include "core/edit/put_right.h"
#include "ui/form/form_panel.h"
#include "ui/look/type.h"
#include "ui/look/words.h"
#include "ui/settings/box_kind_form.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace ui::settings {

namespace {

QString millimetres(std::optional<int> mm) { return mm ? QString::number(*mm) : look::dash(); }

} // namespace

BoxKindsPage::BoxKindsPage(desk::Desk& desk, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_table(new QTableWidget(0, 6, this)),
      m_new(new QPushButton(tr("&New…"), this)),
      m_change(new QPushButton(tr("C&hange…"), this)),
      m_takeBack(new QPushButton(tr("&Take back"), this)),
      m_problem(new QLabel(this)),
      m_panel(new form::FormPanel(this)) {
    build();
    connect(&m_desk, &desk::Desk::read, this, &BoxKindsPage::refresh);
    connect(m_table, &QTableWidget::currentCellChanged, this, &BoxKindsPage::settle);
    connect(m_new, &QPushButton::clicked, this, [this] { open(std::nullopt); });
    connect(m_change, &QPushButton::clicked, this, [this] { open(chosen()); });
    connect(m_takeBack, &QPushButton::clicked, this, &BoxKindsPage::takeBack);
    connect(m_panel, &form::FormPanel::said, &m_desk, &desk::Desk::said);
    connect(m_panel, &form::FormPanel::closed, this, [this] {
        m_panel->hide();
        m_table->setFocus(Qt::OtherFocusReason);
    });
    refresh();
}

void BoxKindsPage::build() {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(4, 0, 16, 8);
    auto* heading = new QLabel(tr("Box kinds"), this);
    heading->setFont(look::headingFont(heading->font()));
    auto* about = new QLabel(tr("The first five come with every book and stay as they are; add kinds of your own. Only "
                                "colonies in one kind of box may unite. Outside sizes draw the hive on the plan; the "
                                "empty weight is shown only."),
                             this);
    about->setWordWrap(true);
    m_table->setAccessibleName(tr("Box kinds"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_problem->setProperty("warns", true);
    m_problem->setWordWrap(true);
    auto* keys = new QWidget(this);
    auto* across = new QHBoxLayout(keys);
    across->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* b : {m_new, m_change, m_takeBack}) {
        b->setAutoDefault(false);
        across->addWidget(b);
    }
    across->addStretch(1);
    m_panel->hide();
    for (QWidget* w : std::initializer_list<QWidget*>{heading, about, m_table, keys, m_problem}) down->addWidget(w);
    down->addWidget(m_panel, 1);
    down->addStretch(0);
}

QString BoxKindsPage::problem() const { return m_problem->text(); }

void BoxKindsPage::refresh() {
    const auto before = chosen();
    m_kinds = m_desk.session().boxKinds();
    const core::WeightUnit unit = m_desk.reading().snapshot.settings.showWeight;
    const QSignalBlocker quiet(m_table);
    m_table->setHorizontalHeaderLabels({tr("Name"), tr("Frames"), tr("Width, mm"), tr("Length, mm"), tr("Height, mm"),
                                        tr("Empty, %1").arg(core::unitSign(unit))});
    m_table->setRowCount(static_cast<int>(m_kinds.size()));
    for (int row = 0; row < m_table->rowCount(); ++row) {
        const core::BoxKind& k = m_kinds[static_cast<size_t>(row)];
        const QString cells[] = {k.name,
                                 QString::number(k.frames),
                                 millimetres(k.widthMm),
                                 millimetres(k.lengthMm),
                                 millimetres(k.heightMm),
                                 k.tare ? core::weightNumber(*k.tare, unit) : look::dash()};
        for (int column = 0; column < m_table->columnCount(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            if (column > 0) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            m_table->setItem(row, column, item);
        }
        if (before && before->id == k.id) m_table->setCurrentCell(row, 0);
    }
    m_panel->judgeAgain();
    settle();
}

std::optional<core::BoxKind> BoxKindsPage::chosen() const {
    const int row = m_table->currentRow();
    if (row < 0 || row >= static_cast<int>(m_kinds.size())) return std::nullopt;
    return m_kinds[static_cast<size_t>(row)];
}

void BoxKindsPage::settle() {
    const bool writable = !m_desk.session().readOnly();
    m_new->setEnabled(writable);
    m_change->setEnabled(writable && chosen());
    m_takeBack->setEnabled(writable && chosen());
    m_problem->clear();
}

void BoxKindsPage::open(std::optional<core::BoxKind> kind) {
    if (m_panel->dirty()) {
        m_problem->setText(tr("What is typed below is not saved: Enter there saves it, Escape twice throws it away."));
        return;
    }
    m_problem->clear();
    m_panel->show();
    m_panel->open(std::make_unique<BoxKindForm>(m_desk.session(), std::move(kind)), m_desk.today(),
                  [this](const form::Form& typed, const form::Values& values) {
                      return m_desk.save(typed.what(), typed.edit(values));
                  });
}

void BoxKindsPage::takeBack() {
    const auto kind = chosen();
    if (!kind) return;
    m_problem->clear();
    try {
        m_desk.save(tr("Take back a box kind"),
                    [&](const core::edit::EditContext& c) { return core::edit::takeBackBoxKind(c, kind->id); });
    } catch (const core::Error& e) {
        m_problem->setText(e.userMessage());
    }
}

} // namespace ui::settings

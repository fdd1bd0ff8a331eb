#include "ui/board/variant_table.h"

#include "ui/board/difference_words.h"
#include "ui/board/limit_text.h"
#include "ui/board/merge_desk.h"
#include "ui/look/rule_words.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::board {

namespace {

constexpr int kRowsSeen = 9; // at once
constexpr size_t kFigures = 6;
constexpr int kRowsLeast = 3; // in a low window

struct Row {
    QString title;
    std::vector<QString> cells;
};

template <class Fn> Row rowOf(const QString& title, const std::vector<VariantFigures>& variants, Fn text) {
    Row row{title, {}};
    for (const VariantFigures& v : variants) row.cells.push_back(text(v));
    return row;
}

std::vector<Row> rowsOf(const std::vector<VariantFigures>& variants) {
    using V = VariantFigures;
    std::vector<Row> rows{
        rowOf(VariantTable::tr("Unions"), variants, [](const V& v) { return QString::number(v.totals.unions); }),
        rowOf(VariantTable::tr("Shake-outs"), variants, [](const V& v) { return QString::number(v.totals.shakeOuts); }),
        rowOf(VariantTable::tr("Gain"), variants, [](const V& v) { return gainText(v.totals.gain); }),
        rowOf(VariantTable::tr("In spring"), variants,
              [](const V& v) { return look::coloniesText(v.totals.expectedPlanned); }),
        rowOf(VariantTable::tr("Boxes freed"), variants,
              [](const V& v) { return QString::number(v.totals.boxesFreed); }),
        rowOf(VariantTable::tr("Crew"), variants, [](const V& v) { return hoursText(v.minutes); })};
    for (const VariantPair& pair : differingPairs(variants)) rows.push_back({pair.pair, pair.cells});
    return rows;
}

} // namespace

VariantTable::VariantTable(MergeDesk& merge, QWidget* parent) : QFrame(parent), m_merge(merge) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 4, 20, 6);
    all->setSpacing(4);
    m_table = new QTableWidget(this);
    m_table->setAccessibleName(tr("Variants side by side"));
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->horizontalHeader()->setSectionsClickable(true);
    m_table->verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6);
    m_table->setWordWrap(false);
    connect(m_table->horizontalHeader(), &QHeaderView::sectionClicked, this, [this](int column) {
        if (column < static_cast<int>(m_numbers.size())) m_merge.showVariant(m_numbers[static_cast<size_t>(column)]);
    });
    connect(m_table, &QTableWidget::cellActivated, this,
            [this](int, int column) { m_merge.showVariant(m_numbers[static_cast<size_t>(column)]); });
    all->addWidget(m_table, 1);
    m_note = new QLabel(this);
    m_note->setProperty("quiet", true);
    m_note->setWordWrap(true);
    auto* across = new QHBoxLayout;
    across->addWidget(m_note, 1);
    auto* close = new QPushButton(tr("Close"), this);
    close->setProperty("plain", true);
    connect(close, &QPushButton::clicked, this, &VariantTable::leave);
    across->addWidget(close, 0, Qt::AlignTop);
    all->addLayout(across);
    connect(&merge, &MergeDesk::changed, this, [this] {
        if (isHidden()) return;
        if (m_merge.variants().size() < 2) return leave();
        guarded(m_merge.dialogs(), [this] { compare(); });
    });
    hide();
}

void VariantTable::compare() {
    const desk::Desk& desk = m_merge.desk();
    fill(variantFigures(desk.reading(), desk.session(), m_merge.variants()));
    show();
}

void VariantTable::fill(const std::vector<VariantFigures>& variants) {
    const std::vector<Row> rows = rowsOf(variants);
    m_table->clear();
    m_table->setColumnCount(static_cast<int>(variants.size()));
    m_table->setRowCount(static_cast<int>(rows.size()));
    m_numbers.clear();
    QStringList titles, sides;
    for (const VariantFigures& v : variants) {
        m_numbers.push_back(v.day.variant);
        const bool shown = v.day.variant == m_merge.asked().day.variant;
        titles << (shown ? tr("%1 (shown)") : tr("%1")).arg(v.day.variant);
    }
    for (int y = 0; y < static_cast<int>(rows.size()); ++y) {
        const Row& row = rows[static_cast<size_t>(y)];
        sides << row.title;
        for (int x = 0; x < static_cast<int>(row.cells.size()); ++x) {
            auto* item = new QTableWidgetItem(row.cells[static_cast<size_t>(x)]);
            item->setTextAlignment(Qt::AlignCenter);
            m_table->setItem(y, x, item);
        }
    }
    m_table->setHorizontalHeaderLabels(titles);
    m_table->setVerticalHeaderLabels(sides);
    const int line = fontMetrics().height() + 6;
    m_table->verticalHeader()->setDefaultSectionSize(line);
    const int head = m_table->horizontalHeader()->sizeHint().height() + 6;
    m_table->setMinimumHeight(head + line * kRowsLeast);
    m_table->setMaximumHeight(head + line * std::min<int>(m_table->rowCount(), kRowsSeen));
    m_note->setText(rows.size() > kFigures ? tr("Below the figures: where they differ. Value tables are an assumption.")
                                           : tr("They make the same unions."));
}

void VariantTable::leave() {
    if (isHidden()) return;
    hide();
    emit closed();
}

void VariantTable::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return leave();
    QFrame::keyPressEvent(event);
}

} // namespace ui::board

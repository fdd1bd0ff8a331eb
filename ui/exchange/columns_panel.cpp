#include "ui/exchange/columns_panel.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>

namespace ui::exchange {

namespace ex = core::exchange;

namespace {

constexpr int kLeftOut = 0; // what a source is, beside its name
constexpr int kColumn = 1;
constexpr int kOneValue = 2;
constexpr int kWhat = Qt::UserRole + 1;
constexpr int kMostWords = 8;
constexpr int kMostSample = 18;

QString shownColumn(const QString& ours) { return QString(ours).replace(u'_', u' '); }

} // namespace

ColumnsPanel::ColumnsPanel(ForeignDraft& draft, QWidget* parent) : QScrollArea(parent), m_draft(draft) {
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setObjectName(QStringLiteral("importColumns"));
    setAccessibleName(tr("Columns of the book and what gives them"));
}

void ColumnsPanel::showDraft() {
    m_lines.clear();
    auto* inside = new QWidget;
    auto* grid = new QGridLayout(inside);
    grid->setContentsMargins(0, 0, 6, 0);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(1, 1);
    for (const ex::Column& column : ex::columnsOf(m_draft.kind())) addLine(column, *grid);
    grid->setRowStretch(grid->rowCount(), 1);
    setWidget(inside); // the lines before go with their widget
    int units = 0;
    for (const Line& line : m_lines) units = std::max(units, line.unit ? line.unit->sizeHint().width() : 0);
    grid->setColumnMinimumWidth(2, units);
    for (const Line& line : m_lines) showLine(line);
    constexpr int kScrollBar = 16;
    setMinimumWidth(inside->minimumSizeHint().width() + kScrollBar);
}

void ColumnsPanel::addLine(const ex::Column& column, QGridLayout& grid) {
    QWidget* inside = grid.parentWidget();
    const int row = grid.rowCount();
    Line line{QString::fromLatin1(column.name), new QComboBox(inside), nullptr, new QLineEdit(inside)};
    auto* label = new QLabel(column.required ? tr("%1 *").arg(shownColumn(line.ours)) : shownColumn(line.ours), inside);
    label->setToolTip(column.required ? tr("%1: needed in every row").arg(line.ours) : line.ours);
    line.source->setObjectName(QStringLiteral("from_") + line.ours);
    line.source->setAccessibleName(tr("What gives %1").arg(shownColumn(line.ours)));
    line.source->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    line.source->setMinimumContentsLength(14);
    line.words->setObjectName(QStringLiteral("words_") + line.ours);
    line.source->addItem(column.required ? tr("– choose –") : tr("– left out –"));
    line.source->setItemData(0, kLeftOut, kWhat);
    fillSources(line);
    fillUnits(line);
    grid.addWidget(label, row, 0);
    grid.addWidget(line.source, row, 1);
    if (line.unit) grid.addWidget(line.unit, row, 2);
    grid.addWidget(line.words, row + 1, 1, 1, 2);
    connect(line.source, &QComboBox::activated, this, [this, ours = line.ours] { take(ours, true); });
    if (line.unit) connect(line.unit, &QComboBox::activated, this, [this, ours = line.ours] { take(ours, false); });
    connect(line.words, &QLineEdit::textEdited, this, [this, ours = line.ours] { take(ours, false); });
    m_lines.push_back(std::move(line));
}

void ColumnsPanel::fillSources(Line& line) {
    const QStringList& header = m_draft.header();
    for (qsizetype i = 0; i < header.size(); ++i) {
        if (header[i].isEmpty() || header.indexOf(header[i]) != i) continue;
        const QString sample = m_draft.samples().value(i).left(kMostSample);
        line.source->addItem(sample.isEmpty() ? header[i] : tr("%1 · %2").arg(header[i], sample), header[i]);
        line.source->setItemData(line.source->count() - 1, kColumn, kWhat);
    }
    line.source->addItem(tr("one value for all rows"));
    line.source->setItemData(line.source->count() - 1, kOneValue, kWhat);
    line.source->view()->setMinimumWidth(line.source->view()->sizeHintForColumn(0) + 24);
}

void ColumnsPanel::fillUnits(Line& line) {
    const auto units = ex::unitsOf(m_draft.kind(), line.ours);
    if (units.size() < 2) return;
    line.unit = new QComboBox(line.source->parentWidget());
    line.unit->setObjectName(QStringLiteral("unit_") + line.ours);
    line.unit->setAccessibleName(tr("Unit of %1 in the file").arg(shownColumn(line.ours)));
    for (const ex::CellUnit unit : units)
        line.unit->addItem(ex::unitWord(m_draft.kind(), line.ours, unit), static_cast<int>(unit));
}

bool ColumnsPanel::isOneValue(const Line& line) const { return line.source->currentData(kWhat).toInt() == kOneValue; }

void ColumnsPanel::showLine(const Line& line) {
    const auto column = m_draft.column(line.ours);
    int at = 0;
    if (column) at = column->from.isEmpty() ? line.source->count() - 1 : line.source->findData(column->from);
    if (at < 0) { // a kept mapping names a column that this file does not have
        line.source->insertItem(1, tr("%1 (not in the file)").arg(column->from), column->from);
        line.source->setItemData(1, kColumn, kWhat);
        at = 1;
    }
    line.source->setCurrentIndex(at);
    if (line.unit) line.unit->setCurrentIndex(column ? line.unit->findData(static_cast<int>(column->unit)) : 0);
    line.words->setText(!column ? QString() : column->from.isEmpty() ? column->value : wordsText(column->words));
    settle(line);
}

/// What of a line makes sense.
void ColumnsPanel::settle(const Line& line) {
    const bool given = line.source->currentData(kWhat).toInt() == kColumn;
    const QStringList ours = ex::wordsOfColumn(m_draft.kind(), line.ours);
    if (line.unit) line.unit->setVisible(given);
    line.words->setVisible(isOneValue(line) || (given && (!ours.isEmpty() || !line.words->text().isEmpty())));
    if (isOneValue(line)) {
        line.words->setAccessibleName(tr("%1 of all rows").arg(shownColumn(line.ours)));
        line.words->setPlaceholderText(tr("the value"));
        line.words->setToolTip(ours.isEmpty() ? QString() : tr("One of %1").arg(ours.join(QStringLiteral(", "))));
    } else {
        line.words->setAccessibleName(
            tr("Words of the file for %1, as in ja = yes; nein = no").arg(shownColumn(line.ours)));
        line.words->setPlaceholderText(tr("word = %1; …").arg(ours.value(0)));
        line.words->setToolTip(tr("Words of the file and ours, as in “gut = seen; weg = none”; - is not recorded. "
                                  "Ours: %1")
                                   .arg(ours.join(QStringLiteral(", "))));
    }
}

/// Words of the file that are not ours, for the user to say what they are.
QString ColumnsPanel::wordsProposed(const Line& line) const {
    const QStringList ours = ex::wordsOfColumn(m_draft.kind(), line.ours);
    if (ours.isEmpty()) return {};
    QStringList pairs;
    for (const QString& word :
         ex::wordsInFile(m_draft.text(), m_draft.forms().separator, line.source->currentData().toString(), kMostWords))
        if (!ours.contains(word)) pairs << word + QStringLiteral(" = ");
    return pairs.join(QStringLiteral("; "));
}

void ColumnsPanel::take(const QString& ours, bool newSource) {
    const Line& line = *lineOf(ours);
    const int what = line.source->currentData(kWhat).toInt();
    if (newSource) {
        line.words->setText(what == kColumn ? wordsProposed(line) : QString());
        line.words->setCursorPosition(0);
        settle(line);
    }
    if (what == kLeftOut) {
        m_draft.setColumn(ours, std::nullopt);
    } else {
        ex::ColumnMapping column{{}, ours, ex::CellUnit::Ours, {}, {}};
        if (what == kOneValue)
            column.value = line.words->text().trimmed();
        else {
            column.from = line.source->currentData().toString();
            column.words = wordsFromText(line.words->text());
            if (line.unit) column.unit = static_cast<ex::CellUnit>(line.unit->currentData().toInt());
        }
        m_draft.setColumn(ours, column);
    }
    emit changed();
}

const ColumnsPanel::Line* ColumnsPanel::lineOf(const QString& ours) const {
    const auto found = std::ranges::find(m_lines, ours, &Line::ours);
    return found == m_lines.end() ? nullptr : &*found;
}

QComboBox* ColumnsPanel::sourceOf(const QString& ours) const {
    const Line* line = lineOf(ours);
    return line ? line->source : nullptr;
}

QComboBox* ColumnsPanel::unitOf(const QString& ours) const {
    const Line* line = lineOf(ours);
    return line ? line->unit : nullptr;
}

QLineEdit* ColumnsPanel::wordsOf(const QString& ours) const {
    const Line* line = lineOf(ours);
    return line ? line->words : nullptr;
}

void ColumnsPanel::focusColumn(const QString& ours) {
    if (QComboBox* source = sourceOf(ours)) {
        ensureWidgetVisible(source);
        source->setFocus(Qt::OtherFocusReason);
    }
}

} // namespace ui::exchange

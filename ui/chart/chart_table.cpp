#include "ui/chart/chart_table.h"

#include "ui/look/words.h"

#include <algorithm>

namespace ui::chart {

namespace {

bool hasNotes(const Series& s) {
    return std::ranges::any_of(s.points, [](const Point& p) { return !p.note.isEmpty(); });
}

class Table {
public:
    Table(const Chart& chart, TableFor whom) : m_chart(chart), m_file(whom == TableFor::File) {}

    ChartTable make() {
        addColumns();
        for (const int at : stopsOf(m_chart)) addRow(at);
        return std::move(m_out);
    }

private:
    QString cell(const std::optional<double>& value) const {
        if (value) return valueText(m_chart, *value);
        return m_file ? QString() : look::dash();
    }

    /// Further columns say the same, figure by figure.
    bool notesShown(const Series& s) const { return m_chart.more.empty() && hasNotes(s); }

    void addColumns() {
        m_out.columns << (!m_chart.whereTitle.isEmpty() ? m_chart.whereTitle
                          : m_chart.hasNames()          ? ChartTableModel::tr("name")
                                                        : ChartTableModel::tr("day"));
        for (const Series& s : m_chart.series) {
            const QString name = s.name.isEmpty() ? m_chart.valueTitle : s.name;
            m_out.columns << name;
            if (hasIntervals(s)) m_out.columns << ChartTableModel::tr("at least") << ChartTableModel::tr("at most");
            if (notesShown(s)) m_out.columns << ChartTableModel::tr("from");
        }
        for (const Column& column : m_chart.more) m_out.columns << column.name;
        if (!m_chart.marks.empty()) m_out.columns << ChartTableModel::tr("what happened");
    }

    void addRow(int at) {
        QStringList row(m_file && !m_chart.hasNames() ? core::isoText(core::Day{at}) : whereText(m_chart, at));
        for (const Series& s : m_chart.series) {
            const auto found = std::ranges::find(s.points, at, &Point::at);
            const Point p = found == s.points.end() ? Point{} : *found;
            row << cell(p.value);
            if (hasIntervals(s)) row << cell(p.lower) << cell(p.upper);
            if (notesShown(s)) row << p.note;
        }
        for (const Column& column : m_chart.more) {
            const auto found = std::ranges::find(column.cells, at, &std::pair<int, QString>::first);
            row << (found == column.cells.end() ? QString() : found->second);
        }
        if (!m_chart.marks.empty()) {
            QStringList happened;
            for (const Mark& m : m_chart.marks)
                if (m.from.number == at) happened << markText(m);
            row << happened.join(QStringLiteral(" · "));
        }
        m_out.rows.push_back(row);
    }

    const Chart& m_chart;
    bool m_file;
    ChartTable m_out;
};

} // namespace

ChartTable tableOf(const Chart& chart, TableFor whom) { return Table(chart, whom).make(); }

void ChartTableModel::setChart(const Chart& chart) {
    beginResetModel();
    m_table = tableOf(chart);
    endResetModel();
}

int ChartTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.rows.size());
}

int ChartTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.columns.size());
}

QVariant ChartTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const QString text = m_table.rows[static_cast<size_t>(index.row())][index.column()];
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return text;
    if (role == Qt::AccessibleTextRole) return tr("%1: %2").arg(m_table.columns[index.column()], text);
    bool number = false;
    text.toDouble(&number);
    if (role == Qt::TextAlignmentRole && (number || text == look::dash()))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant ChartTableModel::headerData(int section, Qt::Orientation across, int role) const {
    if (across != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return m_table.columns.value(section);
}

} // namespace ui::chart

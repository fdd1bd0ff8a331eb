#include "core/edit/change_words.h"

#include "core/edit/change_fields.h"
#include "core/model/fixed_shape.h"
#include "core/model/row_codec.h"
#include "core/model/setting_table.h"

#include <QCoreApplication>

namespace core::edit {

namespace {

using How = ChangeWords::How;

struct History {
    Q_DECLARE_TR_FUNCTIONS(History)
};

QString notRecorded() { return History::tr("not recorded"); }

std::optional<Day> dayIn(Table table, const Row& row) {
    const auto columns = columnsOf(table);
    for (size_t i = 0; i < columns.size(); ++i) {
        const std::string_view name = columns[i];
        if (name != "day" && name != "since") continue;
        const auto* text = std::get_if<QString>(&row[i]);
        return text ? parseIsoDay(*text) : std::nullopt;
    }
    return std::nullopt;
}

/// In metres; the first few of many.
QString shapeText(const QString& stored) {
    constexpr size_t kShown = 6;
    const auto points = parsePoints(stored);
    if (!points) return stored;
    QStringList texts;
    for (size_t i = 0; i < points->size() && i < kShown; ++i)
        texts << metresText(Millimetres{points->at(i).x}) + QStringLiteral(", ") +
                     metresText(Millimetres{points->at(i).y});
    if (points->size() > kShown) texts << History::tr("… %1 points").arg(points->size());
    return History::tr("%1 (m east, m north)").arg(texts.join(QStringLiteral("; ")));
}

QString numberText(double value) { return QString::number(value, 'g', 12); }

/// A number with its unit.
QString quantityText(CellKind kind, qint64 n) {
    switch (kind) {
    case CellKind::Frames:
        return (n == 4 ? History::tr("%1 frame") : History::tr("%1 frames"))
            .arg(framesText(Quarters{static_cast<qint32>(n)}));
    case CellKind::Litres:
        return History::tr("%1 l").arg(decimalText(n, 3));
    case CellKind::Kilograms:
        return History::tr("%1 kg").arg(kilogramsText(Decagrams{static_cast<qint32>(n)}));
    case CellKind::Metres:
        return History::tr("%1 m").arg(metresText(Millimetres{static_cast<qint32>(n)}));
    case CellKind::Millimetres:
        return History::tr("%1 mm").arg(n);
    case CellKind::Degrees:
        return History::tr("%1°").arg(n);
    case CellKind::YesNo:
        return n != 0 ? History::tr("yes") : History::tr("no");
    default:
        return QString::number(n);
    }
}

class Teller {
public:
    Teller(const RowChange& change, const RowNames& names) : m_change(change), m_names(names) {
        m_row = change.after ? &*change.after : &*change.before;
    }

    ChangeWords tell() const {
        ChangeWords words;
        words.what = what();
        words.how = !m_change.before ? How::Added : m_change.after ? How::Changed : How::TakenAway;
        const auto fields = fieldsOf(m_change.table);
        for (size_t i = 0; i < fields.size(); ++i)
            if (fields[i].kind != CellKind::Hidden) addField(fields[i], i, words.fields);
        return words;
    }

private:
    void addField(const FieldKind& field, size_t column, std::vector<FieldWords>& to) const {
        const Value* before = m_change.before ? &m_change.before->at(column) : nullptr;
        const Value* after = m_change.after ? &m_change.after->at(column) : nullptr;
        if (before && after ? *before == *after : !isRecorded(before) && !isRecorded(after)) return;
        FieldWords words{QCoreApplication::translate("History", field.label), {}, {}};
        if (before) words.from = cellText(field.kind, *before);
        if (after) words.to = cellText(field.kind, *after);
        if (m_change.table == Table::Setting) addDefault(words);
        to.push_back(std::move(words));
    }
    static bool isRecorded(const Value* value) { return value && !std::holds_alternative<std::monostate>(*value); }

    /// A setting without a row is at its default.
    void addDefault(FieldWords& words) const {
        const auto* name = std::get_if<QString>(&m_row->at(0));
        const SettingInfo* info = name ? settingNamed(*name) : nullptr;
        if (!info) return;
        const QString byDefault = History::tr("%1 (the default)").arg(info->defaultValue);
        if (!words.from) words.from = byDefault;
        if (!words.to) words.to = byDefault;
    }

    QString cellText(CellKind kind, const Value& value) const {
        if (const auto* text = std::get_if<QString>(&value)) {
            if (kind == CellKind::Points) return shapeText(*text);
            return kind == CellKind::Word ? wordText(*text) : *text;
        }
        if (const auto* real = std::get_if<double>(&value))
            return kind == CellKind::Degrees ? History::tr("%1°").arg(numberText(*real)) : numberText(*real);
        const auto* n = std::get_if<qint64>(&value);
        if (!n) return notRecorded();
        switch (kind) {
        case CellKind::Colony:
            return m_names.colony({*n}, dayIn(m_change.table, *m_row));
        case CellKind::Yard:
            return m_names.yard({*n});
        case CellKind::Stand:
            return m_names.stand({*n});
        case CellKind::BoxKind:
            return m_names.boxKind({*n});
        default:
            return quantityText(kind, *n);
        }
    }

    template <class T> T row() const { return fromRow<T>(m_change.id, *m_row); }

    QString colonyOrYard(const std::optional<ColonyId>& colony, const std::optional<YardId>& yard, Day day) const {
        return colony ? m_names.colony(*colony, day)
                      : History::tr("yard %1").arg(m_names.yard(yard.value_or(YardId{})));
    }
    QString placementWhat() const {
        const auto p = row<Placement>();
        return (p.first ? History::tr("First place of %1, from %2") : History::tr("Place of %1 from %2"))
            .arg(m_names.colony(p.colony, p.since), isoText(p.since));
    }
    QString fixedWhat() const {
        const auto f = row<FixedThing>();
        const QString kind = wordText(word(f.kind));
        return f.name.isEmpty() ? History::tr("In the drawing of %1: %2").arg(m_names.yard(f.yard), kind)
                                : History::tr("In the drawing of %1: %3 (%2)").arg(m_names.yard(f.yard), kind, f.name);
    }
    QString lineageWhat() const {
        const auto l = row<Lineage>();
        const QString sentence = l.how == LineageHow::United    ? History::tr("Union of %1 into %2 on %3")
                                 : l.how == LineageHow::Divided ? History::tr("Divide of %1: %2 on %3")
                                                                : History::tr("Shake-out of %1 into %2 on %3");
        return sentence.arg(m_names.colony(l.colony, l.day), m_names.colony(l.into, l.day), isoText(l.day));
    }
    QString recordWhat() const {
        switch (m_change.table) {
        case Table::Visit: {
            const auto v = row<Visit>();
            return History::tr("Visit of %1 on %2").arg(m_names.colony(v.colony, v.day), isoText(v.day));
        }
        case Table::Transfer: {
            const auto t = row<Transfer>();
            return History::tr("Transfer from %1 to %2 on %3")
                .arg(m_names.colony(t.from, t.day), m_names.colony(t.to, t.day), isoText(t.day));
        }
        case Table::Result: {
            const auto r = row<Result>();
            const bool official = r.verdict == Verdict::Order || r.verdict == Verdict::Release;
            return (official ? History::tr("Official %3 for %1 on %2") : History::tr("Result (%3) of %1 on %2"))
                .arg(colonyOrYard(r.colony, r.yard, r.day), isoText(r.day), wordText(word(r.verdict)));
        }
        case Table::Treatment: {
            const auto t = row<Treatment>();
            return History::tr("Treatment of %1 on %2").arg(colonyOrYard(t.colony, t.yard, t.day), isoText(t.day));
        }
        case Table::Feeding: {
            const auto f = row<Feeding>();
            return History::tr("Feed given to %1 on %2").arg(m_names.colony(f.colony, f.day), isoText(f.day));
        }
        case Table::Queen: {
            const auto q = row<Queen>();
            return History::tr("Queen of %1 from %2").arg(m_names.colony(q.colony, q.since), isoText(q.since));
        }
        case Table::Sample: {
            const auto s = row<Sample>();
            return History::tr("Sample of %1 taken on %2").arg(m_names.colony(s.colony, s.day), isoText(s.day));
        }
        case Table::MiteFall: {
            const auto f = row<MiteFall>();
            return History::tr("Mites fallen at %1 by %2").arg(m_names.colony(f.colony, f.day), isoText(f.day));
        }
        case Table::StripsOut: {
            const auto s = row<StripsOut>();
            return History::tr("Treatment taken out of %1 on %2").arg(m_names.colony(s.colony, s.day), isoText(s.day));
        }
        case Table::KitEnd: {
            const auto e = row<KitEnd>();
            return History::tr("End of kit on %1: %2").arg(isoText(e.day), e.part);
        }
        case Table::Lineage:
            return lineageWhat();
        case Table::Placement:
            return placementWhat();
        default:
            return {};
        }
    }
    QString what() const {
        switch (m_change.table) {
        case Table::Yard:
            return History::tr("Yard %1").arg(row<Yard>().name);
        case Table::Stand: {
            const auto s = row<Stand>();
            return History::tr("Stand %1 of %2").arg(s.name, m_names.yard(s.yard));
        }
        case Table::BoxKind:
            return History::tr("Box kind %1").arg(row<BoxKind>().name);
        case Table::Colony:
            return History::tr("Colony %1").arg(row<Colony>().label);
        case Table::VisitSign:
            return History::tr("Sign at the visit of %1").arg(m_names.visit({std::get<qint64>(m_row->at(0))}));
        case Table::Kit: {
            const auto k = row<Kit>();
            return k.yard ? History::tr("Kit of %1: %2").arg(m_names.yard(*k.yard), k.part)
                          : History::tr("Kit in the store room: %1").arg(k.part);
        }
        case Table::Setting:
            return History::tr("Setting %1").arg(std::get<QString>(m_row->at(0)));
        case Table::Person:
            return History::tr("%1, of the people of the book").arg(row<Person>().name);
        case Table::FileMapping:
            return History::tr("Way to read a file: %1").arg(row<FileMapping>().name);
        case Table::Phrase:
            return History::tr("Quick sentence %1").arg(row<Phrase>().brief);
        case Table::Question:
            return History::tr("Question %1").arg(row<Question>().name);
        case Table::Notifiable: {
            const auto n = row<Notifiable>();
            return History::tr("What must be reported in %1: %2").arg(n.place, wordText(word(n.disease)));
        }
        case Table::Keeper:
            return History::tr("Keeper of the book: %1").arg(row<Keeper>().name);
        case Table::FixedThing:
            return fixedWhat();
        case Table::MergeDay: {
            const auto d = row<MergeDay>();
            return History::tr("Merge day of %1 on %2").arg(m_names.yard(d.yard), isoText(d.day));
        }
        case Table::MergeChoice: {
            const auto x = row<MergeChoice>();
            return x.other ? History::tr("Asked of a merge day: %1 and %2")
                                 .arg(m_names.colony(x.colony, {}), m_names.colony(*x.other, {}))
                           : History::tr("Asked of a merge day: %1").arg(m_names.colony(x.colony, {}));
        }
        case Table::MergeStrip: {
            const auto x = row<MergeStrip>();
            return History::tr("Strip %1 of a merge day: %2 to %3")
                .arg(QString::number(x.position), m_names.colony(x.moved, {}), m_names.colony(x.host, {}));
        }
        case Table::DivideChoice:
            return History::tr("Asked of the divide of %1").arg(m_names.colony(row<DivideChoice>().colony, {}));
        case Table::DivideStrip: {
            const auto x = row<DivideStrip>();
            return History::tr("Divide %1 of a merge day: %2")
                .arg(QString::number(x.position), m_names.colony(x.colony, {}));
        }
        default:
            return recordWhat();
        }
    }

    const RowChange& m_change;
    const RowNames& m_names;
    const Row* m_row;
};

} // namespace

ChangeWords changeWords(const RowChange& change, const RowNames& names) { return Teller(change, names).tell(); }

ChangeWords rangeWords(Table table, qint64 count, How how) { return {recordsText(table, count), how, {}}; }

} // namespace core::edit

#include "core/model/row_codec.h"

#include "core/base/damaged.h"
#include "core/base/error.h"
#include "core/base/natural_order.h"
#include "core/model/fixed_shape.h"

namespace core {

namespace {

Value cell(const QString& text) { return text.isEmpty() ? Value() : Value(text); }
Value cell(bool yes) { return qint64(yes ? 1 : 0); }
Value cell(int number) { return qint64(number); }
Value cell(double number) { return number; }
Value cell(Day day) { return isoText(day); }
Value cell(Quarters q) { return qint64(q.value); }
Value cell(Decagrams w) { return qint64(w.value); }
Value cell(Millilitres ml) { return qint64(ml.value); }
Value cell(Millimetres mm) { return qint64(mm.value); }
Value cell(const std::vector<MmPoint>& points) { return pointsText(points); }
template <class Tag> Value cell(Id<Tag> id) { return id.value; }
template <class E>
requires std::is_enum_v<E> Value cell(E value) { return word(value); }
template <class T> Value cell(const std::optional<T>& value) { return value ? cell(*value) : Value(); }

/// Takes the cells of one row one after the other; throws where a cell is not what its column holds.
class CellReader {
public:
    CellReader(Table table, qint64 id, const Row& row) : m_table(table), m_id(id), m_row(row) {
        if (row.size() != columnsOf(table).size()) fail();
    }

    void skip() { ++m_next; }
    void take(QString& to) { to = optionalText().value_or(QString()); }
    void take(bool& to) { to = number() != 0; }
    void take(int& to) { to = narrow(number()); }
    void take(double& to) { to = real(next()); }
    void take(Day& to) { to = day(text()); }
    void take(Quarters& to) { to.value = narrow(number()); }
    void take(Decagrams& to) { to.value = narrow(number()); }
    void take(Millilitres& to) { to.value = narrow(number()); }
    void take(Millimetres& to) { to.value = narrow(number()); }
    void take(std::vector<MmPoint>& to) {
        auto points = parsePoints(text());
        if (!points) fail();
        to = *std::move(points);
    }
    template <class Tag> void take(Id<Tag>& to) { to.value = number(); }
    template <class E>
    requires std::is_enum_v<E>
    void take(E& to) {
        const auto value = fromWord<E>(text());
        if (!value) fail();
        to = *value;
    }
    template <class T> void take(std::optional<T>& to) {
        to.reset();
        if (std::holds_alternative<std::monostate>(m_row[m_next])) {
            ++m_next;
            return;
        }
        T value{};
        take(value);
        to = value;
    }
    template <class... T> void takeAll(T&... to) { (take(to), ...); }

private:
    const Value& next() { return m_row[m_next++]; }
    qint64 number() {
        const auto* value = std::get_if<qint64>(&next());
        if (!value) fail();
        return *value;
    }
    QStringView text() {
        const auto* value = std::get_if<QString>(&next());
        if (!value) fail();
        return *value;
    }
    std::optional<QString> optionalText() {
        const Value& value = next();
        if (std::holds_alternative<std::monostate>(value)) return std::nullopt;
        if (!std::holds_alternative<QString>(value)) fail();
        return std::get<QString>(value);
    }
    double real(const Value& value) {
        if (const auto* whole = std::get_if<qint64>(&value)) return static_cast<double>(*whole);
        if (!std::holds_alternative<double>(value)) fail();
        return std::get<double>(value);
    }
    Day day(QStringView iso) {
        const auto value = parseIsoDay(iso);
        if (!value) fail();
        return *value;
    }
    int narrow(qint64 value) {
        if (value < -kMostSmall || value > kMostSmall) fail();
        return static_cast<int>(value);
    }
    [[noreturn]] void fail() const {
        const auto columns = columnsOf(m_table);
        const char* column = m_next > 0 && m_next <= columns.size() ? columns[m_next - 1] : "?";
        throw Damaged(QStringLiteral("The book is damaged: a value in it cannot be read."),
                      QStringLiteral("%1 %2, column %3")
                          .arg(QLatin1StringView(tableName(m_table)))
                          .arg(m_id)
                          .arg(QLatin1StringView(column)));
    }

    Table m_table;
    qint64 m_id;
    const Row& m_row;
    size_t m_next = 0;
};

template <class... T> Row cells(const T&... values) {
    Row row;
    row.reserve(sizeof...(values));
    (row.push_back(cell(values)), ...);
    return row;
}

template <class T> CellReader readerOf(T& to, qint64 id, const Row& row) {
    to.id = {id};
    return {tableOf<T>(), id, row};
}

} // namespace

Row toRow(const Yard& y) {
    return cells(y.name, folded(y.name), y.latitudeDeg, y.longitudeDeg, y.gateX, y.gateY, y.note, y.closed);
}

template <> Yard fromRow<Yard>(qint64 id, const Row& row) {
    Yard y;
    CellReader r = readerOf(y, id, row);
    r.take(y.name);
    r.skip();
    r.takeAll(y.latitudeDeg, y.longitudeDeg, y.gateX, y.gateY, y.note, y.closed);
    return y;
}

Row toRow(const Stand& s) { return cells(s.yard, s.name, folded(s.name), s.at.x, s.at.y, s.removed); }

template <> Stand fromRow<Stand>(qint64 id, const Row& row) {
    Stand s;
    CellReader r = readerOf(s, id, row);
    r.takeAll(s.yard, s.name);
    r.skip();
    r.takeAll(s.at.x, s.at.y, s.removed);
    return s;
}

Row toRow(const BoxKind& b) {
    return cells(b.name, folded(b.name), b.frames, b.widthMm, b.lengthMm, b.heightMm, b.tare);
}

template <> BoxKind fromRow<BoxKind>(qint64 id, const Row& row) {
    BoxKind b;
    CellReader r = readerOf(b, id, row);
    r.take(b.name);
    r.skip();
    r.takeAll(b.frames, b.widthMm, b.lengthMm, b.heightMm, b.tare);
    return b;
}

Row toRow(const Colony& c) {
    return cells(c.label, folded(c.label), c.since, c.ended, c.end, c.box, c.broodBoxes, c.queenBorn, c.note);
}

template <> Colony fromRow<Colony>(qint64 id, const Row& row) {
    Colony c;
    CellReader r = readerOf(c, id, row);
    r.take(c.label);
    r.skip();
    r.takeAll(c.since, c.ended, c.end, c.box, c.broodBoxes, c.queenBorn, c.note);
    return c;
}

Row toRow(const Placement& p) { return cells(p.colony, p.stand, p.headingDeg, p.since, p.until, p.first); }

template <> Placement fromRow<Placement>(qint64 id, const Row& row) {
    Placement p;
    readerOf(p, id, row).takeAll(p.colony, p.stand, p.headingDeg, p.since, p.until, p.first);
    return p;
}

Row toRow(const Visit& v) {
    return cells(v.colony, v.day, v.boxes, v.beesTop, v.beesBottom, v.upperBeesTop, v.upperBeesBottom, v.stores,
                 v.upperStores, v.queen, v.broodFrames, v.broodChecked, v.supers, v.gross, v.mites, v.miteSample, v.by,
                 v.note);
}

template <> Visit fromRow<Visit>(qint64 id, const Row& row) {
    Visit v;
    readerOf(v, id, row)
        .takeAll(v.colony, v.day, v.boxes, v.beesTop, v.beesBottom, v.upperBeesTop, v.upperBeesBottom, v.stores,
                 v.upperStores, v.queen, v.broodFrames, v.broodChecked, v.supers, v.gross, v.mites, v.miteSample, v.by,
                 v.note);
    return v;
}

Row toRow(const Transfer& t) { return cells(t.day, t.from, t.to, t.what, t.count, t.note); }

template <> Transfer fromRow<Transfer>(qint64 id, const Row& row) {
    Transfer t;
    readerOf(t, id, row).takeAll(t.day, t.from, t.to, t.what, t.count, t.note);
    return t;
}

Row toRow(const Result& x) {
    return cells(x.colony, x.yard, x.day, x.disease, x.verdict, x.method, x.by, x.paper, x.note);
}

template <> Result fromRow<Result>(qint64 id, const Row& row) {
    Result x;
    readerOf(x, id, row).takeAll(x.colony, x.yard, x.day, x.disease, x.verdict, x.method, x.by, x.paper, x.note);
    return x;
}

Row toRow(const Treatment& t) {
    return cells(t.colony, t.yard, t.day, t.product, t.substance, t.antibiotic, t.batch, t.quantity, t.unit, t.method,
                 t.supplier, t.supplierAddress, t.bought, t.quantityBought, t.proof, t.prescriber, t.prescriberContact,
                 t.days, t.withdrawalDays, t.disposed, t.disposedQuantity, t.disposedHow, t.by, t.reason);
}

template <> Treatment fromRow<Treatment>(qint64 id, const Row& row) {
    Treatment t;
    readerOf(t, id, row)
        .takeAll(t.colony, t.yard, t.day, t.product, t.substance, t.antibiotic, t.batch, t.quantity, t.unit, t.method,
                 t.supplier, t.supplierAddress, t.bought, t.quantityBought, t.proof, t.prescriber, t.prescriberContact,
                 t.days, t.withdrawalDays, t.disposed, t.disposedQuantity, t.disposedHow, t.by, t.reason);
    return t;
}

Row toRow(const Lineage& l) { return cells(l.day, l.how, l.colony, l.into, l.by, l.note); }

template <> Lineage fromRow<Lineage>(qint64 id, const Row& row) {
    Lineage l;
    readerOf(l, id, row).takeAll(l.day, l.how, l.colony, l.into, l.by, l.note);
    return l;
}

Row toRow(const Kit& k) { return cells(k.yard, k.part, k.state, k.colony, k.count); }

template <> Kit fromRow<Kit>(qint64 id, const Row& row) {
    Kit k;
    readerOf(k, id, row).takeAll(k.yard, k.part, k.state, k.colony, k.count);
    return k;
}

Row toRow(const Person& p) { return cells(p.name, folded(p.name), p.active); }

template <> Person fromRow<Person>(qint64 id, const Row& row) {
    Person p;
    CellReader r = readerOf(p, id, row);
    r.take(p.name);
    r.skip();
    r.take(p.active);
    return p;
}

Row toRow(const FixedThing& f) { return cells(f.yard, f.kind, f.name, f.points, f.radius); }

template <> FixedThing fromRow<FixedThing>(qint64 id, const Row& row) {
    FixedThing f;
    readerOf(f, id, row).takeAll(f.yard, f.kind, f.name, f.points, f.radius);
    return f;
}

Row toRow(const MergeDay& d) {
    return cells(d.yard, d.day, d.variant, d.most, d.minutes, d.revision, d.note, d.queens);
}

template <> MergeDay fromRow<MergeDay>(qint64 id, const Row& row) {
    MergeDay d;
    readerOf(d, id, row).takeAll(d.yard, d.day, d.variant, d.most, d.minutes, d.revision, d.note, d.queens);
    return d;
}

Row toRow(const MergeChoice& x) { return cells(x.mergeDay, x.what, x.colony, x.other, x.note); }

template <> MergeChoice fromRow<MergeChoice>(qint64 id, const Row& row) {
    MergeChoice x;
    readerOf(x, id, row).takeAll(x.mergeDay, x.what, x.colony, x.other, x.note);
    return x;
}

Row toRow(const MergeStrip& x) {
    return cells(x.mergeDay, x.position, x.how, x.moved, x.host, x.upper, x.outcome, x.note);
}

template <> MergeStrip fromRow<MergeStrip>(qint64 id, const Row& row) {
    MergeStrip x;
    readerOf(x, id, row).takeAll(x.mergeDay, x.position, x.how, x.moved, x.host, x.upper, x.outcome, x.note);
    return x;
}

Row toRow(const DivideChoice& x) { return cells(x.mergeDay, x.colony, x.parts, x.note); }

template <> DivideChoice fromRow<DivideChoice>(qint64 id, const Row& row) {
    DivideChoice x;
    readerOf(x, id, row).takeAll(x.mergeDay, x.colony, x.parts, x.note);
    return x;
}

Row toRow(const DivideStrip& x) {
    return cells(x.mergeDay, x.position, x.colony, x.parts, x.queens, x.outcome, x.note);
}

template <> DivideStrip fromRow<DivideStrip>(qint64 id, const Row& row) {
    DivideStrip x;
    readerOf(x, id, row).takeAll(x.mergeDay, x.position, x.colony, x.parts, x.queens, x.outcome, x.note);
    return x;
}

Row toRow(const Feeding& f) { return cells(f.colony, f.day, f.what, f.mix, f.volume, f.weight, f.by, f.note); }

template <> Feeding fromRow<Feeding>(qint64 id, const Row& row) {
    Feeding f;
    readerOf(f, id, row).takeAll(f.colony, f.day, f.what, f.mix, f.volume, f.weight, f.by, f.note);
    return f;
}

Row toRow(const Queen& q) {
    return cells(q.colony, q.since, q.until, q.fate, q.born, q.mark, q.tag, q.origin, q.source, q.mother, q.note);
}

template <> Queen fromRow<Queen>(qint64 id, const Row& row) {
    Queen q;
    readerOf(q, id, row)
        .takeAll(q.colony, q.since, q.until, q.fate, q.born, q.mark, q.tag, q.origin, q.source, q.mother, q.note);
    return q;
}

Row toRow(const FileMapping& m) { return cells(m.name, folded(m.name), m.kind, m.header, m.form); }

template <> FileMapping fromRow<FileMapping>(qint64 id, const Row& row) {
    FileMapping m;
    CellReader r = readerOf(m, id, row);
    r.take(m.name);
    r.skip();
    r.takeAll(m.kind, m.header, m.form);
    return m;
}

Row toRow(const Phrase& p) { return cells(p.brief, folded(p.brief), p.sentence); }

template <> Phrase fromRow<Phrase>(qint64 id, const Row& row) {
    Phrase p;
    CellReader r = readerOf(p, id, row);
    r.take(p.brief);
    r.skip();
    r.takeAll(p.sentence);
    return p;
}

Row toRow(const Question& q) { return cells(q.name, folded(q.name), q.about, q.ask, q.onPlan); }

template <> Question fromRow<Question>(qint64 id, const Row& row) {
    Question q;
    CellReader r = readerOf(q, id, row);
    r.take(q.name);
    r.skip();
    r.takeAll(q.about, q.ask, q.onPlan);
    return q;
}

Row toRow(const Sample& s) {
    return cells(s.colony, s.day, s.disease, s.material, s.laboratory, s.number, s.sent, s.result, s.lost, s.by,
                 s.note);
}

template <> Sample fromRow<Sample>(qint64 id, const Row& row) {
    Sample s;
    readerOf(s, id, row)
        .takeAll(s.colony, s.day, s.disease, s.material, s.laboratory, s.number, s.sent, s.result, s.lost, s.by,
                 s.note);
    return s;
}

Row toRow(const MiteFall& f) { return cells(f.colony, f.day, f.days, f.mites, f.by, f.note); }

template <> MiteFall fromRow<MiteFall>(qint64 id, const Row& row) {
    MiteFall f;
    readerOf(f, id, row).takeAll(f.colony, f.day, f.days, f.mites, f.by, f.note);
    return f;
}

Row toRow(const StripsOut& s) { return cells(s.treatment, s.colony, s.day, s.by, s.note); }

template <> StripsOut fromRow<StripsOut>(qint64 id, const Row& row) {
    StripsOut s;
    readerOf(s, id, row).takeAll(s.treatment, s.colony, s.day, s.by, s.note);
    return s;
}

Row toRow(const KitEnd& e) { return cells(e.day, e.yard, e.part, e.colony, e.count, e.how, e.by, e.paper, e.note); }

template <> KitEnd fromRow<KitEnd>(qint64 id, const Row& row) {
    KitEnd e;
    readerOf(e, id, row).takeAll(e.day, e.yard, e.part, e.colony, e.count, e.how, e.by, e.paper, e.note);
    return e;
}

Row toRow(const Notifiable& n) { return cells(n.place, folded(n.place), n.disease, n.must, n.tell, n.source); }

template <> Notifiable fromRow<Notifiable>(qint64 id, const Row& row) {
    Notifiable n;
    CellReader r = readerOf(n, id, row);
    r.take(n.place);
    r.skip();
    r.takeAll(n.disease, n.must, n.tell, n.source);
    return n;
}

Row toRow(const Keeper& k) { return cells(k.name, k.address, k.contact, k.registration, k.place); }

template <> Keeper fromRow<Keeper>(qint64 id, const Row& row) {
    Keeper k;
    readerOf(k, id, row).takeAll(k.name, k.address, k.contact, k.registration, k.place);
    return k;
}

} // namespace core

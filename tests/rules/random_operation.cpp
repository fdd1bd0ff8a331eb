#include "tests/rules/random_operation.h"

#include "core/base/quantity.h"

#include <array>
#include <random>
#include <set>

namespace tests::rules {

namespace {

using support::CsvRow;
using support::CsvTables;

template <size_t N> using Words = std::array<const char*, N>;

class Writer {
public:
    Writer(unsigned seed, core::Day on) : m_random(seed), m_on(on) {}

    CsvTables write() {
        addYards();
        const int hives = pick(8, chance(6) ? 70 : 30);
        for (int i = 0; i < hives; ++i) addColony();
        for (int i = hives / 6; i > 0; --i) addDaughter();
        for (int i = hives / 8; i > 0; --i) addEnded();
        for (int i = hives / 3; i > 0; --i) addTransfer();
        for (int i = hives / 10; i > 0; --i) addCarry();
        for (int i = pick(0, 3); i > 0; --i) addTreatment();
        for (int i = pick(0, 2); i > 0; --i) addResult();
        addSettings();
        return std::move(m_tables);
    }

private:
    int pick(int low, int high) { return low + static_cast<int>(m_random() % static_cast<unsigned>(high - low + 1)); }
    bool chance(int oneIn) { return pick(1, oneIn) == 1; }
    template <size_t N> QString word(const Words<N>& words) { return QString::fromLatin1(words[m_random() % N]); }
    QString before(int least, int most) { return isoText(m_on - pick(least, most)); }
    QString metres(int range) { return QString::number(pick(-1000 * range, 1000 * range) / 1000.0, 'f', 3); }
    void add(const char* kind, CsvRow row) { m_tables[QString::fromLatin1(kind)].push_back(std::move(row)); }

    void addYards() {
        const std::array<std::array<const char*, 3>, 3> all{
            {{"Home", "50.0", "14.5"}, {"Hill 10", "50.005", "14.5"}, {"hill 9", "51.5", "14.5"}}};
        for (int y = pick(1, 3); y > 0; --y) {
            const auto& [name, latitude, longitude] = all[static_cast<size_t>(y - 1)];
            m_yards.push_back(QString::fromLatin1(name));
            CsvRow row{{"yard", m_yards.back()}, {"latitude_deg", latitude}, {"longitude_deg", longitude}};
            if (chance(2)) row["gate_x_m"] = metres(30);
            if (chance(2)) row["gate_y_m"] = metres(30);
            add("yards", row);
        }
    }

    QString freshLabel() {
        for (;;) {
            const QString label = word(Words<4>{"A", "a ", "B", "No. "}) + QString::number(pick(1, 200));
            if (m_labels.insert(label.toCaseFolded()).second) return label;
        }
    }

    CsvRow place(const QString& yard) {
        return {{"yard", yard},
                {"stand", "S" + QString::number(++m_stands)},
                {"x_m", metres(40)},
                {"y_m", metres(40)},
                {"heading_deg", QString::number(pick(0, 359))}};
    }

    QString addColonyRow(const QString& since) {
        const QString label = freshLabel();
        CsvRow row = place(m_yards[m_random() % m_yards.size()]);
        row["colony"] = label;
        row["since"] = since;
        row["brood_boxes"] = chance(4) ? "2" : "1";
        row["box"] = chance(6) ? word(Words<2>{"dadant-12", "langstroth-8"}) : QStringLiteral("langstroth-10");
        m_two = row["brood_boxes"] == u"2";
        m_room = row["box"] == u"langstroth-8" ? 32 : 40;
        add("colonies", row);
        return label;
    }

    void addColony() {
        const QString label = addColonyRow(before(500, 900));
        m_living.push_back(label);
        addCheck(label);
        addCount(label);
    }

    /// Divided of another in the last half year.
    void addDaughter() {
        const QString mother = m_living[m_random() % m_living.size()];
        const int age = pick(45, 110);
        const QString since = isoText(m_on - age);
        const QString label = addColonyRow(since);
        add("lineage", {{"date", since}, {"how", "divided"}, {"colony", mother}, {"into", label}});
        add("visits", {{"colony", label}, {"date", before(20, 29)}, {"brood_frames", "4"}, {"brood_checked", "4"}});
        addCount(label);
    }

    void addEnded() {
        const QString label = addColonyRow(before(500, 900));
        const QString end = word(Words<4>{"dead", "united", "shaken-out", "sold"});
        CsvRow& row = m_tables[QStringLiteral("colonies")].back();
        row["ended"] = before(3, 400);
        row["end"] = end;
        if (end == u"united" || end == u"shaken-out")
            add("lineage", {{"date", row["ended"]},
                            {"how", end},
                            {"colony", label},
                            {"into", m_living[m_random() % m_living.size()]}});
        if (chance(6)) add("visits", {{"colony", label}, {"date", isoText(m_on - 450)}, {"signs", "afb"}});
    }

    void addCheck(const QString& label) {
        if (chance(12)) return;
        CsvRow row{{"colony", label}, {"date", before(20, 29)}, {"brood_frames", "5"}, {"brood_checked", "5"}};
        if (chance(25)) row["signs"] = word(Words<3>{"brood-doubt", "efb", "afb"});
        add("visits", row);
    }

    void addCount(const QString& label) {
        if (chance(20)) return;
        const int lower = m_two && chance(3) ? 0 : pick(chance(8) ? 0 : 3, chance(4) ? m_room : 26);
        CsvRow row{{"colony", label},
                   {"date", chance(10) ? before(31, 40) : before(0, 19)},
                   {"bees_top", core::framesText({lower})},
                   {"queen", chance(2) ? QStringLiteral("eggs") : someQueen()}};
        if (chance(3)) row["bees_bottom"] = core::framesText({pick(0, 26)});
        if (m_two && !chance(10)) row["upper_bees_top"] = core::framesText({pick(0, 24)});
        addRest(row);
        add("visits", row);
    }

    QString someQueen() {
        return word(Words<7>{"seen", "eggs", "unknown", "none", "drone-layer", "virgin", "laying-workers"});
    }

    void addRest(CsvRow& row) {
        if (chance(2)) row["brood_frames"] = QString::number(pick(0, chance(3) ? 18 : 9));
        if (!chance(3)) row["stores_frames"] = core::framesText({pick(0, 16)});
        if (m_two && !chance(3)) row["upper_stores_frames"] = core::framesText({pick(0, 16)});
        if (!chance(3)) row["gross_kg"] = QString::number(pick(1500, 6000) / 100.0);
        if (chance(4)) row["supers"] = QString::number(pick(0, 1));
        if (chance(3)) row["mites"] = QString::number(pick(0, 14));
        if (row.contains("mites")) row["mite_sample"] = "300";
        if (chance(8)) row["signs"] = word(Words<4>{"chalkbrood", "sacbrood", "nosema", "deformed-wings"});
    }

    void addTransfer() {
        const QString from = m_living[m_random() % m_living.size()];
        const QString to = m_living[m_random() % m_living.size()];
        if (from == to) return;
        const int days[] = {0, 1, 14, 40, pick(0, 300), pick(0, 300)}; // many of one day
        add("transfers", {{"date", isoText(m_on - days[m_random() % std::size(days)])},
                          {"from", from},
                          {"to", to},
                          {"what", word(Words<5>{"frames", "brood", "bees", "box", "feed"})}});
    }

    void addCarry() {
        const QString label = m_living[m_random() % m_living.size()];
        if (!m_carried.insert(label).second) return;
        CsvRow row = place(m_yards[m_random() % m_yards.size()]);
        row["colony"] = label;
        row["date"] = before(1, 200);
        add("placements", row);
    }

    void addTreatment() {
        CsvRow row{{"date", before(1, 90)},
                   {"product", "Product"},
                   {"substance", "thymol"},
                   {"antibiotic", chance(2) ? "yes" : "no"},
                   {"days", QString::number(pick(5, 90))}};
        if (chance(2))
            row["yard"] = m_yards[m_random() % m_yards.size()];
        else
            row["colony"] = m_living[m_random() % m_living.size()];
        add("treatments", row);
    }

    void addResult() {
        CsvRow row{{"colony", m_living[m_random() % m_living.size()]},
                   {"date", before(1, 400)},
                   {"disease", chance(2) ? "afb" : "efb"},
                   {"result", chance(2) ? "positive" : "negative"},
                   {"method", "laboratory"},
                   {"by", "Ines"}};
        add("results", row);
        if (!chance(2)) return;
        row["date"] = before(1, 9);
        row["result"] = "release";
        row["method"] = "inspector";
        row["paper"] = "P-1";
        add("results", row);
    }

    void addSettings() {
        if (chance(4)) add("settings", {{"name", "carry.per_m"}, {"value", "3"}});
        if (chance(4)) add("settings", {{"name", "shake.per_host"}, {"value", "2"}});
        if (!chance(3)) add("settings", {{"name", "divide.bees_per_part"}, {"value", "2"}});
        if (!chance(3)) add("settings", {{"name", "divide.brood_per_part"}, {"value", "2"}});
        if (chance(6)) add("settings", {{"name", "order"}, {"value", "weaker-on-top"}});
    }

    std::mt19937 m_random;
    core::Day m_on;
    CsvTables m_tables;
    std::vector<QString> m_yards;
    std::vector<QString> m_living;
    std::set<QString> m_labels;
    std::set<QString> m_carried;
    int m_stands = 0;
    bool m_two = false; ///< whether the colony at hand has two boxes
    int m_room = 0;     ///< quarters that one box of it holds
};

} // namespace

CsvTables randomOperation(unsigned seed, core::Day on) { return Writer(seed, on).write(); }

} // namespace tests::rules

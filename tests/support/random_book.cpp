#include "tests/support/random_book.h"

#include <algorithm>
#include <fstream>
#include <optional>
#include <random>
#include <set>
#include <utility>

#include "tests/support/slow_book.h"

namespace tests::support {

namespace {

using Words = std::vector<std::string>;

/// The distributions of the standard library differ from one machine to the next; these do not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) {}
    int below(int n) { return static_cast<int>(m_engine() % static_cast<std::uint64_t>(n)); }
    int from(int first, int last) { return first + below(last - first + 1); }
    bool chance(int percent) { return below(100) < percent; }
    template <class T> const T& oneOf(const std::vector<T>& all) {
        return all[static_cast<std::size_t>(below(static_cast<int>(all.size())))];
    }

private:
    std::mt19937_64 m_engine;
};

struct Yard {
    std::string name;
    std::string latitude;
    int stands = 0;
};

struct Life {
    std::string label;
    std::size_t yard = 0;
    int since = 0;
    std::optional<int> ended;
    std::string end;
    std::optional<std::size_t> mother;
    std::optional<std::size_t> into;
    bool endWritten = true; ///< a union or shake-out ends a colony by its lineage row alone too
};

class Writer {
public:
    explicit Writer(std::uint64_t seed) : m_dice(seed), m_sick(m_dice.oneOf(std::vector<int>{4, 8, 15, 25})) {}
    RandomBook write();

private:
    Dice m_dice;
    std::vector<Yard> m_yards;
    std::vector<Life> m_lives;
    std::vector<int> m_marks;                          ///< days of events so far
    std::map<std::size_t, std::vector<int>> m_marksOf; ///< those of one colony
    std::map<std::string, Words> m_rows;
    std::set<std::pair<std::size_t, int>> m_visited, m_carried;
    std::set<std::string> m_findings;
    const int m_sick; ///< percent of visits with signs: in a calm book one source stands out, in a bad one all mingle
    const int m_first = slowDay("2023-05-01");
    const int m_last = slowDay("2026-10-31");

    int someDay(int first, int last) { return someDay(first, last, m_marks); }
    int someDay(int first, int last, const std::vector<int>& marks);
    int someDayOf(std::size_t colony, int first, int last);
    int lastDayOf(const Life& life) const { return life.ended.value_or(m_last); }
    bool livesOn(const Life& life, int day) const { return life.since <= day && day <= lastDayOf(life); }
    std::optional<std::size_t> someColony(int day, const std::optional<std::size_t>& but);
    std::size_t anyColony() { return static_cast<std::size_t>(m_dice.below(static_cast<int>(m_lives.size()))); }
    std::string named(std::size_t colony, int day);
    std::string standIn(std::size_t yard);
    void add(const std::string& file, const Words& cells);

    void addYards();
    void addLives();
    void addLife();
    std::string freeLabel(int since, int last);
    void joinInto(std::size_t colony);
    bool endsUpIn(std::size_t colony, std::size_t target, int day) const;
    void writeLives();
    void addEvent();
    void addVisit();
    void addTransfer();
    void addFinding(std::size_t c, int day, const std::string& result);
    void addWrit(const std::string& yard, std::size_t c, int day, const std::string& result);
    void addSomeFinding();
    void addSomeWrit();
    void addTreatment();
    void addCarry();
    void addSettings();
    RandomBook bound();
};

/// In most cases a day that stands to an earlier event as the rules' limits do, else any.
int Writer::someDay(int first, int last, const std::vector<int>& marks) {
    static const std::vector<int> kApart = {0, 0, 0, 0, 1, 7, 14, 21, 30, 42, 42, 60, 60, 150, 365, 365, 548};
    for (int attempt = 0; attempt < 8 && !marks.empty() && m_dice.chance(85); ++attempt) {
        const int mark = m_dice.oneOf(marks);
        const int apart = m_dice.oneOf(kApart);
        const int beside = m_dice.oneOf(std::vector<int>{0, 0, 0, -1, 1});
        const int day = m_dice.chance(60) ? mark + apart + beside : mark - apart - beside;
        if (first <= day && day <= last) {
            return day;
        }
    }
    return m_dice.from(first, last);
}

/// The day of an event of `colony`, which later days may stand to in turn.
int Writer::someDayOf(std::size_t colony, int first, int last) {
    const int day = someDay(first, last, m_dice.chance(50) ? m_marksOf[colony] : m_marks);
    m_marks.push_back(day);
    m_marksOf[colony].push_back(day);
    return day;
}

std::optional<std::size_t> Writer::someColony(int day, const std::optional<std::size_t>& but) {
    std::vector<std::size_t> living;
    for (std::size_t c = 0; c < m_lives.size(); ++c) {
        if (livesOn(m_lives[c], day) && c != but) {
            living.push_back(c);
        }
    }
    return living.empty() ? std::nullopt : std::optional(m_dice.oneOf(living));
}

/// A name that means `colony` in a row of `day`: its label where that is enough, in either case, else LABEL@SINCE.
std::string Writer::named(std::size_t colony, int day) {
    const Life& meant = m_lives[colony];
    std::string name = meant.label;
    if (m_dice.chance(10)) {
        std::transform(name.begin(), name.end(), name.begin(),
                       [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    }
    const bool plain = meant.since <= day && std::none_of(m_lives.begin(), m_lives.end(), [&](const Life& other) {
                           return other.label == meant.label && other.since <= day && other.since > meant.since;
                       });
    return plain && m_dice.chance(92) ? name : name + "@" + slowIso(meant.since);
}

std::string Writer::standIn(std::size_t yard) {
    const int n = m_yards[yard].stands++;
    return std::to_string(n + 1) + "," + std::to_string(n % 10 * 3) + "," + std::to_string(n / 10 * 3);
}

void Writer::add(const std::string& file, const Words& cells) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        line += (i > 0 ? "," : "") + cells[i];
    }
    m_rows[file].push_back(line);
}

void Writer::addYards() {
    m_yards = {{"Home", "52.1"}, {"Hill", m_dice.chance(50) ? "" : "51.9"}, {"Low Weir", "-41.3"}};
    if (m_dice.chance(40)) {
        m_yards.erase(m_yards.begin() + m_dice.from(1, 2));
    }
    for (const Yard& y : m_yards) {
        add("yards.csv", {y.name, y.latitude, y.latitude.empty() ? "" : "14.5"});
    }
}

/// A fresh label, or that of a colony whose life shares no day with since..last.
std::string Writer::freeLabel(int since, int last) {
    const std::string fresh = "C" + std::to_string(m_lives.size() + 1);
    if (m_lives.empty() || m_dice.chance(50)) {
        return fresh;
    }
    const std::string used = m_lives[anyColony()].label;
    const bool clash = std::any_of(m_lives.begin(), m_lives.end(), [&](const Life& life) {
        return life.label == used && life.since <= last && since <= lastDayOf(life);
    });
    return clash ? fresh : used;
}

void Writer::addLife() {
    Life life;
    const bool early = m_lives.size() < 4 || m_dice.chance(40);
    life.since = early ? m_first + m_dice.below(60) : someDay(m_first + 60, m_last - 100);
    if (!early && m_dice.chance(30)) { // the day after another's end: its number may be used again
        for (const Life& other : m_lives) {
            life.since = other.ended && *other.ended < m_last - 100 ? *other.ended + 1 : life.since;
        }
    }
    life.yard = static_cast<std::size_t>(m_dice.below(static_cast<int>(m_yards.size())));
    if (!early && m_dice.chance(60)) {
        life.mother = someColony(life.since, std::nullopt);
    }
    if (m_dice.chance(45)) {
        life.ended = someDay(life.since + (m_dice.chance(90) ? 30 : 0), m_last);
        life.end = m_dice.oneOf(Words{"dead", "destroyed", "sold", "united", "united", "shaken-out"});
    }
    life.label = freeLabel(life.since, lastDayOf(life));
    m_marks.push_back(life.since);
    m_marks.push_back(lastDayOf(life));
    m_lives.push_back(life);
}

/// Whether the unions and shake-outs of `day` lead from `colony` to `target`.
bool Writer::endsUpIn(std::size_t colony, std::size_t target, int day) const {
    std::optional<std::size_t> at = colony;
    while (at && *at != target) {
        at = m_lives[*at].ended == day ? m_lives[*at].into : std::nullopt;
    }
    return at.has_value();
}

void Writer::joinInto(std::size_t colony) {
    Life& life = m_lives[colony];
    const auto host = someColony(*life.ended, colony);
    if (host && !endsUpIn(*host, colony, *life.ended)) {
        life.into = host;
        life.endWritten = m_dice.chance(60);
    } else {
        life.end = "dead";
    }
}

void Writer::addLives() {
    const int colonies = m_dice.from(6, 14);
    while (static_cast<int>(m_lives.size()) < colonies) {
        addLife();
    }
    for (std::size_t c = 0; c < m_lives.size(); ++c) {
        if (m_lives[c].end == "united" || m_lives[c].end == "shaken-out") {
            joinInto(c);
        }
    }
}

void Writer::writeLives() {
    for (std::size_t c = 0; c < m_lives.size(); ++c) {
        const Life& life = m_lives[c];
        const std::string ended = life.ended && life.endWritten ? slowIso(*life.ended) : "";
        add("colonies.csv", {life.label, m_yards[life.yard].name, standIn(life.yard), slowIso(life.since), ended,
                             ended.empty() ? "" : life.end});
        if (life.mother) {
            add("lineage.csv", {slowIso(life.since), "divided", named(*life.mother, life.since), named(c, life.since)});
        }
        if (life.into) {
            add("lineage.csv", {slowIso(*life.ended), life.end, named(c, *life.ended), named(*life.into, *life.ended)});
        }
    }
}

void Writer::addVisit() {
    const std::size_t c = anyColony();
    const int day = someDayOf(c, m_lives[c].since, lastDayOf(m_lives[c]));
    if (!m_visited.insert({c, day}).second) {
        return;
    }
    const int brood = m_dice.chance(25) ? m_dice.from(0, 3) : m_dice.from(3, 9);
    const int checked = m_dice.chance(70) ? brood : m_dice.from(0, brood);
    std::string signs;
    if (m_dice.chance(m_sick)) {
        signs = m_dice.oneOf(Words{"afb", "afb", "efb", "efb", "brood-doubt", "brood-doubt", "chalkbrood", "nosema",
                                   "efb brood-doubt", "afb sacbrood", "deformed-wings"});
    }
    add("visits.csv", {named(c, day), slowIso(day), m_dice.chance(90) ? std::to_string(brood) : "",
                       m_dice.chance(88) ? std::to_string(checked) : "", signs});
    if (!signs.empty() && m_dice.chance(35)) { // a sample taken then, or the day before or after
        addFinding(c, std::max(m_lives[c].since, day + m_dice.from(-1, 1)), "negative");
    }
}

void Writer::addTransfer() {
    const std::size_t from = anyColony();
    const Life& giver = m_lives[from];
    const bool after = giver.ended && m_dice.chance(35);
    const int day = someDayOf(from, after ? *giver.ended : giver.since, after ? m_last : lastDayOf(giver));
    const auto to = someColony(day, from);
    if (to) {
        m_marksOf[*to].push_back(day);
        const Words kinds = livesOn(giver, day) ? Words{"frames", "brood", "bees", "box", "feed"}
                                                : Words{"frames", "frames", "box", "feed"};
        add("transfers.csv", {slowIso(day), named(from, day), named(*to, day), m_dice.oneOf(kinds),
                              m_dice.chance(50) ? std::to_string(m_dice.from(1, 4)) : ""});
    }
}

/// A laboratory's, inspector's or field kit's finding; never two that differ in the finding alone.
void Writer::addFinding(std::size_t c, int day, const std::string& result) {
    const std::string disease = m_dice.oneOf(Words{"afb", "afb", "afb", "efb"});
    const std::string method = m_dice.oneOf(Words{"laboratory", "laboratory", "inspector", "field"});
    if (m_findings.insert(std::to_string(c) + disease + method + std::to_string(day)).second) {
        add("results.csv", {"", named(c, day), slowIso(day), disease, result, method, "sampler", ""});
    }
}

/// An inspector's release or order, of a yard or, where that is none, of colony `c`.
void Writer::addWrit(const std::string& yard, std::size_t c, int day, const std::string& result) {
    const std::string disease = m_dice.oneOf(Words{"afb", "afb", "afb", "efb"});
    const std::string whom = yard.empty() ? std::to_string(c) : yard;
    if (m_findings.insert(whom + disease + result + std::to_string(day)).second) {
        add("results.csv", {yard, yard.empty() ? named(c, day) : "", slowIso(day), disease, result, "inspector",
                            "inspector", "P-" + std::to_string(m_findings.size())});
    }
}

void Writer::addSomeFinding() {
    const std::size_t c = anyColony();
    const int day = someDayOf(c, m_lives[c].since, m_last);
    addFinding(c, day, m_dice.chance(m_sick + 5) ? "positive" : "negative");
}

/// Mostly releases; many an order is released soon, or on its own day.
void Writer::addSomeWrit() {
    const std::string yard = m_dice.chance(45) ? m_dice.oneOf(m_yards).name : "";
    const std::size_t c = anyColony();
    const int first = yard.empty() ? m_lives[c].since : m_first;
    const int day = someDayOf(c, first, m_last);
    const bool order = m_dice.chance(25);
    addWrit(yard, c, day, order ? "order" : "release");
    if (order && m_dice.chance(50)) {
        const int later = std::max(first, day + m_dice.oneOf(std::vector<int>{-1, 0, 0, 1, 20, 60}));
        addWrit(yard, c, later, "release");
    }
}

void Writer::addTreatment() {
    const bool ofYard = m_dice.chance(40);
    const std::size_t c = anyColony();
    const int day = someDayOf(c, ofYard ? m_first : m_lives[c].since, ofYard ? m_last : lastDayOf(m_lives[c]));
    const bool antibiotic = m_dice.chance(75);
    add("treatments.csv",
        {ofYard ? m_dice.oneOf(m_yards).name : "", ofYard ? "" : named(c, day), slowIso(day), "Product",
         antibiotic ? "oxytetracycline" : "thymol", antibiotic ? "yes" : m_dice.oneOf(Words{"no", ""})});
}

/// Mostly to another yard; seldom to the other half of the world.
void Writer::addCarry() {
    const std::size_t c = anyColony();
    const int day = someDayOf(c, m_lives[c].since, lastDayOf(m_lives[c]));
    const auto yard = static_cast<std::size_t>(m_dice.below(static_cast<int>(m_yards.size())));
    const bool across = (m_yards[yard].latitude[0] == '-') != (m_yards[m_lives[c].yard].latitude[0] == '-');
    if ((across && !m_dice.chance(25)) || !m_carried.insert({c, day}).second) {
        return;
    }
    add("placements.csv", {named(c, day), slowIso(day), m_yards[yard].name, standIn(yard)});
}

void Writer::addSettings() {
    const std::vector<std::pair<std::string, std::pair<int, int>>> stricter = {
        {"check.min_frames", {3, 5}},        {"check.full_frames", {3, 5}},  {"check.max_age_days", {90, 150}},
        {"check.grace_days", {10, 30}},      {"trace.days", {365, 600}},     {"trace.masked_days", {548, 700}},
        {"afb.own_result_days", {42, 60}},   {"afb.recheck_days", {60, 90}}, {"afb.yard_back_days", {60, 120}},
        {"afb.yard_after_days", {365, 500}}, {"efb.clear_days", {42, 60}},   {"efb.back_days", {42, 60}},
        {"doubt.recheck_days", {21, 42}},    {"doubt.back_days", {42, 60}}};
    for (const auto& [name, range] : stricter) {
        if (m_dice.chance(20)) {
            add("settings.csv", {name, std::to_string(m_dice.from(range.first, range.second))});
        }
    }
}

void Writer::addEvent() {
    const int which = m_dice.below(100);
    if (which < 44) {
        addVisit();
    } else if (which < 65) {
        addTransfer();
    } else if (which < 79) {
        addSomeFinding();
    } else if (which < 86) {
        addSomeWrit();
    } else if (which < 90) {
        addTreatment();
    } else {
        addCarry();
    }
}

RandomBook Writer::bound() {
    const std::map<std::string, std::string> headers = {
        {"yards.csv", "yard,latitude_deg,longitude_deg"},
        {"colonies.csv", "colony,yard,stand,x_m,y_m,since,ended,end"},
        {"visits.csv", "colony,date,brood_frames,brood_checked,signs"},
        {"transfers.csv", "date,from,to,what,count"},
        {"results.csv", "yard,colony,date,disease,result,method,by,paper"},
        {"treatments.csv", "yard,colony,date,product,substance,antibiotic"},
        {"lineage.csv", "date,how,colony,into"},
        {"placements.csv", "colony,date,yard,stand,x_m,y_m"},
        {"settings.csv", "name,value"}};
    RandomBook book;
    for (auto& [file, rows] : m_rows) {
        std::string& text = book.files[file] = headers.at(file) + "\n";
        for (std::size_t left = rows.size(); left > 0; --left) { // the order of rows means nothing
            std::swap(rows[left - 1], rows[static_cast<std::size_t>(m_dice.below(static_cast<int>(left)))]);
            text += rows[left - 1] + "\n";
        }
    }
    std::set<int> days;
    for (int n = 0; n < 40; ++n) {
        days.insert(someDay(m_first + 200, m_last + 60));
    }
    for (const int day : days) {
        book.days.push_back(slowIso(day));
    }
    return book;
}

RandomBook Writer::write() {
    addYards();
    addLives();
    writeLives();
    for (int left = m_dice.from(40, 175); left > 0; --left) {
        addEvent();
    }
    if (m_dice.chance(25)) {
        addSettings();
    }
    return bound();
}

} // namespace

RandomBook randomBook(std::uint64_t seed) { return Writer(seed).write(); }

void writeRandomBook(const RandomBook& book, const std::filesystem::path& folder) {
    std::filesystem::create_directories(folder);
    for (const auto& [file, text] : book.files) {
        std::ofstream(folder / file, std::ios::binary) << text;
    }
}

} // namespace tests::support

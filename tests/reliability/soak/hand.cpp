#include "tests/reliability/soak/hand.h"

#include <algorithm>
#include <limits>

namespace tests::soak {

namespace {

constexpr size_t kMostRetirees = 40; ///< some of them stay: what came of a divide is not taken back by an edit

bool trouble(const Row& row) {
    return std::ranges::any_of(row, [](const Value& value) {
        const auto* word = std::get_if<QString>(&value);
        return word && (*word == u"afb" || *word == u"efb" || *word == u"brood-doubt");
    });
}

bool answers(const Row& row) {
    return std::ranges::any_of(row, [](const Value& value) {
        const auto* word = std::get_if<QString>(&value);
        return word && (*word == u"negative" || *word == u"release");
    });
}

bool firstPlace(const Row& row) {
    const auto* first = std::get_if<qint64>(&row.back());
    return first && *first == 1;
}

} // namespace

size_t Hand::livingOn() const {
    size_t count = m_book.living().size();
    for (const qint64 id : retirees()) count -= m_book.living().contains(id) ? 1 : 0;
    return count;
}

void Hand::needRoom() const {
    const bool full = m_book.rows(Table::Colony).size() > m_size.living + m_size.ended + kMostRetirees;
    if (full || livingOn() > m_size.living + 3) throw Nothing();
}

void Hand::needMany() const {
    if (livingOn() + 3 < m_size.living) throw Nothing();
}

void Hand::needFew(Table table) const {
    if (m_book.rows(table).size() > m_size.rowsATable) throw Nothing();
}

void Hand::needFewCarries() const {
    const size_t carries = m_book.rows(Table::Placement).size() - m_book.rows(Table::Colony).size();
    if (carries > m_size.rowsATable) throw Nothing();
}

ColonyId Hand::pick(const std::set<qint64>& ids) {
    const std::set<qint64> old = retirees();
    for (int i = 0; i < 8 && !ids.empty(); ++i) {
        const qint64 id = *std::next(ids.begin(), upTo(static_cast<int>(ids.size()) - 1));
        if (!old.contains(id)) return ColonyId{id};
    }
    throw Nothing();
}

ColonyId Hand::living() { return pick(m_book.living()); }

ColonyId Hand::otherLiving(ColonyId than) {
    const ColonyId other = living();
    if (other == than) throw Nothing();
    return other;
}

ColonyId Hand::ended() { return pick(m_book.ended()); }

std::set<qint64> Hand::retirees() const {
    const Shadow::Rows& all = m_book.rows(Table::Colony);
    const size_t most = m_size.living + m_size.ended;
    std::set<qint64> out;
    for (auto row = all.begin(); row != all.end() && out.size() + most < all.size(); ++row)
        if (out.size() < kMostRetirees) out.insert(row->first);
    return out;
}

ColonyId Hand::retiring() {
    const std::set<qint64> old = retirees();
    if (oneIn(8)) return ColonyId{idNear(m_book.rows(Table::Colony), 1.0)};
    if (old.empty()) throw Nothing();
    return ColonyId{*std::next(old.begin(), upTo(static_cast<int>(old.size()) - 1))};
}

ColonyId Hand::bare(bool lives) {
    std::set<qint64> named;
    for (int i = 0; i < kTableCount; ++i)
        for (const auto& [id, row] : m_book.rows(static_cast<Table>(i)))
            if (static_cast<Table>(i) != Table::Placement || !firstPlace(row))
                addColonies(static_cast<Table>(i), row, named);
    std::vector<qint64> all;
    for (const qint64 id : retirees())
        if (m_book.living().contains(id) == lives && !named.contains(id)) all.push_back(id);
    if (all.empty()) throw Nothing();
    return ColonyId{all[static_cast<size_t>(upTo(static_cast<int>(all.size()) - 1))]};
}

YardId Hand::yard() {
    const Shadow::Rows& all = m_book.rows(Table::Yard);
    const qint64 last = all.size() > m_size.yards ? std::next(all.begin(), static_cast<int>(m_size.yards))->first
                                                  : std::numeric_limits<qint64>::max();
    return such<Yard>([&](const Yard& y) { return !y.closed && y.id.value < last; }).id;
}

Day Hand::dayOf(ColonyId id) {
    const Colony of = colony(id);
    const Day last = std::min(today, of.ended.value_or(today));
    return std::max(of.since, last - (oneIn(6) ? upTo(200) : upTo(14)));
}

MmPoint Hand::place(const EditContext& c, YardId yard) {
    if (!oneIn(10)) return ground();
    const auto stands = c.standsOf(yard);
    if (stands.empty()) return ground();
    return stands[static_cast<size_t>(upTo(static_cast<int>(stands.size()) - 1))].at;
}

QString Hand::note() {
    if (!oneIn(3)) return {};
    static const QStringList words = {
        QStringLiteral("calm"),  QStringLiteral("“three frames” of pollen"),  QStringLiteral("ü, crowded"),
        QStringLiteral("wet"),   QStringLiteral("drone brood in the corner"), QStringLiteral("moved a stone"),
        QStringLiteral("light"), QStringLiteral("fed, then closed; 🐝")};
    return words[upTo(static_cast<int>(words.size()) - 1)] + QString::number(upTo(40));
}

qint64 Hand::idNear(const Shadow::Rows& rows, double share) {
    if (rows.empty()) throw Nothing();
    const qint64 first = rows.begin()->first;
    const auto span = static_cast<double>(rows.rbegin()->first - first) * share;
    const auto at =
        rows.lower_bound(first + std::uniform_int_distribution<qint64>(0, static_cast<qint64>(span))(m_dice));
    return at->first;
}

std::vector<qint64> Hand::unwantedRows(Table table) const {
    const std::set<qint64> gone = retirees();
    std::vector<qint64> ids;
    for (const auto& [id, row] : m_book.rows(table)) {
        const bool cured = !sick && table == Table::Result && trouble(row) && !answers(row);
        const bool stays = table == Table::Placement && firstPlace(row);
        if (cured || (!stays && namesColony(table, row, gone))) ids.push_back(id);
    }
    if (sick || table != Table::Visit) return ids;
    for (const auto& [id, sign] : m_book.rows(Table::VisitSign))
        if (trouble(sign)) ids.push_back(std::get<qint64>(sign.at(0)));
    return ids;
}

std::optional<qint64> Hand::unwanted(Table table) {
    const auto ids = unwantedRows(table);
    if (ids.empty()) return std::nullopt;
    return ids[static_cast<size_t>(upTo(static_cast<int>(ids.size()) - 1))];
}

std::vector<Kind> allKinds() {
    std::vector<Kind> all;
    for (const auto kinds : {colonyKinds(), placeKinds(), recordKinds(), queenKinds(), healthKinds(), kitKinds(),
                             mergeKinds(), paperKinds()})
        all.insert(all.end(), kinds.begin(), kinds.end());
    return all;
}

} // namespace tests::soak

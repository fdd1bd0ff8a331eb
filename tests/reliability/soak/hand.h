#pragma once

#include "tests/reliability/soak/shadow.h"

#include "core/edit/edit_context.h"
#include "core/model/row_codec.h"

#include <QStringList>

#include <random>
#include <span>
#include <stdexcept>

namespace tests::soak {

/// There is nothing of the kind that is asked for at present: another edit is tried.
struct Nothing : std::runtime_error {
    Nothing() : std::runtime_error("nothing of the kind") {}
};

/// How large the book is kept.
struct Size {
    size_t living = 24; ///< colonies, about
    size_t ended = 24;  ///< beyond that the oldest colonies, and all that names them, are taken back
    size_t yards = 4;
    size_t rowsATable = 120; ///< from then on records are taken back as often as made
};

/// What an edit picks by chance, and is mostly valid.
class Hand {
public:
    Hand(unsigned seed, const Shadow& book, const Size& size) : m_dice(seed), m_book(book), m_size(size) {}

    Day today;
    /// Foulbrood may come into the book; else what there is of it is put right first.
    bool sick = false;

    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(m_dice); }
    bool oneIn(int n) { return upTo(n - 1) == 0; }
    template <class T> T oneOf(std::initializer_list<T> all) {
        return *(all.begin() + upTo(static_cast<int>(all.size()) - 1));
    }

    // Throw Nothing where the book is full, or nearly empty.
    void needRoom() const;           ///< for another colony
    void needMany() const;           ///< so that one may end
    void needFew(Table table) const; ///< rows
    void needFewCarries() const;

    ColonyId living();
    ColonyId otherLiving(ColonyId than);
    ColonyId ended();
    ColonyId anyColony() { return oneIn(5) ? ended() : living(); }
    /// One of the oldest, where there are too many: nothing new is written of it, what names it is taken back, then it.
    ColonyId retiring();
    /// One of the oldest that nothing names any more: first its end is taken back, then it.
    ColonyId bare(bool lives);
    YardId yard(); ///< not closed; not of those that are too many
    /// A day of its life, mostly one of the last weeks.
    Day dayOf(ColonyId colony);
    Day near(Day day) { return std::min(today, day + (upTo(6) - 3)); }
    MmPoint ground() { return {upTo(59) * 700, upTo(39) * 700}; }
    /// A stand of that yard where no hive stands, or bare ground.
    MmPoint place(const EditContext& c, YardId yard);
    /// Mostly one that no colony has had: else few of the ended could live again.
    QString label() { return QString::number(1 + upTo(oneIn(20) ? 99 : 99'999)); }
    QString note();
    QString who() { return QStringLiteral("Keeper %1").arg(upTo(4)); }

    template <class T> T any() { return rowNear<T>(m_book.rows(tableOf<T>()), 1.0); }
    /// One to be taken back: rather an old one, and of a colony that is to go. Only of a table that has many.
    template <class T> T old();
    template <class T, class Fits> T such(Fits&& fits);

    const Shadow& book() const { return m_book; }
    const Size& size() const { return m_size; }

private:
    qint64 idNear(const Shadow::Rows& rows, double share);
    std::optional<qint64> unwanted(Table table);
    std::vector<qint64> unwantedRows(Table table) const;
    std::set<qint64> retirees() const;
    size_t livingOn() const; ///< less those that retire
    ColonyId pick(const std::set<qint64>& ids);
    template <class T> T rowNear(const Shadow::Rows& rows, double share) {
        const qint64 id = idNear(rows, share);
        return fromRow<T>(id, rows.at(id));
    }
    Colony colony(ColonyId id) const { return fromRow<Colony>(id.value, m_book.rows(Table::Colony).at(id.value)); }

    std::mt19937 m_dice;
    const Shadow& m_book;
    Size m_size;
};

template <class T> T Hand::old() {
    const Shadow::Rows& rows = m_book.rows(tableOf<T>());
    if (const auto id = unwanted(tableOf<T>()); id && !oneIn(4)) return fromRow<T>(*id, rows.at(*id));
    if (rows.size() < m_size.rowsATable / 2 && !oneIn(8)) throw Nothing();
    return rowNear<T>(rows, oneIn(4) ? 1.0 : 0.25);
}

template <class T, class Fits> T Hand::such(Fits&& fits) {
    std::vector<T> all;
    for (const auto& [id, row] : m_book.rows(tableOf<T>()))
        if (T t = fromRow<T>(id, row); fits(t)) all.push_back(std::move(t));
    if (all.empty()) throw Nothing();
    return all[static_cast<size_t>(upTo(static_cast<int>(all.size()) - 1))];
}

/// One kind of edit; how often it is tried beside the others.
struct Kind {
    const char* name;
    int weight;
    ChangeSet (*make)(Hand& hand, const EditContext& c);
};

std::span<const Kind> colonyKinds();
std::span<const Kind> placeKinds();
std::span<const Kind> recordKinds();
std::span<const Kind> queenKinds();
std::span<const Kind> healthKinds();
std::span<const Kind> kitKinds();
std::span<const Kind> mergeKinds();
std::span<const Kind> paperKinds();
/// All of them, each once.
std::vector<Kind> allKinds();

} // namespace tests::soak

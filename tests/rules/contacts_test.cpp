#include "core/rules/contacts.h"

#include "tests/rules/hold_book.h"

#include <gtest/gtest.h>

#include <random>

// Stories of gifts, and what they link; rule 4.4.1 says what a gift is and that those of one day have no order.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

constexpr auto kOn = "2026-09-20";

struct Asked {
    explicit Asked(const HoldBook& book) : s(book.on(kOn)), gifts(s), standing(s, gifts) {}

    ColonyIx ix(const char* label) const { return s.colonyNamed(QString(label)).value(); }
    std::string name(ColonyIx c) const { return s.colony(c).label.toStdString(); }
    Contacts contacts(const char* label, ContactWay way, const char* from = "2024-05-01",
                      const char* until = kOn) const {
        return contactsOf(gifts, s.colonies.size(), ix(label), *parseIsoDay(QString(from)),
                          *parseIsoDay(QString(until)), way);
    }
    std::string reached(const Contacts& contacts) const {
        std::string out;
        for (const ColonyIx c : contacts.reached) out += (out.empty() ? "" : " ") + name(c);
        return out;
    }
    std::string chain(const Contacts& contacts, const char* label) const {
        std::string out;
        for (const Gift& g : contacts.chainTo(ix(label)))
            out += (out.empty() ? "" : ", ") + name(g.from) + ">" + name(g.to) + " " + isoText(g.day).toStdString();
        return out;
    }

    Snapshot s;
    Gifts gifts;
    Standing standing;
};

HoldBook four() { return HoldBook().colony("A").colony("B").colony("C").colony("D"); }

TEST(Contacts, FollowGiftsInTheOrderOfDays) {
    const Asked asked(four().gift("A", "B", "2026-05-01").gift("B", "C", "2026-06-01").gift("C", "D", "2026-04-01"));
    const Contacts on = asked.contacts("A", ContactWay::Onwards);
    EXPECT_EQ(asked.reached(on), "B C") << "C gave to D before it had anything from A";
    EXPECT_EQ(asked.chain(on, "C"), "A>B 2026-05-01, B>C 2026-06-01");
    EXPECT_EQ(asked.chain(on, "D"), "");
    const Contacts back = asked.contacts("C", ContactWay::Back);
    EXPECT_EQ(asked.reached(back), "B A");
    EXPECT_EQ(asked.chain(back, "A"), "B>C 2026-06-01, A>B 2026-05-01");
    EXPECT_EQ(asked.reached(asked.contacts("D", ContactWay::Back)), "C");
}

TEST(Contacts, TakeTheGiftsOfADayInAnyOrder) {
    const Asked asked(
        four().gift("B", "C", "2026-05-01").gift("A", "B", "2026-05-01", "feed").gift("C", "A", "2026-05-01"));
    EXPECT_EQ(asked.reached(asked.contacts("A", ContactWay::Onwards)), "B C");
    EXPECT_EQ(asked.reached(asked.contacts("A", ContactWay::Back)), "C B");
    EXPECT_EQ(asked.contacts("A", ContactWay::Onwards).links.size(), 3u) << "the one back to A is told, and ends there";
}

TEST(Contacts, AreThoseOfTheWindowAlone) {
    const Asked asked(four().gift("A", "B", "2026-05-01").gift("B", "C", "2026-06-01"));
    EXPECT_EQ(asked.reached(asked.contacts("A", ContactWay::Onwards, "2026-05-02")), "");
    EXPECT_EQ(asked.reached(asked.contacts("A", ContactWay::Onwards, "2026-05-01", "2026-05-31")), "B");
    EXPECT_EQ(asked.reached(asked.contacts("A", ContactWay::Onwards, "2026-05-01", "2026-06-01")), "B C");
    EXPECT_EQ(asked.reached(asked.contacts("C", ContactWay::Back, "2026-06-01", "2026-06-01")), "B");
}

TEST(Contacts, UnionsShakeOutsAndDividesAreGifts) {
    HoldBook book = four().ended("U", "Home", "2026-06-01", "united").ended("V", "Home", "2026-07-01", "shaken-out");
    book.colony("N", "Home", "2026-08-01");
    book.gift("A", "U", "2026-05-01")
        .lineage("U", "B", "2026-06-01", "united")
        .lineage("V", "C", "2026-07-01", "shaken-out");
    book.lineage("B", "N", "2026-08-01", "divided").gift("B", "V", "2026-06-15");
    const Asked asked(book);
    EXPECT_EQ(asked.reached(asked.contacts("A", ContactWay::Onwards)), "U B V C N");
    EXPECT_EQ(asked.chain(asked.contacts("N", ContactWay::Back), "A"),
              "B>N 2026-08-01, U>B 2026-06-01, A>U 2026-05-01");
}

TEST(Contacts, OfAYardAreThoseThatStoodThereAtTheSameTime) {
    HoldBook book = four().colony("H", "Hill").carried("H", "2026-06-01", "Home").carried("A", "2026-07-01", "Hill");
    const Asked asked(book);
    const auto found =
        yardContactsOf(asked.standing, asked.ix("A"), *parseIsoDay(u"2026-05-15"), *parseIsoDay(u"2026-08-01"));
    std::map<std::string, std::string> told;
    for (const YardContact& c : found)
        told[asked.s.yard(c.yard).name.toStdString() + " " + asked.name(c.colony)] =
            (isoText(c.since) + u' ' + isoText(c.until)).toStdString();
    EXPECT_EQ(told.size(), 4u);
    EXPECT_EQ(told["Home B"], "2026-05-15 2026-07-01");
    EXPECT_EQ(told["Home H"], "2026-06-01 2026-07-01");
    EXPECT_FALSE(told.contains("Hill H")) << "it had left before A came";
}

// Source: own calculation: all chains of a small book tried one gift at a time.
TEST(Contacts, AreThoseOfASlowReadingOfRandomBooks) {
    std::mt19937 random(20260920);
    size_t links = 0;
    for (int round = 0; round < 200; ++round) {
        HoldBook book;
        const std::vector<const char*> labels{"A", "B", "C", "D", "E", "F"};
        for (const char* label : labels) book.colony(label);
        for (int i = 0; i < 12; ++i) {
            const auto from = random() % labels.size();
            const auto to = (from + 1 + random() % (labels.size() - 1)) % labels.size();
            book.gift(labels[from], labels[to], moved("2026-05-01", static_cast<int>(random() % 6)));
        }
        const Asked asked(book);
        for (const ContactWay way : {ContactWay::Onwards, ContactWay::Back}) {
            const bool on = way == ContactWay::Onwards;
            const ColonyIx start = asked.ix("A");
            // The first day (back: the last) by which each has it; more rounds than there can be steps.
            std::map<ColonyIx, Day> has{{start, *parseIsoDay(on ? u"2026-05-01" : u"2026-05-31")}};
            for (size_t step = 0; step < labels.size(); ++step)
                for (const Gift& g : asked.gifts.all()) {
                    const ColonyIx near = on ? g.from : g.to, far = on ? g.to : g.from;
                    const auto at = has.find(near);
                    if (at == has.end() || (on ? g.day < at->second : g.day > at->second)) continue;
                    const auto [to, fresh] = has.try_emplace(far, g.day);
                    if (!fresh) to->second = on ? std::min(to->second, g.day) : std::max(to->second, g.day);
                }
            const Contacts found = asked.contacts("A", way, "2026-05-01", "2026-05-31");
            EXPECT_EQ(found.reached.size() + 1, has.size()) << "round " << round;
            for (const ColonyIx c : found.reached) {
                ASSERT_TRUE(has.contains(c));
                const auto chain = found.chainTo(c);
                ASSERT_FALSE(chain.empty());
                EXPECT_EQ(chain.back().day, has.at(c)) << "the first link is of the first day";
                EXPECT_EQ(on ? chain.front().from : chain.front().to, start);
                for (size_t i = 1; i < chain.size(); ++i) {
                    EXPECT_EQ(on ? chain[i].from : chain[i].to, on ? chain[i - 1].to : chain[i - 1].from);
                    EXPECT_TRUE(on ? chain[i - 1].day <= chain[i].day : chain[i - 1].day >= chain[i].day);
                }
            }
            links += found.links.size();
        }
    }
    EXPECT_GT(links, 1000u);
}

TEST(HeldWerePositive, NamesTheWholeYardAndWhoReceived) {
    HoldBook book = HoldBook().colony("A").colony("B").colony("H", "Hill");
    book.check("A", "2026-08-01").check("B", "2026-08-01").check("H", "2026-08-01").gift("A", "H", "2026-07-01");
    const Snapshot whole = book.on(kOn);
    ASSERT_TRUE(holds(whole).empty());
    std::set<std::string> told;
    for (const HeldThen& h :
         heldWerePositive(whole, whole.colony(*whole.colonyNamed(u"A")).id, *parseIsoDay(QString(kOn)))) {
        const auto at = std::ranges::find(whole.colonies, h.colony, &SnapColony::id);
        told.insert(at->label.toStdString() + " " + holdWord(h.kind).toStdString());
    }
    EXPECT_TRUE(told.contains("A afb-confirmed"));
    EXPECT_TRUE(told.contains("B afb-yard"));
    EXPECT_TRUE(told.contains("H afb-contact"));
    EXPECT_FALSE(told.contains("B afb-contact"));
}

} // namespace

#include "core/edit/queens.h"
#include "tests/ui/book_of_test.h"
#include "ui/form/typed.h"
#include "ui/records/hive_fields.h"
#include "ui/records/new_record.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using ui::form::Values;
using ui::records::NewRecord;

/// Drafts of the forms of a colony, judged against a real book.
struct Drafts : ::testing::Test {
    tests::BookOfTest book;
    std::unique_ptr<core::edit::Session> session = core::edit::Session::open(book.path(), book.clock());

    std::unique_ptr<ui::form::Form> formOf(NewRecord what, const char* label = "A2") const {
        const auto colony = session->colony(book.idOf(QLatin1StringView(label)));
        return ui::records::newForm(*session, what, *colony, book.clock().day);
    }
    /// A queen of A2, so that something may become of her.
    void headA2() const {
        core::Queen q;
        q.colony = book.idOf(QStringLiteral("A2"));
        q.since = core::dayOf(2026, 6, 1);
        session->apply([&](const core::edit::EditContext& c) { return core::edit::newQueen(c, q); });
    }
    struct Typed {
        const char* field;
        const char* text;
    };
    /// The fields that are found wrong ("" for the whole).
    std::set<std::string> wrong(NewRecord what, std::initializer_list<Typed> typed) const {
        const auto form = formOf(what);
        Values values;
        for (const auto& field : form->fields()) // as the panel begins: the first of each choice
            if (!field.options.empty() && field.kind != ui::form::Kind::Colony && field.kind != ui::form::Kind::Text)
                values[field.key] = field.options.front().value;
        for (const auto& [key, text] : form->start()) values[key] = text;
        for (const Typed& t : typed) values[QLatin1StringView(t.field)] = QString::fromUtf8(t.text);
        std::set<std::string> out;
        for (const auto& problem : form->problems(values)) out.insert(problem.field.toStdString());
        return out;
    }
};

using Wrong = std::set<std::string>;

TEST_F(Drafts, OfTransfers) {
    const auto what = NewRecord::Transfer;
    EXPECT_EQ(wrong(what, {}), Wrong{"other"});
    EXPECT_EQ(wrong(what, {{"other", "A3"}}), Wrong{});
    EXPECT_EQ(wrong(what, {{"other", "A3@2026-05-10"}}), Wrong{});
    EXPECT_EQ(wrong(what, {{"other", "A3@2026-05-11"}}), Wrong{"other"});
    EXPECT_EQ(wrong(what, {{"other", "a3"}, {"count", "1000"}}), Wrong{});
    EXPECT_EQ(wrong(what, {{"other", "A2"}, {"count", "1001"}, {"day", "2026-09-16"}}),
              (Wrong{"count", "day", "other"}))
        << "all at once";
    EXPECT_EQ(wrong(what, {{"other", "A3"}, {"day", "2026-05-10"}}), Wrong{}) << "its first day";
    EXPECT_EQ(wrong(what, {{"other", "A3"}, {"day", "2026-05-09"}}), Wrong{"other"}) << "no A3 yet";
    EXPECT_EQ(wrong(what, {{"other", "A3@2026-05-10"}, {"day", "2026-05-09"}}), Wrong{""}) << "the edit refuses it";
}

TEST_F(Drafts, OfResults) {
    const auto what = NewRecord::Result;
    EXPECT_EQ(wrong(what, {}), Wrong{"by"});
    EXPECT_EQ(wrong(what, {{"by", "Laboratory"}}), Wrong{});
    EXPECT_EQ(wrong(what, {{"by", "I"}, {"result", "order"}}), (Wrong{"method", "paper"}));
    EXPECT_EQ(wrong(what, {{"by", "I"}, {"result", "release"}, {"method", "inspector"}, {"paper", "7"}}), Wrong{});
    EXPECT_EQ(wrong(what, {{"by", "I"}, {"of", "yard"}}), Wrong{"result"}) << "a yard has orders and releases alone";
    EXPECT_EQ(wrong(what, {{"by", "I"}, {"colony", "Z1"}}), Wrong{"colony"});
}

TEST_F(Drafts, OfTreatments) {
    const auto what = NewRecord::Treatment;
    EXPECT_EQ(wrong(what, {}), (Wrong{"product", "substance"}));
    EXPECT_EQ(
        wrong(what, {{"product", "P"}, {"substance", "s"}, {"quantity", "-1"}, {"days", "1.5"}, {"bought", "soon"}}),
        (Wrong{"bought", "days", "quantity"}));
    EXPECT_EQ(wrong(what, {{"product", "P"}, {"substance", "s"}, {"of", "yard"}}), Wrong{});
    EXPECT_EQ(wrong(what, {{"product", "P"}, {"substance", "s"}, {"day", "2026-05-01"}}), Wrong{"colony"})
        << "no A2 on that day";
}

TEST_F(Drafts, OfUnionsDividesAndEnds) {
    EXPECT_EQ(wrong(NewRecord::Union, {}), Wrong{"into"});
    EXPECT_EQ(wrong(NewRecord::Union, {{"into", "A2"}}), Wrong{"into"});
    EXPECT_EQ(wrong(NewRecord::Union, {{"into", "A4"}}), Wrong{});
    EXPECT_EQ(wrong(NewRecord::Divide, {}), Wrong{}) << "all is proposed";
    EXPECT_EQ(wrong(NewRecord::Divide, {{"label", "A1"}, {"heading", "up"}, {"queen_born", "1989"}}),
              (Wrong{"heading", "label", "queen_born"}));
    EXPECT_EQ(wrong(NewRecord::Divide, {{"day", "2026-05-09"}}), Wrong{"day"});
    EXPECT_EQ(wrong(NewRecord::End, {}), Wrong{});
    EXPECT_EQ(wrong(NewRecord::End, {{"day", ""}}), Wrong{"day"});
    EXPECT_EQ(wrong(NewRecord::End, {{"day", "2026-09-13"}}), Wrong{""}) << "it was visited after that day";
}

TEST_F(Drafts, OfAColonysData) {
    const auto what = NewRecord::ColonyData;
    EXPECT_EQ(wrong(what, {}), Wrong{});
    EXPECT_EQ(wrong(what, {{"label", ""}}), Wrong{"label"});
    EXPECT_EQ(wrong(what, {{"label", "A@1"}}), Wrong{"label"});
    EXPECT_EQ(wrong(what, {{"label", "a3"}}), Wrong{"label"}) << "case means nothing";
    EXPECT_EQ(wrong(what, {{"since", "2026-09-15"}}), Wrong{""}) << "it was visited before that day";
    EXPECT_EQ(wrong(what, {{"queen_born", "2101"}}), Wrong{"queen_born"});
    EXPECT_EQ(wrong(NewRecord::NewColony, {{"label", "N1"}}), Wrong{"stand"}) << "no stand is empty";
}

TEST_F(Drafts, OfFeedAndQueens) {
    EXPECT_EQ(wrong(NewRecord::Feeding, {}), Wrong{"amount"});
    EXPECT_EQ(wrong(NewRecord::Feeding, {{"amount", "4"}}), Wrong{}) << "a mix need not be known";
    EXPECT_EQ(wrong(NewRecord::Feeding, {{"amount", "ten"}, {"mix", "thick"}, {"day", "soon"}}),
              (Wrong{"amount", "day", "mix"}));
    EXPECT_EQ(wrong(NewRecord::Feeding, {{"what", "fondant"}, {"mix", "thick"}, {"amount", "4"}}), Wrong{})
        << "its mix is not shown";
    EXPECT_EQ(wrong(NewRecord::Feeding, {{"measure", "weight"}, {"amount", "100.01"}}), Wrong{"amount"});
    EXPECT_EQ(wrong(NewRecord::Feeding, {{"amount", "4"}, {"day", "2026-05-09"}}), Wrong{""}) << "no A2 on that day";
    EXPECT_EQ(wrong(NewRecord::MiteFall, {}), (Wrong{"mites", "days"})) << "a count without its days says nothing";
    EXPECT_EQ(wrong(NewRecord::MiteFall, {{"mites", "0"}, {"days", "5"}}), Wrong{}) << "none fallen is a count";
    EXPECT_EQ(wrong(NewRecord::MiteFall, {{"mites", "-1"}, {"days", "0"}, {"day", "soon"}}),
              (Wrong{"mites", "days", "day"}));
    EXPECT_EQ(wrong(NewRecord::MiteFall, {{"mites", "2.5"}, {"days", "61"}}), (Wrong{"mites", "days"}));
    EXPECT_EQ(wrong(NewRecord::MiteFall, {{"mites", "20"}, {"days", "5"}, {"day", "2026-05-09"}}), Wrong{""})
        << "no A2 on that day";
    EXPECT_EQ(wrong(NewRecord::Queen, {}), Wrong{});
    EXPECT_EQ(wrong(NewRecord::Queen, {{"born", "25"}, {"mother", "Z1"}, {"day", ""}}),
              (Wrong{"born", "day", "mother"}));
    headA2();
    EXPECT_EQ(wrong(NewRecord::QueenEnd, {}), Wrong{});
    EXPECT_EQ(wrong(NewRecord::QueenEnd, {{"fate", "moved"}, {"to", "A2"}}), Wrong{"to"});
    EXPECT_EQ(wrong(NewRecord::QueenEnd, {{"fate", "dead"}, {"to", "A2"}}), Wrong{}) << "is not shown";
    EXPECT_EQ(wrong(NewRecord::QueenEnd, {{"day", "2026-05-31"}}), Wrong{""}) << "before she began";
}

TEST_F(Drafts, AreWhatTheyBeginWithWhereNothingIsTyped) {
    headA2();
    for (const auto& words : ui::records::newRecordWords()) {
        const auto form = formOf(words.what);
        const auto again = formOf(words.what);
        EXPECT_EQ(form->start(), again->start()) << words.text.toStdString();
        std::set<QString> keys;
        for (const auto& field : form->fields()) EXPECT_TRUE(keys.insert(field.key).second) << field.key.toStdString();
        for (const auto& [key, text] : form->start()) EXPECT_TRUE(keys.contains(key)) << key.toStdString();
    }
}

TEST(SpotBeside, IsAMetreAwayAndNotInTheWay) {
    using core::MmPoint;
    const MmPoint at{2000, 0};
    EXPECT_EQ(ui::records::spotBeside(at, 180, {at}), (MmPoint{1000, 0})) << "to its right, seen from the hive";
    EXPECT_EQ(ui::records::spotBeside(at, 0, {at}), (MmPoint{3000, 0}));
    EXPECT_EQ(ui::records::spotBeside(at, 180, {at, {1000, 0}}), (MmPoint{3000, 0}));
    EXPECT_EQ(ui::records::spotBeside(at, 180, {at, {1600, 0}, {2400, 0}}), (MmPoint{2000, 1000})) << "behind it";
    std::vector<MmPoint> full;
    for (int x = -1500; x <= 5500; x += 500)
        for (int y = -3500; y <= 3500; y += 500) full.push_back({x, y});
    EXPECT_FALSE(ui::records::spotBeside(at, 180, full));
}

} // namespace

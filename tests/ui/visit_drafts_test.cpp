#include "core/base/error.h"
#include "ui/visit/draft_cells.h"
#include "ui/visit/drafts.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include <random>

namespace {

using ui::visit::DraftJournal;
using ui::visit::Drafts;
using ui::visit::Field;
using ui::visit::HalfTyped;
using ui::visit::typedIn;
using ui::visit::typeInto;
using ui::visit::VisitDraft;

VisitDraft draft(const QString& bees) {
    VisitDraft d;
    d.day = core::dayOf(2026, 9, 14);
    d[Field::BeesTop] = bees;
    return d;
}

TEST(DraftCells, QueenSignsAndBoxesAreTypedByLetters) {
    VisitDraft d = draft({});
    typeInto(d, Field::Queen, QStringLiteral("E"));
    EXPECT_EQ(d.queen, core::QueenSeen::Eggs);
    typeInto(d, Field::Signs, QStringLiteral("wc; a"));
    EXPECT_TRUE(d.signs.has(core::Sign::Afb) && d.signs.has(core::Sign::Chalkbrood) &&
                d.signs.has(core::Sign::DeformedWings));
    EXPECT_EQ(typedIn(d, Field::Signs).toStdString(), "acw");
    typeInto(d, Field::Boxes, QStringLiteral("2"));
    EXPECT_EQ(d.boxes, 2);
    EXPECT_TRUE(d.unread.empty());
}

TEST(DraftCells, WhatMeansNothingStaysAsTypedAndCountsForNothing) {
    VisitDraft d = draft({});
    d.queen = core::QueenSeen::Seen;
    for (const auto& [field, typed] :
         {std::pair{Field::Queen, "4"}, {Field::Signs, "ax"}, {Field::Boxes, "3"}, {Field::Day, "14 Sepp"}}) {
        typeInto(d, field, QString::fromLatin1(typed));
        EXPECT_EQ(typedIn(d, field).toStdString(), typed);
    }
    EXPECT_FALSE(d.queen);
    EXPECT_TRUE(d.signs.empty()) << "no foulbrood by half of what is typed";
    EXPECT_FALSE(d.boxes);
    for (const Field field : {Field::Queen, Field::Signs, Field::Boxes}) typeInto(d, field, {});
    EXPECT_EQ(d.unread.size(), 1u);
}

struct VisitDrafts : ::testing::Test {
    QTemporaryDir folder;
    QString book = folder.filePath(QStringLiteral("a.yardwright"));
    QString id = QStringLiteral("7d1f0000");
    QString file = DraftJournal(book, id).path();
    static constexpr core::ColonyId kOne{1}, kTwo{2};

    std::string kept() const {
        std::string out;
        for (const HalfTyped& h : DraftJournal(book, id).all())
            out += std::to_string(h.colony.value) + ":" + h.draft[Field::BeesTop].toStdString() + " ";
        return out;
    }
};

TEST_F(VisitDrafts, EachKeyIsOnTheDiskWhenItIsTyped) {
    Drafts drafts(book, id);
    drafts.type(kOne, {}, draft(QStringLiteral("3")), draft({}));
    EXPECT_EQ(kept(), "1:3 ");
    drafts.type(kTwo, {}, draft(QStringLiteral("7")), draft({}));
    drafts.type(kOne, {}, draft(QStringLiteral("3,")), draft({}));
    EXPECT_EQ(kept(), "1:3, 2:7 ");
    drafts.type(kTwo, {}, draft({}), draft({}));
    EXPECT_EQ(kept(), "1:3, ") << "rubbed out again";
    drafts.drop(kOne);
    EXPECT_FALSE(QFile::exists(file)) << "nothing is half typed";
}

TEST_F(VisitDrafts, ALineCutShortCostsTheLastKeyAlone) {
    {
        Drafts drafts(book, id);
        drafts.type(kOne, {}, draft(QStringLiteral("3")), draft({}));
        drafts.type(kOne, {}, draft(QStringLiteral("3.5")), draft({}));
    }
    QFile f(file);
    ASSERT_TRUE(f.resize(f.size() - 7));
    Drafts again(book, id);
    again.read();
    EXPECT_EQ(again.of(kOne), draft(QStringLiteral("3")));
    again.type(kTwo, {}, draft(QStringLiteral("4")), draft({}));
    EXPECT_EQ(kept(), "1:3 2:4 ") << "it goes on behind whole lines";
}

// A new book is made under the name of the old one: its first colony has the same number.
TEST_F(VisitDrafts, AnotherBookInItsPlaceIsNotGivenThem) {
    Drafts(book, id).type(kOne, {}, draft(QStringLiteral("3")), draft({}));
    Drafts other(book, QStringLiteral("aa310000"));
    other.read();
    EXPECT_TRUE(other.all().empty());
    other.type(kOne, {}, draft(QStringLiteral("9")), draft({}));
    EXPECT_EQ(kept(), "1:3 ") << "they wait for theirs";
}

TEST_F(VisitDrafts, AFileThatIsNoneIsNamedAndLeftAlone) {
    QFile f(file);
    ASSERT_TRUE(f.open(QIODevice::WriteOnly));
    f.write("a shopping list\n");
    f.close();
    Drafts drafts(book, id);
    try {
        drafts.read();
        FAIL() << "it was read";
    } catch (const core::Error& e) {
        EXPECT_NE(e.userMessage().indexOf(file), -1) << e.userMessage().toStdString();
    }
    EXPECT_GT(QFile(file).size(), 0);
}

// Thousands of keys: the file does not grow for ever, and says what is typed all the same.
TEST_F(VisitDrafts, OfAnyTypingTheFileSaysWhatStands) {
    std::mt19937 random(7);
    const auto below = [&](auto n) { return static_cast<decltype(n)>(random() % static_cast<unsigned>(n)); };
    Drafts drafts(book, id);
    for (int i = 0; i < 9000; ++i) {
        const core::ColonyId colony{1 + below(5)};
        VisitDraft d = drafts.of(colony).value_or(draft({}));
        const auto field = static_cast<Field>(below(18));
        if (field == Field::Day) continue;
        const QStringList typed{QString(), QStringLiteral("3"), QStringLiteral("3¼"), QStringLiteral("e"),
                                QStringLiteral("\"x\n\\")};
        typeInto(d, field, typed[below(typed.size())]);
        if (below(50) == 0)
            drafts.drop(colony);
        else
            drafts.type(colony, {}, d, draft({}));
        if (i % 500 != 0) continue;
        const auto all = DraftJournal(book, id).all();
        ASSERT_EQ(all.size(), drafts.all().size());
        for (size_t k = 0; k < all.size(); ++k) ASSERT_EQ(all[k].draft, drafts.all()[k].draft) << i;
    }
    EXPECT_LT(QFile(file).size(), 2'000'000);
}

} // namespace

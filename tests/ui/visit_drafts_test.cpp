#include "core/base/error.h"
#include "tests/support/small_files.h"
#include "ui/visit/draft_cells.h"
#include "ui/visit/drafts.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <random>

#include <sys/stat.h>

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
        for (const HalfTyped& h : DraftJournal(book, id).read().all)
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

TEST_F(VisitDrafts, AFileThatIsNoneIsKeptUnderAnotherNameAndSaid) {
    QFile f(file);
    ASSERT_TRUE(f.open(QIODevice::WriteOnly));
    f.write("a shopping list\n");
    f.close();
    Drafts drafts(book, id);
    const QString said = drafts.read();
    EXPECT_EQ(said, QStringLiteral("Of the visits that were half typed something could not be read. What could is "
                                   "there again; the file of before is kept as %1.unread-1.")
                        .arg(file));
    QFile aside(file + QStringLiteral(".unread-1"));
    ASSERT_TRUE(aside.open(QIODevice::ReadOnly));
    EXPECT_EQ(aside.readAll().toStdString(), "a shopping list\n");
    drafts.type(kOne, {}, draft(QStringLiteral("3")), draft({}));
    EXPECT_EQ(kept(), "1:3 ");
}

TEST_F(VisitDrafts, ASpoiltLineAmongOthersCostsItselfAlone) {
    {
        Drafts drafts(book, id);
        drafts.type(kOne, {}, draft(QStringLiteral("3")), draft({}));
        QFile f(file);
        ASSERT_TRUE(f.open(QIODevice::Append));
        f.write("{\"colony\":2,\"was\n");
        f.close();
        Drafts(book, id).type(kTwo, {}, draft(QStringLiteral("4")), draft({}));
    }
    EXPECT_EQ(kept(), "1:3 2:4 ");
    Drafts again(book, id);
    EXPECT_NE(again.read(), QString());
    EXPECT_EQ(again.all().size(), 2u);
    EXPECT_TRUE(QFile::exists(file + QStringLiteral(".unread-1")));
    EXPECT_EQ(Drafts(book, id).read(), QString()) << "said once";
}

// The disk is full at each byte of a line in turn; then a key is typed that fits again.
TEST_F(VisitDrafts, WhereverTheDiskIsFullNothingThatWasKeptIsLostAndTheNextKeyKeepsAll) {
    for (rlim_t room = 0;; ++room) {
        SCOPED_TRACE(room);
        QFile::remove(file);
        Drafts drafts(book, id);
        drafts.read();
        drafts.type(kOne, {}, draft(QStringLiteral("3")), draft({}));
        const auto before = static_cast<rlim_t>(QFile(file).size());
        std::string said;
        try {
            const tests::SmallFiles small(before + room);
            drafts.type(kTwo, {}, draft(QStringLiteral("4")), draft({}));
        } catch (const core::Error& e) {
            said = e.what();
        }
        if (said.empty()) {
            EXPECT_EQ(kept(), "1:3 2:4 ");
            EXPECT_GT(room, 10u);
            break;
        }
        EXPECT_EQ(said, "What is typed cannot be kept in " + file.toStdString() +
                            ": the disk is full. Save the visits before the program is closed.");
        EXPECT_TRUE(drafts.behind());
        EXPECT_EQ(kept(), "1:3 ");
        EXPECT_EQ(DraftJournal(book, id).read().unread, 0);
        EXPECT_EQ(drafts.of(kTwo), draft(QStringLiteral("4"))) << "it stands where it was typed";
        drafts.type(kOne, {}, draft(QStringLiteral("3.")), draft({}));
        EXPECT_FALSE(drafts.behind());
        EXPECT_EQ(kept(), "1:3. 2:4 ") << "the key that could not be kept is there, too";
        if (HasFailure()) return;
    }
}

// As a power cut may leave it: what is typed next stands behind whole lines, whether the file was read before or not.
TEST_F(VisitDrafts, OfALineCutAtAnyByteTheOthersStand) {
    Drafts(book, id).type(kOne, {}, draft(QStringLiteral("3")), draft({}));
    const qint64 one = QFile(file).size();
    Drafts(book, id).type(kTwo, {}, draft(QStringLiteral("4")), draft({}));
    QFile f(file);
    ASSERT_TRUE(f.open(QIODevice::ReadOnly));
    const QByteArray whole = f.readAll();
    f.close();
    for (qint64 cut = one; cut < whole.size() - 1; ++cut)
        for (const bool read : {false, true}) {
            SCOPED_TRACE(cut);
            ASSERT_TRUE(f.open(QIODevice::WriteOnly));
            f.write(whole.first(cut));
            f.close();
            EXPECT_EQ(kept(), "1:3 ");
            Drafts drafts(book, id);
            const QString said = read ? drafts.read() : QString();
            EXPECT_EQ(said, QString());
            drafts.type(core::ColonyId{3}, {}, draft(QStringLiteral("5")), draft({}));
            EXPECT_EQ(kept(), "1:3 3:5 ");
        }
}

TEST_F(VisitDrafts, OfAFolderThatVanishedAndIsBackAllIsKeptAgain) {
    const QString home = folder.filePath(QStringLiteral("stick"));
    const QString away = folder.filePath(QStringLiteral("pocket"));
    ASSERT_TRUE(QDir().mkpath(home));
    book = home + QStringLiteral("/a.yardwright");
    file = DraftJournal(book, id).path();
    Drafts drafts(book, id);
    drafts.read();
    drafts.type(kOne, {}, draft(QStringLiteral("3")), draft({}));
    ASSERT_TRUE(QDir().rename(home, away));
    EXPECT_THROW(drafts.type(kOne, {}, draft(QStringLiteral("3.")), draft({})), core::Error);
    ASSERT_TRUE(QDir().mkpath(home)) << "the empty place that it was plugged into";
    drafts.type(kTwo, {}, draft(QStringLiteral("4")), draft({}));
    EXPECT_EQ(kept(), "1:3. 2:4 ");
    QFile::remove(file);
    ASSERT_TRUE(QDir().rmdir(home));
    ASSERT_TRUE(QDir().rename(away, home));
    drafts.type(kTwo, {}, draft(QStringLiteral("4.")), draft({}));
    EXPECT_EQ(kept(), "1:3. 2:4. ");
}

// A folder stands in the file's place: nobody can read or write it.
TEST_F(VisitDrafts, WhereTheFileCannotBeReadItIsOnlyAddedTo) {
    ASSERT_TRUE(QDir().mkpath(file));
    Drafts drafts(book, id);
    std::string said;
    try {
        drafts.read();
    } catch (const core::Error& e) {
        said = e.what();
    }
    EXPECT_EQ(said, "The visits that were half typed cannot be read from " + file.toStdString() +
                        ": a folder of that name stands there. They stay there, and are there again once it can be "
                        "read.");
    EXPECT_THROW(drafts.type(kOne, {}, draft(QStringLiteral("3")), draft({})), core::Error);
    ASSERT_TRUE(QDir().rmdir(file));
    Drafts(book, id).type(kTwo, {}, draft(QStringLiteral("9")), draft({})); // as it was before the trouble
    drafts.type(kOne, {}, draft(QStringLiteral("3.")), draft({}));
    EXPECT_EQ(kept(), "2:9 1:3. ");
    drafts.drop(kOne);
    EXPECT_EQ(kept(), "2:9 ") << "what was never read stays";
}

TEST_F(VisitDrafts, APipeInTheFilesPlaceIsWaitedForNeitherToReadNorToWrite) {
    ASSERT_EQ(mkfifo(QFile::encodeName(file).constData(), 0600), 0);
    Drafts drafts(book, id);
    EXPECT_THROW(drafts.read(), core::Error);
    std::string said;
    try {
        drafts.type(kOne, {}, draft(QStringLiteral("3")), draft({}));
    } catch (const core::Error& e) {
        said = e.what();
    }
    EXPECT_EQ(said, "What is typed cannot be kept in " + file.toStdString() +
                        ": a pipe of that name stands there. Save the visits before the program is closed.");
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
        const auto all = DraftJournal(book, id).read().all;
        ASSERT_EQ(all.size(), drafts.all().size());
        for (size_t k = 0; k < all.size(); ++k) ASSERT_EQ(all[k].draft, drafts.all()[k].draft) << i;
    }
    EXPECT_LT(QFile(file).size(), 2'000'000);
}

} // namespace

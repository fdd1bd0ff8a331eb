#include "core/report/page_code.h"

#include <gtest/gtest.h>

#include <QSet>

namespace {

using namespace core::report;

PageCode sample() {
    PageCode code;
    code.book = bookMark("b0a4f2c1-7f3e-4a55-9a0b-2f6f5a1f3c11");
    code.yard = 12;
    code.day = core::dayOf(2026, 9, 20);
    code.variant = 2;
    code.revision = 7;
    code.sheet = Sheet::Checks;
    return code;
}

PageCode read(const QString& typed) { return std::get<PageCode>(readPageCode(typed)); }
CodeFault fault(const QString& typed) { return std::get<CodeFault>(readPageCode(typed)); }

TEST(PageCode, SaysBackWhatItWasMadeOf) {
    const QString text = pageCodeText(sample());
    EXPECT_EQ(text.size(), 19);
    EXPECT_EQ(text.count('-'), 3);
    EXPECT_EQ(read(text), sample());
    EXPECT_EQ(read(text.toLower().remove('-')), sample());
    EXPECT_EQ(read("  " + QString(text).replace('-', ' ')), sample());
}

TEST(PageCode, HoldsTheLeastAndTheMost) {
    PageCode least;
    least.yard = 0;
    least.day = core::dayOf(2000, 1, 1);
    EXPECT_EQ(read(pageCodeText(least)), least);
    PageCode most{0xfffff, 16383, core::dayOf(2000, 1, 1) + 65535, 3, 1048575, Sheet::LayingWorkers};
    EXPECT_EQ(read(pageCodeText(most)), most);
    PageCode more = most;
    more.yard = 1'000'000;
    more.revision = 5'000'000;
    more.day = most.day + 400;
    EXPECT_EQ(read(pageCodeText(more)), most) << "that or more";
}

TEST(PageCode, HasNoCharactersThatAreTakenForOthers) {
    QSet<QChar> used;
    for (int i = 0; i < 2000; ++i) {
        PageCode code = sample();
        code.book = static_cast<quint32>(i * 524);
        code.revision = i * 37;
        for (const QChar c : pageCodeText(code)) used << c;
    }
    EXPECT_GT(used.size(), 30);
    for (const QChar c : QStringLiteral("01IOio")) EXPECT_FALSE(used.contains(c)) << c.toLatin1();
}

// Every slip in one character, and any two that are swapped.
TEST(PageCode, TheCheckLetterBetraysSlips) {
    static const QString kAll = QStringLiteral("23456789ABCDEFGHJKLMNPQRSTUVWXYZ");
    const QString right = pageCodeText(sample()).remove('-');
    for (qsizetype i = 0; i < right.size(); ++i) {
        for (const QChar c : kAll) {
            QString wrong = right;
            wrong[i] = c;
            if (wrong != right) {
                EXPECT_EQ(fault(wrong), CodeFault::Check) << wrong.toStdString();
            }
        }
        for (qsizetype k = i + 1; k < right.size(); ++k) {
            QString wrong = right;
            wrong[i] = right[k];
            wrong[k] = right[i];
            if (wrong != right) {
                EXPECT_EQ(fault(wrong), CodeFault::Check) << wrong.toStdString();
            }
        }
    }
}

TEST(PageCode, SaysWhatIsWrongWithWhatIsNoCode) {
    EXPECT_EQ(fault(""), CodeFault::Length);
    EXPECT_EQ(fault("ABCD-EFGH"), CodeFault::Length);
    EXPECT_EQ(fault("ABCD-EFGH-JKLM-NPQ0"), CodeFault::Character);
    EXPECT_EQ(fault(QStringLiteral("ABCD-EFGH-JKLM-NPQ\u00c4")), CodeFault::Character);
}

TEST(PageCode, BooksOfDifferentIdsHaveDifferentMarksMostly) {
    QSet<quint32> marks;
    for (int i = 0; i < 1000; ++i)
        marks << bookMark(QStringLiteral("b0a4f2c1-7f3e-4a55-9a0b-%1").arg(i, 12, 16, QChar('0')));
    EXPECT_GT(marks.size(), 990); // own calculation: 1000 of 2^20 meet about once in two
}

} // namespace

#include "core/edit/file_mappings.h"

#include "core/edit/edit_context.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

namespace {

class FileMappings : public EditTest {
protected:
    bool keep(const QString& name, const QString& form, const QString& header = QStringLiteral("day\nkg")) {
        return apply([&](const EditContext& c) {
                   return keepFileMapping(c, {{}, name, QStringLiteral("visits"), header, form});
               })
            .has_value();
    }
    QStringList shown() const {
        QStringList out;
        for (const FileMapping& m : session->fileMappings()) out << m.name + u' ' + m.form;
        return out;
    }
};

TEST_F(FileMappings, AreKeptReplacedByNameAndTakenBack) {
    EXPECT_TRUE(keep(QStringLiteral(" Scale 10 "), QStringLiteral("a")));
    EXPECT_TRUE(keep(QStringLiteral("Scale 9"), QStringLiteral("b")));
    EXPECT_EQ(shown(), (QStringList{"Scale 9 b", "Scale 10 a"}));
    EXPECT_FALSE(keep(QStringLiteral("Scale 9"), QStringLiteral("b"))) << "kept so already";
    EXPECT_TRUE(keep(QStringLiteral("SCALE 9"), QStringLiteral("c")));
    EXPECT_EQ(shown(), (QStringList{"SCALE 9 c", "Scale 10 a"}));
    reopen();
    EXPECT_EQ(shown(), (QStringList{"SCALE 9 c", "Scale 10 a"}));
    const FileMappingId id = session->fileMappings().front().id;
    apply([&](const EditContext& c) { return takeBackFileMapping(c, id); });
    EXPECT_EQ(shown(), QStringList("Scale 10 a"));
    EXPECT_EQ(problems(), "");
    session->undo();
    session->undo();
    EXPECT_EQ(shown(), (QStringList{"Scale 9 b", "Scale 10 a"}));
    EXPECT_EQ(problems(), "");
}

TEST_F(FileMappings, NeedANameAndSomethingToKeep) {
    EXPECT_EQ(thrownBy([&] { keep(QStringLiteral(" "), QStringLiteral("a")); }).message,
              "Name: expected 1 to 60 characters, found 0.");
    EXPECT_EQ(thrownBy([&] { keep(QStringLiteral("x"), QStringLiteral("a"), QStringLiteral("\n")); }).kind,
              Error::Kind::BadData);
    EXPECT_EQ(thrownBy([&] {
                  apply([&](const EditContext& c) { return takeBackFileMapping(c, FileMappingId{7}); });
              }).message,
              "That way to read a file is no longer in the book.");
    EXPECT_TRUE(session->history(10).empty());
}

} // namespace

} // namespace tests::edit

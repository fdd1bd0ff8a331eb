#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSet>

// core/rules/calc/README.md says how many published values these tests check, and from how many sources. They are
// counted here: the rows of expectPublished, which begin with the name of their source (sources.h).

namespace {

QString textOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

TEST(Readme, TotalsOfPublishedValuesAreTrue) {
    static const QRegularExpression kRow(QStringLiteral("\\{(k[A-Z]\\w*),"));
    const QDir tests(QStringLiteral(YW_SOURCE_DIR "/tests/calc"));
    const QString sources = textOf(tests.filePath("sources.h"));
    int rows = 0;
    QSet<QString> used;
    for (const QString& name : tests.entryList({"*_test.cpp"})) {
        if (name == QLatin1StringView("readme_test.cpp")) continue;
        for (auto it = kRow.globalMatch(textOf(tests.filePath(name))); it.hasNext();) {
            const QString source = it.next().captured(1);
            EXPECT_TRUE(sources.contains("char " + source + "[]")) << source.toStdString();
            used << source;
            ++rows;
        }
    }
    EXPECT_EQ(sources.count("inline constexpr char k"), used.size()) << "a source that no test uses";
    const QString said = QStringLiteral("%1 published values from %2 sources").arg(rows).arg(used.size());
    EXPECT_TRUE(textOf(QStringLiteral(YW_SOURCE_DIR "/core/rules/calc/README.md")).contains(said))
        << said.toStdString();
}

} // namespace

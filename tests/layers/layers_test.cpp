#include <gtest/gtest.h>

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QStringList>

#include <map>

// Reads every #include of the program and fails on an arrow that the map of the code does not allow.

namespace {

const QStringList kGui = {"Gui", "Widgets", "PrintSupport", "Svg", "SvgWidgets", "Charts"};

/// Folder → prefixes of ours, other libraries, and Qt modules that it may include. A new arrow is a reviewed line here.
struct Allowed {
    QStringList paths;
    QStringList qt;
};
const std::map<QString, Allowed> kAllowed = {
    {"core/base", {{"core/base/"}, {"Core"}}},
    {"core/model", {{"core/base/", "core/model/"}, {"Core"}}},
    {"core/pairing", {{"core/pairing/", "lemon/"}, {}}},
    {"core/rules", {{"core/base/", "core/model/", "core/pairing/", "core/rules/"}, {"Core"}}},
    {"core/rules/calc", {{"core/base/", "core/model/", "core/rules/calc/"}, {"Core"}}},
    {"core/store", {{"core/base/", "core/model/", "core/store/", "sqlite3.h"}, {"Core", "Sql"}}},
    {"core/edit", {{"core/base/", "core/model/", "core/store/", "core/rules/", "core/edit/"}, {"Core"}}},
    {"core/exchange",
     {{"core/base/", "core/model/", "core/store/", "core/rules/", "core/edit/", "core/exchange/"}, {"Core"}}},
    {"core/report", {{"core/base/", "core/model/", "core/rules/", "core/report/"}, {"Core"}}},
    {"core", {{}, {"Core"}}}, // core/precompiled.h
    {"demo", {{"core/base/", "core/model/", "core/edit/", "core/rules/", "demo/"}, {"Core"}}},
    {"ui",
     {{"core/base/", "core/model/", "core/edit/", "core/rules/", "core/exchange/", "core/report/", "ui/",
       "core/precompiled.h"},
      {"Core", "Gui", "Widgets", "PrintSupport", "Svg", "SvgWidgets", "Charts"}}},
    {"app", {{"core/", "ui/", "demo/", "app/"}, {"Core", "Gui", "Widgets"}}},
};

/// The Qt module whose header directory holds this name (found on this machine, not in a list of ours).
QString moduleOf(const QString& header) {
    if (header.contains('/')) return header.section('/', 0, 0).mid(2); // QtSql/QSqlQuery
    static const QString root = [] {
        for (const QString& dir :
             {QStringLiteral("/usr/include/x86_64-linux-gnu/qt6"), QStringLiteral("/usr/include/qt6"),
              QStringLiteral("/usr/include/aarch64-linux-gnu/qt6")})
            if (QDir(dir).exists()) return dir;
        return QString();
    }();
    for (const char* module : {"Core", "Gui", "Widgets", "Sql", "PrintSupport", "Svg", "SvgWidgets", "Charts", "Test",
                               "Network", "Concurrent"})
        if (QFile::exists(root + "/Qt" + module + '/' + header)) return QString::fromLatin1(module);
    return QStringLiteral("unknown");
}

QString folderOf(const QString& path) {
    QString longest;
    for (const auto& [folder, allowed] : kAllowed) // sorted: a longer prefix comes later
        if (path.startsWith(folder + '/')) longest = folder;
    return longest;
}

bool mayInclude(const Allowed& allowed, const QString& header, bool quoted) {
    for (const QString& prefix : allowed.paths)
        if (header.startsWith(prefix)) return true;
    if (header.startsWith('Q')) return allowed.qt.contains(moduleOf(header));
    if (quoted) return header.endsWith(".moc") || (header.startsWith("moc_") && !header.contains('/'));
    static const QRegularExpression kSystem("^(sys/)?[a-z_]+(\\.h)?$"); // the standard's and the system's own
    return kSystem.match(header).hasMatch() && header != "sqlite3.h";
}

QStringList sourceFiles() {
    QStringList files;
    const QDir root(YW_SOURCE_DIR);
    for (const char* top : {"app", "core", "demo", "ui"}) {
        QDirIterator it(root.filePath(top), {"*.cpp", "*.h"}, QDir::Files, QDirIterator::Subdirectories);
        while (it.hasNext()) files << root.relativeFilePath(it.next());
    }
    return files;
}

QStringList forbiddenIn(const QString& path, const QString& text) {
    static const QRegularExpression kInclude("^\\s*#\\s*include\\s*([<\"])([^>\"]+)[>\"]",
                                             QRegularExpression::MultilineOption);
    QStringList faults;
    const auto allowed = kAllowed.find(folderOf(path));
    if (allowed == kAllowed.end()) return {path + ": a folder without a line in the map of arrows"};
    for (auto it = kInclude.globalMatch(text); it.hasNext();) {
        const auto match = it.next();
        if (!mayInclude(allowed->second, match.captured(2), match.captured(1) == "\""))
            faults << path + " includes " + match.captured(2);
    }
    return faults;
}

} // namespace

TEST(Layers, EveryIncludeFollowsTheMap) {
    const QStringList files = sourceFiles();
    ASSERT_GT(files.size(), 50);
    for (const QString& path : files) {
        QFile file(QDir(YW_SOURCE_DIR).filePath(path));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        for (const QString& fault : forbiddenIn(path, QString::fromUtf8(file.readAll())))
            ADD_FAILURE() << fault.toStdString();
    }
}

TEST(Layers, TheTestSeesAnArrowThatIsNotAllowed) {
    EXPECT_EQ(forbiddenIn("core/rules/x.cpp", "#include \"core/store/database.h\"\n").size(), 1);
    EXPECT_EQ(forbiddenIn("core/report/x.cpp", "#include <QPainter>\n").size(), 1);
    EXPECT_EQ(forbiddenIn("ui/x.cpp", "#include <QSqlQuery>\n").size(), 1);
    EXPECT_EQ(forbiddenIn("core/pairing/x.cpp", "#include <QString>\n").size(), 1);
    EXPECT_EQ(forbiddenIn("core/edit/x.cpp", "#include <sqlite3.h>\n").size(), 1);
    EXPECT_TRUE(forbiddenIn("core/rules/x.cpp", "#include <QString>\n#include <vector>\n").isEmpty());
}

TEST(Layers, NoOtherFoldersAtTheTop) {
    const QStringList known = {".ci", ".git", "app", "build", "core", "demo", "resources", "tests", "ui"};
    for (const QString& dir : QDir(YW_SOURCE_DIR).entryList(QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot))
        EXPECT_TRUE(known.contains(dir)) << dir.toStdString();
}

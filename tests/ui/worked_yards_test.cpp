#include "tests/support/csv_tables.h"
#include "tests/support/expected_json.h"
#include "tests/ui/first_book.h"

#include "ui/board/board.h"
#include "ui/visit/visit_form.h"
#include "ui/window/yard_list.h"

#include <QApplication>
#include <QCheckBox>
#include <QFile>
#include <QJsonDocument>
#include <QLabel>
#include <QListView>
#include <QProcess>

namespace {

using tests::support::CsvRow;
using tests::support::CsvTables;

QString cell(const CsvRow& row, const char* column) {
    const auto it = row.find(QLatin1StringView(column));
    return it == row.end() ? QString() : it->second;
}

QByteArray ran(const QStringList& words) {
    QProcess other;
    other.start(QStringLiteral(YW_PROGRAM), words);
    EXPECT_TRUE(other.waitForFinished(60'000));
    EXPECT_EQ(other.exitCode(), 0) << other.readAllStandardError().toStdString();
    return other.readAllStandardOutput();
}

/// The lines of a file without their order.
QStringList linesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QStringList lines = QString::fromUtf8(file.readAll()).split(u'\n', Qt::SkipEmptyParts);
    lines.sort();
    return lines;
}

/// A worked yard of tests/data/yards typed into a new book by hand, as its keeper would: from a list on paper.
struct WorkedYard : tests::FirstBook {
    QString source;
    CsvTables tables;

    void read(const char* name) {
        source = QStringLiteral(YW_TEST_DATA "/yards/") + QLatin1StringView(name);
        tables = tests::support::tablesOfFolder(source);
        clock.day = *core::parseIsoDay(tests::support::workedAnswer(source)[QStringLiteral("on")].toString());
    }
    const CsvRow& colony(const char* label) const {
        for (const CsvRow& row : tables.at(QStringLiteral("colonies")))
            if (cell(row, "colony") == QLatin1StringView(label)) return row;
        throw std::runtime_error(label);
    }

    void fill(const char* field, const QString& text) const { hand->fill(QLatin1StringView(field), text); }
    /// Enter; and again where something odd is asked about.
    void save() const {
        hand->key(Qt::Key_Return);
        const auto* question = window->page()->panel()->findChild<QLabel*>(QStringLiteral("question"));
        if (formOpen() && question && question->isVisible()) hand->key(Qt::Key_Return);
        EXPECT_NE(said().find("saved"), std::string::npos) << said();
    }

    void makeYard(const CsvRow& row) {
        if (desk().yard())
            hand->key(Qt::Key_Y, Qt::ControlModifier | Qt::ShiftModifier);
        else
            hand->click(button("nameFirstYard"));
        hand->type(cell(row, "yard"));
        fill("latitude", cell(row, "latitude_deg"));
        fill("longitude", cell(row, "longitude_deg"));
        fill("note", cell(row, "note"));
        fill("x", cell(row, "gate_x_m"));
        fill("y", cell(row, "gate_y_m"));
        save();
    }

    void setUp(const CsvRow& first, int count, const char* spacing) {
        if (button("setUpRow")->isVisible())
            hand->click(button("setUpRow"));
        else
            hand->key(Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
        fill("count", QString::number(count));
        fill("label", cell(first, "colony"));
        fill("spacing", QLatin1StringView(spacing));
        fillHive(first);
        fill("x", cell(first, "x_m"));
        fill("y", cell(first, "y_m"));
        save();
    }
    void fillHive(const CsvRow& row) const {
        fill("heading", cell(row, "heading_deg"));
        fill("box", cell(row, "box"));
        fill("brood", cell(row, "brood_boxes").isEmpty() ? QStringLiteral("1") : cell(row, "brood_boxes"));
        fill("since", cell(row, "since"));
    }

    /// One by one, with the pointer where the place is in view.
    void place(std::initializer_list<const char*> labels) {
        hand->key(Qt::Key_G, Qt::ControlModifier);
        for (const char* label : labels) {
            const CsvRow& row = colony(label);
            fill("label", cell(row, "colony"));
            fillHive(row);
            if (!cell(row, "queen_born").isEmpty()) fill("queen", cell(row, "queen_born"));
            const core::MmPoint at{static_cast<qint32>(cell(row, "x_m").toInt() * 1000),
                                   static_cast<qint32>(cell(row, "y_m").toInt() * 1000)};
            if (plan()->rect().contains(plan()->camera().toView(at).toPoint())) {
                hand->clickGround(at);
            } else {
                fill("x", cell(row, "x_m"));
                fill("y", cell(row, "y_m"));
                hand->key(Qt::Key_Return);
            }
            EXPECT_NE(said().find("saved"), std::string::npos) << label << ": " << said();
        }
        hand->key(Qt::Key_Escape);
        if (formOpen()) hand->key(Qt::Key_Escape); // the keys were in the form
        EXPECT_FALSE(formOpen());
    }

    /// A click on its hive, in its yard.
    void choose(const QString& label) {
        const auto& r = desk().reading();
        const auto ix = r.snapshot.livingNamed(label);
        ASSERT_TRUE(ix) << label.toStdString();
        const core::YardId yard = r.snapshot.yard(r.factsOf(*ix).yard).id;
        if (desk().yard() != yard) {
            auto* list = window->page()->yards()->list();
            const auto at = list->model()->index(window->page()->yards()->model().rowOf(yard), 0);
            QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(at).center());
        }
        const core::ColonyId id = desk().reading().snapshot.colony(*ix).id;
        QTest::mouseClick(plan(), Qt::LeftButton, {}, plan()->viewPointOf(id).toPoint());
        ASSERT_EQ(desk().chosen(), id) << label.toStdString();
    }

    void visit(const CsvRow& row) {
        choose(cell(row, "colony"));
        hand->key(Qt::Key_L, Qt::ControlModifier);
        auto* form = window->page()->form();
        ASSERT_TRUE(form->isVisible());
        hand->fillWidget(form->findChild<QWidget*>(QStringLiteral("visitDay")), cell(row, "date"));
        const std::pair<const char*, ui::visit::Field> fields[] = {
            {"upper_bees_top", ui::visit::Field::UpperTop},
            {"upper_bees_bottom", ui::visit::Field::UpperBottom},
            {"upper_stores_frames", ui::visit::Field::UpperStores},
            {"bees_top", ui::visit::Field::BeesTop},
            {"bees_bottom", ui::visit::Field::BeesBottom},
            {"stores_frames", ui::visit::Field::Stores},
            {"brood_frames", ui::visit::Field::Brood},
            {"brood_checked", ui::visit::Field::Checked},
            {"gross_kg", ui::visit::Field::Gross},
            {"mites", ui::visit::Field::Mites},
            {"mite_sample", ui::visit::Field::Sample},
            {"note", ui::visit::Field::Note}};
        for (const auto& [column, field] : fields)
            if (!cell(row, column).isEmpty())
                hand->fillWidget(form->findChild<QWidget*>(QStringLiteral("visitField%1").arg(static_cast<int>(field))),
                                 cell(row, column));
        chooseQueen(form, cell(row, "queen"));
        for (const QString& sign : cell(row, "signs").split(u' ', Qt::SkipEmptyParts)) tick(form, sign);
        hand->key(Qt::Key_Return);
        if (form->isVisible()) hand->key(Qt::Key_Return); // something odd was asked about
        EXPECT_FALSE(form->isVisible()) << cell(row, "colony").toStdString() << ": " << said();
    }
    void chooseQueen(QWidget* form, const QString& word) const {
        const std::map<QString, QString> shown{{QStringLiteral("seen"), QStringLiteral("seen")},
                                               {QStringLiteral("eggs"), QStringLiteral("eggs seen")},
                                               {QStringLiteral("none"), QStringLiteral("none")},
                                               {QStringLiteral("laying-workers"), QStringLiteral("laying workers")},
                                               {QStringLiteral("unknown"), QStringLiteral("looked for, not known")}};
        for (QWidget* w : form->findChildren<QWidget*>())
            if (w->accessibleName() == QStringLiteral("Queen") && w->isVisible())
                return hand->fillWidget(w, shown.at(word));
        ADD_FAILURE() << "no field for the queen";
    }
    void tick(QWidget* form, const QString& sign) const {
        const std::map<QString, QString> shown{{QStringLiteral("afb"), QStringLiteral("foulbrood (American)")},
                                               {QStringLiteral("efb"), QStringLiteral("foulbrood (European)")},
                                               {QStringLiteral("chalkbrood"), QStringLiteral("chalkbrood")}};
        for (QCheckBox* box : form->findChildren<QCheckBox*>())
            if (box->text() == shown.at(sign)) {
                hand->tabTo(box);
                return hand->key(Qt::Key_Space);
            }
        ADD_FAILURE() << "no sign " << sign.toStdString();
    }

    void begin(const QString& label, Qt::Key record) {
        choose(label);
        hand->key(record, Qt::ControlModifier | Qt::ShiftModifier);
        ASSERT_TRUE(formOpen()) << said();
    }

    QJsonObject advised() const {
        const QByteArray out = ran({QStringLiteral("advise"), path(), QStringLiteral("--on"), core::isoText(clock.day),
                                    QStringLiteral("--json")});
        return QJsonDocument::fromJson(out).object();
    }
    /// The book's files are those of a book into which the worked yard's files were read.
    void expectSameFiles() {
        QTemporaryDir dir;
        const QString other = dir.filePath(QStringLiteral("read.yardwright"));
        QStringList import{QStringLiteral("import"), other};
        for (const auto& [kind, rows] : tables)
            import << QStringLiteral("--") + kind << source + u'/' + kind + QStringLiteral(".csv");
        ran(import);
        const QString typed = dir.filePath(QStringLiteral("typed"));
        const QString files = dir.filePath(QStringLiteral("files"));
        ran({QStringLiteral("export"), path(), QStringLiteral("--to"), typed});
        ran({QStringLiteral("export"), other, QStringLiteral("--to"), files});
        for (const auto& [kind, rows] : tables)
            EXPECT_EQ(linesOf(typed + u'/' + kind + QStringLiteral(".csv")),
                      linesOf(files + u'/' + kind + QStringLiteral(".csv")))
                << kind.toStdString();
    }
    /// Merge day by its key; what a second process says is what was worked by hand.
    void expectAsWorked() {
        hand->key(Qt::Key_4, Qt::ControlModifier);
        EXPECT_EQ(window->page()->place(), ui::window::Place::MergeDay);
        EXPECT_EQ(desk().day(), clock.day);
        tests::support::expectSays(advised(), tests::support::workedAnswer(source), source.toStdString());
        const auto problems = desk().session().check();
        EXPECT_TRUE(problems.isEmpty()) << problems.join(u'\n').toStdString();
    }
};

// Source: tests/data/yards/kiln-field, worked by hand from the rules.
TEST_F(WorkedYard, KilnFieldTypedByHandIsThatYard) {
    read("kiln-field");
    hand->key(Qt::Key_N, Qt::ControlModifier);
    makeYard(tables.at(QStringLiteral("yards")).front());
    setUp(colony("K1"), 4, "2");
    place({"K5", "K6"});
    setUp(colony("K7"), 3, "2");
    place({"K10", "K11", "K12"});
    for (const char* label : {"K1", "K2", "K3", "K4", "K7", "K9"}) {
        begin(QLatin1StringView(label), Qt::Key_K);
        fill("queen_born", cell(colony(label), "queen_born"));
        save();
    }
    for (const CsvRow& row : tables.at(QStringLiteral("visits"))) visit(row);
    expectSameFiles();
    expectAsWorked();
    const auto* list = window->page()->board()->list();
    QString board;
    for (int i = 0; i < list->model()->rowCount(); ++i) board += list->model()->index(i, 0).data().toString() + u'\n';
    for (const char* line : {"K2 → K4", "K3 → K11", "K6 → K5"})
        EXPECT_TRUE(board.contains(QString::fromUtf8(line))) << board.toStdString();
    RecordProperty("clicks", hand->clicks());
    RecordProperty("presses", hand->presses());
}

// Source: tests/data/yards/brook-end, worked by hand from the rules.
TEST_F(WorkedYard, BrookEndTypedByHandIsThoseYards) {
    read("brook-end");
    hand->key(Qt::Key_N, Qt::ControlModifier);
    makeYard(tables.at(QStringLiteral("yards"))[0]);
    setUp(colony("B1"), 6, "3");
    place({"C5"});
    makeYard(tables.at(QStringLiteral("yards"))[1]);
    setUp(colony("C1"), 4, "3");
    const CsvRow& carried = tables.at(QStringLiteral("placements")).front();
    begin(cell(carried, "colony"), Qt::Key_C);
    fill("day", cell(carried, "date"));
    fill("yard", cell(carried, "yard"));
    fill("heading", cell(carried, "heading_deg"));
    fill("x", cell(carried, "x_m"));
    fill("y", cell(carried, "y_m"));
    save();
    place({"C6"});
    for (const CsvRow& row : tables.at(QStringLiteral("visits"))) visit(row);
    for (const CsvRow& row : tables.at(QStringLiteral("transfers"))) {
        begin(cell(row, "to"), Qt::Key_T);
        fill("other", cell(row, "from"));
        fill("what", cell(row, "what"));
        fill("count", cell(row, "count"));
        fill("day", cell(row, "date"));
        fill("note", cell(row, "note"));
        save();
    }
    for (const CsvRow& row : tables.at(QStringLiteral("results"))) {
        begin(cell(row, "colony"), Qt::Key_R);
        for (const char* field : {"disease", "result", "method", "by", "paper"}) fill(field, cell(row, field));
        fill("day", cell(row, "date"));
        save();
    }
    begin(QStringLiteral("B2"), Qt::Key_E);
    fill("how", cell(colony("B2"), "end"));
    fill("day", cell(colony("B2"), "ended"));
    save();
    expectSameFiles();
    expectAsWorked();
}

} // namespace

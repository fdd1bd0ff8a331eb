#include "core/edit/edit_context.h"
#include "core/edit/edits.h"
#include "core/edit/keeper.h"
#include "core/edit/put_right.h"
#include "core/edit/session.h"
#include "core/edit/strips_out.h"
#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QProcess>
#include <QTemporaryDir>

#include <map>

namespace {

namespace edit = core::edit;
using edit::EditContext;

struct RegisterClock : core::Clock {
    QDateTime nowUtc() const override { return QDateTime(QDate(2026, 9, 20), QTime(12, 0), Qt::UTC); }
    core::Day today() const override { return core::dayOf(2026, 9, 20); }
};

/// What a records rule asks for, and where the register has it.
struct RegisterField {
    const char* rule;
    const char* item;
    const char* printed; ///< as it stands on the printed page
    const char* column;  ///< of the file
    const char* value;   ///< what that column holds, or begins with
};

// Each item of the records rules, named by the rule's own source:
//   EU: Regulation (EU) 2019/6 article 108(2), the nine items as listed at
//       bijenhouders-eindhoven.nl/over-ons/nieuws/eu-regelgeving
//   UK: Veterinary Medicines Regulations 2013, regulations 18, 19(1) and 19(2),
//   legislation.gov.uk/uksi/2013/2033/part/3;
//       19(3) as told at cheshire-bka.co.uk/pests-and-disease/medicine-record
//   DE: the Bestandsbuch, as told at
//       grenzlandbienen.de/was-bedeutet-die-neue-tierarzneimittelverordnung-fuer-uns-imker
constexpr RegisterField kRegisterFields[] = {
    {"EU 1", "date of first administration", "2026-07-20 to 2026-08-31 (42 days)", "date", "2026-07-20"},
    {"EU 2", "product name", "2026-07-20 Hazel strips (tau-fluvalinate)", "product", "Hazel strips"},
    {"EU 3", "quantity given", "quantity, as recorded: 2 strips a hive", "quantity", "2"},
    {"EU 3", "its unit", "quantity, as recorded: 2 strips a hive", "unit", "strips a hive"},
    {"EU 4", "name of supplier", "supplier: Alder farm store", "supplier", "Alder farm store"},
    {"EU 4", "address of supplier", "address: 1 Mill Lane", "supplier_address", "1 Mill Lane"},
    {"EU 5", "proof of purchase", "proof: receipt 77", "proof", "receipt 77"},
    {"EU 6", "identity of animals", "Colonies, 2: all of North: 5, 6", "colonies", "5; 6"},
    {"EU 7", "prescribing vet", "Prescribed by: Dr Moss", "prescriber", "Dr Moss"},
    {"EU 7", "contact of the vet", "Dr Moss, Quarry Road 4", "prescriber_contact", "Quarry Road 4"},
    {"EU 8", "withdrawal period, even if zero", "Withdrawal: 0 days", "withdrawal_days", "0"},
    {"EU 9", "duration of treatment", "(42 days)", "days", "42"},
    {"UK 18", "vet's name", "Prescribed by: Dr Moss", "prescriber", "Dr Moss"},
    {"UK 18", "batch", "batch: HS-9", "batch", "HS-9"},
    {"UK 18", "amount", "quantity, as recorded: 2 strips a hive", "quantity", "2"},
    {"UK 18", "withdrawal period", "Withdrawal: 0 days: no honey before 2026-09-05", "no_honey_before", "2026-09-05"},
    {"UK 19(1)", "product and batch", "batch: HS-9", "batch", "HS-9"},
    {"UK 19(1)", "date of purchase", "on: 2026-07-01", "bought", "2026-07-01"},
    {"UK 19(1)", "quantity bought", "quantity: 50 · supplier", "quantity_bought", "50"},
    {"UK 19(1)", "supplier's name", "supplier: Alder farm store", "supplier", "Alder farm store"},
    {"UK 19(1)", "supplier's address", "address: 1 Mill Lane", "supplier_address", "1 Mill Lane"},
    {"UK 19(2)", "date given", "Given: 2026-07-20", "date", "2026-07-20"},
    {"UK 19(2)", "animals", "all of North: 5, 6", "count", "2"},
    {"UK 19(3)", "date of disposal", "disposed of on: 2026-09-10", "disposed", "2026-09-10"},
    {"UK 19(3)", "quantity disposed of", "quantity: 6 · how", "disposed_quantity", "6"},
    {"UK 19(3)", "how and where", "how and where: handed in at the depot", "disposed_how", "handed in at the depot"},
    {"DE", "keeper's name", "Keeper: Wren Alder", "keeper", "Wren Alder"},
    {"DE", "keeper's address", "2 Hill Road", "keeper_address", "2 Hill Road"},
    {"DE", "number of colonies", "Colonies, 2:", "count", "2"},
    {"DE", "identity of colonies", "all of North: 5, 6", "colonies", "5; 6"},
    {"DE", "where they stood at treatment", "Where they stood: North: 5, 6", "places", "North: 5, 6"},
    {"DE", "document number", "proof: receipt 77", "proof", "receipt 77"},
    {"DE", "purchase date", "on: 2026-07-01", "bought", "2026-07-01"},
    {"DE", "method", "method: hung between the frames", "method", "hung between the frames"},
    {"DE", "waiting time in days", "Withdrawal: 0 days", "withdrawal_days", "0"},
    {"DE", "who applied it", "applied by: Wren", "by", "Wren"},
};

class Register : public testing::Test {
protected:
    QTemporaryDir dir;
    QString book = dir.filePath("b.yardwright");
    RegisterClock clock;
    const edit::Correction why{QStringLiteral("Ana"), QStringLiteral("typed in the wrong yard")};

    core::ColonyId colony(edit::Session& s, const char* label, core::MmPoint at, core::YardId yard) {
        edit::NewColony fresh;
        fresh.colony.label = QString::fromLatin1(label);
        fresh.colony.since = core::dayOf(2026, 5, 1);
        fresh.colony.box = core::BoxKindId{1};
        fresh.stand.yard = yard;
        fresh.stand.at = at;
        fresh.stand.name = fresh.colony.label;
        core::ColonyId id;
        s.apply([&](const EditContext& c) {
            id = core::ColonyId{c.nextId(core::Table::Colony)};
            return addColony(c, fresh);
        });
        return id;
    }
    static core::Treatment complete(core::YardId yard) {
        core::Treatment t;
        t.yard = yard;
        t.day = core::dayOf(2026, 7, 20);
        t.product = QStringLiteral("Hazel strips");
        t.substance = QStringLiteral("tau-fluvalinate");
        t.batch = QStringLiteral("HS-9");
        t.quantity = 2;
        t.unit = QStringLiteral("strips a hive");
        t.method = QStringLiteral("hung between the frames");
        t.supplier = QStringLiteral("Alder farm store");
        t.supplierAddress = QStringLiteral("1 Mill Lane");
        t.bought = core::dayOf(2026, 7, 1);
        t.quantityBought = 50;
        t.proof = QStringLiteral("receipt 77");
        t.prescriber = QStringLiteral("Dr Moss");
        t.prescriberContact = QStringLiteral("Quarry Road 4");
        t.days = 42;
        t.withdrawalDays = 0;
        t.disposed = core::dayOf(2026, 9, 10);
        t.disposedQuantity = 6;
        t.disposedHow = QStringLiteral("handed in at the depot");
        t.by = QStringLiteral("Wren");
        t.reason = QStringLiteral("mites");
        return t;
    }
    /// A complete entry; one corrected and incomplete; one taken back.
    void SetUp() override {
        const auto s = edit::Session::create(book, clock);
        s->setAuthor(QStringLiteral("Ana"));
        core::Yard yard;
        yard.name = QStringLiteral("North");
        s->apply([&](const EditContext& c) { return edit::newYard(c, yard); });
        const core::YardId north = s->yards().front().id;
        const core::ColonyId k5 = colony(*s, "5", {0, 0}, north);
        colony(*s, "6", {3000, 0}, north);
        core::Keeper keeper;
        keeper.name = QStringLiteral("Wren Alder");
        keeper.address = QStringLiteral("2 Hill Road");
        s->apply([&](const EditContext& c) { return edit::setKeeper(c, keeper); });
        const auto log = [&](const core::Treatment& t) {
            s->apply([&](const EditContext& c) { return edit::logTreatment(c, t); });
        };
        log(complete(north));
        s->apply([](const EditContext& c) {
            return edit::logStripsOutOfAll(c, core::TreatmentId{1}, core::dayOf(2026, 9, 5), QStringLiteral("Wren"),
                                           {});
        });
        core::Treatment bare;
        bare.id = core::TreatmentId{2};
        bare.colony = k5;
        bare.day = core::dayOf(2026, 6, 1);
        bare.product = QStringLiteral("Rowan solution");
        bare.substance = QStringLiteral("oxalic acid");
        bare.quantity = 500;
        log(bare);
        bare.quantity = 50;
        s->apply([&](const EditContext& c) { return edit::changeTreatment(c, bare); }, why);
        bare.product = QStringLiteral("Sedge powder");
        log(bare);
        s->apply([](const EditContext& c) { return edit::takeBackTreatment(c, core::TreatmentId{3}); }, why);
        ASSERT_EQ(s->check().join(u'\n').toStdString(), "");
    }
    Ran made(const QString& file, const QStringList& more = {}) {
        return runProgram(QStringList{"register", book, "--to", dir.filePath(file)} + more);
    }
    QString text(const QString& file) const {
        QProcess process;
        process.start("pdftotext", {"-layout", dir.filePath(file), "-"});
        EXPECT_TRUE(process.waitForFinished(30'000));
        // Letters that the type joins ("fl") come out as one.
        return QString::fromUtf8(process.readAllStandardOutput())
            .normalized(QString::NormalizationForm_KC)
            .simplified();
    }
    /// A row by column name each.
    std::vector<std::map<QString, QString>> rows(const QString& file) const {
        const QByteArray bytes = bytesOf(dir.filePath(file));
        std::vector<QStringList> all{{QString()}};
        bool quoted = false;
        const QString whole = QString::fromUtf8(bytes);
        for (qsizetype i = 0; i < whole.size(); ++i) {
            const QChar c = whole[i];
            if (c == u'"' && quoted && i + 1 < whole.size() && whole[i + 1] == u'"')
                all.back().back() += whole[++i];
            else if (c == u'"')
                quoted = !quoted;
            else if (c == u',' && !quoted)
                all.back() << QString();
            else if (c == u'\n' && !quoted)
                all.push_back({QString()});
            else
                all.back().back() += c;
        }
        all.pop_back(); // after the last line's end
        std::vector<std::map<QString, QString>> out;
        for (size_t r = 1; r < all.size(); ++r) {
            EXPECT_EQ(all[r].size(), all[0].size());
            std::map<QString, QString> row;
            for (qsizetype i = 0; i < all[0].size(); ++i) row[all[0][i]] = all[r].value(i);
            out.push_back(row);
        }
        return out;
    }
};

TEST_F(Register, HasEveryFieldThatTheRulesAskForOnPaperAndInItsFile) {
    ASSERT_EQ(made("r.pdf").status, 0);
    ASSERT_EQ(made("r.csv").status, 0);
    const QString printed = text("r.pdf");
    auto entries = rows("r.csv");
    ASSERT_EQ(entries.size(), 3u);
    const auto row = std::find_if(entries.begin(), entries.end(), [](auto& r) {
        return r[QStringLiteral("product")] == QLatin1StringView("Hazel strips");
    });
    ASSERT_NE(row, entries.end());
    for (const RegisterField& asked : kRegisterFields) {
        SCOPED_TRACE(std::string(asked.rule) + ": " + asked.item);
        EXPECT_TRUE(printed.contains(QString::fromUtf8(asked.printed))) << asked.printed << "\nin\n"
                                                                        << printed.toStdString();
        ASSERT_TRUE(row->contains(QString::fromLatin1(asked.column))) << asked.column;
        EXPECT_EQ(row->at(QString::fromLatin1(asked.column)).toStdString(), asked.value);
    }
    EXPECT_EQ(row->at(QStringLiteral("missing")), QString()) << "nothing is asked for that is not there";
}

TEST_F(Register, SaysWhatIsMissingAndByWhoseRule) {
    ASSERT_EQ(made("r.csv").status, 0);
    ASSERT_EQ(made("r.pdf").status, 0);
    auto entries = rows("r.csv");
    // The same sources as of kRegisterFields; a vet and a disposal are asked for where there was one.
    const QString missing = QStringLiteral(
        "duration (EU), batch (UK), date of purchase (UK), quantity bought (UK), supplier (EU, UK), "
        "supplier's address (EU, UK), proof of purchase (EU, Germany), unit of the quantity (EU), method (Germany), "
        "who applied it (Germany), withdrawal days (EU, UK, Germany)");
    EXPECT_EQ(entries[0][QStringLiteral("missing")].toStdString(), missing.toStdString());
    EXPECT_EQ(entries[0][QStringLiteral("withdrawal_days")], QString()) << "empty, never 0";
    EXPECT_TRUE(text("r.pdf").contains(missing));
    EXPECT_TRUE(text("r.pdf").contains(QStringLiteral("withdrawal not recorded: ask the label")));
}

TEST_F(Register, ShowsWhatWasCorrectedAndWhatWasTakenBack) {
    ASSERT_EQ(made("r.csv").status, 0);
    ASSERT_EQ(made("r.pdf").status, 0);
    auto entries = rows("r.csv");
    EXPECT_EQ(entries[0][QStringLiteral("corrections")].toStdString(),
              "quantity: 500 → 50 (2026-09-20, Ana: typed in the wrong yard)");
    EXPECT_EQ(entries[1][QStringLiteral("struck")], QStringLiteral("yes"));
    EXPECT_EQ(entries[1][QStringLiteral("product")], QStringLiteral("Sedge powder"));
    EXPECT_EQ(entries[1][QStringLiteral("corrections")].toStdString(),
              "taken back 2026-09-20, Ana: typed in the wrong yard");
    const QString printed = text("r.pdf");
    EXPECT_TRUE(printed.contains(QStringLiteral("quantity: 500 50 (2026-09-20, Ana: typed in the wrong yard)")))
        << printed.toStdString();
    EXPECT_TRUE(
        printed.contains(QStringLiteral("No longer in force: taken back 2026-09-20, Ana: typed in the wrong yard")));
    EXPECT_TRUE(printed.contains(QStringLiteral("Local law, vets and labels decide.")));
    EXPECT_TRUE(printed.contains(QStringLiteral("page 1 of ")));
}

TEST_F(Register, IsOfAPeriodAndYard) {
    ASSERT_EQ(made("r.csv", {"--from", "2026-07-01", "--yard", "north"}).status, 0);
    EXPECT_EQ(rows("r.csv").size(), 1u);
    ASSERT_EQ(made("r.csv", {"--until", "2026-06-30"}).status, 0);
    EXPECT_EQ(rows("r.csv").size(), 2u);
    ASSERT_EQ(made("r.pdf", {"--until", "2026-01-30"}).status, 0);
    EXPECT_TRUE(text("r.pdf").contains(QStringLiteral("No treatment is recorded for this time and place.")));
}

TEST_F(Register, NamesWhatIsWrongAndWritesNothing) {
    EXPECT_EQ(made("r.txt").status, 2);
    EXPECT_EQ(runProgram({"register", book}).status, 2);
    EXPECT_EQ(made("r.csv", {"--from", "soon"}).status, 2);
    EXPECT_EQ(made("r.csv", {"--from", "2026-09-02", "--until", "2026-09-01"}).status, 2);
    const Ran yard = made("r.csv", {"--yard", "Nowhere"});
    EXPECT_EQ(yard.status, 4);
    EXPECT_TRUE(yard.err.endsWith("yardwright: The book has no yard “Nowhere”.\n")) << yard.err.toStdString();
    EXPECT_EQ(made("no/such/folder/r.pdf").status, 5);
    EXPECT_EQ(runProgram({"register", dir.filePath("none.yardwright"), "--to", dir.filePath("r.csv")}).status, 5);
    EXPECT_FALSE(QFile::exists(dir.filePath("r.csv")));
}

} // namespace

#include "core/exchange/foreign_look.h"
#include "core/exchange/import.h"
#include "tests/exchange/samples.h"
#include "tests/support/rounds.h"

#include <QElapsedTimer>

#include <gtest/gtest.h>

// Malformed files of other programs: no crash, no hang, no half import. 2,000 of them, half under sanitizers;
// YW_FUZZ=100000 makes as many, YW_FUZZ_FROM=… begins with that one.

namespace tests::exchange {
namespace {

using namespace core::exchange;

const int kUsual = rounds(2000);
constexpr qint64 kHangMs = 20'000; ///< one input; under sanitizers too
constexpr int kKept = 40;          ///< a fresh book after so many imports that wrote something

int fromEnvironment(const char* name, int otherwise) {
    bool good = false;
    const int value = qEnvironmentVariableIntValue(name, &good);
    return good ? value : otherwise;
}

const QByteArray kSound = "Hive;Day;Frames;Weight;Queen;Words\r\n"
                          "A;14.08.2025;3,25;61,2;ja;\"calm; \"\"good\"\"\"\r\n"
                          "B;3.9.2025;4;;nein;l\xC3\xA4uft\r\n"
                          "C;1.10.2025;;20,5;;\"two\r\nlines\"\r\n"
                          "A;2.10.2025;0;1'00,5;ja;\r\n";

Mapping soundMapping() {
    Mapping m;
    m.kind = FileKind::Visits;
    m.forms = {';', DecimalMark::Comma, DayOrder::DayMonthYear};
    const std::pair<const char*, const char*> pairs[] = {
        {"Hive", "colony"}, {"Day", "date"}, {"Frames", "bees_top"}, {"Weight", "gross_kg"}, {"Words", "note"}};
    for (const auto& [from, to] : pairs) m.columns.push_back({f(from), f(to), CellUnit::Ours, {}, {}});
    m.columns.push_back({f("Queen"), f("queen"), CellUnit::Ours, {}, {{f("ja"), f("eggs")}, {f("nein"), f("none")}}});
    return m;
}

QByteArray randomBytes(std::mt19937& random, size_t most, unsigned mask) {
    QByteArray out;
    for (size_t n = below(random, most); n > 0; --n) out += static_cast<char>(random() & mask);
    return out;
}

QByteArray asUtf16(const QByteArray& text, bool little, bool mark) {
    QByteArray out = mark ? (little ? "\xFF\xFE" : "\xFE\xFF") : "";
    for (const QChar c : QString::fromUtf8(text)) {
        const auto low = static_cast<char>(c.unicode() & 0xFF), high = static_cast<char>(c.unicode() >> 8);
        out += little ? low : high;
        out += little ? high : low;
    }
    return out;
}

void atRandomPlace(QByteArray& text, std::mt19937& random, const QByteArray& what) {
    text.insert(static_cast<qsizetype>(below(random, static_cast<size_t>(text.size()) + 1)), what);
}

void flip(QByteArray& text, std::mt19937& random) {
    for (size_t n = 1 + below(random, 8); n > 0 && !text.isEmpty(); --n) {
        char& c = text[static_cast<qsizetype>(below(random, static_cast<size_t>(text.size())))];
        c = static_cast<char>(c ^ static_cast<char>(1 << below(random, 8)));
    }
}

void truncate(QByteArray& text, std::mt19937& random) {
    text.truncate(static_cast<qsizetype>(below(random, static_cast<size_t>(text.size()) + 1)));
}

/// One thing done to the bytes.
void spoil(QByteArray& text, std::mt19937& random) {
    static const QByteArrayList odd{"\"",
                                    "\"\"",
                                    "\"\"\"",
                                    ";\"",
                                    "\";",
                                    "\r",
                                    "\n",
                                    "\r\n",
                                    "\n\r",
                                    "\t",
                                    ",",
                                    ";;;",
                                    QByteArray(1, '\0'),
                                    "\xEF\xBB\xBF",
                                    "\xFF\xFE",
                                    "\xED\xA0\x80",
                                    "\xF4\x90\x80\x80",
                                    "99.99.9999",
                                    "-",
                                    "1e308",
                                    "nan",
                                    "''''",
                                    "A@2025-05-01",
                                    "\x81",
                                    "=",
                                    "\xC2"};
    switch (below(random, 10)) {
    case 0:
        return flip(text, random);
    case 1:
        return truncate(text, random);
    case 2: // nested quotes
        return atRandomPlace(text, random, QByteArray(static_cast<qsizetype>(below(random, 40)), '"'));
    case 3: // a huge cell
        return atRandomPlace(text, random, QByteArray(static_cast<qsizetype>(below(random, 60'000)), 'x'));
    case 4: // NULs
        return atRandomPlace(text, random, QByteArray(static_cast<qsizetype>(1 + below(random, 9)), '\0'));
    case 5: // mixed line ends
        for (qsizetype i = 0; i < text.size(); ++i)
            if (text[i] == '\n' && below(random, 2)) text[i] = '\r';
        return;
    case 6: // many columns
        return atRandomPlace(text, random, QByteArray(static_cast<qsizetype>(below(random, 3000)), ';'));
    case 7:
        text = asUtf16(text, below(random, 2), below(random, 2));
        return;
    case 8: {
        const auto from = static_cast<qsizetype>(below(random, static_cast<size_t>(text.size()) + 1));
        return atRandomPlace(text, random, text.mid(from, static_cast<qsizetype>(below(random, 200))));
    }
    default:
        return atRandomPlace(text, random, odd[static_cast<qsizetype>(below(random, static_cast<size_t>(odd.size())))]);
    }
}

QByteArray malformed(unsigned seed) {
    std::mt19937 random(seed);
    if (below(random, 8) == 0) return randomBytes(random, 3000, below(random, 2) ? 0x7F : 0xFF);
    QByteArray text = kSound;
    for (size_t n = 1 + below(random, 4); n > 0; --n) spoil(text, random);
    return text;
}

/// All that the window does with a file, as far as it has a header.
Mapping lookedAt(const QByteArray& bytes, std::mt19937& random) {
    if (below(random, 3)) return soundMapping();
    const auto decoded = decode(bytes);
    if (!decoded) return soundMapping();
    const CellForms forms = formsOf(decoded->text).forms;
    Mapping m = proposedMapping(guessedKind(decoded->text, forms), decoded->text, forms);
    const QStringList header = headerOf(decoded->text, forms.separator);
    for (const QString& column : header.mid(0, 4)) wordsInFile(decoded->text, forms.separator, column, 8);
    samplesOf(decoded->text, forms.separator);
    firstRowsSeen(decoded->text, soundMapping(), 20);
    firstRowsSeen(decoded->text, m, 20);
    EXPECT_EQ(mappingFromJson(toJson(m)), m);
    if (!header.isEmpty() && below(random, 2)) { // a column of the file for each of ours that is needed
        m.columns.clear();
        size_t at = 0;
        for (const Column& c : columnsOf(m.kind))
            m.columns.push_back({header[static_cast<qsizetype>(at++ % static_cast<size_t>(header.size()))],
                                 QString::fromLatin1(c.name),
                                 CellUnit::Ours,
                                 {},
                                 {}});
    }
    return m;
}

/// A book that malformed files are tried on.
class Target {
public:
    Target() {
        EXPECT_TRUE(m_bench.import(smallYard()).good());
        m_session = m_bench.open();
        m_seq = seq();
    }
    /// Whether something was written.
    bool take(const QByteArray& bytes, const Mapping& mapping) {
        ImportFiles files = m_bench.write({{fileName(mapping.kind), bytes}}, f("foreign"));
        files.files[0].mapping = mapping;
        const auto report = importFiles(*m_session, files, false);
        EXPECT_TRUE(report.good() || report.faults.count() > 0);
        for (const auto& fault : report.faults.kept()) {
            EXPECT_FALSE(fault.file.isEmpty());
            EXPECT_GE(fault.line, 1);
            EXPECT_LT(fault.what.size(), 2000);
        }
        EXPECT_TRUE(report.good() || !report.line) << "faults, and yet something was written";
        EXPECT_EQ(seq(), m_seq + (report.line ? 1 : 0));
        if (!report.line) return false;
        m_session->undo(core::edit::Correction{f("Ana"), f("the file was not what it seemed")}); // medicine is in some
        m_seq = seq();
        return true;
    }
    QStringList check() const { return m_session->check(); }

private:
    qint64 seq() const {
        const auto lines = m_session->history(1);
        return lines.empty() ? 0 : lines[0].seq;
    }
    Workbench m_bench;
    std::unique_ptr<core::edit::Session> m_session;
    qint64 m_seq = 0;
};

TEST(ForeignFuzz, MalformedFilesGiveFaultsOrRowsAndNeverHalfOfThem) {
    const int count = fromEnvironment("YW_FUZZ", kUsual);
    const int from = fromEnvironment("YW_FUZZ_FROM", 0);
    auto target = std::make_unique<Target>();
    EXPECT_TRUE(target->take(kSound, soundMapping())) << "what is spoiled is sound at first";
    int written = 0;
    for (int i = from; i < from + count && !HasFailure(); ++i) {
        SCOPED_TRACE("input " + std::to_string(i));
        const QByteArray bytes = malformed(static_cast<unsigned>(i));
        std::mt19937 random(static_cast<unsigned>(i) + 7919);
        QElapsedTimer clock;
        clock.start();
        if (target->take(bytes, lookedAt(bytes, random)) && ++written % kKept == 0) {
            EXPECT_EQ(target->check(), QStringList());
            target = std::make_unique<Target>();
        }
        EXPECT_LT(clock.elapsed(), kHangMs);
    }
    EXPECT_EQ(target->check(), QStringList());
    EXPECT_GT(written, count / 100) << "too few of them still came in to say much";
    RecordProperty("written", written);
}

} // namespace
} // namespace tests::exchange

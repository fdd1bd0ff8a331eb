#include "tests/fuzz/changes.h"

#include <QDir>
#include <QFile>

namespace tests::fuzz {

namespace {

QString folder() { return QStringLiteral(YW_SOURCE_DIR "/tests/fuzz/"); }

QByteArray read(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) qFatal("%s cannot be read", qPrintable(path));
    return file.readAll();
}

/// "A \"word\" of a dictionary\x0A" without its quotes, as libFuzzer reads it.
QByteArray wordOf(QByteArray line) {
    const qsizetype from = line.indexOf('"');
    const qsizetype to = line.lastIndexOf('"');
    if (line.startsWith('#') || from < 0 || to <= from) return {};
    line = line.mid(from + 1, to - from - 1);
    QByteArray word;
    for (qsizetype i = 0; i < line.size(); ++i) {
        if (line[i] == '\\' && line.mid(i + 1, 1) == "x") {
            word += QByteArray::fromHex(line.mid(i + 2, 2));
            i += 3;
        } else {
            if (line[i] == '\\') ++i;
            word += line.mid(i, 1);
        }
    }
    return word;
}

qsizetype below(std::mt19937& random, qsizetype most) {
    return most <= 0 ? 0 : static_cast<qsizetype>(random() % static_cast<quint64>(most));
}

template <class T> const T& oneOf(const std::vector<T>& all, std::mt19937& random) {
    return all[static_cast<size_t>(below(random, static_cast<qsizetype>(all.size())))];
}

void changeBytes(QByteArray& input, const Stock& stock, std::mt19937& random) {
    const qsizetype at = below(random, input.size() + 1);
    switch (below(random, 5)) {
    case 0:
        if (at < input.size()) input[at] = static_cast<char>(random());
        break;
    case 1:
        input.insert(at, static_cast<char>(random()));
        break;
    case 2:
        input.remove(at, 1 + below(random, 8));
        break;
    case 3:
        if (!stock.words.empty()) input.insert(at, oneOf(stock.words, random));
        break;
    default:
        if (!stock.words.empty()) {
            const QByteArray word = oneOf(stock.words, random);
            input.replace(at, word.size(), word);
        }
    }
}

/// Lines left out, twice, exchanged; a cell that another line has.
void changeLines(QByteArray& input, const Stock& stock, std::mt19937& random) {
    QByteArrayList lines = input.split('\n');
    const qsizetype a = below(random, lines.size());
    const qsizetype b = below(random, lines.size());
    switch (below(random, 5)) {
    case 0:
        lines.removeAt(a);
        break;
    case 1:
        lines.insert(b, QByteArray(lines[a]));
        break;
    case 2:
        lines.swapItemsAt(a, b);
        break;
    case 3: {
        const QByteArrayList others = oneOf(stock.corpus, random).split('\n');
        lines.insert(b, others[below(random, others.size())]);
        break;
    }
    default: {
        QByteArrayList to = lines[a].split(',');
        const QByteArrayList from = lines[b].split(',');
        to[below(random, to.size())] = from[below(random, from.size())];
        lines[a] = to.join(',');
    }
    }
    input = lines.join('\n');
}

} // namespace

Stock stockOf(const Target& target) {
    Stock stock;
    const QDir corpus(folder() + QStringLiteral("corpus/") + QLatin1StringView(target.name));
    for (const QString& name : corpus.entryList(QDir::Files, QDir::Name))
        stock.corpus.push_back(read(corpus.filePath(name)));
    const QString words = folder() + QLatin1StringView(target.name) + QStringLiteral(".dict");
    if (QFile::exists(words))
        for (const QByteArray& line : read(words).split('\n'))
            if (const QByteArray word = wordOf(line); !word.isEmpty()) stock.words.push_back(word);
    return stock;
}

QByteArray changed(const Target& target, const Stock& stock, std::mt19937& random) {
    QByteArray input = oneOf(stock.corpus, random);
    for (qsizetype n = 1 + below(random, 4); n > 0; --n) {
        const qsizetype how = below(random, 8);
        if (target.patches && how > 0)
            input = changedPatch(input, random);
        else if (how < 4)
            changeBytes(input, stock, random);
        else
            changeLines(input, stock, random);
    }
    return input.left(target.mostBytes);
}

} // namespace tests::fuzz

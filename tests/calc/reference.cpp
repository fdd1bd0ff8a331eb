#include "tests/calc/reference.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace {

QJsonObject reference() {
    QFile file(QStringLiteral(YW_TEST_DATA "/reference/intervals.json"));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return QJsonDocument::fromJson(file.readAll()).object();
}

template <class Row, class Read> std::vector<Row> rowsOf(const char* name, Read read) {
    std::vector<Row> rows;
    for (const QJsonValue& value : reference()[QLatin1StringView(name)].toArray())
        rows.push_back(read(value.toObject()));
    return rows;
}

} // namespace

std::vector<ExactRow> referenceExact() {
    return rowsOf<ExactRow>("exact", [](const QJsonObject& o) {
        return ExactRow{o["found"].toInteger(), o["of"].toInteger(), o["level"].toDouble(), o["low"].toDouble(),
                        o["high"].toDouble()};
    });
}

std::vector<BetaRow> referenceBeta() {
    return rowsOf<BetaRow>("beta", [](const QJsonObject& o) {
        return BetaRow{o["x"].toDouble(), o["a"].toDouble(), o["b"].toDouble(), o["below"].toDouble()};
    });
}

std::vector<StudentRow> referenceStudent() {
    return rowsOf<StudentRow>("student", [](const QJsonObject& o) {
        return StudentRow{o["freedom"].toInt(), o["level"].toDouble(), o["t"].toDouble()};
    });
}

std::vector<ClusteredCase> referenceClustered() {
    return rowsOf<ClusteredCase>("clustered", [](const QJsonObject& o) {
        ClusteredCase c{{}, o["spread"].toDouble(), o["low"].toDouble(), o["high"].toDouble()};
        for (const QJsonValue& group : o["groups"].toArray())
            c.groups.push_back({group.toArray()[0].toInteger(), group.toArray()[1].toInteger()});
        return c;
    });
}

MeanRow referenceYardMean() {
    const QJsonObject o = reference()[QLatin1StringView("yard_mean")].toObject();
    return {o["colonies"].toInt(), o["mean"].toDouble(), o["low"].toDouble(), o["high"].toDouble()};
}

#include "core/rules/question.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cmath>

namespace core::rules {

namespace {

constexpr std::array<const char*, kAskWhatCount> kWhat{"days-unvisited",
                                                       "strength",
                                                       "strength-class",
                                                       "queen",
                                                       "queen-age",
                                                       "stores",
                                                       "weight",
                                                       "weighed-in",
                                                       "days-unweighed",
                                                       "brood-check-counts",
                                                       "brood-check-this-season",
                                                       "mites-per-100",
                                                       "held",
                                                       "boxes",
                                                       "due-within"};
constexpr std::array<const char*, kAskHowCount> kHow{"below",    "at-most", "is",          "is-not",
                                                     "at-least", "above",   "not-recorded"};

template <class E, size_t N> std::optional<E> named(const std::array<const char*, N>& words, const QString& word) {
    for (size_t i = 0; i < N; ++i)
        if (word == QLatin1StringView(words[i])) return static_cast<E>(i);
    return std::nullopt;
}

std::optional<AskPart> partOf(const QJsonObject& json) {
    const auto what = named<AskWhat>(kWhat, json.value(QLatin1StringView("what")).toString());
    const auto how = named<AskHow>(kHow, json.value(QLatin1StringView("how")).toString());
    if (!what || !how || !fits(*what, *how)) return std::nullopt;
    if (*how == AskHow::NotRecorded) return AskPart{*what, *how, 0};
    const QJsonValue than = json.value(QLatin1StringView("than"));
    const AskRange range = askRange(*what);
    if (!than.isDouble() || than.toDouble() < range.least || than.toDouble() > range.most) return std::nullopt;
    if (range.choice && than.toDouble() != std::floor(than.toDouble())) return std::nullopt;
    return AskPart{*what, *how, than.toDouble()};
}

} // namespace

QString askJson(const Ask& ask) {
    QJsonArray all;
    for (const AskPart& part : ask) {
        QJsonObject one;
        one.insert(QLatin1StringView("what"), QLatin1StringView(kWhat[static_cast<size_t>(part.what)]));
        one.insert(QLatin1StringView("how"), QLatin1StringView(kHow[static_cast<size_t>(part.how)]));
        if (part.how != AskHow::NotRecorded) one.insert(QLatin1StringView("than"), part.than);
        all.append(one);
    }
    const QJsonObject whole{{QStringLiteral("all"), all}};
    return QString::fromUtf8(QJsonDocument(whole).toJson(QJsonDocument::Compact));
}

std::optional<Ask> readAsk(const QString& json) {
    const QJsonValue all = QJsonDocument::fromJson(json.toUtf8()).object().value(QLatin1StringView("all"));
    const QJsonArray parts = all.toArray();
    if (parts.isEmpty() || parts.size() > static_cast<int>(kMostAskParts)) return std::nullopt;
    Ask ask;
    for (const QJsonValue& value : parts) {
        const auto part = partOf(value.toObject());
        if (!part) return std::nullopt;
        ask.push_back(*part);
    }
    return ask;
}

} // namespace core::rules

#include "core/rules/reason.h"

#include "core/rules/hold_words.h"

#include <algorithm>
#include <cstring>

namespace core::rules {

bool sameName(const char* a, const char* b) { return std::strcmp(a, b) == 0; }

bool Reason::names(const char* limit) const {
    return std::any_of(limits.begin(), limits.end(), [limit](const char* l) { return sameName(l, limit); });
}

Reason& Reason::fact(const char* name, const Fact::Value& value) {
    facts.push_back({name, value});
    return *this;
}

Reason& Reason::limit(const char* name) {
    if (!names(name)) limits.push_back(name);
    return *this;
}

Reason& Reason::add(const Reason& other) {
    facts.insert(facts.end(), other.facts.begin(), other.facts.end());
    for (const char* name : other.limits) limit(name);
    return *this;
}

QString filled(const QString& pattern, const QStringList& args) {
    QString out;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const int n = pattern[i] == u'%' && i + 1 < pattern.size() ? pattern[i + 1].digitValue() : -1;
        if (n < 1 || n > args.size()) {
            out += pattern[i];
            continue;
        }
        out += args[n - 1];
        ++i;
    }
    return out;
}

QString textOf(const Sentences& sentences) {
    QStringList out;
    for (const Sentence& s : sentences) out += filled(QString::fromUtf8(s.pattern), s.args);
    return out.join(u' ');
}

namespace {

struct Shown {
    const Snapshot& s;
    QString operator()(qint64 n) const { return QString::number(n); }
    QString operator()(ColonyIx c) const { return s.colony(c).shown; }
    QString operator()(YardIx y) const { return s.yard(y).name; }
    QString operator()(Day day) const { return isoText(day); }
    QString operator()(Quarters q) const {
        return q.value == 4 ? QStringLiteral("1 frame") : QStringLiteral("%1 frames").arg(framesText(q));
    }
    QString operator()(Decagrams w) const {
        return QStringLiteral("%1 %2").arg(weightNumber(w, s.settings.showWeight), unitSign(s.settings.showWeight));
    }
    QString operator()(const Gift& gift) const { return giftText(s, gift); }
    QString operator()(const QString& text) const { return text; }
};

} // namespace

QString factText(const Snapshot& s, const Fact& fact) { return std::visit(Shown{s}, fact.value); }

QString factName(const Fact& fact) { return QString::fromUtf8(fact.name); }

} // namespace core::rules

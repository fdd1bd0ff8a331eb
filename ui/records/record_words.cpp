#include "ui/records/record_words.h"

#include "core/rules/mite_fall.h"

#include "ui/look/queen_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace ui::records {

namespace {

struct RecordWords {
    Q_DECLARE_TR_FUNCTIONS(RecordWords)
};

QString joined(const QStringList& parts) { return parts.join(QStringLiteral(", ")); }

void addCount(QStringList& parts, const core::Visit& v) {
    const auto side = [](std::optional<core::Quarters> top, std::optional<core::Quarters> bottom) {
        QStringList seen;
        if (top) seen << RecordWords::tr("%1 above").arg(core::framesText(*top));
        if (bottom) seen << RecordWords::tr("%1 below").arg(core::framesText(*bottom));
        return seen.join(u'/');
    };
    const QString lower = side(v.beesTop, v.beesBottom);
    const QString upper = side(v.upperBeesTop, v.upperBeesBottom);
    if (!lower.isEmpty()) parts << RecordWords::tr("bees %1").arg(lower);
    if (!upper.isEmpty()) parts << RecordWords::tr("upper box %1").arg(upper);
    if (v.stores) parts << RecordWords::tr("stores %1").arg(core::framesText(*v.stores));
    if (v.upperStores) parts << RecordWords::tr("upper stores %1").arg(core::framesText(*v.upperStores));
}

QString numberText(double value) { return QString::number(value, 'g', QLocale::FloatingPointShortest); }

/// "1 frame of brood", "3 frames of comb", "2 boxes"
QString countedText(core::TransferKind what, int count) {
    switch (what) {
    case core::TransferKind::Frames:
        return count == 1 ? RecordWords::tr("1 frame of comb") : RecordWords::tr("%1 frames of comb").arg(count);
    case core::TransferKind::Brood:
        return count == 1 ? RecordWords::tr("1 frame of brood") : RecordWords::tr("%1 frames of brood").arg(count);
    case core::TransferKind::Box:
        return count == 1 ? RecordWords::tr("1 box") : RecordWords::tr("%1 boxes").arg(count);
    case core::TransferKind::Bees:
    case core::TransferKind::Feed:
        break;
    }
    return RecordWords::tr("%1, count %2").arg(transferWord(what)).arg(count);
}

} // namespace

QString transferWord(core::TransferKind what) {
    switch (what) {
    case core::TransferKind::Frames:
        return RecordWords::tr("frames of comb");
    case core::TransferKind::Brood:
        return RecordWords::tr("frames of brood");
    case core::TransferKind::Bees:
        return RecordWords::tr("bees");
    case core::TransferKind::Box:
        return RecordWords::tr("a box");
    case core::TransferKind::Feed:
        return RecordWords::tr("feed");
    }
    return {};
}

QString diseaseWord(core::Disease disease) {
    return disease == core::Disease::Afb ? RecordWords::tr("American foulbrood")
                                         : RecordWords::tr("European foulbrood");
}

QString verdictWord(core::Verdict verdict) {
    switch (verdict) {
    case core::Verdict::Positive:
        return RecordWords::tr("positive");
    case core::Verdict::Negative:
        return RecordWords::tr("negative");
    case core::Verdict::Release:
        return RecordWords::tr("release");
    case core::Verdict::Order:
        return RecordWords::tr("order: move nothing");
    }
    return {};
}

QString methodWord(core::Method method) {
    switch (method) {
    case core::Method::Laboratory:
        return RecordWords::tr("laboratory");
    case core::Method::Inspector:
        return RecordWords::tr("inspector");
    case core::Method::Field:
        return RecordWords::tr("field kit at the hive");
    }
    return {};
}

QString materialWord(core::SampleMaterial material) {
    switch (material) {
    case core::SampleMaterial::Brood:
        return RecordWords::tr("brood comb");
    case core::SampleMaterial::Bees:
        return RecordWords::tr("bees");
    case core::SampleMaterial::Honey:
        return RecordWords::tr("honey");
    case core::SampleMaterial::Debris:
        return RecordWords::tr("hive debris");
    case core::SampleMaterial::Other:
        break;
    }
    return RecordWords::tr("something else");
}

QString kitEndWord(core::KitEndHow how) {
    switch (how) {
    case core::KitEndHow::Irradiated:
        return RecordWords::tr("irradiated");
    case core::KitEndHow::Dipped:
        return RecordWords::tr("dipped in hot wax");
    case core::KitEndHow::Burned:
        return RecordWords::tr("burned");
    case core::KitEndHow::Other:
        break;
    }
    return RecordWords::tr("otherwise");
}

QString howWord(core::LineageHow how) {
    switch (how) {
    case core::LineageHow::United:
        return RecordWords::tr("united");
    case core::LineageHow::ShakenOut:
        return RecordWords::tr("shaken out");
    case core::LineageHow::Divided:
        return RecordWords::tr("divided");
    }
    return {};
}

QString feedWord(core::FeedKind what) {
    switch (what) {
    case core::FeedKind::Syrup:
        return RecordWords::tr("syrup");
    case core::FeedKind::Fondant:
        return RecordWords::tr("fondant");
    case core::FeedKind::Sugar:
        return RecordWords::tr("dry sugar");
    case core::FeedKind::Honey:
        return RecordWords::tr("honey");
    case core::FeedKind::Pollen:
        return RecordWords::tr("pollen");
    case core::FeedKind::Other:
        break;
    }
    return RecordWords::tr("other feed");
}

QString amountText(const core::Feeding& f, const core::ShownUnits& units) {
    if (f.weight) return look::weightOf(*f.weight, units.weight);
    //: A number and its unit
    return RecordWords::tr("%1 %2").arg(core::volumeNumber(f.volume.value_or(core::Millilitres{}), units.volume),
                                        core::unitSign(units.volume));
}

QString feedingText(const core::Feeding& f, const core::ShownUnits& units) {
    QString feed = RecordWords::tr("%1 of %2").arg(amountText(f, units), feedWord(f.what));
    if (!f.mix.isEmpty()) feed += u' ' + f.mix;
    QStringList parts{feed};
    if (!f.by.isEmpty()) parts << RecordWords::tr("by %1").arg(f.by);
    if (!f.note.isEmpty()) parts << f.note;
    return joined(parts);
}

QString miteDayText(const core::MiteFall& f) {
    return RecordWords::tr("%1 mites").arg(QString::number(core::rules::mitesADay(f), 'f', 1));
}

QString miteFallText(const core::MiteFall& f) {
    const QString mites = f.mites == 1 ? RecordWords::tr("1 mite") : RecordWords::tr("%1 mites").arg(f.mites);
    QStringList parts{f.days == 1 ? RecordWords::tr("%1 in a day").arg(mites)
                                  : RecordWords::tr("%1 in %2 days").arg(mites).arg(f.days)};
    if (f.days != 1) parts << RecordWords::tr("%1 a day").arg(QString::number(core::rules::mitesADay(f), 'f', 1));
    if (!f.by.isEmpty()) parts << RecordWords::tr("by %1").arg(f.by);
    if (!f.note.isEmpty()) parts << f.note;
    return joined(parts);
}

QString queenRowText(const core::Queen& q) {
    QStringList parts{look::looksText(q)};
    if (q.origin) parts << look::originText(*q.origin);
    if (!q.source.isEmpty()) parts << q.source;
    if (!q.note.isEmpty()) parts << q.note;
    parts.removeAll(QString());
    return joined(parts);
}

QString transferText(const core::Transfer& t) {
    QStringList parts{t.count ? countedText(t.what, *t.count) : transferWord(t.what)};
    if (!t.note.isEmpty()) parts << t.note;
    return joined(parts);
}

QString resultText(const core::Result& r) {
    QStringList parts{diseaseWord(r.disease) + QStringLiteral(": ") + verdictWord(r.verdict), methodWord(r.method)};
    if (!r.by.isEmpty()) parts << RecordWords::tr("by %1").arg(r.by);
    if (!r.paper.isEmpty()) parts << RecordWords::tr("paper %1").arg(r.paper);
    if (!r.note.isEmpty()) parts << r.note;
    return joined(parts);
}

QString sampleText(const core::Sample& s) {
    QStringList parts{RecordWords::tr("%1, for %2").arg(materialWord(s.material), diseaseWord(s.disease))};
    parts << RecordWords::tr("to %1").arg(s.laboratory);
    if (!s.number.isEmpty()) parts << RecordWords::tr("number %1").arg(s.number);
    if (s.result)
        parts << RecordWords::tr("answered");
    else if (s.lost)
        parts << RecordWords::tr("given up on %1").arg(look::dayText(*s.lost));
    else
        parts << (s.sent ? RecordWords::tr("sent on %1, awaited").arg(look::dayText(*s.sent))
                         : RecordWords::tr("not sent yet"));
    if (!s.by.isEmpty()) parts << RecordWords::tr("by %1").arg(s.by);
    if (!s.note.isEmpty()) parts << s.note;
    return joined(parts);
}

QString kitEndText(const core::KitEnd& e) {
    QStringList parts{RecordWords::tr("%1 × %2: %3").arg(QString::number(e.count), e.part, kitEndWord(e.how)),
                      RecordWords::tr("by %1").arg(e.by)};
    if (!e.paper.isEmpty()) parts << RecordWords::tr("paper %1").arg(e.paper);
    if (!e.note.isEmpty()) parts << e.note;
    return joined(parts);
}

QString treatmentText(const core::Treatment& t) {
    QStringList parts{QStringLiteral("%1 (%2)").arg(t.product, t.substance)};
    if (t.antibiotic) parts << RecordWords::tr("an antibiotic");
    if (t.quantity) parts << QStringLiteral("%1 %2").arg(numberText(*t.quantity), t.unit).trimmed();
    if (!t.method.isEmpty()) parts << t.method;
    if (t.days) parts << RecordWords::tr("for %1 days").arg(*t.days);
    if (t.withdrawalDays) parts << RecordWords::tr("withdrawal %1 days").arg(*t.withdrawalDays);
    if (!t.reason.isEmpty()) parts << t.reason;
    return joined(parts);
}

QString visitText(const core::Visit& v, core::WeightUnit unit) {
    QStringList parts;
    addCount(parts, v);
    if (v.queen) parts << look::queenText(*v.queen);
    if (v.broodFrames && v.broodChecked)
        parts << RecordWords::tr("brood %1, checked %2").arg(*v.broodFrames).arg(*v.broodChecked);
    else if (v.broodFrames)
        parts << RecordWords::tr("brood %1").arg(*v.broodFrames);
    else if (v.broodChecked)
        parts << RecordWords::tr("brood checked %1").arg(*v.broodChecked);
    if (!v.signs.empty()) parts << look::signsText(v.signs);
    if (v.boxes) parts << (*v.boxes == 2 ? RecordWords::tr("two boxes") : RecordWords::tr("one box"));
    if (v.supers) parts << RecordWords::tr("%1 supers").arg(*v.supers);
    if (v.gross) parts << look::weightOf(*v.gross, unit);
    if (v.mites && v.miteSample) parts << RecordWords::tr("%1 mites in %2 bees").arg(*v.mites).arg(*v.miteSample);
    if (!v.note.isEmpty()) parts << v.note;
    return parts.isEmpty() ? look::dash() : parts.join(QStringLiteral(", "));
}

} // namespace ui::records

#include "ui/after/after_forms.h"

#include "ui/after/due_rows.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"
#include "ui/look/rule_words.h"

#include <array>

namespace ui::after {

namespace edit = core::edit;
using core::QueenSeen;
using edit::BroodFound;
using edit::UnionFailure;
using form::Values;
using records::kBy;
using records::kColony;
using records::kDay;
using records::kNote;

namespace {

const QString kHow = QStringLiteral("how");
const QString kQueen = QStringLiteral("queen");
const QString kCause = QStringLiteral("cause");
const QString kBrood = QStringLiteral("brood");
const QString kFrames = QStringLiteral("frames");

constexpr std::array kFailures = {"queenless", "fought", "absconded", "dead"};
constexpr std::array kBroods = {"not-looked", "healthy", "doubtful", "afb", "efb"};
constexpr int kMostFrames = 24;

template <class E, size_t N>
std::optional<E> valueOf(const Values& values, const QString& key, const std::array<const char*, N>& words) {
    for (size_t i = 0; i < N; ++i)
        if (form::typed(values, key) == QLatin1StringView(words[i])) return static_cast<E>(i);
    return std::nullopt;
}

std::optional<UnionFailure> failureOf(const Values& v) { return valueOf<UnionFailure>(v, kHow, kFailures); }
std::optional<BroodFound> broodOf(const Values& v) { return valueOf<BroodFound>(v, kBrood, kBroods); }

form::Option option(const char* value, const QString& text) { return {QString::fromLatin1(value), text}; }

QString labelOf(const edit::Session& book, core::ColonyId id) {
    const auto colony = book.colony(id);
    return colony ? colony->label : QString();
}

class AfterForm : public records::RecordForm, public LossAsked {
public:
    QString title() const override { return m_title; }
    QString saveText() const override { return Afterwards::tr("&Save"); }

protected:
    AfterForm(const edit::Session& book, core::Day day, const QString& by, const QString& title)
        : RecordForm(book), m_day(day), m_by(by), m_title(title) {}

    Values startValues() const { return {{kDay, form::typedDay(m_day)}, {kBy, m_by}}; }
    core::Day dayOf(const Values& values) const { return form::dayOf(values, kDay, today()).value_or(m_day); }

    /// The question that is asked of every colony that is lost, and never answered by itself.
    static std::vector<form::Field> broodFields(const std::function<bool(const Values&)>& lost) {
        form::Field brood{.key = kBrood,
                          .kind = form::Kind::Choice,
                          .label = Afterwards::tr("B&rood"),
                          .spoken = Afterwards::tr("Was the brood looked at for foulbrood"),
                          .options = {{QString(), Afterwards::tr("please say")},
                                      option(kBroods[0], Afterwards::tr("not looked at")),
                                      option(kBroods[1], Afterwards::tr("looked at: no signs")),
                                      option(kBroods[2], Afterwards::tr("doubtful")),
                                      option(kBroods[3], Afterwards::tr("signs of American foulbrood")),
                                      option(kBroods[4], Afterwards::tr("signs of European foulbrood"))},
                          .shown = lost};
        brood.note = [](const Values& v) {
            if (broodOf(v) != BroodFound::SignsOfAfb) return QString();
            return Afterwards::tr("Ropy brood, scales, sunken or pierced cappings. From now on it is suspected.");
        };
        form::Field frames{
            .key = kFrames,
            .kind = form::Kind::Whole,
            .label = Afterwards::tr("&Frames looked at"),
            .spoken = Afterwards::tr("Brood frames looked at"),
            .hint = Afterwards::tr("how many"),
            .shown = [lost](const Values& v) { return (!lost || lost(v)) && broodOf(v) == BroodFound::Healthy; }};
        return {brood, frames};
    }
    static void judgeBrood(form::Judge& judge, const Values& values) {
        judge.need(kBrood, Afterwards::tr("Was the brood looked at for foulbrood? “Not looked at” is an answer too."));
        if (broodOf(values) == BroodFound::Healthy) judge.whole(kFrames, 1, kMostFrames);
    }
    edit::Loss lossOf(const Values& values, core::ColonyId colony) const {
        edit::Loss loss;
        loss.colony = colony;
        loss.day = dayOf(values);
        loss.cause = form::typed(values, kCause);
        loss.brood = broodOf(values).value_or(BroodFound::NotLooked);
        if (loss.brood == BroodFound::Healthy) loss.framesLooked = form::wholeOf(values, kFrames);
        loss.by = form::typed(values, kBy);
        loss.note = form::typed(values, kNote);
        return loss;
    }
    core::Day day() const { return m_day; }

private:
    core::Day m_day;
    QString m_by, m_title;
};

class FailureForm : public AfterForm {
public:
    FailureForm(const edit::Session& book, core::ColonyId colony, core::Day day, const QString& by, const QString& note)
        : AfterForm(book, day, by, Afterwards::tr("The union of %1 failed").arg(labelOf(book, colony))),
          m_colony(colony),
          m_note(note) {}

    std::vector<form::Field> fields() const override {
        std::vector<form::Field> out{{.key = kHow,
                                      .kind = form::Kind::Choice,
                                      .label = Afterwards::tr("&What is it"),
                                      .spoken = Afterwards::tr("What came of the union"),
                                      .options = {option(kFailures[0], Afterwards::tr("queenless")),
                                                  option(kFailures[1], Afterwards::tr("they fought")),
                                                  option(kFailures[2], Afterwards::tr("absconded")),
                                                  option(kFailures[3], Afterwards::tr("dead"))}}};
        form::Field queen{.key = kQueen,
                          .kind = form::Kind::Choice,
                          .label = Afterwards::tr("&Queen left"),
                          .spoken = Afterwards::tr("Is a queen left"),
                          .shown = [](const Values& v) { return failureOf(v) == UnionFailure::Fought; }};
        for (const QueenSeen seen : {QueenSeen::Unknown, QueenSeen::Seen, QueenSeen::Eggs, QueenSeen::None})
            queen.options.push_back({core::word(seen), look::queenText(seen)});
        out.push_back(queen);
        for (form::Field& field : broodFields(lost)) out.push_back(std::move(field));
        out.push_back(dayField(Afterwards::tr("Day it was seen")));
        out.push_back(byField(Afterwards::tr("&By"), Afterwards::tr("Seen by")));
        out.push_back(noteField());
        return out;
    }
    Values start() const override {
        Values v = startValues();
        v[kNote] = m_note;
        return v;
    }
    edit::Edit edit(const Values& values) const override {
        edit::Failure f;
        f.how = failureOf(values).value_or(UnionFailure::Queenless);
        f.queen = records::chosenOf<QueenSeen>(values, kQueen);
        f.loss = lossOf(values, m_colony);
        return [f](const edit::EditContext& c) { return edit::recordFailure(c, f); };
    }
    std::optional<BroodFound> brood(const Values& values) const override {
        return lost(values) ? broodOf(values) : std::nullopt;
    }

protected:
    void judge(form::Judge& judge, const Values& values) const override {
        judge.needDay(kDay);
        if (lost(values)) judgeBrood(judge, values);
    }

private:
    static bool lost(const Values& v) {
        return failureOf(v) == UnionFailure::Absconded || failureOf(v) == UnionFailure::Dead;
    }
    core::ColonyId m_colony;
    QString m_note;
};

class LossForm : public AfterForm {
public:
    LossForm(const edit::Session& book, const QString& name, core::Day day, const QString& by)
        : AfterForm(book, day, by, Afterwards::tr("A colony without bees")), m_name(name) {}

    std::vector<form::Field> fields() const override {
        form::Field cause{.key = kCause,
                          .label = Afterwards::tr("&Cause"),
                          .spoken = Afterwards::tr("Cause"),
                          .hint = Afterwards::tr("empty: not known")};
        // common practice, no source
        for (const QString& words :
             {Afterwards::tr("starved"), Afterwards::tr("queenless"), Afterwards::tr("too small for the cold"),
              Afterwards::tr("mites and what they carry"), Afterwards::tr("robbed out"), Afterwards::tr("wet"),
              Afterwards::tr("poisoned"), Afterwards::tr("mice"), Afterwards::tr("absconded")})
            cause.options.push_back({words, {}});
        std::vector<form::Field> out{colonyField(kColony, Afterwards::tr("C&olony"), Afterwards::tr("Colony")), cause};
        for (form::Field& field : broodFields({})) out.push_back(std::move(field));
        out.push_back(dayField(Afterwards::tr("Day it was found")));
        out.push_back(byField(Afterwards::tr("&By"), Afterwards::tr("Found by")));
        out.push_back(noteField());
        return out;
    }
    Values start() const override {
        Values v = startValues();
        v[kColony] = m_name;
        return v;
    }
    edit::Edit edit(const Values& values) const override {
        const edit::Loss loss = lossOf(values, colonyOf(values, kColony, dayOf(values)));
        return [loss](const edit::EditContext& c) { return edit::recordLoss(c, loss); };
    }
    std::optional<BroodFound> brood(const Values& values) const override { return broodOf(values); }

protected:
    void judge(form::Judge& judge, const Values& values) const override {
        const auto on = judge.needDay(kDay);
        judgeColony(judge, values, kColony, on.value_or(day()));
        judgeBrood(judge, values);
    }

private:
    QString m_name;
};

} // namespace

std::unique_ptr<records::RecordForm> failureForm(const edit::Session& book, core::ColonyId colony, core::Day day,
                                                 const QString& by, const QString& note) {
    return std::make_unique<FailureForm>(book, colony, day, by, note);
}

std::unique_ptr<records::RecordForm> lossForm(const edit::Session& book, std::optional<core::ColonyId> colony,
                                              core::Day day, const QString& by) {
    return std::make_unique<LossForm>(book, colony ? labelOf(book, *colony) : QString(), day, by);
}

QString afterLoss(BroodFound brood) {
    switch (brood) {
    case BroodFound::Healthy:
        return {};
    case BroodFound::NotLooked:
        return Afterwards::tr(
            "Nothing is known of its brood: keep its comb closed and apart until somebody has looked");
    case BroodFound::Doubtful:
        return Afterwards::tr("Keep its comb and kit closed and apart until the cause is known");
    case BroodFound::SignsOfAfb:
    case BroodFound::SignsOfEfb:
        break;
    }
    return Afterwards::tr("Close the hive against robbers, keep comb and kit apart, and ask the bee inspector: in many "
                          "places the law wants it reported, and it decides");
}

} // namespace ui::after

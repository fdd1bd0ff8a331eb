#include "core/rules/hold_sources.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr Day kBefore{0}; // before all days

// The part of a colony's record between two releases, or after the last.
struct Span {
    Day from;                 // the release before, or kBefore
    std::optional<Day> until; // the release that ends it, itself not in it
    bool has(Day d) const { return d >= from && (!until || d < *until); }
    Day last(Day on) const { return until ? *until - 1 : on; }
};

std::optional<Day> earliestIn(std::span<const Day> days, const Span& span, Day from) {
    const auto day = earliestFrom(days, std::max(from, span.from));
    return day && span.has(*day) ? day : std::nullopt;
}

// A source of this span, with its date; nullopt where nothing in it is a positive or an unanswered sign.
std::optional<Source> sourceIn(const Evidence& e, ColonyIx colony, const Span& span) {
    const auto signs = e.findings.signs.of(colony.value);
    Source source;
    source.colony = colony;
    source.past = span.until.has_value();
    const auto positive = earliestIn(e.findings.positives.of(colony.value), span, kBefore);
    const auto negative = latestUpTo(e.findings.negatives.of(colony.value), span.last(e.s.on));
    const auto sign = earliestIn(signs, span, positive || !negative ? kBefore : *negative + 1);
    if (!positive && !sign) return std::nullopt;
    source.confirmed = positive.has_value();
    source.date = positive && sign ? std::min(*positive, *sign) : positive.value_or(sign.value_or(kBefore));
    return source;
}

Day lastDayOfEnded(const Evidence& e, ColonyIx colony) {
    const SnapColony& c = e.s.colony(colony);
    std::optional<Day> last = c.ended;
    const auto taken = e.gifts.from(colony);
    if (c.end != EndKind::United && !taken.empty()) last = later(last, taken.back().day);
    last = later(last, latestUpTo(e.findings.signs.of(colony.value), e.s.on));
    last = later(last, latestUpTo(e.findings.positives.of(colony.value), e.s.on));
    return *last;
}

struct Opening {
    Day day;
    bool treated = false; // it opens earlier for that
};

// `known`: up to when what it received counts as its treatment.
Opening openingOf(const Evidence& e, const Source& source, const Settings& limits, Day known) {
    const Day masked = source.date - limits.traceMaskedDays;
    const bool treated = e.treated.everWithin(source.colony, masked, source.last, known);
    return {treated ? masked : source.date - limits.traceDays, treated};
}

// A wider window would let more yards release for the source. No setting makes a hold laxer than the defaults do, nor
// does a treatment that reached a past source after its release: those yards are of the narrowest window.
void findReleaseYards(const Evidence& e, Source& source) {
    const Day open = openingOf(e, source, Settings(), source.last).day;
    for (const YardStay& stay : e.standing.of(source.colony))
        if (stay.until >= open && stay.since <= source.close) source.releaseYards.push_back(stay.yard);
    std::sort(source.releaseYards.begin(), source.releaseYards.end());
    const auto repeated = std::unique(source.releaseYards.begin(), source.releaseYards.end());
    source.releaseYards.erase(repeated, source.releaseYards.end());
}

void openWindow(const Evidence& e, Source& source) {
    const Opening opening = openingOf(e, source, e.limits, e.s.on);
    source.open = opening.day;
    source.treated = opening.treated;
    source.close = source.past ? source.last : e.s.on;
    findReleaseYards(e, source);
}

void complete(const Evidence& e, Source& source, const Span& span) {
    const bool living = e.s.colony(source.colony).living();
    source.last = span.until ? *span.until : living ? e.s.on : lastDayOfEnded(e, source.colony);
    source.livingSuspect = !source.past && !source.confirmed && living;
    openWindow(e, source);
}

void addSourcesOf(const Evidence& e, ColonyIx colony, std::vector<Source>& sources) {
    const auto add = [&](const Span& span) {
        if (auto source = sourceIn(e, colony, span)) {
            complete(e, *source, span);
            sources.push_back(std::move(*source));
        }
    };
    Day from = kBefore;
    for (const Day release : e.findings.releases.of(colony.value)) {
        add({from, release});
        from = release;
    }
    add({from, std::nullopt});
}

std::optional<Day> lastRelease(const Evidence& e, ColonyIx colony) {
    return latestUpTo(e.findings.releases.of(colony.value), e.s.on);
}

} // namespace

bool isConfirmed(const Evidence& e, ColonyIx colony) {
    const auto last = latestUpTo(e.findings.positives.of(colony.value), e.s.on);
    return last && *last >= lastRelease(e, colony).value_or(kBefore);
}

bool isSuspected(const Evidence& e, ColonyIx colony) {
    const auto last = latestUpTo(e.findings.signs.of(colony.value), e.s.on);
    const auto negative = latestUpTo(e.findings.negatives.of(colony.value), e.s.on);
    return last && *last >= lastRelease(e, colony).value_or(kBefore) && *last > negative.value_or(kBefore) &&
           !isConfirmed(e, colony);
}

std::vector<Source> sourcesOf(const Evidence& e) {
    std::vector<Source> sources;
    for (qint32 i = 0; i < static_cast<qint32>(e.s.colonies.size()); ++i)
        if (!e.findings.signs.of(i).empty() || !e.findings.positives.of(i).empty())
            addSourcesOf(e, ColonyIx{i}, sources);
    return sources;
}

bool releasedFor(const Evidence& e, const Source& source, ColonyIx colony, Day first, Day last) {
    first = std::max(first, source.date);
    if (anyWithin(e.findings.releases.of(colony.value), first, last)) return true;
    for (const YardIx yard : source.releaseYards) {
        const auto releases = e.findings.yardReleases.of(yard.value);
        for (auto at = std::lower_bound(releases.begin(), releases.end(), first); at != releases.end() && *at <= last;
             ++at)
            if (e.standing.stoodIn(colony, yard, *at)) return true;
    }
    return false;
}

} // namespace core::rules

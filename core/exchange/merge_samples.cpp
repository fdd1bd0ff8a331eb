#include "core/exchange/pass_over.h"

#include <algorithm>
#include <set>

namespace core::exchange {

namespace {

using SampleEntry = RecordEntry<SampleDraft>;

const std::optional<Colony>& storedOf(const Ledger& ledger, int colony) {
    return ledger.colonies[static_cast<size_t>(colony)].stored;
}

/// All that a file says of a sample, but whose it is.
QString sampleKey(Sample row, const std::optional<Verdict>& answer, const QString& paper) {
    row.colony = {};
    row.result.reset();
    return rowKey(toRow(row)) + (answer ? word(*answer) : QString()) + u'|' + paper;
}

QString sampleKeyOf(const SampleEntry& e) { return sampleKey(e.draft->row, e.draft->answer, e.draft->paper); }

bool answers(const Result& r, const SampleDraft& sample) {
    return r.day == sample.row.day && r.disease == sample.row.disease && r.verdict == *sample.answer &&
           r.method != Method::Field && r.paper == sample.paper;
}

/// The samples of one colony, of the files and the book.
class OfColony {
public:
    OfColony(Ledger& ledger, int colony) : m_ledger(ledger), m_colony(colony) {
        const auto& stored = storedOf(ledger, colony);
        if (!stored) return;
        for (const Sample& s : ledger.c.samplesOf(stored->id)) {
            const auto answer = s.result ? ledger.c.find<Result>(s.result->value) : std::nullopt;
            ++m_known[sampleKey(s, answer ? std::optional(answer->verdict) : std::nullopt,
                                answer ? answer->paper : QString())];
            if (s.result) m_taken.insert(*s.result);
        }
        m_results = ledger.c.resultsOf(stored->id);
    }

    /// As many of equal rows as the book has are passed over.
    bool known(const SampleEntry& entry) {
        const auto found = m_known.find(sampleKeyOf(entry));
        return found != m_known.end() && found->second-- > 0;
    }

    /// Finds the result that answers it; a fault where there is none left.
    void findAnswer(const SampleDraft& sample) {
        for (const Result& r : m_results)
            if (answers(r, sample) && m_taken.insert(r.id).second) {
                m_ledger.answers[&sample] = {nullptr, r.id};
                return;
            }
        const ResultDraft* best = nullptr;
        for (const auto& entry : m_ledger.results) {
            if (entry.colony != m_colony || !answers(entry.draft->row, sample) || m_used.contains(entry.draft))
                continue;
            if (!best || rowKey(toRow(entry.draft->row)) < rowKey(toRow(best->row))) best = entry.draft;
        }
        if (best) {
            m_used.insert(best);
            m_ledger.answers[&sample] = {best, {}};
            return;
        }
        m_ledger.fault(sample.at, "answer",
                       Say::tr("no result %1 for %2 of “%3” on %4 answers it, expected one in results.csv or the book")
                           .arg(word(*sample.answer), word(sample.row.disease), m_ledger.shown(m_colony),
                                isoText(sample.row.day)));
    }

private:
    Ledger& m_ledger;
    int m_colony;
    std::map<QString, int> m_known;
    std::vector<Result> m_results; ///< of the book
    std::set<ResultId> m_taken;    ///< of those
    std::set<const ResultDraft*> m_used;
};

std::optional<KitEnd> storedEnd(const Ledger& ledger, const RecordEntry<KitEndDraft>& entry) {
    KitEnd row = entry.draft->row;
    if (entry.colony >= 0) {
        const auto& stored = storedOf(ledger, entry.colony);
        if (!stored) return std::nullopt;
        row.colony = stored->id;
    }
    if (entry.other >= 0) {
        const YardEntry& yard = ledger.yards[static_cast<size_t>(entry.other)];
        if (!yard.at.inBook()) return std::nullopt;
        row.yard = yard.row.id;
    }
    return row;
}

} // namespace

void mergeSamples(Ledger& ledger) {
    std::map<int, std::vector<SampleEntry>> ofColony;
    for (const SampleDraft& draft : ledger.drafts.samples) {
        SampleEntry entry{&draft, -1, -1};
        entry.colony = ledger.colonyNamed(draft.colony, draft.row.day, draft.at, "colony");
        if (entry.colony < 0) continue;
        // What a colony left behind may be sampled after its end.
        if (draft.row.day < ledger.colonies[static_cast<size_t>(entry.colony)].row.since)
            ledger.checkLife(entry.colony, draft.row.day, draft.at, "date");
        ofColony[entry.colony].push_back(entry);
    }
    KindCount& count = ledger.count(FileKind::Samples);
    for (auto& [colony, entries] : ofColony) {
        std::ranges::stable_sort(entries, {}, sampleKeyOf); // whatever the order of the rows
        OfColony of(ledger, colony);
        for (const SampleEntry& entry : entries) {
            if (of.known(entry)) {
                ++count.passedOver;
                continue;
            }
            if (entry.draft->answer) of.findAnswer(*entry.draft);
            ledger.samples.push_back(entry);
            ++count.added;
        }
    }
}

void mergeKitEnds(Ledger& ledger) {
    for (const KitEndDraft& draft : ledger.drafts.kitEnds) {
        RecordEntry<KitEndDraft> entry{&draft, -1, -1};
        if (draft.colony) entry.colony = ledger.colonyNamed(*draft.colony, draft.row.day, draft.at, "colony");
        if (!draft.yard.isEmpty()) entry.other = ledger.yardNamed(draft.yard, draft.at);
        if ((draft.colony && entry.colony < 0) || (!draft.yard.isEmpty() && entry.other < 0)) continue;
        ledger.kitEnds.push_back(entry);
    }
    passOver<KitEnd>(ledger, FileKind::KitEnds, ledger.kitEnds, [&](const auto& e) { return storedEnd(ledger, e); });
}

} // namespace core::exchange

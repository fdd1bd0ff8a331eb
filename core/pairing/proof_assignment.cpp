#include "core/pairing/proof.h"

#include <algorithm>
#include <cstdlib>

namespace core::pairing {
namespace {

std::size_t at(int index) { return static_cast<std::size_t>(index); }

class AssignmentProof {
public:
    AssignmentProof(int perHost, const std::vector<Offer>& offers, const Assignment& answer)
        : m_perHost(perHost), m_offers(offers), m_answer(answer) {}

    std::string flaw() {
        for (std::string (AssignmentProof::*part)() :
             {&AssignmentProof::flawOfPlaces, &AssignmentProof::flawOfValue, &AssignmentProof::flawOfBonus,
              &AssignmentProof::flawOfDuals, &AssignmentProof::flawOfSums}) {
            if (std::string found = (this->*part)(); !found.empty()) {
                return found;
            }
        }
        return {};
    }

private:
    std::string flawOfPlaces() {
        if (m_answer.guestDual.size() != m_answer.host.size()) {
            return "not a dual for each guest";
        }
        std::vector<int> taken(m_answer.hostDual.size(), 0);
        for (const int host : m_answer.host) {
            if (host < -1 || host >= static_cast<int>(taken.size())) {
                return "a host that there is not";
            }
            if (host >= 0 && ++taken[at(host)] > m_perHost) {
                return "host " + std::to_string(host) + " takes too many";
            }
            m_placed += host >= 0;
        }
        return m_placed == m_answer.placed ? "" : "the number placed is not that of guests with a host";
    }

    bool isTaken(const Offer& offer) const { return m_answer.host[at(offer.guest)] == offer.host; }

    /// Each guest placed was offered its host, and the value is the sum, of equal offers the best.
    std::string flawOfValue() {
        std::vector<const Offer*> best(m_answer.host.size(), nullptr);
        for (const Offer& offer : m_offers) {
            const Offer*& known = best[at(offer.guest)];
            if (isTaken(offer) && (!known || known->value < offer.value)) {
                known = &offer;
            }
        }
        for (std::size_t guest = 0; guest < best.size(); ++guest) {
            if (m_answer.host[guest] >= 0 && !best[guest]) {
                return "guest " + std::to_string(guest) + " was never offered its host";
            }
            m_value += best[guest] ? best[guest]->value : 0;
        }
        return m_value == m_answer.value ? "" : "the value is not the sum of the offers taken";
    }

    /// One guest more must outweigh what all may lose by it, unless all are placed.
    std::string flawOfBonus() {
        std::int64_t largest = 0;
        for (const Offer& offer : m_offers) {
            largest = std::max<std::int64_t>(largest, std::abs(offer.value));
        }
        const auto guests = static_cast<std::int64_t>(m_answer.host.size());
        return m_placed == guests || m_answer.bonus > 2 * guests * largest ? "" : "the bonus is too small";
    }

    std::string flawOfDuals() {
        for (const auto* duals : {&m_answer.guestDual, &m_answer.hostDual}) {
            if (std::any_of(duals->begin(), duals->end(), [](std::int64_t dual) { return dual < 0; })) {
                return "a dual below 0";
            }
        }
        for (const Offer& offer : m_offers) {
            const std::int64_t cover = m_answer.guestDual[at(offer.guest)] + m_answer.hostDual[at(offer.host)];
            if (cover < offer.value + m_answer.bonus) {
                return "an offer of host " + std::to_string(offer.host) + " is not covered";
            }
        }
        return {};
    }

    /// Equal sums of feasible duals leave no slack at any offer taken.
    std::string flawOfSums() {
        std::int64_t sum = 0;
        for (const std::int64_t dual : m_answer.guestDual) {
            sum += dual;
        }
        for (const std::int64_t dual : m_answer.hostDual) {
            sum += m_perHost * dual;
        }
        return sum == m_value + m_answer.bonus * m_placed ? "" : "the duals' sum is not the value";
    }

    int m_perHost;
    const std::vector<Offer>& m_offers;
    const Assignment& m_answer;
    int m_placed = 0;
    std::int64_t m_value = 0;
};

} // namespace

std::string flawOf(int perHost, const std::vector<Offer>& offers, const Assignment& answer) {
    return AssignmentProof(perHost, offers, answer).flaw();
}

} // namespace core::pairing

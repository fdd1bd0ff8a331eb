#include "tests/support/slow_book.h"

#include <algorithm>
#include <chrono>
#include <fstream>
#include <functional>
#include <iterator>
#include <sstream>
#include <stdexcept>

namespace tests::support {

namespace {

using Row = std::map<std::string, std::string>;

std::string folded(std::string text) {
    for (char& c : text) {
        if (c >= 'A' && c <= 'Z') {
            c = static_cast<char>(c - 'A' + 'a');
        }
    }
    return text;
}

std::string trimmed(const std::string& text) {
    const std::size_t first = text.find_first_not_of(" \t");
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

/// The cells of a whole CSV text, quotes taken away, blank lines left out.
std::vector<std::vector<std::string>> cellsOf(const std::string& text, char separator) {
    std::vector<std::vector<std::string>> lines;
    std::vector<std::string> line;
    std::string cell;
    bool quoted = false;
    const std::string whole = text + "\n";
    for (std::size_t i = 0; i < whole.size(); ++i) {
        const char c = whole[i];
        if (quoted && c == '"' && whole[i + 1] == '"') {
            cell += '"';
            ++i;
        } else if (c == '"') {
            quoted = !quoted;
        } else if (quoted || (c != separator && c != '\n' && c != '\r')) {
            cell += c;
        } else if (c != '\r') {
            line.push_back(trimmed(cell));
            cell.clear();
            if (c == '\n') {
                if (line.size() > 1 || !line.front().empty()) {
                    lines.push_back(line);
                }
                line.clear();
            }
        }
    }
    return lines;
}

std::vector<Row> rowsOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    if (text.starts_with("\xEF\xBB\xBF")) {
        text.erase(0, 3);
    }
    const std::string header = text.substr(0, text.find('\n'));
    const bool semicolons = header.find(';') != std::string::npos && header.find(',') == std::string::npos;
    const auto lines = cellsOf(text, semicolons ? ';' : ',');
    std::vector<Row> rows;
    for (std::size_t n = 1; n < lines.size(); ++n) {
        Row row;
        for (std::size_t i = 0; i < lines[n].size() && i < lines[0].size(); ++i) {
            row[lines[0][i]] = lines[n][i];
        }
        rows.push_back(row);
    }
    return rows;
}

std::optional<int> wholeNumber(const Row& row, const std::string& column) {
    const auto cell = row.find(column);
    return cell == row.end() || cell->second.empty() ? std::nullopt : std::optional<int>(std::stoi(cell->second));
}

std::string textIn(const Row& row, const std::string& column) {
    const auto cell = row.find(column);
    return cell == row.end() ? "" : cell->second;
}

std::size_t yardNamed(const SlowBook& book, const std::string& name) {
    for (std::size_t i = 0; i < book.yards.size(); ++i) {
        if (folded(book.yards[i].yard) == folded(name)) {
            return i;
        }
    }
    throw std::runtime_error("no yard " + name);
}

/// `LABEL@SINCE` names one whatever the day; a plain label names the latest of that label that began by `day`.
std::size_t colonyNamed(const SlowBook& book, const std::string& name, int day) {
    const std::size_t at = name.find('@');
    const std::string label = folded(trimmed(name.substr(0, at)));
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < book.colonies.size(); ++i) {
        const SlowColony& c = book.colonies[i];
        const bool meant = at == std::string::npos ? c.since <= day : c.since == slowDay(trimmed(name.substr(at + 1)));
        if (folded(c.label) == label && meant && (!found || book.colonies[*found].since < c.since)) {
            found = i;
        }
    }
    if (!found) {
        throw std::runtime_error("no colony " + name + " on " + slowIso(day));
    }
    return *found;
}

std::optional<std::size_t> colonyIn(const SlowBook& book, const Row& row, int day) {
    const std::string name = textIn(row, "colony");
    return name.empty() ? std::nullopt : std::optional(colonyNamed(book, name, day));
}

std::optional<std::size_t> yardIn(const SlowBook& book, const Row& row) {
    const std::string name = textIn(row, "yard");
    return name.empty() ? std::nullopt : std::optional(yardNamed(book, name));
}

std::set<std::string> wordsOf(std::string text) {
    std::replace(text.begin(), text.end(), ';', ' ');
    std::istringstream in(text);
    return {std::istream_iterator<std::string>(in), std::istream_iterator<std::string>()};
}

void readPlaces(SlowBook& book, const std::filesystem::path& folder) {
    for (const Row& r : rowsOf(folder / "yards.csv")) {
        const std::string latitude = textIn(r, "latitude_deg");
        book.yards.push_back({textIn(r, "yard"), latitude.empty() ? std::nullopt : std::optional(std::stod(latitude))});
    }
    for (const Row& r : rowsOf(folder / "colonies.csv")) {
        SlowColony c{textIn(r, "colony"), yardNamed(book, textIn(r, "yard")), slowDay(textIn(r, "since")), {}, {}};
        if (!textIn(r, "ended").empty()) {
            c.ended = slowDay(textIn(r, "ended"));
            c.end = textIn(r, "end");
        }
        book.colonies.push_back(c);
    }
    for (const Row& r : rowsOf(folder / "placements.csv")) {
        const int day = slowDay(textIn(r, "date"));
        book.placements.push_back({*colonyIn(book, r, day), day, *yardIn(book, r)});
    }
}

} // namespace

int slowDay(const std::string& iso) {
    int year = 0;
    unsigned month = 0;
    unsigned day = 0;
    char first = 0;
    char second = 0;
    std::istringstream in(iso);
    in >> year >> first >> month >> second >> day;
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month), std::chrono::day(day)};
    if (in.fail() || first != '-' || second != '-' || !date.ok()) {
        throw std::runtime_error("no day: " + iso);
    }
    return static_cast<int>(std::chrono::sys_days(date).time_since_epoch().count());
}

std::string slowIso(int day) {
    const std::chrono::year_month_day date{std::chrono::sys_days(std::chrono::days(day))};
    const auto two = [](unsigned n) { return (n < 10 ? "-0" : "-") + std::to_string(n); };
    return std::to_string(int(date.year())) + two(unsigned(date.month())) + two(unsigned(date.day()));
}

SlowBook readSlowBook(const std::filesystem::path& folder) {
    SlowBook book;
    readPlaces(book, folder);
    const auto each = [&](const char* file, const std::function<void(const Row&, int)>& read) {
        for (const Row& r : rowsOf(folder / file)) {
            read(r, slowDay(textIn(r, "date")));
        }
    };
    each("visits.csv", [&](const Row& r, int day) {
        book.visits.push_back({*colonyIn(book, r, day), day, wholeNumber(r, "brood_frames"),
                               wholeNumber(r, "brood_checked"), wordsOf(textIn(r, "signs"))});
    });
    each("transfers.csv", [&](const Row& r, int day) {
        book.transfers.push_back({day, colonyNamed(book, textIn(r, "from"), day),
                                  colonyNamed(book, textIn(r, "to"), day), textIn(r, "what")});
    });
    each("results.csv", [&](const Row& r, int day) {
        book.results.push_back({colonyIn(book, r, day), yardIn(book, r), day, textIn(r, "disease"), textIn(r, "result"),
                                textIn(r, "method")});
    });
    each("treatments.csv", [&](const Row& r, int day) {
        book.treatments.push_back({colonyIn(book, r, day), yardIn(book, r), day, textIn(r, "antibiotic") == "yes"});
    });
    each("lineage.csv", [&](const Row& r, int day) {
        book.lineage.push_back(
            {day, textIn(r, "how"), *colonyIn(book, r, day), colonyNamed(book, textIn(r, "into"), day)});
    });
    for (const Row& r : rowsOf(folder / "settings.csv")) {
        const std::string value = textIn(r, "value");
        if (!value.empty() && value.find_first_not_of("0123456789") == std::string::npos) {
            book.settings[textIn(r, "name")] = std::stoi(value);
        }
    }
    return book;
}

} // namespace tests::support

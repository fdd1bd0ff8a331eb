#!/usr/bin/python3
"""Writes intervals.json: what scipy and statsmodels say on seeded inputs. Debian: python3-scipy python3-statsmodels.

Run in this folder: /usr/bin/python3 make_intervals.py > intervals.json
"""
import csv
import json
import random

import numpy
import scipy
import scipy.special
import scipy.stats
import statsmodels
import statsmodels.api as sm

LEVEL = 0.95
rng = random.Random(20260920)


def exact_row(found, of, level):
    ci = scipy.stats.binomtest(found, of).proportion_ci(confidence_level=level, method="exact")
    return {"found": found, "of": of, "level": level, "low": float(ci.low), "high": float(ci.high)}


def exact():
    rows = [(0, 1), (1, 1), (0, 300), (300, 300), (1, 300), (43, 310), (158, 500), (89017, 425762), (122953, 738233)]
    for _ in range(150):
        of = int(10 ** rng.uniform(0, 5))
        share = rng.choice([rng.uniform(0, 1), rng.uniform(0, 0.1)])
        rows.append((min(of, round(of * share)), of))
    return [exact_row(k, n, level) for k, n in rows for level in (LEVEL,)] + [
        exact_row(k, n, 0.99) for k, n in rows[:40]]


def beta():
    rows = []
    for _ in range(100):
        a, b = 10 ** rng.uniform(-1, 4), 10 ** rng.uniform(-1, 4)
        x = min(1.0, max(0.0, a / (a + b) * rng.uniform(0.5, 1.5)))
        rows.append({"x": x, "a": a, "b": b, "below": float(scipy.special.betainc(a, b, x))})
    return rows


def student():
    """By the inverse of the incomplete beta function; scipy.stats.t.ppf of this version is off by up to 2e-9."""
    def two_sided(f, level):
        x = scipy.special.betaincinv(f / 2, 0.5, 1 - level)
        return float(numpy.sqrt(f * (1 - x) / x))

    return [{"freedom": f, "level": level, "t": two_sided(f, level)} for f in [1, 2, 3, 4, 5, 7, 10, 20, 46, 100, 1000]
            for level in (0.9, LEVEL, 0.99)]


def clustered():
    """A model with an intercept only; its scale by Pearson's X2; t with one degree less than groups."""
    cases = []
    for _ in range(40):
        groups = []
        mean, spread = rng.uniform(0.05, 0.6), rng.uniform(0.05, 0.2)
        for _ in range(rng.randint(3, 40)):
            of = int(10 ** rng.uniform(0.7, 3))
            share = min(0.98, max(0.01, rng.gauss(mean, spread)))
            groups.append((sum(rng.random() < share for _ in range(of)), of))
        of = numpy.array([n for _, n in groups])
        share = numpy.array([k for k, _ in groups]) / of
        # Shares weighted by their counts: this version leaves the counts out of X2 where it is given pairs of counts.
        fit = sm.GLM(share, numpy.ones((len(groups), 1)), family=sm.families.Binomial(), var_weights=of).fit(scale="X2")
        assert abs(fit.scale - scipy.stats.chisquare(
            numpy.concatenate([share * of, of - share * of]),
            numpy.concatenate([of * fit.mu[0], of * (1 - fit.mu[0])])).statistic / (len(groups) - 1)) < 1e-6 * fit.scale
        reach = scipy.stats.t.ppf((1 + LEVEL) / 2, len(groups) - 1) * fit.bse[0]
        ends = scipy.special.expit([fit.params[0] - reach, fit.params[0] + reach])
        cases.append({"groups": groups, "spread": float(fit.scale), "low": float(ends[0]), "high": float(ends[1])})
    return cases


def yard_mean():
    """The mean of day 0 of the autumn trial."""
    with open("../open/varroa_fall_trial_2020.csv", newline="", encoding="utf-8") as file:
        rows = [float(r["phor2"]) for r in csv.DictReader(file) if r["days"] == "0" and r["phor2"] != "NA"]
    low, high = scipy.stats.t.interval(LEVEL, len(rows) - 1, loc=numpy.mean(rows), scale=scipy.stats.sem(rows))
    return {"colonies": len(rows), "mean": float(numpy.mean(rows)), "low": float(low), "high": float(high)}


def lines(rows):
    return "[\n    " + ",\n    ".join(json.dumps(r) for r in rows) + "\n  ]"


versions = {"scipy": scipy.__version__, "statsmodels": statsmodels.__version__, "numpy": numpy.__version__}
print("{")
print(f'  "made_with": {json.dumps(versions)},')
for name, rows in (("exact", exact()), ("beta", beta()), ("student", student()), ("clustered", clustered())):
    print(f'  "{name}": {lines(rows)},')
print(f'  "yard_mean": {json.dumps(yard_mean())}')
print("}")

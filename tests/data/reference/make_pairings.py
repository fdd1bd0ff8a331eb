#!/usr/bin/python3
"""Writes what networkx and scipy find on seeded inputs. Debian: python3-networkx python3-scipy.

Run in this folder: /usr/bin/python3 make_pairings.py matchings > matchings.csv
                    /usr/bin/python3 make_pairings.py assignments > assignments.csv

The inputs are those of tests/pairing/graphs.cpp, made a second time here from the same seeds of the same Mersenne
twister; `sum` is a checksum of all numbers of the input in order.
"""
import math
import sys

import networkx
import numpy
import scipy
import scipy.optimize


class Dice:
    def __init__(self, seed):
        self.raw = numpy.random.RandomState(seed)._bit_generator.random_raw  # as std::mt19937 gives them

    def below(self, n):
        return int(self.raw()) % n

    def pick(self, low, high):
        return low + self.below(high - low + 1)

    def shuffle(self, rows):
        for left in range(len(rows), 1, -1):
            other = self.below(left)
            rows[left - 1], rows[other] = rows[other], rows[left - 1]


def random_graph(seed, most_nodes):
    dice = Dice(seed)
    nodes = dice.pick(0, most_nodes)
    parts, density = dice.pick(1, 3), dice.pick(5, 100)
    low = -3 if dice.pick(0, 1) else 1
    high = 4 if dice.pick(0, 2) else 1000
    edges = []
    for u in range(nodes):
        for v in range(u + 1, nodes):
            if u % parts != v % parts or dice.pick(1, 100) > density:
                continue
            turned = dice.pick(0, 1) == 1
            edges.append((v if turned else u, u if turned else v, dice.pick(low, high)))
            if dice.pick(1, 20) == 1:
                edges.append((u, v, dice.pick(low, high)))
    dice.shuffle(edges)
    return nodes, edges


def circle_graph(seed, circles):
    dice = Dice(seed)
    nodes, edges = 0, []
    for _ in range(circles):
        length, first = 3 + 2 * dice.pick(0, 3), nodes
        nodes += length
        for i in range(length):
            edges.append((first + i, first + (i + 1) % length, dice.pick(8, 12)))
        if length > 3:
            edges.append((first, first + 2, dice.pick(8, 12)))
        if first > 0:
            edges.append((dice.pick(0, first - 1), first, dice.pick(1, 12)))
    return nodes, edges


def yard_graph(seed, nodes):
    dice = Dice(seed)
    at = [(dice.pick(0, 60), dice.pick(0, 60)) for _ in range(nodes)]
    return nodes, [(u, v, 60 - math.floor(math.dist(at[u], at[v]) + 0.5)) for u in range(nodes)
                   for v in range(u + 1, nodes)]


def random_offers(dice, guests, hosts):
    density = dice.pick(10, 100)
    high = 2 if dice.pick(0, 1) else 500
    offers = []
    for guest in range(guests):
        for host in range(hosts):
            if dice.pick(1, 100) <= density:
                offers.append((guest, host, dice.pick(-high, high)))
            if dice.pick(1, 20) == 1:
                offers.append((guest, host, dice.pick(-high, high)))
    dice.shuffle(offers)
    return offers


def checksum(rows):
    found = 0
    for row in rows:
        for number in row:
            found = (found * 31 + number) % 2**32
    return found


def best_of_pairs(edges):
    best = {}
    for u, v, weight in edges:
        pair = min(u, v), max(u, v)
        best[pair] = max(weight, best.get(pair, weight))
    return best


def greatest(edges):
    """The greatest sum of a matching, and its edges, by networkx."""
    graph = networkx.Graph()
    graph.add_weighted_edges_from((u, v, weight) for (u, v), weight in edges.items())
    chosen = networkx.max_weight_matching(graph)
    return sum(graph[u][v]["weight"] for u, v in chosen), len(chosen)


def greatest_of_most(nodes, edges, most):
    """With `most` edges at the most: each of nodes - 2 * most nodes besides must take one of the others away."""
    besides, more = nodes - 2 * most, 1 + sum(abs(weight) for weight in edges.values())
    extended = dict(edges)
    for extra in range(besides):
        for node in range(nodes):
            extended[node, nodes + extra] = more
    return greatest(extended)[0] - max(0, besides) * more


def greedy(edges):
    total, taken = 0, set()
    for weight, u, v in sorted((-weight, u, v) for (u, v), weight in edges.items()):
        if weight < 0 and u not in taken and v not in taken:
            taken |= {u, v}
            total -= weight
    return total


def matchings():
    print(f"# networkx {networkx.__version__}, inputs by numpy {numpy.__version__}")
    print("kind,seed,size,nodes,edges,sum,best,greedy,most,best_of_most")
    for kind, make, seeds, size in (("random", random_graph, range(20000, 20200), lambda s: 70),
                                    ("circles", circle_graph, range(21000, 21100), lambda s: 6 + s % 10),
                                    ("yard", yard_graph, range(22000, 22060), lambda s: 8 + s % 60)):
        for seed in seeds:
            nodes, edges = make(seed, size(seed))
            best = best_of_pairs(edges)
            total, chosen = greatest(best)
            most = chosen // 2 if nodes <= 45 else ""
            limited = greatest_of_most(nodes, best, most) if nodes <= 45 else ""
            print(kind, seed, size(seed), nodes, len(edges), checksum(edges), total, greedy(best), most, limited,
                  sep=",")


def assigned(guests, hosts, per_host, offers):
    best = {}
    for guest, host, value in offers:
        best[guest, host] = max(value, best.get((guest, host), value))
    bonus = (2 * guests + 1) * max([abs(value) for value in best.values()] + [0]) + 1
    worth = numpy.zeros((guests, hosts * per_host + guests))  # the last columns: no host
    for (guest, host), value in best.items():
        worth[guest, host * per_host:(host + 1) * per_host] = bonus + value
    rows, columns = scipy.optimize.linear_sum_assignment(worth, maximize=True)
    taken = [best[g, c // per_host] for g, c in zip(rows, columns) if c < hosts * per_host and worth[g, c] > 0]
    return len(taken), sum(taken)


def assignments():
    print(f"# scipy {scipy.__version__}, inputs by numpy {numpy.__version__}")
    print("seed,guests,hosts,per_host,offers,sum,placed,value")
    for seed in range(30000, 30300):
        dice = Dice(seed)
        guests, hosts, per_host = dice.pick(1, 70), dice.pick(1, 60), dice.pick(1, 3)
        offers = random_offers(dice, guests, hosts)
        print(seed, guests, hosts, per_host, len(offers), checksum(offers), *assigned(guests, hosts, per_host, offers),
              sep=",")


{"matchings": matchings, "assignments": assignments}[sys.argv[1]]()

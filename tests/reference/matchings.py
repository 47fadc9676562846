"""Makes matchings.json: squads with their cheapest perfect matching by another implementation.

    python3 matchings.py > matchings.json

networkx 3.6.1 (max_weight_matching with maxcardinality, which proves its optimum for whole numbers)
on costs turned into whole numbers without rounding. Costs are drawn from a seed so that the file
stays small; matchings.ts draws the same ones. `optimum` is the exact cost in units of 2^-80, as
text, and null where the forbidden pairs leave no way to pair everyone.
"""

import json
import math
from fractions import Fraction

import networkx

UNIT = 2**80


def mulberry32(seed):
    """A small public-domain generator (T. Ettinger): shares of 2^32, the same in every language."""
    state = seed
    while True:
        state = (state + 0x6D2B79F5) & 0xFFFFFFFF
        t = ((state ^ (state >> 15)) * (state | 1)) & 0xFFFFFFFF
        t ^= (t + (((t ^ (t >> 7)) * (t | 61)) & 0xFFFFFFFF)) & 0xFFFFFFFF
        yield ((t ^ (t >> 14)) & 0xFFFFFFFF) / 2**32


KINDS = {
    "whole": lambda draw, i, j: math.floor(draw() * 21),
    "ties": lambda draw, i, j: math.floor(draw() * 3),
    "alike": lambda draw, i, j: 7,
    "negative": lambda draw, i, j: math.floor(draw() * 21) - 20,
    "fractional": lambda draw, i, j: draw() * 2 - 1,
    "tenths": lambda draw, i, j: math.floor(draw() * 10) / 10,
    "forbidden": lambda draw, i, j: math.inf if draw() < 0.82 else math.floor(draw() * 21),
    "mixed": lambda draw, i, j: math.inf if draw() < 0.5 else draw() * 4 - 2,
    "trios": lambda draw, i, j: 0 if i // 3 == j // 3 else 1 + math.floor(draw() * 3),
    "products": lambda draw, i, j: (i + 1) * (j + 1),
    "scales": lambda draw, i, j: draw() * 2.0 ** (math.floor(draw() * 60) - 30),
}


def optimum(n, kind, seed):
    numbers = mulberry32(seed)
    graph = networkx.Graph()
    graph.add_nodes_from(range(n))
    for i in range(n):
        for j in range(i + 1, n):
            cost = KINDS[kind](lambda: next(numbers), i, j)
            if cost == math.inf:
                continue
            units = Fraction(cost) * UNIT
            assert units.denominator == 1
            graph.add_edge(i, j, weight=-units.numerator)
    pairs = networkx.max_weight_matching(graph, maxcardinality=True)
    if len(pairs) < n // 2:
        return None
    return str(-sum(graph.edges[pair]["weight"] for pair in pairs))


cases = []
for k, kind in enumerate(KINDS):
    for n in range(12, 25, 2):
        for repeat in range(2):
            seed = 1000 * k + 10 * n + repeat
            cases.append({"n": n, "kind": kind, "seed": seed, "optimum": optimum(n, kind, seed)})
lines = ",\n".join("    " + json.dumps(case) for case in cases)
print('{\n  "source": "matchings.py, networkx %s",\n  "cases": [\n%s\n  ]\n}' % (networkx.__version__, lines))
